"""Leads from one panel to the next: what each request of a panel does to the window."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication, QWidget

from hearthkey.core.delivery import Delivered
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import gateway as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.about_one import AboutOne
from hearthkey.ui.actions import Actions
from hearthkey.ui.coming_back import ComingBack
from hearthkey.ui.courier import Courier
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer_pages import DrawerPages
from hearthkey.ui.following import Following
from hearthkey.ui.going_back import GoingBack
from hearthkey.ui.mounts import Mounts
from hearthkey.ui.preferences import Preferences
from hearthkey.ui.session_lock import SessionLock
from hearthkey.ui.text import caution, mended, said, spoken
from hearthkey.ui.to_the_desk import ToTheDesk
from hearthkey.ui.window import Window
from hearthkey.ui.zooming import Zooming

_LOOK_AGAIN = 20_000
"""Milliseconds between two looks at whether the household has locked itself."""


class Leading(QObject):
    """Connects ways, errands and keys to the panels of one window."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self._without = False
        self._shown = False
        errands, ways = window.outside.errands, window.ways
        chosen = window.outside.memory.preferences()
        self.pages = DrawerPages(window, chosen, self.prefer)
        self.actions = Actions(ways, window.menu, window)
        self.courier = Courier(errands, self)
        self.zooming = Zooming(window, self.actions.days)
        self.going_back = GoingBack(errands, window.footer, self)
        self.about = AboutOne(window, self.pages, self.actions, self._open)
        self.following = Following(window, self.pages, self.actions, self._open)
        self.to_the_desk = ToTheDesk(window)
        self.coming_back = ComingBack(window, self.pages)
        self._connect_ways()
        self._connect_keys()
        errands.seen.connect(self.show_snapshot)
        errands.done.connect(self._done)
        errands.trouble.connect(self._trouble)
        errands.step.connect(window.footer.step)
        errands.visit_began.connect(lambda: window.strip.show_visit(under_way=True))
        for over in (errands.visited, errands.visit_failed):
            over.connect(lambda _result: window.strip.show_visit(under_way=False))
        self.courier.delivered.connect(self._delivered)
        self.courier.failed.connect(self._not_delivered)
        errands.lock_after(timedelta(minutes=chosen.idle_minutes))
        timer = QTimer(self, interval=_LOOK_AGAIN)
        timer.timeout.connect(errands.look_at_lock)
        timer.start()
        window.leaving.connect(timer.stop)
        self.mounts = Mounts(self)
        self.mounts.changed.connect(self.pages.device.ask_about_copies)
        window.leaving.connect(self.mounts.close)

    def _connect_ways(self) -> None:
        window, ways, pages = self._window, self._window.ways, self.pages
        ways.device.connect(self._device)
        ways.new_device.connect(self._new_device)
        ways.replace_device.connect(self._replace)
        ways.hand_over.connect(self._hand_over)
        ways.hand_over_by.connect(self._hand_over)
        ways.copies.connect(self._copies)
        ways.find.connect(window.top.begin_find)
        ways.deliver.connect(self._deliver)
        ways.help.connect(self._help)
        pages.wanted.connect(self._open)
        ways.lock.connect(window.outside.errands.lock)
        SessionLock(self).locked.connect(ways.lock)
        ways.stop.connect(lambda identity: self._act(identity, pages.device.begin_stop))
        ways.let_in.connect(lambda identity: self._act(identity, pages.device.begin_let_in))
        ways.revoke.connect(lambda identity: self._act(identity, pages.device.begin_revoke))
        ways.back.connect(self.back)
        ways.closed.connect(window.board.setFocus)
        window.board.house_opened.connect(self._house)
        window.hand_over.told.connect(window.footer.say)
        window.paper.told.connect(window.footer.say)
        window.hand_over.folder_chosen.connect(window.outside.memory.keep_folder)
        pages.template.folder_chosen.connect(window.outside.memory.keep_folder)

    def _connect_keys(self) -> None:
        window, actions = self._window, self.actions
        window.top.field.wanted.connect(self._find)
        window.top.field.onward.connect(window.board.find_next)
        actions.next_region.connect(lambda: self._walk(1))
        actions.previous_region.connect(lambda: self._walk(-1))
        actions.undo.connect(self.going_back.undo)
        actions.redo.connect(self.going_back.redo)
        actions.hand_over.connect(self._hand_over_selected)
        actions.leave.connect(window.close)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is; which page that takes is decided here and nowhere else."""
        window = self._window
        for panel in (window.top, window.headline, window.strip):
            panel.show_snapshot(snapshot)
        window.board.show(snapshot)
        self.actions.allow(snapshot)
        window.footer.diary.setVisible(snapshot.household is not None)
        name = "Hearthkey" if snapshot.household is None else snapshot.household.certified_name
        window.setWindowTitle(name)
        page = window.pages.currentWidget()
        if snapshot.household is None:
            if page is not window.founding and not self.coming_back.keeps_the_window:
                window.turn_to(window.founding)
                window.founding.begin()
        elif window.closed.needed(snapshot) and not self._without:
            window.closed.tell(snapshot)
            window.turn_to(window.closed)
        elif page in {window.founding, window.closed} or not self._shown:
            self._to_the_board()
        self._shown = True

    def _to_the_board(self) -> None:
        self._window.turn_to(self._window.sheet)
        self._window.board.setFocus()

    def _done(self, changes: Changes) -> None:
        said = " ".join([spoken(changes.sentence), *(caution(one) for one in changes.cautions)])
        self._window.footer.say(said, self.going_back.offered())

    def _trouble(self, error: HearthkeyError) -> None:
        self._window.footer.say(mended(error))
        if self._window.outside.errands.last is None:
            self._window.closed.tell_trouble(error)
            self._window.turn_to(self._window.closed)

    def _delivered(self, done: Delivered) -> None:
        self._window.footer.say(said(words.delivered(done)))

    def _not_delivered(self, error: HearthkeyError) -> None:
        if self._window.drawer.page() is not self.pages.gateway and not self._window.lost.isVisible():
            self._window.footer.say(mended(error))

    def prefer(self, chosen: Preferences) -> None:
        """Put preferences into effect, and remember them."""
        self._window.outside.memory.keep(chosen)
        self._window.outside.errands.lock_after(timedelta(minutes=chosen.idle_minutes))
        self._window.theme.choose(chosen.theme, chosen.scale)
        self._window.make_room()

    # Where clicks and keys lead

    def _open(self, page: Page) -> None:
        window = self._window
        if (
            window.pages.currentWidget() in {window.hand_over, window.paper, window.closed}
            or self.coming_back.gives_way
        ):
            self._without = self._without or window.pages.currentWidget() is window.closed
            window.turn_to(window.sheet)
        if window.pages.currentWidget() is window.sheet:
            window.drawer.open(page)

    def _house(self, row: str) -> None:
        self._open(self.pages.gateway if row == "gateway" else self.pages.household)

    def _deliver(self) -> None:
        self._open(self.pages.gateway)
        self.pages.gateway.visit.deliver()

    def _device(self, identity: str) -> None:
        self.pages.device.show_device(identity)
        self._open(self.pages.device)

    def _copies(self, identity: str) -> None:
        self.pages.copies.show_device(identity)
        self._open(self.pages.copies)

    def _act(self, identity: str, begin: Callable[[], None]) -> None:
        self._device(identity)
        begin()

    def _new_device(self, person: str) -> None:
        self.pages.enrol.start(person)
        self._open(self.pages.enrol)

    def _replace(self, identity: str) -> None:
        self.pages.enrol.replace(identity)
        self._open(self.pages.enrol)

    def _help(self, spot: str) -> None:
        self.pages.help.show_spot(spot or self._spot())
        self._open(self.pages.help)

    def _spot(self) -> str:
        """Which help belongs to what is open."""
        if self._window.lost.isVisible():
            return "lost"
        if self._window.pages.currentWidget() is self._window.hand_over:
            return "hand-over"
        return self.coming_back.spot() or self.pages.spot(self._window.drawer.page())

    def _hand_over(self, serial: str, way: str = "") -> None:
        self._window.drawer.shut()
        self._window.turn_to(self._window.hand_over)
        self._window.hand_over.open(serial, way)

    def _hand_over_selected(self) -> None:
        one = self._window.board.selected()
        if one is not None and one.key_is_here:
            self._hand_over(one.serial)

    def back(self) -> None:
        """Close what lies over the board, the last first."""
        window = self._window
        if window.lost.isVisible():
            window.lost.dismiss()
        elif window.pages.currentWidget() is window.closed:
            self._without = True
            self._to_the_board()
        elif window.pages.currentWidget() is window.hand_over:
            window.hand_over.leaving.leave()
            self._to_the_board()
        elif window.pages.currentWidget() is window.paper:
            self._to_the_board()
        elif window.drawer.is_open:
            window.drawer.shut()

    def _find(self, text: str) -> None:
        self._window.board.find(text)
        if text:
            self._window.sheet.reveal(self._window.board.people)

    def _walk(self, step: int) -> None:
        """F6: into the next part of the window that can take the focus."""
        regions = self._window.regions()
        focus = QApplication.focusWidget()
        here = next((number for number, one in enumerate(regions) if one is focus or _within(one, focus)), -1)
        for distance in range(1, len(regions) + 1):
            wanted = first_in(regions[(here + step * distance) % len(regions)])
            if wanted is not None:
                wanted.setFocus()
                self._window.sheet.reveal(wanted)
                return


def _within(region: QWidget, focus: QWidget | None) -> bool:
    return focus is not None and region.isAncestorOf(focus)


def first_in(region: QWidget) -> QWidget | None:
    """The first thing in a region that takes the focus."""
    if not region.isVisible():
        return None
    proxy = region.focusProxy()
    if proxy is not None and proxy.isVisible():
        return proxy
    return next((one for one in region.findChildren(QWidget) if _takes_tab(one)), None)


def _takes_tab(widget: QWidget) -> bool:
    tab = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
    return bool(tab) and widget.isVisible() and widget.isEnabled()
