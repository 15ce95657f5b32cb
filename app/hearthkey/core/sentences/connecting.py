"""What is said of the household's choices for configuration profiles."""

from __future__ import annotations

from hearthkey.core.connect_choices import BY_CA, BY_GATEWAY, NOBODY, ConnectChoices

_BY_HAND = "Configuration profiles connect when asked to."
_BY_ITSELF = "Configuration profiles connect by themselves."
_AWAY = "Configuration profiles connect by themselves, but not on the household’s own Wi-Fi."
_SIGNED = {
    NOBODY: "They are not signed.",
    BY_GATEWAY: "They are signed with the gateway’s key.",
    BY_CA: "They are signed with the CA key.",
}


def chosen(made: ConnectChoices) -> str:
    """For the diary: how profiles are made from now on."""
    connects = _BY_HAND if not made.by_itself else _AWAY if made.own_wifi else _BY_ITSELF
    return f"{connects} {_SIGNED[made.signer]}"
