"""The chain to the gateway: each link broken on purpose, in a network where waiting costs no time."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import pytest

from hearthkey.core.errors import Cancelled, Refused
from hearthkey.core.reach.chain import Place, Side, Verdict
from hearthkey.core.sentences import way_in, way_in_tables
from hearthkey.services.conversing import MOST_PACKETS, WAITS
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.reach_ports import Answers, Failure, Known, Peer
from hearthkey.services.reaching import CheckRequest
from tests.fakes.home import Home
from tests.fakes.way_out import Answer, answers
from tests.formats import ike_scapy as scapy
from tests.services.gates import (
    HOME,
    HOME_6,
    both,
    ca_mark,
    checked,
    found,
    gate,
    older,
    plain,
    reaching,
    saying,
    world_of,
)


def test_a_gateway_that_is_there_is_found_from_outside(home: Home) -> None:
    """Somebody would look for a fault where there is none."""
    world = world_of(home)
    both(world, gate([bytes(20), ca_mark(home)]))
    chain = checked(home, world)
    assert (chain.side, chain.broken, chain.proves_way_in) == (Side.OUTSIDE, None, True)
    assert [one.finding for one in chain.links] == [
        *("name-answers", "address-fit", "port-answers", "port-answers", "gateway-answers"),
        *("proposals-taken", "trust-ours", "rewritten-there", "clock-untold"),
    ]
    taken = next(one for one in chain.links if one.place is Place.PROPOSALS)
    assert taken.facts["chosen"] == "ENCR_AES_GCM_16 256, PRF_HMAC_SHA2_256, 256-bit random ECP group"
    assert len(world.sent) == 2
    assert str(way_in.headline(chain)) == "From outside there is a way in, up to the gateway."


@pytest.mark.parametrize(
    ("here", "seen_from"),
    [("198.51.100.20", None), ("203.0.113.7", None), ("10.9.8.7", HOME)],
    ids=["home", "same", "hairpin"],
)
def test_from_inside_is_never_proof_from_outside(home: Home, here: str, seen_from: str | None) -> None:
    """Somebody would go on a journey because it worked on the sofa, or from the guests' Wi-Fi at home."""
    world = world_of(home, here={4: here})
    both(world, gate([ca_mark(home)], seen_from))
    chain = checked(home, world)
    assert (chain.side, chain.broken, chain.answered, chain.proves_way_in) == (Side.INSIDE, None, True, False)
    assert "does not show" in str(way_in.headline(chain))


def test_silence_is_broken_outside_and_unknown_inside(home: Home) -> None:
    """A router that leads nobody from inside to its own door would be taken for one that forwards nothing."""
    outside = checked(home, world_of(home))
    assert outside.broken is not None
    assert (outside.broken.place, outside.broken.finding) == (Place.PORT_500, "port-silent")
    assert outside.broken.facts["packets"] == len(WAITS)
    inside = checked(home, world_of(home, here={4: "198.51.100.20"}))
    assert inside.broken is None
    assert found(inside, Place.PORT_500) == (Verdict.UNKNOWN, "port-silent-inside")
    assert checked(home, world_of(home), CheckRequest(at_home=True)).side is Side.INSIDE


def test_packets_are_few_and_wait_longer_each_time(home: Home) -> None:
    """The check would hammer somebody's door (RFC 7296 section 2.4)."""
    world = world_of(home)
    before = world.clock.monotonic()
    checked(home, world)
    times = [at - before for peer, _, at in world.sent if peer.port == 500]
    assert len(times) == len(WAITS)
    assert [round(later - sooner, 1) for sooner, later in pairwise(times)] == [0.5, 1.0]
    assert len({data for peer, data, _ in world.sent if peer.port == 500}) == 1, "a retransmission is bitwise the same"
    assert world.clock.monotonic() - before < 5


def test_only_one_port_forwarded_is_named(home: Home) -> None:
    """The half that works would hide the half that does not; behind a NAT every device moves to port 4500."""
    world = world_of(home)
    world.gates[HOME, 500] = gate([ca_mark(home)])
    chain = checked(home, world)
    assert chain.broken is not None
    assert (chain.broken.place, chain.broken.finding) == (Place.PORT_4500, "port-silent")
    assert found(chain, Place.TRUST) == (Verdict.OK, "trust-ours")


