"""A passphrase on the clipboard is marked, and goes again, but only if it is still ours."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtGui import QClipboard
from PySide6.QtTest import QSignalSpy
from PySide6.QtWidgets import QApplication

from hearthkey.core.secret import Secret
from hearthkey.ui.clipboard import HINT, SECONDS, SecretClipboard
from tests.ui.leaving.household import PASSPHRASE

SECRET = Secret(PASSPHRASE)


def test_it_is_marked_and_not_in_the_selection(qapp: QApplication, clipboard: SecretClipboard) -> None:
    """If this failed, the desktop's clipboard history would keep the passphrase, or a middle click would paste it."""
    clipboard.copy(SECRET)
    data = qapp.clipboard().mimeData()
    assert data.text() == PASSPHRASE
    assert bytes(data.data(HINT).data()) == b"secret"
    assert PASSPHRASE not in qapp.clipboard().text(QClipboard.Mode.Selection)
    assert SECONDS - 2 <= clipboard.seconds_left <= SECONDS


def test_it_is_cleared_and_the_clearing_is_marked_too(qapp: QApplication, clipboard: SecretClipboard) -> None:
    """If this failed, the passphrase would stay, or a history would put it back in place of an empty clipboard."""
    heard = QSignalSpy(clipboard.cleared)
    clipboard.copy(SECRET)
    clipboard.clear()
    assert qapp.clipboard().text() == ""
    assert bytes(qapp.clipboard().mimeData().data(HINT).data()) == b"secret"
    assert heard.count() == 1
    assert clipboard.seconds_left == 0
    clipboard.clear()
    assert heard.count() == 1


def test_what_somebody_else_copied_meanwhile_stays(qapp: QApplication, clipboard: SecretClipboard) -> None:
    """If this failed, the shopping list copied half a minute later would vanish."""
    clipboard.copy(SECRET)
    qapp.clipboard().setText("two pounds of quinces")
    clipboard.clear()
    assert qapp.clipboard().text() == "two pounds of quinces"


def test_the_clock_that_runs_out_clears_it(qapp: QApplication, clipboard: SecretClipboard) -> None:
    """If this failed, nothing would ever clear the clipboard by itself."""
    clipboard.copy(SECRET)
    timer = clipboard.findChild(QTimer)
    assert timer is not None
    assert timer.interval() == SECONDS * 1000
    timer.timeout.emit()  # the end of the time, without waiting for it
    assert qapp.clipboard().text() == ""
