"""What a delivery would change: a sentence, and folded under it, file by file."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.delivery import DeliveryPlan, Differs
from hearthkey.core.sentences import gateway as words
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.labels import Label, Voice
from hearthkey.ui.drawer.figures import Facts
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class GatewayDifference(QWidget):
    """Hidden until somebody looked."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.head = Label(theme, Role.BODY_STRONG, self.tr("What a delivery changes"))
        self.voice = Voice(theme)
        self.files = Facts(theme)
        inside = QWidget()
        inside.setLayout(inset(self.files))
        self.fold = Fold(theme, self.tr("File by file"), inside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        for part in (self.head, self.voice):
            column.addLayout(inset(part))
        column.addWidget(self.fold)
        self.hide()

    def show_plan(self, plan: DeliveryPlan | None) -> None:
        """Show what differs, or, where that is out of date, nothing."""
        self.setVisible(plan is not None)
        if plan is None:
            return
        self.voice.speak(said(words.delivery(plan)))
        labels = {
            Differs.NEW: self.tr("new"),
            Differs.CHANGED: self.tr("changed"),
            Differs.GOES: self.tr("no longer needed"),
            Differs.SAME: self.tr("the same"),
        }
        names = {how: [name for name, one in plan.files.items() if one is how] for how in labels}
        for how, label in labels.items():
            self.files.tell(how.value, label, "\n".join(names[how]))
        self.files.keep([how.value for how in labels if names[how]])
        announce(self, self.voice.text())
