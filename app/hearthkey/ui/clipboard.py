"""A passphrase on the clipboard: marked as a secret, and gone after a while if it is still ours."""

from __future__ import annotations

from PySide6.QtCore import QMimeData, QObject, QTimer, Signal
from PySide6.QtGui import QClipboard, QGuiApplication

from hearthkey.core.secret import Secret

SECONDS = 45
"""How long a secret stays."""

HINT, HINT_VALUE = "x-kde-passwordManagerHint", b"secret"
"""Desktops that keep a history of the clipboard leave out what carries this type."""

_TELLS_OWNER = frozenset({"xcb", "wayland"})


class SecretClipboard(QObject):
    """Puts secrets on the clipboard, never into the selection that a middle click pastes.

    Signals:
        cleared: the secret has gone from the clipboard, or somebody else's text took its place.
    """

    cleared = Signal()

    def __init__(self, clipboard: QClipboard, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._clipboard = clipboard
        self._ours: Secret[str] | None = None
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(SECONDS * 1000)
        self._timer.timeout.connect(self.clear)

    @property
    def seconds_left(self) -> int:
        """Until it is cleared; 0 where nothing of ours is there."""
        return max(0, self._timer.remainingTime()) // 1000

    def copy(self, secret: Secret[str]) -> None:
        """Put a secret there for a while."""
        self._clipboard.setMimeData(_marked(secret.reveal()))
        self._ours = secret
        self._timer.start()

    def clear(self) -> None:
        """Take the secret away now, if it is still there; the window does so when it closes."""
        self._timer.stop()
        if self._ours is None:
            return
        if self._holds(self._ours):
            # Marked as well, or a history would take the empty clipboard for a loss and fill it again.
            self._clipboard.setMimeData(_marked(""))
        self._ours = None
        self.cleared.emit()

    def _holds(self, secret: Secret[str]) -> bool:
        """Whether the clipboard has our text; a foreign owner is not asked, for it may not answer."""
        if QGuiApplication.platformName() in _TELLS_OWNER and not self._clipboard.ownsClipboard():
            return False
        return Secret(self._clipboard.text()) == secret


def _marked(text: str) -> QMimeData:
    data = QMimeData()
    data.setText(text)
    data.setData(HINT, HINT_VALUE)
    return data
