"""A gateway's folder by ssh: what it takes to read, write and remove sets in it, each step a batch of sftp."""

from __future__ import annotations

import os
import shutil
import stat
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from hearthkey.adapters.gateway_ways.sftp_batch import at_home, complaint, folders, free, place, quoted
from hearthkey.adapters.gateway_ways.ssh_session import SshSession
from hearthkey.adapters.gateway_ways.told import shown
from hearthkey.core.errors import Unavailable
from hearthkey.core.pack import PackFile
from hearthkey.core.target import SETS

HALF = ".half"
"""The temporary name of a file while it is written; no file of a pack begins with a dot."""

_PROBE = ".hearthkey-probe"

_SLACK = 256 * 1024
"""sftp writes a file in pieces of up to that and gives up the piece that goes over the limit."""

_DEEPEST, _MOST_FOLDERS = 4, 200
"""Folders within a set that are looked into when it is removed."""

_LARGEST_KEPT = 16 * 1024 * 1024
"""Octets of a file that is fetched to be sent again, where the server cannot link."""


def within(set_id: str, name: str = "") -> str:
    """A set's folder, or a file in it, as sftp is told it."""
    return f"{SETS}/{set_id}/{quoted(name)}" if name else f"{SETS}/{set_id}"


@dataclass(frozen=True)
class _Sending:
    """A file on its way."""

    local: str
    name: str
    mode: int
    size: int