def test_a_cookie_is_given_back_once_and_first(home: Home) -> None:
    """A gateway under load would be called broken (RFC 7296 section 2.6)."""
    kind, crumb = 16390, b"crumb" * 5
    taken = gate([ca_mark(home)])

    def careful(data: bytes, peer: Peer, here: tuple[str, int]) -> Sequence[bytes | Failure]:
        first = scapy.payloads(scapy.parsed(plain(peer, data)))[0]
        if getattr(first, "notify", b"") == crumb:
            return taken(data, peer, here)
        return saying((kind, crumb))(data, peer, here)

    world = world_of(home)
    both(world, careful)
    assert checked(home, world).proves_way_in
    assert len(world.sent) == 4
    endless = world_of(home)
    both(endless, saying(*((kind, bytes([number]) * 8) for number in range(1, 9))))
    assert found(checked(home, endless), Place.GATEWAY) == (Verdict.BROKEN, "gateway-upset")
    assert len(endless.sent) <= 2 * MOST_PACKETS


def test_another_key_exchange_is_offered_once(home: Home) -> None:
    """A gateway that prefers another group would be called broken, or asked for ever (RFC 7296 section 1.2)."""
    home.add(EnrolRequest("Ines", "old phone", "android-older", key_set="broad"))
    taken, tried = gate([ca_mark(home)]), []

    def choosy(data: bytes, peer: Peer, here: tuple[str, int]) -> Sequence[bytes | Failure]:
        group = next(one.group for one in scapy.payloads(scapy.parsed(plain(peer, data))) if hasattr(one, "ke"))
        tried.append(group)
        return (taken if group == 14 else saying((17, (14).to_bytes(2, "big"))))(data, peer, here)

    world = world_of(home)
    both(world, choosy)
    assert found(checked(home, world), Place.GATEWAY) == (Verdict.OK, "gateway-answers")
    assert sorted(tried) == [14, 14, 19, 19]
    foreign = world_of(home)
    both(foreign, saying((17, (18).to_bytes(2, "big"))))
    assert found(checked(home, foreign), Place.PROPOSALS) == (Verdict.BROKEN, "proposals-group")
    assert len(foreign.sent) == 2


@pytest.mark.parametrize(
    ("answer", "place", "finding"),
    [
        (saying((14, b"")), Place.PROPOSALS, "proposals-refused"),
        (saying((7, b"")), Place.GATEWAY, "gateway-upset"),
        (lambda data, _peer, _here: [data[:20]], Place.GATEWAY, "gateway-other"),
        (lambda _data, _peer, _here: [b"HTTP/1.1 400 Bad Request\r\n\r\n"] * 200, Place.GATEWAY, "gateway-other"),
        (older, Place.GATEWAY, "gateway-older"),
        (lambda *_: [Failure.REFUSED], Place.PORT_500, "port-refused"),
        (gate([bytes(20)]), Place.TRUST, "trust-one-other"),
        (gate([bytes(20), b"\x01" * 20]), Place.TRUST, "trust-others"),
    ],
    ids=["proposals", "upset", "echo", "noise", "older", "refused", "one-other", "others"],
)
def test_what_is_broken_is_the_headline(home: Home, answer: Answer, place: Place, finding: str) -> None:
    """The householder would be sent to mend something else."""
    world = world_of(home)
    both(world, answer)
    chain = checked(home, world)
    assert chain.broken is not None
    assert (chain.broken.place, chain.broken.finding) == (place, finding)
    assert way_in_tables.STOPS[place.value] in str(way_in.headline(chain))


def test_a_gateway_that_says_nothing_of_its_cas_is_not_called_ours(home: Home) -> None:
    """Silence would be taken for trust."""
    world = world_of(home)
    both(world, gate(None))
    assert found(checked(home, world), Place.TRUST) == (Verdict.UNKNOWN, "trust-unsaid")


@pytest.mark.parametrize(
    ("said", "router", "place", "finding"),
    [
        (Answers(Known.MISSING), None, Place.NAME, "name-missing"),
        (Answers(Known.EMPTY), None, Place.NAME, "name-empty"),
        (answers(HOME, "203.0.113.8", count=10_000), None, Place.NAME, "name-crowded"),
        (answers(HOME), "8.8.4.4", Place.NAME, "name-differs"),
        (answers("192.168.1.2"), None, Place.ADDRESS, "address-private"),
        (answers("100.64.3.4"), None, Place.ADDRESS, "address-shared"),
        (answers(HOME), "100.64.3.4", Place.ADDRESS, "address-shared"),
        (answers(HOME), "192.168.0.2", Place.ADDRESS, "address-behind"),
        (answers("224.0.0.1"), None, Place.ADDRESS, "address-unfit"),
    ],
)
def test_names_and_addresses_that_lead_nowhere(
    home: Home, said: Answers, router: str | None, place: Place, finding: str
) -> None:
    """What can be known before a packet leaves would be put down to the router."""
    chain = checked(home, world_of(home, said), CheckRequest(router=router))
    assert chain.broken is not None
    assert (chain.broken.place, chain.broken.finding) == (place, finding)


