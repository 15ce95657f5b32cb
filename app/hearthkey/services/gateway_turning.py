"""Gives the gateway a certificate of the next CA, or of the old one again; that CA is in charge from then on."""

from __future__ import annotations

import contextlib
from collections.abc import Sequence
from datetime import datetime

from hearthkey.core import certificates, passphrase
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Authority, Gateway
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import succession as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.core.succession import Step, Succession
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import gateway_credential, secret_names
from hearthkey.services.gateway_ports import GatewayChange, GatewayRegister
from hearthkey.services.listing import Listing
from hearthkey.services.opening import Keyholder
from hearthkey.services.pack_files import gateway_key_set
from hearthkey.services.ports import Clock, Dice, Progress, Vault, Workshop
from hearthkey.services.writing_diary import check_clock, note


class GatewayTurning:
    """The one step of the succession that makes the gateway another."""

    def __init__(
        self,
        register: GatewayRegister,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        workshop: Workshop,
        listing: Listing,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words
        self._workshop = workshop
        self._listing = listing

    def follow(self, found: Succession, progress: Progress) -> Changes:
        """Give the gateway a certificate of the new CA.

        Raises:
            Refused: household-locked, succession-key-missing, clock-behind, authority-ended.
            Unavailable: as vault and register.
        """
        return self._turn(found.new, found.old, progress, back=False)

    def go_back(self, found: Succession, progress: Progress) -> Changes:
        """Give it one of the old CA again; passes of the new CA get in as before, for it trusts both.

        Raises:
            Refused: as `follow`.
            Unavailable: as `follow`.
        """
        return self._turn(found.old, found.new, progress, back=True)

    def _turn(self, issuer: Authority, other: Authority, progress: Progress, *, back: bool) -> Changes:
        key, beside, now = self._keyholder.key_of(issuer), self._keyholder.key_of(other), self._clock.now()
        check_clock(self._register, now)
        old = self._register.gateway()
        if key is None or old is None:
            raise Refused("succession-key-missing")
        made, secret = self._credential(issuer, old, key, now, progress)
        name, before = (secret_names.gateway_key(issuer, one.serial) for one in (made, old))
        progress("keeping-secrets")
        self._register.expect_secrets([name], self._vault.place)
        self._vault.put(name, secret)
        with self._register.change() as change:
            change.add_gateway(made, now)
            change.settle_secret(name)
            change.loosen_secret(before, self._vault.place)
            if back:
                change.take_back(Step.GATEWAY, now)
            else:
                change.take_step(Step.GATEWAY, now)
            sentence = sentences.gateway_back(made) if back else sentences.gateway_follows(made)
            done = signed_step(self._register, self._listing, change, sentence, now)
        self._keyholder.keep(key, *([] if beside is None else [beside]))
        forget(self._register, self._vault, before)
        return done

    def _credential(
        self, issuer: Authority, old: Gateway, key: AuthorityKey, now: datetime, progress: Progress
    ) -> tuple[Gateway, Secret[str]]:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        if now >= issuer.not_after:
            raise Refused("authority-ended", end=day(issuer.not_after))
        progress("making-gateway")
        planned = certificates.plan_gateway(
            household.gateway_host,
            gateway_key_set(old),
            now=now,
            authority_end=issuer.not_after,
            bits=self._dice.bits,
            former=tuple(one.host for one in self._register.former_hosts()),
        )
        secret = passphrase.make(self._words, self._dice.below, gateway_credential.SECRET_WORDS)
        made = next(iter(self._workshop.make_keys([planned.key_type])))
        return gateway_credential.certify(planned, made, secret, issuer, key), secret


def signed_step(
    register: GatewayRegister, listing: Listing, change: GatewayChange, sentence: str, now: datetime
) -> Changes:
    """Sign the lists of whoever is trusted after a step, and note it; a shell writes the files afterwards."""
    signed = listing.add_next(change)
    note(register, change, verb="succession", sentence=sentence, now=now)
    return Changes(sentence, list_number=signed.number)


def forget(register: GatewayRegister, vault: Vault, name: str) -> None:
    """Take a secret that is over out of the vault; if the vault does not answer, the next start does."""
    with contextlib.suppress(Unavailable):
        vault.delete(name)
        register.forget_loose(name)
