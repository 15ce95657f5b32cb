"""A delivery: what is at the gateway, what differs, and what came of it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from hearthkey.core.pack import LIST_FILES, MANIFEST, Pack, PackFile
from hearthkey.core.target import Target


@dataclass(frozen=True)
class There:
    """What was read at the gateway.

    Args:
        set_id: id of the set in force, None before the first delivery.
        digests: SHA-256 of every file that its manifest names and that is there, by name; the manifest's among them.
        whole: every file that the manifest names is there with the content that it names.
        list_der: the revocation list there, DER; None where there is none.
        second_list: that of a second CA, DER.
        certificate: the gateway's certificate there, DER; None where there is none.
    """

    set_id: str | None
    digests: Mapping[str, str] = field(default_factory=dict)
    whole: bool = False
    list_der: bytes | None = None
    certificate: bytes | None = None
    second_list: bytes | None = None

    @property
    def lists(self) -> tuple[bytes, ...]:
        """All revocation lists there."""
        return tuple(one for one in (self.list_der, self.second_list) if one is not None)


class Differs(StrEnum):
    """How a file differs from what is at the gateway."""

    NEW = "new"
    CHANGED = "changed"
    SAME = "same"
    GOES = "goes"


@dataclass(frozen=True)
class DeliveryPlan:
    """A delivery about to be made.

    Args:
        target: where to.
        files: how each file differs, by name.
        list_number: of the list that will be in force.
        set_id: of the set that will be.
    """

    target: Target
    files: Mapping[str, Differs]
    list_number: int
    set_id: str

    @property
    def unchanged(self) -> bool:
        """Whether everything is there already."""
        return all(one is Differs.SAME for one in self.files.values())

    @property
    def only_the_list(self) -> bool:
        """Whether nothing differs but the revocation list."""
        return {name for name, how in self.files.items() if how is not Differs.SAME} <= {*LIST_FILES, MANIFEST}


@dataclass(frozen=True)
class Wanted:
    """A set as it is to be: all digests, and the bytes of those files that this computer can make now.

    Args:
        digests: SHA-256 by name, the manifest among them.
        files: bytes, by name.
        list_number: of its list.
        set_id: what it will be called.
        made_of: mark of the settings that it was made from.
    """

    digests: Mapping[str, str]
    files: Mapping[str, PackFile]
    list_number: int
    set_id: str
    made_of: str


def wanted(pack: Pack, made_of: str) -> Wanted:
    """A pack as what is wanted at the gateway."""
    files = {file.name: file for file in pack.files}
    digests = {name: file.digest for name, file in files.items()}
    return Wanted(digests, files, pack.list_number, pack.set_id, made_of)


def plan(target: Target, there: There, want: Wanted) -> DeliveryPlan:
    """Compare what is there with what is wanted, file by file."""
    files = {name: _differs(there.digests.get(name), digest) for name, digest in want.digests.items()}
    files |= {name: Differs.GOES for name in there.digests if name not in want.digests}
    return DeliveryPlan(target, dict(sorted(files.items())), want.list_number, want.set_id)


def _differs(there: str | None, here: str) -> Differs:
    if there is None:
        return Differs.NEW
    return Differs.SAME if there == here else Differs.CHANGED


@dataclass(frozen=True)
class Delivered:
    """What came of a delivery.

    Args:
        plan: what differed.
        at: when it was read back, UTC.
        uploaded: how many files were sent; 0 where everything was there.
        list_number: of the list that is in force now.
        taken_over: titles or serials of revocations that were found there and not here.
        clock_off: seconds by which the gateway's clock is ahead; None where it did not tell.
    """

    plan: DeliveryPlan
    at: datetime
    uploaded: int
    list_number: int
    taken_over: tuple[str, ...] = ()
    clock_off: int | None = None
