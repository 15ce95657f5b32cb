"""What can be said of a copy, and when somebody is asked about a stick."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from hearthkey.core.copies import (
    SETTLED_DOWN,
    Came,
    Copy,
    CopyFile,
    CopyWay,
    Found,
    Standing,
    outcome,
    standing,
    to_ask_about,
    told,
    unaccounted,
)
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import copies as sentences

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
LAPTOP = Pass(
    person="Tomasz",
    device="laptop",
    kind="linux",
    identity="maple-0417.quince.example",
    serial="a1",
    key_set="compact",
    container="strong",
    guest=False,
    not_before=NOW - timedelta(days=30),
    not_after=NOW + timedelta(days=500),
    handed_over=None,
    reason=None,
    since=None,
)
HANDED = replace(LAPTOP, handed_over=NOW - timedelta(days=1))
STICK = Copy(
    serial="a1",
    form="pkcs12",
    way=CopyWay.STICK,
    place="QUINCE",
    folder="/media/tomasz/QUINCE",
    files=(CopyFile("tomasz-laptop.p12", "0" * 32),),
    made=NOW - timedelta(hours=2),
    came=Came.MADE,
    number=1,
)


@pytest.mark.parametrize(
    ("copy", "of", "expected"),
    [
        (STICK, LAPTOP, Standing.OUT),
        (replace(STICK, came=Came.EXPECTED), LAPTOP, Standing.PERHAPS),
        (replace(STICK, tidied=NOW), LAPTOP, Standing.TIDIED),
        (STICK, replace(LAPTOP, reason=Reason.KEY_COMPROMISE, since=NOW), Standing.HARMLESS),
        (STICK, replace(LAPTOP, reason=Reason.CERTIFICATE_HOLD, since=NOW), Standing.OUT),
        (STICK, replace(LAPTOP, not_after=NOW - timedelta(seconds=1)), Standing.HARMLESS),
    ],
)
def test_what_can_be_said_of_a_copy(copy: Copy, of: Pass, expected: Standing) -> None:
    """Broken if it fails: a copy that lets somebody in is called harmless; a stopped pass may come back."""
    assert standing(copy, of, NOW) is expected
    (one,) = told([copy], [of], NOW)
    assert (one in unaccounted([one])) is (expected in {Standing.OUT, Standing.PERHAPS})
    for sentence in (sentences.form(copy), sentences.described(one, "codes"), sentences.standing(one)):
        assert "unknown" not in str(sentence)
        assert "{" not in str(sentence)


@pytest.mark.parametrize(
    ("copy", "of", "plugged_in", "asks"),
    [
        (STICK, HANDED, (), True),
        (STICK, LAPTOP, (), False),
        (STICK, LAPTOP, ("QUINCE",), True),
        (STICK, LAPTOP, ("/media/tomasz/QUINCE",), True),
        (STICK, LAPTOP, ("OTHER",), False),
        (replace(STICK, made=NOW - SETTLED_DOWN + timedelta(seconds=1)), LAPTOP, ("QUINCE",), False),
        (replace(STICK, tidied=NOW), HANDED, ("QUINCE",), False),
        (replace(STICK, way=CopyWay.FOLDER), HANDED, ("QUINCE",), False),
        (STICK, replace(HANDED, reason=Reason.SUPERSEDED, since=NOW), ("QUINCE",), False),
    ],
)
def test_when_somebody_is_asked_about_a_stick(copy: Copy, of: Pass, plugged_in: tuple[str, ...], *, asks: bool) -> None:
    """Broken if it fails: people are asked while the stick is on its way, or never."""
    assert bool(to_ask_about(told([copy], [of], NOW), plugged_in, NOW)) is asks


def test_copies_stand_by_device_the_newest_first() -> None:
    """Broken if it fails: the copies of one device stand in two places of the list."""
    renewed = replace(LAPTOP, serial="a2")
    phone = replace(LAPTOP, serial="b1", person="Ines", identity="ash-0001.quince.example")
    copies = [
        replace(STICK, serial=serial, made=NOW - timedelta(hours=hours), number=number)
        for number, (serial, hours) in enumerate([("a1", 9), ("b1", 1), ("a2", 3), ("a1", 2), ("zz", 1)], 1)
    ]
    copies.append(replace(STICK, came=Came.NEVER, number=9))
    assert [one.copy.number for one in told(copies, [LAPTOP, phone, renewed], NOW)] == [4, 3, 1, 2]


@pytest.mark.parametrize(
    ("states", "expected"),
    [
        ([Found.OURS, Found.OURS], Found.OURS),
        ([Found.OURS, Found.GONE], Found.PARTLY),
        ([Found.GONE], Found.GONE),
        ([Found.OURS, Found.CHANGED], Found.CHANGED),
        ([Found.GONE, Found.CHANGED], Found.CHANGED),
        ([Found.OURS, Found.AWAY], Found.AWAY),
    ],
)
def test_one_changed_file_keeps_the_whole_copy(states: list[Found], expected: Found) -> None:
    """Broken if it fails: a foreign file among ours is deleted with them."""
    assert outcome(states) is expected
