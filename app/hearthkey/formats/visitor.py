"""Who stands at the door of a ticket: the phone's OS family and language, read from what its browser sends."""

from __future__ import annotations

import re
from collections.abc import Sequence

from hearthkey.core.families import Family
from hearthkey.core.languages import Language
from hearthkey.core.tickets import Offer

ENGLISH = Language.ENGLISH.value
LANGUAGES = tuple(one.value for one in Language)

_LONGEST_FIELD = 1000
"""Characters of a field that are looked at."""


# What browsers call themselves, from memory, not tried on a device. In this order: Android browsers name Linux too.
_MARKS = (
    (re.compile(r"\b(?:iPhone|iPad|iPod)\b"), Family.IOS),
    (re.compile(r"\bAndroid\b"), Family.ANDROID),
    (re.compile(r"\bWindows NT\b"), Family.WINDOWS),
    (re.compile(r"\bMacintosh\b"), Family.MAC),
    (re.compile(r"\bLinux\b"), Family.LINUX),
)
# A tablet or phone that asks for pages as a desk computer sees them names that computer (from memory).
_LOOKS_LIKE = {Family.IOS: {Family.IOS, Family.MAC}, Family.ANDROID: {Family.ANDROID, Family.LINUX}}
_RANGE = re.compile(r"([A-Za-z]{1,8})(?:-[A-Za-z0-9-]{1,40})?(?:\s*;\s*q=([01](?:\.[0-9]{0,3})?))?")


def family_of(agent: str) -> Family:
    """Tell the OS family from a User-Agent field (RFC 9110 section 10.1.5)."""
    head = agent[:_LONGEST_FIELD]
    return next((family for mark, family in _MARKS if mark.search(head)), Family.UNKNOWN)


def mismatch(expected: Family, seen: Family) -> bool:
    """Whether what asks is certainly another device than the one that the ticket is for."""
    if Family.UNKNOWN in {expected, seen}:
        return False
    return seen not in _LOOKS_LIKE.get(expected, {expected})


def suited(forms: Sequence[str], offers: Sequence[Offer]) -> Offer:
    """The file that suits a device best by the forms that it can take, the first one where it can take none."""
    return next((one for form in forms for one in offers if one.form == form), offers[0])


def language_of(field: str) -> str:
    """Choose a language by an Accept-Language field (RFC 9110 section 12.5.4), English where none of ours is liked."""
    liked: dict[str, float] = {}
    for part in field[:_LONGEST_FIELD].split(","):
        found = _RANGE.fullmatch(part.strip())
        if found is None:
            continue
        name, weight = found.group(1).lower(), float(found.group(2) or "1")
        if name in LANGUAGES:
            liked[name] = max(liked.get(name, 0.0), weight)
    best = max(liked, key=lambda name: liked[name], default=ENGLISH)
    return best if liked.get(best, 0.0) > 0 else ENGLISH
