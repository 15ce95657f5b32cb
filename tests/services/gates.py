"""Gateways that answer as they are told to, and one check of the way in to them."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence

from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from hearthkey.core.reach.chain import Chain, Link, Place, Verdict
from hearthkey.core.sentences import way_in
from hearthkey.services.reach_ports import Answers, Peer
from hearthkey.services.reaching import CheckRequest, Reaching
from tests.fakes.home import Home
from tests.fakes.way_out import Answer, FakeWayOut, answers
from tests.formats import ike_scapy as scapy

HOME = "203.0.113.7"
HOME_6 = "2001:db8:99::7"


def marked(peer: Peer, data: bytes) -> bytes:
    """As it goes over port 4500 (RFC 3948 section 2.2)."""
    return bytes(4) + data if peer.port == 4500 else data


def plain(peer: Peer, data: bytes) -> bytes:
    """The other way round."""
    assert peer.port == 500 or data[:4] == bytes(4)
    return data[4:] if peer.port == 4500 else data


def gate(authorities: Sequence[bytes] | None, seen_from: str | None = None, itself: str = "198.51.100.2") -> Answer:
    """A gateway that takes what devices offer, behind a router that forwards to it."""

    def answer(data: bytes, peer: Peer, here: tuple[str, int]) -> list[bytes]:
        initiator = scapy.parsed(plain(peer, data)).init_SPI
        source = scapy.where(initiator, scapy.RESPONDER, itself, peer.port)
        destination = scapy.where(initiator, scapy.RESPONDER, *((seen_from, 61234) if seen_from else here))
        told = scapy.accepting(initiator, source=source, destination=destination, authorities=authorities)
        return [marked(peer, told)]

    return answer


def saying(*notes: tuple[int, bytes]) -> Answer:
    """A gateway that answers every packet with the next note, and with the last for ever."""
    left = list(notes)

    def answer(data: bytes, peer: Peer, here: tuple[str, int]) -> list[bytes]:
        del here
        initiator = scapy.parsed(plain(peer, data)).init_SPI
        kind, body = left.pop(0) if len(left) > 1 else left[0]
        return [marked(peer, scapy.answer(initiator, bytes(8), scapy.note(kind, body), 41))]

    return answer


def older(data: bytes, peer: Peer, here: tuple[str, int]) -> list[bytes]:
    """A gateway of the first version of IKE: its header is as long, and says 1.0 (RFC 7296 section 2.5)."""
    del here
    sent = plain(peer, data)
    return [marked(peer, sent[:17] + b"\x10" + sent[18:])]


def ca_mark(home: Home) -> bytes:
    """SHA-1 of the SubjectPublicKeyInfo (RFC 7296 section 3.7), by the library alone."""
    key = x509.load_der_x509_certificate(home.house.register.authorities()[0].certificate).public_key()
    return hashlib.sha1(
        key.public_bytes(Encoding.DER, PublicFormat.SubjectPublicKeyInfo), usedforsecurity=False
    ).digest()


def world_of(home: Home, names: Answers | None = None, here: dict[int, str] | None = None) -> FakeWayOut:
    """A network in which the household's name leads home, and nobody answers yet."""
    return FakeWayOut(home.world.clock, answers(HOME) if names is None else names, here)


def reaching(home: Home, world: FakeWayOut) -> Reaching:
    """The verb in that network."""
    house = home.house
    return Reaching(
        house.register, house.clock, house.dice, world.names, world.datagrams, world.dials, house.bundling.open
    )


def both(world: FakeWayOut, answer: Answer, address: str = HOME) -> None:
    """Let somebody answer on both ports."""
    world.gates |= {(address, 500): answer, (address, 4500): answer}


def checked(home: Home, world: FakeWayOut, request: CheckRequest | None = None) -> Chain:
    """One check; every link was told once, and has its words."""
    heard: list[Link] = []
    verb = reaching(home, world)
    plan = verb.prepare(request or CheckRequest())
    chain = verb.walk(plan, heard.append)
    assert sorted(one.place for one in heard) == sorted(plan.places)
    assert [one.place for one in chain.links] == list(plan.places)
    for one in chain.links:
        assert all("{" not in str(part) and "unknown" not in str(part) for part in way_in.link(one) if part)
    assert str(way_in.headline(chain))
    return chain


def found(chain: Chain, place: Place) -> tuple[Verdict, str]:
    """What was said of a link."""
    return next((one.verdict, one.finding) for one in chain.links if one.place is place)
