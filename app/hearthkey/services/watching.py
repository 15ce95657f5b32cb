"""Says how the gateway stands, from what was last seen there and what is decided here."""

from __future__ import annotations

from hearthkey.core.in_force import GatewayState, Standing, standing_of
from hearthkey.pki import lists
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.packing import Packing
from hearthkey.services.reading_gateway import titles_of


class Watching:
    """The gateway's state, without asking the gateway."""

    def __init__(self, register: GatewayRegister, packing: Packing) -> None:
        self._register = register
        self._packing = packing

    def state(self) -> GatewayState:
        """The state now.

        Raises:
            Unavailable: as the register.
        """
        note, target = self._register.gateway_note(), self._register.target()
        newest, gateway = self._register.newest_list(), self._register.gateway()
        number = 0 if newest is None else newest.number
        serial = "" if gateway is None else gateway.serial
        made_of = self._packing.mark() if target is not None and gateway is not None else ""
        standing = standing_of(target, note, newest_number=number, gateway_serial=serial, made_of=made_of)
        behind = standing in {Standing.WAITING, Standing.UNKNOWN} and note.list_number not in {None, number}
        return GatewayState(
            standing,
            target,
            note,
            number,
            waiting=self._waiting(note.list_number) if behind and note.list_number is not None else (),
            other_changes=note.looked is not None and (note.gateway_serial, note.made_of) != (serial, made_of),
        )

    def _waiting(self, in_force: int) -> tuple[str, ...]:
        """Whose standing differs between the list in force and what is decided here, stopped ones first."""
        there = self._register.list_numbered(in_force)
        if there is None:
            return ()
        listed = {entry.serial: entry.reason for entry in lists.read_list(there.der).entries}
        here = {entry.serial: entry.reason.rfc_name for entry in self._register.entries()}
        stopped = [serial for serial, reason in here.items() if listed.get(serial) != reason]
        lifted = [serial for serial in listed if serial not in here]
        return titles_of(self._register, [*stopped, *lifted])
