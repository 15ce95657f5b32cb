"""The words of the verbs about a household that was made by hand."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path


def _look_over(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("folder", type=Path, metavar="FOLDER", help="where the CA’s files lie; nothing in it is changed")
    verb.add_argument("--gateway-host", "--host", metavar="HOST", help="the name that devices reach from outside")
    _key_passphrase(verb)


def _key_passphrase(verb: argparse.ArgumentParser) -> None:
    verb.add_argument(
        "--key-passphrase", type=Path, metavar="FILE", help="what locks the CA’s key in FOLDER: FILE’s first line"
    )


def _adopt(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("folder", type=Path, metavar="FOLDER", help="where the CA’s files lie; nothing in it is changed")
    verb.add_argument("--name", required=True, metavar="NAME", help="what the family calls the place")
    verb.add_argument(
        "--gateway-host", "--host", required=True, metavar="HOST", help="the name that devices reach from outside"
    )
    verb.add_argument(
        "--home-subnet",
        "--home",
        action="append",
        required=True,
        metavar="SUBNET",
        help="for instance 198.51.100.0/24; repeatable",
    )
    verb.add_argument("--tunnel-subnet", metavar="SUBNET", help="inner addresses (default: quiet, one in 10/8)")
    verb.add_argument(
        "--dns-server", "--dns", action="append", default=[], metavar="ADDRESS", help="asked inside; repeatable"
    )
    verb.add_argument(
        "--tunnel", default="split", metavar="KIND", help="split (default) or full: all traffic through home"
    )
    verb.add_argument("--identity-suffix", metavar="SUFFIX", help="what identities of new devices end in")
    verb.add_argument(
        "--gateway-key-set", default="broad", metavar="SET", help="for a gateway certificate that has to be made"
    )
    _key_passphrase(verb)
    verb.add_argument("--key-file", action="store_true", help="keep secrets as files, where there is no keyring")
    verb.add_argument("--practice", action="store_true", help="a practice household, marked as such everywhere")
    verb.add_argument("--yes", action="store_true", help="do it without asking")
    verb.add_argument("--plan", action="store_true", help="say what would happen, and do nothing")


def _name_pass(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("serial", nargs="?", metavar="SERIAL", help="of the pass; without it, those that wait are listed")
    verb.add_argument("--person", metavar="PERSON", help="whose it is")
    verb.add_argument("--device", metavar="DEVICE", help="which device, for instance phone")


ADOPTING: dict[str, Callable[[argparse.ArgumentParser], None]] = {
    "look-over": _look_over,
    "adopt": _adopt,
    "name-pass": _name_pass,
}
