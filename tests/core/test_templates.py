"""What a template may be called, how its files are called, and what may stand in its text."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.names import file_stem
from hearthkey.core.templates import (
    DEVICE,
    GATEWAY,
    LONGEST_FILE_NAME,
    LONGEST_TEXT,
    Template,
    check_text,
    checked,
    file_name,
)


def made(
    *, name: str = "Letter", of: str = DEVICE, stem: str = "{device}", ending: str = "txt", text: str = "Dear"
) -> Template:
    """A template as typed, one thing of it changed."""
    return checked(name=name, of=of, file_stem=stem, ending=ending, text=text)


def test_a_file_name_has_the_device_in_it() -> None:
    """Broken if it fails: two devices write the same file, and one of them gets the other's key."""
    assert file_name(made(stem="home-{device}", ending=".conf"), "ines-phone") == "home-ines-phone.conf"
    assert file_name(made(of=GATEWAY, stem="gateway", ending="")) == "gateway"


@pytest.mark.parametrize(
    ("stem", "code"),
    [
        ("home", "template-device-mark-missing"),
        ("{device}{device}", "template-device-mark-missing"),
        ("../{device}", "template-stem-unfit"),
        ("/etc/{device}", "template-stem-unfit"),
        ("..\\{device}", "template-stem-unfit"),
        ("c:{device}", "template-stem-unfit"),
        (".{device}", "template-stem-unfit"),
        ("-{device}", "template-stem-unfit"),
        ("a b{device}", "template-stem-unfit"),
        ("{device}{0}", "template-stem-unfit"),
        ("{device}\n", "ok"),
        ("a\x00{device}", "template-stem-unfit"),
        ("ﬁ{device}", "template-stem-unfit"),
        ("con.{device}", "template-file-name-reserved"),
        ("NUL.{device}", "template-file-name-reserved"),
        ("lpt1.{device}", "template-file-name-reserved"),
        ("{device}.", "template-file-name-reserved"),
        ("a" * 60 + "{device}", "template-file-name-too-long"),
    ],
)
def test_a_file_name_stays_a_file_name(stem: str, code: str) -> None:
    """Broken if it fails: a template writes outside its folder, or a file that some computer cannot open."""
    if code == "ok":
        assert made(stem=stem).file_stem == "{device}"
        return
    with pytest.raises(Refused) as refused:
        made(stem=stem)
    assert refused.value.code == code


@pytest.mark.parametrize("ending", ["a/b", "..", "a.", "a b", "x" * 17, "é", "{device}", "a\x00"])
def test_an_ending_is_letters_and_figures(ending: str) -> None:
    """Broken if it fails: the ending brings back what the beginning may not have."""
    with pytest.raises(Refused) as refused:
        made(ending=ending)
    assert refused.value.code == "template-ending-unfit"


def test_the_gateway_is_no_device() -> None:
    """Broken if it fails: the gateway's file is called "{device}"."""
    with pytest.raises(Refused) as refused:
        made(of=GATEWAY)
    assert refused.value.code == "template-device-mark-stray"
    with pytest.raises(Refused) as refused:
        made(of="person")
    assert refused.value.code == "template-kind-unknown"


@given(st.text(max_size=70), st.text(max_size=20), st.text(max_size=60))
def test_whatever_is_taken_is_one_plain_name(stem: str, ending: str, title: str) -> None:
    """Broken if it fails: some input slips through the checks and becomes a path, or too long a name."""
    try:
        template = made(stem=stem + "{device}", ending=ending)
    except Refused:
        return
    name = file_name(template, file_stem(title, "k7m2p9xw") + "-k7m2p9xw")
    assert len(name) <= LONGEST_FILE_NAME
    assert name.isascii()
    assert not set(name) & set('/\\:*?"<>|{} \0')
    assert name[0] not in ".-"
    assert name[-1] != "."


@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
def test_a_hidden_character_is_told_by_its_line(line_end: str) -> None:
    """Broken if it fails: a line of a pasted text reads otherwise than it works, or the wrong line is blamed."""
    with pytest.raises(Refused) as refused:
        check_text(line_end.join(["one", "", "thr\u202eee"]))
    assert refused.value.code == "template-hidden-character"
    assert refused.value.facts == {"line": 3, "character": "U+202E"}


@pytest.mark.parametrize("character", ["\x00", "\x0b", "\x1b", "\x7f", "\x85", "\u2028", "\u200f", "\ud800"])
def test_what_cannot_be_seen_is_refused(character: str) -> None:
    """Broken if it fails: control characters or half characters get into a file that a program reads."""
    with pytest.raises(Refused) as refused:
        check_text("a" + character)
    assert refused.value.code == "template-hidden-character"


def test_the_size_of_a_text_is_counted_in_octets() -> None:
    """Broken if it fails: the limit means something else for texts with accents."""
    check_text("x" * LONGEST_TEXT)
    for text in ("x" * (LONGEST_TEXT + 1), "é" * (LONGEST_TEXT // 2 + 1)):
        with pytest.raises(Refused) as refused:
            check_text(text)
        assert refused.value.code == "template-too-long"
    with pytest.raises(Refused) as refused:
        check_text(" \r\n")
    assert refused.value.code == "template-empty"
