"""The verb "prove": a real server on loopback, the register, the diary, and what was told."""

from __future__ import annotations

import ipaddress
import socket
import sqlite3
from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.home_addresses import Found, HomeAddress, Medium
from hearthkey.core.network import Subnet
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.passes import Pass
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.proofs import Address, Ground, Proof, Way
from hearthkey.core.tickets import LIFE, LINGER, MOST_WRONG
from hearthkey.services.proof_desk import PATIENCE, OpenProof
from hearthkey.services.proving import ProofPlan, Proving
from hearthkey.services.ticket_ports import Server
from tests.fakes.home import Home, at_home
from tests.proofs.doors import GATE, HERE, HOME, LOOPBACK, TUNNEL, doorway, fetch

WIFI = Found("wlan0", Medium.WIFI, ipaddress.ip_address("198.51.100.23"), 24)
NEIGHBOUR = Found("eth0", Medium.CABLE, ipaddress.ip_address("10.9.8.7"), 24)


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data") as opened:
        yield opened


def proving(home: Home, *addresses: Found) -> Proving:
    """The verb, with a server on loopback wherever it was to be bound."""
    house = home.house

    def bind(address: Address) -> Server:
        del address
        return TicketServer(HERE, house.clock)

    return Proving(house.register, house.clock, house.dice, lambda: addresses or (WIFI,), bind)


def opened(home: Home, chosen: Pass, by: Ground) -> OpenProof:
    """An open door that judges by a ground of the test's own."""
    verb = proving(home)
    plan = verb.preview(chosen)
    local = ProofPlan(chosen, _at(plan), by)
    return verb.open(local)


def _at(plan: ProofPlan) -> HomeAddress:
    return replace(plan.address, interface="lo", medium=Medium.LOOPBACK, address=HERE, network=LOOPBACK)


def all_of(door: OpenProof) -> list[Event]:
    """Everything that is heard, once the first is, until nothing more is."""
    first = door.hear(20)
    assert first is not None
    return [first, *iter(lambda: door.hear(0), None)]


def now(home: Home) -> datetime:
    """By the household's clock."""
    return home.house.clock.now()


def diary(home: Home) -> list[str]:
    """What the diary says of proofs."""
    return [one.sentence for one in home.house.register.diary() if one.verb == "prove"]


def test_a_proof_from_inside_is_kept_and_survives_a_restart(home: Home) -> None:
    """Broken if it fails: grandmother proves that it works, and tomorrow nobody knows."""
    home.hand_over("Odile tablet")
    with opened(home, home.newest("Odile tablet"), Ground(LOOPBACK, (HOME,))) as door:
        status, page = fetch(door.link.reveal(), Accept_Language="es-ES")
        assert (status, "Estás dentro" in page) == (200, True)
        assert [one.ending for one in all_of(door)] == [Ending.PROVED]
        assert fetch(door.link.reveal())[0] == 200
    proof = Proof(now(home), Way.TUNNEL, "127.0.0.1")
    assert home.newest("Odile tablet").proofs == (proof,)
    assert diary(home) == ["Odile’s tablet was seen to get in: its link was opened through the tunnel, from 127.0.0.1."]
    home.reopen()
    again = home.newest("Odile tablet")
    assert (again.proofs, again.proved) == ((proof,), now(home))
    assert home.newest("Ines phone").proved is None


def test_from_home_nothing_is_written(home: Home) -> None:
    """Broken if it fails: a phone that sits in the Wi-Fi at home counts as proved."""
    with opened(home, home.newest("Odile tablet"), Ground(TUNNEL, (LOOPBACK,))) as door:
        fields = {"X_Forwarded_For": "203.0.113.10", "Forwarded": "for=203.0.113.10", "X_Real_IP": "203.0.113.10"}
        status, page = fetch(door.link.reveal(), **fields)
        assert (status, "You are at home" in page, "Wi-Fi off" in page) == (200, True, True)
        assert [one.what for one in all_of(door)] == [Happened.AT_HOME]
        assert [door.ending] == [None]
    assert door.ending is Ending.WITHDRAWN
    assert home.newest("Odile tablet").proved is None
    assert diary(home) == []


def test_a_proof_that_nobody_waited_for_is_kept_at_closing(home: Home) -> None:
    """Broken if it fails: the window is closed in the very second in which it worked, and it is forgotten."""
    with opened(home, home.newest("Odile tablet"), Ground(LOOPBACK, (HOME,))) as door:
        assert fetch(door.link.reveal())[0] == 200
    assert home.newest("Odile tablet").proved == now(home)


