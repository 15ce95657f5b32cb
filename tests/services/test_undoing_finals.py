"""Renewals, replacements and steps to the next CA are not taken back; each says why, and what does it instead."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.core.diary import DiaryEntry
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
    quick.hand_over("Ines phone")
    refused(undoing, "undo-renewed", "Ines’s phone")
    undoing.watch(renew)
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
    refused(undoing, "undo-renewed", "Ines’s phone")
    assert offered(undoing) == "Undo: whom to call"


def test_a_renewal_that_waits_is_taken_back(quick: Home) -> None:
    """Broken if it fails: a slip in a round leaves bundles in the tray; or the pass in use goes with the new one."""
    house, undoing = quick.house, quick.house.undoing
    quick.hand_over("Ines phone")
    undoing.watch(lambda: house.renewing.renew(house.renewing.preview(quick.passes("Ines phone"))))
    assert offered(undoing) == "Undo: renew Ines’s phone"
    assert undoing.undo().serials == (quick.newest("Ines phone").serial,)
    old, new = quick.passes("Ines phone")
    assert (old.state(house.clock.now()), new.state(house.clock.now())) == (State.IN_USE, State.REVOKED)
    assert not house.register.sealed(new.serial)
    assert (offered(undoing), undoing.offer.redo) == (None, None)


def test_visits_go_back_and_forth(quick: Home) -> None:
    """Broken if it fails: a visit on the wrong day moves every renewal, and has to be looked for to be called off."""
    house, undoing = quick.house, quick.house.undoing
    visit = house.visiting.checked("Odile", house.clock.now() + timedelta(days=30))
    undoing.watch(lambda: house.visiting.plan(visit))
    assert offered(undoing) == "Undo: a visit to Odile"
    undoing.undo()
    assert house.register.visits() == []
    assert undoing.redo().sentence == "The visit to Odile was planned again after all."
    undoing.watch(lambda: house.visiting.call_off(visit.person, visit.day))
    assert offered(undoing) == "Undo: call off a visit to Odile"
    undoing.undo()
    assert house.register.visits() == [visit]


def test_a_verb_reads_no_more_of_the_diary_than_it_wrote(quick: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: in the tenth year every click waits for ten years of entries."""
    house, undoing = quick.house, quick.house.undoing

    def diary() -> list[DiaryEntry]:
        raise AssertionError

    monkeypatch.setattr(house.register, "diary", diary)
    undoing.watch(lambda: house.sheeting.choose_call("Ines, 555 0100"))
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
