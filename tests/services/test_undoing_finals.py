"""Renewals, replacements and steps to the next CA are not taken back; each says why, and what does it instead."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes
from hearthkey.services.undoing import Undoing
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.fakes.workshop import QuickWorkshop


@pytest.fixture
def quick(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage, whose keys are guarded and bundles sealed at once."""
    with at_home(tmp_path / "data", quick=True) as opened:
        opened.world.workshop = QuickWorkshop()
        opened.reopen()
        yield opened


def offered(undoing: Undoing) -> str | None:
    """What the menu says of the next step back."""
    return None if undoing.offer.undo is None else str(undoing.offer.undo)


def refused(undoing: Undoing, code: str, title: str = "") -> None:
    """The next step back says why it is none, and leaves everything as it is."""
    assert undoing.offer.final
    with pytest.raises(Refused, match=code) as told:
        undoing.undo()
    assert told.value.facts["title"] == title


def test_renewals_replacements_and_their_ends_say_why_they_stay(quick: Home) -> None:
    """Broken if it fails: an older change is taken back instead, or the half of a replacement that stops somebody."""
    house, undoing = quick.house, quick.house.undoing
    undoing.watch(lambda: house.sheeting.choose_call("Ines, 555 0100"))
    quick.hand_over("Ines phone")
    quick.hand_over("Tomasz laptop")

    def renew() -> Changes:
        return house.renewing.renew(house.renewing.preview(quick.passes("Ines phone")))

    undoing.watch(renew)
    refused(undoing, "undo-renewed", "Ines’s phone")
    superseding = house.superseding
    undoing.watch(lambda: superseding.take_back(superseding.preview_take_back(quick.passes("Ines phone"))))
    refused(undoing, "undo-taken-back", "Ines’s phone")
    replacing = house.replacing
    plan = replacing.preview(quick.passes("Tomasz laptop"), "tablet", "linux")
    undoing.watch(lambda: replacing.apply(plan))
    assert [one.verb for one in house.register.diary()[-2:]] == ["replace", "stop"]
    assert offered(undoing) == "Undo: replace a device by Tomasz’s tablet"
    refused(undoing, "undo-replaced", "Tomasz’s tablet")
    assert quick.newest("Tomasz laptop").state(house.clock.now()) is State.STOPPED
    assert offered(undoing) == "Undo: whom to call"


def test_a_stop_that_became_final_is_no_let_in(quick: Home) -> None:
    """Broken if it fails: somebody is offered to stop again what went for good, or never gets past it."""
    house, undoing, superseding = quick.house, quick.house.undoing, quick.house.superseding
    quick.hand_over("Ines phone")
    house.renewing.renew(house.renewing.preview(quick.passes("Ines phone")))
    quick.hand_over("Ines phone")
    old = quick.passes("Ines phone")[0].serial
    undoing.watch(lambda: quick.stop(old))
    undoing.watch(lambda: quick.let_in(old))
    undoing.watch(lambda: quick.stop(old))
    undoing.watch(lambda: superseding.supersede(superseding.preview_supersede(quick.passes("Ines phone"))))
    refused(undoing, "undo-superseded", "Ines’s phone")
    for _ in range(3):
        with pytest.raises(Refused, match="undo-changed-since"):
            undoing.undo()
    assert offered(undoing) is None


def test_every_step_to_the_next_ca_has_its_own_way_back(quick: Home) -> None:
    """Broken if it fails: beside two CAs an older change is taken back instead of the step."""
    undoing, succeeding = quick.house.undoing, quick.house.succeeding
    undoing.watch(lambda: quick.house.sheeting.choose_call("Ines, 555 0100"))
    quick.stop("Odile tablet")
    steps: tuple[Callable[[], Changes], ...] = (
        lambda: succeeding.begin(PASSPHRASE),
        lambda: succeeding.go_on(told=True),
        succeeding.take_back,
        lambda: succeeding.go_on(told=True),
        lambda: succeeding.go_on(told=True),
    )
    for step in steps:
        undoing.watch(step)
        assert offered(undoing) == "Undo: a step to the next CA"
        refused(undoing, "undo-succession")
    undoing.watch(lambda: succeeding.finish(told=True, anyway=True, stolen=True))
    with pytest.raises(Refused, match="undo-succession"):
        undoing.undo()
    assert offered(undoing) == "Undo: whom to call"
