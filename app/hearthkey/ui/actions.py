"""Every command of the window with its key, in one list."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.courier import may_deliver
from hearthkey.ui.sight import sight
from hearthkey.ui.text import said
from hearthkey.ui.ways import Ways


class Actions(QObject):
    """Shortcuts of the whole window, and the household's menu.

    Signals:
        next_region, previous_region: F6 and Shift+F6.
        undo: Ctrl+Z.
        redo: Ctrl+Shift+Z.
        hand_over: Ctrl+H, for whatever is selected.
        paper: Ctrl+P, for whatever is selected.
        prove: Ctrl+E, for whatever is selected.
        renew: Ctrl+R, for whatever is selected.
        leave: Ctrl+Q.
    """

    next_region = Signal()
    previous_region = Signal()
    undo = Signal()
    redo = Signal()
    hand_over = Signal()
    paper = Signal()
    prove = Signal()
    renew = Signal()
    leave = Signal()

    def __init__(self, ways: Ways, menu: QMenu, window: QWidget) -> None:
        super().__init__(window)
        self._window = window
        self.new_device = self._add(self.tr("New device"), "Ctrl+N", lambda: ways.new_device.emit(""))
        self.find = self._add(self.tr("Find"), "Ctrl+F", ways.find.emit)
        self.lost = self._add(self.tr("Lost or stolen"), "Ctrl+L", lambda: ways.lost.emit(""))
        self.hand_over_action = self._add(self.tr("Hand over"), "Ctrl+H", self.hand_over.emit)
        self.desk_action = self._add(self.tr("Hand over all at the desk"), "Ctrl+Shift+D", lambda: ways.desk.emit(()))
        self.paper_action = self._add(self.tr("Sheet, card and messages"), "Ctrl+P", self.paper.emit)
        self.prove_action = self._add(self.tr("Prove it"), "Ctrl+E", self.prove.emit)
        self.renew_action = self._add(self.tr("Renew"), "Ctrl+R", self.renew.emit)
        self.gateway = self._add(self.tr("Gateway"), "Ctrl+G", ways.gateway.emit)
        self.deliver = self._add(self.tr("Deliver now"), "Ctrl+Shift+G", ways.deliver.emit)
        self.templates = self._add(self.tr("Your own template"), "Ctrl+T", ways.templates.emit)
        self.days = self._add(self.tr("What is to be done"), "F2", ways.days.emit)
        self.sealed = self._add(self.tr("Sealed copies"), "Ctrl+B", ways.sealed.emit)
        self.way_in = self._add(self.tr("The way in"), "Ctrl+I", ways.way_in.emit)
        self.moving = self._add(self.tr("Moving day"), "Ctrl+M", ways.moving.emit)
        self.key_gone = self._add(self.tr("The CA key is gone"), "Ctrl+Shift+K", ways.key_gone.emit)
        self.kinds = self._add(self.tr("Kinds of devices"), "Ctrl+Shift+N", ways.kinds.emit)
        self.copies = self._add(self.tr("Copies that left"), "Ctrl+K", lambda: ways.copies.emit(""))
        self.diary = self._add(self.tr("Diary"), "Ctrl+D", ways.diary.emit)
        self.settings = self._add(self.tr("Settings"), "Ctrl+,", ways.settings.emit)
        self.lock = self._add(self.tr("Lock the household"), "Ctrl+Shift+L", ways.lock.emit)
        self.help = self._add(self.tr("Help for this spot"), "F1", lambda: ways.help.emit(""))
        self.undo_action = self._add(self.tr("Undo"), "Ctrl+Z", self.undo.emit)
        self.redo_action = self._add(self.tr("Redo"), "Ctrl+Shift+Z", self.redo.emit)
        self.leave_action = self._add(self.tr("Close the window"), "Ctrl+Q", self.leave.emit)
        self._add(self.tr("Next part of the window"), "F6", self.next_region.emit)
        self._add(self.tr("Previous part of the window"), "Shift+F6", self.previous_region.emit)
        about = [self.hand_over_action, self.desk_action, self.paper_action, self.prove_action, self.renew_action]
        menu.addActions([self.new_device, self.find, *about, self.lost])
        menu.addSeparator()
        menu.addActions([self.undo_action, self.redo_action])
        menu.addSeparator()
        menu.addActions([self.gateway, self.deliver, self.templates, self.kinds, self.way_in, self.moving])
        menu.addSeparator()
        menu.addActions([self.days, self.sealed, self.copies, self.diary, self.settings, self.help])
        menu.addSeparator()
        menu.addActions([self.key_gone, self.lock, self.leave_action])

    def allow(self, snapshot: Snapshot) -> None:
        """Let a key work only where there is something for it to do."""
        founded = snapshot.household is not None
        for action in (self.find, self.lost, self.hand_over_action, self.diary, self.settings, self.lock, self.gateway):
            action.setEnabled(founded)
        for action in (
            self.key_gone,
            self.templates,
            self.kinds,
            self.way_in,
            self.moving,
            self.days,
            self.sealed,
            self.copies,
            self.paper_action,
        ):
            action.setEnabled(founded)
        for action in (self.prove_action, self.renew_action):
            action.setEnabled(founded and not snapshot.read_only)
        self.desk_action.setEnabled(founded and not snapshot.read_only and bool(sight(snapshot).waiting))
        self.deliver.setEnabled(may_deliver(snapshot))
        undo, redo = snapshot.offer.undo, snapshot.offer.redo
        self.undo_action.setText(self.tr("Undo") if undo is None else said(undo))
        self.redo_action.setText(self.tr("Redo") if redo is None else said(redo))
        self.undo_action.setEnabled(undo is not None)
        self.redo_action.setEnabled(redo is not None)
        self.new_device.setEnabled(founded and not snapshot.read_only)

    def _add(self, words: str, key: str, act: Callable[[], None]) -> QAction:
        action = QAction(words, self._window)
        action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda _on=False: act())
        self._window.addAction(action)
        return action
