"""Quince Cottage as one snapshot made of values alone, for pictures and for tests of the window."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from ipaddress import ip_network

from hearthkey.core.certificates import end_of_day
from hearthkey.core.diary import FIRST_LINK, DiaryEntry, link_of
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason, SignedList
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from tests.fakes.kinds import KINDS

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
"""Tuesday 12 May 2026, half past nine."""

HOUSEHOLD = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(ip_network("198.51.100.0/24"), ip_network("2001:db8:51::/64")),
    tunnel_subnet=ip_network("203.0.113.0/24"),
    dns_servers=("198.51.100.1",),
    tunnel="split",
    practice=True,
)
AUTHORITY = Authority(
    certificate=b"",
    fingerprint="c1" * 32,
    not_after=datetime(2036, 5, 8, 9, 0, tzinfo=UTC),
    key_place="keyring",
)
GATEWAY = Gateway(
    host="home.quince.example",
    serial="5a910ce7441db8027f3c11aa",
    certificate=b"",
    sealed_key=b"",
    not_after=datetime(2028, 8, 3, 9, 0, tzinfo=UTC),
)
LIST_42 = SignedList(
    number=42, der=b"", this_update=datetime(2026, 4, 11, 18, 0, tzinfo=UTC), next_update=end_of_day(2028, 6, 19)
)


def made_pass(
    person: str,
    device: str,
    *,
    made: datetime,
    ends: datetime,
    kind: str = "android",
    code: str = "",
    handed_over: datetime | None = None,
    guest: bool = False,
    reason: Reason | None = None,
    since: datetime | None = None,
) -> Pass:
    """A pass with everything that the look does not depend on filled in.

    Args:
        made: when it was made; its certificate begins a day earlier.
        code: the first part of its identity; drawn from the names where it is empty.
    """
    drawn = code or f"{person[:2]}{device[:4]}".casefold().replace(" ", "x").ljust(8, "7")
    return Pass(
        person=person,
        device=device,
        kind=kind,
        identity=f"{drawn}.quince.example",
        serial=f"{person}/{device}".encode().hex()[:24].ljust(24, "0"),
        key_set="broad" if kind != "linux" else "compact",
        container="strong",
        guest=guest,
        not_before=made - timedelta(days=1),
        not_after=ends,
        handed_over=handed_over,
        reason=reason,
        since=since,
    )


def _at(year: int, month: int, day: int, hour: int = 10) -> datetime:
    return datetime(year, month, day, hour, tzinfo=UTC)


PASSES = (
    made_pass("Ines", "phone", made=_at(2026, 4, 11), handed_over=_at(2026, 4, 12), ends=end_of_day(2028, 5, 9)),
    made_pass("Ines", "tablet", made=_at(2024, 6, 3), handed_over=_at(2024, 6, 4), ends=end_of_day(2026, 6, 2)),
    made_pass(
        "Ines",
        "old phone",
        made=_at(2024, 9, 1),
        handed_over=_at(2024, 9, 2),
        ends=end_of_day(2026, 9, 1),
        reason=Reason.KEY_COMPROMISE,
        since=_at(2026, 4, 11, 18),
    ),
    made_pass("Tomasz", "laptop", made=_at(2026, 5, 12, 8), ends=end_of_day(2028, 5, 11), kind="linux"),
    made_pass(
        "Tomasz",
        "work laptop",
        made=_at(2026, 4, 20),
        handed_over=_at(2026, 4, 21),
        ends=end_of_day(2028, 4, 19),
        kind="windows",
    ),
    made_pass(
        "Tomasz",
        "old phone",
        made=_at(2024, 11, 8),
        handed_over=_at(2024, 11, 9),
        ends=end_of_day(2026, 11, 8),
        reason=Reason.CERTIFICATE_HOLD,
        since=_at(2026, 3, 3),
    ),
    made_pass(
        "Odile",
        "phone",
        made=_at(2025, 10, 30),
        handed_over=_at(2025, 10, 31),
        ends=end_of_day(2027, 10, 30),
        kind="iphone",
    ),
    made_pass("Odile", "reader", made=_at(2024, 1, 31), handed_over=_at(2024, 2, 1), ends=end_of_day(2026, 1, 31)),
    made_pass(
        "Boiler engineer",
        "phone",
        made=_at(2026, 5, 8),
        handed_over=_at(2026, 5, 8, 12),
        ends=end_of_day(2026, 5, 15),
        guest=True,
    ),
)


def entries(*told: tuple[datetime, str, str]) -> tuple[DiaryEntry, ...]:
    """Diary entries, chained, from moments, verbs and sentences."""
    found: list[DiaryEntry] = []
    previous = FIRST_LINK
    for number, (at, verb, sentence) in enumerate(told, 1):
        previous = link_of(previous, number=number, at=at, verb=verb, sentence=sentence)
        found.append(DiaryEntry(number, at, verb, sentence, previous))
    return tuple(found)


DIARY = entries(
    (_at(2024, 1, 30), "found", "Quince Cottage (practice) was founded. Its CA ends 8 May 2036."),
    (_at(2026, 3, 3), "stop", "Tomasz’s old phone was stopped with revocation list 41."),
    (
        _at(2026, 4, 11, 18),
        "revoke",
        "Ines’s old phone was revoked for good with revocation list 42: it was lost or stolen (keyCompromise).",
    ),
    (
        _at(2026, 5, 12, 8),
        "add",
        "Tomasz’s laptop got a pass until 11 May 2028, serial 546f6d61737a2f6c6170746f. Its bundle waits in the tray.",
    ),
)


def snapshot(
    now: datetime = NOW,
    *,
    passes: tuple[Pass, ...] = PASSES,
    diary: tuple[DiaryEntry, ...] = DIARY,
    misfit: int | None = None,
    locked: bool = False,
    read_only: bool = False,
    founded: bool = True,
) -> Snapshot:
    """The household of the pictures at a moment, without proofs, for there are none yet."""
    return Snapshot(
        at=now,
        door=Door.READY if founded else Door.NO_HOUSEHOLD,
        locked=locked,
        read_only=read_only,
        household=HOUSEHOLD if founded else None,
        authority=AUTHORITY if founded else None,
        gateway=GATEWAY if founded else None,
        newest_list=LIST_42 if founded else None,
        passes=passes if founded else (),
        diary=diary if founded else (),
        diary_misfit=misfit,
        kinds=KINDS,
    )
