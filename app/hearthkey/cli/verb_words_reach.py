"""The words of the verbs about the way in from outside."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path


def _reach(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--plan", action="store_true", required=True, help="work out what can be, and ask nobody")
    verb.add_argument(
        "--home-subnet", action="append", metavar="SUBNET", help="as if this were at home; repeatable, nothing changes"
    )
    verb.add_argument("--tunnel-subnet", metavar="SUBNET", help="as if inner addresses were these; nothing changes")
    verb.add_argument("--outer-mtu", type=int, metavar="N", help="as if the way out had N octets; nothing changes")
    verb.add_argument("--router", metavar="ADDRESS", help="the internet address that the router’s own pages show")
    verb.add_argument("--upload", type=int, metavar="KBITS", help="what the line sends, in kbit/s")
    verb.add_argument("--board", type=int, metavar="KBITS", help="what the gateway encrypts, in kbit/s")


def _forwarding_sheet(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--gateway-inside", metavar="ADDRESS", help="the gateway’s own address at home")
    verb.add_argument("--router", metavar="ADDRESS", help="the internet address that the router’s own pages show")
    verb.add_argument("--into", type=Path, metavar="FILE", help="write it as PDF (default: show it here)")


def _moving_day(verb: argparse.ArgumentParser) -> None:
    acts = ["begin", "tick", "take-back", "end"]
    verb.add_argument("act", nargs="?", choices=acts, help="keep the move, or change its list; without, it is shown")
    verb.add_argument("step", nargs="?", metavar="STEP", help="of the list, for instance try-copy")
    verb.add_argument("--new-provider", action="store_true", help="another provider’s line")
    verb.add_argument("--new-router", action="store_true", help="another router")
    verb.add_argument("--new-box", action="store_true", help="another box as the gateway")
    verb.add_argument("--new-host", metavar="HOST", help="another name for the gateway")
    verb.add_argument(
        "--new-home-subnet", action="append", metavar="SUBNET", help="what will be at home instead; repeatable"
    )
    verb.add_argument("--call-off", action="store_true", help="end it though steps are open")


def _check_way_in(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--at", metavar="HOST", help="another name or address than the household’s; it is not kept")
    verb.add_argument("--router", metavar="ADDRESS", help="the internet address that the router’s own pages show")
    verb.add_argument(
        "--at-home", action="store_true", help="this computer is at home, though its address does not tell"
    )
    verb.add_argument("--unkept", action="store_true", help="keep nothing; runs beside another copy of the app")
    verb.add_argument("--last", action="store_true", help="show what was found last, and ask nobody")


REACHING: dict[str, Callable[[argparse.ArgumentParser], None]] = {
    "reach": _reach,
    "forwarding-sheet": _forwarding_sheet,
    "moving-day": _moving_day,
    "check-way-in": _check_way_in,
}
