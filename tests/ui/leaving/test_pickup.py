"""A pick-up from the window: its code on the screen, a phone that follows it, and everything that closes it."""

from __future__ import annotations

import socket
from collections.abc import Callable, Iterator
from pathlib import Path
from urllib.request import ProxyHandler, build_opener

import pytest
import zxingcpp
from PIL import Image
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.firewalls import Firewall
from hearthkey.core.household import KEYRING
from hearthkey.core.tickets import LIFE
from hearthkey.pki import pkcs12
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.drag import DragOut
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.hand_over import HandOver
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import World, founded, opener
from tests.ui.leaving.household import FakeSticks, Picked

PATIENCE = 60_000
"""Milliseconds after which something is taken to be stuck; no verdict depends on less."""


class AtHome:
    """The page over the real household, in a network that is this computer alone."""

    def __init__(self, qtbot: QtBot, theme: Theme, folder: Path, clipboard: SecretClipboard) -> None:
        self.qtbot = qtbot
        self.world: World = founded().put_into(folder / "data")
        self.ways = Ways()
        self.errands = Errands(Tasks(), opener(self.world), folder / "data", place=KEYRING, service="practice")
        self.errands.open()
        self.wait_for(lambda: self.errands.last is not None)
        drag = DragOut(self.errands, Runtime(folder / "runtime"))
        self.page = HandOver(
            theme, self.errands, self.ways, drag, clipboard, FakeSticks(), folder=folder, pick=Picked(folder / "saved")
        )
        qtbot.addWidget(self.page)
        self.page.resize(1280, 718)
        self.page.show()
        last = self.errands.last
        assert last is not None
        self.serial = next(one.serial for one in last.passes if one.title == "Odile’s tablet")
        self.page.open(self.serial)

    def wait_for(self, what: Callable[[], bool]) -> None:
        """Wait until something is so."""
        self.qtbot.waitUntil(what, timeout=PATIENCE)

    def shows(self, side: Side) -> None:
        """Wait until the right side shows something."""
        self.wait_for(lambda: self.page.panel.shown() is side)

    def opened(self) -> str:
        """Open a pick-up on this computer, and return the link of the code on the screen."""
        self.page.panel.pickup.elsewhere.emit("127.0.0.1")
        self.shows(Side.TICKET)
        return scanned(self.page.panel.pickup.picture)

    def port_is_closed(self) -> bool:
        """Whether nobody listens any more where the last code led."""
        port = int(self.link.rsplit(":", 1)[1].split("/")[0])
        with socket.socket() as client:
            return client.connect_ex(("127.0.0.1", port)) != 0

    def close(self) -> None:
        """Close the household, as the window does on its way out."""
        self.closed = True
        self.errands.close()

    link = ""
    closed = False


@pytest.fixture
def home(qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard) -> Iterator[AtHome]:
    """Quince Cottage, open on Odile’s tablet."""
    made = AtHome(qtbot, theme, tmp_path, clipboard)
    yield made
    if not made.closed:
        made.errands.close()


def scanned(picture: QWidget) -> str:
    """What a camera reads from a widget as it is painted."""
    image = picture.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    rows = bytes(image.constBits())
    grey = Image.frombytes("L", (image.width(), image.height()), rows, "raw", "L", image.bytesPerLine())
    found = zxingcpp.read_barcodes(grey, formats=zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode))
    return found[0].text if found else ""


def fetch(link: str) -> bytes:
    """Fetch as a phone would, past any proxy."""
    with build_opener(ProxyHandler({})).open(link, timeout=20) as answer:
        read: bytes = answer.read()
        return read


