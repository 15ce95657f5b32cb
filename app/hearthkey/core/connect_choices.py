"""What a device does by itself, where its system takes such rules: connect, and where not to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core.errors import Refused

LONGEST_WIFI = 32
"""Octets of a Wi-Fi's name (IEEE 802.11, SSID element)."""
MOST_WIFI = 20

NOBODY, BY_GATEWAY, BY_CA = "nobody", "gateway", "ca"
SIGNERS = (NOBODY, BY_GATEWAY, BY_CA)
"""Whose key signs a configuration profile."""


@dataclass(frozen=True)
class ConnectChoices:
    """The household's choices for configuration profiles.

    Args:
        by_itself: connect on mobile data and on any Wi-Fi but the household's own.
        own_wifi: names of the Wi-Fis on which nothing is needed; they stand readable in the profile.
        signer: one of `SIGNERS`.
    """

    by_itself: bool = False
    own_wifi: tuple[str, ...] = ()
    signer: str = NOBODY


def choices(*, by_itself: bool, own_wifi: Sequence[str], signer: str) -> ConnectChoices:
    """Check what was typed.

    Raises:
        Refused: wifi-name-unfit, wifi-names-many, signer-unknown.
    """
    names = tuple(dict.fromkeys(one for one in own_wifi if one.strip()))
    for one in names:
        if len(one.encode()) > LONGEST_WIFI or not one.isprintable():
            raise Refused("wifi-name-unfit", text=one[:60], limit=LONGEST_WIFI)
    if len(names) > MOST_WIFI:
        raise Refused("wifi-names-many", count=len(names), limit=MOST_WIFI)
    if signer not in SIGNERS:
        raise Refused("signer-unknown", text=signer[:40], known=SIGNERS)
    return ConnectChoices(by_itself, names, signer)
