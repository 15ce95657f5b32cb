"""What is said while one CA follows another: the plan, the way out of a loss, and the diary."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime

from hearthkey.core.household import Authority, Gateway
from hearthkey.core.passes import Pass
from hearthkey.core.phrases import Listing, Phrase, sentences
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.succession import Carries, Cause, DeviceStep, Plan, PlannedStep, Standing, Step, Succession

_STEPS: Mapping[Step, str] = {
    Step.BEGIN: "Make the next CA beside this one",
    Step.TRUST: "Let the gateway trust both",
    Step.GATEWAY: "Give the gateway a certificate of the new CA",
    Step.DEVICES: "Give each device its new bundle",
    Step.FINISH: "Put the old CA away",
}
_MEANS: Mapping[tuple[Step, bool], str] = {
    (Step.BEGIN, False): "Nobody notices. From now on bundles carry both CAs, and each list is signed by both.",
    (Step.BEGIN, True): "Nobody notices. The old CA cannot vouch for the new one, so the devices go first.",
    (Step.TRUST, False): "Deliver the files of the gateway. Nobody notices.",
    (Step.TRUST, True): "Deliver the files of the gateway. Nobody notices.",
    (Step.GATEWAY, False): "Devices that know only the old CA get in as before, for it vouches for the new one.",
    (Step.GATEWAY, True): "A device that has no new bundle by then turns away from the gateway.",
    (Step.DEVICES, False): "One visit each, at any time until then. The old pass works on meanwhile.",
    (Step.DEVICES, True): "One visit each. The old pass works on until the gateway’s certificate changes.",
    (Step.FINISH, False): "The old CA’s key is erased and its passes end. There is no way back from here.",
    (Step.FINISH, True): "The old CA’s passes end. There is no way back from here.",
}
_WHEN: Mapping[Standing, str] = {
    Standing.DONE: "done on {day}",
    Standing.NOW: "next, by {day}",
    Standing.LATER: "later, by {day}",
}
_CARRIES: Mapping[Carries, str] = {
    Carries.OLD: "{title} has a pass of the old CA, until {day}.",
    Carries.MADE: "{title} has a new bundle in the tray.",
    Carries.HANDED_OVER: "{title} has its new bundle; nobody has seen it get in yet.",
    Carries.DONE: "{title} is through.",
}
_BY_ITSELF = "{title} has a pass of the old CA, which ends by itself on {day}."


def step(one: PlannedStep) -> Sentence:
    """What a step is."""
    return Sentence(_STEPS[one.step], {})


def means(one: PlannedStep, cause: Cause) -> Sentence:
    """Who notices it."""
    return Sentence(_MEANS[one.step, cause is Cause.LOST], {})


def when(one: PlannedStep) -> Sentence:
    """When it was done, or by when it should be; the devices have a day each."""
    if one.step is Step.DEVICES and one.standing is Standing.DONE:
        return Sentence("done", {})
    return Sentence(_WHEN[one.standing], {"day": day(one.day)})


def device(one: DeviceStep) -> Sentence:
    """How far a device is."""
    template = _BY_ITSELF if one.ends_by_itself else _CARRIES[one.carries]
    return Sentence(template, {"title": one.title, "day": day(one.until)})


def headline(plan: Plan, now: datetime) -> Sentence:
    """Where all of it stands, in one sentence."""
    if plan.next is Step.BEGIN and plan.cause is Cause.PLANNED:
        late = now > plan.last_safe_day
        template = (
            "The CA ends on {end}. The last safe day to begin with the next one was {last}: begin now, and visit the "
            "devices whose passes run longest first."
            if late
            else "The CA ends on {end}. Begin with the next one by {last}, so that nobody’s pass has to end early."
        )
        return Sentence(template, {"end": day(plan.old_end), "last": day(plan.last_safe_day)})
    if plan.next is Step.BEGIN:
        return Sentence("Nothing has begun yet.", {})
    left = len(plan.left)
    if plan.next is Step.DEVICES and left == 1:
        return Sentence("One device is not through yet.", {})
    if plan.next is Step.DEVICES:
        return Sentence("{count} devices are not through yet.", {"count": left})
    if plan.next is Step.FINISH:
        return Sentence("Everybody is through. The old CA can go.", {})
    return Sentence("The next CA is beside the old one. Everybody gets in as before.", {})


def stolen() -> tuple[Sentence, ...]:
    """How to decide what a stolen computer means, the harmless case first."""
    return tuple(Sentence(text, {}) for text in _STOLEN)


_STOLEN = (
    (
        "Was the computer off or locked, and are the words written nowhere near it? Then they guard the key, and "
        "guessing seven of them takes longer than the CA lives. Take the succession in the coming weeks, without haste."
    ),
    (
        "Was the app open and unlocked, or were the words with the computer? Then whoever has it can make a pass for "
        "anybody. Begin today, and put the old CA away even if some devices are not through: they stand outside until "
        "they have their new bundle."
    ),
    "Stop what was stolen first, whichever it was. That takes a minute and needs no succession.",
    "If you cannot tell, act as in the second case. It costs visits and nothing else.",
)


def lost(plan: Plan, *, list_end: datetime, gateway_end: datetime, spares: bool) -> tuple[Sentence, ...]:
    """What still works without the CA key, until when, and the shortest way out."""
    first = day(min(list_end, gateway_end, plan.old_end))
    facts = {"list": day(list_end), "gateway": day(gateway_end), "first": first}
    shared = (
        (
            "Everybody gets in as before: until {list} by the revocation list in force, until {gateway} by the "
            "gateway’s certificate, and each device until its own pass ends. No new pass can be made."
        ),
        _SPARES[spares],
        "First look for a sealed copy or the key on paper, and for the words: with either, nothing is lost.",
        (
            "Without them, begin again beside what runs, with a new CA and new words. The gateway "
            "trusts both, each device gets a new bundle at its next visit, and then the gateway’s certificate follows. "
            "All of it has to be done before {first}."
        ),
    )
    return tuple(Sentence(text, facts) for text in shared)


_SPARES = (
    "Nobody can be stopped: no spare stop list lies ready.",
    "Spare stop lists lie ready. They stop devices until the new CA is made, and not after.",
)


VOUCHES = "The old one vouches for it."
WHY_BEGUN = {Cause.STOLEN: "The old key may be in other hands.", Cause.LOST: "The old key is lost."}


def begun(old: Authority, new: Authority, cause: Cause) -> Listing:
    """The next CA was made."""
    made = Phrase(
        "The next CA was made beside the old one, which ends {old}; the new one ends {new}.",
        {"old": day(old.not_after), "new": day(new.not_after)},
    )
    vouches = [] if cause is Cause.LOST else [Phrase(VOUCHES)]
    why = [Phrase(WHY_BEGUN[cause])] if cause in WHY_BEGUN else []
    return sentences([made, *vouches, *why])


def now_stolen() -> Phrase:
    """What was planned goes on as after a theft."""
    return Phrase("The old CA’s key may be in other hands: what was planned goes on without waiting for anybody.")


def trusted(_: Succession) -> Phrase:
    """The gateway trusts both."""
    return Phrase("The gateway trusts the old CA and the new one.")


def not_trusted(_: Succession) -> Phrase:
    """That step was taken back."""
    return Phrase("The step was taken back that the gateway trusts both CAs; nothing changed there.")


def gateway_follows(made: Gateway) -> Phrase:
    """The gateway got a certificate of the new CA."""
    return Phrase(
        "The gateway got a certificate of the new CA until {day}. New passes are the new CA’s.",
        {"day": day(made.not_after)},
    )


def gateway_back(made: Gateway) -> Phrase:
    """It got one of the old CA again."""
    return Phrase("The gateway got a certificate of the old CA again, until {day}.", {"day": day(made.not_after)})


def taken_back(_: Succession) -> Phrase:
    """The next CA was taken back."""
    return Phrase("The next CA was taken back before anybody needed it, and its key was erased.")


def finished(found: Succession, ended: tuple[Pass, ...]) -> Listing:
    """The old CA was put away."""
    away = Phrase(
        "The old CA was put away and its key erased; the new one ends {day}.", {"day": day(found.new.not_after)}
    )
    titles = Listing(dict.fromkeys(one.title for one in ended))
    return sentences([away, *([Phrase("Its last passes ended: {titles}.", {"titles": titles})] if titles else [])])
