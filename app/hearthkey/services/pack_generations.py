"""The files of the gateway pack that become two while one CA follows another.

What a gateway was told by name keeps its meaning: the oldest CA's certificate and list stay where they are, and what is
newer lies beside them. The PEM files hold both, one after the other, for whoever reads a whole file; the DER files and
those with a 2 hold one each.
"""

from __future__ import annotations

from hearthkey.core.household import Gateway
from hearthkey.core.pack import CROSS_CERTIFICATE, PackFile, second_name
from hearthkey.formats import pem, two_cas
from hearthkey.pki import read
from hearthkey.services.ports import Register


def both_generations(name: str, label: str, ders: tuple[bytes, ...], *, ending: str = "der") -> tuple[PackFile, ...]:
    """What each CA has, oldest first, as PEM and DER."""
    files = [
        PackFile(f"{name}.pem", "".join(pem.encode(label, one) for one in ders).encode("ascii")),
        PackFile(f"{name}.{ending}", ders[0]),
    ]
    for newer in ders[1:]:
        files += [
            PackFile(second_name(f"{name}.pem"), pem.encode(label, newer).encode("ascii")),
            PackFile(second_name(f"{name}.{ending}"), newer),
        ]
    return tuple(files)


def chained(name: str, certificate: bytes, chain: tuple[bytes, ...]) -> tuple[PackFile, ...]:
    """The gateway's certificate, in the PEM file with its chain behind it (RFC 8446 section 4.4.2), and the chain."""
    files = [
        PackFile(f"{name}.pem", "".join(pem.encode(pem.CERTIFICATE, one) for one in (certificate, *chain)).encode()),
        PackFile(f"{name}.der", certificate),
    ]
    for one in chain:
        files += [
            PackFile(f"{CROSS_CERTIFICATE}.pem", pem.encode(pem.CERTIFICATE, one).encode("ascii")),
            PackFile(f"{CROSS_CERTIFICATE}.der", one),
        ]
    return tuple(files)


def chain_of(register: Register, gateway: Gateway) -> tuple[bytes, ...]:
    """What the gateway sends behind its certificate: the cross certificate, while some devices know the old CA only."""
    found = register.succession()
    if found is None or not found.underway or found.cross is None:
        return ()
    new = read.load(found.new.certificate)
    return (found.cross,) if read.load(gateway.certificate).issuer == new.subject else ()


def two_cas_file(register: Register, gateway: Gateway) -> tuple[PackFile, ...]:
    """What tells whoever looks after the gateway which file is whose, while there are two CAs."""
    if len(register.authorities()) == 1:
        return ()
    return (PackFile(two_cas.FILE_NAME, two_cas.note(crossed=bool(chain_of(register, gateway))).encode("ascii")),)


def succession_mark(register: Register) -> tuple[object, ...]:
    """What a pack is made from besides, while there are two CAs."""
    found = register.succession()
    if found is None or not found.underway:
        return ()
    return (found.new.fingerprint, found.cross is not None, found.cause.value)
