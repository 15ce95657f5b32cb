"""What lies in drawers: the key on paper, the deputy's parts, the stop set; and when each has to be made anew."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from hearthkey.core.deputy import SetNote
from hearthkey.core.duties import Act, Duty
from hearthkey.core.household import Authority
from hearthkey.core.passes import Pass
from hearthkey.core.succession import Cause, Step, Succession

FIRST_PAPER = timedelta(days=30)
"""How long after the founding the key should be on paper. A choice of ours."""

ANEW = timedelta(days=14)
"""How long what lies in drawers may lag behind a step of a succession. A choice of ours."""


@dataclass(frozen=True)
class PaperNote:
    """A paper that was made.

    Args:
        made: when, UTC.
        authority: fingerprint of the CA whose key is on it.
    """

    made: datetime
    authority: str


@dataclass(frozen=True)
class StopSetNote:
    """A stop set that was given away.

    Args:
        made: when, UTC.
        base: number of the revocation list that all of its lists are based on.
        newest: the highest number among them.
    """

    made: datetime
    base: int
    newest: int


@dataclass(frozen=True)
class Keepsakes:
    """What is known of them.

    Args:
        founded: when the household began here, UTC.
        papers: every paper that was made.
        stop_set: the newest stop set, or None.
        parts: the newest set of parts, or None.
        parts_fresh: whether it opens the copies that are made now.
        authority: who is in charge.
        succession: as the register has it.
        list_number: of the newest revocation list.
        list_since: when that was signed, UTC.
        newcomer: when the first device began that the stop set does not know, UTC; None where it knows all.
    """

    founded: datetime
    papers: tuple[PaperNote, ...]
    stop_set: StopSetNote | None
    parts: SetNote | None
    parts_fresh: bool
    authority: Authority
    succession: Succession | None
    list_number: int
    list_since: datetime
    newcomer: datetime | None

    @property
    def paper(self) -> PaperNote | None:
        """The newest paper that has the key which a paper is to have; None where there is none."""
        wanted = on_paper(self.authority, self.succession).fingerprint
        return max((one for one in self.papers if one.authority == wanted), key=lambda one: one.made, default=None)

    @property
    def two_keys(self) -> bool:
        """Whether there are two keys, of which each is on a paper of its own."""
        return self.succession is not None and self.succession.underway and self.succession.cause is not Cause.LOST

    @property
    def stop_set_stale(self) -> bool:
        """Whether a newer list was signed since the stop set was made."""
        return self.stop_set is not None and self.stop_set.base != self.list_number


def on_paper(authority: Authority, succession: Succession | None) -> Authority:
    """Whose key a paper has: the newer one as soon as there are two, for the older one is on the paper before it."""
    return succession.new if succession is not None and succession.underway else authority


def newcomer(stop_set: StopSetNote | None, passes: Iterable[Pass], now: datetime) -> datetime | None:
    """When the first device that gets in now began after a stop set was made."""
    if stop_set is None:
        return None
    return min((one.not_before for one in passes if one.gets_in(now) and one.not_before > stop_set.made), default=None)


def keepsake_duties(known: Keepsakes) -> tuple[Duty, ...]:
    """What is to be made anew; nothing for what somebody never wanted, but the paper."""
    return (*_paper(known), *_parts(known), *_stop_set(known))


def _paper(known: Keepsakes) -> list[Duty]:
    if known.paper is not None:
        return []
    found = known.succession
    if found is not None and (found.underway or found.finished):
        since = found.taken.get(Step.BEGIN, known.founded)
        return [Duty(Act.PRINT_PAPER_ANEW.value, since + ANEW, Act.PRINT_PAPER_ANEW, since)]
    return [Duty(Act.PRINT_PAPER.value, known.founded + FIRST_PAPER, Act.PRINT_PAPER, known.founded)]


def _parts(known: Keepsakes) -> list[Duty]:
    parts, since = known.parts, _in_charge_since(known.succession)
    if parts is None:
        return []
    if not known.parts_fresh:
        return [Duty(Act.MAKE_PARTS.value, parts.made, Act.MAKE_PARTS, parts.made)]
    if since is not None and since > parts.made:
        return [Duty(Act.MAKE_PARTS.value, since + ANEW, Act.MAKE_PARTS, parts.made)]
    return []


def _in_charge_since(found: Succession | None) -> datetime | None:
    """When the new CA began to sign, by which the dates in the deputy's letter are others."""
    if found is None or not found.new_issues:
        return None
    return found.taken.get(Step.BEGIN if found.cause is Cause.LOST else Step.GATEWAY)


def _stop_set(known: Keepsakes) -> list[Duty]:
    given = known.stop_set
    if given is None:
        return []
    if known.stop_set_stale:
        numbers = (given.base, known.list_number)
        return [Duty(Act.MAKE_STOP_SET.value, known.list_since, Act.MAKE_STOP_SET, known.list_since, None, numbers)]
    if known.newcomer is not None:
        return [Duty(Act.ADD_TO_STOP_SET.value, known.newcomer + ANEW, Act.ADD_TO_STOP_SET, known.newcomer)]
    return []
