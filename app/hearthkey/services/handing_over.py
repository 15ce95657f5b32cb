"""Hands a pass over: afterwards its key exists on the device alone."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, HandOverPlan
from hearthkey.core.sentences import diary
from hearthkey.services import looking, secret_names
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Clock, Register, Vault
from hearthkey.services.writing_diary import note


class HandingOver:
    """The verb "hand-over"."""

    def __init__(self, register: Register, vault: Vault, clock: Clock) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock

    def preview(self, passes: Sequence[Pass]) -> HandOverPlan:
        """Decide which pass of a device is meant.

        Raises:
            Refused: pass-handed-over, pass-not-alive.
        """
        chosen = looking.waiting(passes)
        state = chosen.state(self._clock.now())
        if state in {State.REVOKED, State.ENDED}:
            raise Refused("pass-not-alive", title=chosen.title, state=state.value)
        return HandOverPlan(chosen)

    def apply(self, plan: HandOverPlan) -> Changes:
        """Erase key and passphrase here.

        The key goes with the transaction; its passphrase follows, and if the keyring does not
        answer now, at the next start.

        Raises:
            Unavailable: as the register.
        """
        now = self._clock.now()
        chosen = plan.chosen
        name = secret_names.bundle_passphrase(the_authority(self._register), chosen.serial)
        sentence = diary.handed_over(chosen)
        with self._register.change() as change:
            change.hand_over(chosen.serial, now)
            change.loosen_secret(name, self._vault.place)
            note(self._register, change, verb="hand-over", sentence=sentence, now=now)
        cautions = [] if self._register.scrub() else [Caution("key-erased-later", chosen.title)]
        try:
            self._vault.delete(name)
            self._register.forget_loose(name)
        except Unavailable:
            cautions.append(Caution("passphrase-erased-later", chosen.title))
        return Changes(sentence, serials=(chosen.serial,), cautions=tuple(cautions))
