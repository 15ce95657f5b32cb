"""Leads to the page that brings a household back, and to the one that puts its key on paper."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from hearthkey.ui.drawer_pages import DrawerPages
from hearthkey.ui.printing.key_paper_page import KeyPaperPage
from hearthkey.ui.restoring.page import RestorePage
from hearthkey.ui.window import Window


class ComingBack(QObject):
    """Both pages of one window."""

    def __init__(self, window: Window, pages: DrawerPages) -> None:
        super().__init__(window)
        self._window = window
        theme, outside = window.theme, window.outside
        self.restoring = RestorePage(theme, outside.errands, outside.home, key_folder=str(outside.data / "keys"))
        self.paper = KeyPaperPage(theme, outside.errands, folder=outside.home)
        for page in self.pages:
            window.pages.addWidget(page)
            page.left.connect(self._leave)
        window.ways.restore.connect(self._restore)
        window.ways.back.connect(self._back)
        self.restoring.gateway_wanted.connect(self._gateway)
        self.paper.told.connect(window.footer.say)
        pages.sealed.paper_wanted.connect(self._paper)

    @property
    def pages(self) -> tuple[RestorePage, KeyPaperPage]:
        """Both pages."""
        return (self.restoring, self.paper)

    @property
    def keeps_the_window(self) -> bool:
        """Whether the page stays where there is no household yet, or has just come back."""
        return self._window.pages.currentWidget() is self.restoring

    @property
    def gives_way(self) -> bool:
        """Whether one of them stands where the drawer is wanted now; without a household there is no drawer."""
        page = self._window.pages.currentWidget()
        return page is self.paper or (page is self.restoring and self.restoring.sheet.done)

    def spot(self) -> str:
        """Which help belongs to what is open; empty where neither page is."""
        return "sealed" if self._window.pages.currentWidget() in self.pages else ""

    def _restore(self) -> None:
        self._window.turn_to(self.restoring)
        self.restoring.begin()

    def _paper(self) -> None:
        self._window.drawer.shut()
        self._window.turn_to(self.paper)
        self.paper.open()

    def _back(self) -> None:
        """Esc, unless something lies over the page."""
        if self._window.pages.currentWidget() in self.pages and not self._window.lost.isVisible():
            self._leave()

    def _leave(self) -> None:
        window, last = self._window, self._window.outside.errands.last
        founded = last is not None and last.household is not None
        before: QWidget = window.sheet if founded else window.founding
        window.turn_to(before)
        if founded:
            window.board.setFocus()
        else:
            window.founding.so_far.restore.setFocus()

    def _gateway(self, on_paper: bool) -> None:  # noqa: FBT001 - what a signal carries
        self._leave()
        (self._window.ways.gateway_place if on_paper else self._window.ways.gateway).emit()
