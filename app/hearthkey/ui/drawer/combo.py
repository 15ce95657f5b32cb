"""A choice among more than a few: a field that opens into a list."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QComboBox, QSizePolicy, QWidget

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Combo(QComboBox):
    """A combo box drawn by the style, as high as a line field.

    An entry without a key is the head of a group: it is read, not chosen.
    """

    CHEVRON = 34

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._entries = QStandardItemModel(self)
        self.setModel(self._entries)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMaxVisibleItems(14)
        theme.changed.connect(self._dress)
        self._dress()

    def offer(self, entries: Sequence[tuple[str, str]]) -> None:
        """Offer keys with their words."""
        self._entries.clear()
        for key, words in entries:
            item = QStandardItem(words)
            item.setData(key, Qt.ItemDataRole.UserRole)
            if not key:
                item.setFlags(Qt.ItemFlag.NoItemFlags)
            self._entries.appendRow(item)
        self.setCurrentIndex(-1)
        self._dress()

    def key(self) -> str:
        """The key of the chosen entry, or an empty string."""
        return str(self.currentData() or "")

    def take(self, key: str) -> None:
        """Choose an entry by its key; an empty key chooses none."""
        self.setCurrentIndex(self.findData(key) if key else -1)

    def _dress(self) -> None:
        self.setFont(self._theme.font(Role.BODY))
        self.view().setFont(self._theme.font(Role.BODY))
        for row in range(self._entries.rowCount()):
            item = self._entries.item(row)
            if item is not None and not item.data(Qt.ItemDataRole.UserRole):
                item.setFont(self._theme.font(Role.SMALL_ITALIC))
                item.setForeground(self._theme.color("ink2"))
        self.updateGeometry()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for the longest entry and the angle after it."""
        metrics = self.fontMetrics()
        words = [self.placeholderText(), *(self.itemText(row) for row in range(self.count()))]
        wide = max((metrics.horizontalAdvance(one) for one in words), default=0)
        return QSize(wide + self.CHEVRON + 22, max(self._theme.px(32), metrics.height() + 12) + 6)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As high as ever; narrower than its longest entry where there is no room."""
        return QSize(self._theme.px(120), self.sizeHint().height())
