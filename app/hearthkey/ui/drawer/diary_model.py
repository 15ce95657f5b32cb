"""The diary as a list, newest first, thinned out by what is searched."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import islice

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt, QTimer

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.diary_search import Subject, Subjects, Wanted, folded, wanted
from hearthkey.core.passes import Pass
from hearthkey.core.phrases import Style
from hearthkey.ui.dates import short_day, written
from hearthkey.ui.drawer.diary_words import told

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
        self._wanted = Wanted()
        self._typed, self._person, self._title = "", "", ""
        self._known: frozenset[tuple[str, str]] = frozenset()
        self._subjects = Subjects(())
        self._texts: dict[str, str] = {}
        self._said: dict[str, str] = {}
        self._told: dict[str, frozenset[Subject]] = {}
        self._ahead: Iterator[DiaryEntry] = iter(())
        self._idle = QTimer(self)
        self._idle.timeout.connect(self._read_ahead)

    def show_entries(self, entries: tuple[DiaryEntry, ...], passes: Iterable[Pass] = ()) -> None:
        """Show a diary, oldest entry first as it was written.

        Args:
            passes: whose people and devices are recognised in it.
        """
        by_name = {(one.person, one.device): one for one in passes}
        if by_name.keys() != self._known:
            self._known = frozenset(by_name)
            self._subjects = Subjects(by_name.values())
            self._told.clear()
        grew = entries[: len(self._entries)] == self._entries
        fresh = entries[len(self._entries) :]
        self._entries = entries
        self._ahead = reversed(entries)
        self._idle.start()
        if not grew:
            self._refill()
            return
        front = [one for one in reversed(fresh) if self._fits(one)]
        if front:
            self.beginInsertRows(_TOP, 0, len(front) - 1)
            self._shown[:0] = front
            self.endInsertRows()

    def subjects(self) -> list[Subject]:
        """Everybody and everything that the diary names, by person, the person first."""
        return sorted({one for entry in self._entries for one in self._tells_of(entry)})

    def tells_of(self, sentence: str) -> frozenset[Subject]:
        """Whom and what a sentence names."""
        return self._subjects.of(sentence)

    def search(self, text: str) -> None:
        """Keep the entries in which every word occurs: in the sentence as it is shown, in English, or in the date."""
        self._typed = text
        self._look()

    def choose(self, person: str = "", title: str = "") -> None:
        """Keep the entries about somebody, or about one device; with neither, about anybody."""
        self._person, self._title = person, title
        self._look()

    @property
    def words(self) -> tuple[str, ...]:
        """What is searched, folded."""
        return self._wanted.words

    def shown(self) -> list[DiaryEntry]:
        """The entries that are shown, oldest first."""
        return self._shown[::-1]

    def _look(self) -> None:
        looked_for = wanted(self._typed, person=self._person, title=self._title)
        if looked_for != self._wanted:
            self._wanted = looked_for
            self._refill()

    def entry(self, row: int) -> DiaryEntry:
        """The entry in a row."""
        return self._shown[row]

    def spoken(self, row: int) -> str:
        """An entry as a screen reader says it: the day before the sentence."""
        entry = self._shown[row]
        return f"{when(entry)}: {self.said(entry)}"

    def said(self, entry: DiaryEntry) -> str:
        """The sentence of an entry as it is shown, in the language of the window."""
        if entry.link not in self._said:
            self._said[entry.link] = told(entry)
        return self._said[entry.link]

    def line(self, entry: DiaryEntry) -> str:
        """An entry as a line of text, as it is shown."""
        return f"{entry.number}  {when(entry)}  {self.said(entry)}"

    def text(self) -> str:
        """All rows as lines, for copying."""
        return "\n".join(self.line(one) for one in self._shown)

    def _refill(self) -> None:
        self.beginResetModel()
        self._shown = [one for one in reversed(self._entries) if self._fits(one)]
        self.endResetModel()

    def _fits(self, entry: DiaryEntry) -> bool:
        if self._wanted.anything:
            return True
        about = self._wanted.person or self._wanted.title
        return self._wanted.fits(self._text_of(entry), self._tells_of(entry) if about else frozenset())

    def _text_of(self, entry: DiaryEntry) -> str:
        """What a search goes by."""
        if entry.link not in self._texts:
            said = self.said(entry)
            english = "" if said == entry.sentence else entry.sentence
            self._texts[entry.link] = folded(f"{said} {when(entry)} {english}")
        return self._texts[entry.link]

    def _read_ahead(self) -> None:
        """A slice at a time while nobody types: of ten thousand entries the first search would take seconds."""
        some = list(islice(self._ahead, 50))
        for entry in some:
            self._text_of(entry)
        if not some:
            self._idle.stop()

    def _tells_of(self, entry: DiaryEntry) -> frozenset[Subject]:
        if entry.link not in self._told:
            self._told[entry.link] = self._subjects.of(entry.sentence)
        return self._told[entry.link]

    def rowCount(self, parent: _Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """How many entries are shown."""
        return 0 if parent.isValid() else len(self._shown)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The sentence, and for a screen reader the day before it."""
        if not index.isValid():
            return None
        entry = self._shown[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return self.said(entry)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self.spoken(index.row())
        return None
