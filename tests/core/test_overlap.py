"""The overlap that was chosen holds: a proof that cannot tell the old pass from the new one takes nothing away."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import renewal
from hearthkey.core.duties import Act, forecast
from hearthkey.core.proofs import Proof
from hearthkey.core.proofs import Way as ProofWay
from hearthkey.core.renewal import Follow, Visit, works
from hearthkey.core.revocation import Reason
from tests.core.test_renewal import DAY, FOLLOW, HOUSE, IN_USE, NOW, OLD, made

INSIDE = replace(IN_USE, proofs=(Proof(NOW, ProofWay.TUNNEL, "203.0.113.7"),))


@pytest.mark.parametrize(
    ("way", "at_once"), [(ProofWay.TUNNEL, False), (ProofWay.OTHER, False), (ProofWay.TOLD, True)], ids=str
)
def test_only_a_proof_that_names_the_new_pass_ends_the_overlap(way: ProofWay, *, at_once: bool) -> None:
    """Broken if it fails: the old pass was proved and goes, and nobody has ever tried the new one."""
    passes = [OLD, replace(IN_USE, proofs=(Proof(NOW, way),))]
    assert renewal.over_once_proved(passes, [FOLLOW], NOW) == ((OLD,) if at_once else ())
    assert renewal.named([OLD], passes, [FOLLOW], NOW) == ((OLD,) if at_once else ())
    assert renewal.over_once_proved(passes, [FOLLOW], FOLLOW.overlap_ends) == (OLD,)


def test_an_address_tells_once_the_old_pass_cannot_get_in() -> None:
    """Broken if it fails: a stopped phone keeps its pass for the whole overlap though only the new one gets in."""
    stopped = replace(OLD, reason=Reason.CERTIFICATE_HOLD, since=NOW - DAY)
    assert renewal.over_once_proved([stopped, INSIDE], [FOLLOW], NOW) == (stopped,)
    later = replace(stopped, since=NOW + timedelta(hours=1))
    assert renewal.over_once_proved([later, INSIDE], [FOLLOW], NOW + DAY) == ()


def test_the_day_list_asks_for_the_old_pass_on_the_day_the_overlap_ends() -> None:
    """Broken if it fails: the day list says that an old pass may go today, and it does not."""
    for new, by in ((INSIDE, FOLLOW.overlap_ends), (replace(INSIDE, proofs=(Proof(NOW, ProofWay.TOLD),)), NOW)):
        found = forecast(HOUSE, [OLD, new], {"0b"}, NOW, follows=[FOLLOW])
        assert [one.act_on for one in found if one.act is Act.SUPERSEDE] == [by]


PROOFS = st.lists(st.tuples(st.integers(0, 60), st.sampled_from(list(ProofWay))), max_size=3)
LINE = st.lists(st.tuples(st.integers(1, 90), st.booleans(), PROOFS), min_size=1, max_size=4)


@given(LINE, st.integers(0, 800))
def test_no_day_is_without_a_pass_that_works(line: list[tuple[int, bool, list[tuple[int, ProofWay]]]], at: int) -> None:
    """Broken if it fails: a device renewed several times loses the pass that got it in."""
    now = NOW + at * DAY
    passes, follows = [made("00", 400)], []
    for number, (overlap, handed_over, proofs) in enumerate(line, start=1):
        seen = tuple(sorted(Proof(NOW + day * DAY, way) for day, way in proofs)) if handed_over else ()
        new = made(f"{number:02x}", 730, handed_over=NOW if handed_over else None, proofs=seen)
        follows.append(Follow(new.serial, passes[-1].serial, NOW + overlap * DAY, NOW))
        passes.append(new)
    over = [
        one
        for one in renewal.over_once_proved(passes, follows, now)
        if renewal.may_supersede(one, passes, follows, now)
    ]
    named = renewal.named(over, passes, follows, now)
    for one in over:
        assert one in named or renewal.Lineage(follows).overlap_ends(one.serial) <= now
    left = [one for one in passes if one not in over]
    if any(works(one, now) for one in passes):
        assert any(works(one, now) for one in left)
        assert max(one.not_after for one in left if works(one, now)) == max(
            one.not_after for one in passes if works(one, now)
        )


def test_a_visit_long_before_the_end_is_not_the_last_one() -> None:
    """Broken if it fails: a pass of two years is renewed at a visit next week, for no other one is planned yet."""
    end, midnight = NOW + 400 * DAY, NOW.replace(hour=0, minute=0)
    early, late, same_day = (Visit("Odile", midnight + days * DAY) for days in (9, 399, 400))
    assert renewal.last_visit("Odile", end, [early], NOW) is None
    assert renewal.last_visit("odile", end, [early, late, same_day], NOW) == late.day
    assert renewal.last_visit("Odile", same_day.day + DAY - timedelta(seconds=1), [late, same_day], NOW) == same_day.day
