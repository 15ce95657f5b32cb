"""Brings a household back from its paper: the CA key, the settings and the numbers, and nobody in it yet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Household
from hearthkey.core.keysets import key_set
from hearthkey.core.paper_contents import PaperContents
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Entry, ListPlan, plan_list
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import paper as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.formats import paper_der
from hearthkey.pki import judge, lists, read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import gateway_credential, secret_names
from hearthkey.services.describing import describe
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.listing import sign
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Dice, Locksmith, Progress, Vault, silent
from hearthkey.services.restoring import GAP
from hearthkey.services.writing_diary import TOLERATED, note


@dataclass(frozen=True)
class PaperPlan:
    """A household about to be brought back from paper.

    Args:
        contents: what stands on it.
        key: the CA key, open.
        sentence: what will happen.
    """

    contents: PaperContents
    key: AuthorityKey
    sentence: str


class PaperRestoring:
    """The verb "restore", from paper."""

    def __init__(
        self,
        register: GatewayRegister,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        locksmith: Locksmith,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words
        self._locksmith = locksmith

    def told(self, content: bytes) -> PaperContents:
        """What the paper says of itself, before any passphrase.

        Raises:
            Refused: household-exists, paper-unreadable, paper-newer, certificate-unreadable.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        contents = paper_der.decode(content)
        facts = read.certificate_facts(contents.certificate)
        if not facts.is_authority or self._described(contents.household) != contents.household:
            raise Refused("paper-unreadable")
        return contents

    def preview(self, content: bytes, passphrase: Secret[str], *, progress: Progress = silent) -> PaperPlan:
        """Open the CA key, sign a list that nobody will ever see, and say what would come back.

        Raises:
            Refused: as `told`, and wrong-passphrase, guard-unreadable, guard-too-heavy, paper-key-of-another.
        """
        contents = self.told(content)
        progress("opening-copied-key")
        key = self._locksmith.open_guard(paper_der.key_text(contents.key), passphrase)
        if key.public_der() != read.public_of(contents.certificate):
            raise Refused("paper-key-of-another")
        authority = self._authority(contents)
        trial = ListPlan(contents.list_mark + 1, contents.made, authority.not_after, ())
        judge.check_list(lists.sign_list(trial, authority.certificate, key), authority.certificate)
        return PaperPlan(contents, key, sentences.restoring(contents))

    def apply(self, plan: PaperPlan, *, progress: Progress = silent) -> Changes:
        """Bring it back: first the secrets, then, in one transaction, the household.

        A crash before that leaves a computer without a household, and names of secrets that the next start takes
        out of the vault again; after it, everything is there.

        Raises:
            Refused: household-exists, clock-behind, authority-ended.
            Unavailable: as vault and register.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        contents, now = plan.contents, self._clock.now()
        authority = self._authority(contents)
        if now < contents.made - TOLERATED:
            raise Refused("clock-behind", clock=f"{now:%d %B %Y %H:%M}", last=f"{contents.made:%d %B %Y %H:%M}")
        if now >= authority.not_after:
            raise Refused("authority-ended", end=day(authority.not_after))
        progress("making-gateway")
        gateway, secret = gateway_credential.fresh(
            contents.household.gateway_host,
            key_set(contents.key_set),
            authority,
            plan.key,
            now=now,
            dice=self._dice,
            words=self._words,
        )
        kept = {
            secret_names.authority_key(authority): Secret(paper_der.key_text(contents.key)),
            secret_names.gateway_key(authority, gateway.serial): secret,
        }
        progress("keeping-secrets")
        self._register.expect_secrets(kept, self._vault.place)
        for name, value in kept.items():
            self._vault.put(name, value)
        sentence = sentences.restored(contents)
        entries = [Entry(one.serial, one.since, one.reason, authority.not_after) for one in contents.withdrawn]
        first = plan_list(
            entries,
            highest_number=contents.list_mark + GAP,
            previous_update=None,
            authority_end=authority.not_after,
            now=now,
        )
        subject = read.certificate_facts(authority.certificate).subject
        with self._register.change() as change:
            change.found(contents.household, authority, subject, now)
            change.add_gateway(gateway, now)
            for one in entries:
                change.adopt(one.serial, one.not_after)
                change.withdraw(one.serial, one.reason, one.since)
            change.add_list(sign(first, authority, plan.key))
            for name in kept:
                change.settle_secret(name)
            note(self._register, change, verb="restore", sentence=sentence, now=now)
        self._keyholder.keep(plan.key)
        return Changes(sentence, list_number=first.number)

    def _authority(self, contents: PaperContents) -> Authority:
        facts = read.certificate_facts(contents.certificate)
        return Authority(contents.certificate, facts.fingerprint, facts.not_after, self._vault.place)

    def _described(self, told: Household) -> Household:
        """The same, checked as if somebody had typed it."""
        return describe(
            name=told.name,
            gateway_host=told.gateway_host,
            home_subnets=[str(one) for one in told.home_subnets],
            tunnel_subnet=str(told.tunnel_subnet),
            identity_suffix=told.identity_suffix,
            dns_servers=told.dns_servers,
            tunnel=told.tunnel,
            practice=told.practice,
            below=self._dice.below,
        )
