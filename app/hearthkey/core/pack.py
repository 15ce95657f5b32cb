"""The gateway pack: everything the gateway needs, as one set of files that belongs together."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

MANIFEST = "manifest.sha256"
"""Names every other file with its SHA-256, in the form that ``sha256sum --check`` reads."""

GATEWAY_CERTIFICATE, GATEWAY_KEY, AUTHORITY_CERTIFICATE = "gateway-certificate", "gateway-key", "ca-certificate"
"""Beginnings of names: each lies there as PEM and as DER."""

LIST_PEM, LIST_DER = "list.pem", "list.crl"
"""The revocation list in force (RFC 2585 section 3: DER in .crl)."""

CROSS_CERTIFICATE = "cross-certificate"
"""What the old CA says of the new one's key, while one follows the other."""


def second_name(name: str) -> str:
    """How the newer CA's file is called beside the older one's: "list.crl", "list-2.crl"."""
    stem, dot, ending = name.rpartition(".")
    return f"{stem}-2{dot}{ending}"


LIST_FILES = (LIST_PEM, LIST_DER, second_name(LIST_PEM), second_name(LIST_DER))
"""All files that differ with nothing but the revocation list; those of a second CA are there while there is one."""


@dataclass(frozen=True)
class PackFile:
    """One file of the pack.

    Args:
        name: relative to the set's folder, with ``/`` between the parts; ASCII, no part begins with a dot.
        data: the content.
        secret: whether it is to be readable by its owner alone (mode 0600 instead of 0644).
    """

    name: str
    data: bytes
    secret: bool = False

    @property
    def digest(self) -> str:
        """SHA-256 of the content, lower-case hex."""
        return hashlib.sha256(self.data).hexdigest()

    @property
    def mode(self) -> int:
        """The permission bits it is written with."""
        return 0o600 if self.secret else 0o644


@dataclass(frozen=True)
class Pack:
    """A whole set.

    Args:
        files: in the order of their names, the manifest among them.
        list_number: CRLNumber of the revocation list in it.
    """

    files: tuple[PackFile, ...]
    list_number: int

    def __getitem__(self, name: str) -> PackFile:
        for file in self.files:
            if file.name == name:
                return file
        raise KeyError(name)

    @property
    def names(self) -> tuple[str, ...]:
        """The names of all files."""
        return tuple(file.name for file in self.files)

    @property
    def set_id(self) -> str:
        """How this set is called at the gateway: the list's number, and 8 hex digits of the manifest's SHA-256."""
        return f"{self.list_number}-{self[MANIFEST].digest[:8]}"


def packed(files: Iterable[PackFile], list_number: int) -> Pack:
    """Put files together and write the manifest that names them."""
    ordered = sorted(files, key=lambda file: file.name)
    manifest = PackFile(MANIFEST, write_manifest({file.name: file.digest for file in ordered}, list_number))
    return Pack(tuple(sorted((*ordered, manifest), key=lambda file: file.name)), list_number)


def write_manifest(digests: Mapping[str, str], list_number: int) -> bytes:
    """Write a manifest; lines that begin with ``#`` are comments to sha256sum (GNU coreutils)."""
    lines = [f"# revocation list number {list_number}"]
    lines += [f"{digest}  {name}" for name, digest in sorted(digests.items())]
    return ("\n".join(lines) + "\n").encode("ascii")


def read_manifest(data: bytes) -> tuple[dict[str, str], int | None]:
    """Read a manifest that somebody else may have written: digests by name, and the list's number.

    A line that makes no sense is left out, so that its file counts as different.
    """
    digests: dict[str, str] = {}
    number: int | None = None
    for line in data.decode("ascii", "replace").splitlines():
        if line.startswith("# revocation list number ") and line.split()[-1].isdigit():
            number = int(line.split()[-1][:49])
            continue
        digest, gap, name = line.partition("  ")
        if gap and name and len(digest) == 64 and not set(digest) - set("0123456789abcdef"):
            digests[name] = digest
    return digests, number
