"""What goes along with a bundle on paper or in words: the sheet, the card with the passphrase, the two messages."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum

from hearthkey.core.languages import Language
from hearthkey.core.names import file_stem
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.core.steps import Step

MOST_STEPS = 7


class Paper(Enum):
    """Width and height in points of 1/72 inch."""

    A4 = (595.28, 841.89)
    """ISO 216: 210 by 297 mm."""
    LETTER = (612.0, 792.0)
    """ANSI/ASME Y14.1: 8.5 by 11 inches."""


@dataclass(frozen=True)
class SheetFacts:
    """What a hand-over sheet says; never the passphrase, and no link, code or file name.

    Args:
        person, device: whose, and which.
        kind: what it is, in the sheet's language.
        household: its name.
        made: the day, UTC.
        ends: the last day on which the device gets in.
        steps: at most `MOST_STEPS`.
        call: whom to call, as the householder typed it; may be empty.
        language: of everything on it.
        practice: nothing of it is real.
        laptop: it has no mobile data of its own.
        typed: what is typed on the device, by its own labels; nothing of it is secret.
    """

    person: str
    device: str
    kind: str
    household: str
    made: datetime
    ends: datetime
    steps: tuple[Step, ...]
    call: str
    language: Language
    practice: bool = False
    laptop: bool = False
    typed: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class CardFacts:
    """What the passphrase card says; nothing of where the bundle is.

    Args:
        person: whose; the device is not named.
        words: the passphrase.
        language: of what stands around it.
    """

    person: str
    words: Secret[str]
    language: Language


def card_file(chosen: Pass) -> str:
    """What the card's file is called: whose it is, and nothing of the device; each pass has its own."""
    return f"{file_stem(chosen.person, 'somebody')}-card-{chosen.serial[-4:]}.pdf"


@dataclass(frozen=True)
class Messages:
    """The two messages for somebody who is far away.

    Args:
        written: goes with the file.
        spoken: is said on the phone, and holds the passphrase.
    """

    written: str
    spoken: Secret[str]
