"""The slots of a template as a list: name, today's value, meaning; Enter or a click takes one."""

from __future__ import annotations

import math

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPen, QResizeEvent, QTextLayout, QTextOption
from PySide6.QtWidgets import QFrame, QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.slot_list import Listed
from hearthkey.core.slots import SlotKind, slots_of
from hearthkey.core.templates import DEVICE, GATEWAY
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()
_KINDS = {slot.name: slot.kind for of in (GATEWAY, DEVICE) for slot in slots_of(of)}


def as_written(name: str) -> str:
    """What stands in the text for a slot: itself, or where that is a list, what makes lines or one line of it."""
    kind = _KINDS.get(name, SlotKind.TEXT)
    if kind is SlotKind.DEVICES:
        return f"{{% for device in {name} %}}\n{{{{ device.identity }}}}\n{{% endfor %}}"
    return f'{{{{ {name}|join(", ") }}}}' if kind is SlotKind.LIST else f"{{{{ {name} }}}}"


class SlotModel(QAbstractListModel):
    """Slots as rows."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._slots: tuple[Listed, ...] = ()

    def show_slots(self, slots: tuple[Listed, ...]) -> None:
        """Show slots; where only their values are others, the list stays where it was."""
        same = [one.name for one in slots] == [one.name for one in self._slots]
        if same:
            self._slots = slots
            self.dataChanged.emit(self.index(0), self.index(len(slots) - 1))
        else:
            self.beginResetModel()
            self._slots = slots
            self.endResetModel()

    def slot(self, row: int) -> Listed:
        """The slot in a row."""
        return self._slots[row]

    def rowCount(self, parent: _Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """How many there are."""
        return 0 if parent.isValid() else len(self._slots)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The name, to be found by typing; for a screen reader value and meaning after it."""
        if not index.isValid():
            return None
        slot = self._slots[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return slot.name
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{slot.name}: {spoken(slot.today)}. {meaning(slot)}"
        return None


def meaning(slot: Listed) -> str:
    """One sentence about a slot."""
    return said(Sentence(slot.meaning, {}))


class SlotDelegate(QStyledItemDelegate):
    """One slot: its name and today's value, its meaning under them."""

    SIDE, ABOVE, BETWEEN = 10, 6, 1

    def __init__(self, theme: Theme, view: SlotList) -> None:
        super().__init__(view)
        self._theme = theme
        self._view = view

    def _meaning(self, slot: Listed, width: int) -> tuple[QTextLayout, float]:
        laid = QTextLayout(meaning(slot), self._theme.font(Role.STATE))
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        laid.setTextOption(option)
        height = 0.0
        laid.beginLayout()
        while (row := laid.createLine()).isValid():
            row.setLineWidth(max(1, width))
            row.setPosition(QPointF(0, height))
            height += row.height()
        laid.endLayout()
        return laid, height

    def _head(self) -> int:
        return math.ceil(self._theme.fonts.metrics(Role.BODY_STRONG).height())

    def sizeHint(self, _option: QStyleOptionViewItem, index: _Index) -> QSize:  # noqa: N802 - Qt's name
        """As high as name and meaning in the width of the view."""
        width = self._view.viewport().width()
        height = self._meaning(self._view.slots_shown.slot(index.row()), width - 2 * self.SIDE)[1]
        return QSize(max(1, width), math.ceil(height) + self._head() + 2 * self.ABOVE + self.BETWEEN + 1)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        """Paint wash, bar, name, value, meaning and the hairline under them."""
        box, slot = QRect(option.rect), self._view.slots_shown.slot(index.row())
        here = index.row() == self._view.currentIndex().row() and self._view.hasFocus()
        painter.save()
        if here:
            painter.fillRect(box, self._theme.color("sel"))
            painter.fillRect(QRect(box.left(), box.top(), 4, box.height()), self._theme.color("ink"))
        elif option.state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(box, self._theme.color("facet"))
        painter.fillRect(QRect(box.left(), box.bottom(), box.width(), 1), self._theme.color("hair"))
        inside = box.adjusted(self.SIDE, self.ABOVE, -self.SIDE, -self.ABOVE)
        self._paint_head(painter, slot, QRect(inside.left(), inside.top(), inside.width(), self._head()))
        painter.setPen(self._theme.color("ink2"))
        top = inside.top() + self._head() + self.BETWEEN
        self._meaning(slot, inside.width())[0].draw(painter, QPointF(inside.left(), top))
        if here:
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRect(box.adjusted(1, 1, -1, -2))
        painter.restore()

    def _paint_head(self, painter: QPainter, slot: Listed, box: QRect) -> None:
        """Name left, value right; what of the value has no room is left out at its end, or for a code in its middle."""
        names, values = self._theme.fonts.metrics(Role.BODY_STRONG), self._theme.fonts.metrics(Role.STATE)
        painter.setFont(self._theme.font(Role.BODY_STRONG))
        painter.setPen(self._theme.color("ink"))
        name = names.elidedText(slot.name, Qt.TextElideMode.ElideRight, box.width())
        flags = int(Qt.AlignmentFlag.AlignVCenter)
        painter.drawText(box, flags | int(Qt.AlignmentFlag.AlignLeft), name)
        left = box.width() - names.horizontalAdvance(name) - 16
        if left > values.horizontalAdvance("00000"):
            painter.setFont(self._theme.font(Role.STATE))
            painter.drawText(
                box,
                flags | int(Qt.AlignmentFlag.AlignRight),
                values.elidedText(spoken(slot.today), Qt.TextElideMode.ElideRight, left),
            )


class SlotList(QListView):
    """The list.

    Signals:
        taken: a slot's name, by Enter or a click.
    """

    taken = Signal(str)

    ROWS = 4.6
    """How many short rows are in sight; the last one cut, so that one sees that it goes on."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.slots_shown = SlotModel(self)
        self.setVerticalScrollBar(ThinBar(theme))
        self.setModel(self.slots_shown)
        self._delegate = SlotDelegate(theme, self)
        self.setItemDelegate(self._delegate)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setMouseTracking(True)
        self.viewport().setAutoFillBackground(False)
        self.viewport().setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAccessibleName(self.tr("Slots; Enter puts one into the text"))
        self.clicked.connect(self._take)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        row = self._theme.fonts.metrics(Role.BODY_STRONG).height() + self._theme.fonts.metrics(Role.STATE).height() + 14
        self.setFixedHeight(round(self.ROWS * row))
        self.scheduleDelayedItemsLayout()

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Narrow, for what it says can be broken anywhere."""
        return QSize(self._theme.px(120), self.minimumHeight())

    def _take(self, index: _Index) -> None:
        if index.isValid():
            self.taken.emit(self.slots_shown.slot(index.row()).name)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter takes; letters find; Esc belongs to the drawer."""
        plain = event.modifiers() in {Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier}
        if plain and event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self._take(self.currentIndex())
        elif event.key() == Qt.Key.Key_Escape or event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            event.ignore()
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Begin at the first one."""
        super().focusInEvent(event)
        if not self.currentIndex().isValid() and self.slots_shown.rowCount():
            self.setCurrentIndex(self.slots_shown.index(0))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Meanings wrap anew in another width."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.scheduleDelayedItemsLayout()
