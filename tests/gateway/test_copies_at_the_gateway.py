"""Sealed copies at the gateway: over a real sshd and in a real folder, written, kept, fetched and tried."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.sealed import CopyNote
from hearthkey.core.target import By, Target
from hearthkey.services import carrying_copies
from hearthkey.services.carrying_copies import ROOM
from tests.fakes.gateway import FakeGateway
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.gateway.servers import Server


@pytest.fixture
def home(tmp_path: Path, door: GatewayWays) -> Iterator[Home]:
    """Quince Cottage, not for practice, with the real ways to a gateway."""
    with at_home(tmp_path / "data", practice=False, quick=True) as opened:
        opened.house.__dict__["gateway_door"] = door
        opened.house.sealing.make_ready(PASSPHRASE)
        yield opened


def at(folder: Path) -> list[Path]:
    """The copies that lie at the gateway, oldest first."""
    return sorted((folder / ROOM / "sets").glob("*/*"))


def newest(home: Home) -> CopyNote:
    """The copy that was brought there last."""
    return [one for one in home.house.register.sealed_copies() if one.at_gateway][-1]


def choose(home: Home, target: Target) -> None:
    """Say where the gateway is, after its host key was compared."""
    home.house.targeting.choose(target, home.house.targeting.host_key(target))


def test_a_copy_goes_there_by_ssh_and_comes_back(home: Home, server: Server, folder: Path) -> None:
    """Broken if it fails: the house burns down, and what the gateway has is half a file, or open to all."""
    choose(home, replace(server.target(folder), host_key=""))
    carrying = home.house.carrying_copies
    assert not carrying.behind()
    said = carrying.carry().sentence
    (path,) = at(folder)
    assert (path.stat().st_mode & 0o777, (folder / ROOM).stat().st_mode & 0o777) == (0o600, 0o700)
    assert home.house.register.diary()[-1].sentence == said
    data = carrying.fetch(newest(home))
    assert data == path.read_bytes()
    assert "whole and fits" in home.house.sealing.try_copy(data, PASSPHRASE).sentence
    assert newest(home).tried is not None
    assert carrying.behind()
    carrying.carry(told=False)
    assert not carrying.behind()
    home.house.delivering.deliver()
    assert len(at(folder)) == 2
    path.unlink()
    with pytest.raises(Refused, match="copy-not-at-gateway"):
        carrying.fetch(next(one for one in home.house.register.sealed_copies() if one.at_gateway))


def test_only_the_newest_stay(home: Home, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the gateway's disk fills, or the copies that were wanted are gone."""
    kept = 2
    monkeypatch.setattr(carrying_copies, "KEPT", kept)
    choose(home, Target(By.FOLDER, str(folder)))
    for _ in range(kept + 1):
        home.house.carrying_copies.carry(told=False)
    notes = [one.name for one in home.house.register.sealed_copies() if one.at_gateway]
    assert [one.name for one in at(folder)] == notes[-kept:]
    other = folder.parent / "other"
    other.mkdir()
    choose(home, Target(By.FOLDER, str(other)))
    assert not home.house.carrying_copies.behind()
    with pytest.raises(Refused, match="copy-at-another-gateway"):
        home.house.carrying_copies.fetch(newest(home))


def test_what_comes_back_otherwise_is_not_remembered(home: Home, folder: Path) -> None:
    """Broken if it fails: a copy that the gateway's disk has spoiled counts as one that is there."""
    choose(home, Target(By.FOLDER, str(folder)))
    load = home.house.carrying_copies.load()
    home.house.__dict__.pop("carrying_copies")
    home.house.__dict__["gateway_door"] = FakeGateway(shows=None, damage={load.note.name})
    with pytest.raises(Unavailable, match="gateway-read-back"):
        home.house.carrying_copies.bring(load)
    assert not any(one.at_gateway for one in home.house.register.sealed_copies())


def test_a_practice_household_brings_nothing_anywhere(tmp_path: Path) -> None:
    """Broken if it fails: whoever tries the app out leaves a stranger's CA key at a real gateway."""
    with at_home(tmp_path / "data", quick=True) as opened, pytest.raises(Refused, match="practice-stays-home"):
        opened.house.carrying_copies.carry()
