"""Files that are written all at once or not at all, for their owner alone."""

from __future__ import annotations

import contextlib
import errno
import os
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


class DiskFiles:
    """The port `services.ports.Files` over folders and sticks."""

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """See the port."""
        with told(folder):
            return write_whole(folder, name, data)

    def read(self, path: Path, limit: int) -> bytes:
        """See the port."""
        return read_small(path, limit)


def write_whole(folder: Path, name: str, data: bytes) -> Path:
    """Write a temporary file of mode 0600, fsync it, rename it, fsync the folder, read it back.

    Raises:
        OSError: the disk's own word; nothing half-written stays.
        Unavailable: write-failed, where other bytes came back.
    """
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    half = folder / f"{_HALF}{os.getpid()}-{name}"
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
    if (folder / name).read_bytes() != data:
        raise Unavailable("write-failed", path=str(folder / name))
    return folder / name


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
