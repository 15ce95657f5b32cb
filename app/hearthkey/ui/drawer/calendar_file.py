"""Under the day list: the same days as a file for the family's calendar; writing it again updates them there."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.services import dating
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_file import PickFile, pick_file
from hearthkey.ui.sight import sight
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class CalendarFile(QWidget):
    """A button, and what became of it.

    Args:
        start: the folder in which the first dialog opens.
    """

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        *,
        pick: PickFile = pick_file,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._errands, self._folder, self._pick = errands, start, pick
        self._name = ""
        self.button = Button(theme, self.tr("&Calendar file…"), height=34)
        self.outcome = Prose(theme, Role.STATE, color="ink2")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(inset(self.outcome))
        self.outcome.hide()
        self.button.clicked.connect(self.ask)

    def ask(self) -> None:
        """Ask where the file goes; the next time the dialog begins with the same one."""
        seen = self._errands.last
        if seen is None or seen.household is None:
            return
        proposed = self._folder / (self._name or dating.file_name(seen.household))
        self._pick(
            self, self.tr("The days, for a calendar"), proposed, self.tr("Calendar file (*.ics)"), self.write_into
        )

    def write_into(self, file: Path) -> None:
        """Write the days as they are now."""
        seen = self._errands.last
        if seen is None or seen.household is None or seen.authority is None:
            return
        self._folder, self._name = file.parent, file.name
        found, household, authority, now = sight(seen).duties or (), seen.household, seen.authority, seen.at
        self._errands.write_dates(
            file,
            lambda: dating.as_calendar(found, household, authority, now, said),
            self,
            self._written,
            self._not_written,
        )

    def _written(self, path: Path) -> None:
        told = self.tr(
            "It lies in {folder} as {name}. Open it with the family’s calendar. When the days have changed, write it "
            "again: the calendar takes the new days for the old ones."
        )
        self._say(told.format(folder=path.parent, name=path.name))

    def _not_written(self, error: HearthkeyError) -> None:
        self._say(mended(error))

    def _say(self, told: str) -> None:
        self.outcome.speak(told)
        self.outcome.show()
        announce(self.outcome, told)
