"""The head of "Lost or stolen": sign, title, what to do, and the way out."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel, paint_sign
from hearthkey.ui.theme.theme import Theme

SIZE = 2.0
"""How much larger than on the sheet the sign is."""


class Seal(SignLabel):
    """A sign at twice its size."""

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The larger cell."""
        side = self._theme.px(17 * SIZE)
        return QSize(side, side)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint it in the middle."""
        painter = QPainter(self)
        middle = QPointF(self.width() / 2, self.height() / 2)
        ground, size = self._theme.color(self._ground), SIZE * self._theme.fonts.scale
        paint_sign(painter, self.sign, middle, self._theme.tokens, ground=ground, size=size)
        painter.end()


class Leave(Button):
    """The way out, with what it does."""

    def explain(self, hint: str) -> None:
        """Say what its key does now."""
        self._hint = hint
        self.updateGeometry()
        self.update()


class Head(QWidget):
    """Sign, title, one line, and Close."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._asked = True
        self._hint = Label(theme, Role.BODY, self.tr("Type two letters of the person or the device."), color="ink2")
        self.close_button = Leave(theme, self.tr("Close"), kind=Kind.WORD, height=26)
        words = QVBoxLayout()
        words.setContentsMargins(0, 0, 0, 0)
        words.setSpacing(0)
        words.addWidget(Label(theme, Role.OVERLAY_TITLE, self.tr("Lost or stolen"), wrap=True))
        words.addWidget(self._hint)
        row = QHBoxLayout(self)
        row.setContentsMargins(3, 0, 0, 0)
        row.setSpacing(14)
        row.addWidget(Seal(theme, Sign.STOPPED), 0, Qt.AlignmentFlag.AlignVCenter)
        row.addLayout(words, 1)
        row.addWidget(self.close_button, 0, Qt.AlignmentFlag.AlignVCenter)

    def asks(self, *, asked: bool) -> None:
        """Say what to type, or nothing once something has happened."""
        self._asked = asked
        self.close_button.explain(self.tr("Esc changes nothing") if asked else self.tr("Esc"))
        self.loosen(loose=True)

    def loosen(self, *, loose: bool) -> None:
        """Where room is short the line goes; the field says the same."""
        self._hint.setVisible(self._asked and loose)