def test_a_device_that_never_takes_its_page_has_proved_it_all_the_same(home: Home) -> None:
    """Broken if it fails: a phone that loses the net just then is forgotten, though it was seen."""
    with opened(home, home.newest("Odile tablet"), Ground(LOOPBACK, (HOME,))) as door:
        link = door.link.reveal()
        host, token = link.removeprefix("http://").split("/")
        with socket.create_connection((str(HERE), int(host.rpartition(":")[2])), 20) as client:
            client.sendall(f"GET /{token} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode())
            assert client.recv(10)
            home.world.clock.forward(seconds=PATIENCE)
            assert [one.ending for one in all_of(door)] == [Ending.PROVED]
    assert home.newest("Odile tablet").proved == now(home) - timedelta(seconds=PATIENCE)


def test_a_full_disk_keeps_the_proof_for_the_next_try(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: what happened is lost because the disk was full at that moment."""
    with opened(home, home.newest("Odile tablet"), Ground(LOOPBACK, (HOME,))) as door:
        assert fetch(door.link.reveal())[0] == 200
        with monkeypatch.context() as full:
            full.setattr(type(home.house.register), "change", _full)
            with pytest.raises(Unavailable, match="disk-full"):
                door.hear(20)
        assert home.newest("Odile tablet").proved is None
        heard = door.hear(0)
        assert heard is not None
        assert heard.ending is Ending.PROVED
    assert len(home.newest("Odile tablet").proofs) == 1


def _full(_self: object) -> None:
    raise Unavailable("disk-full", path="", seen="")


def test_twenty_wrong_links_close_the_real_door() -> None:
    """Broken if it fails: guessing goes on and on, and whoever guesses meets more than one answer."""
    with doorway(Ground(TUNNEL, (LOOPBACK,))) as way:
        pages = {fetch(f"{way.link[:-26]}{letter * 26}") for letter in "abcdefghijklmnopqrst"}
        assert len(pages) == 1
        assert pages.pop()[0] == 404
        assert fetch(way.link)[0] == 410
        told = way.heard(MOST_WRONG + 1)
        assert [one.what for one in told].count(Happened.WRONG) == MOST_WRONG
        assert told[-1].ending is Ending.GUESSED


def test_a_stranger_with_the_right_link_sees_a_wrong_one() -> None:
    """Broken if it fails: the page tells somebody on the way what it is and from where it works."""
    with doorway(Ground(TUNNEL, (HOME,))) as way:
        assert fetch(way.link) == fetch(f"{way.link[:-26]}{'a' * 26}")
        assert [one.what for one in way.heard(1)] == [Happened.ELSEWHERE]


def test_it_closes_when_its_time_is_over(home: Home) -> None:
    """Broken if it fails: a forgotten door stays open, and so does its thread."""
    with opened(home, home.newest("Odile tablet"), Ground(LOOPBACK, (HOME,))) as door:
        assert door.seconds_left == LIFE.total_seconds()
        assert [door.stirring] == [False]
        assert door.extend() == now(home) + 2 * LIFE
        home.world.clock.forward(seconds=2 * LIFE.total_seconds())
        assert [door.stirring] == [True]
        assert fetch(door.link.reveal())[0] == 410
        assert all_of(door)[-1].ending is Ending.EXPIRED
        assert door.seconds_left == 0
        home.world.clock.forward(seconds=LINGER.total_seconds())
    assert home.newest("Odile tablet").proved is None


def test_what_was_told_is_kept_as_told(home: Home) -> None:
    """Broken if it fails: hearsay looks like something that was seen, or is not kept at all."""
    verb = proving(home)
    changes = verb.told(verb.preview_told(home.newest("Ines phone")))
    assert changes.sentence == "Ines told that Ines’s phone gets in, on mobile data."
    assert home.newest("Ines phone").proofs == (Proof(now(home), Way.TOLD),)
    assert diary(home) == [changes.sentence]


def test_a_proof_can_be_neither_altered_nor_erased(home: Home) -> None:
    """Broken if it fails: the register forgets or embellishes what was seen."""
    verb = proving(home)
    verb.told(verb.preview_told(home.newest("Ines phone")))
    with sqlite3.connect(home.house.data / FILE_NAME) as raw:
        for statement in ("DELETE FROM proof", "UPDATE proof SET way = 'tunnel'"):
            with pytest.raises(sqlite3.IntegrityError):
                raw.execute(statement)
    raw.close()


def test_who_does_not_get_in_has_nothing_to_prove(home: Home) -> None:
    """Broken if it fails: a stopped phone counts as proved."""
    home.stop("Ines phone")
    verb = proving(home)
    for attempt in (verb.preview, verb.preview_told):
        with pytest.raises(Refused, match="proof-not-in"):
            attempt(home.newest("Ines phone"))


def test_the_pass_that_is_carried_is_the_one_that_is_proved(home: Home) -> None:
    """Broken if it fails: while the next pass waits in the tray, the proof of the old one is written beside it."""
    waiting = home.newest("Odile tablet")
    home.hand_over("Odile tablet")
    carried = home.newest("Odile tablet")
    assert proving(home).choose([carried, waiting]) == carried
    assert proving(home).choose([waiting]) == waiting


def test_an_address_that_the_tunnel_does_not_lead_to_is_refused(home: Home) -> None:
    """Broken if it fails: the relative waits for a page that no split tunnel can reach."""
    with pytest.raises(Refused) as refused:
        proving(home, NEIGHBOUR).preview(home.newest("Odile tablet"))
    assert refused.value.code == "proof-address-not-home"
    assert proving(home, NEIGHBOUR, WIFI).preview(home.newest("Odile tablet")).address.address == WIFI.address


def test_the_gateway_that_hides_devices_has_to_be_named(home: Home) -> None:
    """Broken if it fails: behind a masquerading gateway the app claims to know what it cannot."""
    chosen = home.newest("Odile tablet")
    with pytest.raises(Refused, match="proof-inside-needless"):
        proving(home).preview(chosen, inside=str(GATE))
    with home.house.register.change() as change:
        change.set_pack_options(PackOptions(masquerade=True))
    assert proving(home).preview(chosen).ground == Ground(TUNNEL, (*_homes(home),), hides=True)
    assert proving(home).preview(chosen, inside=str(GATE)).ground.inside == GATE
    behind = Ground(TUNNEL, (LOOPBACK,), hides=True, inside=HERE)
    with opened(home, chosen, behind) as door:
        assert fetch(door.link.reveal())[0] == 200
    assert diary(home)[-1] == (
        "Odile’s tablet was seen to get in: its link was opened through the gateway, from 127.0.0.1."
    )


def _homes(home: Home) -> tuple[Subnet, ...]:
    household = home.house.register.household()
    assert household is not None
    return household.home_subnets
