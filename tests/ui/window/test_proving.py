"""Proving by keyboard, on a real household and a real server; the device is a client on loopback."""

from __future__ import annotations

import ipaddress
import threading
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.adapters import home_addresses
from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.bootstrap import open_house
from hearthkey.bootstrap.tickets import TicketRoom
from hearthkey.core import proofs
from hearthkey.core.home_addresses import Found, Medium
from hearthkey.core.household import FILE
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Ground, Way
from hearthkey.ui.drawer.proof_page import ProofPage
from hearthkey.ui.drawer.proof_steps import Stage
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.window import Window
from tests.proofs.doors import HERE, HOME, LOOPBACK, TUNNEL, fetch

CONTROL = Qt.KeyboardModifier.ControlModifier
Inside = Callable[[bool], None]


@pytest.fixture
def inside(monkeypatch: pytest.MonkeyPatch) -> Inside:
    """A computer with one address, at home; whether loopback counts as the tunnel is for the test to say."""
    found = (Found("wlan0", Medium.WIFI, ipaddress.ip_address("198.51.100.23"), 24),)
    monkeypatch.setattr(home_addresses, "home_addresses", lambda: found)
    monkeypatch.setattr(TicketRoom, "_bind", lambda self, _address: TicketServer(HERE, self.clock))

    def count(inside: bool) -> None:  # noqa: FBT001 - one word, one meaning
        by = Ground(LOOPBACK, (HOME,)) if inside else Ground(TUNNEL, (LOOPBACK,))
        monkeypatch.setattr(proofs, "ground", lambda *_, **__: by)

    return count


def press(key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    """Press a key wherever the focus is."""
    focus = QApplication.focusWidget()
    assert focus is not None
    QTest.keyClick(focus, key, modifier)


def phone(window: Window) -> Pass:
    """Odile's phone, which is in use and was never proved."""
    assert window.outside.errands.last is not None
    return next(one for one in window.outside.errands.last.passes if (one.person, one.device) == ("Odile", "phone"))


def at_the_door(window: Window, qtbot: QtBot) -> ProofPage:
    """Lead through the steps by keys until the code is shown."""
    window.board.select(phone(window).identity)
    window.board.setFocus()
    press(Qt.Key.Key_E, CONTROL)
    qtbot.waitUntil(lambda: isinstance(window.drawer.page(), ProofPage))
    page = window.drawer.page()
    assert isinstance(page, ProofPage)
    assert page.first() is page.next_button
    press(Qt.Key.Key_Return)
    press(Qt.Key.Key_Return)
    assert page.stage() is Stage.LINK
    qtbot.waitUntil(page.card.isVisible)
    return page


def opens(page: ProofPage) -> None:
    """The device opens the link, which leads to this computer's one address; here that is loopback."""
    link = page.card.link.text()
    host = link.removeprefix("http://").split("/")[0]
    here = link.replace("198.51.100.23", "127.0.0.1")
    threading.Thread(target=fetch, args=(here,), kwargs={"Host": host}).start()


def test_proving_without_a_mouse(window: Window, qtbot: QtBot, inside: Inside, cottage: Path) -> None:
    """Broken if it fails: whether it works from outside is found out by whoever is outside and needs it."""
    inside(False)  # noqa: FBT003 - one word, one meaning
    page = at_the_door(window, qtbot)
    opens(page)
    qtbot.waitUntil(lambda: "At home: nothing proved yet." in page.result.text())
    assert phone(window).proved is None
    inside(True)  # noqa: FBT003 - one word, one meaning
    press(Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not window.drawer.is_open)
    page = at_the_door(window, qtbot)
    opens(page)
    qtbot.waitUntil(page.done_button.isVisible)
    assert page.result.text() == "Odile’s phone is in: the link was opened through the tunnel, from 127.0.0.1."
    assert page.sign.sign is Sign.IN_USE
    assert phone(window).proofs[-1].way is Way.TUNNEL
    qtbot.waitUntil(page.done_button.hasFocus)
    press(Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not window.drawer.is_open)
    window.close()
    with open_house(cottage, place=FILE, writing=False) as house:
        assert [one.device for one in house.register.passes() if one.proofs] == ["phone"]


def test_closing_the_window_shuts_the_door(window: Window, qtbot: QtBot, inside: Inside) -> None:
    """Broken if it fails: a server listens on after the app has gone, or keeps it from going."""
    inside(True)  # noqa: FBT003 - one word, one meaning
    at_the_door(window, qtbot)
    assert any(one.name == "ticket-server" for one in threading.enumerate())
    window.close()
    assert all(one.name != "ticket-server" for one in threading.enumerate())


def test_what_was_told_is_asked_twice(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: a slip writes down for good what nobody said."""
    window.ways.prove.emit(phone(window).serial)
    page = window.drawer.page()
    assert isinstance(page, ProofPage)
    page.told.begin.click()
    qtbot.waitUntil(page.told.commit.isVisible)
    assert "cannot be taken back" in page.told.sentence.text()
    assert phone(window).proved is None
    page.told.commit.click()
    qtbot.waitUntil(page.done_button.isVisible)
    assert phone(window).proofs[-1].way is Way.TOLD
    assert window.footer.text().startswith("Odile told that Odile’s phone gets in")
    assert not window.footer.undo_button.isVisible()
