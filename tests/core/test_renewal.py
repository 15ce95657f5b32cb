"""The rules of renewal, without a household: what follows what, what bridges what, and which day is the day to act."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import renewal
from hearthkey.core.duties import Act, Duty, House, forecast
from hearthkey.core.errors import Refused
from hearthkey.core.outlook import Ends, outlook
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.proofs import Proof
from hearthkey.core.proofs import Way as ProofWay
from hearthkey.core.renewal import Follow, Visit, Way
from hearthkey.core.revocation import Reason

NOW = datetime(2027, 5, 12, 9, 30, tzinfo=UTC)
DAY = timedelta(days=1)
HOUSE = House(NOW + 700 * DAY, NOW + 720 * DAY, NOW + 9 * 365 * DAY, NOW + 100 * DAY)


def made(serial: str, days: int, **differs: object) -> Pass:
    """A pass of Odile's tablet that is in use and ends in some days."""
    one = Pass(
        person="Odile",
        device="tablet",
        kind="android-older",
        identity="qc7f3k2m.quince.example",
        serial=serial,
        key_set="compact",
        container="old",
        guest=False,
        not_before=NOW - 700 * DAY,
        not_after=NOW + days * DAY,
        handed_over=NOW - 699 * DAY,
        reason=None,
        since=None,
    )
    return replace(one, **differs)  # type: ignore[arg-type] # its fields, by name


OLD = made("0a", 20)
WAITING = made("0b", 730, handed_over=None)
IN_USE = made("0b", 730, handed_over=NOW - DAY)
PROVED = made("0b", 730, handed_over=NOW - DAY, proofs=(Proof(NOW, ProofWay.TOLD),))
FOLLOW = Follow("0b", "0a", NOW + 20 * DAY, NOW - 2 * DAY)


def deeds(*passes: Pass, visits: tuple[Visit, ...] = ()) -> list[Duty]:
    """What there is to do about passes."""
    found = forecast(HOUSE, passes, {"0a"}, NOW, follows=[FOLLOW], visits=visits)
    return [one for one in found if one.chosen is not None]


def test_both_get_in_for_the_time_that_was_chosen_and_never_past_the_old_ones_end() -> None:
    """Broken if it fails: the sheet draws an overlap in which one of the two is over."""
    assert renewal.overlap_end(made("0a", 400), 30, NOW) == NOW + 30 * DAY
    assert renewal.overlap_end(OLD, 30, NOW) == OLD.not_after


@pytest.mark.parametrize("days", [-1, 0, 3651])
def test_an_overlap_that_is_none_is_refused(days: int) -> None:
    """Broken if it fails: an old pass goes before anybody could take the new one."""
    with pytest.raises(Refused, match="overlap-out-of-range"):
        renewal.overlap_end(OLD, days, NOW)


@pytest.mark.parametrize(
    ("new", "over", "may"),
    [(WAITING, False, False), (IN_USE, False, True), (PROVED, True, True)],
    ids=["waiting", "in use", "proved"],
)
def test_an_old_pass_goes_by_itself_only_once_the_new_one_was_proved(new: Pass, *, over: bool, may: bool) -> None:
    """Broken if it fails: a device loses its pass before the next one is known to work, or keeps both for ever."""
    passes = [OLD, new]
    assert renewal.over_once_proved(passes, [FOLLOW], NOW) == ((OLD,) if over else ())
    assert renewal.may_supersede(OLD, passes, [FOLLOW], NOW) is may


@pytest.mark.parametrize("reason", [Reason.CERTIFICATE_HOLD, Reason.KEY_COMPROMISE])
def test_a_new_pass_that_was_stopped_takes_nobodys_place(reason: Reason) -> None:
    """Broken if it fails: a stolen device whose new pass was stopped takes the old one along, for good."""
    passes = [OLD, replace(PROVED, reason=reason, since=NOW)]
    assert renewal.over_once_proved(passes, [FOLLOW], NOW) == ()
    assert not renewal.may_supersede(OLD, passes, [FOLLOW], NOW)


def test_a_new_pass_that_ends_sooner_bridges_nothing() -> None:
    """Broken if it fails: an old pass is taken away on whose last days the device would have lived."""
    assert not renewal.may_supersede(OLD, [OLD, replace(PROVED, not_after=NOW + 3 * DAY)], [FOLLOW], NOW)


