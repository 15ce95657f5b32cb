"""A gateway in memory, with faults to order."""

from __future__ import annotations

import threading
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime

from hearthkey.core.errors import Cancelled, Refused, Unavailable
from hearthkey.core.pack import PackFile
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import HostKey, Target
from hearthkey.services.gateway_ports import Gate, Ran

HOST_KEY = HostKey(
    # The key of RFC 8032 section 7.1 test 1, in the form of RFC 8709 section 4.
    "ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAAINdamAGCsQq31Uv+08lkBzoO4XLz2qYjJa8CGmj3B1Ea",
    "SHA256:bbXpuKG6zhzdmnxq256TlqzFBzRl2f6OOg722cYNbU8",
)

STEPS = ("open", "in_force", "read", "put_set", "switch", "keep_only", "run", "now")


@dataclass
class FakeGateway:
    """The port `services.gateway_ports.GatewayDoor`, and what lies behind it.

    Args:
        sets: files by set id; what a step was cut off in the middle of lies there half done.
        current: id of the set in force.
        runs_commands: False for a folder.
        shows: the host key it shows; None for a folder.
        clock: what its clock says; None where it does not tell.
        answers: what the commands come to, in their order; after the last one all is well.
        trouble: code of the Unavailable that a step raises, by its name in `STEPS`.
        cut_at: how many steps go well before the connection is cut in the middle of one; None for never.
        damage: names of files that come back with other content than was sent.
        waiting: where set, a step waits for it, or for the cancel event, before it begins.
        steps, ran: what happened, in order.
        opened: how many connections were made.
        rooms: folders within it, by name.
    """

    sets: dict[str, dict[str, bytes]] = field(default_factory=dict)
    current: str | None = None
    runs_commands: bool = True
    shows: HostKey | None = HOST_KEY
    clock: datetime | None = None
    answers: list[Ran] = field(default_factory=list)
    trouble: dict[str, str] = field(default_factory=dict)
    cut_at: int | None = None
    damage: set[str] = field(default_factory=set)
    waiting: threading.Event | None = None
    steps: list[str] = field(default_factory=list)
    ran: list[str] = field(default_factory=list)
    opened: int = 0
    rooms: dict[str, FakeGateway] = field(default_factory=dict)

    def host_key(self, target: Target) -> HostKey | None:
        """See the port."""
        if "host_key" in self.trouble:
            raise Unavailable(self.trouble["host_key"], where=where(target), seen="as the test wished")
        return self.shows

    @contextmanager
    def open(self, target: Target, cancel: threading.Event | None = None) -> Iterator[Gate]:
        """See the port."""
        gate = FakeGate(self, target, cancel)
        gate.begin("open")
        if self.shows is not None and not target.host_key:
            raise Refused("host-key-unknown", where=where(target), fingerprint="")
        if self.shows is not None and target.host_key != self.shows.line:
            raise Refused("host-key-changed", where=where(target), seen=self.shows.fingerprint)
        self.opened += 1
        yield gate


class FakeGate:
    """The port `services.gateway_ports.Gate`."""

    def __init__(self, gateway: FakeGateway, target: Target, cancel: threading.Event | None) -> None:
        self._gateway = gateway
        self._target = target
        self._where = where(target)
        self._cancel = cancel

    def begin(self, step: str) -> bool:
        """Note a step, and do to it what was ordered; True where it is to be cut in its middle."""
        gateway = self._gateway
        while gateway.waiting is not None and not gateway.waiting.wait(0.01):
            self._refuse_cancelled()
        self._refuse_cancelled()
        gateway.steps.append(step)
        if step in gateway.trouble:
            raise Unavailable(gateway.trouble[step], where=self._where, seen="as the test wished")
        if gateway.cut_at is None:
            return False
        gateway.cut_at -= 1
        return gateway.cut_at < 0

    def _refuse_cancelled(self) -> None:
        if self._cancel is not None and self._cancel.is_set():
            raise Cancelled("cancelled")

    def _cut(self) -> Unavailable:
        return Unavailable("gateway-cut", where=self._where, seen="as the test wished")

    def room(self, name: str) -> Gate:
        """See the port; a gateway of its own, which fails as this one does."""
        rooms = self._gateway.rooms
        there = rooms.setdefault(name, FakeGateway(trouble=self._gateway.trouble, damage=self._gateway.damage))
        return FakeGate(there, self._target, self._cancel)

    def in_force(self) -> str | None:
        """See the port."""
        if self.begin("in_force"):
            raise self._cut()
        return self._gateway.current

    def read(self, set_id: str, names: Sequence[str], limit: int) -> dict[str, bytes]:
        """See the port."""
        if self.begin("read"):
            raise self._cut()
        there = self._gateway.sets.get(set_id, {})
        return {name: there[name][:limit] for name in names if name in there}

    def put_set(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str | None) -> None:
        """See the port; cut in the middle, it leaves half the files."""
        cut = self.begin("put_set")
        sets = self._gateway.sets
        in_place = set_id in {kept_from, self._gateway.current}
        there = sets.setdefault(set_id, {}) if in_place else {}
        sets[set_id] = there
        if kept_from is not None:
            there |= {name: sets[kept_from][name] for name in kept}
        for file in fresh[: len(fresh) // 2] if cut else fresh:
            there[file.name] = file.data + b"?" if file.name in self._gateway.damage else file.data
        if cut:
            raise self._cut()

    def switch(self, set_id: str) -> None:
        """See the port; cut in the middle, it has happened and nobody heard of it."""
        cut = self.begin("switch")
        self._gateway.current = set_id
        if cut:
            raise self._cut()

    def keep_only(self, set_ids: Iterable[str]) -> None:
        """See the port."""
        cut = self.begin("keep_only")
        keep = {*set_ids, self._gateway.current}
        self._gateway.sets = {name: files for name, files in self._gateway.sets.items() if name in keep}
        if cut:
            raise self._cut()

    def run(self, command: str) -> Ran:
        """See the port."""
        if not self._gateway.runs_commands:
            raise Refused("no-command-here", where=self._where, text=command[:80])
        cut = self.begin("run")
        self._gateway.ran.append(command)
        if cut:
            raise self._cut()
        return self._gateway.answers.pop(0) if self._gateway.answers else Ran(0, "")

    def now(self) -> datetime | None:
        """See the port."""
        if self.begin("now"):
            raise self._cut()
        return self._gateway.clock
