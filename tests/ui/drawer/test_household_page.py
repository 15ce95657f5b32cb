"""The household's page: its settings are changed with what follows said before, and nothing is lost on the way."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.core.household import Household
from hearthkey.services.settling import SettleRequest
from hearthkey.ui.drawer.household_page import HouseholdPage
from hearthkey.ui.drawer.page import tab_stops
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import PASSPHRASE, FakeErrands
from tests.ui.drawer.pages import lock
from tests.ui.practice import HOUSEHOLD


@pytest.fixture
def page(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> HouseholdPage:
    """The page, open in the drawer."""
    made = HouseholdPage(theme, errands, ways)
    room.open(made)
    return made


def typed(page: HouseholdPage, spot: Spot, text: str, qtbot: QtBot) -> None:
    """Type another answer, and wait until what follows is said or refused."""
    line, errands = page.settlement.form.lines[spot], page._errands  # noqa: SLF001 - the fake that was handed in
    assert isinstance(errands, FakeErrands)
    asked = len(errands.asked)
    page.settlement.form.unfold(spot)
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text) if text else QTest.keyClick(line, Qt.Key.Key_Delete)
    qtbot.waitUntil(lambda: len(errands.asked) > asked)


def stands(errands: FakeErrands) -> Household:
    """The household as the window sees it."""
    assert errands.last is not None
    assert errands.last.household is not None
    return errands.last.household


def test_the_settings_stand_in_the_fields(page: HouseholdPage) -> None:
    """Broken: what the gateway has to be told cannot be read anywhere."""
    assert {spot.value: line.text() for spot, line in page.settlement.form.lines.items()} == {
        "name": "Quince Cottage",
        "host": "home.quince.example",
        "home": "198.51.100.0/24, 2001:db8:51::/64",
        "dns": "198.51.100.1",
        "tunnel": "203.0.113.0/24",
        "suffix": "quince.example",
    }
    assert page.settlement.form.through.value() == "split"
    assert page.kept.told().splitlines()[:3] == [
        "revocation list: 19 June 2028 (no. 42)",
        "gateway: 3 August 2028 (home.quince.example)",
        "CA: 8 May 2036 (key in the keyring)",
    ]


def test_nothing_can_be_changed_before_something_differs(page: HouseholdPage, qtbot: QtBot) -> None:
    """Broken: a button waits that does nothing, or does something when nothing was typed."""
    assert not page.commit.isEnabled()
    assert not page.aside.isEnabled()
    typed(page, Spot.NAME, "Plum House", qtbot)
    assert page.commit.isEnabled()
    page.aside.click()
    assert not page.commit.isEnabled()
    assert page.settlement.form.name.text() == "Quince Cottage"
    assert not page.settlement.voice.isVisible()


def test_typing_the_same_again_is_no_change(page: HouseholdPage, qtbot: QtBot) -> None:
    """Broken: capital letters alone make an entry in the diary."""
    typed(page, Spot.HOST, "HOME.quince.example", qtbot)
    assert page.settlement.voice.text() == "Everything would stay as it is."
    assert not page.commit.isEnabled()


def test_who_has_to_be_told_stands_there_before(page: HouseholdPage, qtbot: QtBot) -> None:
    """Broken: the house moves, and the family learns it at the door."""
    typed(page, Spot.HOST, "door.quince.example", qtbot)
    assert page.settlement.voice.text() == (
        "The house is reached at door.quince.example, and the gateway gets a new certificate for that name. "
        "Ines’s phone, Ines’s tablet and 4 more ask for a new bundle."
    )
    assert page.settlement.besides.text().startswith("What waits in the tray takes it along when it leaves;")
    assert page.settlement.devices.isVisible()
    assert not page.settlement.all.isVisible()
    page.settlement.devices.button.click()
    assert page.settlement.all.text().splitlines() == [
        "Ines’s phone",
        "Ines’s tablet",
        "Tomasz’s work laptop",
        "Tomasz’s old phone",
        "Odile’s phone",
        "Boiler engineer’s phone",
    ]


def test_the_sentence_about_devices_is_seen_before_it_comes_true(
    page: HouseholdPage, room: Room, errands: FakeErrands, theme: Theme, qtbot: QtBot
) -> None:
    """Broken: with large type in a low window, devices are touched by a press of a button that says nothing of them."""
    theme.choose("paper", 2.0)
    room.resize(700, 480)
    room.drawer.fit(700)
    typed(page, Spot.HOST, "door.quince.example", qtbot)
    page.roll.verticalScrollBar().setValue(0)
    page.commit.click()
    assert stands(errands) == HOUSEHOLD
    assert page.roll.verticalScrollBar().value() > 0
    page.commit.click()
    assert stands(errands).gateway_host == "door.quince.example"


def test_a_change_without_a_key_is_made_and_taken_back(page: HouseholdPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a slip of the finger has to be found in the diary and typed back."""
    lock(errands)
    typed(page, Spot.DNS, "", qtbot)
    page.commit.click()
    assert stands(errands) == replace(HOUSEHOLD, dns_servers=())
    assert page.note.text().startswith("The household’s settings were changed: DNS servers none (before: 198.51.100.1)")
    assert not page.commit.isEnabled()
    assert page.settlement.form.dns.hasFocus()
    page.back_button.click()
    assert stands(errands) == HOUSEHOLD
    assert page.settlement.form.dns.text() == "198.51.100.1"
    assert not page.back_button.isVisible()
    assert page.settlement.form.dns.hasFocus()
    assert not [one for one in errands.asked if one[0] == "unlock"]


