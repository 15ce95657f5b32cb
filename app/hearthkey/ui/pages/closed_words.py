"""What is shut, what works meanwhile and what has to wait: the closed page as values."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import State
from hearthkey.core.sentences import doors, errors
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.dates import day
from hearthkey.ui.text import mended, said

Lines = tuple[tuple[str, str], ...]
"""What is meant, stressed, and a fact about it."""


@dataclass(frozen=True)
class Closed:
    """The page in words.

    Args:
        headline, means: at the top.
        works, waits: the two columns.
        cause: the way on, or what was seen.
        go_on: the word for going on to the board; empty where there is none.
        again: whether trying again can change anything.
    """

    headline: str
    means: str
    works: Lines
    waits: Lines
    cause: str
    go_on: str
    again: bool = True


def _tr(text: str) -> str:
    return QCoreApplication.translate("ClosedPage", text)


def state_of(snapshot: Snapshot) -> str:
    """What is shut, by the key of its sentences; empty where nothing is."""
    if snapshot.door not in {Door.READY, Door.NO_HOUSEHOLD} and snapshot.locked:
        return snapshot.door.value
    if snapshot.read_only:
        return "only-looking"
    return "diary-broken" if snapshot.diary_misfit is not None else ""


def closed(snapshot: Snapshot) -> Closed | None:
    """What the page says of a household; None where nothing is shut."""
    state = state_of(snapshot)
    told = doors.shut(state, number=snapshot.diary_misfit)
    if told is None:
        return None
    headline, means, way = map(said, told)
    works, waits = _LINES[state](snapshot) if state in _LINES else _keyring(snapshot)
    if snapshot.keyring_said and state.startswith("keyring"):
        way = f"{_tr('The keyring answered with a fault of its own.')} {way}"
    go_on = {"only-looking": _tr("Look around"), "diary-broken": _tr("Go on")}.get(state, _tr("Go on without"))
    return Closed(headline, means, works, waits, way, go_on, again=state != "diary-broken")


def broken(error: HearthkeyError) -> Closed:
    """What the page says where not even a look was possible."""
    told = doors.shut(error.code)
    works: Lines = ((_tr("Everybody’s devices"), _tr("the gateway lets them in as before")),)
    waits: Lines = ((_tr("This window"), _tr("there is nothing that it could show")),)
    if told is None:
        means = said(errors.say(error).means)
        return Closed(_tr("The household cannot be opened."), means, works, waits, mended(error), go_on="")
    headline, means, way = map(said, told)
    seen = error.facts.get("seen") or error.facts.get("path")
    cause = f"{way} {_tr('Seen: {seen}').format(seen=seen)}" if seen else way
    return Closed(headline, means, works, waits, cause, go_on="")


def _keyring(snapshot: Snapshot) -> tuple[Lines, Lines]:
    waits = [
        (_tr("Stopping a lost device"), _tr("needs a new list; meanwhile lock it from afar")),
        (_tr("New devices"), _tr("their passes have to be signed")),
    ]
    bundles = sum(1 for one in snapshot.passes if one.state(snapshot.at) is State.WAITING)
    if bundles:
        waits.append((_tr("Bundles in the tray"), _tr("their passphrases lie in the keyring")))
    if snapshot.newest_list is not None:
        newest = snapshot.newest_list
        fact = _tr("no. {number} is good until {day}").format(number=newest.number, day=day(newest.next_update))
        waits.append((_tr("A newer list"), fact))
    return _looking(), tuple(waits)


def _looking() -> Lines:
    return (
        (_tr("Everybody’s devices"), _tr("the gateway lets them in as before")),
        (_tr("Looking"), _tr("who gets in, and until when")),
        (_tr("Diary and certificates"), _tr("to read and to copy")),
    )


def _only_looking(_snapshot: Snapshot) -> tuple[Lines, Lines]:
    there = _tr("in the other copy of the app")
    return _looking(), (
        (_tr("Stopping a lost device"), there),
        (_tr("New devices"), there),
        (_tr("Handing over"), there),
    )


def _diary(_snapshot: Snapshot) -> tuple[Lines, Lines]:
    everything = (_tr("Everything else"), _tr("stopping, new devices, handing over"))
    return (*_looking()[:2], everything), ((_tr("Trust in the diary"), _tr("from that entry on")),)


_LINES = {"only-looking": _only_looking, "diary-broken": _diary}
