"""Sets the household's paper: a page of codes for a scanner, and a page of lines for hands."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.channels import Carries, Piece, composed
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.paper import MOST_LINES, PaperLine, lines_of
from hearthkey.core.paper_contents import PaperContents
from hearthkey.core.secret import Secret
from hearthkey.formats import paper_der, paper_frames
from hearthkey.formats.hand_over_texts import day
from hearthkey.formats.laid_sheet import BOTTOM, LEFT, RIGHT, Column, Face, Ink, Mark, Measure, Modules, Run
from hearthkey.formats.paper_texts import text

_GAP = 16.0
"""Points between two codes."""
_SMALLEST_CODE = 180.0
"""Points: 0.63 mm a module in version 19, which is 3.7 pixels in a scan of 150 dots to an inch."""
_LARGEST_CODE = 236.0
_QUIET = 0.04
"""Of a code's side is the quiet zone: what stands below or beside begins where the modules do."""
_BODY = 9.5
_LINE = 10.0
_LEADINGS = (12.5, 12.0, 11.5, 11.0, 10.6, 10.2, 9.8, 9.5)
"""Points from line to line, the widest that fits."""
_EVERY = 5
"""After so many lines comes a little more room, so that an eye keeps its place."""


@dataclass(frozen=True)
class OlderKey:
    """The key that is not on the paper while one CA follows another.

    Args:
        since: when the newer CA began, UTC; papers before that have the older key.
        until: the end of the older CA, UTC.
        lost: nobody has it any more.
    """

    since: datetime
    until: datetime
    lost: bool = False


@dataclass(frozen=True)
class PaperFacts:
    """What the paper says.

    Args:
        contents: all of it.
        until: the end of the CA, UTC.
        language: of the words around it.
        older: the key of an older CA that is trusted besides, or None.
    """

    contents: PaperContents
    until: datetime
    language: Language
    older: OlderKey | None = None

    @property
    def title(self) -> str:
        """The title of both pages."""
        return text("title", self.language, household=self.contents.household.name)


def pages(
    facts: PaperFacts, paper: Paper, measure: Measure, words: Secret[str] | None = None
) -> tuple[tuple[Mark, ...], ...]:
    """Set both pages.

    Args:
        words: the household's passphrase, where it is known, so that the guard can look for it.

    Raises:
        Refused: paper-too-large.
        Bug: both-channels.
    """
    lines = lines_of(paper_der.encode(facts.contents))
    made = (_codes(facts, lines, paper, measure), _letters(facts, lines, paper, measure))
    groups = {group for line in lines for group in line.groups}
    pieces = [
        Piece(one.text, Carries.KEY if one.text in groups else Carries.NOTHING)
        for marks in made
        for one in marks
        if isinstance(one, Run)
    ]
    composed(pieces, words)
    return made


