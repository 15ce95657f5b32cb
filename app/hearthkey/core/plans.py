"""What a verb is about to do, to be shown before it is done; and what it did."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.household import Household
from hearthkey.core.keysets import KeySet
from hearthkey.core.kinds import DeviceKind
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass
from hearthkey.core.renewal import Way
from hearthkey.core.revocation import Reason


@dataclass(frozen=True)
class FoundPlan:
    """A household about to be founded.

    Args:
        household: as it will stand in the register.
        gateway_key_set: what the gateway signs with.
        cautions: what the householder should know first.
    """

    household: Household
    gateway_key_set: KeySet
    cautions: tuple[Caution, ...]


@dataclass(frozen=True)
class FollowPlan:
    """A pass that a new one is to follow.

    Args:
        old: that pass.
        overlap_ends: until when both get in, UTC.
        way: the same device again, or another one.
    """

    old: Pass
    overlap_ends: datetime
    way: Way


@dataclass(frozen=True)
class EnrolPlan:
    """A device about to be enrolled.

    Args:
        person, device: whose, and which.
        kind: decides key set and container unless the householder overruled them.
        key_set, container: as they will be.
        guest: whether the pass is meant to end in days.
        ends: chosen end, UTC, or None for the default.
        replaces: the newest pass of the same device, where a new one takes its place.
        identity: the device's identity, where it has one already.
        cautions: what the householder should know first.
        follows: the passes whose place it is to take once it works.
    """

    person: str
    device: str
    kind: DeviceKind
    key_set: KeySet
    container: str
    guest: bool
    ends: datetime | None
    replaces: Pass | None
    identity: str | None
    cautions: tuple[Caution, ...]
    follows: tuple[FollowPlan, ...] = ()


@dataclass(frozen=True)
class RenewPlan:
    """A pass about to be followed by one with a new key.

    Args:
        old: that pass.
        enrol: the new one.
        ends: until when the new one gets in, UTC.
        overlap_ends: until when both do.
        overlaps: whether the old one gets in at all.
    """

    old: Pass
    enrol: EnrolPlan
    ends: datetime
    overlap_ends: datetime
    overlaps: bool


@dataclass(frozen=True)
class ReplacePlan:
    """A device about to take the place of another.

    Args:
        old: the passes of the other that stop now.
        enrol: the new device.
        title: what the new device is called.
        list_number: number of the list that says so.
    """

    old: tuple[Pass, ...]
    enrol: EnrolPlan
    title: str
    list_number: int


@dataclass(frozen=True)
class SupersedePlan:
    """Old passes about to go for good, because others follow them.

    Args:
        chosen: those that go.
        list_number: number of the list that says so.
        proved: whether what follows was seen to get in.
        overlap_over: what was seen could have been the old one as well, and the time for both is over.
    """

    chosen: tuple[Pass, ...]
    list_number: int
    proved: bool
    overlap_over: bool = False


@dataclass(frozen=True)
class TakeBackPlan:
    """A renewal about to be taken back, while its bundle is in the tray.

    Args:
        chosen: the new pass.
        list_number: number of the list that says so.
    """

    chosen: Pass
    list_number: int


@dataclass(frozen=True)
class HandOverPlan:
    """A key about to be erased here, because the device has it."""

    chosen: Pass


@dataclass(frozen=True)
class StopPlan:
    """Passes about to lose access for now.

    Args:
        chosen: those that stop.
        unaffected: how many passes go on getting in.
        list_number: number of the list that says so.
        sharing: how many of the unaffected share a secret with them that has to be made anew.
    """

    chosen: tuple[Pass, ...]
    unaffected: int
    list_number: int
    sharing: int = 0


@dataclass(frozen=True)
class SparePlanned:
    """Passes about to lose access by a list that was signed in advance.

    Args:
        chosen: those that were asked for.
        besides: those that stop with them, because no narrower list lies ready.
        unaffected: how many passes go on getting in.
        list_number: number of that list.
        sharing: how many of the unaffected share a secret with them that has to be made anew.
    """

    chosen: tuple[Pass, ...]
    besides: tuple[Pass, ...]
    unaffected: int
    list_number: int
    sharing: int = 0

    @property
    def everyone(self) -> tuple[Pass, ...]:
        """All that stop."""
        return self.chosen + self.besides


@dataclass(frozen=True)
class SecretPlan:
    """The secret that all devices share, about to be made anew.

    Args:
        touched: titles of the devices that have to be told it.
    """

    touched: tuple[str, ...]


@dataclass(frozen=True)
class LetInPlan:
    """Stopped passes about to get in again.

    Args:
        chosen: those that come back.
        hours_away: how long the longest was stopped, whole hours.
        list_number: number of the list that says so.
    """

    chosen: tuple[Pass, ...]
    hours_away: int
    list_number: int


@dataclass(frozen=True)
class RevokePlan:
    """Passes about to lose access for good.

    Args:
        chosen: those that are revoked.
        reason: RFC 5280 reason.
        unaffected: how many passes go on getting in.
        list_number: number of the list that says so.
        sharing: how many of the unaffected share a secret with them that has to be made anew.
    """

    chosen: tuple[Pass, ...]
    reason: Reason
    unaffected: int
    list_number: int
    sharing: int = 0


@dataclass(frozen=True)
class Changes:
    """What a verb changed, for whoever shows the household.

    Args:
        sentence: what the diary says.
        serials: passes that look different now.
        list_number: number of the newest list, where a new one was signed.
        files: what was written.
        cautions: what went less than perfectly, and what follows.
    """

    sentence: str
    serials: tuple[str, ...] = ()
    list_number: int | None = None
    files: tuple[str, ...] = ()
    cautions: tuple[Caution, ...] = ()
