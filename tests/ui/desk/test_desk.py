"""The desk with tickets in the test's hands: by keyboard alone, one device after the other, and never both secrets."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.core.ticket_events import Ending, Happened
from hearthkey.ui.desk.turns import Step
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.theme.theme import Theme
from tests.ui.desk.household import GUEST, TABLE, TABLET, Table, at_table, everything_said, without_table
from tests.ui.leaving.household import LAPTOP, PASSPHRASE, WORDS
from tests.ui.leaving.test_pickup import scanned
from tests.ui.practice import snapshot

CONTROL = Qt.KeyboardModifier.ControlModifier
PLAIN = Qt.KeyboardModifier.NoModifier


def press(key: Qt.Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
    """Press a key wherever the focus is."""
    focus = QApplication.focusWidget()
    assert focus is not None
    QTest.keyClick(focus, key, modifier)


@pytest.fixture
def aloud(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What a screen reader is told."""
    said: list[str] = []
    for part in ("desk", "head"):
        monkeypatch.setattr(f"hearthkey.ui.desk.{part}.announce", lambda _where, words: said.append(words))
    return said


def test_a_whole_sitting_by_keyboard_alone(table: Table, aloud: list[str], qtbot: QtBot) -> None:
    """Broken if it fails: the desk needs a mouse, skips somebody, erases without asking, or stays at the end."""
    desk, sitting = table.desk, table.sitting
    for number, one in enumerate(TABLE):
        assert desk.head.title.text() == one.title
        assert scanned(desk) == table.links()[0]
        table.fetched()
        assert aloud[-1] == f"{one.title} has its file."
        press(Qt.Key.Key_Return)
        assert desk.card.words.words() == list(WORDS)
        press(Qt.Key.Key_Return)
        assert desk.card.words.words() == []
        press(Qt.Key.Key_Right, CONTROL)
        assert sitting.asking
        assert "here it is erased" in desk.note.text()
        assert aloud[-1] == desk.note.text()
        assert QApplication.focusWidget() is desk.foot.stay_button
        assert len(table.errands.asked("hand_over")) == number
        QTest.keyClick(desk, Qt.Key.Key_E, Qt.KeyboardModifier.AltModifier)
        qtbot.waitUntil(lambda: not sitting.asking)  # Qt presses the button for a moment before it clicks
    assert table.errands.asked("hand_over") == [one.serial for one in TABLE]
    assert not desk.isVisible()
    assert table.links() == []


def test_esc_takes_back_one_thing_at_a_time(table: Table) -> None:
    """Broken if it fails: a wrong key throws everybody off the desk, or nobody gets away from it."""
    desk = table.desk
    table.fetched()
    press(Qt.Key.Key_Right, CONTROL)
    assert desk.foot.confirm_button.isVisible()
    press(Qt.Key.Key_Escape)
    assert not desk.foot.confirm_button.isVisible()
    table.sitting.act()
    table.sitting.second()
    assert not desk.head.isVisible()
    press(Qt.Key.Key_Escape)
    assert desk.head.isVisible()
    assert table.desk.card.words.words() == list(WORDS)
    press(Qt.Key.Key_Escape)
    assert not table.desk.isVisible()
    assert PASSPHRASE not in everything_said(table.desk)


def test_from_one_to_the_next_and_back(table: Table) -> None:
    """Broken if it fails: two codes are open at a time, or the one before cannot be reached again."""
    first = table.links()
    press(Qt.Key.Key_Right, CONTROL)
    assert table.desk.head.title.text() == LAPTOP.title
    assert len(table.links()) == 1
    assert table.links() != first
    press(Qt.Key.Key_Left, CONTROL)
    assert table.desk.head.title.text() == TABLET.title
    press(Qt.Key.Key_Left, CONTROL)
    assert table.desk.head.title.text() == TABLET.title
    assert len(table.links()) == 1


def test_whoever_has_the_file_is_not_asked_to_fetch_it_again(table: Table) -> None:
    """Broken if it fails: coming back to somebody opens a code that nobody needs, and the words are out of reach."""
    table.fetched()
    table.sitting.onward()
    table.sitting.put_off()
    assert table.desk.head.title.text() == LAPTOP.title
    assert table.errands.asked("hand_over") == []
    table.sitting.back()
    assert table.links() == []
    assert table.sitting.turns is not None
    assert table.sitting.turns.current.step(words_shown=False) is Step.WORDS
    table.sitting.act()
    assert table.desk.card.words.words() == list(WORDS)
    table.sitting.act()
    table.sitting.second()
    assert len(table.links()) == 1
    assert table.sitting.turns.current.picked_up is None


