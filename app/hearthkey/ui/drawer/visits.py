"""The days on which the householder meets somebody: which are planned, and one more."""

from __future__ import annotations

from datetime import datetime, timedelta

from PySide6.QtCore import QDate, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.certificates import end_of_day
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.renewal import Visit
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.until import DateField
from hearthkey.ui.errands import Errands
from hearthkey.ui.sight import sight
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Visits(QWidget):
    """Each visit with a button that ticks whom it concerns, and one that calls it off; and a row for another.

    Signals:
        chosen: a person, whose devices a round is to be about.
    """

    chosen = Signal(str)

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._errands = theme, errands
        self._shown: list[Visit] | None = None
        self.buttons: list[Button] = []
        self.none = Prose(theme, Role.STATE, self.tr("No visit is planned."), color="ink2")
        self.person = Combo(theme, self.tr("Whom do you meet?"))
        self.day = DateField(theme, self.tr("On which day?"))
        self.keep = Button(theme, self.tr("Keep the day"), height=32)
        self.trouble = Prose(theme, Role.STATE, color="act")
        self._list = QVBoxLayout()
        self._list.setSpacing(2)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(self.none))
        column.addLayout(self._list)
        column.addWidget(Labelled(theme, self.tr("Whom do you meet?"), self.person))
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.day)
        row.addWidget(self.keep)
        row.addStretch(1)
        column.addLayout(row)
        column.addLayout(inset(self.trouble))
        self.trouble.hide()
        self.keep.clicked.connect(self._keep)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the visits that are still to come."""
        people = sight(snapshot).family
        before = self.person.currentText()
        self.person.offer([(one, one) for one in people])
        self.person.take(before if before in people else (people[0] if people else ""))
        self.keep.setEnabled(bool(people) and not snapshot.read_only)
        if self._shown is None:
            soon = snapshot.at.date() + timedelta(days=7)
            self.day.setDate(QDate(soon.year, soon.month, soon.day))
        ahead = [one for one in snapshot.visits if one.day + timedelta(days=1) > snapshot.at]
        if ahead == self._shown:
            return
        self._shown = ahead
        self.none.setVisible(not ahead)
        self._clear()
        for visit in ahead:
            self._add(visit, able=not snapshot.read_only)

    def _clear(self) -> None:
        self.buttons = []
        empty(self._list)

    def _add(self, visit: Visit, *, able: bool) -> None:
        line = QWidget()
        row = QHBoxLayout(line)
        row.setContentsMargins(3, 0, 0, 0)
        row.setSpacing(4)
        when = short_day(visit.day)
        row.addWidget(
            Prose(self._theme, Role.BODY, self.tr("{person}, {day}").format(person=visit.person, day=when)), 1
        )
        for words, spoken, act in (
            (self.tr("Tick theirs"), self.tr("Tick the devices of {person}"), lambda: self.chosen.emit(visit.person)),
            (self.tr("Call off"), self.tr("Call the visit off: {person}, {day}"), lambda: self._call_off(visit)),
        ):
            button = Button(self._theme, words, kind=Kind.WORD, height=26)
            button.setAccessibleName(spoken.format(person=visit.person, day=when))
            button.setEnabled(able)
            button.clicked.connect(lambda _on=False, do=act: do())
            row.addWidget(button)
            self.buttons.append(button)
        self._list.addWidget(line)

    def _day(self) -> datetime:
        typed = self.day.date()
        return end_of_day(typed.year(), typed.month(), typed.day())

    def _keep(self) -> None:
        self.trouble.hide()
        self._errands.plan_visit(self.person.key(), self._day(), self, self._kept, self._failed)

    def _kept(self, _changes: Changes) -> None:
        self.chosen.emit(self.person.key())

    def _call_off(self, visit: Visit) -> None:
        self._errands.call_off(visit.person, visit.day, self, None, self._failed)

    def _failed(self, error: HearthkeyError) -> None:
        self.trouble.speak(mended(error))
        self.trouble.show()
