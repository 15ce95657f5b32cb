"""The left side of the hand-over page: the card, the ways, the passphrase's own way, the end."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.passes import Pass
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.dates import short_day
from hearthkey.ui.drag import DragOut
from hearthkey.ui.pages.device_has_it import DeviceHasIt
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.own_ways import OwnWay
from hearthkey.ui.pages.tall import Tall
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.way_rows import WayRows
from hearthkey.ui.pages.ways_out import Way, WayOut
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ticket import RING, TicketCard

MADE_AFTER = timedelta(days=1)
"""A pass begins a day before it was made, for clocks that are slow."""


class _Barred(QWidget):
    """Words beside a bar of ink."""

    BAR, GAP = 3, 15

    def __init__(self, theme: Theme, strong: str, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        column = QVBoxLayout(self)
        column.setContentsMargins(self.GAP, 1, 0, 2)
        column.setSpacing(1)
        column.addWidget(Label(theme, Role.BODY_STRONG, strong, wrap=True))
        column.addWidget(Label(theme, Role.BODY, text, wrap=True))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the bar."""
        painter = QPainter(self)
        painter.fillRect(0, 0, self.BAR, self.height(), self._theme.color("ink"))
        painter.end()


class LeftSide(Tall):
    """Everything that can be chosen; it scrolls where the window is low."""

    def __init__(self, theme: Theme, drag: DragOut, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self._theme = theme
        self._drag = drag
        self.card: TicketCard | None = None
        self._after: QWidget | None = None
        self._beside = Label(theme, Role.BODY, color="ink2", wrap=True)
        self.rows = WayRows(theme)
        self.passphrase_button = Button(theme, "")
        self.paper_button = Button(theme, self.tr("Sheet and messages…"), hint=self.tr("Ctrl+P"))
        self.has_it = DeviceHasIt(theme)
        inside = QWidget()
        self._top = QHBoxLayout()
        self._top.setSpacing(14)
        self._top.addWidget(self._beside, 1)
        column = QVBoxLayout(inside)
        column.setContentsMargins(20, 10, 40 - ThinBar.WIDTH, 14)
        column.setSpacing(12)
        column.addLayout(self._top)
        column.addWidget(self.rows)
        column.addWidget(self._note())
        under = QHBoxLayout()
        under.setSpacing(6)
        under.addWidget(self.passphrase_button)
        under.addWidget(self.paper_button)
        under.addStretch(1)
        column.addLayout(under)
        column.addStretch(1)
        column.addWidget(self.has_it)
        self.hold(inside)

    def _note(self) -> QWidget:
        return _Barred(
            self._theme,
            self.tr("The passphrase travels another way."),
            self.tr(
                "It is never on one screen, one sheet or in one message with a code or a file. Say it, or show it "
                "once the code is covered."
            ),
        )

    def show_pass(self, one: Pass, after: QWidget) -> None:
        """Begin anew with a pass.

        Args:
            after: what the Tab key comes from.
        """
        if self.card is not None:
            self._top.removeWidget(self.card)
            self.card.hide()
            self.card.deleteLater()
        waiting = self.tr("waiting since {day}").format(day=short_day(one.not_before + MADE_AFTER))
        self.card = TicketCard(self._theme, one, self._drag, resting=waiting)
        self.card.entered.connect(lambda: self.take_focus(None))
        self._top.insertWidget(0, self.card)
        self._top.setContentsMargins(-RING, 0, 0, 0)
        self._after = after
        self._order()
        self._beside.setText(
            self.tr(
                "Drag it into a folder, a message or onto a stick, or choose a way here. After hand-over the key "
                "exists on the {device} alone."
            ).format(device=one.device)
        )
        self.has_it.show_pass(one)

    def offer(self, own: Sequence[OwnWay], one: Pass) -> None:
        """Offer these of the householder's own as well."""
        self.rows.offer(own)
        self.rows.show_pass(one)
        self._order()

    def settled(self) -> bool:
        """Whether what was typed for a profile fits; where it does not, the focus goes there."""
        choices = self.rows.choices
        fits = not choices.isVisible() or choices.settle()
        if not fits:
            choices.wifis.setFocus()
        return fits

    def _order(self) -> None:
        """Have the Tab key walk down the page."""
        if self.card is None or self._after is None:
            return
        under = (self.passphrase_button, self.paper_button, *self.has_it.stops())
        stops = (self._after, self.card, *self.rows.stops(), *under)
        for one_stop, next_stop in pairwise(stops):
            QWidget.setTabOrder(one_stop, next_stop)

    def show_leaving(self, leaving: Leaving) -> None:
        """Mark the way that was taken, and say what the passphrase button does now."""
        if leaving.chosen is not None:
            self.rows.show_pass(leaving.chosen, len(leaving.codes))
        self.rows.take(leaving.way)
        self.passphrase_button.say(self._passphrase_words(leaving))

    def _passphrase_words(self, leaving: Leaving) -> str:
        side, under = leaving.screen.side, leaving.screen.under
        if side is Side.PASSPHRASE:
            if under in {Side.CODES, Side.TICKET}:
                return self.tr("Hide the passphrase, show the code")
            return self.tr("Hide the passphrase")
        return {
            Side.CODES: self.tr("Cover the code, show the passphrase"),
            Side.TICKET: self.tr("Cover the code, show the passphrase"),
            Side.SAVED: self.tr("Cover the file, show the passphrase"),
        }.get(side, self.tr("Show the passphrase"))

    def take_focus(self, way: Way | None) -> None:
        """Put the focus on a way's button; without one, on the first."""
        row = None if way is None else self.rows.row(way)
        (row or self.rows.rows[WayOut.TICKET]).button.setFocus(Qt.FocusReason.OtherFocusReason)
