"""Two things side by side, or one under the other where there is no room."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from hearthkey.ui.theme.theme import Theme


class Pair(QWidget):
    """A row that folds into a column.

    Args:
        least: pixels at normal size of type below which it folds.
        gap: pixels between the two.
        stretch: shares of the room, while side by side.
    """

    def __init__(
        self,
        theme: Theme,
        first: QWidget,
        second: QWidget,
        *,
        least: int = 440,
        gap: int = 14,
        stretch: tuple[int, int] = (1, 1),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._least = least
        self._parts = (first, second)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(gap)
        self._row.addWidget(first, stretch[0])
        self._row.addWidget(second, stretch[1])
        theme.changed.connect(self._fold)

    @property
    def folded(self) -> bool:
        """Whether the second stands under the first."""
        return self._row.direction() is QBoxLayout.Direction.TopToBottom

    def _fold(self) -> None:
        narrow = self.width() < self._theme.px(self._least)
        sides = QBoxLayout.Direction
        self._row.setDirection(sides.TopToBottom if narrow else sides.LeftToRight)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """It can always fold, so the wider part decides."""
        hints = [part.minimumSizeHint() for part in self._parts]
        return QSize(max(one.width() for one in hints), max(one.height() for one in hints))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Fold or unfold."""
        super().resizeEvent(event)
        self._fold()
