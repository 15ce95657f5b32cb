"""Plans for the certificates of a household: CA, gateway, device, and the one by which one CA vouches for the next."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.keysets import P_384, KeySet

AUTHORITY_DAYS = 3650
GATEWAY_DAYS = 825
"""Days. The longest that TLS clients of some phones accept for a private CA's server."""
GUEST_DAYS = 7
BACKDATED = timedelta(days=1)
"""Clocks differ: a certificate begins a day before it was made."""

_CODE_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"
_SECOND = timedelta(seconds=1)


@dataclass(frozen=True)
class AuthorityPlan:
    """The self-signed CA certificate.

    Args:
        organization: O of subject and issuer.
        common_name: CN, which no later CA of the household repeats.
        serial: positive, at most 20 octets (RFC 5280 section 4.1.2.2).
        not_before, not_after: UTC, inclusive.
        path_length: 1, so that a successor can be cross-certified one day.
    """

    organization: str
    common_name: str
    serial: int
    not_before: datetime
    not_after: datetime
    path_length: int = 1
    key_type: str = P_384


@dataclass(frozen=True)
class CrossPlan:
    """The old CA's certificate for the new CA's key, of path length 0: no further CA may follow in its name.

    Args:
        serial, not_before, not_after: as in `AuthorityPlan`; within the days of both CAs.
    """

    serial: int
    not_before: datetime
    not_after: datetime


@dataclass(frozen=True)
class GatewayPlan:
    """The gateway's certificate: serverAuth and id-kp-ipsecIKE, SAN its public host.

    Args:
        host: A-labels, or an address as text; decides dNSName or iPAddress.
        serial, not_before, not_after: as in `AuthorityPlan`.
        key_type: see `keysets`.
        former: hosts that devices with an older bundle still look for, in the same certificate
            (RFC 4945 section 3.1: one that is not in there is turned away from).
    """

    host: str
    serial: int
    not_before: datetime
    not_after: datetime
    key_type: str
    former: tuple[str, ...] = ()


@dataclass(frozen=True)
class DevicePlan:
    """A device's certificate: clientAuth and id-kp-ipsecIKE, SAN dNSName its identity.

    Args:
        identity: the IKE ID, a code; it travels in clear, so no person's name is in it.
        serial, not_before, not_after: as in `AuthorityPlan`.
        key_type: see `keysets`.
    """

    identity: str
    serial: int
    not_before: datetime
    not_after: datetime
    key_type: str


def serial_number(bits: Callable[[int], int]) -> int:
    """Draw a serial number: positive, 158 random bits, so at most 20 octets in DER.

    RFC 5280 section 4.1.2.2; CA/Browser Forum baseline requirements 7.1 (at least 64 bits).
    The topmost bit drawn is set, so that all serials of a household have one length.
    """
    return (1 << 158) | bits(158)


def serial_hex(serial: int) -> str:
    """Write a serial as lower-case hex with whole octets."""
    text = f"{serial:x}"
    return text if len(text) % 2 == 0 else "0" + text


def identity_code(below: Callable[[int], int]) -> str:
    """Draw eight letters and digits without look-alikes (about 39 bits)."""
    return "".join(_CODE_LETTERS[below(len(_CODE_LETTERS))] for _ in range(8))


def plan_authority(household: Household, *, now: datetime, bits: Callable[[int], int]) -> AuthorityPlan:
    """Plan a CA of a household, the first or one that follows it; the two never share a name."""
    begin = now - BACKDATED
    return AuthorityPlan(
        organization=household.certified_name,
        common_name=f"Household CA {now.year}-{bits(32):08x}",
        serial=serial_number(bits),
        not_before=begin,
        not_after=now + timedelta(days=AUTHORITY_DAYS) - _SECOND,
    )


def plan_cross(
    *,
    now: datetime,
    old: tuple[datetime, datetime],
    new: tuple[datetime, datetime],
    bits: Callable[[int], int],
) -> CrossPlan:
    """Plan the cross certificate.

    Args:
        old, new: first and last moment of the two CAs.
    """
    return CrossPlan(
        serial=serial_number(bits),
        not_before=max(now - BACKDATED, old[0], new[0]),
        not_after=min(old[1], new[1]),
    )


def plan_gateway(
    host: str,
    key_set: KeySet,
    *,
    now: datetime,
    authority_end: datetime,
    bits: Callable[[int], int],
    former: tuple[str, ...] = (),
) -> GatewayPlan:
    """Plan the gateway's certificate: at most 825 days in all, never longer than the CA."""
    begin = now - BACKDATED
    return GatewayPlan(
        host=host,
        serial=serial_number(bits),
        not_before=begin,
        not_after=min(begin + timedelta(days=GATEWAY_DAYS) - _SECOND, authority_end),
        key_type=key_set.key_type,
        former=former,
    )


def plan_device(
    identity: str,
    key_set: KeySet,
    *,
    now: datetime,
    ends: datetime | None,
    guest: bool,
    authority_begin: datetime,
    authority_end: datetime,
    bits: Callable[[int], int],
) -> DevicePlan:
    """Plan a device's certificate.

    Args:
        ends: the end that the householder chose, UTC, or None for the default: a guest's pass ends
            in days, another one after the key set's time.
        authority_begin, authority_end: the CA's own dates; a pass stays within them.

    Raises:
        Refused: end-in-the-past, end-after-authority.
    """
    if ends is None:
        default = now + timedelta(days=GUEST_DAYS if guest else key_set.default_days) - _SECOND
        ends = min(default, authority_end)
    if ends <= now:
        raise Refused("end-in-the-past", end=f"{ends:%d %B %Y %H:%M} UTC")
    if ends > authority_end:
        raise Refused("end-after-authority", end=f"{ends:%d %B %Y}", authority_end=f"{authority_end:%d %B %Y}")
    return DevicePlan(
        identity=identity,
        serial=serial_number(bits),
        not_before=max(now - BACKDATED, authority_begin),
        not_after=ends,
        key_type=key_set.key_type,
    )


def end_of_day(year: int, month: int, day: int) -> datetime:
    """The last second of a day, UTC: "until Friday" includes Friday."""
    return datetime(year, month, day, 23, 59, 59, tzinfo=UTC)


@dataclass(frozen=True)
class CertificateFacts:
    """What a certificate says, read back from its DER.

    Args:
        subject, issuer: RFC 4514 text.
        serial: hex, lower case.
        names: SAN entries, as "dns:..." or "ip:...".
        usages: extended key usage OIDs, dotted.
        key_type: for instance "P-256" or "RSA-3072".
        not_before, not_after: UTC.
        fingerprint: SHA-256 of the DER, hex.
        is_authority: basicConstraints cA.
    """

    subject: str
    issuer: str
    serial: str
    names: tuple[str, ...]
    usages: tuple[str, ...]
    key_type: str
    not_before: datetime
    not_after: datetime
    fingerprint: str
    is_authority: bool
