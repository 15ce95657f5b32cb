"""The lock of sealed copies: an age key pair whose private half lies under a passphrase (age-encryption.org/v1).

Encrypting needs the public half only, so that a copy can be made after every change without asking for the
passphrase; opening needs the private half, and the passphrase with it. Any age tool does both.

Whoever knows the public half can encrypt something of their own, so a copy also carries a mark (HMAC-SHA-256, RFC
2104) under a key that only the keyring and the locked private half know.
"""

from __future__ import annotations

import hashlib
import hmac
from dataclasses import dataclass

import pyrage

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import guard

LONGEST_TEXT = 4096
"""Characters of a locked private half; ours are about 630."""

MARK_BITS = 256
_MARK_LINE = "# mark key of this household's sealed copies: "


@dataclass(frozen=True)
class Lock:
    """What closes copies.

    Args:
        public: the public half, "age1…".
        locked: the private half and the mark key under the passphrase, ASCII armour: an identity file for age tools.
    """

    public: str
    locked: str


@dataclass(frozen=True)
class Opened:
    """What opens copies.

    Args:
        private: the private half.
        mark_key: 256 bits, hex.
    """

    private: Secret[str]
    mark_key: Secret[str]


def draw() -> tuple[str, Secret[str]]:
    """Draw a key pair (X25519, RFC 7748): the public half and the private one."""
    identity = pyrage.x25519.Identity.generate()
    return str(identity.to_public()), Secret(str(identity))


def make(passphrase: Secret[str], mark_key: Secret[str]) -> Lock:
    """Draw a key pair and lock its private half. Takes about a second: scrypt is measured to this machine.

    Args:
        passphrase: what the private half will lie under.
        mark_key: 256 random bits, hex.
    """
    public, private = draw()
    plain = f"{_MARK_LINE}{mark_key.reveal()}\n{private.reveal()}\n".encode("ascii")
    return Lock(public, guard.locked_text(plain, passphrase))


def unlock(locked: str, passphrase: Secret[str]) -> Opened:
    """Open the private half.

    Raises:
        Refused: wrong-passphrase, copy-damaged, guard-too-heavy.
    """
    damaged = Refused("copy-damaged", part="identity.age")
    if len(locked) > LONGEST_TEXT or not locked.isascii():
        raise damaged
    try:
        plain = pyrage.passphrase.decrypt(locked.encode("ascii"), passphrase.reveal())
    except pyrage.DecryptError as error:
        told = guard.refusal(str(error), len(locked))
        raise (damaged if told.code == "guard-unreadable" else told) from None
    lines = plain.decode("ascii", errors="replace").split("\n")
    if len(lines) < 2 or not lines[0].startswith(_MARK_LINE):
        raise damaged
    return Opened(Secret(lines[1].strip()), Secret(lines[0].removeprefix(_MARK_LINE)))


def seal(data: bytes, public: str) -> bytes:
    """Encrypt to the public half; binary age.

    Raises:
        Refused: copy-not-ready, for what no public half looks like.
    """
    try:
        recipient = pyrage.x25519.Recipient.from_str(public)
    except pyrage.RecipientError:
        raise Refused("copy-not-ready") from None
    return bytes(pyrage.encrypt(data, [recipient]))


def open_sealed(data: bytes, private: Secret[str]) -> bytes:
    """Decrypt with the private half; one octet changed anywhere and nothing comes out.

    Raises:
        Refused: copy-damaged.
    """
    try:
        return bytes(pyrage.decrypt(data, [pyrage.x25519.Identity.from_str(private.reveal())]))
    except (pyrage.IdentityError, pyrage.DecryptError):
        raise Refused("copy-damaged", part="household.tar.age") from None


def mark(data: bytes, mark_key: Secret[str]) -> str:
    """What only somebody with the mark key can write under a text, hex."""
    return hmac.new(bytes.fromhex(mark_key.reveal()), data, hashlib.sha256).hexdigest()


def marked(data: bytes, mark_key: Secret[str], seen: str) -> bool:
    """Whether a mark is right, compared in constant time."""
    return hmac.compare_digest(mark(data, mark_key).encode(), seen.encode())
