"""One connection to a gateway, however many steps are taken over it."""

from __future__ import annotations

import resource
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from subprocess import Popen

from hearthkey.adapters.gateway_ways import programs, trouble
from hearthkey.adapters.gateway_ways.children import Ended, refuse_cancelled, run, started
from hearthkey.adapters.gateway_ways.private_folder import private_folder
from hearthkey.adapters.gateway_ways.sftp_batch import complaint
from hearthkey.adapters.gateway_ways.sftp_talk import SftpTalk, TalkLateError, TalkOverError, Waiting
from hearthkey.adapters.gateway_ways.told import shown
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import Target


@dataclass(frozen=True)
class Limits:
    """How long a step may take, in seconds, and how much it may bring; then it is ended.

    Args:
        connect: reaching the gateway and being let in.
        step: a step with files.
        slowest: octets a second that a step with files is waited for besides.
        command: the householder's own command.
        together: so many octets are taken from a gateway at once, whatever its files are said to have.
    """

    connect: float = 30
    step: float = 60
    slowest: float = 2048
    command: float = 120
    together: int = 64 * 1024 * 1024


LIMITS = Limits()


class SshSession:
    """A connection that is up: sftp's own, which commands share.

    Args:
        folder: the visit's own folder, where its programs run.
    """

    def __init__(
        self, target: Target, cancel: threading.Event | None, limits: Limits, folder: Path, sftp: Popen[bytes]
    ) -> None:
        self.where = where(target)
        self.folder = folder
        self.limits = limits
        self._cancel = cancel
        self._sftp = sftp
        self._talk = SftpTalk(sftp, folder)

    def greet(self) -> None:
        """Wait until the connection is up.

        Raises:
            Cancelled: the householder changed their mind.
            Refused: host-key-unknown, host-key-changed.
            Unavailable: as `GatewayDoor.open`, and gateway-cut.
        """
        try:
            self._talk.ask([""], Waiting(time.monotonic() + self.limits.connect, self._cancel))
        except TalkOverError as error:
            raise trouble.of_connecting(self.where, error.args[0]) from error
        except TalkLateError as error:
            raise self._silent(error.args[0]) from error

    def all(
        self, commands: Sequence[str], *, largest: int | None = None, each_turn: Callable[[], None] = lambda: None
    ) -> list[bytes]:
        """Have sftp work through commands, whether or not one fails, and return the answer to each.

        Args:
            largest: octets that no file here may grow beyond.
            each_turn: as `sftp_talk.Waiting`.

        Raises:
            Cancelled: the householder changed their mind.
            Unavailable: gateway-silent, gateway-cut, gateway-odd.
        """
        if largest is not None:
            resource.prlimit(self._sftp.pid, resource.RLIMIT_FSIZE, (largest, resource.RLIM_INFINITY))
        return self._ask(commands, Waiting(time.monotonic() + self.limits.step, self._cancel, each_turn))

    def until_one_fails(self, commands: Sequence[str], *, octets: int = 0) -> tuple[str, bytes] | None:
        """Have sftp work through commands; where one fails, leave the others, and return it and what was said.

        Args:
            octets: how much is to be sent.

        Raises:
            Cancelled, Unavailable: as `all`.
        """
        waiting = Waiting(time.monotonic() + self.limits.step + octets / self.limits.slowest, self._cancel)
        for one in commands:
            said = complaint(self._ask([one.removeprefix("-")], waiting)[0])
            if said and not one.startswith("-"):
                return one, said
        return None

    def _ask(self, commands: Sequence[str], waiting: Waiting) -> list[bytes]:
        try:
            return self._talk.ask(commands, waiting)
        except TalkOverError as error:
            raise trouble.of_stepping(self.where, complaint(error.args[0])) from error
        except TalkLateError as error:
            raise self._silent(complaint(error.args[0])) from error

    def _silent(self, said: bytes) -> Unavailable:
        return Unavailable("gateway-silent", where=self.where, seen=shown(said) or "nothing")

    def command(self, text: str, seconds: float) -> Ended:
        """Run a command at the gateway; what it says comes together as `out`, status None at the time limit.

        Raises:
            Cancelled: the householder changed their mind.
            Unavailable: gateway-cut, gateway-odd.
        """
        ended = run(
            programs.command(self.folder / "m", text),
            env=programs.environment(),
            folder=self.folder,
            seconds=seconds,
            cancel=self._cancel,
            merged=True,
        )
        if ended.status == 255:
            # That is ssh's own word for a connection that ended, but a command may end with it too.
            self._ask(["cd ."], Waiting(time.monotonic() + self.limits.step, self._cancel))
        return ended


@contextmanager
def connected(target: Target, cancel: threading.Event | None, limits: Limits) -> Iterator[SshSession]:
    """Connect for the time of the block.

    Raises:
        Cancelled: the householder changed their mind.
        Refused: host-key-unknown, host-key-changed.
        Unavailable: as `GatewayDoor.open`, and gateway-cut.
    """
    if not target.host_key:
        raise Refused("host-key-unknown", where=where(target), fingerprint="")
    refuse_cancelled(cancel)
    with private_folder() as folder:
        known = folder / "known"
        known.write_text(f"{programs.ALIAS} {target.host_key}\n", encoding="utf-8")
        argv = programs.connecting(target, folder / "m", known)
        with started(argv, env=programs.environment(), folder=folder, merged=True) as sftp:
            session = SshSession(target, cancel, limits, folder, sftp)
            session.greet()
            yield session
