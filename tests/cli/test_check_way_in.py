"""`hearthkey check-way-in`: for people, for machines, and beside another copy of the app."""

from __future__ import annotations

import json

import pytest

from hearthkey.bootstrap.house import House
from hearthkey.services.reaching import Reaching
from tests.cli.running import Cottage
from tests.fakes.way_out import FakeWayOut, answers
from tests.services.gates import both, gate


@pytest.fixture
def way_out(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> FakeWayOut:
    """A network in which the gateway answers, and trusts somebody else."""
    world = FakeWayOut(cottage.world.clock, answers("203.0.113.7"))
    both(world, gate([bytes(20)]))

    def reaching(house: House) -> Reaching:
        outside = (world.names, world.datagrams, world.dials)
        return Reaching(house.register, house.clock, house.dice, *outside, house.bundling.open)

    monkeypatch.setattr(House, "reaching", property(reaching))
    return world


def test_for_machines(cottage: Cottage, way_out: FakeWayOut) -> None:
    """Broken if it fails: a script cannot tell where the way in stops."""
    told = cottage.run("check-way-in", "--json").told
    assert (told["host"], told["side"], told["proves_way_in"]) == ("home.quince.example", "outside", False)
    assert told["first_broken"] == "trust"
    assert [one["verdict"] for one in told["links"]].count("broken") == 1
    trust = next(one for one in told["links"] if one["place"] == "trust")
    assert trust["finding"] == "trust-one-other"
    assert trust["try"].startswith("Deliver the household’s settings")
    assert len(way_out.sent) == 2


def test_for_people_each_link_as_it_is_known(cottage: Cottage, way_out: FakeWayOut) -> None:
    """Broken if it fails: somebody stares at nothing for ten seconds, or reads the list without its headline."""
    ran = cottage.run("check-way-in")
    assert ran.out.splitlines()[0] == "From outside the way in stops here: whom the gateway trusts."
    assert "x It trusts this household: Broken" in ran.err
    assert ran.err.index("The name is known") < ran.err.index("Port 500 answers") < ran.err.index("It is a gateway")
    assert cottage.run("check-way-in", "--quiet").err == ""
    assert len(way_out.sent) == 4


def test_what_was_found_last_is_shown_without_asking(cottage: Cottage, way_out: FakeWayOut) -> None:
    """Broken if it fails: results from inside and outside are mixed, or looking at them sends packets."""
    assert cottage.run("check-way-in", "--last", "--json").told == {"inside": None, "outside": None}
    first = cottage.run("check-way-in", "--json").told
    sent = len(way_out.sent)
    assert cottage.run("check-way-in", "--last", "--json").told == {"inside": None, "outside": first}
    assert "Last from inside: never." in cottage.run("check-way-in", "--last").out
    assert len(way_out.sent) == sent


@pytest.mark.parametrize("words", [("--at", "elsewhere.example"), ("--unkept",)])
def test_what_is_not_to_be_kept_is_not(cottage: Cottage, way_out: FakeWayOut, words: tuple[str, ...]) -> None:
    """Broken if it fails: a look at another name counts as a look at home."""
    before = cottage.register()
    assert cottage.run("check-way-in", "--json", *words).code == 0
    assert cottage.register() == before
    assert way_out.sent


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (("--at", "ho me.example"), "host-malformed"),
        (("--router", "home"), "router-address-odd"),
        (("--at", ""), "host-empty"),
    ],
)
def test_what_makes_no_sense_is_refused_before_a_packet_leaves(
    cottage: Cottage, way_out: FakeWayOut, words: tuple[str, ...], code: str
) -> None:
    """Broken if it fails: something is asked that nobody meant."""
    ran = cottage.run("check-way-in", "--json", *words)
    assert (ran.code, json.loads(ran.out)["error"]["code"]) == (3, code)
    assert way_out.sent == []


def test_shut_ports_are_told_at_once_over_real_sockets(cottage: Cottage) -> None:
    """Broken if it fails: the parts are wired wrongly, or a computer that says no is waited for."""
    told = cottage.run("check-way-in", "--at", "127.0.0.1", "--json").told
    found = {one["place"]: one["finding"] for one in told["links"]}
    assert told["side"] == "inside"
    assert (found["port-500"], found["port-4500"], found["gateway"]) == ("port-refused", "port-refused", "not-reached")
