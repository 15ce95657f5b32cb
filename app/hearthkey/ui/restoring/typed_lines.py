"""The lines of a paper, typed by hand: what fits is kept, what does not is named."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QColor, QFontDatabase, QPalette
from PySide6.QtWidgets import QFrame, QPlainTextEdit, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.paper import Gathered
from hearthkey.services import reading_paper
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.drawer.template_text import Boxed
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 300
"""Milliseconds without a key before what was typed is read."""


class TypedLines(QWidget):
    """A field for lines, and how far the paper has been read.

    Signals:
        read: more has been read.
    """

    read = Signal()

    ROWS = 5

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._scanned = Gathered()
        self.gathered = Gathered()
        self.field = QPlainTextEdit()
        self.field.setTabChangesFocus(True)
        self.field.setVerticalScrollBar(ThinBar(theme))
        self.field.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.field.setFrameShape(QFrame.Shape.NoFrame)
        self.field.viewport().setAutoFillBackground(False)
        self.field.setPlaceholderText("01 ABCDE FGHIJ …")
        self.state = Prose(theme, Role.BODY)
        self.state.setContentsMargins(Line.RING, 0, Line.RING, 0)
        self.asked = Labelled(theme, self.tr("&Lines of the paper, each with its number"), Boxed(theme, self.field))
        self.asked.answered_by(self.field)
        self.field.setAccessibleName(self.tr("Lines of the paper"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.asked)
        column.addWidget(self.state)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.field.textChanged.connect(self._pause.start)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        colors = self.field.palette()
        colors.setColor(QPalette.ColorRole.Base, QColor(Qt.GlobalColor.transparent))
        self.field.setPalette(colors)
        font = self._theme.font(Role.BODY)
        font.setFamily(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont).family())
        self.field.setFont(font)
        self.field.setFixedHeight(self.ROWS * self.field.fontMetrics().lineSpacing() + 18)

    def show_scanned(self, gathered: Gathered) -> None:
        """Go on from what was read off codes."""
        self._scanned = gathered
        self.look()

    def forget(self) -> None:
        """Begin anew."""
        self._scanned = Gathered()
        self.field.clear()
        self.look()

    def look(self) -> None:
        """Read what has been typed."""
        self._pause.stop()
        try:
            found = reading_paper.typed(self.field.toPlainText(), self._scanned)
        except HearthkeyError as error:
            self._say(mended(error), "act")
            return
        changed, self.gathered = found != self.gathered, found
        self._say(self._told(), "act" if found.bad else "ink")
        if changed:
            self.read.emit()

    def _told(self) -> str:
        found, last = self.gathered, self.field.toPlainText().rstrip().count("\n") + 1
        if found.whole:
            return self.tr("All {count} lines of the paper have been read.").format(count=found.count)
        if found.bad:
            return self.tr("A slip in line {slips}: compare it letter by letter. Still wanted: {missing}.").format(
                slips=numbers(found.bad), missing=numbers(found.missing)
            )
        if found.lines:
            return self.tr("Lines read so far: {count}. Still wanted: {missing}.").format(
                count=len(found.lines), missing=numbers(found.missing)
            )
        if self.field.toPlainText().strip():
            return self.tr("Line {last} is not whole yet: a number and nine groups.").format(last=last)
        return ""

    def _say(self, text: str, color: str) -> None:
        if text != self.state.text():
            announce(self, text)
        self.state.recolor(color)
        self.state.speak(text)
        self.state.setVisible(bool(text))
        self.field.setAccessibleDescription(text)


def numbers(found: Sequence[int]) -> str:
    """Numbers in order, neighbours drawn together: "3, 16–30"."""
    runs: list[list[int]] = []
    for number in found:
        if runs and runs[-1][-1] == number - 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in runs)
