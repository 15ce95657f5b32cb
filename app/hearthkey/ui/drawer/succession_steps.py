"""The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from functools import partial

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QHBoxLayout, QLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.sentences import succession as words
from hearthkey.core.succession import Carries, DeviceStep, Plan, PlannedStep, Standing, Step
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

MARK = 20
"""Side of a mark's cell, in pixels at normal type."""


class StepMark(QWidget):
    """Where a step stands, as a shape: a disc with a tick, a ring with a dot, an empty ring. The words say the same."""

    def __init__(self, theme: Theme, standing: Standing, *, due: bool, last: bool) -> None:
        super().__init__()
        self._theme, self._standing, self._due, self._last = theme, standing, due, last
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A cell at least; the thread to the next mark takes the rest."""
        return QSize(self._theme.px(MARK), self._theme.px(MARK))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the thread to the next step, then the mark."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        unit = self._theme.px(MARK) / MARK
        middle = QPointF(self.width() / 2, 10 * unit)
        ink = self._theme.color("act" if self._due else "ink")
        if not self._last:
            painter.setPen(QPen(self._theme.color("rule"), 1.2 * unit))
            painter.drawLine(QPointF(middle.x(), middle.y() + 9 * unit), QPointF(middle.x(), self.height() + unit))
        painter.setPen(QPen(ink, 1.6 * unit))
        painter.setBrush(ink if self._standing is Standing.DONE else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(middle, 6 * unit, 6 * unit)
        if self._standing is Standing.DONE:
            painter.setPen(QPen(self._theme.color("raised"), 1.6 * unit))
            tick = ((-2.8, 0.2), (-0.8, 2.2), (3.0, -2.2))
            painter.drawPolyline([middle + QPointF(x * unit, y * unit) for x, y in tick])
        elif self._standing is Standing.NOW:
            painter.setBrush(ink)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.drawEllipse(QRectF(middle.x() - 2.6 * unit, middle.y() - 2.6 * unit, 5.2 * unit, 5.2 * unit))
        painter.end()


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
        _empty(self._rows)
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
        row.addWidget(StepMark(self._theme, one.standing, due=due, last=last))
        row.addLayout(lines, 1)
        return row

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


def _empty(layout: QLayout) -> None:
    """Take everything out of a layout."""
    while (item := layout.takeAt(0)) is not None:
        widget, inner = item.widget(), item.layout()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
        if inner is not None:
            _empty(inner)
