"""A file system that is really full, where this machine lets a test mount one."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.errors import Unavailable

ROOM = 512 * 1024


@pytest.fixture
def stick(tmp_path: Path) -> Iterator[Path]:
    """A memory disk of 512 KiB, or a named skip."""
    mounted = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", f"size={ROOM}", "tmpfs", str(tmp_path)], capture_output=True, check=False
    )
    if mounted.returncode != 0:
        pytest.skip("no memory disk can be mounted here (needs root)")
    try:
        yield tmp_path
    finally:
        subprocess.run(["umount", str(tmp_path)], check=True)


def test_nothing_half_written_stays_on_a_full_stick(stick: Path) -> None:
    """Broken if it fails: a stick carries half a bundle out of the house."""
    files = DiskFiles()
    files.write(stick, "list-1.crl", b"the old one")
    with pytest.raises(Unavailable) as unavailable:
        files.write(stick, "list-1.crl", b"q" * 2 * ROOM)
    assert unavailable.value.code == "disk-full"
    assert {path.name: path.read_bytes() for path in stick.iterdir()} == {"list-1.crl": b"the old one"}


def test_a_register_on_a_full_disk_keeps_what_it_had(stick: Path) -> None:
    """Broken if it fails: a full disk costs the household."""
    with closing(SqliteRegister(stick / FILE_NAME)) as register:
        with pytest.raises(Unavailable) as unavailable:
            register.expect_secrets((f"{number}/{'q' * 100}" for number in range(10_000)), "file")
        assert unavailable.value.code == "disk-full"
        assert register.loose_secrets() == []


def test_a_register_that_does_not_fit_is_told(stick: Path) -> None:
    """Broken if it fails: opening a household on a full disk ends in a trace."""
    (stick / FILE_NAME).write_bytes(b"")
    (stick / "fill").write_bytes(b"q" * (ROOM - 32 * 1024))
    with pytest.raises(Unavailable) as unavailable:
        SqliteRegister(stick / FILE_NAME)
    assert unavailable.value.code == "disk-full"
