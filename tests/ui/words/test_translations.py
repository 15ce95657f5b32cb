"""What translators made is whole, fits its source, and is up to date with the app."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

import PySide6
import pytest

from tests.words.extracting import LANGUAGES, TRANSLATIONS, stale

HOLE = re.compile(r"\{[^{}]*\}|%n|%L?\d")
TAKE_TURNS = (
    {"It is &gone", "Not &gone after all"},
    {"&Cover the code, show the words", "&Cover the words, show the code", "&Cover the words"},
    {"&Show the words", "&Show the words again"},
    {"&Bring it back", "To the &board"},
    {"&Give it the new certificate", "&Go on", "The &gateway has both"},
)
"""Buttons at one place of which only one is ever there."""

ACCELERATOR = re.compile(r"(?<!&)&(?!&)(\w)")
ENDINGS = (".", "…", ":", "?", ",", ";")
STRAIGHT = re.compile(r"\"|(?<=\w)'(?=\w)")
ASKED = re.compile(r"\b(?:bitte|por favor)\b|[!¡]", re.IGNORECASE)


class Translated(NamedTuple):
    """One message with its translation."""

    context: str
    source: str
    text: str
    kind: str


def translated(language: str) -> Iterator[Translated]:
    """All messages of a language."""
    path = TRANSLATIONS / f"hearthkey_{language}.ts"
    for context in ET.parse(path).getroot().iter("context"):  # noqa: S314 - our own file
        for message in context.iter("message"):
            node = message.find("translation")
            assert node is not None
            texts = [form.text or "" for form in node.iter("numerusform")] or [node.text or ""]
            for text in texts:
                yield Translated(
                    context.findtext("name", ""), message.findtext("source", ""), text, node.get("type", "")
                )


def _told(found: list[Translated]) -> str:
    lines = [f"{one.context}: {one.source!r} -> {one.text!r}" for one in found]
    return f"{len(lines)} messages, among them:\n" + "\n".join(lines[:40])


@pytest.mark.parametrize("language", LANGUAGES)
def test_everything_is_translated(language: str) -> None:
    """A message without a translation stands in English between the others."""
    found = [one for one in translated(language) if one.kind or not one.text.strip()]
    assert not found, _told(found)


@pytest.mark.parametrize("language", LANGUAGES)
def test_facts_stand_in_the_translation(language: str) -> None:
    """A hole that is missing hides a fact, and one that nobody fills in ends the app."""
    made = [one for one in translated(language) if one.text]
    found = [one for one in made if sorted(HOLE.findall(one.source)) != sorted(HOLE.findall(one.text))]
    assert not found, _told(found)


@pytest.mark.parametrize("language", LANGUAGES)
def test_accelerators_are_kept(language: str) -> None:
    """A button whose letter was lost cannot be reached by it."""
    made = [one for one in translated(language) if one.text]
    found = [one for one in made if bool(ACCELERATOR.search(one.source)) != bool(ACCELERATOR.search(one.text))]
    assert not found, _told(found)


@pytest.mark.parametrize("language", LANGUAGES)
def test_messages_end_as_they_do_in_english(language: str) -> None:
    """A lost "…" hides that something is asked first; a lost full stop or blank glues two sentences together."""
    made = [one for one in translated(language) if one.text and one.context != "dates"]
    found = [
        one
        for one in made
        if any(one.source.endswith(end) != one.text.endswith(end) for end in ENDINGS)
        or one.source[:1].isspace() != one.text[:1].isspace()
        or one.source[-1:].isspace() != one.text[-1:].isspace()
        or one.source.startswith(",") != one.text.startswith(",")
    ]
    assert not found, _told(found)


@pytest.mark.parametrize("language", LANGUAGES)
def test_signs_and_tone_are_those_of_the_glossary(language: str) -> None:
    """Straight quotation marks, begging and cheering are none of ours (resources/translations/GLOSSARY.md)."""
    made = [one for one in translated(language) if one.context != "dates"]
    found = [one for one in made if STRAIGHT.search(one.text) or ASKED.search(one.text)]
    assert not found, _told(found)


def test_translators_have_what_the_app_says() -> None:
    """A message that is not in the files is translated by nobody."""
    lupdate = Path(PySide6.__file__).with_name("lupdate")
    assert stale(lupdate) == [], "sh packaging/words.sh renews them"


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_letter_leads_to_two_buttons(language: str) -> None:
    """Of two buttons of one panel with the same letter neither is pressed by it."""
    twice: dict[tuple[str, str], set[str]] = {}
    for one in translated(language):
        for letter in ACCELERATOR.findall(one.text or one.source):
            twice.setdefault((one.context, letter.lower()), set()).add(one.source)
    found = {
        key: sources
        for key, sources in twice.items()
        if len(sources) > 1 and not any(sources <= turns for turns in TAKE_TURNS)
    }
    assert not found, found
