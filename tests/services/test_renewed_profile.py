"""The profile of a renewed device: under the old names, with the new key, and never with a passphrase in it."""

from __future__ import annotations

import plistlib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.passes import Pass
from hearthkey.pki import pkcs12, read
from hearthkey.services import choosing_connect
from tests.fakes.home import Home, at_home
from tests.formats.profile_schema import walk


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data", quick=True) as found:
        yield found


def written(home: Home) -> tuple[Pass, dict[str, Any]]:
    """The newest pass of Odile's tablet, and its profile."""
    one = home.newest("Odile tablet")
    (file,) = home.house.bundling.write(home.house.bundling.open(one), Form.PROFILE)
    words = home.house.bundling.passphrase(one).reveal()
    assert words.encode() not in file.data
    return one, plistlib.loads(file.data)


def names(whole: dict[str, Any]) -> list[tuple[str, str, str]]:
    """By what a system decides which payload replaces which (vendor's schema, CommonPayloadKeys.yaml)."""
    parts = [whole, *whole["PayloadContent"]]
    return [(one["PayloadType"], one["PayloadIdentifier"], one["PayloadUUID"]) for one in parts]


def test_a_renewed_profile_takes_the_place_of_the_old_one(home: Home) -> None:
    """Broken if it fails: the phone has two entries, or goes on with the pass that ends."""
    first, before = written(home)
    home.hand_over("Odile tablet")
    home.world.clock.forward(days=690)
    home.unlock()
    home.house.renewing.renew(home.house.renewing.preview(home.passes("Odile tablet")))
    choosing_connect.keep(home.house.register, home.house.clock, ConnectChoices(by_itself=True, own_wifi=("Quince",)))
    second, after = written(home)
    assert second.serial != first.serial
    assert names(after) == names(before)
    assert walk(before) == walk(after) == []
    container = after["PayloadContent"][0]["PayloadContent"]
    assert container != before["PayloadContent"][0]["PayloadContent"]
    opened = pkcs12.open_container(container, home.house.bundling.passphrase(second), foreign=True)
    assert read.certificate_facts(opened.certificate).serial == second.serial
