"""English text that remembers how it was made, so that a shell can say the same in another language.

Each of these is a `str` and reads, compares and sorts as its English text; only what joins it to other text by hand
forgets where it came from.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import datetime
from enum import StrEnum
from typing import Self


class Phrase(str):
    """A piece of a sentence, or a name that is put together differently in every language.

    Args:
        template: English, with {names} of facts.
        facts: what stands in their places.
    """

    __slots__ = ("facts", "template")

    template: str
    facts: Mapping[str, object]

    def __new__(cls, template: str, facts: Mapping[str, object] | None = None) -> Self:
        """Fill the English text in."""
        made = super().__new__(cls, template.format_map(facts or {}))
        made.template, made.facts = template, facts or {}
        return made

    def __getnewargs__(self) -> tuple[str, Mapping[str, object]]:  # type: ignore[override]  # a str has one argument
        """What a copy in another process is made of."""
        return self.template, self.facts


class Style(StrEnum):
    """How much of a moment is said; the value is the English way, in the letters of Unicode TR 35."""

    DAY = "d MMMM yyyy"
    SHORT_DAY = "d MMM yyyy"
    DAY_OF_YEAR = "d MMMM"
    WEEKDAY = "dddd d MMMM"
    WHOLE = "dddd d MMMM yyyy"
    SHORT_WEEKDAY = "ddd d MMM"
    DAY_NAME = "dddd"
    DAY_AND_MONTH = "d MMM"
    MONTH = "MMMM yyyy"
    SHORT_MONTH = "MMM"
    TIME = "HH:mm"
    TIME_UTC = "HH:mm 'UTC'"
    MINUTE_UTC = "yyyy-MM-dd HH:mm 'UTC'"


_MONTHS = (
    *("January", "February", "March", "April", "May", "June", "July"),
    *("August", "September", "October", "November", "December"),
)
_DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
"""Named here, for strftime says them in the language of the desktop once a window is open."""

_ENGLISH = {
    Style.DAY: "{day} {month} {moment.year:04}",
    Style.SHORT_DAY: "{day} {month:.3} {moment.year:04}",
    Style.DAY_OF_YEAR: "{day} {month}",
    Style.WEEKDAY: "{weekday} {day} {month}",
    Style.WHOLE: "{weekday} {day} {month} {moment.year:04}",
    Style.SHORT_WEEKDAY: "{weekday:.3} {day} {month:.3}",
    Style.DAY_NAME: "{weekday}",
    Style.DAY_AND_MONTH: "{day} {month:.3}",
    Style.MONTH: "{month} {moment.year:04}",
    Style.SHORT_MONTH: "{month:.3}",
    Style.TIME: "{moment:%H:%M}",
    Style.TIME_UTC: "{moment:%H:%M} UTC",
    Style.MINUTE_UTC: "{moment:%Y-%m-%d %H:%M} UTC",
}


class Moment(str):
    """A day or a time of day.

    Args:
        at: the moment, in the zone by whose clock it is said.
        style: how much of it is said.
    """

    __slots__ = ("at", "style")

    at: datetime
    style: Style

    def __new__(cls, at: datetime, style: Style) -> Self:
        """Write it in English."""
        month, weekday = _MONTHS[at.month - 1], _DAYS[at.weekday()]
        made = super().__new__(cls, _ENGLISH[style].format(day=at.day, month=month, weekday=weekday, moment=at))
        made.at, made.style = at, style
        return made

    def __getnewargs__(self) -> tuple[datetime, Style]:  # type: ignore[override]  # a str has one argument
        """What a copy in another process is made of."""
        return self.at, self.style


class Polyglot(str):
    """A text that brings its translations along, as what is known of device kinds does.

    Args:
        english: what it reads as here.
        translations: by the code of the language (RFC 5646).
    """

    __slots__ = ("translations",)

    translations: Mapping[str, str]

    def __new__(cls, english: str, translations: Mapping[str, str]) -> Self:
        """Keep the others beside the English one."""
        made = super().__new__(cls, english)
        made.translations = translations
        return made

    def __getnewargs__(self) -> tuple[str, Mapping[str, str]]:  # type: ignore[override]  # a str has one argument
        """What a copy in another process is made of."""
        return str(self), self.translations


COMMA = "{first}, {next}"
AND = "{first} and {next}"
SEMICOLON = "{first}; {next}"
BESIDE = "{first} {next}"
"""Whole sentences, one after the other."""


class Listing(str):
    """Several things in a row.

    Args:
        items: the things; phrases among them stay phrases.
        joint: what stands between the last two.
        comma: what stands between the others.
    """

    __slots__ = ("comma", "items", "joint")

    items: tuple[str, ...]
    joint: str
    comma: str

    def __new__(cls, items: Iterable[str], joint: str = COMMA, comma: str = COMMA) -> Self:
        """Write them in English."""
        things = tuple(items)
        made = super().__new__(cls, row(things, comma, joint))
        made.items, made.joint, made.comma = things, joint, comma
        return made

    def __getnewargs__(self) -> tuple[tuple[str, ...], str, str]:  # type: ignore[override]  # a str has one argument
        """What a copy in another process is made of."""
        return self.items, self.joint, self.comma


def row(items: tuple[str, ...], comma: str, joint: str) -> str:
    """Join things two by two, the last two by another joint."""
    told = ""
    for number, item in enumerate(items):
        between = joint if number == len(items) - 1 else comma
        told = between.format(first=told, next=item) if number else item
    return told


def sentences(told: Iterable[str]) -> Listing:
    """Sentences one after the other."""
    return Listing(told, BESIDE, BESIDE)


def several(items: Iterable[str], most: int) -> Listing:
    """The things by name; of more than `most` the first two, and how many more there are."""
    things = tuple(items)
    if len(things) <= most:
        return Listing(things, AND)
    return Listing((Listing(things[:2], COMMA), Phrase("{count} more", {"count": len(things) - 2})), AND)
