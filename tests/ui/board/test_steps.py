"""The steps from one order of rows to another lead there, and are few."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.ui.board.steps import Insert, Move, Remove, Step, steps

KEYS = st.lists(st.sampled_from("abcdefghijkl"), unique=True)


def taken(before: Sequence[str], after: Sequence[str]) -> list[str]:
    """What the steps make of the first order."""
    rows = list(before)
    for step in steps(before, after):
        match step:
            case Remove(start, end):
                assert 0 <= start < end <= len(rows)
                del rows[start:end]
            case Move(source, target):
                assert target not in {source, source + 1}
                rows.insert(target - (target > source), rows.pop(source))
            case Insert(start, end):
                assert start < end
                rows[start:start] = after[start:end]
    return rows


@given(KEYS, KEYS)
def test_steps_lead_from_any_order_to_any_other(before: list[str], after: list[str]) -> None:
    """The rows on the sheet would not be the register's."""
    assert taken(before, after) == after


MANY = [f"{number}" for number in range(10_000)]


@pytest.mark.parametrize(
    ("after", "wanted"),
    [
        (MANY, []),
        ([*MANY[:5000], "new", *MANY[5000:]], [Insert(5000, 5001)]),
        (["new", *MANY], [Insert(0, 1)]),
        ([*MANY, "new"], [Insert(10_000, 10_001)]),
        ([*MANY[:5000], *MANY[5001:]], [Remove(5000, 5001)]),
        ([*MANY[:10], *MANY[11:20], MANY[10], *MANY[20:]], [Move(10, 20)]),
        ([MANY[-1], *MANY[:-1]], [Move(9999, 0)]),
        ([], [Remove(0, 10_000)]),
    ],
)
def test_one_change_is_one_step(after: list[str], wanted: list[Step]) -> None:
    """Ten thousand rows would be told of because of one."""
    assert list(steps(MANY, after)) == wanted
