"""Knows every copy that left, looks for those that can be looked for, and takes away what is still ours."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core import copies as rules
from hearthkey.core.copies import Copy, CopyWay, Found, Standing, Told
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import copies as sentences
from hearthkey.services.ports import Clock, Files, Register
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class Looked:
    """What a look at a copy's place found.

    Args:
        told: the copy.
        found: what of it is there.
        folder: where it was looked for; empty where that could not be.
    """

    told: Told
    found: Found
    folder: str = ""


class Tidying:
    """The verb "copies"."""

    def __init__(self, register: Register, files: Files, clock: Clock) -> None:
        self._register = register
        self._files = files
        self._clock = clock

    def all(self, passes: Sequence[Pass] | None = None) -> tuple[Told, ...]:
        """Every copy, or those of some passes; by person and device, the newest first."""
        known = self._register.passes() if passes is None else passes
        serials = None if passes is None else [one.serial for one in passes]
        return rules.told(self._register.copies(serials), known, self._clock.now())

    def find(self, number: int) -> Told:
        """A copy by its number.

        Raises:
            Refused: copy-unknown.
        """
        for one in self.all():
            if one.copy.number == number:
                return one
        raise Refused("copy-unknown", number=number)

    def look(self, number: int, sticks: Sequence[tuple[str, Path]] = ()) -> Looked:
        """Whether the files of a copy are still where they were written, and still the same.

        Args:
            sticks: names and folders of the sticks that are plugged in, for one may be mounted elsewhere than when it
                was written to.

        Raises:
            Refused: copy-unknown.
            Unavailable: where the disk does not answer.
        """
        told = self.find(number)
        if not told.copy.checkable:
            return Looked(told, Found.ELSEWHERE)
        found, folder = Found.AWAY, ""
        for one in _places(told.copy, sticks):
            found = self._found(told.copy, one)
            folder = str(one)
            if found is not Found.AWAY:
                break
        return Looked(told, found, folder)

    def mark_tidied(self, number: int) -> Changes:
        """The householder says that a copy is gone.

        Raises:
            Refused: copy-unknown, copy-tidied-already.
            Unavailable: as the register.
        """
        told = self.find(number)
        if told.standing is Standing.TIDIED:
            raise Refused("copy-tidied-already", number=number)
        return self._tidied(told, sentences.said_gone(told))

    def take_back(self, number: int) -> Changes:
        """A copy is not gone after all.

        Raises:
            Refused: copy-unknown, copy-not-tidied.
            Unavailable: as the register.
        """
        told = self.find(number)
        if told.copy.tidied is None:
            raise Refused("copy-not-tidied", number=number)
        sentence = sentences.not_gone(told)
        with self._register.change() as change:
            change.tidy_copy(number, None)
            note(self._register, change, verb="copies", sentence=sentence, now=self._clock.now())
        return Changes(sentence, serials=(told.of.serial,))

    def tidy(self, number: int, sticks: Sequence[tuple[str, Path]] = ()) -> Changes:
        """Delete the files of a copy that are still exactly ours, and nothing else.

        Deleting takes a file's name away. What was in it may stay in the memory of a stick until something else is
        written there, so nothing is overwritten, for that would promise more than it does.

        Raises:
            Refused: copy-unknown, copy-tidied-already, copy-elsewhere, copy-away, copy-changed.
            Unavailable: folder-read-only, folder-gone, and as the register.
        """
        looked = self.look(number, sticks)
        told = looked.told
        if told.standing is Standing.TIDIED:
            raise Refused("copy-tidied-already", number=number)
        place = told.copy.place
        if looked.found is Found.ELSEWHERE:
            raise Refused("copy-elsewhere", number=number)
        if looked.found is Found.AWAY:
            raise Refused("copy-away", place=place)
        if looked.found is Found.CHANGED:
            raise Refused("copy-changed", place=place)
        folder = Path(looked.folder)
        taken = [one for one in told.copy.files if self._files.remove(folder / one.name, one.mark)]
        for one in told.copy.files:
            if self._files.mark(folder / one.name) is not None:
                raise Refused("copy-changed", place=place)
        return self._tidied(told, sentences.deleted(told, len(taken)), tuple(str(folder / one.name) for one in taken))

    def _tidied(self, told: Told, sentence: str, files: tuple[str, ...] = ()) -> Changes:
        now = self._clock.now()
        with self._register.change() as change:
            change.tidy_copy(told.copy.number, now)
            note(self._register, change, verb="copies", sentence=sentence, now=now)
        return Changes(sentence, serials=(told.of.serial,), files=files)

    def _found(self, copy: Copy, folder: Path) -> Found:
        states = []
        for one in copy.files:
            try:
                mark = self._files.mark(folder / one.name)
            except Unavailable as error:
                if error.code == "folder-gone":
                    return Found.AWAY
                raise
            states.append(Found.GONE if mark is None else Found.OURS if mark.startswith(one.mark) else Found.CHANGED)
        return rules.outcome(states)


def _places(copy: Copy, sticks: Sequence[tuple[str, Path]]) -> list[Path]:
    """Where to look: a stick is known by its name, wherever it is mounted now."""
    first = Path(copy.folder)
    if copy.way is not CopyWay.STICK:
        return [first]
    return [path for name, path in sticks if name == copy.place or path == first] or [first]
