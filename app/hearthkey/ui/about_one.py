"""Leads to what is about one device beside its page: paper and words, and the proof."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from hearthkey.ui.actions import Actions
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer_pages import DrawerPages
from hearthkey.ui.printing.key_paper_page import KeyPaperPage
from hearthkey.ui.printing.paper_page import PaperPage
from hearthkey.ui.window import Window


class AboutOne(QObject):
    """Answers ways and keys that mean one device.

    Args:
        open_page: opens a page of the drawer.
    """

    def __init__(self, window: Window, pages: DrawerPages, actions: Actions, open_page: Callable[[Page], None]) -> None:
        super().__init__(window)
        self._window, self._pages, self._open = window, pages, open_page
        window.ways.paper.connect(self._paper)
        window.ways.prove.connect(self._prove)
        actions.paper.connect(self._paper_of_selected)
        actions.prove.connect(self._prove_selected)

    def _paper(self, serial: str) -> None:
        self._window.drawer.shut()
        self._window.turn_to(self._window.paper)
        self._window.paper.open(serial)

    def _paper_of_selected(self) -> None:
        """Ctrl+P: print what is shown, or show what can be printed for the device that is selected."""
        window, one = self._window, self._window.board.selected()
        page = window.pages.currentWidget()
        if isinstance(page, PaperPage | KeyPaperPage):
            page.print()
        elif window.pages.currentWidget() is window.hand_over and window.hand_over.leaving.chosen is not None:
            self._paper(window.hand_over.leaving.chosen.serial)
        elif one is not None:
            self._paper(one.serial)

    def _prove(self, serial: str) -> None:
        snapshot, proof = self._window.outside.errands.last, self._pages.proof
        one = next((one for one in snapshot.passes if one.serial == serial), None) if snapshot is not None else None
        if one is not None:
            if serial != proof.serial() or self._window.drawer.page() is not proof:
                proof.show_pass(one)
            self._open(proof)

    def _prove_selected(self) -> None:
        """The device whose page stands open, or whose row is selected."""
        page = self._window.drawer.page()
        one = self._pages.device.newest() if page is self._pages.device else self._window.board.selected()
        if one is not None and page is not self._pages.proof:
            self._prove(one.serial)
