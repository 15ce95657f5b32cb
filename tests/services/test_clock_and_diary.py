"""A clock that was set back signs nothing; the diary tells everything once, and shows where it was touched."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from hearthkey.core.errors import Refused
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.writing_diary import read
from tests.fakes.home import Home


@pytest.mark.parametrize("verb", ["add", "stop", "let-in", "revoke", "lists"])
def test_a_clock_set_back_signs_nothing(home: Home, verb: str) -> None:
    """Broken if it fails: a list is older than the one before it, and a gateway keeps the wrong one."""
    home.stop("Odile tablet")
    before = (home.house.register.passes(), home.house.register.lists(), home.house.register.diary())
    home.world.clock.turn(hours=-2)
    acts = {
        "add": lambda: home.add(EnrolRequest("Ines", "watch", "linux")),
        "stop": lambda: home.stop("Ines phone"),
        "let-in": lambda: home.let_in("Odile tablet"),
        "revoke": lambda: home.revoke("Ines phone"),
        "lists": home.house.listing.sign_anew,
    }
    with pytest.raises(Refused) as refused:
        acts[verb]()
    assert (refused.value.code, refused.value.facts["clock"]) == ("clock-behind", "25 November 2026 11:00")
    assert before == (home.house.register.passes(), home.house.register.lists(), home.house.register.diary())
    home.world.clock.turn(hours=2)
    acts[verb]()
    assert home.house.register.diary()[-1].verb == verb


def test_a_few_minutes_are_forgiven(home: Home) -> None:
    """Broken if it fails: a computer that sets its clock by the network refuses to work every morning."""
    home.stop("Odile tablet")
    home.world.clock.turn(minutes=-4)
    home.stop("Ines phone")
    first, second, third = home.house.register.lists()
    assert first.this_update < second.this_update == third.this_update


def test_every_verb_leaves_one_sentence(home: Home) -> None:
    """Broken if it fails: whoever comes after cannot tell what was done."""
    home.hand_over("Ines phone")
    home.stop("Ines phone")
    home.let_in("Ines phone")
    home.revoke("Ines phone")
    home.house.listing.sign_anew()
    entries, misfit = read(home.house.register)
    assert [one.verb for one in entries] == [
        *("found", "add", "add", "add"),
        *("hand-over", "stop", "let-in", "revoke", "lists"),
    ]
    assert misfit is None
    assert [one.number for one in entries] == list(range(1, 10))


def test_no_secret_stands_in_the_diary(home: Home) -> None:
    """Broken if it fails: whoever reads the diary can open a bundle."""
    told = " ".join(one.sentence for one in home.house.register.diary())
    assert len(told) > 200
    assert [secret for secret in home.world.vault.secrets.values() if secret in told] == []


@pytest.mark.parametrize(
    ("statement", "misfit"),
    [
        ("UPDATE diary SET sentence = 'Nothing happened.' WHERE number = 2", 2),
        ("UPDATE diary SET at = at + 1 WHERE number = 3", 3),
        ("DELETE FROM diary WHERE number = 1", 1),
        ("DELETE FROM diary WHERE number = 4", 4),
    ],
)
def test_a_diary_changed_by_hand_is_shown(home: Home, statement: str, misfit: int) -> None:
    """Broken if it fails: somebody who opens the file can rewrite what was done (triggers dropped first)."""
    path = home.house.register.path
    home.house.leave()
    with closing(sqlite3.connect(path)) as other:
        other.execute("DROP TRIGGER diary_is_final")
        other.execute("DROP TRIGGER diary_is_kept")
        other.execute(statement)
        other.commit()
    home.reopen()
    assert read(home.house.register)[1] == misfit
