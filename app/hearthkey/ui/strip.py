"""The strip under the headline: the gateway and the household's own key, each a sign and a word."""

from __future__ import annotations

import math
from collections.abc import Iterable

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.sentences.gateway import not_in_force
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.courier import may_deliver
from hearthkey.ui.lamp import GAP, Lamp
from hearthkey.ui.strip_words import CERTIFICATE, CHANGES, CLOCK, DELIVERED, KEY, LIST, WAY_IN, lamps
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

EDGES = 52
"""Pixels that margins and the space after the host take, with a little air."""

_HOST = "host"
_KEYS = (LIST, CERTIFICATE, CLOCK, WAY_IN, CHANGES, DELIVERED, KEY)
_FACTS = (DELIVERED, CHANGES, KEY, WAY_IN, CLOCK, CERTIFICATE, LIST)
_LAMPS = (KEY, DELIVERED, WAY_IN, CHANGES, CERTIFICATE, CLOCK)
"""What goes first where there is no room; the list's lamp never goes."""


class GatewayButton(Button):
    """The word "Gateway" and the host; the keyboard's way to the gateway's page."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        self._host = ""
        self._shows_host = True
        super().__init__(theme, "", kind=Kind.HEAVY, height=26, parent=parent)
        self.say(self.tr("Gateway"))
        self.setToolTip(self.tr("The gateway (Ctrl+G)"))

    def tell(self, host: str, told: str) -> None:
        """Name the host, and say to a screen reader all that the lamps say."""
        self._host = host
        self.setAccessibleName(self.tr("Gateway {host}").format(host=host))
        self.setAccessibleDescription(told)
        self.updateGeometry()

    def show_host(self, *, shown: bool) -> None:
        """Show the host, or leave it out."""
        if shown is not self._shows_host:
            self._shows_host = shown
            self.updateGeometry()
            self.update()

    def host_width(self) -> int:
        """How wide the host is."""
        return GAP + math.ceil(self._theme.fonts.metrics(Role.BODY).horizontalAdvance(self._host))

    def bare_width(self) -> int:
        """How wide the button is without it."""
        return math.ceil(self.fontMetrics().horizontalAdvance(self.text())) + 2 * self.RING + 4

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The word, and the host where it is shown."""
        wide = self.bare_width() + (self.host_width() if self._shows_host else 0)
        return QSize(wide, self._theme.px(26) + 2 * self.RING)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint words without a box; a line under the first one while the mouse is over it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect()).adjusted(self.RING, 0, 0, 0)
        flags = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
        wide = self.fontMetrics().horizontalAdvance(self.text())
        painter.setFont(self.font())
        painter.setPen(self._theme.color("ink"))
        painter.drawText(box, flags, self.text())
        if self.underMouse():
            line = box.center().y() + self.fontMetrics().ascent() / 2 + 1
            painter.fillRect(QRectF(box.left(), line, wide, 1), self._theme.color("ink"))
        if self._shows_host:
            painter.setFont(self._theme.font(Role.BODY))
            painter.setPen(self._theme.color("ink2"))
            painter.drawText(box.adjusted(wide + GAP, 0, 0, 0), flags, self._host)
        if self.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 3, -1, -3), 3, 3)
        painter.end()


class Strip(QWidget):
    """One row, always true: what is not known says so."""

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.door = GatewayButton(theme)
        self.door.clicked.connect(ways.gateway)
        self.lamps = {key: Lamp(theme, leads=key != KEY) for key in _KEYS}
        self.deliver = Button(theme, self.tr("Deliver"), height=26)
        self.deliver.setAccessibleName(self.tr("Deliver to the gateway now"))
        self.deliver.clicked.connect(ways.deliver)
        self.lock = Button(theme, self.tr("Lock"), height=26)
        self.lock.clicked.connect(ways.lock)
        self._lit: set[str] = set()
        self._visiting = self._owes = False
        row = QHBoxLayout(self)
        row.setContentsMargins(17, 0, 17, 0)
        row.setSpacing(6)
        row.addWidget(self.door)
        row.addSpacing(14)
        for key, lamp in self.lamps.items():
            lamp.clicked.connect(ways.way_in if key == WAY_IN else ways.gateway)
            row.addWidget(lamp)
            if key == LIST:
                row.addWidget(self.deliver)
        row.addWidget(self.lock)
        row.addStretch(1)
        for part in (*self.lamps.values(), self.deliver, self.lock):
            part.hide()
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self.setFixedHeight(self._theme.px(38))
        self._fit()
        self.update()

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The strip never widens the window: what does not fit is left out by `_fit`."""
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Leave out what there is no room for."""
        super().resizeEvent(event)
        self._fit()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is known."""
        gateway, lit = snapshot.gateway, lamps(snapshot)
        if gateway is None or not lit:
            return
        self._lit = set(lit)
        for key, one in lit.items():
            self.lamps[key].light(one)
        self.door.tell(gateway.host, "; ".join(one.told for one in lit.values()))
        self.lock.setVisible(not snapshot.locked)
        state = snapshot.gateway_state
        # What is not in force is delivered by the headline's button, right above.
        self._owes = state.pending and may_deliver(snapshot) and not_in_force(state) is None
        self._fit()

    def show_visit(self, *, under_way: bool) -> None:
        """While a delivery or a look is under way, another one is not offered."""
        self._visiting = under_way
        self._fit()

    def _fit(self) -> None:
        """Facts go first, the quietest before the others, then lamps; a screen reader still gets all of it.

        What is due goes last. What stays is worked out first and shown then: showing a part makes the
        strip be laid out at once.
        """
        offers = self._owes and not self._visiting
        room = self.width() - EDGES - self.door.bare_width()
        for button, on in ((self.lock, not self.lock.isHidden()), (self.deliver, offers)):
            room -= button.sizeHint().width() + GAP if on else 0
        parts = {_HOST: self.door.host_width()}
        for key in self._lit:
            bare = self.lamps[key].width_with(fact=False)
            parts[key] = bare + GAP
            parts[f"{key} fact"] = self.lamps[key].width_with(fact=True) - bare
        for part in self._giving_way():
            if sum(parts.values()) <= room:
                break
            parts.pop(part, None)
        self._show(parts, room, offers=offers)

    def _giving_way(self) -> Iterable[str]:
        """In which order parts give way."""
        quiet = {key for key in self._lit if not self.lamps[key].lit.due}
        yield _HOST
        yield from (f"{key} fact" for key in (DELIVERED, CHANGES) if key in quiet)
        yield from quiet & {DELIVERED}
        yield from (f"{key} fact" for key in _FACTS if key in quiet - {LIST})
        yield from quiet & {KEY}
        yield from (f"{key} fact" for key in quiet & {LIST})
        yield from (key for key in _LAMPS if key in quiet)
        yield from (f"{key} fact" for key in _FACTS)
        yield from _LAMPS

    def _show(self, parts: dict[str, int], room: int, *, offers: bool) -> None:
        left = room - sum(width for part, width in parts.items() if not part.startswith(LIST)) - GAP
        self.door.show_host(shown=_HOST in parts)
        for key, lamp in self.lamps.items():
            lamp.abridge(short=f"{key} fact" not in parts, room=max(left, 0) if key == LIST else None)
            _show(lamp, on=key in parts)
        _show(self.deliver, on=offers)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """A rule below."""
        painter = QPainter(self)
        painter.fillRect(0, self.height() - 1, self.width(), 1, self._theme.color("rule"))
        painter.end()


def _show(part: QWidget, *, on: bool) -> None:
    if part.isHidden() is on:
        part.setVisible(on)
