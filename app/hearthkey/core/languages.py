"""The languages in which the app speaks to people."""

from __future__ import annotations

from enum import StrEnum


class Language(StrEnum):
    """By the code of ISO 639-1, as in an HTML ``lang`` attribute (RFC 5646)."""

    ENGLISH = "en"
    GERMAN = "de"
    SPANISH = "es"
