"""Every way to a gateway's folder keeps what the port promises: ssh, a folder with links and without, and the fake."""

from __future__ import annotations

import os
import stat
import subprocess
import threading
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core.errors import Cancelled, Refused, Unavailable
from hearthkey.core.pack import MANIFEST, PackFile
from hearthkey.core.target import IN_FORCE, SETS
from tests.gateway.contract import LIMIT, NEW, ODD_NAME, OLD, Way, deliver, found, lay_down, whole
from tests.judges import needs


def test_nothing_is_in_force_before_the_first_delivery(way: Way) -> None:
    """Broken if it fails: an empty gateway cannot be told from one that holds something."""
    with way.door.open(way.target) as gate:
        assert gate.in_force() is None
        assert gate.read("41-00000000", [MANIFEST], LIMIT) == {}
        gate.keep_only([])
        assert gate.in_force() is None


def test_what_is_delivered_is_in_force(way: Way) -> None:
    """Broken if it fails: the gateway does not get its files."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
    assert way.look() == whole(OLD)
    assert found(way) == whole(OLD)


def test_a_second_delivery_replaces_the_first(way: Way) -> None:
    """Broken if it fails: a stopped phone gets in with the list of before."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
    assert way.look() == whole(NEW)
    with way.door.open(way.target) as gate:
        assert gate.read(OLD.set_id, [MANIFEST], LIMIT) == {}


def test_a_set_is_laid_down_without_touching_the_one_in_force(way: Way) -> None:
    """Broken if it fails: a delivery that is cut off leaves a torn set in force."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        lay_down(gate, NEW, OLD)
        assert gate.in_force() == OLD.set_id
        assert gate.read(OLD.set_id, OLD.names, LIMIT) == whole(OLD)
        assert gate.read(NEW.set_id, NEW.names, LIMIT) == whole(NEW)
    assert way.look() == whole(OLD)


def test_the_set_of_before_can_be_put_back(way: Way) -> None:
    """Broken if it fails: after a command that failed the gateway is left with what it could not load."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        lay_down(gate, NEW, OLD)
        gate.switch(NEW.set_id)
        gate.switch(OLD.set_id)
        assert gate.in_force() == OLD.set_id
        assert gate.read(OLD.set_id, OLD.names, LIMIT) == whole(OLD)
    assert way.look() == whole(OLD)


def test_what_lies_under_an_id_already_is_replaced(way: Way) -> None:
    """Broken if it fails: what a run left that was cut off gets into the next set."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        gate.put_set(NEW.set_id, [PackFile("own/stray.txt", b"left"), PackFile(MANIFEST, b"half")], [], None)
        lay_down(gate, NEW, OLD)
        gate.switch(NEW.set_id)
    assert way.look() == whole(NEW)


def test_the_set_in_force_is_mended_in_its_place(way: Way) -> None:
    """Broken if it fails: a file that was damaged at the gateway stays so."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        name = "gateway-certificate.der"
        gate.put_set(OLD.set_id, [PackFile(name, b"damaged")], [], OLD.set_id)
        assert way.look() == whole(OLD) | {name: b"damaged"}
        gate.put_set(OLD.set_id, [OLD[name]], [one for one in OLD.names if one != name], OLD.set_id)
        gate.switch(OLD.set_id)
        assert gate.in_force() == OLD.set_id
    assert way.look() == whole(OLD)


def test_the_set_in_force_is_never_removed(way: Way) -> None:
    """Broken if it fails: a slip of ours leaves the gateway without its files."""
    with way.door.open(way.target) as gate:
        deliver(gate, OLD, None)
        gate.keep_only([])
    assert way.look() == whole(OLD)


def test_a_file_over_the_limit_is_cut_there(way: Way) -> None:
    """Broken if it fails: a huge file at the gateway fills the memory here."""
    with way.door.open(way.target) as gate:
        gate.put_set("1-a", [PackFile("list.crl", b"q" * 700)], [], None)
        for limit in (0, 1, 600, 699, 700, 701):
            assert gate.read("1-a", ["list.crl"], limit) == {"list.crl": b"q" * min(limit, 700)}


def test_a_file_far_over_the_limit_is_cut_there(real: Way) -> None:
    """Broken if it fails: as above, for a file that comes in many pieces."""
    assert real.folder is not None
    (real.folder / SETS / "1-a").mkdir(parents=True)
    (real.folder / SETS / "1-a" / "list.crl").write_bytes(b"q" * 3_000_000)
    with real.door.open(real.target) as gate:
        assert gate.read("1-a", ["list.crl"], 100_000) == {"list.crl": b"q" * 100_000}
        assert gate.read("1-a", ["list.crl"], 3_000_001) == {"list.crl": b"q" * 3_000_000}


