"""Text and rules in the look of the sheet."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QTextLayout, QTextOption
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Label(QLabel):
    """Text in a role of the type scale and a colour of the tokens; it follows the theme."""

    def __init__(
        self,
        theme: Theme,
        role: Role,
        text: str = "",
        *,
        color: str = "ink",
        wrap: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(text, parent)
        self._theme = theme
        self._role = role
        self._color = color
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(wrap)
        theme.changed.connect(self._dress)
        self._dress()

    def recolor(self, color: str) -> None:
        """Take another colour."""
        self._color = color
        self._dress()

    def rescale(self, role: Role) -> None:
        """Take another place in the type scale."""
        if role is not self._role:
            self._role = role
            self._dress()

    def _dress(self) -> None:
        self.setFont(self._theme.font(self._role))
        colors = QPalette(self.palette())
        colors.setColor(QPalette.ColorRole.WindowText, self._theme.color(self._color))
        self.setPalette(colors)


class OneLine(Label):
    """Text on one line; what there is no room for ends in "…", and a screen reader still gets all of it."""

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Paint as much as there is room for."""
        painter = QPainter(self)
        painter.setFont(self.font())
        painter.setPen(self._theme.color(self._color))
        shown = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft), shown)
        painter.end()


class Prose(Label):
    """Text that wraps within any width: a word longer than the line is broken, never cut.

    Args:
        lines: distance of two lines as a part of the font's pixel size; 0 leaves it to the font.
        strong: role of the words that `speak` is told to stress.
    """

    def __init__(
        self,
        theme: Theme,
        role: Role,
        text: str = "",
        *,
        color: str = "ink",
        lines: float = 0.0,
        strong: Role | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._lines = lines
        self._strong = strong
        self._stressed = 0
        self._heights: dict[tuple[str, int, int], int] = {}
        super().__init__(theme, role, text, color=color, wrap=True, parent=parent)

    def _dress(self) -> None:
        self._heights.clear()
        super()._dress()

    def speak(self, text: str, *, stressed: str = "") -> None:
        """Say the stressed words in the stronger role, then the text."""
        self._stressed = len(stressed)
        self.setText(f"{stressed} {text}".strip())
        self.updateGeometry()

    def _laid(self, width: float) -> tuple[QTextLayout, float]:
        """The text in lines of a width, and its height."""
        laid = QTextLayout(self.text().replace("\n", "\u2028"), self.font())
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        option.setTextDirection(Qt.LayoutDirection.LayoutDirectionAuto)
        laid.setTextOption(option)
        if self._strong is not None and self._stressed:
            piece = QTextLayout.FormatRange()
            piece.start, piece.length = 0, self._stressed
            piece.format.setFont(self._theme.font(self._strong))
            laid.setFormats([piece])
        height = 0.0
        laid.beginLayout()
        while (line := laid.createLine()).isValid():
            line.setLineWidth(width)
            step = self.font().pixelSize() * self._lines if self._lines else line.height()
            line.setPosition(QPointF(0, height + (step - line.height()) / 2))
            height += step
        laid.endLayout()
        return laid, height

    def lines_in(self, width: int) -> int:
        """How many lines the text takes in that width."""
        return self._laid(max(1, width - self._inset()[0]))[0].lineCount()

    def _inset(self) -> tuple[int, int]:
        edge = self.contentsMargins()
        return edge.left() + edge.right(), edge.top() + edge.bottom()

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's name
        """The height of the text in that width."""
        across, down = self._inset()
        key = (self.text(), self._stressed, max(1, width - across))
        if key not in self._heights:  # a layout asks for the same few widths again and again
            self._heights[key] = math.ceil(self._laid(key[-1])[1])
        return self._heights[key] + down

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as its text, at most as a drawer is."""
        natural = self._laid(1e6)[0].maximumWidth()
        width = min(math.ceil(natural) + 1, self._theme.px(366)) + self._inset()[0]
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Narrow, for it can be broken anywhere."""
        step = math.floor(self.font().pixelSize() * self._lines) if self._lines else self.fontMetrics().height()
        return QSize(self._theme.px(60), step + self._inset()[1])

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the lines."""
        painter = QPainter(self)
        inside = self.contentsRect()
        painter.setPen(self.palette().color(QPalette.ColorRole.WindowText))
        laid, height = self._laid(inside.width())
        spare = inside.height() - height if self.alignment() & Qt.AlignmentFlag.AlignVCenter else 0.0
        laid.draw(painter, QPointF(inside.left(), inside.top() + max(0.0, spare / 2)))
        painter.end()


class Voice(Prose):
    """A sentence that says what follows, with a bar of ink at its left."""

    BAR, GAP = 3, 15

    def __init__(self, theme: Theme, text: str = "", *, parent: QWidget | None = None) -> None:
        super().__init__(theme, Role.VOICE, text, lines=1.35, parent=parent)
        self.setContentsMargins(self.GAP, 2, 0, 2)

    def paintEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the bar, then the sentence."""
        painter = QPainter(self)
        painter.fillRect(0, 0, self.BAR, self.height(), self._theme.color("ink"))
        painter.end()
        super().paintEvent(event)


class Rule(QWidget):
    """A horizontal line; `oxford` is the double rule under the headline."""

    def __init__(
        self, theme: Theme, *, color: str = "hair", oxford: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._color = color
        self._oxford = oxford
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Six pixels for the double rule, one for a plain one."""
        return QSize(10, 6 if self._oxford else 1)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint it."""
        painter = QPainter(self)
        if self._oxford:
            painter.fillRect(0, 0, self.width(), 3, self._theme.color("ink"))
            painter.fillRect(0, 5, self.width(), 1, self._theme.color("ink"))
        else:
            painter.fillRect(0, 0, self.width(), 1, self._theme.color(self._color))
        painter.end()
