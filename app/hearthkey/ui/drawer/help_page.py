"""F1: help for this spot, offline, short enough to be read standing."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.drawer.figures import Facts
from hearthkey.ui.drawer.help_words import BOARD, HELP, help_for
from hearthkey.ui.drawer.legend import Legend
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class HelpPage(Page):
    """Help about one spot at a time; about the sheet, with the legend of signs and lines."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", reads=True, parent=parent)
        self.spot = ""
        self.lines = [Prose(theme, Role.BODY, lines=1.45) for _ in range(max(len(one.lines) for one in HELP.values()))]
        self._keys: dict[str, Facts] = {}
        self._ruled = Rule(theme, color="rule")
        self._headed = Label(theme, Role.BODY_STRONG, self.tr("Hollow is for now, solid is for sure."))
        self.legend = Legend(theme)
        self._under = Rule(theme, color="rule")
        self.put(*self.lines, self._ruled)
        for spot, told in HELP.items():
            keys = Facts(theme)
            for number, (key, does) in enumerate(told.keys):
                keys.tell(str(number), said(Sentence(key, {})), said(Sentence(does, {})))
            self._keys[spot] = keys
            self.put(keys)
        self.put(self._under, self._headed, self.legend)
        self.body.addStretch(1)
        self.show_spot(BOARD)

    def show_spot(self, spot: str) -> None:
        """Be about a spot, from its first line on."""
        self.spot = spot if spot in HELP else BOARD
        told = help_for(self.spot)
        self.entitle(said(Sentence(told.title, {})))
        for number, line in enumerate(self.lines):
            line.setVisible(number < len(told.lines))
            if number < len(told.lines):
                line.speak(said(Sentence(told.lines[number], {})))
        for one, keys in self._keys.items():
            keys.setVisible(one == self.spot and bool(told.keys))
        self._ruled.setVisible(bool(told.keys))
        for part in (self._under, self._headed, self.legend):
            part.setVisible(self.spot == BOARD)
        self.roll.setAccessibleDescription(" ".join(line.text() for line in self.lines if not line.isHidden()))
        self.roll.verticalScrollBar().setValue(0)
