"""How high rows are, remembered by their shape: ten thousand rows have few shapes."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import compress, count
from operator import is_not

from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.entries import Entry


class Heights:
    """Heights of the rows of one sheet."""

    def __init__(self) -> None:
        self._ruled_by: tuple[object, ...] = ()
        self._people: dict[str, int] = {}
        self._devices: dict[str, int] = {}
        self._known: dict[tuple[bool, int, int, int, int], int] = {}
        self._entries: Sequence[Entry] = ()

    def take(self, ruling: Ruling, entries: Sequence[Entry]) -> range:
        """Take a ruling and rows, and say which of them may be of another height than before.

        Rows that only moved up or down with their neighbours are not among them.
        """
        before, self._entries = self._entries, entries
        if not self._ruled_alike(ruling):
            return range(len(entries))
        shorter = min(len(before), len(entries))
        head = next(compress(count(), map(is_not, before, entries)), shorter)
        tail = next(compress(count(), map(is_not, reversed(before), reversed(entries))), shorter)
        # One row more: whoever is the first no longer, or now, stands a little higher.
        return range(head, min(len(entries), max(head, len(entries) - tail) + 1))

    def _ruled_alike(self, ruling: Ruling) -> bool:
        columns = ruling.columns
        by = (ruling.stacked, columns.who.width, columns.device.width, ruling.base, ruling.theme.fonts)
        if by == self._ruled_by:
            return True
        self._ruled_by = by
        for known in (self._people, self._devices, self._known):
            known.clear()
        return False

    def of(self, ruling: Ruling, number: int) -> int:
        """The height of a row, pixels.

        Args:
            ruling: the one that was taken.
        """
        people, devices, entry = self._people, self._devices, self._entries[number]
        who, device = entry.who, getattr(entry.source, "device", "")
        if who not in people:
            people[who] = len(ruling.who_lines(entry))
        if device not in devices:
            devices[device] = len(ruling.device_lines(entry))
        shape = (number == 0, entry.place, entry.count, people[who], devices[device])
        if shape not in self._known:
            self._known[shape] = ruling.box(entry, number).height
        return self._known[shape]
