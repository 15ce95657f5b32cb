"""The page of copies that left, with none, a few and very many; and a device's page that asks about a stick."""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from pathlib import Path

from PySide6.QtCore import QObject, QTimer

from hearthkey.core.copies import Came, Copy, CopyFile, CopyWay, Found, told
from hearthkey.core.passes import Pass, State
from hearthkey.services.tidying import Looked
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.drawer.copies_page import CopiesPage
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drives import Drive
from hearthkey.ui.window import Window

_BEAT = 20
"""Milliseconds between two looks at whether the household has answered."""

_WAYS = (
    (CopyWay.STICK, "QUINCE", "/media/ines/QUINCE", "pkcs12"),
    (CopyWay.TICKET, "198.51.100.41", "", "pkcs12"),
    (CopyWay.SCREEN, "", "", "codes"),
    (CopyWay.FOLDER, "/home/ines/Documents/For the boiler engineer", "/home/ines/Documents", "archive"),
    (CopyWay.DRAG, "", "", "pkcs12"),
    (CopyWay.STICK, "PLUM", "/media/ines/PLUM", "template:Letter to the doorkeeper"),
)


def _copies(window: Window, count: int) -> CopiesSeen:
    seen = window.outside.errands.last
    assert seen is not None  # noqa: S101 - a fault of ours, not the world's
    made = []
    for number in range(count):
        way, place, folder, form = _WAYS[number % len(_WAYS)]
        one = seen.passes[(number * 2) % len(seen.passes)] if count > len(_WAYS) else _in_use(seen.passes, window)
        begun = seen.at - timedelta(hours=5 + 31 * number)
        made.append(
            Copy(
                serial=one.serial,
                form=form,
                way=way,
                place=place,
                folder=folder,
                files=(CopyFile("practice.p12", "0" * 32),),
                made=begun,
                came=Came.EXPECTED if number % 17 == 1 and count > len(_WAYS) else Came.MADE,
                tidied=begun + timedelta(days=1) if number % 5 == 1 else None,
                number=number + 1,
            )
        )
    drives = (Drive("QUINCE", Path("/media/ines/QUINCE"), "/dev/sdb1", 14_200_000_000),)
    return CopiesSeen(told(made, seen.passes, seen.at), drives, seen.at)


def _in_use(passes: tuple[Pass, ...], window: Window) -> Pass:
    seen = window.outside.errands.last
    assert seen is not None  # noqa: S101 - as above
    return next(one for one in passes if one.state(seen.at) is State.IN_USE)


def _once_quiet(window: Window, shown: QObject, show: Callable[[], None]) -> None:
    """Show something in the place of what the real household answers, which has no copies."""
    if window.outside.tasks.waiting:
        QTimer.singleShot(_BEAT, shown, lambda: _once_quiet(window, shown, show))
    else:
        show()


def _page(window: Window, found: CopiesSeen, *, whole: bool) -> CopiesPage:
    window.ways.back.emit()
    window.ways.copies.emit("" if whole or not found.found else found.found[0].of.identity)
    shown = window.drawer.page()
    assert isinstance(shown, CopiesPage)  # noqa: S101 - as above
    return shown


def page(count: int, *, whole: bool = True) -> Callable[[Window], None]:
    """The page with that many copies, one of them chosen."""

    def begin(window: Window) -> None:
        found = _copies(window, count)
        shown = _page(window, found, whole=whole)
        _once_quiet(window, shown, lambda: _fill(shown, found))

    return begin


def _fill(shown: CopiesPage, found: CopiesSeen) -> None:
    shown.show_copies(found)
    if found.found:
        shown.list.setCurrentIndex(shown.model.index(0))


def looked_at(window: Window) -> None:
    """A look has found the chosen file still there."""
    found = _copies(window, 3)
    shown = _page(window, found, whole=False)

    def show() -> None:
        _fill(shown, found)
        shown.show_looked(Looked(found.found[0], Found.OURS, "/media/ines/QUINCE"))

    _once_quiet(window, shown, show)


def stick(window: Window) -> None:
    """The page of a device that was handed over by stick."""
    found = _copies(window, 1)
    window.ways.back.emit()
    window.ways.device.emit(found.found[0].of.identity)
    shown = window.drawer.page()
    assert isinstance(shown, DevicePage)  # noqa: S101 - as above
    _once_quiet(window, shown, lambda: shown.stick.show_copies(found))