class RemoteFolder:
    """The folder of a target.

    Args:
        folder: as the householder wrote it.
    """

    def __init__(self, session: SshSession, folder: str) -> None:
        self._session = session
        self._root = quoted(at_home(folder))

    def at(self, name: str) -> str:
        """A name in the folder, as sftp is told it; a pattern is not escaped."""
        return f"{self._root.rstrip('/')}/{name}"

    def make_room(self, name: str) -> None:
        """Make a folder in it that its owner alone can read; one that is there stays.

        Raises:
            Unavailable: as `write`.
        """
        self.write([f"-mkdir {self.at(name)}", f"chmod 700 {self.at(name)}"])

    def leads_to(self, link: str) -> tuple[str, str | None]:
        """Where the folder is, and where a link in it leads; None where it is missing.

        sftp has no command to read a link, but it can go there and say where it is.

        Raises:
            Unavailable: gateway-folder-missing, and as `SshSession.all`.
        """
        steps = ["cd", "pwd", f"cd {self._root}", "pwd", "cd", f"cd {self.at(link)}", "pwd", "cd"]
        answers = self._session.all(steps)
        home, here, there = (place(answers[step]) for step in (1, 3, 6))
        if here == home and complaint(answers[2]):
            raise Unavailable("gateway-folder-missing", where=self._session.where, seen=shown(complaint(answers[2])))
        return here, None if there == home else there

    def all(self, commands: Sequence[str]) -> list[bytes]:
        """See `SshSession.all`."""
        return self._session.all(commands)

    def write(self, commands: Sequence[str], *, octets: int = 0) -> None:
        """Work through commands; the first that fails without a ``-`` before it ends it.

        Raises:
            Unavailable: gateway-full, gateway-read-only, and as `SshSession.all`.
        """
        failed = self._session.until_one_fails(commands, octets=octets)
        if failed is not None:
            raise self.why_not(failed[1], octets)

    def why_not(self, said: bytes, octets: int) -> Unavailable:
        """Why something could not be written. A server says "Failure" for most of it, so the disk is asked.

        SSH_FXP_STATUS knows no code for a full or a read-only disk (draft-ietf-secsh-filexfer-02 section 7).
        """
        seen, where = shown(said) or "nothing", self._session.where
        probe = self.at(_PROBE)
        asked = [f"df {self._root}", f"df -i {self._root}", f"rmdir {probe}", f"mkdir {probe}", f"rmdir {probe}"]
        answers = self._session.all(asked)
        room, names = free(answers[0]), free(answers[1])
        if names == 0 or (room is not None and (room == 0 or room * 1024 < octets)):
            return Unavailable("gateway-full", where=where, seen=seen)
        if complaint(answers[3]) or b"Permission denied" in said:
            return Unavailable("gateway-read-only", where=where, seen=seen)
        return Unavailable("gateway-odd", where=where, seen=seen)

    # Reading

    def read(self, set_id: str, names: Sequence[str], limit: int) -> dict[str, bytes]:
        """See the port."""
        with self._desk() as desk:
            gets = [f"get {self.at(within(set_id, name))} {desk.name}/{row}" for row, name in enumerate(names)]
            self._fetch(desk, gets, limit)
            found = {name: desk / str(row) for row, name in enumerate(names) if (desk / str(row)).is_file()}
            return {name: _beginning(path, limit) for name, path in found.items()}

    def _fetch(self, desk: Path, gets: Sequence[str], limit: int) -> None:
        together = self._session.limits.together

        def watch() -> None:
            if sum(one.stat().st_size for one in os.scandir(desk)) > together:
                raise Unavailable("gateway-odd", where=self._session.where, seen=f"over {together} octets")

        for answer in self._session.all(gets, largest=limit + _SLACK, each_turn=watch):
            if b"No space left on device" in answer:
                # The other end's full disk is a mere "Failure", so these are words of this computer.
                raise Unavailable("disk-full", path=str(desk), seen=shown(complaint(answer)))

    def clock(self) -> datetime | None:
        """The time that the server gives to a new file; None where none can be made, or it has no time.

        So that no command has to run there: many accounts for files run none, and it takes a hundredth of the time.
        """
        with self._desk() as desk:
            (desk / "new").touch()
            probe, copy = self.at(_PROBE), desk / "copy"
            asked = [f"rm {probe}", f"put {desk.name}/new {probe}", f"get -p {probe} {desk.name}/copy", f"rm {probe}"]
            answers = self._session.all(asked)
            if complaint(answers[1]) or complaint(answers[2]) or not copy.is_file():
                return None
            seconds = int(copy.stat().st_mtime)
        return datetime.fromtimestamp(seconds, UTC) if seconds else None

    @contextmanager
    def _desk(self) -> Iterator[Path]:
        """A folder for files on their way, for as long as the block."""
        desk = self._session.folder / "desk"
        desk.mkdir(mode=0o700)
        try:
            yield desk
        finally:
            shutil.rmtree(desk, ignore_errors=True)

    # Writing

    def put(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str) -> None:
        """Put files into a set's folder, which is made where it is missing.

        Args:
            kept: files to be linked there from the set `kept_from`; where the server cannot link, they are
                fetched and sent again.
        """
        names = [*(file.name for file in fresh), *kept]
        places = [SETS, within(set_id), *(within(set_id, parent) for parent in _parents(names))]
        self._session.all([f"mkdir {self.at(one)}" for one in places])
        with self._desk() as desk:
            sending = [_laid_out(desk, file, row) for row, file in enumerate(fresh)]
            links = [f"ln {self.at(within(kept_from, one))} {self.at(within(set_id, one))}" for one in kept]
            if self._session.until_one_fails(links) is not None:
                sending += self._fetched(desk, kept_from, kept)
            for one in sending:
                self._send(set_id, one)

    def _send(self, set_id: str, one: _Sending) -> None:
        """Write a file under a temporary name, have it flushed to the disk (fsync@openssh.com), give it its name.

        A server makes a file with the mode that the local one has, less its umask, so that a secret is never
        readable for others; the mode of the rest is set afterwards, whatever the umask.
        """
        half, name = self.at(within(set_id, HALF)), self.at(within(set_id, one.name))
        self.write([f"-rm {half}", f"put -f {one.local} {half}", f"-chmod {one.mode:o} {half}"], octets=one.size)
        if self._session.until_one_fails([f"rename {half} {name}"]) is not None:
            # A server without posix-rename@openssh.com does not rename onto a file that is there.
            self.write([f"-rm {name}", f"rename {half} {name}"])

    def _fetched(self, desk: Path, set_id: str, names: Sequence[str]) -> list[_Sending]:
        gets = [f"get -p {self.at(within(set_id, name))} {desk.name}/kept-{row}" for row, name in enumerate(names)]
        self._fetch(desk, gets, _LARGEST_KEPT)
        found = []
        for row, name in enumerate(names):
            path = desk / f"kept-{row}"
            if not path.is_file():
                raise Unavailable("gateway-odd", where=self._session.where, seen=f"{name} has gone")
            known = path.stat()
            found.append(_Sending(f"{desk.name}/{path.name}", name, stat.S_IMODE(known.st_mode), known.st_size))
        return found

    # Removing

    def remove(self, set_ids: Sequence[str]) -> None:
        """Remove sets; what cannot be removed stays. A link is never followed."""
        tree = self._tree([within(one) for one in set_ids])
        if not tree:
            return
        commands: list[str] = []
        for folder in map(self.at, reversed(tree)):
            commands += [f"rm {folder}/{HALF}", f"rm {folder}/*", f"rmdir {folder}"]
        self._session.all(commands)

    def _tree(self, tops: Iterable[str]) -> list[str]:
        """These folders and those within them, each before its own; those that are there and no links."""
        level, found = [*tops], [*tops]
        for _ in range(_DEEPEST):
            if not level or len(found) > _MOST_FOLDERS:
                break
            listed = self._session.all([f"ls -ln {self.at(folder)}" for folder in level])
            level = [f"{above}/{name}" for above, out in zip(level, listed, strict=True) for name in folders(out)]
            found += level
        return found


def _parents(names: Iterable[str]) -> list[str]:
    """The folders that names lie in, each before those within it."""
    found: set[str] = set()
    for name in names:
        parts = name.split("/")[:-1]
        found |= {"/".join(parts[: depth + 1]) for depth in range(len(parts))}
    return sorted(found)


def _laid_out(desk: Path, file: PackFile, row: int) -> _Sending:
    path = desk / str(row)
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, file.mode)
    with os.fdopen(handle, "wb") as out:
        os.fchmod(handle, file.mode)
        out.write(file.data)
    return _Sending(f"{desk.name}/{row}", file.name, file.mode, len(file.data))


def _beginning(path: Path, limit: int) -> bytes:
    with path.open("rb") as file:
        return file.read(limit)
