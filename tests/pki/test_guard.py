"""The CA key as an age text: fits the smallest keyring, opens again, refuses the rest."""

from __future__ import annotations

import base64

import pyrage
import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from tests.pki.quince import PASSPHRASE, Quince


@pytest.fixture(scope="module")
def text(home: Quince) -> str:
    """The household's CA key, sealed once because that takes a second."""
    return guard.seal(home.key, PASSPHRASE)


def refusal(text: str, passphrase: Secret[str] = PASSPHRASE) -> Refused:
    """What a text is refused with."""
    with pytest.raises(Refused) as caught:
        guard.open_guard(text, passphrase)
    return caught.value


def test_the_key_comes_back(text: str, home: Quince) -> None:
    """If this fails, the household is locked out of its own CA."""
    assert guard.open_guard(text, PASSPHRASE).public_der() == home.key.public_der()


def test_the_text_fits_the_smallest_keyring(text: str) -> None:
    """If this fails, one operating system's keyring refuses the CA key (2,560 octets of UTF-16)."""
    assert len(text.encode("utf-16-le")) <= 2_560
    assert text.startswith("-----BEGIN AGE ENCRYPTED FILE-----\n")
    assert text.isascii()


def test_wrong_passphrase_gives_no_hint(text: str) -> None:
    """If this fails, the library's words for it have changed, or a hint is given."""
    found = refusal(text, Secret("plum"))
    assert (found.code, found.facts) == ("wrong-passphrase", {})


def armour(raw: bytes) -> str:
    """ASCII armour as the age format has it: strict PEM with 64 characters a line."""
    lines = base64.b64encode(raw).decode()
    body = "\n".join(lines[place : place + 64] for place in range(0, len(lines), 64))
    return f"-----BEGIN AGE ENCRYPTED FILE-----\n{body}\n-----END AGE ENCRYPTED FILE-----\n"


def test_damage_is_told_from_a_wrong_passphrase(text: str) -> None:
    """If this fails, somebody with a damaged text retypes the right passphrase for ever."""
    raw = base64.b64decode("".join(text.splitlines()[1:-1]))
    assert refusal(armour(raw[:-1] + bytes([raw[-1] ^ 1]))).code == "guard-unreadable"
    assert refusal(armour(raw[:-40])).code == "guard-unreadable"


def test_absurd_work_is_refused_before_deriving(text: str) -> None:
    """If this fails, a text that asks for 2^40 rounds keeps the app busy for ever."""
    raw = base64.b64decode("".join(text.splitlines()[1:-1]))
    head, _, rest = raw.partition(b"\n-> scrypt ")
    salt, _, after = rest.partition(b" ")
    heavy = head + b"\n-> scrypt " + salt + b" 40" + after[after.index(b"\n") :]
    assert refusal(armour(heavy)).code == "guard-too-heavy"


@pytest.mark.parametrize("text", ["", "plum", "ä", "-----BEGIN AGE ENCRYPTED FILE-----\n", "x" * 2_000])
def test_garbage_is_refused(text: str) -> None:
    """If this fails, whatever else lies in the keyring crashes the app."""
    assert refusal(text).code == "guard-unreadable"


def test_a_moment_that_was_too_busy_is_measured_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a busy second while founding leaves the CA key under light work for years."""
    light, heavy = _armoured(12), _armoured(18)
    given = iter([light, heavy])
    monkeypatch.setattr(pyrage.passphrase, "encrypt", lambda *_args, **_options: next(given).encode())
    text = guard.seal(AuthorityKey.make(), Secret("quince jelly on the kitchen shelf"))
    assert guard.work_factor(text) == 18


def test_a_slow_machine_gets_the_heaviest_of_a_few(monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a small computer can never found a household."""
    given = iter([_armoured(14), _armoured(16), _armoured(15)])
    monkeypatch.setattr(pyrage.passphrase, "encrypt", lambda *_args, **_options: next(given).encode())
    text = guard.seal(AuthorityKey.make(), Secret("quince jelly on the kitchen shelf"))
    assert guard.work_factor(text) == 16


def _armoured(factor: int) -> str:
    header = f"age-encryption.org/v1\n-> scrypt c2FsdHNhbHRzYWx0c2FsdA {factor}\n".encode()
    body = base64.b64encode(header).decode()
    return f"-----BEGIN AGE ENCRYPTED FILE-----\n{body}\n-----END AGE ENCRYPTED FILE-----\n"
