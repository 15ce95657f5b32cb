"""Which CA issued what, and in which order a device gets to trust them while one follows another."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from hearthkey.core.household import Authority
from hearthkey.core.passes import Pass
from hearthkey.pki import read
from hearthkey.services.ports import Register


def by_issuer(issuer: Authority, trusted: Sequence[Authority]) -> tuple[Authority, ...]:
    """Whom a device has to trust, its own CA first."""
    others = [one for one in trusted if one.fingerprint != issuer.fingerprint]
    return (issuer, *others)


def trusted_by(certificate: bytes, trusted: Sequence[Authority]) -> tuple[Authority, ...]:
    """Whom the holder of a certificate has to trust, the CA that issued it first.

    A pass of a CA that was put away opens nothing any more; it gets those that are left.

    Raises:
        Refused: certificate-unreadable.
    """
    issuer = read.load(certificate).issuer
    own = [one for one in trusted if read.load(one.certificate).subject == issuer]
    return by_issuer(own[0], trusted) if own else tuple(trusted)


def issued_by(register: Register, authority: Authority, passes: Iterable[Pass]) -> frozenset[str]:
    """Serials of those passes that a CA issued."""
    subject = read.load(authority.certificate).subject
    return frozenset(one.serial for one in passes if read.load(register.certificate(one.serial)).issuer == subject)


def of_household(fingerprint: str, register: Register) -> bool:
    """Whether a certificate's fingerprint is that of one of the household's CAs, now or before."""
    found = register.succession()
    known = [*register.authorities(), *(() if found is None else (found.old, found.new))]
    return fingerprint in {one.fingerprint for one in known}


def signing_beside(register: Register, in_charge: Authority) -> tuple[Authority, ...]:
    """The other CAs that sign lists: none, or one while one CA follows another and neither key is lost."""
    found = register.succession()
    trusted = tuple(register.authorities()) if found is None else found.signing
    return tuple(one for one in trusted if one.fingerprint != in_charge.fingerprint)
