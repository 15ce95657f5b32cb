"""Keyrings of our own making, for what no real one does on demand."""

from __future__ import annotations

import threading
from typing import NoReturn

from keyring.backend import KeyringBackend
from keyring.backends import SecretService
from keyring.compat import properties

TEST_ENDS = 30.0
"""Seconds after which a keyring that waits answers after all, so that a test that broke still ends."""


def secret_service() -> KeyringBackend:
    """The desktop's keyring daemon, without the library's choosing, which it does once per process."""
    return SecretService.Keyring()  # type: ignore[no-untyped-call] # the library has none


class Unchosen(KeyringBackend):
    """A keyring that the library never chooses by itself, and that keeps nothing."""

    def __init__(self) -> None:
        super().__init__()  # type: ignore[no-untyped-call] # the library has none

    @properties.classproperty
    def priority(self) -> NoReturn:
        """No desktop has this one."""
        raise RuntimeError

    def set_password(self, service: str, username: str, password: str) -> None:
        """Take a secret and drop it."""

    def get_password(self, service: str, username: str) -> str | None:
        """Nothing is there."""
        del service, username
        return None

    def delete_password(self, service: str, username: str) -> None:
        """Nothing was there."""


class Waiting(Unchosen):
    """A keyring that answers once somebody lets it."""

    def __init__(self) -> None:
        super().__init__()
        self.let = threading.Event()
        self.asked = 0

    def get_password(self, service: str, username: str) -> str | None:
        """Answer "plum", some time."""
        del service, username
        self.asked += 1
        self.let.wait(TEST_ENDS)
        return "plum"


class PlainTextKeyring(Unchosen):
    """A keyring that says by its name that it keeps secrets in the clear."""


class Broken(Unchosen):
    """A keyring that raises what it was made with.

    Args:
        error: raised at every call.
    """

    def __init__(self, error: Exception) -> None:
        super().__init__()
        self._error = error

    def get_password(self, service: str, username: str) -> str | None:
        """Raise."""
        del service, username
        raise self._error
