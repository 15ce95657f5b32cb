"""Finds entries of the diary: by words, whatever their accents, and by the person or the device that they tell of."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass

from hearthkey.core.passes import Pass

_STROKES = str.maketrans(
    {"ł": "l", "ø": "o", "đ": "d", "ð": "d", "\N{LATIN SMALL LETTER DOTLESS I}": "i", "æ": "ae", "œ": "oe"}
)
"""What Unicode does not take apart (UAX 15)."""

_QUOTES = str.maketrans({"’": "'", "\N{LEFT SINGLE QUOTATION MARK}": "'"})

_WORD = re.compile(r"\w+")


def folded(text: str) -> str:
    """A text without capitals, accents and curly apostrophes, so that what is typed plainly finds it."""
    small = text.casefold().translate(_QUOTES)
    if not small.isascii():
        apart = unicodedata.normalize("NFKD", small).casefold()  # what was taken apart may be a capital only now
        small = "".join(one for one in apart if not unicodedata.combining(one)).translate(_STROKES)
    return small


def spots(text: str, words: Iterable[str]) -> list[tuple[int, int]]:
    """Where folded words stand in a text as it is written: begin and length of each, from left to right."""
    places: list[int] = []
    letters: list[str] = []
    for place, one in enumerate(text):
        apart = folded(one)
        letters.append(apart)
        places += [place] * len(apart)
    whole = "".join(letters)
    found = set()
    for word in words:
        at = whole.find(word)
        while word and at >= 0:
            begin = places[at]
            found.add((begin, places[at + len(word) - 1] + 1 - begin))
            at = whole.find(word, at + len(word))
    return sorted(found)


@dataclass(frozen=True, order=True)
class Subject:
    """Somebody or something that an entry tells of.

    Args:
        person: the name.
        device: empty where it is about the person alone.
        title: as sentences call it.
    """

    person: str
    device: str
    title: str


class Subjects:
    """Recognises people and their devices in sentences; a longer name is never taken for the shorter one in it."""

    def __init__(self, passes: Iterable[Pass]) -> None:
        self._by_word: dict[str, list[tuple[str, Subject]]] = {}
        known: dict[str, Subject] = {}
        for one in passes:
            known.setdefault(folded(one.title), Subject(one.person, one.device, one.title))
            known.setdefault(folded(one.person), Subject(one.person, "", one.person))
        for text, subject in known.items():
            first = _WORD.search(text)
            if first is not None:
                self._by_word.setdefault(first.group(), []).append((text, subject))
        for found in self._by_word.values():
            found.sort(key=lambda pair: len(pair[0]), reverse=True)

    def of(self, sentence: str) -> frozenset[Subject]:
        """Whom and what a sentence names."""
        text = folded(sentence)
        found, reached = set(), 0
        for word in _WORD.finditer(text):
            if word.start() < reached:
                continue
            for name, subject in self._by_word.get(word.group(), ()):
                end = word.start() + len(name)
                if text.startswith(name, word.start()) and not text[end : end + 1].isalnum():
                    found.add(subject)
                    reached = end
                    break
        return frozenset(found)


@dataclass(frozen=True)
class Wanted:
    """What is looked for; empty parts ask for nothing.

    Args:
        words: folded; each has to occur.
        person: whose entries, those of all their devices too.
        title: of the one device.
    """

    words: tuple[str, ...] = ()
    person: str = ""
    title: str = ""

    @property
    def anything(self) -> bool:
        """Whether every entry fits."""
        return not (self.words or self.person or self.title)

    def fits(self, text: str, subjects: frozenset[Subject]) -> bool:
        """Whether an entry fits.

        Args:
            text: its sentence and its date, folded.
            subjects: whom it tells of.
        """
        if self.person and all(one.person != self.person for one in subjects):
            return False
        if self.title and all(one.title != self.title for one in subjects):
            return False
        return all(word in text for word in self.words)


def wanted(text: str = "", *, person: str = "", title: str = "") -> Wanted:
    """What is looked for, from what was typed and chosen."""
    return Wanted(tuple(folded(text).split()), person, title)
