"""Says whose the passes are that were made elsewhere."""

from __future__ import annotations

from hearthkey.core import names
from hearthkey.core.adopted import ToBeNamed, Whose
from hearthkey.core.errors import Refused
from hearthkey.core.household import possessive
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import adopting as sentences
from hearthkey.services.adopt_ports import AdoptRegister
from hearthkey.services.ports import Clock
from hearthkey.services.writing_diary import note


class Naming:
    """The verb "name-pass"."""

    def __init__(self, register: AdoptRegister, clock: Clock) -> None:
        self._register = register
        self._clock = clock

    def waiting(self) -> list[ToBeNamed]:
        """Passes of which nobody has said yet whose they are."""
        return self._register.to_be_named()

    def name(self, serial: str, person: str, device: str) -> Changes:
        """Say whose a pass is, and with it all other passes of the same device.

        Args:
            serial: hex, as `waiting` gives it; case and colons do not matter.

        Raises:
            Refused: pass-not-adopted, pass-named-already, device-exists, and what `core.names` finds.
        """
        wanted = serial.strip().replace(":", "").lower()
        chosen = next((one for one in self.waiting() if one.adopted.serial.lstrip("0") == wanted.lstrip("0")), None)
        passes = self._register.passes()
        if chosen is None:
            known = next((one for one in passes if one.serial == wanted), None)
            if known is None:
                raise Refused("pass-not-adopted", serial=wanted[:64])
            raise Refused("pass-named-already", serial=wanted, title=known.title)
        person, device = names.display_name(person, "person"), names.display_name(device, "device")
        taken = {
            (one.person.casefold(), one.device.casefold()) for one in passes if one.serial != chosen.adopted.serial
        }
        if (person.casefold(), device.casefold()) in taken:
            raise Refused("device-exists", title=possessive(person, device))
        now, title = self._clock.now(), possessive(person, device)
        sentence = sentences.named(chosen.adopted.serial, title)
        with self._register.change() as change:
            change.name_device(chosen.adopted.serial, Whose(person, device, now))
            note(self._register, change, verb="name-pass", sentence=sentence, now=now)
        return Changes(sentence)
