"""Looks over a household that was made by hand, and changes nothing anywhere."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from hearthkey.core.found_findings import all_findings
from hearthkey.core.found_home import FoundHome, find_home
from hearthkey.core.found_household import (
    Finding,
    FoundCertificate,
    FoundCounter,
    FoundDatabase,
    FoundFolder,
    FoundKey,
    FoundList,
    Grave,
)
from hearthkey.core.secret import Secret
from hearthkey.formats.issued_index import read_counter, read_index
from hearthkey.pki import found_values
from hearthkey.pki.looking_in import look_in
from hearthkey.services.adopt_ports import FolderFile, FolderReading, Passed
from hearthkey.services.ports import Clock, Progress, silent

MOST_TRIED = 64
"""Locked files that a passphrase is tried on: each may take a second, and that is wanted."""

_PASSED = {
    "link": "file-link",
    "special": "file-special",
    "large": "file-large",
    "closed": "file-closed",
    "deep": "file-deep",
    "many": "file-many",
}


@dataclass(frozen=True)
class Overview:
    """What a look came to.

    Args:
        folder: where.
        home: the household in it.
        findings: everything worth saying.
        keys: private keys that were open or could be opened, unencrypted PKCS#8 DER, by the print of their public half.
    """

    folder: Path
    home: FoundHome
    findings: tuple[Finding, ...]
    keys: Mapping[str, Secret[bytes]]

    @property
    def stops(self) -> tuple[Finding, ...]:
        """Why it cannot be taken over; empty where it can."""
        return tuple(one for one in self.findings if one.grave is Grave.STOPS)

    @property
    def needs_passphrase(self) -> bool:
        """Whether a passphrase would help: the CA key is not open, and something is locked."""
        return self.home.authority is not None and self.home.key is None and self.home.folder.locked


class LookingOver:
    """The verb "look-over"."""

    def __init__(self, reading: FolderReading, clock: Clock) -> None:
        self._reading = reading
        self._clock = clock

    def look(
        self,
        folder: Path,
        *,
        passphrases: Sequence[Secret[str]] = (),
        host: str | None = None,
        progress: Progress = silent,
    ) -> Overview:
        """Look at everything in a folder, or at one file.

        Args:
            passphrases: to be tried on what is locked.
            host: what the gateway is called, where that is known.

        Raises:
            Refused: folder-missing.
            Unavailable: folder-closed.
        """
        progress("reading-folder")
        files, passed = self._reading.read(folder)
        progress("looking-over", count=len(files))
        found = _put_together(files, passed, passphrases)
        home = find_home(found.folder, host=host, signed_by=found_values.is_signed_by, list_of=found_values.is_list_of)
        findings = all_findings(home, published=frozenset(found_values.PUBLISHED), now=self._clock.now())
        return Overview(folder, home, findings, found.keys)


@dataclass(frozen=True)
class _Found:
    folder: FoundFolder
    keys: Mapping[str, Secret[bytes]]


def _put_together(files: Sequence[FolderFile], passed: Sequence[Passed], passphrases: Sequence[Secret[str]]) -> _Found:
    certificates: list[FoundCertificate] = []
    held: list[FoundKey] = []
    lists: list[FoundList] = []
    findings = [Finding(_PASSED[one.why], one.name, Grave.NOTE, "") for one in passed]
    opened: dict[str, Secret[bytes]] = {}
    databases: list[FoundDatabase] = []
    counters: list[FoundCounter] = []
    unrelated: list[str] = []
    tried = 0
    for file in files:
        seen = look_in(file.name, file.data)
        if passphrases and tried < MOST_TRIED and any(one.public is None for one in seen.keys):
            tried += 1
            seen = look_in(file.name, file.data, passphrases)
        certificates += seen.certificates
        held += seen.keys
        lists += seen.lists
        findings += seen.findings
        opened |= seen.opened
        if not seen.related:
            _look_in_text(file, databases, counters, unrelated)
    folder = FoundFolder(
        files=len(files),
        certificates=tuple(certificates),
        keys=tuple(held),
        lists=tuple(lists),
        databases=tuple(databases),
        counters=tuple(counters),
        findings=tuple(findings),
        unrelated=tuple(unrelated),
    )
    return _Found(_without_old_versions(folder), opened)


def _look_in_text(
    file: FolderFile,
    databases: list[FoundDatabase],
    counters: list[FoundCounter],
    unrelated: list[str],
) -> None:
    """What is neither PEM nor DER may be a database or a counter, both of which are text."""
    text = file.data.decode("utf-8", "replace")
    database = None if "\x00" in text else read_index(file.name, text)
    counter = None if len(file.data) > 200 else read_counter(file.name, text)
    if database is not None:
        databases.append(database)
    elif counter is not None:
        counters.append(counter)
    else:
        unrelated.append(file.name)


def _without_old_versions(folder: FoundFolder) -> FoundFolder:
    """A database keeps its last version beside itself, under the same name with .old behind (openssl-ca(1))."""
    names = {one.file for one in folder.databases}
    return replace(
        folder,
        databases=tuple(
            one
            for one in folder.databases
            if one.file.removesuffix(".old") == one.file or one.file.removesuffix(".old") not in names
        ),
    )
