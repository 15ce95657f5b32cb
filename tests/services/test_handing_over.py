"""After a hand-over the key exists on the device alone: not in the register, not in its log, not in the vault."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import Home


def found_in(home: Home, piece: bytes) -> set[str]:
    """The register's files that hold a piece of a key's container."""
    return {path.name for path in home.house.data.glob("register*") if piece in path.read_bytes()}


def piece_of(home: Home, text: str) -> bytes:
    """A piece of a container that no other has: random octets from its middle."""
    sealed = home.house.register.sealed(home.newest(text).serial)
    assert sealed is not None
    return sealed[len(sealed) // 2 :][:64]


@pytest.mark.parametrize("added", [False, True], ids=["in the file", "in the log"])
def test_the_key_is_in_none_of_the_files(home: Home, added: bool) -> None:  # noqa: FBT001 - a row of the table
    """Broken if it fails: whoever finds the laptop's disk has the phone's key."""
    text = "Ines phone"
    if added:
        home.add(EnrolRequest("Ines", "watch", "linux"))
        text = "Ines watch"
    piece = piece_of(home, text)
    assert found_in(home, piece) != set()
    home.hand_over(text)
    assert found_in(home, piece) == set()
    assert home.house.register.sealed(home.newest(text).serial) is None


def test_the_row_and_the_vault_prove_it(home: Home) -> None:
    """Broken if it fails: a passphrase stays in the keyring that belongs to nothing."""
    chosen = home.newest("Ines phone")
    changes = home.hand_over("Ines phone")
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.IN_USE
    assert [name for name in home.world.vault.secrets if chosen.serial in name] == []
    assert (home.house.register.loose_secrets(), changes.cautions) == ([], ())
    assert changes.sentence == "Ines’s phone was handed over. Its key and passphrase were erased here."
    assert home.house.register.diary()[-1].sentence == changes.sentence


@pytest.mark.parametrize("trouble", ["keyring-silent", "keyring-locked", "keyring-absent"])
def test_a_keyring_that_does_not_answer_is_asked_at_the_next_start(home: Home, trouble: str) -> None:
    """Broken if it fails: the key stays because the keyring slept, or the passphrase stays for ever."""
    chosen = home.newest("Ines phone")
    home.world.vault.trouble = trouble
    changes = home.hand_over("Ines phone")
    assert [one.code for one in changes.cautions] == ["passphrase-erased-later"]
    assert home.house.register.sealed(chosen.serial) is None
    home.reopen()
    assert len(home.house.register.loose_secrets()) == 1
    home.world.vault.trouble = None
    home.reopen()
    assert home.house.register.loose_secrets() == []
    assert [name for name in home.world.vault.secrets if chosen.serial in name] == []


def test_looking_finishes_what_a_silent_keyring_left(home: Home) -> None:
    """Broken if it fails: a passphrase waits for a verb that changes something, which may be years off."""
    home.world.vault.trouble = "keyring-silent"
    home.hand_over("Ines phone")
    home.world.vault.trouble = None
    home.reopen(writing=False)
    assert home.house.register.loose_secrets() == []


def test_secrets_that_belong_to_another_vault_are_left_to_it(home: Home) -> None:
    """Broken if it fails: a name is crossed off although its secret still lies in another vault."""
    home.house.register.expect_secrets(["0123456789abcdef/ca"], "file")
    home.hand_over("Ines phone")
    assert home.house.register.loose_secrets() == [("0123456789abcdef/ca", "file")]


def test_from_then_on_only_a_replacement_is_offered(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a bundle is sent a second time, to whoever asks."""
    home.hand_over("Ines phone")
    chosen = home.newest("Ines phone")
    for act in (
        lambda: home.hand_over("Ines phone"),
        lambda: home.house.bundling.passphrase(chosen),
        lambda: home.house.exporting.export(chosen, Form.BUNDLE, tmp_path),
    ):
        with pytest.raises(Refused) as refused:
            act()
        assert refused.value.code == "pass-handed-over"
    home.add(EnrolRequest("Ines", "phone", "linux", replace=True))
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.WAITING


@pytest.mark.parametrize("over", ["revoked", "ended"])
def test_a_pass_that_is_over_is_not_handed_over(home: Home, over: str) -> None:
    """Broken if it fails: somebody is handed what will never get in."""
    if over == "revoked":
        home.revoke("Ines phone")
    else:
        home.world.clock.forward(days=800)
    with pytest.raises(Refused) as refused:
        home.hand_over("Ines phone")
    assert (refused.value.code, refused.value.facts["state"]) == ("pass-not-alive", over)


def test_planning_changes_nothing(home: Home) -> None:
    """Broken if it fails: looking at a plan erases a key."""
    before = home.house.register.passes()
    home.house.handing_over.preview(home.passes("Ines phone"))
    assert home.house.register.passes() == before
    assert home.house.register.sealed(before[0].serial) is not None


def test_a_reader_in_between_does_not_keep_the_key(home: Home) -> None:
    """Broken if it fails: a second copy that is just listing keeps the key in the log, and nobody is told."""
    home.add(EnrolRequest("Ines", "watch", "linux"))
    piece = piece_of(home, "Ines watch")
    reader = sqlite3.connect(home.house.register.path, isolation_level=None)
    with closing(reader):
        home.house.register._connection.execute("PRAGMA busy_timeout = 0")  # noqa: SLF001 - or it waits five seconds
        reader.execute("BEGIN")
        reader.execute("SELECT * FROM household").fetchall()
        changes = home.hand_over("Ines watch")
        told = bool(changes.cautions)
    assert told or found_in(home, piece) == set()
