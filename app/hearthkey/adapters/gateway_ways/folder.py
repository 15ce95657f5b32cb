"""A gateway's folder that this computer sees: a stick, a mounted share."""

from __future__ import annotations

import contextlib
import errno
import os
import shutil
import stat
import threading
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path

from hearthkey.adapters.gateway_ways.children import refuse_cancelled
from hearthkey.adapters.gateway_ways.told import shown
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.pack import PackFile
from hearthkey.core.target import IN_FORCE, SETS, By, Target
from hearthkey.services.gateway_ports import Gate, Ran

HALF = ".half"
"""The temporary name of a file while it is written; no file of a pack begins with a dot."""

NEXT = f"{IN_FORCE}.next"
"""With links: the link that is about to become `in-force`. Without: a file that names the set about to be it."""

_NAME = ".set"
"""Without links `in-force` is the set's own folder, moved there, and this file in it says which."""

_CODES = {
    errno.ENOSPC: "gateway-full",
    errno.EDQUOT: "gateway-full",
    errno.EROFS: "gateway-read-only",
    errno.EACCES: "gateway-read-only",
    errno.EPERM: "gateway-read-only",
    errno.EIO: "gateway-cut",
    errno.ENODEV: "gateway-cut",
    errno.ENXIO: "gateway-cut",
    errno.ENOMEDIUM: "gateway-cut",
    errno.ESTALE: "gateway-cut",
    errno.ENOTCONN: "gateway-cut",
    errno.ESHUTDOWN: "gateway-cut",
    errno.EHOSTDOWN: "gateway-cut",
    errno.ETIMEDOUT: "gateway-silent",
}

_LINKLESS = {errno.EPERM, errno.EOPNOTSUPP, errno.ENOSYS, errno.EINVAL, errno.EMLINK, errno.EXDEV}
"""What file systems without links say, FAT for instance: EPERM (symlink(2), link(2))."""


class FolderGate:
    """The port `services.gateway_ports.Gate`."""

    def __init__(self, target: Target, cancel: threading.Event | None) -> None:
        self._where = target.folder
        self._root = Path(target.folder).expanduser()
        self._cancel = cancel

    def room(self, name: str) -> Gate:
        """See the port."""
        with self._told():
            (self._root / name).mkdir(mode=0o700, exist_ok=True)
        return FolderGate(Target(By.FOLDER, str(self._root / name)), self._cancel)

    def in_force(self) -> str | None:
        """See the port."""
        with self._told():
            found = self._look()
            if found is None:
                self._finish_switch()
                found = self._look()
            return found

    def read(self, set_id: str, names: Sequence[str], limit: int) -> dict[str, bytes]:
        """See the port."""
        found = {}
        with self._told():
            folder = self._place(set_id)
            for name in names:
                refuse_cancelled(self._cancel)
                data = _beginning(folder / name, limit)
                if data is not None:
                    found[name] = data
        return found

    def put_set(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str | None) -> None:
        """See the port. The set in force is mended file by file, where it is the one to be laid down."""
        with self._told():
            mending = set_id in {kept_from, self._look()}
            if not mending:
                _remove(self._root / SETS / set_id)
            try:
                self._fill(set_id, fresh, kept, kept_from)
            except OSError:
                if not mending:
                    shutil.rmtree(self._root / SETS / set_id, ignore_errors=True)
                raise

    def _fill(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str | None) -> None:
        folder = self._place(set_id)
        if kept_from is not None and kept_from != set_id:
            for name in kept:
                refuse_cancelled(self._cancel)
                _link(self._place(kept_from) / name, folder / name)
        for file in fresh:
            refuse_cancelled(self._cancel)
            _write(folder, file.name, file.data, file.mode)
        for each in (*(one for one in folder.rglob("*") if one.is_dir()), folder, self._root / SETS, self._root):
            _settle(each)

    def switch(self, set_id: str) -> None:
        """See the port.

        Where the file system has no links, the set's folder itself is moved to `in-force`, and the one before back
        among the others: two renames, and a run that is cut off between them is finished by the next `in_force`.
        """
        with self._told():
            refuse_cancelled(self._cancel)
            if self._look() == set_id:
                return
            link = self._root / NEXT
            link.unlink(missing_ok=True)
            try:
                link.symlink_to(f"{SETS}/{set_id}")
            except OSError as error:
                if error.errno not in _LINKLESS:
                    raise
                self._move(set_id)
            else:
                self._aside()
                link.replace(self._root / IN_FORCE)
            _settle(self._root)

    def _move(self, set_id: str) -> None:
        _write(self._root / SETS / set_id, _NAME, set_id.encode(), 0o644)
        _write(self._root, NEXT, set_id.encode(), 0o644)
        _settle(self._root)
        self._aside()
        (self._root / IN_FORCE).unlink(missing_ok=True)
        self._finish_switch()

    def _aside(self) -> None:
        """Where `in-force` is a set's own folder, move that back among the others."""
        before = self._own_name()
        if before is not None:
            (self._root / IN_FORCE).rename(self._root / SETS / before)

    def keep_only(self, set_ids: Iterable[str]) -> None:
        """See the port. Whatever is asked, the set in force stays."""
        with self._told():
            keep = {*set_ids, self._look()}
            sets = self._root / SETS
            for one in sets.iterdir() if sets.is_dir() else ():
                refuse_cancelled(self._cancel)
                if one.name not in keep and not one.is_symlink():
                    shutil.rmtree(one, ignore_errors=True)

    def run(self, command: str) -> Ran:
        """See the port."""
        raise Refused("no-command-here", where=self._where, text=command[:80])

    def now(self) -> datetime | None:
        """See the port. A folder has no clock of its own."""
        return None

    def _look(self) -> str | None:
        here = self._root / IN_FORCE
        if not here.is_symlink():
            return self._own_name()
        above, _, set_id = str(here.readlink()).rpartition("/")
        if above != SETS or not set_id:
            raise Unavailable("gateway-odd", where=self._where, seen=shown(f"{IN_FORCE}: {here.readlink()}".encode()))
        return set_id if here.is_dir() else None

    def _own_name(self) -> str | None:
        """Which set's own folder `in-force` is; None where it is none."""
        here = self._root / IN_FORCE
        if here.is_symlink() or not here.exists():
            return None
        name = _plain(_beginning(here / _NAME, 200))
        if name is None:
            raise Unavailable("gateway-odd", where=self._where, seen=f"{IN_FORCE} is none of ours")
        return name

    def _finish_switch(self) -> None:
        """Put right what a run that was cut off left: a set is named as the next one, and none is in force."""
        following = self._root / NEXT
        if following.is_symlink():
            following.replace(self._root / IN_FORCE)
            return
        name = _plain(_beginning(following, 200))
        if name is not None and (self._root / SETS / name).is_dir() and not (self._root / IN_FORCE).exists():
            (self._root / SETS / name).rename(self._root / IN_FORCE)
            _settle(self._root)
            following.unlink(missing_ok=True)

    def _place(self, set_id: str) -> Path:
        """Where a set's files are."""
        return self._root / IN_FORCE if self._own_name() == set_id else self._root / SETS / set_id

    @contextmanager
    def _told(self) -> Iterator[None]:
        refuse_cancelled(self._cancel)
        try:
            yield
        except OSError as error:
            seen = error.strerror or str(error)
            if not self._root.is_dir():
                raise Unavailable("gateway-folder-missing", where=self._where, seen=seen) from error
            code = _CODES.get(error.errno or 0, "gateway-odd")
            raise Unavailable(code, where=self._where, seen=seen) from error


