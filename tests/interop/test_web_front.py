"""The web front as nginx runs it: devices of the household get the page, and nobody else does."""

from __future__ import annotations

import json
import os
import re
import subprocess
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from hearthkey.bootstrap import House
from hearthkey.core.bundle import Form
from hearthkey.core.host import WebFacts, web_facts
from hearthkey.core.household import FILE
from hearthkey.core.pack import AUTHORITY_CERTIFICATE, GATEWAY_CERTIFICATE, GATEWAY_KEY, LIST_PEM
from hearthkey.core.revocation import ListPlan
from hearthkey.core.secret import Secret
from hearthkey.formats import pem
from hearthkey.formats.web_front import DEVICE_HEADER, SERIAL_HEADER, VERIFY_HEADER, server_block
from hearthkey.pki.lists import sign_list
from tests.interop.cottage import LAPTOP, TABLET, WORDS, Cottage
from tests.interop.web_door import GREETING, HOST, Front, Page, Visitor, front, page, settings
from tests.judges import needs
from tests.peers.servers import ask, free_port

REVOKED, OVERDUE = "(23:certificate revoked)", "(12:CRL has expired)"
"""What nginx says of OpenSSL's X509_V_ERR_CERT_REVOKED and X509_V_ERR_CRL_HAS_EXPIRED."""
DELIVERED = tuple(f"{name}.pem" for name in (GATEWAY_CERTIFICATE, GATEWAY_KEY, AUTHORITY_CERTIFICATE))


@dataclass(frozen=True)
class Made:
    """What the gateway of Quince Cottage gets.

    Args:
        files: certificate, key and CA certificate, by the names of the pack.
        overdue: a list of the household whose date is over, PEM.
    """

    files: dict[str, bytes]
    overdue: bytes


@pytest.fixture(scope="module")
def made(quince: Cottage) -> Made:
    """Open the household once more, and take its pack."""
    house = House(quince.authority.parents[1] / "household", place=FILE)
    house.enter()
    try:
        pack = house.packing.pack()
        authority = house.register.authority()
        assert authority is not None
        house.keyholder.unlock(house.register, house.vault, Secret(WORDS))
        now = datetime.now(UTC)
        plan = ListPlan(99, now - timedelta(days=801), now - timedelta(days=1), ())
        overdue = pem.encode(pem.X509_CRL, sign_list(plan, authority.certificate, house.keyholder.key()))
    finally:
        house.leave()
    return Made({name: pack[name].data for name in DELIVERED}, overdue.encode("ascii"))


@pytest.fixture
def home() -> Iterator[Page]:
    """The page of the home."""
    with page() as shown:
        yield shown


@pytest.fixture
def facts(quince: Cottage, made: Made, home: Page, tmp_path: Path) -> WebFacts:
    """The delivered folder, with the first list, and the front's facts; the folder's name has a space."""
    folder = tmp_path / "in force"
    folder.mkdir()
    for name, data in made.files.items():
        (folder / name).write_bytes(data)
    (folder / LIST_PEM).write_bytes(quince.lists["founded"].read_bytes())
    return web_facts(
        host=HOST,
        folder=str(folder),
        page=f"http://127.0.0.1:{home.port}",
        port=free_port(),
        addresses=["127.0.0.1", "::1"],
    )


@pytest.fixture
def at(facts: WebFacts, tmp_path: Path) -> Iterator[Front]:
    """The front, running."""
    with front(facts, tmp_path / "nginx") as running:
        yield running


def device(quince: Cottage, title: str = LAPTOP) -> Visitor:
    """A device with the PKCS#12 that the app exported for it."""
    return Visitor(quince.authority, quince.written[title, Form.PKCS12][0], quince.words[title])


def subject(quince: Cottage, title: str = LAPTOP) -> str:
    """The subject of a device's certificate as OpenSSL writes RFC 4514."""
    command = (needs("openssl"), "x509", "-in", quince.certificates[title], "-noout", "-subject", "-nameopt", "RFC2253")
    return ask(command).said.strip().removeprefix("subject=")


def told(home: Page) -> dict[str, list[str]]:
    """The headers of the last visit, by name in lower case with hyphens: as a program behind a gateway sees them."""
    seen: dict[str, list[str]] = {}
    for name, value in home.visits[-1]:
        seen.setdefault(name.lower().replace("_", "-"), []).append(value)
    return seen


