"""The devices that can be renewed, as boxes to be ticked: the soonest to end first."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core import renewal
from hearthkey.core.passes import Pass, State
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.controls.tick import Tick
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

MOST = 100
"""Devices that are offered: more than anybody renews in one round."""


@dataclass(frozen=True)
class Candidate:
    """A device that can be renewed.

    Args:
        chosen: the pass that would be followed.
        visit: the last day on which its person is met before it ends, None where no such day is known.
        due: it would end before everybody was visited once.
    """

    chosen: Pass
    visit: datetime | None
    due: bool


def candidates(snapshot: Snapshot) -> list[Candidate]:
    """Whose pass may be followed: it is on its device, and nothing newer waits. The soonest to end first."""
    now = snapshot.at
    living = renewal.held(snapshot.passes, now)
    waits = {one.identity for one in living if one.key_is_here}
    found = [
        Candidate(
            one,
            renewal.last_visit(one.person, one.not_after, snapshot.visits, now),
            due=one.not_after - now <= renewal.SLOWEST_VISIT and not one.guest and one.state(now) is State.IN_USE,
        )
        for one in renewal.without_bridged(living, now)
        if one.identity not in waits
    ]
    return sorted(found, key=lambda one: (one.chosen.not_after, one.chosen.title))


class RenewRows(QWidget):
    """The boxes.

    Signals:
        changed: another box is ticked.
    """

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._shown: list[Candidate] | None = None
        self._wanted = ""
        self.ticks: dict[str, Tick] = {}
        self.more = Label(theme, Role.STATE, color="ink2")
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(3, 0, 3, 0)
        self._column.setSpacing(0)
        self.setAccessibleName(self.tr("Which devices?"))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show who can be renewed now; what was ticked stays so."""
        found = candidates(snapshot)
        first = [one for one in found if one.chosen.identity == self._wanted]
        found = [*first, *(one for one in found if one not in first)]
        if found == self._shown:
            return
        ticked = set(self.ticked())
        self._shown = found
        self._clear()
        for one in found[:MOST]:
            tick = Tick(self._theme, spoken(one.chosen.title), self._under(one, snapshot.at), steps_back=False)
            tick.setChecked(one.chosen.identity in ticked)
            tick.toggled.connect(lambda _on: self.changed.emit())
            self._column.addWidget(tick)
            self.ticks[one.chosen.identity] = tick
        count = len(found) - MOST
        told = self.tr("One more ends later.") if count == 1 else self.tr("{count} more end later.")
        self.more = Label(self._theme, Role.STATE, told.format(count=count), color="ink2")
        self._column.addLayout(inset(self.more))
        self.more.setVisible(count > 0)
        self.changed.emit()

    def _under(self, one: Candidate, now: datetime) -> str:
        end = short_day(one.chosen.not_after)
        if one.chosen.state(now) is State.STOPPED:
            return self.tr("stopped, would end {day}").format(day=end)
        if one.visit is not None:
            return self.tr("ends {day}, you meet on {visit}").format(day=end, visit=short_day(one.visit))
        return self.tr("ends {day}").format(day=end)

    def _clear(self) -> None:
        self.ticks = {}
        empty(self._column)

    def begin(self, identity: str, snapshot: Snapshot | None) -> None:
        """Be about one device, which then stands first; or about a round, with those ticked that are due."""
        self._wanted, self._shown = identity, None
        self._clear()
        if snapshot is None:
            return
        self.show_snapshot(snapshot)
        due = [one.chosen.identity for one in self._known() if one.due]
        self.take([identity] if identity else due)

    def take(self, identities: Iterable[str]) -> None:
        """Tick these and no others."""
        wanted = set(identities)
        for identity, tick in self.ticks.items():
            with QSignalBlocker(tick):
                tick.setChecked(identity in wanted)
            tick.update()
        self.changed.emit()

    def _known(self) -> list[Candidate]:
        return [] if self._shown is None else self._shown

    def due(self) -> list[str]:
        """Identities of those that are due."""
        return [one.chosen.identity for one in self._known() if one.due]

    def of(self, person: str) -> list[str]:
        """Identities of a person's devices that are due; where none is, of all that are theirs."""
        theirs = [one for one in self._known() if one.chosen.person == person]
        return [one.chosen.identity for one in theirs if one.due] or [one.chosen.identity for one in theirs]

    def ticked(self) -> tuple[str, ...]:
        """Identities of those that are ticked, in their order."""
        return tuple(identity for identity, tick in self.ticks.items() if tick.isChecked())

    def allow(self, *, able: bool) -> None:
        """Let boxes be ticked, or not while a round is under way."""
        for tick in self.ticks.values():
            tick.setEnabled(able)
