"""The words that the command line understands: its verbs, and what they have in common."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from hearthkey import __version__

WRITING = frozenset(
    {"found", "settle", "add", "export", "ticket", "hand-over", "prove"}
    | {"stop", "let-in", "revoke", "deliver", "pack", "secrets", "seal", "try", "restore", "paper"}
    | {"adopt", "name-pass", "renew", "supersede", "replace", "leaves", "check-way-in"}
)
"""Verbs that change the household, so that only one copy of the app may run them at a time."""

VERBS = {
    "window": "Open the window; with no verb at all, this is what happens.",
    "found": "Found a household: its CA, the gateway’s credential, revocation list 1.",
    "settle": "Change the household’s settings, or give the gateway its next certificate.",
    "add": "Enrol a device; its bundle waits in the tray.",
    "list": "List the people, their devices and until when each gets in.",
    "show": "Show one device, or the household.",
    "export": "Rehearse a waiting bundle and write it.",
    "ticket": "Let a device at home pick a waiting bundle up by a link, once.",
    "sheet": "Write the sheet that goes with a device, the card with its passphrase, or the two messages.",
    "hand-over": "Erase a key here, because the device has it now.",
    "prove": "Let a device outside show that it gets in, by a link that only opens from inside.",
    "stop": "Stop a device for now.",
    "let-in": "Let a stopped device back in.",
    "revoke": "Revoke a device for good.",
    "renew": "Give devices a new key and a new pass, one or a whole round.",
    "supersede": "Let old passes go for good, once the new ones work.",
    "replace": "A new device in place of an old one, which is stopped at once.",
    "visit": "Keep the days on which you meet somebody; renewals are planned by them.",
    "leaves": "Somebody leaves the household: revoke all that is theirs, and say what else to change.",
    "gateway": "Say where the gateway’s files go, and how it stands.",
    "deliver": "Bring the gateway what waits, and read it back; runs unattended too.",
    "pack": "Write everything that the gateway needs into a folder.",
    "template": "Your own text with slots, rendered for the gateway or for each device.",
    "secrets": "Secrets beside the certificates (RFC 8784): on, off, anew.",
    "copies": "Every copy of a bundle that left: where, when, and whether it is gone.",
    "dates": "Show the days on which something has to be done, or write them as a calendar.",
    "lists": "Show the revocation lists, sign the next, write one to a folder.",
    "reach": "Work out whether the way in from outside can be found, and what goes through it.",
    "forwarding-sheet": "Say what the router at home has to let through, on screen or on paper.",
    "moving-day": "Plan a move: another provider, router, name, subnet or gateway box, so that nobody is cut off.",
    "check-way-in": "Ask, with a handful of packets, whether there is a way in, and where it stops.",
    "rehearse": "Try bundles as device and gateway will, without letting them out.",
    "kinds": "Show what is known of each kind of device; correct one, or add your own.",
    "diary": "Read what was done, and check that nobody altered it.",
    "seal": "Write a sealed copy of everything, for the day on which this computer dies.",
    "look-over": "Look at a household that was made by hand: what is there, what is weak, what goes on.",
    "adopt": "Take over a household that was made by hand: its CA, lists and passes go on.",
    "name-pass": "Say whose a pass is that was made elsewhere.",
    "try": "Open a sealed copy or the key on paper for real, and see whether it is whole.",
    "restore": "Bring a household back from a sealed copy, or from its paper.",
    "paper": "Put the household’s encrypted key on paper: codes for a scanner, lines for hands.",
    "succession": "Let the next CA follow this one: the plan with its days, and each step.",
    "deputy": "Get ready for somebody to take over: parts, a letter, a stop set; try a part, or open a copy with two.",
    "tour": "Walk the whole job on the practice household Quince Cottage.",
}
_BARE = frozenset({"list"})
"""Verbs without words of their own."""


def parser(typed: Sequence[str] | None = None) -> argparse.ArgumentParser:
    """The command line.

    Args:
        typed: what is going to be parsed. Only the verb in it then gets its words, for those of the
            others would be a tenth of a start; without it every verb does.
    """
    top = argparse.ArgumentParser(
        prog="hearthkey",
        description="Keep the household’s CA: enrol devices, hand bundles over, stop what was lost.",
        epilog="Exit codes: 0 done, 2 words not understood, 3 refused and how to mend it, 4 something is not "
        "available, 5 a fault of the app, 130 cancelled.",
    )
    top.add_argument("--version", action="version", version=f"hearthkey {__version__}")
    chosen = VERBS if typed is None else [next((word for word in typed if not word.startswith("-")), "")]
    common = _common()
    verbs = top.add_subparsers(dest="verb", metavar="VERB", required=True)
    for name, words in VERBS.items():
        verb = verbs.add_parser(name, help=words, description=words, parents=[common] if name in chosen else [])
        if name in chosen and name not in _BARE:
            _add_words(name, verb)
    return top


def _add_words(name: str, verb: argparse.ArgumentParser) -> None:
    from hearthkey.cli.verb_words import WORDS  # noqa: PLC0415 - `list` and `--help` do without it

    WORDS[name](verb)


def _common() -> argparse.ArgumentParser:
    common = argparse.ArgumentParser(add_help=False)
    common.add_argument("--data", type=Path, metavar="DIR", help="the data folder (default: the platform’s)")
    common.add_argument("--json", action="store_true", help="print one JSON object for machines")
    common.add_argument("--quiet", action="store_true", help="say nothing about progress")
    common.add_argument(
        "--passphrase-file",
        type=Path,
        metavar="FILE",
        help="read the passphrase from the first line of FILE, - for standard input; never from the arguments",
    )
    return common
