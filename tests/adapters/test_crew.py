"""Processes that do what holds Python's lock, for a window that has to stay alive."""

from __future__ import annotations

import os
import signal
from collections.abc import Iterator
from multiprocessing import resource_tracker

import pytest

from hearthkey.adapters.workshop import Crew, CrewLocksmith, ProcessWorkshop
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.keysets import P_256
from hearthkey.core.secret import Secret
from hearthkey.pki import pkcs12
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services.ports import SealJob
from tests.pki.quince import PASSPHRASE, found


@pytest.fixture(scope="module", autouse=True)
def tracker() -> None:
    """Python starts this process beside the first that it spawns, and keeps it to its own end."""
    resource_tracker.ensure_running()


@pytest.fixture
def crew() -> Iterator[Crew]:
    """A crew that is sent home after the test."""
    made = Crew()
    yield made
    made.close()


def test_a_key_is_guarded_and_opened_elsewhere(crew: Crew) -> None:
    """Broken if it fails: a household that was founded in the window does not open."""
    key, locksmith = AuthorityKey.make(), CrewLocksmith(crew)
    text = locksmith.seal(key, PASSPHRASE)
    assert locksmith.open_guard(text, PASSPHRASE).public_der() == key.public_der()
    with pytest.raises(Refused) as refused:
        locksmith.open_guard(text, Secret("some other seven words"))
    assert refused.value.code == "wrong-passphrase"


def test_bundles_are_sealed_elsewhere(crew: Crew) -> None:
    """Broken if it fails: a bundle made in the window does not open."""
    device = found().device
    sealed = next(ProcessWorkshop(crew).seal([SealJob(device, PASSPHRASE, "Ines’s phone")]))
    assert pkcs12.open_container(sealed, PASSPHRASE) == device


def test_a_process_that_was_ended_is_told_and_others_are_started(crew: Crew) -> None:
    """Broken if it fails: one process killed from outside, and the window never makes a key again."""
    workshop = ProcessWorkshop(crew)
    with pytest.raises(Unavailable) as gone:
        list(crew.each(_end, [0]))
    assert gone.value.code == "crew-gone"
    assert len(list(workshop.make_keys([P_256]))) == 1


def _end(_about: int) -> None:
    os.kill(os.getpid(), signal.SIGKILL)
