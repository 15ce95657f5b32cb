"""Secrets beside the certificates: one for each device (RFC 8784), and one that the whole household shares.

A recording of today's traffic is then of no use to whoever breaks today's key exchange in twenty
years. 32 random octets have the 256 bits that RFC 8784 section 6 asks for; base64 is how section
5.1 recommends to write them down.
"""

from __future__ import annotations

import base64

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, SecretPlan
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import diary
from hearthkey.services import secret_names
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Clock, Dice, Vault
from hearthkey.services.stopping import SHARED_SECRET
from hearthkey.services.writing_diary import note

OCTETS = 32


class ExtraSecrets:
    """Makes them, keeps them in the vault, and makes them anew when somebody who was stopped knew them."""

    def __init__(self, register: GatewayRegister, vault: Vault, clock: Clock, dice: Dice) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock
        self._dice = dice

    def __call__(self, owner: str, /) -> Secret[str] | None:
        """The secret of a device's identity, or the household's: base64; None where the household has none.

        One that is wanted and not there yet is made.

        Raises:
            Unavailable: as vault and register.
        """
        options = self._register.pack_options()
        if not (options.household_secret if owner == SHARED_SECRET else options.extra_secret):
            return None
        known = self._register.extra_secrets().get(owner)
        # A device's own secret that was out of sight is replaced; the household's waits for the householder's
        # word, for everybody else has to be told the new one.
        if known is None or (known.known_outside and owner != SHARED_SECRET):
            return None if self._register.read_only else self._make(owner)
        return self._vault.get(secret_names.extra_secret(the_authority(self._register), owner))

    def mark(self) -> tuple[object, ...]:
        """What changes when a gateway has to be told other secrets; who was only stopped changes nothing.

        So a stop is delivered without a word from the vault: the stopped device's certificate is
        refused, whatever secrets it knows.
        """
        known = self._register.extra_secrets()
        told = sorted((owner, one.made) for owner, one in known.items())
        if not self._register.pack_options().extra_secret:
            return (told,)
        owners = [one.identity for one in self._getting_in()]
        return told, [owner for owner in owners if owner not in known or known[owner].known_outside]

    def of_devices(self) -> dict[str, Secret[str]]:
        """The secrets of all devices that get in, by identity; empty where the household has none.

        Raises:
            Unavailable: as vault and register.
        """
        found = {one.identity: self(one.identity) for one in self._getting_in()}
        return {identity: secret for identity, secret in found.items() if secret is not None}

    def preview_renewal(self) -> SecretPlan:
        """Whom a new household secret touches.

        Raises:
            Refused: no-household-secret.
        """
        if not self._register.pack_options().household_secret:
            raise Refused("no-household-secret")
        return SecretPlan(tuple(dict.fromkeys(one.title for one in self._getting_in())))

    def renew(self, plan: SecretPlan) -> Changes:
        """Make the household's secret anew; it takes effect at the gateway with the next delivery.

        Raises:
            Unavailable: as vault and register.
        """
        self._make(SHARED_SECRET)
        sentence = diary.secret_renewed(len(plan.touched))
        with self._register.change() as change:
            note(self._register, change, verb="secrets", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def _getting_in(self) -> list[Pass]:
        now = self._clock.now()
        return [one for one in self._register.passes() if one.gets_in(now)]

    def _make(self, owner: str) -> Secret[str]:
        """Put a new secret into the vault; its name belongs to something from the first moment on."""
        name = secret_names.extra_secret(the_authority(self._register), owner)
        octets = self._dice.bits(8 * OCTETS).to_bytes(OCTETS, "big")
        secret = Secret(base64.b64encode(octets).decode("ascii"))
        self._vault.put(name, secret)
        with self._register.change() as change:
            change.keep_extra_secret(owner, self._clock.now())
        return secret
