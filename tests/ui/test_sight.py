"""A sight says what its snapshot says, and shares with the sight before what has not changed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hearthkey.core.outlook import Ends
from hearthkey.core.revocation import Reason
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.entries import people
from hearthkey.ui.sight import Sight, longest, sight, sight_after
from tests.ui.practice import DIARY, NOW, PASSES, entries, made_pass, snapshot


def _again(**other: object) -> Snapshot:
    """The same household, read anew: equal values, other objects."""
    seen = snapshot(NOW + timedelta(minutes=1))
    fresh = {"passes": tuple(replace(one) for one in seen.passes), "diary": tuple(replace(one) for one in seen.diary)}
    return replace(seen, **(fresh | other))  # type: ignore[arg-type]  # fields by name


def test_what_has_not_changed_is_the_same_object() -> None:
    """Every look would be compared value by value on the window's thread."""
    first = sight_after(None, snapshot())
    second = sight_after(first, _again())
    for before, after in ((first.passes, second.passes), (first.diary, second.diary), (first.rows, second.rows)):
        assert len(before) == len(after) > 0
        assert all(one is other for one, other in zip(before, after, strict=True))


def test_what_has_changed_is_new() -> None:
    """A stop would not be seen."""
    first = sight_after(None, snapshot())
    stopped = replace(PASSES[0], reason=Reason.CERTIFICATE_HOLD, since=NOW)
    told = entries(*((one.at, one.verb, one.sentence) for one in DIARY), (NOW, "stop", "Ines’s phone was stopped."))
    second = sight_after(first, _again(passes=(stopped, *PASSES[1:]), diary=told))
    assert second.passes == (stopped, *PASSES[1:])
    assert second.diary == told
    assert list(second.rows) == people(second.passes, second.at)
    assert [one.key for one, other in zip(second.rows, first.rows, strict=True) if one is not other] == [stopped.serial]


def test_a_sight_answers_as_its_snapshot_would() -> None:
    """A panel would show another household than the register holds."""
    guest = made_pass("Boiler engineer", "tablet", made=NOW, ends=NOW + timedelta(days=7), guest=True)
    seen = sight(snapshot(passes=(*PASSES, guest)))
    assert seen.family == ["Ines", "Tomasz", "Odile"]
    assert [one.device for one in seen.waiting.values()] == ["laptop", "tablet"]
    assert seen.names[0] == ["Boiler engineer", "Tomasz", "Odile", "Ines"]
    assert seen.outlook is not None
    assert seen.outlook.ends is Ends.PASS
    assert list(seen.rows) == people(seen.passes, NOW)


def test_no_outlook_before_there_is_a_list() -> None:
    """The headline would promise something about a household that does not exist."""
    assert sight(snapshot(founded=False)).outlook is None


def test_a_sight_stays_itself_and_a_copy_answers_for_itself() -> None:
    """A look would be worked out twice, or one look's answers given for another."""
    seen = sight_after(None, snapshot())
    assert sight(seen) is seen
    fewer = replace(seen, passes=PASSES[:3])
    assert isinstance(fewer, Sight)
    assert fewer.family == ["Ines"]
    assert len(fewer.rows) == 3


def test_longest_names_are_few() -> None:
    """Ten thousand names would be measured."""
    found = longest(f"{number:0{number % 50 + 1}}" for number in range(10_000))
    assert len(found) == 24
    assert [len(one) for one in found] == [50] * 24
