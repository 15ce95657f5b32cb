"""What a device's page says and offers, for every state a pass can be in."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import Enum

from hearthkey.core.outlook import is_due
from hearthkey.core.passes import Pass, State
from hearthkey.core.phrases import Phrase
from hearthkey.core.proofs import Way
from hearthkey.core.sentences.board import state_words, weekday
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import REASONS
from hearthkey.ui.states import sign_of
from hearthkey.ui.theme.signs import Sign


class Step(Enum):
    """What can be done with a device from its page, above the last row."""

    HAND_OVER = "hand over"
    LET_IN = "let in"
    ANEW = "new pass"
    RENEW = "renew"
    PROVE = "prove"


@dataclass(frozen=True)
class DeviceWords:
    """A device's page in words.

    Args:
        sign: stands before the title.
        state: the state, stressed.
        rest: what follows from it.
        step: the one next step, or None where nothing wants to be done.
        others: further steps that make sense.
        stops: whether it can be stopped.
        revokes: whether it can be revoked for good.
    """

    sign: Sign
    state: Sentence
    rest: Sentence
    step: Step | None
    others: tuple[Step, ...]
    stops: bool
    revokes: bool


def device_words(one: Pass, now: datetime) -> DeviceWords:
    """Say what the newest pass of a device is, and what can be done."""
    state = one.state(now)
    sign = sign_of(one, now)
    if state is State.REVOKED:
        why = "" if one.reason is None else Phrase(REASONS[one.reason])
        rest = Sentence("It never gets in again: {why}.", {"why": why})
        return DeviceWords(sign, _since("Revoked on {day}.", one), rest, Step.ANEW, (), stops=False, revokes=False)
    if state is State.ENDED:
        rest = Sentence("It gets in again with a new pass.", {})
        told = Sentence("Ended on {day}.", {"day": day(one.not_after)})
        return DeviceWords(sign, told, rest, Step.ANEW, (), stops=False, revokes=False)
    if state is State.STOPPED:
        rest = Sentence("A gateway that holds the list keeps it out. It can be let back in.", {})
        told = _since("Stopped on {day}.", one)
        return DeviceWords(sign, told, rest, Step.LET_IN, (Step.ANEW,), stops=False, revokes=True)
    if one.key_lost:
        rest = Sentence("It gets in again with a new pass.", {})
        return DeviceWords(sign, Sentence("Waiting.", {}), rest, Step.RENEW, (), stops=True, revokes=True)
    return _living(one, now, sign, waits=state is State.WAITING)


def _since(template: str, one: Pass) -> Sentence:
    return Sentence(template, {"day": "" if one.since is None else day(one.since)})


_WAITING = "It gets in until {day}. Its bundle is in the tray, to be handed over."
_IN_USE = "It gets in until {day}. The key exists on the {device} alone."
_GUEST = "It gets in until {day}. Then it ends by itself."
_DUE = "It gets in until {day}, then it ends. A new pass takes over without a gap."


def _proving(one: Pass, others: tuple[Step, ...]) -> tuple[Step | None, tuple[Step, ...]]:
    """What was never proved wants to be; what was may be once more."""
    return (None, (*others, Step.PROVE)) if one.proofs else (Step.PROVE, others)


def _use(one: Pass) -> Sentence:
    if one.proved is None:
        return Sentence("In use, never proved.", {})
    facts = {"day": day(one.proved)}
    if one.proofs[-1].way is Way.TOLD:
        return Sentence("In use, said to work on {day}.", facts)
    return Sentence("In use, proved on {day}.", facts)


def _living(one: Pass, now: datetime, sign: Sign, *, waits: bool) -> DeviceWords:
    facts = {"device": one.device, "day": weekday(one.not_after) if one.guest else day(one.not_after)}
    told = Sentence("Guest." if one.guest else "Waiting." if waits else "In use.", {})
    rest = _WAITING if waits else _IN_USE
    step: Step | None = Step.HAND_OVER if waits else None
    others: tuple[Step, ...] = () if waits else (Step.RENEW,)
    if one.guest and not waits:
        rest = _GUEST
        step, others = _proving(one, others)
    elif is_due(one, now):
        word, _ = state_words(one, now)
        told = Sentence(word.template[:1].upper() + word.template[1:] + ".", word.facts)
        if not waits:
            rest, step, others = _DUE, Step.RENEW, ()
    elif not waits:
        told = _use(one)
        step, others = _proving(one, others)
    return DeviceWords(sign, told, Sentence(rest, facts), step, others, stops=True, revokes=True)
