"""The forwarding sheet: what the router at home has to let through, to be read here, printed or saved."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.forwarding import ForwardingFacts
from hearthkey.formats.forwarding_sheet import blocks
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title, reworded
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

FILE = "forwarding-sheet.pdf"
PAUSE = 250
"""Milliseconds without a key before what was typed is looked at."""


_BY_HAND = Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard


class ForwardingPage(Page):
    """Shows the sheet for the addresses that were typed, and saves it as PDF in the window's language."""

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Forwarding sheet"), parent=parent)
        self._errands, self._start, self._pick = errands, start, pick
        self.facts: ForwardingFacts | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.inside, self.router = Line(theme), Line(theme)
        self.questions = (
            Labelled(theme, self.tr("Address of the gateway at &home"), self.inside),
            Labelled(theme, self.tr("&Internet address that the router’s pages show"), self.router),
        )
        self.sheet = QVBoxLayout()
        self.sheet.setSpacing(4)
        self.told = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.save = Button(theme, self.tr("&Save as PDF …"), kind=Kind.COMMIT, height=34)
        self._build()
        for line in (self.inside, self.router):
            line.textEdited.connect(lambda _text: self._pause.start())
            line.returnPressed.connect(self.look)
        self.save.clicked.connect(self._ask_where)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        for question in self.questions:
            self.body.addWidget(question)
        self.body.addLayout(self.sheet)
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.told, self.trouble):
            self.foot.addLayout(inset(part))
            part.hide()
        row = QHBoxLayout()
        row.addWidget(self.save)
        row.addStretch(1)
        self.foot.addLayout(row)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Make the sheet anew, for the settings may be others now."""
        if snapshot.household is not None:
            self.look()

    def look(self) -> None:
        """Have the sheet made for what was typed."""
        self._pause.stop()
        typed = (self.inside.text().strip(), self.router.text().strip())
        inside, router = (one or None for one in typed)
        self._errands.forwarding(inside, router, self, partial(self._made, typed), self._failed)

    def _made(self, typed: tuple[str, str], facts: ForwardingFacts) -> None:
        if typed == (self.inside.text().strip(), self.router.text().strip()):
            self.trouble.hide()
            self.show_facts(facts)

    def show_facts(self, facts: ForwardingFacts) -> None:
        """Show the sheet."""
        if facts == self.facts:
            return
        self.facts = facts
        empty(self.sheet)
        for one in self.blocks():
            self.sheet.addWidget(self._shown(one))

    def blocks(self) -> tuple[Block, ...]:
        """The sheet in the language of the window."""
        return () if self.facts is None else reworded(blocks(self.facts), spoken)

    def _shown(self, block: Block) -> QWidget:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 2, 0, 4)
        column.setSpacing(1)
        if isinstance(block, Row):
            column.addLayout(inset(Prose(self.theme, Role.BODY_STRONG, block.label)))
            for value in block.values:
                typed = Prose(self.theme, Role.BODY, value)
                typed.setTextInteractionFlags(_BY_HAND)
                typed.setAccessibleName(f"{block.label}: {value}")
                column.addLayout(inset(typed))
            if block.told:
                column.addLayout(inset(Prose(self.theme, Role.STATE, block.told, color="ink2")))
        elif isinstance(block, Heading):
            column.setContentsMargins(0, 10, 0, 2)
            column.addLayout(inset(Prose(self.theme, Role.BODY_STRONG, block.text, color="ink2")))
        elif isinstance(block, Note):
            column.addLayout(inset(Prose(self.theme, Role.BODY, block.text, color="act" if block.urgent else "ink")))
        elif isinstance(block, Title):
            part.hide()
            part.setMaximumHeight(0)
        return part

    # Deeds

    def _ask_where(self) -> None:
        self._pick(self, self.tr("Where the sheet is saved"), self._start, self._save)

    def _save(self, folder: Path) -> None:
        self.trouble.hide()
        self._errands.print_sheet(self.blocks(), folder, FILE, self, self._saved, self._failed)

    def _saved(self, path: Path) -> None:
        self.told.speak(self.tr("It lies in {path}.").format(path=path))
        self.told.show()
        announce(self, self.told.text())

    def _failed(self, error: HearthkeyError) -> None:
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self.told.hide()
        self.trouble.hide()
