"""The passphrase row."""

from __future__ import annotations

import pytest
import shiboken6
from PySide6.QtCore import QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.secret import Secret
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.theme.theme import Theme
from tests.ui.drawer.household import PASSPHRASE, FakeErrands


class SlowErrands(FakeErrands):
    """Answers when the test says so."""

    def __init__(self) -> None:
        super().__init__()
        self.tries: list[tuple[str, Then[None], Failed]] = []

    def unlock(self, passphrase: Secret[str], context: QObject, then: Then[None], failed: Failed) -> None:
        """Keep the question."""
        assert shiboken6.isValid(context)
        self.tries.append((passphrase.reveal(), then, failed))


@pytest.fixture
def slow(theme: Theme) -> SlowErrands:
    """A household whose key takes its time."""
    assert theme.fonts.scale == 1.0
    return SlowErrands()


@pytest.fixture
def row(qtbot: QtBot, theme: Theme, slow: SlowErrands) -> UnlockRow:
    """The row, in sight and focused."""
    made = UnlockRow(theme, slow)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.ask()
    return made


def test_it_says_that_it_is_slow_and_tries_once(row: UnlockRow, slow: SlowErrands) -> None:
    """Broken: an impatient second Enter starts the slow work again, or nobody knows why it takes so long."""
    QTest.keyClicks(row.line, PASSPHRASE)
    QTest.keyClick(row.line, Qt.Key.Key_Return)
    QTest.keyClick(row.line, Qt.Key.Key_Return)
    assert [words for words, _, _ in slow.tries] == [PASSPHRASE]
    assert row.below() == "Opening the CA key, slow on purpose"


def test_after_opening_nothing_is_left_of_it(row: UnlockRow, slow: SlowErrands, qtbot: QtBot) -> None:
    """Broken: the passphrase stays in the field, or can be brought back by undo."""
    QTest.keyClicks(row.line, PASSPHRASE)
    row.unlock_button.click()
    with qtbot.waitSignal(row.opened):
        slow.tries[0][1](None)
    assert row.isHidden()
    assert row.line.text() == ""
    row.line.undo()
    assert row.line.text() == ""


def test_it_is_hidden_until_show(row: UnlockRow) -> None:
    """Broken: the passphrase is on the screen of whoever looks over the shoulder."""
    assert row.line.echoMode() is QLineEdit.EchoMode.Password
    row.show_button.click()
    assert row.line.echoMode() is QLineEdit.EchoMode.Normal
    assert row.show_button.accessibleName() == "Hide the passphrase"
    row.show_button.click()
    assert row.line.echoMode() is QLineEdit.EchoMode.Password


def test_forgetting_veils_it_again(row: UnlockRow) -> None:
    """Broken: the next passphrase is typed in the open."""
    row.show_button.click()
    row.forget()
    assert row.line.echoMode() is QLineEdit.EchoMode.Password


@pytest.mark.parametrize(
    ("error", "words"),
    [
        (Unavailable("keyring-absent"), "Open the app in the desktop where the household lives."),
        (Unavailable("keyring-silent", seconds=5), "The keyring has not answered for 5 seconds."),
    ],
)
def test_a_keyring_in_the_way_is_said_in_place(
    error: HearthkeyError, words: str, row: UnlockRow, slow: SlowErrands
) -> None:
    """Broken: a locked keyring looks like a wrong passphrase."""
    QTest.keyClicks(row.line, PASSPHRASE)
    row.unlock()
    slow.tries[0][2](error)
    assert words in row.below()
    assert row.line.accessibleDescription() == row.below()
    row.unlock()
    assert len(slow.tries) == 2
