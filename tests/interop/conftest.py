"""The one household that outside judges are asked about."""

from __future__ import annotations

import pytest

from tests.interop import cottage
from tests.interop.cottage import Cottage


@pytest.fixture(scope="session")
def quince(tmp_path_factory: pytest.TempPathFactory) -> Cottage:
    """Quince Cottage, made once by the real verbs."""
    return cottage.build(tmp_path_factory.mktemp("quince"))
