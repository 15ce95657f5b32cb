"""What a look at a household found, row by row: a sign, a word for how grave it is, what it is, what goes on."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.found_findings import Gathered
from hearthkey.core.found_household import Grave
from hearthkey.core.sentences import found as sentences
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme

SIGNS = {Grave.STOPS: Sign.REVOKED, Grave.BREAKS: Sign.DUE, Grave.WEAK: Sign.NEVER_PROVED, Grave.NOTE: Sign.DRAFT}
"""Solid for what stands in the way, hollow for what is only good to know."""


class FindingRows(QWidget):
    """The rows, the gravest first."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self.rows: list[FindingRow] = []

    def show_findings(self, gathered: Sequence[Gathered]) -> None:
        """Show these instead of those before."""
        empty(self._column)
        self.rows = [FindingRow(self._theme, one) for one in gathered]
        for row in self.rows:
            self._column.addWidget(Rule(self._theme))
            self._column.addWidget(row)
        self.setVisible(bool(self.rows))


class FindingRow(QWidget):
    """One of them."""

    def __init__(self, theme: Theme, gathered: Gathered, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        one = gathered.first
        self.sign = SignLabel(theme, SIGNS[one.grave], ground="sheet")
        self.word = Label(theme, Role.STATE_WORD, said(Sentence(sentences.GRAVE[one.grave], {})))
        self.clause = Label(theme, Role.STATE, one.clause, color="ink2")
        self.what = Prose(theme, Role.BODY, said(sentences.what(one)))
        self.effect = Prose(theme, Role.BODY, said(sentences.effect(one)), color="ink2")
        self.files = Prose(theme, Role.STATE, said(sentences.where(gathered)), color="ink2")
        self.files.setVisible(bool(gathered.files))
        head = Pair(theme, self.word, self.clause, least=330, gap=1, stretch=(1, 0))
        words = QVBoxLayout()
        words.setSpacing(1)
        words.addWidget(head)
        for part in (self.what, self.effect, self.files):
            words.addWidget(part)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 8, 0, 9)
        row.setSpacing(10)
        row.addWidget(self.sign, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)
        self.setAccessibleName(f"{self.word.text()}: {self.what.text()} {self.effect.text()}")
