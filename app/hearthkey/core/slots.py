"""The slots that a template can have: what each means, its value today, and which of them are secret."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from enum import StrEnum

from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.keysets import key_set
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import SignedList
from hearthkey.core.secret import Secret
from hearthkey.core.templates import DEVICE, GATEWAY


class SlotKind(StrEnum):
    """What a template can do with a value; the words are those of the sentences."""

    TEXT = "a text"
    LONG = "a text of many lines"
    NUMBER = "a number"
    LIST = "a list"
    DEVICES = "a list of devices"
    DEVICE = "a device"
    TRUTH = "a yes or no"


@dataclass(frozen=True)
class DeviceLine:
    """One device that gets in, as the gateway's template sees it in its list of devices.

    Args:
        identity: the IKE ID (ID_FQDN, RFC 7296 section 3.5).
        title: whose device it is.
        serial_number: of its certificate, hex.
        ends: RFC 3339 text, UTC.
        extra_secret: base64, where it has one.
    """

    identity: str
    title: str
    serial_number: str
    ends: str
    extra_secret: Secret[str] | None = None


Value = str | int | tuple[str, ...] | tuple[DeviceLine, ...] | Secret[str] | None
"""None: there is nothing of that sort today."""


@dataclass(frozen=True)
class Slot:
    """One slot.

    Args:
        name: as it stands between the braces.
        kind: what can be done with it.
        meaning: one sentence.
        secret: whether screens and previews hide it.
    """

    name: str
    kind: SlotKind
    meaning: str
    secret: bool = False


_TEXT, _LONG, _NUMBER, _LIST = SlotKind.TEXT, SlotKind.LONG, SlotKind.NUMBER, SlotKind.LIST
HOUSEHOLD_SLOTS = (
    Slot("household", _TEXT, "The household’s name, as it stands in its certificates."),
    Slot(
        "gateway_host",
        _TEXT,
        "The name or address that devices reach the gateway under; also its identity (RFC 7296 section 3.5).",
    ),
    Slot("identity_suffix", _TEXT, "What the identity of every device ends in."),
    Slot("home_subnets", _LIST, "What devices reach at home, each in prefix notation: a list to loop over."),
    Slot("tunnel", _TEXT, "“split” where devices reach the home subnets only, “full” where all traffic goes home."),
    Slot("tunnel_subnet", _TEXT, "Where devices get their inner addresses from, in prefix notation."),
    Slot("dns_servers", _LIST, "Addresses of the DNS servers asked inside the tunnel: a list, and it may be empty."),
    Slot("ca_certificate", _LONG, "The household’s CA certificate, PEM (RFC 7468 section 5)."),
    Slot("ca_fingerprint", _TEXT, "SHA-256 of the CA certificate’s DER, hexadecimal."),
    Slot("ca_ends", _TEXT, "When the CA ends, UTC (RFC 3339)."),
    Slot("household_secret", _TEXT, "One random secret that gateway and devices share, base64.", secret=True),
)
"""Both templates have these."""

GATEWAY_SLOTS = (
    *HOUSEHOLD_SLOTS,
    Slot(
        "gateway_former",
        _LIST,
        "Names or addresses that the gateway was reached under before and still answers to, as identities of its own "
        "(RFC 7296 section 3.5): a list, and it is empty most of the time.",
    ),
    Slot("gateway_certificate", _LONG, "The gateway’s certificate, PEM (RFC 7468 section 5)."),
    Slot("gateway_key", _LONG, "The gateway’s private key, not encrypted, PEM (RFC 7468 section 10).", secret=True),
    Slot("gateway_ends", _TEXT, "When the gateway’s certificate ends, UTC (RFC 3339)."),
    Slot("revocation_list", _LONG, "The newest revocation list, PEM (RFC 7468 section 6)."),
    Slot("list_number", _NUMBER, "The number of that list (CRLNumber, RFC 5280 section 5.2.3)."),
    Slot("list_good_until", _TEXT, "Until when that list is good: its nextUpdate, UTC (RFC 3339)."),
    Slot(
        "devices",
        SlotKind.DEVICES,
        "Every device that gets in: a list to loop over, each with identity, title, serial_number, ends and "
        "extra_secret.",
    ),
)
DEVICE_SLOTS = (
    *HOUSEHOLD_SLOTS,
    Slot("device_title", _TEXT, "Whose device it is, for people."),
    Slot("device_identity", _TEXT, "The device’s identity, a code (ID_FQDN, RFC 7296 section 3.5)."),
    Slot("device_certificate", _LONG, "The device’s certificate, PEM (RFC 7468 section 5)."),
    Slot("device_key", _LONG, "The device’s private key, not encrypted, PEM (RFC 7468 section 10).", secret=True),
    Slot("device_key_sealed", _LONG, "The same key under the bundle’s passphrase, PEM (RFC 7468 section 11)."),
    Slot("serial_number", _TEXT, "The serial number of the device’s certificate, hexadecimal."),
    Slot("pass_begins", _TEXT, "When the pass begins, UTC (RFC 3339)."),
    Slot("pass_ends", _TEXT, "When the pass ends, UTC (RFC 3339)."),
    Slot("ike_transforms", _LIST, "The transforms of the IKE SA, by their names at IANA: a list to loop over."),
    Slot("esp_transforms", _LIST, "The transforms of the ESP SA, by their names at IANA: a list to loop over."),
    Slot("key_exchange", _NUMBER, "The number of the key exchange method at IANA."),
    Slot("extra_secret", _TEXT, "The device’s secret beside the certificate (RFC 8784), base64.", secret=True),
)
DEVICE_FIELDS = {
    "identity": SlotKind.TEXT,
    "title": SlotKind.TEXT,
    "serial_number": SlotKind.TEXT,
    "ends": SlotKind.TEXT,
    "extra_secret": SlotKind.TEXT,
}
"""What a `DeviceLine` has, by the names that a template writes behind the dot."""


def slots_of(of: str) -> tuple[Slot, ...]:
    """The slots of a template for the gateway or for a device."""
    return {GATEWAY: GATEWAY_SLOTS, DEVICE: DEVICE_SLOTS}[of]


def moment(at: datetime) -> str:
    """Write a moment as RFC 3339 section 5.6 has it, UTC."""
    return f"{at.astimezone(UTC):%Y-%m-%dT%H:%M:%SZ}"


def household_values(
    household: Household, authority: Authority, *, ca_certificate: str, household_secret: Secret[str] | None
) -> dict[str, Value]:
    """Fill the slots that both templates have.

    Args:
        ca_certificate: PEM.
        household_secret: base64, or None where the household has none.
    """
    return {
        "household": household.certified_name,
        "gateway_host": household.gateway_host,
        "identity_suffix": household.identity_suffix,
        "home_subnets": tuple(str(one) for one in household.home_subnets),
        "tunnel": household.tunnel,
        "tunnel_subnet": str(household.tunnel_subnet),
        "dns_servers": household.dns_servers,
        "ca_certificate": ca_certificate,
        "ca_fingerprint": authority.fingerprint,
        "ca_ends": moment(authority.not_after),
        "household_secret": household_secret,
    }


def gateway_values(
    gateway: Gateway,
    signed: SignedList,
    *,
    certificate: str,
    key: Secret[str] | None,
    revocation_list: str,
    devices: tuple[DeviceLine, ...],
    former: tuple[str, ...] = (),
) -> dict[str, Value]:
    """Fill the slots that only the gateway's template has; certificate, key and list are PEM."""
    return {
        "gateway_former": former,
        "gateway_certificate": certificate,
        "gateway_key": key,
        "gateway_ends": moment(gateway.not_after),
        "revocation_list": revocation_list,
        "list_number": signed.number,
        "list_good_until": moment(signed.next_update),
        "devices": devices,
    }


