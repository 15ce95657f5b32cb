"""Two libraries' servers and clients meet in the middle of the succession: nobody notices, and a stop stops."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.judges import needs
from tests.peers.fronts import GNUTLS, OPENSSL, PORT, Library, Peer, Why
from tests.peers.households import Carried, GatewayFiles
from tests.peers.opening import credential
from tests.peers.servers import LOOPBACK, Command, Room

OLD, NEW = "Ines’s phone, of the old CA", "Tomasz’s laptop, of the new CA"


def _openssl_serves(files: GatewayFiles, version: str) -> Command:
    """`s_server` reads one certificate and one list of a file, so it is given the others beside; openssl-s_server(1).

    A file of CAs may hold lists too (seen, OpenSSL 3.0).
    """
    both = files.folder / "cas-and-lists.pem"
    both.write_bytes(files.authority.read_bytes() + files.revocation_list.read_bytes())
    return (
        *(needs("openssl"), "s_server", "-accept", f"{LOOPBACK}:{PORT}", f"-tls{version.replace('.', '_')}", "-rev"),
        *("-cert", files.certificate, "-cert_chain", files.folder / "cross-certificate.pem", "-key", files.key),
        *("-CAfile", both, "-crl_check", "-x509_strict", "-Verify", "1", "-verify_return_error"),
    )


LIBRARIES = (replace(OPENSSL, serve=_openssl_serves), GNUTLS)


@dataclass(frozen=True)
class Halfway:
    """A household with two CAs.

    Args:
        devices: what two of them carry.
        trusted: the CA file that each of them has.
        before, after: the gateway's files, before and after both were stopped.
    """

    devices: dict[str, Carried]
    trusted: dict[str, Path]
    before: GatewayFiles
    after: GatewayFiles


@pytest.fixture(scope="module")
def halfway(tmp_path_factory: pytest.TempPathFactory) -> Halfway:
    """One device came before the next CA and knows nothing of it; one is through."""
    root = tmp_path_factory.mktemp("halfway")
    with at_home(root / "household", quick=True) as home:
        old_ca = root / "old.pem"
        old_ca.write_bytes(home.house.packing.pack()["ca-certificate.pem"].data)
        devices = {OLD: _carried(home, "Ines phone", root / "old")}
        home.house.succeeding.begin(PASSPHRASE)
        for _ in range(2):
            home.house.succeeding.go_on(told=True)
        home.add(EnrolRequest("Tomasz", "laptop", "linux", replace=True))
        devices[NEW] = _carried(home, "Tomasz laptop", root / "new")
        before = _pack(home, root / "before")
        for text in ("Ines phone", "Tomasz laptop"):
            home.stop(text)
        after = _pack(home, root / "after")
    return Halfway(devices, {OLD: old_ca, NEW: before.authority}, before, after)


def _carried(home: Home, text: str, folder: Path) -> Carried:
    chosen = home.newest(text)
    bundle = home.house.bundling.open(chosen)
    (written,) = home.house.bundling.write(bundle, Form.BUNDLE)
    folder.mkdir()
    path = folder / written.name
    path.write_bytes(written.data)
    return Carried(chosen.identity, bundle.passphrase.reveal(), {Form.BUNDLE: (path,)})


def _pack(home: Home, folder: Path) -> GatewayFiles:
    folder.mkdir()
    for file in home.house.packing.pack().files:
        if "/" not in file.name:
            (folder / file.name).write_bytes(file.data)
    return GatewayFiles(folder)


@pytest.mark.parametrize("library", LIBRARIES, ids=lambda library: library.name)
@pytest.mark.parametrize("title", [OLD, NEW])
def test_both_get_in_until_they_are_stopped(
    halfway: Halfway, library: Library, room: Room, tmp_path: Path, title: str
) -> None:
    """If this fails, a device turns away from the gateway half-way, or one CA's list lets in whom both stopped."""
    peer = Peer(library, "1.3", room, tmp_path)
    shown = credential(halfway.devices[title], Form.BUNDLE, tmp_path)
    met = peer.meet(halfway.before, shown, Why.IN, authority=halfway.trusted[title])
    assert met.got_in, met
    kept_out = peer.meet(halfway.after, shown, Why.STOPPED, authority=halfway.trusted[title])
    assert not kept_out.got_in, kept_out
    assert peer.words(Why.STOPPED).server in kept_out.server
