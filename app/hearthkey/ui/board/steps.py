"""How one order of rows becomes another: by taking rows out, moving as few as possible, and putting rows in."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from itertools import compress, count
from operator import ne
from typing import NamedTuple


class Remove(NamedTuple):
    """Rows from `start` up to, not including, `end` go."""

    start: int
    end: int


class Move(NamedTuple):
    """The row at `source` comes to stand before the row that is at `target` now."""

    source: int
    target: int


class Insert(NamedTuple):
    """The wanted rows from `start` up to, not including, `end` come to stand at `start`."""

    start: int
    end: int


Step = Remove | Move | Insert


def steps(before: Sequence[str], after: Sequence[str]) -> Iterator[Step]:
    """The steps from one order of keys to another, each told of the rows as the steps before it have left them.

    What both orders begin and end with alike is not looked at again, so that one row among ten
    thousand costs no more than finding it.

    Args:
        before, after: keys without repetition.
    """
    head = _alike(before, after)
    old, new = list(before[head:]), list(after[head:])
    tail = _alike(old[::-1], new[::-1])
    for step in _middle(old[: len(old) - tail], new[: len(new) - tail]):
        yield type(step)(*(head + number for number in step))


def _alike(one: Sequence[str], other: Sequence[str]) -> int:
    """How many keys two orders begin with alike."""
    return next(compress(count(), map(ne, one, other)), min(len(one), len(other)))


def _middle(rows: list[str], wanted: Sequence[str]) -> Iterator[Step]:
    yield from _removals(rows, set(wanted))
    yield from _moves(rows, wanted)
    number = 0
    while number < len(wanted):
        if number < len(rows) and rows[number] == wanted[number]:
            number += 1
            continue
        stays = rows[number] if number < len(rows) else None
        end = number
        while end < len(wanted) and wanted[end] != stays:
            end += 1
        rows[number:number] = wanted[number:end]
        yield Insert(number, end)
        number = end


def _removals(rows: list[str], wanted: set[str]) -> Iterator[Remove]:
    end = len(rows)
    while end:
        if rows[end - 1] in wanted:
            end -= 1
            continue
        start = end - 1
        while start and rows[start - 1] not in wanted:
            start -= 1
        del rows[start:end]
        yield Remove(start, end)
        end = start


def _moves(rows: list[str], wanted: Sequence[str]) -> Iterator[Move]:
    """Move all but the longest run that is in order already."""
    there = {key: number for number, key in enumerate(rows)}
    kept = [key for key in wanted if key in there]
    stays = _longest_rising([there[key] for key in kept])
    if len(stays) == len(kept):
        return
    previous = ""
    for key in kept:
        if there[key] not in stays:
            source = rows.index(key)
            target = rows.index(previous) + 1 if previous else 0
            if target not in {source, source + 1}:
                rows.insert(target - (target > source), rows.pop(source))
                yield Move(source, target)
        previous = key


def _longest_rising(numbers: Sequence[int]) -> set[int]:
    """The longest rising subsequence, by patience sorting."""
    ends: list[int] = []
    chain: dict[int, int | None] = {}
    for number in numbers:
        place = bisect_left(ends, number)
        chain[number] = ends[place - 1] if place else None
        ends[place : place + 1] = [number]
    found: set[int] = set()
    walker = ends[-1] if ends else None
    while walker is not None:
        found.add(walker)
        walker = chain[walker]
    return found
