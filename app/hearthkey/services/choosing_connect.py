"""Keeps the household's choices for configuration profiles."""

from __future__ import annotations

from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.plans import Changes
from hearthkey.services.ports import Clock, Register
from hearthkey.services.writing_diary import note

_SIGNED = {"nobody": "not signed", "gateway": "signed with the gateway’s key", "ca": "signed with the CA key"}


def keep(register: Register, clock: Clock, chosen: ConnectChoices) -> Changes:
    """Keep what was chosen; where it is the same as before nothing is written.

    Raises:
        Unavailable: as the register.
    """
    sentence = _told(chosen)
    if register.connect_choices() != chosen:
        with register.change() as change:
            change.keep_connect_choices(chosen)
            note(register, change, verb="settle", sentence=sentence, now=clock.now())
    return Changes(sentence)


def _told(chosen: ConnectChoices) -> str:
    where = ", but not on the household’s own Wi-Fi" if chosen.own_wifi else ""
    way = f"connect by themselves{where}" if chosen.by_itself else "connect when asked to"
    return f"Configuration profiles {way}, and are {_SIGNED[chosen.signer]}."
