"""The headline: until when all is well, what that means, and at most one button."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.outlook import Ends, Outlook
from hearthkey.core.renewal import waiting_of
from hearthkey.core.sentences import board as words
from hearthkey.core.sentences import gateway
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.sight import sight
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

STEPS = (Role.HEADLINE, Role.TITLE, Role.PERSON)
"""The sizes a headline takes in a low window, the largest that needs no more than `LINES`."""

LINES = 2
SIDE = 20
BESIDE = 0.4
"""The widest a button may be, as a part of the headline, to stand beside it and not under it."""


class Headline(QWidget):
    """The one sentence at the top, what it means, and at most one button.

    In a low window it speaks lower, and what it means is unfolded on request.
    """

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ways = ways
        self._short = self._unfolded = False
        self._sentence = Prose(theme, Role.HEADLINE)
        self._meaning = Prose(theme, Role.BODY, color="ink2")
        self.more = Button(theme, "", kind=Kind.WORD, height=26)
        self.more.clicked.connect(self._turn)
        self._button = Button(theme, "", kind=Kind.WANTS)
        self._button.clicked.connect(self._go)
        self._device = self._waits = ""
        self._delivers = False
        self._build()
        self.more.hide()
        self._button.hide()
        theme.changed.connect(self._fit)
        self._say_more()

    def _build(self) -> None:
        says = QVBoxLayout()
        says.setSpacing(2)
        says.addWidget(self._sentence)
        says.addWidget(self._meaning)
        acts = QHBoxLayout()
        acts.setSpacing(8)
        acts.addWidget(self.more, 0, Qt.AlignmentFlag.AlignBottom)
        acts.addWidget(self._button, 0, Qt.AlignmentFlag.AlignBottom)
        acts.addStretch(1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.setSpacing(6)
        self._row.addLayout(says, 1)
        self._row.addLayout(acts)
        column = QVBoxLayout(self)
        column.setContentsMargins(SIDE, 0, SIDE, 0)
        column.setSpacing(6)
        column.addLayout(self._row)
        column.addWidget(Rule(self._theme, oxford=True))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Say until when all is well."""
        seen = sight(snapshot).outlook
        if seen is None:
            return
        waits = gateway.not_in_force(snapshot.gateway_state)
        if waits is None or seen.over:
            sentence, meaning = said(words.headline(seen, snapshot.at)), said(words.consequence(seen))
        else:
            sentence, meaning = said(waits), said(gateway.meanwhile(snapshot.gateway_state))
        self._sentence.speak(sentence)
        self._meaning.speak(meaning)
        self.setAccessibleName(f"{sentence} {meaning}")
        if waits is None or seen.over:
            self._offer(seen, snapshot)
        else:
            self._device, self._delivers = "", True
            self._button.say(self.tr("Deliver now"))
            self._button.setVisible(not snapshot.read_only)
        self._fit()

    def _offer(self, seen: Outlook, snapshot: Snapshot) -> None:
        """At most one button, and none for what cannot be done yet: the gateway's certificate is not renewed here."""
        self._delivers = False
        wants = seen.over or seen.due
        self._device = "" if seen.first is None or seen.over else seen.first.identity
        self._button.setVisible(wants and (bool(self._device) or seen.house_ends is Ends.LIST))
        waits = waiting_of(self._device, snapshot.passes, snapshot.at)
        self._waits = "" if waits is None else waits.serial
        if self._device and seen.first is not None:
            told = self.tr("Renew {title}") if waits is None else self.tr("Hand over {title}")
            self._button.say(told.format(title=spoken(seen.first.title)))
        else:
            self._button.say(self.tr("Sign the next list"))

    def _go(self) -> None:
        if self._delivers:
            self._ways.deliver.emit()
        elif self._device and self._waits:
            self._ways.hand_over.emit(self._waits)
        elif self._device:
            self._ways.renew.emit(self._device)
        else:
            self._ways.settings.emit()

    # How much room it takes

    def abridge(self, *, short: bool) -> None:
        """In a low window the second sentence folds away; a screen reader still has it at once."""
        if short != self._short:
            self._short, self._unfolded = short, False
            self._say_more()
            self._fit()

    def _turn(self) -> None:
        self._unfolded = not self._unfolded
        self._say_more()

    def _say_more(self) -> None:
        self._meaning.setVisible(not self._short or self._unfolded)
        self.more.setVisible(self._short)
        self.more.say(self.tr("less") if self._unfolded else self.tr("more"))
        self.more.setAccessibleName(self.tr("Say less at the top") if self._unfolded else self.tr("What that means"))

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Another width wants other lines."""
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._fit()

    def _fit(self) -> None:
        """Find the size to speak in, and the place for the buttons."""
        room = self.width() - 2 * SIDE
        under = self._button.isVisibleTo(self) and self._button.sizeHint().width() > BESIDE * room
        self._row.setDirection(QBoxLayout.Direction.TopToBottom if under else QBoxLayout.Direction.LeftToRight)
        if not under:
            room -= sum(one.sizeHint().width() + 8 for one in (self.more, self._button) if one.isVisibleTo(self))
        for role in STEPS if self._short else STEPS[:1]:
            self._sentence.rescale(role)
            if self._sentence.lines_in(room) <= LINES:
                break
