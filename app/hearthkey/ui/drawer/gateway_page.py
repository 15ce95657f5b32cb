"""The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.in_force import GatewayState
from hearthkey.core.sentences import gateway as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.courier import may_deliver
from hearthkey.ui.drawer.figures import Facts
from hearthkey.ui.drawer.gateway_difference import GatewayDifference
from hearthkey.ui.drawer.gateway_pack import GatewayPack
from hearthkey.ui.drawer.gateway_visit import GatewayVisit
from hearthkey.ui.drawer.gateway_words import KEYS, dates, facts, sign
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class GatewayPage(Page):
    """The gateway's own page.

    Args:
        start: where the folder dialog opens.
    """

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        start: Path,
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("The gateway"), parent=parent)
        self.sentence = Prose(theme, Role.BODY)
        self.aside = Prose(theme, Role.BODY, color="ink2")
        self.facts = Facts(theme, KEYS)
        self.place_button = Button(theme, self.tr("Say where its files go"), height=34)
        self.difference = GatewayDifference(theme)
        self.pack = GatewayPack(theme, errands, start, pick)
        self.templates_button = Button(theme, self.tr("Your own template"), kind=Kind.WORD)
        self.visit = GatewayVisit(theme, errands)
        self._build()
        self.place_button.clicked.connect(ways.gateway_place)
        self.templates_button.clicked.connect(ways.templates)
        self.visit.planned.connect(self.difference.show_plan)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.put(self.sentence, self.aside, self.facts)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.place_button)
        row.addStretch(1)
        self.body.addLayout(row)
        self.body.addWidget(self.difference)
        self.put(Rule(self.theme, color="rule"))
        self.body.addWidget(self.pack)
        self.body.addWidget(self.templates_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addStretch(1)
        self.foot.addWidget(self.visit)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the gateway as it is known now."""
        state, household = snapshot.gateway_state, snapshot.household
        if household is None:
            return
        shown = sign(snapshot)
        self.entitle(self.tr("The gateway"), shown)
        self.sentence.recolor("act" if shown is Sign.DUE else "ink")
        self.sentence.speak(self._stands(state, snapshot))
        self._tell_aside(snapshot, practice=household.practice)
        told = facts(snapshot)
        for one in told:
            self.facts.tell(*one)
        self.facts.keep({one.key for one in told})
        self.place_button.setVisible(not household.practice)
        self.place_button.setEnabled(not snapshot.read_only)
        nowhere = state.target is None
        self.place_button.say(self.tr("Say where its files go") if nowhere else self.tr("Change where its files go"))
        self.place_button.weigh(Kind.COMMIT if nowhere else Kind.WORD)
        self.visit.show_snapshot(snapshot)
        self.pack.show_snapshot(snapshot)
        self.show_foot(shown=may_deliver(snapshot))

    def _stands(self, state: GatewayState, snapshot: Snapshot) -> str:
        if snapshot.household is not None and snapshot.household.practice:
            return self.tr("Nothing of the practice household is ever delivered, so no gateway holds anything of it.")
        return said(words.standing(state, snapshot.at.astimezone()))

    def _tell_aside(self, snapshot: Snapshot, *, practice: bool) -> None:
        state = snapshot.gateway_state
        if practice:
            aside = self.tr("Its files can be written to a folder, to see what a gateway gets.")
        elif snapshot.read_only:
            aside = self.tr("Another copy of the app has the household open; that one delivers.")
        elif state.target is None:
            aside = self.tr("A device is kept out only when the gateway holds the list that says so. Say where its "
                            "files go, and new lists go there by themselves.")  # fmt: skip
        elif words.not_in_force(state) is not None:
            aside = self.tr("Until the gateway holds the new list, whoever could get in still can. The app keeps "
                            "trying by itself while it is open.")  # fmt: skip
        else:
            aside = dates(snapshot)
        self.aside.speak(aside)
        self.aside.setVisible(bool(aside))
