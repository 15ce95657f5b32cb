"""The dress rehearsal in memory, in both versions of TLS."""

from __future__ import annotations

import pytest

from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Refused
from hearthkey.core.keysets import KEY_SETS
from hearthkey.pki import handshake
from hearthkey.pki.judge import NotTrusted
from tests.pki import quince
from tests.pki.quince import DAY, HOST, NOW, Quince

pytestmark = pytest.mark.parametrize("version", [handshake.TLS_1_2, handshake.TLS_1_3])


@pytest.mark.parametrize("key_type", sorted({one.key_type for one in KEY_SETS.values()}))
def test_a_good_device_gets_in(home: Quince, version: str, key_type: str) -> None:
    """If this fails, no bundle of that key set can be handed over."""
    device = home.device_with(key_type)
    agreed = handshake.rehearse(device, home.gateway, home.list_of(), host=HOST, at=NOW, version=version)
    assert agreed.startswith(f"TLSv{version}, ")


def test_a_stopped_device_does_not(home: Quince, version: str) -> None:
    """If this fails, the rehearsal calls a stopped phone good; TLS 1.3 tells the phone too late."""
    with pytest.raises(NotTrusted) as caught:
        handshake.rehearse(
            home.device, home.gateway, home.list_of(home.device.certificate), host=HOST, at=NOW, version=version
        )
    assert (caught.value.code, caught.value.facts["whose"]) == ("certificate-revoked", "device")


def test_nobody_gets_in_under_an_overdue_list(home: Quince, version: str) -> None:
    """If this fails, the first lock-out of the whole family is not foreseen."""
    revocation_list, later = home.list_of(days=30), NOW + 31 * DAY
    with pytest.raises(NotTrusted) as caught:
        handshake.rehearse(home.device, home.gateway, revocation_list, host=HOST, at=later, version=version)
    assert caught.value.code == "list-overdue"


@pytest.mark.parametrize(("days", "whose"), [(750, "device"), (1000, "gateway")])
def test_ends_are_noticed_on_both_sides(home: Quince, version: str, days: int, whose: str) -> None:
    """If this fails, the rehearsal uses another clock than it was given, or only one side judges."""
    revocation_list = home.list_of(days=2000)
    with pytest.raises(NotTrusted) as caught:
        handshake.rehearse(home.device, home.gateway, revocation_list, host=HOST, at=NOW + days * DAY, version=version)
    assert (caught.value.code, caught.value.facts["whose"]) == ("certificate-ended", whose)


def test_strangers_are_turned_away_on_both_sides(home: Quince, version: str) -> None:
    """If this fails, one side trusts anybody."""
    other = quince.found()
    trusting = Credential(other.device.key, other.device.certificate, (home.authority,))
    for device, gateway, whose in ((trusting, home.gateway, "device"), (home.device, other.gateway, "gateway")):
        with pytest.raises(NotTrusted) as caught:
            handshake.rehearse(device, gateway, home.list_of(), host=HOST, at=NOW, version=version)
        assert (caught.value.code, caught.value.facts["whose"]) == ("path-untrusted", whose)


def test_another_name_is_not_the_gateway(home: Quince, version: str) -> None:
    """If this fails, a device takes any certificate of the household for the gateway's."""
    with pytest.raises(Refused) as caught:
        handshake.rehearse(
            home.device, home.gateway, home.list_of(), host="other.quince.example", at=NOW, version=version
        )
    assert caught.value.code == "name-differs"


def test_a_device_certificate_is_no_gateway(home: Quince, version: str) -> None:
    """If this fails, a stolen phone could pose as the gateway. RFC 5280 section 4.2.1.12."""
    with pytest.raises(NotTrusted) as caught:
        handshake.rehearse(home.device, home.device, home.list_of(), host=HOST, at=NOW, version=version)
    assert (caught.value.code, caught.value.facts["whose"]) == ("usage-wrong", "gateway")


def test_a_gateway_at_an_address_is_reached_by_it(home: Quince, version: str) -> None:
    """If this fails, households without a host name cannot rehearse."""
    gateway = home.gateway_with("203.0.113.5")
    agreed = handshake.rehearse(home.device, gateway, home.list_of(), host="203.0.113.5", at=NOW, version=version)
    assert agreed.startswith("TLS")


def test_a_key_of_another_certificate_is_noticed(home: Quince, version: str) -> None:
    """If this fails, a mixed-up bundle leaves the house."""
    mixed = Credential(home.gateway.key, home.device.certificate, (home.authority,))
    with pytest.raises(Refused) as caught:
        handshake.rehearse(mixed, home.gateway, home.list_of(), host=HOST, at=NOW, version=version)
    assert caught.value.code == "key-not-of-certificate"
