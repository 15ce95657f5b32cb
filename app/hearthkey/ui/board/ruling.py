"""Everything the sheet is ruled by at present: columns, axis, labels, grid, wall, heights of rows."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import NamedTuple

from hearthkey.ui.board.axis import Axis
from hearthkey.ui.board.columns import RUN, Columns, Mode
from hearthkey.ui.board.names import Names
from hearthkey.ui.board.ticks import Line, Tick
from hearthkey.ui.due import DueDay
from hearthkey.ui.entries import Entry, Fixture
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

COMFORTABLE, CLOSE, HOUSE = 39, 35, 30
"""Heights of rows at normal type; the second where that saves a scroll bar."""

BESIDE = 17
"""From the ribbon to the words, pixels at normal type."""


class Box(NamedTuple):
    """The height of a row, from top to bottom, in pixels.

    Args:
        before: the space between people, and the person's name where the sheet is stacked.
        body: the row itself; lines of a long name make it higher above its baseline.
        after: below it, and what a long name of a person hangs down.
    """

    before: int
    body: int
    after: int

    @property
    def height(self) -> int:
        """All of it."""
        return self.before + self.body + self.after


@dataclass(frozen=True)
class Ruling:
    """The sheet as it is ruled now.

    Args:
        wall: when nobody gets in any more without a new list; UTC, None if nobody knows.
        base: height of a row of people, pixels at normal type.
        dues: days on which something is to be done.
    """

    theme: Theme
    names: Names
    columns: Columns
    axis: Axis
    ticks: tuple[Tick, ...]
    grid: tuple[Line, ...]
    wall: datetime | None
    base: int
    dues: tuple[DueDay, ...] = ()

    @property
    def stacked(self) -> bool:
        """Whether names stand above the life lines."""
        return self.columns.mode is Mode.STACKED

    @property
    def ribbon(self) -> float:
        """Where the string hangs; whole pixels, so that it is crisp."""
        return round(self.columns.axis.left + self.axis.today)

    @property
    def run(self) -> float:
        """How wide the ribbon's run is: as wide as a bead and a little more."""
        return max(RUN, self.theme.px(RUN))

    @property
    def words_left(self) -> float:
        """Where the words on the life lines begin."""
        return self.ribbon + max(self.run / 2 + 4, self.theme.px(BESIDE))

    @property
    def words_right(self) -> float:
        """Where they have to end."""
        return self.columns.axis.right if self.stacked else self.columns.axis.right + 8

    def x(self, moment: datetime) -> tuple[float, int]:
        """Where a moment lies on the sheet, and whether it is cut off (see `Place`)."""
        place = self.axis.x(moment)
        return self.columns.axis.left + place.x, place.cut

    def box(self, entry: Entry, number: int) -> Box:
        """The height of a row.

        Args:
            number: of the row on its sheet; the first stands a little lower under the head.
        """
        house = isinstance(entry.source, Fixture)
        body, before, after = self.theme.px(HOUSE if house else self.base), 0, 0
        if entry.first:
            before = self.theme.px(8 if house else 4 if number else 7)
        if entry.last:
            after = self.theme.px(6 if house else 4)
        lines = len(self.device_lines(entry))
        if self.stacked:
            if entry.first:
                before += round(len(self.who_lines(entry)) * self.names.height(Role.PERSON))
            return Box(before, body + round(lines * self.names.height(Role.DEVICE)) - self.theme.px(6), after)
        if entry.last:
            after += self._name_hangs(entry, body)
        return Box(before, body + round((lines - 1) * self.names.height(Role.DEVICE)), after)

    def who_lines(self, entry: Entry) -> tuple[str, ...]:
        """The person's name in lines."""
        return self.names.lines(self.who_role(entry), entry.who, self.columns.who.width)

    def who_role(self, entry: Entry) -> Role:
        """The house speaks a little lower."""
        return Role.HOUSE if isinstance(entry.source, Fixture) else Role.PERSON

    def device_lines(self, entry: Entry) -> tuple[str, ...]:
        """The device's name in lines; the house's are short."""
        name = getattr(entry.source, "device", "")
        width = self.columns.device.width
        if self.stacked:
            width -= self.names.width(Role.DATE_STRONG, "30 Sep 2036") + 24
        return self.names.lines(Role.DEVICE, name, width)

    def _name_hangs(self, entry: Entry, body: int) -> int:
        """What a name of several lines needs below the last row of its person."""
        lines = self.who_lines(entry)
        if len(lines) == 1:
            return 0
        px, names = self.theme.px, self.names
        count = names.height(Role.SMALL) + px(4) if entry.count > 1 else 0
        needed = (len(lines) - 1) * names.height(Role.PERSON) + count + names.metrics(Role.PERSON).descent() + 4
        return max(0, round(needed - px(18) - (entry.count - 1) * body))
