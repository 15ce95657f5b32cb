"""Programs beside the window that tell what they see, a line of JSON at a time."""

from __future__ import annotations

import json
import queue
import subprocess
import threading
from collections.abc import Callable, Mapping, Sequence
from types import TracebackType
from typing import Any, Self

import pytest

from tests.ui.leaving.test_real_drag import PATIENCE

Line = dict[str, Any]


class Witness:
    """One such program. What it said is kept in `said`, oldest first.

    Args:
        command: how it is started.
        surroundings: its environment.
    """

    def __init__(self, command: Sequence[str], surroundings: Mapping[str, str]) -> None:
        self.said: list[Line] = []
        self._lines: queue.Queue[Line | None] = queue.Queue()
        self._process = subprocess.Popen(
            command,
            env=surroundings,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )
        self._listening = threading.Thread(target=self._listen, daemon=True)
        self._listening.start()

    def __enter__(self) -> Self:
        """Wait until it is there."""
        self.until(lambda line: "ready" in line, "that it is ready")
        return self

    def __exit__(self, _kind: type[BaseException] | None, _error: object, _trace: TracebackType | None) -> None:
        """End it: its input ends."""
        if self._process.stdin is not None:
            self._process.stdin.close()
        try:
            self._process.wait(PATIENCE)
        except subprocess.TimeoutExpired:
            self._process.kill()
            self._process.wait(PATIENCE)
        self._listening.join(PATIENCE)
        if self._process.stdout is not None:
            self._process.stdout.close()

    def _listen(self) -> None:
        for line in self._process.stdout or ():
            self._lines.put(json.loads(line))
        self._lines.put(None)

    def until(self, wanted: Callable[[Line], bool], what: str) -> Line:
        """The next line that is wanted; those before it are kept in `said`."""
        while True:
            try:
                line = self._lines.get(timeout=PATIENCE)
            except queue.Empty:
                line = None
            if line is None:
                pytest.fail(f"awaited {what}; the last that was said: {self.said[-5:]}")
            self.said.append(line)
            if wanted(line):
                return line

    def catch_up(self) -> None:
        """Keep what was said by now in `said`, without waiting for more."""
        while True:
            try:
                line = self._lines.get_nowait()
            except queue.Empty:
                return
            if line is not None:
                self.said.append(line)

    def ask(self, answer: str, **words: object) -> Any:
        """Give it a line, and return that word of the next line that has it."""
        if self._process.stdin is None:
            raise RuntimeError("it has no standard input")
        self._process.stdin.write(json.dumps(words) + "\n")
        self._process.stdin.flush()
        return self.until(lambda line: answer in line, answer)[answer]
