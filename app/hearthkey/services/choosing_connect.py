"""Keeps the household's choices for configuration profiles."""

from __future__ import annotations

from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import connecting as sentences
from hearthkey.services.ports import Clock, Register
from hearthkey.services.writing_diary import note


def keep(register: Register, clock: Clock, chosen: ConnectChoices) -> Changes:
    """Keep what was chosen; where it is the same as before nothing is written.

    Raises:
        Unavailable: as the register.
    """
    sentence = sentences.chosen(chosen)
    if register.connect_choices() != chosen:
        with register.change() as change:
            change.keep_connect_choices(chosen)
            note(register, change, verb="settle", sentence=sentence, now=clock.now())
    return Changes(sentence)
