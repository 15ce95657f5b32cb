"""A look at what calls itself a web front: whatever it sends, the look ends, and no error comes of it."""

from __future__ import annotations

from contextlib import suppress
from datetime import UTC, datetime, timedelta

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat
from cryptography.x509.oid import NameOID
from hypothesis import given, settings
from hypothesis import strategies as st
from OpenSSL import SSL
from OpenSSL.crypto import X509

from hearthkey.core.bundle import Credential
from hearthkey.core.secret import Secret
from hearthkey.pki.front_look import enter, look

ALERT = bytes.fromhex("15030300020228")
"""A fatal alert, handshake_failure (RFC 8446 section 6)."""


class Talker:
    """Sends what it was given, bit by bit, and then the last of it for ever.

    Args:
        parts: what it sends.
    """

    def __init__(self, *parts: bytes) -> None:
        self._parts = list(parts)
        self.asked = 0

    def send(self, data: bytes) -> None:
        """Take what comes."""
        assert data

    def receive(self) -> bytes:
        """See the class."""
        self.asked += 1
        return self._parts.pop(0) if len(self._parts) > 1 else self._parts[0]


@settings(max_examples=60, deadline=None)
@given(st.lists(st.binary(max_size=60) | st.just(ALERT), min_size=1, max_size=5))
def test_noise_ends_in_a_plain_word(parts: list[bytes]) -> None:
    """Whoever listens on the port could end the check with an error that nobody expects."""
    seen = look(Talker(*parts), "home.quince.example")
    assert seen.failed
    assert (seen.chain, seen.asks, seen.date) == ((), False, None)


def test_who_drips_octets_is_left_soon() -> None:
    """A front that sends one octet of a long record at a time would be listened to for as long as it likes."""
    talker = Talker(bytes.fromhex("160303ffff"), b"\x00")
    assert look(talker, "home.quince.example").failed
    assert talker.asked < 100


def test_somebody_who_says_no_is_quoted() -> None:
    """The householder would not learn what was seen."""
    assert "handshake failure" in look(Talker(ALERT), "192.0.2.1").failed


class Turner:
    """A front that wants a certificate and takes none, whatever it is.

    Args:
        version: the only one of TLS that it speaks.
        key, certificate: its own.
    """

    def __init__(self, version: int, key: ec.EllipticCurvePrivateKey, certificate: x509.Certificate) -> None:
        context = SSL.Context(SSL.TLS_METHOD)
        context.set_min_proto_version(version)
        context.set_max_proto_version(version)
        context.use_privatekey(key)
        context.use_certificate(certificate)
        self.shown: list[bytes] = []

        def none(_line: SSL.Connection, shown: X509, *_: int) -> bool:
            self.shown.append(shown.to_cryptography().public_bytes(Encoding.DER))
            return False

        context.set_verify(SSL.VERIFY_PEER | SSL.VERIFY_FAIL_IF_NO_PEER_CERT, none)
        self._line = SSL.Connection(context, None)
        self._line.set_accept_state()

    def send(self, data: bytes) -> None:
        """Take what comes, and go on."""
        self._line.bio_write(data)
        with suppress(SSL.Error):
            self._line.do_handshake()

    def receive(self) -> bytes:
        """What it has to say."""
        try:
            return self._line.bio_read(1 << 14)
        except SSL.WantReadError:
            return b""


def made(name: str) -> tuple[ec.EllipticCurvePrivateKey, x509.Certificate]:
    """A key, and a certificate that it signed itself."""
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, name)])
    begins = datetime(2026, 1, 1, tzinfo=UTC)
    builder = x509.CertificateBuilder(subject, subject, key.public_key(), 7, begins, begins + timedelta(days=9000))
    return key, builder.sign(key, hashes.SHA256())


def credential() -> Credential:
    """A device."""
    key, certificate = made("device")
    sealed = key.private_bytes(Encoding.DER, PrivateFormat.PKCS8, NoEncryption())
    return Credential(Secret(sealed), certificate.public_bytes(Encoding.DER), ())


DEVICE = credential()


@pytest.mark.parametrize("version", [SSL.TLS1_2_VERSION, SSL.TLS1_3_VERSION], ids=["1.2", "1.3"])
def test_a_device_that_is_turned_away_learns_it(version: int) -> None:
    """A front that ends the connection over a device would be taken for one that was not reached.

    In TLS 1.2 it does so within the handshake, in TLS 1.3 after it (RFC 8446 section 4.4.2.4).
    """
    key, certificate = made("front")
    turner, device = Turner(version, key, certificate), DEVICE
    entered = enter(turner, "home.quince.example", certificate.public_bytes(Encoding.DER), device)
    assert (entered.status, entered.turned_away, turner.shown) == (None, True, [device.certificate])
    assert "alert" in entered.failed


@pytest.mark.parametrize("version", [SSL.TLS1_2_VERSION, SSL.TLS1_3_VERSION], ids=["1.2", "1.3"])
def test_a_device_is_shown_to_the_expected_front_only(version: int) -> None:
    """Whoever took the front’s place would learn which devices the household has."""
    turner = Turner(version, *made("front"))
    _, other = made("front")
    entered = enter(turner, "home.quince.example", other.public_bytes(Encoding.DER), DEVICE)
    assert (entered.status, entered.turned_away, turner.shown) == (None, False, [])
    assert "certificate verify failed" in entered.failed


@settings(max_examples=30, deadline=None)
@given(st.lists(st.binary(max_size=60), min_size=1, max_size=5))
def test_noise_turns_no_device_away(parts: list[bytes]) -> None:
    """Whoever listens on the port could end the check with an error that nobody expects."""
    entered = enter(Talker(*parts), "home.quince.example", b"", DEVICE)
    assert (entered.status, entered.turned_away) == (None, False)
