"""`hearthkey ticket` on the command line."""

from __future__ import annotations

import re
import threading
from pathlib import Path
from urllib.request import ProxyHandler, build_opener

import pytest

from hearthkey.cli.main import run
from hearthkey.core.secret import Secret
from hearthkey.services.ticket_desk import OpenTicket
from tests.cli.running import Cottage
from tests.fakes.home import founded, opener
from tests.judges import needs

LINK = re.compile(r"http://127\.0\.0\.1:[0-9]+/[a-z2-7]{26}")


@pytest.fixture
def cottage(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Cottage:
    """Quince Cottage with three waiting passes, its app not running."""
    needs("ip")
    return Cottage(tmp_path / "data", founded().put_into(tmp_path / "data"), capsys, tmp_path / "none")


def test_it_blocks_until_the_file_is_taken(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the verb ends too early, or never."""
    links: list[Secret[str]] = []
    heard = OpenTicket.hear

    def hear(self: OpenTicket, seconds: float) -> object:
        """A phone comes as soon as the verb listens."""
        if not links and seconds:
            links.append(self.link)
            threading.Thread(target=fetch, args=(self.link.reveal(),)).start()
        return heard(self, seconds)

    def fetch(link: str) -> None:
        # A phone that closes before it has read everything has not got it.
        with build_opener(ProxyHandler({})).open(f"{link}/odile-tablet.p12", timeout=20) as answer:
            answer.read()

    monkeypatch.setattr(OpenTicket, "hear", hear)
    ran = cottage.run("ticket", "Odile tablet", "--address", "127.0.0.1")
    assert ran.code == 0
    assert ran.out.startswith("It was picked up by 127.0.0.1. The ticket is closed.")
    assert "Caution: This computer 127.0.0.1 is this computer itself; no phone reaches it." in ran.err
    assert LINK.search(ran.err)
    assert not LINK.search(ran.out)
    assert "█" in ran.err
    told = cottage.run("diary")
    assert "The bundle of Odile’s tablet was picked up by 127.0.0.1." in told.out
    assert links[0].reveal() not in told.out


def test_words_and_link_are_never_on_one_screen(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: whoever looks over a shoulder has the file and what opens it."""

    def closed(self: OpenTicket, seconds: float) -> object:
        """Somebody presses Ctrl+C."""
        if seconds:
            raise KeyboardInterrupt
        return heard(self, seconds)

    heard = OpenTicket.hear
    monkeypatch.setattr(OpenTicket, "hear", closed)
    ran = cottage.run("ticket", "Ines phone", "--address", "lo", "--form", "bundle", "--form", "archive")
    assert ran.code == 130
    assert LINK.search(ran.err)
    words = cottage.run("show", "Ines phone", "--words").out.strip()
    assert words
    assert words not in ran.err + ran.out
    assert "closed before anybody picked it up" in cottage.run("diary").out


def test_nobody_came(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a script takes a ticket that ran out for one that was used."""
    heard = OpenTicket.hear

    def hear(self: OpenTicket, seconds: float) -> object:
        """Time flies."""
        if seconds:
            cottage.world.clock.forward(minutes=10)
        return heard(self, seconds)

    monkeypatch.setattr(OpenTicket, "hear", hear)
    ran = cottage.run("ticket", "Ines phone", "--address", "lo")
    assert ran.code == 3
    assert "The time is over and nobody picked it up." in ran.err
    assert "Open a new one" in ran.err


def test_the_plan_shows_every_address(cottage: Cottage) -> None:
    """Broken if it fails: the householder cannot see which address a phone can reach."""
    before = cottage.register()
    ran = cottage.run("ticket", "Ines phone", "--address", "lo", "--plan", "--json")
    assert ran.code == 0
    assert ran.told["address"] == "127.0.0.1"
    assert {"address": "127.0.0.1", "interface": "lo", "standing": "loopback"} in ran.told["addresses"]
    assert cottage.register() == before
    assert "no    This computer 127.0.0.1" in cottage.run("ticket", "Ines phone", "--address", "lo", "--plan").out


def test_a_wrong_address_is_refused(cottage: Cottage) -> None:
    """Broken if it fails: a typing slip opens a door somewhere else."""
    ran = cottage.run("ticket", "Ines phone", "--address", "192.0.2.254")
    assert ran.code == 3
    assert "192.0.2.254 is no address of this computer" in ran.err
    with pytest.raises(SystemExit):
        run(["ticket", "Ines phone", "--form", "codes"], opener(cottage.world))
