"""Where every text of a row stands; painting and the tests of geometry read the same answer."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import QRectF

from hearthkey.ui.board.life import tr
from hearthkey.ui.board.rows import Event, Row, Tone
from hearthkey.ui.board.ruling import Box, Ruling
from hearthkey.ui.dates import day
from hearthkey.ui.entries import Entry, Fixture
from hearthkey.ui.theme.fonts import Role

BASELINE, HOUSE_BASELINE = 18, 13
"""From the baseline of a row down to its bottom, pixels at normal type."""

LINE, HOUSE_LINE = 9, 6
"""From the middle of the life line down to the bottom of its row."""


class Part(NamedTuple):
    """A run of text.

    Args:
        kind: what it is: who, count, device, word, fact, until, step.
        x, baseline: where it begins, pixels of the sheet.
        width: pixels.
        ink: token.
    """

    kind: str
    text: str
    x: float
    baseline: float
    width: float
    role: Role
    ink: str


def rect(part: Part, ruling: Ruling) -> QRectF:
    """The box of a run of text, from its ascent to its descent."""
    metrics = ruling.names.metrics(part.role)
    return QRectF(part.x, part.baseline - metrics.ascent(), part.width, metrics.ascent() + metrics.descent())


def baseline(entry: Entry, box: Box, top: float, ruling: Ruling) -> float:
    """The one baseline that name, state and date share."""
    down = HOUSE_BASELINE if isinstance(entry.source, Fixture) else BASELINE
    return top + box.before + box.body - ruling.theme.px(down)


def line_y(entry: Entry, box: Box, top: float, ruling: Ruling) -> float:
    """The middle of the life line."""
    down = HOUSE_LINE if isinstance(entry.source, Fixture) else LINE
    return top + box.before + box.body - ruling.theme.px(down)


def place(
    entry: Entry, row: Row, box: Box, top: float, ruling: Ruling, *, host: str = "", event: Event | None = None
) -> list[Part]:
    """All texts of a row.

    Args:
        top: of the row, pixels of the sheet.
        host: the gateway's, which stands under "The house".
        event: the stop on the life line that is being read; its text takes the place of the state's.
    """
    base = baseline(entry, box, top, ruling)
    parts = _stacked(entry, row, box, top, ruling) if ruling.stacked else _columned(entry, row, base, ruling)
    if entry.first:
        parts += _who(entry, box, top, ruling, base, host)
    parts += _words(row, base, ruling, event)
    return parts


def _columned(entry: Entry, row: Row, base: float, ruling: Ruling) -> list[Part]:
    columns = ruling.columns
    name = _device(entry, row, ruling)
    down = ruling.names.height(Role.DEVICE)
    parts = [
        _part("device", line, columns.device.left, base - (len(name) - 1 - number) * down, Role.DEVICE, row, ruling)
        for number, line in enumerate(name)
    ]
    parts += _until(row, base, ruling)
    if row.step is not None and columns.action is not None:
        role = Role.DATE_STRONG if row.tone is Tone.DUE else Role.DEVICE
        text = tr(row.step.value)
        left = columns.action.left + ruling.theme.px(21)
        ink = "act" if row.tone is Tone.DUE else "ink"
        parts.append(Part("step", text, left, base, ruling.names.width(role, text), role, ink))
    return parts


def _stacked(entry: Entry, row: Row, box: Box, top: float, ruling: Ruling) -> list[Part]:
    names = ruling.names
    first = top + box.before + names.metrics(Role.DEVICE).ascent() + 2
    down = names.height(Role.DEVICE)
    parts = [
        _part("device", line, ruling.columns.device.left, first + number * down, Role.DEVICE, row, ruling)
        for number, line in enumerate(_device(entry, row, ruling))
    ]
    return parts + _until(row, first, ruling)


def _device(entry: Entry, row: Row, ruling: Ruling) -> tuple[str, ...]:
    return (row.device,) if isinstance(entry.source, Fixture) else ruling.device_lines(entry)


def _part(kind: str, text: str, x: float, base: float, role: Role, row: Row, ruling: Ruling) -> Part:
    return Part(kind, text, x, base, ruling.names.width(role, text), role, row.tone.name_ink)


def _until(row: Row, base: float, ruling: Ruling) -> list[Part]:
    if not row.until:
        return []
    role = Role.DATE_STRONG if row.tone is Tone.DUE else Role.DEVICE
    wide = ruling.names.width(role, row.until)
    return [Part("until", row.until, ruling.columns.date.right - wide, base, wide, role, row.tone.date_ink)]


def _who(entry: Entry, box: Box, top: float, ruling: Ruling, base: float, host: str) -> list[Part]:
    names, role, left = ruling.names, ruling.who_role(entry), ruling.columns.who.left
    down = names.height(role)
    lines = ruling.who_lines(entry)
    if ruling.stacked:
        base = top + ruling.theme.px(10 if host else 4) + names.metrics(role).ascent()
        base = min(base, top + box.before - names.metrics(role).descent() - (len(lines) - 1) * down)
    parts = [
        Part("who", line, left, base + number * down, names.width(role, line), role, "ink")
        for number, line in enumerate(lines)
    ]
    if entry.count == 1:
        return parts
    below = host or (tr("one device") if entry.devices == 1 else tr("{count} devices").format(count=entry.devices))
    wide = names.width(Role.SMALL, below)
    last = parts[-1]
    if ruling.stacked:
        beside = last.x + last.width + 10
        fits = beside + wide <= ruling.columns.axis.right
        return [*parts, Part("count", below, beside, last.baseline, wide, Role.SMALL, "ink2")] if fits else parts
    under = last.baseline + names.metrics(role).descent() * 0.4 + names.metrics(Role.SMALL).height()
    if not host:
        return [*parts, Part("count", below, left, under, wide, Role.SMALL, "ink2")]
    for line in names.lines(Role.SMALL, host, ruling.columns.who.width)[:2]:
        parts.append(Part("count", line, left, under, names.width(Role.SMALL, line), Role.SMALL, "ink2"))
        under += names.height(Role.SMALL)
    return parts


def _words(row: Row, base: float, ruling: Ruling, event: Event | None) -> list[Part]:
    """The state word and the fact that explains it; the fact goes first where both do not fit."""
    word, fact = row.word, row.fact
    ink = "act" if row.tone is Tone.DUE else "ink"
    if event is not None:
        word, fact, ink = day(event.at), event.text, "ink"
    left, right = ruling.words_left, ruling.words_right
    wide = ruling.names.width(Role.STATE_WORD, word)
    parts = [Part("word", word, left, base, wide, Role.STATE_WORD, ink)] if word else []
    if fact:
        fact = f", {fact}" if word else fact
        room = ruling.names.width(Role.STATE, fact)
        if left + wide + room <= right:
            parts.append(Part("fact", fact, left + wide, base, room, Role.STATE, "ink2"))
    return parts
