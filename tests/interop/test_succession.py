"""Three libraries of other hands judge every mixture of old and new while one CA follows another.

Whom the gateway trusts, whose pass a device has and which list is in force; whom a device trusts and what the gateway
shows it. Chains: RFC 5280 section 6.1; lists: section 6.3.
"""

from __future__ import annotations

import itertools
import shutil
import subprocess
from dataclasses import dataclass
from pathlib import Path

import pytest

from hearthkey.core.pack import Pack
from hearthkey.formats import pem
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.interop.test_whole_lint import findings
from tests.judges import needs

HOST = "home.quince.example"
OLD, NEW, BOTH = "old", "new", "both"
TRUSTS = (OLD, NEW, BOTH)
LISTS = ("before", "after")
PASSES = ("laptop-old", "laptop-new", "phone-old", "tablet-new")
STOPPED = frozenset({"laptop-old", "laptop-new"})
"""Who is stopped between the two lists."""
CLIENT, SERVER = "1.3.6.1.5.5.7.3.2", "1.3.6.1.5.5.7.3.1"


@dataclass(frozen=True)
class Two:
    """A household with two CAs, as files.

    Args:
        folder: "old.pem", "new.pem" and "both.pem" are the CAs, "cross.pem" what one says of the other; PASSES and
            "gateway-old.pem", "gateway-new.pem", "gateway-chain.pem" the others; "before" and "after" hold the lists.
    """

    folder: Path

    def __getitem__(self, name: str) -> Path:
        return self.folder / f"{name}.pem"


@pytest.fixture(scope="module")
def two(tmp_path_factory: pytest.TempPathFactory) -> Two:
    """Quince Cottage in the middle of its succession: some devices are through, some are not."""
    root = tmp_path_factory.mktemp("two")
    made = Two(root)
    with at_home(root / "household", quick=True) as home:
        at_first = home.house.packing.pack()
        _write(made["gateway-old"], at_first["gateway-certificate.der"].data)
        _device(made, home, "laptop-old", "Tomasz laptop")
        _device(made, home, "phone-old", "Ines phone")
        home.house.succeeding.begin(PASSPHRASE)
        for _ in range(2):
            home.house.succeeding.go_on(told=True)
        home.add(EnrolRequest("Tomasz", "laptop", "linux", replace=True))
        home.add(EnrolRequest("Odile", "tablet", "linux", replace=True))
        _device(made, home, "laptop-new", "Tomasz laptop")
        _device(made, home, "tablet-new", "Odile tablet")
        before = home.house.packing.pack()
        _lists(root / "before", before)
        home.stop("Tomasz laptop")
        _lists(root / "after", home.house.packing.pack())
    for name, source in (
        ("old", "ca-certificate.der"),
        ("new", "ca-certificate-2.der"),
        ("cross", "cross-certificate.der"),
        ("gateway-new", "gateway-certificate.der"),
    ):
        _write(made[name], before[source].data)
    made["both"].write_bytes(before["ca-certificate.pem"].data)
    made["gateway-chain"].write_bytes(before["gateway-certificate.pem"].data)
    return made


def _write(path: Path, der: bytes) -> None:
    path.write_text(pem.encode(pem.CERTIFICATE, der), encoding="ascii")


def _device(made: Two, home: Home, name: str, text: str) -> None:
    _write(made[name], home.house.register.certificate(home.newest(text).serial))


def _lists(folder: Path, pack: Pack) -> None:
    folder.mkdir()
    for name in ("list.pem", "list.crl", "list-2.crl"):
        (folder / name).write_bytes(pack[name].data)


def asked(*command: str | Path) -> tuple[int, str]:
    """Ask a judge; return its exit code and all that it says."""
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    return done.returncode, done.stdout + done.stderr


def let_in(trust: str, who: str, listed: str) -> bool:
    """Whether the gateway has to let a pass in: its CA is trusted, and it is not stopped."""
    known = trust == BOTH or who.endswith(trust)
    return known and not (listed == "after" and who in STOPPED)


PASS_CASES = list(itertools.product(TRUSTS, PASSES, LISTS))
GATEWAY_CASES = [
    (trust, shown, good)
    for trust in TRUSTS
    for shown, good in (
        ("gateway-old", trust != NEW),
        ("gateway-new", trust != OLD),
        ("gateway-chain", True),
    )
]
"""What the gateway shows: the old certificate, the new one alone, and the new one with the cross certificate."""


@pytest.mark.parametrize(("trust", "who", "listed"), PASS_CASES)
def test_openssl_at_the_gateway(two: Two, trust: str, who: str, listed: str) -> None:
    """If this fails, a gateway with OpenSSL shuts somebody out, or lets in whom it must not; openssl-verify(1)."""
    code, said = asked(
        *(needs("openssl"), "verify", "-x509_strict", "-crl_check", "-purpose", "sslclient"),
        *("-CRLfile", two.folder / listed / "list.pem", "-CAfile", two[trust], two[who]),
    )
    assert (code == 0) == let_in(trust, who, listed), said


