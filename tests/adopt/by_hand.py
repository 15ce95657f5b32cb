"""Quince Cottage as somebody made it by hand: a CA, certificates and lists of many shapes, as files in a folder."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cache
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import (
    BestAvailableEncryption,
    Encoding,
    KeySerializationEncryption,
    NoEncryption,
    PrivateFormat,
)
from cryptography.x509.oid import ExtendedKeyUsageOID as Use
from cryptography.x509.oid import NameOID

from tests.fakes.clock import NOW

DAY = timedelta(days=1)
LOCK = b"plum kettle ivory"
HOST = "home.quince.example"
CLIENT, SERVER = (Use.CLIENT_AUTH,), (Use.SERVER_AUTH,)

Key = ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey


@cache
def quick_key(name: str) -> ec.EllipticCurvePrivateKey:
    """A P-256 key by a name, the same for every test."""
    del name
    return ec.generate_private_key(ec.SECP256R1())


def named(common: str, *more: x509.NameAttribute[str]) -> x509.Name:
    """A name with a common name."""
    return x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, common), *more])


@dataclass
class Shape:
    """How a CA certificate was made.

    Args:
        identifier, key_usage: whether the extension is there.
        constraints: basicConstraints, or None where it is absent.
        signs_certificates, signs_lists: bits of keyUsage.
        begins, ends: from the tests' now.
    """

    identifier: bool = True
    key_usage: bool = True
    constraints: x509.BasicConstraints | None = field(
        default_factory=lambda: x509.BasicConstraints(ca=True, path_length=None)
    )
    signs_certificates: bool = True
    signs_lists: bool = True
    begins: timedelta = -400 * DAY
    ends: timedelta = 3000 * DAY


class ByHand:
    """One household, and the folder that it lies in."""

    def __init__(
        self, folder: Path, key: Key | None = None, shape: Shape | None = None, name: str = "Quince CA"
    ) -> None:
        self.folder = folder
        self.key: Key = quick_key("ca") if key is None else key
        self.shape = Shape() if shape is None else shape
        self.name = named(name)
        self.certificate = self._authority()
        folder.mkdir(parents=True, exist_ok=True)

    def _authority(self) -> x509.Certificate:
        shape, public = self.shape, self.key.public_key()
        builder = (
            x509.CertificateBuilder()
            .subject_name(self.name)
            .issuer_name(self.name)
            .serial_number(0x51)
            .not_valid_before(NOW + shape.begins)
            .not_valid_after(NOW + shape.ends)
            .public_key(public)
        )
        if shape.constraints is not None:
            builder = builder.add_extension(shape.constraints, critical=True)
        if shape.identifier:
            builder = builder.add_extension(x509.SubjectKeyIdentifier.from_public_key(public), critical=False)
        if shape.key_usage:
            usage = x509.KeyUsage(
                digital_signature=False,
                content_commitment=False,
                key_encipherment=False,
                data_encipherment=False,
                key_agreement=False,
                key_cert_sign=shape.signs_certificates,
                crl_sign=shape.signs_lists,
                encipher_only=False,
                decipher_only=False,
            )
            builder = builder.add_extension(usage, critical=True)
        return builder.sign(self.key, hashes.SHA256())

    def issue(
        self,
        common: str,
        serial: int,
        *,
        uses: tuple[x509.ObjectIdentifier, ...] | None = CLIENT,
        names: tuple[str, ...] = (),
        key: Key | None = None,
        begins: timedelta = -100 * DAY,
        ends: timedelta = 600 * DAY,
        mail: str = "",
    ) -> x509.Certificate:
        """Issue a certificate."""
        extra = [x509.NameAttribute(NameOID.EMAIL_ADDRESS, mail)] if mail else []
        builder = (
            x509.CertificateBuilder()
            .subject_name(named(common, *extra))
            .issuer_name(self.name)
            .serial_number(serial)
            .not_valid_before(NOW + begins)
            .not_valid_after(NOW + ends)
            .public_key((quick_key(common) if key is None else key).public_key())
            .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
            .add_extension(x509.AuthorityKeyIdentifier.from_issuer_public_key(self.key.public_key()), critical=False)
        )
        if uses is not None:
            builder = builder.add_extension(x509.ExtendedKeyUsage(uses), critical=False)
        if names:
            builder = builder.add_extension(
                x509.SubjectAlternativeName([x509.DNSName(one) for one in names]), critical=False
            )
        return builder.sign(self.key, hashes.SHA256())

    def revocation_list(
        self,
        number: int | None,
        *entries: tuple[int, x509.ReasonFlags | None],
        at: datetime = NOW - DAY,
        days: int = 30,
        partial: bool = False,
    ) -> x509.CertificateRevocationList:
        """Sign a list."""
        builder = x509.CertificateRevocationListBuilder().issuer_name(self.name)
        builder = builder.last_update(at).next_update(at + days * DAY)
        for serial, reason in entries:
            revoked = x509.RevokedCertificateBuilder().serial_number(serial).revocation_date(NOW - 5 * DAY)
            if reason is not None:
                revoked = revoked.add_extension(x509.CRLReason(reason), critical=False)
            builder = builder.add_revoked_certificate(revoked.build())
        if number is not None:
            builder = builder.add_extension(x509.CRLNumber(number), critical=False)
        if partial:
            builder = builder.add_extension(x509.DeltaCRLIndicator(1), critical=True)
        return builder.sign(self.key, hashes.SHA256())

    def put(self, name: str, data: bytes | str) -> Path:
        """Lay a file into the folder."""
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data.encode() if isinstance(data, str) else data)
        return path

    def put_authority(self, *, locked: bool = True) -> None:
        """Lay certificate and key of the CA there."""
        self.put("ca.crt", self.certificate.public_bytes(Encoding.PEM))
        self.put("ca.key", key_text(self.key, locked=locked))

    def put_certificate(self, name: str, certificate: x509.Certificate) -> None:
        """Lay a certificate there."""
        self.put(name, certificate.public_bytes(Encoding.PEM))

    def put_list(self, name: str, signed: x509.CertificateRevocationList) -> None:
        """Lay a list there."""
        self.put(name, signed.public_bytes(Encoding.PEM))


def key_text(key: Key, *, locked: bool) -> bytes:
    """A key as PKCS#8, PEM."""
    lock: KeySerializationEncryption = BestAvailableEncryption(LOCK) if locked else NoEncryption()
    return key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, lock)


