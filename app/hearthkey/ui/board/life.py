"""Works out the row of a pass, or of one that is being typed in."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

from PySide6.QtCore import QCoreApplication

from hearthkey.core.outlook import is_due
from hearthkey.core.passes import Pass, State
from hearthkey.core.proofs import Way
from hearthkey.core.sentences import board as words
from hearthkey.ui.board.rows import Event, Mark, Row, Segment, Shape, Step, Stroke, Tone
from hearthkey.ui.dates import day, short_day
from hearthkey.ui.entries import Draft
from hearthkey.ui.states import sign_of
from hearthkey.ui.text import said
from hearthkey.ui.theme.signs import Sign

_STEPS = {State.WAITING: Step.HAND_OVER, State.STOPPED: Step.LET_IN}

MOST_TICKS = 12
"""Proofs that are shown on a line, the newest ones; more of them say nothing new."""


def made(one: Pass) -> datetime:
    """When a pass was made; its certificate begins a day early, so that a slow clock takes it too."""
    return one.not_before + timedelta(days=1)


def tr(text: str) -> str:
    """A literal of the sheet in the language of the desktop."""
    return QCoreApplication.translate("board", text)


def pass_row(one: Pass, now: datetime, *, read_only: bool = False, followed: bool = False) -> Row:
    """The row of a pass.

    Args:
        now: today, UTC.
        read_only: nothing can be changed from here, so no next step is offered.
        followed: another pass of the same device was made already, so that nothing is left to renew.
    """
    state = one.state(now)
    due = is_due(one, now)
    word, fact = (said(part) for part in words.state_words(one, now))
    until = said(words.until(one, now))
    segments, marks = _line(one, state)
    return Row(
        who=one.person,
        device=one.device,
        sign=sign_of(one, now),
        word=word,
        fact=fact,
        until=until,
        step=None if read_only else _step(one, state, due=due, followed=followed),
        tone=_tone(state, due=due),
        segments=segments,
        marks=marks,
        events=_events(one, state, now, word),
        spoken=_spoken(one, state, word, fact, due=due),
    )


def draft_row(draft: Draft, now: datetime) -> Row:
    """The row of a device that is being typed in."""
    word, fact = tr("draft"), tr("not made yet")
    spoken = f"{draft.person}, {draft.device}: {word}, {fact}"
    row = Row(
        who=draft.person,
        device=draft.device,
        sign=Sign.DRAFT,
        word=word,
        fact=fact,
        until="",
        step=None,
        tone=Tone.DRAFT,
        segments=(),
        marks=(),
        events=(Event(now, word),),
        spoken=spoken,
    )
    if draft.end is None:
        return row
    return replace(
        row,
        until=short_day(draft.end),
        segments=(Segment(Stroke.FINE_DOTS, now, draft.end),),
        marks=(Mark(Shape.SMALL_END, draft.end),),
        events=(*row.events, Event(draft.end, tr("would end"))),
        spoken=spoken + tr(", until {day}").format(day=day(draft.end)),
    )


def _step(one: Pass, state: State, *, due: bool, followed: bool) -> Step | None:
    """The next step; who ends soon needs a new pass rather than a proof of the old one."""
    if state is State.IN_USE and due:
        return None if followed else Step.RENEW
    if state is State.IN_USE and not one.proofs:
        return Step.PROVE
    return _STEPS.get(state)


def _tone(state: State, *, due: bool) -> Tone:
    if due:
        return Tone.DUE
    if state in {State.REVOKED, State.ENDED}:
        return Tone.PAST
    return Tone.HELD if state is State.STOPPED else Tone.INK


def _line(one: Pass, state: State) -> tuple[tuple[Segment, ...], tuple[Mark, ...]]:
    """The life line: what it was until it was handed over, what it is, what it would have been."""
    begin, given = made(one), one.handed_over
    stop = one.since if one.since is not None and state in {State.STOPPED, State.REVOKED} else one.not_after
    past = state in {State.REVOKED, State.ENDED}
    segments, marks = [], [Mark(Shape.MADE, begin)]
    if given is None:
        segments.append(Segment(Stroke.PAST if past else Stroke.DASHES, begin, stop))
    else:
        segments.append(Segment(Stroke.PAST if past else Stroke.DASHES, begin, given))
        segments += _used(one, given, stop, past=past)
        marks.append(Mark(Shape.HANDED_OVER, given))
    marks += [Mark(Shape.PROOF, proof.at) for proof in one.proofs[-MOST_TICKS:]]
    marks.append(Mark(Shape.FINAL if state is State.REVOKED else Shape.END, stop))
    if state is State.STOPPED:
        segments.append(Segment(Stroke.DOTS, stop, one.not_after))
        marks.append(Mark(Shape.SMALL_END, one.not_after))
    return tuple(segments), tuple(marks)


def _used(one: Pass, given: datetime, stop: datetime, *, past: bool) -> list[Segment]:
    """In use: hollow until somebody has seen it get in, solid from then on."""
    if past:
        return [Segment(Stroke.PAST, given, stop)]
    if not one.proofs:
        return [Segment(Stroke.HOLLOW, given, stop)]
    seen = min(max(one.proofs[0].at, given), stop)
    hollow = [Segment(Stroke.HOLLOW, given, seen)] if seen > given else []
    return [*hollow, Segment(Stroke.SOLID, seen, stop)]


def _events(one: Pass, state: State, now: datetime, word: str) -> tuple[Event, ...]:
    events = [Event(made(one), tr("made"))]
    if one.handed_over is not None:
        events.append(Event(one.handed_over, tr("handed over")))
    events += [
        Event(proof.at, tr("said to work") if proof.way is Way.TOLD else tr("proved"))
        for proof in one.proofs[-MOST_TICKS:]
    ]
    if one.since is not None and state is State.REVOKED:
        events.append(Event(one.since, tr("revoked, final")))
    if one.since is not None and state is State.STOPPED:
        events.append(Event(one.since, tr("stopped")))
    endings = {State.REVOKED: tr("would have ended"), State.ENDED: tr("ended"), State.STOPPED: tr("would end")}
    events.append(Event(one.not_after, endings.get(state, tr("ends"))))
    events.append(Event(now, tr("today: {word}").format(word=word)))
    return tuple(sorted(events, key=lambda event: event.at))


def _spoken(one: Pass, state: State, word: str, fact: str, *, due: bool) -> str:
    told = f"{one.person}, {one.device}: {word}"
    if fact and not due:
        told += f", {fact}"
    if state in {State.REVOKED, State.ENDED} or one.guest:
        return told
    until = tr(", would run until {day}") if state is State.STOPPED else tr(", until {day}")
    return told + until.format(day=day(one.not_after))
