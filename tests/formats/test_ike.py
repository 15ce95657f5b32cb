"""What asks a gateway whether it is there, as two dissectors of other hands read it, and what may answer."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import BROAD, COMPACT, SUITE_384, KeySet
from hearthkey.core.proposals import proposals
from hearthkey.core.transforms import Kind, Protocol
from hearthkey.formats.ike_first import Asked, first_message
from hearthkey.formats.ike_read import read
from hearthkey.formats.ike_values import KePayload, NoncePayload, Said
from hearthkey.formats.ike_write import NON_ESP_MARKER, written
from hearthkey.pki.key_exchange import PRIME_2048, public_value
from tests.fakes.dice import SeededDice
from tests.formats import ike_scapy as scapy
from tests.judges import needs

INITIATOR = bytes.fromhex("0102030405060708")
NONCE = bytes(range(32))
GOOD = scapy.accepting(INITIATOR, authorities=[bytes(20)])
BITS = SeededDice().bits
LENGTHS = {14: 256, 19: 64, 20: 96, 31: 32}
"""Octets of a public value: RFC 3526 section 3, RFC 5903 section 7, RFC 8031 section 3.1."""


def asked(key_set: KeySet) -> Asked:
    """What a household with devices of one key set asks."""
    offered = [one for one in proposals(key_set) if one.protocol is Protocol.IKE]
    return Asked(INITIATOR, NONCE, offered, (2, 3), ("192.0.2.10", 40000), ("203.0.113.7", 500))


def octets(key_set: KeySet, cookie: bytes | None = None) -> bytes:
    """The first message, as it leaves."""
    return written(
        first_message(asked(key_set), key_set.key_exchange, public_value(key_set.key_exchange, BITS), cookie)
    )


@pytest.mark.parametrize("key_set", [BROAD, COMPACT, SUITE_384], ids=lambda one: one.name)
@pytest.mark.parametrize("cookie", [None, b"crumbs" * 4])
def test_every_payload_is_what_another_hand_reads(key_set: KeySet, cookie: bytes | None) -> None:
    """A gateway would read something else than we meant, or nothing (RFC 7296 section 3)."""
    message = scapy.parsed(octets(key_set, cookie))
    assert (message.init_SPI, message.resp_SPI, message.version, message.exch_type) == (INITIATOR, bytes(8), 0x20, 34)
    assert int(message.flags) == 0x08
    assert message.id == 0
    assert message.length == len(octets(key_set, cookie))
    found = scapy.payloads(message)
    names = ["IKEv2_SA", "IKEv2_KE", "IKEv2_Nonce", *["IKEv2_Notify"] * 4]
    assert [type(one).__name__ for one in found] == (["IKEv2_Notify"] if cookie else []) + names
    if cookie is not None:
        assert (found[0].type, found[0].notify) == (16390, cookie)
        found = found[1:]
    offered = asked(key_set).proposals
    seen = found[0].prop
    for number, one in enumerate(offered, 1):
        assert (seen.proposal, seen.proto, seen.SPIsize, seen.trans_nb) == (number, 1, 0, len(one.transforms))
        transform, bits = seen.trans, []
        while transform and transform.name != "NoPayload":
            bits.append((transform.transform_type, transform.transform_id, transform.key_length or 0))
            transform = transform.payload
        assert bits == [(each.kind, each.number, each.bits) for each in one.transforms]
        seen = seen.payload
    assert (found[1].group, len(found[1].ke)) == (key_set.key_exchange, LENGTHS[key_set.key_exchange])
    assert found[2].nonce == NONCE
    here, there = (scapy.where(INITIATOR, bytes(8), *end) for end in (("192.0.2.10", 40000), ("203.0.113.7", 500)))
    assert [(one.type, one.notify) for one in found[3:]] == [
        (16388, here),
        (16389, there),
        (16430, b""),
        (16431, b"\x00\x02\x00\x03"),
    ]


def test_a_second_dissector_finds_nothing_odd(tmp_path: Path) -> None:
    """A message would be sent that other software calls malformed."""
    tshark, text2pcap = needs("tshark"), needs("text2pcap")
    messages = {
        500: [octets(one) for one in (BROAD, COMPACT, SUITE_384)],
        4500: [NON_ESP_MARKER + octets(COMPACT, b"crumbs" * 4)],
    }
    for port, sent in messages.items():
        dump, capture = tmp_path / f"{port}.txt", tmp_path / f"{port}.pcap"
        lines = ("0000 " + " ".join(f"{one:02x}" for one in data) for data in sent)
        dump.write_text("\n".join(lines) + "\n", encoding="ascii")
        subprocess.run([text2pcap, "-q", "-u", f"40000,{port}", dump, capture], check=True, capture_output=True)
        told = subprocess.run([tshark, "-r", capture, "-V"], check=True, capture_output=True, text=True).stdout
        assert told.count("Exchange type: IKE_SA_INIT (34)") == len(sent)
        for wanted in ("SIGNATURE_HASH_ALGORITHMS", "IKEV2_FRAGMENTATION_SUPPORTED", "NAT_DETECTION_SOURCE_IP"):
            assert told.count(f"Notify Message Type: {wanted}") == len(sent)
        assert ("Non-ESP Marker" in told) == (port == 4500)
        assert "Malformed" not in told
        assert "Expert Info" not in told


def test_an_answer_of_another_hand_is_understood() -> None:
    """What the gateway says of itself would be lost: its choice, its CA, and how it sees this laptop."""
    mark, here = b"\x11" * 20, scapy.where(INITIATOR, scapy.RESPONDER, "203.0.113.7", 500)
    message = read(scapy.accepting(INITIATOR, source=here, authorities=[mark, b"\x22" * 20]))
    assert (message.initiator, message.responder, message.response) == (INITIATOR, scapy.RESPONDER, True)
    assert message.authorities == (mark, b"\x22" * 20)
    assert message.chosen is not None
    assert [(one.kind, one.number, one.bits) for one in message.chosen.transforms] == [
        (Kind.ENCR, 20, 256),
        (Kind.PRF, 5, 0),
        (Kind.KE, 19, 0),
    ]
    assert message.notes[Said.NAT_DETECTION_SOURCE_IP] == here
    assert message.notes[Said.IKEV2_FRAGMENTATION_SUPPORTED] == b""
    assert KePayload(19, bytes(64)) in message.payloads
    assert NoncePayload(scapy.NONCE) in message.payloads


def test_what_we_write_we_read() -> None:
    """Encoder and decoder would understand the same clause in two ways."""
    for key_set in (BROAD, COMPACT, SUITE_384):
        message = first_message(asked(key_set), key_set.key_exchange, public_value(key_set.key_exchange, BITS), b"c")
        assert read(written(message)) == message


@settings(max_examples=300, deadline=None)
@given(
    st.binary(max_size=200)
    | st.binary(max_size=200).map(lambda body: GOOD[:24] + (28 + len(body)).to_bytes(4, "big") + body)
)
def test_noise_is_refused_in_one_way(data: bytes) -> None:
    """Anybody on the way could end the check with an error that nobody expects."""
    try:
        found = read(data)
    except Refused as error:
        assert error.code == "ike-malformed"  # noqa: PT017 - either a message or this
    else:
        assert len(found.payloads) <= 64


@settings(max_examples=400, deadline=None)
@given(st.integers(0, len(GOOD) - 1), st.integers(0, 255), st.integers(0, 40))
def test_a_spoilt_answer_is_read_or_refused(place: int, value: int, cut: int) -> None:
    """One wrong octet in a real answer would end the check with an error that nobody expects."""
    spoilt = bytearray(GOOD[: len(GOOD) - cut])
    if place < len(spoilt):
        spoilt[place] = value
    try:
        found = read(bytes(spoilt))
    except Refused as error:
        assert error.code == "ike-malformed"  # noqa: PT017 - either a message or this
    else:
        assert not cut
        assert found.payloads or place == 16


def test_the_long_prime_is_the_one_of_the_formula() -> None:
    """A digit would be wrong, and every value under the broad key set with it (RFC 3526 section 3)."""
    scale = 1 << 2000

    def arctan_of_inverse(number: int) -> int:
        term, total, count = scale // number, 0, 0
        while term:
            total += (-1) ** count * (term // (2 * count + 1))
            term //= number * number
            count += 1
        return total

    pi = 4 * (4 * arctan_of_inverse(5) - arctan_of_inverse(239))  # Machin's formula
    assert 2**2048 - 2**1984 - 1 + 2**64 * ((pi * 2**1918) // scale + 124476) == PRIME_2048


def test_a_group_that_nobody_can_make_a_value_of_is_refused() -> None:
    """A value of the wrong length would be sent for it."""
    assert {group: len(public_value(group, BITS)) for group in LENGTHS} == LENGTHS
    with pytest.raises(Refused, match="transform-unknown"):
        public_value(21, BITS)
