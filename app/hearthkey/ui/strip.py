"""The strip under the headline: the gateway and the household's own key, each a sign and a word."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.outlook import DUE
from hearthkey.core.sentences.board import short_day
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

GAP = 6
EDGES = 80
"""Pixels that margins and the space after the host take, with a little air."""
_INSET = 14


class Lamp(QWidget):
    """A sign, its word, and the fact that explains it."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._sign = SignLabel(theme, Sign.UNKNOWN, ground="desk")
        self._word = Label(theme, Role.BODY)
        self._fact = Label(theme, Role.BODY, color="ink2")
        row = QHBoxLayout(self)
        row.setContentsMargins(_INSET, 0, _INSET, 0)
        row.setSpacing(GAP)
        for widget in (self._sign, self._word, self._fact):
            row.addWidget(widget)
        theme.changed.connect(self.update)

    def light(self, sign: Sign, word: str, fact: str) -> None:
        """Show a state; what is due is red and strong."""
        self._sign.show_sign(sign)
        self._word.setText(word)
        self._word.recolor("act" if sign is Sign.DUE else "ink")
        self._fact.setText(fact)
        self.setToolTip(f"{word} {fact}".strip())
        self.setAccessibleName(f"{word} {fact}".strip())

    def width_with(self, *, fact: bool) -> int:
        """How wide the lamp is with its fact, or without."""
        parts = [self._sign, self._word, *([self._fact] if fact and self._fact.text() else [])]
        return sum(one.sizeHint().width() + GAP for one in parts) + 2 * _INSET - GAP

    def abridge(self, *, short: bool) -> None:
        """Leave the fact out where there is no room for it, or show it again."""
        _show(self._fact, on=not short and bool(self._fact.text()))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """A hairline at the left parts it from its neighbour."""
        painter = QPainter(self)
        painter.fillRect(QRectF(0, 9, 1, self.height() - 18), self._theme.color("hair"))
        painter.end()


class Strip(QWidget):
    """One row, always true: what is not known says so."""

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._name = Label(theme, Role.BODY_STRONG, self.tr("Gateway"))
        self._host = Label(theme, Role.BODY, color="ink2")
        self._certificate = Lamp(theme)
        self._list = Lamp(theme)
        self._key = Lamp(theme)
        self._lock = Button(theme, self.tr("Lock"), height=26)
        self._lock.clicked.connect(ways.lock)
        row = QHBoxLayout(self)
        row.setContentsMargins(20, 0, 17, 0)
        row.setSpacing(6)
        row.addWidget(self._name)
        row.addWidget(self._host)
        row.addSpacing(20)
        for lamp in (self._certificate, self._list, self._key):
            row.addWidget(lamp)
        row.addWidget(self._lock)
        row.addStretch(1)
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

    def _fit(self) -> None:
        """Facts go first, the longest first, then the host, then whole lamps; a screen reader still gets all of it.

        What stays is worked out first and shown then: showing a part makes the strip be laid out at once.
        """
        host = self._host.sizeHint().width() + GAP
        room = self.width() - self._name.sizeHint().width() - EDGES
        room -= 0 if self._lock.isHidden() else self._lock.sizeHint().width() + GAP
        whole = {lamp: lamp.width_with(fact=True) + GAP for lamp in (self._list, self._certificate, self._key)}
        bare = {lamp: lamp.width_with(fact=False) + GAP for lamp in whole}
        told = dict(whole)
        for lamp in whole:
            if host + sum(told.values()) > room:
                told[lamp] = bare[lamp]
        with_host = host + sum(told.values()) <= room
        for lamp in (self._certificate, self._key):
            if not with_host and sum(told.values()) > room:
                told.pop(lamp)
        for lamp, width in whole.items():
            lamp.abridge(short=told.get(lamp) != width)
            _show(lamp, on=lamp in told)
        _show(self._host, on=with_host)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is known."""
        gateway, newest = snapshot.gateway, snapshot.newest_list
        if gateway is None or newest is None:
            return
        self._host.setText(gateway.host)
        ends = gateway.not_after - snapshot.at
        self._certificate.light(
            Sign.DUE if ends <= DUE else Sign.IN_USE,
            self.tr("certificate"),
            self.tr("until {day}").format(day=short_day(gateway.not_after)),
        )
        self._list.light(
            Sign.DUE if newest.next_update - snapshot.at <= DUE else Sign.UNKNOWN,
            self.tr("list no. {number}").format(number=newest.number),
            self.tr("made here; what the gateway holds is not known"),
        )
        self._show_key(snapshot)
        self._fit()

    def _show_key(self, snapshot: Snapshot) -> None:
        self._lock.setVisible(not snapshot.locked)
        if snapshot.door is not Door.READY:
            self._key.light(Sign.UNKNOWN, self.tr("CA key"), self.tr("the keyring did not give it"))
        elif snapshot.locked:
            self._key.light(Sign.WAITING, self.tr("CA key"), self.tr("locked"))
        else:
            self._key.light(Sign.IN_USE, self.tr("CA key"), self.tr("open"))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """A rule below."""
        painter = QPainter(self)
        painter.fillRect(0, self.height() - 1, self.width(), 1, self._theme.color("rule"))
        painter.end()


def _show(part: QWidget, *, on: bool) -> None:
    if part.isHidden() is on:
        part.setVisible(on)