def test_what_cannot_be_asked_is_unknown(home: Home) -> None:
    """A laptop without internet would report that home is broken."""
    silent = checked(home, world_of(home, Answers(Known.SILENT)))
    assert (silent.side, silent.broken) == (Side.NOWHERE, None)
    assert found(silent, Place.NAME) == (Verdict.UNKNOWN, "name-silent")
    six = checked(home, world_of(home, answers(HOME_6)))
    assert (six.side, six.broken) == (Side.NOWHERE, None)
    assert found(six, Place.ADDRESS) == (Verdict.UNKNOWN, "address-other-family")


def test_one_of_two_addresses_that_does_not_answer_is_named(home: Home) -> None:
    """Half of the devices would stay outside, and nobody would know why."""
    world = world_of(home, answers(HOME, HOME_6), {4: "192.0.2.50", 6: "2001:db8:1::50"})
    both(world, gate([ca_mark(home)]))
    chain = checked(home, world)
    assert chain.broken is not None
    assert (chain.broken.finding, chain.broken.facts["other"]) == ("port-partly", HOME_6)


def test_a_changed_mind_ends_it_between_packets(home: Home) -> None:
    """Cancelling would have no effect before all waits are over."""
    world = world_of(home)
    verb, before = reaching(home, world), world.clock.monotonic()
    with pytest.raises(Cancelled):
        verb.walk(verb.prepare(CheckRequest()), lambda _: None, lambda: len(world.sent) > 2)
    assert len(world.sent) == 4
    assert world.clock.monotonic() - before < 1


def test_checks_are_kept_by_side(home: Home) -> None:
    """The strip would show a result from the sofa as one from outside."""
    outside, inside = world_of(home), world_of(home, here={4: "198.51.100.20"})
    for world in (outside, inside):
        both(world, gate([ca_mark(home)]))
    first = reaching(home, outside).check(CheckRequest(), lambda _: None)
    second = reaching(home, inside).check(CheckRequest(), lambda _: None)
    home.world.clock.forward(hours=1)
    nowhere = reaching(home, world_of(home, Answers(Known.SILENT))).check(CheckRequest(), lambda _: None)
    home.reopen()
    last = reaching(home, outside).last()
    assert (last.outside, last.inside) == (first, second)
    assert nowhere.side is Side.NOWHERE


@pytest.mark.parametrize(
    ("host", "code"),
    [
        ("", "host-empty"),
        ("a" * 300, "host-too-long"),
        ("home..example", "host-malformed"),
        ("ho me.example", "host-malformed"),
        ("-home.example", "host-malformed"),
        ("home.example:500", "host-malformed"),
        ("home.example\n", None),
        ("*.example", "host-malformed"),
        ("1.2.3.4.5", "host-malformed"),
        ("0.0.0.0", "gateway-unreachable"),  # noqa: S104 - never bound
        ("ff02::1", "gateway-unreachable"),
        ("fe80::1%wlan0", "host-malformed"),
        ("höme.example", None),
    ],
)
def test_names_with_every_sin(home: Home, host: str, code: str | None) -> None:
    """Something would be asked of name servers that is no name."""
    verb = reaching(home, world_of(home))
    if code is None:
        assert verb.prepare(CheckRequest(host=host)).host in {"home.example", "xn--hme-sna.example"}
        return
    with pytest.raises(Refused) as caught:
        verb.prepare(CheckRequest(host=host))
    assert caught.value.code == code


def test_every_link_and_finding_has_its_words() -> None:
    """A screen or the command line would fail on the one link that nobody has seen yet."""
    places = {one.value for one in Place}
    assert places == set(way_in_tables.PLACES) == set(way_in_tables.STOPS)
    assert {one.value for one in Verdict} == set(way_in_tables.VERDICTS)
    assert {one.value for one in Side} == set(way_in_tables.SIDES)
    # From nowhere no gateway is ever heard.
    kinds = {f"{kind}-{side.value}" for kind in ("broken", "good", "open") for side in Side} - {"good-nowhere"}
    assert kinds == set(way_in_tables.HEADLINES)
