"""Two of the deputy's parts, each typed or read from a picture, and what was read of each."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.deputy import Part
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.secret import Secret
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.errands import Errands
from hearthkey.ui.restoring.drop_place import PickFiles, pick_files
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 500
"""Milliseconds without a key before what was typed is read."""


class OnePart(QWidget):
    """A field for fifteen words, a button for a picture, and what was read.

    Args:
        label: above the field.
        start: where the file dialog opens.

    Signals:
        read: another part than before, or none any more.
    """

    read = Signal()

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        label: str,
        start: Path,
        *,
        pick: PickFiles = pick_files,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._errands, self._start, self._pick = errands, start, pick
        self.part: Part | None = None
        self.words = Line(theme)
        self.words.setAccessibleName(label.replace("&", ""))
        self.picture = Button(theme, self.tr("From a picture…"), height=30)
        self.picture.setAccessibleDescription(label.replace("&", ""))
        self.state = Prose(theme, Role.STATE, color="ink2")
        self.state.setContentsMargins(Line.RING, 0, Line.RING, 0)
        beside = QHBoxLayout()
        beside.setContentsMargins(0, 0, 0, 0)
        beside.setSpacing(4)
        beside.addWidget(self.words, 1)
        beside.addWidget(self.picture)
        row = QWidget()
        row.setLayout(beside)
        asked = Labelled(theme, label, row)
        asked.answered_by(self.words)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(asked)
        column.addWidget(self.state)
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.words.textChanged.connect(self._typed)
        self.picture.clicked.connect(self._choose)
        self.state.hide()

    def forget(self) -> None:
        """Begin anew."""
        self.words.clear()
        self._pause.stop()
        self._none("")

    def _typed(self) -> None:
        if self.words.text():
            self._none("")
            self._pause.start()

    def look(self) -> None:
        """Read what was typed."""
        self._pause.stop()
        text = self.words.text()
        if text:
            known = Secret(text)
            self._errands.read_part(known, self, partial(self._found, text), partial(self._wrong, text))

    def _choose(self) -> None:
        self._pick(self, self.tr("A picture of the code on a part"), self._start, self.take_files)

    def take_files(self, files: Sequence[Path]) -> None:
        """Read the code on a picture."""
        if files:
            self._start = files[0].parent
            self.words.clear()
            self._none("")
            self._errands.read_part_file(files[0], self, partial(self._found, ""), partial(self._wrong, ""))

    def _found(self, text: str, part: Part) -> None:
        if text == self.words.text():
            self.show_part(part)

    def show_part(self, part: Part) -> None:
        """One was read."""
        self._pause.stop()
        self.part = part
        told = self.tr("Part {number} of {count}, set {name}. It is whole.")
        self._say(told.format(number=part.number, count=part.count, name=part.set_name), "ink2")
        self.read.emit()

    def _wrong(self, text: str, error: HearthkeyError) -> None:
        if text == self.words.text():
            self.show_trouble(error)

    def show_trouble(self, error: HearthkeyError) -> None:
        """What was given is no part."""
        self._pause.stop()
        self._none(mended(error))

    def _none(self, told: str) -> None:
        self.part = None
        self._say(told, "act")
        self.read.emit()

    def _say(self, told: str, color: str) -> None:
        self.state.recolor(color)
        self.state.speak(told)
        self.state.setVisible(bool(told))
        if told:
            announce(self, told)


class TwoParts(QWidget):
    """Both of them.

    Signals:
        read: one of them is another than before.
    """

    read = Signal()

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        *,
        pick: PickFiles = pick_files,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        what = self.tr(
            "Any two parts of one set open a sealed copy; a paper they do not open. On each sheet stand fifteen words, "
            "and the same as a code."
        )
        self.what = Prose(theme, Role.STATE, what, color="ink2")
        self.what.setContentsMargins(Line.RING, 0, Line.RING, 0)
        self.both = (
            OnePart(theme, errands, self.tr("Words of the &first part"), start, pick=pick),
            OnePart(theme, errands, self.tr("Words of the &second part"), start, pick=pick),
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.what)
        for one in self.both:
            column.addWidget(one)
            one.read.connect(self.read)

    @property
    def parts(self) -> tuple[Part, ...]:
        """Those that were read."""
        return tuple(one.part for one in self.both if one.part is not None)

    @property
    def whole(self) -> bool:
        """Whether both were read."""
        return len(self.parts) == len(self.both)

    def forget(self) -> None:
        """Begin anew."""
        for one in self.both:
            one.forget()
