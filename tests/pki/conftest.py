"""One practice household for all tests of this folder."""

from __future__ import annotations

import pytest

from hearthkey.pki import pkcs12
from tests.pki import quince


@pytest.fixture(scope="session")
def home() -> quince.Quince:
    """Quince Cottage with its CA, its gateway and one device."""
    return quince.found()


@pytest.fixture(scope="session")
def strong(home: quince.Quince) -> bytes:
    """The device's strong container, made once because its rounds take a third of a second."""
    return pkcs12.write(home.device, quince.PASSPHRASE, friendly_name="Ines’s phone", container="strong")
