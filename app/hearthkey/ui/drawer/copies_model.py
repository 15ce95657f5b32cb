"""Copies that left as a list: by person and device, the newest first."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from hearthkey.core.copies import Standing, Told
from hearthkey.core.sentences import copies as sentences
from hearthkey.ui.dates import short_day
from hearthkey.ui.text import said, spoken

_Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()
OPEN = frozenset({Standing.OUT, Standing.PERHAPS})


def when(one: Told) -> str:
    """Day and time of a copy, by the clock on the wall."""
    local = one.copy.made.astimezone()
    return f"{short_day(local)}, {local.hour:02}:{local.minute:02}"


def what(one: Told) -> str:
    """What it is and where."""
    told = said(sentences.described(one, said(sentences.form(one.copy))))
    return f"{told[:1].upper()}{told[1:]}"


def state(one: Told) -> str:
    """What can be said of it now."""
    return said(sentences.standing(one))


class CopiesModel(QAbstractListModel):
    """Copies as rows; the first of each device carries its name."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._all: tuple[Told, ...] = ()
        self._shown: list[Told] = []
        self._open_only = False
        self.titled = True

    def show_copies(self, copies: tuple[Told, ...], *, titled: bool) -> None:
        """Show copies.

        Args:
            copies: by device.
            titled: say whose they are; not where all are of one device.
        """
        if (copies, titled) != (self._all, self.titled):
            self._all, self.titled = copies, titled
            self._refill()

    def keep_open_ones(self, *, only: bool) -> None:
        """Show only those of which nobody knows that they are gone, or all."""
        if only != self._open_only:
            self._open_only = only
            self._refill()

    def _refill(self) -> None:
        self.beginResetModel()
        self._shown = [one for one in self._all if not self._open_only or one.standing in OPEN]
        self.endResetModel()

    def copy_at(self, row: int) -> Told:
        """The copy in a row."""
        return self._shown[row]

    def row_of(self, number: int) -> int:
        """The row of a copy; -1 where it is not shown."""
        return next((row for row, one in enumerate(self._shown) if one.copy.number == number), -1)

    def heads(self, row: int) -> bool:
        """Whether a row is the first of its device, and says so."""
        if not self.titled:
            return False
        return row == 0 or self._shown[row - 1].of.identity != self._shown[row].of.identity

    def rowCount(self, parent: _Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """How many copies are shown."""
        return 0 if parent.isValid() else len(self._shown)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """What it is; for a screen reader with whose, when, and what can be said of it."""
        if not index.isValid():
            return None
        one = self._shown[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return what(one)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return f"{spoken(one.of.title)}, {when(one)}: {what(one)} {state(one)}"
        return None
