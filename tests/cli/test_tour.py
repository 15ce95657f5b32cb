"""The tour: the whole main job as a program of its own, without a keyring, and all of it or nothing."""

from __future__ import annotations

import json
import stat
import subprocess
from pathlib import Path
from typing import Any

import pytest

from hearthkey.cli import tour
from hearthkey.cli.main import run
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Unavailable
from hearthkey.pki import guard
from tests.cli.running import Ran, program
from tests.fakes.dice import SeededDice
from tests.fakes.files import RecordingFiles
from tests.fakes.home import World, opener
from tests.fakes.workshop import QuickWorkshop
from tests.judges import needs


@pytest.fixture(scope="module")
def walked(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Ran]:
    """Walk the tour where there is no keyring."""
    home = tmp_path_factory.mktemp("home")
    return home / "hearthkey-tour", program(home, "tour", "--json")


@pytest.fixture(scope="module")
def told(walked: tuple[Path, Ran]) -> dict[str, Any]:
    """What tour.json tells."""
    found: dict[str, Any] = json.loads((walked[0] / "tour.json").read_text(encoding="utf-8"))
    return found


def test_the_tour_ends_well_without_a_keyring(walked: tuple[Path, Ran], told: dict[str, Any]) -> None:
    """Broken if it fails: the first thing somebody tries does not work; or --json gives two objects."""
    _, ran = walked
    assert ran.code == 0
    assert "There is no keyring here that the app can use." in ran.err
    assert ran.told == told
    assert told["household"]["kept_in"] == "file"


def test_tour_json_names_every_file_and_every_file_is_there(walked: tuple[Path, Ran], told: dict[str, Any]) -> None:
    """Broken if it fails: whoever checks the tour with other tools looks for files that are not there."""
    folder, _ = walked
    assert {tuple(one) for one in told["files"]} == {("path", "form", "device", "passphrase")}
    named = {Path(one["path"]) for one in [*told["files"], *told["lists"]]}
    kept = {path for part in ("bundles", "certificates", "lists") for path in (folder / part).iterdir()}
    assert named == kept
    assert {stat.S_IMODE(path.stat().st_mode) for path in named} == {0o600}
    forms = {(one["device"], one["form"]) for one in told["files"] if one["form"] != "certificate"}
    assert len(forms) == 4 * len(Form)
    assert all(one["passphrase"].count(" ") == 6 for one in told["files"] if one["form"] != "certificate")


def test_tour_json_tells_devices_and_lists(told: dict[str, Any]) -> None:
    """Broken if it fails: the tour shows less than the main job."""
    assert {tuple(one) for one in told["devices"]} == {("name", "person", "serial", "state")}
    assert {one["name"]: one["state"] for one in told["devices"]} == {
        "Ines’s phone": "revoked",
        "Tomasz’s laptop": "waiting",
        "Odile’s tablet": "stopped",
        "Boiler engineer’s phone": "waiting",
    }
    assert {tuple(one) for one in told["lists"]} == {("path", "number", "good_until")}
    assert [one["number"] for one in told["lists"]] == [1, 1, 2, 2, 3, 3, 4, 4, 5, 5]
    assert any("its rehearsal stops at the step 'list'" in step for step in told["steps"])


def test_openssl_opens_what_the_tour_wrote(told: dict[str, Any]) -> None:
    """Broken if it fails: the tour's files are good for this app alone. Judge: the openssl program."""
    for one in told["files"]:
        if one["form"] == "pkcs12":
            opened = subprocess.run(
                [needs("openssl"), "pkcs12", "-in", one["path"], "-noout", "-passin", f"pass:{one['passphrase']}"],
                capture_output=True,
                check=False,
            )
            assert opened.returncode == 0, one["device"]


@pytest.fixture
def hurried(monkeypatch: pytest.MonkeyPatch) -> None:
    """No scrypt: what is looked at here is folders and vaults, and no key is opened."""
    monkeypatch.setattr(guard, "seal", lambda *_: "stands in for the CA key text")


@pytest.mark.usefixtures("hurried")
def test_the_tour_can_be_walked_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the second run needs a broom, or leaves halves beside its folder (bundles left out)."""
    monkeypatch.setattr(tour, "_write_every_form", lambda *_: None)
    monkeypatch.setattr(tour, "_stops_at", lambda *_: "list")
    folder = tmp_path / "somewhere" / "tour"
    serials: list[set[str]] = []
    for _ in range(2):
        world = World(workshop=QuickWorkshop(), dice=SeededDice(str(len(serials))))
        assert run(["tour", "--into", str(folder), "--quiet"], opener(world)) == 0
        told = json.loads((folder / "tour.json").read_text(encoding="utf-8"))
        assert all(Path(one["path"]).is_file() for one in [*told["files"], *told["lists"]])
        serials.append({one["serial"] for one in told["devices"]})
    assert serials[0].isdisjoint(serials[1])
    assert [path.name for path in folder.parent.iterdir()] == ["tour"]


def test_a_folder_with_something_else_in_it_is_left_alone(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Broken if it fails: the tour deletes somebody's photographs."""
    (tmp_path / "photo.jpg").write_bytes(b"the roof in spring")
    assert run(["tour", "--into", str(tmp_path), "--json"], opener(World())) == 3
    assert json.loads(capsys.readouterr().out)["error"]["code"] == "tour-folder-taken"
    assert [path.name for path in tmp_path.iterdir()] == ["photo.jpg"]


def test_a_file_in_the_way_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Broken if it fails: a file's name ends in a trace."""
    (tmp_path / "tour").write_bytes(b"")
    assert run(["tour", "--into", str(tmp_path / "tour")], opener(World())) == 4
    assert "Not a directory" in capsys.readouterr().err


def full() -> RecordingFiles:
    """A disk without room for a single file."""
    files = RecordingFiles()
    files.trouble = "disk-full"
    return files


@pytest.mark.usefixtures("hurried")
@pytest.mark.parametrize("taken", [False, True], ids=["first time", "again"])
def test_a_full_disk_leaves_nothing_half(
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    taken: bool,  # noqa: FBT001 - a row of the table
) -> None:
    """Broken if it fails: half a tour stands where a whole one stood, or secrets stay in the keyring."""
    folder = tmp_path / "tour"
    if taken:
        folder.mkdir()
        (folder / "tour.json").write_text("{}", encoding="ascii")
    world = World(files=full(), workshop=QuickWorkshop())
    assert run(["tour", "--into", str(folder)], opener(world)) == 4
    assert "The disk is full" in capsys.readouterr().err
    assert [path.name for path in tmp_path.rglob("*")] == (["tour", "tour.json"] if taken else [])
    assert world.vault.secrets == {}


@pytest.mark.usefixtures("hurried")
def test_a_practice_household_leaves_no_secret_in_the_keyring(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: every tour leaves its secrets in somebody's keyring for ever."""
    world = World(workshop=QuickWorkshop())

    def cut_short(*_: object) -> None:
        assert len(world.vault.secrets) == 6
        raise Unavailable("disk-full", path="practice")

    monkeypatch.setattr(tour, "_write_every_form", cut_short)
    assert run(["tour", "--into", str(tmp_path / "tour"), "--quiet"], opener(world)) == 4
    assert world.vault.secrets == {}
