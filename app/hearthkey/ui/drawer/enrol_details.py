"""What a householder may overrule: key set and container. Folded, for nobody has to know them."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.kinds import OLD, STRONG
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.theme.theme import Theme

_FITTING = "fitting"


class EnrolDetails(QWidget):
    """Two choices; the first of each leaves it to the kind of device.

    Signals:
        changed: another choice.
    """

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.fold_button = Button(theme, self.tr("Details"), kind=Kind.WORD, height=24)
        fitting = (_FITTING, self.tr("what fits"))
        self.choice = Choice(theme, self.tr("Key set"), [fitting, *((name, name) for name in KEY_SETS)])
        self._containers = Choice(
            theme, self.tr("Container"), [fitting, (STRONG, self.tr("strong")), (OLD, self.tr("old"))]
        )
        self._asked = Labelled(theme, self.tr("Key set"), _framed(self.choice))
        self._kept = Labelled(theme, self.tr("Container of the hand-over file"), _framed(self._containers))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.fold_button)
        column.addWidget(self._asked)
        column.addWidget(self._kept)
        self.fold_button.clicked.connect(self._turn)
        self.choice.chosen.connect(self.changed)
        self._containers.chosen.connect(self.changed)
        self.unfold(shown=False)

    def key_set(self) -> str | None:
        """The key set that overrules the kind's, or None."""
        return None if self.choice.value() == _FITTING else self.choice.value()

    def container(self) -> str | None:
        """The container that overrules the kind's, or None."""
        return None if self._containers.value() == _FITTING else self._containers.value()

    def clear(self) -> None:
        """Leave both to the kind."""
        self.choice.take(_FITTING)
        self._containers.take(_FITTING)

    def trouble(self, sentence: str) -> None:
        """Say what does not fit."""
        self._asked.trouble(sentence)

    def unfold(self, *, shown: bool = True) -> None:
        """Show the choices, or fold them."""
        self._asked.setVisible(shown)
        self._kept.setVisible(shown)
        self.fold_button.say(self.tr("Fold the details") if shown else self.tr("Details"))

    def _turn(self) -> None:
        self.unfold(shown=self._asked.isHidden())


def _framed(choice: Choice) -> QWidget:
    frame = QWidget()
    frame.setLayout(inset(choice))
    frame.setAccessibleName(choice.accessibleName())
    return frame
