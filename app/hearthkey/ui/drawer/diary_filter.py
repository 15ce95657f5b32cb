"""Whose entries of the diary are shown: everybody's, one person's, one device's."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from hearthkey.core.diary_search import Subject
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.theme import Theme

EVERYBODY = "everybody"


class DiaryFilter(Combo):
    """A choice among those whom the diary names.

    Signals:
        looked_for: a person and the title of a device, one of them or both empty.
    """

    looked_for = Signal(str, str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Whose entries"), parent)
        self._subjects: dict[str, Subject] = {}
        self.name_subjects(())
        self.currentIndexChanged.connect(lambda _row: self._tell())

    def name_subjects(self, subjects: Sequence[Subject]) -> None:
        """Offer these; what was chosen stays chosen while it is among them."""
        found = {f"{one.person}/{one.device}": one for one in subjects}
        if found == self._subjects and self.count():
            return
        before = self.key() or EVERYBODY
        self._subjects = found
        self.blockSignals(True)  # noqa: FBT003 - Qt's argument
        self.offer([(EVERYBODY, self.tr("Everybody")), *((key, spoken(one.title)) for key, one in found.items())])
        self.take(before if before in found else EVERYBODY)
        self.blockSignals(False)  # noqa: FBT003 - Qt's argument
        if self.key() != before:
            self._tell()

    def _tell(self) -> None:
        one = self._subjects.get(self.key())
        if one is None:
            self.looked_for.emit("", "")
        else:
            self.looked_for.emit("" if one.device else one.person, one.title if one.device else "")
