"""What is said when somebody leaves the household. What else to change is common practice, no source."""

from __future__ import annotations

from typing import TYPE_CHECKING

from hearthkey.core.goodbye import Chore, Kind
from hearthkey.core.sentences.sentence import Sentence

if TYPE_CHECKING:
    from hearthkey.core.plans import RevokePlan

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


_ONE = (
    "{person} never gets in again with this device once the gateway holds list {number} (affiliationChanged). {others} "
    "This is final."
)
_MANY = (
    "{person} never gets in again with any of these {count} devices once the gateway holds list {number} "
    "(affiliationChanged). {others} This is final."
)


def plan(person: str, revoke: RevokePlan) -> Sentence:
    """Somebody is about to leave; the reason is that of RFC 5280 section 5.3.1."""
    devices = len({one.title for one in revoke.chosen})
    others = "Nobody else is affected." if revoke.unaffected else "No other device gets in at present."
    return Sentence(
        _ONE if devices == 1 else _MANY,
        {"person": person, "count": devices, "number": revoke.list_number, "others": Sentence(others, {})},
    )


def what(chore: Chore) -> Sentence:
    """The thing to change."""
    return Sentence(WHAT[chore.kind][0], {})


def why(chore: Chore) -> Sentence:
    """What it saves."""
    return Sentence(WHAT[chore.kind][1], {"subject": chore.subject})
