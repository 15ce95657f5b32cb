"""A real file system on a real block device, as a stick has one: what is read back comes from the device."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.judges import needs

CHILD = Path(__file__).with_name("stick_child.py")
KINDS = {"vfat": ("mkfs.vfat", ("-n", "QUINCE")), "ext4": ("mkfs.ext4", ("-q", "-L", "QUINCE", "-b", "4096"))}
"""Sticks are FAT; where the kernel has no FAT (a container's, say) the same is shown on another file system."""


@pytest.fixture(scope="module")
def image(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """An empty stick of eight megabytes."""
    if os.geteuid():
        pytest.skip("a loop device can be mounted by root alone")
    known = Path("/proc/filesystems").read_text(encoding="ascii").split()
    kind = next((one for one in KINDS if one in known), None)
    if kind is None:
        pytest.skip("this kernel has none of the file systems that are tried")
    made = tmp_path_factory.mktemp("stick") / "image"
    made.write_bytes(b"\0" * (8 << 20))
    maker, words = KINDS[kind]
    subprocess.run([needs(maker), *words, made], check=True, capture_output=True)
    return made


def on_stick(image: Path, tmp_path: Path, how: str) -> str:
    """Write to a fresh copy of the stick, in a process with mounts of its own."""
    stick, folder = tmp_path / "image", tmp_path / "mounted"
    stick.write_bytes(image.read_bytes())
    folder.mkdir()
    command = [needs("unshare"), "--mount", sys.executable, str(CHILD), str(stick), str(folder), how]
    needs("mount")
    ran = subprocess.run(command, capture_output=True, text=True, check=False)
    assert not ran.stderr, ran.stderr
    if ran.stdout.startswith("cannot mount"):
        pytest.skip(f"this computer does not mount: {ran.stdout}")
    return ran.stdout


def test_a_bundle_is_written_read_back_and_taken_away(image: Path, tmp_path: Path) -> None:
    """Broken if it fails: nothing can be carried on a stick, or what was carried cannot be tidied."""
    assert on_stick(image, tmp_path, "whole") == "written, room, removed True"


def test_a_stick_that_lost_it_is_found_out(image: Path, tmp_path: Path) -> None:
    """Broken if it fails: the system's own memory is read back, and a worn-out stick is handed over as whole."""
    assert on_stick(image, tmp_path, "lying") == "write-failed []"


def test_a_full_stick_keeps_nothing(image: Path, tmp_path: Path) -> None:
    """Broken if it fails: half a bundle lies on a stick that was too small."""
    assert on_stick(image, tmp_path, "full") == "disk-full []"
