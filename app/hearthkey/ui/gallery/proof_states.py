"""The page that proves in its states, and a sheet on which somebody was proved."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from ipaddress import ip_address, ip_network

from PySide6.QtCore import QBuffer, QByteArray, QIODevice
from PySide6.QtGui import QImage, QImageWriter

from hearthkey.core.home_addresses import HomeAddress, Medium, Standing
from hearthkey.core.passes import Pass
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.proofs import Ground, Proof, Seen, Way
from hearthkey.core.secret import Secret
from hearthkey.formats import link_code
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.proof_page import ProofPage
from hearthkey.ui.drawer.proof_steps import Stage
from hearthkey.ui.proof_errands import ShownProof
from hearthkey.ui.window import Window

HOME = ip_network("198.51.100.0/24")
WIFI = HomeAddress("wlan0", Medium.WIFI, ip_address("198.51.100.23"), HOME, Standing.HOME)
CABLE = HomeAddress("eth0", Medium.CABLE, ip_address("198.51.100.24"), HOME, Standing.HOME)
LINK = "http://198.51.100.23:49152/" + "quincejellyonthekitchenabc"
GROUND = Ground(ip_network("203.0.113.0/24"), (HOME,))


def drawn_code() -> bytes:
    """The link's code as PNG, drawn by Qt: the window's ring knows no other way."""
    modules = link_code.matrix(Secret(LINK))
    side = len(modules)
    drawn = QImage(side, side, QImage.Format.Format_Mono)
    drawn.fill(1)
    for y, row in enumerate(modules):
        for x, dark in enumerate(row):
            drawn.setPixel(x, y, int(not dark))
    room = QBuffer()
    room.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(room, QByteArray(b"png")).write(drawn.scaled(4 * side, 4 * side))
    return bytes(room.data().data())


def _seen(window: Window) -> Snapshot:
    snapshot = window.outside.errands.last
    assert snapshot is not None, "scenes begin when the household is open"  # noqa: S101 - a fault of ours, not the world's
    return snapshot


def _carried(window: Window) -> Pass:
    return next(one for one in _seen(window).passes if (one.person, one.device) == ("Odile", "phone"))


def _page(window: Window, stage: Stage) -> ProofPage:
    window.ways.back.emit()
    window.ways.prove.emit(_carried(window).serial)
    page = window.drawer.page()
    assert isinstance(page, ProofPage)  # noqa: S101 - a fault of ours, not the world's
    if stage >= Stage.LINK:
        page.stand_open(ShownProof(LINK, drawn_code(), WIFI, GROUND))
    page.go(stage)
    page.card.show_seconds(583)
    return page


def step(stage: Stage) -> Callable[[Window], None]:
    """One of the steps."""

    def begin(window: Window) -> None:
        _page(window, stage)

    return begin


def at_home(window: Window) -> None:
    """The link was opened in the Wi-Fi at home."""
    page = _page(window, Stage.LINK)
    page.hear(Event(Happened.AT_HOME, _seen(window).at, "198.51.100.45"))


def hidden(window: Window) -> None:
    """The gateway hides devices, and there are two addresses to choose from."""
    page = _page(window, Stage.LINK)
    seen = _seen(window)
    page.place.show_snapshot(replace(seen, pack_options=replace(seen.pack_options, masquerade=True)))
    page.place.offer((WIFI, CABLE))
    page.stand_open(ShownProof(LINK, drawn_code(), WIFI, replace(GROUND, hides=True)))
    page.card.show_seconds(583)
    page.hear(Event(Happened.HIDDEN, seen.at, "198.51.100.1"))


def refused(window: Window) -> None:
    """This computer has no address at home."""
    _page(window, Stage.CONNECT).go(Stage.LINK)


def told(window: Window) -> None:
    """What writing it down by hand would do."""
    _page(window, Stage.CONNECT).told.ask()


def proved(window: Window) -> None:
    """It was seen to get in."""
    page = _page(window, Stage.LINK)
    with_proof = _with_proofs(_seen(window))
    page.show_snapshot(with_proof)
    page.hear(Event(Happened.CLOSED, with_proof.at, "203.0.113.10", Ending.PROVED, Seen.TUNNEL))


def _with_proofs(snapshot: Snapshot) -> Snapshot:
    """Odile's phone as it is after half a year in which it was proved twice, and Ines's as she says it is."""
    ago = snapshot.at - timedelta(days=190)
    proofs = (
        Proof(ago + timedelta(days=12), Way.TUNNEL, "203.0.113.10"),
        Proof(snapshot.at - timedelta(days=20), Way.TUNNEL, "203.0.113.10"),
    )
    changes = {
        ("Odile", "phone"): {"not_before": ago, "handed_over": ago + timedelta(days=2), "proofs": proofs},
        ("Ines", "phone"): {"proofs": (Proof(snapshot.at, Way.TOLD),)},
    }
    passes = tuple(replace(one, **changes.get((one.person, one.device), {})) for one in snapshot.passes)  # type: ignore[arg-type]  # names of Pass
    return replace(snapshot, passes=passes)


def device(window: Window) -> None:
    """The page of a device that was proved."""
    window.ways.device.emit(_carried(window).identity)
    window.outside.errands.seen.emit(_with_proofs(_seen(window)))
