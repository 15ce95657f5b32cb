"""The drawer at the right: one page at a time, straight in and straight out."""

from __future__ import annotations

import shiboken6
from PySide6.QtCore import QEasingCurve, QSize, Qt, QVariantAnimation, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import QApplication, QFrame, QSizePolicy, QStackedWidget, QWidget

from hearthkey.ui.drawer.page import Page
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class Drawer(QFrame):
    """Shows a page beside the board.

    It takes `full_width()` from the layout it stands in; what is in it is laid out at that width
    from the first moment, so nothing wraps anew while it moves.

    Signals:
        came: a page stands open now.
        went: it is shut.
    """

    came = Signal()
    went = Signal()

    WIDTH = 412
    LOWEST = 140
    SPINE = 2
    MILLISECONDS = 140

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ways = ways
        self._room = 0
        self._whole = False
        self._shown = 0
        self._from: QWidget | None = None
        self._pages = QStackedWidget(self)
        self._slide = QVariantAnimation(self)
        self._slide.setDuration(self.MILLISECONDS)
        self._slide.setEasingCurve(QEasingCurve.Type.Linear)
        self._slide.valueChanged.connect(self._moved)
        self._slide.finished.connect(self._arrived)
        self.is_open = False
        self.setAccessibleName(self.tr("Drawer"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.hide()
        theme.changed.connect(self._measure)

    def fit(self, room: int, *, whole: bool = False) -> None:
        """Learn how wide it may be at most; 0 leaves it to the type.

        Args:
            whole: nothing stands beside it, so it takes all of its room.
        """
        if (room, whole) != (self._room, self._whole):
            self._room, self._whole = room, whole
            self._measure()

    def full_width(self) -> int:
        """How wide it is when it is open: 412 px at normal type and never wider than its room, or all of it."""
        wanted = self._theme.px(self.WIDTH)
        if not self._room:
            return wanted
        return self._room if self._whole else min(wanted, self._room)

    def page(self) -> Page | None:
        """The page that stands open, or None."""
        page = self._pages.currentWidget()
        return page if self.is_open and isinstance(page, Page) else None

    def open(self, page: Page) -> None:
        """Show a page and put the focus into its first control."""
        before = self.page()
        if before is None:
            self._from = QApplication.focusWidget()
        elif before is not page:
            before.closed()
        if self._pages.indexOf(page) < 0:
            self._pages.addWidget(page)
            page.leave.connect(self.shut)
        page.catch_up()  # before it is seen: rows made in the middle of that come too late to take the focus
        self._pages.setCurrentWidget(page)
        self.is_open = True
        self.show()
        self._go(self.full_width())
        if before is not page:
            page.opened()
        page.first().setFocus(Qt.FocusReason.OtherFocusReason)
        self.came.emit()

    def shut(self) -> None:
        """Close; the page keeps what was typed, and the focus goes back to where it came from."""
        page = self.page()
        if page is None:
            return
        self.is_open = False
        self._go(0)
        page.closed()
        back = self._from
        self._from = None
        if back is not None and shiboken6.isValid(back) and back.isVisible() and not self.isAncestorOf(back):
            back.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._ways.closed.emit()
        self.went.emit()

    def _go(self, width: int) -> None:
        self._slide.stop()
        if self._theme.still or not self.isVisible() or width == self._shown:
            self._moved(width)
            self._arrived()
            return
        self._slide.setStartValue(self._shown)
        self._slide.setEndValue(width)
        self._slide.start()

    def _moved(self, width: int) -> None:
        self._shown = width
        self.setFixedWidth(max(1, width))

    def _arrived(self) -> None:
        if not self.is_open:
            self.hide()

    def _measure(self) -> None:
        if self.is_open:
            self._slide.stop()
            self._moved(self.full_width())
        self._place()
        self.update()

    def _place(self) -> None:
        self._pages.setGeometry(self.SPINE, 0, self.full_width() - self.SPINE, self.height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Keep the page as wide as the open drawer while it moves."""
        super().resizeEvent(event)
        self._place()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as it is at this moment."""
        return QSize(max(1, self._shown), self._theme.px(self.LOWEST))

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc closes."""
        if event.key() == Qt.Key.Key_Escape:
            self.shut()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the raised ground and the spine of ink."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("raised"))
        painter.fillRect(0, 0, self.SPINE, self.height(), self._theme.color("ink"))
        painter.end()
