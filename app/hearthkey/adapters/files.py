"""Files that are written all at once or not at all, for their owner alone."""

from __future__ import annotations

import contextlib
import errno
import hashlib
import mmap
import os
import platform
import re
import shutil
import stat
import zlib
from collections.abc import Iterator
from pathlib import Path

from hearthkey.core.errors import Refused, Unavailable

_CODES = {
    errno.ENOSPC: "disk-full",
    errno.EDQUOT: "disk-full",
    errno.EROFS: "folder-read-only",
    errno.EACCES: "folder-read-only",
    errno.EPERM: "folder-read-only",
    errno.ENOENT: "folder-gone",
    errno.ENODEV: "folder-gone",
    errno.ENXIO: "folder-gone",
    errno.EIO: "folder-gone",
    errno.ENOTDIR: "folder-gone",
    errno.EEXIST: "folder-gone",
}
_HALF = ".hearthkey-half-"

_BLOCK = 64 * 1024
"""Octets read at a time: a multiple of every sector size, in memory that begins with a page, as O_DIRECT wants it."""

_NOT_DIRECTLY = {errno.EINVAL, errno.ENOTSUP, errno.EOPNOTSUPP}
_O_DIRECT: int = getattr(os, "O_DIRECT", 0)

_LARGEST = 16 * 1024 * 1024
"""Octets; no file of ours is larger, and one that is need not be read to be told from it."""


class DiskFiles:
    """The port `services.ports.Files` over folders and sticks."""

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """See the port."""
        with told(folder):
            tidy_halves(folder)
            return write_whole(folder, name, data)

    def read(self, path: Path, limit: int) -> bytes:
        """See the port."""
        return read_small(path, limit)

    def free(self, folder: Path) -> int | None:
        """See the port."""
        for one in (folder.absolute(), *folder.absolute().parents):
            try:
                return shutil.disk_usage(one).free
            except FileNotFoundError:
                continue
            except OSError:
                return None
        return None

    def mark(self, path: Path) -> str | None:
        """See the port."""
        with told(path.parent):
            path.parent.stat()
            return None if not os.path.lexists(path) else _mark(path)[0]

    def remove(self, path: Path, mark: str) -> bool:
        """See the port. The file that was read is the one that goes: another put in its place meanwhile stays."""
        with told(path.parent):
            found, inode = _mark(path) if os.path.lexists(path) else ("", None)
            if not mark or not found.startswith(mark) or inode is None or path.lstat().st_ino != inode:
                return False
            path.unlink()
            _settle_folder(path.parent)
        return True


def _mark(path: Path) -> tuple[str, int | None]:
    """SHA-256 and inode of a plain file; empty for anything else."""
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0))
    except OSError as error:
        if error.errno in {errno.ELOOP, errno.ENXIO}:
            return "", None
        raise
    try:
        seen = os.fstat(handle)
        if not stat.S_ISREG(seen.st_mode) or seen.st_size > _LARGEST:
            return "", None
        with os.fdopen(handle, "rb", closefd=False) as file:
            return hashlib.file_digest(file, "sha256").hexdigest(), seen.st_ino
    finally:
        os.close(handle)


