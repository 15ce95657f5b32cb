"""A place for a register that is only looked at: a folder for its owner alone, in memory where there is room for it."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from hearthkey.adapters.register.file import FILE_NAME, SqliteRegister
from hearthkey.core.errors import Unavailable

_ROOM = 8
"""How many times the file has to fit into the runtime folder, which is in memory and small."""


@contextmanager
def scratch_register(data: bytes) -> Iterator[tuple[SqliteRegister, Path]]:
    """The port `services.sealed_ports.Scratch`."""
    try:
        folder = tempfile.TemporaryDirectory(prefix="hearthkey-", dir=_base(len(data)))
    except OSError as error:
        raise Unavailable("folder-read-only", path=tempfile.gettempdir(), seen=str(error)) from error
    with folder as name:
        path = Path(name) / FILE_NAME
        try:
            path.write_bytes(data)
        except OSError as error:
            raise Unavailable("disk-full", path=name, seen=str(error)) from error
        register = SqliteRegister(path)
        try:
            yield register, path
        finally:
            register.close()


def _base(size: int) -> str | None:
    base = os.environ.get("XDG_RUNTIME_DIR")
    if base and Path(base).is_dir() and shutil.disk_usage(base).free > _ROOM * size:
        return base
    return None
