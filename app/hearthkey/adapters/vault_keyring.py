"""Secrets in the keyring of the operating system."""

from __future__ import annotations

import configparser
import threading
from collections.abc import Callable
from time import monotonic
from typing import TypeVar

import keyring
from keyring.backend import KeyringBackend
from keyring.backends.fail import Keyring as NoKeyring
from keyring.backends.null import Keyring as NullKeyring
from keyring.errors import InitError, KeyringError, KeyringLocked, NoKeyringError, PasswordDeleteError

from hearthkey.core.errors import Bug, Unavailable
from hearthkey.core.secret import Secret

SERVICE = "hearthkey"
SMALLEST_KEYRING = 1280
"""Characters: 2,560 bytes of UTF-16, CRED_MAX_CREDENTIAL_BLOB_SIZE of the Windows credential store."""
MOST_PARTS = 8
"""Pieces of that length. The key text of an RSA CA that was made elsewhere takes up to six; one of ours takes one."""
_IN_PARTS = "in parts: "
PATIENCE = 20.0
"""Seconds until a keyring that does not answer is called silent."""
_SLOW_NONE = 10.0
"""Seconds. Some desktops answer "no such secret" once their own question timed out."""

T = TypeVar("T")


class KeyringVault:
    """The port `services.ports.Vault` over the `keyring` library.

    Every call runs in a thread of its own, because some keyrings wait for ever: after `patience`
    seconds the call is given up, and later calls fail at once until it has returned.
    """

    place = "keyring"

    def __init__(
        self, *, service: str = SERVICE, patience: float = PATIENCE, backend: KeyringBackend | None = None
    ) -> None:
        self._service = service
        self._patience = patience
        self._given = backend
        self._hanging: threading.Thread | None = None

    def get(self, name: str) -> Secret[str] | None:
        """See the port."""
        begun = monotonic()
        found = self._ask(lambda backend: self._whole(backend, name))
        if found is None and monotonic() - begun > _SLOW_NONE:
            raise Unavailable("keyring-silent", seconds=int(_SLOW_NONE))
        return None if found is None else Secret(found)

    def put(self, name: str, secret: Secret[str]) -> None:
        """See the port."""
        text = secret.reveal()
        if len(text) > SMALLEST_KEYRING * MOST_PARTS:
            raise Bug("secret-too-long", limit=SMALLEST_KEYRING * MOST_PARTS)
        pieces = [text[start : start + SMALLEST_KEYRING] for start in range(0, len(text), SMALLEST_KEYRING)]

        def store(backend: KeyringBackend) -> str | None:
            if len(pieces) > 1:
                for number, piece in enumerate(pieces):
                    backend.set_password(self._service, f"{name}/{number}", piece)
                backend.set_password(self._service, name, f"{_IN_PARTS}{len(pieces)}")
            else:
                backend.set_password(self._service, name, text)
            return self._whole(backend, name)

        kept = self._ask(store)
        if kept != text:
            raise Unavailable("keyring-failed", seen="it gave back something else than it was given")

    def delete(self, name: str) -> None:
        """See the port."""

        def forget(backend: KeyringBackend) -> None:
            for one in (name, *self._parts(name, MOST_PARTS)):
                if one != name and backend.get_password(self._service, one) is None:
                    break
                self._forget(backend, one)

        self._ask(forget)

    def _forget(self, backend: KeyringBackend, name: str) -> None:
        try:
            backend.delete_password(self._service, name)
        except PasswordDeleteError:
            if backend.get_password(self._service, name) is not None:
                raise

    def _whole(self, backend: KeyringBackend, name: str) -> str | None:
        """A secret, put together again where it is longer than the smallest keyring takes."""
        found = backend.get_password(self._service, name)
        count = found.removeprefix(_IN_PARTS) if found is not None and found.startswith(_IN_PARTS) else ""
        if not count.isdecimal():
            return found
        pieces = [backend.get_password(self._service, one) for one in self._parts(name, int(count[:2]))]
        return None if None in pieces else "".join(piece for piece in pieces if piece is not None)

    @staticmethod
    def _parts(name: str, count: int) -> tuple[str, ...]:
        return tuple(f"{name}/{number}" for number in range(min(count, MOST_PARTS)))

    def _backend(self) -> KeyringBackend:
        backend = self._given or _chosen()
        if isinstance(backend, NoKeyring):
            raise Unavailable("keyring-absent")
        kind = type(backend)
        if isinstance(backend, NullKeyring) or "plaintext" in f"{kind.__module__}.{kind.__name__}".lower():
            raise Unavailable("keyring-unsafe", backend=f"{kind.__module__}.{kind.__name__}")
        return backend

    def _ask(self, question: Callable[[KeyringBackend], T]) -> T:
        if self._hanging is not None and self._hanging.is_alive():
            raise Unavailable("keyring-silent", seconds=int(self._patience))
        answers: list[T] = []
        failures: list[BaseException] = []

        def call() -> None:
            try:
                answers.append(question(self._backend()))
            except BaseException as error:  # noqa: BLE001 - carried to the caller's thread and raised there
                failures.append(error)

        thread = threading.Thread(target=call, name="keyring call", daemon=True)
        thread.start()
        thread.join(self._patience)
        if thread.is_alive():
            self._hanging = thread
            raise Unavailable("keyring-silent", seconds=int(self._patience))
        self._hanging = None
        if failures:
            raise _told(failures[0]) from failures[0]
        return answers[0]


def _chosen() -> KeyringBackend:
    """The keyring that the library finds; settings of its own may make it look for one that is not there."""
    try:
        return keyring.get_keyring()
    except (ImportError, AttributeError, ValueError, RuntimeError, configparser.Error) as error:
        raise Unavailable("keyring-absent") from error


def _told(error: BaseException) -> BaseException:
    """Translate what the keyring library says."""
    if isinstance(error, NoKeyringError):
        return Unavailable("keyring-absent")
    if isinstance(error, KeyringLocked | InitError):
        return Unavailable("keyring-locked", seen=str(error))
    if isinstance(error, KeyringError):
        return Unavailable("keyring-failed", seen=str(error))
    if isinstance(error, Exception) and type(error).__module__.split(".", 1)[0] in {"secretstorage", "jeepney"}:
        return Unavailable("keyring-failed", seen=f"{type(error).__name__}: {error}")
    if isinstance(error, OSError):
        return Unavailable("keyring-failed", seen=str(error))
    return error
