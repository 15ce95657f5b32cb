"""Makes the certificates of Quince Cottage, the practice household, for the tests of this folder."""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from hearthkey.core.bundle import Credential
from hearthkey.core.certificates import AuthorityPlan, DevicePlan, GatewayPlan, serial_number
from hearthkey.core.revocation import Entry, ListPlan, Reason
from hearthkey.core.secret import Secret
from hearthkey.pki import keys, lists, mint, read
from hearthkey.pki.keys import AuthorityKey

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
DAY = timedelta(days=1)
PASSPHRASE = Secret("plum kettle ivory lantern gravel otter quilt")
HOST, IDENTITY = "home.quince.example", "abcd2345.quince.example"

_numbers = itertools.count(1)


def serial() -> int:
    """The next serial of a fixed row, as long as a real one."""
    return serial_number(lambda _: next(_numbers))


@dataclass(frozen=True)
class Quince:
    """A household with its CA, its gateway and one device."""

    key: AuthorityKey
    authority: bytes
    gateway: Credential
    device: Credential

    def device_with(self, key_type: str = "P-256", *, not_after: datetime = NOW + 700 * DAY) -> Credential:
        """Another device."""
        key = keys.make_key(key_type)
        plan = DevicePlan(IDENTITY, serial(), NOW - DAY, not_after, key_type)
        certificate = mint.device_certificate(plan, keys.public_der(key), self.authority, self.key)
        return Credential(key, certificate, (self.authority,))

    def gateway_with(self, host: str) -> Credential:
        """Another gateway."""
        key = keys.make_key("P-256")
        plan = GatewayPlan(host, serial(), NOW - DAY, NOW + 800 * DAY, "P-256")
        certificate = mint.gateway_certificate(plan, keys.public_der(key), self.authority, self.key)
        return Credential(key, certificate, (self.authority,))

    def list_of(
        self, *certificates: bytes, reason: Reason = Reason.CERTIFICATE_HOLD, at: datetime = NOW, days: int = 800
    ) -> bytes:
        """A signed list with these certificates on it."""
        entries = tuple(Entry(read.certificate_facts(one).serial, at, reason, NOW + 700 * DAY) for one in certificates)
        return lists.sign_list(ListPlan(7, at, at + days * DAY, entries), self.authority, self.key)


def authority_plan(
    name: str = "Household CA 2026-00000001", *, not_after: datetime = NOW + 3650 * DAY
) -> AuthorityPlan:
    """A plan for the household's CA."""
    return AuthorityPlan("Quince Cottage (practice)", name, serial(), NOW - DAY, not_after)


def found() -> Quince:
    """Found the household."""
    key = AuthorityKey.make()
    authority = mint.authority_certificate(authority_plan(), key)
    empty = Credential(Secret(b""), b"", ())
    bare = Quince(key, authority, empty, empty)
    return Quince(key, authority, bare.gateway_with(HOST), bare.device_with())
