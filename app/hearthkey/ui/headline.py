"""The headline: until when all is well, what that means, and the one button that leads on."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.outlook import Outlook
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
from hearthkey.ui.top_act import TopAct, act_of
from hearthkey.ui.ways import Ways

STEPS = (Role.HEADLINE, Role.TITLE, Role.PERSON)
"""The sizes a headline takes in a low window, the largest that needs no more than `LINES`."""

LINES = 2
SIDE = 20
BESIDE = 0.4
"""The widest a button may be, as a part of the headline, to stand beside it and not under it."""


class Headline(QWidget):
    """The one sentence at the top, what it means, and the one button that leads on; it wants nobody before it is due.

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
        self._told = self._brief = ""
        self._act = TopAct.DELIVER
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
            self._act = TopAct.DELIVER
            self._say(Kind.WANTS, "")
        self._button.setVisible(not snapshot.read_only)
        self._fit()

    def _offer(self, seen: Outlook, snapshot: Snapshot) -> None:
        """The button that keeps the first thing from ending, also where there is time yet."""
        self._act = act_of(seen, snapshot)
        self._device = "" if seen.first is None else seen.first.identity
        waits = waiting_of(self._device, snapshot.passes, snapshot.at)
        self._waits = "" if waits is None else waits.serial
        title = "" if seen.first is None else spoken(seen.first.title)
        self._say(Kind.WANTS if seen.over or seen.due else Kind.PLAIN, title)

    def _say(self, kind: Kind, title: str) -> None:
        told = {
            TopAct.DELIVER: self.tr("Deliver now"),
            TopAct.HAND_OVER: self.tr("Hand over {title}"),
            TopAct.RENEW: self.tr("Renew {title}"),
            TopAct.LOOK_AT: self.tr("Look at {title}"),
            TopAct.SIGN_LIST: self.tr("Sign the next list"),
            TopAct.RENEW_GATEWAY: self.tr("Renew the gateway’s certificate"),
            TopAct.SUCCESSION: self.tr("The next CA"),
        }[self._act]
        brief = {
            TopAct.HAND_OVER: self.tr("Hand it over"),
            TopAct.RENEW: self.tr("Renew it"),
            TopAct.LOOK_AT: self.tr("Look at it"),
        }
        self._told = told.format(title=title)
        self._brief = brief.get(self._act, self._told)
        self._button.weigh(kind)

    def _go(self) -> None:
        ways = self._ways
        acts: dict[TopAct, Callable[[], None]] = {
            TopAct.DELIVER: ways.deliver.emit,
            TopAct.HAND_OVER: lambda: ways.hand_over.emit(self._waits),
            TopAct.RENEW: lambda: ways.renew.emit(self._device),
            TopAct.LOOK_AT: lambda: ways.device.emit(self._device),
            TopAct.SIGN_LIST: ways.sign_list.emit,
            TopAct.RENEW_GATEWAY: ways.renew_gateway.emit,
            TopAct.SUCCESSION: ways.succession.emit,
        }
        acts[self._act]()

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
        self._button.say(self._told)
        if self._button.sizeHint().width() > room / 2:
            self._button.say(self._brief)
            self._button.setAccessibleName(self._told)
        under = self._button.isVisibleTo(self) and self._button.sizeHint().width() > BESIDE * room
        self._row.setDirection(QBoxLayout.Direction.TopToBottom if under else QBoxLayout.Direction.LeftToRight)
        if not under:
            room -= sum(one.sizeHint().width() + 8 for one in (self.more, self._button) if one.isVisibleTo(self))
        for role in STEPS if self._short else STEPS[:1]:
            self._sentence.rescale(role)
            if self._sentence.lines_in(room) <= LINES:
                break
