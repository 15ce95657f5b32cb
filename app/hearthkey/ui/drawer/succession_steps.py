"""The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.sentences import succession as words
from hearthkey.core.succession import Carries, DeviceStep, Plan, PlannedStep, Standing, Step
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.step_mark import StepMark
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class StepList(QWidget):
    """All steps of a plan.

    Signals:
        renew: somebody needs a new pass; the device's identity.
        hand_over: a new bundle waits; its pass's serial.
        prove: a device was not seen to get in yet; its pass's serial.
    """

    renew = Signal(str)
    hand_over = Signal(str)
    prove = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.buttons: list[Button] = []
        self._rows = QVBoxLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setSpacing(0)

    def show_plan(self, plan: Plan, at: datetime, *, able: bool) -> None:
        """Show another plan.

        Args:
            at: now; a step whose day has come is due.
            able: whether this copy of the app may change anything.
        """
        self.buttons = []
        empty(self._rows)
        for number, one in enumerate(plan.steps):
            due = one.standing is Standing.NOW and one.day <= at
            self._rows.addLayout(self._row(plan, one, due=due, last=number == len(plan.steps) - 1, able=able))

    def _row(self, plan: Plan, one: PlannedStep, *, due: bool, last: bool, able: bool) -> QHBoxLayout:
        lines = QVBoxLayout()
        lines.setSpacing(1)
        lines.setContentsMargins(0, 0, 0, 14)
        title = Prose(self._theme, Role.BODY_STRONG, said(words.step(one)), color="act" if due else "ink")
        when = Prose(self._theme, Role.STATE, said(words.when(one)), color="ink2")
        lines.addWidget(title)
        lines.addWidget(when)
        if one.standing is not Standing.DONE:
            lines.addWidget(Prose(self._theme, Role.STATE, said(words.means(one, plan.cause)), color="ink2"))
        if one.step is Step.DEVICES and plan.devices:
            devices = QVBoxLayout()
            devices.setSpacing(6)
            devices.setContentsMargins(0, 6, 0, 0)
            for device in plan.devices:
                devices.addLayout(self._device(device, able=able))
            lines.addLayout(devices)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self._mark(one, due=due, last=last))
        row.addLayout(lines, 1)
        return row

    def _mark(self, one: PlannedStep, *, due: bool, last: bool) -> StepMark:
        done, now = one.standing is Standing.DONE, one.standing is Standing.NOW
        return StepMark(self._theme, done=done, now=now, due=due, last=last)

    def _device(self, one: DeviceStep, *, able: bool) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(8)
        told = said(words.device(one))
        voice = Prose(self._theme, Role.BODY, told, color="ink2" if one.carries is Carries.DONE else "ink")
        row.addWidget(voice, 1, Qt.AlignmentFlag.AlignVCenter)
        deed = self._deed(one)
        if deed is not None:
            text, act = deed
            button = Button(self._theme, text, height=26)
            button.setAccessibleName(f"{text}: {spoken(one.title)}")
            button.setEnabled(able)
            button.clicked.connect(act)
            row.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
            self.buttons.append(button)
        return row

    def _deed(self, one: DeviceStep) -> tuple[str, Callable[[], None]] | None:
        if one.carries is Carries.OLD and not one.ends_by_itself:
            return self.tr("New bundle"), partial(self.renew.emit, one.identity)
        if one.carries is Carries.MADE:
            return self.tr("Hand over"), partial(self.hand_over.emit, one.serial)
        if one.carries is Carries.HANDED_OVER:
            return self.tr("Prove it"), partial(self.prove.emit, one.serial)
        return None
