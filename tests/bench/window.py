"""Measures the window: its first frame, a key in Find, a scroll step, its longest stall, its memory."""

from __future__ import annotations

import json
import os
import statistics
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path

from hearthkey.bootstrap import open_house
from hearthkey.core.household import FILE
from tests.bench import practice
from tests.bench.timing import Row, at_most, paired

FEW, MANY = 20, 10_000
_FRAME = 0.016
_STALL = 0.1


def first_frame(*, quick: bool) -> list[Row]:
    """From the start of the process to the first frame that shows the household, against an empty window."""
    rows = []
    for count, limit in ((FEW, 2.0), (MANY, 4.0)):
        with _filled(count) as data:
            pairs = paired(partial(_took, "frame", data), partial(_took, "bare"), 3 if quick else 7)
        rows.append(at_most(f"window: first frame with {count:,} devices", pairs, limit))
    return rows


def moving(*, quick: bool) -> list[Row]:
    """A key press in Find and a scroll step over 10,000 devices, each with its repaint."""
    del quick
    with _filled(MANY) as data:
        told = _child("moving", data)
    return [
        _percentile("window: a key press in Find, 95th percentile", told["find"]),
        _percentile("window: a scroll step, 95th percentile", told["scroll"]),
    ]


def stall(*, quick: bool) -> list[Row]:
    """The longest time that the window does not answer: over the whole main job, and in a very large household."""
    del quick
    with practice.folder() as room:
        few = max(_child("stall", room)["stalls"])
    with _filled(MANY) as data:
        many = max(_child("many", data)["stalls"])
    return [
        Row("window: longest stall over the whole main job", few, None, few, _STALL),
        Row(f"window: longest stall with {MANY:,} devices", many, None, many, _STALL),
    ]


def memory(*, quick: bool) -> list[Row]:
    """Peak memory against an empty window with the same imports."""
    del quick
    bare = _child("bare")["peak"][0]
    rows = []
    for count, limit in ((FEW, 1.5), (MANY, 2.0)):
        with _filled(count) as data:
            peak = _child("frame", data)["peak"][0]
        rows.append(Row(f"window: peak memory with {count:,} devices (GiB)", peak, bare, peak / bare, limit))
    return rows


@contextmanager
def _filled(count: int) -> Iterator[Path]:
    with practice.folder() as room:
        data = room / "data"
        with open_house(data, place=FILE, writing=True) as house:
            house.founding.apply(house.founding.preview(practice.REQUEST), practice.PASSPHRASE)
            practice.fill(house, count, every=20)
        yield data


def _percentile(what: str, seconds: list[float]) -> Row:
    figure = statistics.quantiles(seconds, n=20)[-1]
    return Row(what, figure, None, figure, _FRAME)


def _took(what: str, data: Path | None = None) -> float:
    return _child(what, data)["seconds"][0]


def _child(what: str, data: Path | None = None) -> dict[str, list[float]]:
    """Run `tests.bench.window_child` in a process of its own, offscreen."""
    arguments = [sys.executable, "-m", "tests.bench.window_child", what, *([str(data)] if data is not None else [])]
    environment = os.environ | {"QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": os.pathsep.join(("app", "."))}
    done = subprocess.run(arguments, env=environment, capture_output=True, text=True, check=True, timeout=300)
    told: dict[str, list[float]] = json.loads(done.stdout.splitlines()[-1])
    return told