def test_secrets_are_readable_by_their_owner_alone(real: Way) -> None:
    """Broken if it fails: everybody at the gateway can read its key."""
    assert real.folder is not None
    with real.door.open(real.target) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
    modes = {name: stat.S_IMODE((real.folder / IN_FORCE / name).stat().st_mode) for name in NEW.names}
    assert modes == {file.name: file.mode for file in NEW.files}
    assert modes["gateway-key.pem"] == modes[ODD_NAME] == 0o600


def test_nothing_of_ours_stays_beside_the_sets(real: Way) -> None:
    """Broken if it fails: the gateway's folder fills with leftovers."""
    assert real.folder is not None
    with real.door.open(real.target) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
    assert {path.name for path in real.folder.iterdir()} == {SETS, IN_FORCE}
    assert not [path for path in real.folder.rglob("*") if path.name.startswith(".half")]


def test_what_is_no_ordinary_file_is_left_out(real: Way) -> None:
    """Broken if it fails: reading a pipe or a device never ends."""
    assert real.folder is not None
    made = real.folder / SETS / "1-a"
    (made / "folder").mkdir(parents=True)
    os.mkfifo(made / "pipe")
    with real.door.open(real.target) as gate:
        assert gate.read("1-a", ["folder", "none", "pipe", "folder/none"], LIMIT) == {}


def test_a_link_among_the_sets_is_not_followed(real: Way, tmp_path: Path) -> None:
    """Broken if it fails: tidying up removes what the householder keeps elsewhere."""
    assert real.folder is not None
    kept = tmp_path / "photographs"
    kept.mkdir()
    (kept / "odile.jpg").write_bytes(b"1938")
    with real.door.open(real.target) as gate:
        deliver(gate, OLD, None)
    subprocess.run([needs("ln"), "-s", kept, real.folder / SETS / "9-photographs"], check=True)
    with real.door.open(real.target) as gate:
        gate.keep_only([OLD.set_id])
    assert (kept / "odile.jpg").read_bytes() == b"1938"


def test_a_missing_folder_is_told(real: Way) -> None:
    """Broken if it fails: a stick that is not there ends in a trace, or the files go somewhere else."""
    assert real.folder is not None
    real.folder.rmdir()
    with pytest.raises(Unavailable) as missing, real.door.open(real.target):
        pytest.fail("there is no such folder")
    assert missing.value.code == "gateway-folder-missing"


def test_an_in_force_of_another_hand_is_told(real: Way) -> None:
    """Broken if it fails: somebody's own folder of that name is taken for ours, or written over."""
    assert real.folder is not None
    (real.folder / IN_FORCE).mkdir()
    (real.folder / IN_FORCE / "photograph.jpg").write_bytes(b"1938")
    with pytest.raises(Unavailable) as odd, real.door.open(real.target) as gate:
        gate.in_force()
    assert odd.value.code == "gateway-odd"
    assert (real.folder / IN_FORCE / "photograph.jpg").read_bytes() == b"1938"


def test_cancelling_ends_the_next_step(way: Way) -> None:
    """Broken if it fails: the householder waits for what they no longer want."""
    cancel = threading.Event()
    with way.door.open(way.target, cancel) as gate:
        gate.in_force()
        cancel.set()
        with pytest.raises(Cancelled):
            gate.in_force()
    with pytest.raises(Cancelled), way.door.open(way.target, cancel):
        pytest.fail("it was cancelled before it began")


def test_a_folder_runs_no_commands(by_folder: Way) -> None:
    """Broken if it fails: a command is thought to have run on a stick."""
    with by_folder.door.open(by_folder.target) as gate:
        with pytest.raises(Refused) as refused:
            gate.run("true")
        assert refused.value.code == "no-command-here"
        assert gate.now() is None
    assert by_folder.door.host_key(by_folder.target) is None


@pytest.mark.parametrize("name", ["-rf", "two words", 'Odile\'s "box"', "a*b?[c]", "back\\slash", "küche #1", "~"])
def test_folders_with_odd_names(real: Way, name: str) -> None:
    """Broken if it fails: a folder with a space in its name is missed, or a pattern in it meets others."""
    assert real.folder is not None
    odd = real.folder / name
    odd.mkdir()
    with real.door.open(replace(real.target, folder=str(odd))) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
    assert {path.name for path in odd.iterdir()} == {SETS, IN_FORCE}
    assert {path.name for path in real.folder.iterdir()} == {name}
