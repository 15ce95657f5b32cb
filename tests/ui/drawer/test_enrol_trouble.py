"""Every trouble that enrolling can meet is said where it can be mended."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.pages import fill_in


@pytest.fixture
def page(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> EnrolPage:
    """The page, open in the drawer."""
    made = EnrolPage(theme, errands, ways)
    room.open(made)
    return made


WHERE: dict[str, tuple[HearthkeyError, str, str]] = {
    "name of a person": (Refused("name-too-long", what="person’s name", limit=64, length=70), "whose", "Shorten it."),
    "name of a device": (Refused("name-empty", what="device’s name"), "called", "Give a name that the family uses."),
    "taken": (Refused("device-exists", title="Odile’s tablet"), "called", "or replace the pass of the other."),
    "over": (Refused("device-revoked", title="Odile’s tablet"), "called", "or give the old one a new pass."),
    "unknown": (Refused("device-unknown", text="Odile’s tablet"), "called", "The sheet shows all of them."),
    "kind": (Refused("kind-unknown", text="fridge", known=("linux",)), "what", "Choose one of linux."),
    "past": (Refused("end-in-the-past", end="1 May 2026"), "until", "Give a day that lies ahead."),
    "too far": (
        Refused("end-after-authority", end="1 May 2040", authority_end="8 May 2036"),
        "until",
        "Choose an end up to that day.",
    ),
    "key set": (Refused("key-set-unknown", text="x", known=("broad",)), "details", "Choose one of broad."),
    "container": (Refused("container-unknown", text="x"), "details", "Choose strong or old."),
    "elsewhere": (Unavailable("disk-full", path="/home"), "page", "Make room, then do it again."),
    "clock": (Refused("clock-behind", clock="1 May", last="2 May"), "page", "Set the clock, then do it again."),
}


@pytest.mark.parametrize("name", WHERE)
def test_trouble_is_said_at_its_field(name: str, page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a trouble is said at the wrong field or nowhere, or its remedy names a command."""
    error, place, remedy = WHERE[name]
    errands.troubles["preview_enrol"] = error
    fill_in(page, qtbot, errands)
    fields = {
        "whose": page.form.whose.few.parentWidget(),
        "called": page.form.device,
        "what": page.form.kind,
        "until": page.form.until.field,
        "details": page.form.details.choice.parentWidget(),
    }
    said = {where for where, field in fields.items() if field is not None and remedy in field.accessibleDescription()}
    if page.trouble.isVisible() and remedy in page.trouble.text():
        said.add("page")
    assert said == {place}
    assert "hearthkey " not in page.trouble.text()
    del errands.troubles["preview_enrol"]
    page.form.changed.emit()
    qtbot.waitUntil(page.facts.isVisible)
    said = {where for where, field in fields.items() if field is not None and remedy in field.accessibleDescription()}
    assert not said
    assert not page.trouble.isVisible()
