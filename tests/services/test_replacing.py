"""A device replaced in one move, and somebody who leaves the household."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.goodbye import Kind, chores
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import goodbye as words
from tests.fakes.home import Home
from tests.fakes.workshop import QuickWorkshop


@pytest.fixture(autouse=True)
def quick(home: Home) -> None:
    """Ines's phone is in use; what is made from now on is sealed at once."""
    home.world.workshop = QuickWorkshop()
    home.reopen()
    home.hand_over("Ines phone")


def states(home: Home, text: str) -> list[State]:
    """Where the passes of a device stand."""
    return [one.state(home.world.clock.now()) for one in home.passes(text)]


def replace(home: Home) -> Changes:
    """Give Ines a new phone."""
    return home.house.replacing.apply(home.house.replacing.preview(home.passes("Ines phone"), "new phone", "linux"))


def test_the_new_device_waits_and_the_old_one_is_stopped_in_the_same_moment(home: Home) -> None:
    """Broken if it fails: a sold phone gets in until somebody remembers to stop it."""
    old = home.newest("Ines phone")
    changes = replace(home)
    new = home.newest("Ines new phone")
    assert new.identity != old.identity
    assert (states(home, old.serial), states(home, new.serial)) == ([State.STOPPED], [State.WAITING])
    newest = home.house.register.newest_list()
    assert newest is not None
    assert changes.list_number == newest.number
    assert [one.verb for one in home.house.register.diary()[-2:]] == ["replace", "stop"]


def test_the_old_device_goes_for_good_once_the_new_one_was_proved(home: Home) -> None:
    """Broken if it fails: an old phone that turns up can be let in for ever, or never."""
    old = home.newest("Ines phone")
    replace(home)
    home.hand_over("Ines new phone")
    assert home.house.superseding.follow_up() is None
    home.house.proving.told(home.house.proving.preview_told(home.newest("Ines new phone")))
    assert home.house.superseding.follow_up() is not None
    assert home.passes(old.serial)[0].reason is Reason.SUPERSEDED
    assert states(home, "Ines new phone") == [State.IN_USE]


def test_the_old_device_can_be_let_in_until_then(home: Home) -> None:
    """Broken if it fails: somebody whose new phone does not work has none at all."""
    old = home.newest("Ines phone").serial
    replace(home)
    home.house.stopping.let_in(home.house.stopping.preview_let_in(home.passes(old)))
    assert states(home, old) == [State.IN_USE]
    home.hand_over("Ines new phone")
    assert home.house.superseding.follow_up() is None


@pytest.mark.parametrize(("label", "code"), [("phone", "device-exists"), ("laptop", "")])
def test_the_new_one_needs_a_name_of_its_own(home: Home, label: str, code: str) -> None:
    """Broken if it fails: two devices are called the same, and the wrong one is stopped."""
    passes = home.passes("Ines phone")
    if code:
        with pytest.raises(Refused, match=code):
            home.house.replacing.preview(passes, label, "linux")
    else:
        assert home.house.replacing.preview(passes, label, "linux").title == "Ines’s laptop"


def test_what_is_revoked_is_not_replaced(home: Home) -> None:
    """Broken if it fails: a plan speaks of stopping what never gets in."""
    home.revoke("Ines phone")
    with pytest.raises(Refused, match="pass-not-alive"):
        home.house.replacing.preview(home.passes("Ines phone"), "new phone", "linux")


def test_somebody_leaves_with_all_passes_and_nobody_else_is_touched(home: Home) -> None:
    """Broken if it fails: a split-up leaves one forgotten tablet that gets in."""
    replace(home)
    visit = home.house.visiting.checked("Ines", home.world.clock.now())
    home.house.visiting.plan(visit)
    before = home.passes("Tomasz laptop") + home.passes("Odile tablet")
    plan = home.house.goodbye.preview("ines")
    assert {one.title for one in plan.chosen} == {"Ines’s phone", "Ines’s new phone"}
    home.house.goodbye.apply(plan)
    theirs = [one for one in home.house.register.passes() if one.person == "Ines"]
    assert {one.reason for one in theirs} == {Reason.AFFILIATION_CHANGED}
    assert home.passes("Tomasz laptop") + home.passes("Odile tablet") == before
    assert home.house.visiting.ahead() == []
    assert [name for name in home.world.vault.secrets if any(one.serial in name for one in theirs)] == []
    with pytest.raises(Refused, match="person-has-none"):
        home.house.goodbye.preview("Ines")
    with pytest.raises(Refused, match="person-unknown"):
        home.house.goodbye.preview("Nobody")


def test_what_else_to_change_names_what_this_household_has() -> None:
    """Broken if it fails: a shared secret that somebody takes along is forgotten."""
    everything = chores(shared_secret=True, device_templates=("router", "camera"), by_hand=True)
    assert [one.kind for one in everything[:3]] == [Kind.SHARED_SECRET, Kind.TEMPLATES, Kind.DELIVER]
    assert "router, camera" in str(words.why(everything[1]))
    least = chores(shared_secret=False, device_templates=(), by_hand=False)
    assert [one.kind for one in least] == list(Kind)[3:]
    assert all(str(words.what(one)) and str(words.why(one)) for one in everything)
