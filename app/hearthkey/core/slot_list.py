"""The slots of a template as the householder sees them beside its text, with today's values in short."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from hearthkey.core.phrases import Listing, Phrase
from hearthkey.core.secret import Secret
from hearthkey.core.slots import DeviceLine, Slot, Value


@dataclass(frozen=True)
class Listed:
    """A slot as the householder sees it beside the text.

    Args:
        name, meaning, secret: of the slot.
        today: its value in short, with secrets hidden.
    """

    name: str
    meaning: str
    secret: bool
    today: str


def listed(slots: Iterable[Slot], values: Mapping[str, Value]) -> tuple[Listed, ...]:
    """List slots with today's values; a secret shows only how long it is."""
    return tuple(Listed(slot.name, slot.meaning, slot.secret, _today(values.get(slot.name))) for slot in slots)


def _today(value: Value) -> str:
    if value is None:
        return Phrase("nothing today")
    if isinstance(value, Secret):
        return Phrase("hidden, {count} characters", {"count": len(value.reveal())})
    if isinstance(value, tuple):
        return _in_a_row(value)
    text = str(value)
    lines = text.rstrip("\n").split("\n")
    return lines[0] if len(lines) == 1 else _cut(lines)


def _in_a_row(values: Sequence[str | DeviceLine]) -> str:
    if not values:
        return Phrase("an empty list")
    return Listing(one.title if isinstance(one, DeviceLine) else one for one in values)


def _cut(lines: Sequence[str]) -> str:
    return Phrase("{line} and {count} more lines", {"line": lines[0], "count": len(lines) - 1})
