"""Whether a stop is in force: on its way to the gateway, there, or not yet and why."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QElapsedTimer, Qt, QTime
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.in_force import Standing
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme


class OnTheWay(QWidget):
    """One line with its sign, and what can be done while it is not in force.

    It says "in force" of nothing but what the snapshot says it of.
    """

    def __init__(
        self, theme: Theme, errands: Errands, *, pick: PickFolder = pick_folder, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._errands = errands
        self._pick = pick
        self._number = 0
        self._since = QElapsedTimer()
        self._over = False
        self._failure = ""
        self.sign = SignLabel(theme, Sign.UNKNOWN, ground="raised")
        self.line = Prose(theme, Role.BODY, strong=Role.BODY_STRONG)
        self.again = Button(theme, self.tr("Try &now"), height=32)
        self.stick = Button(theme, self.tr("Write the list to a &stick…"), height=32)
        self.again.clicked.connect(self._try)
        self.stick.clicked.connect(self._choose)
        words = QHBoxLayout()
        words.setSpacing(9)
        words.addWidget(self.sign, 0, Qt.AlignmentFlag.AlignTop)
        words.addWidget(self.line, 1)
        self._acts = QWidget()
        acts = QHBoxLayout(self._acts)
        acts.setContentsMargins(0, 0, 0, 0)
        acts.setSpacing(6)
        acts.addWidget(self.again)
        acts.addWidget(self.stick)
        acts.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(words)
        column.addWidget(self._acts)
        errands.seen.connect(self.show_snapshot)
        errands.visit_began.connect(self._began)
        errands.visit_failed.connect(self._failed)

    def follow(self, number: int) -> None:
        """Watch a list until it is in force."""
        self._number, self._over, self._failure = number, False, ""
        self._since.start()
        self._acts.hide()
        if self._errands.visiting:
            self._began()
        elif self._errands.last is not None:
            self.show_snapshot(self._errands.last)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """See whether it is in force now."""
        if not self._number or self._over or self._errands.visiting:
            return
        state = snapshot.gateway_state
        there = state.note.list_number or 0
        if snapshot.household is not None and snapshot.household.practice:
            practised = self.tr("With a household of your own the list would go to the gateway at once.")
            self._say(Sign.UNKNOWN, self.tr("Nothing of the practice household is sent."), practised, acts=False)
        elif state.target is None:
            self._say(Sign.UNKNOWN, self.tr("Carry the list to the gateway now."), self._by_hand(), acts=True)
            self.again.hide()
        elif state.standing is Standing.IN_FORCE and there >= self._number:
            self._over = True
            self._say(Sign.IN_USE, self.tr("In force."), self._took(), acts=False)
        elif self._failure:
            more = self.tr("{why} It keeps trying.").format(why=self._failure)
            self._say(Sign.DUE, self.tr("Not in force yet."), more, acts=True)
        else:
            more = self.tr("List no. {number} waits here.").format(number=self._number)
            self._say(Sign.DUE, self.tr("Not in force yet."), more, acts=True)

    def _by_hand(self) -> str:
        return self.tr("Nobody has said yet where the gateway is, so nothing can be sent. Until it has the list, "
                       "whoever could get in still can.")  # fmt: skip

    def _took(self) -> str:
        seconds = max(round(self._since.elapsed() / 1000), 1)
        now = QTime.currentTime().toString("HH:mm:ss")
        return self.tr("The gateway was read back at {time}; it took {seconds} s.").format(time=now, seconds=seconds)

    def _began(self) -> None:
        if self._number and not self._over:
            self._say(Sign.WAITING, self.tr("Not in force yet."), self.tr("Reaching the gateway…"), acts=False)

    def _failed(self, error: HearthkeyError) -> None:
        if self._number and not self._over:
            self._failure = mended(error)
            if self._errands.last is not None:
                self.show_snapshot(self._errands.last)

    def _say(self, sign: Sign, stressed: str, text: str, *, acts: bool) -> None:
        told = f"{stressed} {text}"
        changed = told != self.line.text()
        self.sign.show_sign(sign)
        self.line.recolor("act" if sign is Sign.DUE else "ink")
        self.line.speak(text, stressed=stressed)
        self.again.setVisible(True)
        self._acts.setVisible(acts)
        if changed:
            announce(self, told)

    # What can be done meanwhile

    def _try(self) -> None:
        self._errands.deliver_list(self, None, lambda _error: None)

    def _choose(self) -> None:
        self._pick(self, self.tr("Where to write the list"), Path.home(), self._write)

    def _write(self, folder: Path) -> None:
        self._errands.publish_list(folder, self, self._written, lambda error: self._say_trouble(mended(error)))

    def _written(self, files: tuple[str, ...]) -> None:
        more = self.tr("The list lies at {path}. Carry it to the gateway.").format(path=files[0])
        self._say(Sign.DUE, self.tr("Not in force yet."), more, acts=True)

    def _say_trouble(self, text: str) -> None:
        self._say(Sign.DUE, self.tr("Not in force yet."), text, acts=True)
