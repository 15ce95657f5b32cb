"""Takes local changes back, and does them again, while nothing outside goes by them yet.

What can be taken back is kept in memory: it ends with the app. Every verb is watched from outside, so that a new one
is taken back without knowing of it, as long as what it changes is part of `core.undo.Standing`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial
from typing import TypeVar

from hearthkey.core import phrases
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes, TakeBackPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import undo as sentences
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.undo import DEPTH, Deed, Final, Marks, Standing, differences, hindrance, kind_of
from hearthkey.services.listing import Listing
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Progress, silent
from hearthkey.services.settling import Settling, request_for
from hearthkey.services.sheet_ports import SheetChange
from hearthkey.services.superseding import Superseding
from hearthkey.services.undo_ports import UndoRegister
from hearthkey.services.undo_values import marks_of, standing_of, titles_of, write
from hearthkey.services.writing_diary import check_clock, note

T = TypeVar("T")

_FINAL = {
    Final.ENROLLED: "undo-enrolled",
    Final.RENEWED: "undo-renewed",
    Final.REPLACED: "undo-replaced",
    Final.TAKEN_BACK: "undo-taken-back",
    Final.SUPERSEDED: "undo-superseded",
    Final.SUCCESSION: "undo-succession",
    Final.HANDED_OVER: "undo-handed-over",
    Final.REVOKED: "undo-revoked",
    Final.PROVED: "undo-proved",
    Final.DELETED: "undo-deleted",
}


@dataclass(frozen=True)
class Offer:
    """What can be said of the next step back, and of the next one forth.

    Args:
        undo, redo: the words of the menu, None where there is none.
        remembered: how many changes were ever remembered, so that it is seen whether the last verb made one.
        final: the next step back is none that can be taken; asking for it says why.
    """

    undo: Sentence | None = None
    redo: Sentence | None = None
    remembered: int = 0
    final: bool = False


class Undoing:
    """The verbs "undo" and "redo"."""

    def __init__(
        self,
        register: UndoRegister,
        keyholder: Keyholder,
        clock: Clock,
        listing: Listing,
        settling: Settling,
        superseding: Superseding,
    ) -> None:
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._listing = listing
        self._settling = settling
        self._superseding = superseding
        self._back: list[Deed] = []
        self._forth: list[Deed] = []
        self._remembered = 0
        self._moving = False

    @property
    def offer(self) -> Offer:
        """What can be taken back and done again, without asking yet whether something hinders it."""
        back, forth = self._back[-1:], self._forth[-1:]
        return Offer(
            sentences.undo(back[0]) if back else None,
            sentences.redo(forth[0]) if forth else None,
            self._remembered,
            bool(back and back[0].final is not None),
        )

    def watch(self, act: Callable[[], T]) -> T:
        """Do something, and remember what it changed.

        Raises:
            Refused, Unavailable: as what is done.
        """
        if self._register.household() is None or self._register.read_only:
            return act()
        before, last = standing_of(self._register), self._register.last_entry()
        self._moving = False
        done = act()
        if self._moving:
            return done
        begun = 0 if last is None else last.number
        verbs = self._register.verbs_since(begun)
        self._remember(before, verbs, done)
        return done

    def _remember(self, before: Standing, verbs: list[str], done: object) -> None:
        """What is final in any part is final as a whole, so that no half of it is taken back."""
        was, now = differences(before, standing_of(self._register))
        serials = done.serials if isinstance(done, Changes) else ()
        final = next((Final(verb) for verb in verbs if verb in set(Final)), None)
        if final is Final.DELETED and not (isinstance(done, Changes) and done.files):
            final = None
        if final is Final.REPLACED:
            serials = serials[:1]
        if final is not None:
            was, now = Standing(), Standing()
        elif kind_of(was, now) is None or _secrets_differ(was, now):
            return
        passes = self._register.passes()
        titles = titles_of(passes, was, now, serials)
        deed = Deed(was, now, marks_of(self._register, passes), titles, final, serials)
        self._back = [*self._back[1 - DEPTH :], deed]
        self._forth.clear()
        self._remembered += 1

    def undo(self, *, progress: Progress = silent) -> Changes:
        """Take the last change back. One that cannot be taken back is said, and then no longer in the way.

        Raises:
            Refused: undo-nothing, those of what is final, undo-changed-since, undo-in-force, undo-handed-over-since,
                undo-delivered-since, undo-named-since; and as stop, let in and settle.
            Unavailable: as register and vault.
        """
        if not self._back:
            raise Refused("undo-nothing")
        deed = self._back[-1]
        if deed.final is Final.RENEWED and self._waits(deed):
            return self._unrenew(deed)
        if deed.final is not None:
            self._back.pop()
            raise Refused(_FINAL[deed.final], title=", ".join(deed.titles))
        self._check(deed, self._back)
        changes = self._apply(deed, "undo", sentences.undone, progress)
        self._back.pop()
        self._forth.append(deed.turned_round(self._marks()))
        return changes

    def _waits(self, deed: Deed) -> bool:
        """Whether the pass that a renewal made is still here, so that there is a way back."""
        chosen = [one for one in self._register.passes() if one.serial in deed.serials]
        now = self._clock.now()
        return len(chosen) == 1 and all(one.state(now) is State.WAITING and one.proved is None for one in chosen)

    def _unrenew(self, deed: Deed) -> Changes:
        """The way back of a renewal; it is not done again, for the pass is withdrawn and its key erased."""
        self._moving = True
        chosen = next(one for one in self._register.passes() if one.serial in deed.serials)
        plan = TakeBackPlan(chosen, self._register.list_high_water() + 1)
        changes = self._superseding.take_back(plan)
        self._back.pop()
        self._forth.clear()
        return changes

    def redo(self, *, progress: Progress = silent) -> Changes:
        """Do again what was taken back last.

        Raises:
            Refused: redo-nothing, and as `undo`.
            Unavailable: as register and vault.
        """
        if not self._forth:
            raise Refused("redo-nothing")
        deed = self._forth[-1]
        self._check(deed, self._forth)
        changes = self._apply(deed, "redo", sentences.redone, progress)
        self._forth.pop()
        self._back.append(deed.turned_round(self._marks()))
        return changes

    def _check(self, deed: Deed, stack: list[Deed]) -> None:
        there = self._register.gateway_note().list_number
        code = hindrance(deed, standing_of(self._register), self._marks(), there)
        if code is None:
            return
        stack.pop()
        if code == "undo-in-force":
            raise Refused("undo-in-force", number=there)
        if code == "undo-handed-over-since":
            raise Refused("undo-handed-over-since")
        if code == "undo-delivered-since":
            raise Refused("undo-delivered-since")
        if code == "undo-named-since":
            raise Refused("undo-named-since", title=deed.titles[0])
        raise Refused("undo-changed-since")

    def _marks(self) -> Marks:
        return marks_of(self._register, self._register.passes())

    def _apply(self, deed: Deed, verb: str, told: Callable[[Deed, int], str], progress: Progress) -> Changes:
        self._moving = True
        if deed.before.settings:
            return self._settle(deed, verb, told, progress)
        if deed.before.holds or deed.after.holds:
            return self._sign(deed, verb, told)
        sentence, now = told(deed, 0), self._clock.now()
        with self._register.change() as change:
            write(change, deed, self._register.gateway_note())
            note(self._register, change, verb=verb, sentence=sentence, now=now)
        return Changes(sentence)

    def _settle(self, deed: Deed, verb: str, told: Callable[[Deed, int], str], progress: Progress) -> Changes:
        (household,) = deed.before.settings.values()
        plan = self._settling.preview(request_for(household))
        both = partial(_with, verb, told(deed, 0))
        changes = self._settling.apply(plan, progress=progress, told=both)
        return replace(changes, cautions=())

    def _sign(self, deed: Deed, verb: str, told: Callable[[Deed, int], str]) -> Changes:
        self._keyholder.key()
        now = self._clock.now()
        check_clock(self._register, now)
        with self._register.change() as change:
            self._hold(change, deed)
            signed = self._listing.add_next(change)
            sentence = told(deed, signed.number)
            note(self._register, change, verb=verb, sentence=sentence, now=now)
        files, cautions = self._listing.publish_or_say(signed)
        serials = tuple({**deed.before.holds, **deed.after.holds})
        return Changes(sentence, serials, signed.number, files, cautions)

    def _hold(self, change: SheetChange, deed: Deed) -> None:
        """What was let in and is stopped again was never in, as far as anybody outside knows: its date stays."""
        for serial in deed.after.holds:
            if serial not in deed.before.holds:
                change.lift(serial, self._clock.now())
        for serial, since in deed.before.holds.items():
            if serial not in deed.after.holds:
                change.withdraw(serial, Reason.CERTIFICATE_HOLD, since)


def _secrets_differ(was: Standing, now: Standing) -> bool:
    """Secrets beside the certificates lie in the vault; turning them on and off has a page of its own."""

    def secrets(one: Standing) -> list[tuple[bool, bool]]:
        return [(options.extra_secret, options.household_secret) for options in one.options.values()]

    return secrets(was) != secrets(now)


def _with(verb: str, first: str, said: str) -> tuple[str, str]:
    """The diary's verb and sentence for settings that were taken back."""
    return verb, phrases.sentences((first, said))
