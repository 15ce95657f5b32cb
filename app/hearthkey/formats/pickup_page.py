"""The pages that a phone sees at a ticket: one screen in large type, without script, with nothing to load."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from hearthkey.core.families import Family
from hearthkey.core.kinds import WITHOUT_SETTINGS, DeviceKind, Kinds
from hearthkey.core.tickets import Offer, Verdict
from hearthkey.formats.pickup_texts import text
from hearthkey.formats.visitor import mismatch, suited

_STYLE = (
    ":root{color-scheme:light dark;--ink:#1b2327;--paper:#fbf8f1;--deed:#1f4f63;--on:#fff;"
    "--soft:#55605f;--rule:#cfc8b8;--warn:#8a3b12}"
    "@media(prefers-color-scheme:dark){:root{--ink:#efeae0;--paper:#14191b;--deed:#9fcfe0;--on:#10181c;--soft:#b3b6b0;"
    "--rule:#3c4548;--warn:#f0b48a}}"
    "*{box-sizing:border-box}"
    "body{margin:0;background:var(--paper);color:var(--ink);font:1.125rem/1.4 system-ui,sans-serif;"
    "overflow-wrap:anywhere}"
    "main{max-width:32rem;margin:0 auto;padding:1.25rem}"
    "h1{font:600 1.9rem/1.2 Georgia,serif;margin:0 0 1rem}"
    "h2{font-size:1rem;color:var(--soft);margin:1.25rem 0 .25rem}"
    "p{margin:.25rem 0}.soft{color:var(--soft)}"
    ".warn{border-left:.3rem solid var(--warn);padding-left:.75rem;margin:0 0 1rem}"
    "a{display:block;background:var(--deed);color:var(--on);border-radius:.5rem;padding:1rem;font-size:1.35rem;"
    "font-weight:600;text-align:center;text-decoration:none}"
    "a:focus-visible{outline:.2rem solid var(--ink);outline-offset:.2rem}"
    "ol{margin:0;padding-left:1.5rem}li{margin:.35rem 0}"
    "summary{padding:.6rem 0;color:var(--deed);font-weight:600}summary:focus-visible{outline:.2rem solid var(--ink)}"
    "dl{margin:0;border-top:1px solid var(--rule)}dt{color:var(--soft);font-size:1rem;margin-top:.4rem}"
    "dd{margin:0;font-family:ui-monospace,monospace;font-size:1rem}"
)
_HASH = base64.b64encode(hashlib.sha256(_STYLE.encode()).digest()).decode()
POLICY = (
    f"default-src 'none'; style-src 'sha256-{_HASH}'; img-src data:; base-uri 'none'; form-action 'none'; "
    "frame-ancestors 'none'"
)
"""Content Security Policy Level 3 (W3C): nothing is loaded or run; the one style sheet is known by its hash."""
HEADERS = (
    ("Cache-Control", "no-store"),
    ("Content-Security-Policy", POLICY),
    ("Cross-Origin-Resource-Policy", "same-origin"),
    ("Referrer-Policy", "no-referrer"),
    ("X-Content-Type-Options", "nosniff"),
    ("X-Frame-Options", "DENY"),
)
"""On every answer (RFC 9111 section 5.2.2.5, RFC 7034, Fetch standard "nosniff", Referrer Policy)."""

_MEDIA = {
    # RFC 7292 names no media type; this one and the profile's are from memory, not tried on a device.
    "pkcs12": "application/x-pkcs12",
    "profile": "application/x-apple-aspen-config",
    "archive": "application/zip",
}
_AT_ONCE = 3
"""Steps that stand on the page from the beginning; the others unfold, so that it stays one screen."""
_STATUS = {
    Verdict.PAGE: "200 OK",
    Verdict.FILE: "200 OK",
    Verdict.CLOSED: "410 Gone",
    Verdict.WRONG: "404 Not Found",
    Verdict.OUTSIDE: "403 Forbidden",
}


@dataclass(frozen=True)
class PickUp:
    """What the page of a ticket is about.

    Args:
        person, device: whose, and which.
        kind: of the device.
        kinds: all of them, for a device that is certainly another one.
        server: where the device connects to, which is the gateway's IKE ID too.
        identity: the device's own IKE ID.
        path: of the page, with the token in it; the files lie below.
        offers: what can be picked up.
    """

    person: str
    device: str
    kind: DeviceKind
    kinds: Kinds
    server: str
    identity: str
    path: str
    offers: Sequence[Offer]


def status(verdict: Verdict) -> str:
    """The status line's code and reason (RFC 9110 section 15)."""
    return _STATUS[verdict]


