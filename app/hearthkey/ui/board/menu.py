"""All actions of a row."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QWidget

from hearthkey.core.passes import Pass, State
from hearthkey.ui.board.life import tr
from hearthkey.ui.text import spoken
from hearthkey.ui.ways import Ways

Act = tuple[str, Callable[[], None]]


def actions(one: Pass, now: datetime, ways: Ways, *, read_only: bool) -> list[Act | None]:
    """What can be done with a pass, in the order of the menu; None parts groups.

    Args:
        now: today, UTC.
        read_only: nothing can be changed from here.
    """
    state = one.state(now)
    show = tr("Show {title}").format(title=spoken(one.title))
    found: list[Act | None] = [(show, lambda: ways.device.emit(one.identity))]
    if read_only:
        return found
    if state is State.WAITING:
        found.append((tr("Hand over…"), lambda: ways.hand_over.emit(one.serial)))
    if state is State.IN_USE:
        found.append((tr("Prove it…"), lambda: ways.prove.emit(one.serial)))
    if state is State.STOPPED:
        found.append((tr("Let back in…"), lambda: ways.let_in.emit(one.identity)))
    if state in {State.WAITING, State.IN_USE}:
        found.append((tr("Stop…"), lambda: ways.stop.emit(one.identity)))
    if state in {State.IN_USE, State.STOPPED}:
        found.append((tr("Renew…"), lambda: ways.renew.emit(one.identity)))
        found.append((tr("Replace this device…"), lambda: ways.another.emit(one.identity)))
    else:
        found.append((tr("New pass for this device…"), lambda: ways.replace_device.emit(one.identity)))
    found.append((tr("New device for {person}…").format(person=one.person), lambda: ways.new_device.emit(one.person)))
    if state not in {State.REVOKED, State.ENDED}:
        found += [None, (tr("Revoke for good…"), lambda: ways.revoke.emit(one.identity))]
        if not one.guest:  # who ends without it
            leaves = tr("{person} leaves the household…").format(person=one.person)
            found.append((leaves, lambda: ways.leaves.emit(one.person)))
    return found


def build(acts: list[Act | None], parent: QWidget) -> QMenu:
    """A menu that goes when it is closed."""
    menu = QMenu(parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    for act in acts:
        if act is None:
            menu.addSeparator()
            continue
        words, do = act
        menu.addAction(words).triggered.connect(lambda _on=False, do=do: do())
    return menu
