"""The steps of a move as rules: when each is there, how long it takes, and what comes before it.

The order is common practice with no source, from three facts: a device looks for the host that its bundle names and
compares it with the certificate (RFC 7296 section 3.5, RFC 4945 section 3.1); what it sends into a split tunnel stands
in its bundle, and the gateway can only narrow it (RFC 7296 section 2.9); who asks for a name may be told an old answer
for as long as its TTL (RFC 1035 section 3.2.1). So what is new is made to work beside what is old, devices learn it,
and only then the old goes.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """What is new at home."""

    PROVIDER = "new-provider"
    ROUTER = "new-router"
    HOST = "new-host"
    SUBNET = "new-subnet"
    BOX = "new-box"


class Task(StrEnum):
    """Something to do, in the order in which it is done."""

    TRY_COPY = "try-copy"
    LOOK_AT_LINE = "look-at-line"
    NAME_LEADS = "name-leads"
    BOTH_NAMES = "both-names"
    BOTH_HOMES = "both-homes"
    PREPARE_BOX = "prepare-box"
    DELIVER = "deliver"
    NEW_BUNDLES = "new-bundles"
    SHORT_TTL = "short-ttl"
    RENUMBER = "renumber"
    FIXED_ADDRESS = "fixed-address"
    FORWARD = "forward"
    POINT_NAME = "point-name"
    CHECK = "check"
    PROVE = "prove"
    LONG_TTL = "long-ttl"
    NAME_GOES = "name-goes"
    HOME_GOES = "home-goes"
    WIPE_BOX = "wipe-box"
    END_LINE = "end-line"


class When(StrEnum):
    """On which side of the day itself."""

    BEFORE = "before"
    DAY = "day"
    AFTER = "after"


_P, _R, _H, _S, _B = Kind.PROVIDER, Kind.ROUTER, Kind.HOST, Kind.SUBNET, Kind.BOX
_EVERY = frozenset(Kind)


@dataclass(frozen=True)
class Rule:
    """When a task is there, how long it takes, and what has to be done first if that is there too."""

    kinds: frozenset[Kind]
    when: When
    minutes: int
    needs: tuple[Task, ...] = ()
    gateway: bool = False


RULES: Mapping[Task, Rule] = {
    Task.TRY_COPY: Rule(_EVERY, When.BEFORE, 5),
    Task.LOOK_AT_LINE: Rule(frozenset({_P, _R}), When.BEFORE, 10),
    Task.NAME_LEADS: Rule(frozenset({_H}), When.BEFORE, 15),
    Task.BOTH_NAMES: Rule(frozenset({_H}), When.BEFORE, 5, (Task.TRY_COPY, Task.NAME_LEADS), gateway=True),
    Task.BOTH_HOMES: Rule(frozenset({_S}), When.BEFORE, 5, (Task.TRY_COPY,), gateway=True),
    Task.PREPARE_BOX: Rule(frozenset({_B}), When.BEFORE, 60, (Task.TRY_COPY,), gateway=True),
    Task.DELIVER: Rule(
        frozenset({_H, _S, _B}), When.BEFORE, 5, (Task.BOTH_NAMES, Task.BOTH_HOMES, Task.PREPARE_BOX), gateway=True
    ),
    Task.NEW_BUNDLES: Rule(frozenset({_H, _S}), When.BEFORE, 10, (Task.DELIVER,)),
    Task.SHORT_TTL: Rule(frozenset({_P}), When.BEFORE, 5, (Task.NAME_LEADS,)),
    Task.RENUMBER: Rule(frozenset({_S}), When.DAY, 45, (Task.NEW_BUNDLES,)),
    Task.FIXED_ADDRESS: Rule(frozenset({_P, _R, _S, _B}), When.DAY, 10, (Task.RENUMBER,)),
    Task.FORWARD: Rule(frozenset({_P, _R, _S, _B}), When.DAY, 10, (Task.FIXED_ADDRESS, Task.DELIVER)),
    Task.POINT_NAME: Rule(frozenset({_P}), When.DAY, 10, (Task.SHORT_TTL, Task.NEW_BUNDLES)),
    Task.CHECK: Rule(_EVERY, When.DAY, 5, (Task.FORWARD, Task.POINT_NAME, Task.DELIVER)),
    Task.PROVE: Rule(_EVERY, When.DAY, 10, (Task.CHECK,)),
    Task.LONG_TTL: Rule(frozenset({_P}), When.AFTER, 5, (Task.PROVE,)),
    Task.NAME_GOES: Rule(frozenset({_H}), When.AFTER, 10, (Task.NEW_BUNDLES, Task.PROVE), gateway=True),
    Task.HOME_GOES: Rule(frozenset({_S}), When.AFTER, 10, (Task.RENUMBER, Task.PROVE), gateway=True),
    Task.WIPE_BOX: Rule(frozenset({_B}), When.AFTER, 30, (Task.PROVE,)),
    Task.END_LINE: Rule(frozenset({_P}), When.AFTER, 10, (Task.PROVE, Task.NAME_GOES)),
}
