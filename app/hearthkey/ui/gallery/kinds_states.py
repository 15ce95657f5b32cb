"""Kinds of devices in their states: one that is known, and a correction with a mistake."""

from __future__ import annotations

from hearthkey.ui.drawer.kinds_page import KindsPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL
from hearthkey.ui.window import Window


def _page(window: Window) -> KindsPage | None:
    if not isinstance(window.drawer.page(), KindsPage):
        window.ways.kinds.emit()
    page = window.drawer.page()
    return page if isinstance(page, KindsPage) else None


def known(window: Window) -> None:
    """What is known of a phone, and what goes wrong there."""
    page = _page(window)
    if page is not None:
        page.which.take("android")
        page.folds[1].open(shown=True)


def correcting(window: Window) -> None:
    """Its text, once it is there."""
    page = _page(window)
    if page is not None:
        page.begin()


def mistaken(window: Window) -> None:
    """The text with a word in it that nobody obeys."""
    page = _page(window)
    if page is not None:
        page.text.show_text(page.text.toPlainText().replace("tried = false", "tired = false"))
        page.look()


STATES = {
    "kinds": (known, PLAIN[:2] + SPECIAL[:1]),
    "kinds-correcting": (correcting, PLAIN[:1]),
    "kinds-mistake": (mistaken, PLAIN[:2]),
}
"""What each state is called, and in which looks it is drawn."""
