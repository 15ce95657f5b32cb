"""One contract for what closes sealed copies: on age itself, and on the quick one of the tests."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import copy_lock
from hearthkey.services.sealed_ports import CopyLocks
from tests.fakes.copy_locks import QuickLocks

WORDS = Secret("plum kettle ivory lantern gravel otter quilt")
MARK = Secret("5a" * 32)


@pytest.fixture(params=["age", "quick"], scope="module")
def locks(request: pytest.FixtureRequest) -> CopyLocks:
    """The real part, and the fake one."""
    return copy_lock if request.param == "age" else QuickLocks()


def test_what_was_closed_opens_again_with_the_passphrase_alone(locks: CopyLocks) -> None:
    """Otherwise a copy could not be opened, be changed unnoticed, or be opened with any passphrase."""
    lock = locks.make(WORDS, MARK)
    sealed = copy_lock.seal(b"the household", lock.public)
    opened = locks.unlock(lock.locked, WORDS)
    assert copy_lock.open_sealed(sealed, opened.private) == b"the household"
    assert opened.mark_key == MARK
    for place in (0, len(sealed) // 2, len(sealed) - 1):
        torn = sealed[:place] + bytes([sealed[place] ^ 1]) + sealed[place + 1 :]
        with pytest.raises(Refused, match="copy-damaged"):
            copy_lock.open_sealed(torn, opened.private)
    with pytest.raises(Refused, match="wrong-passphrase"):
        locks.unlock(lock.locked, Secret("plum kettle"))


@pytest.mark.parametrize("text", ["", "age", "é" * 10, "x" * 5000, "-----BEGIN AGE ENCRYPTED FILE-----\nAAAA\n"])
def test_a_lock_that_is_rubbish_is_damage_and_no_crash(locks: CopyLocks, text: str) -> None:
    """Otherwise half a stick would end in a fault of the app."""
    with pytest.raises(Refused, match="copy-damaged"):
        locks.unlock(text, WORDS)
