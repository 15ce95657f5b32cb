"""The page of the sealed copies with three of them, one tried."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hearthkey.core.sealed import CopyNote
from hearthkey.ui.window import Window


def copies(window: Window) -> None:
    """Three copies on a stick."""
    window.ways.sealed.emit()
    seen = window.outside.errands.last
    if seen is None:
        return
    first = seen.at - timedelta(days=40)
    notes = tuple(
        CopyNote(
            first + timedelta(days=20 * number),
            f"{number}" * 64,
            "/media/QUINCE",
            f"{number}.sealed.tar",
            number,
            "",
            None if number else first,
        )
        for number in range(3)
    )
    window.outside.errands.seen.emit(replace(seen, sealed_copies=notes, copy_ready=True))
