"""The tray: the band in which bundles wait until they are handed over."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QPoint, QPointF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QPainter, QPen, QPolygonF, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QMenu, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.bundle import Form
from hearthkey.core.kinds import Kinds
from hearthkey.core.passes import Pass
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.drag import DragOut
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages import ways_out
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.sight import sight
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ticket import RING, TicketCard
from hearthkey.ui.ways import Ways

HIGH = 66
_AT_HAND = (WayOut.TICKET, WayOut.STICK, WayOut.FILE, WayOut.ARCHIVE)
"""The ways that have a button in the band; the menu and the page have all."""


class _Along(Button):
    """Moves the row of cards by one card's width, where more wait than fit."""

    def __init__(self, theme: Theme, name: str, step: int, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", height=26, parent=parent)
        self._step = step
        self.setAccessibleName(name)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as a finger wants it."""
        return QSize(self._theme.px(24) + 2 * self.RING, self._theme.px(26) + 2 * self.RING)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def paintEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the button and an angle on it."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._theme.color("ink" if self.isEnabled() else "disabled"), 1.6))
        x, y, reach = self.width() / 2, self.height() / 2, self._theme.px(4)
        tip = x + self._step * reach / 2
        back = x - self._step * reach / 2
        painter.drawPolyline(QPolygonF([QPointF(back, y - reach), QPointF(tip, y), QPointF(back, y + reach)]))
        painter.end()


class _Row(QScrollArea):
    """The cards side by side; the wheel and the keys move them, no scroll bar takes their room."""

    moved = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Expanding)
        self.horizontalScrollBar().valueChanged.connect(self.moved)
        self.horizontalScrollBar().rangeChanged.connect(self.moved)
        self._inside = QWidget()
        self.cards = QHBoxLayout(self._inside)
        self.cards.setContentsMargins(0, 0, 0, 0)
        self.cards.setSpacing(6)
        self.cards.addStretch(1)
        self.setWidget(self._inside)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """All cards."""
        return self._inside.sizeHint()

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """One card."""
        item = self.cards.itemAt(0)
        first = None if item is None else item.widget()
        return QSize(0 if first is None else first.sizeHint().width(), 0)

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802 - Qt's name
        """Go sideways, whichever way the wheel turns."""
        turn = event.angleDelta().y() or event.angleDelta().x()
        self.go(-turn)
        event.accept()

    def go(self, pixels: int) -> None:
        """Move the cards."""
        bar = self.horizontalScrollBar()
        bar.setValue(bar.value() + pixels)


class Tray(QWidget):
    """The band under the board; it is hidden while nothing waits.

    Signals:
        waits: how many bundles wait, after every look at the household.
    """

    waits = Signal(int)

    def __init__(
        self, theme: Theme, errands: Errands, ways: Ways, runtime: Runtime, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ways = ways
        self.drag = DragOut(errands, runtime, self)
        self._chosen = ""
        self._kinds: Kinds | None = None
        self._cards: dict[str, TicketCard] = {}
        self.setAccessibleName(self.tr("Tray"))
        self._count = Label(theme, Role.STATE, color="ink2")
        self._row = _Row()
        self._row.moved.connect(self._mark_ends)
        self._back = _Along(theme, self.tr("Cards further left"), -1)
        self._on = _Along(theme, self.tr("Cards further right"), 1)
        self._back.clicked.connect(lambda: self._row.go(-theme.px(240)))
        self._on.clicked.connect(lambda: self._row.go(theme.px(240)))
        self.hand_over = Button(theme, self.tr("Hand over …"), height=26)
        self.hand_over.clicked.connect(lambda: self._enter(self._chosen))
        self.desk = Button(theme, self.tr("All at the desk …"), height=26)
        self.desk.clicked.connect(lambda: ways.desk.emit(()))
        self.ways: dict[WayOut, Button] = {}
        for way in _AT_HAND:
            self.ways[way] = Button(theme, ways_out.short(way), height=26)
            self.ways[way].clicked.connect(lambda _on=False, taken=way: self._go(self._chosen, taken))
        self._lay_out()
        theme.changed.connect(self._measure)
        errands.seen.connect(self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)
        self._measure()

    def _lay_out(self) -> None:
        name = QVBoxLayout()
        name.setSpacing(0)
        name.addStretch(1)
        name.addWidget(Label(self._theme, Role.BODY_STRONG, self.tr("Tray")))
        name.addWidget(self._count)
        name.addStretch(1)
        row = QHBoxLayout(self)
        row.setSizeConstraint(QHBoxLayout.SizeConstraint.SetNoConstraint)  # what does not fit is left out by `_fit`
        row.setContentsMargins(20, 1, 17, 0)
        row.setSpacing(4)
        row.addLayout(name)
        row.addSpacing(24 - RING)
        for part in (self._back, self._row, self._on):
            row.addWidget(part, 0, Qt.AlignmentFlag(0) if part is self._row else Qt.AlignmentFlag.AlignVCenter)
        row.addSpacing(14)
        for button in (self.hand_over, *self.ways.values(), self.desk):
            row.addWidget(button)
        row.addStretch(1)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The name, a card and "Hand over"."""
        needed = self._row.minimumSizeHint().width() + self.hand_over.sizeHint().width() + self._theme.px(160)
        return QSize(needed, self._theme.px(HIGH))

    def _measure(self) -> None:
        self.setFixedHeight(self._theme.px(HIGH))
        self._fit()
        self.update()

    # What waits

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show a card for every pass that waits; cards that stay are not touched, nor is the focus."""
        self._kinds = snapshot.kinds
        waiting = sight(snapshot).waiting
        for serial in [serial for serial in self._cards if serial not in waiting]:
            self._take_away(serial)
        for serial, one in waiting.items():
            if serial not in self._cards:
                self._add(one)
        if self._chosen not in self._cards:
            self._choose(next(reversed(self._cards), ""))
            QTimer.singleShot(0, self, self._reveal)
        told = self.tr("{count} waits") if len(waiting) == 1 else self.tr("{count} wait")
        self._count.setText(told.format(count=len(waiting)))
        for card in self._cards.values():
            card.choose(chosen=len(waiting) > 1 and card.one.serial == self._chosen)
        self.setVisible(bool(waiting))
        self._fit()
        QTimer.singleShot(0, self, self._fit)  # a card that was just added is counted once it has been shown
        self.waits.emit(len(waiting))

    def _add(self, one: Pass) -> None:
        card = TicketCard(self._theme, one, self.drag)
        serial = one.serial
        card.clicked.connect(lambda: self._choose(serial))
        card.entered.connect(lambda: self._enter(serial))
        card.menu_wanted.connect(lambda place: self._menu(serial, place))
        card.stepped.connect(lambda step: self._step(serial, step))
        self._cards[serial] = card
        self._row.cards.insertWidget(self._row.cards.count() - 1, card)

    def _take_away(self, serial: str) -> None:
        card = self._cards.pop(serial)
        had_focus = card.hasFocus()
        card.hide()
        card.deleteLater()
        self._row.cards.removeWidget(card)
        self.drag.forget(serial)
        if had_focus:
            self._ways.closed.emit()

    # What is chosen

    def cards(self) -> list[TicketCard]:
        """The cards, from left to right."""
        return list(self._cards.values())

    def chosen(self) -> Pass | None:
        """The pass whose ways are offered."""
        card = self._cards.get(self._chosen)
        return None if card is None else card.one

    def take_focus(self) -> None:
        """Put the focus on the chosen card, for F6."""
        card = self._cards.get(self._chosen)
        if card is not None:
            card.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self._reveal()

    def _reveal(self) -> None:
        """Bring the chosen card into sight, once the cards have their places."""
        card = self._cards.get(self._chosen)
        if card is not None:
            self._row.ensureWidgetVisible(card, 0, 0)

    def _choose(self, serial: str) -> None:
        self._chosen = serial
        one = self.chosen()
        for card in self._cards.values():
            card.choose(chosen=len(self._cards) > 1 and card.one.serial == serial)
        if one is not None:
            for button in (self.hand_over, *self.ways.values()):
                words = button.text().replace(" …", "")
                button.setAccessibleName(f"{words}: {spoken(one.title)}")

    def _step(self, serial: str, step: int) -> None:
        order = list(self._cards)
        there = min(max(order.index(serial) + step, 0), len(order) - 1)
        self._choose(order[there])
        self.take_focus()

    def _enter(self, serial: str) -> None:
        self._choose(serial)
        self._ways.hand_over.emit(serial)

    def _go(self, serial: str, way: WayOut) -> None:
        self._choose(serial)
        self._ways.hand_over_by.emit(serial, way.value)

    def _menu(self, serial: str, place: QPoint) -> None:
        self._choose(serial)
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.addAction(self.tr("Hand over …"), lambda: self._enter(serial))
        if len(self._cards) > 1:
            menu.addAction(self.desk.text(), self.desk.click)
        menu.addSeparator()
        one, kinds = self.chosen(), self._kinds
        for way in WayOut if one is None or kinds is None else ways_out.fitting(kinds.of(one.kind)):
            menu.addAction(ways_out.short(way), partial(self._go, serial, way))
        if one is not None and kinds is not None:
            menu.addSeparator()
            dragged = menu.addMenu(self.tr("Drag it as"))
            for form in map(Form, kinds.of(one.kind).forms):
                action = dragged.addAction(ways_out.form_title(form), partial(self.drag.choose, one, form))
                action.setCheckable(True)
                action.setChecked(form is self.drag.form_of(one))
        menu.popup(place)

    # How it fits

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Make room for the cards first."""
        super().resizeEvent(event)
        self._fit()
        QTimer.singleShot(0, self, self._reveal)

    def _fit(self) -> None:
        """In a narrow window the ways move into the card's menu and the page; "Hand over" stays."""
        self._row.updateGeometry()  # a scroll area does not tell its layout that what is in it has grown
        cards = self._row.minimumSizeHint().width() + self._theme.px(110)
        needed = sum(button.sizeHint().width() + 2 for button in (self.hand_over, *self.ways.values()))
        for button in self.ways.values():
            button.setVisible(cards + needed + 120 <= self.width())
        room = self.width() - cards - 120
        taken = needed if needed <= room else self.hand_over.sizeHint().width()
        self.desk.setVisible(len(self._cards) > 1 and taken + self.desk.sizeHint().width() <= room)
        self._mark_ends()

    def _mark_ends(self) -> None:
        bar = self._row.horizontalScrollBar()
        for button, open_end in ((self._back, bar.value() > bar.minimum()), (self._on, bar.value() < bar.maximum())):
            button.setVisible(bar.maximum() > bar.minimum())
            button.setEnabled(open_end)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """A rule above."""
        painter = QPainter(self)
        painter.fillRect(0, 0, self.width(), 1, self._theme.color("rule"))
        painter.end()
