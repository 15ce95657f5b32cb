"""Reads our own resources: inside an installed package, or at the top of a checkout."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import hearthkey


@cache
def resource(folder: str, name: str) -> bytes:
    """The bytes of a file in resources/.

    Raises:
        FileNotFoundError: there is no such file.
    """
    package = Path(hearthkey.__file__).parent
    installed = package / "resources"
    whole = installed if installed.is_dir() else package.parent.parent / "resources"
    return (whole / folder / name).read_bytes()
