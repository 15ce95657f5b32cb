"""The legend: every sign and every line of the sheet beside its word."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.controls.strokes import Mark, Run, paint_mark, paint_run
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme

SIGNS = (
    (Sign.DRAFT, "draft", "not made yet, a thin ring"),
    (Sign.WAITING, "waiting", "made, in the tray, a quarter filled"),
    (Sign.NEVER_PROVED, "never proved", "in use, seen from nowhere yet, a broken ring"),
    (Sign.IN_USE, "in use, in force", "proved; gateway, list and CA; a solid disc"),
    (Sign.DUE, "due soon", "wants you, a triangle, the only red sign"),
    (Sign.GUEST, "guest", "for days, not years, an hourglass"),
    (Sign.STOPPED, "stopped", "on hold, may come back, a hollow octagon"),
    (Sign.REVOKED, "revoked", "for good, a solid octagon"),
    (Sign.ENDED, "ended", "reached its date, a corner cut off"),
)
"""Signs that the sheet can show today, with their words."""

LINES = (
    (Run.HOLLOW, Mark.HANDED_OVER, Mark.END, "never proved", "hollow bar, a lozenge where it was handed over"),
    (Run.SOLID, Mark.PROOF, Mark.END, "proved", "solid bar, a tick for each time it was seen to get in"),
    (Run.DASHES, Mark.MADE, Mark.END, "waiting", "dashes, a small ring where it was made"),
    (Run.DUE, Mark.EARLIER, Mark.END, "due soon", "red; an arrowhead: it began before the sheet does"),
    (Run.DOTS, Mark.EARLIER, Mark.END, "stopped", "bar to the stop, dots to where it would have run"),
    (Run.PAST, Mark.EARLIER, Mark.FINAL, "revoked", "thin and thick final bar, nothing after it"),
    (Run.PAST, Mark.EARLIER, Mark.END, "ended", "thin line in the second ink"),
    (Run.FINE, None, Mark.END, "draft", "fine dots while you choose"),
    (Run.SOLID, None, Mark.TODAY, "closed", "past the end of the list, double rule and hatch"),
)
"""How the line runs, what it begins and ends with, its word, and what is drawn."""


class LineSample(QWidget):
    """A life line in small."""

    WIDTH = 96

    def __init__(self, theme: Theme, run: Run, begins: Mark | None, ends: Mark, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._run, self._begins, self._ends = run, begins, ends
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for marks at both ends."""
        return QSize(self._theme.px(self.WIDTH), self._theme.px(24))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the line and its marks."""
        painter = QPainter(self)
        tokens, size, ground = self._theme.tokens, self._theme.fonts.scale, self._theme.color("raised")
        middle, left, right = self.height() / 2, 6.0 * size, self.width() - 8.0 * size
        ink = {Run.DUE: tokens.act, Run.PAST: tokens.ink2}.get(self._run, "")
        begin, end = QPointF(left, middle), QPointF(right, middle)
        if self._run is Run.DOTS:
            stop = QPointF(left + (right - left) * 0.42, middle)
            paint_run(painter, Run.SOLID, begin, stop, tokens, size=size)
            paint_mark(painter, Mark.END, stop, tokens, ground=ground, size=size)
            paint_run(painter, Run.DOTS, stop, end, tokens, size=size)
            ink = tokens.ink
        elif self._ends is Mark.TODAY:
            end = QPointF(left + (right - left) * 0.45, middle)
            paint_run(painter, self._run, begin, end, tokens, size=size)
            paint_mark(painter, Mark.END, end, tokens, ground=ground, size=size)
            self._paint_wall(painter, end.x() + 10 * size)
        else:
            paint_run(painter, self._run, begin, end, tokens, size=size)
        if self._begins is not None:
            paint_mark(painter, self._begins, begin, tokens, ground=ground, size=size, ink=ink)
        if self._ends is not Mark.TODAY:
            last = tokens.ink2 if self._run in {Run.DOTS, Run.FINE} else ink
            paint_mark(painter, self._ends, end, tokens, ground=ground, size=size, ink=last)
        painter.end()

    def _paint_wall(self, painter: QPainter, left: float) -> None:
        high = self.height()
        painter.save()
        painter.setClipRect(QRectF(left + 4, 0, self.width() - left - 4, high))
        painter.setPen(QPen(self._theme.color("hair"), 1.4))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for step in range(-high, self.width(), 10):
            painter.drawLine(QPointF(left + step, high), QPointF(left + step + high, 0))
        painter.restore()
        painter.setPen(QPen(self._theme.color("ink"), 1.5))
        painter.drawLine(QPointF(left, 0), QPointF(left, high))
        painter.setPen(QPen(self._theme.color("ink"), 1))
        painter.drawLine(QPointF(left + 3.5, 0), QPointF(left + 3.5, high))


class Legend(QWidget):
    """Two groups of rows: signs, then lines."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        signs, lines = _grid(), _grid()
        for sign, word, drawn in SIGNS:
            _add(theme, signs, SignLabel(theme, sign), word, drawn)
        for run, begins, ends, word, drawn in LINES:
            _add(theme, lines, LineSample(theme, run, begins, ends), word, drawn)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addLayout(signs)
        column.addWidget(Rule(theme))
        column.addLayout(lines)


def _grid() -> QGridLayout:
    grid = QGridLayout()
    grid.setHorizontalSpacing(12)
    grid.setVerticalSpacing(6)
    grid.setColumnStretch(1, 1)
    return grid


def _add(theme: Theme, grid: QGridLayout, picture: QWidget, word: str, drawn: str) -> None:
    told = said(Sentence(word, {}))
    picture.setAccessibleName(told)
    words = Prose(theme, Role.BODY, strong=Role.BODY_STRONG)
    words.speak(said(Sentence(drawn, {})), stressed=f"{told}:")
    row = grid.rowCount()
    grid.addWidget(picture, row, 0)
    grid.addWidget(words, row, 1)
