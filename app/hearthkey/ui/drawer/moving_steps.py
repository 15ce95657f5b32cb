"""The steps of a move as a list: when, what, why, whom it touches; done, or to be done again."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.moving import MovingPlan, Step
from hearthkey.core.moving_steps import Task
from hearthkey.core.sentences import moving as words
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.step_mark import StepMark
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_LEADS = {
    Task.TRY_COPY: "sealed",
    Task.LOOK_AT_LINE: "network_plan",
    Task.BOTH_NAMES: "household",
    Task.BOTH_HOMES: "household",
    Task.PREPARE_BOX: "household",
    Task.DELIVER: "gateway",
    Task.NEW_BUNDLES: "renew",
    Task.FORWARD: "forwarding",
    Task.CHECK: "way_in",
    Task.NAME_GOES: "household",
    Task.HOME_GOES: "household",
}
"""Which way of the window leads to where a step is done; others are done outside of it."""


class MovingSteps(QWidget):
    """All steps of a move.

    Signals:
        done: a step is to be called done; the value of its task.
        undone: the same, to be done again.
        lead: the name of the way to where a step is done.
    """

    done = Signal(str)
    undone = Signal(str)
    lead = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.buttons: list[Button] = []
        self._rows = QVBoxLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setSpacing(0)

    def show_plan(self, plan: MovingPlan | None, *, kept: bool, able: bool) -> None:
        """Show another plan.

        Args:
            kept: it is under way, so that its steps can be ticked.
            able: whether this copy of the app may change anything.
        """
        self.buttons = []
        empty(self._rows)
        before = None
        if plan is None:
            return
        for one in plan.steps:
            if one.when is not before:
                before = one.when
                heading = Prose(self._theme, Role.STATE, said(Sentence(words.WHENS[one.when], {})), color="ink2")
                heading.setContentsMargins(0, 4, 0, 8)
                self._rows.addWidget(heading)
            self._rows.addLayout(self._row(plan, one, kept=kept, able=able))

    def _row(self, plan: MovingPlan, one: Step, *, kept: bool, able: bool) -> QHBoxLayout:
        done, now = one.ticked is not None, kept and one is plan.next
        lines = QVBoxLayout()
        lines.setSpacing(1)
        lines.setContentsMargins(0, 0, 0, 14)
        role = Role.BODY if done else Role.BODY_STRONG
        lines.addWidget(
            Prose(self._theme, role, said(words.step(plan.move, one.task)), color="ink2" if done else "ink")
        )
        if not done:
            self._tell(lines, plan, one)
        deeds = self._deeds(plan, one, kept=kept, able=able)
        if deeds is not None:
            lines.addLayout(deeds)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(StepMark(self._theme, done=done, now=now, due=False, last=one is plan.steps[-1]))
        row.addLayout(lines, 1)
        return row

    def _tell(self, lines: QVBoxLayout, plan: MovingPlan, one: Step) -> None:
        left = words.left(one)
        told = [said(words.why(plan.move, one.task)), f"{said(words.touched(one))} {said(words.takes(one))}"]
        told += [] if left is None else [said(left)]
        for text in told:
            lines.addWidget(Prose(self._theme, Role.STATE, text, color="ink2"))

    def _deeds(self, plan: MovingPlan, one: Step, *, kept: bool, able: bool) -> QHBoxLayout | None:
        """What can be done about a step: only about those that are at hand."""
        found: list[Button] = []
        if not kept:
            return None
        title = said(words.step(plan.move, one.task))
        if one.ticked is None and not one.waits_for:
            found.append(self._button(self.tr("Done"), title, partial(self.done.emit, one.task.value), able=able))
            if one.task in _LEADS:
                lead = partial(self.lead.emit, _LEADS[one.task])
                found.append(self._button(self.tr("Show me where"), title, lead, able=True))
        elif one is plan.back:
            undone = partial(self.undone.emit, one.task.value)
            found.append(self._button(self.tr("Not done after all"), title, undone, able=able))
        if not found:
            return None
        row = QHBoxLayout()
        row.setContentsMargins(0, 6, 0, 0)
        row.setSpacing(4)
        for button in found:
            row.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        row.addStretch(1)
        self.buttons += found
        return row

    def _button(self, text: str, title: str, act: partial[None], *, able: bool) -> Button:
        button = Button(self._theme, text, height=26)
        button.setAccessibleName(f"{text}: {title}")
        button.setEnabled(able)
        button.clicked.connect(lambda _on=False: act())
        return button
