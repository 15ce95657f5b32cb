"""What a crash in the middle of writing left in a folder goes when something is written there again, and only that."""

from __future__ import annotations

import os
import subprocess
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles

NAME, AGAIN = "ines-phone.p12", "tomasz-laptop.p12"


@pytest.fixture
def gone() -> int:
    """The number of a process that is gone."""
    process = subprocess.Popen(("true",))
    process.wait()
    return process.pid


def half(folder: Path, process: int, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Half a file, as a process that was killed in the middle of writing leaves it."""
    seen: list[Path] = []
    with monkeypatch.context() as watched:
        watched.setattr(os, "fsync", lambda _handle: seen.extend(folder.glob(".*")))
        DiskFiles().write(folder, NAME, b"whole").unlink()
    written = next(path for path in seen if str(os.getpid()) in path.name)
    left = written.with_name(written.name.replace(str(os.getpid()), str(process)))
    left.write_bytes(b"ha")
    return left


def test_half_a_file_goes(tmp_path: Path, gone: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: after a pulled plug half a bundle lies on the stick, where nobody sees it, for good."""
    left = half(tmp_path, gone, monkeypatch)
    DiskFiles().write(tmp_path, AGAIN, b"data")
    assert not left.exists()
    assert [path.name for path in tmp_path.iterdir()] == [AGAIN]


@pytest.mark.parametrize("process", [os.getpid(), os.getppid(), 1], ids=["we", "another", "somebody else’s"])
def test_what_is_being_written_stays(tmp_path: Path, process: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: two exports to one stick take each other’s files away."""
    left = half(tmp_path, process, monkeypatch)
    DiskFiles().write(tmp_path, AGAIN, b"data")
    assert left.exists()


def test_what_another_computer_writes_stays(tmp_path: Path, gone: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: on a shared folder a process of another computer is taken for one that is gone."""
    with monkeypatch.context() as elsewhere:
        elsewhere.setattr("platform.node", lambda: "odile")
        left = half(tmp_path, gone, monkeypatch)
    DiskFiles().write(tmp_path, AGAIN, b"data")
    assert left.exists()


def test_what_belongs_to_somebody_else_stays(tmp_path: Path, gone: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: on a shared folder one user deletes what another one wrote."""
    left = half(tmp_path, gone, monkeypatch)
    mine = os.getuid()
    monkeypatch.setattr(os, "getuid", lambda: mine + 1)
    DiskFiles().write(tmp_path, AGAIN, b"data")
    assert left.exists()


@pytest.mark.parametrize("kind", ["folder", "link", "name"])
def test_what_only_looks_like_it_stays(tmp_path: Path, gone: int, kind: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: something that the app never wrote is deleted, or a link leads it elsewhere."""
    left = half(tmp_path, gone, monkeypatch)
    left.unlink()
    elsewhere = tmp_path / "elsewhere"
    elsewhere.write_bytes(b"not ours")
    if kind == "folder":
        left.mkdir()
    elif kind == "link":
        left.symlink_to(elsewhere)
    else:
        left = left.with_name(".hearthkey-half-holidays")
        left.write_bytes(b"not ours")
    DiskFiles().write(tmp_path, AGAIN, b"data")
    assert left.exists()
    assert elsewhere.read_bytes() == b"not ours"
