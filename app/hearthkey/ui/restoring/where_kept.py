"""Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.network import Caution
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.pages.founding_words import told
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import caution
from hearthkey.ui.theme.theme import Theme

_ONLY_LATER = frozenset({"keyring-locked", "keyring-silent", "keyring-failed"})
"""Troubles whose own way on is to try again; the other way is named here. The rest name it themselves."""


class WhereKept(QWidget):
    """The question, as the founding page asks it.

    Args:
        key_folder: where key files would lie, for the caution.
    """

    def __init__(self, theme: Theme, key_folder: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._key_folder = key_folder
        places = ((KEYRING, self.tr("in the keyring")), (FILE, self.tr("in a key file")))
        self.choice = Choice(theme, self.tr("Where is the CA key kept?"), places)
        self.question = Question(theme, self.tr("Where is the CA key kept?"), self.choice)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.question)
        self.choice.chosen.connect(lambda _key: self._advise())

    def begin(self, place: str) -> None:
        """Begin anew."""
        self.choice.take(place)
        self._advise()

    def place(self) -> str:
        """What was chosen."""
        return self.choice.value()

    def _advise(self) -> None:
        self.question.trouble("")
        in_file = self.place() == FILE
        self.question.advise(caution(Caution("kept-in-files", self._key_folder)) if in_file else "")

    def show_trouble(self, error: HearthkeyError) -> None:
        """The keyring does not answer: say so where the other place can be chosen."""
        if self.place() == KEYRING:
            other = self.tr("Or keep the key in a file.") if error.code in _ONLY_LATER else ""
            self.question.trouble(f"{told(error)} {other}".strip())
