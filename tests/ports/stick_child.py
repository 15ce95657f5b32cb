"""Writes to a stick that is a file system of its own, in a mount namespace of its own; says what came of it.

    stick_child.py IMAGE FOLDER whole|lying|full|pulled

``lying``: the device gives back other bytes than it was given, behind the back of the system, which remembers the
right ones. ``full``: less room than the file needs.
"""

from __future__ import annotations

import subprocess
import sys
from contextlib import suppress
from pathlib import Path

from hearthkey.adapters import files as disk
from hearthkey.core.errors import HearthkeyError

DATA = b"Quince Cottage, Odile's tablet. " * 2048


def lie(image: Path) -> None:
    """Alter on the device what was just written there."""
    raw = image.read_bytes()
    at = raw.find(DATA[:4096])
    assert at > 0, "the file is not on the device yet"
    with image.open("r+b") as device:
        device.seek(at)
        device.write(b"something else")


def fill(folder: Path) -> None:
    """Leave no room, not even what is kept for root."""
    with suppress(OSError), (folder / "filler").open("wb", buffering=0) as filler:
        while filler.write(b"q" * 4096):
            pass


def main() -> None:
    """Mount, write, tell."""
    image, folder, how = Path(sys.argv[1]), Path(sys.argv[2]), sys.argv[3]
    mounted = subprocess.run(["mount", "-o", "loop", image, folder], capture_output=True, text=True, check=False)
    if mounted.returncode:
        sys.stdout.write(f"cannot mount: {mounted.stderr.strip()}")
        return
    real = disk.read_back

    def read_back(path: Path) -> bytes:
        if how == "lying":
            lie(image)
            assert path.read_bytes() == DATA, "the system does not remember: this proves nothing"
        return real(path)

    disk.read_back = read_back
    try:
        if how == "full":
            fill(folder)
        free = disk.DiskFiles().free(folder) or 0
        path = disk.DiskFiles().write(folder, "odile-tablet.p12", DATA)
        ours = disk.DiskFiles().remove(path, disk.DiskFiles().mark(path) or "")
        sys.stdout.write(f"written, {'room' if free > len(DATA) else 'no room'}, removed {ours}")
    except HearthkeyError as error:
        left = sorted(one.name for one in folder.iterdir() if one.name not in {"lost+found", "filler"})
        sys.stdout.write(f"{error.code} {left}")
    finally:
        subprocess.run(["umount", folder], check=True)


if __name__ == "__main__":
    main()
