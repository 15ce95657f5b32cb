"""Asks for passphrases and for a yes; never reads a passphrase from the arguments."""

from __future__ import annotations

import getpass
import sys
from argparse import Namespace
from pathlib import Path

from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Cancelled, Refused
from hearthkey.core.secret import Secret
from hearthkey.services import passphrases
from hearthkey.services.house import House

_TRIES = 3
_LONGEST_LINE = 4096
"""Characters. A file without a line end may have no end at all."""


def from_file(path: Path) -> Secret[str]:
    """The first line of a file, or of standard input for ``-``.

    Raises:
        Refused: file-missing, file-unreadable, passphrase-empty.
    """
    try:
        text = sys.stdin.readline(_LONGEST_LINE) if str(path) == "-" else _first_line(path)
    except FileNotFoundError:
        raise Refused("file-missing", path=str(path)) from None
    except (OSError, UnicodeDecodeError) as error:
        raise Refused("file-unreadable", path=str(path), seen=str(error)) from error
    line = text.strip()
    if not line:
        raise Refused("passphrase-empty")
    return Secret(line)


def _first_line(path: Path) -> str:
    with path.open(encoding="utf-8") as file:
        return file.readline(_LONGEST_LINE)


def at_a_terminal() -> bool:
    """Whether somebody can be asked."""
    return sys.stdin is not None and sys.stdin.isatty()


def passphrase(arguments: Namespace, question: str) -> Secret[str]:
    """One passphrase, from the file that was named or from the terminal.

    Raises:
        Refused: passphrase-needed, and as `from_file`.
    """
    if arguments.passphrase_file is not None:
        return from_file(arguments.passphrase_file)
    if not at_a_terminal():
        raise Refused("passphrase-needed")
    return Secret(getpass.getpass(f"{question}: ").strip())


def unlock(house: House, arguments: Namespace, teller: Teller) -> None:
    """Open the CA key, with a few tries at a terminal.

    Raises:
        Refused, Unavailable: as `Keyholder.unlock`.
    """
    tries = 1 if arguments.passphrase_file is not None else _TRIES
    for left in reversed(range(tries)):
        secret = passphrase(arguments, "Household passphrase")
        teller.progress("unlocking")
        try:
            house.keyholder.unlock(house.register, house.vault, secret)
        except Refused as error:
            if error.code != "wrong-passphrase" or not left:
                raise
            teller.remark(error)
        else:
            house.sealing.make_ready(secret)
            return


def new_passphrase(house: House, arguments: Namespace, teller: Teller) -> Secret[str]:
    """The householder's passphrase: seven words offered by the app, or their own, confirmed once.

    A file counts as confirmed: it can be read again.

    Raises:
        Refused: passphrase-needed, passphrase-weak, passphrase-differs and the rest of `passphrases`.
    """
    if arguments.passphrase_file is not None:
        return passphrases.chosen(from_file(arguments.passphrase_file).reveal())
    if not at_a_terminal():
        raise Refused("passphrase-needed")
    offered = house.founding.offer_passphrase()
    teller.aside("The household needs a passphrase. These seven words were drawn by lot:")
    teller.aside(f"\n    {offered.reveal()}\n")
    teller.aside("Write them down where the family’s papers are, then type them here; or type one of your own.")
    typed = getpass.getpass("Passphrase: ").strip()
    if offered == Secret(typed):
        return offered
    own = passphrases.chosen(typed)
    passphrases.confirmed(own, getpass.getpass("Not the seven words, so once more: "))
    return own


def agree(arguments: Namespace, teller: Teller, question: str = "Do it?") -> None:
    """Go on only with a yes.

    Raises:
        Cancelled: at a terminal, with any other answer.
        Refused: yes-needed, where nobody can be asked.
    """
    if arguments.yes:
        return
    if teller.as_json or not at_a_terminal():
        raise Refused("yes-needed")
    teller.aside(f"{question} [y/N]")
    if sys.stdin.readline().strip().casefold() not in {"y", "yes"}:
        raise Cancelled("cancelled")
