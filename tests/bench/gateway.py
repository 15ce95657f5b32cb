"""Measures spare lists, and a stop with the gateway on a real sshd on loopback."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from hearthkey.bootstrap import House
from hearthkey.core.passes import Pass
from hearthkey.services import looking
from tests.bench import practice
from tests.bench.timing import Pairs, Row, at_most, paired, timed, within
from tests.gateway import servers

PHONE = "Ines 0 device 0"


def spare_lists(*, quick: bool) -> list[Row]:
    """Spare lists for 50 devices, as an unlock signs them."""
    with practice.household() as house:
        practice.fill(house, 50, every=10_000)
        house.stopping.let_in(house.stopping.preview_let_in(_phone(house)))
        act = timed(house.sparing.renew)
        act()
        took = [act() for _ in range(5 if quick else 15)]
        assert len(house.register.spare_lists()) > 50
    return [within("spare lists for 50 devices", took, 1.0)]


def _phone(house: House) -> list[Pass]:
    return looking.find(house.register.passes(), PHONE)


@dataclass
class Gateway:
    """A household with its gateway on loopback."""

    house: House

    def stop(self) -> None:
        """From Enter to in force, with the household locked."""
        house = self.house
        house.sparing.stop(house.sparing.preview_stop(_phone(house)))
        house.delivering.deliver()

    def let_in(self) -> None:
        """Back to where a stop can begin."""
        house = self.house
        house.stopping.let_in(house.stopping.preview_let_in(_phone(house)))
        house.sparing.renew()
        house.delivering.deliver()


@contextmanager
def _at_a_gateway() -> Iterator[Gateway]:
    """A household that is not for practice, delivered once to a real sshd on loopback."""
    with practice.folder() as made, practice.household(practice=False) as house:
        home = made / "ssh"
        servers.keys(home)
        with servers.running(home) as server:
            servers.be_the_user(home, server.port)
            before = os.environ["PATH"]
            os.environ["PATH"] = f"{home / 'bin'}:{before}"
            try:
                practice.fill(house, 20, every=10_000)
                house.stopping.let_in(house.stopping.preview_let_in(_phone(house)))
                where = replace(server.target(_empty(made / "gateway")), reload="true")
                house.targeting.choose(where, house.targeting.host_key(where))
                house.sparing.renew()
                house.delivering.deliver()
                yield Gateway(house)
            finally:
                os.environ["PATH"] = before


def _empty(folder: Path) -> Path:
    folder.mkdir()
    return folder


def stop_in_force(*, quick: bool) -> list[Row]:
    """From Enter to in force; and what of it is our own work: the rest is waiting for ssh and sftp."""
    with _at_a_gateway() as gateway:
        house = gateway.house
        key = house.keyholder.key()
        took: list[float] = []
        waited: list[float] = []
        for _ in range(5 if quick else 15):
            house.keyholder.lock()
            began = time.perf_counter()
            own = time.process_time()
            gateway.stop()
            took.append(time.perf_counter() - began)
            waited.append(time.process_time() - own)
            house.keyholder.keep(key)
            gateway.let_in()
    return [
        within("stop: from Enter to in force at a real sshd", took, 2.0),
        within("stop: what of it is our own work (processor time)", waited, 0.150),
    ]


def unchanged(*, quick: bool) -> list[Row]:
    """Delivering what is there already, against only looking at what is there."""
    with _at_a_gateway() as gateway:
        house = gateway.house
        pairs: Pairs = paired(timed(house.delivering.deliver), timed(house.delivering.look), 3 if quick else 7)
        done = house.delivering.deliver()
        assert done.uploaded == 0
    return [at_most("deliver: an unchanged pack against only looking", pairs, 1.5)]
