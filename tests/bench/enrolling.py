"""Measures enrolling: one device against the bare floor, many against a shell script."""

from __future__ import annotations

import hashlib
import subprocess
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta
from itertools import count
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import PrivateFormat
from cryptography.hazmat.primitives.serialization.pkcs12 import PBES, serialize_key_and_certificates

from hearthkey.bootstrap import House
from hearthkey.core.secret import Secret
from hearthkey.pki import pkcs12
from hearthkey.services.enrolling import Enrolling, EnrolRequest
from hearthkey.services.ports import SealJob, Workshop
from tests.bench import practice
from tests.bench.timing import Row, at_most, paired, paired_cold, timed, times_faster

ROUNDS = 600_000
SCRIPT = Path(__file__).with_name("many.sh")

Key = ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey


class TimedWorkshop:
    """The app's workshop, which also tells what making keys took.

    An RSA key takes from a tenth of a second to several, by luck. So a run and its floor share one
    key: its time is measured in our run and counted in both.
    """

    def __init__(self, inner: Workshop) -> None:
        self._inner = inner
        self.key_seconds = 0.0

    def make_keys(self, key_types: Sequence[str]) -> Iterator[Secret[bytes]]:
        """See the port."""
        began = time.perf_counter()
        made = list(self._inner.make_keys(key_types))
        self.key_seconds = time.perf_counter() - began
        yield from made

    def seal(self, jobs: Sequence[SealJob]) -> Iterator[bytes]:
        """See the port."""
        return self._inner.seal(jobs)


def one_compact(*, quick: bool) -> list[Row]:
    """One device with a P-256 key."""
    key = ec.generate_private_key(ec.SECP256R1())
    return [_one("enrol one device, compact (P-256)", "compact", key, 7 if quick else 21)]


def one_broad(*, quick: bool) -> list[Row]:
    """One device with an RSA-3072 key."""
    key = rsa.generate_private_key(public_exponent=65537, key_size=3072)
    return [_one("enrol one device, broad (RSA-3072)", "broad", key, 7 if quick else 21)]


def _one(what: str, key_set: str, key: Key, times: int) -> Row:
    with practice.household() as house:
        workshop = TimedWorkshop(house.workshop)
        enrolling = Enrolling(
            house.register, house.vault, house.keyholder, house.clock, house.dice, house.words, workshop, house.kinds
        )
        numbers = count(1)

        def ours() -> float:
            request = EnrolRequest("Ines", f"device {next(numbers)}", "linux", key_set=key_set, container="strong")
            plan = enrolling.preview(request)
            return timed(lambda: enrolling.apply(plan))()

        bare = timed(_bare(key))
        return at_most(what, paired(ours, lambda: bare() + workshop.key_seconds, times), 1.15)


def _bare(key: Key) -> Callable[[], None]:
    """The floor but for the key: one signature of a P-384 key, three times 600,000 rounds of derivation."""
    authority = ec.generate_private_key(ec.SECP384R1())
    issuer = x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "floor.quince.example")])

    def certified(public: ec.EllipticCurvePublicKey | rsa.RSAPublicKey) -> x509.Certificate:
        builder = x509.CertificateBuilder(issuer, issuer, public, x509.random_serial_number())
        dated = builder.not_valid_before(practice.NOW).not_valid_after(practice.NOW + timedelta(days=730))
        return dated.sign(authority, hashes.SHA384())

    own = certified(authority.public_key())

    def run() -> None:
        certificate = certified(key.public_key())
        builder = PrivateFormat.PKCS12.encryption_builder().kdf_rounds(ROUNDS)
        builder = builder.key_cert_algorithm(PBES.PBESv2SHA256AndAES256CBC).hmac_hash(hashes.SHA256())
        encryption = builder.build(practice.PASSPHRASE.reveal().encode())
        digest = serialize_key_and_certificates(b"floor", key, certificate, [own], encryption)
        for _ in range(ROUNDS):
            digest = hashlib.sha256(digest).digest()

    return run


def many(*, quick: bool) -> list[Row]:
    """Many devices in one go, on every processor, against a script that makes them one after another."""
    devices, times = (40, 3) if quick else (100, 3)
    rounds = count(1)
    with practice.household() as house, practice.folder() as folder:
        subprocess.run(["sh", SCRIPT, "authority", folder], check=True, capture_output=True)

        def ours() -> None:
            batch = next(rounds)
            requests = [EnrolRequest("Tomasz", f"laptop {batch}.{number}", "linux") for number in range(devices)]
            house.enrolling.apply(*house.enrolling.preview_all(requests))

        def script() -> None:
            subprocess.run(["sh", SCRIPT, "devices", folder, str(devices)], check=True, capture_output=True)

        pairs = paired_cold(timed(ours), timed(script), times)
        _insist_on_same_work(house, folder)
    return [times_faster(f"enrol {devices} devices in one go, against a script", pairs, 1.8)]


def _insist_on_same_work(house: House, folder: Path) -> None:
    """Fail rather than compare files of different strength."""
    sealed = house.register.sealed(house.register.passes()[-1].serial) or b""
    for data in (sealed, (folder / "1.p12").read_bytes()):
        facts = pkcs12.describe(data)
        seen = (facts.mac_hash, facts.mac_rounds, facts.key_rounds, facts.certificate_rounds, facts.key_encryption)
        if seen != ("sha256", ROUNDS, ROUNDS, ROUNDS, "AES-256-CBC, PBKDF2-HMAC-SHA256"):
            raise ValueError(f"the two do not do the same work: {seen}")