def page_headers(language: str) -> tuple[tuple[str, str], ...]:
    """The header fields of a page."""
    return (("Content-Type", "text/html; charset=utf-8"), ("Content-Language", language), *HEADERS)


def file_headers(offer: Offer) -> tuple[tuple[str, str], ...]:
    """The header fields of the file: to be saved, never to be shown (RFC 6266)."""
    media = _MEDIA.get(offer.form, "application/octet-stream")
    return (("Content-Type", media), ("Content-Disposition", f'attachment; filename="{offer.name}"'), *HEADERS)


def pick_up(about: PickUp, *, seen: Family, language: str, minutes: int) -> bytes:
    """The page with the button.

    Args:
        seen: OS family of the phone that asks.
        minutes: that the ticket still lives, rounded up.
    """
    kind = _taken_for(about, seen)
    offer = suited(kind.forms, about.offers)
    name = text("device", language).format(person=about.person, device=about.device)
    life = text("once", language).format(minutes=minutes) if minutes > 1 else text("once-now", language)
    rows = [
        f'<p class="soft">{escape(text("for", language))}</p><h1><bdi>{escape(name)}</bdi></h1>',
        _warning(about.kind.family, seen, language),
        f'<a href="{escape(about.path)}/{escape(offer.name)}">{escape(text("get", language))}</a>',
        f'<p class="soft">{escape(life)}</p>',
        f"<h2>{escape(text('then', language))}</h2>",
        *_way(about, kind, offer, language),
        f"<p>{escape(text('back', language))}</p>",
    ]
    return page(name, language, "".join(rows))


def notice(verdict: Verdict, language: str) -> bytes:
    """A page that says why there is nothing to pick up: closed, wrong or outside."""
    head, more = text(verdict.value, language), text(f"{verdict.value}-more", language)
    return page(head, language, f"<h1>{escape(head)}</h1><p>{escape(more)}</p>")


def _warning(expected: Family, seen: Family, language: str) -> str:
    if not mismatch(expected, seen):
        return ""
    names = {"expected": text(f"family-{expected}", language), "seen": text(f"family-{seen}", language)}
    return f'<p class="warn" role="note">{escape(text("mismatch", language).format(**names))}</p>'


def _taken_for(about: PickUp, seen: Family) -> DeviceKind:
    """A browser may name another computer than it runs on, so what was expected stands until it cannot be."""
    unknown = about.kind.family is Family.UNKNOWN and seen is not Family.UNKNOWN
    return about.kinds.of_family(seen) if unknown or mismatch(about.kind.family, seen) else about.kind


def _way(about: PickUp, kind: DeviceKind, offer: Offer, language: str) -> list[str]:
    """What to do after the download: the first steps at once, the others and what is typed in them unfolded."""
    steps = [one.do for one in kind.steps(offer.form, language)]
    steps = steps or [text("open-other", language), text("words", language)]
    typed = _typed(about, kind, language) if offer.form in WITHOUT_SETTINGS else ""
    rows = [_numbered(steps[:_AT_ONCE], 1)]
    if len(steps) > _AT_ONCE:
        more = f"<summary>{escape(text('more', language))}</summary>"
        rest = _numbered(steps[_AT_ONCE:], _AT_ONCE + 1)
        rows.append(f"<details>{more}{rest}{typed}</details>")
    else:
        rows.append(typed)
    return rows


def _numbered(steps: Sequence[str], first: int) -> str:
    items = "".join(f"<li>{escape(step)}</li>" for step in steps)
    return f'<ol start="{first}">{items}</ol>'


def _typed(about: PickUp, kind: DeviceKind, language: str) -> str:
    """What the device may ask for, under its own labels where they are known."""
    pairs = kind.typed(about.server, about.identity, language)
    if not kind.fields:
        pairs = ((text("server", language), about.server), (text("identity", language), about.identity))
    rows = "".join(f"<dt>{escape(label)}</dt><dd>{escape(value)}</dd>" for label, value in pairs)
    return f"<h2>{escape(text('typed', language))}</h2><dl>{rows}</dl>"


def page(title: str, language: str, body: str) -> bytes:
    """A whole page.

    Args:
        title: shown by the browser, not escaped yet.
        language: of its texts.
        body: HTML.
    """
    # The empty icon keeps a browser from asking for /favicon.ico.
    return (
        f'<!doctype html><html lang="{language}"><head><meta charset="utf-8"><title>{escape(title)}</title>'
        '<meta name="viewport" content="width=device-width, initial-scale=1"><meta name="robots" content="noindex">'
        f'<link rel="icon" href="data:,"><style>{_STYLE}</style></head><body><main>{body}</main></body></html>\n'
    ).encode()
