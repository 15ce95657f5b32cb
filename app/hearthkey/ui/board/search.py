"""Finds rows by letters of their names."""

from __future__ import annotations

from collections.abc import Sequence


def words_of(text: str) -> tuple[str, ...]:
    """What was typed, as casefolded words; the possessive says nothing."""
    return tuple(word.removesuffix("'s").removesuffix("’s") or word for word in text.casefold().split())


def matches(words: Sequence[str], haystack: Sequence[str]) -> list[int]:
    """The rows in which every word is found; none for no words."""
    found = list(range(len(haystack))) if words else []
    for word in words:
        found = [number for number in found if word in haystack[number]]
    return found
