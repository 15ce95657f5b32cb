"""The top row of the window: whose house it is, and what can be done at once."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSizePolicy, QStackedWidget, QWidget

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class NameButton(Button):
    """The household's name; it opens the household's menu."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, "Hearthkey", kind=Kind.PLAIN, parent=parent)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)

    LEAST = 90
    """Pixels at normal type that a long name keeps; the whole of it is in the tool tip and for a screen reader."""

    def say(self, text: str) -> None:
        """Show another name."""
        super().say(text)
        self.setToolTip(text)

    def _dress(self) -> None:
        super()._dress()
        self.setFont(self._theme.font(Role.PERSON))

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The name and the mark that says there is a menu."""
        wide = self.fontMetrics().horizontalAdvance(self.text())
        return QSize(wide + self._theme.px(30) + 2 * self.RING, self._theme.px(30) + 2 * self.RING)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A long name gives way."""
        return QSize(min(self.sizeHint().width(), self._theme.px(self.LEAST)), self.sizeHint().height())

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the name without a box, and a small angle after it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect()).adjusted(self.RING, 0, -self.RING, 0)
        painter.setFont(self.font())
        painter.setPen(self._theme.color("ink"))
        room = round(box.width()) - self._theme.px(24)
        name = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room)
        painter.drawText(box, int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), name)
        x, y = box.right() - self._theme.px(12), box.center().y() + 1
        painter.setPen(QPen(self._theme.color("ink"), 1.6))
        painter.drawPolyline(
            [QPoint(round(x - 4), round(y - 2)), QPoint(round(x), round(y + 2)), QPoint(round(x + 4), round(y - 2))]
        )
        if self.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 3, -1, -3), 3, 3)
        painter.end()


class Stamp(Label):
    """The frame around "practice household"."""

    def __init__(self, theme: Theme, text: str, parent: QWidget | None = None) -> None:
        super().__init__(theme, Role.SMALL_STRONG, text, color="ink2", parent=parent)
        self.setContentsMargins(7, 1, 7, 2)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def paintEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Paint frame and text."""
        painter = QPainter(self)
        painter.setPen(QPen(self._theme.color("ink2"), 1))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3)
        painter.end()
        super().paintEvent(event)  # type: ignore[arg-type]  # Qt hands a paint event on


class FindField(Line):
    """What is typed into Find.

    Signals:
        wanted: the text to look for.
        onward: go to the next match.
        given_up: Esc.
    """

    wanted = Signal(str)
    onward = Signal()
    given_up = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent=parent)
        self.setAccessibleName(self.tr("Find a person or a device"))
        self.setPlaceholderText(self.tr("person or device"))
        self.setFixedWidth(theme.px(200))
        self.textChanged.connect(self.wanted)
        self.returnPressed.connect(self.onward)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc gives up; F3 and Down go on."""
        if event.key() == Qt.Key.Key_Escape:
            self.given_up.emit()
        elif event.key() in {Qt.Key.Key_F3, Qt.Key.Key_Down}:
            self.onward.emit()
        else:
            super().keyPressEvent(event)


GAP = 6
EDGES = 40
"""Pixels that the row's margins take, with a little air."""


class TopRow(QWidget):
    """Name, stamp, and the three things that are always at hand."""

    def __init__(self, theme: Theme, ways: Ways, menu: QMenu, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._ways = ways
        self._menu = menu
        self.name = NameButton(theme)
        self.name.clicked.connect(self._open_menu)
        self.stamp = Stamp(theme, self.tr("practice household"))
        self.seeing_only = Stamp(theme, self.tr("looking only"))
        self.new_device = Button(theme, self.tr("&New device"), hint=self.tr("Ctrl+N"))
        self.new_device.clicked.connect(lambda: ways.new_device.emit(""))
        self.find_button = Button(theme, self.tr("Find"), hint=self.tr("Ctrl+F"))
        self.find_button.clicked.connect(ways.find)
        self.field = FindField(theme)
        self.field.given_up.connect(self.end_find)
        self.lost = Button(theme, self.tr("Lost or stolen"), kind=Kind.HEAVY, hint=self.tr("Ctrl+L"), sign=Sign.STOPPED)
        self.lost.clicked.connect(lambda: ways.lost.emit(""))
        self._finder = QStackedWidget()
        self._finder.addWidget(self.find_button)
        self._finder.addWidget(self.field)
        self._finder.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        row = QHBoxLayout(self)
        row.setContentsMargins(17, 6, 17, 0)
        row.setSpacing(6)
        row.addWidget(self.name)
        row.addWidget(self.stamp)
        row.addWidget(self.seeing_only)
        row.addStretch(1)
        for widget in (self.new_device, self._finder, self.lost):
            row.addWidget(widget)
        self._practice = self._founded = False
        self._buttons = (self.lost, self.new_device, self.find_button)
        self._theme = theme
        theme.changed.connect(self._measure)
        self.end_find()

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """What is left when everything that can be left out is: the row never widens the window."""
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Leave out what there is no room for."""
        super().resizeEvent(event)
        self._measure()

    def _measure(self) -> None:
        """In a narrow window the keys go first, then the stamp, then what stands in the household's menu too.

        What stays is worked out first and shown then: showing a part makes the row be laid out at once.
        """
        self.field.setFixedWidth(self._theme.px(200))
        finding = self._finder.currentWidget() is self.field
        name, least = self.name.sizeHint().width(), self.name.minimumSizeHint().width()
        marks = 0 if self.seeing_only.isHidden() else self.seeing_only.sizeHint().width() + GAP
        stamp = self.stamp.sizeHint().width() + GAP if self._practice else 0
        long, short = ([one.width_with(key=key) + GAP for one in self._buttons] for key in (True, False))
        room = self.width() - marks - EDGES
        keys = name + stamp + sum(long) <= room
        widths = long if keys else short
        stamped = self._practice and least + stamp + sum(widths) <= room
        lost, new, find = widths
        with_new = least + lost + new <= room
        with_find = finding or least + lost + (new if with_new else 0) + find <= room
        for button in self._buttons:
            button.abridge(short=not keys)
        self._finder.setFixedWidth(self.field.width() if finding else self.find_button.sizeHint().width())
        shown = ((self.stamp, stamped), (self.new_device, with_new and self._founded))
        for part, on in (*shown, (self._finder, with_find and self._founded), (self.lost, self._founded)):
            if part.isHidden() is on:
                part.setVisible(on)

    def _open_menu(self) -> None:
        self._menu.popup(self.name.mapToGlobal(QPoint(0, self.name.height())))

    def begin_find(self) -> None:
        """Turn the button into a field, with the cursor in it."""
        self._finder.setCurrentWidget(self.field)
        self._measure()
        self.field.setFocus()
        self.field.selectAll()

    def end_find(self) -> None:
        """Turn it back."""
        had_focus = self.field.hasFocus()
        self.field.clear()
        self._finder.setCurrentWidget(self.find_button)
        self._measure()
        if had_focus:
            self._ways.closed.emit()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Say whose house it is."""
        household = snapshot.household
        self.name.say("Hearthkey" if household is None else household.name)
        self._practice = household is not None and household.practice
        self.seeing_only.setVisible(snapshot.read_only)
        self._founded = household is not None
        self.new_device.setEnabled(not snapshot.read_only)
        self._measure()
