"""What is about to happen, the effect on people first."""

from __future__ import annotations

from hearthkey.core.phrases import Phrase
from hearthkey.core.plans import EnrolPlan, FoundPlan, HandOverPlan, LetInPlan, RevokePlan, StopPlan
from hearthkey.core.sentences.diary import day, titles
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import REASONS


def found(plan: FoundPlan) -> Sentence:
    """Founding."""
    what = (
        Phrase("everything they do on the internet goes through home")
        if plan.household.tunnel == "full"
        else Phrase("what is not at home keeps going its own way")
    )
    return Sentence(
        "{name} will let its devices in at {host}, into {home}; {what}. Inside, devices get addresses from {tunnel}.",
        {
            "name": plan.household.certified_name,
            "host": plan.household.gateway_host,
            "home": plan.household.home_subnets,
            "what": what,
            "tunnel": plan.household.tunnel_subnet,
        },
    )


def enrol(plan: EnrolPlan) -> Sentence:
    """Enrolling."""
    end = Phrase("as long as its key set allows")
    if plan.ends is not None:
        end = Phrase("until {day}", {"day": day(plan.ends)})
    elif plan.guest:
        end = Phrase("for a few days")
    again = "" if plan.replaces is None else Phrase(" Its old pass goes on until you stop or revoke it.")
    return Sentence(
        "{person} will get in with this {device} {end}. Nobody else has this pass.{again}",
        {"person": plan.person, "device": plan.device, "end": end, "again": again},
    )


def hand_over(plan: HandOverPlan) -> Sentence:
    """Handing over."""
    return Sentence(
        "{title} keeps its key; here it is erased, with its passphrase. If the bundle is lost after that, it is "
        "replaced, never sent again.",
        {"title": plan.chosen.title},
    )


def _others(unaffected: int) -> Phrase:
    if unaffected == 0:
        return Phrase("No other device gets in at present.")
    return Phrase("Nobody else is affected.") if unaffected > 1 else Phrase("The one other device is not affected.")


def _shared(sharing: int) -> str:
    if not sharing:
        return ""
    if sharing == 1:
        return Phrase(" The secret that all devices share was on it: one device will have to be told a new one.")
    return Phrase(
        " The secret that all devices share was on it: {count} devices will have to be told a new one.",
        {"count": sharing},
    )


def stop(plan: StopPlan) -> Sentence:
    """Stopping."""
    return Sentence(
        "{title} stops getting in once the gateway holds list {number}. {others} It can be let back in.{shared}",
        {
            "title": titles(plan.chosen),
            "number": plan.list_number,
            "others": _others(plan.unaffected),
            "shared": _shared(plan.sharing),
        },
    )


def let_in(plan: LetInPlan) -> Sentence:
    """Letting back in."""
    return Sentence(
        "{title} gets in again once the gateway holds list {number}.",
        {"title": titles(plan.chosen), "number": plan.list_number},
    )


def revoke(plan: RevokePlan) -> Sentence:
    """Revoking."""
    return Sentence(
        "{title} never gets in again once the gateway holds list {number}: {reason} ({rfc}). {others} This is final."
        "{shared}",
        {
            "title": titles(plan.chosen),
            "number": plan.list_number,
            "reason": Phrase(REASONS[plan.reason]),
            "rfc": plan.reason.rfc_name,
            "shared": _shared(plan.sharing),
            "others": _others(plan.unaffected),
        },
    )
