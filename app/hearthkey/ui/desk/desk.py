"""The desk: the whole screen, turned to whoever the device in hand is for."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.passes import Pass
from hearthkey.core.plans import HandOverPlan
from hearthkey.core.sentences import plans
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.dates import weekday
from hearthkey.ui.desk import showing, telling
from hearthkey.ui.desk.beside import Beside
from hearthkey.ui.desk.card import DeskCard
from hearthkey.ui.desk.foot import RIM, DeskFoot, inset
from hearthkey.ui.desk.head import DeskHead
from hearthkey.ui.desk.larger import Larger
from hearthkey.ui.desk.sitting import Sitting
from hearthkey.ui.desk.stations import Stations
from hearthkey.ui.desk.turns import Step, Turn, Turns
from hearthkey.ui.drives import Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.scrolling import Scrolling
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

SHARE = 0.42
"""The most of the width that the card takes beside the steps."""

LEAST = 224
"""Pixels of a code that a camera still reads well."""


class Desk(QWidget):
    """A window of its own over the whole screen, so that nothing else of the household can be seen or reached.

    Args:
        window: over whose screen it opens, and before which it stays.

    Signals:
        left: it has gone, and nothing of it is open any more.
    """

    left = Signal()

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, sticks: Sticks, window: QWidget) -> None:
        super().__init__(window, Qt.WindowType.Window)
        self._window = window
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setWindowTitle(self.tr("Hand over"))
        self._errands, self._ways = errands, ways
        self._theme = Larger(theme)
        self.sitting = Sitting(errands, sticks, self)
        self._progress = ""
        self._told: tuple[object, ...] = ()
        self.head = DeskHead(self._theme)
        self.card = DeskCard(self._theme)
        self.beside = Beside(self._theme)
        self.steps, self.note = self.beside.steps, self.beside.note
        self.stations = Stations(self._theme)
        self.foot = DeskFoot(self._theme)
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        self._middle = Scrolling(self._theme)
        self._sides = QHBoxLayout()
        self._sides.addWidget(self.card, 0, Qt.AlignmentFlag.AlignTop)
        self._sides.addWidget(self.beside, 1)
        column = QVBoxLayout(self._middle.contents)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(self._sides)
        column.addStretch(1)
        self._rows = QVBoxLayout(self)
        self._rows.addWidget(self.head)
        self._rows.addLayout(inset(self._middle), 1)
        self._rows.addLayout(inset(self.stations))
        self._rows.addWidget(self.foot)
        order = (self.card.picture, self.card.words, self.head.more_button, *self.foot.stops())
        for before, after in pairwise(order):
            self.setTabOrder(before, after)

    def _connect(self) -> None:
        sitting, foot = self.sitting, self.foot
        sitting.changed.connect(self._show)
        sitting.said.connect(self._aloud)
        sitting.over.connect(self._over)
        sitting.leaving.pickup.second.connect(self.head.count)
        self.head.more.connect(sitting.leaving.pickup.extend)
        for signal, act in (
            (foot.act, sitting.act),
            (foot.second, sitting.second),
            (foot.onward, sitting.onward),
            (foot.leave, sitting.leave),
            (foot.confirmed, sitting.confirm),
            (foot.put_off, sitting.put_off),
            (foot.stay, sitting.stay),
            (self._ways.lock, sitting.leave),
        ):
            signal.connect(act)
        self._errands.step.connect(self._step)
        self._errands.seen.connect(sitting.show_snapshot)
        self._theme.changed.connect(self.fit)
        for keys, act in (
            ("Ctrl+Right", sitting.onward),
            ("Ctrl+Left", sitting.back),
            ("Ctrl+Shift+L", self._ways.lock.emit),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setAutoRepeat(False)
            shortcut.activated.connect(act)

    # Coming and going

    def begin(self, passes: Sequence[Pass]) -> None:
        """Take the screen that the window is on, and open the first pick-up; without a pass nothing happens."""
        if passes:
            self.take_screen()
            self.sitting.begin(passes)

    def take_screen(self) -> None:
        """Stand over the whole screen that the window is on."""
        screen = self._window.screen()
        self.setScreen(screen)
        self.setGeometry(screen.geometry())
        self.showFullScreen()
        self.activateWindow()

    def _over(self) -> None:
        self.card.say("")
        self.steps.forget()
        self._told = ()
        self.hide()
        self.left.emit()

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802 - Qt's name
        """The desktop closes it: that is leaving."""
        self.sitting.leave()
        event.accept()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc: not yet, smaller, and at last off the desk."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self.sitting.asking:
            self.sitting.stay()
        elif self.sitting.is_big:
            self.sitting.second()
        else:
            self.sitting.leave()

    # What is shown

    def _step(self, told: str) -> None:
        self._progress = told
        if self.sitting.turns is not None and self.sitting.leaving.busy:
            self.card.say(showing.sentence(self.sitting.turns.current, self.sitting.leaving, told))

    def _show(self) -> None:
        turns, last = self.sitting.turns, self._errands.last
        if turns is None or last is None:
            return
        turn, pickup = turns.current, self.sitting.leaving.pickup
        day = weekday(last.at.astimezone())
        self.head.show_device(spoken(turn.one.title), showing.table_words(turns, day))
        self.head.show_clock(runs=pickup.is_open, seconds=pickup.left)
        self._show_card(turn)
        self._show_steps(turn, last)
        self._show_foot(turns)
        self.stations.show_way(telling.stations(turn, last.at))
        self.fit()
        self._tell(turn)

    def _show_card(self, turn: Turn) -> None:
        leaving = self.sitting.leaving
        side, opened = leaving.screen.side, leaving.pickup.opened
        if side is Side.TICKET and opened is not None:
            name = self.tr("The code of the pick-up for {title}").format(title=spoken(turn.one.title))
            self.card.show_code(opened.code, name)
        elif side is Side.PASSPHRASE and leaving.passphrase is not None:
            self.card.show_words(leaving.passphrase)
        else:
            self.card.say(showing.sentence(turn, leaving, self._progress))

    def _show_steps(self, turn: Turn, last: Snapshot) -> None:
        leaving = self.sitting.leaving
        moment = showing.moment(leaving)
        family = last.kinds.of(turn.one.kind).family
        words = {step: telling.step_words(step, turn, family, moment) for step in Step}
        self.steps.show_steps(words, turn.step(words_shown=moment.words))
        note = showing.note(turn, leaving)
        if self.sitting.asking:
            follows = self.sitting.trouble or said(plans.hand_over(HandOverPlan(turn.one)))
            note = showing.Note(self.tr("Does it work on the device?"), follows)
        self.note.speak(note.rest, stressed=note.stressed)

    def _show_foot(self, turns: Turns) -> None:
        turn, leaving, foot = turns.current, self.sitting.leaving, self.foot
        leads = turn.done or (turn.typed and leaving.screen.side is not Side.PASSPHRASE)
        foot.ask(asking=self.sitting.asking, others=turns.next is not None, works=not self.sitting.erasing)
        one = showing.act(turn, leaving)
        foot.say(showing.act_words(one, turn), commits=not leads, works=not leaving.busy)
        foot.offer(showing.second_words(turn, leaving, big=self.sitting.is_big))
        foot.lead(*showing.onward_words(turns), commits=leads)
        foot.count.setText(showing.count_words(turns))

    def _tell(self, turn: Turn) -> None:
        """Say aloud what is new, and put the focus where the next thing is done."""
        side, asking = self.sitting.leaving.screen.side, self.sitting.asking
        now = (turn.one.serial, side, turn.picked_up is not None, turn.done, asking)
        if now == self._told or not self.isVisible():
            return
        other = not self._told or self._told[0] != turn.one.serial
        self._told = now
        if asking or side is Side.PASSPHRASE:
            told = self.note.text()
        else:
            told = self.card.picture.accessibleName() if side is Side.TICKET else self.card.told.text.text()
        self._aloud(f"{spoken(turn.one.title)}. {told}" if other and side is not Side.TICKET else told)
        self.foot.take_focus()

    def _aloud(self, text: str) -> None:
        announce(self, text)

    # How it fits

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Grow with the screen."""
        super().resizeEvent(event)
        self._theme.fit(self.width(), self.height())
        self.fit()

    def fit(self) -> None:
        """Share the room: what matters least goes first, and at last the middle scrolls."""
        if self.sitting.turns is None:
            return
        px = self._theme.px
        words = self.card.currentWidget() is self.card.words
        roomy = self.height() >= px(740) and self.width() >= px(1100)
        edge = px(44) if roomy else 20
        self._rows.setContentsMargins(*[edge - RIM] * 4)
        self._rows.setSpacing(px(22) if roomy else px(10))
        self._sides.setSpacing(px(32) if roomy else px(20))
        wide = self.width() - 2 * edge
        self.stations.setFixedHeight(self.stations.high(wide))
        for short in (False, True):
            big = self.sitting.is_big
            self.head.shorten(short=short)
            high = self._middle_height(big=big, stations=not short)
            if high >= px(230):
                break
        if words and not self.card.words.fit(high, big=big):
            big, high = True, self._middle_height(big=True, stations=False)
            self.card.words.fit(high, big=False)
        for part, there in ((self.head, not big), (self.stations, not big and not short), (self.beside, not big)):
            part.setVisible(there)
        self._give(wide, high, big=big)

    def _middle_height(self, *, big: bool, stations: bool) -> int:
        """What head, stations and foot leave of the height."""
        edge, rows = self._rows.contentsMargins(), [self.foot.sizeHint().height()]
        rows += [] if big else [self.head.sizeHint().height()]
        rows += [self.stations.height()] if stations and not big else []
        return self.height() - edge.top() - edge.bottom() - sum(rows) - len(rows) * self._rows.spacing()

    def _give(self, wide: int, high: int, *, big: bool) -> None:
        """Give the card its square, and the steps what is left beside it."""
        px, least = self._theme.px, self.card.minimumSizeHint()
        side = max(high if big else min(px(DeskCard.SIDE), round(wide * SHARE), high), LEAST)
        self.card.setFixedSize(min(max(side, least.width()), wide), max(side, least.height()))
        if big:
            return
        beside = wide - self.card.width() - self._sides.spacing()
        self.beside.fit(beside, max(high, self.card.height()), asking=self.sitting.asking)
        self.beside.setMinimumHeight(self.card.height())
