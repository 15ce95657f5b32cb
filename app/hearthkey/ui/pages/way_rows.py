"""The ways out as ruled rows: icon, name, who can open it, button."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.kinds import DeviceKind, Kinds
from hearthkey.core.passes import Pass
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.pages import ways_out
from hearthkey.ui.pages.own_ways import OwnWay
from hearthkey.ui.pages.profile_choices import ProfileChoices
from hearthkey.ui.pages.ways_out import Way, WayOut
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.icons import IconLabel
from hearthkey.ui.theme.theme import Theme


class WayRow(QWidget):
    """One way out; the one that was taken lies on the wash, with a bar of ink."""

    HIGH, BAR = 62, 4

    def __init__(self, theme: Theme, way: Way, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.way = way
        self.taken = False
        self.title = Prose(theme, Role.DATE_STRONG, ways_out.title(way))
        self.occasion = Label(theme, Role.STATE, color="ink2", wrap=True)
        self.sentence = Prose(theme, Role.BODY, strong=Role.BODY_STRONG)
        self.button = Button(theme, ways_out.button(way))
        self._names = QWidget()
        names = QVBoxLayout(self._names)
        names.setContentsMargins(0, 0, 0, 0)
        names.setSpacing(0)
        names.addStretch(1)
        names.addWidget(self.title)
        names.addWidget(self.occasion)
        names.addStretch(1)
        row = QHBoxLayout(self)
        row.setContentsMargins(14, 6, 11, 6)
        row.setSpacing(14)
        row.addWidget(IconLabel(theme, "way-own" if isinstance(way, OwnWay) else f"way-{way.value}"))
        row.addWidget(self._names)
        row.addWidget(self.sentence, 1)
        row.addWidget(self.button, 0, Qt.AlignmentFlag.AlignVCenter)
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self._names.setFixedWidth(self._theme.px(120))
        self.setMinimumHeight(self._theme.px(self.HIGH))

    def align(self, wide: int) -> None:
        """Make the button as wide as those above and below it."""
        self.button.setFixedWidth(wide)

    def show_pass(self, one: Pass, kind: DeviceKind, codes: int) -> None:
        """Say who can open it."""
        self.occasion.setText(ways_out.occasion(self.way, one))
        self.sentence.speak(ways_out.sentence(self.way, one, kind, codes), stressed=ways_out.stressed(self.way))
        self.button.setAccessibleDescription(self.sentence.text())

    def take(self, *, taken: bool) -> None:
        """Be the way that was taken."""
        self.taken = taken
        self.update()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the wash and the bar of the one that was taken."""
        if self.taken:
            painter = QPainter(self)
            painter.fillRect(self.rect(), self._theme.color("sel"))
            painter.fillRect(0, 0, self.BAR, self.height(), self._theme.color("ink"))
            painter.end()


class WayRows(QWidget):
    """All ways out; those of the householder's own come last.

    Signals:
        wanted: a WayOut or an OwnWay.
    """

    wanted = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._kinds: Kinds | None = None
        self.rows = {way: WayRow(theme, way) for way in WayOut}
        self.own: dict[OwnWay, WayRow] = {}
        self.choices = ProfileChoices(theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(Rule(theme, color="ink"))
        self._rules = {way: Rule(theme) for way in list(self.rows)[1:]}
        for way, row in self.rows.items():
            if way in self._rules:
                column.addWidget(self._rules[way])
            column.addWidget(row)
            if way is WayOut.PROFILE:
                column.addWidget(self.choices)
            self._answer(row)
        self._more = QVBoxLayout()
        self._more.setSpacing(0)
        column.addLayout(self._more)
        column.addWidget(Rule(theme, color="ink"))
        theme.changed.connect(self._align)
        self._align()

    def _answer(self, row: WayRow) -> None:
        row.button.clicked.connect(lambda _on=False, taken=row.way: self.wanted.emit(taken))

    def all(self) -> list[WayRow]:
        """All rows, from top to bottom."""
        return [*self.rows.values(), *self.own.values()]

    def stops(self) -> list[QWidget]:
        """What the Tab key stops at, from top to bottom."""
        found: list[QWidget] = []
        for row in self.all():
            found += [row.button, *(self.choices.stops() if row.way is WayOut.PROFILE else ())]
        return found

    def row(self, way: Way) -> WayRow | None:
        """The row of a way, where it still has one."""
        return next((row for row in self.all() if row.way == way), None)

    def offer(self, own: Sequence[OwnWay]) -> None:
        """Offer these of the householder's own; where they are the same as before, nothing is made anew."""
        if list(own) == list(self.own):
            return
        empty(self._more)
        self.own = {way: WayRow(self._theme, way) for way in own}
        for row in self.own.values():
            self._more.addWidget(Rule(self._theme))
            self._more.addWidget(row)
            self._answer(row)
        self._align()

    def _align(self) -> None:
        wide = max(row.button.sizeHint().width() for row in self.all())
        for row in self.all():
            row.align(wide)

    def know(self, kinds: Kinds) -> None:
        """Learn what there is to say of each kind of device."""
        self._kinds = kinds

    def show_pass(self, one: Pass, codes: int = 0) -> None:
        """Say for one pass who can open what; nothing before the kinds are known."""
        if self._kinds is None:
            return
        kind = self._kinds.of(one.kind)
        for row in self.all():
            row.show_pass(one, kind, codes)
        able = ways_out.fitting(kind)
        for way, row in self.rows.items():
            row.setVisible(way in able)
            if way in self._rules:
                self._rules[way].setVisible(way in able)
        self.choices.setVisible(WayOut.PROFILE in able)

    def take(self, way: Way | None) -> None:
        """Mark the way that was taken, or none."""
        for row in self.all():
            row.take(taken=row.way == way)
