"""What else to do when a device is lost, in the order that helps most (common practice, no source)."""

from __future__ import annotations

from dataclasses import dataclass

from hearthkey.core.sentences.sentence import Sentence


@dataclass(frozen=True)
class Step:
    """One thing to do outside this program.

    Args:
        key: how the register remembers that it is done.
        what: the deed.
        why: what it saves.
    """

    key: str
    what: Sentence
    why: Sentence


AFTER_A_LOSS = (
    Step(
        "remote",
        Sentence("Lock or erase it from afar", {}),
        Sentence("on the maker’s own page for lost devices; look first where it is.", {}),
    ),
    Step(
        "employer",
        Sentence("Tell the employer, if it is theirs", {}),
        Sentence("before anything else: they decide what is erased.", {}),
    ),
    Step(
        "mail",
        Sentence("Change the password of the mail account", {}),
        Sentence("whoever reads the mail can reset every other password.", {}),
    ),
    Step(
        "sim",
        Sentence("Have the SIM blocked by the carrier", {}),
        Sentence("codes that banks send as a message go there.", {}),
    ),
    Step("bank", Sentence("Tell the bank", {}), Sentence("if cards or a banking app are on it.", {})),
    Step(
        "police",
        Sentence("Report it to the police, if it was stolen", {}),
        Sentence("with the serial number or IMEI from its box; insurers ask for it.", {}),
    ),
)
"""In order; the one about an employer stands second, for it stays true however late it is read."""

OPEN_CONNECTION = Sentence(
    "A connection that is open now lives until it authenticates again, a day at most if the gateway is set up as its "
    "sheet says. The command after a delivery can cut it at once.",
    {},
)
"""RFC 7296 section 2.8.3: rekeying does not authenticate anew."""
