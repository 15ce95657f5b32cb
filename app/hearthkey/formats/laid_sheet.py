"""Where everything stands on a sheet of paper, in points; a painter only has to draw it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import groupby

from hearthkey.core.hand_over_sheet import Paper


class Face(Enum):
    """The serif that speaks, the sans that states, and the sans that stresses."""

    SERIF = "serif"
    SANS = "sans"
    STRONG = "strong"


class Ink(Enum):
    """The two inks of the sheet."""

    INK = "#1A2830"
    SECOND = "#4A585D"


@dataclass(frozen=True)
class Run:
    """A line of text; x and y of the beginning of its baseline, from the upper left corner."""

    x: float
    y: float
    text: str
    face: Face
    size: float
    ink: Ink = Ink.INK


@dataclass(frozen=True)
class Stroke:
    """A rule across: from x to x, at y, so thick."""

    left: float
    right: float
    y: float
    weight: float
    ink: Ink = Ink.INK


@dataclass(frozen=True)
class Modules:
    """A code: x and y of its upper left corner, how long a side is, and its modules by rows, True is dark."""

    x: float
    y: float
    side: float
    rows: tuple[tuple[bool, ...], ...]
    ink: Ink = Ink.INK

    def bars(self) -> Iterable[tuple[float, float, float, float]]:
        """Rectangles (x, y, width, height) from the sheet's corner that are all of its dark modules, none twice."""
        module = self.side / len(self.rows)
        for down, row in enumerate(self.rows):
            across = 0
            for dark, run in groupby(row):
                wide = len(list(run))
                if dark:
                    yield self.x + across * module, self.y + down * module, wide * module, module
                across += wide


Mark = Run | Stroke | Modules
Measure = Callable[[str, Face, float], float]
"""How wide a text is in a face at a size, in points."""

LEFT, RIGHT, TOP, BOTTOM = 56.0, 56.0, 50.0, 46.0
"""Margins: 2 cm at the sides, so that any printer reaches everything and a hole punch hits nothing."""

_LEADING = 1.32


class Column:
    """Lays one thing under the other.

    Args:
        measure: of the painter's fonts.
    """

    def __init__(self, paper: Paper, measure: Measure) -> None:
        self._measure = measure
        self.wide, self.high = paper.value
        self.down = TOP
        self.marks: list[Mark] = []

    @property
    def room(self) -> float:
        """Points from margin to margin."""
        return self.wide - LEFT - RIGHT

    def space(self, points: float) -> None:
        """Leave some room."""
        self.down += points

    def say(
        self,
        text: str,
        face: Face,
        size: float,
        *,
        ink: Ink = Ink.INK,
        inset: float = 0.0,
        width: float | None = None,
    ) -> None:
        """Set a text, broken into lines."""
        for line in broken(text, width or self.room - inset, lambda one: self._measure(one, face, size)):
            self.down += size * _LEADING
            self.marks.append(Run(LEFT + inset, self.down - size * (_LEADING - 1), line, face, size, ink))

    def beside(self, text: str, face: Face, size: float, *, x: float, y: float, ink: Ink = Ink.INK) -> None:
        """Set a short text where it is wanted."""
        self.marks.append(Run(x, y, text, face, size, ink))

    def at_right(self, text: str, face: Face, size: float, *, y: float, ink: Ink = Ink.INK) -> None:
        """Set a short text against the right margin."""
        self.beside(text, face, size, x=self.wide - RIGHT - self._measure(text, face, size), y=y, ink=ink)

    def rule(self, weight: float, *, ink: Ink = Ink.INK, inset: float = 0.0) -> None:
        """Draw a rule across."""
        self.marks.append(Stroke(LEFT + inset, self.wide - RIGHT, self.down, weight, ink))

    @property
    def fits(self) -> bool:
        """Whether all of it stands on the page."""
        return self.down <= self.high - BOTTOM


def broken(text: str, width: float, measure: Callable[[str], float]) -> Iterable[str]:
    """Break a text into lines; a word that is too long for any of them is broken too."""
    line = ""
    for word in text.split():
        for part in _parts(word, width, measure):
            longer = f"{line} {part}".strip()
            if line and measure(longer) > width:
                yield line
                line = part
            else:
                line = longer
    if line:
        yield line


def _parts(word: str, width: float, measure: Callable[[str], float]) -> Sequence[str]:
    if measure(word) <= width or len(word) < 2:
        return [word]
    cut = next((at for at in range(len(word) - 1, 0, -1) if measure(word[:at]) <= width), 1)
    return [word[:cut], *_parts(word[cut:], width, measure)]
