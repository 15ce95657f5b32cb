"""A window with the sheet "Lost or stolen" over it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.lost import LostSheet
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.overlay.household import FakeErrands


class Room:
    """A window with a field in it and the sheet above."""

    def __init__(self, qtbot: QtBot, theme: Theme, seen: Snapshot, size: tuple[int, int] = (1280, 800)) -> None:
        self.errands = FakeErrands(seen)
        self.ways = Ways()
        self.window = QWidget()
        self.behind = QLineEdit()
        column = QVBoxLayout(self.window)
        column.addWidget(self.behind)
        self.sheet = LostSheet(theme, self.errands, self.ways, self.window)
        self.window.resize(*size)
        qtbot.addWidget(self.window)
        with qtbot.waitActive(self.window):
            self.window.show()
            self.window.activateWindow()
        self.behind.setFocus()
        self.spoken: list[str] = []

    @property
    def field(self) -> QLineEdit:
        """Where letters are typed."""
        return self.sheet.body.asking.field

    @property
    def voice(self) -> str:
        """The sentence on the sheet."""
        body = self.sheet.body
        return (body.asking if body.asking.isVisible() else body.outcome).voice.text()

    def type(self, letters: str, *, text: str = "") -> None:
        """Open the sheet and type."""
        self.ways.lost.emit(text)
        QTest.keyClicks(self.field, letters)

    def press(self, key: Qt.Key, modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        """Press a key where the focus is."""
        focus = self.window.focusWidget()
        assert focus is not None
        QTest.keyClick(focus, key, modifier)

    def names(self) -> list[str]:
        """What the rows say to a screen reader."""
        model = self.sheet.body.asking.rows.model()
        role = Qt.ItemDataRole.AccessibleTextRole
        return [str(model.index(row, 0).data(role)) for row in range(model.rowCount())]


Open = Callable[..., Room]
"""Makes a room: with a snapshot, and a size."""
