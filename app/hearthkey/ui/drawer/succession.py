"""On a device's page: how its old pass and the one that follows stand, and the way back or on."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core import renewal
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.plans import Changes, SupersedePlan, TakeBackPlan
from hearthkey.core.sentences import renewal as sentences
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.commit_foot import CommitFoot
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Succession(QWidget):
    """Shown only while two passes of a device live: a line on both, and a button that asks before it does."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._identity = ""
        self._plan: SupersedePlan | TakeBackPlan | None = None
        self._takes_back = False
        self.told = Prose(theme, Role.STATE, color="ink2")
        self.button = Button(theme, "", height=26)
        self.voice = Voice(theme)
        self.tail = CommitFoot(theme, errands, self.tr("Do it"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.told))
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(inset(self.voice))
        column.addWidget(self.tail)
        self.button.clicked.connect(self._ask)
        self.tail.agreed.connect(self._do)
        self.tail.put_aside.connect(self._put_away)
        self._put_away()
        self.hide()

    def show_device(self, passes: list[Pass], snapshot: Snapshot) -> None:
        """Say how the two passes of a device stand."""
        old, new = pair_of(passes, snapshot)
        if old is None or new is None:
            self.hide()
            self._put_away()
            return
        if (new.identity, new.handed_over is None) != (self._identity, self._takes_back):
            self._identity, self._takes_back = new.identity, new.handed_over is None
            self._put_away()
        facts = {"day": short_day(old.not_after)}
        if self._takes_back:
            told = self.tr("The pass that the device has gets in until {day}. The next one waits in the tray.")
        elif new.proved is None:
            told = self.tr(
                "Both its passes get in, the old one until {day}. Look on the device that the new one is chosen, then "
                "prove it; the old one goes for good."
            )
        else:
            told = self.tr("The new pass was seen to get in, so the old one goes now, or at the next unlock.")
        self.told.speak(told.format(**facts))
        self.button.say(self.tr("Take the renewal back…") if self._takes_back else self.tr("Let the old pass go…"))
        self.button.setEnabled(not snapshot.read_only)
        self.show()

    def _put_away(self) -> None:
        self._plan = None
        self.voice.hide()
        self.tail.forget()
        self.tail.hide()
        self.button.show()

    def _ask(self) -> None:
        self.button.hide()
        self.tail.show()
        if self._takes_back:
            self._errands.preview_take_back(self._identity, self, self._planned, self.tail.refused)
        else:
            self._errands.preview_supersede(self._identity, self, self._planned, self.tail.refused)
        self.tail.aside.setFocus()

    def _planned(self, plan: SupersedePlan | TakeBackPlan) -> None:
        self._plan = plan
        told = sentences.take_back(plan) if isinstance(plan, TakeBackPlan) else sentences.supersede(plan)
        self.tail.commit.say(
            self.tr("Take it back") if isinstance(plan, TakeBackPlan) else self.tr("Let it go for good")
        )
        self.voice.speak(said(told))
        self.voice.show()
        announce(self.voice, self.voice.text())
        self.tail.ready(ready=True)
        self.tail.commit.setFocus()

    def _do(self) -> None:
        if isinstance(self._plan, TakeBackPlan):
            self._errands.take_back(self._plan, self, self._done, self.tail.refused)
        elif self._plan is not None:
            self._errands.supersede(self._plan, self, self._done, self.tail.refused)

    def _done(self, _changes: Changes) -> None:
        self._put_away()


def pair_of(passes: list[Pass], snapshot: Snapshot) -> tuple[Pass | None, Pass | None]:
    """The old pass of a device and the one that follows it, where both live; else None, None."""
    living = [one for one in passes if one.state(snapshot.at) in LIVING]
    renewed = renewal.renewals(living, snapshot.follows, snapshot.at) if len(living) > 1 else {}
    for old in living:
        if old.serial in renewed:
            return old, renewed[old.serial]
    return None, None
