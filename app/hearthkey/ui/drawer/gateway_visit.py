"""Visits to the gateway on its page: deliver, look, cancel, and what came of it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QApplication, QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.delivery import Delivered, DeliveryPlan
from hearthkey.core.errors import Cancelled, HearthkeyError
from hearthkey.core.in_force import CLOCK_TOLERATED
from hearthkey.core.network import Caution
from hearthkey.core.phrases import Listing
from hearthkey.core.sentences import gateway as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.courier import may_deliver
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class GatewayVisit(QWidget):
    """What can be done now, the present step in words, and the outcome.

    A visit that the app makes by itself is shown, and can be cancelled, like one that was asked for here.

    Signals:
        planned: DeliveryPlan: what a delivery would change; None when a visit has made that out of date.
    """

    planned = Signal(object)

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._able = False
        self.line = Prose(theme, Role.BODY)
        self.unlock = UnlockRow(theme, errands)
        self.deliver_button = Button(theme, self.tr("Deliver"), height=34)
        self.look_button = Button(theme, self.tr("What differs"), height=34)
        self.cancel_button = Button(theme, self.tr("Cancel"), height=34)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        for button in (self.deliver_button, self.look_button, self.cancel_button):
            row.addWidget(button)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.line))
        column.addWidget(self.unlock)
        column.addLayout(row)
        self.line.hide()
        self.unlock.hide()
        self.deliver_button.clicked.connect(self.deliver)
        self.look_button.clicked.connect(self.look)
        self.cancel_button.clicked.connect(self.cancel)
        self.unlock.opened.connect(self.deliver)
        errands.visit_began.connect(self._began)
        errands.visited.connect(self._over)
        errands.visit_failed.connect(self._failed)
        errands.step.connect(self._step)
        self._arrange()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn what can be done."""
        self._able = may_deliver(snapshot)
        self.deliver_button.weigh(Kind.COMMIT if snapshot.gateway_state.pending else Kind.PLAIN)
        self._arrange()

    def deliver(self) -> None:
        """Deliver what waits, and read it back."""
        if self._able and not self._errands.visiting:
            self.unlock.forget()
            self._errands.deliver(self, None, _told_already)

    def look(self) -> None:
        """Read what is there, and what a delivery would change."""
        if self._able and not self._errands.visiting:
            self._errands.look_at_gateway(self, None, _told_already)

    def cancel(self) -> None:
        """End the visit."""
        self._errands.cancel_visit()
        self._say(self.tr("Ending the visit; the gateway keeps a whole set."))

    def _arrange(self) -> None:
        """Show the buttons that do something now; the focus stays in the row."""
        visiting = self._errands.visiting
        held = QApplication.focusWidget()
        inside = held in {self.deliver_button, self.look_button, self.cancel_button}
        for button, on in (
            (self.cancel_button, visiting),
            (self.deliver_button, self._able and not visiting),
            (self.look_button, self._able and not visiting),
        ):
            if on:
                button.show()
        if inside and visiting:
            self.cancel_button.setFocus(Qt.FocusReason.OtherFocusReason)
        elif held is self.cancel_button and self._able:
            self.deliver_button.setFocus(Qt.FocusReason.OtherFocusReason)
        self.cancel_button.setVisible(visiting)
        for button in (self.deliver_button, self.look_button):
            button.setVisible(self._able and not visiting)

    def _began(self) -> None:
        self._say(self.tr("Reaching the gateway …"))
        self._arrange()

    def _step(self, step: str) -> None:
        if step and self._errands.visiting:
            self._say(f"{step} …")

    def _over(self, result: Delivered | DeliveryPlan) -> None:
        if isinstance(result, Delivered):
            self.planned.emit(None)
            told = [said(words.delivered(result)), *(caution(one) for one in _cautions(result))]
            self._say(" ".join(told))
        else:
            self.planned.emit(result)
            self._say("")
        self._arrange()

    def _failed(self, error: HearthkeyError) -> None:
        self.planned.emit(None)
        self._say(mended(error), color="ink" if isinstance(error, Cancelled) else "act")
        self._arrange()
        if error.code == "gateway-list-newer":
            self.unlock.setVisible(True)

    def _say(self, text: str, *, color: str = "ink") -> None:
        self.line.recolor(color)
        self.line.speak(text)
        self.line.setVisible(bool(text))
        announce(self, text)


def _told_already(_error: HearthkeyError) -> None:
    """A visit's failure comes by the signal, whoever made the visit."""


def _cautions(done: Delivered) -> list[Caution]:
    told = [Caution("taken-over", Listing(done.taken_over))] if done.taken_over else []
    if done.clock_off is not None and abs(done.clock_off) > CLOCK_TOLERATED.total_seconds():
        told.append(Caution("gateway-clock", str(done.clock_off)))
    return told
