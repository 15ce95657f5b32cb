"""The day list: what costs somebody the way in first, and what is alike told once."""

from __future__ import annotations

from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.day_list import ALIKE, LOSES, More, gathered, pressing
from hearthkey.core.duties import Act, Duty
from hearthkey.core.sentences import duties as words
from tests.core.test_duties import DAY, NOW

DUTIES = st.lists(
    st.builds(
        lambda act, on, until, key: Duty(key.hex, NOW + on * DAY, act, NOW + until * DAY),
        st.sampled_from(Act),
        st.integers(-90, 0),
        st.integers(-90, 900),
        st.uuids(),
    ),
    max_size=40,
)


@given(DUTIES)
def test_what_locks_somebody_out_first_stands_first(found: list[Duty]) -> None:
    """If this failed, a phone that ends tomorrow would stand below three hundred that were only never tried."""
    ordered = pressing(found)
    assert sorted(one.key for one in ordered) == sorted(one.key for one in found)
    losing = [one for one in found if one.act in LOSES]
    if losing:
        assert ordered[0].until == min(one.until for one in losing)
    unproved = [one.act is Act.PROVE for one in ordered]
    assert unproved == sorted(unproved)


@given(DUTIES)
def test_gathering_loses_nobody_and_is_short(found: list[Duty]) -> None:
    """If this failed, somebody would be missing from the list, or the list would be as long as the household."""
    listed = gathered(found)
    flat = [one for entry in listed for one in (entry.duties if isinstance(entry, More) else (entry,))]
    assert sorted(one.key for one in flat) == sorted(one.key for one in found)
    for act in Act:
        mine = [one for one in flat if one.act is act]
        assert mine == [one for one in found if one.act is act]
        assert sum(1 for one in listed if one.act is act) <= ALIKE + 1
    assert all(len(one.duties) > 1 for one in listed if isinstance(one, More))


def test_one_line_stands_for_many() -> None:
    """If this failed, the line would not say how many it stands for."""
    many = [Duty(f"prove-{n}", NOW - timedelta(days=n), Act.PROVE, NOW) for n in range(300)]
    (*_, last) = gathered(many)
    assert isinstance(last, More)
    assert str(words.more(last)) == "And 297 more to try on mobile data"
