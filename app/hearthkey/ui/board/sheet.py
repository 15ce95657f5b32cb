"""Rows that can be taken in hand: by mouse, by keys, by a screen reader."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractItemView, QWidget

from hearthkey.ui.announcing import announce
from hearthkey.ui.board.model import BoardModel, Index
from hearthkey.ui.board.paper import Paper
from hearthkey.ui.board.rows import Column, Event
from hearthkey.ui.board.turning import Turning
from hearthkey.ui.board.typed import Typed
from hearthkey.ui.dates import day
from hearthkey.ui.theme.theme import Theme

Action = QAbstractItemView.CursorAction


class Sheet(Paper):
    """Ruled rows that answer.

    Signals:
        opened: a row is to be opened; its number.
        stepped: its next step is wanted; its number.
        asked: all its actions are wanted; its number, and where on the screen.
        left: Up or Down leads out of the sheet; -1 or 1.
        again: F3.
        zoomed: steps of the zoom, positive for farther.
    """

    opened = Signal(int)
    stepped = Signal(int)
    asked = Signal(int, QPoint)
    left = Signal(int)
    again = Signal()
    zoomed = Signal(int)

    def __init__(self, theme: Theme, model: BoardModel, name: str, parent: QWidget | None = None) -> None:
        super().__init__(theme, model, name, parent)
        self._typed = Typed()
        self._turning = Turning()

    # Mouse

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Wash the row under the mouse; a hand over the next step."""
        self._hover(self.rowAt(event.position().toPoint().y()))
        over = self._steps(event.position().toPoint())
        self.viewport().setCursor(Qt.CursorShape.PointingHandCursor if over else Qt.CursorShape.ArrowCursor)

    def _hover(self, row: int) -> None:
        if row != self.hovered:
            before, self.hovered = self.hovered, row
            self.touch(before)
            self.touch(row)

    def _steps(self, point: QPoint) -> bool:
        index = self.indexAt(point)
        return index.column() == Column.ACTION and self.rows.row(index.row()).step is not None

    def leaveEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Nothing is under the mouse any more."""
        del event
        self._hover(-1)

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Select the row, wherever it is hit."""
        row = self.rowAt(event.position().toPoint().y())
        if row >= 0:
            self.go(row)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """A click on the next step does it; a click elsewhere in the row opens it."""
        point = event.position().toPoint()
        row = self.rowAt(point.y())
        if event.button() != Qt.MouseButton.LeftButton or row < 0 or row != self.chosen():
            return
        if self._steps(point):
            self.stepped.emit(row)
        else:
            self.opened.emit(row)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """The first click has opened the row already."""
        event.accept()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:  # noqa: N802 - Qt's name
        """All actions of a row, at the mouse or at the row."""
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            row, place = self.rowAt(event.pos().y()), event.globalPos()
            if row >= 0:
                self.go(row)
                self.asked.emit(row, place)
        else:
            self._ask_here()

    def _ask_here(self) -> None:
        row = self.currentIndex().row()
        if row >= 0 and self.ruling is not None:
            self.scrollTo(self.currentIndex())
            bottom = self.rowViewportPosition(row) + self.rowHeight(row)
            place = QPoint(round(self.ruling.columns.device.left), bottom)
            self.asked.emit(row, self.viewport().mapToGlobal(place))

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802 - Qt's name
        """With Ctrl the axis comes nearer or goes farther; without, the sheet scrolls."""
        steps = self._turning.steps(event)
        if steps is None:
            super().wheelEvent(event)
            return
        event.accept()
        if steps:
            self.zoomed.emit(steps)

    # Keys

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Rows by Up and Down, a life line by Left and Right, Enter opens, Menu asks."""
        key, row = event.key(), self.currentIndex().row()
        shifted = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in {Qt.Key.Key_Left, Qt.Key.Key_Right}:
            self._walk(-1 if key == Qt.Key.Key_Left else 1)
        elif key in {Qt.Key.Key_Return, Qt.Key.Key_Enter} and row >= 0:
            self.opened.emit(row)
        elif key == Qt.Key.Key_Menu or (key == Qt.Key.Key_F10 and shifted):
            self._ask_here()
        elif key == Qt.Key.Key_F3:
            self.again.emit()
        elif key == Qt.Key.Key_Escape and self.stop is not None:
            self._stand(None)
        elif key == Qt.Key.Key_Down and row == len(self.rows.entries) - 1:
            self.left.emit(1)
        elif key == Qt.Key.Key_Up and row <= 0:
            self.left.emit(-1)
        else:
            super().keyPressEvent(event)

    def moveCursor(self, action: Action, modifiers: Qt.KeyboardModifier) -> QModelIndex:  # noqa: N802 - Qt's name
        """From device to device; never on a name, which stands for several."""
        del modifiers
        end = len(self.rows.entries) - 1
        row = self.currentIndex().row()
        page = max(1, self.viewport().height() // max(1, self.rowHeight(max(0, row))) - 1)
        moves = {
            Action.MoveUp: row - 1,
            Action.MoveDown: row + 1,
            Action.MoveHome: 0,
            Action.MoveEnd: end,
            Action.MovePageUp: row - page,
            Action.MovePageDown: row + page,
        }
        return self.rows.index(min(end, max(0, moves.get(action, row))), self.anchor())

    def keyboardSearch(self, search: str) -> None:  # noqa: N802 - Qt's name
        """Typed letters lead to the next device that begins so, or whose person does."""
        found = self._typed.next(search, self.rows.haystack(), self.currentIndex().row())
        if found is not None:
            self.go(found)

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """The focus is always on a row."""
        super().focusInEvent(event)
        if not self.currentIndex().isValid() and event.reason() != Qt.FocusReason.MouseFocusReason:
            self.go(0)
        self.touch(self.currentIndex().row())

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """The ring goes."""
        super().focusOutEvent(event)
        self.touch(self.currentIndex().row())

    def currentChanged(self, current: Index, previous: Index) -> None:  # noqa: N802 - Qt's name
        """Leave the life line of the row before."""
        super().currentChanged(current, previous)
        self.stop = None
        self.touch(previous.row())
        self.touch(current.row())

    def scrollTo(self, index: Index, hint: object = None) -> None:  # noqa: N802 - Qt's name
        """Up and down only: the sheet is never wider than the window."""
        del hint
        if not index.isValid():
            return
        top, height = self.rowViewportPosition(index.row()), self.rowHeight(index.row())
        bar = self.verticalScrollBar()
        if top < 0:
            bar.setValue(bar.value() + top)
        elif top + height > self.viewport().height():
            bar.setValue(bar.value() + min(top, top + height - self.viewport().height()))

    # Events of a life line

    def event_here(self) -> Event | None:
        """The stop that is being read."""
        row = self.currentIndex().row()
        if row < 0 or self.stop is None:
            return None
        return self.rows.row(row).events[self.stop]

    def _walk(self, step: int) -> None:
        row = self.currentIndex().row()
        if row < 0 or self.ruling is None:
            return
        events = self.rows.row(row).events
        today = next((place for place, one in enumerate(events) if one.at == self.ruling.axis.now), 0)
        at = today if self.stop is None else self.stop
        self._stand(min(len(events) - 1, max(0, at + step)))

    def _stand(self, stop: int | None) -> None:
        self.stop = stop
        self.touch(self.currentIndex().row())
        event = self.event_here()
        if event is not None:
            told_now = f"{day(event.at)}, {event.text}"
            announce(self, told_now)
