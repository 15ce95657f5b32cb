"""A renewed device is seen from inside and keeps both passes for as long as was chosen; the diary says why one goes."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from hearthkey.core.proofs import Proof, Way
from hearthkey.core.revocation import Reason
from hearthkey.services.proof_desk import keep
from tests.fakes.home import Home, at_home
from tests.fakes.workshop import QuickWorkshop


@pytest.fixture
def renewed(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Home]:
    """Ines’s phone with two passes that get in."""
    with at_home(tmp_path_factory.mktemp("overlap") / "data") as home:
        home.world.workshop = QuickWorkshop()
        home.reopen()
        home.hand_over("Ines phone")
        home.house.renewing.renew(home.house.renewing.preview(home.passes("Ines phone"), overlap_days=30))
        home.hand_over("Ines phone")
        yield home


def test_a_link_opened_from_inside_takes_the_old_pass_only_at_the_end_of_the_overlap(renewed: Home) -> None:
    """Broken if it fails: the old pass opened the link and is withdrawn for it, and nobody ever tried the new one."""
    home, follow_up = renewed, renewed.house.superseding.follow_up
    old, new = home.passes("Ines phone")
    clock = home.world.clock
    keep(home.house.register, new, Proof(clock.now(), Way.TUNNEL, "203.0.113.7"), "She was seen.", clock)
    assert follow_up() is None
    clock.forward(days=29)
    home.unlock()
    assert follow_up() is None
    clock.forward(days=2)
    home.unlock()
    done = follow_up()
    assert done is not None
    assert "the time for both is over" in done.sentence
    assert home.passes("Ines phone")[0].reason is Reason.SUPERSEDED
    assert home.house.register.diary()[-1].sentence == done.sentence
    assert old.serial != new.serial


def test_what_somebody_tells_is_told_of_the_new_pass(renewed: Home) -> None:
    """Broken if it fails: nobody is asked with which of two passes it works, and the word counts for both."""
    proving = renewed.house.proving
    plan = proving.preview_told(proving.choose(renewed.passes("Ines phone")))
    assert plan.beside
    assert "with its new pass" in proving.told(plan).sentence
    done = renewed.house.superseding.follow_up()
    assert done is not None
    assert "what follows was seen to get in" in done.sentence
