"""What is said when somebody leaves the household. What else to change is common practice, no source."""

from __future__ import annotations

from hearthkey.core.goodbye import Chore, Kind
from hearthkey.core.sentences.sentence import Sentence

WHAT = {
    Kind.SHARED_SECRET: (
        "The secret that all devices share",
        "they know it; it is made anew, and every other device is told: hearthkey secrets --renew.",
    ),
    Kind.TEMPLATES: (
        "Secrets in your own templates",
        "what was written for their devices may carry some: {subject}.",
    ),
    Kind.DELIVER: (
        "The gateway’s list",
        "nothing is delivered by itself here: carry the new list there, or they still get in.",
    ),
    Kind.WIFI: ("The Wi-Fi’s password", "whoever is on the home network needs no pass."),
    Kind.ROUTER: ("The router’s password", "and the access that it lets its maker’s app have."),
    Kind.ACCOUNTS: ("Accounts that you share", "mail, clouds, streaming, cameras; look who is signed in there."),
    Kind.PASSPHRASE: (
        "The household’s passphrase, if they knew it",
        "with it and a sealed copy, the whole household can be brought back elsewhere.",
    ),
    Kind.COPIES: (
        "Sealed copies, sticks and sheets that they keep",
        "ask for them; spare lists can only stop devices, never let one in.",
    ),
    Kind.DOORS: ("Keys and codes of the doors", "and whatever else opens the house."),
}


def what(chore: Chore) -> Sentence:
    """The thing to change."""
    return Sentence(WHAT[chore.kind][0], {})


def why(chore: Chore) -> Sentence:
    """What it saves."""
    return Sentence(WHAT[chore.kind][1], {"subject": chore.subject})
