"""Makes sealed copies, and opens them to see that they are whole."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

from hearthkey.core import names, sealed
from hearthkey.core.diary import FIRST_LINK
from hearthkey.core.errors import Refused
from hearthkey.core.plans import Changes
from hearthkey.core.sealed import Contents, CopyNote
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import sealed as sentences
from hearthkey.formats import sealed_tar
from hearthkey.pki import copy_lock
from hearthkey.services import secret_names
from hearthkey.services.generations import of_household
from hearthkey.services.opening import the_authority
from hearthkey.services.opening_copy import CopyOpening
from hearthkey.services.ports import Clock, Dice, Files, Progress, Vault, silent
from hearthkey.services.sealed_ports import CopyLocks, SealedRegister
from hearthkey.services.writing_diary import note

ENDING = ".sealed.tar"


class Sealing:
    """The verbs "seal" and "try".

    Args:
        folder: where the app keeps the copies that it makes by itself.
        listed: the names of the copies that lie there.
        forget: deletes one of them.
    """

    def __init__(
        self,
        register: SealedRegister,
        vault: Vault,
        clock: Clock,
        dice: Dice,
        files: Files,
        locks: CopyLocks,
        opening: CopyOpening,
        folder: Path,
        listed: Callable[[], list[str]],
        forget: Callable[[str], None],
    ) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock
        self._dice = dice
        self._files = files
        self._locks = locks
        self._opening = opening
        self._folder = folder
        self._listed = listed
        self._forget = forget

    @property
    def ready(self) -> bool:
        """Whether a copy can be made without a passphrase."""
        return self._register.copy_lock() is not None

    def make_ready(self, passphrase: Secret[str], *, own: bool = False) -> None:
        """Draw the lock that copies are closed with from now on; where there is one already, nothing happens.

        One under a passphrase of the copies' own is drawn even so; copies that were made before keep theirs.

        Args:
            passphrase: the household's, or one of the copies' own. Nobody checks it against the household's here:
                a shell calls this right after it opened the CA key with it.
            own: it is the copies' own, which is still known once the household's is lost.

        Raises:
            Refused: no-household.
            Unavailable: as vault and register.
        """
        if self.ready and not own:
            return
        authority = the_authority(self._register)
        name = secret_names.copy_mark(authority)
        known = self._vault.get(name)
        mark_key = Secret(f"{self._dice.bits(copy_lock.MARK_BITS):064x}") if known is None else known
        lock = self._locks.make(passphrase, mark_key)
        if known is None:  # one that copies are marked with already must never be taken for a leftover of a crash
            self._register.expect_secrets([name], self._vault.place)
            self._vault.put(name, mark_key)
        with self._register.change() as change:
            change.keep_copy_lock(lock.public, lock.locked, own=own)
            change.settle_secret(name)

    def seal(self, folder: Path | None = None, *, progress: Progress = silent) -> tuple[CopyNote, Changes]:
        """Make a copy and write it.

        Args:
            folder: a folder or a stick; the app's own where nothing is said, and there only the newest ten stay.

        Raises:
            Refused: no-household, copy-not-ready.
            Unavailable: as vault, register and files.
        """
        progress("sealing-copy")
        where = self._folder if folder is None else folder
        noted, data = self.make(str(where))
        self._files.write(where, noted.name, data)
        changes = self.note(noted, noted.place, told=folder is not None)
        for old in sealed.superfluous(self._listed()):
            self._forget(old)
        return noted, replace(changes, files=(str(where / noted.name),))

    def make(self, place: str) -> tuple[CopyNote, bytes]:
        """Make a copy that is written by whoever asked for it.

        Args:
            place: where it is to be, as it is noted.

        Raises:
            Refused: no-household, copy-not-ready.
            Unavailable: as vault and register.
        """
        data, contents = self._closed()
        digest, entries = hashlib.sha256(data).hexdigest(), contents.diary_entries
        name = f"{_stem(contents.household)}-{contents.made:%Y-%m-%d-%H%M%S}{ENDING}"
        return CopyNote(contents.made, digest, place, name, entries, contents.diary_link, None), data

    def note(self, noted: CopyNote, place: str, *, told: bool) -> Changes:
        """Remember a copy that was written.

        Args:
            place: where it is, in words.
            told: the householder asked for it, so that it stands in the diary; copies that the app makes by itself
                would only make each other necessary.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.sealed(replace(noted, place=place))
        with self._register.change() as change:
            change.note_copy(noted)
            if told:
                note(self._register, change, verb="seal", sentence=sentence, now=noted.made)
        return Changes(sentence)

    def keep_up(self) -> CopyNote | None:
        """Make a copy in the app's own folder, where the diary has grown since the last one there."""
        last = self._register.last_entry()
        if last is None or not self.ready:
            return None
        here = [one for one in self._register.sealed_copies() if one.place == str(self._folder)]
        if any(one.diary_link == last.link for one in here) and self._listed():
            return None
        return self.seal()[0]

    def try_copy(
        self, data: bytes, passphrase: Secret[str], own: Secret[str] | None = None, *, progress: Progress = silent
    ) -> Changes:
        """Open a copy for real, in a scratch place, and say how far it is behind.

        Raises:
            Refused: copy-of-another, and as `CopyOpening.opened`.
            Unavailable: as `CopyOpening.opened`.
        """
        now = self._clock.now()
        the_authority(self._register)
        with self._opening.opened(data, passphrase, own, progress=progress) as found:
            contents = found.contents
        if not of_household(contents.authority, self._register):
            raise Refused("copy-of-another", household=contents.household)
        behind = self._behind(contents)
        sentence = sentences.tried(contents, behind)
        with self._register.change() as change:
            change.copy_tried(hashlib.sha256(data).hexdigest(), now)
            note(self._register, change, verb="try", sentence=sentence, now=now)
        return Changes(sentence)

    def _behind(self, contents: Contents) -> int:
        """How many things were done since.

        Raises:
            Refused: copy-other-past, where the diary has another past than the copy.
        """
        entries = self._register.diary()
        then = entries[contents.diary_entries - 1].link if 0 < contents.diary_entries <= len(entries) else FIRST_LINK
        if contents.diary_entries > len(entries) or then != contents.diary_link:
            raise Refused("copy-other-past", entries=contents.diary_entries, here=len(entries))
        return len(entries) - contents.diary_entries

    def _closed(self) -> tuple[bytes, Contents]:
        authority = the_authority(self._register)
        household = self._register.household()
        lock = self._register.copy_lock()
        mark_key = self._vault.get(secret_names.copy_mark(authority))
        if lock is None or mark_key is None or household is None:
            raise Refused("copy-not-ready")
        made = max(self._clock.now(), self._after_the_last())
        files = self._files_inside()
        last = self._register.last_entry()
        contents = Contents(
            made=made,
            household=household.certified_name,
            authority=authority.fingerprint,
            passes=len(self._register.passes()),
            withdrawn=tuple(sorted(one.serial for one in self._register.entries())),
            list_mark=self._register.list_high_water(),
            diary_entries=0 if last is None else last.number,
            diary_link=FIRST_LINK if last is None else last.link,
            schema=self._register.schema_version(),
            files=sealed_tar.fingerprints(files),
        )
        told = sealed_tar.manifest(contents)
        files[sealed_tar.MANIFEST] = told
        files[sealed_tar.MARK] = copy_lock.mark(told, mark_key).encode()
        public, locked = lock
        outer = {
            sealed_tar.HOW: sealed_tar.HOW_TO_OPEN.encode(),
            sealed_tar.IDENTITY: locked.encode(),
            sealed_tar.SEALED: copy_lock.seal(sealed_tar.pack(files, made), public),
        }
        about = self._register.deputy_set()
        if about is not None and about.lock == public:  # an older set knows an older passphrase
            outer[sealed_tar.deputy_file(about.name)] = about.locked.encode()
            outer[sealed_tar.HOW] += sealed_tar.HOW_WITH_PARTS.encode()
        return sealed_tar.pack(outer, made), contents

    def _after_the_last(self) -> datetime:
        """Two copies never have one name, however fast they follow each other."""
        made = [one.made for one in self._register.sealed_copies()]
        return max(made) + timedelta(seconds=1) if made else self._clock.now()

    def _files_inside(self) -> dict[str, bytes]:
        authority = the_authority(self._register)
        ca_key = self._vault.get(secret_names.authority_key(authority))
        if ca_key is None:
            raise Refused("keyring-empty")
        gateway = self._register.gateway()
        wanted = [secret_names.gateway_archive(authority)]
        others = [one for one in self._register.authorities() if one.fingerprint != authority.fingerprint]
        wanted += [secret_names.authority_key(one) for one in others]
        wanted += [] if gateway is None else [secret_names.gateway_key(authority, gateway.serial)]
        wanted += [secret_names.extra_secret(authority, owner) for owner in self._register.extra_secrets()]
        kept = {name: value.reveal() for name in wanted if (value := self._vault.get(name)) is not None}
        files = {
            sealed_tar.REGISTER: self._register.snapshot(),
            sealed_tar.CA_KEY: ca_key.reveal().encode(),
            sealed_tar.SECRETS: json.dumps(kept, indent=1, sort_keys=True).encode(),
        }
        for number, one in enumerate(self._register.templates(), 1):
            files[f"templates/{number}-{names.file_stem(one.name, 'template')}.txt"] = one.text.encode()
        return files


def _stem(household: str) -> str:
    return names.file_stem(household, "household")
