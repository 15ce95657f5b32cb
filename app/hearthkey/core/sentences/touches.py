"""What is said of a change before it is made: how many devices it touches."""

from __future__ import annotations

from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.touches import Change, Reached

CHANGES = {
    Change.GATEWAY_RENEWED: "The gateway’s next certificate, under the same name",
    Change.INNER: "Another tunnel subnet",
    Change.SUFFIX: "Another identity suffix",
    Change.HOME: "Other home subnets",
    Change.TUNNEL: "The tunnel split or full",
    Change.HOST: "Another host name of the gateway",
    Change.AUTHORITY: "Another CA",
}


def of(reached: Reached) -> Sentence:
    """One change, and whom it touches."""
    facts = {"change": Sentence(CHANGES[reached.change], {}), "count": len(reached.devices)}
    if not reached.devices:
        return Sentence("{change}: no device needs a new bundle.", facts)
    if len(reached.devices) == 1:
        return Sentence("{change}: {title} needs a new bundle.", {**facts, "title": reached.devices[0]})
    return Sentence("{change}: {count} devices need a new bundle.", facts)
