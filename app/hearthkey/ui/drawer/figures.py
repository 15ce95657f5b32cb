"""Text that can be selected and copied: values, certificates."""

from __future__ import annotations

import math
from collections.abc import Container, Iterable

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPalette, QTextCharFormat, QTextCursor, QTextOption
from PySide6.QtWidgets import QFrame, QGridLayout, QSizePolicy, QTextEdit, QWidget

from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Figure(QTextEdit):
    """A value to be selected and copied, as high as its text, broken anywhere rather than cut.

    Args:
        name: what it is the value of, for a screen reader.
        note: what explains the value, in the second ink behind it.
        tabs: the Tab key stops here; else the mouse alone selects, and the page stays short to walk.
    """

    def __init__(
        self,
        theme: Theme,
        name: str,
        value: str,
        note: str = "",
        *,
        role: Role = Role.BODY,
        tabs: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._role = role
        self._told = (value, note)
        self.setReadOnly(True)
        self.setTabChangesFocus(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus if tabs else Qt.FocusPolicy.ClickFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWordWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self.document().setDocumentMargin(0)
        self.viewport().setAutoFillBackground(False)
        fits = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        fits.setHeightForWidth(True)
        self.setSizePolicy(fits)
        self.setAccessibleName(name)
        theme.changed.connect(self._dress)
        self._dress()

    def show_value(self, value: str, note: str = "") -> None:
        """Show another value."""
        self._told = (value, note)
        self._dress()

    def value(self) -> str:
        """The value without its note."""
        return self._told[0]

    def _dress(self) -> None:
        self.setFont(self._theme.font(self._role))
        colors = QPalette(self.palette())
        colors.setColor(QPalette.ColorRole.Base, Qt.GlobalColor.transparent)
        self.setPalette(colors)
        self.clear()
        cursor = QTextCursor(self.document())
        ink = QTextCharFormat()
        ink.setForeground(self._theme.color("ink"))
        second = QTextCharFormat()
        second.setForeground(self._theme.color("ink2"))
        value, note = self._told
        cursor.insertText(value, ink)
        if note:
            cursor.insertText(f" {note}", second)
        self.updateGeometry()

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's name
        """The height of the text in that width."""
        measured = self.document().clone(self)
        measured.setDefaultFont(self.font())
        measured.setTextWidth(max(1, width))
        height = math.ceil(measured.size().height())
        measured.deleteLater()
        return height

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The room beside a label in a drawer."""
        width = self.width() if self.isVisible() else self._theme.px(252)
        return QSize(self._theme.px(120), self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """One line."""
        return QSize(self._theme.px(60), self.fontMetrics().height())


class Facts(QWidget):
    """Facts in the trade's terms: a label of one measured column, then the value.

    Args:
        keys: facts in their order, where they are not all told in it; others follow as they are told.
    """

    LABEL = 104

    def __init__(self, theme: Theme, keys: Iterable[str] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows = {key: row for row, key in enumerate(keys)}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(4)
        self._grid.setColumnStretch(1, 1)
        self.figures: dict[str, Figure] = {}
        self._labels: dict[str, Label] = {}
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self._grid.setColumnMinimumWidth(0, self._theme.px(self.LABEL))

    def tell(self, key: str, label: str, value: str, note: str = "") -> None:
        """Tell a fact; one that was told before gets its new value."""
        if key in self.figures:
            self.figures[key].show_value(value, note)
            return
        named = Label(self._theme, Role.BODY, label, color="ink2", wrap=True)
        named.setAlignment(Qt.AlignmentFlag.AlignTop)
        figure = Figure(self._theme, label, value, note)
        row = self._rows.setdefault(key, len(self._rows))
        self._grid.addWidget(named, row, 0, Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(figure, row, 1)
        self.figures[key] = figure
        self._labels[key] = named

    def keep(self, keys: Container[str]) -> None:
        """Show these facts alone; the others come back when they are kept again."""
        for key, figure in self.figures.items():
            for part in (self._labels[key], figure):
                part.setVisible(key in keys)

    def told(self) -> str:
        """All facts as lines of text, for copying."""
        ordered = (self.figures[key] for key in self._rows if key in self.figures)
        shown = (figure for figure in ordered if not figure.isHidden())
        return "\n".join(f"{figure.accessibleName()}: {figure.toPlainText()}" for figure in shown)


def in_groups(digits: str) -> str:
    """Hexadecimal digits in groups of four, as they are read aloud and compared."""
    text = digits.upper()
    return " ".join(text[start : start + 4] for start in range(0, len(text), 4))
