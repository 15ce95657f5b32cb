"""Check the way in: the path that a packet takes from outside, walked while one looks on, and what it showed last."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import Cancelled, HearthkeyError
from hearthkey.core.phrases import Style
from hearthkey.core.reach.chain import Chain, LastChecks, Link, Place, Side
from hearthkey.core.sentences import way_in as words
from hearthkey.services.reaching import CheckRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.controls.tick import Tick
from hearthkey.ui.dates import day, written
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.way_in_path import WayInPath
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class WayInPage(Page):
    """Nothing here runs by itself: a handful of small packets goes out when the householder says so."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("The way in"), parent=parent)
        self._errands = errands
        self._last = LastChecks()
        self._places: tuple[Place, ...] = ()
        self._known: dict[Place, Link] = {}
        self.running = False
        self.voice = Voice(theme)
        self.side = Prose(theme, Role.STATE, color="ink2")
        self.which = Choice(
            theme,
            self.tr("Which check"),
            [(Side.OUTSIDE.value, self.tr("From outside")), (Side.INSIDE.value, self.tr("From inside"))],
        )
        self.path = WayInPath(theme)
        self.router = Line(theme)
        self.at_home = Tick(
            theme,
            self.tr("This laptop is at home"),
            self.tr("Say so where its address does not tell, for instance behind a router of its own."),
        )
        self._known_before = QWidget()
        self.before = Fold(theme, self.tr("What you know"), self._known_before)
        self.caution = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.commit = Button(theme, self.tr("&Check the way in"), kind=Kind.COMMIT, height=34)
        self.others = (
            Button(theme, self.tr("Network &plan"), height=30),
            Button(theme, self.tr("&Forwarding sheet"), height=30),
            Button(theme, self.tr("&Moving day"), height=30),
        )
        self._build()
        self._connect(ways)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.put(self.voice, self.side)
        self.body.addWidget(self.which, 0, Qt.AlignmentFlag.AlignLeft)
        self.put(self.path)
        asked = QVBoxLayout(self._known_before)
        asked.setContentsMargins(0, 0, 0, 0)
        asked.setSpacing(6)
        asked.addWidget(Labelled(self.theme, self.tr("&Internet address that the router’s pages show"), self.router))
        asked.addWidget(self.at_home)
        self.body.addWidget(self.before)
        others = QHBoxLayout()
        others.setSpacing(4)
        for button in self.others:
            others.addWidget(button)
        others.addStretch(1)
        self.body.addLayout(others)
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.trouble, self.caution):
            self.foot.addLayout(inset(part))
        self.trouble.hide()
        self.caution.speak(
            self.tr(
                "A few small packets go to the gateway from this laptop. "
                "At your own web front, one device whose bundle waits here is tried."
            )
        )
        row = QHBoxLayout()
        row.addWidget(self.commit)
        row.addStretch(1)
        self.foot.addLayout(row)

    def _connect(self, ways: Ways) -> None:
        self.commit.clicked.connect(self.check)
        self.which.chosen.connect(lambda _key: self._show_last())
        self._errands.check_planned.connect(self._planned)
        self._errands.link_known.connect(self._link)
        for button, way in zip(self.others, (ways.network_plan, ways.forwarding, ways.moving), strict=True):
            button.clicked.connect(way)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what came of the last checks."""
        self._last = snapshot.way_in
        if not self.running:
            self._show_last()

    def show_chain(self, chain: Chain) -> None:
        """Show a whole check."""
        self.which.take(Side.INSIDE.value if chain.side is Side.INSIDE else Side.OUTSIDE.value)
        self._tell(chain)

    def _show_last(self) -> None:
        inside = self.which.value() == Side.INSIDE.value
        chain = self._last.inside if inside else self._last.outside
        if chain is not None:
            self._tell(chain)
            return
        self.voice.speak(
            self.tr("Nobody has checked from inside yet.")
            if inside
            else self.tr("Nobody has checked from outside yet.")
        )
        self.side.speak(
            self.tr("At home it shows whether the gateway answers at all.")
            if inside
            else self.tr("Take the laptop to a phone’s mobile data, or to another house.")
        )
        self.path.show_links((), {}, live=False)

    def _tell(self, chain: Chain) -> None:
        self.voice.speak(said(words.headline(chain)))
        made = chain.made.astimezone()
        told = self.tr("{side} That was on {day} at {time}.")
        self.side.speak(told.format(side=said(words.side(chain)), day=day(made), time=written(made, Style.TIME)))
        self.path.show_links([one.place for one in chain.links], {one.place: one for one in chain.links}, live=False)

    # While it runs

    def check(self) -> None:
        """Begin a check, or end the one that is under way."""
        self.trouble.hide()
        if self.running:
            self._errands.cancel_check()
            return
        self._run(running=True)
        request = CheckRequest(router=self.router.text().strip() or None, at_home=self.at_home.isChecked())
        self._errands.check_way_in(request, self, self._over, self._failed)

    def _run(self, *, running: bool) -> None:
        self.running = running
        self._places, self._known = (), {}
        self.commit.say(self.tr("&Stop") if running else self.tr("&Check the way in"))
        self.which.setEnabled(not running)

    def _planned(self, places: tuple[Place, ...]) -> None:
        if self.running:
            self._places = places
            self.voice.speak(self.tr("On the way …"))
            self.side.speak("")
            self.path.show_links(places, {}, live=True)

    def _link(self, link: Link) -> None:
        if self.running:
            self._known[link.place] = link
            self.path.show_links(self._places, self._known, live=True)
            announce(self.path, f"{said(words.link(link).title)}: {said(words.link(link).verdict)}")

    def _over(self, chain: Chain) -> None:
        self._run(running=False)
        self.show_chain(chain)
        announce(self.voice, self.voice.text())

    def _failed(self, error: HearthkeyError) -> None:
        self._run(running=False)
        self._show_last()
        if isinstance(error, Cancelled):
            return
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self.trouble.hide()
