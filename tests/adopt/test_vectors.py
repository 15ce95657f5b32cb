"""The certificates, lists and keys that others collected because they are odd: a verdict each, and no crash.

cryptography-vectors carries its own odd ones (x509/custom) and NIST's PKITS (x509/PKITS_data).
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import cryptography_vectors
import pytest
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat

from hearthkey.core.secret import Secret
from hearthkey.core.sentences import found as sentences
from hearthkey.pki import der
from hearthkey.pki.foreign_keys import EC_PUBLIC_KEY
from hearthkey.pki.looking_in import look_in
from tests.adopt.conftest import codes, look

VECTORS = Path(cryptography_vectors.__file__).parent
PKITS = VECTORS / "x509" / "PKITS_data"


def seen_in(folder: Path, pattern: str, *words: str) -> Counter[str]:
    """What is found in files, counted by kind; what is unrelated counts as such."""
    counted: Counter[str] = Counter()
    for path in sorted(folder.glob(pattern)):
        seen = look_in(path.name, path.read_bytes(), [Secret(one) for one in words])
        counted["certificate"] += len(seen.certificates)
        counted["list"] += len(seen.lists)
        counted["opened"] += len(seen.opened)
        counted["told"] += len(seen.findings)
        counted["unrelated"] += not seen.related
        for one in seen.findings:
            assert str(sentences.what(one))
            assert str(sentences.effect(one))
    return counted


@pytest.mark.parametrize(
    ("folder", "pattern", "least"),
    [
        ("x509/custom", "*.pem", {"certificate": 60, "list": 15, "told": 15}),
        ("x509/custom", "*.der", {"list": 2, "told": 8}),
        ("x509", "*.pem", {"certificate": 15}),
        ("x509/PKITS_data/certs", "*.crt", {"certificate": 400}),
        ("x509/PKITS_data/crls", "*.crl", {"list": 170}),
    ],
)
def test_odd_certificates_and_lists_have_a_verdict(folder: str, pattern: str, least: dict[str, int]) -> None:
    """Broken if it fails: something that somebody’s program once wrote ends the look."""
    counted = seen_in(VECTORS / folder, pattern)
    assert {kind: counted[kind] >= number for kind, number in least.items()} == dict.fromkeys(least, True)
    assert counted["unrelated"] <= 2


def test_every_file_has_one_verdict_at_least() -> None:
    """Broken if it fails: a certificate is neither read nor told as unreadable."""
    for path in sorted((VECTORS / "x509" / "custom").glob("*.pem")):
        seen = look_in(path.name, path.read_bytes())
        assert seen.certificates or seen.lists or seen.keys or seen.findings or seen.related, path.name


def test_nist_trust_anchors_and_lists_are_judged() -> None:
    """Broken if it fails: PKITS sections 4.1 to 4.4, its trust anchor, CAs and lists, end the look or fit nothing."""
    seen = look(PKITS / "certs")
    home = seen.home
    assert home.authority is not None
    assert home.authority.subject.startswith("CN=Trust Anchor")
    assert {"authority-key-missing", "list-missing", "authority-besides", "certificate-of-another"} <= codes(seen)


@pytest.mark.parametrize(
    ("folder", "pattern", "word", "opened"),
    [
        ("asymmetric/PKCS8", "*.pem", "foobar", 8),
        ("asymmetric/PEM_Serialization", "*.pem", "123456", 3),
        ("asymmetric/Traditional_OpenSSL_Serialization", "*.pem", "123456", 1),
        ("pkcs12", "*.p12", "cryptography", 3),
        ("pkcs12", "name-*.p12", "password", 5),
        ("x509/PKITS_data/pkcs12", "Valid*10EE.p12", "password", 2),
    ],
)
def test_keys_of_many_programs_are_opened(folder: str, pattern: str, word: str, opened: int) -> None:
    """Broken if it fails: the key of a CA that was made by hand cannot be read."""
    assert seen_in(VECTORS / folder, pattern, word)["opened"] >= opened


@pytest.mark.parametrize("curve", [ec.SECP256R1(), ec.SECP384R1(), ec.SECP521R1()], ids=lambda one: one.name)
@pytest.mark.parametrize("wrapped", [True, False], ids=["PKCS#8", "older"])
def test_an_ec_key_with_an_octet_too_many_is_read(curve: ec.EllipticCurve, wrapped: bool) -> None:  # noqa: FBT001  # pytest gives it
    """Broken if it fails: half of the EC keys that GnuTLS 3.7.9 writes cannot be taken over. RFC 5915 section 3."""
    key = ec.generate_private_key(curve)
    octets = (curve.key_size + 7) // 8
    number = key.private_numbers().private_value.to_bytes(octets, "big")
    kind = Encoding.DER, PrivateFormat.PKCS8 if wrapped else PrivateFormat.TraditionalOpenSSL, NoEncryption()
    as_it_should_be = key.private_bytes(*kind)
    name = der.object_id({256: "1.2.840.10045.3.1.7", 384: "1.3.132.0.34", 521: "1.3.132.0.35"}[curve.key_size])
    longer = der.element(
        der.SEQUENCE, der.integer(1), der.element(der.OCTET_STRING, b"\0" + number), der.element(der.explicit(0), name)
    )
    if wrapped:
        algorithm = der.element(der.SEQUENCE, der.object_id(EC_PUBLIC_KEY), name)
        longer = der.element(der.SEQUENCE, der.integer(0), algorithm, der.element(der.OCTET_STRING, longer))
    prints = [list(look_in("ca.key", data).opened) for data in (as_it_should_be, longer)]
    assert prints[0] == prints[1] != []
