"""The life lines of an old pass and its new one as one: the old one runs beside while both get in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from hearthkey.core.passes import Pass, State
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.strokes import Mark, Run
from hearthkey.ui.drawer.stops import Stop


def beside(stops: Sequence[Stop], old: Pass, now: datetime) -> tuple[Stop, ...]:
    """Put an old pass next to the stops of the new one: since when it gets in, and its end.

    Args:
        stops: those of the new pass, in their order.
        old: the pass that it is to follow.
        now: UTC.
    """
    run = _run(old, now)
    began = old.handed_over or old.not_before
    since = Stop(Mark.EARLIER, began, Sentence("the old pass was handed over", {}), Run.NONE, beside=run)
    end = Stop(
        Mark.END,
        old.not_after,
        Sentence("the old pass ends", {}) if old.not_after > now else Sentence("the old pass ended", {}),
        Run.NONE,
        ahead=old.not_after > now,
    )
    found: list[Stop] = [since]
    ended = False
    for stop in stops:
        if not ended and stop.at > end.at:
            found.append(replace(end, run=found[-1].run))
            ended = True
        found.append(stop if ended else replace(stop, beside=run))
    if not ended:
        found.append(end)
    return tuple(found)


def _run(old: Pass, now: datetime) -> Run:
    if old.state(now) is State.STOPPED:
        return Run.DOTS
    return Run.SOLID if old.proofs else Run.HOLLOW
