"""Opening a household: the states of the keyring told apart, and the CA key kept no longer than it is needed."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.secret import Secret
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import secret_names
from hearthkey.services.opening import IDLE, Door, Keyholder, knock, the_authority
from tests.fakes.clock import FakeClock
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse, World


def door(home: Home) -> Door:
    """Knock."""
    return knock(home.house.register, home.house.vault)


def ca_name(home: Home) -> str:
    """Where the CA key text lies in the vault."""
    return secret_names.authority_key(the_authority(home.house.register))


@pytest.mark.parametrize(
    ("trouble", "found"),
    [
        (None, Door.READY),
        ("keyring-locked", Door.KEYRING_LOCKED),
        ("keyring-silent", Door.KEYRING_SILENT),
        ("keyring-absent", Door.KEYRING_ABSENT),
        ("keyring-unsafe", Door.KEYRING_ABSENT),
    ],
)
def test_the_states_of_the_keyring_are_told_apart(home: Home, trouble: str | None, found: Door) -> None:
    """Broken if it fails: a closed keyring is taken for a household that was never founded."""
    home.world.vault.trouble = trouble
    assert door(home) is found


def test_an_empty_keyring_is_not_no_household(home: Home) -> None:
    """Broken if it fails: somebody founds anew, and every device needs a new bundle."""
    home.world.vault.secrets.clear()
    assert door(home) is Door.KEYRING_EMPTY


def test_no_household_is_known_without_asking_the_keyring(tmp_path: Path) -> None:
    """Broken if it fails: a fresh computer asks for a passphrase that nobody has."""
    house = PracticeHouse(tmp_path, World())
    house.look()
    assert knock(house.register, house.vault) is Door.NO_HOUSEHOLD
    with pytest.raises(Refused) as refused:
        the_authority(house.register)
    assert refused.value.code == "no-household"
    house.leave()


def test_a_keyring_that_answers_with_a_fault_is_no_state_of_its_own(home: Home) -> None:
    """Broken if it fails: a fault of the keyring is shown as an empty one."""
    home.world.vault.trouble = "keyring-failed"
    with pytest.raises(Unavailable) as unavailable:
        door(home)
    assert unavailable.value.code == "keyring-failed"


def test_the_passphrase_opens_the_key(home: Home) -> None:
    """Broken if it fails: nothing can be signed tomorrow."""
    home.house.keyholder.lock()
    home.house.keyholder.unlock(home.house.register, home.house.vault, PASSPHRASE)
    assert not home.house.keyholder.locked


def test_another_passphrase_does_not(home: Home) -> None:
    """Broken if it fails: the household is open to anybody, or says which part of the passphrase was wrong."""
    home.house.keyholder.lock()
    with pytest.raises(Refused) as refused:
        home.house.keyholder.unlock(home.house.register, home.house.vault, Secret("plum kettle ivory lantern"))
    assert (refused.value.code, refused.value.facts) == ("wrong-passphrase", {})
    assert home.house.keyholder.locked


@pytest.mark.parametrize(
    ("text", "code"), [(None, "keyring-empty"), ("", "guard-unreadable"), ("q" * 500, "guard-unreadable")]
)
def test_a_key_text_that_is_gone_or_damaged_is_told(home: Home, text: str | None, code: str) -> None:
    """Broken if it fails: a damaged keyring looks like a wrong passphrase, and somebody types for hours."""
    home.house.keyholder.lock()
    home.world.vault.secrets.pop(ca_name(home))
    if text is not None:
        home.world.vault.secrets[ca_name(home)] = text
    with pytest.raises(Refused) as refused:
        home.house.keyholder.unlock(home.house.register, home.house.vault, PASSPHRASE)
    assert refused.value.code == code


def test_the_key_of_another_household_is_told(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: lists are signed that no gateway of this household takes."""
    home.house.keyholder.lock()
    monkeypatch.setattr(guard, "open_guard", lambda *_: AuthorityKey.make())
    with pytest.raises(Refused) as refused:
        home.house.keyholder.unlock(home.house.register, home.house.vault, PASSPHRASE)
    assert refused.value.code == "guard-of-another"
    assert home.house.keyholder.locked


def test_it_locks_itself_after_idle_time() -> None:
    """Broken if it fails: a laptop left open signs for whoever sits down at it."""
    clock = FakeClock()
    holder = Keyholder(clock)
    holder.keep(AuthorityKey.make())
    clock.forward(seconds=IDLE.total_seconds() - 1)
    locked = [holder.locked]
    clock.forward(seconds=1)
    locked.append(holder.locked)
    assert locked == [False, True]
    with pytest.raises(Refused) as refused:
        holder.key()
    assert refused.value.code == "household-locked"


def test_each_use_starts_the_idle_time_anew() -> None:
    """Broken if it fails: it locks in the middle of enrolling the family."""
    clock = FakeClock()
    holder = Keyholder(clock)
    holder.keep(AuthorityKey.make())
    for _ in range(5):
        clock.forward(seconds=IDLE.total_seconds() - 1)
        holder.key()
    assert not holder.locked


def test_setting_the_clock_neither_locks_nor_holds_open() -> None:
    """Broken if it fails: whoever sets the clock back keeps the household open."""
    clock = FakeClock()
    holder = Keyholder(clock)
    holder.keep(AuthorityKey.make())
    clock.turn(days=400)
    locked = [holder.locked]
    clock.turn(days=-800)
    clock.forward(seconds=IDLE.total_seconds())
    locked.append(holder.locked)
    assert locked == [False, True]


def test_locking_lets_go_of_the_key() -> None:
    """Broken if it fails: the CA key stays in memory for as long as the app runs."""
    holder = Keyholder(FakeClock())
    key = AuthorityKey.make()
    ours = sys.getrefcount(key)
    holder.keep(key)
    kept = sys.getrefcount(key)
    holder.lock()
    assert (kept, sys.getrefcount(key)) == (ours + 1, ours)


@pytest.mark.parametrize("verb", ["stop", "let_in", "revoke", "sign"])
def test_a_locked_household_signs_nothing(home: Home, verb: str) -> None:
    """Broken if it fails: a verb changes the register although its list could not be signed."""
    home.stop("Odile tablet")
    before = (home.house.register.entries(), home.house.register.diary())
    home.house.keyholder.lock()
    acts = {
        "stop": lambda: home.stop("Ines phone"),
        "let_in": lambda: home.let_in("Odile tablet"),
        "revoke": lambda: home.revoke("Ines phone"),
        "sign": home.house.listing.sign_anew,
    }
    with pytest.raises(Refused) as refused:
        acts[verb]()
    assert refused.value.code == "household-locked"
    assert before == (home.house.register.entries(), home.house.register.diary())
