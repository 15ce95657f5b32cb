"""Starts verbs in processes that may be killed at a chosen moment; `child.py` is the other side."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from types import TracebackType
from typing import Self

ROOT = Path(__file__).parents[2]


@dataclass(frozen=True)
class Run:
    """How one run ended.

    Args:
        killed: whether it was killed, as it should be where a moment was chosen and reached.
        refusal: code of the error of ours that ended it, or None.
        trail: names of the moments that it came to, in order.
    """

    killed: bool
    refusal: str | None
    trail: tuple[str, ...]


class Nursery:
    """The process that all runs are copies of.

    Args:
        environment: of a login.
        scratch: an empty folder for trails.
    """

    def __init__(self, environment: dict[str, str], scratch: Path) -> None:
        self._scratch = scratch
        paths = os.pathsep.join((environment["PYTHONPATH"], str(ROOT)))
        self._process = subprocess.Popen(
            (sys.executable, "-m", "tests.crash.child"),
            env=environment | {"PYTHONPATH": paths},
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._process.communicate(timeout=60)

    def run(self, verb: str, data: Path, *, place: str, folder: Path, stop_at: int = 0, thin: bool = False) -> Run:
        """Run a verb, and kill it at its `stop_at`-th moment; `thin` as in `moments.Moments`."""
        trail, errors = self._scratch / "trail.txt", self._scratch / "errors.txt"
        errors.unlink(missing_ok=True)
        status = self._ask(
            {
                "verb": verb,
                "data": str(data),
                "folder": str(folder),
                "place": place,
                "stop_at": stop_at,
                "thin": thin,
                "trail": str(trail),
                "errors": str(errors),
            }
        )
        killed = os.WIFSIGNALED(status) and os.WTERMSIG(status) == signal.SIGKILL
        if status and not killed:
            raise RuntimeError(f"{verb} ended by itself with status {status}")
        refusal = errors.read_text(encoding="ascii") if errors.exists() else None
        return Run(killed, refusal, tuple(trail.read_text(encoding="utf-8").splitlines()))

    def list_devices(self, data: Path) -> tuple[int, dict[str, object]]:
        """Run `hearthkey list --json`; return its exit code and what it told."""
        told = self._scratch / "told.json"
        status = self._ask({"data": str(data), "told": str(told)})
        answer: dict[str, object] = json.loads(told.read_text(encoding="utf-8"))
        return os.waitstatus_to_exitcode(status), answer

    def _ask(self, order: dict[str, object]) -> int:
        if self._process.stdin is None or self._process.stdout is None:
            raise RuntimeError("the nursery has no pipes")
        self._process.stdin.write(json.dumps(order) + "\n")
        self._process.stdin.flush()
        return int(json.loads(self._process.stdout.readline()))
