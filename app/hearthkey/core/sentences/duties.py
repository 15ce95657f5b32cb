"""What a day in the calendar, and a line of the day list, says."""

from __future__ import annotations

from hearthkey.core.day_list import More
from hearthkey.core.duties import Act, Duty
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence

_VERB = {
    Act.SIGN_LIST: "Unlock the household, so that its list is signed anew",
    Act.RENEW_GATEWAY: "Give the gateway its next certificate",
    Act.RENEW_PASS: "Give {title} its next pass",
    Act.HAND_OVER: "Hand over the next pass of {title}",
    Act.SUPERSEDE: "Let the old pass of {title} go",
    Act.GUEST_LEAVES: "Let {title} end, or give it more days",
    Act.PROVE: "Try {title} on mobile data",
    Act.TRY_COPY: "Make a sealed copy and try it",
    Act.TRY_PART: "Ask for a deputy’s part and try it",
    Act.BEGIN_SUCCESSION: "Begin with the next CA",
    Act.TRUST_BOTH: "Let the gateway trust both CAs",
    Act.GATEWAY_FOLLOWS: "Give the gateway its certificate from the new CA",
    Act.FINISH_SUCCESSION: "Put the old CA away",
    Act.PRINT_PAPER: "Put the household’s key on paper",
    Act.PRINT_PAPER_ANEW: "Print the key’s paper anew",
    Act.MAKE_PARTS: "Make the deputy’s parts and letter anew",
    Act.MAKE_STOP_SET: "Make the deputy’s stop set anew",
    Act.ADD_TO_STOP_SET: "Make the deputy’s stop set anew",
}
_WHY = {
    Act.SIGN_LIST: "The revocation list in force is good until {day}. After that the gateway lets nobody in.",
    Act.RENEW_GATEWAY: "The gateway’s certificate ends on {day}. After that devices turn away from it.",
    Act.RENEW_PASS: "It gets in until {day}, and not a day longer.",
    Act.HAND_OVER: "It waits in the tray. The pass that the device has gets in until {day}, and not a day longer.",
    Act.SUPERSEDE: "Another one has taken its place. By itself the old one ends on {day}.",
    Act.GUEST_LEAVES: "It is a guest’s and ends on {day} by itself.",
    Act.PROVE: "It was handed over on {day}, and nobody has seen it get in from outside.",
    Act.TRY_COPY: "No sealed copy was opened for real since {day}. If this computer dies, that is what is left.",
    Act.TRY_PART: "One of the parts was not tried for a year on {day}. Paper fades and gets lost, and nobody notices.",
    Act.BEGIN_SUCCESSION: "The CA ends on {day}, and everybody’s pass with it. Every device has to be visited before.",
    Act.TRUST_BOTH: "Until it does, no pass of the new CA opens the door. The old CA ends on {day}.",
    Act.GATEWAY_FOLLOWS: "New passes come from the new CA then, and devices can move. The old CA ends on {day}.",
    Act.DEVICES_FOLLOW: "On {day} the old CA goes. Whoever has no new bundle by then stands outside.",
    Act.FINISH_SUCCESSION: "The old CA ends on {day}. Whoever has no new bundle by then stands outside.",
    Act.PRINT_PAPER: "The household began on {day}, and no paper of its key was printed since.",
    Act.PRINT_PAPER_ANEW: "The paper was made before the CA’s succession of {day}: its key is the older one.",
    Act.MAKE_PARTS: "They are of {day}. Since then the CA or the passphrase of the sealed copies became another one.",
    Act.MAKE_STOP_SET: "It is of list {old}; list {new} is out since {day}. The old set would let in again whoever was "
    "stopped later.",
    Act.ADD_TO_STOP_SET: "A device began on {day} that it does not know, so nobody could stop that one with it.",
}


def title(duty: Duty) -> Sentence:
    """The one line that a calendar shows."""
    if duty.act is Act.DEVICES_FOLLOW:
        return _devices(duty.names)
    return Sentence(_VERB[duty.act], {"title": "" if duty.chosen is None else duty.chosen.title})


def _devices(names: tuple[str, ...]) -> Sentence:
    first, second, *_ = (*names, "", "")
    facts = {"count": len(names), "first": first, "second": second}
    if len(names) == 1:
        return Sentence("{first} is not through yet", facts)
    if len(names) == 2:
        return Sentence("{first} and {second} are not through yet", facts)
    return Sentence("{count} devices are not through yet, among them {first} and {second}", facts)


def reason(duty: Duty) -> Sentence:
    """Why, and until when."""
    old, new = duty.numbers or ("", "")
    return Sentence(_WHY[duty.act], {"day": day(duty.until), "old": old, "new": new})


_MORE = {
    Act.RENEW_PASS: "And {count} more devices that need their next pass",
    Act.HAND_OVER: "And {count} more next passes to hand over",
    Act.SUPERSEDE: "And {count} more old passes to let go",
    Act.GUEST_LEAVES: "And {count} more guests whose passes end",
    Act.PROVE: "And {count} more to try on mobile data",
}


def more(found: More) -> Sentence:
    """The one line that stands for those of a kind beyond the first few."""
    return Sentence(_MORE.get(found.act, "And {count} more of the kind"), {"count": len(found.duties)})
