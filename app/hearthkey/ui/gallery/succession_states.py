"""The next CA in its states: before the beginning, after a theft, half-way, and at the last step."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta

from hearthkey.core import succession
from hearthkey.core.succession import Carries, Cause, DeviceStep, Plan, Step, Succession
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.key_gone_page import KeyGonePage
from hearthkey.ui.drawer.succession_page import SuccessionPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL, Look
from hearthkey.ui.window import Window

_DEVICES = (
    ("Ines’s phone", Carries.DONE, 700),
    ("Ines’s tablet", Carries.HANDED_OVER, 690),
    ("Tomasz’s laptop", Carries.MADE, 680),
    ("Odile’s tablet", Carries.OLD, 400),
)


def _page(window: Window) -> tuple[SuccessionPage, Snapshot] | None:
    if not isinstance(window.drawer.page(), SuccessionPage):
        window.ways.succession.emit()
    page, seen = window.drawer.page(), window.outside.errands.last
    return (page, seen) if isinstance(page, SuccessionPage) and seen is not None else None


def begin(window: Window) -> None:
    """Nothing has begun."""
    _page(window)


def asking(cause: Cause) -> Callable[[Window], None]:
    """Nothing has begun, and something has happened."""

    def show(window: Window) -> None:
        found = _page(window)
        if found is not None:
            page, _ = found
            page.why.take(cause.value)
            page.why.chosen.emit(cause.value)

    return show


def gone(cause: Cause) -> Callable[[Window], None]:
    """The CA key is gone."""

    def show(window: Window) -> None:
        window.ways.key_gone.emit()
        page = window.drawer.page()
        if isinstance(page, KeyGonePage):
            page.what.take(cause.value)
            page.what.chosen.emit(cause.value)

    return show


def underway(*, done: bool) -> Callable[[Window], None]:
    """Half-way, or with everybody through."""

    def show(window: Window) -> None:
        found = _page(window)
        if found is None:
            return
        page, seen = found
        plan = _plan(seen, done=done)
        page.see(replace(seen, locked=False))
        page.show_plan(plan)
        if done:
            page.go_on()

    return show


def _plan(seen: Snapshot, *, done: bool) -> Plan:
    begun = seen.at - timedelta(days=40)
    authority = seen.authority
    assert authority is not None, "the practice household has a CA"  # noqa: S101 - a fault of ours, not the world's
    taken = {
        Step.BEGIN: begun,
        Step.TRUST: begun + timedelta(days=1),
        Step.GATEWAY: begun + timedelta(days=1),
    }
    found = Succession(authority, authority, b"", Cause.PLANNED, taken)
    devices = tuple(
        DeviceStep(
            title, title, Carries.DONE if done else carries, _later(seen.at, days), () if done else ("0a",), "0b"
        )
        for title, carries, days in _DEVICES
    )
    return succession.plan(
        found,
        devices,
        cause=Cause.PLANNED,
        old_end=authority.not_after,
        last_safe_day=authority.not_after - timedelta(days=900),
        seen=True,
        now=seen.at,
    )


def _later(now: datetime, days: int) -> datetime:
    return now + timedelta(days=days)


STATES: dict[str, tuple[Callable[[Window], None], tuple[Look, ...]]] = {
    "succession": (begin, PLAIN + SPECIAL[:1]),
    "succession-stolen": (asking(Cause.STOLEN), PLAIN[:2]),
    "succession-lost": (asking(Cause.LOST), PLAIN[:2]),
    "key-stolen": (gone(Cause.STOLEN), PLAIN + SPECIAL[:1]),
    "key-lost": (gone(Cause.LOST), PLAIN + SPECIAL[:1]),
    "succession-half": (underway(done=False), PLAIN + SPECIAL),
    "succession-last": (underway(done=True), PLAIN[:2]),
}
"""By the name of the scene."""
