"""The forecast of whole households at any clock: no end without a duty before it, nothing twice, nothing too late."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.duties import Act, Duty, House, agenda, forecast
from hearthkey.core.keepsakes import Keepsakes, PaperNote, StopSetNote, keepsake_duties
from hearthkey.core.outgoing import Outgoing, until_it_goes
from hearthkey.core.outlook import Ends, outlook
from hearthkey.core.passes import Pass
from hearthkey.core.renewal import Follow, Visit, works
from hearthkey.core.revocation import Reason
from hearthkey.core.succession import Carries, Cause, DeviceStep, Succession, succession_due
from hearthkey.core.succession_days import succession_duties
from tests.core.test_duties import DAY, NOW, made
from tests.core.test_succession import NEW, OLD, come_to

PASS_ACTS = {Act.RENEW_PASS, Act.HAND_OVER, Act.GUEST_LEAVES}

MIDNIGHT = NOW.replace(hour=0, minute=0)


@dataclass(frozen=True)
class World:
    """A household at a clock."""

    at: datetime
    house: House
    passes: tuple[Pass, ...]
    proved: frozenset[str]
    follows: tuple[Follow, ...]
    visits: tuple[Visit, ...]

    @property
    def found(self) -> tuple[Duty, ...]:
        """Its forecast."""
        return forecast(self.house, self.passes, self.proved, self.at, follows=self.follows, visits=self.visits)


@st.composite
def worlds(draw: st.DrawFn) -> World:
    """Households with all that ends, a third of them half-way through a succession."""
    days = st.integers(1, 1200)
    passes: list[Pass] = []
    follows: list[Follow] = []
    for number in range(draw(st.integers(0, 5))):
        since = draw(days)
        one = made(
            f"{number:08x}",
            since,
            draw(days),
            guest=draw(st.booleans()),
            handed_over=draw(st.integers(0, 3)) > 0,
            reason=draw(st.sampled_from([None, None, None, Reason.CERTIFICATE_HOLD, Reason.SUPERSEDED])),
        )
        passes.append(one)
        if draw(st.booleans()):
            handed = None if draw(st.booleans()) else NOW
            after = replace(
                one, serial=f"{number:08x}aa", not_before=NOW - DAY, not_after=NOW + draw(days) * DAY,
                handed_over=handed, reason=None, since=None,
            )  # fmt: skip
            passes.append(after)
            overlap = min(one.not_after, NOW + draw(st.integers(1, 90)) * DAY)
            follows.append(Follow(after.serial, one.serial, overlap, NOW - DAY))
    at = NOW + draw(st.integers(0, 730)) * DAY
    found = draw(st.sampled_from([None, None, 1, 2, 3]))
    house, passes = _house(draw, found, passes, at)
    proved = frozenset(one.serial for one in passes if draw(st.booleans()))
    visits = tuple(Visit("Ines", MIDNIGHT + draw(days) * DAY) for _ in range(draw(st.integers(0, 3))))
    return World(at, house, tuple(passes), proved, tuple(follows), visits)


def _house(draw: st.DrawFn, count: int | None, passes: list[Pass], at: datetime) -> tuple[House, list[Pass]]:
    days = st.integers(1, 1200)
    ends = [NOW + draw(days) * DAY for _ in range(4)]
    succession = None if count is None else _succession(count, draw(st.sampled_from(Cause)), NOW + draw(days) * DAY)
    steps: list[DeviceStep] = []
    if succession is not None and succession.new_issues:
        goes = succession_due(succession)
        assert goes is not None
        passes = until_it_goes(passes, Outgoing(frozenset(one.serial for one in passes[::2]), goes), at)
        steps = [
            DeviceStep(one.title, one.identity, draw(st.sampled_from(Carries)), one.not_after, (), one.serial)
            for one in passes
        ]
    keeps = Keepsakes(
        founded=NOW - 400 * DAY,
        papers=(PaperNote(NOW, OLD.fingerprint),) if draw(st.booleans()) else (),
        stop_set=StopSetNote(NOW, 3, 9) if draw(st.booleans()) else None,
        parts=None,
        parts_fresh=True,
        authority=OLD,
        succession=succession,
        list_number=draw(st.integers(3, 4)),
        list_since=NOW,
        newcomer=NOW if draw(st.booleans()) else None,
    )
    part_due = ends[3] if draw(st.booleans()) else None
    authority_end = NOW + 3000 * DAY if succession is None else succession.old.not_after
    waiting = succession_duties(succession, steps, at)
    return House(ends[0], ends[1], authority_end, ends[2], waiting, part_due, keepsake_duties(keeps)), passes


def _succession(count: int, cause: Cause, end: datetime) -> Succession:
    found = come_to(count, cause)
    taken = dict.fromkeys(found.taken, NOW)
    return replace(found, old=replace(OLD, not_after=end), new=NEW, taken=taken)


@settings(max_examples=200, deadline=None)
@given(worlds())
def test_no_date_ends_unannounced_and_nothing_is_said_too_late(world: World) -> None:
    """If this failed, somebody would be locked out on a day that nobody was told of, or be told afterwards."""
    found, house = world.found, world.house
    for act, end in ((Act.SIGN_LIST, house.list_end), (Act.RENEW_GATEWAY, house.gateway_end)):
        assert any(one.act is act and one.act_on < end for one in found)
    last = Act.FINISH_SUCCESSION if house.succession else Act.BEGIN_SUCCESSION
    assert any(one.act is last and one.act_on < house.authority_end for one in found)
    for one in found:
        if one.act in {*PASS_ACTS, Act.SUPERSEDE}:
            assert one.act_on <= one.until
    keys = [one.key for one in found]
    assert len(set(keys)) == len(keys)


@settings(max_examples=200, deadline=None)
@given(worlds())
def test_the_list_is_part_of_the_forecast_and_says_nothing_twice(world: World) -> None:
    """If this failed, the day list would ask twice for one thing, or for what no calendar has."""
    found = world.found
    listed = agenda(found, world.at)
    assert set(listed) <= set(found)
    said = [(one.act, None if one.chosen is None else one.chosen.serial) for one in listed]
    assert len(set(said)) == len(said)


@settings(max_examples=200, deadline=None)
@given(worlds())
def test_what_the_top_line_names_first_has_a_duty(world: World) -> None:
    """If this failed, the top line would name an end, and the list below would know nothing to do about it."""
    house = world.house
    seen = outlook(world.passes, list_end=house.list_end, gateway_end=house.gateway_end, now=world.at)
    listed = agenda(world.found, world.at)
    if seen.first is None:
        act = Act.SIGN_LIST if seen.ends is Ends.LIST else Act.RENEW_GATEWAY
        assert any(one.act is act and one.until == seen.until for one in listed)
        return
    assert works(seen.first, world.at) or seen.first.gets_in(world.at)
    mine = [
        one
        for one in listed
        if one.act in PASS_ACTS
        and one.chosen is not None
        and one.chosen.identity == seen.first.identity
        and one.until == seen.until
    ]
    assert mine
    assert all(one.act_on <= seen.until for one in mine)
