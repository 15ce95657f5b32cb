"""One consistent look at a household, to be shown without asking again."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.deputy import SetNote
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.errors import Unavailable
from hearthkey.core.household import Authority, FormerHost, Gateway, Household
from hearthkey.core.in_force import GatewayNote, GatewayState, Standing
from hearthkey.core.keepsakes import Keepsakes
from hearthkey.core.kinds import Kinds
from hearthkey.core.outgoing import Outgoing
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.passes import Pass
from hearthkey.core.reach.chain import LastChecks
from hearthkey.core.renewal import Follow, Visit
from hearthkey.core.revocation import SignedList
from hearthkey.core.sealed import CopyNote
from hearthkey.core.succession import DeviceStep, Succession
from hearthkey.services.house import House
from hearthkey.services.keeping_sakes import keepsakes
from hearthkey.services.opening import Door, knock
from hearthkey.services.outgoing import outgoing, under_way
from hearthkey.services.undoing import Offer
from hearthkey.services.writing_diary import read

NO_GATEWAY = GatewayState(Standing.NO_TARGET, None, GatewayNote(), 0)
"""Nobody has said yet where the gateway is."""

NOTHING_CHOSEN = PackOptions()
"""The choices for the gateway's files before anybody chose."""

NOTHING_DONE = Offer()
"""Nothing was done yet since the app was opened."""


NOT_CHECKED = LastChecks()
"""Nobody has checked the way in yet."""


@dataclass(frozen=True)
class Snapshot:
    """What is, at one moment.

    Args:
        at: that moment, UTC.
        door: what stands between the householder and the CA key.
        locked: the passphrase is needed before anything is signed.
        read_only: another copy of the app has the household open.
        household, authority, gateway, newest_list: None before the household is founded.
        passes: every pass, by person and device.
        diary: all entries, oldest first.
        diary_misfit: the first diary entry that does not fit, or None.
        kinds: all device kinds.
        keyring_said: a code, where the keyring answered with a fault of its own; else empty.
        gateway_state: what is known of the gateway.
        stoppable_locked: whether every device can be stopped without the passphrase.
        pack_options: the choices for the gateway's files.
        sealed_copies: those that were made, oldest first.
        copy_ready: whether one can be made now without a passphrase.
        offer: what can be taken back, and done again.
        succession: how one CA follows another, None where none does or did.
        follows: which pass was made to follow which.
        visits: days on which people are met, those that are over with them.
        deputy_set: the newest set of parts for a deputy, or None.
        parts_fresh: whether it opens the copies that are made now.
        way_in: the newest checks of the way in.
        former_hosts: what the gateway still answers to beside its host.
        keepsakes: what is known of the paper, the parts and the stop set; None before the household is founded.
        outgoing: which passes go with the old CA, and when; None where none does.
        device_steps: how far each device is on the way to the new CA, while one follows another and issues.
    """

    at: datetime
    door: Door
    locked: bool
    read_only: bool
    household: Household | None
    authority: Authority | None
    gateway: Gateway | None
    newest_list: SignedList | None
    passes: tuple[Pass, ...]
    diary: tuple[DiaryEntry, ...]
    diary_misfit: int | None
    kinds: Kinds
    keyring_said: str = ""
    gateway_state: GatewayState = NO_GATEWAY
    stoppable_locked: bool = False
    pack_options: PackOptions = NOTHING_CHOSEN
    sealed_copies: tuple[CopyNote, ...] = ()
    copy_ready: bool = False
    offer: Offer = NOTHING_DONE
    succession: Succession | None = None
    follows: tuple[Follow, ...] = ()
    visits: tuple[Visit, ...] = ()
    deputy_set: SetNote | None = None
    parts_fresh: bool = False
    way_in: LastChecks = NOT_CHECKED
    former_hosts: tuple[FormerHost, ...] = ()
    keepsakes: Keepsakes | None = None
    outgoing: Outgoing | None = None
    device_steps: tuple[DeviceStep, ...] = ()


def take(house: House, *, ask_keyring: bool = True) -> Snapshot:
    """Look at everything once.

    Args:
        ask_keyring: knock at the keyring too, which can take its time; without it the door is
            taken to be ready.

    Raises:
        Unavailable: as the register.
    """
    register = house.register
    said = ""
    door = Door.NO_HOUSEHOLD if register.authority() is None else Door.READY
    if ask_keyring:
        try:
            door = knock(register, house.vault)
        except Unavailable as error:
            door, said = Door.KEYRING_ABSENT, error.code
    copies = register.sealed_copies()
    lock, parts = register.copy_lock(), register.deputy_set()
    entries, misfit = read(register, copies)
    passes = tuple(register.passes())
    now = house.clock.now()
    return Snapshot(
        at=now,
        door=door,
        locked=house.keyholder.locked,
        read_only=register.read_only,
        household=register.household(),
        authority=register.authority(),
        gateway=register.gateway(),
        newest_list=register.newest_list(),
        passes=passes,
        diary=tuple(entries),
        diary_misfit=misfit,
        kinds=house.kinds,
        keyring_said=said,
        gateway_state=house.watching.state(),
        stoppable_locked=house.sparing.fresh(passes),
        pack_options=register.pack_options(),
        sealed_copies=tuple(copies),
        copy_ready=lock is not None,
        deputy_set=parts,
        parts_fresh=parts is not None and lock is not None and parts.lock == lock[0],
        keepsakes=keepsakes(register, passes, entries[0].at if entries else None, now),
        offer=house.undoing.offer,
        succession=register.succession(),
        outgoing=outgoing(register, passes, now),
        device_steps=under_way(register, passes, now),
        follows=tuple(register.follows()),
        visits=tuple(register.visits()),
        way_in=register.last_checks(),
        former_hosts=register.former_hosts(),
    )
