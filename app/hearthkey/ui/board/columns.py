"""Where the columns of the sheet lie, measured with the type in use."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from hearthkey.ui.board.axis import NARROW, SMALLEST
from hearthkey.ui.board.names import Names
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

MARGIN, INSET, RUN = 20, 8, 22
"""Of the sheet; of the axis in its column, so that no mark is cut; width of the ribbon's run. Pixels."""

WIDE_FROM = 1100
"""Below this width the next step is found in the row's menu; pixels at normal type."""


class Mode(Enum):
    """How much stands in columns of its own."""

    WIDE = "wide"
    NARROW = "narrow"
    STACKED = "stacked"


@dataclass(frozen=True)
class Span:
    """From left to right, in pixels of the sheet."""

    left: float
    right: float

    @property
    def width(self) -> float:
        """Pixels."""
        return self.right - self.left


@dataclass(frozen=True)
class Columns:
    """One arrangement of the sheet.

    Args:
        mode: stacked means that names and dates stand above the life lines, over their whole width.
        who, device, axis, date, action: where text may stand, and where time runs.
        rule_right: where rules and washes end.
        edges: widths of the five columns of the table; 0 hides one.
    """

    mode: Mode
    who: Span
    device: Span
    axis: Span
    date: Span
    action: Span | None
    rule_right: float
    edges: tuple[int, int, int, int, int]

    @property
    def wash_left(self) -> float:
        """Where the wash of a selected row begins."""
        return self.device.left - 10 if self.mode is not Mode.STACKED else 8.0


def arrange(
    theme: Theme,
    names: Names,
    width: int,
    *,
    people: Iterable[str],
    devices: Iterable[str],
    steps: Iterable[str],
    compact: bool,
) -> Columns:
    """Arrange the columns for a width.

    Args:
        width: of the sheet with its margins, pixels.
        people, devices, steps: the texts that have to fit; longer names than a column may hold break.
        compact: leave the next step to the row's menu.
    """
    who = _column(names, Role.PERSON, people, floor=theme.px(116), cap=max(0.2 * width, 116))
    device = _column(names, Role.DEVICE, devices, floor=theme.px(98), cap=max(0.15 * width, 98))
    date = names.width(Role.DATE_STRONG, "30 Sep 2036") + 2
    action = max(theme.px(128), max((names.width(Role.DATE_STRONG, one) for one in steps), default=0) + theme.px(46))
    roomy = width >= WIDE_FROM and not compact
    if roomy and (wide := _columns(width, who, device, date, action)).axis.width >= sum(NARROW):
        return wide
    narrow = _columns(width, who, device, date, None)
    ahead = narrow.axis.width * (sum(NARROW[1:3]) - 72) / SMALLEST
    if narrow.axis.width >= SMALLEST and ahead >= theme.px(210):
        return narrow
    axis = Span(MARGIN, width - MARGIN)
    return Columns(Mode.STACKED, axis, axis, axis, axis, None, width - 12.0, (0, 0, width, 0, 0))


def _column(names: Names, role: Role, texts: Iterable[str], *, floor: float, cap: float) -> float:
    # Measuring costs; among the longest by letters is the widest by pixels, or near enough for its line to break.
    longest = sorted(set(texts), key=len, reverse=True)[:24]
    widest = max((names.width(role, one) for one in longest), default=0.0) + 1
    return min(max(widest, floor), max(cap, 0.5 * floor))


def _columns(width: int, who: float, device: float, date: float, action: float | None) -> Columns:
    gap = MARGIN if action is not None else MARGIN - 4
    margin = MARGIN if action is not None else MARGIN - 4
    device_left = MARGIN + who + gap
    axis_left = device_left + device + 10
    date_right = width - margin if action is None else width - margin - action
    axis_right = date_right - date - MARGIN
    first, second = round(device_left - 10), round(axis_left - INSET)
    third, fourth = round(axis_right + INSET), width if action is None else round(date_right + 10)
    return Columns(
        Mode.NARROW if action is None else Mode.WIDE,
        Span(MARGIN, MARGIN + who),
        Span(device_left, device_left + device),
        Span(round(axis_left), round(axis_right)),
        Span(date_right - date, date_right),
        None if action is None else Span(date_right + 24, width - margin),
        width - margin if action is not None else width - 12.0,
        (first, second - first, third - second, fourth - third, width - fourth),
    )
