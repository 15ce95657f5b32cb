"""The day list in the order in which it is read: what costs somebody the way in first, and what is alike told once."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.duties import Act, Duty

ALIKE = 3
"""So many duties of one kind are told one by one. A choice of ours."""

LOSES = frozenset(
    {Act.SIGN_LIST, Act.RENEW_GATEWAY, Act.RENEW_PASS, Act.HAND_OVER, Act.GUEST_LEAVES, Act.DEVICES_FOLLOW}
)
"""Acts without which somebody stays outside from the day on that the duty names."""


@dataclass(frozen=True)
class More:
    """Duties of one kind beyond the first few.

    Args:
        act: what to do.
        duties: in the order of the list, two or more.
    """

    act: Act
    duties: tuple[Duty, ...]


def pressing(found: Iterable[Duty]) -> tuple[Duty, ...]:
    """Those whose day has come: by the day on which somebody stays outside, then the rest, then what is only unproved.

    The first is the one that the top line names, where that one's day has come.
    """
    return tuple(sorted(found, key=_rank))


def _rank(duty: Duty) -> tuple[int, datetime, str]:
    if duty.act in LOSES:
        return 0, duty.until, duty.key
    return (2 if duty.act is Act.PROVE else 1), duty.act_on, duty.key


def gathered(found: Sequence[Duty]) -> tuple[Duty | More, ...]:
    """The list with two or more of a kind beyond the first few in one entry, where the first of them would stand."""
    count = Counter(one.act for one in found)
    listed: list[Duty | More] = []
    seen: Counter[Act] = Counter()
    for one in found:
        seen[one.act] += 1
        many = count[one.act] > ALIKE + 1
        if not many or seen[one.act] <= ALIKE:
            listed.append(one)
        elif seen[one.act] == ALIKE + 1:
            rest = [other for other in found if other.act is one.act][ALIKE:]
            listed.append(More(one.act, tuple(rest)))
    return tuple(listed)
