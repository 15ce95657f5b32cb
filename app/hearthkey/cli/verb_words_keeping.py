"""The words of the verbs about what goes along with a bundle, what became of it, and what is kept."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path

from hearthkey.cli.verb_words_renewal import RENEWAL
from hearthkey.core.bundle import Form
from hearthkey.core.languages import Language


def _copies(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="of one device; without it, of the household")
    act = verb.add_mutually_exclusive_group()
    act.add_argument("--look", type=int, metavar="N", help="look whether the copy N is still where it was written")
    act.add_argument("--tidy", type=int, metavar="N", help="delete the copy N, if it is still exactly what was written")
    act.add_argument("--tidied", type=int, metavar="N", help="the copy N is gone")
    act.add_argument("--not-tidied", type=int, metavar="N", help="it is not gone after all")
    verb.add_argument("--yes", action="store_true", help="delete without asking")


def _sheet(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="whose and which (Ines phone)")
    verb.add_argument(
        "--form", choices=[one.value for one in Form], help="what it goes with (default: what suits the device best)"
    )
    verb.add_argument("--language", metavar="CODE", help="en, de or es; remembered for this person")
    verb.add_argument("--paper", default="a4", metavar="PAPER", help="a4 (default) or letter")
    verb.add_argument("--into", type=Path, default=Path(), metavar="DIR", help="default: here")
    verb.add_argument("--call", metavar="TEXT", help="whom to call, a name and a number; remembered; empty forgets it")
    one = verb.add_mutually_exclusive_group()
    one.add_argument("--card", action="store_true", help="the card with the passphrase alone, instead of the sheet")
    one.add_argument(
        "--messages", choices=["written", "spoken"], help="a message instead: to go with the file, or to be said"
    )


def _own_words(verb: argparse.ArgumentParser) -> None:
    verb.add_argument(
        "--own-passphrase",
        type=Path,
        metavar="FILE",
        help="sealed copies have a passphrase of their own: FILE’s first line",
    )


def _seal(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--into", type=Path, metavar="DIR", help="a folder or a stick (default: the data folder)")
    verb.add_argument("--gateway", action="store_true", help="bring it to the gateway; later ones follow by themselves")
    verb.add_argument("--list", action="store_true", help="only list the copies that were made")
    _own_words(verb)


def _scans(source: argparse._MutuallyExclusiveGroup) -> None:
    source.add_argument(
        "--paper",
        type=Path,
        nargs="+",
        metavar="FILE",
        help="a paper instead: scans (PNG, JPEG), text files with typed lines, in any order",
    )


def _try(verb: argparse.ArgumentParser) -> None:
    source = verb.add_mutually_exclusive_group()
    source.add_argument("file", type=Path, nargs="?", metavar="FILE", help="a sealed copy (default: the newest)")
    source.add_argument("--gateway", action="store_true", help="fetch the newest copy that lies at the gateway")
    _scans(source)
    _own_words(verb)


def _restore(verb: argparse.ArgumentParser) -> None:
    source = verb.add_mutually_exclusive_group(required=True)
    source.add_argument("file", type=Path, nargs="?", metavar="FILE", help="a sealed copy")
    _scans(source)
    verb.add_argument("--key-file", action="store_true", help="keep secrets as files, where there is no keyring")
    _own_words(verb)
    verb.add_argument("--yes", action="store_true", help="do it without asking")
    verb.add_argument("--plan", action="store_true", help="say what would happen, and do nothing")


def _paper(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--into", type=Path, required=True, metavar="FILE.pdf", help="the file to write")
    verb.add_argument("--paper", default="a4", metavar="PAPER", help="a4 (default) or letter")
    languages = [one.value for one in Language]
    verb.add_argument("--language", choices=languages, default=languages[0], help="of the words around it (en)")


def _succession(verb: argparse.ArgumentParser) -> None:
    verb.add_argument(
        "act",
        nargs="?",
        choices=["status", "begin", "go-on", "stolen", "take-back", "finish"],
        metavar="STEP",
        help="status (default), begin, go-on, stolen (since it began), take-back or finish",
    )
    why = verb.add_mutually_exclusive_group()
    why.add_argument("--stolen", action="store_true", help="the CA key may be in other hands: how to decide")
    why.add_argument("--lost", action="store_true", help="the CA key or its passphrase is gone: what works until when")
    verb.add_argument("--told", action="store_true", help="the gateway has the files, which nobody here can look at")
    verb.add_argument("--anyway", action="store_true", help="though some devices have no new bundle yet")
    verb.add_argument("--yes", action="store_true", help="do it without asking")


def _deputy(verb: argparse.ArgumentParser) -> None:
    acts = ("show", "make", "try", "restore", "stop-set")
    verb.add_argument("act", nargs="?", default="show", choices=acts, metavar="ACT", help=f"{', '.join(acts)} (show)")
    verb.add_argument("file", nargs="?", type=Path, metavar="FILE", help="restore: a sealed copy")
    verb.add_argument("--into", type=Path, metavar="DIR", help="make, stop-set: where the papers or files go")
    verb.add_argument(
        "--part",
        type=Path,
        action="append",
        default=[],
        metavar="FILE",
        help="try, restore: a text with the words, or a picture of the code; repeatable (default: asked for)",
    )
    verb.add_argument("--language", default="en", metavar="CODE", help="en (default), de or es")
    verb.add_argument("--paper", default="a4", metavar="PAPER", help="a4 (default) or letter")
    verb.add_argument("--key-file", action="store_true", help="keep secrets as files, where there is no keyring")
    _own_words(verb)
    verb.add_argument("--yes", action="store_true", help="do it without asking")
    verb.add_argument("--plan", action="store_true", help="restore: say what would happen, and do nothing")


KEEPING: dict[str, Callable[[argparse.ArgumentParser], None]] = RENEWAL | {
    "copies": _copies,
    "sheet": _sheet,
    "seal": _seal,
    "try": _try,
    "restore": _restore,
    "paper": _paper,
    "succession": _succession,
    "deputy": _deputy,
}
