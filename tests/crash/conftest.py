"""A login, a nursery and two households to crash: one in a real keyring, one in files."""

from __future__ import annotations

import contextlib
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.core.household import FILE, KEYRING
from tests.crash.homes import Home
from tests.crash.nursery import Nursery
from tests.keyring.desktop import Desktop


@contextlib.contextmanager
def open_desktop() -> Iterator[Desktop]:
    """A login whose keyring is open."""
    with tempfile.TemporaryDirectory(prefix="quince-") as root:
        made = Desktop(Path(root))
        try:
            made.start_bus()
            made.start_keyring()
            yield made
        finally:
            made.stop()


@pytest.fixture(scope="session")
def desktop() -> Iterator[Desktop]:
    """The login that all share, whose keyring stays open."""
    with open_desktop() as made:
        yield made


@pytest.fixture(scope="session")
def nursery(desktop: Desktop, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Nursery]:
    """Runs verbs in processes that may be killed."""
    with Nursery(desktop.environment, tmp_path_factory.mktemp("trails")) as made:
        yield made


def settle(home: Home) -> Home:
    """Found a household with a waiting, a used and a stopped device."""
    for verb in ("found", "move-in"):
        assert home.run(verb).refusal is None
    home.save()
    return home


@pytest.fixture(scope="session")
def settled(desktop: Desktop, nursery: Nursery, tmp_path_factory: pytest.TempPathFactory) -> dict[str, Home]:
    """By place, a settled household."""
    desktop.put_back({})
    return {place: settle(Home(desktop, nursery, tmp_path_factory.mktemp(place), place)) for place in (KEYRING, FILE)}


@pytest.fixture
def own_login(tmp_path: Path) -> Iterator[Home]:
    """A settled household in a login of its own, whose keyring may be closed."""
    with open_desktop() as desktop, Nursery(desktop.environment, tmp_path) as nursery:
        yield settle(Home(desktop, nursery, tmp_path / "own", KEYRING))


@pytest.fixture
def bare(desktop: Desktop, nursery: Nursery, tmp_path: Path) -> dict[str, Home]:
    """By place, somewhere to found a household."""
    return {place: Home(desktop, nursery, tmp_path / place, place) for place in (KEYRING, FILE)}
