"""The network plan: what can be worked out about the way in before anything is measured."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.reach.packets import Packet
from hearthkey.core.reach.plan import NetworkPlan
from hearthkey.core.sentences import reach as words
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.services.network_planning import PlanRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 250
"""Milliseconds without a key before what was typed is looked at."""


class NetworkPage(Page):
    """Says what the settings mean for whoever is away; nothing here changes any, and nothing leaves this computer."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Network plan"), parent=parent)
        self._errands = errands
        self.plan: NetworkPlan | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.router, self.outer, self.upload, self.board = (Line(theme) for _ in range(4))
        self.questions = (
            Labelled(theme, self.tr("&Internet address that the router’s pages show"), self.router),
            Labelled(
                theme,
                self.tr("&Largest packet of the line, octets"),
                self.outer,
                hint=self.tr("1500 on most lines, 1492 behind PPPoE. Empty: as the gateway pack has it."),
            ),
            Labelled(theme, self.tr("What the line &sends, Mbit/s"), self.upload),
            Labelled(theme, self.tr("What the &gateway encrypts, Mbit/s"), self.board),
        )
        self._asked = QWidget()
        self.known = Fold(theme, self.tr("What you know of router and line"), self._asked)
        self.told = QVBoxLayout()
        self.told.setSpacing(6)
        self.widths = QWidget()
        self.table = Fold(theme, self.tr("Every width"), self.widths)
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.settle = Button(theme, self.tr("Change the se&ttings"), height=30)
        self.sheet = Button(theme, self.tr("&Forwarding sheet"), height=30)
        self._build()
        self.settle.clicked.connect(ways.household)
        self.sheet.clicked.connect(ways.forwarding)
        for line in self.lines():
            line.textEdited.connect(lambda _text: self._pause.start())
            line.returnPressed.connect(self.look)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def lines(self) -> tuple[Line, ...]:
        """What can be typed, in order."""
        return (self.router, self.outer, self.upload, self.board)

    def _build(self) -> None:
        asked = QVBoxLayout(self._asked)
        asked.setContentsMargins(0, 0, 0, 0)
        asked.setSpacing(6)
        for question in self.questions:
            asked.addWidget(question)
        self.body.addWidget(self.known)
        self.put(self.trouble)
        self.trouble.hide()
        self.body.addLayout(self.told)
        self.body.addWidget(self.table)
        self.body.addStretch(1)
        QGridLayout(self.widths).setHorizontalSpacing(14)
        self.show_foot()
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.settle)
        row.addWidget(self.sheet)
        row.addStretch(1)
        self.foot.addLayout(row)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Work it out anew, for settings and devices may be others now."""
        if snapshot.household is not None:
            self.look()

    def look(self) -> None:
        """Have it worked out with what was typed."""
        self._pause.stop()
        typed = tuple(line.text() for line in self.lines())
        try:
            request = self._request()
        except Refused as error:
            self._failed(error)
            return
        self._errands.plan_network(request, self, partial(self._planned, typed), self._failed)

    def _request(self) -> PlanRequest:
        upload, board = _kilobits(self.upload.text()), _kilobits(self.board.text())
        return PlanRequest(
            outer_mtu=_octets(self.outer.text()), router=self.router.text().strip() or None, upload=upload, board=board
        )

    def _planned(self, typed: tuple[str, ...], plan: NetworkPlan) -> None:
        if typed == tuple(line.text() for line in self.lines()):
            self.trouble.hide()
            self.show_plan(plan)

    def show_plan(self, plan: NetworkPlan) -> None:
        """Show a plan, part by part."""
        if plan == self.plan:
            return
        self.plan = plan
        empty(self.told)
        self._part(self.tr("The way in"), words.way_in(plan))
        self._part(self.tr("Away from home"), (one for placed in plan.placed for one in words.subnet(placed)))
        self._part(self.tr("Quiet subnets"), (one for told in plan.proposals for one in words.proposal(told)))
        self._part(self.tr("Through the tunnel"), words.traffic(plan))
        self._part(self.tr("What to expect"), words.throughput(plan.expected))
        self._part(self.tr("Room in a packet"), words.room(plan))
        self._tabulate(plan.packets)

    def _part(self, title: str, sentences: Iterable[Sentence]) -> None:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 8, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(Prose(self.theme, Role.BODY_STRONG, title)))
        for one in sentences:
            column.addLayout(inset(Prose(self.theme, Role.BODY, said(one))))
        self.told.addWidget(part)

    def _tabulate(self, packets: tuple[Packet, ...]) -> None:
        """Octets that a packet inside may have; a row for each width outside and cipher, a column for each way in."""
        grid = self.widths.layout()
        if not isinstance(grid, QGridLayout):
            return
        empty(grid)
        heads = (self.tr("outside"), self.tr("IPv4"), self.tr("with NAT"), self.tr("IPv6"), self.tr("with NAT"))
        for column, head in enumerate(heads):
            grid.addWidget(Label(self.theme, Role.SMALL, head, color="ink2"), 0, column, _RIGHT)
        rows: dict[tuple[int, str], list[Packet]] = {}
        for one in packets:
            rows.setdefault((one.outer, words.cipher(one)), []).append(one)
        narrowest: dict[int, list[Packet]] = {}
        for (outer, _), row in rows.items():
            kept = narrowest.get(outer)
            narrowest[outer] = row if kept is None or row[0].inner < kept[0].inner else kept
        for number, (outer, row) in enumerate(narrowest.items(), 1):
            for column, value in enumerate((outer, *(one.inner for one in row))):
                grid.addWidget(Label(self.theme, Role.STATE, str(value)), number, column, _RIGHT)
        rows_told = [(str(outer), *(str(one.inner) for one in row)) for outer, row in narrowest.items()]
        self.widths.setAccessibleDescription("; ".join(", ".join(row) for row in rows_told))

    def _failed(self, error: HearthkeyError) -> None:
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())


_RIGHT = Qt.AlignmentFlag.AlignRight


def _kilobits(text: str) -> int | None:
    """Mbit/s as typed, with a comma or a point; kbit/s as the plan wants them."""
    if not text.strip():
        return None
    try:
        return round(float(text.strip().replace(",", ".")) * 1000)
    except (ValueError, OverflowError):
        raise Refused("rate-unreadable", text=text[:40]) from None


def _octets(text: str) -> int | None:
    if not text.strip():
        return None
    if not text.strip().isascii() or not text.strip().isdigit() or len(text.strip()) > 6:
        raise Refused("outer-mtu-unreadable", text=text[:40])
    return int(text)
