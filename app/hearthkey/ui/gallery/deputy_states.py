"""The page for whoever takes over: with a set that is a year old, and with a set that is being given out."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hearthkey.core import deputy
from hearthkey.core.deputy import Part, PartNote, SetNote
from hearthkey.core.keepsakes import StopSetNote
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.formats.deputy_sheet import LetterFacts, PartFacts
from hearthkey.services.deputies import DrawnSet
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.deputy_errands import Papers
from hearthkey.ui.drawer.deputy_page import DeputyPage
from hearthkey.ui.window import Window

_WORDS = "ambush plum kettle ivory lantern gravel otter quilt meadow basil harbor wicker saddle tulip velvet"


def _about(seen: Snapshot) -> SetNote:
    made = seen.at - timedelta(days=300)
    tried = (made + timedelta(days=200), None, made + timedelta(days=290))
    notes = tuple(PartNote(number, str(number) * 64, one) for number, one in enumerate(tried, 1))
    return SetNote("A7F3", made, deputy.THRESHOLD, "age1", "locked", notes)


def _page(window: Window) -> DeputyPage:
    seen = window.outside.errands.last
    assert seen is not None  # noqa: S101 - a fault of ours, not the world's
    window.ways.back.emit()
    window.ways.deputy.emit()
    shown = window.drawer.page()
    assert isinstance(shown, DeputyPage)  # noqa: S101 - as above
    known = seen.keepsakes
    if known is not None:
        given = StopSetNote(seen.at - timedelta(days=200), known.list_number - 1, known.list_number)
        known = replace(known, stop_set=given)
    shown.show_snapshot(replace(seen, deputy_set=_about(seen), parts_fresh=True, keepsakes=known))
    return shown


def page(window: Window) -> None:
    """Parts that were made long ago, one of them never tried."""
    _page(window)


def sheets(window: Window) -> None:
    """Parts that were just drawn, the second one in sight."""
    shown = _page(window)
    seen = window.outside.errands.last
    assert seen is not None  # noqa: S101 - as above
    about = _about(seen)
    parts = tuple(Part("A7F3", number, 2, 3, Secret(bytes([number] * 16))) for number in (1, 2, 3))
    letter = LetterFacts(
        household="Quince Cottage",
        made=seen.at,
        list_end=seen.at + timedelta(days=700),
        gateway_end=seen.at + timedelta(days=720),
        authority_end=seen.at + timedelta(days=3600),
        device=None,
        set_name="A7F3",
        numbers=(2, 3),
        call="Tomasz, 01632 960123",
        language=Language.ENGLISH,
        practice=True,
    )
    told = tuple(PartFacts(one, Secret(_WORDS), seen.at, Language.ENGLISH, practice=True) for one in parts)
    shown.show_papers(Papers(DrawnSet(parts, about), letter, told))
    shown.sheets.which.take("2")
    shown.sheets.out = {"1"}
    shown.sheets.turn()
