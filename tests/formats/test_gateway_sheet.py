"""The settings sheet as text: every value there, with its standard, and narrow enough to read."""

from __future__ import annotations

from dataclasses import replace

import pytest

from hearthkey.core.household import Household
from hearthkey.core.keysets import BROAD, COMPACT, KEY_SETS, SUITE_384
from hearthkey.core.tunnel import terms
from hearthkey.formats.gateway_sheet import blocks, sheet
from hearthkey.formats.sheet import WIDTH, Heading, Note, Row, Title, text
from tests.core.quince_terms import BOTH, FULL, OLD_LINE

EVERY_SHAPE = [
    (household, key_sets, extra)
    for household in (BOTH, FULL, OLD_LINE, replace(BOTH, gateway_host="2001:db8:51::7", practice=False))
    for key_sets in ((BROAD,), (COMPACT,), (SUITE_384,), tuple(KEY_SETS.values()))
    for extra in (False, True)
]


def one_line(told: str) -> str:
    """Text without its line ends, so that a phrase is found wherever it was broken."""
    return " ".join(told.split())


@pytest.mark.parametrize(("household", "key_sets", "extra"), EVERY_SHAPE)
def test_every_sheet_fits_its_columns(household: Household, key_sets: tuple[object, ...], extra: bool) -> None:  # noqa: FBT001 - a row of the table
    """Broken if it fails: lines run over the edge of a terminal or a printed page."""
    chosen = [one for one in KEY_SETS.values() if one in key_sets]
    written = sheet(terms(household, chosen[0], device_key_sets=chosen, extra_secret=extra))
    assert max(map(len, written.splitlines())) <= WIDTH
    assert written.endswith("\n")
    assert not written.endswith("\n\n")
    assert "\n\n\n" not in written
    assert "\u00a0" not in written
    assert not any(line != line.rstrip() for line in written.splitlines())


def test_what_somebody_types_is_there() -> None:
    """Broken if it fails: a value that the gateway needs is missing from its sheet."""
    written = one_line(sheet(terms(BOTH, BROAD, device_key_sets=(BROAD, COMPACT))))
    for value in (
        "ID_FQDN (2): home.quince.example",
        "ID_FQDN (2): CODE.quince.example",
        "ca-certificate.pem",
        "list.pem or list.crl",
        "Digital Signature (14)",
        "ENCR_AES_GCM_16 (20), 256 bits",
        "ENCR_AES_CBC (12), 256 bits",
        "AUTH_HMAC_SHA2_256_128 (12)",
        "PRF_HMAC_SHA2_256 (5)",
        "256-bit random ECP group (19), 2048-bit MODP Group (14), NONE (0)",
        "Extended Sequence Numbers: yes (1) or no (0)",
        "24 hours, then the session ends",
        "TS_IPV4_ADDR_RANGE (7): 198.51.100.0/24, from 198.51.100.0 to 198.51.100.255",
        "TS_IPV6_ADDR_RANGE (8): 2001:db8:51::/64, from 2001:db8:51:: to 2001:db8:51:0:ffff:ffff:ffff:ffff",
        "INTERNAL_IP4_ADDRESS (1): 203.0.113.0/24, from 203.0.113.1 to 203.0.113.254",
        "INTERNAL_IP4_DNS (3): 198.51.100.1",
        "INTERNAL_IP6_DNS (10): 2001:db8:51::1",
        "UDP 500 and UDP 4500",
        "1406 octets, for an outer MTU of 1500",
        "1366 octets over IPv4, 1346 over IPv6",
    ):
        assert value in written


def test_why_a_session_ends_stands_beside_its_length() -> None:
    """Broken if it fails: somebody lengthens it, and nobody has told them what a thief gains."""
    row = next(one for one in blocks(terms(BOTH, BROAD)) if isinstance(one, Row) and one.label == "Proving anew after")
    assert "stolen device" in row.why
    assert "RFC 7296 section 2.8.3" in row.source


