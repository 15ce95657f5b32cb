"""One bundle on its way out: what was asked for, what came back, and what of it may be on screen."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import Enum
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from hearthkey.core.copies import CopyWay
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.services.bundling import Written
from hearthkey.services.picking_up import carried, suited
from hearthkey.ui.drives import Drive, Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.own_ways import OwnWay
from hearthkey.ui.pages.two_channels import Screen, Side
from hearthkey.ui.pages.ways_out import Way, WayOut
from hearthkey.ui.pickup.pickup import Pickup


class Pull(Enum):
    """Whether a stick may be pulled."""

    NO_STICK = "no stick"
    LETTING_GO = "letting go"
    FREE = "free"
    BY_HAND = "by hand"


@dataclass(frozen=True)
class Saved:
    """A file that was written, read back, and lies somewhere.

    Args:
        way: how it left.
        file: where it lies.
        drive: the stick, or None.
        pull: whether that may be pulled.
    """

    way: Way
    file: Path
    drive: Drive | None = None
    pull: Pull = Pull.NO_STICK


class Leaving(QObject):
    """Asks the household for forms and passphrase, and keeps the two apart.

    The passphrase is held only while the screen shows it; asking for anything else lets go of it
    first. While one thing is under way, nothing else is begun.

    Signals:
        changed: ask for `screen` and what belongs to it.
    """

    changed = Signal()

    def __init__(self, errands: Errands, sticks: Sticks, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._sticks = sticks
        self.screen = Screen()
        self.chosen: Pass | None = None
        self.way: Way | None = None
        self.codes: tuple[Written, ...] = ()
        self.saved: Saved | None = None
        self.drives: tuple[Drive, ...] = ()
        self.trouble: HearthkeyError | None = None
        self.passphrase: Secret[str] | None = None

        self.pickup = Pickup(errands, self)
        self.pickup.changed.connect(self.changed)
        self.pickup.ended.connect(self._over)

    @property
    def serial(self) -> str:
        """Of the pass; empty where none is chosen."""
        return "" if self.chosen is None else self.chosen.serial

    @property
    def busy(self) -> bool:
        """Whether an answer is awaited."""
        return self.screen.side is Side.WORKING

    def open(self, chosen: Pass) -> None:
        """Begin with a pass; nothing of another one stays."""
        self.leave()
        self.chosen = chosen
        self.changed.emit()

    def leave(self) -> None:
        """Let go of everything."""
        self.way, self.codes, self.saved, self.trouble = None, (), None, None
        self.pickup.close()
        self._turn(self.screen.leave())

    def back(self) -> None:
        """Take what is shown off the screen."""
        if self.screen.side in {Side.STICKS, Side.TROUBLE} and self.screen.under is Side.REST:
            self.way = None
        self._turn(self.screen.back())

    def cover(self) -> None:
        """Hide the passphrase, because the bundle is about to leave by hand."""
        if self.screen.side is Side.PASSPHRASE or self.screen.secret:
            self.leave()

    # What can be asked for

    def show_passphrase(self) -> None:
        """Cover the carrier, then ask for the passphrase."""
        chosen = self._free()
        if chosen is None:
            return
        self._turn(self.screen.ask_passphrase())
        question = self.screen.question

        def came(secret: Secret[str]) -> None:
            if self._answers(question, Side.PASSPHRASE):
                self.passphrase = secret
                self.changed.emit()

        self._errands.passphrase(chosen.serial, self, came, self._failed(question))

    def show_codes(self) -> None:
        """Ask for the codes."""
        chosen, question = self._begin(WayOut.CODES)
        if chosen is None:
            return

        def came(files: list[Written]) -> None:
            if self._answers(question, Side.CODES):
                self.codes = tuple(files)
                self.changed.emit()

        self._errands.codes(chosen.serial, self, came, self._failed(question))

    def open_pickup(self, address: str | None = None) -> None:
        """Open a ticket, at the best address or another one."""
        chosen, question = self._begin(WayOut.TICKET)
        if chosen is None:
            return

        def came() -> None:
            if self._answers(question, Side.TICKET):
                self.changed.emit()
            else:
                self.pickup.close()

        last = self._errands.last
        form = WayOut.TICKET.form if last is None else suited(last.kinds.of(chosen.kind))
        self.pickup.open(chosen, form, address, came, self._failed(question))

    def close_pickup(self) -> None:
        """Close the ticket before anybody picked it up."""
        self.leave()

    def _over(self, _ending: object) -> None:
        self.screen = self.screen.end()
        self.changed.emit()

    def look_for_sticks(self) -> None:
        """Ask what is plugged in."""
        chosen, question = self._begin(WayOut.STICK)
        if chosen is None:
            return

        def came(drives: tuple[Drive, ...]) -> None:
            if self._answers(question, Side.STICKS):
                self.drives = drives
                self.changed.emit()

        self._sticks.look(self, came, self._failed(question))

    def save(self, way: Way, folder: Path, drive: Drive | None = None) -> None:
        """Write a form, one of ours only after its rehearsal; a stick is let go of afterwards."""
        chosen, question = self._begin(way)
        if chosen is None:
            return

        def came(changes: Changes) -> None:
            pull = Pull.NO_STICK if drive is None else Pull.LETTING_GO
            if self._answers(question, Side.SAVED):
                self.saved = Saved(way, Path(changes.files[0]), drive, pull)
                self.changed.emit()
            if drive is not None:
                self._sticks.let_go(
                    drive, lambda: self._let_go(drive, Pull.FREE), lambda: self._let_go(drive, Pull.BY_HAND)
                )

        failed = self._failed(question)
        by, place = (CopyWay.FOLDER, "") if drive is None else (CopyWay.STICK, drive.name)
        if isinstance(way, OwnWay):
            self._errands.write(way.template, chosen.serial, folder, self, came, failed, way=by, place=place)
        else:
            last = self._errands.last
            form = way.form if drive is None or last is None else carried(last.kinds.of(chosen.kind))
            self._errands.export(
                chosen.serial, form, folder, self, lambda done: came(done.changes), failed, way=by, place=place
            )

    # How answers arrive

    def _free(self) -> Pass | None:
        return None if self.busy else self.chosen

    def _begin(self, way: Way) -> tuple[Pass | None, int]:
        chosen = self._free()
        if chosen is not None:
            self.way, self.codes, self.saved, self.trouble = way, (), None, None
            self.pickup.close()
            self._turn(self.screen.ask())
        return chosen, self.screen.question

    def _answers(self, question: int, side: Side) -> bool:
        """Move on, if this is the answer that is awaited."""
        screen = self.screen.answer(question, side)
        moved = screen is not self.screen
        self.screen = screen
        return moved

    def _failed(self, question: int) -> Callable[[HearthkeyError], None]:
        def failed(error: HearthkeyError) -> None:
            if self._answers(question, Side.TROUBLE):
                self.trouble = error
                self.changed.emit()

        return failed

    def _let_go(self, drive: Drive, pull: Pull) -> None:
        if self.saved is not None and self.saved.drive == drive:
            self.saved = replace(self.saved, pull=pull)
            self.changed.emit()

    def _turn(self, screen: Screen) -> None:
        self.screen = screen
        if screen.side is not Side.PASSPHRASE:
            self.passphrase = None
        self.changed.emit()
