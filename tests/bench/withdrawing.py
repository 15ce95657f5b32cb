"""Measures stopping a device, and how a revocation list grows."""

from __future__ import annotations

from datetime import timedelta
from functools import partial

from hearthkey.core import certificates
from hearthkey.core.household import Household
from hearthkey.core.network import subnet
from hearthkey.core.revocation import GOOD_FOR, Entry, ListPlan, Reason
from hearthkey.pki import mint
from hearthkey.pki.keys import AuthorityKey
from hearthkey.pki.lists import sign_list
from hearthkey.services.enrolling import EnrolRequest
from tests.bench import practice
from tests.bench.timing import Row, at_most, paired, timed, within


def stop(*, quick: bool) -> list[Row]:
    """From the verb to the signed list on disk, in an unlocked household where others are stopped already."""
    with practice.household() as house:
        practice.fill(house, 200, every=10)
        made = house.enrolling.apply(house.enrolling.preview(EnrolRequest("Ines", "phone", "linux")))
        took = []
        for _ in range(15 if quick else 45):
            phone = [one for one in house.register.passes() if one.serial in made.serials]
            plan = house.stopping.preview_stop(phone)
            took.append(timed(partial(house.stopping.stop, plan))())
            phone = [one for one in house.register.passes() if one.serial in made.serials]
            house.stopping.let_in(house.stopping.preview_let_in(phone))
    return [within("stop: from the verb to the signed list on disk", took, 0.050)]


def growing_list(*, quick: bool) -> list[Row]:
    """Signing a list of 10,000 entries against one of 1,000."""
    home = subnet("198.51.100.0/24", "home subnet")
    tunnel = subnet("203.0.113.0/24", "tunnel subnet")
    household = Household("Quince Cottage", "gate.quince.example", "quince.example", (home,), tunnel, (), "split")
    key = AuthorityKey.make()
    planned = certificates.plan_authority(household, now=practice.NOW, bits=lambda count: (1 << count) - 1)
    authority = mint.authority_certificate(planned, key)
    long, short = _plan(10_000), _plan(1_000)
    pairs = paired(
        timed(lambda: sign_list(long, authority, key)),
        timed(lambda: sign_list(short, authority, key)),
        7 if quick else 15,
    )
    return [
        at_most("revocation list: 10,000 entries against 1,000", pairs, 12),
        within("revocation list: 10,000 entries", [pairs.ours], 0.5),
    ]


def _plan(count: int) -> ListPlan:
    first = 1 << 158
    end = practice.NOW + timedelta(days=730)
    entries = (
        Entry(certificates.serial_hex(first + (number << 96)), practice.NOW, Reason.KEY_COMPROMISE, end)
        for number in range(count)
    )
    return ListPlan(1, practice.NOW, practice.NOW + GOOD_FOR, tuple(entries))
