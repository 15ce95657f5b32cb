"""Hands a pass over: afterwards its key exists on the device alone."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, HandOverPlan
from hearthkey.core.sentences import diary
from hearthkey.services import looking
from hearthkey.services.erasing import Erasing
from hearthkey.services.ports import Clock, Register, Vault
from hearthkey.services.writing_diary import note


class HandingOver:
    """The verb "hand-over"."""

    def __init__(self, register: Register, vault: Vault, clock: Clock) -> None:
        self._register = register
        self._erasing = Erasing(register, vault)
        self._clock = clock

    def preview(self, passes: Sequence[Pass]) -> HandOverPlan:
        """Decide which pass of a device is meant.

        Raises:
            Refused: pass-handed-over, pass-not-alive, passphrase-lost.
        """
        chosen = looking.waiting(passes)
        state = chosen.state(self._clock.now())
        if state in {State.REVOKED, State.ENDED}:
            raise Refused("pass-not-alive", title=chosen.title, state=state.value)
        if chosen.key_lost:
            raise Refused("passphrase-lost", title=chosen.title)
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
        sentence = diary.handed_over(chosen)
        with self._register.change() as change:
            change.hand_over(chosen.serial, now)
            self._erasing.forgotten(change, (chosen,))
            note(self._register, change, verb="hand-over", sentence=sentence, now=now)
        return Changes(sentence, serials=(chosen.serial,), cautions=self._erasing.follow((chosen,)))
