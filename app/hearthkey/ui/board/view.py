"""The board: the head of the sheet, the people that scroll, the house that always stands."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QPoint, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.passes import Pass
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui import entries as standing
from hearthkey.ui.announcing import announce
from hearthkey.ui.board.axis import Zoom
from hearthkey.ui.board.empty import Ghost, Question
from hearthkey.ui.board.header import Header
from hearthkey.ui.board.house import house_row
from hearthkey.ui.board.laying import Room, ruled
from hearthkey.ui.board.life import draft_row, pass_row, tr
from hearthkey.ui.board.menu import actions, build
from hearthkey.ui.board.model import BoardModel
from hearthkey.ui.board.names import Names
from hearthkey.ui.board.rows import Row, Step
from hearthkey.ui.board.ruling import CLOSE, COMFORTABLE, Ruling
from hearthkey.ui.board.search import matches, words_of
from hearthkey.ui.board.sheet import Sheet
from hearthkey.ui.entries import Draft, Entry, Fixture
from hearthkey.ui.sight import Sight, longest, sight
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class BoardView(QWidget):
    """The sheet with everything on it.

    Signals:
        picked: another row is selected; its Pass, or None.
        house_opened: a row of the house was opened: gateway, list or ca.
        zoomed: another part of time is shown; its Zoom.
    """

    picked = Signal(object)
    house_opened = Signal(str)
    zoomed = Signal(object)

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ways = ways
        self._snapshot: Sight | None = None
        self._draft: Draft | None = None
        self._compact = False
        self.zoom = Zoom.ALL
        self._names = Names(theme)
        self._longest: tuple[list[str], list[str]] = ([], [])
        self._matches: list[int] = []
        self.header = Header(theme, self)
        self.people = Sheet(theme, BoardModel(self), tr("People and their devices"), self)
        self.house = Sheet(theme, BoardModel(self), tr("The house"), self)
        self.question = Question(theme, ways, self.people)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.header)
        column.addWidget(self.people, 1)
        column.addWidget(self.house)
        self._connect()

    def _connect(self) -> None:
        self._theme.changed.connect(self._redress)
        self._ways.draft.connect(self._drafted)
        self.header.asked.connect(self._ways.days)
        for part in (self.header, self.people, self.house):
            part.zoomed.connect(lambda steps: self.show_time(self.zoom.stepped(steps)))
        for sheet, other in ((self.people, self.house), (self.house, self.people)):
            sheet.opened.connect(lambda row, sheet=sheet: self._open(sheet.rows.entries[row]))
            sheet.stepped.connect(lambda row, sheet=sheet: self._step(sheet.rows.entries[row], sheet.rows.row(row)))
            sheet.asked.connect(lambda row, place, sheet=sheet: self._ask(sheet.rows.entries[row], place))
            sheet.again.connect(self.find_next)
            sheet.selectionModel().selectionChanged.connect(
                lambda _now, _before, sheet=sheet, other=other: self._took(sheet, other)
            )
        self.people.left.connect(lambda step: self._cross(self.house, 0) if step > 0 else None)
        self.house.left.connect(
            lambda step: self._cross(self.people, len(self.people.rows.entries) - 1) if step < 0 else None
        )

    # What is shown

    def show(self, snapshot: Snapshot | None = None) -> None:
        """Show a look at the household; without one, show the widget, as Qt means it."""
        if snapshot is None:
            super().show()
            return
        self._snapshot = sight(snapshot)
        self._refresh()

    def _refresh(self) -> None:
        snapshot = self._snapshot
        if snapshot is None:
            return
        people, draft = snapshot.rows, self._draft
        if draft is not None:
            people = tuple(standing.with_draft(people, draft, snapshot.at))
        typed = () if draft is None else ((draft.person, draft.device),)
        house = standing.house(snapshot, tr("The house"))
        self.house.host = "" if snapshot.household is None else snapshot.household.gateway_host
        self._longest = (
            longest([*snapshot.names[0], *(person for person, _ in typed), tr("The house")]),
            longest([*snapshot.names[1], *(device for _, device in typed), tr("revocation list")]),
        )
        self._matches = []
        self.people.rows.show(people, self._work)
        self.house.rows.show(house, self._work)
        self._lay()

    def _work(self, entry: Entry) -> Row:
        snapshot = self._snapshot
        if snapshot is None:
            raise LookupError(entry.key)
        source = entry.source
        if isinstance(source, Draft):
            return draft_row(source, snapshot.at)
        if isinstance(source, Fixture):
            return house_row(source.key, snapshot)
        followed = source.serial in snapshot.followed
        return pass_row(source, snapshot.at, read_only=snapshot.read_only, followed=followed)

    def _drafted(self, person: str, device: str, end: object) -> None:
        draft = None
        if person or device:
            ends = end if isinstance(end, datetime) else None
            draft = Draft(person or tr("new person"), device or tr("new device"), ends)
        if draft == self._draft:
            return
        self._draft = draft
        self._refresh()
        number = self.people.rows.number_of(standing.DRAFT_KEY)
        if number >= 0:
            self.people.scrollTo(self.people.rows.index(number, self.people.anchor()))

    # How it lies

    def set_compact(self, *, compact: bool) -> None:
        """Leave the next step to the row's menu, because something stands beside the board."""
        if compact != self._compact:
            self._compact = compact
            self._lay()

    def show_time(self, zoom: Zoom) -> None:
        """Show so much of time; today stays where it is."""
        if zoom is not self.zoom:
            self.zoom = zoom
            self._lay()
            self.zoomed.emit(zoom)

    def ruled(self, base: int) -> Ruling | None:
        """The sheet ruled for the present width.

        Args:
            base: height of a row of people, pixels at normal type.
        """
        if self._snapshot is None:
            return None
        room = Room(self.width(), self._longest, compact=self._compact)
        return ruled(self._theme, self._names, self._snapshot, room, self.zoom, base)

    def _lay(self) -> None:
        ruling = self.ruled(COMFORTABLE)
        if ruling is None:
            return
        self.header.setFixedHeight(self.header.sizeHint().height())
        self.header.rule(ruling)
        self.house.rule(ruling)
        room = self.height() - self.header.height()
        tall = sum(ruling.box(entry, number).height for number, entry in enumerate(self.house.rows.entries))
        tall = min(tall, max(round(0.4 * room), self._theme.px(40)))
        self.house.setFixedHeight(tall)
        self.people.rule(self._fitting(ruling, room - tall))
        self._lay_empty(ruling)

    def _fitting(self, ruling: Ruling, room: int) -> Ruling:
        """Rows as high as is comfortable; a little closer where that saves a scroll bar."""
        entries = self.people.rows.entries
        if not room // self._theme.px(COMFORTABLE) < len(entries) + 4 or len(entries) * self._theme.px(CLOSE) > room:
            return ruling
        close = self.ruled(CLOSE)

        def tall(one: Ruling) -> int:
            return sum(one.box(entry, number).height for number, entry in enumerate(entries))

        return close if close is not None and tall(ruling) > room >= tall(close) else ruling

    def _lay_empty(self, ruling: Ruling) -> None:
        snapshot = self._snapshot
        empty = not self.people.rows.entries and snapshot is not None and snapshot.authority is not None
        self.question.setVisible(empty)
        self.setFocusProxy(self.question.button if empty else self.people)
        self.people.ghost = None
        if empty and snapshot is not None:
            top = self._theme.px(12)
            self.question.lie(ruling, top)
            below = top + self.question.height() if ruling.stacked else self._theme.px(14)
            self.people.ghost = Ghost(snapshot.at, below)
        self.people.viewport().update()

    def _redress(self) -> None:
        self._names.forget()
        self._lay()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Rule the sheet anew."""
        super().resizeEvent(event)
        self._lay()

    # Selection

    def selected(self) -> Pass | None:
        """The pass whose row is selected, or has the focus where none is."""
        row = self.people.chosen()
        if row < 0 and self.people.hasFocus():
            row = self.people.currentIndex().row()
        source = self.people.rows.entries[row].source if row >= 0 else None
        return source if isinstance(source, Pass) else None

    def select(self, identity: str) -> None:
        """Select the row of a device by its identity, or of a pass by its serial; unknown ones change nothing."""
        for number, entry in enumerate(self.people.rows.entries):
            source = entry.source
            if isinstance(source, Pass) and identity in {source.identity, source.serial}:
                self.people.go(number)
                return

    def _took(self, sheet: Sheet, other: Sheet) -> None:
        if sheet.selectionModel().hasSelection():
            other.forget()
        self.picked.emit(self.selected())

    def _cross(self, sheet: Sheet, row: int) -> None:
        if sheet.rows.entries:
            sheet.go(row)
            sheet.setFocus()

    # Find

    def find(self, text: str) -> int:  # type: ignore[override]  # Qt's asks for a window by its number
        """Mark the letters in all names, go to the first match, and say how many there are."""
        words = words_of(text)
        self.people.wanted = words
        self._matches = matches(words, self.people.rows.haystack())
        self.people.viewport().update()
        if self._matches:
            self.people.go(self._matches[0])
        return len(self._matches)

    def find_next(self) -> None:
        """Go to the next match, and from the last to the first."""
        if self.people.wanted and not self._matches:
            self._matches = matches(self.people.wanted, self.people.rows.haystack())
        if not self._matches:
            return
        here = self.people.chosen()
        target = next((number for number in self._matches if number > here), self._matches[0])
        self.people.go(target)
        place = self._matches.index(target) + 1
        told = tr("{place} of {count}: {row}").format(
            place=place, count=len(self._matches), row=self.people.rows.row(target).spoken
        )
        announce(self.people, told)

    # What a row leads to

    def _open(self, entry: Entry) -> None:
        if isinstance(entry.source, Pass):
            self._ways.device.emit(entry.source.identity)
        elif isinstance(entry.source, Fixture):
            self.house_opened.emit(entry.source.key)

    def _step(self, entry: Entry, row: Row) -> None:
        if isinstance(entry.source, Pass) and row.step is Step.HAND_OVER:
            self._ways.hand_over.emit(entry.source.serial)
        elif isinstance(entry.source, Pass) and row.step is Step.LET_IN:
            self._ways.let_in.emit(entry.source.identity)
        elif isinstance(entry.source, Pass) and row.step is Step.PROVE:
            self._ways.prove.emit(entry.source.serial)
        elif isinstance(entry.source, Pass) and row.step is Step.RENEW:
            self._ways.renew.emit(entry.source.identity)

    def _ask(self, entry: Entry, place: QPoint) -> None:
        snapshot = self._snapshot
        if isinstance(entry.source, Pass) and snapshot is not None:
            self._menu = build(actions(entry.source, snapshot.at, self._ways, read_only=snapshot.read_only), self)
            self._menu.popup(place)
