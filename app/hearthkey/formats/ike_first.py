"""The first message to a gateway: what the household's devices would ask it for, and nothing that proves anything."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core.proposals import Proposal
from hearthkey.formats.ike_values import (
    IKE_SA_INIT,
    NO_SPI,
    KePayload,
    Message,
    NoncePayload,
    NotifyPayload,
    Payload,
    Said,
    SaPayload,
    wired,
)
from hearthkey.formats.ike_write import address_mark, hashes_mark

LONGEST_COOKIE = 64
"""Octets (RFC 7296 section 2.6)."""


@dataclass(frozen=True)
class Asked:
    """What stays the same in every try of one conversation (RFC 7296 section 2.6).

    Args:
        initiator: our SPI.
        nonce: 32 octets.
        proposals: for IKE, in order.
        hashes: numbers of RFC 7427 section 7 that the household's devices sign with.
        here, there: address and port on both sides, as this computer sees them.
    """

    initiator: bytes
    nonce: bytes
    proposals: Sequence[Proposal]
    hashes: Sequence[int]
    here: tuple[str, int]
    there: tuple[str, int]


def first_message(asked: Asked, group: int, public: bytes, cookie: bytes | None = None) -> Message:
    """IKE_SA_INIT (RFC 7296 section 1.2).

    Args:
        group, public: the key exchange method, and a value of it.
        cookie: what the gateway wants to see again; it goes first (section 2.6).
    """
    payloads: list[Payload] = [] if cookie is None else [NotifyPayload(Said.COOKIE, cookie)]
    payloads += [
        SaPayload(tuple(wired(number, one) for number, one in enumerate(asked.proposals, 1))),
        KePayload(group, public),
        NoncePayload(asked.nonce),
        NotifyPayload(Said.NAT_DETECTION_SOURCE_IP, address_mark(asked.initiator, NO_SPI, *asked.here)),
        NotifyPayload(Said.NAT_DETECTION_DESTINATION_IP, address_mark(asked.initiator, NO_SPI, *asked.there)),
        NotifyPayload(Said.IKEV2_FRAGMENTATION_SUPPORTED),
        NotifyPayload(Said.SIGNATURE_HASH_ALGORITHMS, hashes_mark(asked.hashes)),
    ]
    return Message(
        initiator=asked.initiator,
        responder=NO_SPI,
        exchange=IKE_SA_INIT,
        response=False,
        from_initiator=True,
        number=0,
        payloads=tuple(payloads),
    )