def test_what_follows_what_follows_counts_too() -> None:
    """Broken if it fails: a device renewed twice keeps its first pass for ever."""
    third = replace(PROVED, serial="0c")
    follows = [FOLLOW, Follow("0c", "0b", NOW, NOW)]
    assert renewal.Lineage(follows).successors("0a") == {"0b", "0c"}
    revoked = replace(IN_USE, reason=Reason.SUPERSEDED, since=NOW)
    assert renewal.over_once_proved([OLD, revoked, third], follows, NOW) == (OLD,)


def test_follows_in_a_ring_end() -> None:
    """Broken if it fails: a register that somebody altered hangs the app."""
    assert renewal.Lineage([FOLLOW, Follow("0a", "0b", NOW, NOW)]).successors("0a") == {"0a", "0b"}


def test_a_replaced_device_that_was_let_in_again_goes_once_the_new_one_was_proved() -> None:
    """Broken if it fails: an old phone that was found goes before the new one is known to work, or never."""
    new = replace(IN_USE, identity="other.quince.example")
    follows = [replace(FOLLOW, way=Way.REPLACED)]
    assert not renewal.may_supersede(OLD, [OLD, new], follows, NOW)
    assert renewal.may_supersede(OLD, [OLD, replace(PROVED, identity="other.quince.example")], follows, NOW)
    stopped = replace(OLD, reason=Reason.CERTIFICATE_HOLD, since=NOW)
    assert renewal.may_supersede(stopped, [stopped, new], follows, NOW)


def test_the_day_to_act_is_the_last_visit_before_the_end() -> None:
    """Broken if it fails: the calendar asks for a renewal on a day on which the grandmother is 300 km away."""
    visits = tuple(Visit("odile", NOW.replace(hour=0, minute=0) + days * DAY) for days in (-40, 3, 12, 19, 21))
    (renew,) = deeds(OLD, visits=visits)
    assert (renew.act, renew.act_on) == (Act.RENEW_PASS, visits[3].day)
    (without,) = deeds(OLD, visits=visits[:1])
    assert without.act_on == OLD.not_after - 30 * DAY


def test_a_renewal_in_the_tray_is_to_be_handed_over_not_made_again() -> None:
    """Broken if it fails: the day list asks for a second renewal, and nobody hands the first one over."""
    found = {one.act: one for one in deeds(OLD, WAITING)}
    assert set(found) == {Act.HAND_OVER, Act.RENEW_PASS}
    assert (found[Act.HAND_OVER].chosen, found[Act.HAND_OVER].until) == (WAITING, OLD.not_after)
    assert found[Act.RENEW_PASS].chosen == WAITING


def test_a_renewal_whose_key_is_lost_is_to_be_made_again() -> None:
    """Broken if it fails: the day list asks to hand over what nobody can, and rounds leave the device out."""
    lost = replace(WAITING, key_lost=True)
    assert [(one.act, one.chosen) for one in deeds(OLD, lost)] == [(Act.RENEW_PASS, OLD)]
    assert renewal.due_by([OLD, lost], [FOLLOW], OLD.not_after, NOW) == [OLD]
    assert renewal.due_by([OLD, WAITING], [FOLLOW], OLD.not_after, NOW) == []
    assert lost not in [one.chosen for one in deeds(OLD, lost, replace(WAITING, serial="0c"))]


def test_a_device_whose_only_key_is_lost_wants_a_new_pass_at_once() -> None:
    """Broken if it fails: somebody waits two years for a pass that never comes."""
    lost = replace(WAITING, key_lost=True)
    (duty,) = deeds(lost)
    assert (duty.act, duty.chosen, duty.overdue(NOW)) == (Act.RENEW_PASS, lost, True)
    assert renewal.overlap_end(lost, 30, NOW) == NOW


def test_the_forecast_takes_the_newest_pass_of_a_device() -> None:
    """Broken if it fails: the top line threatens with the end of a pass that nobody needs any more."""
    found = {one.act: one for one in deeds(OLD, IN_USE)}
    assert found[Act.RENEW_PASS].chosen == IN_USE
    assert (found[Act.SUPERSEDE].chosen, found[Act.SUPERSEDE].act_on) == (OLD, FOLLOW.overlap_ends)
    seen = outlook([OLD, IN_USE], list_end=HOUSE.list_end, gateway_end=HOUSE.gateway_end, now=NOW)
    assert (seen.ends, seen.first) == (Ends.LIST, None)
    not_yet = outlook([OLD, WAITING], list_end=HOUSE.list_end, gateway_end=HOUSE.gateway_end, now=NOW)
    assert not_yet.first == OLD


