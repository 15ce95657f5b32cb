"""The transforms of IKEv2 and ESP by their names and numbers at IANA, and what two RFCs say against some of them.

Numbers: RFC 7296 section 3.3.2 and the IANA registry "Internet Key Exchange Version 2 (IKEv2) Parameters" that it
began; those after it from RFC 4106 section 8, RFC 4868, RFC 3526, RFC 5903, RFC 5114, RFC 7634 and RFC 8031.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from hearthkey.core.errors import Refused


class Kind(IntEnum):
    """Transform types (RFC 7296 section 3.3.2)."""

    ENCR = 1
    PRF = 2
    INTEG = 3
    KE = 4
    ESN = 5


class Protocol(IntEnum):
    """What a proposal is for (RFC 7296 section 3.3.1)."""

    IKE = 1
    ESP = 3


@dataclass(frozen=True)
class Transform:
    """One transform.

    Args:
        kind: its type.
        name: as IANA has it.
        number: transform ID within its type.
        bits: Key Length attribute (RFC 7296 section 3.3.5), or 0 where it has none.
    """

    kind: Kind
    name: str
    number: int
    bits: int = 0

    def __str__(self) -> str:
        return f"{self.name} {self.bits}" if self.bits else self.name


_NUMBERS: dict[Kind, dict[str, int]] = {
    Kind.ENCR: {
        "ENCR_DES_IV64": 1,
        "ENCR_DES": 2,
        "ENCR_3DES": 3,
        "ENCR_BLOWFISH": 7,
        "ENCR_3IDEA": 8,
        "ENCR_DES_IV32": 9,
        "ENCR_NULL": 11,
        "ENCR_AES_CBC": 12,
        "ENCR_AES_GCM_16": 20,
        "ENCR_CHACHA20_POLY1305": 28,
    },
    Kind.PRF: {
        "PRF_HMAC_MD5": 1,
        "PRF_HMAC_SHA1": 2,
        "PRF_HMAC_SHA2_256": 5,
        "PRF_HMAC_SHA2_384": 6,
        "PRF_HMAC_SHA2_512": 7,
    },
    Kind.INTEG: {
        "AUTH_HMAC_MD5_96": 1,
        "AUTH_HMAC_SHA1_96": 2,
        "AUTH_DES_MAC": 3,
        "AUTH_KPDK_MD5": 4,
        "AUTH_HMAC_SHA2_256_128": 12,
        "AUTH_HMAC_SHA2_384_192": 13,
        "AUTH_HMAC_SHA2_512_256": 14,
    },
    Kind.ESN: {"No Extended Sequence Numbers": 0, "Extended Sequence Numbers": 1},
}

_GROUPS = {
    0: "NONE",
    1: "768-bit MODP Group",
    2: "1024-bit MODP Group",
    5: "1536-bit MODP Group",
    14: "2048-bit MODP Group",
    15: "3072-bit MODP Group",
    16: "4096-bit MODP Group",
    17: "6144-bit MODP Group",
    18: "8192-bit MODP Group",
    19: "256-bit random ECP group",
    20: "384-bit random ECP group",
    21: "521-bit random ECP group",
    22: "1024-bit MODP Group with 160-bit Prime Order Subgroup",
    23: "2048-bit MODP Group with 224-bit Prime Order Subgroup",
    24: "2048-bit MODP Group with 256-bit Prime Order Subgroup",
    31: "Curve25519",
    32: "Curve448",
}

AEAD = frozenset({"ENCR_AES_GCM_16", "ENCR_CHACHA20_POLY1305"})
"""They protect integrity themselves, so no integrity transform stands beside them (RFC 5282 section 8)."""

_KEY_BITS = {"ENCR_AES_CBC": (128, 192, 256), "ENCR_AES_GCM_16": (128, 192, 256)}
"""RFC 3602 section 2.1 and RFC 4106 section 8.4: what needs a Key Length attribute, and its values."""

MUST_NOT, SHOULD_NOT = "MUST NOT", "SHOULD NOT"

_IKE_SOURCE, _ESP_SOURCE = "RFC 8247 section 2", "RFC 8221 sections 5 and 6"

# RFC 8247 sections 2.1 to 2.3; RFC 8221 section 5 (encryption) and 6 (integrity), where ENCR_DES_IV64, ENCR_DES_IV32
# and ENCR_3IDEA are from memory. ENCR_NULL, which RFC 8221 allows to ESP, is refused by `proposals.check`.
_AGAINST: dict[Protocol, dict[str, str]] = {
    Protocol.IKE: {
        "ENCR_DES": MUST_NOT,
        "ENCR_NULL": MUST_NOT,
        "PRF_HMAC_MD5": MUST_NOT,
        "AUTH_HMAC_MD5_96": MUST_NOT,
        "AUTH_DES_MAC": MUST_NOT,
        "AUTH_KPDK_MD5": MUST_NOT,
    },
    Protocol.ESP: {
        "ENCR_DES_IV64": MUST_NOT,
        "ENCR_DES": MUST_NOT,
        "ENCR_3DES": SHOULD_NOT,
        "ENCR_BLOWFISH": MUST_NOT,
        "ENCR_3IDEA": MUST_NOT,
        "ENCR_DES_IV32": MUST_NOT,
        "AUTH_HMAC_MD5_96": MUST_NOT,
        "AUTH_DES_MAC": MUST_NOT,
        "AUTH_KPDK_MD5": MUST_NOT,
    },
}
_GROUPS_AGAINST = {
    1: MUST_NOT,
    22: MUST_NOT,
    2: SHOULD_NOT,
    5: SHOULD_NOT,
    23: SHOULD_NOT,
    24: SHOULD_NOT,
}
"""RFC 8247 section 2.4; RFC 8221 leaves the groups of ESP to it."""


def transform(text: str) -> Transform:
    """Read a transform as a key set writes it, for instance "ENCR_AES_GCM_16 256".

    Raises:
        Refused: transform-unknown, transform-key-length.
    """
    name, _, bits = text.partition(" ") if text.startswith("ENCR_") else (text, "", "")
    for kind, numbers in _NUMBERS.items():
        if name in numbers:
            wanted = _KEY_BITS.get(name, ())
            found = int(bits) if bits.isascii() and bits.isdecimal() and len(bits) < 5 else 0
            if found not in (wanted or (0,)) or str(found or "") != bits:
                raise Refused("transform-key-length", name=name, text=bits[:20], known=tuple(map(str, wanted)))
            return Transform(kind, name, numbers[name], found)
    raise Refused("transform-unknown", text=text[:60])


def group(number: int) -> Transform:
    """A key exchange method (RFC 9370 renamed "Diffie-Hellman Group") by its number.

    Raises:
        Refused: transform-unknown.
    """
    if number not in _GROUPS:
        raise Refused("transform-unknown", text=f"key exchange method {number}")
    return Transform(Kind.KE, _GROUPS[number], number)


def check_allowed(protocol: Protocol, one: Transform) -> None:
    """Refuse what RFC 8247 (IKE) or RFC 8221 (ESP) says MUST NOT or SHOULD NOT be offered.

    Raises:
        Refused: transform-forbidden.
    """
    against = _GROUPS_AGAINST.get(one.number) if one.kind is Kind.KE else _AGAINST[protocol].get(one.name)
    if against is not None:
        by_group = one.kind is Kind.KE
        source = "RFC 8247 section 2.4" if by_group else {1: _IKE_SOURCE, 3: _ESP_SOURCE}[protocol]
        shown = f"{one.name} (group {one.number})" if by_group else one.name
        raise Refused("transform-forbidden", transform=shown, protocol=protocol.name, level=against, source=source)
