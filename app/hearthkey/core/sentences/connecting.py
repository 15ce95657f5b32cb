"""What is said of the household's choices for configuration profiles."""

from __future__ import annotations

from hearthkey.core import connect_choices
from hearthkey.core.phrases import Listing, Phrase, sentences

BY_HAND = "Configuration profiles connect when asked to."
BY_ITSELF = "Configuration profiles connect by themselves."
AWAY = "Configuration profiles connect by themselves, but not on the household’s own Wi-Fi."
SIGNED = {
    connect_choices.NOBODY: "They are not signed.",
    connect_choices.BY_GATEWAY: "They are signed with the gateway’s key.",
    connect_choices.BY_CA: "They are signed with the CA key.",
}


def chosen(made: connect_choices.ConnectChoices) -> Listing:
    """For the diary: how profiles are made from now on."""
    connects = BY_HAND if not made.by_itself else AWAY if made.own_wifi else BY_ITSELF
    return sentences((Phrase(connects), Phrase(SIGNED[made.signer])))
