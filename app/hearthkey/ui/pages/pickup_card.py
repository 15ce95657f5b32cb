"""The open pick-up: its code, its clock, where it is, and what happens at the door."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QMenu, QVBoxLayout, QWidget

from hearthkey.core.secret import Secret
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Rule
from hearthkey.ui.pages.code_card import CodePicture
from hearthkey.ui.pickup import words
from hearthkey.ui.pickup.pickup import Pickup
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class PickupCard(QWidget):
    """Shows a pick-up while it is open.

    Signals:
        more: ten minutes more.
        close_wanted: close it.
        elsewhere: open it at another address; that address as text.
    """

    more = Signal()
    close_wanted = Signal()
    elsewhere = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._pickup: Pickup | None = None
        self.picture = CodePicture(theme)
        self.clock = Label(theme, Role.CLOCK)
        self.happened = Label(theme, Role.BODY_STRONG, wrap=True)
        self.link = Label(theme, Role.STATE, color="ink2", wrap=True)
        self.link.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.link.setAccessibleName(self.tr("Link"))
        self.firewall = Label(theme, Role.STATE, color="ink2", wrap=True)
        self.more_button = Button(theme, self.tr("+&10 min"))
        self.more_button.setAccessibleName(self.tr("Ten minutes more"))
        self.more_button.clicked.connect(self.more)
        self.where = Button(theme, "", kind=Kind.WORD)
        self.where.clicked.connect(self._choose)
        self.close_button = Button(theme, self.tr("C&lose the pick-up"))
        self.close_button.clicked.connect(self.close_wanted)
        self._lay_out()

    def _lay_out(self) -> None:
        time = QHBoxLayout()
        time.setSpacing(12)
        time.addWidget(self.clock)
        time.addWidget(self.more_button)
        time.addStretch(1)
        time.addWidget(self.close_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(self.picture, 1000)
        column.addLayout(time)
        column.addWidget(self.happened)
        column.addWidget(Rule(self._theme))
        column.addWidget(self.where, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self.link)
        column.addWidget(self.firewall)
        column.addStretch(1)

    def show_pickup(self, pickup: Pickup) -> None:
        """Show the present moment of an open pick-up."""
        opened = pickup.opened
        if opened is None:
            self.forget()
            return
        if self._pickup is not pickup:
            self._pickup = pickup
            pickup.second.connect(self._count)
        title = "" if pickup.chosen is None else spoken(pickup.chosen.title)
        self.picture.show_matrix(opened.code, self.tr("The code of the pick-up for {title}").format(title=title))
        self.link.setText(opened.link.reveal())
        self.where.say(self.tr("At {address}").format(address=opened.address.shown))
        self.where.setAccessibleDescription(self.tr("Chooses another address of this computer"))
        told = words.latest(pickup.heard)
        self.happened.setText(told or self.tr("Hold the phone’s camera over the code."))
        self.firewall.setText(opened.firewall)
        self.firewall.setVisible(bool(opened.firewall))
        self._count(pickup.left)

    def forget(self) -> None:
        """Take the code and its link off the screen."""
        self.picture.show_matrix((), "")
        self.link.clear()

    def shown_link(self) -> Secret[str]:
        """The link as it can be copied from the screen."""
        return Secret(self.link.text())

    def _count(self, seconds: int) -> None:
        self.clock.setText(words.clock(seconds))
        minutes = max(1, seconds // 60)
        left = self.tr("one minute left") if minutes == 1 else self.tr("{minutes} minutes left")
        self.clock.setAccessibleName(left.format(minutes=minutes))
        if seconds in words.ANNOUNCED and self.isVisible():
            announce(self, self.clock.accessibleName())

    def _choose(self) -> None:
        """Offer this computer's addresses; those that no phone reaches stand there with the reason."""
        opened = None if self._pickup is None else self._pickup.opened
        if opened is None:
            return
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for one in opened.addresses:
            act = menu.addAction(one.shown if one.fit else words.unfit(one))
            act.setEnabled(one.fit and one != opened.address)
            act.triggered.connect(lambda _on=False, text=str(one.address): self.elsewhere.emit(text))
        menu.popup(self.where.mapToGlobal(self.where.rect().bottomLeft()))
