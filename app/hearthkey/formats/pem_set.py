"""A bundle as PEM files, for whatever reads none of the other forms."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core.bundle import Settings
from hearthkey.core.errors import Refused
from hearthkey.core.names import file_stem
from hearthkey.formats import pem

KEY, CERTIFICATE, AUTHORITY, READ_ME = ".key.pem", ".cert.pem", ".ca.pem", ".read-me.txt"

_NOTE = """\
For {device}, until {ends:%Y-%m-%d}

  {stem}.key.pem     the private key, PKCS#8 under the passphrase (RFC 5958, RFC 8018)
  {stem}.cert.pem    its certificate
  {stem}.ca.pem      the certificate of the household's CA

IKEv2 (RFC 7296), authentication by certificate on both sides
  peer, and its ID (ID_FQDN)   {gateway}
  own ID (ID_FQDN)             {identity}
  IKE SA                       {ike}, key exchange method {group}
  ESP SA                       {esp}
  traffic through the tunnel   {through}

The passphrase is not in these files. It comes another way. Delete them once the device has them.
"""


@dataclass(frozen=True)
class PemSet:
    """What the files say, read back: the key is still encrypted.

    Args:
        encrypted_key: PKCS#8 EncryptedPrivateKeyInfo, DER.
        certificate: DER.
        authorities: DER.
    """

    encrypted_key: bytes
    certificate: bytes
    authorities: tuple[bytes, ...]


def write(settings: Settings, found: PemSet) -> dict[str, bytes]:
    """Write the four files, by name."""
    stem = file_stem(settings.device, settings.identity)
    note = _NOTE.format(
        device=settings.device,
        ends=settings.ends,
        stem=stem,
        gateway=settings.gateway_host,
        identity=settings.identity,
        ike=", ".join(settings.ike),
        esp=", ".join(settings.esp),
        group=settings.key_exchange,
        through="everything" if settings.tunnel == "full" else ", ".join(settings.home_subnets),
    )
    authorities = "".join(pem.encode(pem.CERTIFICATE, der) for der in found.authorities)
    return {
        stem + READ_ME: note.encode(),
        stem + KEY: pem.encode(pem.ENCRYPTED_PRIVATE_KEY, found.encrypted_key).encode("ascii"),
        stem + CERTIFICATE: pem.encode(pem.CERTIFICATE, found.certificate).encode("ascii"),
        stem + AUTHORITY: authorities.encode("ascii"),
    }


def read(files: Sequence[bytes]) -> PemSet:
    """Read the three that matter, whatever they are called: the key, then its certificate, then the CA's.

    Raises:
        Refused: pem-set-incomplete, pem-unreadable.
    """
    texts = [data.decode("ascii", errors="replace") for data in files]
    keys = [one for one in texts if f"BEGIN {pem.ENCRYPTED_PRIVATE_KEY}" in one]
    certificates = [one for one in texts if f"BEGIN {pem.CERTIFICATE}" in one]
    if len(keys) != 1 or len(certificates) != 2:
        raise Refused("pem-set-incomplete", keys=len(keys), certificates=len(certificates))
    own = pem.decode(certificates[0], pem.CERTIFICATE)
    found = pem.decode(keys[0], pem.ENCRYPTED_PRIVATE_KEY)
    if len(own) != 1 or len(found) != 1:
        raise Refused("pem-set-incomplete", keys=len(found), certificates=len(own))
    return PemSet(found[0], own[0], tuple(pem.decode(certificates[1], pem.CERTIFICATE)))