def test_the_way_back_goes_when_something_else_is_typed(
    page: HouseholdPage, errands: FakeErrands, qtbot: QtBot
) -> None:
    """Broken: "change it back" takes back something that nobody remembers."""
    typed(page, Spot.NAME, "Plum House", qtbot)
    page.commit.click()
    assert page.back_button.isVisible()
    typed(page, Spot.DNS, "198.51.100.2", qtbot)
    assert not page.back_button.isVisible()
    assert not page.note.isVisible()
    assert stands(errands).name == "Plum House"


def test_a_new_host_asks_for_the_passphrase_and_goes_on_by_itself(
    page: HouseholdPage, errands: FakeErrands, qtbot: QtBot
) -> None:
    """Broken: with the household locked the change ends in a refusal, or what was typed is gone."""
    lock(errands)
    typed(page, Spot.HOST, "door.quince.example", qtbot)
    page.commit.click()
    assert page.unlock.line.hasFocus()
    QTest.keyClicks(page.unlock.line, "plum kettle")
    QTest.keyClick(page.unlock.line, Qt.Key.Key_Return)
    assert page.unlock.below().startswith("The passphrase does not open it.")
    assert page.settlement.form.host.text() == "door.quince.example"
    page.unlock.line.setText(PASSPHRASE)
    page.commit.click()
    assert stands(errands).gateway_host == "door.quince.example"
    assert page.kept.figures["gateway"].toPlainText().endswith("(door.quince.example)")
    assert "There is a way back: give the house its old name again, with the passphrase." in page.note.text()
    assert not page.back_button.isVisible()


def test_the_household_may_lock_itself_in_the_last_moment(
    page: HouseholdPage, errands: FakeErrands, qtbot: QtBot
) -> None:
    """Broken: ten idle minutes over the form cost what was typed."""
    typed(page, Spot.HOST, "door.quince.example", qtbot)
    assert errands.last is not None
    errands.last = replace(errands.last, locked=True)  # nobody has seen it yet
    page._settle_typed()  # noqa: SLF001 - the deed that was on its way
    assert page.unlock.line.hasFocus()
    QTest.keyClicks(page.unlock.line, PASSPHRASE)
    QTest.keyClick(page.unlock.line, Qt.Key.Key_Return)
    assert stands(errands).gateway_host == "door.quince.example"


@pytest.mark.parametrize(
    ("spot", "text", "said"),
    [
        (Spot.NAME, " ", "The household name has no letter or figure in it."),
        (Spot.HOST, "*.quince.example", '"*.quince.example" is not a name that DNS can look up'),
        (Spot.HOME, "203.0.113.0/24", "203.0.113.0/24 and 203.0.113.0/24 overlap"),
        (Spot.DNS, "dns", '"dns" is not the address of a DNS server.'),
        (Spot.TUNNEL, "198.51.100.0/25", "198.51.100.0/24 and 198.51.100.0/25 overlap"),
        (Spot.SUFFIX, "-", '"-" is not a name that DNS can look up'),
    ],
)
def test_what_does_not_fit_is_said_at_its_line(
    page: HouseholdPage, qtbot: QtBot, spot: Spot, text: str, said: str
) -> None:
    """Broken: somebody searches the page for the line that is meant."""
    typed(page, spot, text, qtbot)
    places = [Spot.TUNNEL, spot] if spot is Spot.HOME else [spot]
    told = [page.settlement.form.spots[one].told() for one in places]
    assert any(one.startswith(said) for one in told), told
    assert any(page.settlement.form.spots[one].isVisible() for one in places)
    assert not page.commit.isEnabled()


