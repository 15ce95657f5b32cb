"""Where the platform wants data to lie, and where our own resources are."""

from __future__ import annotations

import gzip
from importlib.resources import files
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


def faces() -> tuple[bytes, bytes]:
    """The two families that sheets are set in, serif and sans: TrueType files with a weight axis (SIL OFL 1.1)."""
    serif = files("fontpkg_vollkorn") / "files" / "Vollkorn[wght].ttf"
    sans = files("fontpkg_source_sans_3") / "files" / "SourceSans3[wght].ttf"
    return serif.read_bytes(), sans.read_bytes()
