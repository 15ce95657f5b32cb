"""The CA key as a text under the householder's passphrase: the age format, version 1, with scrypt.

Anything that reads age opens it; see README.md, "without this app".
"""

from __future__ import annotations

import base64

import pyrage

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.secret import Secret
from hearthkey.pki.keys import AuthorityKey

LIGHTEST = 17
"""Binary logarithm of scrypt's N: OWASP's password storage cheat sheet asks for 2^17 at least (r=8, p=1)."""

MOST_TRIES = 3

LONGEST = 8192
"""Characters. A P-384 key takes 570, an RSA key of 8,192 bits that was taken over 6,700."""


def seal(key: AuthorityKey, passphrase: Secret[str]) -> str:
    """Encrypt the CA key. Takes about a second: scrypt is measured to this machine.

    Returns:
        ASCII armour, about 570 characters for a key of ours.

    Raises:
        Bug: guard-too-long.
    """
    text = locked_text(key.to_pkcs8().reveal(), passphrase)
    if len(text) > LONGEST:
        raise Bug("guard-too-long", length=len(text), limit=LONGEST)
    return text


def locked_text(plain: bytes, passphrase: Secret[str]) -> str:
    """Encrypt a short secret under a passphrase; ASCII armour.

    The measuring of scrypt takes one moment, and a busy one comes out too light: then it is done again, and
    the heaviest of a few is kept.
    """
    heaviest = ""
    for _ in range(MOST_TRIES):
        text = pyrage.passphrase.encrypt(plain, passphrase.reveal(), armored=True).decode("ascii")
        if not heaviest or work_factor(text) > work_factor(heaviest):
            heaviest = text
        if work_factor(heaviest) >= LIGHTEST:
            break
    return heaviest


def work_factor(text: str) -> int:
    """The binary logarithm of scrypt's N, from the header of an age text (age-encryption.org/v1, scrypt recipient)."""
    body = "".join(line for line in text.splitlines() if not line.startswith("-----"))
    header = base64.b64decode(body)[:200].split(b"\n")[1].split(b" ")
    return int(header[3])


def open_guard(text: str, passphrase: Secret[str]) -> AuthorityKey:
    """Decrypt the CA key. Takes about as long as `seal` did.

    Raises:
        Refused: wrong-passphrase, guard-unreadable, guard-too-heavy, authority-key-type.
    """
    if len(text) > LONGEST or not text.isascii():
        raise Refused("guard-unreadable", length=len(text))
    try:
        plain = pyrage.passphrase.decrypt(text.encode("ascii"), passphrase.reveal())
    except pyrage.DecryptError as error:
        raise refusal(str(error), len(text)) from None
    return AuthorityKey.from_pkcs8(Secret(plain))


def refusal(seen: str, length: int) -> Refused:
    """Tell the causes apart by the library's words, which are all it gives."""
    if seen == "Decryption failed":
        return Refused("wrong-passphrase")
    if seen.startswith("Excessive work"):
        return Refused("guard-too-heavy")
    return Refused("guard-unreadable", length=length)
