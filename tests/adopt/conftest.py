"""Looks at folders, and takes households over without scrypt."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.adapters.found_folder import DiskFolder
from hearthkey.core.found_household import Finding
from hearthkey.core.secret import Secret
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services.adopting import AdoptRequest, Prepared
from hearthkey.services.founding import FoundRequest
from hearthkey.services.looking_over import LookingOver, Overview
from tests.adopt.by_hand import HOST, LOCK
from tests.fakes.clock import FakeClock
from tests.fakes.home import PASSPHRASE, PracticeHouse, World

LOCKED = (Secret(LOCK.decode()),)


class QuickSmith:
    """The port `services.ports.Locksmith` without its slowness: it keeps the key itself, and gives a number for it."""

    def __init__(self) -> None:
        self._kept: list[AuthorityKey] = []

    def seal(self, key: AuthorityKey, passphrase: Secret[str]) -> str:
        """See the port."""
        del passphrase
        self._kept.append(key)
        return f"key {len(self._kept) - 1}"

    def open_guard(self, text: str, passphrase: Secret[str]) -> AuthorityKey:
        """See the port."""
        del passphrase
        return self._kept[int(text.removeprefix("key "))]


class Taking:
    """A computer without a household, that may get one."""

    def __init__(self, data: Path, world: World) -> None:
        self.world = world
        self.house = PracticeHouse(data, world)
        self.house.__dict__["locksmith"] = QuickSmith()
        self.house.enter()

    def prepared(self, folder: Path, host: str = HOST, passphrases: tuple[Secret[str], ...] = LOCKED) -> Prepared:
        """See what would be taken over."""
        request = AdoptRequest(
            folder, FoundRequest("Quince Cottage", host, ("198.51.100.0/24",), gateway_key_set="compact")
        )
        return self.house.adopting.preview(request, passphrases)

    def take(self, folder: Path, host: str = HOST, passphrases: tuple[Secret[str], ...] = LOCKED) -> Prepared:
        """Take it over."""
        prepared = self.prepared(folder, host, passphrases)
        self.house.adopting.apply(prepared, PASSPHRASE)
        return prepared


@pytest.fixture
def taking(tmp_path: Path) -> Iterator[Taking]:
    """A computer without a household."""
    made = Taking(tmp_path / "data", World())
    yield made
    made.house.leave()


def look(folder: Path, *, locked: bool = False, host: str | None = None) -> Overview:
    """Look over a folder; `locked` leaves the passphrase untyped."""
    return LookingOver(DiskFolder(), FakeClock()).look(folder, passphrases=() if locked else LOCKED, host=host)


def codes(seen: Overview) -> set[str]:
    """The codes of everything that was found."""
    return {one.code for one in seen.findings}


def the(seen: Overview, code: str) -> Finding:
    """The one finding of a code."""
    (found,) = {one.file: one for one in seen.findings if one.code == code}.values()
    return found
