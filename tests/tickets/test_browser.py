"""A relative's whole way, in a real browser of a phone's size: code, page, file, passphrase."""

from __future__ import annotations

import io
import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image

from hearthkey.adapters import pictures
from hearthkey.core import proof_doors, tickets
from hearthkey.core.bundle import Form
from hearthkey.core.languages import Language
from hearthkey.core.ticket_events import Happened
from hearthkey.formats import link_code, pickup_page, proof_page
from hearthkey.pki import pkcs12
from tests.fakes.home import Home, at_home
from tests.tickets.browser import ANDROID, PHONE, browser
from tests.tickets.test_picking_up import picking_up

IPHONE = "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 Mobile/15E148 Safari/604.1"
"""As such a browser calls itself, from memory."""


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data") as opened:
        yield opened


def keep(name: str, png: bytes) -> None:
    """Keep a picture where somebody wants to look at it."""
    folder = os.environ.get("HEARTHKEY_PICTURES")
    if folder:
        (Path(folder) / name).write_bytes(png)


@pytest.mark.parametrize("script", [True, False], ids=["with script", "script off"])
def test_from_the_code_to_the_key(home: Home, tmp_path: Path, script: bool) -> None:  # noqa: FBT001 - by pytest
    """Broken if it fails: what works by the letter of HTTP does not work in a phone's browser."""
    verb = picking_up(home)
    downloads = tmp_path / "downloads"
    downloads.mkdir()
    plan = verb.preview(home.newest("Odile tablet"), [Form.PKCS12], "lo")
    with browser(tmp_path / "profile") as phone, verb.open(plan) as opened:
        (link,) = pictures.read_codes(pictures.png(link_code.matrix(opened.link)))
        phone.open_page(agent=ANDROID, language="de-DE,de", script=script, downloads=downloads)
        phone.go(link)
        assert "tablet von Odile" in phone.words("h1")
        keep(f"pick-up-{script}.png", phone.picture())
        assert phone.height() <= PHONE["height"]
        phone.tap("a")
        file = phone.wait_for("Browser.downloadWillBegin")
        assert file["suggestedFilename"] == "odile-tablet.p12"
        phone.wait_for("Browser.downloadProgress", state="completed")
        heard = [opened.hear(20) for _ in range(3)]
        assert [one.what for one in heard if one] == [Happened.OPENED, Happened.SENDING, Happened.CLOSED]
        phone.go(link)
        assert "Das ist jetzt zu" in phone.words("h1")
        # The empty icon of the page keeps the browser from asking for others.
        assert not [one for one in phone.events if "favicon" in str(one.get("params", ""))]
    words = home.house.bundling.passphrase(home.newest("Odile tablet"))
    got = (downloads / "odile-tablet.p12").read_bytes()
    assert pkcs12.open_container(got, words, foreign=True).certificate


def test_every_page_fits_a_small_phone(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the button lies below the screen, or a page scrolls sideways."""
    verb = picking_up(home)
    plan = verb.preview(home.newest("Odile tablet"), [Form.PKCS12], "lo")
    with browser(tmp_path / "profile") as phone, verb.open(plan) as opened:
        for language in ("en", "de", "es"):
            for agent, name in ((ANDROID, "right"), (IPHONE, "other")):
                phone.open_page(agent=agent, language=language, script=True, downloads=tmp_path)
                phone.go(opened.link.reveal())
                seen = phone.tell("Page.getLayoutMetrics")
                assert seen["cssContentSize"]["width"] <= PHONE["width"]
                button = phone.tell("DOM.getBoxModel", nodeId=phone.find("a"))["model"]["border"]
                assert max(button[1::2]) <= PHONE["height"]
                assert min(button[5] - button[1], 48) == 48
                png = phone.picture()
                assert Image.open(io.BytesIO(png)).size == (720, 1480)
                keep(f"page-{language}-{name}.png", png)
        home.world.clock.forward(minutes=10)
        phone.go(opened.link.reveal())
        keep("closed.png", phone.picture())
        assert "cerrado" in phone.words("h1")


NOTICES = {
    f"ticket-{verdict.value}-{language.value}": pickup_page.notice(verdict, language.value)
    for verdict in (tickets.Verdict.CLOSED, tickets.Verdict.WRONG, tickets.Verdict.OUTSIDE)
    for language in Language
} | {
    f"proof-{verdict.value}-{language.value}": proof_page.page(verdict, language.value)
    for verdict in proof_doors.Verdict
    for language in Language
}


def test_every_notice_fits_a_small_phone(tmp_path: Path) -> None:
    """Broken if it fails: what a phone is told, by a ticket or by a proof, runs out of its screen in some language."""
    with browser(tmp_path / "profile") as phone:
        phone.open_page(agent=ANDROID, language="en", script=False, downloads=tmp_path)
        for name, page in NOTICES.items():
            file = tmp_path / f"{name}.html"
            file.write_bytes(page)
            phone.go(file.as_uri())
            seen = phone.tell("Page.getLayoutMetrics")["cssContentSize"]
            assert seen["width"] <= PHONE["width"], name
            assert seen["height"] <= PHONE["height"], name
            assert len(phone.words("h1")) > len("<h1></h1>") + 3
            keep(f"{name}.png", phone.picture())
