"""Renewals in their states: a round, both passes of one device, another device, somebody leaving."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.renewal import Follow, Visit
from hearthkey.core.sentences import renewal as sentences
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.renew_page import RenewPage
from hearthkey.ui.text import said
from hearthkey.ui.window import Window


def _seen(window: Window) -> Snapshot:
    snapshot = window.outside.errands.last
    assert snapshot is not None, "scenes begin when the household is open"  # noqa: S101 - a fault of ours, not the world's
    return snapshot


def _find(window: Window, person: str, device: str) -> Pass:
    return next(one for one in _seen(window).passes if (one.person, one.device) == (person, device))


def _met(window: Window) -> Snapshot:
    """The household with two visits ahead."""
    seen = _seen(window)
    today = seen.at.replace(hour=0, minute=0, second=0)
    visits = (Visit("Ines", today + timedelta(days=12)), Visit("Odile", today + timedelta(days=40)))
    return replace(seen, visits=visits)


def _page(window: Window, identity: str = "") -> RenewPage:
    window.ways.back.emit()
    window.ways.back.emit()
    window.ways.renew.emit(identity)
    page = window.drawer.page()
    assert isinstance(page, RenewPage)  # noqa: S101 - a fault of ours, not the world's
    return page


def one(window: Window) -> None:
    """One device."""
    _page(window, _find(window, "Ines", "tablet").identity)


def chosen(window: Window) -> None:
    """A round, planned by visits."""
    page = _page(window)
    page.show_snapshot(_met(window))
    page.visits_fold.open(shown=True)
    page.rows.take([_find(window, "Ines", "tablet").identity, _find(window, "Odile", "phone").identity])


def over(window: Window) -> None:
    """A round that was stopped after two."""
    page = _page(window)
    page.show_snapshot(_met(window))
    titles = [_find(window, *names).title for names in (("Ines", "tablet"), ("Odile", "phone"))]
    told = [sentences.round_done(titles), sentences.round_left([_find(window, "Tomasz", "work laptop").title])]
    page.outcome.speak(" ".join(said(sentence) for sentence in told))
    page.outcome.show()


def _renewed(window: Window, *, handed_over: bool, proved: bool) -> Snapshot:
    seen, old = _seen(window), _find(window, "Ines", "tablet")
    began = seen.at - timedelta(days=709)
    proofs = (Proof(began + timedelta(days=9), Way.TUNNEL, "203.0.113.10"),)
    old = replace(old, not_before=began, handed_over=began + timedelta(days=2), proofs=proofs)
    new = replace(
        old,
        serial="7175696e6365000000000001",
        not_before=seen.at - timedelta(days=3),
        not_after=seen.at + timedelta(days=727),
        handed_over=seen.at - timedelta(days=1) if handed_over else None,
        proofs=(Proof(seen.at, Way.TUNNEL, "203.0.113.10"),) if proved else (),
    )
    follow = Follow(new.serial, old.serial, old.not_after, new.not_before)
    others = tuple(one for one in seen.passes if one.serial != old.serial)
    return replace(seen, passes=(old, new, *others), follows=(follow,))


def both(*, handed_over: bool, proved: bool = False) -> Callable[[Window], None]:
    """The page of a device with an old pass and a new one."""

    def begin(window: Window) -> None:
        window.ways.back.emit()
        window.ways.device.emit(_find(window, "Ines", "tablet").identity)
        window.outside.errands.seen.emit(_renewed(window, handed_over=handed_over, proved=proved))

    return begin


def another(window: Window) -> None:
    """A new tablet in the place of an old one."""
    window.outside.errands.seen.emit(_seen(window))
    window.ways.another.emit(_find(window, "Ines", "tablet").identity)


def leaves(window: Window) -> None:
    """Tomasz leaves."""
    window.ways.leaves.emit("Tomasz")


STATES: dict[str, tuple[Callable[[Window], None], bool]] = {
    "renew-one": (one, False),
    "renew-round": (chosen, True),
    "renew-over": (over, False),
    "device-next-waits": (both(handed_over=False), False),
    "device-both-get-in": (both(handed_over=True), True),
    "another-device": (another, False),
    "leaves": (leaves, True),
}
"""By the picture's name; and whether it is drawn by lamplight too."""
