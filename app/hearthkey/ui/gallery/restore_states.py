"""The page that brings a household back, from its first look to its last; and the key on paper."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from hearthkey.core.deputy import Part
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import KEYRING
from hearthkey.core.paper import Gathered, PaperLine, lines_of
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.formats.paper_sheet import OlderKey
from hearthkey.services.restoring_inside import Inside
from hearthkey.ui.printing.key_paper_page import KeyPaperPage
from hearthkey.ui.restore_errands import Opener, Source
from hearthkey.ui.restoring.page import RestorePage
from hearthkey.ui.window import Window

_CONTENT = b"\x30\x82\x03\xe8" + bytes(number % 251 for number in range(1000))
_COPY = Inside(
    household="Quince Cottage",
    made=datetime(2026, 5, 3, 17, 42, tzinfo=UTC),
    list_mark=42,
    devices=(
        "Ines’s phone",
        "Ines’s tablet",
        "Tomasz’s laptop",
        "Tomasz’s work laptop",
        "Odile’s phone",
        "Boiler engineer’s phone",
    ),
    withdrawn=2,
    sentence="Quince Cottage comes back as it was on 3 May 2026. What was done later is not here: who was stopped "
    "after that is taken over from the gateway at the first delivery. 1 bundle that waits has to be made anew: its key "
    "is in no copy.",
)
_PAPER = Inside(
    household="Quince Cottage",
    made=datetime(2026, 1, 30, 9, 5, tzinfo=UTC),
    list_mark=40,
    devices=(),
    withdrawn=1,
    sentence="",
    on_paper=True,
)
_BACK = "Quince Cottage was brought back from the sealed copy of 3 May 2026: 9 passes, 2 on the revocation list."
_BACK_FROM_PAPER = (
    "Quince Cottage was brought back from the paper of 30 January 2026: the key, the settings, and 1 pass on the "
    "revocation list."
)


def _page(window: Window) -> RestorePage:
    window.ways.restore.emit()
    return _shown(window)


def _shown(window: Window) -> RestorePage:
    page = window.pages.currentWidget()
    assert isinstance(page, RestorePage)  # noqa: S101 - a fault of ours, not the world's
    return page


def _lines() -> tuple[PaperLine, ...]:
    return lines_of(_CONTENT)


def begun(window: Window) -> None:
    """Nothing has been chosen."""
    _page(window)


def keyring_locked(window: Window) -> None:
    """The keyring does not answer; the key file is the other way."""
    page = _page(window)
    page.where.begin(KEYRING)
    page.where.show_trouble(Unavailable("keyring-locked"))


def half_read(window: Window) -> None:
    """One code was stained, and a slip was made while its lines were typed."""
    page = _page(window)
    lines = _lines()
    page.show_source(["scan-1.jpg"], Source(gathered=Gathered().with_lines(lines[:14] + lines[28:])))
    rows = [f"{one.number:02}  {' '.join(one.groups)}" for one in lines[14:18]]
    page.typed.field.setPlainText("\n".join([*rows[:2], rows[2].replace(rows[2][5], "Q", 1), rows[3]]))
    page.typed.look()


def wrong_words(window: Window) -> None:
    """The passphrase did not open it."""
    page = _page(window)
    page.show_source(["quince-cottage-2026-05-03-174201.sealed.tar"], Source(copy=Path("x.sealed.tar")))
    page.line.setText("some other words")
    page.show_trouble(Refused("wrong-passphrase"))


def by_parts(window: Window) -> None:
    """Two parts of one set, the second one with a slip."""
    page = _page(window)
    page.show_source(["quince-cottage-2026-05-03-174201.sealed.tar"], Source(copy=Path("x.sealed.tar")))
    page.openers.parts_fold.button.click()
    first, second = page.openers.parts.both
    first.words.setText("ambush plum kettle ivory lantern gravel otter quilt meadow basil harbor wicker saddle tulip")
    first.show_part(Part("A7F3", 1, 2, 3, Secret(bytes(16))))
    second.words.setText("ambush plumm kettle")
    second.show_trouble(Refused("deputy-word-unknown", place=2))


def done_by_parts(window: Window) -> None:
    """It is back, and whoever brought it back learns the passphrase when asking for it."""
    page = _page(window)
    page.show_source(["quince-cottage-2026-05-03-174201.sealed.tar"], Source(copy=Path("x.sealed.tar")))
    page.openers.parts_fold.button.click()
    page.show_inside(Opener(Secret("plum kettle ivory lantern gravel otter quilt")), _COPY, by_parts=True)
    page.show_done(Changes(_BACK))
    page.sheet.learned.button.click()


def inside(window: Window) -> None:
    """A sealed copy is open."""
    page = _page(window)
    page.show_source(["quince-cottage-2026-05-03-174201.sealed.tar"], Source(copy=Path("x.sealed.tar")))
    page.show_inside(Opener(Secret("")), _COPY)


def done(window: Window) -> None:
    """It is back."""
    _shown(window).show_done(Changes(_BACK))


def done_from_paper(window: Window) -> None:
    """It is back from paper, and nobody is in it yet."""
    page = _page(window)
    page.show_inside(Opener(Secret("")), _PAPER)
    page.show_done(Changes(_BACK_FROM_PAPER))


def key_paper(window: Window) -> None:
    """The page of codes."""
    window.ways.back.emit()
    window.ways.sealed.emit()
    sealed = window.drawer.page()
    sealed.paper_button.click()  # type: ignore[union-attr]  # it is the page of the sealed copies


def key_paper_of_two(window: Window) -> None:
    """The same while one CA follows another."""
    page = window.pages.currentWidget()
    assert isinstance(page, KeyPaperPage)  # noqa: S101 - as above
    assert page.facts is not None  # noqa: S101 - as above
    made = page.facts.contents.made
    page.number.take("0")
    page.show_facts(replace(page.facts, older=OlderKey(made - timedelta(days=12), made + timedelta(days=700))))


def key_paper_letters(window: Window) -> None:
    """The page of lines."""
    page = window.pages.currentWidget()
    assert isinstance(page, KeyPaperPage)  # noqa: S101 - as above
    page.number.take("1")
    page.turn()
