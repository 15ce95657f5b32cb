"""The form that a sheet goes with: the one that left last, or another that the device can take."""

from __future__ import annotations

from hearthkey.core.copies import Copy, CopyWay
from hearthkey.core.languages import Language
from tests.fakes.home import Home


def test_a_sheet_goes_with_what_left_last_and_fits(home: Home) -> None:
    """Broken if it fails: the steps on the sheet are those of a form that the relative never got."""
    laptop, register, sheeting = home.newest("Tomasz laptop"), home.house.register, home.house.sheeting

    def left(form: str, *, came: bool = True) -> str:
        copy = Copy(laptop.serial, form, CopyWay.FOLDER, "there", "/there", (), home.world.clock.now())
        with register.change() as change:
            number = change.expect_copy(copy)
            if came:
                change.copy_made(number, copy)
            else:
                change.copy_never_made(number)
        return sheeting.forms(laptop).taken

    assert sheeting.forms(laptop).taken == sheeting.forms(laptop).fitting[0]
    assert left("archive") == "archive"
    assert left("profile") == "archive"
    assert left("bundle", came=False) == "archive"
    assert left("codes") == "codes"


def test_each_fitting_form_has_a_sheet_of_its_own(home: Home) -> None:
    """Broken if it fails: the choice changes nothing on the paper."""
    laptop, sheeting = home.newest("Tomasz laptop"), home.house.sheeting
    forms = sheeting.forms(laptop).fitting
    steps = {sheeting.sheet(laptop, one, Language.ENGLISH).steps for one in forms}
    assert len(forms) > 2
    assert len(steps) == len(forms)
    assert sheeting.sheet(laptop, None, Language.ENGLISH).steps in steps
