"""The rows of the sheet as Qt's item model; a new look changes rows, it never resets them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from hearthkey.ui.board.life import tr
from hearthkey.ui.board.rows import Column, Row
from hearthkey.ui.board.steps import Insert, Move, Remove, Step, steps
from hearthkey.ui.entries import Entry, Fixture

Index = QModelIndex | QPersistentModelIndex
Working = Callable[[Entry], Row]

_NOWHERE = QModelIndex()


class BoardModel(QAbstractTableModel):
    """Rows that are worked out when somebody looks at them.

    `entries` is another list whenever other rows come to stand here; nobody changes one that was handed out.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.entries: list[Entry] = []
        self._work: Working | None = None
        self._rows: dict[str, Row] = {}
        self._haystack: list[str] | None = None

    def row(self, number: int) -> Row:
        """A row, worked out at the first look."""
        entry = self.entries[number]
        row = self._rows.get(entry.key)
        if row is None:
            if self._work is None:
                raise LookupError(entry.key)
            row = self._rows[entry.key] = self._work(entry)
        return row

    def number_of(self, key: str) -> int:
        """Where the row with a key stands, -1 if it does not."""
        return next((number for number, entry in enumerate(self.entries) if entry.key == key), -1)

    def haystack(self) -> list[str]:
        """What each row is found by, casefolded."""
        if self._haystack is None:
            self._haystack = [f"{entry.who} {getattr(entry.source, 'device', '')}".casefold() for entry in self.entries]
        return self._haystack

    # Change

    def show(self, entries: Sequence[Entry], work: Working) -> None:
        """Become these rows by removing, moving and inserting; what stays is told to have changed.

        Rows whose entries are the very objects of the last time cost next to nothing.

        Args:
            work: works out a row from its entry.
        """
        wanted, there = list(entries), bool(self.entries)
        changed = wanted != self.entries
        self._work = work
        if changed:
            self._haystack = None
            self.entries = list(self.entries)
            for step in steps([entry.key for entry in self.entries], [entry.key for entry in wanted]):
                self._take(step, wanted)
            self.entries = wanted
        self._rows.clear()
        if there and wanted:
            self.dataChanged.emit(self.index(0, 0), self.index(len(wanted) - 1, len(Column) - 1))

    def _take(self, step: Step, wanted: Sequence[Entry]) -> None:
        match step:
            case Remove(start, end):
                self.beginRemoveRows(_NOWHERE, start, end - 1)
                del self.entries[start:end]
                self.endRemoveRows()
            case Move(source, target):
                self.beginMoveRows(_NOWHERE, source, source, _NOWHERE, target)
                self.entries.insert(target - (target > source), self.entries.pop(source))
                self.endMoveRows()
            case Insert(start, end):
                self.beginInsertRows(_NOWHERE, start, end - 1)
                self.entries[start:start] = wanted[start:end]
                self.endInsertRows()

    # Qt's questions

    def rowCount(self, parent: Index = _NOWHERE) -> int:  # noqa: N802 - Qt's name
        """How many rows; none below a row."""
        return 0 if parent.isValid() else len(self.entries)

    def columnCount(self, parent: Index = _NOWHERE) -> int:  # noqa: N802 - Qt's name
        """Who, device, axis, date, action."""
        return 0 if parent.isValid() else len(Column)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The text of a cell, and what a screen reader says of it."""
        if not index.isValid() or not 0 <= index.row() < len(self.entries):
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._shown(index.row(), Column(index.column()))
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self._spoken(index.row(), Column(index.column()))
        return None

    def headerData(  # noqa: N802 - Qt's name
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> object:
        """Column heads; and the device as the name of its row, for the header nobody sees."""
        if role not in {Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole}:
            return None
        if orientation == Qt.Orientation.Horizontal:
            heads = (tr("who"), tr("device"), tr("life line"), tr("good until"), tr("next step"))
            return heads[section] if 0 <= section < len(heads) else None
        return self.row(section).device if 0 <= section < len(self.entries) else None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """All cells are taken with their row, but for the person's name, which stands for several."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        alone = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemNeverHasChildren
        return alone if index.column() == Column.WHO else alone | Qt.ItemFlag.ItemIsSelectable

    def _shown(self, number: int, column: Column) -> str:
        entry = self.entries[number]
        if column is Column.WHO:
            return entry.who if entry.first else ""
        row = self.row(number)
        if column is Column.AXIS:
            return ", ".join(part for part in (row.word, row.fact) if part)
        step = "" if row.step is None else tr(row.step.value)
        return {Column.DEVICE: row.device, Column.DATE: row.until, Column.ACTION: step}[column]

    def _spoken(self, number: int, column: Column) -> str:
        row, entry = self.row(number), self.entries[number]
        if column in {Column.DEVICE, Column.AXIS}:
            return row.spoken
        if column is Column.WHO:
            alone = entry.devices == 1 or isinstance(entry.source, Fixture)
            return entry.who if alone else tr("{who}, {count} devices").format(who=entry.who, count=entry.devices)
        if column is Column.DATE:
            return tr("good until: {until}").format(until=row.until or tr("not said yet"))
        return tr("no next step") if row.step is None else tr("next step: {step}").format(step=tr(row.step.value))
