"""Judges of other hands open the archive: 7-Zip and libarchive's bsdtar."""

from __future__ import annotations

import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest

from hearthkey.core.secret import Secret
from hearthkey.formats import archive
from tests.formats.practice import PASSPHRASE, SETTINGS, noise
from tests.judges import needs

MEMBERS = {"ines-phone.p12": noise(4700), archive.NOTE_NAME: archive.note(SETTINGS)}


@pytest.fixture
def packed(tmp_path: Path) -> Path:
    """Return the path of an archive of the practice household."""
    path = tmp_path / archive.file_name(SETTINGS)
    path.write_bytes(archive.write(MEMBERS, Secret(PASSPHRASE), datetime(2026, 11, 25, 8, 0, tzinfo=UTC)))
    return path


def run(*arguments: str | Path) -> subprocess.CompletedProcess[bytes]:
    """Run a judge without a keyboard, so that it cannot ask."""
    return subprocess.run(arguments, capture_output=True, check=False, stdin=subprocess.DEVNULL, timeout=60)


def unpacked(folder: Path) -> dict[str, bytes]:
    """Read every file of a folder."""
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def test_7zip_opens_it_with_the_passphrase(packed: Path, tmp_path: Path) -> None:
    """Broken if it fails: the relative's unpacker cannot open what was sent."""
    out = tmp_path / "out"
    told = run(needs("7z"), "x", f"-p{PASSPHRASE}", f"-o{out}", packed)
    assert told.returncode == 0, told.stdout + told.stderr
    assert unpacked(out) == MEMBERS


def test_7zip_sees_aes_256_on_every_member(packed: Path) -> None:
    """Broken if it fails: another judge finds a member less protected than we say."""
    told = run(needs("7z"), "l", "-slt", packed)
    assert told.stdout.count(b"Method = AES-256 Deflate") == len(MEMBERS)
    assert told.stdout.count(b"Encrypted = +") == len(MEMBERS)


def test_7zip_refuses_another_passphrase(packed: Path, tmp_path: Path) -> None:
    """Broken if it fails: the archive opens for anybody."""
    told = run(needs("7z"), "x", "-pnot it", f"-o{tmp_path / 'out'}", packed)
    assert told.returncode != 0
    assert b"Wrong password" in told.stdout + told.stderr


def test_an_archive_of_7zip_is_read(tmp_path: Path) -> None:
    """Broken if it fails: files that the relative packed again cannot be tried here."""
    (tmp_path / "a.txt").write_bytes(b"hello, Odile\n" * 20)
    packed = tmp_path / "a.zip"
    told = run(needs("7z"), "a", "-tzip", "-mem=AES256", f"-p{PASSPHRASE}", packed, tmp_path / "a.txt")
    assert told.returncode == 0, told.stdout + told.stderr
    assert archive.read(packed.read_bytes(), Secret(PASSPHRASE)) == {"a.txt": b"hello, Odile\n" * 20}


def test_libarchive_opens_it_with_the_passphrase(packed: Path, tmp_path: Path) -> None:
    """Broken if it fails: the unpackers of desktops that are built on libarchive cannot open it."""
    out = tmp_path / "out"
    out.mkdir()
    told = run(needs("bsdtar"), "-x", "--passphrase", PASSPHRASE, "-f", packed, "-C", out)
    assert told.returncode == 0, told.stderr
    assert unpacked(out) == MEMBERS
