"""The diary as a list, newest first, thinned out by what is searched."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.phrases import Style
from hearthkey.ui.dates import short_day, written

_Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()


def when(entry: DiaryEntry) -> str:
    """Day and time of an entry, by the clock on the wall."""
    local = entry.at.astimezone()
    return f"{short_day(local)}, {written(local, Style.TIME)}"


class DiaryModel(QAbstractListModel):
    """Entries as rows. New ones are put in front; nothing is laid out anew that did not change."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._entries: tuple[DiaryEntry, ...] = ()
        self._shown: list[DiaryEntry] = []
        self._wanted: list[str] = []
        self._texts: dict[str, str] = {}

    def show_entries(self, entries: tuple[DiaryEntry, ...]) -> None:
        """Show a diary, oldest entry first as it was written."""
        grew = entries[: len(self._entries)] == self._entries
        fresh = entries[len(self._entries) :]
        self._entries = entries
        if not grew:
            self._refill()
            return
        front = [one for one in reversed(fresh) if self._fits(one)]
        if front:
            self.beginInsertRows(_TOP, 0, len(front) - 1)
            self._shown[:0] = front
            self.endInsertRows()

    def search(self, text: str) -> None:
        """Keep the entries in which every word occurs, in the sentence or the date."""
        wanted = text.casefold().split()
        if wanted != self._wanted:
            self._wanted = wanted
            self._refill()

    def entry(self, row: int) -> DiaryEntry:
        """The entry in a row."""
        return self._shown[row]

    def text(self) -> str:
        """All rows as lines, for copying."""
        return "\n".join(line(one) for one in self._shown)

    def _refill(self) -> None:
        self.beginResetModel()
        self._shown = [one for one in reversed(self._entries) if self._fits(one)]
        self.endResetModel()

    def _fits(self, entry: DiaryEntry) -> bool:
        if not self._wanted:
            return True
        if entry.link not in self._texts:
            self._texts[entry.link] = f"{entry.sentence} {when(entry)}".casefold()
        text = self._texts[entry.link]
        return all(word in text for word in self._wanted)

    def rowCount(self, parent: _Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """How many entries are shown."""
        return 0 if parent.isValid() else len(self._shown)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The sentence, and for a screen reader the day before it."""
        if not index.isValid():
            return None
        entry = self._shown[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return entry.sentence
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{when(entry)}: {entry.sentence}"
        return None


def line(entry: DiaryEntry) -> str:
    """An entry as a line of text."""
    return f"{entry.number}  {when(entry)}  {entry.sentence}"
