"""Quince Cottage, founded once for all tests and copied for each of them."""

from __future__ import annotations

import ipaddress
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from functools import cache, cached_property
from pathlib import Path

from hearthkey.adapters.files import DiskFiles
from hearthkey.adapters.register import FILE_NAME
from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.adapters.workshop import ProcessWorkshop
from hearthkey.bootstrap import House
from hearthkey.core.firewalls import Firewall
from hearthkey.core.home_addresses import Found, Medium
from hearthkey.core.household import KEYRING
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import looking
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.founding import FoundRequest
from hearthkey.services.house import OpenHouse
from hearthkey.services.picking_up import PickingUp
from hearthkey.services.ports import Files, Workshop
from tests.fakes.clock import FakeClock
from tests.fakes.copy_locks import QuickLocks
from tests.fakes.deputy_locks import QuickDeputyLocks
from tests.fakes.dice import SeededDice
from tests.fakes.gateway import FakeGateway
from tests.fakes.locksmith import QuickLocksmith
from tests.fakes.vault import FakeVault

QUINCE = FoundRequest(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    home_subnets=("198.51.100.0/24", "2001:db8:51::/64"),
    tunnel_subnet="203.0.113.0/24",
    dns_servers=("198.51.100.1",),
    gateway_key_set="compact",
    practice=True,
)
DEVICES = (
    EnrolRequest("Ines", "phone", "windows"),
    EnrolRequest("Tomasz", "laptop", "linux"),
    EnrolRequest("Odile", "tablet", "android-older", key_set="compact"),
)
"""Two strong containers and an old one, all with P-256 keys, which are made in no time."""
PASSPHRASE = Secret("plum kettle ivory lantern gravel otter quilt")


@dataclass
class World:
    """What the household meets outside: all of it is in the test's hands."""

    vault: FakeVault = field(default_factory=FakeVault)
    clock: FakeClock = field(default_factory=FakeClock)
    dice: SeededDice = field(default_factory=SeededDice)
    workshop: Workshop = field(default_factory=ProcessWorkshop)
    files: Files = field(default_factory=DiskFiles)
    gate: FakeGateway = field(default_factory=FakeGateway)
    notices: list[tuple[str, str]] = field(default_factory=list)
    locks: QuickLocks = field(default_factory=QuickLocks)
    addresses: tuple[Found, ...] = (Found("lo", Medium.LOOPBACK, ipaddress.ip_address("127.0.0.1"), 8),)
    firewall: Firewall | None = None
    locksmith: QuickLocksmith | None = None


@dataclass
class WrittenNotices:
    """The port `services.gateway_ports.Notices` on a desktop that nobody looks at."""

    said: list[tuple[str, str]]

    def say(self, title: str, text: str) -> None:
        """See the port."""
        self.said.append((title, text))


class PracticeHouse(House):
    """The wiring of `bootstrap`, with the outside world exchanged."""

    def __init__(self, data: Path | None, world: World, place: str = KEYRING) -> None:
        super().__init__(data, place=place)
        self.__dict__.update(clock=world.clock, dice=world.dice, workshop=world.workshop, files=world.files)
        self.__dict__["gateway_door"] = world.gate
        self.__dict__["copy_locks"] = world.locks
        self.__dict__["deputy_locks"] = QuickDeputyLocks()
        self.__dict__["notices"] = WrittenNotices(world.notices)
        if world.locksmith is not None:
            self.__dict__["locksmith"] = world.locksmith
        self._vaults[KEYRING] = world.vault
        self._world = world

    @cached_property
    def picking_up(self) -> PickingUp:
        """The verb "ticket", in a network that the test says."""
        return PickingUp(
            self.register,
            self.bundling,
            self.rehearsing,
            self.clock,
            self.dice,
            lambda: self._world.addresses,
            lambda address: TicketServer(address, self.clock),
            lambda: self._world.firewall,
            self.kinds,
        )


