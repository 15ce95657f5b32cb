"""The page that proves: one sentence in large type, without script, nothing to load, and no word of the household."""

from __future__ import annotations

from html import escape

from hearthkey.core.proof_doors import Verdict
from hearthkey.formats import pickup_page
from hearthkey.formats.proof_texts import text

_STATUS = {
    Verdict.IN: "200 OK",
    Verdict.HOME: "200 OK",
    Verdict.HIDDEN: "200 OK",
    Verdict.CLOSED: "410 Gone",
    Verdict.WRONG: "404 Not Found",
}


def status(verdict: Verdict) -> str:
    """The status line's code and reason (RFC 9110 section 15)."""
    return _STATUS[verdict]


def headers(language: str) -> tuple[tuple[str, str], ...]:
    """The header fields."""
    return pickup_page.page_headers(language)


def page(verdict: Verdict, language: str) -> bytes:
    """The page for a verdict; what the link cannot know, such as whose device it is, does not stand there."""
    head, more = text(verdict.value, language), text(f"{verdict.value}-more", language)
    return pickup_page.page(head, language, f"<h1>{escape(head)}</h1><p>{escape(more)}</p>")
