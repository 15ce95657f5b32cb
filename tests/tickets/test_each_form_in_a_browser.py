"""Every form that a ticket hands over, as a phone's browser gets it: media type, file name and the rehearsed octets."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import BY_CA, ConnectChoices
from hearthkey.core.passes import Pass
from hearthkey.core.rehearsal import Rehearsal
from hearthkey.core.secret import Secret
from hearthkey.formats import profile
from hearthkey.pki import pkcs12, signed_message
from hearthkey.services import choosing_connect
from hearthkey.services.bundling import Written
from tests.fakes.home import Home, at_home
from tests.tickets.browser import ANDROID, PHONE, Browser, browser
from tests.tickets.test_browser import IPHONE
from tests.tickets.test_picking_up import picking_up

OFFERED = {
    Form.PROFILE: ("iphone", IPHONE, "application/x-apple-aspen-config", "odile-tablet.mobileconfig"),
    Form.PKCS12: ("android", ANDROID, "application/x-pkcs12", "odile-tablet.p12"),
    Form.ARCHIVE: ("android", ANDROID, "application/zip", "odile-tablet.zip"),
    Form.BUNDLE: ("linux", ANDROID, "application/octet-stream", "odile-tablet.bundle.toml"),
}
"""By form: the device's kind, who asks, and the media type and name that its system goes by.

The profile's media type is the one by which its system opens such a file (from memory); RFC 7292 names none for the
container; RFC 2046 section 4.5.1 has the one for what has no other.
"""


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data", quick=True) as opened:
        yield opened


@pytest.fixture
def rehearsed(home: Home, monkeypatch: pytest.MonkeyPatch) -> list[Written]:
    """What went through a rehearsal, in order."""
    seen: list[Written] = []
    genuine = home.house.rehearsing.rehearse

    def rehearse(form: Form, files: list[Written], passphrase: Secret[str], *, identity: str | None) -> Rehearsal:
        seen.extend(files)
        return genuine(form, files, passphrase, identity=identity)

    monkeypatch.setattr(home.house.rehearsing, "rehearse", rehearse)
    return seen


def tablet(home: Home, form: Form) -> Pass:
    """Odile's tablet, as if it were of the kind that takes the form."""
    return replace(home.newest("Odile tablet"), kind=OFFERED[form][0])


def picked_up(phone: Browser, link: str, form: Form, folder: Path) -> bytes:
    """Follow a link, tap the button, and return what lies in the phone's downloads then."""
    _, _, media, name = OFFERED[form]
    phone.go(link)
    assert phone.height() <= PHONE["height"]
    phone.tap("a")
    begun = phone.wait_for("Browser.downloadWillBegin")
    assert (begun["suggestedFilename"], begun["url"]) == (name, f"{link}/{name}")
    phone.wait_for("Browser.downloadProgress", state="completed", guid=begun["guid"])
    page, file = (phone.wait_for("Network.responseReceivedExtraInfo")["headers"] for _ in range(2))
    assert page["Content-Type"] == "text/html; charset=utf-8"
    assert file["Content-Type"] == media
    assert file["Content-Disposition"] == f'attachment; filename="{name}"'
    assert [one.name for one in folder.iterdir()] == [name]
    return (folder / name).read_bytes()


@pytest.mark.parametrize("script", [True, False], ids=["with script", "script off"])
def test_a_profile_arrives_as_it_was_rehearsed(
    home: Home,
    rehearsed: list[Written],
    tmp_path: Path,
    script: bool,  # noqa: FBT001 - by pytest
) -> None:
    """Broken if it fails: the phone shows text instead of offering to install, or gets other octets than were tried."""
    chosen = ConnectChoices(by_itself=True, own_wifi=("Quince",), signer=BY_CA)
    choosing_connect.keep(home.house.register, home.house.clock, chosen)
    verb = picking_up(home)
    one = tablet(home, Form.PROFILE)
    plan = verb.preview(one, (), "lo")
    assert plan.forms == (Form.PROFILE,)
    downloads = tmp_path / "downloads"
    downloads.mkdir()
    with browser(tmp_path / "profile") as phone, verb.open(plan) as opened:
        phone.open_page(agent=IPHONE, language="es", script=script, downloads=downloads)
        got = picked_up(phone, opened.link.reveal(), Form.PROFILE, downloads)
    assert [(written.name, written.data) for written in rehearsed] == [("odile-tablet.mobileconfig", got)]
    words = home.house.bundling.passphrase(one)
    authority = home.house.register.authority()
    assert authority is not None
    read = profile.read(signed_message.open_signed(got, (authority.certificate,)))
    assert (read.identity, read.authorities) == (one.identity, (authority.certificate,))
    assert pkcs12.open_container(read.container, words, foreign=True).certificate
    assert words.reveal().encode() not in got


def test_every_other_form_has_its_media_type_and_its_name(home: Home, rehearsed: list[Written], tmp_path: Path) -> None:
    """Broken if it fails: a system does not know what it was given, or a file is kept under a name it does not open."""
    verb = picking_up(home)
    with browser(tmp_path / "profile") as phone:
        for form in (Form.PKCS12, Form.ARCHIVE, Form.BUNDLE):
            downloads = tmp_path / form.value
            downloads.mkdir()
            with verb.open(verb.preview(tablet(home, form), [form], "lo")) as opened:
                phone.events.clear()
                phone.open_page(agent=OFFERED[form][1], language="en", script=False, downloads=downloads)
                got = picked_up(phone, opened.link.reveal(), form, downloads)
            assert got == rehearsed[-1].data
    assert len(rehearsed) == 3
