"""Two libraries' servers and clients meet with what the app gave the gateway and the device."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from tests.peers.fronts import GNUTLS, OPENSSL, Library, Met, Peer, Why
from tests.peers.households import DEVICES, FOUNDED, KEPT_OUT, LAPTOP, Household
from tests.peers.opening import credential
from tests.peers.servers import Room

VERSIONS = ("1.2", "1.3")
LIBRARIES = (OPENSSL, GNUTLS)


@pytest.fixture(params=LIBRARIES, ids=lambda library: library.name)
def library(request: pytest.FixtureRequest) -> Library:
    """Each of them."""
    found: Library = request.param
    return found


@pytest.fixture(params=VERSIONS)
def peer(request: pytest.FixtureRequest, library: Library, room: Room, tmp_path: Path) -> Peer:
    """Each of them in each version of TLS."""
    return Peer(library, request.param, room, tmp_path)


@pytest.fixture
def newest(library: Library, room: Room, tmp_path: Path) -> Peer:
    """Each of them in TLS 1.3: what a client thinks of a server hangs on no version."""
    return Peer(library, "1.3", room, tmp_path)


def check_kept_out(peer: Peer, met: Met, why: Why) -> None:
    """The client got nothing back, the server let nobody in, and whoever names a reason names the right one."""
    words = peer.words(why)
    assert not met.got_in, met
    assert words.server in met.server
    assert words.client in met.client
    assert not any(end in met.server for end in peer.words(Why.IN).until)


@pytest.mark.parametrize("title", DEVICES)
def test_every_device_gets_in_unless_it_is_stopped(quince: Household, peer: Peer, tmp_path: Path, title: str) -> None:
    """If this fails, a device does not get in, is not stopped by the list, or stays out after it was let back in.

    Nothing but the list differs between the stages, so it is the list that keeps a device out.
    """
    carried = quince.devices[title]
    shown = credential(carried, Form.BUNDLE, tmp_path)
    for stage, stopped in KEPT_OUT.items():
        if title in stopped:
            check_kept_out(peer, peer.meet(quince.gateway[stage], shown, Why.STOPPED), Why.STOPPED)
        else:
            met = peer.meet(quince.gateway[stage], shown, Why.IN)
            assert met.got_in, (stage, met)
            assert peer.words(Why.IN).server.format(identity=carried.identity) in met.server


@pytest.mark.parametrize("form", list(Form))
def test_every_form_gets_in(quince: Household, room: Room, tmp_path: Path, form: Form) -> None:
    """If this fails, a form of the bundle opens and yet does not get its device in.

    One library is enough: what comes out of a form is the same for both.
    """
    shown = credential(quince.devices[LAPTOP], form, tmp_path)
    met = Peer(OPENSSL, "1.3", room, tmp_path).meet(quince.gateway[FOUNDED], shown, Why.IN)
    assert met.got_in, met


def test_nobody_gets_in_without_a_certificate(quince: Household, peer: Peer) -> None:
    """If this fails, the gateway's files let anybody in."""
    check_kept_out(peer, peer.meet(quince.gateway[FOUNDED], None, Why.NO_CERTIFICATE), Why.NO_CERTIFICATE)


def test_a_device_of_a_foreign_ca_is_refused(
    quince: Household, stranger: Household, peer: Peer, tmp_path: Path
) -> None:
    """If this fails, whoever makes a CA of their own walks in: the path leads to nobody known."""
    shown = credential(stranger.devices[LAPTOP], Form.BUNDLE, tmp_path)
    check_kept_out(peer, peer.meet(quince.gateway[FOUNDED], shown, Why.FOREIGN_DEVICE), Why.FOREIGN_DEVICE)


def test_a_gateway_of_a_foreign_ca_is_left(
    quince: Household, stranger: Household, newest: Peer, tmp_path: Path
) -> None:
    """If this fails, a device shows itself to a stranger's gateway of the same name."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    met = newest.meet(stranger.gateway[FOUNDED], shown, Why.FOREIGN_GATEWAY, authority=quince.authority)
    check_kept_out(newest, met, Why.FOREIGN_GATEWAY)
    assert quince.devices[LAPTOP].identity not in met.server


def test_a_gateway_of_another_name_is_left(quince: Household, newest: Peer, tmp_path: Path) -> None:
    """If this fails, a device enters whatever has a server certificate of the CA."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    met = newest.meet(quince.gateway[FOUNDED], shown, Why.OTHER_NAME, name="away.quince.example")
    check_kept_out(newest, met, Why.OTHER_NAME)
