"""A page of the drawer: title, content that scrolls, a last row that stays."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import chain

from PySide6.QtCore import QCoreApplication, Qt, Signal, SignalInstance
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QFrame, QHBoxLayout, QLayout, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme

INSET = 22
"""Pixels between the drawer's edge and what is in it, at any size of type."""

RING = Button.RING
"""A button keeps this much free all round for its focus ring, so what aligns with it gives way."""


class Page(QWidget):
    """One page.

    `body` takes the content, `foot` the last row; a page lives on while it is not shown, with
    everything that was typed.

    Args:
        reads: there is nothing on it but text, so the text itself takes the focus and scrolls.

    Signals:
        leave: the page is done; whoever shows it closes it.
    """

    leave = Signal()

    HEAD = 0.3
    """The most of its height that a page gives to its title."""

    LOW = 200
    """Below this height, in pixels at normal type, nothing but the title stays while the rest scrolls."""

    def __init__(self, theme: Theme, title: str, *, reads: bool = False, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self._show: Callable[[Snapshot], None] | None = None
        self._missed: Snapshot | None = None
        self.sign = SignLabel(theme, Sign.DRAFT)
        self.sign.hide()
        self.title = Prose(theme, Role.TITLE)
        self._long_title = Prose(theme, Role.TITLE)
        self.close_button = Button(
            theme, QCoreApplication.translate("Page", "Close"), kind=Kind.WORD, hint="Esc", height=26
        )
        self.close_button.clicked.connect(self.leave)
        self.content = QWidget()
        self.body = QVBoxLayout(self.content)
        self.body.setContentsMargins(INSET - RING, 0, INSET - RING - ThinBar.WIDTH, 12)
        self.body.setSpacing(12)
        self.roll = _scroll(theme, self.content)
        self.roll.setFocusPolicy(Qt.FocusPolicy.StrongFocus if reads else Qt.FocusPolicy.NoFocus)
        self._foot = QWidget()
        self.foot = QVBoxLayout(self._foot)
        self.foot.setContentsMargins(INSET - RING, 0, INSET - RING, 12)
        self.foot.setSpacing(8)
        self.foot.addLayout(inset(Rule(theme, color="rule")))
        self._foot.hide()
        self._stand()
        self.entitle(title)

    def _stand(self) -> None:
        head = QHBoxLayout()
        head.setContentsMargins(INSET, 14, INSET - RING, 6)
        head.setSpacing(8)
        top = Qt.AlignmentFlag.AlignTop
        head.addWidget(self.sign, 0, Qt.AlignmentFlag.AlignVCenter)
        head.addWidget(self.title, 1, Qt.AlignmentFlag.AlignVCenter)
        head.addStretch(0)
        head.addWidget(self.close_button, 0, top)
        self.put(self._long_title)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self.roll, 1)
        column.addWidget(self._foot)
        self._column = column

    def fill(self, *rows: QLayout) -> None:
        """Have these rows instead of content that scrolls; the last one takes the height that is left."""
        self.roll.hide()
        for number, row in enumerate(rows):
            self._column.insertLayout(1 + number, row, int(number == len(rows) - 1))

    def put(self, *parts: QWidget) -> None:
        """Add text, rules and the like to the body, flush with the title."""
        for part in parts:
            self.body.addLayout(inset(part))

    def entitle(self, title: str, sign: Sign | None = None) -> None:
        """Show a title, behind a sign where the page is about something with a state."""
        for label in (self.title, self._long_title):
            label.speak(title)
        self.setAccessibleName(title)
        self.roll.setAccessibleName(title)
        self.sign.setVisible(sign is not None)
        if sign is not None:
            self.sign.show_sign(sign)
            self.sign.setAccessibleName(sign.value)
        self._place_title()

    def _place_title(self) -> None:
        """A title that would take the page for itself scrolls with the content."""
        beside = self.close_button.sizeHint().width() + self.sign.sizeHint().width() + 2 * INSET
        long = self.title.heightForWidth(max(1, self.width() - beside)) > self.height() * self.HEAD
        self.title.setVisible(not long)
        self._long_title.setVisible(long and self.roll.isVisibleTo(self))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Find the places for the title and for the last row."""
        super().resizeEvent(event)
        self._place_title()
        self._place_foot()

    def _place_foot(self) -> None:
        """On a low page the last row scrolls with the content, for it would leave that no room."""
        rolls = self.height() < self.theme.px(self.LOW) and self.roll.isVisibleTo(self)
        if rolls == self.content.isAncestorOf(self._foot):
            return
        side, holder = (0, self.body) if rolls else (INSET - RING, self._column)
        self.foot.setContentsMargins(side, 0, side, 0 if rolls else 12)
        focus, shown = QApplication.focusWidget(), not self._foot.isHidden()
        holder.addWidget(self._foot)
        self._foot.setVisible(shown)
        if focus is not None and self._foot.isAncestorOf(focus):  # which a new parent has taken from it
            focus.setFocus()

    def show_foot(self, *, shown: bool = True) -> None:
        """Show the last row, or leave its room to the content."""
        self._foot.setVisible(shown)

    def first(self) -> QWidget:
        """The control that gets the focus when the page is opened."""
        for control in chain(_stops(self.content), _stops(self)):
            if control.isVisibleTo(self) and control.isEnabled() and control is not self.close_button:
                return control
        return self.close_button

    def follow(self, seen: SignalInstance, show: Callable[[Snapshot], None]) -> None:
        """Show every look at the household, but while the page cannot be seen only remember the last.

        Args:
            seen: tells of a look.
            show: shows one.
        """
        self._show = show
        seen.connect(self._hear)

    def _hear(self, snapshot: Snapshot) -> None:
        if self.isVisible() and self._show is not None:
            self._show(snapshot)
        else:
            self._missed = snapshot

    def catch_up(self) -> None:
        """Show the look that came while the page could not be seen."""
        missed, self._missed = self._missed, None
        if missed is not None and self._show is not None:
            self._show(missed)

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Catch up."""
        self.catch_up()
        super().showEvent(event)

    def opened(self) -> None:
        """The page has come to stand in the drawer; pages that show something new each time say so here."""

    def closed(self) -> None:
        """The page has left the drawer."""


