"""Signs revocation lists, keeps them and puts them where the householder finds them."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Authority
from hearthkey.core.network import Caution
from hearthkey.core.pack import second_name
from hearthkey.core.passes import LIVING
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import ListBeside, ListPlan, SignedList, plan_list
from hearthkey.core.sentences import diary
from hearthkey.core.succession import Cause
from hearthkey.formats import pem
from hearthkey.pki import read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.pki.lists import read_list, sign_list
from hearthkey.services.generations import issued_by
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import Change, Clock, Files, Register
from hearthkey.services.writing_diary import TOLERATED, check_clock, note

SIGN_ANEW_AFTER = timedelta(days=30)
"""A list older than that is signed anew whenever the household is open."""


def sign(plan: ListPlan, authority: Authority, key: AuthorityKey) -> SignedList:
    """Sign a planned list."""
    der = sign_list(plan, authority.certificate, key)
    return SignedList(plan.number, der, plan.this_update, plan.next_update, authority.fingerprint)


def sign_by_all(plan: ListPlan, register: Register, keyholder: Keyholder, now: datetime) -> SignedList:
    """Sign a planned list by every CA that the household trusts: one number, one date, the same entries.

    The number rises for each issuer (RFC 5280 section 5.2.3), and a serial that the other CA gave out stands on a list
    without harm, for no two passes have one number. A CA whose key is lost keeps the last list that it signed.

    Raises:
        Refused: household-locked, no-household, succession-key-missing, succession-cannot-stop.
    """
    authority = the_authority(register)
    trusted = [one.fingerprint for one in register.authorities()]
    others = [one for one in register.authorities() if one.fingerprint != authority.fingerprint]
    others = [one for one in others if now < one.not_after]
    plan = replace(plan, next_update=min([plan.next_update, *(one.not_after for one in others)]))
    signed = sign(plan, authority, _key_of(authority, keyholder))
    beside: list[ListBeside] = []
    for one in others:
        key = keyholder.key_of(one)
        der = _last_of(register, one, plan) if key is None else sign_list(plan, one.certificate, key)
        older = trusted.index(one.fingerprint) < trusted.index(authority.fingerprint)
        beside.append(ListBeside(one.fingerprint, der, older=older))
    return replace(signed, beside=tuple(beside))


def _key_of(authority: Authority, keyholder: Keyholder) -> AuthorityKey:
    key = keyholder.key_of(authority)
    if key is None:
        raise Refused("succession-key-missing")
    return key


def _last_of(register: Register, authority: Authority, plan: ListPlan) -> bytes:
    """The last list of a CA that signs no more, if it says what is to be said of the CA's passes."""
    found, newest = register.succession(), register.newest_list()
    if found is None or found.cause is not Cause.LOST or newest is None:
        raise Refused("succession-key-missing")
    der = ({newest.signer: newest.der} | {one.authority: one.der for one in newest.beside})[authority.fingerprint]
    known, wanted = {one.serial for one in read_list(der).entries}, {one.serial for one in plan.entries}
    outside = [one for one in register.passes() if one.serial in wanted - known and one.handed_over is not None]
    mine = issued_by(register, authority, outside)
    if mine:
        titles = tuple(dict.fromkeys(one.title for one in outside if one.serial in mine))
        raise Refused("succession-cannot-stop", titles=titles)
    return der


def file_names(number: int) -> tuple[str, str]:
    """How a list is called as PEM and as DER (RFC 2585 section 3: DER in .crl)."""
    return f"list-{number}.pem", f"list-{number}.crl"


