"""A check of the way in that is about to be made, and the device that may be tried at the web front."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from hearthkey.core.bundle import Bundle, Credential
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Household
from hearthkey.core.passes import Pass
from hearthkey.core.proposals import Proposal
from hearthkey.core.reach.chain import Place
from hearthkey.core.reach.scopes import Address, Scope

Opens = Callable[[Pass], Bundle]
"""Opens a bundle that waits here: `services.bundling.Bundling.open`."""

_FRONT = {Place.FRONT, Place.FRONT_TLS, Place.FRONT_CERTIFICATE, Place.FRONT_ASKS, Place.FRONT_IN}


@dataclass(frozen=True)
class Trial:
    """A device that can be tried, for its bundle waits here.

    Args:
        person, device: whose it is, and what.
        credential: its key and certificate; in memory only.
    """

    person: str
    device: str
    credential: Credential = field(repr=False)


@dataclass(frozen=True)
class CheckPlan:
    """A check about to be made; nothing in it is secret but what `trial` holds, and no repr shows that.

    Args:
        household: whose gateway it is.
        host: name in A-labels, or address.
        router: address of the router and its kind, where told.
        at_home: see `CheckRequest`.
        proposals: for IKE.
        hashes: numbers of RFC 7427 section 7.
        authorities: certificates of the household's CAs, DER.
        web_front: whether there is one.
        trial: whom to try at the web front; None where no bundle waits that can be opened.
    """

    household: Household
    host: str
    router: tuple[Address, Scope] | None
    at_home: bool
    proposals: tuple[Proposal, ...]
    hashes: tuple[int, ...]
    authorities: tuple[bytes, ...]
    web_front: bool
    trial: Trial | None = field(default=None, repr=False)

    @property
    def places(self) -> tuple[Place, ...]:
        """The links that will be told, in the order of the packet."""
        return tuple(one for one in Place if self.web_front or one not in _FRONT)

    @property
    def groups(self) -> tuple[int, ...]:
        """The key exchange methods on offer, each once."""
        return tuple(dict.fromkeys(number for one in self.proposals for number in one.groups))


def trial(passes: Sequence[Pass], now: datetime, opens: Opens) -> Trial | None:
    """The newest device that gets in and whose bundle can be opened here; None where there is none.

    A keyring that does not answer is asked once, for each time it may take many seconds.
    """
    waiting = [one for one in passes if one.key_is_here and one.not_before <= now and one.gets_in(now)]
    for one in sorted(waiting, key=lambda each: each.not_before, reverse=True):
        try:
            bundle = opens(one)
        except Refused:
            continue
        except Unavailable:
            return None
        return Trial(one.person, one.device, Credential(bundle.key, bundle.certificate, bundle.authorities))
    return None
