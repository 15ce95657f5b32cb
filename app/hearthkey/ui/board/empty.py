"""The sheet before anybody has a pass: a question, a button, and the line that will stand here."""

from __future__ import annotations

from datetime import datetime, timedelta

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.ui.board.life import draft_row, tr
from hearthkey.ui.board.painting import Drawn
from hearthkey.ui.board.placing import Part, baseline
from hearthkey.ui.board.rows import Row
from hearthkey.ui.board.ruling import Box, Ruling
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.entries import DRAFT_KEY, Draft, Entry
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

TWO_YEARS = timedelta(days=730)


def promise() -> str:
    """What the line of dots says."""
    return tr("a first line will stand here, from today to its last day")


def folded() -> str:
    """How the axis is read."""
    return tr("Time runs to the right and is folded: weeks near today are wide, years far off are narrow.")


class Ghost:
    """A line that nobody has yet.

    Args:
        now: today, UTC.
        top: of its row, pixels.
    """

    def __init__(self, now: datetime, top: float) -> None:
        self._entry = Entry(DRAFT_KEY, "", Draft("", "", now + TWO_YEARS), 0, 1)
        row = draft_row(Draft("", "", now + TWO_YEARS), now)
        self._row = Row(
            "", "", row.sign, "", promise(), "", None, row.tone, row.segments, row.marks, row.events, promise()
        )
        self._top = top

    def drawn(self, ruling: Ruling) -> Drawn:
        """Its row."""
        return Drawn(self._entry, self._row, self._box(ruling), self._top)

    def notes(self, ruling: Ruling) -> list[Part]:
        """The line that teaches how to read the axis, in as many lines as it takes."""
        if len(ruling.axis.pieces) == 1:  # seen from near nothing is folded
            return []
        box, names = self._box(ruling), ruling.names
        first = baseline(self._entry, box, self._top, ruling) + ruling.theme.px(46)
        left = ruling.words_left
        right = ruling.columns.axis.right
        wall = right if ruling.wall is None else ruling.x(ruling.wall)[0] - 8
        lines = names.lines(Role.STATE, folded(), (wall if wall - left > right / 3 else right) - left)
        return [
            Part(
                "fact",
                line,
                left,
                first + at * names.height(Role.STATE),
                names.width(Role.STATE, line),
                Role.STATE,
                "ink2",
            )
            for at, line in enumerate(lines)
        ]

    def _box(self, ruling: Ruling) -> Box:
        return Box(0, ruling.theme.px(ruling.base), 0)


class Question(QWidget):
    """Who should get in?"""

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget) -> None:
        super().__init__(parent)
        self.button = Button(theme, tr("Add a person"), kind=Kind.COMMIT, height=30)
        self.button.clicked.connect(lambda _on=False: ways.new_device.emit(""))
        self.button.setAccessibleDescription(f"{promise()}. {folded()}")
        self._words = Label(theme, Role.TITLE, tr("Who should get in?"), wrap=True)
        self._words.setContentsMargins(Button.RING, 0, 0, 0)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self._words)
        column.addWidget(self.button)
        column.addStretch(1)

    def lie(self, ruling: Ruling, top: int) -> None:
        """Take the place of the names."""
        wide = max(round(ruling.columns.who.width) + 14, self.button.sizeHint().width())
        if ruling.stacked:
            wide = round(ruling.columns.who.width)
        self.setGeometry(round(ruling.columns.who.left) - Button.RING, top, wide, self.wanted(wide))

    def wanted(self, wide: int) -> int:
        """Its height at a width, pixels."""
        return self._words.heightForWidth(wide) + 8 + self.button.sizeHint().height() + 8
