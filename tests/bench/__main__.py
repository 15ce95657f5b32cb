"""Measures the app against bare floors in one run: `python -m tests.bench [--quick] [ROW ...]`."""

from __future__ import annotations

import argparse
import importlib
import sys
import time
from collections.abc import Callable
from importlib.util import find_spec

from tests.bench import machine
from tests.bench.timing import Row, heading, line

# By name, not imported: each process that makes keys reads this module first, as it reads the app's own main.
ROWS = {
    "enrol-compact": ("enrolling", "one_compact"),
    "enrol-broad": ("enrolling", "one_broad"),
    "enrol-many": ("enrolling", "many"),
    "stop": ("withdrawing", "stop"),
    "register": ("looking", "register"),
    "proofs": ("looking", "proofs"),
    "start-help": ("looking", "start_help"),
    "start-list": ("looking", "start_list"),
    "list": ("withdrawing", "growing_list"),
    "spare-lists": ("gateway", "spare_lists"),
    "stop-in-force": ("gateway", "stop_in_force"),
    "deliver-unchanged": ("gateway", "unchanged"),
    "window-first": ("window", "first_frame"),
    "window-moving": ("window", "moving"),
    "window-stall": ("window", "stall"),
    "window-memory": ("window", "memory"),
}
NOTES = """
Ours and its floor ran turn and turn about; shown are medians, and the median of the ratios within the pairs.
Secrets went to files written under fsync: what a keyring takes to answer is not the app’s to promise.
"""
QUIET = 0.15
"""Processors: what a machine at rest keeps busy by itself."""


def main() -> int:
    """Measure, print, and return 1 where a row does not hold."""
    parser = argparse.ArgumentParser(prog="bench", description=__doc__)
    parser.add_argument("rows", nargs="*", metavar="ROW", help=f"only these: {', '.join(ROWS)}")
    parser.add_argument("--quick", action="store_true", help="fewer runs and smaller batches")
    arguments = parser.parse_args()
    if unknown := [name for name in arguments.rows if name not in ROWS]:
        parser.error(f"no row is called {', '.join(unknown)}; there are: {', '.join(ROWS)}")
    _say(machine.facts())
    _say(heading())
    began = time.perf_counter()
    holds = True
    for name in arguments.rows or ROWS:
        if name.startswith("window") and find_spec("PySide6") is None:
            _say(f"{name}: skipped, PySide6 is not installed here")
            continue
        others = machine.Others()
        for row in _measure(name)(quick=arguments.quick):
            holds = holds and row.holds
            _say(line(row))
        busy = others.processors()
        if busy is not None and busy > QUIET:
            _say(f"    meanwhile others kept {busy:.1f} processors busy")
    _say(f"{NOTES}{time.perf_counter() - began:.0f} seconds in all.")
    return 0 if holds else 1


def _measure(name: str) -> Callable[..., list[Row]]:
    module, function = ROWS[name]
    found: Callable[..., list[Row]] = getattr(importlib.import_module(f"tests.bench.{module}"), function)
    return found


def _say(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
