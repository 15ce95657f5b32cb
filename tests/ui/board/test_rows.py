"""Every state of the sheet, drawn as a line of text."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from hearthkey.core.proofs import Proof, Way
from hearthkey.core.revocation import Reason
from hearthkey.services.opening import Door
from hearthkey.ui.board.house import house_row
from hearthkey.ui.board.life import MOST_TICKS, draft_row, pass_row
from hearthkey.ui.board.rows import Step
from hearthkey.ui.entries import Draft, people
from hearthkey.ui.sight import sight
from tests.ui.board.drawing import drawing
from tests.ui.practice import NOW, PASSES, made_pass, snapshot

SHEET = (
    "Ines  phone  ◌ never proved, in use since 12 April  9 May 2028  → Prove it  [o╌╌◇══|] INK",
    "Ines  tablet  ▲ 3 weeks left, then it ends  2 Jun 2026  → Renew  [o╌╌◇══|] DUE",
    "Ines  old phone  ⯂ revoked 11 April, final  final  [o──◇──‖] PAST",
    "Tomasz  laptop  ◔ waiting, in the tray  11 May 2028  → Hand over  [o╌╌|] INK",
    "Tomasz  work laptop  ◌ never proved, in use since 21 April  19 Apr 2028  → Prove it  [o╌╌◇══|] INK",
    "Tomasz  old phone  ⯃ stopped 3 March, can be let back in  8 Nov 2026  → Let back in  [o╌╌◇══|··'] HELD",
    "Odile  phone  ◌ never proved, in use since 31 October 2025  30 Oct 2027  → Prove it  [o╌╌◇══|] INK",
    "Odile  reader  ◪ ended 31 January  31 Jan 2026  [o──◇──|] PAST",
    "Boiler engineer  phone  ⧗ guest, ends Friday 15 May  15 May 2026  → Prove it  [o╌╌◇══|] INK",
)

HOUSE = {
    "gateway": "The house  gateway  ◌ never proved, its certificate is made  3 Aug 2028  [══|] INK",
    "list": "The house  revocation list  ● no. 42, signed 11 Apr 2026  19 Jun 2028  [━━|] INK",
    "ca": "The house  CA  ● kept, in the keyring  8 May 2036  [━━|] INK",
}


@pytest.mark.parametrize(("number", "drawn"), list(enumerate(SHEET)))
def test_state_is_drawn(number: int, drawn: str) -> None:
    """A pass of the practice household would be shown in another state than the one it is in."""
    assert drawing(pass_row(PASSES[number], NOW)) == drawn


@pytest.mark.parametrize(("key", "drawn"), list(HOUSE.items()))
def test_house_is_drawn(key: str, drawn: str) -> None:
    """The rows that let everybody in would say something else than is known."""
    assert drawing(house_row(key, snapshot())) == drawn


PROVED = (
    (
        (Proof(datetime(2026, 4, 20, tzinfo=UTC), Way.TUNNEL, "203.0.113.10"),),
        "Ines  phone  ● in use, proved 20 April  9 May 2028  [o╌╌◇══+━━|] INK",
    ),
    (
        (
            Proof(datetime(2026, 4, 20, tzinfo=UTC), Way.TUNNEL, "203.0.113.10"),
            Proof(datetime(2026, 5, 2, tzinfo=UTC), Way.TOLD),
        ),
        "Ines  phone  ● in use, said to work, 2 May  9 May 2028  [o╌╌◇══+━━|] INK",
    ),
)


@pytest.mark.parametrize(("proofs", "drawn"), PROVED)
def test_a_proof_makes_the_line_solid(proofs: tuple[Proof, ...], drawn: str) -> None:
    """Broken if it fails: what was seen to get in looks like what nobody has seen; or hearsay looks like a proof."""
    row = pass_row(replace(PASSES[0], proofs=proofs), NOW)
    assert drawing(row) == drawn
    assert row.spoken.startswith("Ines, phone: in use, ")
    told = [event.text for event in row.events]
    assert told.count("proved") + told.count("said to work") == len(proofs)


def test_a_proof_before_the_key_is_erased_here_still_wants_the_hand_over() -> None:
    """Broken if it fails: a device that picked its bundle up and works leaves its key here for good."""
    row = pass_row(replace(PASSES[3], proofs=PROVED[0][0]), NOW)
    assert (row.word, row.fact, row.step) == ("waiting", "proved 20 April, its key is still here", Step.HAND_OVER)


def test_what_is_renewed_already_is_not_offered_again() -> None:
    """Broken if it fails: a row says "Renew" though the next pass of its device waits in the tray, or works already."""
    tablet = next(one for one in PASSES if one.device == "tablet")
    next_one = replace(tablet, serial="77" * 12, not_after=tablet.not_after.replace(year=2028), handed_over=None)
    for after, followed in (((), False), ((next_one,), True), ((replace(next_one, handed_over=NOW),), True)):
        seen = sight(snapshot(passes=(tablet, *after)))
        assert (tablet.serial in seen.followed) is followed
        assert pass_row(tablet, NOW, followed=followed).step is (None if followed else Step.RENEW)


def test_a_thousand_proofs_draw_a_few_ticks() -> None:
    """Broken if it fails: a device that is proved every day makes its row slow."""
    proof = PROVED[0][0][0]
    assert len(pass_row(replace(PASSES[0], proofs=(proof,) * 1000), NOW).marks) == 3 + MOST_TICKS


def _day(year: int, month: int, day: int) -> datetime:
    return datetime(year, month, day, 12, tzinfo=UTC)


OTHERS = (
    (
        made_pass("Ines", "watch", made=_day(2026, 5, 1), ends=_day(2026, 6, 1), guest=False),
        "Ines  watch  ▲ 2 weeks left, then it ends  1 Jun 2026  → Hand over  [o╌╌|] DUE",
    ),
    (
        made_pass("Ines", "watch", made=_day(2026, 5, 11), ends=_day(2026, 5, 18), guest=True),
        "Ines  watch  ⧗ guest, in the tray, ends Monday 18 May  18 May 2026  → Hand over  [o╌╌|] INK",
    ),
    (
        made_pass(
            "Ines",
            "watch",
            made=_day(2026, 5, 1),
            ends=_day(2028, 5, 1),
            reason=Reason.CERTIFICATE_HOLD,
            since=_day(2026, 5, 9),
        ),
        "Ines  watch  ⯃ stopped 9 May, can be let back in  1 May 2028  → Let back in  [o╌╌|··'] HELD",
    ),
    (
        made_pass(
            "Ines",
            "watch",
            made=_day(2026, 5, 1),
            ends=_day(2028, 5, 1),
            reason=Reason.SUPERSEDED,
            since=_day(2026, 5, 9),
        ),
        "Ines  watch  ⯂ revoked 9 May, final  final  [o──‖] PAST",
    ),
    (
        made_pass("Ines", "watch", made=_day(2024, 5, 1), ends=_day(2026, 5, 1)),
        "Ines  watch  ◪ ended 1 May  1 May 2026  [o──|] PAST",
    ),
)


@pytest.mark.parametrize(("one", "drawn"), OTHERS)
def test_rarer_states_are_drawn(one: object, drawn: str) -> None:
    """A pass that was never handed over would be drawn as if it had been, or a final one as if it could come back."""
    assert drawing(pass_row(one, NOW)) == drawn  # type: ignore[arg-type]  # the table holds passes


@pytest.mark.parametrize(
    ("end", "drawn"),
    [
        (_day(2028, 5, 24), "Odile  tablet  ○ draft, not made yet  24 May 2028  [..'] DRAFT"),
        (None, "Odile  tablet  ○ draft, not made yet    [] DRAFT"),
    ],
)
def test_draft_is_drawn(end: datetime | None, drawn: str) -> None:
    """A device that is being typed in would look like one that exists."""
    assert drawing(draft_row(Draft("Odile", "tablet", end), NOW)) == drawn


@pytest.mark.parametrize(
    ("number", "spoken"),
    [
        (0, "Ines, phone: never proved, in use since 12 April, until 9 May 2028"),
        (1, "Ines, tablet: 3 weeks left, until 2 June 2026"),
        (2, "Ines, old phone: revoked 11 April, final"),
        (3, "Tomasz, laptop: waiting, in the tray, until 11 May 2028"),
        (5, "Tomasz, old phone: stopped 3 March, can be let back in, would run until 8 November 2026"),
        (7, "Odile, reader: ended 31 January"),
        (8, "Boiler engineer, phone: guest, ends Friday 15 May"),
    ],
)
def test_row_is_spoken_in_one_sentence(number: int, spoken: str) -> None:
    """Whoever hears the sheet would not learn whose device is in which state until when."""
    assert pass_row(PASSES[number], NOW).spoken == spoken


def test_read_only_offers_no_step() -> None:
    """A second copy would offer what it may not do."""
    assert all(pass_row(one, NOW, read_only=True).step is None for one in PASSES)


@pytest.mark.parametrize(
    ("now", "drawn"),
    [
        (datetime(2028, 6, 1, tzinfo=UTC), "▲ 18 days left, then nobody gets in"),
        (datetime(2028, 6, 18, 23, tzinfo=UTC), "▲ 1 day left, then nobody gets in"),
        (datetime(2028, 6, 19, 12, tzinfo=UTC), "▲ ends today, then nobody gets in"),
        (datetime(2028, 7, 1, tzinfo=UTC), "▲ ended 19 Jun 2028, nobody gets in"),
    ],
)
def test_list_wants_somebody_before_it_ends(now: datetime, drawn: str) -> None:
    """The list would end, and lock everybody out, without a red line on the sheet."""
    assert drawn in drawing(house_row("list", snapshot(now)))


def test_gateway_wants_somebody_before_it_ends() -> None:
    """The gateway's certificate would end unseen."""
    row = drawing(house_row("gateway", snapshot(datetime(2028, 7, 20, tzinfo=UTC))))
    assert "▲ 14 days left, then devices turn away from it" in row


