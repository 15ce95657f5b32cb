"""The gateway's files in a folder, for gateways that take them by hand."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.drawer.gateway_choices import GatewayChoices
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.pick_folder import PickFolder
from hearthkey.ui.text import caution, mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class GatewayPack(QWidget):
    """A caution, a button, and the choices folded."""

    def __init__(
        self, theme: Theme, errands: Errands, start: Path, pick: PickFolder, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._errands = errands
        self._start = start
        self._pick = pick
        self.head = Label(theme, Role.BODY_STRONG, self.tr("Its files, by hand"))
        self.caution = Prose(theme, Role.STATE, caution(Caution("pack-has-key", "")), color="ink2")
        self.button = Button(theme, self.tr("Write its files to a folder…"), height=32)
        self.button.setAccessibleDescription(self.caution.text())
        self.line = Prose(theme, Role.BODY)
        self.choices = GatewayChoices(theme, errands)
        self.fold = Fold(theme, self.tr("Choices for its files"), self.choices)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.head))
        column.addLayout(inset(self.caution))
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.button)
        row.addStretch(1)
        column.addLayout(row)
        column.addLayout(inset(self.line))
        column.addWidget(self.fold)
        self.line.hide()
        self.button.clicked.connect(self._choose)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn what is chosen, and whether anything can be written."""
        self.button.setEnabled(not snapshot.read_only and snapshot.household is not None)
        self.choices.show_snapshot(snapshot)

    def _choose(self) -> None:
        self._pick(self, self.tr("Where to write the gateway’s files"), self._start, self._write)

    def _write(self, folder: Path) -> None:
        self._start = folder
        self._errands.save_pack(folder, self, self._written, self._failed)

    def _written(self, changes: Changes) -> None:
        self._say(f"{spoken(changes.sentence)} {self.caution.text()}")

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error), color="act")

    def _say(self, text: str, *, color: str = "ink") -> None:
        self.line.recolor(color)
        self.line.speak(text)
        self.line.setVisible(bool(text))
        announce(self, text)
