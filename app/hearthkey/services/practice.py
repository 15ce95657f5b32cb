"""Quince Cottage, the practice household: what it is called, who lives there, and how it is furnished."""

from __future__ import annotations

from datetime import datetime, timedelta

from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.services import looking
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.founding import FoundRequest
from hearthkey.services.house import House
from hearthkey.services.ports import Progress, silent

SERVICE = "hearthkey-practice"
"""How a keyring calls the secrets of practice households, apart from real ones."""

PASSPHRASE = "quince jelly on the kitchen shelf"  # noqa: S105 - of a practice household, for everybody to know

HOUSEHOLD = FoundRequest(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    home_subnets=("198.51.100.0/24", "2001:db8:51::/64"),
    tunnel_subnet="203.0.113.0/24",
    dns_servers=("198.51.100.1",),
    practice=True,
)
FOUR_DEVICES = (
    EnrolRequest("Ines", "phone", "iphone"),
    EnrolRequest("Tomasz", "laptop", "linux"),
    EnrolRequest("Odile", "tablet", "android-older"),
    EnrolRequest("Boiler engineer", "phone", "android", guest=True),
)


def household_devices(now: datetime) -> tuple[EnrolRequest, ...]:
    """Everybody's devices, with one that ends soon."""
    return (
        EnrolRequest("Ines", "phone", "iphone"),
        EnrolRequest("Ines", "tablet", "windows", ends=now + timedelta(days=21)),
        EnrolRequest("Ines", "old phone", "windows"),
        EnrolRequest("Tomasz", "laptop", "linux"),
        EnrolRequest("Tomasz", "work laptop", "windows"),
        EnrolRequest("Tomasz", "old phone", "linux", ends=now + timedelta(days=180)),
        EnrolRequest("Odile", "phone", "windows", ends=now + timedelta(days=500)),
        EnrolRequest("Boiler engineer", "phone", "windows", guest=True),
    )


def furnish(house: House, progress: Progress = silent) -> Changes:
    """Found Quince Cottage and fill it: passes in use, waiting, stopped and revoked.

    Raises:
        Refused: household-exists.
        Unavailable: as register and vault.
    """
    house.founding.apply(house.founding.preview(HOUSEHOLD), Secret(PASSPHRASE), progress=progress)
    requests = household_devices(house.clock.now())
    house.enrolling.apply(*house.enrolling.preview_all(requests), progress=progress)
    for name in (
        "Ines phone",
        "Ines tablet",
        "Ines old phone",
        "Tomasz work laptop",
        "Tomasz old phone",
        "Odile phone",
    ):
        found = looking.find(house.register.passes(), name)
        house.handing_over.apply(house.handing_over.preview(found))
    old = looking.find(house.register.passes(), "Ines old phone")
    house.stopping.revoke(house.stopping.preview_revoke(old, Reason.KEY_COMPROMISE))
    other = looking.find(house.register.passes(), "Tomasz old phone")
    changes = house.stopping.stop(house.stopping.preview_stop(other))
    house.sparing.renew()  # so that stopping without the passphrase can be practised
    house.keyholder.lock()
    return changes
