"""The window: it arranges panels, and nothing else."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent, QGuiApplication, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMainWindow, QMenu, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from hearthkey.ui.board.view import BoardView
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.drawer.drawer import Drawer
from hearthkey.ui.drives import Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.footer import Footer
from hearthkey.ui.headline import Headline
from hearthkey.ui.lost.sheet import LostSheet
from hearthkey.ui.masthead import TopRow
from hearthkey.ui.pages.closed import ClosedPage
from hearthkey.ui.pages.founding import FoundingPage
from hearthkey.ui.pages.hand_over import HandOver
from hearthkey.ui.preferences import Memory
from hearthkey.ui.printing.paper_page import PaperPage
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.scrolling import Scrolling
from hearthkey.ui.strip import Strip
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.tray import Tray
from hearthkey.ui.ways import Ways

SMALLEST = (640, 480)
FIRST = (1280, 800)
LOW = 440
"""Logical pixels of height, at normal type, under which the headline says one sentence only and speaks lower."""

LOWEST = 140
"""Logical pixels of height, at normal type, that the board has at least; where there are fewer the sheet scrolls,
and the board is as high as what can be seen of it."""

COVERED_BELOW = 900
"""Logical pixels of width under which an open drawer takes the board's place."""


@dataclass(frozen=True)
class Outside:
    """What the window is given from outside.

    Args:
        tasks: the lane and the pool.
        errands: the household.
        memory: what the window remembers.
        runtime: the folder of one-time files.
        data: the data folder.
        home: where the first file dialog opens.
    """

    tasks: Tasks
    errands: Errands
    memory: Memory
    runtime: Runtime
    data: Path
    home: Path


class Window(QMainWindow):
    """Top row; then one page: the sheet with strip, board, tray and drawer, or another; then the footer.

    Signals:
        practice_wanted: the practice household is to be opened instead.
        leaving: the window is about to close.
    """

    practice_wanted = Signal()
    leaving = Signal()

    def __init__(self, theme: Theme, outside: Outside) -> None:
        super().__init__()
        self.theme = theme
        self.outside = outside
        self.ways = Ways(self)
        self.menu = QMenu(self)
        errands = outside.errands
        self.clipboard = SecretClipboard(QGuiApplication.clipboard(), self)
        self.sticks = Sticks(outside.tasks.pool, self)
        self.top = TopRow(theme, self.ways, self.menu)
        self.headline = Headline(theme, self.ways)
        self.strip = Strip(theme, self.ways)
        self.board = BoardView(theme, self.ways)
        self.tray = Tray(theme, errands, self.ways, outside.runtime)
        self.drawer = Drawer(theme, self.ways)
        self.footer = Footer(theme, self.ways)
        self.hand_over = HandOver(
            theme, errands, self.ways, self.tray.drag, self.clipboard, self.sticks, folder=outside.home
        )
        self.paper = PaperPage(theme, errands, self.ways, folder=outside.home)
        self.founding = FoundingPage(
            theme, errands, self.ways, practice=self.practice_wanted.emit, key_folder=str(outside.data / "keys")
        )
        self.closed = ClosedPage(theme, errands, self.ways)
        self.pages = QStackedWidget()
        self.sheet, self.left = Scrolling(theme), QWidget()
        self._arrange()
        self.lost = LostSheet(theme, errands, self.ways, self.centralWidget())
        self.drawer.came.connect(self.make_room)
        self.drawer.went.connect(self.make_room)
        self.tray.waits.connect(self._give_height)
        self.sheet.resized.connect(self._give_height)
        theme.changed.connect(self.make_room)
        self.setMinimumSize(*SMALLEST)
        self.resize(*FIRST)
        self.restoreGeometry(outside.memory.place())

    def _arrange(self) -> None:
        column = QVBoxLayout(self.sheet.contents)
        beside, under = QHBoxLayout(), QVBoxLayout(self.left)
        self.board.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        under.addWidget(self.board, 1)
        under.addWidget(self.tray)
        beside.addWidget(self.left, 1)
        beside.addWidget(self.drawer, 0, Qt.AlignmentFlag.AlignRight)
        for part in (self.headline, self.strip):
            column.addWidget(part)
        column.addLayout(beside, 1)
        for page in (self.sheet, self.hand_over, self.paper, self.founding, self.closed):
            self.pages.addWidget(page)
        whole = QWidget()
        rows = QVBoxLayout(whole)
        rows.addWidget(self.top)
        rows.addWidget(self.pages, 1)
        rows.addWidget(self.footer)
        for layout in (column, beside, under, rows):
            layout.setContentsMargins(0, 0, 0, 0)
            layout.setSpacing(0)
        self.setCentralWidget(whole)

    def regions(self) -> list[QWidget]:
        """What F6 walks through, in order."""
        page = self.pages.currentWidget()
        if page is not None and page is not self.sheet:
            return [self.top, page, self.footer]
        return [self.top, self.headline, self.strip, self.board, self.tray, self.drawer, self.footer]

    def turn_to(self, page: QWidget) -> None:
        """Show a page."""
        if self.pages.currentWidget() is not page:
            self.pages.setCurrentWidget(page)
        self.make_room()

    def make_room(self) -> None:
        """The board gives up its last column, then its place, to an open drawer; in a low window the rest does too."""
        low = self.height() < self.theme.px(LOW)
        self.headline.abridge(short=low)
        self.board.set_compact(compact=self.drawer.is_open)
        covered = self.drawer.is_open and self.width() < self.theme.px(COVERED_BELOW)
        self.drawer.fit(self.width() if covered else self.width() - self.theme.px(300), whole=covered)
        self.left.setVisible(not covered)
        for part in (self.headline, self.strip):
            part.setVisible(not (covered and low))

    def _give_height(self) -> None:
        room, least = self.sheet.viewport().height(), self.theme.px(LOWEST)
        around = self.headline.heightForWidth(self.width()) + self.strip.height()
        around += 0 if self.tray.isHidden() else self.tray.height()
        self.board.setMinimumHeight(least if around + least <= room else max(least, room))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Make room anew."""
        super().resizeEvent(event)
        self.make_room()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc that nobody else took leads back to the board."""
        if event.key() == Qt.Key.Key_Escape:
            self.ways.back.emit()
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802 - Qt's name
        """Remember the place, tidy, lock; nothing is asked and nothing lost."""
        self.outside.memory.keep_place(self.saveGeometry())
        self.leaving.emit()
        self.hide()
        self.clipboard.clear()
        self.outside.runtime.tidy()
        self.outside.errands.close()
        event.accept()