@pytest.mark.parametrize("address", ["127.0.0.1", "[::1]"])
def test_a_device_gets_the_page_and_the_page_sees_who(quince: Cottage, at: Front, home: Page, address: str) -> None:
    """If this fails, the family stands outside, or the page does not know who came."""
    status, shown = device(quince).visits(at, address=address, path="/garden?bed=2")
    assert (status, GREETING in shown, '"/garden?bed=2"' in shown) == (200, True, True)
    seen = told(home)
    assert re.fullmatch(r"CN=[a-z0-9]{8}\.quince\.example", subject(quince))
    assert seen[DEVICE_HEADER.lower()] == [subject(quince)]
    assert seen[SERIAL_HEADER.lower()] == [quince.serials[LAPTOP].upper()]
    assert seen[VERIFY_HEADER.lower()] == ["SUCCESS"]
    assert seen["host"] == [f"{HOST}:{at.facts.port}"]


FORGED = (
    *(f"{name}: CN=odile" for name in (DEVICE_HEADER, SERIAL_HEADER, VERIFY_HEADER)),
    *(f"{name}: CN=odile" for name in (DEVICE_HEADER.upper(), SERIAL_HEADER.lower())),
    *(f"{name.replace('-', '_')}: CN=odile" for name in (DEVICE_HEADER, SERIAL_HEADER, VERIFY_HEADER)),
    *(f"{name}: 198.51.100.66" for name in ("X-Forwarded-For", "X-Forwarded-Proto")),
    "Forwarded: for=198.51.100.66",
    f"Connection: {DEVICE_HEADER}, close",
)
LENIENT = "underscores_in_headers on; ignore_invalid_headers off;"
NEIGHBOUR = """
    server {{
        listen 127.0.0.1:{port} ssl default_server;
        ssl_certificate "{folder}/gateway-certificate.pem";
        ssl_certificate_key "{folder}/gateway-key.pem";
        ssl_client_certificate "{folder}/ca-certificate.pem";
        ssl_verify_client on;
        {more}
        return 404;
    }}
"""
"""Another server of the household's on the same port, which knows the CA and has no list."""


def neighbour(facts: WebFacts, more: str = "") -> str:
    """Another server for the port of ours."""
    return NEIGHBOUR.format(port=facts.port, folder=facts.folder, more=more)


@pytest.mark.parametrize("by_address", [False, True])
def test_a_name_cannot_be_forged(
    quince: Cottage, facts: WebFacts, home: Page, tmp_path: Path, *, by_address: bool
) -> None:
    """If this fails, a device tells the page that it is another one; all around the block is as lenient as can be.

    RFC 3875 section 4.1.18: a program behind a gateway cannot tell a hyphen in a header's name from an underscore.
    """
    if by_address:
        facts = replace(facts, host="127.0.0.1")
    laptop, named = device(quince), ("-noservername",) if by_address else ("-servername", HOST)
    with front(facts, tmp_path / "nginx", first=neighbour(facts, LENIENT) if by_address else LENIENT) as at:
        # Before the Host header nginx does not know yet which server it is for, and goes by the first one's settings.
        headers = (*FORGED, "Un_related: seen", f"Host: {facts.host}")
        assert GREETING in laptop.speaks(at, laptop.credential(tmp_path), headers, *named)
    seen = told(home)
    assert seen[DEVICE_HEADER.lower()] == [subject(quince)]
    assert seen[SERIAL_HEADER.lower()] == [quince.serials[LAPTOP].upper()]
    assert seen[VERIFY_HEADER.lower()] == ["SUCCESS"]
    assert seen["x-forwarded-for"] == ["127.0.0.1"]
    assert seen["x-forwarded-proto"] == ["https"]
    assert seen["connection"] == ["close"]
    assert "forwarded" not in seen
    assert ("un-related" in seen) == by_address


@pytest.mark.parametrize("kept", [True, False])
def test_nobody_slips_in_by_a_neighbour(
    quince: Cottage, facts: WebFacts, home: Page, tmp_path: Path, *, kept: bool
) -> None:
    """If this fails, a stopped device gets in by naming no server in TLS, so that another one looks at it.

    Without the line that is against it, it does get in: that is what the second half shows.
    """
    (Path(facts.folder) / LIST_PEM).write_bytes(quince.lists["laptop-stopped"].read_bytes())
    block = server_block(facts)
    line = f'if ($ssl_server_name != "{HOST}") {{ return 421; }}'
    assert line in block
    with front(
        facts, tmp_path / "nginx", first=neighbour(facts), block=block if kept else block.replace(line, "")
    ) as at:
        status, _ = device(quince).visits_address(at, "--header", f"Host: {HOST}")
        assert device(quince).visits(at)[0] == 400
    assert (status, len(home.visits)) == ((421, 0) if kept else (200, 1))


