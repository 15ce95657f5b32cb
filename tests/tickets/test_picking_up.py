"""The verb "ticket": the rehearsed bytes, offered at the chosen address, and the diary."""

from __future__ import annotations

import ipaddress
import threading
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from urllib.request import ProxyHandler, Request, build_opener

import pytest
import zxingcpp
from PIL import Image

from hearthkey.adapters import pictures
from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.bundle import Form
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.home_addresses import Found, Medium
from hearthkey.core.rehearsal import RehearsalFailed
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.core.tickets import LIFE, Ticket
from hearthkey.formats import link_code
from hearthkey.pki import pkcs12
from hearthkey.services.picking_up import PickingUp
from tests.fakes.home import Home, at_home
from tests.tickets.doors import ticket

ADDRESSES = (
    Found("lo", Medium.LOOPBACK, ipaddress.ip_address("127.0.0.1"), 8),
    Found("wlan0", Medium.WIFI, ipaddress.ip_address("198.51.100.23"), 24),
)


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data") as opened:
        yield opened


def picking_up(home: Home) -> PickingUp:
    """The verb, on loopback."""
    house = home.house
    return PickingUp(
        house.register,
        house.bundling,
        house.rehearsing,
        house.clock,
        house.dice,
        lambda: ADDRESSES,
        lambda address: TicketServer(address, house.clock),
        lambda: None,
        house.kinds,
    )


def fetch(link: str, **fields: str) -> bytes:
    """Fetch as a phone would, past any proxy."""
    with build_opener(ProxyHandler({})).open(Request(link, headers=fields), timeout=20) as answer:  # noqa: S310 - http
        got: bytes = answer.read()
        return got


def diary(home: Home) -> list[str]:
    """What the diary says of tickets."""
    return [one.sentence for one in home.house.register.diary() if one.verb == "ticket"]


def test_what_a_phone_gets_opens_with_the_passphrase(home: Home) -> None:
    """Broken if it fails: the phone leaves the house with a file that nobody rehearsed, or that does not open."""
    verb = picking_up(home)
    plan = verb.preview(home.newest("Odile tablet"), [Form.PKCS12], "127.0.0.1")
    with verb.open(plan) as opened:
        page = fetch(opened.link.reveal(), **{"Accept-Language": "de"}).decode()
        assert "tablet von Odile" in page
        for other in ("Ines", "Tomasz", "Quince Cottage", "phone", "laptop"):
            assert other not in page
        got = fetch(f"{opened.link.reveal()}/odile-tablet.p12")
        heard: list[Event] = []
        while not heard or heard[-1].what is not Happened.CLOSED:
            one = opened.hear(20)
            assert one is not None
            heard.append(one)
        assert [one.what for one in heard] == [Happened.OPENED, Happened.SENDING, Happened.CLOSED]
        assert opened.ending is Ending.PICKED_UP
    words = home.house.bundling.passphrase(home.newest("Odile tablet"))
    assert pkcs12.open_container(got, words, foreign=True).certificate
    assert words.reveal() not in page
    assert diary(home) == [
        (
            "The bundle of Odile’s tablet was rehearsed and offered for pick-up at This computer 127.0.0.1, "
            "as a PKCS#12 file."
        ),
        "The bundle of Odile’s tablet was picked up by 127.0.0.1.",
    ]


def test_the_best_address_is_taken_by_itself(home: Home) -> None:
    """Broken if it fails: the ticket opens where no phone can reach it."""
    plan = picking_up(home).preview(home.newest("Odile tablet"))
    assert plan.address.shown == "Wi-Fi 198.51.100.23"
    assert [str(one) for one in plan.near] == ["198.51.100.0/24", "2001:db8:51::/64"]


def test_closing_is_told_and_leaves_nothing(home: Home) -> None:
    """Broken if it fails: a closed window leaves an open door, or the diary does not know."""
    verb = picking_up(home)
    opened = verb.open(verb.preview(home.newest("Ines phone"), address="lo"))
    link = opened.link.reveal()
    opened.close()
    opened.close()
    assert opened.ending is Ending.WITHDRAWN
    with pytest.raises(OSError, match="refused"):
        fetch(link)
    assert diary(home)[-1] == "The ticket of Ines’s phone was closed before anybody picked it up."
    assert len(diary(home)) == 2
    assert "ticket-server" not in {one.name for one in threading.enumerate()}


