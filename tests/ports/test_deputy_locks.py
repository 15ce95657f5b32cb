"""One contract for what locks the passphrases under a deputy's parts: the real one and the fake."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from typing import TypeVar

import pytest

from hearthkey.adapters.workshop import Crew, CrewDeputyLocks
from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import deputy_lock
from hearthkey.pki.deputy_lock import Passphrases
from hearthkey.services.sealed_ports import DeputyLocks
from tests.fakes.deputy_locks import QuickDeputyLocks

SECRET, OTHER = Secret(bytes(range(16))), Secret(bytes(16))
OPENS = Passphrases(Secret("plum kettle ivory lantern gravel otter quilt"), Secret("the copies’ own one"))
A = TypeVar("A")
B = TypeVar("B")


class CrewHere(Crew):
    """A crew without processes; tests/adapters/test_crew.py has some."""

    def each(self, work: Callable[[A], B], about: Sequence[A]) -> Iterator[B]:
        """Do it at once."""
        return map(work, about)


@pytest.fixture(scope="module", params=["real", "quick"])
def locks(request: pytest.FixtureRequest) -> DeputyLocks:
    """Each of them."""
    return deputy_lock if request.param == "real" else QuickDeputyLocks()


@pytest.fixture(scope="module")
def locked(locks: DeputyLocks) -> str:
    """Both passphrases, locked."""
    return locks.lock(OPENS, SECRET)


def test_what_was_locked_opens_with_what_was_split(locks: DeputyLocks, locked: str) -> None:
    """Broken if it fails: two parts come together and the copy stays shut."""
    opened = locks.unlock(locked, SECRET)
    assert (opened.household, opened.own) == (OPENS.household, OPENS.own)


@pytest.mark.parametrize("damage", [lambda text: text[60:], lambda _text: "ä", lambda _text: "x" * 9000])
def test_a_damaged_text_is_refused(locks: DeputyLocks, locked: str, damage: object) -> None:
    """Broken if it fails: half a file ends in a fault of the app instead of a sentence."""
    assert callable(damage)
    with pytest.raises(Refused, match="deputy-lock-damaged"):
        locks.unlock(damage(locked), SECRET)


def test_another_secret_opens_nothing(locks: DeputyLocks, locked: str) -> None:
    """Broken if it fails: anybody's parts open anybody's household."""
    with pytest.raises(Refused, match="deputy-lock-damaged"):
        locks.unlock(locked, OTHER)


@pytest.mark.parametrize("own", [OPENS.own, None])
def test_a_window_s_crew_gets_and_gives_all_of_it(monkeypatch: pytest.MonkeyPatch, own: Secret[str] | None) -> None:
    """Broken if it fails: what is made in the window lacks the copies' own passphrase."""
    quick, crew = QuickDeputyLocks(), CrewDeputyLocks(CrewHere())
    monkeypatch.setattr(deputy_lock, "lock", quick.lock)
    monkeypatch.setattr(deputy_lock, "unlock", quick.unlock)
    opened = crew.unlock(crew.lock(Passphrases(OPENS.household, own), SECRET), SECRET)
    assert (opened.household, opened.own) == (OPENS.household, own)
