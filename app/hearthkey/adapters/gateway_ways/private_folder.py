"""A folder for the time of one visit: for its owner alone, in memory where the system has such a place."""

from __future__ import annotations

import contextlib
import fcntl
import os
import re
import shutil
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

_PREFIX = "hearthkey-visit-"

_LONGEST = 60
"""A control socket's path has 108 octets at most, unix(7); ssh adds a random ending of 17 while it makes it."""

_PLAIN = re.compile(r"[A-Za-z0-9/._-]+")
"""No character that ssh's configuration would expand or split at."""

_SETTLED = 60.0
"""Seconds after which a folder without a living owner counts as left behind."""


@contextlib.contextmanager
def private_folder() -> Iterator[Path]:
    """Make a folder, and remove it with everything in it at the end of the block.

    What a visit that was killed left behind is removed as well: its folder is no longer locked.
    """
    base = _base()
    _sweep(base)
    folder = Path(tempfile.mkdtemp(prefix=_PREFIX, dir=base))
    held = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    try:
        fcntl.flock(held, fcntl.LOCK_EX)
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)
        os.close(held)


def _base() -> Path:
    """The user's runtime folder (XDG Base Directory Specification), else memory shared by all, else /tmp."""
    for place in (os.environ.get("XDG_RUNTIME_DIR", ""), "/dev/shm"):  # noqa: S108 - each visit's own folder is made by mkdtemp
        fits = len(os.fsencode(place)) <= _LONGEST and _PLAIN.fullmatch(place)
        if fits and Path(place).is_absolute() and os.access(place, os.W_OK | os.X_OK):
            return Path(place)
    return Path("/tmp")  # noqa: S108 - as above


def _sweep(base: Path) -> None:
    for left in base.glob(f"{_PREFIX}*"):
        with contextlib.suppress(OSError):
            known = left.lstat()
            if known.st_uid != os.getuid() or time.time() - known.st_mtime < _SETTLED:
                continue
            held = os.open(left, os.O_RDONLY | os.O_DIRECTORY | os.O_NOFOLLOW)
            try:
                fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
                shutil.rmtree(left, ignore_errors=True)
            finally:
                os.close(held)
