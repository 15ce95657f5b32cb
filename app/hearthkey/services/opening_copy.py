"""Opens a sealed copy for real: locks, mark, hashes, register, diary, and one signature with the CA key."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.diary import FIRST_LINK, first_misfit
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.revocation import ListPlan
from hearthkey.core.sealed import Contents
from hearthkey.core.secret import Secret
from hearthkey.formats import sealed_tar
from hearthkey.pki import copy_lock, judge, lists, read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import secret_names
from hearthkey.services.generations import signing_beside
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Locksmith, Progress, silent
from hearthkey.services.sealed_ports import CopyLocks, Scratch, SealedRegister


@dataclass(frozen=True)
class OpenCopy:
    """A copy that was opened and found whole.

    Args:
        contents: what it says of itself; all of it was compared with what is in it.
        register: open in a scratch place.
        path: its file there.
        ca_key: the CA key text, under the household's passphrase.
        secrets: what the vault has to know, by name.
        mark_key: what its mark was written with.
        key: the CA key.
        beside: that of the household's other CA, while there are two.
    """

    contents: Contents
    register: SealedRegister
    path: Path
    ca_key: Secret[str]
    secrets: Mapping[str, Secret[str]]
    mark_key: Secret[str]
    key: AuthorityKey
    beside: tuple[AuthorityKey, ...] = ()


class CopyOpening:
    """Opens sealed copies; nothing outside the scratch place is touched."""

    def __init__(self, locks: CopyLocks, locksmith: Locksmith, scratch: Scratch) -> None:
        self._locks = locks
        self._locksmith = locksmith
        self._scratch = scratch

    @contextmanager
    def opened(
        self, data: bytes, passphrase: Secret[str], own: Secret[str] | None = None, *, progress: Progress = silent
    ) -> Iterator[OpenCopy]:
        """Open a copy and check all of it before anything is given out.

        Args:
            data: the file.
            passphrase: the household's.
            own: the copies' own, where they have one.

        Raises:
            Refused: wrong-passphrase, copy-damaged, copy-too-large, copy-newer, copy-not-marked, copy-key-of-another,
                guard-too-heavy.
            Unavailable: register-newer, disk-full.
        """
        progress("opening-copy")
        outer = sealed_tar.unpack(data, "the archive")
        for name in (sealed_tar.IDENTITY, sealed_tar.SEALED):
            if name not in outer:
                raise Refused("copy-damaged", part=name)
        locked = outer[sealed_tar.IDENTITY].decode("ascii", errors="replace")
        opener = self._locks.unlock(locked, passphrase if own is None else own)
        inner = copy_lock.open_sealed(outer[sealed_tar.SEALED], opener.private)
        files = sealed_tar.unpack(inner, sealed_tar.SEALED)
        contents = _marked(files, opener.mark_key)
        ca_key = Secret(files[sealed_tar.CA_KEY].decode("ascii", errors="replace"))
        progress("opening-copied-key")
        key = self._locksmith.open_guard(ca_key.reveal(), passphrase)
        progress("comparing-copy")
        with _whole(self._scratch, files[sealed_tar.REGISTER]) as (register, path):
            _compare(register, contents)
            _sign(register, key, contents)
            secrets = _secrets(files[sealed_tar.SECRETS])
            beside = self._beside(register, secrets, passphrase)
            yield OpenCopy(contents, register, path, ca_key, secrets, opener.mark_key, key, beside)

    def _beside(
        self, register: SealedRegister, secrets: Mapping[str, Secret[str]], passphrase: Secret[str]
    ) -> tuple[AuthorityKey, ...]:
        """The other CA's key, opened to see that it is the right one."""
        found = []
        for one in signing_beside(register, the_authority(register)):
            kept = secrets.get(secret_names.authority_key(one))
            if kept is None:
                raise Refused("copy-damaged", part=sealed_tar.SECRETS)
            key = self._locksmith.open_guard(kept.reveal(), passphrase)
            if key.public_der() != read.public_of(one.certificate):
                raise Refused("copy-key-of-another")
            found.append(key)
        return tuple(found)


def _marked(files: Mapping[str, bytes], mark_key: Secret[str]) -> Contents:
    told, seen = files.get(sealed_tar.MANIFEST), files.get(sealed_tar.MARK)
    if told is None or seen is None:
        raise Refused("copy-damaged", part=sealed_tar.MANIFEST)
    contents = sealed_tar.read_manifest(told)
    if not copy_lock.marked(told, mark_key, seen.decode("ascii", errors="replace")):
        raise Refused("copy-not-marked")
    sealed_tar.check(files, contents)
    return contents


@contextmanager
def _whole(scratch: Scratch, data: bytes) -> Iterator[tuple[SealedRegister, Path]]:
    try:
        with scratch(data) as opened:
            yield opened
    except Unavailable as error:
        if error.code != "register-damaged":
            raise
        raise Refused("copy-damaged", part=sealed_tar.REGISTER) from error


def _compare(register: SealedRegister, contents: Contents) -> None:
    """Count, and walk the diary's chain to the link that the copy names."""
    entries = register.diary()
    last = entries[-1].link if entries else FIRST_LINK
    seen = (
        the_authority(register).fingerprint,
        len(register.passes()),
        tuple(sorted(one.serial for one in register.entries())),
        len(entries),
        last,
        first_misfit(entries, written=register.diary_written()),
    )
    told = (
        contents.authority,
        contents.passes,
        contents.withdrawn,
        contents.diary_entries,
        contents.diary_link,
        None,
    )
    if seen != told or register.list_high_water() != contents.list_mark:
        raise Refused("copy-damaged", part=sealed_tar.REGISTER)


def _sign(register: SealedRegister, key: AuthorityKey, contents: Contents) -> None:
    """Sign a list that nobody will ever see and have it judged, as the gateway would."""
    authority = the_authority(register)
    if key.public_der() != read.public_of(authority.certificate):
        raise Refused("copy-key-of-another")
    trial = ListPlan(contents.list_mark + 1, contents.made, authority.not_after, ())
    judge.check_list(lists.sign_list(trial, authority.certificate, key), authority.certificate)


def _secrets(data: bytes) -> dict[str, Secret[str]]:
    try:
        return {str(name): Secret(str(value)) for name, value in json.loads(data).items()}
    except (ValueError, AttributeError):
        raise Refused("copy-damaged", part=sealed_tar.SECRETS) from None
