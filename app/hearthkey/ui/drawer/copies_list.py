"""Paints copies: whose and when, what and where, and what can be said of each."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication, QModelIndex, QPersistentModelIndex, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPen, QResizeEvent, QTextLayout, QTextOption
from PySide6.QtWidgets import QFrame, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.drawer.copies_model import OPEN, CopiesModel, state, what, when
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_Index = QModelIndex | QPersistentModelIndex


class CopiesDelegate(QStyledItemDelegate):
    """One copy. An open ring stands before what is not known to be gone, nothing before what is settled."""

    SIDE, ABOVE, BETWEEN, RING = 10, 7, 2, 5

    def __init__(self, theme: Theme, view: QListView, model: CopiesModel) -> None:
        super().__init__(view)
        self._theme = theme
        self._view = view
        self._model = model

    def _laid(self, text: str, width: int) -> tuple[QTextLayout, float]:
        laid = QTextLayout(text, self._theme.font(Role.BODY))
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        option.setTextDirection(Qt.LayoutDirection.LayoutDirectionAuto)
        laid.setTextOption(option)
        height = 0.0
        laid.beginLayout()
        while (row := laid.createLine()).isValid():
            row.setLineWidth(width)
            row.setPosition(QPointF(0, height))
            height += row.height()
        laid.endLayout()
        return laid, height

    def _line(self, role: Role) -> int:
        return math.ceil(self._theme.fonts.metrics(role).height())

    def _head(self, row: int) -> int:
        return self._line(Role.BODY_STRONG) + 2 * self.ABOVE if self._model.heads(row) else 0

    def sizeHint(self, _option: QStyleOptionViewItem, index: _Index) -> QSize:  # noqa: N802 - Qt's name
        """As high as its lines in the width of the view."""
        width = self._view.viewport().width()
        inside = self._laid(what(self._model.copy_at(index.row())), max(1, width - 2 * self.SIDE))[1]
        small = self._line(Role.STATE)
        height = self._head(index.row()) + 2 * (self.ABOVE + self.BETWEEN + small) + math.ceil(inside) + 1
        return QSize(max(1, width), height)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        """Paint the device's name where it begins, then the copy."""
        box, one = QRect(option.rect), self._model.copy_at(index.row())
        painter.save()
        head = self._head(index.row())
        if head:
            self._paint_head(painter, QRect(box.left(), box.top(), box.width(), head), spoken(one.of.title))
        box.setTop(box.top() + head)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        if chosen:
            painter.fillRect(box, self._theme.color("sel"))
            painter.fillRect(QRect(box.left(), box.top(), 4, box.height()), self._theme.color("ink"))
        painter.fillRect(QRect(box.left(), box.bottom(), box.width(), 1), self._theme.color("hair"))
        inside = box.adjusted(self.SIDE, self.ABOVE, -self.SIDE, -self.ABOVE)
        painter.setPen(self._theme.color("ink2"))
        painter.setFont(self._theme.font(Role.STATE))
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), when(one))
        number = QCoreApplication.translate("CopiesList", "no. {number}").format(number=one.copy.number)
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop), number)
        unsettled = one.standing in OPEN
        self._paint_state(painter, inside, state(one), unsettled=unsettled)
        painter.setPen(self._theme.color("ink" if unsettled else "ink2"))
        top = inside.top() + self._line(Role.STATE) + self.BETWEEN
        self._laid(what(one), inside.width())[0].draw(painter, QPointF(inside.left(), top))
        if chosen and self._view.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -1, -2))
        painter.restore()

    def _paint_head(self, painter: QPainter, box: QRect, title: str) -> None:
        painter.setFont(self._theme.font(Role.BODY_STRONG))
        painter.setPen(self._theme.color("ink"))
        inside = box.adjusted(self.SIDE, 0, -self.SIDE, -3)
        shown = painter.fontMetrics().elidedText(title, Qt.TextElideMode.ElideRight, inside.width())
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom), shown)
        painter.fillRect(QRect(box.left(), box.bottom(), box.width(), 1), self._theme.color("rule"))

    def _paint_state(self, painter: QPainter, inside: QRect, words: str, *, unsettled: bool) -> None:
        line = QRect(
            inside.left(), inside.bottom() - self._line(Role.STATE) + 1, inside.width(), self._line(Role.STATE)
        )
        if unsettled:
            radius = self._theme.px(self.RING)
            ring = QRectF(line.left() + 1, line.center().y() - radius + 1, 2 * radius - 1, 2 * radius - 1)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self._theme.color("ink"), 1.6))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(ring)
            line.setLeft(line.left() + 2 * radius + 6)
            painter.setPen(self._theme.color("ink"))
        shown = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, line.width())
        painter.drawText(line, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter), shown)


class CopiesList(QListView):
    """A list that lays itself out in batches."""

    BATCH = 100

    def __init__(self, theme: Theme, model: CopiesModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setVerticalScrollBar(ThinBar(theme))
        self.setModel(model)
        self._delegate = CopiesDelegate(theme, self, model)
        self.setItemDelegate(self._delegate)
        self.setLayoutMode(QListView.LayoutMode.Batched)
        self.setBatchSize(self.BATCH)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Copies by device, the newest first"))
        self.viewport().setAutoFillBackground(False)
        theme.changed.connect(self.scheduleDelayedItemsLayout)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc belongs to the drawer."""
        if event.key() == Qt.Key.Key_Escape:
            event.ignore()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Sentences wrap anew in another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()
