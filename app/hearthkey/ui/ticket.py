"""The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QKeyEvent, QMouseEvent, QPainter, QPen, QPixmap, QPolygonF
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from hearthkey.core.passes import Pass
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme

RING = 3
"""Kept free all round for the focus ring."""

_WIDE, _WIDEST, _HIGH, _CUT = 236, 340, 50, 6
_TEXT_LEFT, _GRIP = 38, 34


class Carried(Protocol):
    """What a card tells of the mouse: `drag.DragOut`."""

    def press(self, card: TicketCard, place: QPoint) -> None:
        """The button went down on it."""

    def move(self, place: QPoint) -> None:
        """It moved with the button down."""

    def release(self) -> None:
        """It came up."""


class TicketCard(QAbstractButton):
    """A card of one waiting pass.

    Args:
        drag: what carries it out of the window.
        resting: the second line while nothing happens to it.

    Signals:
        entered: Enter: the next step, handing over.
        menu_wanted: menu key or right click, with the place for the menu.
        stepped: an arrow key: -1 or 1.
    """

    entered = Signal()
    menu_wanted = Signal(QPoint)
    stepped = Signal(int)

    def __init__(
        self, theme: Theme, one: Pass, drag: Carried, parent: QWidget | None = None, *, resting: str = ""
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._drag = drag
        self._resting = resting or self.tr("drag me, or choose how")
        self._hint = self._resting
        self.one = one
        self.chosen = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._dress)
        self.show_pass(one)

    def show_pass(self, one: Pass) -> None:
        """Be the card of this pass."""
        self.one = one
        self.setAccessibleName(self.tr("{title}, waiting in the tray").format(title=spoken(one.title)))
        self.say("")

    def say(self, hint: str) -> None:
        """Say what happens to it, in the second line; empty for what can be done with it."""
        self._hint = hint or self._resting
        keys = self.tr("Enter hands it over, the menu key shows all ways")
        self.setAccessibleDescription(f"{hint}. {keys}" if hint else keys)
        self._dress()

    def hint(self) -> str:
        """The second line."""
        return self._hint

    def choose(self, *, chosen: bool) -> None:
        """Be the one, among several, whose ways are offered."""
        self.chosen = chosen
        self.update()

    def picture(self) -> QPixmap:
        """The card alone, to hang at the pointer while it is dragged."""
        return self.grab(QRect(RING, RING, self.width() - 2 * RING, self.height() - 2 * RING))

    def _dress(self) -> None:
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The title decides, within limits; what is longer is cut with an ellipsis."""
        px, fonts = self._theme.px, self._theme.fonts
        words = max(
            fonts.metrics(Role.CARD).horizontalAdvance(spoken(self.one.title)),
            fonts.metrics(Role.STATE).horizontalAdvance(self._hint),
        )
        wide = min(max(px(_WIDE), round(words) + px(_TEXT_LEFT + _GRIP + 18)), px(_WIDEST))
        return QSize(wide + 2 * RING, px(_HIGH) + 2 * RING)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    # The mouse and the keys

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Remember where a drag may begin."""
        super().mousePressEvent(event)
        if event.button() == Qt.MouseButton.LeftButton:
            self._drag.press(self, event.position().toPoint())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Carry it."""
        super().mouseMoveEvent(event)
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._drag.move(event.position().toPoint())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Let it lie."""
        self._drag.release()
        super().mouseReleaseEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter goes on, arrows go along, Space chooses."""
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()), 0)
        if event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.entered.emit()
        elif step:
            self.stepped.emit(step)
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:  # noqa: N802 - Qt's name
        """Offer all ways, below the card when a key asks."""
        by_mouse = event.reason() == QContextMenuEvent.Reason.Mouse
        self.menu_wanted.emit(event.globalPos() if by_mouse else self.mapToGlobal(QPoint(RING, self.height() - RING)))

    # The picture

    def _outline(self) -> QPolygonF:
        box = QRectF(self.rect()).adjusted(RING + 0.75, RING + 0.75, -RING - 0.75, -RING - 0.75)
        left, top, right, bottom, cut = box.left(), box.top(), box.right(), box.bottom(), _CUT
        corners = (
            (left + cut, top),
            (right - cut, top),
            (right, top + cut),
            (right, bottom - cut),
            (right - cut, bottom),
            (left + cut, bottom),
            (left, bottom - cut),
            (left, top + cut),
        )
        return QPolygonF([QPointF(x, y) for x, y in corners])

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint paper, sign, words, perforation and grip."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ground = "sel" if self.chosen else "facet" if self.underMouse() else "raised"
        painter.setPen(QPen(self._theme.color("ink"), 1.5))
        painter.setBrush(self._theme.color(ground))
        painter.drawPolygon(self._outline())
        self._paint_words(painter, ground)
        self._paint_grip(painter)
        if self.chosen:
            painter.fillRect(QRectF(RING, RING + _CUT, 4, self.height() - 2 * (RING + _CUT)), self._theme.color("ink"))
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), _CUT, _CUT)
        painter.end()

    def _paint_words(self, painter: QPainter, ground: str) -> None:
        px, theme = self._theme.px, self._theme
        middle = self.height() / 2
        paint_sign(
            painter,
            Sign.WAITING,
            QPointF(RING + px(19.5), middle),
            theme.tokens,
            ground=theme.color(ground),
            size=theme.fonts.scale,
        )
        left = RING + px(_TEXT_LEFT)
        room = self.width() - RING - px(_GRIP + 10) - left
        for role, color, text, base in (
            (Role.CARD, "ink", spoken(self.one.title), middle - px(3)),
            (Role.STATE, "ink2", self._hint, middle + px(14)),
        ):
            painter.setFont(theme.font(role))
            painter.setPen(theme.color(color))
            shown = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideRight, room)
            painter.drawText(QPointF(left, base), shown)

    def _paint_grip(self, painter: QPainter) -> None:
        px = self._theme.px
        x = self.width() - RING - px(_GRIP)
        pen = QPen(self._theme.color("rule"), 1.2)
        pen.setDashPattern([1.6, 2.2])
        painter.setPen(pen)
        painter.drawLine(QPointF(x, RING + 3), QPointF(x, self.height() - RING - 3))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme.color("ink2"))
        middle = QPointF(x + px(_GRIP) / 2, self.height() / 2)
        for column in (-0.5, 0.5):
            for row in (-1, 0, 1):
                painter.drawEllipse(middle + QPointF(column * px(8), row * px(7)), px(10) / 6, px(10) / 6)
