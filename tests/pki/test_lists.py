"""Revocation lists as they are signed and read back (RFC 5280 section 5)."""

from __future__ import annotations

import pytest
from cryptography import x509
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.certificates import serial_hex
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.revocation import Entry, ListPlan, Reason
from hearthkey.pki import judge, lists
from tests.pki import quince
from tests.pki.quince import DAY, NOW, Quince


@pytest.fixture(scope="module")
def two_on_it(home: Quince) -> bytes:
    """A list with two entries, the same octets for every example."""
    return home.list_of(home.device.certificate, home.gateway.certificate)


def test_every_reason_comes_back(home: Quince) -> None:
    """If this fails, a stopped device is listed for another reason. RFC 5280 section 5.3.1."""
    entries = tuple(Entry(serial_hex(quince.serial()), NOW - DAY, reason, NOW + DAY) for reason in Reason)
    signed = lists.sign_list(ListPlan(41, NOW, NOW + 800 * DAY, entries), home.authority, home.key)
    facts = lists.read_list(signed)
    assert [(one.serial, one.since, one.reason) for one in facts.entries] == [
        (entry.serial, entry.since, entry.reason.rfc_name) for entry in entries
    ]
    assert (facts.number, facts.this_update, facts.next_update) == (41, NOW, NOW + 800 * DAY)
    assert facts.issuer == "CN=Household CA 2026-00000001,O=Quince Cottage (practice)"


def test_profile(home: Quince) -> None:
    """If this fails, strict gateways turn the list away. RFC 5280 sections 5.1.2.1, 5.2.1, 5.2.3, 5.3.1."""
    found = x509.load_der_x509_crl(home.list_of(home.device.certificate))
    assert [(one.oid.dotted_string, one.critical) for one in found.extensions] == [
        ("2.5.29.35", False),
        ("2.5.29.20", False),
    ]
    assert [one.critical for one in next(iter(found)).extensions] == [False]
    assert b"\x02\x01\x01" in found.tbs_certlist_bytes[:8]  # version 2 is written 1
    assert found.signature_algorithm_oid.dotted_string == "1.2.840.10045.4.3.3"  # ecdsa-with-SHA384, RFC 5758 3.2


def test_empty_list_has_no_list_of_entries(home: Quince) -> None:
    """If this fails, strict readers turn away the household's first list. RFC 5280 section 5.1.2.6."""
    signed = home.list_of()
    assert lists.read_list(signed).entries == ()
    found = x509.load_der_x509_crl(signed)
    assert b"Z\xa0" in found.tbs_certlist_bytes  # extensions follow nextUpdate at once


def test_ten_thousand_entries_are_all_there(home: Quince) -> None:
    """If this fails, entries are lost on a long list."""
    entries = tuple(Entry(serial_hex(number), NOW, Reason.SUPERSEDED, NOW) for number in range(1, 10_001))
    signed = lists.sign_list(ListPlan(2, NOW, NOW + DAY, entries), home.authority, home.key)
    assert [int(one.serial, 16) for one in lists.read_list(signed).entries] == list(range(1, 10_001))


def test_crossed_dates_are_a_bug(home: Quince) -> None:
    """If this fails, a list that is overdue from its first second locks everybody out."""
    with pytest.raises(Bug, match="list-dates-crossed"):
        lists.sign_list(ListPlan(1, NOW, NOW, ()), home.authority, home.key)


def test_signature_is_checked(home: Quince) -> None:
    """If this fails, a foreign list can be taken for the household's."""
    signed = home.list_of(home.device.certificate)
    judge.check_list(signed, home.authority)
    other = quince.found()
    for revocation_list, authority in ((signed, other.authority), (signed[:-1] + b"\0", home.authority)):
        with pytest.raises(judge.NotTrusted) as caught:
            judge.check_list(revocation_list, authority)
        assert caught.value.code == "list-untrusted"


@settings(max_examples=60)
@given(data=st.data())
def test_damaged_lists_are_refused_or_read(data: st.DataObject, two_on_it: bytes) -> None:
    """If this fails, a damaged list reaches the householder as a crash."""
    signed = bytearray(two_on_it)
    signed[data.draw(st.integers(0, len(signed) - 1))] ^= 1 << data.draw(st.integers(0, 7))
    cut = bytes(signed[: data.draw(st.integers(0, len(signed)))])
    for damaged in (bytes(signed), cut):
        try:
            facts = lists.read_list(damaged)
        except Refused as error:
            assert error.code == "list-unreadable"  # noqa: PT017  # whether it raises is left to the damage
        else:
            assert len(facts.entries) <= 2
