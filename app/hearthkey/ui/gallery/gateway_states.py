"""What the pictures show of the gateway: the household as it would be with one, in each of its states."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

from hearthkey.core.delivery import Delivered, DeliveryPlan, Differs
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.in_force import GatewayNote, GatewayState, Standing
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import By, HostKey, Target
from hearthkey.services.snapshot import Snapshot

KEY = HostKey(
    # The key of RFC 8032 section 7.1 test 1, in the form of RFC 8709 section 4.
    "ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAAINdamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea",
    "SHA256:bbXpuKG6zhzdmnxq256TlqzFBzRl2f6OOg722cYNbU8",
)
DOOR = Target(By.SSH, "door", host="home.quince.example", user="ines", reload="sudo /usr/local/bin/read-lists")
PINNED = DOOR.pinned(KEY)

Change = Callable[[Snapshot], Snapshot]


def _note(seen: Snapshot, **changes: object) -> GatewayNote:
    """The gateway as it was read back after the newest list was delivered, but for some changes."""
    newest, gateway = seen.newest_list, seen.gateway
    whole = GatewayNote(
        looked=seen.at - timedelta(minutes=12),
        set_id="42-0af3c19b",
        list_number=None if newest is None else newest.number,
        list_until=None if newest is None else newest.next_update,
        gateway_serial="" if gateway is None else gateway.serial,
        gateway_until=None if gateway is None else gateway.not_after,
        clock_off=1,
        delivered=seen.at - timedelta(days=31),
    )
    return replace(whole, **changes)  # type: ignore[arg-type]  # names of GatewayNote


def standing(
    seen: Snapshot,
    what: Standing,
    *,
    target: Target | None = PINNED,
    waiting: tuple[str, ...] = (),
    other_changes: bool = False,
    **note: object,
) -> Snapshot:
    """A household of one's own with a gateway that stands like that."""
    number = 0 if seen.newest_list is None else seen.newest_list.number
    noted = GatewayNote() if target is None else _note(seen, **note)
    household = None if seen.household is None else replace(seen.household, practice=False)
    state = GatewayState(what, target, noted, number, waiting, other_changes)
    return replace(seen, household=household, gateway_state=state)


def _older(seen: Snapshot) -> int:
    return 0 if seen.newest_list is None else seen.newest_list.number - 1


STATES: dict[str, Change] = {
    "practice": lambda seen: seen,
    "no-target": lambda seen: standing(seen, Standing.NO_TARGET, target=None),
    "never": lambda seen: standing(
        seen,
        Standing.NEVER,
        looked=None,
        set_id=None,
        list_number=None,
        list_until=None,
        gateway_until=None,
        delivered=None,
        clock_off=None,
    ),
    "in-force": lambda seen: standing(seen, Standing.IN_FORCE),
    "list-waits": lambda seen: standing(seen, Standing.WAITING, list_number=_older(seen)),
    "not-in-force": lambda seen: standing(seen, Standing.WAITING, list_number=_older(seen), waiting=("Ines’s phone",)),
    "settings-wait": lambda seen: standing(seen, Standing.WAITING, other_changes=True),
    "not-loaded": lambda seen: standing(seen, Standing.NOT_LOADED, reload_said="read-lists: not found"),
    "unknown": lambda seen: standing(
        seen, Standing.UNKNOWN, failed=seen.at - timedelta(minutes=70), failure="gateway-unreachable"
    ),
    "unknown-not-in-force": lambda seen: standing(
        seen,
        Standing.UNKNOWN,
        list_number=_older(seen),
        waiting=("Ines’s phone",),
        other_changes=True,
        failed=seen.at - timedelta(minutes=70),
        failure="gateway-unreachable",
    ),
    "newer-there": lambda seen: standing(seen, Standing.WAITING, list_number=_older(seen) + 4),
    "no-list-there": lambda seen: standing(seen, Standing.WAITING, list_number=None, list_until=None),
    "clock-wrong": lambda seen: standing(seen, Standing.IN_FORCE, clock_off=-4000),
    "list-due": lambda seen: standing(seen, Standing.IN_FORCE, list_until=seen.at + timedelta(days=41)),
    "list-ended": lambda seen: standing(seen, Standing.IN_FORCE, list_until=seen.at - timedelta(days=2)),
    "certificate-due": lambda seen: standing(seen, Standing.IN_FORCE, gateway_until=seen.at + timedelta(days=59)),
}
"""By the name of a state: the household as it would be."""

PLAN = DeliveryPlan(
    PINNED,
    {
        "ca-certificate.pem": Differs.SAME,
        "gateway-certificate.pem": Differs.SAME,
        "gateway-key.pem": Differs.SAME,
        "host/rules.nft": Differs.NEW,
        "list.crl": Differs.CHANGED,
        "list.pem": Differs.CHANGED,
        "manifest.sha256": Differs.CHANGED,
        "own/old-door.conf": Differs.GOES,
    },
    42,
    "42-0af3c19b",
)


def delivered(seen: Snapshot) -> Delivered:
    """What came of a delivery."""
    return Delivered(PLAN, seen.at, 4, 42, ("Tomasz’s laptop",), 1)


UNREACHABLE = Unavailable("gateway-unreachable", where=where(PINNED), seen="no route to host")
CHANGED_KEY = Refused("host-key-changed", where=where(PINNED), seen=KEY.fingerprint)
