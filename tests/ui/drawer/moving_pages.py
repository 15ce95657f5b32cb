"""The page of moving day in the states that look different."""

from __future__ import annotations

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.moving import Kind
from hearthkey.services.moving import MoveRequest
from hearthkey.ui.drawer.moving_page import MovingPage
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


def _never(error: HearthkeyError) -> None:
    raise AssertionError(error)