def test_nobody_comes_without_a_certificate(quince: Cottage, at: Front, home: Page) -> None:
    """If this fails, the home's pages are open to the world."""
    status, shown = Visitor(quince.authority).visits(at)
    assert (status, "No required SSL certificate was sent" in shown) == (400, True)
    assert home.visits == []


def test_a_stopped_device_stands_outside_until_let_back_in(quince: Cottage, at: Front, home: Page) -> None:
    """If this fails, a stolen laptop goes on seeing the home, or a found one never does again."""
    laptop, tablet = device(quince), device(quince, TABLET)
    assert laptop.visits(at)[0] == 200
    at.deliver(quince.lists["laptop-stopped"].read_bytes())
    assert (laptop.visits(at)[0], tablet.visits(at)[0]) == (400, 200)
    assert at.server.said().count(REVOKED) == 1
    at.deliver(quince.lists["laptop-back"].read_bytes())
    assert laptop.visits(at)[0] == 200
    assert len(home.visits) == 3


def test_an_overdue_list_locks_everybody_out(quince: Cottage, made: Made, at: Front, home: Page) -> None:
    """If this fails, nginx no longer does what the app warns of, and the warning on the board is wrong."""
    at.deliver(made.overdue)
    assert (device(quince).visits(at)[0], device(quince, TABLET).visits(at)[0]) == (400, 400)
    assert at.server.said().count(OVERDUE) == 2
    assert home.visits == []


def test_a_foreign_authority_of_the_same_name_is_nobody(quince: Cottage, at: Front, home: Page, tmp_path: Path) -> None:
    """If this fails, whoever can type the household's name makes passes for it."""
    openssl = needs("openssl")
    name = ask((openssl, "x509", "-in", quince.authority, "-noout", "-subject", "-nameopt", "compat")).said
    key = ("-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes")
    ca, ca_key, leaf, leaf_key = (tmp_path / one for one in ("ca.pem", "ca.key", "leaf.pem", "leaf.key"))
    own = ("-subj", name.strip().removeprefix("subject="), "-keyout", ca_key, "-out", ca)
    assert ask((openssl, "req", "-x509", *key, *own)).code == 0
    own = ("-subj", f"/{subject(quince)}", "-keyout", leaf_key, "-out", leaf)
    signed = ("-CA", ca, "-CAkey", ca_key, "-addext", "extendedKeyUsage=clientAuth")
    assert ask((openssl, "req", "-x509", *key, *own, *signed)).code == 0
    container = tmp_path / "forged.p12"
    packed = (openssl, "pkcs12", "-export", "-in", leaf, "-inkey", leaf_key, "-out", container, "-passout", "pass:x")
    assert ask(packed).code == 0
    status, shown = Visitor(quince.authority, container, "x").visits(at)
    assert (status, "The SSL certificate error" in shown) == (400, True)
    assert home.visits == []


def test_it_answers_to_a_former_name_while_a_bundle_carries_it(
    quince: Cottage, facts: WebFacts, home: Page, tmp_path: Path
) -> None:
    """If this fails, a device with an older bundle finds a page that is not there, or a stray one is let in.

    The certificate of this house has one name, so that the other is asked for with the gateway believed unseen.
    """
    two = replace(facts, former=("door.quince.example",))
    with front(two, tmp_path / "nginx") as at:
        assert device(quince).visits(at)[0] == 200
        known = ("--insecure", "--resolve", f"door.quince.example:{at.facts.port}:127.0.0.1")
        laptop = device(quince)
        assert laptop.asks(f"https://door.quince.example:{at.facts.port}/", *known)[0] == 200
        assert laptop.visits(at, "--header", "Host: doorXquince.example")[0] == 421
    assert len(home.visits) == 2


def test_it_answers_to_its_own_name_only(quince: Cottage, at: Front, home: Page) -> None:
    """If this fails, a page elsewhere can have a browser speak to the home under its own name."""
    status, _ = device(quince).visits(at, "--header", "Host: away.quince.example")
    assert (status, home.visits) == (421, [])


def test_a_softened_front_door_has_another_behind_it(
    quince: Cottage, facts: WebFacts, home: Page, tmp_path: Path
) -> None:
    """If this fails, one edited word opens the home's pages to the world."""
    block = server_block(facts).replace("ssl_verify_client on;", "ssl_verify_client optional_no_ca;")
    with front(facts, tmp_path / "nginx", block=block) as at:
        assert Visitor(quince.authority).visits(at)[0] == 403
        assert device(quince).visits(at)[0] == 200
    assert len(home.visits) == 1


