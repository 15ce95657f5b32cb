"""Which proposals for IKE and ESP a gateway offers for a key set, checked against RFC 8247 and RFC 8221."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import BROAD, COMPACT, SUITE_384, KeySet
from hearthkey.core.transforms import AEAD, Kind, Protocol, Transform, check_allowed, group, transform

NO_GROUP = 0
"""NONE: a device may leave the key exchange out when it rekeys ESP (RFC 7296 section 1.3.1)."""

_ESN = ("Extended Sequence Numbers", "No Extended Sequence Numbers")
"""Every ESP proposal names one at least (RFC 7296 section 3.3.3); the first lasts longer (RFC 4303 section 2.2.1)."""


@dataclass(frozen=True)
class Proposal:
    """One proposal: one transform of each type is chosen out of it (RFC 7296 section 3.3).

    Args:
        protocol: IKE or ESP.
        transforms: in the order of preference within each type.
    """

    protocol: Protocol
    transforms: tuple[Transform, ...]

    def of(self, kind: Kind) -> tuple[Transform, ...]:
        """Its transforms of one type."""
        return tuple(one for one in self.transforms if one.kind is kind)

    @property
    def encryption(self) -> Transform:
        """What it encrypts with; `check` wants exactly one."""
        return self.of(Kind.ENCR)[0]

    @property
    def integrity(self) -> Transform | None:
        """What protects its integrity, or None where encryption does."""
        found = self.of(Kind.INTEG)
        return found[0] if found else None

    @property
    def groups(self) -> tuple[int, ...]:
        """Numbers of its key exchange methods."""
        return tuple(one.number for one in self.of(Kind.KE))


_WIDER: dict[str, dict[Protocol, tuple[str, ...]]] = {
    BROAD.name: {
        Protocol.IKE: ("ENCR_AES_GCM_16 256", "PRF_HMAC_SHA2_256"),
        Protocol.ESP: ("ENCR_AES_GCM_16 256",),
    },
}
_WIDER_GROUPS = {BROAD.name: (19,)}
"""What a gateway offers before a key set's own values.

The devices of the set are of many makes. Those that can, take what is stronger; none is asked to. The suite of
RFC 9206 has nothing here: it offers its own values and no others (section 5).
"""


def proposals(key_set: KeySet) -> tuple[Proposal, ...]:
    """The proposals for a key set, those for IKE first, the strongest of each first.

    Raises:
        Refused: as `check`, where a key set was given something forbidden.
    """
    wider = _WIDER.get(key_set.name, {})
    groups = (*_WIDER_GROUPS.get(key_set.name, ()), key_set.key_exchange)
    return tuple(
        _made(protocol, names, groups, strict=key_set.name == SUITE_384.name)
        for protocol, own in ((Protocol.IKE, key_set.ike), (Protocol.ESP, key_set.esp))
        for names in (wider.get(protocol), own)
        if names is not None
    )


def _made(protocol: Protocol, names: Iterable[str], groups: Iterable[int], *, strict: bool) -> Proposal:
    numbers = list(groups)
    extra: tuple[str, ...] = ()
    if protocol is Protocol.ESP:
        numbers += [] if strict else [NO_GROUP]
        extra = _ESN
    found = Proposal(protocol, (*map(transform, (*names, *extra)), *map(group, numbers)))
    check(found)
    return found


def offered(key_sets: Iterable[KeySet]) -> tuple[Proposal, ...]:
    """The proposals for all key sets that a household's devices have, without saying anything twice.

    Proposals that differ only in their groups become one. The order is that of strength: the suite of RFC 9206,
    compact, broad, whatever else.

    Raises:
        Refused: as `check`.
    """
    rank = {SUITE_384.name: 0, COMPACT.name: 1, BROAD.name: 2}
    merged: dict[tuple[Protocol, tuple[Transform, ...]], Proposal] = {}
    for key_set in sorted(set(key_sets), key=lambda one: (rank.get(one.name, len(rank)), one.name)):
        for one in proposals(key_set):
            rest = tuple(part for part in one.transforms if part.kind is not Kind.KE)
            before = merged.get((one.protocol, rest))
            groups = (*before.of(Kind.KE), *one.of(Kind.KE)) if before is not None else one.of(Kind.KE)
            ordered = sorted(dict.fromkeys(groups), key=lambda part: part.number == NO_GROUP)
            merged[one.protocol, rest] = replace(one, transforms=(*rest, *ordered))
    return tuple(sorted(merged.values(), key=lambda one: one.protocol))


def check(proposal: Proposal) -> None:
    """Refuse a proposal that is forbidden, incomplete, or does not protect what it encrypts.

    RFC 8247 section 2 and RFC 8221 sections 5 and 6 (MUST NOT, SHOULD NOT); RFC 7296 section 3.3.3 (which types have
    to be there); RFC 5282 section 8 and RFC 8221 section 5 (combined modes take no integrity transform); RFC 8221
    section 4 (encryption without authentication).

    Raises:
        Refused: transform-forbidden, proposal-incomplete, proposal-readable, proposal-unprotected,
            proposal-integrity-twice.
    """
    protocol = proposal.protocol
    wanted = {Protocol.IKE: (Kind.ENCR, Kind.PRF, Kind.KE), Protocol.ESP: (Kind.ENCR, Kind.ESN)}[protocol]
    for kind in wanted:
        if not proposal.of(kind):
            raise Refused("proposal-incomplete", protocol=protocol.name, missing=kind.name)
    if protocol is Protocol.IKE and NO_GROUP in proposal.groups:
        raise Refused("proposal-incomplete", protocol=protocol.name, missing=Kind.KE.name)
    for one in proposal.transforms:
        check_allowed(protocol, one)
    ciphers = proposal.of(Kind.ENCR)
    if any(one.name == "ENCR_NULL" for one in ciphers):
        raise Refused("proposal-readable", protocol=protocol.name)
    combined = [one.name for one in ciphers if one.name in AEAD]
    if combined and (proposal.integrity is not None or len(combined) < len(ciphers)):
        raise Refused("proposal-integrity-twice", protocol=protocol.name, transform=combined[0])
    if not combined and proposal.integrity is None:
        raise Refused("proposal-unprotected", protocol=protocol.name, transform=ciphers[0].name)
