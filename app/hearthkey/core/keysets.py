"""Named sets of key type, signature hash and tunnel parameters, each with its source."""

from __future__ import annotations

from dataclasses import dataclass

from hearthkey.core.errors import Refused

RSA_3072, P_256, P_384 = "RSA-3072", "P-256", "P-384"


@dataclass(frozen=True)
class KeySet:
    """What a device signs with and what the tunnel is built from.

    A named set keeps its name only for exactly these values (RFC 9206 section 5).

    Args:
        name: how the householder and a bundle call it.
        key_type: RSA-3072, P-256 or P-384.
        default_days: length of a pass where nobody says otherwise.
        ike: transforms of the IKE SA, by their names at IANA, with the key length in bits.
        esp: transforms of the ESP SA.
        key_exchange: IKEv2 key exchange method number at IANA.
        source: document and clause.
    """

    name: str
    key_type: str
    default_days: int
    ike: tuple[str, ...]
    esp: tuple[str, ...]
    key_exchange: int
    source: str


BROAD = KeySet(
    name="broad",
    key_type=RSA_3072,
    default_days=730,
    ike=("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128", "PRF_HMAC_SHA2_256"),
    esp=("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128"),
    key_exchange=14,
    source="RFC 8247 sections 2 and 3, RFC 8221 sections 5 and 6; for clients that sign with RSA only",
)
COMPACT = KeySet(
    name="compact",
    key_type=P_256,
    default_days=730,
    ike=("ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_256"),
    esp=("ENCR_AES_GCM_16 256",),
    key_exchange=19,
    source="RFC 8247 sections 2 and 3, RFC 8221 section 5",
)
SUITE_384 = KeySet(
    name="suite-384",
    key_type=P_384,
    default_days=730,
    ike=("ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_512"),
    esp=("ENCR_AES_GCM_16 256",),
    key_exchange=20,
    source="RFC 9206 section 5.1 (CNSA-GCM-256-ECDH-384), RFC 8603",
)

KEY_SETS = {one.name: one for one in (BROAD, COMPACT, SUITE_384)}


def key_set(name: str) -> KeySet:
    """Look a key set up.

    Raises:
        Refused: key-set-unknown.
    """
    try:
        return KEY_SETS[name]
    except KeyError:
        raise Refused("key-set-unknown", text=name[:40], known=tuple(KEY_SETS)) from None
