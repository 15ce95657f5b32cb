"""A clock that was nearly two years ahead for an evening: nothing wrong reaches the gateway, and there is a way back.

Sources: RFC 5280 section 5.1.2.4 (thisUpdate), 5.2.3 (numbers rise) and 6.3.3 (a list has to be current).
"""

from __future__ import annotations

from datetime import timedelta

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.revocation import Reason
from hearthkey.core.target import By, Target
from hearthkey.pki import judge, read
from hearthkey.pki.lists import read_list
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from hearthkey.services.settling import SettleRequest
from tests.fakes.gateway import HOST_KEY
from tests.fakes.home import Home, at_home

AHEAD = timedelta(days=700)
TARGET = Target(By.SSH, "hearthkey", host="gateway.quince.example")


def an_evening_ahead(home: Home) -> None:
    """Do things by a wrong clock, and set it right afterwards."""
    home.hand_over("Ines phone")
    home.hand_over("Odile tablet")
    home.world.clock.turn(days=AHEAD.days)
    home.unlock()
    home.add(EnrolRequest("Wren", "phone", "linux"))
    home.stop("Odile tablet")
    home.world.clock.turn(days=-AHEAD.days)
    home.unlock()


def test_everything_is_refused_until_it_is_put_right_and_works_then(home: Home) -> None:
    """Broken if it fails: one evening with a wrong clock costs the family two years of signing."""
    an_evening_ahead(home)
    with pytest.raises(Refused, match="clock-behind"):
        home.house.listing.sign_anew()
    changes = home.house.listing.set_right()
    now = home.world.clock.now()
    newest = home.house.register.newest_list()
    assert newest is not None
    assert (newest.this_update, newest.number) == (now, changes.list_number)
    assert [one.code for one in changes.cautions] == ["pass-not-good-yet"]
    assert changes.cautions[0].subject == "Wren’s phone"
    assert "The clock was ahead" in changes.sentence
    tablet, phone = home.newest("Odile tablet"), home.newest("Ines phone")
    assert tablet.serial in {one.serial for one in read_list(newest.der).entries}
    authority = the_authority(home.house.register).certificate
    judge.check_path(home.house.register.certificate(phone.serial), (authority,), newest.der, now)
    home.add(EnrolRequest("Wren", "tablet", "linux"))
    home.revoke("Wren phone", Reason.SUPERSEDED)
    with pytest.raises(Refused, match="clock-not-ahead"):
        home.house.listing.set_right()


def test_whoever_left_a_list_because_of_a_date_to_come_is_back_on_it(home: Home) -> None:
    """Broken if it fails: a phone that was revoked gets in again, because the clock was past its end for an evening.

    An entry leaves once it stood on a list after its certificate's end (RFC 5280 section 3.3).
    """
    home.hand_over("Ines phone")
    home.revoke("Ines phone")
    serial = home.newest("Ines phone").serial
    home.world.clock.turn(days=AHEAD.days + 200)
    home.unlock()
    for _ in range(2):
        home.house.listing.sign_anew()
    gone = home.house.register.newest_list()
    assert gone is not None
    assert serial not in {one.serial for one in read_list(gone.der).entries}
    home.world.clock.turn(days=-AHEAD.days - 200)
    home.unlock()
    home.house.listing.set_right()
    newest = home.house.register.newest_list()
    assert newest is not None
    assert serial in {one.serial for one in read_list(newest.der).entries}


def test_a_gateway_certificate_of_that_evening_is_told_and_renewed(home: Home) -> None:
    """Broken if it fails: devices turn away from the gateway for two years, and nothing says why."""
    home.world.clock.turn(days=AHEAD.days)
    home.unlock()
    settling = home.house.settling
    settling.apply(settling.preview(SettleRequest(renew_gateway=True)))
    home.world.clock.turn(days=-AHEAD.days)
    home.unlock()
    assert "gateway-not-good-yet" in [one.code for one in home.house.listing.set_right().cautions]
    settling.apply(settling.preview(SettleRequest(renew_gateway=True)))
    gateway = home.house.register.gateway()
    assert gateway is not None
    assert read.certificate_facts(gateway.certificate).not_before <= home.world.clock.now()


def test_a_list_that_has_not_begun_there_is_not_delivered(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Broken if it fails: the gateway gets a list that begins in two years, and lets nobody in."""
    with at_home(tmp_path_factory.mktemp("house") / "data", practice=False) as home:
        home.world.gate.clock = home.world.clock.now()
        home.house.targeting.choose(TARGET, HOST_KEY)
        home.world.clock.turn(days=AHEAD.days)
        home.unlock()
        home.house.listing.sign_anew()
        with pytest.raises(Refused) as refused:
            home.house.delivering.deliver()
        assert refused.value.code == "gateway-clock-behind"
        assert home.world.gate.current is None
        home.world.clock.turn(days=-AHEAD.days)
        home.unlock()
        home.house.listing.set_right()
        home.house.delivering.deliver()
        assert home.world.gate.current is not None
