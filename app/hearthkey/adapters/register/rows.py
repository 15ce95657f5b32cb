"""Rows of the register turned into values."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import UTC, datetime
from typing import Any

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.household import Authority, Gateway
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof
from hearthkey.core.revocation import Entry, ListBeside, Reason, SignedList

Row = tuple[Any, ...]

HOUSEHOLD = """
SELECT name, gateway_host, identity_suffix, home_subnets, tunnel_subnet, dns_servers, tunnel, practice FROM household
"""
PASSES = """
SELECT person.name, device.label, device.kind, device.identity, pass.serial, pass.key_set, pass.container,
       pass.guest, pass.not_before, pass.not_after, pass.handed_over, withdrawal.reason, withdrawal.since,
       CASE WHEN pass.handed_over IS NULL AND (withdrawal.reason IS NULL OR withdrawal.reason = 6)
       THEN (SELECT sealed IS NULL FROM certificate WHERE certificate.serial = pass.serial) END
FROM pass
JOIN device ON device.id = pass.device
JOIN person ON person.id = device.person
LEFT JOIN withdrawal ON withdrawal.serial = pass.serial AND withdrawal.lifted IS NULL
ORDER BY device.person, device.id, pass.id
"""
ENTRIES = """
SELECT withdrawal.serial, withdrawal.since, withdrawal.reason, serial.not_after, listed_reason.reason
FROM withdrawal JOIN serial ON serial.serial = withdrawal.serial
LEFT JOIN listed_reason ON listed_reason.serial = withdrawal.serial AND withdrawal.reason <> 6
WHERE withdrawal.lifted IS NULL
"""
LISTS = "SELECT number, der, this_update, next_update FROM revocation_list"
DIARY = "SELECT number, at, verb, sentence, link, coalesce(words, '') FROM diary LEFT JOIN diary_words USING (number)"

_REASONS = {reason.value: reason for reason in Reason}


def moment(seconds: int) -> datetime:
    """A point in time from whole seconds since 1970."""
    return datetime.fromtimestamp(seconds, UTC)


def blob(value: object) -> bytes:
    """A BLOB column."""
    if not isinstance(value, bytes):
        raise TypeError(f"a blob was expected, not {type(value).__name__}")
    return value


def authority(row: Row) -> Authority:
    """A row of certificate, fingerprint, not_after, key_place, and the first CA's fingerprint for a later one."""
    certificate, fingerprint, not_after, key_place, first = row
    return Authority(certificate, fingerprint, moment(not_after), key_place, first)


def gateway(row: Row) -> Gateway:
    """A row of host, serial, certificate, sealed_key, not_after."""
    host, serial, certificate, sealed_key, not_after = row
    return Gateway(host, serial, certificate, sealed_key, moment(not_after))


def passes(found: Iterable[Row], proved: Mapping[str, tuple[Proof, ...]]) -> list[Pass]:
    """Rows of `PASSES`, each with its proofs."""
    at = datetime.fromtimestamp
    return [
        Pass(
            person, device, kind, identity, serial, key_set, container, guest == 1,
            at(begin, UTC), at(end, UTC),
            None if handed is None else at(handed, UTC),
            None if reason is None else _REASONS[reason],
            None if since is None else at(since, UTC),
            proved.get(serial, ()),
            lost == 1,
        )
        for (person, device, kind, identity, serial, key_set, container,
             guest, begin, end, handed, reason, since, lost) in found
    ]  # fmt: skip


def entries(found: Iterable[Row]) -> list[Entry]:
    """Rows of `ENTRIES`."""
    return [
        Entry(serial, moment(since), _REASONS[reason], moment(not_after), listed)
        for serial, since, reason, not_after, listed in found
    ]


def signed_list(row: Row, signer: str = "", beside: tuple[ListBeside, ...] = ()) -> SignedList:
    """A row of `LISTS`, with who signed it and what lies beside it."""
    number, der, this_update, next_update = row
    return SignedList(number, der, moment(this_update), moment(next_update), signer, beside)


def diary_entry(row: Row) -> DiaryEntry:
    """A row of `DIARY`."""
    number, at, verb, sentence, link, words = row
    return DiaryEntry(number, moment(at), verb, sentence, link, words)
