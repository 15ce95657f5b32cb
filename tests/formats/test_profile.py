"""Configuration profiles against the vendor's published schema, and read back."""

from __future__ import annotations

import contextlib
import plistlib
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.connect_choices import ConnectChoices, choices
from hearthkey.core.errors import Refused
from hearthkey.core.keysets import KEY_SETS, key_set
from hearthkey.formats import profile
from tests.formats.practice import SETTINGS
from tests.formats.profile_schema import walk

CONTAINER, CA = b"\x30\x82container", b"\x30\x82authority"


def written(chosen: ConnectChoices = ConnectChoices(), **other: object) -> bytes:  # noqa: B008 - a frozen value
    """A profile of the practice household's phone."""
    settings = replace(SETTINGS, **other)  # type: ignore[arg-type]  # each test names fields of it
    return profile.write(settings, CONTAINER, [CA], chosen, issuer="Household CA 2026-ab12", container_name="a.p12")


def part(data: bytes, kind: str) -> dict[str, Any]:
    """One payload."""
    whole = plistlib.loads(data)
    return next(dict(one) for one in whole["PayloadContent"] if one["PayloadType"] == kind)


@pytest.mark.parametrize("tunnel", ["split", "full"])
@pytest.mark.parametrize("name", KEY_SETS)
@pytest.mark.parametrize("by_itself", [True, False])
def test_every_key_is_in_the_vendors_schema(name: str, tunnel: str, *, by_itself: bool) -> None:
    """If this failed, the system would refuse the profile, or leave out what it does not know."""
    chosen = key_set(name)
    found = written(
        ConnectChoices(by_itself, ("Quince", "Quince upstairs")),
        key_set=name,
        tunnel=tunnel,
        ike=chosen.ike,
        esp=chosen.esp,
        key_exchange=chosen.key_exchange,
    )
    assert walk(plistlib.loads(found)) == []


def test_a_key_that_nobody_published_is_found() -> None:
    """If this failed, the test above would see nothing."""
    whole = plistlib.loads(written())
    whole["PayloadContent"][0]["Password"] = "plum"
    whole["PayloadContent"][-1]["IKEv2"]["MTU"] = 9000
    assert len(walk(whole)) == 2


def test_it_says_whose_it_is_and_where_to() -> None:
    """If this failed, the phone would connect to nothing, or as somebody else."""
    ikev2 = part(written(), "com.apple.vpn.managed")["IKEv2"]
    assert ikev2["RemoteAddress"] == ikev2["RemoteIdentifier"] == SETTINGS.gateway_host
    assert ikev2["LocalIdentifier"] == SETTINGS.identity
    read = profile.read(written())
    assert (read.container, read.authorities) == (CONTAINER, (CA,))
    assert (read.identity, read.host) == (SETTINGS.identity, SETTINGS.gateway_host)


def test_a_renewed_profile_replaces_the_old_one_and_no_other() -> None:
    """If this failed, the phone would have two of them, or lose somebody else's."""
    first, renewed = plistlib.loads(written()), plistlib.loads(written(serial="0f" * 10))
    other = plistlib.loads(written(identity="zz99.quince.example"))
    assert first["PayloadIdentifier"] == renewed["PayloadIdentifier"] != other["PayloadIdentifier"]
    uuids = [one["PayloadUUID"] for one in first["PayloadContent"]]
    assert len({*uuids, first["PayloadUUID"]}) == len(uuids) + 1
    assert part(written(), "com.apple.vpn.managed")["IKEv2"]["PayloadCertificateUUID"] == uuids[0]


def test_it_connects_by_itself_everywhere_but_at_home() -> None:
    """If this failed, the café's Wi-Fi would read along, or the phone would tunnel from the sofa."""
    ikev2 = part(written(ConnectChoices(by_itself=True, own_wifi=("Quince",))), "com.apple.vpn.managed")["IKEv2"]
    assert ikev2["OnDemandEnabled"] == 1
    assert ikev2["OnDemandRules"] == [
        {"Action": "Disconnect", "InterfaceTypeMatch": "WiFi", "SSIDMatch": ["Quince"]},
        {"Action": "Connect", "InterfaceTypeMatch": "WiFi"},
        {"Action": "Connect", "InterfaceTypeMatch": "Cellular"},
        {"Action": "Ignore"},
    ]
    assert "OnDemandRules" not in part(written(), "com.apple.vpn.managed")["IKEv2"]


@given(st.binary(max_size=300))
def test_rubbish_is_refused_and_never_crashes(data: bytes) -> None:
    """If this failed, a file from anywhere could end the app."""
    with pytest.raises(Refused, match="profile-unreadable"):
        profile.read(data)


@given(st.integers(min_value=0), st.binary(min_size=1, max_size=4))
def test_a_damaged_profile_is_refused_or_read_as_it_stands(place: int, octets: bytes) -> None:
    """If this failed, half a profile would end the app."""
    data = bytearray(written())
    at = place % len(data)
    data[at : at + len(octets)] = octets
    with contextlib.suppress(Refused):
        assert profile.read(bytes(data)).authorities


@pytest.mark.parametrize("name", ["", " ", "x" * 33, "ü" * 17, "a\nb"])
def test_names_that_no_wifi_has_are_refused(name: str) -> None:
    """If this failed, a rule would never match, and nobody would know why."""
    if not name.strip():
        assert choices(by_itself=True, own_wifi=[name], signer="nobody").own_wifi == ()
        return
    with pytest.raises(Refused, match="wifi-name-unfit"):
        choices(by_itself=True, own_wifi=[name], signer="nobody")
