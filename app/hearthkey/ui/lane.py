"""The household on the one lane: opened, looked at and asked there, heard of on the window's thread."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import ExitStack
from datetime import timedelta
from functools import partial
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import QObject, QTimer, Signal

from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import progress
from hearthkey.services import looking, practice
from hearthkey.services.house import House, OpenHouse
from hearthkey.services.opening import IDLE
from hearthkey.services.snapshot import Snapshot, take
from hearthkey.ui.sight import Sight, sight_after
from hearthkey.ui.tasks import Failed, Tasks, Then
from hearthkey.ui.text import said

T = TypeVar("T")


class Lane(QObject):
    """The household on its lane: open it, look at it, ask it, change it.

    Every method returns at once. `context` is the object that asks: if it is gone when the answer
    comes, the answer is dropped. What fails goes to `failed` if given, else to the signal `trouble`.

    Signals:
        seen: a new Snapshot, after opening and after every change.
        done: Changes of a verb that came from this window.
        trouble: a HearthkeyError that nobody else wanted.
        step: what is being done right now, in words; empty when it is over.
    """

    seen = Signal(object)
    done = Signal(object)
    trouble = Signal(object)
    step = Signal(str)

    def __init__(self, tasks: Tasks, open_house: OpenHouse, data: Path | None, *, place: str, service: str) -> None:
        super().__init__()
        self._tasks = tasks
        self._open_house = open_house
        self._data = data
        self._place = place
        self._service = service
        self._open = ExitStack()
        self._house: House | None = None
        self._idle = IDLE
        self._soon = QTimer(self, singleShot=True, interval=0)
        self._soon.timeout.connect(self.keep_ready)
        self._soon.timeout.connect(self.keep_copy)
        self._sight: Sight | None = None
        self._told: set[str] = set()
        self.last: Snapshot | None = None

    # Opening and looking

    def open(self, *, furnish: bool = False) -> None:
        """Open the household and look at it; a second copy only looks.

        Args:
            furnish: where there is no household yet, make the practice household first.
        """

        def work() -> Snapshot:
            snapshot = self._opened()
            if not furnish or snapshot.household is not None or snapshot.read_only:
                return snapshot
            practice.furnish(self._here(), self._progress)
            return self._look()

        self._ask(work, self, self._saw, None)

    def refresh(self) -> None:
        """Look again."""
        self._ask(self._look, self, self._saw, None)

    def refresh_then(self, then: Callable[[], None]) -> None:
        """Look again, and go on once everybody has seen it."""

        def over(snapshot: Snapshot) -> None:
            self._saw(snapshot)
            then()

        self._ask(partial(self._look, ask_keyring=False), self, over, None)

    def close(self) -> None:
        """Lock and close; what runs is finished first, but for a visit to the gateway, which is cut short."""
        self.cancel_visit()
        self._tasks.close(self._open.close)

    def cancel_visit(self) -> None:
        """End a visit to the gateway, where one can be under way."""

    def keep_ready(self) -> None:
        """Prepare for what may be needed while the household is locked."""

    def keep_copy(self) -> None:
        """Make a sealed copy, where there is something new in it."""

    def _opened(self) -> Snapshot:
        self._open.close()
        try:
            opening = self._open_house(self._data, place=self._place, writing=True, keyring_service=self._service)
            self._house = self._open.enter_context(opening)
        except Unavailable as error:
            if error.code not in {"second-copy", "folder-read-only"}:
                raise
            opening = self._open_house(self._data, place=self._place, writing=False, keyring_service=self._service)
            self._house = self._open.enter_context(opening)
        self._house.keyholder.lock_after(self._idle)
        return self._look()

    def _here(self) -> House:
        if self._house is None:
            raise Unavailable("register-unreadable", path=str(self._data or ""), seen="not open")
        return self._house

    def _look(self, *, ask_keyring: bool = True) -> Sight:
        """Look at everything, and work out here, on the lane, what the panels will ask of it; see `take`."""
        self._sight = sight_after(self._sight, take(self._here(), ask_keyring=ask_keyring))
        return self._sight

    def _saw(self, snapshot: Snapshot) -> None:
        self.last = snapshot
        self.seen.emit(snapshot)
        for file, trouble in snapshot.kinds.left_out:  # once each: the app goes on without them
            if file not in self._told:
                self._told.add(file)
                self.trouble.emit(trouble)

    # The shape of every errand

    def _ask(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed | None) -> None:
        def over(result: T) -> None:
            self.step.emit("")
            then(result)

        def trouble(error: HearthkeyError) -> None:
            self.step.emit("")
            (failed or self.trouble.emit)(error)

        self._tasks.lane(work, context, over, trouble)

    def _change(
        self, work: Callable[[], Changes], context: QObject, then: Then[Changes] | None, failed: Failed | None
    ) -> None:
        """Do a verb, look again, and only then tell: whoever hears of the change sees it too.

        What is kept ready follows when that is painted, and when whatever it leads to has been asked for.
        """

        def both() -> tuple[Changes, Snapshot]:
            changes = self._here().undoing.watch(work)
            return changes, self._look(ask_keyring=False)

        def over(result: tuple[Changes, Snapshot]) -> None:
            changes, snapshot = result
            self._saw(snapshot)
            self.done.emit(changes)
            self._soon.start()
            if then is not None:
                then(changes)

        self._ask(both, context, over, failed)

    def _remembered(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed | None) -> None:
        """Do something that has no sentence of its own but can be taken back, and look again."""

        def both() -> tuple[T, Snapshot]:
            result = self._here().undoing.watch(work)
            return result, self._look(ask_keyring=False)

        def over(result: tuple[T, Snapshot]) -> None:
            self._saw(result[1])
            then(result[0])

        self._ask(both, context, over, failed)

    def _progress(self, step: str, /, **facts: object) -> None:
        self.step.emit(said(progress.step(step, dict(facts))))

    def _device(self, identity: str) -> list[Pass]:
        return looking.find(self._here().register.passes(), identity)

    def lock(self) -> None:
        """Let go of the CA key."""

        def work() -> Snapshot:
            self._here().keyholder.lock()
            return self._look(ask_keyring=False)

        self._ask(work, self, self._saw, None)

    def look_at_lock(self) -> None:
        """Look whether the household has locked itself meanwhile, and tell if it has."""
        if self.last is None or self.last.locked or self._house is None:
            return

        def over(locked: bool) -> None:  # noqa: FBT001 - a result, not an option
            if locked:
                self.refresh()

        self._tasks.lane(lambda: self._here().keyholder.locked, self, over, self.trouble.emit)

    def lock_after(self, idle: timedelta) -> None:
        """Take another idle time."""
        self._idle = idle
        if self._house is not None:
            self._ask(lambda: self._here().keyholder.lock_after(idle), self, lambda _none: None, None)
