"""The household's passphrase, for whoever opened a copy with parts and never knew it: shown when asked for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.secret import Secret
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class LearnedWords(QWidget):
    """A sentence, a button, and the words once it was pressed; nothing that they open is on the screen."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._secret: Secret[str] | None = None
        what = self.tr(
            "The household’s passphrase is yours to keep now: without it nothing is signed here. Write it down, away "
            "from every copy and from the paper. Then make new parts, for these were used."
        )
        self.what = Prose(theme, Role.BODY, what)
        self.button = Button(theme, self.tr("&Show the passphrase"), height=32)
        self.words = Prose(theme, Role.BODY_STRONG)
        self.words.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.what)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.words)
        self.button.clicked.connect(self._turn)
        self.hold(None)

    def hold(self, secret: Secret[str] | None) -> None:
        """Offer to show these words, or nothing."""
        self._secret = secret
        self.setVisible(secret is not None)
        self._show(shown=False)

    def _turn(self) -> None:
        self._show(shown=not self.words.isVisibleTo(self))

    def _show(self, *, shown: bool) -> None:
        self.words.speak(self._secret.reveal() if shown and self._secret is not None else "")
        self.words.setVisible(shown)
        self.button.setText(self.tr("&Hide the passphrase") if shown else self.tr("&Show the passphrase"))
