"""Copies of bundles that left: what was written where, what is still unaccounted for, and when to ask about it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.passes import Pass, State

MARK_DIGITS = 32
"""Hex digits of a file's SHA-256 that are kept: 128 bits, so that no other file is ever taken for ours."""

SAME_SHOWING = timedelta(minutes=5)
"""How long codes that come back to the screen belong to the same showing."""

SETTLED_DOWN = timedelta(minutes=15)
"""How long after writing a stick is taken to be on its way still, so that nobody is asked about it."""


class CopyWay(StrEnum):
    """How a copy left; the words are those in the register."""

    FOLDER = "folder"
    STICK = "stick"
    TICKET = "ticket"
    DRAG = "drag"
    SCREEN = "screen"
    OTHER = "other"
    """What a register may say that no app has written; never written."""

    @classmethod
    def _missing_(cls, _value: object) -> CopyWay:
        """A way that is not known is no reason not to open a register."""
        return cls.OTHER


class Came(StrEnum):
    """Whether a copy came to be.

    A row is written before its file is, so that no end of the app in between leaves a file that nobody knows of.
    """

    EXPECTED = "expected"
    MADE = "made"
    NEVER = "never"


class Standing(StrEnum):
    """What can be said of a copy now."""

    OUT = "out"
    PERHAPS = "perhaps"
    HARMLESS = "harmless"
    SHOWN = "shown"
    TIDIED = "tidied"


class Found(StrEnum):
    """What a look at the place of a copy found."""

    OURS = "ours"
    PARTLY = "partly"
    CHANGED = "changed"
    GONE = "gone"
    AWAY = "away"
    ELSEWHERE = "elsewhere"


@dataclass(frozen=True, slots=True)
class CopyFile:
    """One file of a copy.

    Args:
        name: file name, without a folder.
        mark: the first `MARK_DIGITS` hex digits of its SHA-256; empty where that is not known.
    """

    name: str
    mark: str = ""


@dataclass(frozen=True, slots=True)
class Copy:
    """One copy of a bundle, as the register keeps it for ever.

    Args:
        serial: of the pass, hex.
        form: value of a `core.bundle.Form`, or ``template:`` and the name of an own template.
        way: how it left.
        place: as people call it: a folder, the name of a stick, the address that picked it up; may be empty.
        folder: where its files were written; empty where that is not known.
        files: what it consists of.
        made: when it was begun, UTC.
        came: whether it came to be.
        tidied: when somebody said, or the app saw to it, that it is gone; else None.
        number: of the row; 0 before it has one.
    """

    serial: str
    form: str
    way: CopyWay
    place: str
    folder: str
    files: tuple[CopyFile, ...]
    made: datetime
    came: Came = Came.EXPECTED
    tidied: datetime | None = None
    number: int = 0

    @property
    def names(self) -> tuple[str, ...]:
        """The names of its files."""
        return tuple(one.name for one in self.files)

    @property
    def checkable(self) -> bool:
        """Whether the app can look for its files itself."""
        return self.way in {CopyWay.FOLDER, CopyWay.STICK} and bool(self.folder) and all(one.mark for one in self.files)


@dataclass(frozen=True, slots=True)
class Told:
    """A copy with the pass that it is a copy of.

    Args:
        copy: the copy.
        of: its pass.
        standing: what can be said of it now.
    """

    copy: Copy
    of: Pass
    standing: Standing


def standing(copy: Copy, of: Pass, now: datetime) -> Standing:
    """What can be said of a copy.

    A pass that was revoked or has ended opens no door, whoever has its copies; a stopped one may come back. Codes on a
    screen leave no file that could be looked for or taken away; whoever photographed them has no passphrase.
    """
    if copy.tidied is not None:
        return Standing.TIDIED
    if of.state(now) in {State.REVOKED, State.ENDED}:
        return Standing.HARMLESS
    if copy.way is CopyWay.SCREEN:
        return Standing.SHOWN
    return Standing.PERHAPS if copy.came is Came.EXPECTED else Standing.OUT


def told(copies: Iterable[Copy], passes: Sequence[Pass], now: datetime) -> tuple[Told, ...]:
    """Every copy that came to be or may have, by person and device as `passes` has them, the newest first."""
    place: dict[str, int] = {}
    devices: dict[str, int] = {}
    known: Mapping[str, Pass] = {one.serial: one for one in passes}
    for one in passes:
        place[one.serial] = devices.setdefault(one.identity, len(devices))
    found = [one for one in copies if one.came is not Came.NEVER and one.serial in known]
    found.sort(key=lambda one: (place[one.serial], -one.made.timestamp(), -one.number))
    return tuple(Told(one, known[one.serial], standing(one, known[one.serial], now)) for one in found)


def showing(copies: Iterable[Copy], now: datetime) -> Copy | None:
    """The row of the showing that codes still belong to when they come to the screen now; None begins another.

    Args:
        copies: of one pass.
        now: UTC.
    """
    return next(
        (
            one
            for one in copies
            if one.way is CopyWay.SCREEN and one.tidied is None and one.made <= now < one.made + SAME_SHOWING
        ),
        None,
    )


def unaccounted(found: Iterable[Told]) -> tuple[Told, ...]:
    """Those that lie somewhere and could still let somebody in who has the passphrase, for all that is known."""
    return tuple(one for one in found if one.standing in {Standing.OUT, Standing.PERHAPS})


def to_ask_about(found: Iterable[Told], plugged_in: Iterable[str], now: datetime) -> tuple[Told, ...]:
    """Copies on sticks of which it should be asked whether they were wiped, the newest first.

    One question comes when the device has been handed over, for then nothing needs the stick any more; or when the
    stick is plugged in again, for then it can be looked at. While it is on its way nobody is asked.

    Args:
        found: the copies of a device.
        plugged_in: names and folders of the sticks that are plugged in now.
        now: UTC.
    """
    here = set(plugged_in)
    return tuple(
        one
        for one in unaccounted(found)
        if one.copy.way is CopyWay.STICK
        and (
            one.of.handed_over is not None
            or (now - one.copy.made >= SETTLED_DOWN and not here.isdisjoint({one.copy.place, one.copy.folder}))
        )
    )


def outcome(states: Sequence[Found]) -> Found:
    """What a look found, from what it found of each file."""
    kinds = set(states)
    if len(kinds) == 1:
        return states[0]
    if kinds == {Found.OURS, Found.GONE}:
        return Found.PARTLY
    return Found.CHANGED if Found.CHANGED in kinds else Found.AWAY
