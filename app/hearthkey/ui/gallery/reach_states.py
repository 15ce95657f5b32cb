"""The pages about the way in, in the states that look different."""

from __future__ import annotations

from hearthkey.ui.drawer.forwarding_page import ForwardingPage
from hearthkey.ui.drawer.network_page import NetworkPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL
from hearthkey.ui.window import Window


def network(window: Window) -> None:
    """The plan, with what the householder knows."""
    if not isinstance(window.drawer.page(), NetworkPage):
        window.ways.network_plan.emit()
    page = window.drawer.page()
    if isinstance(page, NetworkPage) and not page.router.text():
        page.router.setText("100.64.7.9")
        page.upload.setText("10")
        page.known.open(shown=False)
        page.table.open(shown=True)
        page.look()


def forwarding(window: Window) -> None:
    """The sheet for a gateway whose address is known."""
    if not isinstance(window.drawer.page(), ForwardingPage):
        window.ways.forwarding.emit()
    page = window.drawer.page()
    if isinstance(page, ForwardingPage) and not page.inside.text():
        page.inside.setText("198.51.100.2")
        page.look()


STATES = {
    "network-plan": (network, PLAIN + SPECIAL[:2]),
    "forwarding-sheet": (forwarding, PLAIN + SPECIAL[:1]),
}
"""What each state is called, and in which looks it is drawn."""
