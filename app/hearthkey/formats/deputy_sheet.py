"""Sets the deputy's papers: the letter for whoever takes over, and each part on a sheet of its own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core import deputy
from hearthkey.core.channels import Carries, Piece, composed
from hearthkey.core.deputy import Part
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.formats import deputy_code
from hearthkey.formats.deputy_texts import text
from hearthkey.formats.hand_over_texts import day
from hearthkey.formats.laid_sheet import BOTTOM, LEFT, Column, Face, Ink, Mark, Measure, Modules, Run, Stroke

SIZES = (14.0, 13.5, 13.0, 12.5, 12.0, 11.5, 11.0, 10.5)
"""Points of the letter's body, the largest that fits."""

_NUMBERS = 26.0
_WORD, _ROWS = 20.0, 5
_CODE = 214.0
"""Points: 1.8 mm a module in version 4, which any camera reads."""
_QUIET = 4 / 41
"""Of a code's side is the quiet zone, on each side."""


@dataclass(frozen=True)
class LetterFacts:
    """What the letter says; nothing of it opens anything.

    Args:
        household: its name.
        made: the day, UTC.
        list_end: until when the list in force is good.
        gateway_end: when the gateway's certificate ends.
        authority_end: when the CA ends.
        device: title and end of the first device that ends before everybody does, or None.
        set_name: of the parts.
        numbers: how many parts are needed, and of how many.
        call: whom to call, as the householder typed it; may be empty.
        language: of everything on it.
        practice: nothing of it is real.
    """

    household: str
    made: datetime
    list_end: datetime
    gateway_end: datetime
    authority_end: datetime
    device: tuple[str, datetime] | None
    set_name: str
    numbers: tuple[int, int]
    call: str
    language: Language
    practice: bool = False

    @property
    def title(self) -> str:
        """The title of the letter."""
        return text("title", self.language, household=self.household)

    @property
    def letters(self) -> str:
        """What the householder typed, which may have letters that no text of ours has."""
        return self.household + self.call + ("" if self.device is None else self.device[0])


