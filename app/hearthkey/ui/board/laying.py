"""Rules the sheet for the room that there is: columns, axis, labels."""

from __future__ import annotations

from datetime import timedelta
from typing import NamedTuple

from hearthkey.ui.board.axis import Zoom, fold, lay
from hearthkey.ui.board.columns import arrange
from hearthkey.ui.board.life import tr
from hearthkey.ui.board.names import Names
from hearthkey.ui.board.rows import Step
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.board.ticks import CLEAR, grid, labels
from hearthkey.ui.sight import Sight
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.theme import Theme

YEARS_FROM, YEARS_ON = 700, 450
"""Below this width of the board, or of its axis, the leaf of the years closes; pixels."""


class Room(NamedTuple):
    """The room for a sheet.

    Args:
        width: pixels.
        longest: names of people and of devices that have to fit.
        compact: leave the next step to the row's menu.
    """

    width: int
    longest: tuple[list[str], list[str]]
    compact: bool


def ruled(theme: Theme, names: Names, snapshot: Sight, room: Room, zoom: Zoom, base: int) -> Ruling:
    """The sheet ruled.

    Args:
        zoom: how much of time is shown.
        base: height of a row of people, pixels at normal type.
    """
    columns = arrange(
        theme,
        names,
        room.width,
        people=room.longest[0],
        devices=room.longest[1],
        steps=[tr(step.value) for step in Step],
        compact=room.compact,
    )
    end = snapshot.at + timedelta(days=3653) if snapshot.authority is None else snapshot.authority.not_after
    years = room.width >= YEARS_FROM and columns.axis.width >= YEARS_ON
    whole = fold(snapshot.at, end, columns.axis.width, years=years, since=snapshot.first_proof)
    axis = lay(whole, zoom)
    ticks = labels(axis, lambda text, strong: names.tick(spoken(text), strong), max(CLEAR, theme.px(CLEAR)))
    wall = None if snapshot.newest_list is None else snapshot.newest_list.next_update
    return Ruling(theme, names, columns, axis, ticks, grid(axis), wall, base, snapshot.due_days)