def test_a_phone_follows_the_code_and_only_then_the_words_come(home: AtHome) -> None:
    """If this failed, nobody could pick anything up, or a photo of the screen would have both."""
    link = home.link = home.opened()
    card = home.page.panel.pickup
    assert card.link.text() == link
    assert card.clock.text() in {"10:00", "09:59", "09:58"}
    page = fetch(link).decode()
    home.wait_for(lambda: card.happened.text() == "The page was opened by 127.0.0.1.")
    name = page.split('<a href="', 1)[1].split('"', 1)[0].rsplit("/", 1)[1]
    file = fetch(f"{link}/{name}")
    home.shows(Side.OVER)
    assert card.link.text() == "" == scanned(card.picture)
    assert home.page.panel.over.told.text() == "It was picked up by 127.0.0.1. The ticket is closed."
    home.wait_for(home.port_is_closed)
    home.page.panel.over.passphrase.click()
    home.shows(Side.PASSPHRASE)
    secret = home.page.leaving.passphrase
    assert secret is not None
    pkcs12.check_mac(file, secret)


def test_the_code_may_be_covered_while_it_is_good_and_comes_back(home: AtHome) -> None:
    """If this failed, the words could not be said while the phone waits for them, or they would stand by the code."""
    link = home.link = home.opened()
    home.page.left.passphrase_button.click()
    home.shows(Side.PASSPHRASE)
    assert home.page.panel.pickup.link.text() == ""
    assert not home.port_is_closed()
    home.page.left.passphrase_button.click()
    home.shows(Side.TICKET)
    assert not home.page.panel.passphrase.words.words()
    assert scanned(home.page.panel.pickup.picture) == link


@pytest.mark.parametrize("how", ["closed", "left", "locked", "another way", "window"])
def test_whatever_ends_it_nothing_listens_afterwards(home: AtHome, how: str) -> None:
    """If this failed, a door of this computer would stay open behind the householder's back."""
    home.link = home.opened()
    assert not home.port_is_closed()
    {
        "closed": home.page.panel.pickup.close_button.click,
        "left": home.page.hide,
        "locked": home.ways.lock.emit,
        "another way": lambda: home.page.go(WayOut.CODES),
        "window": home.close,
    }[how]()
    home.wait_for(home.port_is_closed)
    assert home.page.panel.pickup.link.text() == "" or how == "window"


def test_ten_minutes_more_and_the_end(home: AtHome) -> None:
    """If this failed, a slow relative would be cut off, or a code would stay good for ever."""
    home.link = home.opened()
    card = home.page.panel.pickup
    card.more_button.click()
    home.wait_for(lambda: card.clock.text() > "19:00")
    home.world.clock.forward(seconds=2 * LIFE.total_seconds() + 1)
    home.shows(Side.OVER)
    assert "nobody picked it up" in home.page.panel.over.told.text()
    assert not home.page.panel.over.passphrase.isVisibleTo(home.page)
    home.wait_for(home.port_is_closed)


def test_a_computer_that_no_phone_reaches_says_so(home: AtHome) -> None:
    """If this failed, a code would be shown that leads nowhere."""
    home.page.go(WayOut.TICKET)
    home.shows(Side.TROUBLE)
    assert "no address that a phone at home can reach" in home.page.panel.trouble.told.text()
    assert "--address" not in home.page.panel.trouble.told.text()


def test_a_firewall_that_seems_to_be_on_is_named(home: AtHome) -> None:
    """If this failed, the householder would look for the fault in the phone."""
    home.world.firewall = Firewall.UFW
    link = home.link = home.opened()
    port = link.rsplit(":", 1)[1].split("/")[0]
    assert f"to any port {port} proto tcp" in home.page.panel.pickup.firewall.text()


def test_a_wrong_link_is_told_and_gets_nothing(home: AtHome) -> None:
    """If this failed, somebody could guess in silence."""
    link = home.link = home.opened()
    host, path = link.removeprefix("http://").split("/", 1)
    other = "a" if path[-1] != "a" else "b"
    with socket.create_connection(("127.0.0.1", int(host.rsplit(":", 1)[1]))) as client:
        client.sendall(f"GET /{path[:-1]}{other} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode("ascii"))
        home.wait_for(lambda: "tried a wrong link" in home.page.panel.pickup.happened.text())
