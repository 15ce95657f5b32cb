"""Whoever revokes a pass that waits here erases its key and passphrase with it: nothing could come of them but harm."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.revocation import Reason
from hearthkey.services import secret_names
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from tests.fakes.home import Home
from tests.services.test_handing_over import found_in, piece_of


def passphrases(home: Home, text: str) -> list[str]:
    """Names of the secrets in the vault that belong to a device's newest pass."""
    serial = home.newest(text).serial
    return [name for name in home.world.vault.secrets if serial in name]


@pytest.mark.parametrize("stopped", [False, True], ids=["waiting", "stopped"])
def test_key_and_passphrase_go(home: Home, *, stopped: bool) -> None:
    """Broken: the key of a device that is never to get in lies here until somebody erases it by hand."""
    if stopped:
        home.stop("Ines phone")
    piece = piece_of(home, "Ines phone")
    changes = home.revoke("Ines phone")
    assert found_in(home, piece) == set()
    assert (passphrases(home, "Ines phone"), home.house.register.loose_secrets()) == ([], [])
    assert changes.cautions == ()
    revoked = home.newest("Ines phone")
    assert (revoked.state(home.world.clock.now()), revoked.handed_over) == (State.REVOKED, None)


def test_what_others_wait_for_stays(home: Home) -> None:
    """Broken: a revocation takes the key of a device that nobody revoked, or a stop takes one that may come back."""
    home.stop("Tomasz laptop")
    home.revoke("Ines phone")
    for text in ("Tomasz laptop", "Odile tablet"):
        assert home.house.register.sealed(home.newest(text).serial) is not None
        assert len(passphrases(home, text)) == 1


def test_of_two_passes_each_is_treated_as_it_is(home: Home) -> None:
    """Broken: a device that was handed over and has a second pass waiting stays half revoked."""
    home.hand_over("Ines phone")
    home.add(EnrolRequest("Ines", "phone", "windows", replace=True))
    first, second = home.passes("Ines phone")
    home.revoke("Ines phone")
    assert home.house.register.sealed(second.serial) is None
    assert [one.handed_over for one in home.passes("Ines phone")] == [first.handed_over, None]
    assert passphrases(home, "Ines phone") == []


@pytest.mark.parametrize("trouble", ["keyring-silent", "keyring-locked", "keyring-absent"])
def test_a_keyring_that_does_not_answer_hinders_no_revocation(home: Home, trouble: str) -> None:
    """Broken: a sleeping keyring keeps a stolen phone on the gateway's good side, or a passphrase for ever."""
    home.world.vault.trouble = trouble
    changes = home.revoke("Ines phone")
    assert changes.list_number == 2
    assert [one.code for one in changes.cautions] == ["passphrase-erased-later"]
    assert home.house.register.sealed(home.newest("Ines phone").serial) is None
    home.world.vault.trouble = None
    home.reopen()
    assert (passphrases(home, "Ines phone"), home.house.register.loose_secrets()) == ([], [])


def test_what_was_revoked_in_another_way_goes_at_the_next_start(home: Home) -> None:
    """Broken: revoked by an older version of the app, or by a list that the gateway held, the key stays for good."""
    piece, serial = piece_of(home, "Ines phone"), home.newest("Ines phone").serial
    with home.house.register.change() as change:
        change.withdraw(serial, Reason.KEY_COMPROMISE, home.world.clock.now())
        change.withdraw(home.newest("Odile tablet").serial, Reason.CERTIFICATE_HOLD, home.world.clock.now())
    home.reopen()
    assert found_in(home, piece) == set()
    assert (passphrases(home, "Ines phone"), home.house.register.loose_secrets()) == ([], [])
    assert home.house.register.sealed(home.newest("Odile tablet").serial) is not None
    with closing(sqlite3.connect(home.house.data / FILE_NAME)) as register:
        assert register.execute("SELECT count(*) FROM pass WHERE handed_over IS NOT NULL").fetchone() == (0,)


def test_its_bundle_is_not_written_any_more(home: Home, tmp_path: Path) -> None:
    """Broken: the tray offers what has no key, and says that a passphrase was lost."""
    home.revoke("Ines phone")
    chosen = home.newest("Ines phone")
    assert not chosen.key_is_here
    with pytest.raises(Refused) as refused:
        home.house.exporting.export(chosen, Form.BUNDLE, tmp_path)
    assert refused.value.code == "pass-not-alive"
    authority = the_authority(home.house.register)
    assert home.world.vault.get(secret_names.bundle_passphrase(authority, chosen.serial)) is None
