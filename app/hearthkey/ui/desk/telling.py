"""What the desk says: the three steps, and how far a device has come."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QCoreApplication

from hearthkey.core.families import Family
from hearthkey.ui.dates import short_day
from hearthkey.ui.desk.turns import Step, Turn
from hearthkey.ui.drawer.stops import BACKDATED

_tr = QCoreApplication.translate

ON_A_TABLE = frozenset({Family.WINDOWS, Family.MAC, Family.LINUX})
"""Computers: without a camera that looks at another screen, and without mobile data."""


@dataclass(frozen=True)
class StepWords:
    """One step in words.

    Args:
        head: what is done.
        under: what the device shows then, and what to say.
    """

    head: str
    under: str


@dataclass(frozen=True)
class Moment:
    """What decides which words a step has.

    Args:
        code, words: whether these are on the screen.
        opened: whether the device opened the page behind the code.
        link: of the open pick-up while its code is on the screen, else empty.
    """

    code: bool = False
    words: bool = False
    opened: bool = False
    link: str = ""


def step_words(step: Step, turn: Turn, family: Family, moment: Moment) -> StepWords:
    """The words of a step for whoever holds a device of this family."""
    return {Step.SCAN: _scan, Step.WORDS: _words, Step.CONNECT: _connect}[step](turn, family, moment)


def _scan(turn: Turn, family: Family, moment: Moment) -> StepWords:
    computer = family in ON_A_TABLE
    head = (
        _tr("Desk", "Type this address into the browser") if computer else _tr("Desk", "Hold the camera over the code")
    )
    if turn.picked_up is not None:
        return StepWords(head, _tr("Desk", "Picked up at {time}.").format(time=clock_time(turn.picked_up)))
    if turn.done:
        return StepWords(head, _tr("Desk", "Picked up."))
    if moment.opened:
        return StepWords(head, _tr("Desk", "A page with one large button is open. Say: “Get the file.”"))
    if computer:
        return StepWords(head, moment.link or _tr("Desk", "It stands here together with the code."))
    return StepWords(head, _tr("Desk", "A line of text appears. Say: “Touch that line.”"))


def _words(turn: Turn, _family: Family, moment: Moment) -> StepWords:
    head = _tr("Desk", "Type the seven words")
    if turn.done:
        return StepWords(head, _tr("Desk", "Typed in."))
    if moment.words:
        under = _tr("Desk", "The device asks for a password. Say the words, with one space between two of them.")
    elif moment.code:
        under = _tr("Desk", "They appear here once the code is covered.")
    elif turn.typed:
        under = _tr("Desk", "They were shown, and are covered again.")
    elif turn.picked_up is not None:
        under = _tr("Desk", "The code is gone, so the words can be shown now.")
    else:
        under = _tr("Desk", "They appear here once the file is on the device.")
    return StepWords(head, under)


def _connect(turn: Turn, family: Family, _moment: Moment) -> StepWords:
    if family in ON_A_TABLE:
        head = _tr("Desk", "Leave the Wi-Fi at home, then connect")
        under = _tr("Desk", "It works when it says “Connected” in another network, a phone’s for instance.")
    else:
        head = _tr("Desk", "Switch the Wi-Fi off, then touch Connect")
        under = _tr("Desk", "It works when it says “Connected” on mobile data.")
    if turn.one.proved is not None:
        under = _tr("Desk", "It was seen to get in from outside.")
    return StepWords(head, under)


@dataclass(frozen=True)
class Station:
    """One stop of a device on its way.

    Args:
        words: what stands below it.
        reached: whether it has come so far.
        now: whether this is where it stands.
    """

    words: str
    reached: bool
    now: bool = False


def stations(turn: Turn, today: datetime) -> tuple[Station, ...]:
    """From made to proved, with "now" before the first that it has not reached.

    That it gets in from outside is known from the register alone: whoever writes a proof there, its last station
    is solid with the next look at the household.
    """
    made = _tr("Desk", "made {time}").format(time=_when(turn.one.not_before + BACKDATED, today))
    fetched = _tr("Desk", "picked up")
    if turn.picked_up is not None:
        fetched = _tr("Desk", "picked up {time}").format(time=clock_time(turn.picked_up))
    proved = turn.one.proved
    way = [
        Station(made, reached=True),
        Station(fetched, turn.done or turn.picked_up is not None),
        Station(_tr("Desk", "opened with the words"), turn.done),
        Station(_tr("Desk", "proved on mobile data"), proved is not None),
    ]
    place = next((number for number, one in enumerate(way) if not one.reached), len(way))
    if place < len(way):
        way.insert(place, Station(_tr("Desk", "now"), reached=True, now=True))
    return tuple(way)


def told(way: tuple[Station, ...]) -> str:
    """The stations for a screen reader."""
    reached = ", ".join(one.words for one in way if one.reached and not one.now)
    ahead = ", ".join(one.words for one in way if not one.reached)
    if not ahead:
        return reached
    return _tr("Desk", "So far: {reached}. Still to come: {ahead}.").format(reached=reached, ahead=ahead)


def clock_time(moment: datetime) -> str:
    """Hours and minutes where the household is."""
    return f"{moment.astimezone():%H:%M}"


def _when(moment: datetime, today: datetime) -> str:
    same = moment.astimezone().date() == today.astimezone().date()
    return clock_time(moment) if same else short_day(moment)
