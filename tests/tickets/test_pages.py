"""The phone's page as text: languages, families, escaping, and nothing else of the household."""

from __future__ import annotations

import base64
import hashlib
import re
from dataclasses import replace
from html.parser import HTMLParser
from string import Formatter

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.families import Family
from hearthkey.core.tickets import Offer, Verdict
from hearthkey.formats.pickup_page import POLICY, PickUp, file_headers, notice, pick_up
from hearthkey.formats.pickup_texts import TEXTS, text
from hearthkey.formats.visitor import LANGUAGES, family_of, language_of, mismatch, suited
from tests.fakes.kinds import KINDS

# User-Agent values as such browsers send them, from memory.
AGENTS = {
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_5 like Mac OS X) AppleWebKit/605.1.15 Mobile/15E148": Family.IOS,
    "Mozilla/5.0 (Linux; Android 14; K) AppleWebKit/537.36 Chrome/140.0.0.0 Mobile Safari/537.36": Family.ANDROID,
    "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 Chrome/140.0.0.0": Family.WINDOWS,
    "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 Version/18.5 Safari/605.1.15": Family.MAC,
    "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0": Family.LINUX,
    "": Family.UNKNOWN,
}
ABOUT = PickUp(
    person="Odile",
    device="tablet",
    kind=KINDS.find("android"),
    kinds=KINDS,
    server="home.quince.example",
    identity="k7m2.quince.example",
    path="/" + "a" * 26,
    offers=(Offer("pkcs12", "odile-tablet.p12"),),
)


class Seen(HTMLParser):
    """What a browser makes of a page."""

    def __init__(self, page: bytes) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.links: list[str] = []
        self.said = ""
        self.texts: set[str] = set()
        self._style = False
        self.feed(page.decode())

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """See the standard library."""
        self.tags.append(tag)
        self._style = tag == "style"
        self.links += [value or "" for name, value in attrs if name in {"href", "src"}]
        assert not [name for name, _ in attrs if name.startswith("on") or name == "style"]

    def handle_endtag(self, tag: str) -> None:
        """See the standard library."""
        self._style = self._style and tag != "style"

    def handle_data(self, data: str) -> None:
        """See the standard library."""
        self.said += "" if self._style else data + " "
        self.texts.add(data)


@pytest.mark.parametrize(("agent", "family"), AGENTS.items(), ids=[one.value for one in AGENTS.values()])
def test_families_are_told_apart(agent: str, family: Family) -> None:
    """Broken if it fails: a phone gets another system's steps."""
    assert family_of(agent) is family


def test_only_certain_mismatches_are_told() -> None:
    """Broken if it fails: a tablet that asks for desk pages is called the wrong device."""
    assert mismatch(Family.ANDROID, Family.IOS)
    assert not mismatch(Family.IOS, Family.MAC)
    assert not mismatch(Family.ANDROID, Family.LINUX)
    assert not mismatch(Family.UNKNOWN, Family.IOS)
    assert mismatch(Family.MAC, Family.IOS)


@pytest.mark.parametrize(
    ("field", "language"),
    [
        ("", "en"),
        ("de-AT,de;q=0.9,en;q=0.8", "de"),
        ("fr, es;q=0.4, en;q=0.3", "es"),
        ("fr-CA", "en"),
        ("en;q=0.1, DE;q=0.2", "de"),
        ("de;q=0, es;q=0", "en"),
        ("*;q=1, \xff, ;;;, de;q=9", "en"),
    ],
)
def test_language_of_the_phone(field: str, language: str) -> None:
    """Broken if it fails: grandmother reads English (RFC 9110 section 12.5.4)."""
    assert language_of(field) == language


@given(st.text())
def test_any_field_gives_a_language_and_a_family(field: str) -> None:
    """Broken if it fails: a strange browser meets a fault."""
    assert language_of(field) in LANGUAGES
    assert family_of(field) in Family


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("key", sorted(TEXTS))
def test_every_text_is_there_with_its_names_and_its_note(key: str, language: str) -> None:
    """Broken if it fails: a language lacks a text, or a name in it."""
    assert text(key, language).strip()
    names = {name for _, name, _, _ in Formatter().parse(TEXTS[key].en) if name}
    assert {name for _, name, _, _ in Formatter().parse(text(key, language)) if name} == names
    assert TEXTS[key].note.endswith(".")
    assert "'" not in text(key, language)