def test_nothing_else_of_the_household_is_on_it(table: Table) -> None:
    """Broken if it fails: the guest at the table reads who else lives here; only who sits there too is named."""
    others = {"Quince Cottage", "Ines", "phone", "reader", "work laptop", "old phone", "quince.example"}
    for one in TABLE:
        for act in (None, table.fetched, table.sitting.act, table.sitting.act, table.sitting.onward):
            if act is not None:
                act()
            said = everything_said(table.desk)
            assert one.title in said
            assert all(sits.title in said for sits in TABLE)
            assert [word for word in others if word in said.replace("a phone’s", "")] == []
        table.sitting.put_off()


def test_the_file_can_come_while_the_words_are_there(table: Table, aloud: list[str]) -> None:
    """Broken if it fails: a fast finger on the device brings the code back beside the words, or nobody is told."""
    table.sitting.act()
    assert table.desk.card.words.words() == list(WORDS)
    assert len(table.links()) == 1
    table.fetched()
    assert aloud[-1].startswith("The code is gone.")
    assert table.desk.card.words.words() == list(WORDS)
    table.sitting.act()
    assert table.desk.card.words.words() == []
    assert scanned(table.desk) == ""
    assert table.sitting.turns is not None
    assert table.sitting.turns.current.step(words_shown=False) is Step.CONNECT


@pytest.mark.parametrize("ending", [Ending.EXPIRED, Ending.GUESSED, Ending.CUT_OFF])
def test_a_ticket_that_ended_otherwise_shows_no_words(table: Table, ending: Ending) -> None:
    """Broken if it fails: the words are offered while the device has nothing, or there is no way on."""
    table.happens(Happened.CLOSED, ending)
    assert "The ticket is closed." in table.desk.card.told.text.text()
    assert table.desk.foot.act_button.text() == "&Open another"
    table.desk.foot.act_button.click()
    assert scanned(table.desk) == table.links()[0]


def test_what_happens_at_the_door_is_told(table: Table) -> None:
    """Broken if it fails: the table does not know whether the device has the page."""
    table.happens(Happened.OPENED)
    assert "was opened by 198.51.100.45" in table.desk.note.text()
    assert "Get the file." in table.desk.steps.rows[Step.SCAN].under.text()


@pytest.mark.parametrize("verb", ["open_ticket", "passphrase", "hand_over"])
def test_what_fails_is_said_and_can_be_done_again(table: Table, verb: str) -> None:
    """Broken if it fails: the desk is stuck in front of everybody."""
    error = Refused("ticket-address-none", known=("127.0.0.1",))
    table.errands.refuse[verb] = error
    if verb == "open_ticket":
        table.sitting.onward()
    else:
        table.fetched()
        table.sitting.act()
    if verb == "hand_over":
        table.sitting.act()
        table.sitting.onward()
        table.sitting.confirm()
        assert "no address that a phone at home can reach" in table.desk.note.text()
        assert table.desk.foot.confirm_button.isEnabled()
    else:
        assert "no address that a phone at home can reach" in table.desk.card.told.text.text()
    before = len(table.errands.asked(verb))
    table.errands.refuse.clear()
    again = table.desk.foot.confirm_button if verb == "hand_over" else table.desk.foot.act_button
    again.click()
    assert len(table.errands.asked(verb)) == before + 1
    assert table.sitting.leaving.screen.side is not Side.TROUBLE


@pytest.mark.parametrize("how", ["lock", "close", "revoked", "keys"])
def test_whatever_ends_the_sitting_nothing_stays(table: Table, how: str) -> None:
    """Broken if it fails: a door stays open behind a locked screen, or words stand on it."""
    table.sitting.act()
    assert len(table.links()) == 1
    locks: list[bool] = []
    table.ways.lock.connect(lambda: locks.append(True))
    ends: dict[str, Callable[[], object]] = {
        "lock": table.ways.lock.emit,
        "close": table.desk.close,
        "revoked": lambda: table.errands.now_is(snapshot(passes=without_table())),
        "keys": lambda: QTest.keyClick(table.desk, Qt.Key.Key_L, CONTROL | Qt.KeyboardModifier.ShiftModifier),
    }
    ends[how]()
    assert table.links() == []
    assert not table.desk.isVisible()
    assert PASSPHRASE not in everything_said(table.desk)
    assert bool(locks) is (how in {"lock", "keys"})


