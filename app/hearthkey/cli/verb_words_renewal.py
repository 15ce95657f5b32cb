"""The words of the verbs about what follows: renewals, replaced devices, visits, and who leaves."""

from __future__ import annotations

import argparse
from collections.abc import Callable


def _agreed(verb: argparse.ArgumentParser, *, asks: bool = True) -> None:
    if asks:
        verb.add_argument("--yes", action="store_true", help="do it without asking")
    verb.add_argument("--plan", action="store_true", help="say what would happen, and do nothing")


def _renew(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="*", metavar="DEVICE", help="whose and which (Ines phone); several for a round")
    verb.add_argument(
        "--overlap", type=int, default=30, metavar="DAYS", help="how long old and new both get in (30), at most"
    )
    verb.add_argument("--until", metavar="DATE", help="one device: the last day of the new pass (UTC)")
    whose = verb.add_mutually_exclusive_group()
    whose.add_argument("--all-due", metavar="DATE", help="every device that would lose access by then")
    whose.add_argument(
        "--visit", nargs=2, metavar=("PERSON", "DATE"), help="keep a visit, and renew what ends before the next one"
    )
    whose.add_argument(
        "--take-back", action="store_true", help="take a renewal back that is in the tray; the old pass stays"
    )
    _agreed(verb)


def _supersede(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="whose old pass goes, because you say so")
    verb.add_argument("--proved", action="store_true", help="all old passes whose new one was seen to get in")
    _agreed(verb)


def _replace(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", metavar="DEVICE", help="the old one: whose and which")
    verb.add_argument("--label", required=True, metavar="NAME", help="what it is called, for instance new phone")
    verb.add_argument("--kind", required=True, metavar="KIND", help="what it is; hearthkey kinds shows them all")
    _agreed(verb)


def _leaves(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("person", metavar="PERSON", help="who leaves the household")
    _agreed(verb)


def _visit(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("person", nargs="?", metavar="PERSON", help="whom; without, every visit that is planned")
    verb.add_argument("day", nargs="?", metavar="DATE", help="when, for instance 2027-06-12")
    verb.add_argument("--call-off", action="store_true", help="it does not take place")


RENEWAL: dict[str, Callable[[argparse.ArgumentParser], None]] = {
    "renew": _renew,
    "supersede": _supersede,
    "replace": _replace,
    "leaves": _leaves,
    "visit": _visit,
}
