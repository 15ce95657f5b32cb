"""Leaves a sentence in the diary, inside the transaction of the verb that it is about."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta

from hearthkey.core.diary import FIRST_LINK, DiaryEntry, first_misfit, link_of
from hearthkey.core.diary_words import written
from hearthkey.core.errors import Refused
from hearthkey.core.sealed import CopyNote
from hearthkey.services.ports import Change, Register

TOLERATED = timedelta(minutes=5)
"""How far a clock may be behind what is known of it."""


def note(register: Register, change: Change, *, verb: str, sentence: str, now: datetime) -> None:
    """Write the next entry, in English and as what it is made of; it counts only if the transaction does."""
    last = register.last_entry()
    previous, number = (last.link, last.number + 1) if last is not None else (FIRST_LINK, 1)
    link = link_of(previous, number=number, at=now, verb=verb, sentence=sentence)
    change.add_diary(DiaryEntry(number, now, verb, str(sentence), link, written(sentence)))


def check_clock(register: Register, now: datetime) -> None:
    """Refuse to sign under a clock that has been set back: dates would lie, lists would contradict.

    Raises:
        Refused: clock-behind.
    """
    known = [entry.at for entry in [register.last_entry()] if entry is not None]
    known += [signed.this_update for signed in [register.newest_list()] if signed is not None]
    if known and now < max(known) - TOLERATED:
        raise Refused("clock-behind", clock=f"{now:%d %B %Y %H:%M}", last=f"{max(known):%d %B %Y %H:%M}")


def read(register: Register, copies: Iterable[CopyNote] = ()) -> tuple[list[DiaryEntry], int | None]:
    """All entries, and the number of the first one that does not fit the chain or a sealed copy's head, or None.

    Args:
        copies: the sealed copies that were made; each of them took down where the diary ended then.
    """
    entries = register.diary()
    heads = [(one.diary_entries, one.diary_link) for one in copies]
    return entries, first_misfit(entries, written=register.diary_written(), heads=heads)