@pytest.mark.parametrize("language", LANGUAGES)
def test_page_says_whose_it_is_and_how_to_go_on(language: str) -> None:
    """Broken if it fails: the relative does not know whether this is for her, or what comes next."""
    page = Seen(pick_up(ABOUT, seen=Family.ANDROID, language=language, minutes=10))
    assert text("device", language).format(person="Odile", device="tablet") in page.said
    assert page.links == ["data:,", ABOUT.path + "/odile-tablet.p12"]
    assert page.tags.count("a") == 1
    steps = ABOUT.kind.steps("pkcs12", language)
    assert page.tags.count("li") == len(steps) > 3
    assert all(one.do in page.said for one in steps)
    assert page.tags.count("details") == 1
    assert {one.label(language) for one in ABOUT.kind.fields if one.value in {"server", "local-id"}} <= page.texts
    assert text("back", language) in page.said
    assert "script" not in page.tags
    assert "10" in page.said
    assert text("once-now", language) in Seen(pick_up(ABOUT, seen=Family.IOS, language=language, minutes=1)).said


def test_a_wrong_device_is_told() -> None:
    """Broken if it fails: grandmother's pass ends up on grandfather's phone."""
    assert "an Android device" in Seen(pick_up(ABOUT, seen=Family.IOS, language="en", minutes=9)).said
    assert "looks like" not in Seen(pick_up(ABOUT, seen=Family.ANDROID, language="en", minutes=9)).said


def test_the_form_that_suits() -> None:
    """Broken if it fails: a phone is handed a file that it cannot open, though another one lay there."""
    offers = (Offer("bundle", "a.bundle.toml"), Offer("pkcs12", "a.p12"), Offer("profile", "a.mobileconfig"))
    best = {name: suited(KINDS.find(name).forms, offers).form for name in ("iphone", "mac", "android", "windows")}
    assert best == {"iphone": "profile", "mac": "profile", "android": "pkcs12", "windows": "pkcs12"}
    assert suited(KINDS.find("linux").forms, offers).form == "bundle"
    assert suited(("codes",), offers) is offers[0]
    page = pick_up(replace(ABOUT, offers=offers), seen=Family.LINUX, language="en", minutes=9)
    assert ABOUT.path.encode() + b"/a.p12" in page


def test_a_device_that_is_certainly_another_one_gets_its_own_steps() -> None:
    """Broken if it fails: whoever goes on all the same reads the steps of a device that is not in the hand."""
    page = Seen(pick_up(ABOUT, seen=Family.IOS, language="en", minutes=9))
    assert KINDS.find("iphone").steps("pkcs12")[1].do in page.said
    unknown = Seen(pick_up(replace(ABOUT, kind=KINDS.find("other")), seen=Family.MAC, language="en", minutes=9))
    assert KINDS.find("mac").steps("pkcs12")[0].do in unknown.said


def test_a_file_that_the_kind_knows_nothing_of_has_plain_steps() -> None:
    """Broken if it fails: an archive on a phone comes without a word on what to do with it."""
    one = replace(ABOUT, offers=(Offer("archive", "odile-tablet.zip"),))
    page = Seen(pick_up(one, seen=Family.ANDROID, language="en", minutes=9))
    assert text("open-other", "en") in page.said
    assert text("words", "en") in page.said


HOSTILE = "<script>alert(1)</script>\"'&{person}</title>"


@given(st.text(max_size=64), st.text(max_size=64))
def test_names_are_never_markup(person: str, device: str) -> None:
    """Broken if it fails: a name that somebody typed runs on a relative's phone."""
    plain = Seen(pick_up(ABOUT, seen=Family.ANDROID, language="en", minutes=9)).tags
    for one in (replace(ABOUT, person=person, device=device), replace(ABOUT, person=HOSTILE, device=HOSTILE)):
        assert Seen(pick_up(one, seen=Family.ANDROID, language="en", minutes=9)).tags == plain


def test_the_one_style_sheet_is_the_one_that_is_allowed() -> None:
    """Broken if it fails: the page is bare, or a foreign style sheet is let in (CSP Level 3)."""
    styles = re.findall(rb"<style>(.*?)</style>", notice(Verdict.WRONG, "en"))
    assert len(styles) == 1
    assert base64.b64encode(hashlib.sha256(styles[0]).digest()).decode() in POLICY
    assert "unsafe" not in POLICY
    assert "script" not in POLICY


@pytest.mark.parametrize("verdict", [Verdict.CLOSED, Verdict.WRONG, Verdict.OUTSIDE])
@pytest.mark.parametrize("language", LANGUAGES)
def test_notices_know_nothing(verdict: Verdict, language: str) -> None:
    """Broken if it fails: a page for strangers names the household or anybody in it."""
    page = Seen(notice(verdict, language))
    assert text(verdict.value, language) in page.said
    assert page.links == ["data:,"]
    assert "quince" not in page.said.lower()


def test_the_file_is_saved_and_never_shown() -> None:
    """Broken if it fails: a browser displays a bundle, or runs it (RFC 6266)."""
    fields = dict(file_headers(ABOUT.offers[0]))
    assert fields["Content-Disposition"] == 'attachment; filename="odile-tablet.p12"'
    assert fields["Content-Type"] == "application/x-pkcs12"
    assert fields["X-Content-Type-Options"] == "nosniff"