def test_key_that_cannot_be_seen_is_not_called_kept() -> None:
    """With a locked keyring the sheet would promise a key that nobody has looked at."""
    row = house_row("ca", replace(snapshot(), door=Door.KEYRING_LOCKED))
    assert "? not known, the keyring gives no key" in drawing(row)


def test_what_has_ended_stands_below_what_has_not() -> None:
    """An old phone would stand between two that get in."""
    passes = (PASSES[2], PASSES[0], PASSES[7], PASSES[1], PASSES[6])
    keys = [(entry.who, getattr(entry.source, "device", "")) for entry in people(passes, NOW)]
    assert keys == [
        ("Ines", "phone"),
        ("Ines", "tablet"),
        ("Ines", "old phone"),
        ("Odile", "phone"),
        ("Odile", "reader"),
    ]


def test_draft_joins_its_person() -> None:
    """A device that is typed in for Ines would stand at the foot of the sheet, away from hers."""
    found = people(PASSES, NOW, Draft("Ines", "watch", None))
    assert [entry.key for entry in found].index("draft") == 2
    assert [entry.count for entry in found[:4]] == [4, 4, 4, 4]


def test_a_renewed_device_is_one_device() -> None:
    """Broken if it fails: the sheet counts a device twice while its old pass and its new one get in."""
    phone, tablet, *_ = PASSES
    again = replace(phone, serial="0b" * 12)
    assert [one.devices for one in people((phone, again), NOW)] == [1, 1]
    assert [one.devices for one in people((phone, again, tablet), NOW)] == [2, 2, 2]
