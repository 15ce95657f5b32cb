"""Enrols devices: a key, a certificate and a waiting bundle for each."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core import certificates, kinds, names, passphrase, phrases
from hearthkey.core.bundle import Credential
from hearthkey.core.certificates import DevicePlan, serial_hex
from hearthkey.core.channels import gives_away
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, possessive
from hearthkey.core.keysets import key_set
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, EnrolPlan
from hearthkey.core.renewal import Follow
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import diary, renewal
from hearthkey.pki import keys, mint, read
from hearthkey.services import secret_names
from hearthkey.services.generations import by_issuer
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import (
    Clock,
    Dice,
    NewPass,
    Progress,
    SealJob,
    Vault,
    Workshop,
    silent,
)
from hearthkey.services.renewal_ports import RenewalChange, RenewalRegister
from hearthkey.services.writing_diary import check_clock, note


@dataclass(frozen=True)
class EnrolRequest:
    """What the householder typed.

    Args:
        person, device: whose, and which.
        kind: name of the device kind.
        ends: last moment of the pass, UTC, or None for the default.
        guest: the pass ends in days.
        key_set, container: names that overrule what the kind says, or None.
        replace: a new pass for a device that has one.
    """

    person: str
    device: str
    kind: str
    ends: datetime | None = None
    guest: bool = False
    key_set: str | None = None
    container: str | None = None
    replace: bool = False


@dataclass(frozen=True)
class _Made:
    """A pass on its way into the register."""

    new: NewPass
    passphrase: Secret[str]
    secret_name: str


class Enrolling:
    """The verb "add"."""

    def __init__(
        self,
        register: RenewalRegister,
        vault: Vault,
        keyholder: Keyholder,
        clock: Clock,
        dice: Dice,
        words: Sequence[str],
        workshop: Workshop,
        known_kinds: kinds.Kinds,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._words = words
        self._workshop = workshop
        self._kinds = known_kinds

    def preview(self, request: EnrolRequest) -> EnrolPlan:
        """Check one request. See `preview_all`."""
        return self.preview_all([request])[0]

    def preview_all(self, requests: Sequence[EnrolRequest]) -> list[EnrolPlan]:
        """Check what was typed; all of it holds, or nothing is begun.

        Raises:
            Refused: no-household, device-exists, device-unknown, enrolled-twice, kind-unknown,
                key-set-unknown, container-unknown, end-in-the-past, end-after-authority and the
                checks of names.
        """
        authority = the_authority(self._register)
        known: dict[tuple[str, str], Pass] = {}
        for one in self._register.passes():
            known[one.person.casefold(), one.device.casefold()] = one
        plans: list[EnrolPlan] = []
        asked: set[tuple[str, str]] = set()
        for request in requests:
            plan = self._plan(request, known, authority)
            key = (plan.person.casefold(), plan.device.casefold())
            if key in asked:
                raise Refused("enrolled-twice", title=possessive(plan.person, plan.device))
            asked.add(key)
            plans.append(plan)
        return plans

    def _plan(self, request: EnrolRequest, known: dict[tuple[str, str], Pass], authority: Authority) -> EnrolPlan:
        person = names.display_name(request.person, "person’s name")
        device = names.display_name(request.device, "device’s name")
        old = known.get((person.casefold(), device.casefold()))
        kind, gone = self._kind(request.kind, old)
        now = self._clock.now()
        if old is not None and not request.replace:
            code = "device-revoked" if old.state(now) in {State.REVOKED, State.ENDED} else "device-exists"
            raise Refused(code, title=old.title)
        if old is None and request.replace:
            raise Refused("device-unknown", text=possessive(person, device))
        chosen = kind.key_set if request.key_set is None else key_set(request.key_set)
        plan = EnrolPlan(
            person=person if old is None else old.person,
            device=device if old is None else old.device,
            kind=kind,
            key_set=chosen,
            container=kind.container if request.container is None else kinds.container(request.container),
            guest=request.guest,
            ends=request.ends,
            replaces=old,
            identity=None if old is None else old.identity,
            cautions=gone + _cautions(kind, chosen.name, request.container),
        )
        self._certificate_plan(plan, "checked.example", authority, now)
        return plan

    def _kind(self, name: str, old: Pass | None) -> tuple[kinds.DeviceKind, tuple[Caution, ...]]:
        """The kind of that name; a device that got its first pass under a kind that is gone may still be renewed."""
        if old is not None and old.kind == name and name not in self._kinds:
            return self._kinds.of(name), (Caution("kind-gone", name),)
        return self._kinds.find(name), ()

    def _certificate_plan(self, plan: EnrolPlan, identity: str, authority: Authority, now: datetime) -> DevicePlan:
        return certificates.plan_device(
            identity,
            plan.key_set,
            now=now,
            ends=plan.ends,
            guest=plan.guest,
            authority_begin=read.certificate_facts(authority.certificate).not_before,
            authority_end=authority.not_after,
            bits=self._dice.bits,
        )

    def ends(self, plan: EnrolPlan) -> datetime:
        """Until when a planned pass would get in, UTC."""
        authority = the_authority(self._register)
        return self._certificate_plan(plan, "checked.example", authority, self._clock.now()).not_after

    def apply(
        self, *plans: EnrolPlan, progress: Progress = silent, also: Callable[[RenewalChange], None] | None = None
    ) -> Changes:
        """Make the passes and put them into the tray, in one transaction.

        Args:
            also: what else belongs into that transaction.

        Raises:
            Refused: household-locked, clock-behind, and what `preview_all` refuses.
            Unavailable: as vault and register.
        """
        self._keyholder.key()
        authority = the_authority(self._register)
        now = self._clock.now()
        check_clock(self._register, now)
        progress("making-keys", count=len(plans))
        made = self._make(plans, authority, now, progress)
        progress("keeping-secrets")
        self._register.expect_secrets([one.secret_name for one in made], self._vault.place)
        for one in made:
            self._vault.put(one.secret_name, one.passphrase)
        sentences = []
        with self._register.change() as change:
            for plan, one in zip(plans, made, strict=True):
                change.add_pass(one.new, now)
                change.settle_secret(one.secret_name)
                for follow in _follows(plan, one.new.about, now):
                    change.add_follow(follow)
                verb, sentence = _told(plan, one.new.about, now)
                sentences.append(sentence)
                note(self._register, change, verb=verb, sentence=sentence, now=now)
            if also is not None:
                also(change)
        return Changes(
            phrases.sentences(sentences),
            serials=tuple(one.new.about.serial for one in made),
            cautions=tuple(caution for plan in plans for caution in plan.cautions),
        )

    def _make(self, plans: Sequence[EnrolPlan], authority: Authority, now: datetime, progress: Progress) -> list[_Made]:
        household = self._register.household()
        suffix = "" if household is None else household.identity_suffix
        taken = set(self._register.identities())
        trusted = tuple(one.certificate for one in by_issuer(authority, self._register.authorities()))
        about: list[Pass] = []
        jobs: list[SealJob] = []
        made_keys = self._workshop.make_keys([plan.key_set.key_type for plan in plans])
        for plan, key in zip(plans, made_keys, strict=True):
            identity = plan.identity or self._free_identity(suffix, taken)
            certificate_plan = self._certificate_plan(plan, identity, authority, now)
            certificate = mint.device_certificate(
                certificate_plan, keys.public_der(key), authority.certificate, self._keyholder.key()
            )
            about.append(_waiting(plan, certificate_plan))
            jobs.append(
                SealJob(
                    Credential(key, certificate, trusted),
                    self._words_for(plan),
                    about[-1].title,
                )
            )
        made: list[_Made] = []
        for one, job, sealed in zip(about, jobs, self._workshop.seal(jobs), strict=True):
            name = secret_names.bundle_passphrase(authority, one.serial)
            made.append(_Made(NewPass(one, job.credential.certificate, sealed), job.passphrase, name))
            progress("sealing", done=len(made), count=len(plans))
        return made

    def _words_for(self, plan: EnrolPlan) -> Secret[str]:
        """A bundle's passphrase: one that the names beside it, which stand in file names, do not give away."""
        while True:
            made = passphrase.make(self._words, self._dice.below)
            if not gives_away(f"{plan.person} {plan.device}", made):
                return made

    def _free_identity(self, suffix: str, taken: set[str]) -> str:
        while (identity := f"{certificates.identity_code(self._dice.below)}.{suffix}") in taken:
            pass
        taken.add(identity)
        return identity


