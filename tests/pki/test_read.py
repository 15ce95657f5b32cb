"""Reading certificates back, also hostile ones."""

from __future__ import annotations

import hashlib

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.pki import keys, read
from tests.pki.quince import DAY, IDENTITY, NOW, Quince


def test_facts(home: Quince) -> None:
    """If this fails, the sheet shows something else than what was signed."""
    facts = read.certificate_facts(home.device.certificate)
    assert (facts.subject, facts.names) == (f"CN={IDENTITY}", (f"dns:{IDENTITY}",))
    assert (facts.not_before, facts.not_after) == (NOW - DAY, NOW + 700 * DAY)
    assert (facts.key_type, facts.is_authority) == ("P-256", False)
    assert facts.fingerprint == hashlib.sha256(home.device.certificate).hexdigest()
    assert len(facts.serial) == 40
    assert read.certificate_facts(home.authority).is_authority
    assert read.certificate_facts(home.authority).key_type == "P-384"


def test_rsa_is_named_by_its_length(home: Quince) -> None:
    """If this fails, the details show a wrong key type."""
    device = home.device_with("RSA-3072")
    assert read.certificate_facts(device.certificate).key_type == "RSA-3072"


def test_public_of(home: Quince) -> None:
    """If this fails, a key is taken for another certificate's."""
    assert read.public_of(home.device.certificate) == keys.public_der(home.device.key)
    assert read.public_of(home.authority) == home.key.public_der()


@pytest.mark.parametrize("data", [b"", b"0", bytes(100), b"\x30\x84\xff\xff\xff\xff", b"0" * 70_000])
def test_garbage_is_refused(data: bytes) -> None:
    """If this fails, the library's error reaches the householder."""
    for reading in (read.certificate_facts, read.public_of):
        with pytest.raises(Refused) as caught:
            reading(data)
        assert caught.value.code == "certificate-unreadable"


@settings(max_examples=100)
@given(data=st.data())
def test_damaged_certificates_are_refused_or_read(data: st.DataObject, home: Quince) -> None:
    """If this fails, a damaged certificate reaches the householder as a crash."""
    changed = bytearray(home.device.certificate)
    changed[data.draw(st.integers(0, len(changed) - 1))] ^= 1 << data.draw(st.integers(0, 7))
    for reading in (read.certificate_facts, read.public_of):
        try:
            assert reading(bytes(changed))
        except Refused as error:
            assert error.code == "certificate-unreadable"  # noqa: PT017  # whether it raises is left to the damage