def write_whole(folder: Path, name: str, data: bytes) -> Path:
    """Write a temporary file of mode 0600, fsync it, rename it, fsync the folder, read it back from the disk.

    Raises:
        OSError: the disk's own word; nothing half-written stays.
        Unavailable: write-failed, where other bytes came back.
    """
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    half = folder / f"{_HALF}{_here()}-{os.getpid()}-{name}"
    try:
        handle = os.open(half, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        try:
            rest = memoryview(data)
            while rest:
                rest = rest[os.write(handle, rest) :]
            os.fsync(handle)
        finally:
            os.close(handle)
        half.replace(folder / name)
    except BaseException:
        with contextlib.suppress(OSError):
            half.unlink(missing_ok=True)
        raise
    _settle_folder(folder)
    if read_back(folder / name) != data:
        with contextlib.suppress(OSError):
            (folder / name).unlink()
        raise Unavailable("write-failed", path=str(folder / name))
    return folder / name


def read_back(path: Path) -> bytes:
    """Read a file of ours that was just written and synced, past what the system remembers of having written.

    With O_DIRECT the kernel asks the device (open(2)), so a stick that lost what it was given is found out. Where a
    file system refuses that, the clean pages are dropped first (posix_fadvise(2), POSIX_FADV_DONTNEED), which the
    kernel may ignore. A memory inside the device may answer in both cases; only pulling the stick and plugging it in
    again would tell that. Elsewhere than on Linux the file is simply read.

    Raises:
        OSError: the disk's own word.
    """
    if _O_DIRECT:
        try:
            return _directly(path)
        except OSError as error:
            if error.errno not in _NOT_DIRECTLY:
                raise
    return _after_dropping(path)


def _directly(path: Path) -> bytes:
    handle = os.open(path, os.O_RDONLY | _O_DIRECT)
    try:
        found, room = bytearray(), mmap.mmap(-1, _BLOCK)
        with room:
            while count := os.preadv(handle, [room], len(found)):
                found += room[:count]
                if count < _BLOCK:  # only the end of a file is shorter
                    break
        return bytes(found)
    finally:
        os.close(handle)


def _after_dropping(path: Path) -> bytes:
    with path.open("rb") as file:
        if hasattr(os, "posix_fadvise"):
            os.posix_fadvise(file.fileno(), 0, 0, os.POSIX_FADV_DONTNEED)
        return file.read()


def _settle_folder(folder: Path) -> None:
    """Make the rename itself durable, where the system can open a folder."""
    with contextlib.suppress(PermissionError):  # Windows cannot; there the rename is journalled
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        except OSError as error:
            if error.errno not in {errno.EINVAL, errno.ENOTSUP}:
                raise
        finally:
            os.close(handle)


def _here() -> str:
    """This computer in a file name, for a process's number means nothing on another one that shares the folder."""
    return f"{zlib.crc32(platform.node().encode()):08x}"


def tidy_halves(folder: Path) -> None:
    """Remove what a crash of ours in the middle of writing left in somebody else's folder; hinders no writing.

    Ours is a plain file of this user, under a name that only we give, of a process on this computer that is gone.
    """
    if not hasattr(os, "getuid"):
        return
    wanted = re.compile(rf"{re.escape(_HALF)}{_here()}-([0-9]+)-.+")
    with contextlib.suppress(OSError), os.scandir(folder) as entries:
        for one in entries:
            named = wanted.fullmatch(one.name)
            if named and one.is_file(follow_symlinks=False) and one.stat(follow_symlinks=False).st_uid == os.getuid():
                with contextlib.suppress(OSError):
                    if _gone(int(named[1])):
                        Path(one.path).unlink()


def _gone(process: int) -> bool:
    try:
        os.kill(process, 0)
    except (ProcessLookupError, OverflowError):
        return True
    except PermissionError:
        return False
    return False


def sweep_halves(folder: Path) -> None:
    """Remove what a crash in the middle of writing left in a folder of ours."""
    for half in folder.glob(f"{_HALF}*"):
        half.unlink(missing_ok=True)


def read_small(path: Path, limit: int) -> bytes:
    """Read a file that somebody else may have written.

    Raises:
        Refused: file-missing, file-too-large, file-not-a-file.
        Unavailable: folder-gone.
    """
    if not path.exists():
        raise Refused("file-missing", path=str(path))
    if not path.is_file():
        raise Refused("file-not-a-file", path=str(path))
    with told(path.parent), path.open("rb") as file:
        data = file.read(limit + 1)
    if len(data) > limit:
        raise Refused("file-too-large", path=str(path), limit=limit)
    return data


@contextlib.contextmanager
def told(folder: Path) -> Iterator[None]:
    """Turn an OSError into Unavailable with a sentence of ours."""
    try:
        yield
    except OSError as error:
        code = _CODES.get(error.errno or 0, "write-failed")
        raise Unavailable(code, path=str(folder), seen=error.strerror or str(error)) from error