def device_values(
    chosen: Pass, *, certificate: str, key: Secret[str] | None, sealed: str | None, extra_secret: Secret[str] | None
) -> dict[str, Value]:
    """Fill the slots that only a device's template has.

    Args:
        certificate, key, sealed: PEM; both keys None once they are gone, or where nobody asked for them.
        extra_secret: base64, or None where the device has none.
    """
    algorithms = key_set(chosen.key_set)
    return {
        "device_title": str(chosen.title),
        "device_identity": chosen.identity,
        "device_certificate": certificate,
        "device_key": key,
        "device_key_sealed": sealed,
        "serial_number": chosen.serial,
        "pass_begins": moment(chosen.not_before),
        "pass_ends": moment(chosen.not_after),
        "ike_transforms": algorithms.ike,
        "esp_transforms": algorithms.esp,
        "key_exchange": algorithms.key_exchange,
        "extra_secret": extra_secret,
    }


def device_line(chosen: Pass, extra_secret: Secret[str] | None) -> DeviceLine:
    """One line of the gateway's list of devices."""
    return DeviceLine(chosen.identity, str(chosen.title), chosen.serial, moment(chosen.not_after), extra_secret)


def device_stand_ins() -> dict[str, Value]:
    """Marks in place of a device, for a preview before there is one: "[device_title]"."""
    own = DEVICE_SLOTS[len(HOUSEHOLD_SLOTS) :]
    return {slot.name: _stand_in(slot) for slot in own}


def _stand_in(slot: Slot) -> Value:
    mark = f"[{slot.name}]"
    if slot.kind is SlotKind.NUMBER:
        return 0
    return (mark,) if slot.kind is SlotKind.LIST else mark


_BOUNDARY = re.compile(r"-----(?:BEGIN|END) [A-Z0-9 ]+-----")


def masked(text: str) -> str:
    """Hide a secret behind marks of the same lines; the boundary lines of PEM are no secret."""
    return "\n".join(line if _BOUNDARY.fullmatch(line) else "•" * len(line) for line in text.split("\n"))


def hidden(values: Mapping[str, Value]) -> dict[str, Value]:
    """The same values with every secret masked, those of the devices in a list as well."""
    return {name: _hidden(value) for name, value in values.items()}


def _hidden(value: Value) -> Value:
    if isinstance(value, Secret):
        return masked(value.reveal())
    if isinstance(value, tuple):
        return tuple(_hidden_line(one) if isinstance(one, DeviceLine) else one for one in value)  # type: ignore[return-value]  # a tuple is of one sort
    return value


def _hidden_line(line: DeviceLine) -> DeviceLine:
    if line.extra_secret is None:
        return line
    return replace(line, extra_secret=Secret(masked(line.extra_secret.reveal())))