@pytest.mark.parametrize("version", ["-tls1_2", "-tls1_3"])
def test_nobody_is_let_in_on_an_earlier_visit(quince: Cottage, at: Front, tmp_path: Path, version: str) -> None:
    """If this fails, a device that was stopped takes an earlier connection up again and shows no certificate.

    RFC 5077 and RFC 8446 section 2.2; what `openssl s_client` prints: "New" or "Reused".
    """
    laptop, session = device(quince), tmp_path / "session.pem"
    credential, headers = laptop.credential(tmp_path), (f"Host: {HOST}", "Connection: close")
    named = (version, "-servername", HOST)
    assert GREETING in laptop.speaks(at, credential, headers, *named, "-sess_out", session)
    kept = ("-sess_in", session) if session.exists() else ()
    again = laptop.speaks(at, credential, headers, *named, *kept)
    assert GREETING in again
    assert ("New, TLSv1" in again, "Reused, TLSv1" in again) == (True, False)


def test_nginx_takes_every_variant(facts: WebFacts, tmp_path: Path) -> None:
    """If this fails, the householder's nginx refuses a file that the app wrote; run where no network is."""
    pages = ("http://127.0.0.1:8080", "https://[2001:db8:51::5]/house", "http://198.51.100.5:8123/a/b.c/")
    hosts = (HOST, "192.0.2.1", "2001:db8:192::1")
    for number, (host, shown) in enumerate((host, shown) for host in hosts for shown in pages):
        block = server_block(web_facts(host=host, folder=facts.folder, page=shown))
        conf = settings(tmp_path / f"nginx-{number}", block)
        user = () if os.geteuid() == 0 else ("-r",)
        command = (needs("nginx"), "-t", "-e", "stderr", "-p", conf.parent, "-c", conf)
        answer = ask(command, within=(needs("unshare"), *user, "-n"))
        assert (answer.code, "test is successful" in answer.said) == (0, True), answer.said


CHROMIUM = """\
set -eu
mount -t tmpfs none /etc/chromium
mkdir -p /etc/chromium/policies/managed
printf %s "$POLICY" >/etc/chromium/policies/managed/policy.json
exec "$@"
"""
FLAGS = (
    *("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-sync"),
    *("--disable-background-networking", "--disable-component-update", "--disable-dev-shm-usage", "--no-proxy-server"),
    f"--host-resolver-rules=MAP {HOST} 127.0.0.1,MAP * ~NOTFOUND",
)


def browsed(quince: Cottage, at: Front, root: Path, name: str) -> str:
    """Open the page in a new profile of Chromium, with the exported PKCS#12 imported; return what it shows.

    A browser asks which certificate to show; the policy AutoSelectCertificateForUrls answers for the family, in a
    file system of the test's own (mount_namespaces(7)), so the computer's own policies stay as they are.
    """
    chromium, laptop = needs("chromium"), device(quince)
    assert laptop.container is not None
    own = root / name
    store = own / ".pki" / "nssdb"
    store.mkdir(parents=True)
    where = ("-d", f"sql:{store}")
    for command in (
        (needs("certutil"), "-N", *where, "--empty-password"),
        (needs("certutil"), "-A", *where, "-n", "household", "-t", "C,,", "-i", quince.authority),
        (needs("pk12util"), "-i", laptop.container, "-W", laptop.words, *where),
    ):
        assert ask(command).code == 0
    policy = {"AutoSelectCertificateForUrls": [json.dumps({"pattern": at.url, "filter": {}})]}
    user = () if os.geteuid() == 0 else ("-r",)
    done = subprocess.run(
        (
            *(needs("unshare"), *user, "-m", "sh", "-c", CHROMIUM, "sh"),
            *(chromium, *FLAGS, f"--user-data-dir={own / 'profile'}", "--dump-dom", at.url),
        ),
        env={**os.environ, "HOME": str(own), "POLICY": json.dumps(policy), "DBUS_SESSION_BUS_ADDRESS": "disabled:"},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_a_browser_sees_the_page_until_its_device_is_stopped(
    quince: Cottage, at: Front, home: Page, tmp_path: Path
) -> None:
    """If this fails, the family's browsers do not get in with what the app exported, or go on after a theft."""
    assert GREETING in browsed(quince, at, tmp_path, "before")
    assert told(home)[DEVICE_HEADER.lower()] == [subject(quince)]
    at.deliver(quince.lists["laptop-stopped"].read_bytes())
    refused = browsed(quince, at, tmp_path, "stopped")
    assert (GREETING in refused, "400 Bad Request" in refused, REVOKED in at.server.said()) == (False, True, True)
    at.deliver(quince.lists["laptop-back"].read_bytes())
    assert GREETING in browsed(quince, at, tmp_path, "back")