@contextmanager
def folder_gate(target: Target, cancel: threading.Event | None) -> Iterator[Gate]:
    """Look whether the folder is there.

    Raises:
        Cancelled: the householder changed their mind.
        Unavailable: gateway-folder-missing.
    """
    refuse_cancelled(cancel)
    if not Path(target.folder).expanduser().is_dir():
        raise Unavailable("gateway-folder-missing", where=target.folder, seen=os.strerror(errno.ENOENT))
    yield FolderGate(target, cancel)


def _plain(data: bytes | None) -> str | None:
    """A set's id from a file that somebody else may have written."""
    text = (data or b"").decode("ascii", "replace").strip()
    return text if text and "/" not in text and not text.startswith(".") and text.isprintable() else None


def _beginning(path: Path, limit: int) -> bytes | None:
    """The first octets of a file; None where there is no ordinary file. Never waits for a pipe's other end."""
    try:
        handle = os.open(path, os.O_RDONLY | os.O_NONBLOCK | os.O_NOFOLLOW)
    except (FileNotFoundError, NotADirectoryError):
        return None
    except OSError as error:
        if error.errno in {errno.ELOOP, errno.ENXIO}:  # a link; a pipe or device without another end
            return None
        raise
    try:
        if not stat.S_ISREG(os.fstat(handle).st_mode):
            return None
        with os.fdopen(handle, "rb", closefd=False) as file:
            return file.read(limit)
    finally:
        os.close(handle)


def _write(folder: Path, name: str, data: bytes, mode: int) -> None:
    """Write a file under a temporary name, have it flushed to the disk, give it its name."""
    path = folder / name
    path.parent.mkdir(parents=True, exist_ok=True)
    half = path.parent / HALF
    half.unlink(missing_ok=True)
    handle = os.open(half, os.O_WRONLY | os.O_CREAT | os.O_EXCL | os.O_NOFOLLOW, mode)
    with os.fdopen(handle, "wb") as file:
        file.write(data)
        file.flush()
        with contextlib.suppress(PermissionError):  # FAT has no modes
            os.fchmod(handle, mode)
        os.fsync(handle)
    half.replace(path)


def _link(known: Path, path: Path) -> None:
    """Have the same file in two sets, or copy it where the file system cannot do that."""
    path.parent.mkdir(parents=True, exist_ok=True)
    path.unlink(missing_ok=True)
    try:
        path.hardlink_to(known)
    except OSError as error:
        if error.errno not in _LINKLESS:
            raise
        _write(path.parent, path.name, known.read_bytes(), stat.S_IMODE(known.stat().st_mode))


def _remove(folder: Path) -> None:
    if folder.is_symlink():
        folder.unlink()
    elif folder.exists():
        shutil.rmtree(folder)


def _settle(folder: Path) -> None:
    """Make names in a folder durable, where the file system can."""
    handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
    try:
        os.fsync(handle)
    except OSError as error:
        if error.errno not in {errno.EINVAL, errno.ENOTSUP}:
            raise
    finally:
        os.close(handle)