def _codes(facts: PaperFacts, lines: tuple[PaperLine, ...], paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    column = Column(paper, measure)
    _head(column, facts, 24)
    column.space(7)
    column.say(text("what", facts.language), Face.SANS, 11)
    _say_whose(column, facts)
    column.space(4)
    _told(column, facts, "how")
    column.space(10)
    frames = paper_frames.frames(lines)
    room = column.high - BOTTOM - 14 - column.down
    beside = column.room - _GAP
    side = min(_LARGEST_CODE, beside / 2, (room - 2 * _BODY * 2) / 2)
    if side < _SMALLEST_CODE:
        raise Refused("paper-too-large", lines=len(lines), limit=MOST_LINES)
    top = column.down
    for place, frame in enumerate(frames):
        x = LEFT + (place % 2) * (side + _GAP)
        y = top + (place // 2) * (side + 2 * _BODY)
        column.marks.append(Modules(x, y, side, paper_frames.matrix(frame)))
        known = paper_frames.lines_in([frame])
        told = text("lines", facts.language, first=known[0].number, last=known[-1].number)
        column.beside(told, Face.SANS, 8.5, x=x + side * _QUIET, y=y + side + 6, ink=Ink.SECOND)
    x = side + _GAP + side * _QUIET
    _beside_codes(column, facts, x=x, y=top + side + 2 * _BODY, width=column.room - x)
    if not column.fits:
        raise Refused("paper-too-large", lines=len(lines), limit=MOST_LINES)
    _foot(column, facts, 1)
    return tuple(column.marks)


def _beside_codes(column: Column, facts: PaperFacts, *, x: float, y: float, width: float) -> None:
    """What is not on the paper, where a fourth code would be."""
    contents, language = facts.contents, facts.language
    column.down = y + 4
    column.say(text("not", language), Face.STRONG, _BODY + 1, inset=x)
    column.space(2)
    living = "living-one" if contents.living == 1 else "living"
    here, more = len(contents.withdrawn), contents.more_withdrawn
    withdrawn = text("withdrawn" if here or more else "withdrawn-none", language, here=here, more=more)
    for told in (text("not-more", language), text(living, language, count=contents.living), withdrawn):
        column.say(told, Face.SANS, _BODY, inset=x, width=width)
        column.space(4)


def _letters(facts: PaperFacts, lines: tuple[PaperLine, ...], paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    for leading in _LEADINGS:
        column = Column(paper, measure)
        _head(column, facts, 17)
        column.space(4)
        column.say(text("letters", facts.language), Face.SANS, _BODY, ink=Ink.SECOND)
        column.space(4)
        for line in lines:
            column.down += leading + (2.5 if line.number % _EVERY == 1 and line.number > 1 else 0)
            _set_line(column, line, min(_LINE, leading - 0.5))
        column.space(7)
        _told(column, facts, "alone")
        if column.down <= column.high - BOTTOM - 12:
            _foot(column, facts, 2)
            return tuple(column.marks)
    raise Refused("paper-too-large", lines=len(lines), limit=MOST_LINES)


def _set_line(column: Column, line: PaperLine, size: float) -> None:
    """A line, its groups one under the other; the ninth stands a little apart."""
    column.beside(f"{line.number:02}", Face.STRONG, size, x=LEFT, y=column.down, ink=Ink.SECOND)
    step = (column.wide - LEFT - RIGHT - 40) / 9
    for place, group in enumerate(line.groups):
        x = LEFT + 28 + place * step + (12 if place == 8 else 0)
        column.beside(group, Face.SANS, size, x=x, y=column.down)


def _head(column: Column, facts: PaperFacts, size: float) -> None:
    contents, language = facts.contents, facts.language
    if contents.household.practice:
        column.say(text("practice", language), Face.STRONG, 10, ink=Ink.SECOND)
    column.say(facts.title, Face.SERIF, size)
    made = text(
        "made",
        language,
        day=day(contents.made, language),
        number=contents.list_mark,
        until=day(facts.until, language),
    )
    column.say(made, Face.SANS, _BODY + 1, ink=Ink.SECOND)
    column.space(6)
    column.rule(2.4)
    column.space(3.6)
    column.rule(0.8)


def _say_whose(column: Column, facts: PaperFacts) -> None:
    """Which of two keys this is, while there are two; on the first page, where there is room."""
    older, language = facts.older, facts.language
    if older is None:
        return
    ends = {"until": day(facts.until, language), "old": day(older.until, language)}
    told = text("older-lost" if older.lost else "older", language, since=day(older.since, language), **ends)
    column.space(4)
    column.say(told, Face.STRONG, _BODY)


def _told(column: Column, facts: PaperFacts, key: str) -> None:
    """A strong heading and what follows it."""
    column.say(text(key, facts.language), Face.STRONG, _BODY + 1)
    column.say(text(f"{key}-more", facts.language), Face.SANS, _BODY)


def _foot(column: Column, facts: PaperFacts, number: int) -> None:
    told = text("page", facts.language, number=number, count=2)
    column.at_right(told, Face.SANS, 8.5, y=column.high - BOTTOM + 6, ink=Ink.SECOND)
