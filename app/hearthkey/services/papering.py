"""Puts the household's key on paper: what stands there is decided here, and drawn by whoever asks."""

from __future__ import annotations

from dataclasses import replace
from itertools import count

from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority
from hearthkey.core.keepsakes import PaperNote, on_paper
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.languages import Language
from hearthkey.core.paper import lines_of
from hearthkey.core.paper_contents import LISTED, PaperContents, Withdrawn
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import paper as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.core.succession import Cause, Step
from hearthkey.formats import paper_der
from hearthkey.formats.paper_sheet import OlderKey, PaperFacts
from hearthkey.pki import read
from hearthkey.services import secret_names
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Clock, Locksmith, Progress, Vault, silent
from hearthkey.services.sealed_ports import SealedRegister
from hearthkey.services.writing_diary import note


class Papering:
    """The verb "paper", and the verb "try" for one."""

    def __init__(self, register: SealedRegister, vault: Vault, clock: Clock, locksmith: Locksmith) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock
        self._locksmith = locksmith

    def facts(self, language: Language) -> PaperFacts:
        """What the paper says. Nothing is opened for it: the key lies on it as it lies in the vault.

        While one CA follows another it has the newer one's: there is room for one, and the older one is on the paper
        that was made before.

        Raises:
            Refused: no-household, keyring-empty, paper-key-unfit, paper-too-large.
            Unavailable: as vault and register.
        """
        authority = self._authority()
        kept = self._vault.get(secret_names.authority_key(authority))
        if kept is None:
            raise Refused("keyring-empty")
        contents = self._contents(authority.certificate, paper_der.key_octets(kept.reveal()))
        return PaperFacts(contents, authority.not_after, language, self._older())

    def _authority(self) -> Authority:
        """Whose key a paper has that is made now."""
        return on_paper(the_authority(self._register), self._register.succession())

    def _older(self) -> OlderKey | None:
        found = self._register.succession()
        if found is None or not found.underway:
            return None
        return OlderKey(found.taken[Step.BEGIN], found.old.not_after, lost=found.cause is Cause.LOST)

    def _contents(self, certificate: bytes, key: bytes) -> PaperContents:
        household, gateway = self._register.household(), self._register.gateway()
        if household is None or gateway is None:
            raise Refused("no-household")
        now = self._clock.now()
        key_type = read.certificate_facts(gateway.certificate).key_type
        entries = sorted(self._register.entries(), key=lambda one: (one.since, one.serial), reverse=True)
        whole = PaperContents(
            made=now,
            household=household,
            key_set=next(one.name for one in KEY_SETS.values() if one.key_type == key_type),
            list_mark=self._register.list_high_water(),
            certificate=certificate,
            key=key,
            withdrawn=tuple(Withdrawn(one.serial, one.since, one.reason) for one in entries),
            more_withdrawn=0,
            living=sum(one.state(now) is State.IN_USE for one in self._register.passes()),
        )
        return _fitted(whole)

    def printed(self, place: str) -> Changes:
        """Write into the diary that the paper was made.

        Args:
            place: the file's name, or empty for a printer.

        Raises:
            Unavailable: as the register.
        """
        sentence, now, authority = sentences.printed(place), self._clock.now(), self._authority()
        with self._register.change() as change:
            change.note_paper(PaperNote(now, authority.fingerprint))
            note(self._register, change, verb="paper", sentence=sentence, now=now)
        return Changes(sentence)

    def try_paper(self, content: bytes, passphrase: Secret[str], *, progress: Progress = silent) -> Changes:
        """Open the key on a paper that was read, and say whether all of it still holds.

        Raises:
            Refused: no-household, paper-of-other-house, paper-before-succession, paper-of-dropped-ca,
                paper-key-of-another, paper-unreadable, paper-newer, wrong-passphrase, guard-unreadable,
                guard-too-heavy.
            Unavailable: as the register.
        """
        household = self._register.household()
        the_authority(self._register)
        contents = paper_der.decode(content)
        authority = self._known(contents)
        progress("opening-copied-key")
        key = self._locksmith.open_guard(paper_der.key_text(contents.key), passphrase)
        if key.public_der() != read.public_of(authority.certificate):
            raise Refused("paper-key-of-another")
        newer = None if authority == self._authority() else self._older()
        if newer is None:
            sentence = sentences.tried(contents, still=contents.household == household)
        else:
            sentence = sentences.tried_older(contents, since=newer.since, until=newer.until)
        with self._register.change() as change:
            note(self._register, change, verb="try", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def _known(self, contents: PaperContents) -> Authority:
        """Whose key is said to be on a paper; one that nobody trusts any more is told as what it is.

        Raises:
            Refused: paper-of-other-house, paper-before-succession, paper-of-dropped-ca.
        """
        register, found = self._register, self._register.succession()
        known = next((one for one in register.every_authority() if one.certificate == contents.certificate), None)
        if known is None:
            raise Refused("paper-of-other-house", household=contents.household.certified_name)
        if known in register.authorities():
            return known
        made = day(contents.made)
        if found is not None and found.finished and known == found.old:
            raise Refused("paper-before-succession", made=made, since=day(found.taken[Step.BEGIN]))
        raise Refused("paper-of-dropped-ca", made=made)


def _fitted(whole: PaperContents) -> PaperContents:
    """With as many withdrawals as there is room for, the newest."""
    all_of_them = whole.withdrawn
    for left_out in count(max(0, len(all_of_them) - LISTED)):
        kept = all_of_them[: len(all_of_them) - left_out] if left_out <= len(all_of_them) else ()
        one = replace(whole, withdrawn=kept, more_withdrawn=left_out)
        try:
            lines_of(paper_der.encode(one))
        except Refused:
            if not kept:
                raise
        else:
            return one
    raise AssertionError
