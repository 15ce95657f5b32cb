"""Where the platform wants data to lie, and where our own resources are."""

from __future__ import annotations

import gzip
from pathlib import Path

import hearthkey


def data_folder() -> Path:
    """The data folder of the platform, for instance $XDG_DATA_HOME/hearthkey."""
    from platformdirs import user_data_path  # noqa: PLC0415 - `--data` and `--help` do without it

    return user_data_path("hearthkey", appauthor=False, roaming=False)


def resources() -> Path:
    """The folder of resources: inside an installed package, or at the top of a checkout."""
    package = Path(hearthkey.__file__).parent
    installed = package / "resources"
    return installed if installed.is_dir() else package.parent.parent / "resources"


def word_list() -> tuple[str, ...]:
    """The EFF large word list, one word a line."""
    packed = (resources() / "words" / "eff-large.txt.gz").read_bytes()
    return tuple(gzip.decompress(packed).decode("ascii").split())
