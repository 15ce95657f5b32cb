"""Reads a folder that anybody may have filled: within limits, plain files only, no link followed, nothing written."""

from __future__ import annotations

import errno
import os
import stat
from dataclasses import dataclass, field
from pathlib import Path

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.services.adopt_ports import FolderFile, Passed

LARGEST = 4 * 1024 * 1024
"""Octets of one file. Ten thousand entries of a list take half a megabyte."""
MOST_FILES = 2_000
MOST_NAMES = 20_000
"""Names looked at, whatever they are."""
MOST_TOGETHER = 64 * 1024 * 1024
DEEPEST = 6
"""Folders within folders."""

_NO_LINK = getattr(os, "O_NOFOLLOW", 0)
_READ = os.O_RDONLY | _NO_LINK | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_CLOEXEC", 0)
_FOLDER = _READ | getattr(os, "O_DIRECTORY", 0)


@dataclass
class _Walk:
    files: list[FolderFile] = field(default_factory=list)
    passed: list[Passed] = field(default_factory=list)
    names: int = 0
    octets: int = 0

    def pass_over(self, name: str, why: str) -> None:
        if len(self.passed) < MOST_FILES:
            self.passed.append(Passed(name, why))

    @property
    def is_full(self) -> bool:
        return self.names >= MOST_NAMES or len(self.files) >= MOST_FILES or self.octets >= MOST_TOGETHER


class DiskFolder:
    """The port `services.adopt_ports.FolderReading` over the disk."""

    def read(self, folder: Path) -> tuple[list[FolderFile], list[Passed]]:
        """See the port."""
        walk = _Walk()
        try:
            if folder.is_dir():
                handle = os.open(folder, _FOLDER & ~_NO_LINK)
                try:
                    _read_folder(walk, handle, "", 0)
                finally:
                    os.close(handle)
            elif folder.exists():
                _read_file(walk, None, str(folder), folder.name)
            else:
                raise Refused("folder-missing", path=str(folder))
        except OSError as error:
            raise Unavailable("folder-closed", path=str(folder), seen=error.strerror or "") from error
        return walk.files, walk.passed


def _read_folder(walk: _Walk, handle: int, prefix: str, depth: int) -> None:
    names = sorted(os.listdir(handle))  # through a handle, so that nobody can swap the folder for a link
    for name in names:
        shown = f"{prefix}{os.fsencode(name).decode('utf-8', 'replace')}"
        if walk.is_full:
            walk.pass_over(shown, "many")
            return
        walk.names += 1
        try:
            mode = os.stat(name, dir_fd=handle, follow_symlinks=False).st_mode
            if stat.S_ISLNK(mode):
                walk.pass_over(shown, "link")
            elif stat.S_ISREG(mode):
                _read_file(walk, handle, name, shown)
            elif not stat.S_ISDIR(mode):
                walk.pass_over(shown, "special")
            elif depth == DEEPEST:
                walk.pass_over(shown, "deep")
            else:
                _read_below(walk, handle, name, f"{shown}/", depth + 1)
        except OSError as error:
            walk.pass_over(shown, "link" if error.errno == errno.ELOOP else "closed")


def _read_below(walk: _Walk, handle: int, name: str, prefix: str, depth: int) -> None:
    below = os.open(name, _FOLDER, dir_fd=handle)
    try:
        _read_folder(walk, below, prefix, depth)
    finally:
        os.close(below)


def _read_file(walk: _Walk, handle: int | None, name: str, shown: str) -> None:
    opened = os.open(name, _READ if handle is not None else _READ & ~_NO_LINK, dir_fd=handle)
    try:
        seen = os.fstat(opened)
        if not stat.S_ISREG(seen.st_mode):
            walk.pass_over(shown, "special")
            return
        data = b"" if seen.st_size > LARGEST else _all_of(opened)
        if seen.st_size > LARGEST or len(data) > LARGEST:
            walk.pass_over(shown, "large")
            return
    finally:
        os.close(opened)
    walk.octets += len(data)
    walk.files.append(FolderFile(shown, data))


def _all_of(opened: int) -> bytes:
    """The file, or one octet more than is allowed: a size is a promise, and a growing file breaks it."""
    found = bytearray()
    while len(found) <= LARGEST and (piece := os.read(opened, LARGEST + 1 - len(found))):
        found += piece
    return bytes(found)
