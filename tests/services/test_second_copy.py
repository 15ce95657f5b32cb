"""Only one copy of the app writes to a household; the others look."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from hearthkey.core.errors import Refused, Unavailable
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse


@pytest.fixture
def second(home: Home) -> Iterator[PracticeHouse]:
    """Another copy on the same data, looking."""
    other = PracticeHouse(home.house.data, home.world)
    other.look()
    yield other
    other.leave()


def test_a_second_copy_may_not_write(home: Home) -> None:
    """Broken if it fails: two copies sign two lists with one number."""
    other = PracticeHouse(home.house.data, home.world)
    with pytest.raises(Unavailable) as unavailable:
        other.enter()
    assert unavailable.value.code == "second-copy"
    other.leave()


def test_a_second_copy_sees_what_the_first_does(home: Home, second: PracticeHouse) -> None:
    """Broken if it fails: somebody looks at yesterday's household."""
    home.stop("Ines phone")
    assert second.register.read_only
    assert second.register.passes() == home.house.register.passes()
    assert second.register.list_high_water() == 2


@pytest.mark.parametrize("verb", ["hand over", "stop"])
def test_a_second_copy_is_refused_by_the_register_too(home: Home, second: PracticeHouse, verb: str) -> None:
    """Broken if it fails: a shell that forgets to ask for the writing copy changes the household all the same."""
    second.keyholder.keep(home.key)
    before = home.house.register.passes()
    passes = home.passes("Ines phone")
    acts = {
        "stop": lambda: second.stopping.stop(second.stopping.preview_stop(passes)),
        "hand over": lambda: second.handing_over.apply(second.handing_over.preview(passes)),
    }
    with pytest.raises(Unavailable) as unavailable:
        acts[verb]()
    assert unavailable.value.code == "second-copy"
    assert home.house.register.passes() == before


def test_the_next_copy_writes_once_the_first_has_left(home: Home) -> None:
    """Broken if it fails: a household stays locked by a copy that is gone."""
    home.house.leave()
    other = PracticeHouse(home.house.data, home.world)
    other.enter()
    assert not other.register.read_only
    other.leave()


def test_leaving_locks(home: Home) -> None:
    """Broken if it fails: a closed window keeps the CA key."""
    home.house.leave()
    assert home.house.keyholder.locked
    with pytest.raises(Refused) as refused:
        home.house.keyholder.key()
    assert refused.value.code == "household-locked"
    assert PASSPHRASE.reveal() not in repr(vars(home.house))
