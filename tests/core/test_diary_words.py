"""What a diary entry is made of: kept and heard again exactly, and never anything but what the chain vouches for."""

from __future__ import annotations

import json
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.diary_words import heard, written
from hearthkey.core.phrases import AND, BESIDE, COMMA, SEMICOLON, Listing, Moment, Phrase, Polyglot, Style

NAMES = st.text("abcdefg", min_size=1, max_size=6)
PLAIN = st.one_of(st.text(max_size=12), st.integers(-(10**9), 10**9))
MOMENTS = st.builds(
    Moment, st.integers(0, 4 * 10**9).map(lambda at: datetime.fromtimestamp(at, UTC)), st.sampled_from(Style)
)


@st.composite
def phrases(draw: st.DrawFn, inner: st.SearchStrategy[object]) -> Phrase:
    """A phrase with as many facts as its template names."""
    names = draw(st.lists(NAMES, max_size=3, unique=True))
    template = "".join(f"{draw(st.text('xyz ', max_size=4))}{{{name}}}" for name in names) + "."
    return Phrase(template, {name: draw(inner) for name in names})


@st.composite
def listings(draw: st.DrawFn, inner: st.SearchStrategy[object]) -> Listing:
    """A few things in a row."""
    items = [str(one) if isinstance(one, int) else one for one in draw(st.lists(inner, max_size=3))]
    joint, comma = draw(st.sampled_from((AND, COMMA))), draw(st.sampled_from((COMMA, SEMICOLON, BESIDE)))
    return Listing([one for one in items if isinstance(one, str)], joint, comma)


VALUES = st.recursive(st.one_of(PLAIN, MOMENTS), lambda inner: st.one_of(phrases(inner), listings(inner)), max_leaves=8)
SENTENCES = st.one_of(phrases(VALUES), listings(VALUES))


def shape(fact: object) -> object:
    """What a text remembers, all the way in."""
    if isinstance(fact, Phrase):
        return "phrase", fact.template, {name: shape(one) for name, one in fact.facts.items()}
    if isinstance(fact, Listing):
        return "listing", [shape(one) for one in fact.items], fact.joint, fact.comma
    if isinstance(fact, Moment):
        return "moment", fact.at, fact.style
    return fact


@given(SENTENCES)
def test_what_is_written_is_heard_again(sentence: Phrase | Listing) -> None:
    """Broken if it fails: an entry says something else in another language than in English."""
    words = written(sentence)
    again = heard(words, str(sentence))
    assert again == sentence
    if words:
        assert shape(again) == shape(sentence)


@given(
    st.one_of(
        st.text(),
        st.recursive(
            st.none() | st.booleans() | st.floats() | st.text(max_size=5),
            lambda inner: (
                st.lists(inner, max_size=3)
                | st.dictionaries(
                    st.sampled_from(("phrase", "facts", "items", "comma", "joint", "at", "style", "x")),
                    inner,
                    max_size=4,
                )
            ),
            max_leaves=12,
        ).map(json.dumps),
    ),
    st.text(max_size=20),
)
def test_no_words_ever_say_another_sentence(words: str, sentence: str) -> None:
    """Broken if it fails: whoever can write to the register puts words into the diary that its chain never saw."""
    assert heard(words, sentence) == sentence


@pytest.mark.parametrize(
    "words",
    [
        '{"phrase":"Ines’s pass was stopped.","facts":{}}',
        '{"phrase":"{a}","facts":{"a":"Odile’s pass was revoked."}}',
        '{"phrase":"Odile’s pass was stopped{a}","facts":{"a":"."},"x":1}',
        '{"phrase":"{a!r}","facts":{"a":"x"}}',
        '{"phrase":"{a:>9999999999}","facts":{"a":"x"}}',
        '{"phrase":"{a.__class__}","facts":{"a.__class__":"x"}}',
        '{"phrase":"x","phrase":"Odile’s pass was stopped.","facts":{}}',
        '{"items":["Odile’s"," pass was stopped."],"comma":"","joint":""}',
        '{"at":"2026-13-01","style":"DAY"}',
        "[" * 5000,
        '{"phrase":',
        "",
    ],
)
def test_tampered_words_are_left_aside(words: str) -> None:
    """Broken if it fails: a row beside the diary changes what it says, or keeps it from being read."""
    sentence = "Odile’s pass was stopped."
    found = heard(words, sentence)
    assert found == sentence
    assert type(found) is str


def test_a_text_with_its_own_translations_stays_english() -> None:
    """Broken if it fails: a translation that stands in a row could say in German what nobody ever did."""
    polyglot = Polyglot("phone", {"de": "Fernseher"})
    words = written(Phrase("{what} was stopped.", {"what": polyglot}))
    assert "Fernseher" not in words
