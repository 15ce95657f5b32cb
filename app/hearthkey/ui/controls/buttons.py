"""Buttons: a word, sometimes a sign before it, sometimes its key after it."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import QPushButton, QSizePolicy, QStyle, QStyleOptionButton, QWidget

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme


class Kind(Enum):
    """How much a button weighs."""

    PLAIN = "plain"
    COMMIT = "commit"
    WANTS = "wants"
    HEAVY = "heavy"
    WORD = "word"


class Button(QPushButton):
    """A button of the sheet.

    Args:
        text: with & before its mnemonic.
        kind: its weight.
        hint: its key, shown in the second ink.
        sign: shown before the text.
        height: in pixels at normal type size.
    """

    RING = 3
    PAD = 12
    TYPE, STRONG, KEY = Role.BODY, Role.BODY_STRONG, Role.SMALL

    def __init__(
        self,
        theme: Theme,
        text: str,
        *,
        kind: Kind = Kind.PLAIN,
        hint: str = "",
        sign: Sign | None = None,
        height: int = 30,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(text, parent)
        self._theme = theme
        self.kind = kind
        self._key = hint
        self._hint = hint
        self._sign = sign
        self._height = height
        self.setAccessibleName(text.replace("&", ""))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAutoDefault(False)
        theme.changed.connect(self._dress)
        self._dress()

    def width_with(self, *, key: bool) -> int:
        """How wide the button is with its key, or without."""
        now, self._hint = self._hint, self._key if key else ""
        width = self.sizeHint().width()
        self._hint = now
        return width

    def abridge(self, *, short: bool) -> None:
        """Leave the key out where there is no room for it, or show it again."""
        wanted = "" if short else self._key
        if wanted != self._hint:
            self._hint = wanted
            self.updateGeometry()
            self.update()

    def say(self, text: str) -> None:
        """Show another text."""
        self.setText(text)
        self.setAccessibleName(text.replace("&", ""))
        self.updateGeometry()
        self.update()

    def weigh(self, kind: Kind) -> None:
        """Take another weight."""
        if kind is not self.kind:
            self.kind = kind
            self._dress()

    def _dress(self) -> None:
        strong = self.kind in {Kind.COMMIT, Kind.WANTS, Kind.HEAVY}
        self.setFont(self._theme.font(self.STRONG if strong else self.TYPE))
        self.updateGeometry()
        self.update()

    def _parts(self) -> tuple[float, float, float]:
        """Widths of sign, text and hint."""
        sign = self._theme.px(26) if self._sign is not None else 0
        text = self.fontMetrics().horizontalAdvance(self.text().replace("&", ""))
        hint = self._theme.fonts.metrics(self.KEY).horizontalAdvance(self._hint) + 10 if self._hint else 0
        return float(sign), float(text), float(hint)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Text and what stands beside it, with room for the focus ring."""
        pad = 0 if self.kind is Kind.WORD else self.PAD
        width = round(sum(self._parts())) + 2 * (pad + self.RING)
        return QSize(width + 1, self._theme.px(self._height) + 2 * self.RING)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter presses it too; outside dialogs Qt leaves that to the desktop's theme."""
        plain = event.modifiers() in {Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier}
        if plain and event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.click()
        else:
            super().keyPressEvent(event)

    def _colors(self) -> tuple[str, str, str]:
        """Tokens of ground, edge and text."""
        if not self.isEnabled():
            return ("raised", "hair", "disabled")
        if self.kind is Kind.COMMIT:
            return ("ink", "ink", "onink")
        if self.kind is Kind.WANTS:
            return ("raised", "act", "act")
        return ("raised", "ink" if self.kind is Kind.HEAVY else "rule", "ink")

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground, edge, sign, text, key and ring."""
        option = QStyleOptionButton()
        self.initStyleOption(option)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ground, edge, ink = self._colors()
        box = QRectF(self.rect()).adjusted(self.RING, self.RING, -self.RING, -self.RING)
        state = option.state
        pressed = bool(state & QStyle.StateFlag.State_Sunken)
        hovered = bool(state & QStyle.StateFlag.State_MouseOver) and self.isEnabled()
        if self.kind is not Kind.WORD:
            wide = 2.0 if self.kind is Kind.HEAVY else 1.5 if self.kind is Kind.WANTS else 1.0
            painter.setPen(QPen(self._theme.color(edge), wide))
            soft = hovered and self.kind is not Kind.COMMIT
            painter.setBrush(self._theme.color("sel" if pressed and soft else "facet" if soft else ground))
            painter.drawRoundedRect(box.adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2), 3, 3)
        self._paint_text(painter, box, ink, hovered=hovered)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        painter.end()

    def _paint_text(self, painter: QPainter, box: QRectF, ink: str, *, hovered: bool) -> None:
        sign, text, hint = self._parts()
        left = box.left() + (box.width() - sign - text - hint) / 2
        if self._sign is not None:
            centre = QPointF(left + self._theme.px(8), box.center().y())
            ground = self._theme.color("raised")
            paint_sign(painter, self._sign, centre, self._theme.tokens, ground=ground, size=self._theme.fonts.scale)
        painter.setPen(self._theme.color(ink))
        painter.setFont(self.font())
        words = QRectF(left + sign, box.top(), text + 2, box.height())
        flags = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        shown = Qt.TextFlag.TextShowMnemonic if self.kind is not Kind.WORD else Qt.TextFlag.TextHideMnemonic
        painter.drawText(words, int(flags) | int(shown), self.text())
        if self.kind is Kind.WORD:
            line = box.center().y() + self.fontMetrics().ascent() / 2 + 2
            painter.setPen(QPen(self._theme.color(ink), 2 if hovered else 1))
            painter.drawLine(QPointF(words.left(), line), QPointF(words.left() + text, line))
        if self._hint:
            painter.setFont(self._theme.font(self.KEY))
            painter.setPen(self._theme.color(ink if self.kind is Kind.COMMIT else "ink2"))
            painter.drawText(QRectF(words.right() + 8, box.top(), hint, box.height()), int(flags), self._hint)