def opener(world: World) -> OpenHouse:
    """What `bootstrap.open_house` is to the command line, in a world of the test's own."""

    @contextmanager
    def open_house(
        data: Path | None, *, place: str = KEYRING, writing: bool, keyring_service: str = "hearthkey"
    ) -> Iterator[House]:
        del keyring_service
        made = PracticeHouse(data, world, place)
        try:
            if writing:
                made.enter()
            else:
                made.look()
            yield made
        finally:
            made.leave()

    return open_house


@dataclass
class Home:
    """One household of one test, open for writing and unlocked."""

    house: PracticeHouse
    world: World
    key: AuthorityKey

    def unlock(self) -> None:
        """Unlock at once: opening the CA key is slow on purpose, and this is the very key."""
        self.house.keyholder.keep(self.key)

    def reopen(self, *, writing: bool = True) -> None:
        """Leave, and start the app anew on the same data."""
        self.house.leave()
        self.house = PracticeHouse(self.house.data, self.world)
        if writing:
            self.house.enter()
            self.unlock()
        else:
            self.house.look()

    def passes(self, text: str) -> list[Pass]:
        """The passes of a device."""
        return looking.find(self.house.register.passes(), text)

    def newest(self, text: str) -> Pass:
        """The newest pass of a device."""
        return looking.newest(self.passes(text))

    def add(self, request: EnrolRequest) -> Changes:
        """Enrol a device."""
        return self.house.enrolling.apply(self.house.enrolling.preview(request))

    def stop(self, text: str) -> Changes:
        """Stop a device."""
        return self.house.stopping.stop(self.house.stopping.preview_stop(self.passes(text)))

    def let_in(self, text: str) -> Changes:
        """Let a device back in."""
        return self.house.stopping.let_in(self.house.stopping.preview_let_in(self.passes(text)))

    def revoke(self, text: str, reason: Reason = Reason.KEY_COMPROMISE) -> Changes:
        """Revoke a device for good."""
        return self.house.stopping.revoke(self.house.stopping.preview_revoke(self.passes(text), reason))

    def hand_over(self, text: str) -> Changes:
        """Hand a device's bundle over."""
        return self.house.handing_over.apply(self.house.handing_over.preview(self.passes(text)))


@dataclass(frozen=True)
class Founded:
    """Quince Cottage as it was right after its devices were enrolled, to be copied from."""

    register: bytes
    secrets: dict[str, str]
    key: AuthorityKey

    def put_into(self, data: Path) -> World:
        """Lay a copy of the household into a folder, and return its world."""
        data.mkdir(mode=0o700, parents=True)
        (data / FILE_NAME).touch(mode=0o600)
        (data / FILE_NAME).write_bytes(self.register)
        world = World(vault=FakeVault(dict(self.secrets)), dice=SeededDice(str(data)))
        world.clock.forward(hours=1)
        return world


@cache
def founded() -> Founded:
    """Found it the real way: the passphrase's scrypt and the bundles' rounds are what they are."""
    world = World()
    with tempfile.TemporaryDirectory() as folder:
        house = PracticeHouse(Path(folder), world)
        try:
            house.enter()
            house.founding.apply(house.founding.preview(QUINCE), PASSPHRASE)
            house.enrolling.apply(*house.enrolling.preview_all(DEVICES))
            key = house.keyholder.key()
        finally:
            house.leave()
        return Founded((Path(folder) / FILE_NAME).read_bytes(), world.vault.secrets, key)


@contextmanager
def at_home(data: Path, *, practice: bool = True, quick: bool = False) -> Iterator[Home]:
    """A copy of the household, open for writing and unlocked, for the length of a `with` block.

    Args:
        quick: keys are guarded at once instead of slowly.
        practice: nothing of a practice household is ever delivered, so that tests of delivery want none.
    """
    source = founded()
    world = source.put_into(data)
    if quick:
        text = next(value for name, value in source.secrets.items() if name.endswith("/ca"))
        world.locksmith = QuickLocksmith({text: (source.key, PASSPHRASE)})
    if not practice:
        with closing(sqlite3.connect(data / FILE_NAME)) as register, register:
            register.execute("UPDATE household SET practice = 0")
    home = Home(PracticeHouse(data, world), world, source.key)
    try:
        home.house.enter()
        home.unlock()
        yield home
    finally:
        home.house.leave()
