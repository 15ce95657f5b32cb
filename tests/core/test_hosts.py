"""Host names and identity suffixes, as DNS has them."""

from __future__ import annotations

import pytest

from hearthkey.core import names
from hearthkey.core.errors import Refused


def refusal(text: str) -> Refused:
    """Return what a host name is refused with."""
    with pytest.raises(Refused) as refused:
        names.host_name(text)
    return refused.value


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("home.quince.example", "home.quince.example"),
        ("HOME.Quince.Example", "home.quince.example"),
        ("home.quince.example.", "home.quince.example"),
        ("  home.quince.example ", "home.quince.example"),
        ("xn--tmonesimerkki-bfbb.example.net", "xn--tmonesimerkki-bfbb.example.net"),
        ("7.quince.example", "7.quince.example"),
        ("localhost", "localhost"),
    ],
)
def test_hosts_are_taken_in_one_spelling(typed: str, meant: str) -> None:
    """Broken if it fails: one host is certified under two spellings (RFC 4343: case does not count)."""
    assert names.host_name(typed) == meant


@pytest.mark.parametrize(
    "text",
    [
        "*.quince.example",  # RFC 4945 section 5.1.3.6: no wildcard
        "home_.quince.example",
        "home quince.example",
        "home..quince.example",
        ".quince.example",
        "-home.quince.example",
        "home-.quince.example",
        "home.quince.example:443",
        "https://home.quince.example",
        "quince.123",  # RFC 1123 section 2.1: the highest label is never all digits
        "198.51.100.256",
        "a" * 64 + ".example",  # RFC 1035 section 2.3.4: 63 octets a label
        "hôme.example",
        "home.quince.example..",
    ],
)
def test_what_dns_cannot_look_up_is_refused(text: str) -> None:
    """Broken if it fails: a certificate carries a name that no device can ask for."""
    assert refusal(text).code == "host-malformed"


@pytest.mark.parametrize("text", ["", " ", "."])
def test_an_empty_host_is_refused(text: str) -> None:
    """Broken if it fails: bundles point nowhere."""
    assert refusal(text).code == "host-empty"


def test_two_hundred_and_fifty_three_characters_are_the_most() -> None:
    """Broken if it fails: a name that DNS cannot carry (RFC 1035 section 3.1: 255 octets, two of them not text)."""
    label = "a" * 49
    longest = ".".join([label] * 5) + ".abc"
    assert len(longest) == 253
    assert names.host_name(longest) == longest
    assert refusal(longest + "d").code == "host-too-long"


def test_the_longest_suffix_leaves_room_for_the_code() -> None:
    """Broken if it fails: an identity does not fit where the CommonName ends (RFC 5280: 64)."""
    suffix = "a" * 45 + ".example"
    assert names.identity_suffix(suffix) == suffix
    with pytest.raises(Refused) as refused:
        names.identity_suffix("a" + suffix)
    assert refused.value.code == "suffix-too-long"


@pytest.mark.parametrize(
    ("host", "suffix"),
    [
        ("home.quince.example", "quince.example"),
        ("quince.example", "quince.example"),
        ("localhost", "localhost"),
        ("192.0.2.1", "home.arpa"),  # RFC 8375
        ("2001:db8::1", "home.arpa"),
    ],
)
def test_the_suffix_follows_from_the_host(host: str, suffix: str) -> None:
    """Broken if it fails: the householder has to know what an identity suffix is."""
    assert names.default_suffix(host) == suffix


@pytest.mark.parametrize("text", ["192.0.2.1", "[2001:db8::1]", " 2001:DB8::1 "])
def test_addresses_are_known_as_such(text: str) -> None:
    """Broken if it fails: an address is certified as a name."""
    assert names.as_address(text) is not None


@pytest.mark.parametrize("text", ["home.quince.example", "192.0.2", "192.0.2.01", "fe80::1%wlan0", "fe80::1%\x1b[31m"])
def test_names_and_addresses_with_a_zone_are_none(text: str) -> None:
    """Broken if it fails: an address that one computer alone understands is certified (RFC 4007 section 11)."""
    assert names.as_address(text) is None
