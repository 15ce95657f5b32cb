"""What is to be done, and when: the first thing first, with how long it takes, why, and its button."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.day_list import More, gathered, pressing
from hearthkey.core.duties import MINUTES, Act, Duty, agenda
from hearthkey.core.sentences import duties as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.calendar_file import CalendarFile
from hearthkey.ui.drawer.days_fold import DaysFold
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.sight import sight
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


@dataclass(frozen=True)
class Days:
    """The list, cut in two.

    Args:
        now: whose day has come, what costs somebody the way in first.
        later: the others, soonest first.
    """

    now: tuple[Duty, ...]
    later: tuple[Duty, ...]


def days(snapshot: Snapshot) -> Days | None:
    """What is to be done; None before there is a household."""
    found = sight(snapshot).duties
    if found is None:
        return None
    found = agenda(found, snapshot.at)
    now = pressing(one for one in found if one.overdue(snapshot.at))
    return Days(now, tuple(one for one in found if not one.overdue(snapshot.at)))


class DaysPage(Page):
    """The day list.

    Args:
        start: where the first dialog for the calendar file opens.
    """

    def __init__(
        self, theme: Theme, errands: Errands, ways: Ways, start: Path = Path(), parent: QWidget | None = None
    ) -> None:
        super().__init__(theme, self.tr("What is to be done"), parent=parent)
        self._ways = ways
        self._shown: Days | None = None
        self.opening = Prose(theme, Role.BODY, color="ink2")
        self.put(self.opening)
        self._list = QVBoxLayout()
        self._list.setSpacing(8)
        self.body.addLayout(self._list)
        self.body.addStretch(1)
        self.buttons: list[Button] = []
        self.calendar = CalendarFile(theme, errands, start)
        self.show_foot()
        self.foot.addWidget(self.calendar)
        self.folds: list[DaysFold] = []
        self._stops: list[Button] = []
        self._unfolded: set[tuple[Act, bool]] = set()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the list, where it is another one than before."""
        found = days(snapshot)
        if found is None or found == self._shown:
            return
        self._shown = found
        self._clear()
        self._open(found)
        able = not snapshot.read_only
        for number, one in enumerate(gathered(found.now)):
            self._put(one, wants=True, rule=number > 0, able=able)
        if found.later:
            self._list.addSpacing(6)
            self._list.addLayout(inset(Label(self.theme, Role.BODY_STRONG, self.tr("What can wait"))))
        for one in gathered(found.later):
            self._put(one, wants=False, rule=True, able=able)
        for before, after in pairwise([*self._stops, self.calendar.button]):
            QWidget.setTabOrder(before, after)

    def _put(self, one: Duty | More, *, wants: bool, rule: bool, able: bool) -> None:
        if rule:
            self._list.addLayout(inset(Rule(self.theme, color="hair")))
        if isinstance(one, Duty):
            self._add(one, wants=wants, able=able)
            return
        which = one.act, wants
        fold = DaysFold(self.theme, one, wants=wants, unfolded=which in self._unfolded)
        fold.turned.connect(lambda on: self._unfolded.add(which) if on else self._unfolded.discard(which))
        self._list.addWidget(fold)
        self.folds.append(fold)
        self._stops.append(fold.button)

    def _open(self, found: Days) -> None:
        minutes, count = sum(MINUTES[one.act] for one in found.now), len(found.now)
        if count == 1:
            self.opening.speak(self.tr("One thing to do now, about {minutes} minutes.").format(minutes=minutes))
        elif found.now:
            told = self.tr("{count} things to do now, about {minutes} minutes.")
            self.opening.speak(told.format(count=count, minutes=minutes))
        elif found.later:
            self.opening.speak(self.tr("Nothing to do until {day}.").format(day=short_day(found.later[0].act_on)))
        else:
            self.opening.speak(self.tr("Nothing to do."))

    def _clear(self) -> None:
        self.buttons, self.folds, self._stops = [], [], []
        empty(self._list)

    def _add(self, duty: Duty, *, wants: bool, able: bool) -> None:
        title = Prose(self.theme, Role.BODY_STRONG, said(words.title(duty)), color="act" if wants else "ink")
        when = self.tr("by {day}, {minutes} min").format(day=short_day(duty.act_on), minutes=MINUTES[duty.act])
        lines = QVBoxLayout()
        lines.setSpacing(1)
        for part in (
            title,
            Prose(self.theme, Role.STATE, said(words.reason(duty)), color="ink2"),
            Label(self.theme, Role.STATE, when, color="ink2"),
        ):
            lines.addWidget(part)
        button = Button(self.theme, self._deed(duty), height=26)
        button.setAccessibleName(f"{said(words.title(duty))}: {button.text()}")
        button.clicked.connect(lambda _on=False, one=duty: self._go(one)())
        button.setEnabled(able)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.setContentsMargins(3, 0, 0, 0)
        row.addLayout(lines, 1)
        row.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        self._list.addLayout(row)
        self.buttons.append(button)
        self._stops.append(button)

    def _deed(self, duty: Duty) -> str:
        return {
            Act.SIGN_LIST: self.tr("Sign it"),
            Act.RENEW_GATEWAY: self.tr("Renew it"),
            Act.RENEW_PASS: self.tr("Renew it"),
            Act.HAND_OVER: self.tr("Hand it over"),
            Act.SUPERSEDE: self.tr("Look at it"),
            Act.GUEST_LEAVES: self.tr("Look at it"),
            Act.PROVE: self.tr("Prove it"),
            Act.TRY_COPY: self.tr("Copies"),
            Act.TRY_PART: self.tr("Try it"),
            Act.BEGIN_SUCCESSION: self.tr("The next CA"),
            Act.TRUST_BOTH: self.tr("The next CA"),
            Act.GATEWAY_FOLLOWS: self.tr("The next CA"),
            Act.DEVICES_FOLLOW: self.tr("The next CA"),
            Act.FINISH_SUCCESSION: self.tr("The next CA"),
            Act.PRINT_PAPER: self.tr("On paper"),
            Act.PRINT_PAPER_ANEW: self.tr("On paper"),
            Act.MAKE_PARTS: self.tr("Make it"),
            Act.MAKE_STOP_SET: self.tr("Make it"),
            Act.ADD_TO_STOP_SET: self.tr("Make it"),
        }[duty.act]

    def _go(self, duty: Duty) -> Callable[[], None]:
        identity, serial = ("", "") if duty.chosen is None else (duty.chosen.identity, duty.chosen.serial)
        return {
            Act.RENEW_PASS: lambda: self._ways.renew.emit(identity),
            Act.HAND_OVER: lambda: self._ways.hand_over.emit(serial),
            Act.SUPERSEDE: lambda: self._ways.device.emit(identity),
            Act.GUEST_LEAVES: lambda: self._ways.device.emit(identity),
            Act.PROVE: lambda: self._ways.prove.emit(serial),
            Act.TRY_COPY: self._ways.sealed.emit,
            Act.BEGIN_SUCCESSION: self._ways.succession.emit,
            Act.TRUST_BOTH: self._ways.succession.emit,
            Act.GATEWAY_FOLLOWS: self._ways.succession.emit,
            Act.DEVICES_FOLLOW: self._ways.succession.emit,
            Act.FINISH_SUCCESSION: self._ways.succession.emit,
            Act.TRY_PART: self._ways.deputy.emit,
            Act.PRINT_PAPER: self._ways.sealed.emit,
            Act.PRINT_PAPER_ANEW: self._ways.sealed.emit,
            Act.MAKE_PARTS: self._ways.deputy.emit,
            Act.MAKE_STOP_SET: self._ways.deputy.emit,
            Act.ADD_TO_STOP_SET: self._ways.deputy.emit,
            Act.SIGN_LIST: self._ways.sign_list.emit,
            Act.RENEW_GATEWAY: self._ways.renew_gateway.emit,
        }[duty.act]
