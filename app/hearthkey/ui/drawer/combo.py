"""A choice among more than a few: a field that opens into a list."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QObject, QPersistentModelIndex, QSize, QStringListModel, Qt
from PySide6.QtWidgets import QComboBox, QListView, QSizePolicy, QWidget

from hearthkey.ui.sight import longest
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_Index = QModelIndex | QPersistentModelIndex


class _Grouped(QStringListModel):
    """Words, some of which are heads of a group: they are read, not chosen."""

    def __init__(self, theme: Theme, words: Sequence[str], heads: frozenset[int], parent: QObject) -> None:
        super().__init__(words, parent)
        self._theme = theme
        self._heads = heads

    def flags(self, index: _Index) -> Qt.ItemFlag:
        """Heads have none."""
        return Qt.ItemFlag.NoItemFlags if index.row() in self._heads else super().flags(index)

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Heads are written smaller, in italics and the second ink."""
        if index.row() in self._heads and role == Qt.ItemDataRole.FontRole:
            return self._theme.font(Role.SMALL_ITALIC)
        if index.row() in self._heads and role == Qt.ItemDataRole.ForegroundRole:
            return self._theme.color("ink2")
        return super().data(index, role)


class Combo(QComboBox):
    """A combo box drawn by the style, as high as a line field.

    An entry without a key is the head of a group: it is read, not chosen. Ten thousand entries are
    offered in no time: the words lie in Qt, the keys here, and only the longest words are measured.
    """

    CHEVRON = 34

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._keys: list[str] = []
        self._longest: list[str] = []
        self._widest = 0
        self.setModel(QStringListModel(self))
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMaxVisibleItems(14)
        theme.changed.connect(self._dress)
        self._dress()

    def offer(self, entries: Sequence[tuple[str, str]]) -> None:
        """Offer keys with their words."""
        self._keys = [key for key, _ in entries]
        words = [text for _, text in entries]
        heads = frozenset(number for number, key in enumerate(self._keys) if not key)
        self.setModel(_Grouped(self._theme, words, heads, self) if heads else QStringListModel(words, self))
        self.setCurrentIndex(-1)
        unfolded = self.view()
        if isinstance(unfolded, QListView):
            unfolded.setUniformItemSizes(not heads)  # else every entry is measured before the first is seen
        self._longest = longest(words)
        self._dress()

    def key(self) -> str:
        """The key of the chosen entry, or an empty string."""
        number = self.currentIndex()
        return self._keys[number] if 0 <= number < len(self._keys) else ""

    def take(self, key: str) -> None:
        """Choose an entry by its key; an empty key chooses none."""
        self.setCurrentIndex(self._keys.index(key) if key and key in self._keys else -1)

    def _dress(self) -> None:
        self.setFont(self._theme.font(Role.BODY))
        self.view().setFont(self._theme.font(Role.BODY))
        self._widest = max((self.fontMetrics().horizontalAdvance(one) for one in self._longest), default=0)
        self.updateGeometry()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for the longest entry and the angle after it."""
        metrics = self.fontMetrics()
        wide = max(self._widest, metrics.horizontalAdvance(self.placeholderText()))
        return QSize(wide + self.CHEVRON + 22, max(self._theme.px(32), metrics.height() + 12) + 6)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As high as ever; narrower than its longest entry where there is no room."""
        return QSize(self._theme.px(120), self.sizeHint().height())
