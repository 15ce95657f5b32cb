"""Founds a household: CA, gateway credential, revocation list number 1."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from hearthkey.core import certificates, network, passphrase
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.keysets import key_set
from hearthkey.core.plans import Changes, FoundPlan
from hearthkey.core.revocation import plan_list
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import diary
from hearthkey.pki import guard, mint, read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import gateway_credential, secret_names
from hearthkey.services.describing import describe
from hearthkey.services.listing import sign
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Dice, Locksmith, Progress, Register, Vault, silent
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class FoundRequest:
    """What the householder typed.

    Args:
        name: household name.
        gateway_host: public name or address.
        home_subnets: in prefix notation.
        tunnel_subnet: in prefix notation, or None to have a quiet one proposed.
        identity_suffix: or None for the default from the host name.
        dns_servers: addresses inside.
        tunnel: ``split`` or ``full``.
        gateway_key_set: name of a key set.
        practice: a practice household.
    """

    name: str
    gateway_host: str
    home_subnets: Sequence[str]
    tunnel_subnet: str | None = None
    identity_suffix: str | None = None
    dns_servers: Sequence[str] = ()
    tunnel: str = network.SPLIT
    gateway_key_set: str = "broad"
    practice: bool = False


def described(request: FoundRequest, below: Callable[[int], int]) -> Household:
    """The household that was typed, with what was left out filled in.

    Raises:
        Refused: whatever the checks of `core` find.
    """
    return describe(
        name=request.name,
        gateway_host=request.gateway_host,
        home_subnets=request.home_subnets,
        tunnel_subnet=request.tunnel_subnet,
        identity_suffix=request.identity_suffix,
        dns_servers=request.dns_servers,
        tunnel=request.tunnel,
        practice=request.practice,
        below=below,
    )


class Founding:
    """The verb "found"."""

    def __init__(
        self,
        register: Register,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        locksmith: Locksmith = guard,
    ) -> None:
        self._locksmith = locksmith
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words

    def offer_passphrase(self) -> Secret[str]:
        """Make a passphrase of seven words for the householder."""
        return passphrase.make(self._words, self._dice.below)

    def preview(self, request: FoundRequest) -> FoundPlan:
        """Check what was typed and fill in what was left out.

        Raises:
            Refused: household-exists, and whatever the checks of `core` find.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        household = described(request, self._dice.below)
        cautions = network.gateway_cautions(household.gateway_host) + network.dns_cautions(
            household.dns_servers, household.home_subnets, household.tunnel_subnet
        )
        return FoundPlan(household, key_set(request.gateway_key_set), cautions)

    def apply(self, plan: FoundPlan, secret: Secret[str], *, progress: Progress = silent) -> Changes:
        """Make everything, and leave the household unlocked.

        The keyring gets its two secrets before the one transaction that makes the household; a
        crash in between leaves names in the register that the next start sweeps from the keyring.

        Raises:
            Refused: household-exists.
            Unavailable: as vault and register.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        now = self._clock.now()
        progress("making-ca")
        key = AuthorityKey.make()
        authority_plan = certificates.plan_authority(plan.household, now=now, bits=self._dice.bits)
        certificate = mint.authority_certificate(authority_plan, key)
        facts = read.certificate_facts(certificate)
        authority = Authority(certificate, facts.fingerprint, facts.not_after, self._vault.place)
        progress("making-gateway")
        gateway, gateway_secret = self._gateway(plan, authority, key)
        progress("guarding-ca")
        kept = {
            secret_names.authority_key(authority): Secret(self._locksmith.seal(key, secret)),
            secret_names.gateway_key(authority, gateway.serial): gateway_secret,
        }
        progress("keeping-secrets")
        self._register.expect_secrets(kept, self._vault.place)
        for name, value in kept.items():
            self._vault.put(name, value)
        sentence = diary.founded(plan.household, authority, gateway)
        with self._register.change() as change:
            change.found(plan.household, authority, facts.subject, now)
            change.add_gateway(gateway, now)
            first = plan_list((), highest_number=0, previous_update=None, authority_end=authority.not_after, now=now)
            change.add_list(sign(first, authority, key))
            for name in kept:
                change.settle_secret(name)
            note(self._register, change, verb="found", sentence=sentence, now=now)
        self._keyholder.keep(key)
        return Changes(sentence, list_number=first.number, cautions=plan.cautions)

    def _gateway(self, plan: FoundPlan, authority: Authority, key: AuthorityKey) -> tuple[Gateway, Secret[str]]:
        return gateway_credential.fresh(
            plan.household.gateway_host,
            plan.gateway_key_set,
            authority,
            key,
            now=self._clock.now(),
            dice=self._dice,
            words=self._words,
        )
