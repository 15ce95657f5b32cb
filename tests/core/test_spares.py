"""Spare stop lists: what is signed in advance, and which one may be used when."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Entry, Reason
from hearthkey.core.spares import MOST, Scope, SpareList, choose, plan_spares, wider

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
END = NOW + timedelta(days=3000)


def made(number: int, person: str, *, ends: int = 400, reason: Reason | None = None) -> Pass:
    """A pass in use, on a device of its own."""
    return Pass(
        person=person,
        device=f"device {number}",
        kind="linux",
        identity=f"id{number}.quince.example",
        serial=f"{number:02x}",
        key_set="compact",
        container="strong",
        guest=False,
        not_before=NOW - timedelta(days=1),
        not_after=NOW + timedelta(days=ends),
        handed_over=NOW,
        reason=reason,
        since=None if reason is None else NOW,
    )


FAMILY = [made(1, "Ines"), made(2, "Ines"), made(3, "Tomasz"), made(4, "Odile")]


def planned(passes: list[Pass], entries: list[Entry] | None = None) -> list[SpareList]:
    """The spare lists of a household whose newest list is number 7."""
    plans = plan_spares(
        passes, entries or [], highest_number=7, previous_update=NOW, authority_end=END, now=NOW
    )  # fmt: skip
    return [SpareList(one.scope, one.subject, one.serials, 7, one.to_sign.number) for one in plans]


def test_there_is_one_for_each_device_each_person_and_everybody() -> None:
    """Broken if it fails: somebody’s phone cannot be stopped while the household is locked."""
    scopes = [(one.scope, one.subject) for one in planned(FAMILY)]
    assert scopes == [
        *((Scope.DEVICE, f"id{number}.quince.example") for number in (1, 2, 3, 4)),
        *((Scope.PERSON, person) for person in ("Ines", "Tomasz", "Odile")),
        (Scope.EVERYBODY, ""),
    ]


def test_numbers_are_unique_and_rise_with_the_scope() -> None:
    """Broken if it fails: a wider list could not follow a narrower one (RFC 5280 section 5.2.3)."""
    assert [one.number for one in planned(FAMILY)] == list(range(8, 16))


def test_who_is_out_already_stays_on_every_spare_list() -> None:
    """Broken if it fails: stopping one phone lets another back in."""
    out = Entry("0f", NOW, Reason.KEY_COMPROMISE, END)
    plans = plan_spares(FAMILY, [out], highest_number=7, previous_update=NOW, authority_end=END, now=NOW)
    assert all(out in plan.to_sign.entries for plan in plans)
    added = {entry.reason for plan in plans for entry in plan.to_sign.entries if entry.serial != "0f"}
    assert added == {Reason.CERTIFICATE_HOLD}


def test_a_big_household_gets_lists_for_people_only() -> None:
    """Broken if it fails: an unlock of a club with a thousand devices signs a thousand lists."""
    many = [made(number, f"person {number % 7}") for number in range(MOST + 1)]
    assert {one.scope for one in planned(many)} == {Scope.PERSON, Scope.EVERYBODY}
    strangers = [made(number, f"person {number}") for number in range(MOST + 1)]
    assert {one.scope for one in planned(strangers)} == {Scope.EVERYBODY}


def test_nobody_to_stop_needs_no_list() -> None:
    """Broken if it fails: lists pile up that stop nobody."""
    assert planned([made(1, "Ines", reason=Reason.CERTIFICATE_HOLD), made(2, "Odile", ends=-1)]) == []


def test_the_second_device_takes_the_list_that_covers_both() -> None:
    """Broken if it fails: the second stop without a passphrase lets the first phone back in."""
    spares = planned(FAMILY)
    first = choose(spares, frozenset({"01"}), newest_number=7, used=[])
    assert first is not None
    assert first.scope is Scope.DEVICE
    second = choose(spares, frozenset({"02"}), newest_number=first.number, used=[first])
    assert second is not None
    assert (second.scope, second.subject) == (Scope.PERSON, "Ines")
    third = choose(spares, frozenset({"04"}), newest_number=second.number, used=[first, second])
    assert third is not None
    assert third.scope is Scope.EVERYBODY
    assert wider(spares, newest_number=third.number, used=[first, second, third]) is None


def test_lists_from_before_the_newest_ordinary_one_are_never_used() -> None:
    """Broken if it fails: a stale list forgets who was revoked since."""
    assert choose(planned(FAMILY), frozenset({"01"}), newest_number=40, used=[]) is None


@given(st.lists(st.sampled_from(FAMILY), min_size=1, max_size=8), st.data())
def test_no_order_of_stops_lets_anybody_back_in(order: list[Pass], data: st.DataObject) -> None:
    """Broken if it fails: some order of two losses forgets one of them."""
    spares = planned(FAMILY)
    used: list[SpareList] = []
    newest, out = 7, frozenset[str]()
    for one in order:
        wish = frozenset({one.serial}) if data.draw(st.booleans()) else frozenset(p.serial for p in FAMILY)
        found = choose(spares, wish, newest_number=newest, used=used)
        if found is None:
            assert out == {p.serial for p in FAMILY} or not wish - out or newest >= spares[-1].number
            continue
        assert found.number > newest
        assert out | wish <= found.serials
        out, newest = found.serials, found.number
        used.append(found)
