"""Enrolling by keyboard alone, with every trouble at its field."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.certificates import end_of_day
from hearthkey.core.errors import Refused
from hearthkey.core.network import Caution
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.until import YEAR
from hearthkey.ui.drawer.whose import GUEST, NEW
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import PASSPHRASE, FakeErrands
from tests.ui.drawer.pages import fill_in, identity_of, lock
from tests.ui.practice import made_pass, snapshot

TABLET = EnrolRequest("Odile", "tablet", "android", ends=end_of_day(2028, 5, 12))


@pytest.fixture
def page(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> EnrolPage:
    """The page, open in the drawer."""
    made = EnrolPage(theme, errands, ways)
    room.open(made)
    return made


def focused() -> QWidget:
    """Whoever has the keyboard."""
    found = QApplication.focusWidget()
    assert found is not None
    return found


def key(code: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    """Press a key, wherever the focus is."""
    QTest.keyClick(focused(), code, held)


def test_from_the_first_key_to_the_tray(page: EnrolPage, errands: FakeErrands, ways: Ways, qtbot: QtBot) -> None:
    """Broken: a device cannot be added without a mouse."""
    key(Qt.Key.Key_Right)
    key(Qt.Key.Key_Right)
    assert page.form.whose.person() == "Odile"
    key(Qt.Key.Key_Tab)
    assert focused() is page.form.device
    QTest.keyClicks(focused(), "tablet")
    for _ in range(4):
        key(Qt.Key.Key_Tab)
    assert focused() is page.form.kind
    QTest.keyClicks(focused(), "Andr")
    assert page.form.kind.key() == "android"
    qtbot.waitUntil(lambda: errands.asked != [])
    assert page.voice.text() == "Odile will get in with this tablet until 12 May 2028. Nobody else has this pass."
    with qtbot.waitSignal(ways.back):
        key(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert errands.asked[-1] == ("enrol", TABLET)
    assert page.form.device.text() == ""


def test_what_follows_is_said_while_it_is_typed(page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: people make a pass and learn afterwards what it does; or each key press asks the register."""
    page.form.kind.take("android")
    QTest.keyClicks(page.form.device, "radio")
    qtbot.waitUntil(page.facts.isVisible)
    assert [one[0] for one in errands.asked] == ["preview_enrol"]
    assert page.facts.told().splitlines() == [
        "key: RSA-3072 (broad). Its built-in client signs with RSA only.",
        "known as: a code, so no name travels in clear",
        "bundle: waits in the tray under a passphrase",
    ]


