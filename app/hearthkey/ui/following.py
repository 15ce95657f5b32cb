"""Leads to what follows: renewals, another device in the place of one, and somebody's leaving."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from hearthkey.ui.actions import Actions
from hearthkey.ui.drawer.another_page import AnotherPage
from hearthkey.ui.drawer.leave_page import LeavePage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.renew_page import RenewPage
from hearthkey.ui.drawer_pages import DrawerPages
from hearthkey.ui.window import Window


class Following(QObject):
    """Answers the ways and the key that mean a renewal or its like, with pages of its own.

    Args:
        open_page: opens a page of the drawer.
    """

    def __init__(self, window: Window, pages: DrawerPages, actions: Actions, open_page: Callable[[Page], None]) -> None:
        super().__init__(window)
        self._window, self._pages, self._open = window, pages, open_page
        theme, errands, ways = window.theme, window.outside.errands, window.ways
        self.renew = RenewPage(theme, errands, ways)
        self.another = AnotherPage(theme, errands, ways)
        self.leave = LeavePage(theme, errands)
        for page in (self.renew, self.another, self.leave):
            pages.more_spots[page] = "renewing"
        ways.renew.connect(self._renew)
        ways.another.connect(self._another)
        ways.leaves.connect(self._leave)
        actions.renew.connect(self._renew_selected)

    def _renew(self, identity: str) -> None:
        self.renew.begin(identity)
        self._open(self.renew)

    def _renew_selected(self) -> None:
        """Ctrl+R: the device whose page stands open, or whose row is selected; with neither, a round."""
        page = self._window.drawer.page()
        one = self._pages.device.newest() if page is self._pages.device else self._window.board.selected()
        if page is not self.renew:
            self._renew("" if one is None else one.identity)

    def _another(self, identity: str) -> None:
        self.another.begin(identity)
        self._open(self.another)

    def _leave(self, person: str) -> None:
        self.leave.begin(person)
        self._open(self.leave)
