"""A keyring that does not answer: the app says so, does not wait for ever, and works again afterwards."""

from __future__ import annotations

import contextlib
import os
import signal
import threading
from collections.abc import Iterator

import pytest
import secretstorage.exceptions
from keyring.errors import PasswordDeleteError, PasswordSetError

from hearthkey.adapters import vault_keyring
from hearthkey.adapters.vault_keyring import KeyringVault
from hearthkey.core.errors import Bug, Unavailable
from hearthkey.core.secret import Secret
from tests.keyring.backends import Broken, PlainTextKeyring, Unchosen, Waiting, secret_service
from tests.keyring.desktop import Desktop

HARDLY = 0.1
"""Seconds of patience with a keyring that certainly does not answer: how few they are decides nothing."""


def refusal(vault: KeyringVault) -> Unavailable:
    """What the vault says instead of answering."""
    with pytest.raises(Unavailable) as caught:
        vault.get("practice/ca")
    return caught.value


def calls_end() -> None:
    """Wait until every call that was given up has come back."""
    for thread in threading.enumerate():
        if thread.name == "keyring call":
            thread.join()


def patient_answer(vault: KeyringVault) -> Secret[str] | None:
    """Ask until an answer comes: on a busy machine even a willing keyring may outlast a small patience."""
    for _ in range(100):
        with contextlib.suppress(Unavailable):
            return vault.get("practice/ca")
        calls_end()
    raise AssertionError


@pytest.fixture
def waiting() -> Iterator[Waiting]:
    """A keyring that answers once it is let."""
    made = Waiting()
    yield made
    made.let.set()
    calls_end()


def test_silence_is_told(waiting: Waiting) -> None:
    """If this fails, a keyring that hangs hangs the app."""
    assert refusal(KeyringVault(patience=HARDLY, backend=waiting)).code == "keyring-silent"


def test_nobody_is_asked_twice_at_once(waiting: Waiting) -> None:
    """If this fails, every click during a hang adds a thread that waits as well."""
    vault = KeyringVault(patience=HARDLY, backend=waiting)
    assert [refusal(vault).code for _ in range(5)] == ["keyring-silent"] * 5
    with pytest.raises(Unavailable, match="keyring-silent"):
        vault.delete("practice/ca")
    assert waiting.asked == 1


def test_works_again_after_silence(waiting: Waiting) -> None:
    """If this fails, one missed question of the desktop makes the app useless until it is started anew."""
    vault = KeyringVault(patience=HARDLY, backend=waiting)
    refusal(vault)
    waiting.let.set()
    calls_end()
    assert patient_answer(vault) == Secret("plum")


def test_a_daemon_that_stands_still(open_login: Desktop, monkeypatch: pytest.MonkeyPatch) -> None:
    """If this fails, a real daemon that hangs (here: stopped by a signal) hangs the app, or is never asked again."""
    monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", open_login.address)
    open_login.put_back({"practice/ca": "quince"})
    vault = KeyringVault(patience=HARDLY, backend=secret_service())
    os.kill(open_login.keyring_pid, signal.SIGSTOP)
    try:
        assert [refusal(vault).code for _ in range(2)] == ["keyring-silent"] * 2
    finally:
        os.kill(open_login.keyring_pid, signal.SIGCONT)
    calls_end()
    assert patient_answer(vault) == Secret("quince")


@pytest.mark.parametrize(("seconds", "silent"), [(0.1, False), (9.9, False), (10.1, True)])
def test_nothing_after_a_long_while_is_no_answer(
    monkeypatch: pytest.MonkeyPatch, seconds: float, *, silent: bool
) -> None:
    """If this fails, a desktop whose own question timed out makes the app say that the household is lost."""
    watch = iter([100.0, 100.0 + seconds])
    monkeypatch.setattr(vault_keyring, "monotonic", lambda: next(watch))
    vault = KeyringVault(backend=Unchosen())
    if silent:
        assert refusal(vault).code == "keyring-silent"
    else:
        assert vault.get("practice/ca") is None


def test_a_keyring_that_forgets_at_once() -> None:
    """If this fails, a household is founded whose key nobody keeps."""
    with pytest.raises(Unavailable, match="keyring-failed"):
        KeyringVault(backend=Unchosen()).put("practice/ca", Secret("plum"))


def test_a_keyring_in_the_clear_is_refused() -> None:
    """If this fails, passphrases lie readable on the disk and nobody was told."""
    error = refusal(KeyringVault(backend=PlainTextKeyring()))
    assert (error.code, error.facts) == ("keyring-unsafe", {"backend": "tests.keyring.backends.PlainTextKeyring"})


def test_too_long_for_the_smallest_keyring() -> None:
    """If this fails, a household that works here cannot be kept on another system; source: wincred.h.

    CRED_MAX_CREDENTIAL_BLOB_SIZE is 5 * 512 octets, which are 1,280 characters of UTF-16.
    """
    with pytest.raises(Bug, match="secret-too-long"):
        KeyringVault(backend=Unchosen()).put("practice/ca", Secret("q" * (8 * 1280 + 1)))


@pytest.mark.parametrize(
    "error",
    [
        PasswordSetError("no"),
        PasswordDeleteError("no"),
        secretstorage.exceptions.ItemNotFoundException("no"),
        secretstorage.exceptions.PromptDismissedException("no"),
        ConnectionResetError("no"),
        TimeoutError("no"),
    ],
)
def test_other_faults_are_told_as_the_keyrings(error: Exception) -> None:
    """If this fails, what the keyring's own parts raise reaches the householder as a fault of the app."""
    told = refusal(KeyringVault(backend=Broken(error)))
    assert told.code == "keyring-failed"
    assert told.__cause__ is error


def test_a_fault_of_ours_stays_one() -> None:
    """If this fails, a mistake in the app is blamed on the keyring."""
    with pytest.raises(ZeroDivisionError):
        KeyringVault(backend=Broken(ZeroDivisionError())).get("practice/ca")
