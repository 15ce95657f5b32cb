"""Runs one verb: finds its module, opens the household, turns errors into sentences and exit codes."""

from __future__ import annotations

import importlib
import os
import sys
from argparse import Namespace
from collections.abc import Callable, Sequence

from hearthkey.cli.arguments import WRITING, parser
from hearthkey.cli.teller import CANCELLED, DONE, Teller
from hearthkey.core.errors import Bug, Cancelled, HearthkeyError, Unavailable
from hearthkey.core.household import FILE, KEYRING
from hearthkey.services.house import House, OpenHouse, WindowDoor

TRACE = "HEARTHKEY_TRACE"
"""Set it to see where a fault of the app comes from."""

Verb = Callable[[House, Namespace, Teller], None]

_MODULES = {
    "found": "founding",
    "settle": "settling",
    "add": "devices",
    "list": "board",
    "show": "showing",
    "export": "leaving",
    "hand-over": "leaving",
    "ticket": "ticket",
    "prove": "prove",
    "rehearse": "leaving",
    "stop": "withdrawing",
    "let-in": "withdrawing",
    "revoke": "withdrawing",
    "lists": "withdrawing",
    "renew": "renewing",
    "supersede": "renewing",
    "visit": "renewing",
    "replace": "departing",
    "leaves": "departing",
    "gateway": "gateway",
    "deliver": "gateway",
    "pack": "gateway",
    "dates": "dates",
    "template": "templates",
    "secrets": "templates",
    "copies": "copies",
    "kinds": "kinds",
    "diary": "diary",
    "sheet": "sheets",
    "seal": "sealed",
    "try": "sealed",
    "restore": "sealed",
    "look-over": "adopting",
    "adopt": "adopting",
    "name-pass": "adopting",
    "paper": "paper",
    "succession": "succession",
    "deputy": "deputy",
    "tour": "tour",
    "reach": "reach",
    "forwarding-sheet": "forwarding",
    "moving-day": "moving",
    "check-way-in": "checking",
}
WINDOW = "window"


def run(words: Sequence[str], open_house: OpenHouse, door: WindowDoor | None = None) -> int:
    """Run the command line and return the exit code.

    Args:
        words: without the program's name.
        open_house: opens the household.
        door: the way to the window, where there is one.
    """
    arguments = parser(words).parse_args(words)
    teller = Teller(as_json=arguments.json, quiet=arguments.quiet)
    try:
        if arguments.verb == WINDOW:
            return _window(arguments, door)
        _run(arguments, teller, open_house, door)
    except (KeyboardInterrupt, EOFError, Cancelled):
        teller.aside("Cancelled. Nothing is half done.")
        return CANCELLED
    except HearthkeyError as error:
        return teller.failure(error)
    except BrokenPipeError:
        # Whoever read the result has read enough; Python would complain once more when it closes standard output.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except OSError as error:
        return teller.failure(Unavailable("world", path=str(error.filename or ""), seen=error.strerror or repr(error)))
    except Exception as error:
        if TRACE in os.environ:
            raise
        return teller.failure(Bug("unforeseen", seen=f"{type(error).__name__}: {error}"))
    return DONE


def _window(arguments: Namespace, door: WindowDoor | None) -> int:
    if door is None:
        raise Unavailable("window-missing")
    return door.show(arguments.data, practice=arguments.practice)


def _writes(arguments: Namespace) -> bool:
    """Whether a verb changes the household, so that it wants to be the only copy that does."""
    if arguments.verb in {"lists", "deputy"}:
        return bool(
            arguments.sign or arguments.clock_was_ahead if arguments.verb == "lists" else arguments.act != "show"
        )
    if arguments.verb == "gateway":
        common = {"verb", "data", "json", "quiet", "passphrase_file", "yes", "forget", "look"}
        chosen = [value for name, value in vars(arguments).items() if name not in common]
        return arguments.forget or arguments.look or any(value is not None for value in chosen)
    if arguments.verb == "copies":
        return any(one is not None for one in (arguments.tidied, arguments.not_tidied, arguments.tidy))
    if arguments.verb in {"sheet", "visit"}:
        named = ("call", "language") if arguments.verb == "sheet" else ("person",)
        return any(getattr(arguments, name) is not None for name in named)
    if arguments.verb in {"template", "succession", "moving-day"}:
        acts = {"keep", "write", "forget", "begin", "go-on", "stolen", "take-back", "finish", "tick", "end"}
        return arguments.act in acts
    looks = any(getattr(arguments, name, None) for name in ("plan", "touches", "unkept", "last", "at"))
    return arguments.verb in WRITING and (arguments.verb == "deliver" or not looks)


def _run(arguments: Namespace, teller: Teller, open_house: OpenHouse, door: WindowDoor | None) -> None:
    module = importlib.import_module(f"hearthkey.cli.{_MODULES[arguments.verb]}")
    if arguments.verb == "tour":
        module.tour_verb(open_house, arguments, teller, door)
        return
    verb: Verb = getattr(module, arguments.verb.replace("-", "_") + "_verb")
    writing = _writes(arguments)
    place = FILE if getattr(arguments, "key_file", False) else KEYRING
    with open_house(arguments.data, place=place, writing=writing) as opened:
        verb(opened, arguments, teller)
        if writing and arguments.verb not in {"seal", "try", "check-way-in"}:
            importlib.import_module("hearthkey.cli.sealed").keep_up(opened, teller, carry=arguments.verb == "deliver")
