"""What cannot be taken over is refused with the reason, and nothing half done stays."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from cryptography import x509

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.secret import Secret
from tests.adopt.by_hand import DAY, ByHand, Shape, family
from tests.adopt.conftest import Taking
from tests.fakes.home import PASSPHRASE
from tests.pki import rfc9500


@pytest.mark.parametrize(
    ("make", "reason"),
    [
        (lambda folder: family(folder, shape=Shape(ends=-DAY)), "authority-ended"),
        (lambda folder: family(folder, shape=Shape(signs_lists=False)), "authority-may-not-list"),
        (lambda folder: family(folder, key=rfc9500.key("testECCP384")), "authority-test-key"),
        (lambda folder: family(folder, key=rfc9500.key("testRSA1024")), "authority-test-key"),
        (ByHand, "authority-missing"),
    ],
)
def test_what_cannot_serve_is_refused_with_the_reason(
    taking: Taking, tmp_path: Path, make: Callable[[Path], ByHand], reason: str
) -> None:
    """Broken if it fails: a household is founded on a CA that nobody can trust."""
    by_hand = make(tmp_path / "by-hand")
    with pytest.raises(Refused) as caught:
        taking.take(by_hand.folder)
    assert (caught.value.code, caught.value.facts["reason"]) == ("found-stops", reason)
    assert taking.house.register.household() is None
    assert taking.world.vault.secrets == {}


def test_a_ca_that_may_not_name_the_gateway_is_refused_before_anything_is_kept(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: name constraints (RFC 5280 section 4.2.1.10) are found out by the devices."""
    by_hand = family(tmp_path / "by-hand")
    constraints = x509.NameConstraints(permitted_subtrees=[x509.DNSName("elsewhere.example")], excluded_subtrees=None)
    certificate = by_hand.certificate
    builder = x509.CertificateBuilder().subject_name(by_hand.name).issuer_name(by_hand.name).serial_number(3)
    builder = builder.not_valid_before(certificate.not_valid_before_utc).not_valid_after(
        certificate.not_valid_after_utc
    )
    builder = builder.public_key(by_hand.key.public_key()).add_extension(constraints, critical=True)
    for one in certificate.extensions:
        builder = builder.add_extension(one.value, critical=one.critical)
    by_hand.put_certificate("ca.crt", builder.sign(by_hand.key, certificate.signature_hash_algorithm))  # type: ignore[arg-type]  # as it was signed before
    with pytest.raises(Refused, match="found-cannot-serve"):
        taking.take(by_hand.folder)
    assert taking.house.register.household() is None
    assert taking.world.vault.secrets == {}


def test_a_wrong_passphrase_is_told_as_one(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: somebody looks for a file that was there all along."""
    by_hand = family(tmp_path / "by-hand")
    with pytest.raises(Refused, match="found-key-locked"):
        taking.take(by_hand.folder, passphrases=(Secret("wrong"),))
    with pytest.raises(Refused, match="found-stops"):
        taking.take(by_hand.folder, passphrases=())
    taking.take(by_hand.folder)


def test_it_is_done_once(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: a household lies on top of another."""
    by_hand = family(tmp_path / "by-hand")
    prepared = taking.take(by_hand.folder)
    for again in (lambda: taking.take(by_hand.folder), lambda: taking.house.adopting.apply(prepared, PASSPHRASE)):
        with pytest.raises(Refused, match="household-exists"):
            again()


def test_a_keyring_that_stops_in_between_leaves_nothing(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: half a household is there, or a secret that belongs to nothing stays."""
    by_hand = family(tmp_path / "by-hand")
    taking.world.vault.trouble, taking.world.vault.patience = "keyring-failed", 1
    with pytest.raises(Unavailable):
        taking.take(by_hand.folder)
    assert taking.house.register.household() is None
    assert len(taking.house.register.loose_secrets()) == 2
    taking.world.vault.trouble = None
    taking.take(by_hand.folder)
    assert taking.house.register.loose_secrets() == []
