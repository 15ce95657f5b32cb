"""The founding page on the first evening."""

from __future__ import annotations

from typing import cast

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from hearthkey.core.plans import FoundPlan
from hearthkey.core.secret import Secret
from hearthkey.ui.pages.founding import FoundingPage
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.overlay.household import PASSPHRASE, FakeErrands
from tests.ui.overlay.judge import judge
from tests.ui.practice import snapshot


class Evening:
    """The page, and what it asked for."""

    def __init__(self, qtbot: QtBot, theme: Theme) -> None:
        self._qtbot = qtbot
        self.errands = FakeErrands(snapshot(founded=False), judge())
        self.ways = Ways()
        self.looked_around = 0
        self.page = FoundingPage(theme, self.errands, self.ways, practice=self._look_around, key_folder="keys")
        self.page.resize(1280, 768)
        qtbot.addWidget(self.page)
        with qtbot.waitActive(self.page):
            self.page.show()
            self.page.activateWindow()

    def _look_around(self) -> None:
        self.looked_around += 1

    def type(self, line: QLineEdit, text: str) -> None:
        """Type into a field, in place of what is there."""
        line.setFocus()
        line.selectAll()
        QTest.keyClick(line, Qt.Key.Key_Delete)
        if text.isascii():
            QTest.keyClicks(line, text)
        else:  # no plain keyboard types these: they are pasted
            line.insert(text)

    def fill(
        self, name: str = "Quince Cottage", host: str = "home.quince.example", home: str = "198.51.100.0/24"
    ) -> None:
        """Fill in what has to be there, and wait for the sentence or the trouble."""
        form = self.page.form
        for line, text in ((form.name, name), (form.host, host), (form.home, home)):
            self.type(line, text)
        self.look()

    def look(self) -> None:
        """Have it looked at now."""
        self.page.preview()

    def confirm(self, words: str = PASSPHRASE) -> None:
        """Type the passphrase once more."""
        self.type(self.page.passphrase.again, words)

    def under(self, spot: Spot) -> str:
        """What stands under a field."""
        return self.page.form.spots[spot].told()

    def founded(self) -> list[tuple[FoundPlan, Secret[str], str]]:
        """What was asked to be founded."""
        return cast("list[tuple[FoundPlan, Secret[str], str]]", self.errands.asked("found"))
