"""What one row of the sheet says and draws, as values."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum, IntEnum

from hearthkey.ui.theme.signs import Sign


class Column(IntEnum):
    """The columns of the sheet, from left to right."""

    WHO = 0
    DEVICE = 1
    AXIS = 2
    DATE = 3
    ACTION = 4


class Stroke(Enum):
    """How a part of a life line is drawn."""

    SOLID = "solid"
    HOLLOW = "hollow"
    DASHES = "dashes"
    DOTS = "dots"
    FINE_DOTS = "fine dots"
    PAST = "past"


class Shape(Enum):
    """What stands on a life line."""

    MADE = "made"
    HANDED_OVER = "handed over"
    PROOF = "proof"
    END = "end"
    SMALL_END = "small end"
    FINAL = "final"


class Tone(Enum):
    """The inks of a row: its device's name, its date, its line."""

    INK = ("ink", "ink", "ink")
    HELD = ("ink", "ink2", "ink")
    PAST = ("ink2", "ink2", "ink2")
    DUE = ("ink", "act", "act")
    DRAFT = ("ink", "ink", "ink2")

    @property
    def name_ink(self) -> str:
        """Token of the device's name."""
        return self.value[0]

    @property
    def date_ink(self) -> str:
        """Token of the date."""
        return self.value[1]

    @property
    def line_ink(self) -> str:
        """Token of the line."""
        return self.value[2]


class Step(Enum):
    """The one next step of a row."""

    HAND_OVER = "Hand over"
    LET_IN = "Let back in"
    PROVE = "Prove it"
    RENEW = "Renew"


@dataclass(frozen=True, slots=True)
class Segment:
    """A part of a life line.

    Args:
        start: UTC, None where it began before anybody can tell.
        end: UTC.
    """

    stroke: Stroke
    start: datetime | None
    end: datetime


@dataclass(frozen=True, slots=True)
class Mark:
    """A shape at a moment of a life line; UTC."""

    shape: Shape
    at: datetime


@dataclass(frozen=True, slots=True)
class Event:
    """A stop for Left and Right on a life line.

    Args:
        at: UTC.
        text: what happened, or will.
    """

    at: datetime
    text: str


@dataclass(frozen=True, slots=True)
class Row:
    """One row.

    Args:
        who, device: the names.
        sign: the bead on the ribbon.
        word, fact: the state, and what explains it; both as shown.
        until: what stands under "good until".
        step: the next step, or None.
        segments, marks: the life line, from left to right.
        events: what happens on it, from left to right.
        spoken: the whole row in one sentence.
    """

    who: str
    device: str
    sign: Sign
    word: str
    fact: str
    until: str
    step: Step | None
    tone: Tone
    segments: tuple[Segment, ...]
    marks: tuple[Mark, ...]
    events: tuple[Event, ...]
    spoken: str
