"""A line of the day list that stands for many, and lists their names as text when it is unfolded."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.day_list import More
from hearthkey.core.duties import MINUTES
from hearthkey.core.sentences import duties as words
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.dates import short_day
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class DaysFold(QWidget):
    """One line, a button, and below them the names once somebody wants them.

    Signals:
        turned: it was folded or unfolded; true where it is unfolded now.
    """

    turned = Signal(bool)

    def __init__(
        self, theme: Theme, found: More, *, wants: bool, unfolded: bool = False, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._found = found
        self.names: Prose | None = None
        self.button = Button(theme, "", height=26)
        self.button.clicked.connect(self._turn)
        title = Prose(theme, Role.BODY_STRONG, said(words.more(found)), color="act" if wants else "ink")
        lines = QVBoxLayout()
        lines.setSpacing(1)
        lines.addWidget(title)
        lines.addWidget(Prose(theme, Role.STATE, self._when(), color="ink2"))
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addLayout(lines, 1)
        row.addWidget(self.button, 0, Qt.AlignmentFlag.AlignTop)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(3, 0, 0, 0)
        self._column.setSpacing(4)
        self._column.addLayout(row)
        self._say()
        if unfolded:
            self._turn()

    def _when(self) -> str:
        days = [one.act_on for one in self._found.duties]
        minutes = MINUTES[self._found.act]
        told = self.tr("by {first} to {last}, {minutes} min each")
        return told.format(first=short_day(min(days)), last=short_day(max(days)), minutes=minutes)

    @property
    def unfolded(self) -> bool:
        """Whether the names are shown."""
        return self.names is not None and not self.names.isHidden()

    def _turn(self) -> None:
        if self.names is None:  # made when it is first wanted: hundreds of lines take their time to be laid out
            lines = [
                self.tr("{title}, by {day}").format(
                    title="" if one.chosen is None else spoken(one.chosen.title), day=short_day(one.act_on)
                )
                for one in self._found.duties
            ]
            self.names = Prose(self._theme, Role.STATE, "\n".join(lines), color="ink2")
            self._column.addWidget(self.names)
            self.names.show()
        else:
            self.names.setVisible(self.names.isHidden())
        self._say()
        self.turned.emit(self.unfolded)

    def _say(self) -> None:
        self.button.say(self.tr("Hide them") if self.unfolded else self.tr("Name them"))
        self.button.setAccessibleName(f"{said(words.more(self._found))}: {self.button.text()}")