def family(folder: Path, **more: object) -> ByHand:
    """The usual household: a gateway, three devices, one of them withdrawn, a list, and all that a CA leaves behind."""
    home = ByHand(folder, **more)  # type: ignore[arg-type]  # passed on as it is
    home.put_authority()
    home.put_certificate("gateway.crt", home.issue("gateway", 0x1000, uses=SERVER, names=(HOST,)))
    home.put("gateway.key", key_text(quick_key("gateway"), locked=False))
    home.put_certificate("newcerts/1001.pem", home.issue("ines-phone", 0x1001, names=("a7k2.quince.example",)))
    home.put_certificate("newcerts/1002.pem", home.issue("tomasz-laptop", 0x1002, names=("b8m3.quince.example",)))
    home.put_certificate("newcerts/1003.pem", home.issue("odile-tablet", 0x1003, names=("c9n4.quince.example",)))
    home.put_list("crl.pem", home.revocation_list(6, (0x1002, x509.ReasonFlags.key_compromise)))
    home.put("crlnumber", "07\n")
    home.put("serial", "1004\n")
    home.put("index.txt", INDEX)
    return home


INDEX = (
    "V\t280718120000Z\t\t1000\tunknown\t/CN=gateway\n"
    "V\t280718120000Z\t\t1001\tunknown\t/CN=ines-phone\n"
    "R\t280718120000Z\t261120120000Z,keyCompromise\t1002\tunknown\t/CN=tomasz-laptop\n"
    "V\t280718120000Z\t\t1003\tunknown\t/CN=odile-tablet\n"
)
