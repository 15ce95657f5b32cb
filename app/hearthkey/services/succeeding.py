"""Lets one CA follow another: begin, go on, take back, finish; each step is one transaction."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from hearthkey.core import certificates, succession
from hearthkey.core.duties import succession_by
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Household
from hearthkey.core.in_force import Standing
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import succession as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.core.succession import Cause, Plan, Step, Succession
from hearthkey.pki import guard, mint, read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import secret_names, vouching
from hearthkey.services.device_steps import device_steps
from hearthkey.services.erasing import Erasing
from hearthkey.services.gateway_ports import GatewayChange, GatewayRegister
from hearthkey.services.gateway_turning import GatewayTurning, forget, signed_step
from hearthkey.services.generations import issued_by
from hearthkey.services.listing import Listing
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import Clock, Dice, Locksmith, Progress, Vault, Workshop, silent
from hearthkey.services.watching import Watching
from hearthkey.services.writing_diary import check_clock, note


class Succeeding:
    """The verb "succession"."""

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
        watching: Watching,
        locksmith: Locksmith = guard,
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._dice = dice
        self._listing = listing
        self._turning = GatewayTurning(register, vault, keyholder, clock, dice, words, workshop, listing)
        self._watching = watching
        self._locksmith = locksmith

    def look(self, cause: Cause = Cause.PLANNED) -> Plan:
        """The steps with their days, and how far each device is.

        Args:
            cause: what is asked about, where nothing has begun.

        Raises:
            Refused: no-household.
            Unavailable: as the register.
        """
        now, found = self._clock.now(), self._now()
        passes = self._register.passes()
        old = the_authority(self._register) if found is None else found.old
        living = [one for one in passes if one.state(now) in LIVING]
        return succession.plan(
            found,
            () if found is None else device_steps(self._register, found, passes, now),
            cause=cause,
            old_end=old.not_after,
            last_safe_day=succession_by(old.not_after, living),
            seen=found is not None and self._seen(),
            now=now,
        )

    def begin(self, secret: Secret[str], cause: Cause = Cause.PLANNED, *, progress: Progress = silent) -> Changes:
        """Make the next CA beside the one in charge, have the old one vouch for it, and sign both lists.

        Where the words are lost, the lock of sealed copies goes with them: a shell has `Sealing.make_ready` draw
        another one right after this, or the next time that the new words open the household.

        Args:
            secret: the household's passphrase, which guards the new key as well. Where the old key is lost nobody can
                check it, and it may be another.

        Raises:
            Refused: no-household, succession-underway, succession-cannot-vouch, authority-ended, clock-behind, and as
                `Keyholder.unlock`.
            Unavailable: as vault and register.
        """
        household, old, now = self._household(), the_authority(self._register), self._clock.now()
        if self._now() is not None:
            raise Refused("succession-underway")
        if cause is not Cause.LOST:
            self._keyholder.unlock(self._register, self._vault, secret)
            if now >= old.not_after:
                raise Refused("authority-ended", end=day(old.not_after))
        check_clock(self._register, now)
        progress("making-ca")
        key = AuthorityKey.make()
        planned = certificates.plan_authority(household, now=now, bits=self._dice.bits)
        certificate = mint.authority_certificate(planned, key)
        facts = read.certificate_facts(certificate)
        new = Authority(
            certificate, facts.fingerprint, facts.not_after, self._vault.place, old.first or old.fingerprint
        )
        cross = None if cause is Cause.LOST else self._cross(old, new, key, household.gateway_host, now)
        progress("guarding-ca")
        name = secret_names.authority_key(new)
        guarded = Secret(self._locksmith.seal(key, secret))
        progress("keeping-secrets")
        self._register.expect_secrets([name], self._vault.place)
        self._vault.put(name, guarded)
        self._keyholder.keep(*((key,) if cause is Cause.LOST else (self._keyholder.key(), key)))
        sentence = sentences.begun(old, new, cause)
        with self._register.change() as change:
            if cross is not None:
                told = read.certificate_facts(cross)
                change.adopt(told.serial, told.not_after)
            change.begin_succession(new, facts.subject, cross, cause, now)
            if cause is Cause.LOST:  # else every later copy would be closed with words that nobody has
                change.forget_copy_lock()
            change.settle_secret(name)
            done = self._signed(change, sentence, now)
        return self._published(done)

    def go_on(self, *, told: bool = False, anyway: bool = False, progress: Progress = silent) -> Changes:
        """Take the next step but the last: the gateway trusts both; the gateway shows a certificate of the new CA.

        Args:
            told: the householder says that the gateway has the files, where the app cannot look.
            anyway: where the old key is lost, though some devices would turn away from the gateway.

        Raises:
            Refused: succession-none, succession-last-step, succession-not-seen, succession-tell,
                succession-devices-left, household-locked, clock-behind, authority-ended.
            Unavailable: as vault and register.
        """
        found, now = self._underway(), self._clock.now()
        if found.next is Step.FINISH:
            raise Refused("succession-last-step")
        self._check_seen(told=told)
        if found.next is Step.TRUST:
            self._keyholder.key()
            sentence = sentences.trusted(found)
            with self._register.change() as change:
                change.take_step(Step.TRUST, now)
                note(self._register, change, verb="succession", sentence=sentence, now=now)
            return Changes(sentence)
        if found.cause is Cause.LOST and not anyway:
            self._check_devices(found, now)
        return self._published(self._turning.follow(found, progress))

    def take_back(self, *, progress: Progress = silent) -> Changes:
        """Take the last step back.

        Raises:
            Refused: succession-none, succession-no-way-back, succession-new-passes, household-locked, clock-behind.
            Unavailable: as vault and register.
        """
        found, now = self._underway(), self._clock.now()
        if found.last is None:
            raise Refused("succession-no-way-back")
        if found.last is Step.GATEWAY:
            return self._published(self._turning.go_back(found, progress))
        key = self._keyholder.key()
        if found.last is Step.TRUST:
            sentence = sentences.not_trusted(found)
            with self._register.change() as change:
                change.take_back(Step.TRUST, now)
                note(self._register, change, verb="succession", sentence=sentence, now=now)
            return Changes(sentence)
        left = [one for one in self._living(now) if one.serial in issued_by(self._register, found.new, [one])]
        if left:
            raise Refused("succession-new-passes", titles=tuple(dict.fromkeys(one.title for one in left)))
        check_clock(self._register, now)
        name, place = secret_names.authority_key(found.new), found.new.key_place
        with self._register.change() as change:
            change.take_back(Step.BEGIN, now)
            change.loosen_secret(name, place)
            done = self._signed(change, sentences.taken_back(found), now)
        self._keyholder.keep(key)
        self._forget(name)
        return self._published(done)

    def finish(self, *, told: bool = False, anyway: bool = False, stolen: bool = False) -> Changes:
        """Put the old CA away: nobody trusts it any more, its passes are withdrawn and its key is erased.

        Args:
            told: as in `go_on`.
            anyway: though some devices have no new pass yet; only where the old key may be in other hands, for then
                whoever has it can make passes for anybody, or is lost, so that it stops nobody any more.
            stolen: it may be in other hands since the succession began.

        Raises:
            Refused: succession-none, succession-too-early, succession-not-seen, succession-tell,
                succession-devices-left, household-locked, clock-behind.
            Unavailable: as vault and register.
        """
        found, now = self._underway(), self._clock.now()
        if found.next is not Step.FINISH:
            raise Refused("succession-too-early")
        self._check_seen(told=told)
        if not (anyway and (stolen or found.cause is not Cause.PLANNED)):
            self._check_devices(found, now)
        self._keyholder.key()
        check_clock(self._register, now)
        living = self._living(now)
        gone = issued_by(self._register, found.old, living)
        ends = tuple(one for one in living if one.serial in gone)
        waiting = tuple(one for one in ends if one.handed_over is None)
        erasing = Erasing(self._register, self._vault)
        name = secret_names.authority_key(found.old)
        with self._register.change() as change:
            for one in ends:
                change.withdraw(one.serial, Reason.SUPERSEDED, now)
            erasing.withdrawn(change, waiting)
            change.take_step(Step.FINISH, now)
            change.loosen_secret(name, found.old.key_place)
            done = self._signed(change, sentences.finished(found, ends), now)
        key = self._keyholder.key_of(found.new)
        self._keyholder.lock() if key is None else self._keyholder.keep(key)
        self._forget(name)
        serials = tuple(one.serial for one in ends)
        return self._published(replace(done, serials=serials, cautions=erasing.follow(waiting)))

    def _now(self) -> Succession | None:
        """The succession that is underway."""
        found = self._register.succession()
        return None if found is None or not found.underway else found

    def _underway(self) -> Succession:
        self._household()
        found = self._now()
        if found is None:
            raise Refused("succession-none")
        return found

    def _household(self) -> Household:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        return household

    def _living(self, now: datetime) -> list[Pass]:
        return [one for one in self._register.passes() if one.state(now) in LIVING]

    def _seen(self) -> bool:
        """Whether the gateway was read back with everything as it is decided here."""
        return self._watching.state().standing is Standing.IN_FORCE

    def _check_seen(self, *, told: bool) -> None:
        looks = self._register.target() is not None and not self._household().practice
        if looks and not self._seen():
            raise Refused("succession-not-seen")
        if not looks and not told:
            raise Refused("succession-tell")

    def _check_devices(self, found: Succession, now: datetime) -> None:
        steps = device_steps(self._register, found, self._register.passes(), now)
        left = tuple(one.title for one in steps if one.carries is not succession.Carries.DONE)
        if left:
            raise Refused("succession-devices-left", titles=left)

    def _cross(self, old: Authority, new: Authority, key: AuthorityKey, host: str, now: datetime) -> bytes:
        keys = (self._keyholder.key(), key)
        return vouching.cross_certificate(old, new, keys, host, now=now, bits=self._dice.bits)

    def _signed(self, change: GatewayChange, sentence: str, now: datetime) -> Changes:
        return signed_step(self._register, self._listing, change, sentence, now)

    def _published(self, done: Changes) -> Changes:
        newest = self._register.newest_list()
        if newest is None:
            return done
        files, cautions = self._listing.publish_or_say(newest)
        return replace(done, files=files, cautions=(*done.cautions, *cautions))

    def _forget(self, name: str) -> None:
        forget(self._register, self._vault, name)
