"""A gateway's folder by ssh: the port's steps."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime

from hearthkey.adapters.gateway_ways.remote_folder import RemoteFolder, within
from hearthkey.adapters.gateway_ways.sftp_batch import PLAIN_NAME, folders
from hearthkey.adapters.gateway_ways.ssh_session import Limits, SshSession, connected
from hearthkey.adapters.gateway_ways.told import shown
from hearthkey.core.errors import Unavailable
from hearthkey.core.pack import PackFile
from hearthkey.core.target import IN_FORCE, SETS, Target
from hearthkey.services.gateway_ports import Gate, Ran

_NEXT = f"{IN_FORCE}.next"
"""The link that is about to become `in-force`."""


_STILL_THERE = frozenset({"gateway-full", "gateway-read-only", "gateway-odd"})
"""After these the connection is up, and what was begun can be taken away."""


class SshGate:
    """The port `services.gateway_ports.Gate`."""

    def __init__(self, session: SshSession, folder: str) -> None:
        self._session = session
        self._named = folder
        self._folder = RemoteFolder(session, folder)

    def room(self, name: str) -> Gate:
        """See the port."""
        self._folder.make_room(name)
        return SshGate(self._session, f"{self._named.rstrip('/')}/{name}")

    def in_force(self) -> str | None:
        """See the port."""
        found = self.look()
        if found is None:
            # A first switch may lack its last step; without posix-rename, any switch may.
            self._folder.all([f"rename {self._folder.at(_NEXT)} {self._folder.at(IN_FORCE)}"])
            found = self.look()
        return found

    def look(self) -> str | None:
        """The set that `in-force` leads to, as it stands.

        Raises:
            Unavailable: gateway-folder-missing, and as `SshSession.all`.
        """
        here, there = self._folder.leads_to(IN_FORCE)
        if there is None:
            return None
        above = f"{here.rstrip('/')}/{SETS}/"
        set_id = there.removeprefix(above)
        if not there.startswith(above) or not PLAIN_NAME.fullmatch(set_id):
            seen = shown(f"{IN_FORCE}: {there}".encode())
            raise Unavailable("gateway-odd", where=self._session.where, seen=seen)
        return set_id

    def read(self, set_id: str, names: Sequence[str], limit: int) -> dict[str, bytes]:
        """See the port."""
        return self._folder.read(set_id, names, limit) if names else {}

    def put_set(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str | None) -> None:
        """See the port. The set in force is mended file by file, where it is the one to be laid down."""
        mending = set_id == kept_from or set_id == self.in_force()
        if not mending:
            self._folder.remove([set_id])
        same = kept_from is None or kept_from == set_id
        try:
            self._folder.put(set_id, fresh, [] if same else kept, kept_from or set_id)
        except Unavailable as error:
            if error.code in _STILL_THERE and not mending:
                with contextlib.suppress(Unavailable):  # the first trouble is the one to tell
                    self._folder.remove([set_id])
            raise

    def switch(self, set_id: str) -> None:
        """See the port.

        A server with posix-rename@openssh.com replaces the link in one step. Any other one cannot: there the
        link is away for a moment, and a run that is cut off in it is finished by the next `in_force`.
        """
        following, now = self._folder.at(_NEXT), self._folder.at(IN_FORCE)
        self._folder.write([f"-rm {following}", f"ln -s {within(set_id)} {following}"])
        rename = f"rename {following} {now}"
        if self._session.until_one_fails([rename]) is not None:
            self._folder.write([f"-rm {now}", rename])

    def keep_only(self, set_ids: Iterable[str]) -> None:
        """See the port. Whatever is asked, the set in force stays."""
        keep = {*set_ids, self.in_force()}
        there = folders(self._folder.all([f"ls -ln {self._folder.at(SETS)}"])[0])
        self._folder.remove([one for one in there if one not in keep])

    def run(self, command: str) -> Ran:
        """See the port."""
        ended = self._session.command(command, self._session.limits.command)
        if ended.status is None:
            raise Unavailable("gateway-silent", where=self._session.where, seen=shown(ended.out) or "nothing")
        return Ran(ended.status, shown(ended.out))

    def now(self) -> datetime | None:
        """See the port. A folder that may only be read does not tell."""
        return self._folder.clock()


@contextmanager
def ssh_gate(target: Target, cancel: threading.Event | None, limits: Limits) -> Iterator[Gate]:
    """Connect, and look whether the folder is there.

    Raises:
        Cancelled: the householder changed their mind.
        Refused: host-key-unknown, host-key-changed.
        Unavailable: as `GatewayDoor.open`, and gateway-cut.
    """
    with connected(target, cancel, limits) as session:
        gate = SshGate(session, target.folder)
        gate.look()
        yield gate
