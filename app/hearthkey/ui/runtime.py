"""The one-time folder: where a bundle lies as a file while it is dragged out of the window, and no longer."""

from __future__ import annotations

import os
import shutil
import stat
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLockFile

from hearthkey.core.errors import Unavailable

_LOCK = ".lock"


class Runtime:
    """A folder of this process inside the desktop's runtime folder, for its owner alone.

    Each pass has a folder of its own in it, so that two bundles of one device never meet. A lock
    file tells other copies of the app that this one still runs.

    Args:
        folder: where the folders of all copies lie, for instance $XDG_RUNTIME_DIR/hearthkey.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._own = folder / str(QCoreApplication.applicationPid())
        self._lock: QLockFile | None = None

    def path_for(self, serial: str) -> Path:
        """The folder for one pass's file, made if it is not there.

        Raises:
            Unavailable: folder-read-only, where the folder cannot be made, or is somebody else's.
        """
        if self._lock is None:
            _make_private(self._folder)
            shutil.rmtree(self._own, ignore_errors=True)  # of an earlier process that had this number
            _make_private(self._own)
            self._lock = _lock(self._own)
            self._lock.tryLock(0)
        _make_private(self._own / serial)
        return self._own / serial

    def files_of(self, serial: str) -> list[Path]:
        """The files that lie there for a pass; none where nothing was made."""
        folder = self._own / serial
        if not folder.is_dir():
            return []
        return [one for one in sorted(folder.iterdir()) if not one.name.startswith(".")]

    def file_of(self, serial: str) -> Path | None:
        """The first of them, or None."""
        return next(iter(self.files_of(serial)), None)

    def forget(self, serial: str) -> None:
        """Remove a pass's file."""
        shutil.rmtree(self._own / serial, ignore_errors=True)

    def tidy(self) -> None:
        """Remove everything of this process; the window does so when it closes."""
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None
        shutil.rmtree(self._own, ignore_errors=True)

    def sweep(self) -> None:
        """Remove what copies of the app left that ended without tidying; those that run keep theirs."""
        if not self._folder.is_dir():
            return
        for left in self._folder.iterdir():
            if left == self._own or left.is_symlink() or not left.is_dir():
                continue
            lock = _lock(left)
            if lock.tryLock(0):
                lock.unlock()
                shutil.rmtree(left, ignore_errors=True)


def _lock(folder: Path) -> QLockFile:
    lock = QLockFile(str(folder / _LOCK))
    lock.setStaleLockTime(0)  # only a process that has ended makes it stale, not its age
    return lock


def _make_private(folder: Path) -> None:
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        seen = folder.lstat()
        if not stat.S_ISDIR(seen.st_mode) or (hasattr(os, "getuid") and seen.st_uid != os.getuid()):
            raise Unavailable("folder-read-only", path=str(folder), seen="not ours")
        folder.chmod(0o700)
    except OSError as error:
        raise Unavailable("folder-read-only", path=str(folder), seen=error.strerror or str(error)) from error