MOVES = st.lists(
    st.sampled_from(
        ["act", "act", "second", "onward", "back", "put_off", "stay", "confirm", "fetched", "opened", "hold", "answer"]
    ),
    max_size=25,
)


@settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow]
)
@given(MOVES)
def test_code_and_words_are_never_there_together(table: Table, moves: list[str]) -> None:
    """Broken if it fails: one photo of the desk opens the house."""
    desk, errands = table.desk, table.errands
    errands.hold = False
    errands.answer()
    errands.now_is(at_table())
    desk.begin(TABLE)
    for move in moves:
        if move in {"fetched", "opened"}:
            if table.sitting.leaving.pickup.is_open and move == "fetched":
                table.fetched()
            elif table.sitting.leaving.pickup.is_open:
                table.happens(Happened.OPENED)
        elif move in {"hold", "answer"}:
            errands.hold = move == "hold"
            errands.answer()
        else:
            getattr(table.sitting, move)()
        words, code = desk.card.words.words(), desk.card.picture.pixels_a_module() > 0
        said = everything_said(desk)
        links = [link for link in table.links() if link in said]
        assert not (words and (code or links))
        assert not words or (desk.card.currentWidget() is desk.card.words and PASSPHRASE in said)
        assert words or PASSPHRASE not in said
        assert words or table.sitting.leaving.passphrase is None
        assert len(table.links()) <= 1
        if not desk.isVisible():
            break


ROOMS = [(1280, 800, 1.0), (1920, 1080, 1.0), (1024, 640, 1.0), (1280, 800, 2.0), (1280, 720, 1.25)]
STATES: dict[str, Callable[[Table], None]] = {
    "code": lambda _table: None,
    "words": lambda table: table.sitting.act(),
    "asking": Table.asked,
}


@pytest.mark.parametrize("state", STATES)
@pytest.mark.parametrize(("wide", "high", "scale"), ROOMS)
def test_it_fits(table: Table, theme: Theme, qtbot: QtBot, state: str, wide: int, high: int, scale: float) -> None:
    """Broken if it fails: words are cut off, a button lies outside, or the question has to be scrolled to."""
    theme.choose("paper", scale)
    table.desk.resize(wide, high)
    STATES[state](table)
    qtbot.waitUntil(lambda: table.desk.width() == wide)
    QApplication.processEvents()
    desk = table.desk
    parts: list[QWidget] = [*desk.foot.stops(), desk.card, desk.note]
    for part in parts:
        if part.isVisible():
            place = part.mapTo(desk, part.rect().topLeft())
            assert place.x() >= 0
            assert place.y() >= 0
            assert place.x() + part.width() <= wide
            assert place.y() + part.height() <= high
            assert part.height() >= part.minimumSizeHint().height()
    if desk.note.isVisible():
        assert desk.note.height() >= desk.note.heightForWidth(desk.note.width())
    for row in desk.steps.rows.values():
        for label in (row.head, row.under):
            assert not label.isVisible() or label.height() >= label.heightForWidth(label.width())
    if state == "asking":
        assert desk.note.isVisible()
    if state == "code":
        assert scanned(desk) == table.links()[0]


def test_every_stop_of_the_tab_key_has_a_name(table: Table) -> None:
    """Broken if it fails: a screen reader says "button" and nothing else, or Tab leaves somebody out."""
    for state in ("code", "words", "asking"):
        STATES[state](table)
        stops = [one for one in table.desk.findChildren(QWidget) if one.isVisible() and takes_tab(one)]
        assert all(one.accessibleName() for one in stops)
        reached = set()
        for _ in range(2 * len(stops)):
            press(Qt.Key.Key_Tab)
            reached.add(QApplication.focusWidget())
        assert set(stops) <= reached


def takes_tab(widget: QWidget) -> bool:
    """Whether the Tab key stops there."""
    return bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus) and widget.isEnabled()


def test_ten_minutes_more(table: Table) -> None:
    """Broken if it fails: a slow relative is cut off."""
    assert table.desk.head.clock.text() in {"10:00", "09:59"}
    table.desk.head.more_button.click()
    assert table.desk.head.clock.text() > "19:00"
    table.fetched()
    assert not table.desk.head.clock.isVisible()


def test_a_guest_reads_of_nobody_when_alone(table: Table) -> None:
    """Broken if it fails: with one device left the desk still leads to somebody."""
    table.desk.begin((GUEST,))
    assert not table.desk.foot.next_button.isVisible()
    assert table.desk.foot.count.text() == ""
    table.fetched()
    assert table.desk.foot.next_button.text() == "&Finish"
