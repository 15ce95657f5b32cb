"""Host names as people type them, with letters that DNS does not know."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.services import hostnames


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        # RFC 7296 section 3.5: an ID_FQDN with other letters is given as A-labels, and this is its example.
        ("tämäonesimerkki.example.net", "xn--tmonesimerkki-bfbb.example.net"),
        ("TÄMÄONESIMERKKI.example.net.", "xn--tmonesimerkki-bfbb.example.net"),
        ("xn--tmonesimerkki-bfbb.example.net", "xn--tmonesimerkki-bfbb.example.net"),
        ("home.quince.example.", "home.quince.example"),
        ("home。quince。example", "home.quince.example"),
    ],
)
def test_names_become_a_labels(typed: str, meant: str) -> None:
    """Broken if it fails: gateway and device spell one name in two ways, and do not know each other."""
    assert hostnames.gateway_host(typed) == meant


@pytest.mark.parametrize(
    "typed",
    [
        "hö me.example",
        "ö" * 64 + ".example",
        "ö_.example",
        "\u202e.example",
        "ö..example",
        "🍐\x1b.example",
        "é" * 5000,
    ],
)
def test_what_has_no_a_labels_is_refused(typed: str) -> None:
    """Broken if it fails: a name goes into a certificate that nobody can look up."""
    with pytest.raises(Refused) as refused:
        hostnames.gateway_host(typed)
    assert refused.value.code in {"host-malformed", "host-too-long"}


@pytest.mark.parametrize("typed", ["", " ", ".", "..."])
def test_nothing_is_no_host(typed: str) -> None:
    """Broken if it fails: bundles point nowhere."""
    with pytest.raises(Refused) as refused:
        hostnames.gateway_host(typed)
    assert refused.value.code == "host-empty"


@pytest.mark.parametrize(
    ("typed", "meant"),
    [("192.0.2.1", "192.0.2.1"), ("[2001:DB8:0::1]", "2001:db8::1"), (" 203.0.113.9 ", "203.0.113.9")],
)
def test_addresses_take_their_shortest_form(typed: str, meant: str) -> None:
    """Broken if it fails: an address is certified in a spelling that is never compared equal."""
    assert hostnames.gateway_host(typed) == meant


@pytest.mark.parametrize("typed", ["0.0.0.0", "::", "224.0.0.251", "ff02::fb"])  # noqa: S104 - read, not bound
def test_nobody_s_address_is_no_gateway(typed: str) -> None:
    """Broken if it fails: bundles point at everybody and nobody."""
    with pytest.raises(Refused) as refused:
        hostnames.gateway_host(typed)
    assert refused.value.code == "gateway-unreachable"
