"""Bundles leave only after their rehearsal, whole, and for their owner alone."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.rehearsal import RehearsalFailed
from hearthkey.services.bundling import Bundling
from hearthkey.services.exporting import Exporting
from hearthkey.services.house import House
from tests.fakes.home import Home

Matrix = tuple[tuple[bool, ...], ...]


class FailingFiles(DiskFiles):
    """A stick that is pulled after some files."""

    def __init__(self, room: int) -> None:
        self._room = room

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """See the port."""
        if self._room == 0:
            raise Unavailable("folder-gone", path=str(folder), seen="pulled")
        self._room -= 1
        return super().write(folder, name, data)


class SeenPictures:
    """Pictures that remember which codes they were asked to draw."""

    def __init__(self) -> None:
        self.drawn: dict[str, list[Matrix]] = {"png": [], "svg": []}

    def png(self, matrix: Matrix) -> bytes:
        """See the port."""
        self.drawn["png"].append(matrix)
        return b"png"

    def svg(self, matrix: Matrix) -> bytes:
        """See the port."""
        self.drawn["svg"].append(matrix)
        return b"svg"

    def read_codes(self, data: bytes) -> tuple[str, ...]:
        """See the port."""
        return (data.decode(),)


def exporting(house: House, files: DiskFiles) -> Exporting:
    """The verb, with a disk of the test's own."""
    return Exporting(house.register, house.bundling, house.rehearsing, house.clock, files)


@pytest.mark.parametrize(
    ("form", "pattern"),
    [
        (Form.BUNDLE, "ines-phone.bundle.toml"),
        (Form.PKCS12, "ines-phone.p12"),
        (Form.ARCHIVE, "ines-phone.zip"),
        (Form.CODES, "ines-phone.code-*-of-*.png"),
    ],
)
def test_every_form_lands_on_the_disk(home: Home, tmp_path: Path, form: Form, pattern: str) -> None:
    """Broken if it fails: a form is rehearsed and never written, or readable by everybody."""
    done = home.house.exporting.export(home.newest("Ines phone"), form, tmp_path / "stick")
    assert done.rehearsal.passed
    found = sorted((tmp_path / "stick").iterdir())
    assert [str(path) for path in found] == sorted(done.changes.files)
    assert found == sorted((tmp_path / "stick").glob(pattern))
    assert {stat.S_IMODE(path.stat().st_mode) for path in found} == {0o600}
    assert home.house.register.diary()[-1].sentence.startswith("The bundle of Ines’s phone was rehearsed")


def test_nothing_is_written_when_the_rehearsal_fails(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a bundle that does not get in leaves the house."""
    home.stop("Ines phone")
    before = len(home.house.register.diary())
    with pytest.raises(RehearsalFailed) as failed:
        home.house.exporting.export(home.newest("Ines phone"), Form.BUNDLE, tmp_path / "stick")
    assert failed.value.facts["step"] == "list"
    assert not (tmp_path / "stick").exists()
    assert len(home.house.register.diary()) == before


@pytest.mark.parametrize("room", [0, 1, 2])
def test_a_stick_pulled_half_way_holds_no_half_bundle(home: Home, tmp_path: Path, room: int) -> None:
    """Broken if it fails: some of the codes look like all of them."""
    with pytest.raises(Unavailable) as unavailable:
        exporting(home.house, FailingFiles(room)).export(home.newest("Ines phone"), Form.CODES, tmp_path / "stick")
    assert unavailable.value.code == "folder-gone"
    assert list((tmp_path).glob("stick/*")) == []
    assert home.house.register.diary()[-1].verb == "add"


def test_the_codes_that_leave_are_those_that_were_rehearsed(home: Home) -> None:
    """Broken if it fails: SVG codes leave that nobody ever read, because another encryption was rehearsed."""
    pictures = SeenPictures()
    bundling = Bundling(home.house.register, home.house.vault, home.house.clock, pictures, bytes)
    bundle = home.house.bundling.open(home.newest("Ines phone"))
    leaves, proof = bundling.write_for_proof(bundle, Form.CODES, picture="svg")
    assert pictures.drawn["svg"] == pictures.drawn["png"] != []
    assert [one.name.removesuffix(".svg") for one in leaves] == [one.name.removesuffix(".png") for one in proof]
    assert {one.data for one in leaves} == {b"svg"}


def test_svg_lands_on_the_disk(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: codes cannot be printed."""
    done = home.house.exporting.export(home.newest("Ines phone"), Form.CODES, tmp_path / "stick", picture="svg")
    assert all(Path(path).read_bytes().startswith(b"<svg ") for path in done.changes.files)


def test_a_picture_of_another_kind_is_refused(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a slip of the finger ends in a trace."""
    with pytest.raises(Refused) as refused:
        home.house.exporting.export(home.newest("Ines phone"), Form.CODES, tmp_path, picture="gif")
    assert refused.value.code == "picture-unknown"


def test_a_lost_passphrase_is_told(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a bundle that nobody can open is written again and again."""
    for name in [one for one in home.world.vault.secrets if "/pass/" in one]:
        del home.world.vault.secrets[name]
    with pytest.raises(Refused) as refused:
        home.house.exporting.export(home.newest("Ines phone"), Form.BUNDLE, tmp_path)
    assert refused.value.code == "passphrase-lost"
