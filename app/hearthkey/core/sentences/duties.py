"""What a day in the calendar says."""

from __future__ import annotations

from hearthkey.core.duties import Duty
from hearthkey.core.outlook import Ends
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence

_VERB = {
    Ends.LIST: "Unlock the household, so that its list is signed anew",
    Ends.GATEWAY: "Give the gateway its next certificate",
}
_WHY = {
    Ends.LIST: "The revocation list in force is good until {day}. After that the gateway lets nobody in.",
    Ends.GATEWAY: "The gateway’s certificate ends on {day}. After that devices turn away from it.",
}


def title(duty: Duty) -> Sentence:
    """The one line that a calendar shows."""
    return Sentence(_VERB[duty.ends], {})


def reason(duty: Duty) -> Sentence:
    """Why, and until when."""
    return Sentence(_WHY[duty.ends], {"day": day(duty.until)})
