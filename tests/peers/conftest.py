"""The households that peers of other hands are shown, each made once."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.peers import households, servers
from tests.peers.households import Household
from tests.peers.servers import Room


@pytest.fixture(scope="session")
def quince(tmp_path_factory: pytest.TempPathFactory) -> Household:
    """Quince Cottage, with everything that left it."""
    return households.ours(tmp_path_factory.mktemp("quince"))


@pytest.fixture(scope="session")
def stranger(tmp_path_factory: pytest.TempPathFactory) -> Household:
    """A household that is not ours, with the same host and the same people."""
    return households.foreign(tmp_path_factory.mktemp("stranger"))


@pytest.fixture(scope="session")
def room() -> Iterator[Room]:
    """A network that nobody else is in."""
    with servers.room() as made:
        yield made
