"""Times two ways to one result turn and turn about, so that a busy machine is unfair to neither, and prints a table."""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass

Act = Callable[[], float]
"""Does one thing once and returns the seconds it took."""

_WIDE = 52


@dataclass(frozen=True)
class Pairs:
    """What several paired runs took.

    Args:
        ours, floor: medians, seconds.
        ratio: median of ours/floor within each pair, which a slow minute does not move.
    """

    ours: float
    floor: float
    ratio: float


@dataclass(frozen=True)
class Row:
    """One line of the table.

    Args:
        what: what was measured.
        ours: seconds.
        floor: seconds of the floor or the reference, None where the limit is in seconds itself.
        figure: what is judged: a ratio, or seconds where there is no floor.
        limit: its bound.
        at_least: the bound is a lower one.
    """

    what: str
    ours: float
    floor: float | None
    figure: float
    limit: float
    at_least: bool = False

    @property
    def holds(self) -> bool:
        """Whether the figure keeps to its bound."""
        return self.figure >= self.limit if self.at_least else self.figure <= self.limit


def timed(act: Callable[[], object]) -> Act:
    """Make something that tells how long it took."""

    def run() -> float:
        began = time.perf_counter()
        act()
        return time.perf_counter() - began

    return run


def paired(ours: Act, floor: Act, times: int) -> Pairs:
    """Run both once unmeasured, then in pairs; every other pair the floor goes first."""
    ours()
    floor()
    return paired_cold(ours, floor, times)


def paired_cold(ours: Act, floor: Act, times: int) -> Pairs:
    """Run in pairs, of which the first counts as well: for what takes so long that warming up is nothing."""
    mine: list[float] = []
    theirs: list[float] = []
    for turn in range(times):
        order = ((ours, mine), (floor, theirs))
        for act, took in order if turn % 2 == 0 else reversed(order):
            took.append(act())
    ratios = (one / other for one, other in zip(mine, theirs, strict=True))
    return Pairs(statistics.median(mine), statistics.median(theirs), statistics.median(ratios))


def at_most(what: str, pairs: Pairs, limit: float) -> Row:
    """A row that may take so many times its floor."""
    return Row(what, pairs.ours, pairs.floor, pairs.ratio, limit)


def times_faster(what: str, pairs: Pairs, limit: float) -> Row:
    """A row that must be so many times faster than its reference."""
    return Row(what, pairs.ours, pairs.floor, 1 / pairs.ratio, limit, at_least=True)


def within(what: str, seconds: Iterable[float], limit: float) -> Row:
    """A row whose median may take so many seconds."""
    median = statistics.median(seconds)
    return Row(what, median, None, median, limit)


def heading() -> str:
    """The names of the columns."""
    return _line("what", "ours", "floor", "ratio", "must be", "")


def line(row: Row) -> str:
    """One row as text."""
    sign = ">=" if row.at_least else "<="
    if row.floor is None:
        return _line(row.what, _told(row.ours), "-", "-", f"{sign} {_told(row.limit)}", _verdict(row))
    return _line(
        row.what, _told(row.ours), _told(row.floor), f"{row.figure:.2f}", f"{sign} {row.limit:.2f}", _verdict(row)
    )


def _verdict(row: Row) -> str:
    return "ok" if row.holds else "NOT"


def _told(seconds: float) -> str:
    return f"{seconds:.2f} s" if seconds >= 1 else f"{seconds * 1000:.1f} ms"


def _line(what: str, ours: str, floor: str, ratio: str, limit: str, verdict: str) -> str:
    return f"{what:{_WIDE}}{ours:>10}{floor:>11}{ratio:>8}{limit:>13}  {verdict}".rstrip()