def letter(facts: LetterFacts, paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    """Set the letter: one page, in the largest type that fits.

    Raises:
        Refused: deputy-letter-too-long.
        Bug: both-channels.
    """
    for size in SIZES:
        column = Column(paper, measure)
        _set_letter(column, facts, size)
        if column.fits:
            composed(Piece(one.text) for one in column.marks if isinstance(one, Run))
            return tuple(column.marks)
    raise Refused("deputy-letter-too-long")


@dataclass(frozen=True)
class PartFacts:
    """What a part's sheet says; neither the household nor any person.

    Args:
        part: the one part on it.
        words: it, as words.
        made: the day, UTC.
        language: of what stands around it.
        practice: nothing of it is real.
    """

    part: Part
    words: Secret[str]
    made: datetime
    language: Language
    practice: bool = False

    @property
    def title(self) -> str:
        """The title of the sheet."""
        return text("part", self.language, number=self.part.number, count=self.part.count)


def part(facts: PartFacts, paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    """Set a part: its words, its code, what it is for.

    Raises:
        Bug: both-channels.
    """
    column, one, secret, language = Column(paper, measure), facts.part, facts.words, facts.language
    if facts.practice:
        column.say(text("practice", language), Face.STRONG, 10, ink=Ink.SECOND)
    column.say(facts.title, Face.SERIF, 36)
    column.space(4)
    column.say(text("part-for", language, need=one.threshold, set=one.set_name), Face.SANS, 15)
    column.space(12)
    _oxford(column)
    column.space(14)
    spoken = secret.reveal().split(" ")
    _set_words(column, spoken, text("words", language))
    column.space(26)
    _set_code(column, one, language)
    made_on = text("made", language, day=day(facts.made, language))
    column.at_right(made_on, Face.SANS, 9, y=column.high - BOTTOM, ink=Ink.SECOND)
    composed(
        (
            Piece(mark.text, Carries.WORDS if mark.text in spoken else Carries.NOTHING)
            for mark in column.marks
            if isinstance(mark, Run)
        ),
        secret,
    )
    return tuple(column.marks)


def _set_letter(column: Column, facts: LetterFacts, size: float) -> None:
    language = facts.language
    if facts.practice:
        column.say(text("practice", language), Face.STRONG, 10, ink=Ink.SECOND)
    column.say(facts.title, Face.SERIF, size * 2)
    column.space(2)
    column.say(text("lead", language), Face.SANS, size * 1.1, ink=Ink.SECOND)
    column.space(9)
    _oxford(column)
    _heading(column, text("nothing", language), size)
    for told in _if_nothing(facts):
        column.say(told, Face.SANS, size)
        column.space(size * 0.25)
    _heading(column, text("lost", language), size)
    column.say(text("lost-more", language), Face.SANS, size)
    _heading(column, text("over", language), size)
    need, count = facts.numbers
    steps = (
        text("step-parts", language, need=need, count=count, set=facts.set_name),
        text("step-copy", language, day=day(facts.made, language)),
        text("step-app", language),
        text("step-after", language),
    )
    for number, step in enumerate(steps, 1):
        top = column.down
        column.say(step, Face.SANS, size, inset=_NUMBERS)
        column.beside(str(number), Face.SERIF, size * 1.15, x=LEFT, y=top + size, ink=Ink.SECOND)
        column.space(size * 0.35)
    column.say(text("step-paper", language), Face.SANS, size * 0.9, ink=Ink.SECOND)
    if facts.call:
        column.space(size * 0.3)
        column.say(text("call", language, call=facts.call), Face.STRONG, size)
    _by_hand(column, facts, size)
    _foot(column, facts)


def _if_nothing(facts: LetterFacts) -> tuple[str, ...]:
    language = facts.language
    first = min(facts.list_end, facts.gateway_end)
    key = "nothing-list" if facts.list_end <= facts.gateway_end else "nothing-gateway"
    told = [text("nothing-over" if first <= facts.made else key, language, day=day(first, language))]
    if facts.device is not None:
        title, end = facts.device
        told.append(text("device", language, title=title, day=day(end, language)))
    ends = {"gateway": day(facts.gateway_end, language), "authority": day(facts.authority_end, language)}
    return (*told, text("ends", language, **ends))


def _by_hand(column: Column, facts: LetterFacts, size: float) -> None:
    """Lines on which it is written who has what."""
    language = facts.language
    _heading(column, text("who", language), size)
    labels = [text("who-part", language, number=number) for number in range(1, facts.numbers[1] + 1)]
    for label in (*labels, text("who-copy", language)):
        column.space(size * 0.55)
        column.say(label, Face.SANS, size * 0.9, ink=Ink.SECOND)
        column.rule(0.5, ink=Ink.SECOND, inset=84)


def _set_words(column: Column, words: Sequence[str], label: str) -> None:
    """Three columns of five, to be read downwards."""
    column.say(label, Face.STRONG, 11, ink=Ink.SECOND)
    column.space(6)
    top, step, wide = column.down, _WORD * 1.75, column.room / 3
    for place, word in enumerate(words):
        across, down = divmod(place, _ROWS)
        x, y = LEFT + across * wide, top + (down + 1) * step - _WORD * 0.4
        column.beside(str(place + 1), Face.SERIF, _WORD * 0.8, x=x, y=y, ink=Ink.SECOND)
        column.beside(word, Face.SANS, _WORD, x=x + _NUMBERS, y=y)
    for down in range(1, _ROWS + 1):
        column.marks.append(Stroke(LEFT, column.wide - LEFT, top + down * step + 2, 0.5, Ink.SECOND))
    column.down = top + _ROWS * step + 2


def _set_code(column: Column, one: Part, language: Language) -> None:
    """The code at the left, beside it how the part is used and kept."""
    top = column.down
    quiet = _CODE * _QUIET
    column.marks.append(Modules(LEFT - quiet, top - quiet, _CODE, deputy_code.matrix(deputy.code_of(one))))
    under = top + _CODE - quiet
    column.beside(text("code", language), Face.SANS, 10, x=LEFT, y=under, ink=Ink.SECOND)
    inset = _CODE - quiet + 8
    column.down = top - 4
    for key in ("part-keep", "part-how"):
        column.say(text(key, language), Face.STRONG, 13, inset=inset)
        column.say(text(f"{key}-more", language), Face.SANS, 13, inset=inset)
        column.space(10)
    column.down = max(column.down, under)


def _heading(column: Column, told: str, size: float) -> None:
    column.space(size * 0.8)
    column.say(told, Face.STRONG, size * 1.1)
    column.space(size * 0.15)


def _foot(column: Column, facts: LetterFacts) -> None:
    """What does not lie beside it and the day, at the foot; the column is as long as if they followed at once."""
    made = text("made", facts.language, day=day(facts.made, facts.language))
    column.space(16)
    used, y = column.down, column.high - BOTTOM
    column.beside(text("letter-keep", facts.language), Face.SANS, 9, x=LEFT, y=y, ink=Ink.SECOND)
    column.at_right(made, Face.SANS, 9, y=y, ink=Ink.SECOND)
    column.down = used


def _oxford(column: Column) -> None:
    """A thick rule and a thin one: the only ornament, once on a page."""
    column.rule(2.4)
    column.space(3.6)
    column.rule(0.8)
