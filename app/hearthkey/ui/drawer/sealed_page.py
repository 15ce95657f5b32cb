"""Sealed copies: which there are, one more to carry away, and trying one for real."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from hearthkey.core import sealed
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.keepsakes import Keepsakes, on_paper
from hearthkey.core.plans import Changes
from hearthkey.core.sealed import CopyNote
from hearthkey.core.secret import Secret
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.courier import may_deliver
from hearthkey.ui.dates import day
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

SHOWN = 10
"""Copies that are offered to be tried, the newest first."""


class SealedPage(Page):
    """The sealed copies of this household.

    Args:
        start: where the first folder dialog opens.

    Signals:
        paper_wanted: the key is to be put on paper.
    """

    paper_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Sealed copies"), parent=parent)
        self._errands, self._start, self._pick = errands, start, pick
        self._notes: tuple[CopyNote, ...] = ()
        self.state = Prose(theme, Role.BODY)
        self.write_button = Button(theme, self.tr("&Write one to a folder…"), height=32)
        self.gateway_button = Button(theme, self.tr("Bring one to the &gateway"), height=32)
        self.paper_button = Button(theme, self.tr("&On paper…"), height=32)
        self.on_paper = Prose(theme, Role.STATE, color="ink2")
        self.which = Combo(theme, self.tr("Copy"))
        self.line = Line(theme)
        self.line.setEchoMode(QLineEdit.EchoMode.Password)
        self.try_button = Button(theme, self.tr("&Try it"), kind=Kind.COMMIT, height=34)
        self.outcome = Prose(theme, Role.BODY)
        self._build()
        self.write_button.clicked.connect(self._choose)
        self.gateway_button.clicked.connect(self._carry)
        self.paper_button.clicked.connect(self.paper_wanted)
        self.try_button.clicked.connect(self._try)
        self.line.returnPressed.connect(self._try)
        self.line.textChanged.connect(self._judge)
        errands.step.connect(self._step)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)
        self._judge()

    def _build(self) -> None:
        what = self.tr(
            "A sealed copy holds everything: the register, the CA key, the household’s secrets. The app writes one "
            "into its own folder after every change and keeps the last ten. They die with this computer, so carry "
            "one away now and then, or bring one to the gateway: later ones follow it there. It opens with the "
            "household’s passphrase, and with any age tool."
        )
        why = self.tr("Trying one opens it for real, in a place that is gone afterwards. Nothing here is changed.")
        self.put(self.state, Prose(self.theme, Role.STATE, what, color="ink2"))
        ways = QVBoxLayout()
        ways.setSpacing(2)
        for button in (self.write_button, self.gateway_button, self.paper_button):
            ways.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addLayout(ways)
        self.put(self.on_paper)
        self.put(
            Rule(self.theme, color="rule"),
            Label(self.theme, Role.BODY_STRONG, self.tr("Does it open?")),
            Prose(self.theme, Role.STATE, why, color="ink2"),
        )
        self.body.addWidget(Labelled(self.theme, self.tr("Copy"), self.which))
        self.body.addWidget(Labelled(self.theme, self.tr("Passphrase of the household"), self.line))
        row = QHBoxLayout()
        row.addWidget(self.try_button)
        row.addStretch(1)
        self.body.addLayout(row)
        self.put(self.outcome)
        self.body.addStretch(1)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show which copies there are."""
        self._notes = tuple(reversed(snapshot.sealed_copies))[:SHOWN]
        tried = sealed.last_tried(snapshot.sealed_copies)
        if tried is not None and tried.tried is not None:
            told = self.tr("The copy of {day} was opened on {tried} and was whole.").format(
                day=day(tried.made), tried=day(tried.tried)
            )
        elif self._notes:
            told = self.tr("There are copies, but none of them was ever opened.")
        else:
            told = self.tr("There is no sealed copy yet. One is made when the household is next unlocked.")
        self.state.speak(told)
        self._show_paper(snapshot.keepsakes)
        before = self.which.key()
        self.which.offer([(one.sha256, self._shown(one)) for one in self._notes])
        self.which.take(before if any(one.sha256 == before for one in self._notes) else self._first())
        self.write_button.setEnabled(snapshot.copy_ready and not snapshot.read_only)
        self.gateway_button.setVisible(may_deliver(snapshot))
        self.gateway_button.setEnabled(snapshot.copy_ready)
        self._judge()

    def _show_paper(self, known: Keepsakes | None) -> None:
        """Say which key is on paper, and until when."""
        self.on_paper.setVisible(known is not None)
        if known is None:
            return
        made = known.paper or max(known.papers, key=lambda one: one.made, default=None)
        if made is None:
            told = self.tr("The key was not put on paper yet.")
        elif known.paper is None:
            told = self.tr(
                "The paper of {day} has the older CA’s key. Print it anew: the newer key is good until {end}."
            )
        elif known.two_keys:
            told = self.tr(
                "The paper of {day} has the newer CA’s key, good until {end}. Keep the older paper beside it until the "
                "old CA has been put away."
            )
        else:
            told = self.tr("The paper of {day} has the key, which is good until {end}.")
        wanted = on_paper(known.authority, known.succession)
        self.on_paper.recolor("act" if made is not None and known.paper is None else "ink2")
        self.on_paper.speak(told.format(day="" if made is None else day(made.made), end=day(wanted.not_after)))

    def _first(self) -> str:
        return self._notes[0].sha256 if self._notes else ""

    def _shown(self, one: CopyNote) -> str:
        told = self.tr("{day}, {time}, at the gateway") if one.at_gateway else self.tr("{day}, {time}, in {folder}")
        return told.format(day=day(one.made), time=f"{one.made:%H:%M}", folder=Path(one.place).name)

    def _judge(self) -> None:
        self.try_button.setEnabled(bool(self._notes) and bool(self.line.text()))

    # What can be done

    def _choose(self) -> None:
        self._pick(self, self.tr("Where to write a sealed copy"), self._start, self._write)

    def _write(self, folder: Path) -> None:
        self._start = folder
        self._errands.seal(folder, self, self._done, self._failed)

    def _carry(self) -> None:
        self._errands.carry_copy(self, self._done, self._failed)

    def _try(self) -> None:
        chosen = next((one for one in self._notes if one.sha256 == self.which.key()), None)
        if chosen is None or not self.line.text():
            return
        secret = Secret(self.line.text().strip())
        self.line.clear()
        if chosen.at_gateway:
            self._errands.try_fetched(chosen, secret, self, self._done, self._failed)
            return
        self._errands.try_copy(Path(chosen.place, chosen.name), secret, self, self._done, self._failed)

    def _step(self, step: str) -> None:
        if self.isVisible() and step:
            self.outcome.recolor("ink2")
            self.outcome.speak(f"{step} …")

    def _done(self, changes: Changes) -> None:
        self._say(spoken(changes.sentence), "ink")

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error), "act")

    def _say(self, text: str, color: str) -> None:
        self.outcome.recolor(color)
        self.outcome.speak(text)
        announce(self, text)
