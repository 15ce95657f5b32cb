"""A name that was given by a slip is taken back, and given again, on a household that was made by hand."""

from __future__ import annotations

import pytest

from hearthkey.core.adopt_plan import UNNAMED
from hearthkey.core.errors import Refused
from hearthkey.core.languages import Language
from hearthkey.core.plans import Changes
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.looking import find
from hearthkey.services.undo_values import standing_of
from tests.adopt.by_hand import family, quick_key
from tests.adopt.conftest import Taking
from tests.fakes.clock import NOW
from tests.fakes.workshop import QuickWorkshop

INES, TOMASZ, ODILE = "1001", "1002", "1003"
AGAIN = "2001"
"""A second pass of the phone."""


@pytest.fixture
def taken(taking: Taking) -> Taking:
    """Three devices that nobody has named, one of them with two passes."""
    by_hand = family(taking.house.data.parent / "by-hand")
    by_hand.put_certificate(
        "new.crt", by_hand.issue("ines-phone", 0x2001, names=("a7k2.quince.example",), key=quick_key("new"))
    )
    taking.house.__dict__["workshop"] = QuickWorkshop()
    taking.take(by_hand.folder)
    return taking


def name(taken: Taking, serial: str, person: str, device: str) -> Changes:
    """Name a pass as the window does it."""
    house = taken.house
    return house.undoing.watch(lambda: house.naming.name(serial, person, device))


def last(taken: Taking) -> tuple[str, str]:
    """Verb and sentence of the newest entry."""
    entry = taken.house.register.last_entry()
    assert entry is not None
    return entry.verb, entry.sentence


def test_a_name_is_taken_back_and_given_again(taken: Taking) -> None:
    """If this fails, a phone that was named after the wrong person is called so for ever."""
    house, undoing = taken.house, taken.house.undoing
    before, waiting = standing_of(house.register), house.naming.waiting()
    first = [(one.person, one.device, one.serial) for one in house.register.passes()]
    name(taken, AGAIN, "Ines", "phone")
    named = standing_of(house.register)
    assert str(undoing.offer.undo) == "Undo: name Ines’s phone"
    taken.world.clock.forward(hours=1)
    undoing.undo()
    assert (standing_of(house.register), house.naming.waiting()) == (before, waiting)
    assert [(one.person, one.device, one.serial) for one in house.register.passes()] == first
    assert {one.person for one in house.register.passes()} == {UNNAMED}
    assert last(taken) == ("undo", "Naming Ines’s phone was taken back. Nobody has said whose it is.")
    assert str(undoing.offer.redo) == "Redo: name Ines’s phone"
    undoing.redo()
    assert standing_of(house.register) == named
    assert named.whose[INES].named == NOW
    assert {one.serial for one in find(house.register.passes(), "Ines phone")} == {INES, AGAIN}
    assert last(taken) == ("redo", "Ines’s phone was named again after all.")


def test_a_name_that_was_misspelled_is_spelled_otherwise(taken: Taking) -> None:
    """If this fails, "ines" stays "ines", whatever is typed afterwards."""
    name(taken, INES, "ines", "Phone")
    taken.house.undoing.undo()
    name(taken, INES, "Ines", "phone")
    name(taken, ODILE, "INES", "tablet")
    assert {one.person for one in taken.house.register.passes()} == {UNNAMED, "Ines"}
    taken.house.undoing.undo()
    assert {one.title for one in find(taken.house.register.passes(), "ines phone")} == {"Ines’s phone"}


def test_whoever_gets_a_new_pass_is_spelled_as_asked(taken: Taking) -> None:
    """If this fails, a slip that was taken back is printed on the sheet of somebody who is enrolled afterwards."""
    name(taken, INES, "ines", "phone")
    taken.house.undoing.undo()
    taken.house.enrolling.apply(taken.house.enrolling.preview(EnrolRequest("Ines", "reader", "linux")))
    assert find(taken.house.register.passes(), "ines reader")[0].title == "Ines’s reader"


def test_the_last_name_that_goes_brings_the_stand_in_back(taken: Taking) -> None:
    """If this fails, taking back the name of a device stumbles once every other one has its own."""
    house = taken.house
    before = standing_of(house.register)
    for serial, person, device in ((INES, "Ines", "phone"), (TOMASZ, "Tomasz", "laptop"), (ODILE, "Ines", "tablet")):
        name(taken, serial, person, device)
    house.undoing.undo()
    assert [one.title for one in find(house.register.passes(), "Ines phone")] == ["Ines’s phone"] * 2
    for _ in range(2):
        house.undoing.undo()
    assert standing_of(house.register) == before


def test_who_is_known_otherwise_stays_known(taken: Taking) -> None:
    """If this fails, taking a name back forgets somebody's language, or a visit to them."""
    house = taken.house
    name(taken, INES, "Ines", "phone")
    house.sheeting.choose_language("Ines", Language("de"))
    house.undoing.undo()
    assert dict(house.register.person_languages()) == {"ines": "de"}
    name(taken, ODILE, "Ines", "tablet")
    assert find(house.register.passes(), "Ines tablet")[0].serial == ODILE


def test_what_has_a_pass_under_that_name_keeps_it(taken: Taking) -> None:
    """If this fails, a bundle lies in the tray for a device that nobody has named."""
    house, undoing = taken.house, taken.house.undoing
    name(taken, INES, "Ines", "phone")
    house.renewing.renew(house.renewing.preview(find(house.register.passes(), "Ines phone")))
    with pytest.raises(Refused, match="undo-named-since") as refused:
        undoing.undo()
    assert refused.value.facts["title"] == "Ines’s phone"
    assert len(find(house.register.passes(), "Ines phone")) == 3
    assert undoing.offer.undo is None


def test_a_pass_for_somebody_else_does_not_keep_it(taken: Taking) -> None:
    """If this fails, a slip stays because another device was renewed meanwhile."""
    house = taken.house
    name(taken, INES, "Ines", "phone")
    house.renewing.renew(house.renewing.preview(find(house.register.passes(), "odile-tablet")))
    house.undoing.undo()
    assert INES in {one.adopted.serial for one in house.naming.waiting()}
