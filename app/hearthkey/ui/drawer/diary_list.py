"""Paints the diary's entries: the day in the second ink, then the sentence, as high as it needs to be."""

from __future__ import annotations

import math

from PySide6.QtCore import QCoreApplication, QModelIndex, QPersistentModelIndex, QPointF, QRect, QSize, Qt
from PySide6.QtGui import (
    QGuiApplication,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPen,
    QResizeEvent,
    QTextCharFormat,
    QTextLayout,
    QTextOption,
)
from PySide6.QtWidgets import QFrame, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from hearthkey.core.diary_search import spots
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.drawer.diary_model import DiaryModel, when
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_Index = QModelIndex | QPersistentModelIndex


class DiaryDelegate(QStyledItemDelegate):
    """One entry; heights are kept by width, for a long diary asks for them often."""

    SIDE, ABOVE, BETWEEN = 10, 7, 2

    def __init__(self, theme: Theme, view: QListView, model: DiaryModel) -> None:
        super().__init__(view)
        self._theme = theme
        self._view = view
        self._model = model
        self._heights: dict[tuple[int, str], int] = {}
        theme.changed.connect(self._heights.clear)

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

    def _found(self, text: str) -> list[QTextLayout.FormatRange]:
        """A line under the letters that were searched."""
        found = []
        for begin, length in spots(text, self._model.words) if self._model.words else ():
            one = QTextLayout.FormatRange()
            under = QTextCharFormat()
            under.setUnderlineStyle(QTextCharFormat.UnderlineStyle.SingleUnderline)
            under.setUnderlineColor(self._theme.color("qedge"))
            under.setBackground(self._theme.color("sel"))
            one.start, one.length, one.format = begin, length, under
            found.append(one)
        return found

    def _head(self) -> int:
        return math.ceil(self._theme.fonts.metrics(Role.STATE).height())

    def sizeHint(self, _option: QStyleOptionViewItem, index: _Index) -> QSize:  # noqa: N802 - Qt's name
        """As high as day and sentence in the width of the view."""
        width = self._view.viewport().width()
        text = self._model.said(self._model.entry(index.row()))
        key = (width, text)
        if key not in self._heights:
            inside = self._laid(text, max(1, width - 2 * self.SIDE))[1]
            self._heights[key] = math.ceil(inside) + self._head() + 2 * self.ABOVE + self.BETWEEN + 1
        return QSize(max(1, width), self._heights[key])

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        """Paint wash, bar, day, sentence and the hairline under them."""
        box, entry = QRect(option.rect), self._model.entry(index.row())
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        painter.save()
        if chosen:
            painter.fillRect(box, self._theme.color("sel"))
            painter.fillRect(QRect(box.left(), box.top(), 4, box.height()), self._theme.color("ink"))
        painter.fillRect(QRect(box.left(), box.bottom(), box.width(), 1), self._theme.color("hair"))
        inside = box.adjusted(self.SIDE, self.ABOVE, -self.SIDE, -self.ABOVE)
        painter.setFont(self._theme.font(Role.STATE))
        painter.setPen(self._theme.color("ink2"))
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), when(entry))
        number = QCoreApplication.translate("DiaryList", "no. {number}").format(number=entry.number)
        painter.drawText(inside, int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop), number)
        painter.setPen(self._theme.color("ink"))
        top = inside.top() + self._head() + self.BETWEEN
        said = self._model.said(entry)
        laid = self._laid(said, inside.width())[0]
        laid.draw(painter, QPointF(inside.left(), top), self._found(said))
        if chosen and self._view.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRect(box.adjusted(1, 1, -1, -2))
        painter.restore()


class DiaryList(QListView):
    """A list that lays itself out in batches, so that ten thousand entries never hold the window up."""

    BATCH = 100

    def __init__(self, theme: Theme, model: DiaryModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._entries = model
        self.setVerticalScrollBar(ThinBar(theme))
        self.setModel(model)
        self._delegate = DiaryDelegate(theme, self, model)
        self.setItemDelegate(self._delegate)
        self.setLayoutMode(QListView.LayoutMode.Batched)
        self.setBatchSize(self.BATCH)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(self.tr("Entries, newest first"))
        self.viewport().setAutoFillBackground(False)
        theme.changed.connect(self.scheduleDelayedItemsLayout)

    def go(self, step: int) -> int:
        """Go to the next entry or the one before, round the ends; its row, -1 where none is shown."""
        count = self._entries.rowCount()
        if not count:
            return -1
        here = self.currentIndex().row()
        row = (here + step) % count if here >= 0 else 0 if step > 0 else count - 1
        self.setCurrentIndex(self._entries.index(row))
        return row

    def chosen(self) -> str:
        """The chosen entry as a line, or all that are shown."""
        index = self.currentIndex()
        return self._entries.line(self._entries.entry(index.row())) if index.isValid() else self._entries.text()

    def copy(self) -> None:
        """Put what is chosen onto the clipboard; the diary names no secret."""
        QGuiApplication.clipboard().setText(self.chosen())

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl+C copies; Esc belongs to the drawer."""
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy()
        elif event.key() == Qt.Key.Key_Escape:
            event.ignore()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Sentences wrap anew in another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()
