"""What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QCoreApplication

from hearthkey.core.phrases import Listing
from hearthkey.core.sentences import tickets
from hearthkey.core.ticket_events import Happened
from hearthkey.ui.desk.telling import Moment
from hearthkey.ui.desk.turns import Turn, Turns
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pickup import words
from hearthkey.ui.text import mended, said, spoken

_tr = QCoreApplication.translate

OPENED = frozenset({Happened.OPENED, Happened.SENDING, Happened.INTERRUPTED})
"""After which the device has the page."""


class Act(Enum):
    """What the first button does."""

    NONE = "nothing"
    COVER_CODE = "cover the code and show the words"
    SHOW_CODE = "cover the words and show the code"
    COVER_WORDS = "cover the words"
    SHOW_WORDS = "show the words"
    OPEN = "open another pick-up"
    AGAIN = "do again what failed"


@dataclass(frozen=True)
class Note:
    """What matters now: words that are stressed, and the rest."""

    stressed: str = ""
    rest: str = ""


def moment(leaving: Leaving) -> Moment:
    """What the words of the steps depend on."""
    side, opened = leaving.screen.side, leaving.pickup.opened
    link = opened.link.reveal() if side is Side.TICKET and opened is not None else ""
    return Moment(
        code=bool(link),
        words=side is Side.PASSPHRASE,
        opened=any(one.what in OPENED for one in leaving.pickup.heard),
        link=link,
    )


def act(turn: Turn, leaving: Leaving) -> Act:
    """What the first button does at this moment; while an answer is awaited it does nothing, but stays."""
    screen = leaving.screen
    if turn.done:
        return Act.NONE
    if screen.side is Side.PASSPHRASE:
        return Act.SHOW_CODE if screen.under is Side.TICKET else Act.COVER_WORDS
    if screen.side is Side.TROUBLE:
        return Act.AGAIN
    if turn.picked_up is not None:
        return Act.SHOW_WORDS
    return Act.COVER_CODE if screen.side in {Side.TICKET, Side.WORKING} else Act.OPEN


def act_words(one: Act, turn: Turn) -> str:
    """What the first button says, with its mnemonic; nothing where it is not needed."""
    if one is Act.SHOW_WORDS and turn.typed:
        return _tr("Desk", "&Show the words again")
    return {
        Act.NONE: "",
        Act.COVER_CODE: _tr("Desk", "&Cover the code, show the words"),
        Act.SHOW_CODE: _tr("Desk", "&Cover the words, show the code"),
        Act.COVER_WORDS: _tr("Desk", "&Cover the words"),
        Act.SHOW_WORDS: _tr("Desk", "&Show the words"),
        Act.OPEN: _tr("Desk", "&Open another"),
        Act.AGAIN: _tr("Desk", "Try a&gain"),
    }[one]


def sentence(turn: Turn, leaving: Leaving, progress: str) -> str:
    """What stands where code and words would stand.

    Args:
        progress: what is being done right now, in words.
    """
    side, ending, title = leaving.screen.side, leaving.pickup.ending, spoken(turn.one.title)
    if side is Side.WORKING:
        return progress or _tr("Desk", "One moment …")
    if side is Side.TROUBLE and leaving.trouble is not None:
        return mended(leaving.trouble)
    if turn.done:
        return _tr("Desk", "{title} has its key. Here it was erased.").format(title=title)
    if turn.picked_up is not None:
        return _tr("Desk", "{title} has its file.").format(title=title)
    return "" if ending is None else said(tickets.event(ending))


def note(turn: Turn, leaving: Leaving) -> Note:
    """What matters now; nothing while the sentence says it all."""
    side, heard = leaving.screen.side, leaving.pickup.heard
    if side is Side.TICKET and heard:
        return Note(words.latest(heard), _tr("Desk", "The words come when the code has gone."))
    if side is Side.TICKET:
        return Note(
            _tr("Desk", "The code and the words are never here together."),
            _tr("Desk", "Show the words when it says “picked up”."),
        )
    if side is Side.PASSPHRASE:
        covered = leaving.screen.under is Side.TICKET
        return Note(
            _tr("Desk", "The code is covered while the words are here.")
            if covered
            else _tr("Desk", "The code is gone."),
            _tr("Desk", "Cover the words as soon as they are typed in."),
        )
    if turn.done and turn.one.proved is None:
        return Note(rest=_tr("Desk", "Whether it gets in from outside can be proved later, on its own page."))
    if turn.typed and not turn.done:
        return Note(rest=_tr("Desk", "When it says “Connected”, go on. Its key is then erased here."))
    return Note()


def second_words(turn: Turn, leaving: Leaving, *, big: bool) -> str:
    """What the second button says, with its mnemonic."""
    if leaving.screen.side in {Side.TICKET, Side.PASSPHRASE}:
        return _tr("Desk", "S&maller") if big else _tr("Desk", "&Bigger")
    opened = turn.picked_up is not None and not turn.done and leaving.screen.side is not Side.WORKING
    return _tr("Desk", "&Another code") if opened else ""


def onward_words(turns: Turns) -> tuple[str, str]:
    """What leads on, with its mnemonic, and the name in it; nothing where there is nobody else and nothing to end."""
    if turns.next is not None:
        return _tr("Desk", "&Next: {title}"), spoken(turns.all[turns.next].one.title)
    turn = turns.current
    return (_tr("Desk", "&Finish") if turn.picked_up is not None and not turn.done else "", "")


def count_words(turns: Turns) -> str:
    """Which of how many."""
    count = len(turns.all)
    done = sum(turn.done for turn in turns.all)
    if count == 1:
        return ""
    place = _tr("Desk", "{number} of {count}") if not done else _tr("Desk", "{number} of {count}, {done} done")
    return place.format(number=turns.at + 1, count=count, done=done)


def table_words(turns: Turns, day: str) -> str:
    """What day it is, and who else is at the table: who is done, and who is still to come."""
    others = [turn for number, turn in enumerate(turns.all) if number != turns.at]
    done = spoken(Listing(turn.one.title for turn in others if turn.done))
    ahead = spoken(Listing(turn.one.title for turn in others if not turn.done))
    if done and ahead:
        told = _tr("Desk", "{day}, at the table. Done: {done}. Still to come: {ahead}.")
    elif done:
        told = _tr("Desk", "{day}, at the table. Done: {done}.")
    elif ahead:
        told = _tr("Desk", "{day}, at the table. Still to come: {ahead}.")
    else:
        told = _tr("Desk", "{day}, at the table")
    return told.format(day=day, done=done, ahead=ahead)
