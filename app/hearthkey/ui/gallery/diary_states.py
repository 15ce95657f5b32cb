"""What the pictures show of the diary, of taking things back, and of the axis from near."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from hearthkey.ui.board.axis import Zoom
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL, Look
from hearthkey.ui.window import Window


def opened(window: Window) -> DiaryPage | None:
    """Open the diary."""
    window.ways.diary.emit()
    page = window.drawer.page()
    return page if isinstance(page, DiaryPage) else None


def found(window: Window) -> None:
    """Somebody looks for a device’s list."""
    page = opened(window)
    if page is not None:
        page.whose.setCurrentIndex(min(2, page.whose.count() - 1))
        page.line.setText("serial tray")
        page.find_next(1)


def torn(window: Window) -> None:
    """The end was cut off."""
    page, seen = opened(window), window.outside.errands.last
    if page is not None and seen is not None:
        page.line.clear()
        page.whose.setCurrentIndex(0)
        page.show_snapshot(replace(seen, diary_misfit=7))


def near(zoom: Zoom, window: Window) -> None:
    """The sheet from near."""
    window.drawer.shut()
    window.board.show_time(zoom)


STATES: tuple[tuple[str, Callable[[Window], object], tuple[Look, ...]], ...] = (
    ("diary", opened, PLAIN[:2]),
    ("diary-found", found, PLAIN[:2] + SPECIAL[:1]),
    ("diary-torn", torn, PLAIN[:1]),
    ("board-month", partial(near, Zoom.MONTH), PLAIN[:2] + SPECIAL[:1]),
    ("board-year", partial(near, Zoom.YEAR), PLAIN[:1] + SPECIAL[1:2]),
)