def test_nothing_is_asked_before_all_is_answered(page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: the page scolds about fields that nobody has come to yet."""
    page.form.device.setText("tablet")
    qtbot.wait(200)
    assert errands.asked == []
    assert page.voice.text().startswith("Here it will say")


def test_the_draft_stands_on_the_sheet(page: EnrolPage, ways: Ways, room: Room) -> None:
    """Broken: the sheet does not show the line that is about to be, or keeps it after it was put aside."""
    drafts: list[list[object]] = []
    ways.draft.connect(lambda *told: drafts.append(list(told)))
    page.form.device.setText("tablet")
    assert drafts[-1] == ["Ines", "tablet", end_of_day(2028, 5, 12)]
    page.aside.click()
    assert drafts[-1] == ["", "", None]
    assert room.drawer.page() is None
    room.open(page)
    assert drafts[-1] == ["Ines", "tablet", end_of_day(2028, 5, 12)]


def test_a_suggestion_fills_the_name(page: EnrolPage) -> None:
    """Broken: the words under the question do nothing."""
    page.form.device.setFocus()
    key(Qt.Key.Key_Tab)
    key(Qt.Key.Key_Space)
    assert page.form.device.text() == "phone"


def test_a_guest_gets_a_week_and_a_name(page: EnrolPage) -> None:
    """Broken: a guest's pass lasts two years, or nobody knows whose it is."""
    page.form.whose.few.segments()[-2].click()
    assert page.form.whose.few.value() == GUEST
    assert page.form.whose.name.isVisible()
    page.form.whose.name.setText("Boiler engineer")
    typed = page.form.typed()
    assert (typed.person, typed.guest, typed.ends) == ("Boiler engineer", True, end_of_day(2026, 5, 19))


def test_a_chosen_end_stays_when_the_person_changes(page: EnrolPage) -> None:
    """Broken: the date that somebody typed is replaced behind their back."""
    page.form.until.lengths.segments()[1].click()
    page.form.whose.few.segments()[-2].click()
    assert page.form.typed().ends == end_of_day(2027, 5, 12)


def test_the_date_is_typed_and_the_weekday_said(page: EnrolPage) -> None:
    """Broken: a day other than the three lengths cannot be chosen, or the wrong length stays marked."""
    page.form.until.field.setDate(QDate(2028, 5, 24))
    assert page.form.typed().ends == end_of_day(2028, 5, 24)
    assert page.form.until.lengths.value() == ""
    assert page.form.until.field.accessibleDescription() == "A Wednesday, 743 days from now."
    page.form.until.field.setDate(QDate(2027, 5, 12))
    assert page.form.until.lengths.value() == YEAR


def test_a_new_person_is_named(page: EnrolPage) -> None:
    """Broken: only people who have a device already can get one."""
    page.form.whose.few.segments()[-1].click()
    assert page.form.whose.few.value() == NEW
    page.form.whose.name.setText("Mira")
    assert (page.form.typed().person, page.form.typed().guest) == ("Mira", False)


def test_many_people_are_typed_or_chosen(page: EnrolPage, errands: FakeErrands) -> None:
    """Broken: with forty people the segments run out of the drawer."""
    people = [f"Guest room {number}" for number in range(40)]
    passes = tuple(
        made_pass(one, "phone", made=datetime(2026, 1, 1, tzinfo=UTC), ends=end_of_day(2028, 1, 1)) for one in people
    )
    errands.show(snapshot(passes=passes))
    assert page.form.whose.many.isVisible()
    assert not page.form.whose.few.isVisible()
    page.form.whose.many.take("person:Guest room 17")
    assert page.form.typed().person == "Guest room 17"
    page.form.whose.many.setEditText("Mira")
    assert (page.form.typed().person, page.form.typed().guest) == ("Mira", False)
    page.form.whose.many.take(GUEST)
    assert page.form.whose.name.isVisible()
    assert page.form.typed().guest


def test_people_who_come_do_not_disturb_what_is_typed(page: EnrolPage, errands: FakeErrands) -> None:
    """Broken: a change elsewhere throws the answers away."""
    page.form.whose.take("Odile")
    page.form.device.setText("tablet")
    assert errands.last is not None
    mira = made_pass("Mira", "phone", made=datetime(2026, 5, 1, tzinfo=UTC), ends=end_of_day(2028, 1, 1))
    errands.show(replace(errands.last, passes=(*errands.last.passes, mira)))
    assert (page.form.typed().person, page.form.typed().device) == ("Odile", "tablet")


def test_a_commit_too_early_points_at_what_is_missing(page: EnrolPage, errands: FakeErrands) -> None:
    """Broken: Ctrl+Enter does nothing, and nobody says why."""
    page.go_on()
    assert page.form.device.hasFocus()
    assert page.form.device.accessibleDescription() == "Give it a name that the family uses."
    page.form.device.setText("tablet")
    page.go_on()
    assert page.form.kind.hasFocus()
    assert page.form.kind.accessibleDescription() == "Choose what it is; the key is made to fit."
    page.form.whose.few.segments()[-1].click()
    page.go_on()
    assert page.form.whose.name.hasFocus()
    assert errands.asked == []


def test_a_taken_name_offers_a_new_pass_for_that_one(page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: whoever wants to replace a device is sent back to the sheet."""
    errands.troubles["preview_enrol"] = Refused("device-exists", title="Odile’s phone")
    page.form.whose.take("Odile")
    page.form.device.setText(" Phone ")
    page.form.kind.take("iphone")
    qtbot.waitUntil(page.form.replace_button.isVisible)
    errands.troubles.clear()
    page.form.replace_button.click()
    assert page.title.text() == "A new pass"
    assert page.form.about.text() == "For Odile’s phone. It keeps its identity."
    request = page.form.request()
    assert (request.person, request.device, request.replace) == ("Odile", "phone", True)


def test_replacing_settles_whose_and_which(page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a new pass for a known device asks what is known, or loses what was typed for another."""
    page.form.device.setText("radio")
    page.replace(identity_of(errands, "Ines", "tablet"))
    qtbot.waitUntil(page.facts.isVisible)
    assert not page.form.whose.isVisible()
    assert "Its old pass goes on" in page.voice.text()
    assert page.facts.figures["identity"].value() == identity_of(errands, "Ines", "tablet")
    page.start("")
    assert page.title.text() == "A new device"
    assert page.form.device.text() == "radio"


def test_locked_it_asks_and_goes_on_by_itself(page: EnrolPage, errands: FakeErrands, ways: Ways, qtbot: QtBot) -> None:
    """Broken: the passphrase has to be given elsewhere first, and what was typed is typed again."""
    fill_in(page, qtbot, errands)
    lock(errands)
    page.commit.click()
    assert page.unlock.line.hasFocus()
    QTest.keyClicks(page.unlock.line, "plum")
    QTest.keyClick(page.unlock.line, Qt.Key.Key_Return)
    assert page.unlock.below().startswith("The passphrase does not open it.")
    page.unlock.line.selectAll()
    QTest.keyClicks(page.unlock.line, PASSPHRASE)
    with qtbot.waitSignal(ways.back):
        QTest.keyClick(page.unlock.line, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert errands.asked[-1] == ("enrol", TABLET)


def test_details_overrule_and_warn(page: EnrolPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: who knows better cannot say so, or is not told what may go wrong."""
    errands.cautions = (Caution("key-set-unlikely", "Android 14 or newer"),)
    assert page.form.details.choice.isHidden() or not page.form.details.choice.isVisible()
    page.form.details.fold_button.click()
    page.form.details.choice.segments()[2].click()
    fill_in(page, qtbot, errands)
    request = errands.asked[-1][1]
    assert isinstance(request, EnrolRequest)
    assert (request.key_set, request.container) == ("compact", None)
    assert page.warned.text().startswith("The built-in client of Android 14 or newer")


def test_while_it_is_made_the_step_is_said_and_a_second_commit_is_not_begun(
    page: EnrolPage, errands: FakeErrands, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Broken: an impatient second Ctrl+Enter makes two passes."""
    fill_in(page, qtbot, errands)
    begun: list[EnrolRequest] = []
    monkeypatch.setattr(errands, "enrol", lambda request, *_rest: begun.append(request))
    page.commit.click()
    page.commit.click()
    assert begun == [TABLET]
    errands.step.emit("Making one key")
    assert page.step.text() == "Making one key …"


def test_a_person_can_be_given(page: EnrolPage) -> None:
    """Broken: "new device" in the row of a person asks whose it is all the same."""
    page.start("Tomasz")
    assert page.form.typed().person == "Tomasz"
    page.start("Mira")
    assert page.form.typed().person == "Mira"


def test_the_usual_end_follows_the_day(theme: Theme, ways: Ways, qtbot: QtBot) -> None:
    """Broken: a page kept open over midnight proposes yesterday's end."""
    errands = FakeErrands(snapshot(datetime(2026, 5, 13, 0, 1, tzinfo=UTC)))
    page = EnrolPage(theme, errands, ways)
    qtbot.addWidget(page)
    assert page.form.typed().ends.date() == date(2028, 5, 13)