class Listing:
    """The verb "lists", and the last step of stop, let in and revoke."""

    def __init__(self, register: Register, keyholder: Keyholder, clock: Clock, files: Files, folder: Path) -> None:
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._files = files
        self._folder = folder

    def next_number(self) -> int:
        """The number that the next list will have."""
        return self._register.list_high_water() + 1

    def add_next(self, change: Change, *, righted: bool = False) -> SignedList:
        """Sign the next list from what the transaction has changed, and keep it.

        Args:
            righted: go by the clock although an earlier list has a later date. Whoever left a list because of that
                date comes back to it.

        Raises:
            Refused: household-locked, no-household, authority-ended.
        """
        authority = the_authority(self._register)
        newest = self._register.newest_list()
        now = self._clock.now()
        if now >= authority.not_after:
            raise Refused("authority-ended", end=diary.day(authority.not_after))
        plan = plan_list(
            self._register.entries(),
            highest_number=self._register.list_high_water(),
            previous_update=None if newest is None or righted else newest.this_update,
            authority_end=authority.not_after,
            now=now if newest is None or righted else max(now, newest.this_update),
        )
        signed = sign_by_all(plan, self._register, self._keyholder, now)
        change.add_list(signed)
        return signed

    def sign_anew(self) -> Changes:
        """Sign the same entries under a new date.

        Raises:
            Refused: household-locked, no-household, clock-behind, authority-ended.
        """
        self._keyholder.key()
        now = self._clock.now()
        check_clock(self._register, now)
        with self._register.change() as change:
            signed = self.add_next(change)
            sentence = diary.list_signed(signed)
            note(self._register, change, verb="lists", sentence=sentence, now=now)
        files, cautions = self.publish_or_say(signed)
        return Changes(sentence, list_number=signed.number, files=files, cautions=cautions)

    def set_right(self) -> Changes:
        """Sign the same entries by the clock as it is now, where it was ahead when something was done.

        A list that begins in the future is no list yet, so a gateway with the right time lets nobody in
        (RFC 5280 section 6.3.3 asks for a current one); numbers go on rising (section 5.2.3).

        Returns:
            With a caution for each certificate that is not good yet by this clock.

        Raises:
            Refused: household-locked, no-household, clock-not-ahead, authority-ended.
        """
        self._keyholder.key()
        now, register = self._clock.now(), self._register
        newest, last = register.newest_list(), register.last_entry()
        if newest is None or last is None:
            raise Refused("no-household")
        if max(newest.this_update, last.at) <= now + TOLERATED:
            raise Refused("clock-not-ahead")
        with register.change() as change:
            signed = self.add_next(change, righted=True)
            sentence = diary.clock_righted(signed, last.at)
            note(register, change, verb="clock", sentence=sentence, now=now)
        files, cautions = self.publish_or_say(signed)
        return Changes(sentence, list_number=signed.number, files=files, cautions=(*cautions, *self._not_good_yet(now)))

    def _not_good_yet(self, now: datetime) -> tuple[Caution, ...]:
        """Certificates that were made by the clock that was ahead."""
        register = self._register
        found = [
            Caution("pass-not-good-yet", str(one.title))
            for one in register.passes()
            if one.not_before > now and one.state(now) in LIVING
        ]
        gateway = register.gateway()
        if gateway is not None and read.certificate_facts(gateway.certificate).not_before > now:
            found.append(Caution("gateway-not-good-yet", gateway.host))
        return tuple(found)

    def sign_if_old(self) -> SignedList | None:
        """Sign the same entries anew where the newest list is older than 30 days and the household is open.

        Lists here are pushed, so a long date costs no freshness; it is moved on long before it ends.

        Returns:
            The new list, None where nothing was signed.
        """
        newest = self._register.newest_list()
        if newest is None or self._keyholder.locked or self._clock.now() - newest.this_update < SIGN_ANEW_AFTER:
            return None
        self.sign_anew()
        return self._register.newest_list()

    def publish_or_say(self, signed: SignedList) -> tuple[tuple[str, ...], tuple[Caution, ...]]:
        """Write a list that is signed and kept already into the household's folder.

        Where the disk does not let us, that is no failure of the verb: the next start writes it.

        Returns:
            What was written, and the caution where nothing was.
        """
        try:
            return self.publish(signed), ()
        except Unavailable as error:
            return (), (Caution("list-not-written", str(error.facts.get("path", ""))),)

    def publish(self, signed: SignedList, folder: Path | None = None) -> tuple[str, ...]:
        """Write a list as PEM (RFC 7468 label X509 CRL) and DER, into the household's folder or another.

        Raises:
            Unavailable: as `Files`.
        """
        as_pem, as_der = file_names(signed.number)
        into = self._folder if folder is None else folder
        ders = signed.ders
        as_text = "".join(pem.encode(pem.X509_CRL, one) for one in ders)
        written = [self._files.write(into, as_pem, as_text.encode("ascii")), self._files.write(into, as_der, ders[0])]
        written += [self._files.write(into, second_name(as_der), one) for one in ders[1:]]
        return tuple(str(one) for one in written)

    def publish_missing(self) -> tuple[str, ...]:
        """Write the newest list where a crash kept it from being written."""
        newest = self._register.newest_list()
        if newest is None or (self._folder / file_names(newest.number)[1]).exists():
            return ()
        return self.publish(newest)

    def numbered(self, number: int | None) -> SignedList:
        """The list of that number, or the newest.

        Raises:
            Refused: no-household, list-unknown.
        """
        the_authority(self._register)
        for signed in reversed(self._register.lists()):
            if number is None or signed.number == number:
                return signed
        raise Refused("list-unknown", number=number)