PASSES = st.lists(
    st.builds(
        lambda serial, device, days, handed_over, reason: made(
            serial.hex,
            days,
            identity=f"{device}.quince.example",
            handed_over=NOW - DAY if handed_over else None,
            reason=reason,
        ),
        st.uuids(),
        st.sampled_from("abc"),
        st.integers(1, 900),
        st.booleans(),
        st.sampled_from([None, None, Reason.CERTIFICATE_HOLD, Reason.SUPERSEDED]),
    ),
    max_size=6,
)


@given(PASSES)
def test_no_device_loses_access_without_a_day_to_act_before(passes: list[Pass]) -> None:
    """Broken if it fails: of a device with several passes the one that counts has no duty."""
    duties = forecast(HOUSE, passes, frozenset(), NOW)
    for device in {one.identity for one in passes}:
        mine = [one for one in passes if one.identity == device and one.state(NOW) in LIVING]
        ends = [one.not_after for one in mine]
        if ends and all(one.gets_in(NOW) for one in mine):
            acts = [one for one in duties if one.chosen is not None and one.chosen.identity == device]
            assert any(one.act is Act.RENEW_PASS and one.until == max(ends) for one in acts)
            assert all(one.act_on < one.until for one in acts if one.act is not Act.PROVE)


@given(PASSES, st.integers(1, 900))
def test_a_round_takes_each_device_at_most_once_and_none_that_lasts(passes: list[Pass], days: int) -> None:
    """Broken if it fails: a round makes two passes for one device, or one for a device that is well."""
    until = NOW + days * DAY
    due = renewal.due_by(passes, [], until, NOW)
    assert len({one.identity for one in due}) == len(due)
    for one in due:
        best = max(p.not_after for p in passes if p.identity == one.identity and renewal.works(p, NOW))
        assert best == one.not_after <= until


def test_ten_thousand_renewals_are_looked_through_one_by_one() -> None:
    """Broken if it fails: the list of days takes minutes in a household that has renewed for years."""

    class Counted(Follow):
        """A follow that counts how often it is read."""

        reads = 0

        def __getattribute__(self, name: str) -> object:
            if name == "old":
                Counted.reads += 1
            return super().__getattribute__(name)

    passes = [made(f"{number:04x}", 900 + number % 7, identity=f"{number // 2}.example") for number in range(2000)]
    follows = [Counted(f"{number + 1:04x}", f"{number:04x}", NOW, NOW) for number in range(0, 2000, 2)]
    forecast(HOUSE, passes, frozenset(), NOW, follows=follows)
    renewal.over_once_proved(passes, follows, NOW)
    renewal.due_by(passes, follows, NOW + 900 * DAY, NOW)
    assert Counted.reads < 10 * len(follows)


def test_what_replaces_an_old_device_is_proved_before_the_old_one_is_asked_about() -> None:
    """Broken if it fails: the day list asks to give up an old phone for one that nobody has seen work."""
    stopped = replace(OLD, reason=Reason.CERTIFICATE_HOLD, since=NOW)
    follows = [replace(FOLLOW, way=Way.REPLACED, overlap_ends=NOW - DAY)]
    for new, asked in ((IN_USE, []), (PROVED, [stopped])):
        passes = [stopped, replace(new, identity="other.quince.example")]
        found = forecast(HOUSE, passes, {"0b"}, NOW, follows=follows)
        assert [one.chosen for one in found if one.act is Act.SUPERSEDE] == asked


def test_an_old_device_that_was_let_in_again_is_renewed_like_any_other() -> None:
    """Broken if it fails: whoever goes on with the old phone loses it at its end, in spite of every round."""
    follows = [replace(FOLLOW, way=Way.REPLACED)]
    passes = [OLD, replace(WAITING, identity="other.quince.example")]
    assert renewal.due_by(passes, follows, NOW + 60 * DAY, NOW) == [OLD]
