"""The two faces, a serif that speaks and a sans that states, and the sizes they speak in."""

from __future__ import annotations

from enum import Enum
from functools import cache
from importlib.resources import files

from PySide6.QtGui import QFont, QFontDatabase, QFontMetricsF

BODY_PIXELS = 14
"""The size that every other size is a multiple of."""

_FALLBACK_SCALE = 0.86
"""DejaVu runs wider than the two faces, so it stands in at this part of their size."""


class Role(Enum):
    """A place in the type scale: serif or not, pixels at normal size, weight, italic."""

    HEADLINE = (True, 26, 500, False)
    TITLE = (True, 22, 600, False)
    OVERLAY_TITLE = (True, 26, 600, False)
    VOICE = (True, 19, 500, False)
    PERSON = (True, 17, 600, False)
    HOUSE = (True, 16, 600, False)
    CARD = (True, 15, 600, False)
    BODY = (False, 14, 400, False)
    BODY_STRONG = (False, 14, 600, False)
    DEVICE = (False, 15, 400, False)
    DATE_STRONG = (False, 15, 600, False)
    STATE = (False, 13, 400, False)
    STATE_WORD = (False, 13, 600, False)
    SMALL = (False, 12, 400, False)
    SMALL_STRONG = (False, 12, 600, False)
    SMALL_ITALIC = (False, 12, 400, True)
    CLOCK = (False, 22, 600, False)
    FIELD_LARGE = (False, 22, 400, False)
    DESK_TITLE = (True, 42, 600, False)
    DESK_VOICE = (True, 32, 500, False)
    DESK_STEP = (False, 32, 400, False)
    DESK_STEP_STRONG = (False, 32, 600, False)
    DESK_WORD = (False, 33, 400, False)
    DESK_WORD_SMALL = (False, 25, 400, False)
    DESK_WORD_LARGE = (False, 44, 400, False)
    DESK_CLOCK = (False, 46, 600, False)
    DESK = (False, 18, 400, False)
    DESK_STRONG = (False, 18, 600, False)
    DESK_SMALL = (False, 16, 400, False)
    DESK_SMALL_STRONG = (False, 16, 600, False)


class Fonts:
    """The loaded faces.

    Args:
        scale: 1.0 is the desktop's normal; larger type makes larger rows.
        faces: try our own faces; without them, the system's fallback is used at 0.86 of the size.
    """

    def __init__(self, *, scale: float = 1.0, faces: bool = True) -> None:
        self.scale = scale
        self._made: dict[Role, QFont] = {}
        self._measures: dict[Role, QFontMetricsF] = {}
        self._serif, self._sans, self._own = "DejaVu Serif", "DejaVu Sans", False
        if faces:
            serif = _load("fontpkg_vollkorn", "Vollkorn")
            sans = _load("fontpkg_source_sans_3", "SourceSans3")
            if serif and sans:
                self._serif, self._sans, self._own = serif, sans, True

    def font(self, role: Role) -> QFont:
        """The font for a role; made once, for every row asks."""
        made = self._made.get(role)
        if made is None:
            made = self._made[role] = self._make(role)
        return QFont(made)

    def _make(self, role: Role) -> QFont:
        serif, pixels, weight, italic = role.value
        font = QFont(self._serif if serif else self._sans)
        factor = self.scale * (1.0 if self._own else _FALLBACK_SCALE)
        font.setPixelSize(max(1, round(pixels * factor)))
        font.setItalic(italic)
        font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
        font.setWeight(QFont.Weight(weight))
        if self._own:
            font.setVariableAxis(QFont.Tag("wght"), float(weight))
            if serif:  # its default figures are old-style; dates want lining ones of equal width
                font.setFeature(QFont.Tag("lnum"), 1)
                font.setFeature(QFont.Tag("tnum"), 1)
        return font

    def metrics(self, role: Role) -> QFontMetricsF:
        """Measures of a role's font."""
        measures = self._measures.get(role)
        if measures is None:
            measures = self._measures[role] = QFontMetricsF(self.font(role))
        return measures

    def px(self, pixels: float) -> int:
        """A length that grows with the type."""
        return round(pixels * self.scale)


@cache
def _load(package: str, stem: str) -> str:
    """Load the upright and italic variable faces of a package, once; empty where they are not installed.

    Qt keeps what it was given for as long as the application lives: 3 MB each time.
    """
    family = ""
    try:
        folder = files(package) / "files"
        for face in folder.iterdir():
            if face.name.startswith(stem) and face.name.endswith(".ttf"):
                number = QFontDatabase.addApplicationFontFromData(face.read_bytes())
                families = QFontDatabase.applicationFontFamilies(number) if number >= 0 else []
                family = families[0] if families else family
    except (ModuleNotFoundError, FileNotFoundError, NotADirectoryError):
        return ""
    return family
