"""What is inside a sealed copy or on a paper, told before anything is written."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.passes import LIVING
from hearthkey.services.restoring import RestorePlan
from hearthkey.services.restoring_paper import PaperPlan

_TAR_MAGIC = slice(257, 262)
"""Where a POSIX tar archive says "ustar" (POSIX.1-1988, section 10.1.1)."""


@dataclass(frozen=True)
class Inside:
    """What would come back.

    Args:
        household: its certified name.
        made: when the copy or the paper was made, UTC.
        list_mark: the highest list number it knows.
        devices: titles of the devices that have a pass that is not over; none for a paper.
        withdrawn: how many passes are stopped or revoked.
        sentence: what will happen.
        on_paper: it is a paper, which names no device.
    """

    household: str
    made: datetime
    list_mark: int
    devices: tuple[str, ...]
    withdrawn: int
    sentence: str
    on_paper: bool = False


def of_copy(plan: RestorePlan, now: datetime) -> Inside:
    """What is inside an open copy."""
    contents = plan.copy.contents
    titles = (one.title for one in plan.copy.register.passes() if one.state(now) in LIVING)
    return Inside(
        contents.household,
        contents.made,
        contents.list_mark,
        tuple(dict.fromkeys(titles)),
        len(contents.withdrawn),
        plan.sentence,
    )


def of_paper(plan: PaperPlan) -> Inside:
    """What stands on a paper that was read."""
    contents = plan.contents
    withdrawn = len(contents.withdrawn) + contents.more_withdrawn
    household = contents.household.certified_name
    return Inside(household, contents.made, contents.list_mark, (), withdrawn, plan.sentence, on_paper=True)


def is_copy(data: bytes) -> bool:
    """Whether some bytes look like a sealed copy, and not like a picture or typed lines."""
    return data[_TAR_MAGIC] == b"ustar"
