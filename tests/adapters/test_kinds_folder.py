"""The householder's own device kinds beside ours: they correct, they add, and a broken one stops nothing."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.adapters.kinds_folder import KindsFolder
from hearthkey.core.errors import Unavailable
from tests.fakes.kinds import KINDS, SHIPPED

LINUX = (SHIPPED / "linux.toml").read_bytes()


@pytest.fixture
def shelf(tmp_path: Path) -> KindsFolder:
    """Ours, and an own folder that does not exist yet."""
    return KindsFolder(SHIPPED, tmp_path / "data" / "kinds", DiskFiles())


def test_an_own_file_corrects_and_another_adds(shelf: KindsFolder, tmp_path: Path) -> None:
    """Broken if it fails: a householder waits for a release."""
    path = shelf.keep("linux", LINUX.replace(b"key_set = 'compact'", b"key_set = 'suite-384'"))
    shelf.keep("ship", LINUX.replace(b"name = 'linux'", b"name = 'ship'"))
    found = shelf.load()
    assert (found.find("linux").key_set.name, found.find("linux").own) == ("suite-384", True)
    assert found.names == (*KINDS.names[:-1], "ship", "other")
    assert not found.find("mac").own
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert stat.S_IMODE((tmp_path / "data").stat().st_mode) == 0o700
    assert shelf.forget("linux")
    assert shelf.load().find("linux") == KINDS.find("linux")
    assert not shelf.forget("linux")


def test_a_broken_own_file_is_told_and_left_out(shelf: KindsFolder, tmp_path: Path) -> None:
    """Broken if it fails: a slip in one file takes every device's kind away, or is passed over in silence."""
    own = tmp_path / "data" / "kinds"
    shelf.keep("linux", b"name = ")
    shelf.keep("mac", LINUX)
    (own / "folder.toml").mkdir()
    (own / "huge.toml").write_bytes(b"#" * 100_000)
    (own / "notes.txt").write_text("not a kind", encoding="utf-8")
    found = shelf.load()
    assert found.all == KINDS.all
    assert {one.file: one.trouble.code for one in found.left_out} == {
        "folder.toml": "file-not-a-file",
        "huge.toml": "file-too-large",
        "linux.toml": "kind-file-unreadable",
        "mac.toml": "kind-file-called",
    }


def test_a_file_that_cannot_be_opened_is_left_out_too(tmp_path: Path) -> None:
    """Broken if it fails: a file of another user's keeps the app from starting."""

    class Closed(DiskFiles):
        def read(self, path: Path, limit: int) -> bytes:
            del limit
            raise Unavailable("folder-read-only", path=str(path), seen="Permission denied")

    (tmp_path / "linux.toml").write_bytes(LINUX)
    (left,) = KindsFolder(SHIPPED, tmp_path, Closed()).load().left_out
    assert (left.file, left.trouble.code, left.trouble.facts["seen"]) == (
        "linux.toml",
        "kind-file-closed",
        "Permission denied",
    )


@pytest.mark.parametrize("name", ["../data/kinds/linux", "/etc/passwd", "", ".", "LINUX", "linux\n"])
def test_no_name_leads_out_of_the_folder(shelf: KindsFolder, name: str) -> None:
    """Broken if it fails: whoever removes a kind by a crooked name deletes a file elsewhere."""
    shelf.keep("linux", LINUX)
    assert shelf.text_of(name) is None
    assert not shelf.forget(name)
    assert shelf.text_of("linux") == LINUX


def test_a_folder_that_cannot_be_made_is_told(tmp_path: Path) -> None:
    """Broken if it fails: keeping a kind on a disk that does not take it ends in a trace."""
    (tmp_path / "data").write_bytes(b"a file where a folder should be")
    with pytest.raises(Unavailable):
        KindsFolder(SHIPPED, tmp_path / "data" / "kinds", DiskFiles()).keep("linux", LINUX)
