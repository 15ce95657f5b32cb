"""What a householder of ten thousand devices does in the window: looks again, enrols one, stops one."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from hearthkey.core.errors import HearthkeyError
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.window import Window
from tests.bench import practice

P = TypeVar("P")


def steps(window: Window) -> list[Callable[[], None]]:
    """Unlock and select a row; then look, enrol and stop in the drawer, with a row selected far down the sheet."""
    errands, ways = window.outside.errands, window.ways

    def unlock() -> None:
        errands.unlock(practice.PASSPHRASE, window, _nothing, _give_up)

    def fill_in() -> None:
        form = _page(window, EnrolPage).form
        form.whose.take("Odile 77")
        form.device.setText("reader")
        form.kind.take("linux")

    return [
        unlock,
        lambda: window.board.select(_seen(window).passes[5000].identity),
        errands.refresh,
        lambda: ways.new_device.emit(""),
        fill_in,
        lambda: _page(window, EnrolPage).go_on(),
        lambda: ways.device.emit(_seen(window).passes[7000].identity),
        lambda: _page(window, DevicePage).begin_stop(),
        ways.back.emit,
        errands.refresh,
    ]


def check(window: Window) -> None:
    """Say so if the steps led nowhere.

    Raises:
        ValueError: nobody was enrolled, or nobody stopped.
    """
    devices = {(one.person, one.device): one for one in _seen(window).passes}
    if ("Odile 77", "reader") not in devices:
        raise ValueError("nobody was enrolled")
    if _seen(window).passes[7001].reason is None:  # one row further down, for Odile's reader came in above it
        raise ValueError("nobody was stopped")


def _seen(window: Window) -> Snapshot:
    seen = window.outside.errands.last
    if seen is None:
        raise LookupError("no look")
    return seen


def _page(window: Window, kind: type[P]) -> P:
    page = window.drawer.page()
    if not isinstance(page, kind):
        raise TypeError(f"the drawer shows {page}")
    return page


def _give_up(error: HearthkeyError) -> None:
    raise error


def _nothing(_result: object) -> None:
    return None
