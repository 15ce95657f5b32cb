"""Checks of the way in, as the register keeps them: by side, whole, and for good."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.reach.chain import Chain, LastChecks, Link, Place, Side, Verdict
from tests.fakes.clock import NOW
from tests.fakes.home import founded

LINKS = (
    Link(
        Place.NAME,
        Verdict.OK,
        "name-answers",
        {"host": "höhe’s", "addresses": ("192.0.2.1",), "ttl": 60, "router": None},
    ),
    Link(Place.TRUST, Verdict.UNKNOWN, "not-reached"),
)
CHECK = Chain("home.quince.example", NOW, Side.OUTSIDE, LINKS)


def test_the_newest_of_either_side_comes_back_whole_and_nothing_is_deleted(tmp_path: Path) -> None:
    """A result from inside would stand where one from outside is looked for, or somebody could take one away."""
    founded().put_into(tmp_path / "data")
    with closing(SqliteRegister(tmp_path / "data" / FILE_NAME)) as register:
        assert register.last_checks() == LastChecks()
        inside = replace(CHECK, side=Side.INSIDE, made=NOW + timedelta(hours=1))
        for one in (CHECK, inside, replace(CHECK, made=NOW - timedelta(days=1), links=())):
            with register.change() as change:
                change.keep_check(one)
        assert register.last_checks() == LastChecks(inside=inside, outside=CHECK)
    with (
        closing(sqlite3.connect(tmp_path / "data" / FILE_NAME)) as opened,
        pytest.raises(sqlite3.IntegrityError, match="kept for ever"),
    ):
        opened.execute("DELETE FROM way_in_check")
