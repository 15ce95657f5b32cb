"""Where a proof's door is: which address of this computer, and which one the gateway shows itself under."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.sentences import proofs as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.proof_errands import ShownProof
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class ProofPlace(QWidget):
    """Two fields, each of them only where there is something to choose.

    Signals:
        changed: something else was chosen.
    """

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._hides = False
        self._several = False
        self.counts = Prose(theme, Role.STATE, color="ink2")
        self.address = Combo(theme, self.tr("Address of this computer"))
        self._address = Labelled(theme, self.tr("&Address of this computer"), self.address)
        self.inside = Line(theme)
        self._inside = Labelled(theme, self.tr("The &gateway’s own address at home"), self.inside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.counts))
        column.addWidget(self._inside)
        column.addWidget(self._address)
        self.address.activated.connect(lambda _number: self.changed.emit())
        self.inside.returnPressed.connect(self.changed)
        self._show()

    @property
    def wanted(self) -> bool:
        """Whether there is anything to say or to choose."""
        return bool(self.counts.text()) or self._several

    def forget(self) -> None:
        """Begin anew."""
        self.inside.clear()
        self.address.offer([])
        self.counts.speak("")
        self._several = False
        self._show()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn whether the gateway hides devices."""
        self._hides = snapshot.pack_options.masquerade
        self._show()

    def offer(self, found: tuple[HomeAddress, ...]) -> None:
        """Offer the addresses that fit; a single one is no choice."""
        fitting = [(str(one.address), one.shown) for one in found if one.fit]
        chosen = self.address.key()
        self.address.offer(fitting)
        self.address.take(chosen)
        self._several = len(fitting) > 1
        self._show()

    def stand_at(self, shown: ShownProof) -> None:
        """Show where the door is, and what counts there."""
        self.address.take(str(shown.address.address))
        by = shown.ground
        told = said(words.counts(hides=by.hides, inside=by.inside, tunnel=by.tunnel))
        self.counts.speak(self.tr("At {address}.").format(address=shown.address.shown) + " " + told)
        self._show()

    def chosen(self) -> tuple[str | None, str | None]:
        """The address that was chosen, and what was typed for the gateway's."""
        return self.address.key() or None, self.inside.text().strip() or None

    def _show(self) -> None:
        self._address.setVisible(self._several)
        self._inside.setVisible(self._hides)
        self.counts.setVisible(bool(self.counts.text()))
