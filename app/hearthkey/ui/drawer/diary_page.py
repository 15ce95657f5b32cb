"""The diary: what was done, newest first, and whether anybody altered it."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.network import Caution
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.drawer.diary_list import DiaryList
from hearthkey.ui.drawer.diary_model import DiaryModel
from hearthkey.ui.drawer.page import INSET, RING, Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme

PAUSE = 120
"""Milliseconds without a key press before the entries are searched."""


class DiaryPage(Page):
    """Chain, search, entries. The list scrolls, so the page does not."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Diary"), parent=parent)
        self._errands = errands
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self._search)
        self.chain = Prose(theme, Role.BODY, strong=Role.BODY_STRONG, lines=1.4)
        self.line = Line(theme)
        self.line.setClearButtonEnabled(True)
        self.asked = Labelled(theme, self.tr("Search"), self.line)
        self.model = DiaryModel(self)
        self.list = DiaryList(theme, self.model)
        self.copy_button = Button(theme, self.tr("Copy"), hint=self.tr("Ctrl+C"))
        self.copy_button.clicked.connect(self._copy)
        self.line.textChanged.connect(self._pause.start)
        self._build()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        upper = QVBoxLayout()
        upper.setContentsMargins(INSET - RING, 0, INSET - RING, 6)
        upper.setSpacing(10)
        upper.addLayout(inset(self.chain))
        upper.addWidget(self.asked)
        lower = QHBoxLayout()
        lower.setContentsMargins(INSET, 0, INSET - ThinBar.WIDTH, 0)
        lower.addWidget(self.list)
        self.fill(upper, lower)
        self.show_foot()
        row = QHBoxLayout()
        row.addWidget(self.copy_button)
        row.addStretch(1)
        self.foot.addLayout(row)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the diary as it is now."""
        self.model.show_entries(snapshot.diary)
        misfit = snapshot.diary_misfit
        if misfit is None:
            self.entitle(self.tr("Diary"))
            count = len(snapshot.diary)
            told = self.tr("1 entry, sealed.") if count == 1 else self.tr("{count} entries, each sealed to the last.")
            self.chain.recolor("ink")
            self.chain.speak(told.format(count=count), stressed=self.tr("The chain holds."))
        else:
            self.entitle(self.tr("Diary"), Sign.DUE)
            self.chain.recolor("act")
            self.chain.speak(caution(Caution("diary-broken", str(misfit))))

    def _search(self) -> None:
        self.model.search(self.line.text())
        found = self.model.rowCount()
        words = self.tr("1 entry found") if found == 1 else self.tr("{count} entries found")
        self.asked.remark(words.format(count=found) if self.line.text().strip() else "")
        announce(self.line, words.format(count=found))

    def _copy(self) -> None:
        self.list.copy()
        announce(self.copy_button, self.tr("Copied"))
