"""The page of the sealed copies with three of them, one tried; on a stick, and at the gateway."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hearthkey.core.sealed import AT_GATEWAY, CopyNote
from hearthkey.ui.gallery.gateway_states import STATES
from hearthkey.ui.window import Window


def copies(window: Window) -> None:
    """Three copies on a stick."""
    _show(window, "/media/QUINCE", "practice")


def at_gateway(window: Window) -> None:
    """Three copies at the gateway."""
    _show(window, f"{AT_GATEWAY}home.quince.example, /srv/hearthkey", "in-force")


def _show(window: Window, place: str, gateway: str) -> None:
    window.ways.sealed.emit()
    seen = window.outside.errands.last
    if seen is None:
        return
    first = seen.at - timedelta(days=40)
    notes = tuple(
        CopyNote(
            first + timedelta(days=20 * number),
            f"{number}" * 64,
            place,
            f"{number}.sealed.tar",
            number,
            "",
            None if number else first,
        )
        for number in range(3)
    )
    shown = replace(STATES[gateway](seen), sealed_copies=notes, copy_ready=True)
    window.outside.errands.seen.emit(shown)
