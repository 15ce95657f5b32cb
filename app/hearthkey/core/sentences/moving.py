"""Moving day in words: each step, why it stands there, and the way back from it."""

from __future__ import annotations

from hearthkey.core.household import FormerHost
from hearthkey.core.moving import Move, MovingPlan, Step
from hearthkey.core.moving_steps import Kind, Task, When
from hearthkey.core.phrases import AND, Listing, Phrase, several
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence

NAMED = 3
"""So many devices are named in a sentence."""

KINDS = {
    Kind.PROVIDER: "another provider",
    Kind.ROUTER: "another router",
    Kind.HOST: "another host name",
    Kind.SUBNET: "other subnets at home",
    Kind.BOX: "another gateway box",
}

WHENS = {When.BEFORE: "Before the day", When.DAY: "On the day", When.AFTER: "After the day"}

_STEPS = {
    Task.TRY_COPY: "Write a sealed copy of the household, and try it",
    Task.LOOK_AT_LINE: "Look at what the new line or router gives",
    Task.NAME_LEADS: "Let {new_host} lead home beside {old_host}",
    Task.BOTH_NAMES: "Have the gateway answer to {new_host} and to {old_host}",
    Task.BOTH_HOMES: "Let devices reach {new_home} beside {old_home}",
    Task.PREPARE_BOX: "Set the new gateway box up beside the old one",
    Task.DELIVER: "Deliver to the gateway",
    Task.NEW_BUNDLES: "Hand everybody a new bundle",
    Task.SHORT_TTL: "Shorten how long the name’s answers are kept, to 300 seconds",
    Task.RENUMBER: "Change the addresses at home to {new_home}",
    Task.FIXED_ADDRESS: "Give the gateway a fixed address at home",
    Task.FORWARD: "Have the router pass UDP 500 and 4500 on to the gateway",
    Task.POINT_NAME: "Point {new_host} to the new line",
    Task.CHECK: "Check the way in, from outside",
    Task.PROVE: "Have one relative prove it, on mobile data",
    Task.LONG_TTL: "Let the name’s answers be kept for an hour again",
    Task.NAME_GOES: "Let {old_host} go",
    Task.HOME_GOES: "Take {old_home} out of the settings",
    Task.WIPE_BOX: "Erase the old gateway box",
    Task.END_LINE: "End the old line",
}

_WHYS = {
    Task.TRY_COPY: "Whatever goes wrong, the household as it is now can be had back.",
    Task.LOOK_AT_LINE: "An address that the provider shares among many cannot be reached from outside, whatever the "
    "router says; the network plan tells by the address on the router’s own pages.",
    Task.NAME_LEADS: "Devices will look for it. Both names lead to the same house until nobody asks for the old one.",
    Task.BOTH_NAMES: "A device turns away from a gateway whose certificate lacks the name in its bundle.",
    Task.BOTH_HOMES: "A device sends home only what its bundle says, so bundles have to say both before anything "
    "moves.",
    Task.PREPARE_BOX: "A new key and certificate for the same name touches no device. The old box goes on meanwhile.",
    Task.DELIVER: "Until then the gateway goes by what it has.",
    Task.NEW_BUNDLES: "They know only what was true when their bundle was made. What they have works until the old "
    "goes.",
    Task.SHORT_TTL: "Whoever asked just before the day would look in the old place for that long. Wait the old time "
    "out.",
    Task.RENUMBER: "Printers and boxes with addresses typed in by hand need theirs changed too.",
    Task.FIXED_ADDRESS: "The router passes packets on to an address; if that moves, they arrive nowhere.",
    Task.FORWARD: "The forwarding sheet has every line that the router’s pages ask for.",
    Task.POINT_NAME: "Both kinds of address: an old IPv6 answer that stays leads half of the phones astray.",
    Task.CHECK: "A laptop on a phone’s mobile data sees what a relative sees; from home it proves nothing.",
    Task.PROVE: "The first device that is in tells more than any check.",
    Task.LONG_TTL: "Short times mean more questions, and nothing else.",
    Task.NAME_GOES: "It takes a new certificate of the gateway. Keep the name paid for until then: whoever has it next "
    "sees who knocks.",
    Task.HOME_GOES: "The gateway narrows what devices ask for, so nobody needs a new bundle for it.",
    Task.WIPE_BOX: "Its key and the household’s devices stand on it.",
    Task.END_LINE: "As long as both lines are there, the name can be pointed back.",
}

