"""Takes over a household that was made by hand: CA, serials, lists, withdrawals and passes go on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core import certificates, network, passphrase
from hearthkey.core.adopt_plan import UNNAMED, AdoptPlan, plan_entries, plan_passes, plan_serials
from hearthkey.core.errors import Refused
from hearthkey.core.found_findings import keeps_credential
from hearthkey.core.found_household import FoundCertificate
from hearthkey.core.household import Authority, Gateway
from hearthkey.core.keysets import key_set
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Entry, SignedList, plan_list
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import adopting as sentences
from hearthkey.core.sentences import found
from hearthkey.pki import guard, judge, keys, pkcs8
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import gateway_credential, secret_names
from hearthkey.services.adopt_ports import AdoptChange, AdoptRegister
from hearthkey.services.founding import FoundRequest, described
from hearthkey.services.listing import sign
from hearthkey.services.looking_over import LookingOver, Overview
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Dice, Locksmith, NewPass, Progress, Vault, silent
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class AdoptRequest:
    """What the householder typed.

    Args:
        folder: where the household lies.
        house: what would be typed for a new one.
        unnamed: whose passes are called until somebody says whose they are.
    """

    folder: Path
    house: FoundRequest
    unnamed: str = UNNAMED


@dataclass(frozen=True)
class Prepared:
    """A plan with the keys that it needs; no screen and no log gets to see it.

    Args:
        plan: what is shown.
        key: the CA key.
        gateway_key: the kept gateway's key, unencrypted PKCS#8 DER, or None.
    """

    plan: AdoptPlan
    key: AuthorityKey
    gateway_key: Secret[bytes] | None


class Adopting:
    """The verb "adopt"."""

    def __init__(
        self,
        register: AdoptRegister,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        looking: LookingOver,
        locksmith: Locksmith = guard,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words
        self._looking = looking
        self._locksmith = locksmith

    def preview(
        self, request: AdoptRequest, passphrases: Sequence[Secret[str]] = (), *, progress: Progress = silent
    ) -> Prepared:
        """Look once more, and decide what goes on.

        Raises:
            Refused: household-exists, found-stops, found-key-locked, folder-missing, and what `described` finds.
            Unavailable: folder-closed.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        household = described(request.house, self._dice.below)
        seen = self._looking.look(
            request.folder, passphrases=passphrases, host=household.gateway_host, progress=progress
        )
        top = _usable(seen, tried=bool(passphrases))
        kept, gateway_key = self._kept_gateway(seen, top, household.gateway_host)
        now = self._clock.now()
        entries = plan_entries(seen.home, authority_end=top.not_after, now=now)
        plan = AdoptPlan(
            home=seen.home,
            household=household,
            gateway_key_set=key_set(request.house.gateway_key_set),
            kept_gateway=kept,
            passes=plan_passes(seen.home, unnamed=request.unnamed, now=now),
            serials=plan_serials(seen.home, entries, top.not_after),
            entries=entries,
            list_number=seen.home.highest_list + 1,
            cautions=network.gateway_cautions(household.gateway_host),
        )
        return Prepared(plan, AuthorityKey.from_pkcs8(seen.keys[top.public]), gateway_key)

    def _kept_gateway(
        self, seen: Overview, top: FoundCertificate, host: str
    ) -> tuple[FoundCertificate | None, Secret[bytes] | None]:
        """The gateway's certificate, if it is what a new one would be and its key is here."""
        now = self._clock.now()
        for one in sorted(seen.home.gateways, key=lambda one: one.not_after, reverse=True):
            if one.public not in seen.keys or not keeps_credential(seen.home, one, host, now):
                continue
            try:
                judge.check_path(one.der, [top.der], None, now)
                judge.check_usage(one.der, judge.Purpose.TLS_SERVER)
                judge.check_name(one.der, host)
            except Refused:
                continue
            return one, seen.keys[one.public]
        return None, None

    def apply(self, prepared: Prepared, secret: Secret[str], *, progress: Progress = silent) -> Changes:
        """Take it over, and leave the household unlocked.

        Secrets go first, then everything else in one transaction; a crash before that leaves names in the register
        that the next start takes out of the vault again, and the folder as it was.

        Raises:
            Refused: household-exists, found-cannot-serve.
            Unavailable: as vault and register.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        plan, key = prepared.plan, prepared.key
        top = _top(plan)
        authority = Authority(top.der, top.fingerprint, top.not_after, self._vault.place)
        progress("making-gateway")
        gateway, gateway_secret = self._gateway(prepared, authority)
        signed = self._first_list(plan, authority, key)
        self._try(gateway, signed, authority)
        progress("guarding-ca")
        kept = {
            secret_names.authority_key(authority): Secret(self._locksmith.seal(key, secret)),
            secret_names.gateway_key(authority, gateway.serial): gateway_secret,
        }
        progress("keeping-secrets")
        self._register.expect_secrets(kept, self._vault.place)
        for name, value in kept.items():
            self._vault.put(name, value)
        sentence = sentences.adopted(plan, authority)
        now = self._clock.now()
        with self._register.change() as change:
            change.found(plan.household, authority, top.subject, now)
            change.add_gateway(gateway, now)
            for one in plan.passes:
                change.add_adopted(NewPass(one.about, one.certificate, b""), one.adopted, now)
            for serial, ends in plan.serials:
                change.adopt(serial, ends)
            _withdraw(change, plan.entries)
            change.add_list(signed)
            for name in kept:
                change.settle_secret(name)
            note(self._register, change, verb="adopt", sentence=sentence, now=now)
        self._keyholder.keep(key)
        return Changes(sentence, list_number=signed.number, cautions=plan.cautions)

    def _gateway(self, prepared: Prepared, authority: Authority) -> tuple[Gateway, Secret[str]]:
        plan, kept = prepared.plan, prepared.plan.kept_gateway
        secret = passphrase.make(self._words, self._dice.below, gateway_credential.SECRET_WORDS)
        host = plan.household.gateway_host
        if kept is not None and prepared.gateway_key is not None:
            sealed = pkcs8.seal_key(prepared.gateway_key, secret, rounds=gateway_credential.ROUNDS)
            serial = certificates.serial_hex(kept.serial)
            return Gateway(host, serial, kept.der, sealed, kept.not_after), secret
        new = certificates.plan_gateway(
            host,
            plan.gateway_key_set,
            now=self._clock.now(),
            authority_end=authority.not_after,
            bits=self._dice.bits,
        )
        return gateway_credential.certify(new, keys.make_key(new.key_type), secret, authority, prepared.key), secret

    def _first_list(self, plan: AdoptPlan, authority: Authority, key: AuthorityKey) -> SignedList:
        """The next list: above every number that was ever given, and never dated before the one that lies there."""
        newest, now = plan.home.newest_list, self._clock.now()
        previous = None if newest is None else newest.this_update
        planned = plan_list(
            plan.entries,
            highest_number=plan.home.highest_list,
            previous_update=previous,
            authority_end=authority.not_after,
            now=now if previous is None else max(now, previous),
        )
        return sign(planned, authority, key)

    def _try(self, gateway: Gateway, signed: SignedList, authority: Authority) -> None:
        """See whether what this CA signs is taken, before anything is kept."""
        at = max(self._clock.now(), signed.this_update)
        try:
            judge.check_path(gateway.certificate, [authority.certificate], signed.der, at)
            judge.check_list(signed.der, authority.certificate)
        except judge.NotTrusted as error:
            raise Refused("found-cannot-serve", seen=error.facts.get("seen", error.code)) from error


def _usable(seen: Overview, *, tried: bool) -> FoundCertificate:
    """The CA, if nothing stands in the way.

    Raises:
        Refused: found-stops, found-key-locked.
    """
    if seen.stops:
        first = seen.stops[0]
        if tried and all(one.code == "authority-key-locked" for one in seen.stops):
            raise Refused("found-key-locked")
        raise Refused("found-stops", reason=first.code, why=str(found.what(first)), do=str(found.effect(first)))
    top = seen.home.authority
    if top is None or top.public not in seen.keys:
        raise Refused("found-key-locked")
    return top


def _top(plan: AdoptPlan) -> FoundCertificate:
    if plan.home.authority is None:
        raise Refused("found-key-locked")
    return plan.home.authority


def _withdraw(change: AdoptChange, entries: Sequence[Entry]) -> None:
    for one in entries:
        change.withdraw(one.serial, one.reason, one.since)
        if one.listed is not None:
            change.note_listed(one.serial, one.listed)
