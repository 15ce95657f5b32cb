"""One founded household for each test of this folder."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.fakes.home import Home, at_home


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes, open and unlocked."""
    with at_home(tmp_path / "data") as opened:
        yield opened
