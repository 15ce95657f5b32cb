"""The diary: what was done, newest first, whether anybody altered it, and a way to take it along."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.names import file_stem
from hearthkey.core.network import Caution
from hearthkey.formats import diary_file
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.drawer.diary_filter import DiaryFilter
from hearthkey.ui.drawer.diary_list import DiaryList
from hearthkey.ui.drawer.diary_model import DiaryModel
from hearthkey.ui.drawer.page import INSET, RING, Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import caution, mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme

PAUSE = 120
"""Milliseconds without a key press before the entries are searched."""


class DiaryPage(Page):
    """Chain, search, whose, entries. The list scrolls, so the page does not.

    Args:
        start: where the first folder dialog opens.

    Signals:
        copies: the sealed copies are wanted.
    """

    copies = Signal()

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path = Path(),
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Diary"), parent=parent)
        self._errands, self._start, self._pick = errands, start, pick
        self._misfit: int | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self._search)
        self.chain = Prose(theme, Role.BODY, strong=Role.BODY_STRONG, lines=1.4)
        self.copies_button = Button(theme, self.tr("Sealed copies"), hint=self.tr("Ctrl+B"), height=26)
        self.copies_button.clicked.connect(self.copies)
        self.line = Line(theme)
        self.line.setClearButtonEnabled(True)
        self.whose = DiaryFilter(theme)
        self.asked = Labelled(theme, self.tr("Search"), self.line)
        self.model = DiaryModel(self)
        self.list = DiaryList(theme, self.model)
        self.copy_button = Button(theme, self.tr("Copy"), hint=self.tr("Ctrl+C"))
        self.write_button = Button(theme, self.tr("Write to a folder…"))
        self.outcome = Prose(theme, Role.STATE, color="ink2")
        self._build()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _connect(self) -> None:
        self.copy_button.clicked.connect(self._copy)
        self.write_button.clicked.connect(self._offer_forms)
        self.line.textChanged.connect(self._pause.start)
        self.line.returnPressed.connect(partial(self.find_next, 1))
        self.whose.looked_for.connect(self._choose)

    def _build(self) -> None:
        upper = QVBoxLayout()
        upper.setContentsMargins(INSET - RING, 0, INSET - RING, 6)
        upper.setSpacing(8)
        upper.addLayout(inset(self.chain))
        upper.addWidget(self.copies_button, 0, Qt.AlignmentFlag.AlignLeft)
        looked = QHBoxLayout()
        looked.setSpacing(6)
        looked.addWidget(self.asked, 1)
        looked.addWidget(Labelled(self.theme, self.tr("Whose entries"), self.whose), 1)
        upper.addLayout(looked)
        lower = QHBoxLayout()
        lower.setContentsMargins(INSET, 0, INSET - ThinBar.WIDTH, 0)
        lower.addWidget(self.list)
        self.fill(upper, lower)
        self.show_foot()
        row = QHBoxLayout()
        row.addWidget(self.copy_button)
        row.addWidget(self.write_button)
        row.addStretch(1)
        self.foot.addLayout(row)
        self.foot.addLayout(inset(self.outcome))
        self.outcome.hide()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the diary as it is now."""
        self.model.show_entries(snapshot.diary, snapshot.passes)
        self.whose.name_subjects(self.model.subjects())
        misfit = self._misfit = snapshot.diary_misfit
        self.copies_button.setVisible(misfit is not None)
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

    # Looking something up

    def _search(self) -> None:
        self._pause.stop()
        self.model.search(self.line.text())
        self._count()

    def _choose(self, person: str, title: str) -> None:
        self.model.choose(person, title)
        self._count()

    def _count(self) -> None:
        found = self.model.rowCount()
        words = self.tr("1 entry found") if found == 1 else self.tr("{count} entries found")
        thinned = self.line.text().strip() or self.whose.currentIndex() > 0
        self.asked.remark(words.format(count=found) if thinned else "")
        announce(self.line, words.format(count=found))

    def find_next(self, step: int) -> None:
        """Go to the next entry that was found, or back; the focus stays where it is."""
        if self._pause.isActive():
            self._search()
        row = self.list.go(step)
        if row < 0:
            return
        told = self.tr("{place} of {count}: {entry}").format(
            place=row + 1, count=self.model.rowCount(), entry=self.model.spoken(row)
        )
        announce(self.list, told)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """F3 goes to the next entry that was found, with Shift to the one before."""
        if event.key() == Qt.Key.Key_F3:
            self.find_next(-1 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1)
        else:
            super().keyPressEvent(event)

    # Taking it along

    def _copy(self) -> None:
        self.list.copy()
        announce(self.copy_button, self.tr("Copied"))

    def _offer_forms(self) -> None:
        self._forms = QMenu(self)
        self._forms.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for words, json_lines in ((self.tr("As &text…"), False), (self.tr("For &machines (JSON Lines)…"), True)):
            self._forms.addAction(words).triggered.connect(
                lambda _on=False, json_lines=json_lines: self.write(json_lines=json_lines)
            )
        self._forms.popup(self.write_button.mapToGlobal(self.write_button.rect().topLeft()))

    def write(self, *, json_lines: bool) -> None:
        """Ask for a folder, and write the entries that are shown into a file of it.

        Args:
            json_lines: for machines, with English sentences, as the chain is over them; else as they are shown here.
        """
        self._pick(self, self.tr("Where to write it"), self._start, partial(self._write, json_lines=json_lines))

    def _write(self, folder: Path, *, json_lines: bool) -> None:
        snapshot = self._errands.last
        if snapshot is None or snapshot.household is None:
            return
        self._start = folder
        shown, tells_of, head = self.model.shown(), self.model.tells_of, self._head(snapshot)
        stem = file_stem(snapshot.household.name, "household")
        name = f"{stem}-diary-{snapshot.at:%Y-%m-%d-%H%M%S}.{'jsonl' if json_lines else 'txt'}"

        def make() -> bytes:
            if json_lines:
                return diary_file.as_json_lines(shown, tells_of)
            return diary_file.as_text(shown, head, self.model.line)

        self._errands.write_diary(folder, name, make, self, self._written, self._not_written)

    def _head(self, snapshot: Snapshot) -> list[str]:
        name = "" if snapshot.household is None else snapshot.household.certified_name
        count = self.model.rowCount()
        told = self.tr("1 entry.") if count == 1 else self.tr("{count} entries.")
        if self._misfit is None:
            chain = self.tr("The chain holds.")
        else:
            chain = self.tr("It does not fit together from entry {number} on.").format(number=self._misfit)
        return [self.tr("The diary of {name}").format(name=name), told.format(count=count), chain]

    def _written(self, path: Path) -> None:
        self._say(self.tr("It lies in {folder} as {name}.").format(folder=path.parent, name=path.name))

    def _not_written(self, error: HearthkeyError) -> None:
        self._say(mended(error))

    def _say(self, told: str) -> None:
        self.outcome.show()
        self.outcome.speak(told)
        announce(self.outcome, told)
