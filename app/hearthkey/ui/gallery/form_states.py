"""The hand-over page of a device that takes a configuration profile."""

from __future__ import annotations

from dataclasses import replace

from hearthkey.core.connect_choices import BY_GATEWAY, ConnectChoices
from hearthkey.ui.window import Window

_AWAY = ConnectChoices(by_itself=True, own_wifi=("Quince attic", "Quince kitchen"), signer=BY_GATEWAY)


def profile(window: Window) -> None:
    """As it is for a Mac, with everything chosen that can be."""
    last = window.outside.errands.last
    if last is None:
        return
    waiting = next(one for one in last.passes if one.handed_over is None)
    window.ways.hand_over.emit(waiting.serial)
    rows = window.hand_over.left.rows
    window.hand_over.leaving.chosen = replace(waiting, kind="mac")
    rows.show_pass(window.hand_over.leaving.chosen)
    # Asked once more, so that it comes after what the page itself asked for.
    window.outside.errands.connect_choices(window, lambda _last: rows.choices.show_choices(_AWAY))
