"""The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today's date."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QHelpEvent, QMouseEvent, QPainter, QPen, QPolygonF, QWheelEvent
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from hearthkey.core.phrases import Style
from hearthkey.ui.board.dues import Due, at, dues, listed, paint_dues
from hearthkey.ui.board.ground import paint_grid, paint_leaves, paint_run
from hearthkey.ui.board.life import tr
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.board.turning import Turning
from hearthkey.ui.board.zoom_words import names as names_of
from hearthkey.ui.board.zoom_words import spoken as spoken_axis
from hearthkey.ui.dates import written
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

HEIGHT, RULE = 50, 1.5
"""Of the head, at normal type; of the rule under it. Pixels."""

FACETS, HEAD, HEAD_HEIGHT, TAIL, NOTCH = 26, 6, 24, 44, 37
"""Where the leaves begin; top and height of the ribbon's head; end of its tail and of the notch in it."""


class HeadText(NamedTuple):
    """A text of the head: where it begins, and how it is set."""

    text: str
    x: float
    baseline: float
    width: float
    role: Role
    ink: str


class Header(QWidget):
    """Stands over the rows and does not scroll.

    Signals:
        asked: a shape was clicked; what is to be done is wanted.
        zoomed: steps of the zoom, positive for farther.
    """

    asked = Signal()
    zoomed = Signal(int)

    REACH = 10
    """How near to a shape the mouse has to be, pixels at normal type."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._turning = Turning()
        self.ruling: Ruling | None = None
        self.dues: tuple[Due, ...] = ()
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("time axis"))
        theme.changed.connect(self.updateGeometry)

    def rule(self, ruling: Ruling) -> None:
        """Take a new ruling; a screen reader hears how the axis lies, and what is to be done first."""
        self.ruling = ruling
        self.dues = dues(ruling.axis, ruling.dues)
        told = [spoken_axis(ruling.axis)]
        if ruling.dues:
            told.append(tr("To be done next, {duties}").format(duties=listed(ruling.dues)))
        self.setAccessibleDescription("\n".join(told))
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As high as two lines and the ribbon's tail."""
        return QSize(200, self._theme.px(HEIGHT))

    def texts(self) -> list[HeadText]:
        """All texts of the head but the date on the ribbon."""
        ruling = self.ruling
        if ruling is None:
            return []
        columns, low = ruling.columns, float(self._theme.px(40))
        found = self._leaf_names(ruling)
        if not ruling.stacked:
            for word, left in ((tr("who"), columns.who.left), (tr("device"), columns.device.left)):
                found.append(self._italic(ruling, word, left, low))
            until = self._italic(ruling, tr("good until"), 0, low)
            found.append(until._replace(x=columns.date.right - until.width))
        for tick in ruling.ticks:
            role = Role.SMALL_STRONG if tick.strong else Role.SMALL
            ink = "ink" if tick.strong else "ink2"
            found.append(HeadText(spoken(tick.text), columns.axis.left + tick.left, low, tick.width, role, ink))
        return found

    def head(self) -> QRectF:
        """The ribbon's head."""
        ruling = self.ruling
        if ruling is None:
            return QRectF()
        wide = max(self._theme.px(72), round(ruling.names.width(Role.STATE_WORD, today(ruling)) + 14))
        left = max(2.0, ruling.ribbon - wide / 2)
        return QRectF(left, self._theme.px(HEAD), wide, self._theme.px(HEAD_HEIGHT))

    def _italic(self, ruling: Ruling, text: str, x: float, baseline: float) -> HeadText:
        return HeadText(text, x, baseline, ruling.names.width(Role.SMALL_ITALIC, text), Role.SMALL_ITALIC, "ink2")

    def _leaf_names(self, ruling: Ruling) -> list[HeadText]:
        """Each leaf's name where it fits, between its folds and clear of the ribbon's head."""
        found, head = [], self.head()
        for number, piece in enumerate(ruling.axis.pieces):
            left = ruling.columns.axis.left + piece.left + (8 if number else 2)
            limit = ruling.columns.axis.left + piece.right - 2
            if left < head.right() and head.left() < limit:
                limit = min(limit, head.left() - 6)
            for name in names_of(piece):
                text = self._italic(ruling, name, left, float(self._theme.px(18)))
                if left + text.width <= limit:
                    found.append(text)
                    break
        return found

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground, labels, rule and ribbon."""
        painter = QPainter(self)
        area = QRectF(self.rect())
        painter.fillRect(area, self._theme.color("sheet"))
        ruling = self.ruling
        if ruling is not None:
            px = self._theme.px
            bottom = area.bottom()
            paint_leaves(painter, QRectF(0, px(FACETS), area.width(), bottom - px(FACETS)), ruling)
            paint_grid(painter, QRectF(0, px(TAIL), area.width(), bottom - px(TAIL)), ruling, strong=True)
            paint_grid(painter, QRectF(0, px(TAIL + 2), area.width(), bottom - px(TAIL + 2)), ruling, strong=False)
            for text in self.texts():
                painter.setFont(self._theme.font(text.role))
                painter.setPen(self._theme.color(text.ink))
                painter.drawText(QPointF(text.x, text.baseline), text.text)
            left = ruling.columns.who.left
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            rule = QRectF(left, bottom - RULE, ruling.columns.rule_right - left, RULE)
            painter.fillRect(rule, self._theme.color("ink"))
            paint_dues(painter, self.dues, bottom - RULE, ruling)
            paint_run(painter, QRectF(0, px(NOTCH), area.width(), bottom - px(NOTCH)), ruling)
            self._ribbon(painter, ruling)
        painter.end()

    # Mouse

    def _under(self, place: QPointF) -> Due | None:
        ruling = self.ruling
        if ruling is None or place.y() < self._theme.px(HEAD_HEIGHT):
            return None
        return at(self.dues, place.x() - ruling.columns.axis.left, self._theme.px(self.REACH))

    def event(self, event: QEvent) -> bool:
        """A tooltip says what a shape asks for; F2 says it without the mouse."""
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            due = self._under(QPointF(event.pos()))
            QToolTip.showText(event.globalPos(), "" if due is None else listed(due.days), self)
            return True
        return super().event(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """A hand over a shape."""
        over = self._under(event.position()) is not None
        self.setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """A click on a shape opens the day list."""
        if event.button() == Qt.MouseButton.LeftButton and self._under(event.position()) is not None:
            self.asked.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl and the wheel zoom."""
        steps = self._turning.steps(event)
        if steps:
            self.zoomed.emit(steps)

    def _ribbon(self, painter: QPainter, ruling: Ruling) -> None:
        px, head, half = self._theme.px, self.head(), ruling.run / 2
        x, top, low = ruling.ribbon, head.top() + 0.5, head.bottom() - 0.5
        left, right = head.left() + 0.5, head.right() - 0.5
        corners = (
            (left, top), (right, top), (right, low), (x + half, low), (x + half, px(TAIL)),
            (x, px(NOTCH)), (x - half, px(TAIL)), (x - half, low), (left, low),
        )  # fmt: skip
        painter.setPen(QPen(self._theme.color("qedge"), 1))
        painter.setBrush(self._theme.color("quince"))
        painter.drawPolygon(QPolygonF([QPointF(*corner) for corner in corners]))
        painter.setFont(self._theme.font(Role.STATE_WORD))
        painter.setPen(self._theme.color("onq"))
        painter.drawText(head, int(Qt.AlignmentFlag.AlignCenter), today(ruling))


def today(ruling: Ruling) -> str:
    """The date on the ribbon: "Tue 12 May"."""
    return written(ruling.axis.now, Style.SHORT_WEEKDAY)
