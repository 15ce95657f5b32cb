"""The desk in its states, without a network: the code, the words, what was picked up, and the last one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.secret import Secret
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.desk.desk import Desk
from hearthkey.ui.desk.turns import Turns
from hearthkey.ui.gallery import pickup_states
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.window import Window

_WORDS = Secret("plum kettle ivory lantern gravel otter quilt")


def desk(window: Window) -> Desk | None:
    """The desk of a window, where it is open."""
    found = window.findChild(Desk)
    return found if isinstance(found, Desk) and found.isVisible() else None


def _seen(window: Window) -> Snapshot:
    snapshot = window.outside.errands.last
    assert snapshot is not None, "scenes begin when the household is open"  # noqa: S101 - a fault of ours, not the world's
    return snapshot


def _table(window: Window) -> list[Pass]:
    """Odile's tablet and Tomasz's laptop, both waiting, as the practice household has them or as it could."""
    passes = _seen(window).passes
    laptop = next(one for one in passes if (one.person, one.device) == ("Tomasz", "laptop"))
    tablet = replace(laptop, person="Odile", device="tablet", kind="android", serial="0d11e")
    return [tablet, laptop]


def _sit(window: Window, *, at: int = 0) -> Desk:
    found = window.findChild(Desk)
    assert isinstance(found, Desk)  # noqa: S101 - a fault of ours, not the world's
    if not found.isVisible():
        found.take_screen()
        found.showNormal()
    table = _table(window)
    found.sitting.seat(table)
    found.sitting.turns = Turns(found.sitting.turns.all, at) if found.sitting.turns is not None else None
    found.sitting.leaving.open(table[at])
    return found


def _show(desk: Desk, side: Side) -> None:
    leaving = desk.sitting.leaving
    leaving.way = WayOut.TICKET
    if side is Side.PASSPHRASE:
        leaving.screen = leaving.screen.ask_passphrase()
        leaving.passphrase = _WORDS
    else:
        leaving.screen = leaving.screen.ask()
    leaving.screen = leaving.screen.answer(leaving.screen.question, side)
    leaving.changed.emit()


def code(window: Window, *events: Event, at: int = 0) -> Desk:
    """A code that nobody has followed yet."""
    found = _sit(window, at=at)
    found.sitting.leaving.pickup.show(pickup_states.open_ticket(), events)
    _show(found, Side.TICKET)
    return found


def computer(window: Window) -> None:
    """The same for a computer, which has the link to type in."""
    code(window, at=1)


def opened(window: Window) -> None:
    """The device has the page open."""
    code(window, Event(Happened.OPENED, pickup_states.AT, "198.51.100.45"))


def covered(window: Window) -> None:
    """The code is covered, and the words are there."""
    _show(code(window), Side.PASSPHRASE)


def _fetched(window: Window) -> Desk:
    found = code(window)
    pickup = found.sitting.leaving.pickup
    pickup.ending = Event(Happened.CLOSED, _seen(window).at, "198.51.100.45", Ending.PICKED_UP)
    pickup.ended.emit(pickup.ending)
    return found


def picked_up(window: Window) -> None:
    """The file is on the device, and the code gone."""
    _fetched(window)


def words(window: Window) -> None:
    """The words after that."""
    _show(_fetched(window), Side.PASSPHRASE)


def typed(window: Window) -> Desk:
    """The words are typed in and covered."""
    found = _fetched(window)
    _show(found, Side.PASSPHRASE)
    found.sitting.act()
    return found


def asking(window: Window) -> None:
    """Going on: does it work?"""
    typed(window).sitting.onward()


def last_one(window: Window) -> None:
    """The last one is done, and was even proved."""
    found = _sit(window)
    turns, at = found.sitting.turns, _seen(window).at
    if turns is None:
        return
    fetched = at - timedelta(minutes=9)
    done = tuple(
        replace(turn, one=replace(turn.one, handed_over=at, proofs=(Proof(at, Way.TOLD),)), picked_up=fetched)
        for turn in turns.all
    )
    found.sitting.turns = Turns(done, 1)
    found.sitting.changed.emit()


def trouble(window: Window) -> None:
    """This computer is not in the Wi-Fi."""
    found = _sit(window)
    found.sitting.leaving.trouble = Refused("ticket-address-none", known=("127.0.0.1",))
    _show(found, Side.TROUBLE)


def big(begin: Callable[[Window], object]) -> Callable[[Window], None]:
    """One of the others, big."""

    def bigger(window: Window) -> None:
        begin(window)
        found = desk(window)
        if found is not None:
            found.sitting.second()

    return bigger
