"""A connection, or a stick, that goes away in the middle: whatever is in force is wholly the old set or the new one."""

from __future__ import annotations

import errno
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.errors import Unavailable
from hearthkey.core.pack import MANIFEST
from hearthkey.core.target import IN_FORCE
from hearthkey.services.gateway_ports import Gate
from tests.gateway.contract import LIMIT, NEW, OLD, Way, deliver, found, lay_down, on_disk, whole
from tests.gateway.servers import Relay, Server

STEPS: dict[str, Callable[[Gate], object]] = {
    "in_force": lambda gate: gate.in_force(),
    "put_set": lambda gate: lay_down(gate, NEW, OLD),
    "read": lambda gate: gate.read(NEW.set_id, [MANIFEST, *NEW.names], LIMIT),
    "switch": lambda gate: gate.switch(NEW.set_id),
    "run": lambda gate: gate.run("true"),
    "now": lambda gate: gate.now(),
    "keep_only": lambda gate: gate.keep_only([NEW.set_id]),
}
CUTS = 12


def put_back(before: Path, folder: Path) -> None:
    """Have the folder as it was."""
    shutil.rmtree(folder)
    shutil.copytree(before, folder, symlinks=True)


@pytest.fixture
def before(by_folder: Way, tmp_path: Path) -> Path:
    """The gateway's folder with the old set in force, set aside."""
    assert by_folder.folder is not None
    with by_folder.door.open(by_folder.target) as gate:
        deliver(gate, OLD, None)
    shutil.copytree(by_folder.folder, tmp_path / "before", symlinks=True)
    return tmp_path / "before"


def code_of_delivering(way: Way) -> str:
    """Deliver, and return the code of what it ended with; empty where all was well."""
    try:
        with way.door.open(way.target) as gate:
            deliver(gate, NEW, OLD)
    except Unavailable as error:
        return error.code
    return ""


def judge(way: Way) -> None:
    """Look at what is in force, deliver again, look again."""
    assert way.look() in (whole(OLD), whole(NEW))
    with way.door.open(way.target) as gate:
        before = OLD if gate.in_force() == OLD.set_id else NEW
        deliver(gate, NEW, before)
    assert way.look() == whole(NEW)


@pytest.mark.parametrize("step", STEPS)
def test_a_connection_cut_in_each_step(
    server: Server, door: GatewayWays, folder: Path, before: Path, by_folder: Way, step: str
) -> None:
    """Broken if it fails: a torn set, a hang, or a trace, when the network goes away in that step."""
    put_back(before, folder)
    with Relay(server.port) as relay, door.open(server.target(folder, port=relay.port)) as gate:
        for earlier in list(STEPS)[: list(STEPS).index(step)]:
            STEPS[earlier](gate)
        relay.cut_after(40)
        with pytest.raises(Unavailable) as cut:
            STEPS[step](gate)
    assert cut.value.code == "gateway-cut"
    assert cut.value.facts["seen"]
    judge(by_folder)


def test_a_connection_cut_after_so_many_octets(
    server: Server, door: GatewayWays, folder: Path, before: Path, by_folder: Way
) -> None:
    """Broken if it fails: as above, at moments that nobody chose."""
    with Relay(server.port) as relay, door.open(server.target(folder, port=relay.port)) as gate:
        begun = relay.passed
        deliver(gate, NEW, OLD)
        needed = relay.passed - begun
    seen = set()
    for cut in range(CUTS):
        put_back(before, folder)
        with Relay(server.port) as relay, door.open(server.target(folder, port=relay.port)) as gate:
            relay.cut_after(needed * cut // CUTS)
            with pytest.raises(Unavailable) as gone:
                deliver(gate, NEW, OLD)
            assert gone.value.code == "gateway-cut"
        shown = on_disk(folder)
        assert shown in (whole(OLD), whole(NEW))
        seen.add(shown == whole(NEW))
    assert seen == {False, True}
    judge(by_folder)


def test_a_connection_cut_while_it_is_made(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a network that goes away at once is told in riddles."""
    for most in (0, 20, 700, 2500):
        with Relay(server.port, most=most) as relay:
            opening = door.open(server.target(folder, port=relay.port))
            with pytest.raises(Unavailable) as cut, opening:
                pytest.fail("it opened")
        assert cut.value.code == "gateway-cut"


CALLS = ("open", "fsync", "replace", "rename", "symlink", "link", "unlink", "mkdir", "rmdir", "scandir", "readlink")


class Stick:
    """Counts what is done on a disk, and from one call on lets everything fail as if it were pulled out."""

    def __init__(self, patch: pytest.MonkeyPatch, folder: Path, out_at: int) -> None:
        self.calls = 0
        self._folder = str(folder)
        self._out_at = out_at
        for name in CALLS:
            patch.setattr(os, name, self._counted(getattr(os, name)))

    def _counted(self, genuine: Callable[..., object]) -> Callable[..., object]:
        def call(*given: object, **more: object) -> object:
            on_stick = genuine is not os_open or str(given[0]).startswith(self._folder)
            if on_stick:
                self.calls += 1
                if self.calls >= self._out_at:
                    raise OSError(errno.EIO, os.strerror(errno.EIO))
            return genuine(*given, **more)

        return call


os_open = os.open


@pytest.mark.parametrize("kind", ["by_folder", "linkless"])
def test_a_stick_pulled_out_at_every_moment(kind: str, request: pytest.FixtureRequest, tmp_path: Path) -> None:
    """Broken if it fails: a stick that was pulled out too early holds a torn set, or none."""
    way: Way = request.getfixturevalue(kind)
    assert way.folder is not None
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
    before = tmp_path / "before"
    shutil.copytree(way.folder, before, symlinks=True)
    seen = []
    for out_at in range(1, 500):
        put_back(before, way.folder)
        with pytest.MonkeyPatch.context() as patch:
            Stick(patch, way.folder, out_at)
            code = code_of_delivering(way)
        if code == "":
            break
        assert code == "gateway-cut"
        if kind == "by_folder" or (way.folder / IN_FORCE).exists():
            assert on_disk(way.folder) in (whole(OLD), whole(NEW))
        after = found(way)
        assert after in (whole(OLD), whole(NEW))
        seen.append(after == whole(NEW))
    assert len(seen) > 20
    assert seen == sorted(seen)
    assert set(seen) == {False, True}
    judge(way)
