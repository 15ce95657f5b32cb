"""The two families that sheets are set in, as the content of their files."""

from __future__ import annotations

from importlib.resources import files

from hearthkey.formats.sheet_pdf import Fonts

FONTS = Fonts(
    serif=(files("fontpkg_vollkorn") / "files" / "Vollkorn[wght].ttf").read_bytes(),
    sans=(files("fontpkg_source_sans_3") / "files" / "SourceSans3[wght].ttf").read_bytes(),
)