def test_its_time_is_told_by_a_clock_that_nobody_turns_back(home: Home) -> None:
    """Broken if it fails: setting the computer's clock back keeps a ticket open."""
    verb = picking_up(home)
    with verb.open(verb.preview(home.newest("Ines phone"), address="lo")) as opened:
        end = opened.until
        assert opened.extend() == end + LIFE
        home.world.clock.forward(minutes=25)
        home.world.clock.turn(minutes=-24)
        while (one := opened.hear(20)) is not None and one.what is not Happened.CLOSED:
            pass
        assert opened.ending is Ending.EXPIRED
        with pytest.raises(Refused, match="ticket-closed"):
            opened.extend()
    assert diary(home)[-1] == "The ticket of Ines’s phone ended; nobody had picked it up."


def test_a_bundle_that_does_not_get_in_is_not_offered(home: Home) -> None:
    """Broken if it fails: a pass that the gateway refuses is handed out all the same."""
    verb = picking_up(home)
    plan = verb.preview(home.newest("Odile tablet"), address="lo")
    home.stop("Odile tablet")
    with pytest.raises(RehearsalFailed):
        verb.open(plan)
    assert diary(home) == []


def test_what_cannot_have_a_ticket(home: Home) -> None:
    """Broken if it fails: a ticket is opened for a key that is gone, a pass that ended, or a handful of pictures."""
    verb = picking_up(home)
    chosen = home.newest("Odile tablet")
    with pytest.raises(Refused, match="ticket-form-unfit"):
        verb.preview(chosen, [Form.PKCS12, Form.CODES])
    home.hand_over("Odile tablet")
    with pytest.raises(Refused, match="pass-handed-over"):
        verb.preview(home.newest("Odile tablet"))
    home.revoke("Ines phone", Reason.KEY_COMPROMISE)
    with pytest.raises(Refused, match="pass-not-alive"):
        verb.preview(home.newest("Ines phone"))


def test_an_address_that_went_away_is_told(home: Home) -> None:
    """Broken if it fails: leaving the Wi-Fi between two clicks ends in a trace."""
    verb = picking_up(home)
    with pytest.raises(HearthkeyError, match="ticket-address-gone"):
        verb.open(verb.preview(home.newest("Odile tablet"), address="198.51.100.23"))
    assert diary(home) == []


@pytest.mark.parametrize("address", ["198.51.100.23", "2001:db8:5151:5151:5151:5151:5151:5151"])
def test_the_code_is_small_and_is_read(address: str) -> None:
    """Broken if it fails: a camera cannot read the link from the screen (ISO/IEC 18004: version 8, level M)."""
    made: Ticket = ticket(address=ipaddress.ip_address(address), port=65535)
    modules = link_code.matrix(made.link)
    side = len(modules) - 8
    assert (side - 17) // 4 <= 5
    assert pictures.read_codes(pictures.png(modules)) == (made.link.reveal(),)
    seen = zxingcpp.read_barcode(as_seen(link_code.lines(modules, coloured=True)))
    assert seen is not None
    assert seen.text == made.link.reveal()
    assert str(seen.ec_level) == "M"


def as_seen(lines: tuple[str, ...]) -> Image.Image:
    """A terminal's block letters as a picture, four pixels a module."""
    dark = {" ": (0, 0), "▀": (1, 0), "▄": (0, 1), "█": (1, 1)}
    plain = [line.split("m", 1)[1].removesuffix("\x1b[0m") for line in lines]
    rows = [[dark[letter][half] for letter in line] for line in plain for half in (0, 1)]
    picture = Image.frombytes(
        "L", (len(rows[0]), len(rows)), bytes(0 if module else 255 for row in rows for module in row)
    )
    return picture.resize((picture.width * 4, picture.height * 4), Image.Resampling.NEAREST)


def test_a_link_longer_than_any_is_a_fault() -> None:
    """Broken if it fails: a code grows past what a camera reads, and nobody notices."""
    with pytest.raises(ValueError, match="9"):
        link_code.matrix(Secret("http://" + "a" * 160))


@pytest.mark.parametrize(
    ("kind", "form"), [("iphone", Form.PROFILE), ("android", Form.PKCS12), ("windows", Form.PKCS12)]
)
def test_a_ticket_offers_what_suits_the_device(home: Home, kind: str, form: Form) -> None:
    """If this failed, a phone that reads profiles would be given settings to type."""
    chosen = replace(home.newest("Odile tablet"), kind=kind)
    assert picking_up(home).preview(chosen, (), "lo").forms == (form,)
