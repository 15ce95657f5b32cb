"""Where the gateway is: said once, its host key compared once."""

from __future__ import annotations

from dataclasses import replace

from hearthkey.core.errors import Refused
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.phrases import sentences as told
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import diary
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import HostKey, Target
from hearthkey.services.gateway_ports import GatewayDoor, GatewayRegister
from hearthkey.services.packing import Packing
from hearthkey.services.ports import Clock
from hearthkey.services.writing_diary import note


class Targeting:
    """The verb "gateway"."""

    def __init__(self, register: GatewayRegister, clock: Clock, door: GatewayDoor, packing: Packing) -> None:
        self._packing = packing
        self._register = register
        self._clock = clock
        self._door = door

    def host_key(self, target: Target) -> HostKey | None:
        """What the server shows to say who it is, to be compared by a person; None for a folder.

        Raises:
            Unavailable: as `GatewayDoor.host_key`.
        """
        return self._door.host_key(target)

    def choose(self, target: Target, compared: HostKey | None) -> Changes:
        """Take a target, once its host key was compared.

        Args:
            compared: what the householder saw and agreed to; None for a folder.

        Raises:
            Refused: no-household, practice-stays-home, host-key-unknown.
        """
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        if household.practice:
            raise Refused("practice-stays-home")
        if target.host and compared is None:
            raise Refused("host-key-unknown", where=where(target), fingerprint="")
        pinned = target if compared is None else target.pinned(compared)
        known = self._register.target()
        same_place = known is not None and replace(known, reload="") == replace(pinned, reload="")
        sentence: str = diary.target_chosen(where(pinned))
        if compared is not None:
            sentence = told((sentence, diary.host_key_pinned(compared.fingerprint)))
        with self._register.change() as change:
            seen = self._register.gateway_note()
            change.set_target(pinned)
            if same_place:
                change.note_gateway(seen)
            note(self._register, change, verb="gateway", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def forget(self) -> Changes:
        """Deliver nowhere any more.

        Raises:
            Refused: no-target.
        """
        known = self._register.target()
        if known is None:
            raise Refused("no-target")
        sentence = diary.target_forgotten(where(known))
        with self._register.change() as change:
            change.set_target(None)
            note(self._register, change, verb="gateway", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def set_options(self, options: PackOptions) -> Changes:
        """Keep the choices for the gateway pack.

        Raises:
            Refused: as `Packing.check`.
        """
        self._packing.check(options)
        sentence = diary.pack_options_changed()
        with self._register.change() as change:
            change.set_pack_options(options)
            note(self._register, change, verb="gateway", sentence=sentence, now=self._clock.now())
        return Changes(sentence)
