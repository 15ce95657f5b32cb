"""What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.connect_choices import BY_CA, BY_GATEWAY, NOBODY, ConnectChoices, choices
from hearthkey.core.errors import Refused
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_BY_HAND, _AWAY = "by-hand", "away"


class ProfileChoices(QWidget):
    """Stands under the profile's row, aligned with its words. What is chosen holds for all profiles that follow.

    Signals:
        chosen: `ConnectChoices`, as soon as somebody chose something that fits.
    """

    chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._kept = ConnectChoices()
        connects = [(_BY_HAND, self.tr("When switched on")), (_AWAY, self.tr("By itself, away from home"))]
        self.connects = Choice(theme, self.tr("When the device connects"), connects)
        self.wifis = Line(theme)
        self._asked = Labelled(
            theme,
            self.tr("The &Wi-Fis at home, where it stays off; a comma between two"),
            self.wifis,
            hint=self.tr("Elsewhere and on mobile data it connects. The names stand readable in the profile."),
        )
        signed = [(NOBODY, self.tr("Nobody’s")), (BY_GATEWAY, self.tr("The gateway’s")), (BY_CA, self.tr("The CA’s"))]
        self.signed = Choice(theme, self.tr("Whose key signs the profile"), signed)
        caution = self.tr(
            "The CA key signs each profile once, so the household has to be open. "
            "A device that does not trust this CA yet may show the signature as not verified."
        )
        self.caution = Prose(theme, Role.STATE, caution, color="ink2")
        self.signed.segments()[-1].setAccessibleDescription(caution)
        self._column = QVBoxLayout(self)
        self._column.setSpacing(8)
        for part in (self.connects, self._asked, self.signed, self.caution):
            edge = QVBoxLayout()
            ring = 0 if part is self._asked else Line.RING
            edge.setContentsMargins(ring, 0, ring, 0)
            edge.addWidget(part)
            self._column.addLayout(edge)
        for choice in (self.connects, self.signed):
            choice.chosen.connect(lambda _key: self._choose())
        self.wifis.textEdited.connect(lambda _text: self._asked.trouble(""))
        self.wifis.editingFinished.connect(self.settle)
        theme.changed.connect(self._measure)
        self._measure()
        self._ask()

    def _measure(self) -> None:
        # Where the names of the rows begin, and where their buttons end.
        self._column.setContentsMargins(28 + self._theme.px(32) - Line.RING, 2, 11, 12)

    def _ask(self) -> None:
        self._asked.trouble("")
        self._asked.setVisible(self.connects.value() == _AWAY)
        self.caution.setVisible(self.signed.value() == BY_CA)

    def _choose(self) -> None:
        self._ask()
        self.settle()

    def show_choices(self, kept: ConnectChoices) -> None:
        """Begin with what was chosen last."""
        self._kept = kept
        self.connects.take(_AWAY if kept.by_itself else _BY_HAND)
        self.wifis.setText(", ".join(kept.own_wifi))
        self.signed.take(kept.signer)
        self._ask()

    def follow(self, kept: ConnectChoices) -> None:
        """Show what is kept where that became another; what is being typed stays."""
        if kept != self._kept:
            self.show_choices(kept)

    def settle(self) -> bool:
        """Take what is typed and chosen as it stands.

        Returns:
            Whether it fits; what does not is said in place.
        """
        by_itself = self.connects.value() == _AWAY
        typed = [one.strip() for one in self.wifis.text().split(",")] if by_itself else self._kept.own_wifi
        try:
            made = choices(by_itself=by_itself, own_wifi=typed, signer=self.signed.value())
        except Refused as error:
            self._asked.trouble(mended(error))
            return False
        if made != self._kept:
            self._kept = made
            self.chosen.emit(made)
        return True

    def stops(self) -> list[QWidget]:
        """What the Tab key stops at, in order."""
        return [*self.connects.segments(), self.wifis, *self.signed.segments()]