@pytest.mark.parametrize(("trust", "shown", "good"), GATEWAY_CASES)
def test_openssl_on_the_device(two: Two, trust: str, shown: str, *, good: bool) -> None:
    """If this fails, a device that knows only one of the CAs turns away from the gateway, or trusts another."""
    chain = ("-untrusted", two["cross"]) if shown == "gateway-chain" else ()
    leaf = two["gateway-new"] if shown == "gateway-chain" else two[shown]
    code, said = asked(
        *(needs("openssl"), "verify", "-x509_strict", "-purpose", "sslserver", "-verify_hostname", HOST),
        *("-CAfile", two[trust], *chain, leaf),
    )
    assert (code == 0) == good, said


def gnutls(two: Two, trust: str, shown: str, purpose: str, *more: str | Path) -> tuple[int, str]:
    """What certtool(1) says, --verify."""
    return asked(
        *(needs("certtool"), "--verify", "--verify-profile", "medium", "--verify-purpose", purpose, *more),
        *("--load-ca-certificate", two[trust], "--infile", two[shown]),
    )


@pytest.mark.parametrize(("trust", "who", "listed"), PASS_CASES)
def test_gnutls_at_the_gateway(two: Two, trust: str, who: str, listed: str) -> None:
    """If this fails, a gateway with GnuTLS judges otherwise than one with OpenSSL."""
    code, said = gnutls(two, trust, who, CLIENT, "--load-crl", two.folder / listed / "list.pem")
    assert (code == 0) == let_in(trust, who, listed), said


@pytest.mark.parametrize(("trust", "shown", "good"), GATEWAY_CASES)
def test_gnutls_on_the_device(two: Two, trust: str, shown: str, *, good: bool) -> None:
    """If this fails, a device with GnuTLS judges otherwise than one with OpenSSL."""
    code, said = gnutls(two, trust, shown, SERVER, "--verify-hostname", HOST)
    assert (code == 0) == good, said


@pytest.fixture(scope="module")
def store(two: Two) -> Path:
    """NSS's store with every certificate that is judged, and no CA."""
    folder = two.folder / "nss"
    folder.mkdir()
    where = ("-d", f"sql:{folder}")
    commands: list[tuple[str, ...]] = [(needs("certutil"), "-N", *where, "--empty-password")]
    commands += [
        (needs("certutil"), "-A", *where, "-n", name, "-t", ",,", "-i", str(two[name]))
        for name in (*PASSES, "gateway-old", "gateway-new")
    ]
    for command in commands:
        code, said = asked(*command)
        assert code == 0, said
    return folder


def nss(two: Two, store: Path, trust: str, into: Path, *, listed: str = "", cross: bool = False) -> tuple[str, str]:
    """A copy of the store that trusts somebody, with the lists of a moment; certutil(1) and crlutil(1)."""
    shutil.copytree(store, into)
    where = ("-d", f"sql:{into}")
    commands: list[tuple[str | Path, ...]] = [
        (needs("certutil"), "-A", *where, "-n", name, "-t", "CT,,", "-i", two[name])
        for name in ((OLD, NEW) if trust == BOTH else (trust,))
    ]
    if cross:
        commands.append((needs("certutil"), "-A", *where, "-n", "cross", "-t", ",,", "-i", two["cross"]))
    for name, whose in (("list.crl", OLD), ("list-2.crl", NEW)):
        if listed and trust in {whose, BOTH}:
            commands.append((needs("crlutil"), "-I", *where, "-t", "1", "-i", two.folder / listed / name))
    for command in commands:
        code, said = asked(*command)
        assert code == 0, said
    return where


@pytest.mark.parametrize(("trust", "listed"), list(itertools.product(TRUSTS, LISTS)))
def test_nss_at_the_gateway(two: Two, store: Path, tmp_path: Path, trust: str, listed: str) -> None:
    """If this fails, NSS judges otherwise than the others, for instance takes one CA's list for the other's."""
    where = nss(two, store, trust, tmp_path / "store", listed=listed)
    for who in PASSES:
        code, said = asked(needs("certutil"), "-V", *where, "-n", who, "-u", "C")
        assert (code == 0) == let_in(trust, who, listed), (who, said)


@pytest.mark.parametrize("trust", TRUSTS)
def test_nss_on_the_device(two: Two, store: Path, tmp_path: Path, trust: str) -> None:
    """If this fails, a device with NSS turns away from the gateway, or trusts another."""
    for cross in (False, True):
        where = nss(two, store, trust, tmp_path / f"store-{cross}", cross=cross)
        for shown, good in (("gateway-old", trust != NEW), ("gateway-new", trust != OLD or cross)):
            code, said = asked(needs("certutil"), "-V", *where, "-n", shown, "-u", "V")
            assert (code == 0) == good, (shown, cross, said)


def test_the_linter_finds_nothing(two: Two) -> None:
    """If this fails, the cross certificate or the new CA breaks a rule of RFC 5280; source: pkilint."""
    assert findings("lint_pkix_cert", two["cross"]) == ""
    assert findings("lint_pkix_cert", two[NEW]) == ""
    assert findings("lint_pkix_signer_signee_cert_chain", two[OLD], two["cross"]) == ""
    assert findings("lint_crl", "-p", "PKIX", "-t", "CRL", two.folder / "after" / "list-2.crl") == ""