def _waiting(plan: EnrolPlan, certificate: DevicePlan) -> Pass:
    return Pass(
        person=plan.person,
        device=plan.device,
        kind=plan.kind.name,
        identity=certificate.identity,
        serial=serial_hex(certificate.serial),
        key_set=plan.key_set.name,
        container=plan.container,
        guest=plan.guest,
        not_before=certificate.not_before,
        not_after=certificate.not_after,
        handed_over=None,
        reason=None,
        since=None,
    )


def _follows(plan: EnrolPlan, made: Pass, now: datetime) -> list[Follow]:
    return [Follow(made.serial, one.old.serial, one.overlap_ends, now, one.way) for one in plan.follows]


def _told(plan: EnrolPlan, made: Pass, now: datetime) -> tuple[str, str]:
    """The verb that the diary knows it by, and its sentence."""
    if not plan.follows:
        return "add", diary.enrolled(made, replaced=plan.replaces is not None)
    if plan.replaces is None:
        return "replace", renewal.replaced(made, [one.old for one in plan.follows])
    overlap = plan.follows[0].overlap_ends
    return "renew", renewal.renewed(made, overlap if overlap > now else None)


def _cautions(kind: kinds.DeviceKind, chosen: str, container: str | None) -> tuple[Caution, ...]:
    """Say where the householder's details go against what the device kind is known to read."""
    found = []
    if kind.key_set.name == "broad" and chosen != "broad":
        found.append(Caution("key-set-unlikely", kind.title))
    if kind.container == kinds.OLD and container == kinds.STRONG:
        found.append(Caution("container-unlikely", kind.title))
    return tuple(found)
