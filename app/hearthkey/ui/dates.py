"""Days and times of day as the language of the window writes them."""

from __future__ import annotations

from datetime import datetime
from functools import lru_cache

from PySide6.QtCore import QCoreApplication, QDate, QDateTime, QLocale, QTime

from hearthkey.core.phrases import Moment, Style

CONTEXT = "dates"
"""The translation context of every way to write a date, in the letters of Unicode TR 35 that QLocale reads."""


def when(told: Moment) -> str:
    """A moment of a sentence."""
    return written(told.at, told.style)


def written(at: datetime, style: Style) -> str:
    """A moment by the clock of the zone that it is in."""
    return _written(at.year, at.month, at.day, at.hour, at.minute, pattern(style), QLocale().name())


@lru_cache(maxsize=4096)
def _written(year: int, month: int, day: int, hour: int, minute: int, letters: str, _locale: str) -> str:
    """A board of some hundred devices has every date many times, and Qt takes 40 µs for each (measured)."""
    return locale().toString(QDateTime(QDate(year, month, day), QTime(hour, minute)), letters)


def pattern(style: Style) -> str:
    """A style in the letters that Qt's date fields read."""
    return QCoreApplication.translate(CONTEXT, style.value)


def day(at: datetime) -> str:
    """A day: "9 May 2028"."""
    return written(at, Style.DAY)


def short_day(at: datetime) -> str:
    """A day where there is little room: "9 May 2028"."""
    return written(at, Style.SHORT_DAY)


def weekday(at: datetime) -> str:
    """A day that is near: "Tuesday 2 June"."""
    return written(at, Style.WEEKDAY)


def locale() -> QLocale:
    """The language in which the window writes; the names of days and months are those of Unicode CLDR.

    English is the C locale, whose short names have three letters each.
    """
    chosen = QLocale()
    return QLocale.c() if chosen.language() is QLocale.Language.English else chosen
