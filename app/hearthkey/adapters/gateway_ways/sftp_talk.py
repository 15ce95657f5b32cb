"""Talks with a running sftp program: a command at a time, each with its answer."""

from __future__ import annotations

import os
import selectors
import threading
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from subprocess import Popen

from hearthkey.adapters.gateway_ways.children import CHUNK, KEPT, TURN, refuse_cancelled

_LONGEST = 2000
"""Octets of a command: sftp takes lines of 2,048 (seen with OpenSSH 9.2)."""


class TalkLateError(Exception):
    """No answer came in time. Carries what was said until then."""


class TalkOverError(Exception):
    """The program has ended, or was ended before. Carries its last words."""


@dataclass(frozen=True)
class Waiting:
    """How long to wait, and for what besides.

    Args:
        until: on the computer's monotonic clock.
        cancel: ends the program at once when set.
        each_turn: called some twenty times a second; what it raises ends the talk.
    """

    until: float
    cancel: threading.Event | None
    each_turn: Callable[[], None] = lambda: None


class SftpTalk:
    """What is said to sftp and by it, on one pipe each way.

    After every command it is asked for its local folder. The line that answers is known to nobody at the other
    end, whose words may come in between; so everything before it is the answer to the command.

    Args:
        process: `sftp -b -`, its standard error where its standard output goes.
        folder: its local folder, with a name that nobody can guess.
    """

    def __init__(self, process: Popen[bytes], folder: Path) -> None:
        self._process = process
        self._mark = f"Local working directory: {folder.resolve()}\n".encode()
        self._heard = bytearray()
        self._answer = bytearray()
        self._over = False
        if process.stdin is None or process.stdout is None:
            raise ValueError(process)
        self._in, self._out = process.stdin.fileno(), process.stdout.fileno()
        os.set_blocking(self._in, False)
        os.set_blocking(self._out, False)

    def ask(self, commands: Sequence[str], waiting: Waiting) -> list[bytes]:
        """Have commands worked through, whether or not one fails, and return the answer to each.

        Of an answer the beginning is kept. An empty command is answered with what was said so far.

        Raises:
            Cancelled: the householder changed their mind.
            TalkLateError: not in time.
            TalkOverError: the program has ended.
        """
        if self._over or any(len(one.encode()) > _LONGEST for one in commands):
            raise TalkOverError(b"" if self._over else b"The folder's name is too long.")
        self._over = True
        answers = self._asked(
            "".join(f"-{one}\nlpwd\n" if one else "lpwd\n" for one in commands), len(commands), waiting
        )
        self._over = False
        return answers

    def _asked(self, text: str, count: int, waiting: Waiting) -> list[bytes]:
        feed = memoryview(text.encode())
        answers: list[bytes] = []
        end = os.pidfd_open(self._process.pid)
        try:
            with selectors.DefaultSelector() as selector:
                selector.register(end, selectors.EVENT_READ)
                selector.register(self._out, selectors.EVENT_READ)
                selector.register(self._in, selectors.EVENT_WRITE)
                while len(answers) < count:
                    refuse_cancelled(waiting.cancel)
                    waiting.each_turn()
                    ready = {key.fd for key, _ in selector.select(self._left(waiting))}
                    if self._in in ready:
                        feed = self._say(feed)
                        if not feed:
                            selector.unregister(self._in)
                    if self._out in ready or end in ready:
                        answers += self._listen(last=end in ready)
                return answers
        finally:
            os.close(end)

    def _left(self, waiting: Waiting) -> float:
        left = waiting.until - time.monotonic()
        if left <= 0:
            raise TalkLateError(bytes(self._answer))
        return min(left, TURN)

    def _say(self, feed: memoryview) -> memoryview:
        try:
            return feed[os.write(self._in, feed[:CHUNK]) :]
        except BlockingIOError:
            return feed
        except BrokenPipeError:
            return feed[:0]

    def _listen(self, *, last: bool) -> list[bytes]:
        """Hear what is there now, and return the answers that it ends."""
        try:
            chunk = os.read(self._out, CHUNK)
        except BlockingIOError:
            chunk = b""
            if not last:
                return []
        if not chunk:
            self._take(len(self._heard))
            raise TalkOverError(bytes(self._answer))
        self._heard += chunk
        answers = []
        while (at := self._heard.find(self._mark)) >= 0:
            self._take(at)
            answers.append(bytes(self._answer))
            self._answer.clear()
            del self._heard[: len(self._mark)]
        # Whatever cannot be the beginning of the mark is part of the answer already.
        self._take(max(0, len(self._heard) - len(self._mark)))
        return answers

    def _take(self, count: int) -> None:
        self._answer += self._heard[: min(count, KEPT - len(self._answer))]
        del self._heard[:count]
