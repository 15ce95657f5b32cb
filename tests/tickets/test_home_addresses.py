"""This laptop's addresses, told and judged."""

from __future__ import annotations

import ipaddress
import json
from pathlib import Path

import pytest

from hearthkey.adapters.home_addresses import home_addresses, read
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.home_addresses import Found, Medium, Standing, chosen, judged, medium_of
from hearthkey.core.sentences.tickets import standing
from tests.judges import needs

HOME = (ipaddress.ip_network("192.0.2.0/24"), ipaddress.ip_network("2001:db8:51::/64"))
TUNNEL = ipaddress.ip_network("203.0.113.0/24")


def found(interface: str, medium: Medium, address: str, prefix: int = 24) -> Found:
    """One address."""
    return Found(interface, medium, ipaddress.ip_address(address), prefix)


ROWS = (
    found("lo", Medium.LOOPBACK, "127.0.0.1", 8),
    found("enp3s0", Medium.CABLE, "192.0.2.5"),
    found("wlan0", Medium.WIFI, "192.0.2.23"),
    found("wlan0", Medium.WIFI, "2001:db8:51::23", 64),
    found("wlan0", Medium.WIFI, "fe80::23", 64),
    found("enp4s0", Medium.CABLE, "169.254.7.7", 16),
    found("wlan1", Medium.WIFI, "192.168.9.4"),
    found("br-7", Medium.BRIDGE, "172.17.0.1", 16),
    found("tun0", Medium.TUNNEL, "10.9.0.2"),
    found("enp5s0", Medium.CABLE, "203.0.113.9"),
    found("wwan0", Medium.CABLE, "8.8.4.4"),
    found("br0", Medium.BRIDGE, "192.0.2.77"),
)


def test_each_address_is_judged_and_the_best_comes_first() -> None:
    """Broken if it fails: a code is shown that no phone can follow, and nobody says why."""
    rows = [(one.shown, one.standing) for one in judged(ROWS, HOME, TUNNEL)]
    assert rows == [
        ("Wi-Fi 192.0.2.23", Standing.HOME),
        ("Wi-Fi 2001:db8:51::23", Standing.HOME),
        ("Cable 192.0.2.5", Standing.HOME),
        ("Bridge 192.0.2.77", Standing.HOME),
        ("Wi-Fi 192.168.9.4", Standing.NEAR),
        ("Tunnel 10.9.0.2", Standing.TUNNEL),
        ("Cable 203.0.113.9", Standing.TUNNEL),
        ("Bridge 172.17.0.1", Standing.BRIDGE),
        ("Wi-Fi fe80::23", Standing.LINK_LOCAL),
        ("Cable 169.254.7.7", Standing.LINK_LOCAL),
        ("Cable 8.8.4.4", Standing.PUBLIC),
        ("This computer 127.0.0.1", Standing.LOOPBACK),
    ]


@pytest.mark.parametrize("row", judged(ROWS, HOME, TUNNEL), ids=lambda row: row.shown)
def test_each_standing_is_explained(row: object) -> None:
    """Broken if it fails: a wrong address is only greyed out."""
    assert len(str(standing(row))) > 15  # type: ignore[arg-type]  # pytest loses the type
    assert "unknown" not in str(standing(row))  # type: ignore[arg-type]  # as above


def test_choosing_by_address_by_interface_and_by_itself() -> None:
    """Broken if it fails: the householder's choice is not the one that is bound."""
    rows = judged(ROWS, HOME, TUNNEL)
    assert chosen(rows, None).shown == "Wi-Fi 192.0.2.23"
    assert chosen(rows, "192.0.2.5").interface == "enp3s0"
    assert chosen(rows, "[2001:db8:51::23]").address.version == 6
    assert chosen(rows, "wlan1").shown == "Wi-Fi 192.168.9.4"
    assert chosen(rows, "127.0.0.1").standing is Standing.LOOPBACK


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("192.0.2.99", "ticket-address-unknown"),
        ("wlan7", "ticket-address-unknown"),
        ("0.0.0.0", "ticket-address-unknown"),  # noqa: S104 - an address that is refused
        ("fe80::23", "ticket-address-unfit"),
        ("8.8.4.4", "ticket-address-unfit"),
    ],
)
def test_what_cannot_be_chosen(text: str, code: str) -> None:
    """Broken if it fails: a bundle is offered to the internet, or at an address that is not ours."""
    with pytest.raises(Refused, match=code):
        chosen(judged(ROWS, HOME, TUNNEL), text)


def test_no_address_at_home() -> None:
    """Broken if it fails: somebody without Wi-Fi is shown a code that leads nowhere."""
    with pytest.raises(Refused, match="ticket-address-none"):
        chosen(judged(ROWS[:1], HOME, TUNNEL), None)


@pytest.mark.parametrize(
    ("name", "says", "medium"),
    [
        ("wlp2s0", {"wireless": True, "real": True}, Medium.WIFI),
        ("enp3s0", {"real": True}, Medium.CABLE),
        ("br-1f", {}, Medium.BRIDGE),
        ("quince0", {"bridge": True}, Medium.BRIDGE),
        ("tun3", {}, Medium.TUNNEL),
        ("quince1", {"tunnel": True}, Medium.TUNNEL),
        ("lo", {"loopback": True}, Medium.LOOPBACK),
        ("dummy0", {}, Medium.OTHER),
    ],
)
def test_what_an_interface_is(name: str, says: dict[str, bool], medium: Medium) -> None:
    """Broken if it fails: a tunnel is called Wi-Fi."""
    facts = {"wireless": False, "bridge": False, "tunnel": False, "loopback": False, "real": False, **says}
    assert medium_of(name, **facts) is medium


def test_reading_what_the_system_tells(tmp_path: Path) -> None:
    """Broken if it fails: a tentative or outdated address is offered, or a tunnel is not seen as one."""
    (tmp_path / "wlan0" / "phy80211").mkdir(parents=True)
    (tmp_path / "quince0").mkdir()
    (tmp_path / "quince0" / "type").write_text("65534\n", encoding="ascii")
    told = json.loads("""[
        {"ifname": "wlan0", "flags": ["UP"], "addr_info": [
            {"family": "inet", "local": "192.0.2.23", "prefixlen": 24},
            {"family": "inet6", "local": "2001:db8:51::1", "prefixlen": 64, "tentative": true},
            {"family": "inet6", "local": "2001:db8:51::2", "prefixlen": 64, "deprecated": true}]},
        {"ifname": "quince0@if7", "flags": ["UP"], "addr_info": [
            {"family": "inet", "local": "10.9.0.2", "prefixlen": 24}]},
        {"ifname": "eth9", "flags": ["UP"]}]""")
    assert read(told, tmp_path) == (
        found("wlan0", Medium.WIFI, "192.0.2.23"),
        found("quince0", Medium.TUNNEL, "10.9.0.2"),
    )


def test_this_machine_has_a_loopback() -> None:
    """Broken if it fails: what the system tells is read wrong on a real machine."""
    needs("ip")
    assert found("lo", Medium.LOOPBACK, "127.0.0.1", 8) in home_addresses()


def test_without_the_program_it_is_said(monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a small system ends in a trace."""
    monkeypatch.setattr("shutil.which", lambda *_, **__: None)
    with pytest.raises(Unavailable, match="addresses-unknown"):
        home_addresses()
