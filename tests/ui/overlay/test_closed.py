"""The page for when something is shut."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.core.sentences import doors
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.pages.closed import ClosedPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.overlay.household import FakeErrands
from tests.ui.overlay.looking import beyond, cut, nameless, settle
from tests.ui.practice import snapshot

LOCKED = snapshot(locked=True)
STATES: dict[str, tuple[Snapshot, str, str]] = {
    "empty": (
        replace(LOCKED, door=Door.KEYRING_EMPTY),
        "The keyring has no CA key of this household.",
        "Bring the key text back from a copy of the keyring.",
    ),
    "locked": (
        replace(LOCKED, door=Door.KEYRING_LOCKED),
        "The keyring of this desktop is locked. Nothing is lost.",
        "Unlock it in the desktop’s password settings",
    ),
    "silent": (
        replace(LOCKED, door=Door.KEYRING_SILENT),
        "The keyring of this desktop does not answer. Nothing is lost.",
        "Look for a question that it may be asking on another screen",
    ),
    "absent": (
        replace(LOCKED, door=Door.KEYRING_ABSENT),
        "There is no keyring here that can be used. Nothing is lost.",
        "Open the app in that desktop.",
    ),
    "second copy": (snapshot(read_only=True), "This window only looks.", "Close the other copy"),
    "diary": (
        snapshot(misfit=3),
        "The diary does not fit together from entry 3 on.",
        "Compare it with what you remember.",
    ),
}
BROKEN = {
    "register-damaged": ("The register is damaged, so nothing can be shown.", "Leave the folder as it is"),
    "register-unreadable": ("The register cannot be read, so nothing can be shown.", "See to the disk"),
    "register-newer": ("The register was written by a newer app.", "Use the newer app."),
    "register-busy": ("The household cannot be opened.", "The register is in use."),
}


class Shut:
    """The page, and what it asked for."""

    def __init__(self, qtbot: QtBot, theme: Theme, seen: Snapshot) -> None:
        self.errands = FakeErrands(seen)
        self.ways = Ways()
        self.page = ClosedPage(theme, self.errands, self.ways)
        self.page.resize(1280, 700)
        qtbot.addWidget(self.page)
        self.page.show()

    def cause(self) -> str:
        """The last line."""
        return self.page.cause.text()


@pytest.mark.parametrize("state", STATES)
def test_each_state_says_what_it_is_and_the_way_on(qtbot: QtBot, theme: Theme, state: str) -> None:
    """Broken if it fails: five different troubles look like one, or end in a dead end."""
    seen, headline, way = STATES[state]
    shut = Shut(qtbot, theme, seen)
    assert ClosedPage.needed(seen)
    shut.page.tell(seen)
    assert shut.page.heading.sentence.text() == headline
    assert shut.cause().startswith(f"What to do: {way}")
    assert shut.page.works.texts()
    assert shut.page.waits.texts()
    with qtbot.waitSignal(shut.ways.back):
        QTest.mouseClick(shut.page.go_on, Qt.MouseButton.LeftButton)


@pytest.mark.parametrize("code", BROKEN)
def test_a_broken_register_says_what_it_means(qtbot: QtBot, theme: Theme, code: str) -> None:
    """Broken if it fails: a damaged file looks like a household that was never founded."""
    shut = Shut(qtbot, theme, snapshot())
    shut.page.tell_trouble(Unavailable(code, path="register", seen="page 7", have=9, known=1))
    headline, way = BROKEN[code]
    assert shut.page.heading.sentence.text() == headline
    assert way in shut.cause()
    assert shut.page.works.texts() == ["Everybody’s devices, the gateway lets them in as before"]
    assert not shut.page.go_on.isVisible()
    shut.page.again.click()
    assert [verb for verb, _ in shut.errands.calls] == ["open"]


@pytest.mark.parametrize(
    "seen", [snapshot(), snapshot(locked=True), snapshot(founded=False), replace(snapshot(), door=Door.KEYRING_LOCKED)]
)
def test_it_is_not_needed_where_nothing_is_in_the_way(seen: Snapshot) -> None:
    """Broken if it fails: the page stands in the way of a household that only wants its passphrase."""
    assert not ClosedPage.needed(seen)


def test_no_household_is_never_taken_for_a_closed_one() -> None:
    """Broken if it fails: a silent keyring offers to found anew, and every device needs a new bundle."""
    assert "no-household" not in doors.SHUT
    for door in set(Door) - {Door.READY, Door.NO_HOUSEHOLD}:
        assert "found a household" not in " ".join(doors.SHUT[door.value]).casefold()


def test_what_waits_names_the_list_and_the_tray(qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: the householder does not know how long there is time."""
    seen = STATES["locked"][0]
    shut = Shut(qtbot, theme, seen)
    shut.page.tell(seen)
    assert "A newer list, no. 42 is good until 19 June 2028" in shut.page.waits.texts()
    assert "Bundles in the tray, their passphrases lie in the keyring" in shut.page.waits.texts()
    nobody = replace(seen, passes=())
    shut.page.tell(nobody)
    assert not any(text.startswith("Bundles") for text in shut.page.waits.texts())


def test_trying_again_looks_again_and_says_so(qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: the button does nothing, or can be pressed a second time meanwhile."""
    seen = STATES["silent"][0]
    shut = Shut(qtbot, theme, seen)
    shut.page.tell(seen)
    shut.errands.hold = True
    shut.page.again.click()
    assert not shut.page.again.isEnabled()
    assert shut.page.again.text() == "Asking …"
    shut.errands.answer()
    assert shut.page.again.isEnabled()
    assert [verb for verb, _ in shut.errands.calls] == ["refresh"]


def test_trying_again_can_end_in_something_else(qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: the page goes on telling of the trouble before."""
    seen = STATES["silent"][0]
    shut = Shut(qtbot, theme, seen)
    shut.page.tell(seen)
    shut.errands.now_is(STATES["locked"][0])
    assert shut.page.heading.sentence.text() == STATES["locked"][1]
    shut.errands.refuse["refresh"] = Unavailable("register-damaged", path="register", seen="page 7")
    shut.page.again.click()
    assert shut.page.heading.sentence.text() == BROKEN["register-damaged"][0]


def test_a_keyring_fault_of_its_own_is_told(qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: a keyring that answers with a fault is told like one that is not there."""
    seen = replace(STATES["absent"][0], keyring_said="keyring-failed")
    shut = Shut(qtbot, theme, seen)
    shut.page.tell(seen)
    assert "The keyring answered with a fault of its own." in shut.cause()


@pytest.mark.parametrize("state", STATES)
@pytest.mark.parametrize("scale", [1.0, 2.0])
@pytest.mark.parametrize("size", [(1280, 700), (1024, 640), (640, 480)])
def test_nothing_is_cut(qtbot: QtBot, theme: Theme, state: str, scale: float, size: tuple[int, int]) -> None:
    """Broken if it fails: with large type or in a small window a sentence is cut."""
    theme.choose("paper", scale)
    shut = Shut(qtbot, theme, STATES[state][0])
    shut.page.resize(*size)
    shut.page.tell(STATES[state][0])
    settle()
    assert cut(shut.page) == []
    assert beyond(shut.page) == []
    assert nameless(shut.page) == []
