"""The life of a pass as stops on a line, made from values alone."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from hearthkey.core.outlook import is_due
from hearthkey.core.passes import Pass, State
from hearthkey.core.phrases import Phrase
from hearthkey.core.sentences.proofs import way
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import REASONS
from hearthkey.ui.controls.strokes import Mark, Run

RENEW_BEFORE = timedelta(days=55)
"""How long before its end a pass is best renewed: time enough to meet whoever carries it."""

MOST_PROOFS = 3
"""Proofs that are shown, the newest ones."""

BACKDATED = timedelta(days=1)
"""A certificate begins this long before it was made (RFC 5280 section 4.1.2.5 allows any beginning)."""


@dataclass(frozen=True)
class Stop:
    """One day in the life of a pass.

    Args:
        mark: how it is drawn.
        at: which day, UTC.
        words: what happens on it.
        run: how the line goes on from here to the next stop.
        ahead: it has not come yet.
        beside: how the line of the pass before runs from here to the next stop, next to this one.
    """

    mark: Mark
    at: datetime
    words: Sentence
    run: Run
    ahead: bool = False
    beside: Run = Run.NONE


def stops(one: Pass, now: datetime, *, replaced: bool = False) -> tuple[Stop, ...]:
    """The stops of a pass in their order, today among them.

    Args:
        replaced: an older pass of the same device exists.
    """
    state = one.state(now)
    made = "made, takes over from the older pass" if replaced else "made"
    found = [Stop(Mark.MADE, one.not_before + BACKDATED, Sentence(made, {}), Run.DASHES)]
    lived = _lived(one, state, now)
    if one.handed_over is not None:
        found.append(Stop(Mark.HANDED_OVER, one.handed_over, Sentence("handed over", {}), lived))
    elif state is not State.WAITING:
        found[0] = Stop(Mark.MADE, found[0].at, found[0].words, lived)
    found += _proofs(one, lived, found[-1])
    ending = {
        State.STOPPED: _stopped,
        State.REVOKED: _revoked,
        State.ENDED: _ended,
    }.get(state, _living)
    return (*found, *ending(one, now, found[-1].run))


def _lived(one: Pass, state: State, now: datetime) -> Run:
    """How the line runs from the hand-over on, until a proof."""
    if state in {State.REVOKED, State.ENDED}:
        return Run.PAST
    return Run.DUE if is_due(one, now) else Run.HOLLOW


def _proofs(one: Pass, lived: Run, before: Stop) -> list[Stop]:
    """The newest proofs. From the first one on a line that was hollow is solid."""
    run = Run.SOLID if lived is Run.HOLLOW and one.handed_over is not None else before.run
    return [Stop(Mark.PROOF, max(proof.at, before.at), way(proof), run) for proof in one.proofs[-MOST_PROOFS:]]


def _today(one: Pass, now: datetime, run: Run) -> Stop:
    days = (one.not_after - now).days
    words = (
        Sentence("ends today", {})
        if days < 1
        else Sentence("1 day left", {})
        if days == 1
        else Sentence("{days} days left", {"days": days})
    )
    return Stop(Mark.TODAY, now, words, run)


def _end(one: Pass) -> Stop:
    return Stop(Mark.END, one.not_after, Sentence("ends", {}), Run.NONE, ahead=True)


def _living(one: Pass, now: datetime, run: Run) -> list[Stop]:
    found = [_today(one, now, run)]
    renew = one.not_after - RENEW_BEFORE
    if not one.guest and renew > now:
        found.append(Stop(Mark.RENEW, renew, Sentence("a good time to renew", {}), run, ahead=True))
    return [*found, _end(one)]


def _stopped(one: Pass, now: datetime, _run: Run) -> list[Stop]:
    return [
        Stop(Mark.STOPPED, one.since or now, Sentence("stopped", {}), Run.DOTS),
        Stop(Mark.TODAY, now, Sentence("can be let back in", {}), Run.DOTS),
        Stop(Mark.END, one.not_after, Sentence("would end", {}), Run.NONE, ahead=True),
    ]


def _revoked(one: Pass, now: datetime, _run: Run) -> list[Stop]:
    why = "" if one.reason is None else Phrase(REASONS[one.reason])
    return [
        Stop(Mark.FINAL, one.since or now, Sentence("revoked: {why}", {"why": why}), Run.NONE),
        Stop(Mark.TODAY, now, Sentence("never gets in again", {}), Run.NONE),
    ]


def _ended(one: Pass, now: datetime, _run: Run) -> list[Stop]:
    days = (now - one.not_after).days
    since = Sentence("ended {days} days ago", {"days": days}) if days > 1 else Sentence("ended a moment ago", {})
    return [
        Stop(Mark.END, one.not_after, Sentence("ended", {}), Run.NONE),
        Stop(Mark.TODAY, now, since if days != 1 else Sentence("ended yesterday", {}), Run.NONE),
    ]
