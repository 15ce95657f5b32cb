"""A page of paper on the desk, as it will be printed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.core.hand_over_sheet import Paper
from hearthkey.formats.laid_sheet import Mark, Run
from hearthkey.ui.printing.painter import PaperPainter
from hearthkey.ui.theme.theme import Theme

PAPER = QColor("#FFFFFF")
"""Paper is white in every theme."""

EDGE = 12


class Preview(QWidget):
    """Shows one page, as large as there is room; a screen reader reads its text."""

    def __init__(self, theme: Theme, painter: PaperPainter, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._painter = painter
        self._paper = Paper.A4
        self.marks: tuple[Mark, ...] = ()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("The page as it is printed"))
        theme.changed.connect(self.update)

    def show_page(self, marks: Sequence[Mark], paper: Paper) -> None:
        """Show a page; no marks show an empty desk."""
        self.marks, self._paper = tuple(marks), paper
        self.setAccessibleDescription(" ".join(one.text for one in self.marks if isinstance(one, Run)))
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Half of a page's real size."""
        return QSize(300, 424)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Enough to see what it is."""
        return QSize(160, 220)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the paper and what stands on it."""
        if not self.marks:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        wide, high = self._paper.value
        scale = min((self.width() - 2 * EDGE) / wide, (self.height() - 2 * EDGE) / high)
        place = QRectF((self.width() - wide * scale) / 2, EDGE, wide * scale, high * scale)
        painter.setPen(QPen(self._theme.color("ink" if self.hasFocus() else "rule"), 2 if self.hasFocus() else 1))
        painter.setBrush(PAPER)
        painter.drawRect(place)
        painter.translate(place.topLeft())
        self._painter.draw(painter, self.marks, scale)
        painter.end()
