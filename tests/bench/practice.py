"""The practice household that is measured: the app's own parts, a real register and real files, on a disk."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from hearthkey.bootstrap import House, open_house
from hearthkey.core import certificates
from hearthkey.core.household import FILE
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.services.founding import FoundRequest
from hearthkey.services.ports import NewPass

PASSPHRASE = Secret("kettle lantern orchard meadow pantry gravel sunlit")
REQUEST = FoundRequest(
    name="Quince Cottage",
    gateway_host="gate.quince.example",
    home_subnets=("198.51.100.0/24",),
    tunnel_subnet="203.0.113.0/24",
    gateway_key_set="compact",
    practice=True,
)
PEOPLE = ("Ines", "Tomasz", "Odile", "Boiler engineer")
NOW = datetime(2026, 5, 1, 12, tzinfo=UTC)
"""The moment of what is made up, not measured."""

_DISK = Path("/var/tmp")  # noqa: S108  # it outlives a restart (FHS 3.0 section 5.15), so it lies on a disk


@contextmanager
def folder() -> Iterator[Path]:
    """A folder of our own on a disk, where fsync costs what it costs a householder."""
    with tempfile.TemporaryDirectory(prefix="hearthkey-bench-", dir=_DISK if _DISK.is_dir() else None) as made:
        yield Path(made)


@contextmanager
def household(*, practice: bool = True) -> Iterator[House]:
    """Quince Cottage, just founded and unlocked; its secrets lie in files, each written under fsync.

    Args:
        practice: nothing of a practice household is ever delivered, so that a delivery wants none.
    """
    with folder() as made, open_house(made / "data", place=FILE, writing=True) as house:
        house.founding.apply(house.founding.preview(replace(REQUEST, practice=practice)), PASSPHRASE)
        yield house


def made_up(house: House, count: int) -> list[Pass]:
    """Passes as they would stand in the register, four devices to a person."""
    begin = NOW - certificates.BACKDATED
    return [
        Pass(
            person=f"{PEOPLE[number // 4 % 4]} {number // 16}",
            device=f"device {number % 4}",
            kind="linux",
            identity=f"d{number:07}.quince.example",
            serial=certificates.serial_hex(certificates.serial_number(house.dice.bits)),
            key_set="compact",
            container="strong",
            guest=False,
            not_before=begin,
            not_after=NOW + timedelta(days=730),
            handed_over=None,
            reason=None,
            since=None,
        )
        for number in range(count)
    ]


def fill(house: House, count: int, *, every: int) -> None:
    """Put made-up passes into the register in one transaction, and stop one of `every` so many.

    All are handed over, so there is no key; the bytes of a certificate are as many as of a real one.
    """
    with house.register.change() as change:
        for number, one in enumerate(made_up(house, count)):
            change.add_pass(NewPass(one, bytes(600), b""), NOW)
            change.hand_over(one.serial, NOW)
            if number % every == 0:
                change.withdraw(one.serial, Reason.CERTIFICATE_HOLD, NOW)
