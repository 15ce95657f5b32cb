"""Logins for the tests of the real keyring."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.keyring.desktop import Desktop


@pytest.fixture
def login() -> Iterator[Desktop]:
    """A login with nothing running in it: no bus, no keyring."""
    with tempfile.TemporaryDirectory(prefix="quince-") as root:
        made = Desktop(Path(root))
        try:
            yield made
        finally:
            made.stop()


@pytest.fixture
def open_login(login: Desktop) -> Desktop:
    """A login whose keyring is open."""
    login.start_bus()
    login.start_keyring()
    return login


@pytest.fixture
def closed_login(open_login: Desktop) -> Desktop:
    """A login that has a keyring, and whose keyring daemon was never told a password."""
    open_login.stop_keyring()
    open_login.start_keyring(None)
    return open_login
