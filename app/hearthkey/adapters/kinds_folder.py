"""The files of device kinds: a folder that came with the app, and the householder's own in the data folder."""

from __future__ import annotations

from pathlib import Path

from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.kinds import DeviceKind, Kinds, LeftOut
from hearthkey.formats import kind_file
from hearthkey.services.ports import Files

FOLDER = "kinds"
"""In the data folder."""
_MOST_OWN = 100
"""Files that are read of the own folder; nobody has that many kinds of devices."""


class KindsFolder:
    """The port `services.kind_ports.KindShelf`.

    Args:
        shipped: the folder that came with the app.
        own: the householder's; it need not exist.
        files: reads and writes them.
    """

    def __init__(self, shipped: Path, own: Path, files: Files) -> None:
        self._shipped = shipped
        self._own = own
        self._files = files

    def load(self) -> Kinds:
        """See the port."""
        found = {}
        for path in sorted(self._shipped.glob("*.toml")):
            kind = kind_file.read(path.read_bytes(), path.name)
            found[kind.name] = kind
        left_out = []
        for path in sorted(self._own.glob("*.toml"))[:_MOST_OWN]:
            try:
                kind = self._read_own(path)
            except Refused as trouble:
                left_out.append(LeftOut(path.name, trouble))
            except HearthkeyError as trouble:
                seen = str(trouble.facts.get("seen") or trouble.code)
                left_out.append(LeftOut(path.name, Refused("kind-file-closed", file=path.name, seen=seen)))
            else:
                found[kind.name] = kind
        return Kinds(tuple(sorted(found.values(), key=lambda one: (one.place, one.name))), tuple(left_out))

    def _read_own(self, path: Path) -> DeviceKind:
        kind = kind_file.read(self._files.read(path, kind_file.LARGEST), path.name, own=True)
        if kind_file.file_name(kind.name) != path.name:
            raise Refused("kind-file-called", file=path.name, name=kind.name)
        return kind

    def text_of(self, name: str) -> bytes | None:
        """See the port."""
        if not kind_file.is_name(name):  # what somebody typed may lead out of the folder
            return None
        own, shipped = (folder / kind_file.file_name(name) for folder in (self._own, self._shipped))
        if own.is_file():
            return self._files.read(own, kind_file.LARGEST)
        return shipped.read_bytes() if shipped.is_file() else None

    def keep(self, name: str, data: bytes) -> Path:
        """See the port."""
        try:
            self._own.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        except OSError as error:
            raise Unavailable("folder-read-only", path=str(self._own.parent), seen=error.strerror or "") from error
        return self._files.write(self._own, kind_file.file_name(name), data)

    def forget(self, name: str) -> bool:
        """See the port."""
        path = self._own / kind_file.file_name(name)
        if not kind_file.is_name(name) or not path.is_file():
            return False
        try:
            path.unlink()
        except OSError as error:
            raise Unavailable("folder-read-only", path=str(self._own), seen=error.strerror or "") from error
        return True
