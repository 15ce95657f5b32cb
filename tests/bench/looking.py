"""Measures opening and listing a large register, and what starting the app costs."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.adapters.register.rows import PASSES
from hearthkey.core.proofs import Proof, Way
from hearthkey.services.enrolling import EnrolRequest
from tests.bench import practice
from tests.bench.timing import Row, at_most, paired, timed

DEVICES = (("Ines", "phone"), ("Tomasz", "laptop"), ("Odile", "tablet"), ("Boiler engineer", "phone"))

_LOADED = """
import atexit, runpy, sys
sys.argv[0] = "hearthkey"
atexit.register(lambda: print(*sys.modules, sep="\\n", file=sys.stderr))
runpy.run_module("hearthkey", run_name="__main__")
"""
_LOADED_BY_NOTHING = """
import sys
print(*sys.modules, sep="\\n", file=sys.stderr)
"""


def register(*, quick: bool) -> list[Row]:
    """Opening a register of 10,000 devices and telling the state of each, against reading the rows."""
    with practice.household() as house:
        practice.fill(house, 10_000, every=20)
        path = house.data / FILE_NAME
        house.register.scrub()

        def ours() -> None:
            opened = SqliteRegister(path, read_only=True)
            for one in opened.passes():
                one.state(practice.NOW)
            opened.close()

        def bare() -> None:
            connection = sqlite3.connect(path)
            connection.execute(PASSES).fetchall()
            connection.close()

        pairs = paired(timed(ours), timed(bare), 7 if quick else 21)
    return [at_most("open a register of 10,000 devices and list it", pairs, 3)]


def proofs(*, quick: bool) -> list[Row]:
    """A look at 10,000 devices that were proved once each, against the same look before anything was proved."""
    with practice.household() as bare, practice.household() as proved:
        for house in (bare, proved):
            practice.fill(house, 10_000, every=20)
        with proved.register.change() as change:
            for one in proved.register.passes():
                change.add_proof(one.serial, Proof(practice.NOW, Way.TUNNEL, "203.0.113.10"))
        proved.register.passes()
        pairs = paired(timed(proved.register.passes), timed(bare.register.passes), 7 if quick else 21)
    return [at_most("look at 10,000 devices, each of them proved", pairs, 1.3)]


def start_help(*, quick: bool) -> list[Row]:
    """`hearthkey --help` as a whole process."""
    with practice.folder() as folder:
        return [_start("start: hearthkey --help", ["--help"], folder, 11 if quick else 41)]


def start_list(*, quick: bool) -> list[Row]:
    """`hearthkey list` as a whole process, in a household of four devices."""
    with practice.household() as house, practice.folder() as folder:
        requests = [EnrolRequest(person, device, "linux") for person, device in DEVICES]
        house.enrolling.apply(*house.enrolling.preview_all(requests))
        house.leave()
        words = ["list", "--data", str(house.data)]
        return [_start("start: hearthkey list, four devices", words, folder, 11 if quick else 41)]


def _start(what: str, words: list[str], cache: Path, times: int) -> Row:
    """Measure a start against one that imports the same modules of the standard library and ends."""
    added = _modules(cache, _LOADED, words) - _modules(cache, _LOADED_BY_NOTHING, [])
    ours = {name for name in added if name.partition(".")[0] == "hearthkey"}
    standard = {name for name in added if name.partition(".")[0] in sys.stdlib_module_names}
    if foreign := sorted(added - ours - standard - {"__mp_main__"}):
        raise ValueError(f"a start that computes nothing imports {foreign}")
    bare = f"import {', '.join(sorted(standard))}"
    pairs = paired(timed(lambda: _run(cache, "-m", "hearthkey", *words)), timed(lambda: _run(cache, "-c", bare)), times)
    return at_most(what, pairs, 1.5)


def _modules(cache: Path, code: str, words: list[str]) -> set[str]:
    return set(_run(cache, "-c", code, *words).split())


def _run(cache: Path, *words: str) -> str:
    """Run this Python without the folder we stand in, as the installed command does.

    Compiled modules are kept as at a householder's, whose second start is measured, but in a folder of our own.

    Returns:
        What it told standard error.
    """
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    ended = subprocess.run(
        [sys.executable, "-P", *words],
        check=True,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
        text=True,
        env={**kept, "PYTHONPYCACHEPREFIX": str(cache)},
    )
    return ended.stderr
