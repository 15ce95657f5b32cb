"""Finishes what a crash cut short, at the next start."""

from __future__ import annotations

import contextlib
from collections.abc import Callable

from hearthkey.core.errors import Unavailable
from hearthkey.services.listing import Listing
from hearthkey.services.ports import Register, Vault


def sweep(register: Register, vault_at: Callable[[str], Vault]) -> None:
    """Take secrets that belong to nothing out of their vaults.

    A vault that does not answer is asked again at the next start: the names stay written down. So it
    is with a disk that is in the way of scrubbing, which a crash in the middle of a hand-over left undone.
    """
    loose = register.loose_secrets()
    if not loose:
        return
    try:
        register.scrub()
    except Unavailable:
        return
    for name, place in loose:
        with contextlib.suppress(Unavailable):
            vault_at(place).delete(name)
            register.forget_loose(name)


def publish(listing: Listing) -> None:
    """Write the newest list to its folder, if the disk lets us; it is in the register in any case."""
    with contextlib.suppress(Unavailable):
        listing.publish_missing()
