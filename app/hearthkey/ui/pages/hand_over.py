"""The page on which a bundle is handed over: ways at the left, what was taken at the right."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QHideEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui import kind_words
from hearthkey.ui.announcing import announce
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.dates import day
from hearthkey.ui.drag import DragOut
from hearthkey.ui.drives import Drive, Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.left_side import LeftSide
from hearthkey.ui.pages.own_ways import OwnWay
from hearthkey.ui.pages.page_head import PageHead
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.pages.side_panel import SidePanel
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import Way, WayOut
from hearthkey.ui.sight import sight
from hearthkey.ui.template_errands import OwnForm
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

NARROW = 820
"""Pixels at normal type under which ways and card take turns."""

SHARE = 0.42
"""The most of the width that the card takes beside the ways."""


class HandOver(QWidget):
    """Takes the place of board and tray, from the headline down.

    Args:
        drag: that of the tray, so that a file made there is used here.
        folder: where the first file dialog opens; `folder` remembers the last one.

    Signals:
        folder_chosen: the folder a file was saved to, to be remembered.
        told: an outcome in words, for the footer.
    """

    folder_chosen = Signal(str)
    told = Signal(str)

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        drag: DragOut,
        clipboard: SecretClipboard,
        sticks: Sticks,
        *,
        folder: Path,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._errands, self._ways, self._pick = theme, errands, ways, pick
        self.folder = folder
        self.setAccessibleName(self.tr("Hand over"))
        self.leaving = Leaving(errands, sticks, self)
        self.head = PageHead(theme, self.tr("Back to the board"))
        self.left = LeftSide(theme, drag)
        self.panel = SidePanel(theme, clipboard)
        self._lay_out()
        self._connect(drag)
        theme.changed.connect(self._fit)

    def _lay_out(self) -> None:
        sides = QHBoxLayout()
        sides.setContentsMargins(0, 0, 0, 0)
        sides.setSpacing(0)
        sides.addWidget(self.left, 1)
        sides.addWidget(self.panel)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(sides, 1)

    def _connect(self, drag: DragOut) -> None:
        leaving, panel, left = self.leaving, self.panel, self.left
        leaving.changed.connect(self._show)
        self.head.back.clicked.connect(self._ways.back)
        left.rows.wanted.connect(self.go)
        left.rows.choices.chosen.connect(self._errands.keep_connect_choices)
        left.passphrase_button.clicked.connect(self._passphrase)
        left.paper_button.clicked.connect(lambda: self._ways.paper.emit(leaving.serial))
        left.has_it.asked.connect(self._aloud)
        left.has_it.confirmed.connect(self._hand_over)
        panel.codes.turned.connect(lambda _number: self._aloud(panel.codes.picture.accessibleName()))
        panel.codes.bigger.connect(lambda _big: self._fit())
        panel.passphrase.hide_wanted.connect(self._back)
        panel.passphrase.told.connect(self._aloud)
        panel.sticks.taken.connect(self._write_stick)
        panel.sticks.look_wanted.connect(leaving.look_for_sticks)
        panel.sticks.folder_wanted.connect(lambda: self._save(WayOut.FILE))
        panel.trouble.again_wanted.connect(self._again)
        panel.trouble.back_wanted.connect(self._back)
        panel.ways_wanted.connect(self._back)
        panel.pickup.more.connect(leaving.pickup.extend)
        panel.pickup.close_wanted.connect(leaving.close_pickup)
        panel.pickup.elsewhere.connect(leaving.open_pickup)
        panel.over.passphrase_wanted.connect(leaving.show_passphrase)
        panel.over.again_wanted.connect(lambda: self.go(WayOut.TICKET))
        drag.began.connect(lambda _serial: leaving.cover())
        self._errands.step.connect(panel.working.say)
        self._errands.seen.connect(self.show_snapshot)
        self._ways.lock.connect(leaving.leave)

    # Opening and leaving

    def open(self, serial: str, way: str = "") -> None:
        """Show a waiting pass, and begin with a way where one is named.

        A serial that does not wait leads back to the board.
        """
        one = self._waiting(serial)
        if one is None:
            self._ways.back.emit()
            return
        if self._errands.last is not None:
            self.left.rows.know(self._errands.last.kinds)
            self.panel.rest.warn(kind_words.traps(self._errands.last.kinds.of(one.kind)))
        self.leaving.open(one)
        end = day(one.not_after)
        self.head.say(
            self.tr("Hand over {title}").format(title=spoken(one.title)),
            self.tr("It gets in as soon as it has its bundle, until {end}. Nothing changes for anybody else.").format(
                end=end
            ),
        )
        self.left.show_pass(one, self.head.back)
        self._errands.own_forms(self, self._offer_own)
        self._errands.connect_choices(self, self.left.rows.choices.show_choices)
        self._fit()
        if way:
            self.go(WayOut(way))
        else:
            self.left.take_focus(None)

    def _offer_own(self, forms: tuple[OwnForm, ...]) -> None:
        if self.leaving.chosen is not None:
            self.left.offer([OwnWay(one.template, one.holds) for one in forms], self.leaving.chosen)
            self.panel.rest.mention_own(mentioned=bool(forms))

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Go back where the pass does not wait any more, whoever did that; show choices that were taken back."""
        one = self.leaving.chosen
        if one is None or not self.isVisible():
            return
        if one.serial in sight(snapshot).waiting:
            self._errands.connect_choices(self, self.left.rows.choices.follow)
        else:
            self._ways.back.emit()  # which leaves whatever is on screen

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Whoever comes back later finds nothing on screen."""
        super().hideEvent(event)
        if not event.spontaneous():
            self.leaving.leave()

    def _waiting(self, serial: str) -> Pass | None:
        last = self._errands.last
        return None if last is None else sight(last).waiting.get(serial)

    # What can be done

    def go(self, way: Way) -> None:
        """Take a way out."""
        if self.leaving.busy or not self.left.settled():
            return
        if way is WayOut.TICKET:
            self.leaving.open_pickup()
        elif way is WayOut.CODES:
            self.leaving.show_codes()
        elif way is WayOut.STICK:
            self.leaving.look_for_sticks()
        else:
            self._save(way)

    def _save(self, way: Way) -> None:
        one = self.leaving.chosen
        if one is None:
            return
        # The passphrase goes off the screen before the dialog comes, not when the file is there.
        self.leaving.cover()

        def chosen(folder: Path) -> None:
            if self.leaving.chosen == one:
                self.folder = folder
                self.folder_chosen.emit(str(folder))
                self.leaving.save(way, folder)

        self._pick(self, self.tr("Where to save it for {title}").format(title=spoken(one.title)), self.folder, chosen)

    def _write_stick(self, drive: Drive) -> None:
        self.leaving.save(WayOut.STICK, drive.path, drive)

    def _again(self) -> None:
        if (way := self.leaving.way) is None:
            self.leaving.show_passphrase()
        else:
            self.go(way)

    def _passphrase(self) -> None:
        if self.leaving.screen.side is Side.PASSPHRASE:
            self._back()
        else:
            self.leaving.show_passphrase()

    def _back(self) -> None:
        way = self.leaving.way
        self.leaving.back()
        if self.leaving.screen.side is Side.REST:
            self.left.take_focus(way)

    def _hand_over(self) -> None:
        one = self.leaving.chosen
        if one is None or self.leaving.busy:
            return
        self.leaving.leave()

        def done(changes: Changes) -> None:
            self.told.emit(spoken(changes.sentence))
            self._aloud(spoken(changes.sentence))
            if self.isVisible():
                self._ways.back.emit()

        self._errands.hand_over(one.serial, self, done, self.left.has_it.fail)

    # What is shown

    def _show(self) -> None:
        before = self.panel.shown()
        self.panel.show_leaving(self.leaving)
        self.left.show_leaving(self.leaving)
        self._fit()
        now = self.panel.shown()
        if now is not before and self.isVisible():
            self.panel.take_focus()
            self._aloud(self._outcome(now))
        elif now is Side.SAVED and self.leaving.saved is not None:
            self._aloud(self._outcome(now))

    def _outcome(self, side: Side) -> str:
        saved, error = self.leaving.saved, self.leaving.trouble
        if side is Side.SAVED and saved is not None:
            outcome = self.panel.saved.said(saved)
            self.told.emit(outcome)
            return outcome
        if side is Side.TROUBLE and error is not None:
            return mended(error)
        return self.panel.title.text()

    def _aloud(self, text: str) -> None:
        announce(self, text)

    def _fit(self) -> None:
        """Give the card the whole page where there is room for one side only, or where it wants to be big."""
        shown = self.panel.shown()
        narrow = self.width() < self._theme.px(NARROW)
        big = shown is Side.CODES and self.panel.codes.is_big
        alone = big or (narrow and shown is not Side.REST)
        self.panel.all_ways.setVisible(alone and not big and shown is not Side.WORKING)
        # The panel gives back its room before the left side comes, or the window would have to grow.
        self.panel.take_room(None if alone else min(self._theme.px(SidePanel.WIDE), round(self.width() * SHARE)))
        self.panel.setVisible(alone or not narrow)
        self.head.setVisible(not big)
        self.left.setVisible(not alone)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Share the room."""
        super().resizeEvent(event)
        self._fit()

    # Esc goes one step back at a time; the page claims it before the window's shortcuts do.

    def event(self, event: QEvent) -> bool:
        """Claim Esc."""
        asks = event.type() == QEvent.Type.ShortcutOverride
        if asks and isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape:
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc: smaller, not yet, hide, and at last back to the board."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self.panel.shown() is Side.CODES and self.panel.codes.is_big:
            self.panel.codes.grow(big=False)
        elif self.left.has_it.asking:
            self.left.has_it.step_back()
        elif self.panel.shown() in {Side.PASSPHRASE, Side.STICKS, Side.TROUBLE}:
            self._back()
        else:
            self._ways.back.emit()
