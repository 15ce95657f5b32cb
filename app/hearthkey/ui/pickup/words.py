"""What the desk is told about a pick-up, in words."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.ticket_events import Event, Happened
from hearthkey.ui.text import said

ANNOUNCED = (300, 120, 60)
"""Seconds left at which the time is said aloud."""

NOT_LONGER = frozenset({Happened.QUIET})
"""What is no longer true once something arrived."""


def clock(seconds: int) -> str:
    """Minutes and seconds: "09:41"."""
    return f"{seconds // 60:02}:{seconds % 60:02}"


def latest(heard: Sequence[Event]) -> str:
    """What happened last that still holds."""
    return said(sentences.event(heard[-1])) if heard else ""


def unfit(address: HomeAddress) -> str:
    """Why nothing can be picked up at an address."""
    return said(Sentence("{address}: {why}", {"address": address.shown, "why": said(sentences.standing(address))}))
