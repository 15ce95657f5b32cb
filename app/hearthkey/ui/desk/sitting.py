"""One sitting at the desk: whose turn it is, what is done with the device in hand, and when it is over."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, Signal

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.ticket_events import Ending, Event
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.desk.showing import Act, act
from hearthkey.ui.desk.turns import Turns, sitting
from hearthkey.ui.drives import Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.text import mended, spoken


class Sitting(QObject):
    """Leads from one device to the next; what of each may be on the screen, its `leaving` decides.

    Signals:
        changed: look again.
        said: something to be said aloud.
        over: nothing is open any more.
    """

    changed = Signal()
    said = Signal(str)
    over = Signal()

    def __init__(self, errands: Errands, sticks: Sticks, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self.turns: Turns | None = None
        self.leaving = Leaving(errands, sticks, self)
        self.is_big = False
        self.asking = False
        self.erasing = False
        self.trouble = ""
        self.leaving.changed.connect(self.changed)
        self.leaving.pickup.ended.connect(self._ended)

    # Coming and going

    def seat(self, passes: Sequence[Pass]) -> None:
        """Lay out the devices, one at least, with the first in hand and nothing open."""
        self._forget()
        self.turns = sitting(passes)
        self.leaving.open(passes[0])

    def begin(self, passes: Sequence[Pass]) -> None:
        """Lay them out, and open the first pick-up."""
        self.seat(passes)
        self._take(0)

    def leave(self) -> None:
        """Close what is open, and forget everything."""
        if self.turns is not None:
            self._forget()
            self.over.emit()

    def _forget(self) -> None:
        self.turns = None
        self.is_big = self.asking = self.erasing = False
        self.trouble = ""
        self.leaving.leave()
        self.leaving.chosen = None

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Look at the same devices as they are now; whoever has ended or was revoked leaves the table."""
        before = self.turns
        if before is None:
            return
        now = before.seen(snapshot.passes, snapshot.at)
        if now is None:
            self.leave()
            return
        self.turns = now
        if now.current.one.serial != before.current.one.serial:
            self._take(now.at)
        elif now.current.done and not before.current.done:
            self.asking = False
            self.leaving.leave()
        else:
            self.changed.emit()

    # From one to the next

    def onward(self) -> None:
        """The next one's turn; where this one has its file, first ask whether it works there."""
        turns = self.turns
        if turns is None or self.asking:
            return
        if turns.current.picked_up is not None and not turns.current.done:
            self._ask()
        elif turns.next is not None or turns.current.done:
            self.put_off()

    def back(self) -> None:
        """The one before."""
        if self.turns is not None and not self.asking and self.turns.previous is not None:
            self._take(self.turns.previous)

    def put_off(self) -> None:
        """Go on without it."""
        number = None if self.turns is None else self.turns.next
        if self.erasing:
            return
        if number is None:
            self.leave()
        else:
            self._take(number)

    def _take(self, number: int) -> None:
        if self.turns is None:
            return
        self.turns = self.turns.go(number)
        self.is_big = self.asking = False
        self.trouble = ""
        self.leaving.open(self.turns.current.one)
        if not self.turns.current.done and self.turns.current.picked_up is None:
            self.leaving.open_pickup()

    # The end of a hand-over

    def _ask(self) -> None:
        if self.leaving.busy:
            return
        self._cover_words()
        self.is_big, self.asking, self.trouble = False, True, ""
        self.changed.emit()

    def stay(self) -> None:
        """It does not work there yet."""
        if not self.erasing:
            self.asking, self.trouble = False, ""
            self.changed.emit()

    def confirm(self) -> None:
        """It works there: erase the key here. It cannot be taken back."""
        turns = self.turns
        if turns is None or not self.asking or self.erasing:
            return
        serial = turns.current.one.serial
        self.erasing = True
        self.leaving.leave()

        def done(changes: Changes) -> None:
            self.said.emit(spoken(changes.sentence))
            self.erasing = False
            if self.turns is not None and self.turns.current.one.serial == serial:
                self.put_off()

        def failed(error: HearthkeyError) -> None:
            self.erasing, self.trouble = False, mended(error)
            self.said.emit(self.trouble)
            self.changed.emit()

        self._errands.hand_over(serial, self, done, failed)

    # What the two buttons at the left do

    def act(self) -> None:
        """Do what the first button says."""
        if self.turns is None or self.leaving.busy or self.asking:
            return
        one = act(self.turns.current, self.leaving)
        if one in {Act.COVER_CODE, Act.SHOW_WORDS} or (one is Act.AGAIN and self.leaving.screen.secret):
            self.is_big = False
            self.leaving.show_passphrase()
        elif one in {Act.SHOW_CODE, Act.COVER_WORDS}:
            self._cover_words()
        elif one in {Act.OPEN, Act.AGAIN}:
            self.leaving.open_pickup()

    def second(self) -> None:
        """Larger or smaller; or another code, where the first one is gone."""
        if self.turns is None or self.asking:
            return
        if self.leaving.screen.side in {Side.TICKET, Side.PASSPHRASE}:
            self.is_big = not self.is_big
            self.changed.emit()
        elif self.turns.current.picked_up is not None and not self.turns.current.done and not self.leaving.busy:
            self.turns = self.turns.begun_anew()
            self.leaving.open_pickup()

    def _cover_words(self) -> None:
        if self.turns is not None and self.leaving.screen.side is Side.PASSPHRASE:
            self.turns = self.turns.typed()
            self.is_big = False
            self.leaving.back()

    def _ended(self, ending: Event) -> None:
        self.is_big = self.is_big and self.leaving.screen.side is Side.PASSPHRASE
        if self.turns is not None and ending.ending is Ending.PICKED_UP:
            self.turns = self.turns.picked_up(ending.at)
        self.changed.emit()
