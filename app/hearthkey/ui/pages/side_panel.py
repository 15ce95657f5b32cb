"""The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.pages import ways_out
from hearthkey.ui.pages.code_card import CodeCard
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.over_card import OverCard
from hearthkey.ui.pages.passphrase_card import PassphraseCard
from hearthkey.ui.pages.pickup_card import PickupCard
from hearthkey.ui.pages.tall import Tall
from hearthkey.ui.pages.told_cards import RestCard, SavedCard, StickCard, TroubleCard, WorkingCard
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

QWIDGETSIZE_MAX = (1 << 24) - 1
"""Qt's own greatest size, which its Python package does not export."""


class SidePanel(QWidget):
    """Shows what `Leaving` says, and of codes, file and passphrase never more than one.

    Signals:
        ways_wanted: the ways again, where they had to make room.
    """

    WIDE, SPINE, INSET = 472, 2, 26

    ways_wanted = Signal()

    def __init__(self, theme: Theme, clipboard: SecretClipboard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.title = Label(theme, Role.TITLE, wrap=True)
        self.device = Label(theme, Role.BODY, color="ink2")
        self.all_ways = Button(theme, self.tr("All ways"), kind=Kind.WORD)
        self.all_ways.clicked.connect(self.ways_wanted)
        self.rest = RestCard(theme)
        self.working = WorkingCard(theme)
        self.sticks = StickCard(theme)
        self.codes = CodeCard(theme)
        self.pickup = PickupCard(theme)
        self.over = OverCard(theme)
        self.saved = SavedCard(theme)
        self.trouble = TroubleCard(theme)
        self.passphrase = PassphraseCard(theme, clipboard)
        self.cards: dict[Side, QWidget] = {
            Side.REST: self.rest,
            Side.WORKING: self.working,
            Side.STICKS: self.sticks,
            Side.CODES: self.codes,
            Side.TICKET: self.pickup,
            Side.OVER: self.over,
            Side.SAVED: self.saved,
            Side.TROUBLE: self.trouble,
            Side.PASSPHRASE: self.passphrase,
        }
        self._lay_out()
        theme.changed.connect(self.update)
        self._show_only(Side.REST)

    def _lay_out(self) -> None:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, self.INSET - ThinBar.WIDTH, 16)
        column.setSpacing(12)
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.device, 0, Qt.AlignmentFlag.AlignVCenter)
        head.addWidget(self.all_ways, 0, Qt.AlignmentFlag.AlignVCenter)
        column.addLayout(head)
        for card in self.cards.values():
            column.addWidget(card, 1)
        area = Tall(self._theme)
        area.hold(inside)
        row = QVBoxLayout(self)
        row.setContentsMargins(self.SPINE + self.INSET, 14, 0, 0)
        row.addWidget(area)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def take_room(self, wide: int | None) -> None:
        """Be as wide as that, in pixels; or, without a number, as wide as there is room."""
        self.setMinimumWidth(wide or 0)
        self.setMaximumWidth(wide or QWIDGETSIZE_MAX)

    def show_leaving(self, leaving: Leaving) -> None:
        """Show the present moment: first everything goes off, then the one card comes on."""
        side, one = leaving.screen.side, leaving.chosen
        shown = side if side in self._filled(leaving) else Side.WORKING
        if self._shown is not shown:
            for card in self.cards.values():
                card.hide()
        self.passphrase.show_secret(leaving.passphrase if shown is Side.PASSPHRASE else None)
        if one is not None:
            self._fill(shown, leaving)
        if side is not Side.PASSPHRASE and leaving.screen.under is not Side.CODES and side is not Side.CODES:
            self.codes.show_codes((), "")
        if shown is not Side.TICKET:
            self.pickup.forget()
        self.title.setText(self._titles(leaving)[shown])
        self.device.setText("" if one is None else spoken(one.title))
        self._show_only(shown)

    def _filled(self, leaving: Leaving) -> set[Side]:
        """The sides for which everything to be shown is there."""
        there = {
            Side.CODES: bool(leaving.codes),
            Side.TICKET: leaving.pickup.is_open,
            Side.OVER: leaving.pickup.ending is not None,
            Side.SAVED: leaving.saved is not None,
            Side.TROUBLE: leaving.trouble is not None,
            Side.PASSPHRASE: leaving.passphrase is not None,
        }
        return {side for side in Side if there.get(side, True)}

    def _fill(self, shown: Side, leaving: Leaving) -> None:
        one = leaving.chosen
        if one is None:
            return
        if shown is Side.CODES:
            self.codes.show_codes(leaving.codes, spoken(one.title))
        elif shown is Side.TICKET:
            self.pickup.show_pickup(leaving.pickup)
        elif shown is Side.OVER and leaving.pickup.ending is not None:
            self.over.show_ending(leaving.pickup.ending, one)
        elif shown is Side.SAVED and leaving.saved is not None:
            self.saved.show_saved(leaving.saved, one)
        elif shown is Side.STICKS:
            self.sticks.show_drives(leaving.drives)
        elif shown is Side.TROUBLE and leaving.trouble is not None:
            self.trouble.show_trouble(leaving.trouble)

    def _show_only(self, shown: Side) -> None:
        self._shown = shown
        for side, card in self.cards.items():
            if side is not shown:
                card.hide()
        self.cards[shown].show()

    def shown(self) -> Side:
        """What is shown."""
        return self._shown

    def _titles(self, leaving: Leaving) -> dict[Side, str]:
        way = "" if leaving.way is None else ways_out.title(leaving.way)
        return {
            Side.REST: self.tr("Choose a way"),
            Side.WORKING: way or self.tr("Passphrase"),
            Side.STICKS: way,
            Side.CODES: way,
            Side.TICKET: way,
            Side.OVER: way,
            Side.SAVED: way,
            Side.TROUBLE: self.tr("It stays here"),
            Side.PASSPHRASE: self.tr("Passphrase"),
        }

    def take_focus(self) -> None:
        """Put the focus on what can be done with the card that is shown."""
        wanted: dict[Side, QWidget] = {
            Side.CODES: self.codes.picture,
            Side.TICKET: self.pickup.picture,
            Side.OVER: self.over.passphrase if self.over.passphrase.isVisibleTo(self) else self.over.again,
            Side.SAVED: self.saved.open_folder,
            Side.STICKS: self.sticks.rows[0] if self.sticks.rows else self.sticks.again,
            Side.TROUBLE: self.trouble.again,
            Side.PASSPHRASE: self.passphrase.words,
        }
        if self._shown in wanted:
            wanted[self._shown].setFocus(Qt.FocusReason.OtherFocusReason)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the ground and the spine."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("raised"))
        painter.fillRect(0, 0, self.SPINE, self.height(), self._theme.color("ink"))
        painter.end()
