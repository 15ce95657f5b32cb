"""Device kinds in the verbs: own ones decide, and a device whose kind is gone is still listed, stopped and renewed."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import Home
from tests.fakes.kinds import SHIPPED

OWN = (SHIPPED / "linux.toml").read_bytes().replace(b"name = 'linux'", b"name = 'boat'")


def test_an_own_kind_decides_like_ours(home: Home) -> None:
    """Broken if it fails: own kinds are shown and not obeyed."""
    own = home.house.data / "kinds"
    own.mkdir()
    (own / "boat.toml").write_bytes(OWN.replace(b"key_set = 'compact'", b"key_set = 'suite-384'"))
    plan = home.house.enrolling.preview(EnrolRequest("Tomasz", "boat computer", "boat"))
    assert (plan.kind.name, plan.key_set.name, plan.container) == ("boat", "suite-384", "strong")


def test_a_device_whose_kind_is_gone_lives_on(home: Home) -> None:
    """Broken if it fails: taking a file away locks a device's pass in, with nobody able to renew or stop it."""
    with closing(sqlite3.connect(home.house.data / FILE_NAME)) as register, register:
        register.execute("UPDATE device SET kind = 'boat' WHERE label = 'laptop'")
    assert home.newest("Tomasz laptop").kind == "boat"
    plan = home.house.enrolling.preview(EnrolRequest("Tomasz", "laptop", "boat", key_set="compact", replace=True))
    assert plan.kind.name == "other"
    assert [(one.code, one.subject) for one in plan.cautions] == [
        ("kind-gone", "boat"),
        ("key-set-unlikely", "something else"),
    ]
    home.house.enrolling.apply(plan)
    assert len(home.passes("Tomasz laptop")) == 2
    home.stop("Tomasz laptop")
    assert home.newest("Tomasz laptop").state(home.world.clock.now()) is State.STOPPED
    with pytest.raises(Refused, match="kind-unknown"):
        home.house.enrolling.preview(EnrolRequest("Tomasz", "second boat", "boat"))