def test_every_section_names_its_standards() -> None:
    """Broken if it fails: a value stands there that nobody can look up."""
    section: dict[str, set[str]] = {}
    heading = ""
    for block in blocks(terms(BOTH, BROAD, extra_secret=True)):
        if isinstance(block, Heading):
            heading = block.text
            section[heading] = set()
        elif isinstance(block, Row):
            section[heading].add(block.source)
    assert len(section) == 7
    for sources in section.values():
        assert any(source.startswith("RFC ") for source in sources)


def test_what_the_addresses_leave_open_is_said() -> None:
    """Broken if it fails: a family believes that all its traffic goes through home, and half of it does not."""
    assert "they cannot reach 2001:db8:51::/64" in one_line(sheet(terms(BOTH, BROAD)))
    assert "it may pass the tunnel by" in one_line(sheet(terms(FULL, BROAD)))
    assert "a device’s IPv6 goes its own way" in one_line(sheet(terms(OLD_LINE, BROAD)))
    assert "goes its own way" not in one_line(sheet(terms(BOTH, BROAD)))


def test_a_practice_household_says_so_first() -> None:
    """Broken if it fails: somebody sets a real gateway up for a household that does not exist."""
    first = sheet(terms(BOTH, BROAD)).splitlines()
    assert "(practice)" in first[0]
    assert first[3].startswith("! This is the practice household.")
    real = sheet(terms(replace(BOTH, practice=False), BROAD))
    assert real.startswith("Quince Cottage: what")
    assert "practice household" not in real


def test_the_suite_is_named_where_it_is_the_suite() -> None:
    """Broken if it fails: the name of RFC 9206 section 5.1 is missing, or promises what is not kept."""
    assert "CNSA-GCM-256-ECDH-384" in sheet(terms(BOTH, SUITE_384))
    assert "CNSA" not in sheet(terms(BOTH, SUITE_384, device_key_sets=(SUITE_384, BROAD)))


def test_the_extra_secret_is_told_where_there_is_one() -> None:
    """Broken if it fails: devices with a secret beside the certificate meet a gateway that knows none (RFC 8784)."""
    assert "USE_PPK (16435)" in sheet(terms(BOTH, BROAD, extra_secret=True))
    assert "8784" not in sheet(terms(BOTH, BROAD))


def test_little_room_is_told() -> None:
    """Broken if it fails: IPv6 inside the tunnel is slow and nobody says why (RFC 8200 section 5)."""
    assert "IPv6 wants 1280" in one_line(sheet(terms(BOTH, BROAD, outer_mtu=1320)))
    assert "IPv6 wants 1280" not in one_line(sheet(terms(BOTH, BROAD)))


def test_one_hour_is_not_hours() -> None:
    """Broken if it fails: the sheet reads as if a machine had written it."""
    assert "1 hour, then the session ends" in sheet(terms(BOTH, BROAD, reauthentication_hours=1))


def test_a_row_keeps_values_apart_from_reasons() -> None:
    """Broken if it fails: nobody sees which words are to be typed, or a clause is torn from its document."""
    reason = "A reason that runs on and on until it needs"
    assert text([Row("A label that is rather long", ("typed",), reason, "RFC 7296 section 2.8")]) == (
        "A label that is rather  typed\n"
        "long\n"
        "                          A reason that runs on and on until it needs\n"
        "                          [RFC 7296 section 2.8]\n"
    )


def test_a_name_of_253_characters_is_cut() -> None:
    """Broken if it fails: the longest host name of RFC 1035 section 3.1 breaks the columns."""
    host = ".".join(["a" * 63] * 3 + ["b" * 61])
    written = text([Title("Title"), Note("Note"), Heading("Heading"), Row("Host", (host,))])
    assert max(map(len, written.splitlines())) <= WIDTH
    assert "".join(written.split("Host")[1].split()) == host
