"""What this window remembers: look, text size, idle time, its own place."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings

from hearthkey.core.languages import Language
from hearthkey.ui.board.axis import Zoom
from hearthkey.ui.theme.theme import SYSTEM

SCALES = (1.0, 1.25, 1.5, 2.0)
IDLE_MINUTES = (5, 10, 30)


@dataclass(frozen=True)
class Preferences:
    """What the householder chose for the window.

    Args:
        theme: ``system`` or the name of a token table.
        scale: size of type, 1.0 is normal.
        idle_minutes: after how long without a signature the household locks itself.
        language: what the window speaks from its next start on; None for the desktop's language.
    """

    theme: str = SYSTEM
    scale: float = 1.0
    idle_minutes: int = 10
    language: Language | None = None


class Memory:
    """The preferences and the window's place, in an INI file beside the register."""

    def __init__(self, folder: Path) -> None:
        self._settings = QSettings(str(folder / "window.ini"), QSettings.Format.IniFormat)

    def preferences(self) -> Preferences:
        """What was chosen; anything that does not fit is taken as not chosen."""
        scale = _number(self._settings.value("scale"), 1.0)
        idle = int(_number(self._settings.value("idle_minutes"), 10))
        return Preferences(
            theme=str(self._settings.value("theme", SYSTEM)),
            scale=scale if scale in SCALES else 1.0,
            idle_minutes=idle if idle in IDLE_MINUTES else 10,
            language=_language(self._settings.value("language")),
        )

    def keep(self, chosen: Preferences) -> None:
        """Remember a choice."""
        self._settings.setValue("theme", chosen.theme)
        self._settings.setValue("scale", chosen.scale)
        self._settings.setValue("idle_minutes", chosen.idle_minutes)
        self._settings.setValue("language", chosen.language.value if chosen.language else SYSTEM)

    def zoom(self) -> Zoom:
        """How much of time the board showed; all of it the first time."""
        kept = str(self._settings.value("zoom", Zoom.ALL))
        return Zoom(kept) if kept in set(Zoom) else Zoom.ALL

    def keep_zoom(self, zoom: Zoom) -> None:
        """Remember how much of time the board shows."""
        self._settings.setValue("zoom", zoom.value)

    def place(self) -> QByteArray:
        """Where the window was; empty the first time."""
        value = self._settings.value("geometry")
        return value if isinstance(value, QByteArray) else QByteArray()

    def keep_place(self, place: QByteArray) -> None:
        """Remember where the window is."""
        self._settings.setValue("geometry", place)

    def folder(self, otherwise: Path) -> Path:
        """Where the last file was saved to."""
        return Path(str(self._settings.value("folder", str(otherwise))))

    def keep_folder(self, folder: str) -> None:
        """Remember where a file was saved to."""
        self._settings.setValue("folder", folder)


def _language(value: object) -> Language | None:
    return next((one for one in Language if one.value == value), None)


def _number(value: object, otherwise: float) -> float:
    try:
        return float(str(value))
    except ValueError:
        return otherwise
