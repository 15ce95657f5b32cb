"""Files on disk: whole or not at all, for their owner alone, and read with care."""

from __future__ import annotations

import errno
import os
import stat
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.services.ports import Files
from tests.fakes.files import RecordingFiles

FILES = pytest.mark.parametrize("files", [DiskFiles(), RecordingFiles()], ids=["disk", "fake"])
DISK = DiskFiles()


def code_of(folder: Path) -> str:
    """Return the code of what writing a file into a folder ends with."""
    with pytest.raises(Unavailable) as caught:
        DISK.write(folder, "ines-phone.p12", b"data")
    return caught.value.code


@FILES
@pytest.mark.parametrize("data", [b"", b"\x00\xff\r\n", b"q" * 300_000], ids=["empty", "octets", "large"])
def test_what_is_written_is_read_back(files: Files, tmp_path: Path, data: bytes) -> None:
    """Broken if it fails: a bundle changes on its way to the stick."""
    path = files.write(tmp_path / "new" / "folder", "ines-phone.p12", data)
    assert files.read(path, 300_000) == data


@FILES
def test_writing_again_replaces(files: Files, tmp_path: Path) -> None:
    """Broken if it fails: an old bundle is handed over instead of the new one."""
    files.write(tmp_path, "list-1.crl", b"the old and longer one")
    path = files.write(tmp_path, "list-1.crl", b"new")
    assert files.read(path, 100) == b"new"


@FILES
def test_a_file_over_the_limit_is_refused(files: Files, tmp_path: Path) -> None:
    """Broken if it fails: somebody's huge file fills the memory."""
    path = files.write(tmp_path, "big", b"q" * 101)
    with pytest.raises(Refused) as refused:
        files.read(path, 100)
    assert refused.value.code == "file-too-large"


@FILES
def test_a_missing_file_is_refused(files: Files, tmp_path: Path) -> None:
    """Broken if it fails: a slip of the finger ends in a trace."""
    with pytest.raises(Refused) as refused:
        files.read(tmp_path / "none", 100)
    assert refused.value.code == "file-missing"


def test_a_file_is_for_its_owner_alone(tmp_path: Path) -> None:
    """Broken if it fails: other users of the computer take a bundle away to guess at."""
    previous = os.umask(0)
    try:
        path = DISK.write(tmp_path / "new", "ines-phone.p12", b"data")
    finally:
        os.umask(previous)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700


@pytest.mark.parametrize("special", ["folder", "pipe", "device"])
def test_what_is_no_file_is_not_read(tmp_path: Path, special: str) -> None:
    """Broken if it fails: reading a pipe or a device never ends."""
    paths = {"folder": tmp_path, "pipe": tmp_path / "pipe", "device": Path("/dev/zero")}
    os.mkfifo(paths["pipe"])
    with pytest.raises(Refused) as refused:
        DISK.read(paths[special], 100)
    assert refused.value.code == "file-not-a-file"


@pytest.mark.parametrize("step", ["write", "fsync"])
@pytest.mark.parametrize(
    ("number", "code"),
    [
        (errno.ENOSPC, "disk-full"),
        (errno.EDQUOT, "disk-full"),
        (errno.EROFS, "folder-read-only"),
        (errno.EIO, "folder-gone"),
        (errno.ENODEV, "folder-gone"),
    ],
)
def test_a_disk_that_fails_leaves_the_old_file_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str, number: int, code: str
) -> None:
    """Broken if it fails: half a file stands where a whole one stood, or a half lies beside it."""
    DISK.write(tmp_path, "ines-phone.p12", b"the old one")
    genuine = os.write
    taken: list[int] = []

    def failing(handle: int, *data: bytes) -> int:
        if step == "write" and not taken:
            taken.append(genuine(handle, data[0][:2]))
            return 2
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(os, step, failing)
    assert code_of(tmp_path) == code
    monkeypatch.undo()
    assert {path.name: path.read_bytes() for path in tmp_path.iterdir()} == {"ines-phone.p12": b"the old one"}


def test_a_folder_that_nobody_may_write_to(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a read-only stick ends in a trace (the refusal is played: root may write anywhere)."""

    def refuse(*_: object, **__: object) -> int:
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

    monkeypatch.setattr(os, "open", refuse)
    assert code_of(tmp_path) == "folder-read-only"


def test_a_folder_that_is_a_file(tmp_path: Path) -> None:
    """Broken if it fails: --into with a file's name ends in a trace."""
    (tmp_path / "stick").write_bytes(b"")
    assert code_of(tmp_path / "stick" / "bundles") == "folder-gone"


def test_a_disk_that_gives_back_something_else(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a worn-out stick is handed over as if it held a bundle."""
    monkeypatch.setattr("hearthkey.adapters.files.read_back", lambda _: b"datX")
    assert code_of(tmp_path) == "write-failed"
    assert list(tmp_path.iterdir()) == []
