"""Writes down every copy of a bundle that leaves: first that it will, then, with its diary line, that it has.

Register and disk cannot share a transaction, so the row goes first, as names of secrets do. Killed in between, the
app leaves a row that says "perhaps" and never a file that nobody knows of.
"""

from __future__ import annotations

import contextlib
import hashlib
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from pathlib import Path

from hearthkey.core import copies as rules
from hearthkey.core.bundle import Form
from hearthkey.core.copies import MARK_DIGITS, Came, Copy, CopyFile, CopyWay
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.core.sentences import copies as sentences
from hearthkey.services.bundling import Written
from hearthkey.services.ports import Change, Files, Register
from hearthkey.services.writing_diary import note

TEMPLATE = "template:"
"""How the form of a copy begins that the householder's own template wrote; the template's name follows."""

_SLACK = 64 * 1024
"""Octets beside the files themselves: names, clusters, the half file that is renamed."""


def marks(files: Iterable[Written]) -> tuple[CopyFile, ...]:
    """Names and marks of files that are about to leave."""
    return tuple(CopyFile(one.name, hashlib.sha256(one.data).hexdigest()[:MARK_DIGITS]) for one in files)


def to_folder(serial: str, form: str, folder: Path, place: str, way: CopyWay, files: Sequence[Written]) -> Copy:
    """A copy that goes into a folder; the moment is put in by `leaving`."""
    whole = str(folder.absolute())
    return Copy(serial, form, way, place or whole, whole, marks(files), datetime.min)  # noqa: DTZ901 - see above


def check_room(files: Files, folder: Path, leaving: Sequence[Written]) -> None:
    """Refuse before anything is written what does not fit.

    Raises:
        Refused: no-room-for-copy.
    """
    free, wanted = files.free(folder), sum(len(one.data) for one in leaving) + _SLACK
    if free is not None and free < wanted:
        raise Refused("no-room-for-copy", path=str(folder), free=free // 1024, wanted=-(-wanted // 1024))


class Leaving:
    """One copy between its two rows; `made` belongs into the transaction that has its diary line."""

    def __init__(self, number: int, copy: Copy) -> None:
        self._number = number
        self._copy = copy

    def made(self, change: Change) -> None:
        """It lies where it was to lie."""
        change.copy_made(self._number, self._copy)


@contextlib.contextmanager
def leaving(register: Register, files: Files, copy: Copy, now: datetime) -> Iterator[Leaving]:
    """Write a row for a copy, let it be made in the `with` block, and see to the row where that fails.

    The row then says "never" only if every one of its files was looked for and is not there; of a stick that was
    pulled nobody knows.

    Raises:
        Unavailable: as the register.
    """
    copy = replace(copy, made=now)
    was_there = Path(copy.folder).exists()
    with register.change() as change:
        number = change.expect_copy(copy)
    try:
        yield Leaving(number, copy)
    except BaseException:
        with contextlib.suppress(Unavailable):
            if _nothing_left(files, copy, was_there=was_there):
                with register.change() as change:
                    change.copy_never_made(number)
        raise


def _nothing_left(files: Files, copy: Copy, *, was_there: bool) -> bool:
    folder = Path(copy.folder)
    if not folder.exists():
        return not was_there
    return all(files.mark(folder / one.name) is None for one in copy.files)


class TicketCopy:
    """The copy that may leave by a ticket: expected while that is open, because nobody knows when a phone comes."""

    def __init__(self, change: Change, serial: str, offered: Mapping[str, Written], now: datetime) -> None:
        """Write its row, in the transaction that says that the ticket is opened."""
        self._copies = {
            one: Copy(serial, one, CopyWay.TICKET, "", "", marks([file]), now) for one, file in offered.items()
        }
        whole = Copy(serial, "+".join(offered), CopyWay.TICKET, "", "", marks(offered.values()), now)
        self._number = change.expect_copy(whole)

    def picked_up(self, change: Change, form: str, address: str) -> None:
        """A phone has it."""
        change.copy_made(self._number, replace(self._copies[form], place=address))

    def stayed(self, change: Change) -> None:
        """Nobody got the whole of it."""
        change.copy_never_made(self._number)


def shown(register: Register, chosen: Pass, now: datetime) -> None:
    """The codes of a bundle are about to be on the screen; one row for each showing, not for each code.

    Raises:
        Unavailable: as the register.
    """
    if rules.showing(register.copies([chosen.serial]), now) is not None:
        return
    copy = Copy(chosen.serial, Form.CODES.value, CopyWay.SCREEN, "", "", (), now)
    with register.change() as change:
        change.copy_made(change.expect_copy(copy), copy)
        note(register, change, verb="export", sentence=sentences.shown(chosen), now=now)


def dragged_out(register: Register, serial: str, now: datetime) -> None:
    """A bundle was dragged out of the window and somebody took it; whoever that was, the desktop does not say.

    Raises:
        Unavailable: as the register.
    """
    newest = _newest_drag(register, serial)
    if newest is None:
        return
    with register.change() as change:
        number = newest.number
        if newest.came is not Came.EXPECTED:  # the same file was taken once more
            number = change.expect_copy(replace(newest, made=now, came=Came.EXPECTED, tidied=None))
        change.copy_made(number, newest)


def not_dragged(register: Register, serial: str) -> None:
    """The file that lay ready for a drag is gone and nobody took it.

    Raises:
        Unavailable: as the register.
    """
    newest = _newest_drag(register, serial)
    if newest is not None and newest.came is Came.EXPECTED:
        with register.change() as change:
            change.copy_never_made(newest.number)


def _newest_drag(register: Register, serial: str) -> Copy | None:
    found = [one for one in register.copies([serial]) if one.way is CopyWay.DRAG and one.came is not Came.NEVER]
    return found[-1] if found else None