class Roll(QScrollArea):
    """Content that scrolls; where it is read rather than filled in, it shows that it has the focus."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Paint a bar of ink beside the content while it has the focus."""
        super().paintEvent(event)
        if self.hasFocus():
            painter = QPainter(self.viewport())
            painter.fillRect(INSET - 12, 0, 2, self.viewport().height(), self._theme.color("ink"))
            painter.end()

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Show the bar."""
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Take the bar away."""
        super().focusOutEvent(event)
        self.viewport().update()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Home and End too; Esc belongs to the drawer."""
        bar = self.verticalScrollBar()
        if event.key() in {Qt.Key.Key_Home, Qt.Key.Key_End}:
            bar.setValue(bar.minimum() if event.key() == Qt.Key.Key_Home else bar.maximum())
        else:
            super().keyPressEvent(event)


def tab_stops(inside: QWidget) -> list[QWidget]:
    """The controls in a widget that the Tab key stops at, in the order of its window."""
    return list(_stops(inside))


def _stops(inside: QWidget) -> Iterator[QWidget]:
    start = inside.window()
    control = start.nextInFocusChain()
    while control is not None and control is not start:
        tabs = bool(control.focusPolicy() & Qt.FocusPolicy.TabFocus)
        if tabs and inside.isAncestorOf(control) and control.focusProxy() is None:
            yield control
        control = control.nextInFocusChain()


def inset(part: QWidget) -> QHBoxLayout:
    """A part that keeps no room for a focus ring of its own, moved in to stand flush with those that do."""
    row = QHBoxLayout()
    row.setContentsMargins(RING, 0, RING, 0)
    row.addWidget(part)
    return row


def _scroll(theme: Theme, content: QWidget) -> Roll:
    area = Roll(theme)
    area.setVerticalScrollBar(ThinBar(theme))
    area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)  # in the margin, so nothing wraps anew
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(content)
    content.setAutoFillBackground(False)
    area.viewport().setAutoFillBackground(False)
    content.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    return area
