"""Signs revocation lists, keeps them and puts them where the householder finds them."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Authority
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import ListPlan, SignedList, plan_list
from hearthkey.core.sentences import diary
from hearthkey.formats import pem
from hearthkey.pki.keys import AuthorityKey
from hearthkey.pki.lists import sign_list
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import Change, Clock, Files, Register
from hearthkey.services.writing_diary import check_clock, note

SIGN_ANEW_AFTER = timedelta(days=30)
"""A list older than that is signed anew whenever the household is open."""


def sign(plan: ListPlan, authority: Authority, key: AuthorityKey) -> SignedList:
    """Sign a planned list."""
    return SignedList(plan.number, sign_list(plan, authority.certificate, key), plan.this_update, plan.next_update)


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

    def add_next(self, change: Change) -> SignedList:
        """Sign the next list from what the transaction has changed, and keep it.

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
            previous_update=None if newest is None else newest.this_update,
            authority_end=authority.not_after,
            now=now if newest is None else max(now, newest.this_update),
        )
        signed = sign(plan, authority, self._keyholder.key())
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
        return (
            str(self._files.write(into, as_pem, pem.encode("X509 CRL", signed.der).encode("ascii"))),
            str(self._files.write(into, as_der, signed.der)),
        )

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
