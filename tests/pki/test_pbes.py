"""Deriving keys from passphrases, against published vectors, and refusing absurd costs before trying."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import der, pbes
from hearthkey.pki.pbes import Scheme


@pytest.mark.parametrize(
    ("passphrase", "salt", "rounds", "expected"),
    [
        (b"password", b"salt", 1, "0c60c80f961f0e71f3a9b524af6012062fe037a6"),
        (b"password", b"salt", 4096, "4b007901b765489abead49d926f721d065a429c1"),
        (b"pass\0word", b"sa\0lt", 4096, "56fa6aa75548099dcc37d7f03425e0c3"),
    ],
)
def test_pbkdf2_sha1(passphrase: bytes, salt: bytes, rounds: int, expected: str) -> None:
    """If this fails, keys of other tools that name no PRF cannot be opened. RFC 6070 section 2."""
    scheme = Scheme("AES-256-CBC", len(expected) // 2, "PBKDF2-HMAC-SHA1", rounds, salt, bytes(16))
    assert pbes.derive(scheme, Secret(passphrase))[0].hex() == expected


def test_pbkdf2_sha256() -> None:
    """If this fails, nobody else can open our keys. RFC 7914 section 11, both vectors."""
    first = Scheme("AES-256-CBC", 64, "PBKDF2-HMAC-SHA256", 1, b"salt", bytes(16))
    assert pbes.derive(first, Secret("passwd"))[0].hex() == (
        "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc"
        "49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783"
    )
    second = Scheme("AES-256-CBC", 64, "PBKDF2-HMAC-SHA256", 80000, b"NaCl", bytes(16))
    assert pbes.derive(second, Secret("Password"))[0].hex() == (
        "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56"
        "a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d"
    )


def test_scrypt() -> None:
    """If this fails, keys under scrypt cannot be opened. RFC 7914 section 12, third vector."""
    scheme = Scheme("AES-256-CBC", 64, "scrypt", 16384, b"SodiumChloride", bytes(16), 8, 1)
    assert pbes.derive(scheme, Secret("pleaseletmein"))[0].hex() == (
        "7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2"
        "d5432955613f0fcf62d49705242a9af9e61e85dc0d651e40dfcf017b45575887"
    )


def test_pkcs12_password_bytes() -> None:
    """If this fails, no importer accepts our MAC. RFC 7292 appendix B.1, the example "Beavis"."""
    assert pbes.bmp_password(Secret("Beavis")).hex() == "0042006500610076006900730000"
    assert pbes.bmp_password(Secret(b"Beavis")) == pbes.bmp_password(Secret("Beavis"))


def test_pkcs12_kdf() -> None:
    """If this fails, the old container's keys are derived wrongly (vector from memory, no RFC has one)."""
    password, salt = pbes.bmp_password(Secret("smeg")), bytes.fromhex("0a58cf64530d823f")
    key = pbes.pkcs12_kdf("sha1", password, salt, purpose=1, rounds=1, length=24)
    assert key.hex() == "8aaae6297b6cb04642ab5b077851284eb7128f1a2a7fbca3"


def _pbes2(derivation: bytes, *, cipher: str = pbes.AES_256_CBC, vector: bytes = bytes(16)) -> bytes:
    encryption = der.element(der.SEQUENCE, der.object_id(cipher), der.element(der.OCTET_STRING, vector))
    return der.element(der.SEQUENCE, der.object_id(pbes.PBES2), der.element(der.SEQUENCE, derivation, encryption))


def _pbkdf2(rounds: int, *more: bytes) -> bytes:
    parameters = der.element(der.SEQUENCE, der.element(der.OCTET_STRING, b"saltsalt"), der.integer(rounds), *more)
    return der.element(der.SEQUENCE, der.object_id(pbes.PBKDF2), parameters)


def _scrypt(cost: int, blocks: int, lanes: int) -> bytes:
    numbers = map(der.integer, (cost, blocks, lanes))
    parameters = der.element(der.SEQUENCE, der.element(der.OCTET_STRING, b"saltsalt"), *numbers)
    return der.element(der.SEQUENCE, der.object_id(pbes.SCRYPT), parameters)


@pytest.mark.parametrize(
    "derivation",
    [
        _pbkdf2(pbes.MOST_ROUNDS + 1),
        _pbkdf2(1 << 400),
        _pbkdf2(0),
        _scrypt(1 << 21, 8, 1),
        _scrypt(1 << 14, 8, 1 << 20),
        _scrypt(2, 1 << 40, 1),
    ],
)
def test_absurd_costs_are_refused_when_read(derivation: bytes) -> None:
    """If this fails, a small file keeps the app busy for hours. RFC 8018 section 4.2, RFC 7914 section 7."""
    with pytest.raises(Refused) as caught:
        pbes.read_scheme(der.Reader(_pbes2(derivation)))
    assert caught.value.code == "key-rounds-absurd"


@pytest.mark.parametrize("costs", [(1, 8, 1), (3, 8, 1), (16, 0, 1), (16, 8, 0)])
def test_scrypt_parameters_that_do_not_exist_are_malformed(costs: tuple[int, int, int]) -> None:
    """If this fails, the library's own error reaches the householder. RFC 7914 section 6."""
    with pytest.raises(der.Malformed):
        pbes.read_scheme(der.Reader(_pbes2(_scrypt(*costs))))


def test_costs_that_the_standards_name_are_read() -> None:
    """If this fails, the caps lie below what RFC 8018 section 4.2 and RFC 7914 section 13 use."""
    assert pbes.read_scheme(der.Reader(_pbes2(_pbkdf2(10_000_000)))).rounds == 10_000_000
    scheme = pbes.read_scheme(der.Reader(_pbes2(_scrypt(1 << 20, 8, 1))))
    assert (scheme.title, scheme.blocks) == ("AES-256-CBC, scrypt", 8)


@pytest.mark.parametrize(
    "algorithm",
    [
        der.element(der.SEQUENCE, der.object_id("1.2.840.113549.1.12.1.6"), der.NULL_ELEMENT),  # RC2-40
        _pbes2(_pbkdf2(1000), cipher="1.2.840.113549.3.2"),  # RC2-CBC
        _pbes2(der.element(der.SEQUENCE, der.object_id("1.2.3"), der.NULL_ELEMENT)),
        _pbes2(_pbkdf2(1000, der.element(der.SEQUENCE, der.object_id("1.2.3")))),
    ],
)
def test_unknown_algorithms_are_named(algorithm: bytes) -> None:
    """If this fails, an unreadable scheme passes for a wrong passphrase."""
    with pytest.raises(Refused) as caught:
        pbes.read_scheme(der.Reader(algorithm))
    assert caught.value.code == "encryption-unknown"
    assert "." in str(caught.value.facts["algorithm"])


@pytest.mark.parametrize(
    "algorithm",
    [_pbes2(_pbkdf2(1000), vector=bytes(8)), _pbes2(_pbkdf2(1000, der.integer(16)))],
)
def test_parameters_that_contradict_each_other_are_malformed(algorithm: bytes) -> None:
    """If this fails, the cipher is given a key or a vector of the wrong length."""
    with pytest.raises(der.Malformed):
        pbes.read_scheme(der.Reader(algorithm))