def test_a_caution_stands_at_its_line(page: HouseholdPage, qtbot: QtBot) -> None:
    """Broken: somebody gives the house a name that nobody outside knows, and is not told."""
    typed(page, Spot.HOST, "gate.local", qtbot)
    assert page.settlement.form.spots[Spot.HOST].told().startswith("gate.local is known inside the home only.")
    page.aside.click()
    assert page.settlement.form.spots[Spot.HOST].told() == ""


def test_another_quiet_subnet_is_drawn(page: HouseholdPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a household whose router has moved into its tunnel has to think of a subnet."""
    page.settlement.form.details.button.click()
    page.settlement.form.quiet.click()
    qtbot.waitUntil(page.commit.isEnabled)
    drawn = page.settlement.form.tunnel.text()
    assert drawn.startswith("10.")
    assert f"devices get addresses from {drawn}" in page.settlement.voice.text()
    page.commit.click()
    assert str(stands(errands).tunnel_subnet) == drawn


def test_what_is_typed_survives_a_change_from_elsewhere(
    page: HouseholdPage, errands: FakeErrands, qtbot: QtBot
) -> None:
    """Broken: a look at the household wipes the form while somebody types."""
    typed(page, Spot.NAME, "Plum House", qtbot)
    assert errands.last is not None
    errands.show(replace(errands.last, household=replace(HOUSEHOLD, dns_servers=("198.51.100.9",))))
    assert page.settlement.form.name.text() == "Plum House"
    assert page.settlement.form.dns.text() == "198.51.100.9"
    assert page.settlement.form.request() == SettleRequest(name="Plum House")


def test_who_came_meanwhile_is_told_too(page: HouseholdPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a device that was handed over while the page stood open is left out."""
    typed(page, Spot.HOST, "door.quince.example", qtbot)
    assert errands.last is not None
    passes = tuple(replace(one, handed_over=one.handed_over or errands.last.at) for one in errands.last.passes)
    errands.show(replace(errands.last, passes=passes))
    qtbot.waitUntil(lambda: "and 5 more" in page.settlement.voice.text())


def test_trouble_is_said_and_nothing_typed_is_lost(page: HouseholdPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: a full disk looks like success, or costs what was typed."""
    typed(page, Spot.NAME, "Plum House", qtbot)
    errands.troubles["settle"] = Unavailable("disk-full", path="/home")
    page.commit.click()
    assert page.trouble.text().startswith("The disk is full (/home).")
    assert page.settlement.form.name.text() == "Plum House"
    assert page.commit.isEnabled()


def test_ctrl_enter_changes_it(page: HouseholdPage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: the key that the button names does nothing."""
    typed(page, Spot.NAME, "Plum House", qtbot)
    QTest.keyClick(page.settlement.form.name, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert stands(errands).name == "Plum House"


def test_a_choice_by_keyboard(page: HouseholdPage, qtbot: QtBot) -> None:
    """Broken: what goes through home can be chosen with a mouse only."""
    page.settlement.form.through.taken().setFocus()
    QTest.keyClick(page.settlement.form.through.taken(), Qt.Key.Key_Right)
    qtbot.waitUntil(page.commit.isEnabled)
    assert page.settlement.voice.text().startswith("Everything that devices do on the internet goes through home.")


def test_whoever_only_looks_can_type_nothing(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> None:
    """Broken: a second copy of the app offers what it cannot do."""
    assert errands.last is not None
    errands.show(replace(errands.last, read_only=True))
    page = HouseholdPage(theme, errands, ways)
    room.open(page)
    assert all(line.isReadOnly() for line in page.settlement.form.lines.values())
    assert not page.settlement.form.through.isEnabled()
    assert not page.sign_button.isEnabled()
    assert not page.renew_button.isEnabled()
    QTest.keyClicks(page.settlement.form.name, "x")
    assert not page.settlement.form.differs


def test_the_tab_key_walks_the_questions_in_their_order(page: HouseholdPage) -> None:
    """Broken: the focus jumps about between questions."""
    page.settlement.form.details.open(shown=True)
    stops = tab_stops(page)
    wanted = [one for one in page.settlement.controls() if one in stops]
    places = [stops.index(one) for one in wanted]
    assert all(before < after for before, after in pairwise(places))
    assert page.first() is page.settlement.form.name
