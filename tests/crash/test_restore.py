"""Kills the making of a sealed copy and the bringing back from one at every moment."""

from __future__ import annotations

import hashlib
import itertools
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.core.household import FILE, KEYRING
from tests.crash import verdict
from tests.crash.homes import Home
from tests.crash.nursery import Nursery
from tests.crash.test_killed import kill_at_every_moment, outlines
from tests.keyring.desktop import Desktop


@pytest.fixture
def sealed(settled: dict[str, Home]) -> bytes:
    """A copy of a household whose bundles have all been handed over."""
    home = settled[FILE]
    home.put_back()
    assert home.run("seal-away").refusal is None
    return next(home.folder.glob("*.sealed.tar")).read_bytes()


def test_making_ready(settled: dict[str, Home]) -> None:
    """If this fails, a power cut leaves a lock without the secret that marks it, or copies that nobody opens."""
    kill_at_every_moment(settled[FILE], "make-ready", thin=True)


def noted(home: Home) -> set[str]:
    """SHA-256 of every copy that the register knows of, hex."""
    with closing(verdict.open_register(home)) as register:
        return {one.sha256 for one in register.sealed_copies()}


def whole(home: Home) -> set[str]:
    """SHA-256 of every file that lies under the name of a copy, hex."""
    return {hashlib.sha256(path.read_bytes()).hexdigest() for path in home.folder.glob("*.sealed.tar")}


def test_sealing(desktop: Desktop, nursery: Nursery, tmp_path: Path) -> None:
    """If this fails, a stick that is pulled holds half a copy under a whole one's name, or one that nobody knows of."""
    home = Home(desktop, nursery, tmp_path, FILE)
    for verb in ("found", "move-in", "make-ready"):
        assert home.run(verb).refusal is None
    home.save()
    before, after = outlines(home, "seal")
    wrote: list[bool] = []
    for stop_at in itertools.count(1):
        home.put_back()
        run = home.run("seal", stop_at, thin=True)
        if not run.killed:
            break
        assert home.run("start").refusal is None
        found = verdict.judge(home)
        assert found in {before, after}, run.trail[-1]
        wrote.append(found == after)
        assert noted(home) <= whole(home)
        assert home.run("seal").refusal is None
        assert noted(home) <= whole(home)
    assert wrote == sorted(wrote)
    assert set(wrote) == {False, True}


@pytest.mark.parametrize("place", [KEYRING, FILE])
def test_restoring(bare: dict[str, Home], sealed: bytes, place: str) -> None:
    """If this fails, a power cut leaves half a household, or secrets that belong to nothing, on the new computer."""
    home = bare[place]
    real_put_back = home.put_back

    def put_back() -> None:
        real_put_back()
        home.folder.mkdir(parents=True)
        (home.folder / "quince.sealed.tar").write_bytes(sealed)

    home.put_back = put_back  # type: ignore[method-assign]  # a computer with nothing but a stick in it
    try:
        kill_at_every_moment(home, "restore", thin=place == KEYRING)
    finally:
        home.put_back = real_put_back  # type: ignore[method-assign]  # the next test has the same computer
    assert verdict.judge(home).rows[0] == 1


@pytest.fixture
def on_paper(settled: dict[str, Home]) -> bytes:
    """The lines of a household's paper."""
    home = settled[FILE]
    home.put_back()
    assert home.run("put-on-paper").refusal is None
    return (home.folder / "paper.txt").read_bytes()


def test_restoring_from_paper(bare: dict[str, Home], on_paper: bytes) -> None:
    """If this fails, a power cut leaves half a household, or secrets that belong to nothing, on the new computer."""
    home = bare[FILE]
    real_put_back = home.put_back

    def put_back() -> None:
        real_put_back()
        home.folder.mkdir(parents=True)
        (home.folder / "paper.txt").write_bytes(on_paper)

    home.put_back = put_back  # type: ignore[method-assign]  # a computer with nothing but a typed file on it
    try:
        kill_at_every_moment(home, "restore-paper", thin=True)
    finally:
        home.put_back = real_put_back  # type: ignore[method-assign]  # as above
    assert verdict.judge(home).rows[0] == 1
