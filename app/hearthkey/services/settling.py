"""Changes the household's settings, and gives the gateway its next certificate."""

from __future__ import annotations

import contextlib
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core import certificates, network, passphrase
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.former_hosts import still_use
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.keysets import KEY_SETS, KeySet
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import settling as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.core.settling import Setting, SettlePlan, plan_settling, touched
from hearthkey.pki import read
from hearthkey.services import gateway_credential, hostnames, secret_names
from hearthkey.services.describing import describe
from hearthkey.services.device_steps import check_gateway_may_follow
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import Clock, Dice, Progress, Register, Vault, Workshop, silent
from hearthkey.services.writing_diary import check_clock, note

Told = Callable[[str], tuple[str, str]]


@dataclass(frozen=True)
class SettleRequest:
    """What the householder wants to be different; None leaves a setting as it is.

    Args:
        name, gateway_host, home_subnets, dns_servers, tunnel, identity_suffix: as in `founding.FoundRequest`.
        tunnel_subnet: in prefix notation, or ``quiet`` to have one proposed.
        renew_gateway: make the gateway a new key and certificate, whatever else changes.
        let_go: a former host that the gateway is to answer to no more, as typed.
    """

    name: str | None = None
    gateway_host: str | None = None
    home_subnets: Sequence[str] | None = None
    tunnel_subnet: str | None = None
    identity_suffix: str | None = None
    dns_servers: Sequence[str] | None = None
    tunnel: str | None = None
    renew_gateway: bool = False
    let_go: str | None = None


def request_for(household: Household) -> SettleRequest:
    """What to ask for so that the household is settled like this one; the way back of a change."""
    return SettleRequest(
        name=household.name,
        gateway_host=household.gateway_host,
        home_subnets=tuple(str(one) for one in household.home_subnets),
        tunnel_subnet=str(household.tunnel_subnet),
        identity_suffix=household.identity_suffix,
        dns_servers=household.dns_servers,
        tunnel=household.tunnel,
    )


class Settling:
    """The verb "settle"."""

    def __init__(
        self,
        register: Register,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        workshop: Workshop,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words
        self._workshop = workshop

    def preview(self, request: SettleRequest) -> SettlePlan:
        """Check what was typed, and say what would become different and for whom.

        Raises:
            Refused: no-household, former-host-unknown, former-host-used, and whatever the checks of `core` find.
        """
        before = self._household()
        home = tuple(str(one) for one in before.home_subnets)
        after = describe(
            name=_or(request.name, before.name),
            gateway_host=_or(request.gateway_host, before.gateway_host),
            home_subnets=home if request.home_subnets is None else request.home_subnets,
            tunnel_subnet=_or(request.tunnel_subnet, str(before.tunnel_subnet)),
            identity_suffix=_or(request.identity_suffix, before.identity_suffix),
            dns_servers=before.dns_servers if request.dns_servers is None else request.dns_servers,
            tunnel=_or(request.tunnel, before.tunnel),
            practice=before.practice,
            below=self._dice.below,
        )
        return plan_settling(
            before,
            after,
            self._register.passes(),
            self._clock.now(),
            renew=request.renew_gateway,
            cautions=_cautions(before, after),
            former=self._register.former_hosts(),
            let_go=self._let_go(request.let_go),
        )

    def apply(self, plan: SettlePlan, *, progress: Progress = silent, told: Told | None = None) -> Changes:
        """Write the settings and, where the gateway needs one, its new credential, in one transaction.

        The keyring gets the new secret before, and loses the old one after; a crash in between leaves names in
        the register that the next start sweeps from the keyring.

        Args:
            told: the diary's verb and sentence, from the sentence that it would have; for who settles in passing.

        Raises:
            Refused: nothing-changes, settled-meanwhile; and for a new certificate household-locked, clock-behind,
                authority-ended.
            Unavailable: as vault and register.
        """
        if plan.changes_nothing:
            raise Refused("nothing-changes")
        if self._household() != plan.before:
            raise Refused("settled-meanwhile")
        now = self._clock.now()
        authority, old = the_authority(self._register), self._register.gateway()
        made, name = None, ""
        if plan.new_certificate:
            made, secret = self._credential(plan, authority, old, now, progress)
            name = secret_names.gateway_key(authority, made.serial)
            progress("keeping-secrets")
            self._register.expect_secrets([name], self._vault.place)
            self._vault.put(name, secret)
        settled = sentences.settled(plan, made)
        verb, sentence = ("settle", settled) if told is None else told(settled)
        with self._register.change() as change:
            if plan.touches:
                change.settle(plan.after)
            if made is not None:
                change.add_gateway(made, now)
                change.keep_former_hosts(plan.former)
                change.settle_secret(name)
                if old is not None:
                    change.loosen_secret(secret_names.gateway_key(authority, old.serial), self._vault.place)
            note(self._register, change, verb=verb, sentence=sentence, now=now)
        if made is not None and old is not None:
            self._forget(secret_names.gateway_key(authority, old.serial))
        return Changes(sentence, cautions=plan.cautions)

    def _let_go(self, text: str | None) -> str:
        """A former host that may go, because no device knows it alone."""
        if text is None:
            return ""
        host = hostnames.gateway_host(text)
        former = next((one for one in self._register.former_hosts() if one.host == host), None)
        if former is None:
            raise Refused("former-host-unknown", host=host)
        users = still_use(former, self._register.passes(), self._clock.now())
        if users:
            raise Refused("former-host-used", host=host, devices=users)
        return host

    def _household(self) -> Household:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        return household

    def _credential(
        self, plan: SettlePlan, authority: Authority, old: Gateway | None, now: datetime, progress: Progress
    ) -> tuple[Gateway, Secret[str]]:
        """A credential of the same key set as the one that it follows."""
        key = self._keyholder.key()
        check_clock(self._register, now)
        check_gateway_may_follow(self._register)
        if now >= authority.not_after:
            raise Refused("authority-ended", end=day(authority.not_after))
        progress("making-gateway")
        planned = certificates.plan_gateway(
            plan.after.gateway_host,
            _key_set_of(old),
            now=now,
            authority_end=authority.not_after,
            bits=self._dice.bits,
            former=tuple(one.host for one in plan.former),
        )
        secret = passphrase.make(self._words, self._dice.below, gateway_credential.SECRET_WORDS)
        made = next(iter(self._workshop.make_keys([planned.key_type])))
        return gateway_credential.certify(planned, made, secret, authority, key), secret

    def _forget(self, name: str) -> None:
        """Take the secret of a credential that is over out of the vault; if it does not answer, the next start does."""
        with contextlib.suppress(Unavailable):
            self._vault.delete(name)
            self._register.forget_loose(name)


def _or(wanted: str | None, as_it_is: str) -> str:
    return as_it_is if wanted is None else wanted


def _key_set_of(gateway: Gateway | None) -> KeySet:
    if gateway is None:
        raise Refused("no-household")
    key_type = read.certificate_facts(gateway.certificate).key_type
    return next(one for one in KEY_SETS.values() if one.key_type == key_type)


def _cautions(before: Household, after: Household) -> tuple[Caution, ...]:
    """What should be known of the settings that are new; the others were told when they were."""
    differs = {one.setting for one in touched(before, after)}
    found: tuple[Caution, ...] = ()
    if Setting.HOST in differs:
        found += network.gateway_cautions(after.gateway_host)
    if differs & {Setting.HOME, Setting.DNS, Setting.INNER}:
        found += network.dns_cautions(after.dns_servers, after.home_subnets, after.tunnel_subnet)
    return found
