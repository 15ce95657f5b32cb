"""What a household is, told in a few lines: the tiny model that the verbs are compared with."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from hearthkey.core.passes import State
from hearthkey.core.revocation import Reason


@dataclass
class Known:
    """One pass."""

    serial: str
    not_after: datetime
    handed_over: bool = False
    host: str = ""
    reason: Reason | None = None
    since: datetime | None = None

    def state(self, now: datetime) -> State:
        """By the words of the glossary."""
        if self.reason not in {None, Reason.CERTIFICATE_HOLD}:
            return State.REVOKED
        if now > self.not_after:
            return State.ENDED
        if self.reason is Reason.CERTIFICATE_HOLD:
            return State.STOPPED
        return State.IN_USE if self.handed_over else State.WAITING


@dataclass
class Model:
    """A household of passes, the newest list, and two settings."""

    passes: dict[str, list[Known]] = field(default_factory=dict)
    number: int = 1
    signed: datetime | None = None
    entries: dict[str, tuple[str, datetime]] = field(default_factory=dict)
    host: str = "home.quince.example"
    tunnel: str = "split"

    def all(self) -> list[Known]:
        """Every pass."""
        return [one for passes in self.passes.values() for one in passes]

    def living(self, title: str, now: datetime) -> list[Known]:
        """Those of a device that get in, or would if they were not stopped."""
        return [one for one in self.passes[title] if one.state(now) not in {State.REVOKED, State.ENDED}]

    def carried(self, now: datetime) -> set[str]:
        """The hosts that stand in bundles of whoever is alive."""
        return {one.host for title in self.passes for one in self.living(title, now) if one.handed_over}

    def has_bundles(self, now: datetime) -> bool:
        """Whether anybody who is alive has a bundle."""
        return any(one.handed_over for title in self.passes for one in self.living(title, now))

    def sign(self, now: datetime) -> None:
        """The next list: who is withdrawn, until one list has told it after the end (RFC 5280 section 3.3)."""
        self.entries = {
            one.serial: (one.reason.rfc_name, one.since)
            for one in self.all()
            if one.reason is not None
            and one.since is not None
            and (self.signed is None or self.signed <= one.not_after)
        }
        self.number += 1
        self.signed = now
