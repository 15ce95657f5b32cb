"""Sets the hand-over sheet and the passphrase card: one page each, in the largest type that fits."""

from __future__ import annotations

from hearthkey.core.channels import Carries, Piece, composed
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import MOST_STEPS, CardFacts, Messages, Paper, SheetFacts
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.formats.hand_over_texts import day, text
from hearthkey.formats.laid_sheet import BOTTOM, LEFT, Column, Face, Ink, Mark, Measure, Run

SIZES = (17.0, 16.0, 15.0, 14.0, 13.0, 12.0)
"""Points of the body, the largest that fits; large print begins at 16 (common practice), and below 12 nobody reads it
at arm's length."""

_NUMBERS = 40.0
"""Width of the column of numbers."""
_LABELS = 108.0
_NOTE_LINES = 3
_LONG_TITLE = 48
"""Characters from which a title is set smaller, for it would take the page."""


def sheet(facts: SheetFacts, paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    """Set the sheet.

    Raises:
        Refused: sheet-too-long, sheet-too-many-steps.
        Bug: both-channels.
    """
    if len(facts.steps) > MOST_STEPS:
        raise Refused("sheet-too-many-steps", count=len(facts.steps), limit=MOST_STEPS)
    for size, lines in (*((size, _NOTE_LINES) for size in SIZES), (SIZES[-1], 1), (SIZES[-1], 0)):
        column = Column(paper, measure)
        _set_sheet(column, facts, size, lines)
        if column.fits:
            composed(Piece(one.text) for one in column.marks if isinstance(one, Run))
            return tuple(column.marks)
    raise Refused("sheet-too-long", title=text("device", facts.language, person=facts.person, device=facts.device))


def card(facts: CardFacts, paper: Paper, measure: Measure) -> tuple[Mark, ...]:
    """Set the passphrase card: the seven words and nothing that they open.

    Raises:
        Bug: both-channels.
    """
    column = Column(paper, measure)
    column.say(text("words-title", facts.language, person=facts.person), Face.SERIF, 34)
    column.space(14)
    _oxford(column)
    column.space(16)
    for number, word in enumerate(facts.words.reveal().split(" "), 1):
        column.space(10)
        column.say(word, Face.SANS, 27, inset=_NUMBERS + 10)
        column.beside(str(number), Face.SERIF, 22, x=LEFT, y=column.down - 27 * 0.32, ink=Ink.SECOND)
        column.space(6)
        column.rule(0.5, ink=Ink.SECOND)
    column.space(22)
    column.say(text("words-how", facts.language), Face.STRONG, 15)
    column.space(4)
    column.say(text("words-keep", facts.language), Face.SANS, 15, ink=Ink.SECOND)
    composed(Piece(one.text, Carries.WORDS) for one in column.marks if isinstance(one, Run))
    return tuple(column.marks)


def messages(person: str, device: str, words: Secret[str], language: Language) -> Messages:
    """Write the two messages; neither has what the other has.

    Raises:
        Bug: both-channels.
    """
    (written,) = composed([Piece(text("written", language, person=person, device=device), Carries.BUNDLE)], words=words)
    numbered = ", ".join(f"{number} {word}" for number, word in enumerate(words.reveal().split(" "), 1))
    spoken = composed([Piece(text("spoken", language)), Piece(numbered, Carries.WORDS)], words=words)
    return Messages(written, Secret("\n\n".join(spoken)))


def _set_sheet(column: Column, facts: SheetFacts, size: float, lines: int) -> None:
    language = facts.language
    if facts.practice:
        column.say(text("practice", language), Face.STRONG, 11, ink=Ink.SECOND)
    title = text("device", language, person=facts.person, device=facts.device)
    column.say(title, Face.SERIF, size * (2 if len(title) < _LONG_TITLE else 1.25))
    column.say(text("home", language, kind=facts.kind, household=facts.household), Face.SANS, size, ink=Ink.SECOND)
    column.space(12)
    _oxford(column)
    column.space(4)
    for number, step in enumerate(facts.steps, 1):
        _set_step(column, number, step.do, step.sees, size, language)
    if facts.typed:
        column.space(size * 0.5)
    for label, value in facts.typed:
        _row(column, label, value, size * 0.85)
    column.space(size * 0.7)
    works = "works-laptop" if facts.laptop else "works-more"
    call = text("call-more", language, call=facts.call) if facts.call else text("call-nobody", language)
    for key, told in (("works", text(works, language)), ("call", call), ("lost", text("lost-more", language))):
        _row(column, text(key, language), told, size)
    column.say(text("until", language, day=day(facts.ends, language)), Face.SANS, size * 0.85, ink=Ink.SECOND)
    if lines:
        _note(column, text("note", language), size, lines)
    _foot(column, facts)


def _set_step(column: Column, number: int, do: str, sees: str, size: float, language: Language) -> None:
    column.space(size * 0.45)
    top = column.down
    column.say(do, Face.SANS, size, inset=_NUMBERS)
    column.beside(str(number), Face.SERIF, size * 1.6, x=LEFT, y=top + size * 1.25)
    if sees:
        told = text("sees", language, sees=sees)
        column.say(told, Face.SANS, size * 0.85, inset=_NUMBERS, ink=Ink.SECOND)
    column.space(size * 0.45)
    column.rule(0.5, ink=Ink.SECOND)


def _row(column: Column, label: str, told: str, size: float) -> None:
    top = column.down
    column.say(label, Face.STRONG, size * 0.9, width=_LABELS - 8)
    under = column.down
    column.down = top
    column.say(told, Face.SANS, size * 0.9, inset=_LABELS)
    column.down = max(under, column.down) + size * 0.3


def _note(column: Column, label: str, size: float, lines: int) -> None:
    column.space(size * 0.5)
    column.say(label, Face.SANS, size * 0.8, ink=Ink.SECOND)
    for _ in range(lines):
        column.space(size * 1.3)
        column.rule(0.5, ink=Ink.SECOND)


def _foot(column: Column, facts: SheetFacts) -> None:
    """The caution and the day, at the foot of the page; the column is as long as if they followed at once."""
    made = text("made", facts.language, day=day(facts.made, facts.language))
    column.space(20)
    used = column.down
    column.down = column.high - BOTTOM - 26
    column.say(text("caution", facts.language), Face.SANS, 9, ink=Ink.SECOND, width=column.room - 120)
    column.at_right(made, Face.SANS, 9, y=column.down - 3, ink=Ink.SECOND)
    column.down = used + 26


def _oxford(column: Column) -> None:
    """A thick rule and a thin one: the only ornament, once on a page."""
    column.rule(2.4)
    column.space(3.6)
    column.rule(0.8)
