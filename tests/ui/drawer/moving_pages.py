"""The pages of moving day and of the way in, in the states that look different."""

from __future__ import annotations

from pathlib import Path

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.moving_steps import Kind
from hearthkey.services.moving import MoveRequest
from hearthkey.ui.drawer.forwarding_page import ForwardingPage
from hearthkey.ui.drawer.kinds_page import KindsPage
from hearthkey.ui.drawer.moving_page import MovingPage
from hearthkey.ui.drawer.network_page import NetworkPage
from hearthkey.ui.drawer.way_in_page import WayInPage
from hearthkey.ui.gallery.reach_states import stopped_chain
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.household import FakeErrands

ALL = MoveRequest((Kind.PROVIDER, Kind.ROUTER, Kind.BOX), "door.quince.example", ["192.0.2.0/24"])


def under_way(theme: Theme, errands: FakeErrands, ways: Ways) -> MovingPage:
    """A list of every step there is."""
    errands.begin_move(ALL, errands, lambda _changes: None, _never)
    return MovingPage(theme, errands, ways)


def planning(theme: Theme, errands: FakeErrands, ways: Ways) -> MovingPage:
    """Something is ticked and typed, and looked at."""
    page = MovingPage(theme, errands, ways)
    for new in (Kind.PROVIDER, Kind.HOST, Kind.SUBNET):
        page.ticks[new].setChecked(True)
    page.host.setText("door.quince.example")
    page.home.setText("192.0.2.0/24")
    page.look()
    return page


def network(theme: Theme, errands: FakeErrands, ways: Ways) -> NetworkPage:
    """The plan, all unfolded, with something typed that does not fit."""
    page = NetworkPage(theme, errands, ways)
    page.known.open(shown=True)
    page.table.open(shown=True)
    page.upload.setText("much")
    page.look()
    return page


def forwarding(theme: Theme, errands: FakeErrands, _ways: Ways) -> ForwardingPage:
    """The sheet, with the line of a provider that shares its addresses."""
    page = ForwardingPage(theme, errands, Path("/home/ines"))
    page.router.setText("100.64.0.9")
    page.look()
    return page


def way_in(theme: Theme, errands: FakeErrands, ways: Ways) -> WayInPage:
    """A check from outside that stopped, all unfolded."""
    assert errands.last is not None
    page = WayInPage(theme, errands, ways)
    page.show_chain(stopped_chain(errands.last))
    page.before.open(shown=True)
    return page


def kinds(theme: Theme, errands: FakeErrands, _ways: Ways) -> KindsPage:
    """What is known of a kind, all unfolded."""
    page = KindsPage(theme, errands)
    for fold in page.folds:
        fold.open(shown=True)
    return page


def _never(error: HearthkeyError) -> None:
    raise AssertionError(error)
