"""The verb "kinds": the householder's own device kinds are checked, kept, begun from ours, and taken away."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.errors import Refused
from hearthkey.core.kinds import DeviceKind, Kinds
from hearthkey.formats import kind_file
from hearthkey.services.kind_ports import KindShelf
from hearthkey.services.ports import Files


@dataclass(frozen=True)
class KindPlan:
    """An own kind about to be kept.

    Args:
        kind: as it was read.
        data: its file, as it was written.
        replaces: the kind of the same name that it stands for from then on, or None.
    """

    kind: DeviceKind
    data: bytes
    replaces: DeviceKind | None


class KeepingKinds:
    """What the householder does with kinds."""

    def __init__(self, shelf: KindShelf, files: Files) -> None:
        self._shelf = shelf
        self._files = files

    def all(self) -> Kinds:
        """All kinds as they are now.

        Raises:
            Unavailable: as the shelf.
        """
        return self._shelf.load()

    def preview(self, path: Path) -> KindPlan:
        """Check a file.

        Raises:
            Refused: file-missing, file-too-large, file-not-a-file, and as `formats.kind_file.read`.
            Unavailable: as the files.
        """
        return self.check(path.name, self._files.read(path, kind_file.LARGEST))

    def check(self, name: str, data: bytes) -> KindPlan:
        """Check what is to be a kind's file.

        Args:
            name: of the file, for the sentences.

        Raises:
            Refused: as `formats.kind_file.read`.
            Unavailable: as the shelf.
        """
        kind = kind_file.read(data, name, own=True)
        known = self.all()
        return KindPlan(kind, data, known.find(kind.name) if kind.name in known else None)

    def keep(self, plan: KindPlan) -> Path:
        """Keep it, and return where.

        Raises:
            Unavailable: disk-full, folder-read-only, folder-gone, write-failed.
        """
        return self._shelf.keep(plan.kind.name, plan.data)

    def remove(self, name: str) -> DeviceKind | None:
        """Take an own kind away, readable or not.

        Returns:
            Ours of that name, which stands again, or None where there is none.

        Raises:
            Refused: kind-not-own.
            Unavailable: folder-read-only.
        """
        if not self._shelf.forget(name):
            raise Refused("kind-not-own", name=name[:40])
        known = self.all()
        return known.find(name) if name in known else None

    def text_of(self, name: str) -> str:
        """The file of a kind as text, the householder's own before ours; readable or not.

        Raises:
            Refused: kind-unknown.
            Unavailable: as the shelf.
        """
        data = self._shelf.text_of(name)
        if data is None:
            raise Refused("kind-unknown", text=name[:40], known=self.all().names)
        return data.decode("utf-8", errors="replace")

    def start(self, name: str, path: Path) -> Path:
        """Write a copy of a kind's file, to be corrected.

        Raises:
            Refused: kind-unknown, kind-file-there.
            Unavailable: disk-full, folder-read-only, folder-gone, write-failed.
        """
        data = self._shelf.text_of(name)
        if data is None:
            raise Refused("kind-unknown", text=name[:40], known=self.all().names)
        if path.exists():
            raise Refused("kind-file-there", path=str(path))
        return self._files.write(path.parent, path.name, data)