_BACKS = {
    Task.TRY_COPY: "Nothing to undo.",
    Task.LOOK_AT_LINE: "Nothing to undo.",
    Task.NAME_LEADS: "Take {new_host} away where names are kept.",
    Task.BOTH_NAMES: "Settle the gateway’s host back to {old_host}; it answers to both still.",
    Task.BOTH_HOMES: "Settle the home subnets back to {old_home}.",
    Task.PREPARE_BOX: "Keep using the old box; renew the gateway’s certificate and deliver to the old one.",
    Task.DELIVER: "Put the set before this one in force again, on the gateway’s page.",
    Task.NEW_BUNDLES: "Nothing to undo: new bundles work with what is old too.",
    Task.SHORT_TTL: "Set the longer time again.",
    Task.RENUMBER: "Change the addresses at home back to {old_home}; bundles reach both.",
    Task.FIXED_ADDRESS: "Give the old address back in the router’s pages.",
    Task.FORWARD: "Have the old router, or the old lines in its pages, pass them on again.",
    Task.POINT_NAME: "Point the name back to the old line.",
    Task.CHECK: "Nothing to undo.",
    Task.PROVE: "Nothing to undo.",
    Task.LONG_TTL: "Set the short time again.",
    Task.NAME_GOES: "Settle the gateway’s host to {old_host} and back: both are answered to again.",
    Task.HOME_GOES: "Settle the home subnets to both again.",
    Task.WIPE_BOX: "There is none: what is erased is gone.",
    Task.END_LINE: "Ask the provider; often there is none.",
}


def _facts(move: Move) -> dict[str, object]:
    return {
        "old_host": move.old_host,
        "new_host": move.new_host,
        "old_home": Listing(str(one) for one in move.old_home),
        "new_home": Listing(str(one) for one in move.new_home),
    }


def step(move: Move, task: Task) -> Sentence:
    """What is to be done."""
    return Sentence(_STEPS[task], _facts(move))


def why(move: Move, task: Task) -> Sentence:
    """Why, and why there."""
    return Sentence(_WHYS[task], _facts(move))


def back(move: Move, task: Task) -> Sentence:
    """How to undo it in the world; the list itself is only a list."""
    return Sentence(_BACKS[task], _facts(move))


def touched(one: Step) -> Sentence:
    """Whom a step touches."""
    if one.devices:
        facts = {"whom": several(one.devices, NAMED), "count": len(one.devices)}
        if len(one.devices) == 1:
            return Sentence("New bundle for {whom}.", facts)
        return Sentence("New bundles for {count} devices: {whom}.", facts)
    if one.gateway:
        return Sentence("Only the gateway; no device needs a new bundle.", {})
    return Sentence("No device, and not the gateway.", {})


def takes(one: Step) -> Sentence:
    """About how long a step takes."""
    return Sentence("About {minutes} minutes.", {"minutes": one.minutes})


def left(one: Step) -> Sentence | None:
    """Who still lacks what the step is for; None where that is nobody."""
    if not one.left:
        return None
    facts = {"whom": several(one.left, NAMED), "count": len(one.left)}
    return Sentence("Still to come: {whom}.", facts)


def _new(move: Move) -> Listing:
    return Listing((Phrase(KINDS[one]) for one in Kind if one in move.kinds), AND)


def headline(planned: MovingPlan) -> Sentence:
    """How much there is to do, the devices first."""
    move, count = planned.move, len(planned.devices)
    facts = {"what": _new(move), "count": count}
    if not count:
        return Sentence("For {what} no device needs a new bundle.", facts)
    if count == 1:
        return Sentence("For {what} one device needs a new bundle.", facts)
    return Sentence("For {what} {count} devices need a new bundle.", facts)


BARE_ADDRESS = Sentence(
    "Bundles carry a bare address. With another provider it changes, and every device needs a new bundle before it "
    "gets in again. A name of your own, given in time, can be pointed anywhere.",
    {},
)


def begun(planned: MovingPlan) -> Phrase:
    """What the diary says when a move begins."""
    move = planned.move
    return Phrase("A move was planned, with {what}: {count} steps.", {"what": _new(move), "count": len(planned.steps)})


def ticked(move: Move, task: Task) -> Phrase:
    """What the diary says of a step that is done."""
    return Phrase("Moving: “{step}” is done.", {"step": Phrase(_STEPS[task], _facts(move))})


def taken_back(move: Move, task: Task) -> Phrase:
    """What the diary says of a step that is to be done again."""
    return Phrase("Moving: “{step}” was taken back.", {"step": Phrase(_STEPS[task], _facts(move))})


def ended(*, whole: bool) -> Phrase:
    """What the diary says when the list is put away."""
    return Phrase("The move is over.") if whole else Phrase("The move was called off; what was done stays done.")


def kept(former: FormerHost, titles: tuple[str, ...]) -> Sentence:
    """A former host, and for whose sake the gateway answers to it."""
    facts = {"host": former.host, "since": day(former.since), "whom": several(titles, NAMED)}
    if not titles:
        return Sentence("The gateway still answers to {host}, and no device needs that any more.", facts)
    if len(titles) == 1:
        return Sentence("The gateway still answers to {host}: {whom} knows no other name.", facts)
    return Sentence("The gateway still answers to {host}: {whom} know no other name.", facts)
