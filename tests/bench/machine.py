"""What this machine is, and how busy others keep it while we measure."""

from __future__ import annotations

import os
import platform
import shutil
import sqlite3
import ssl
import subprocess
import time
from importlib import import_module
from pathlib import Path

_STAT = Path("/proc/stat")
_IDLE = frozenset({3, 4})
"""Fields of the first line that are not work: idle and iowait (proc(5)); from the ninth on they count twice."""


def facts() -> str:
    """Processors and versions, three lines."""
    openssl = shutil.which("openssl")
    command = "no openssl command"
    if openssl:
        command = subprocess.run([openssl, "version"], check=True, capture_output=True, text=True).stdout.strip()
    # Loaded when it is asked for: each process that makes keys reads the modules of the bench first.
    backend = import_module("cryptography.hazmat.backends.openssl.backend").backend
    return (
        f"{os.cpu_count()} processors, {platform.machine()}, {platform.system()} {platform.release()}\n"
        f"Python {platform.python_version()} ({ssl.OPENSSL_VERSION}), SQLite {sqlite3.sqlite_version}\n"
        f"cryptography with {backend.openssl_version_text()}; the script: {command.partition(' (')[0]}\n"
    )


class Others:
    """Counts, from its making on, the processors that everybody but us and our ended children kept busy."""

    def __init__(self) -> None:
        self._began = time.perf_counter()
        self._busy = _all_busy()
        self._own = _own_busy()

    def processors(self) -> float | None:
        """A mean since the beginning; None where the system does not tell."""
        now = _all_busy()
        if now is None or self._busy is None:
            return None
        seconds = time.perf_counter() - self._began
        return max(0.0, now - self._busy - (_own_busy() - self._own)) / seconds


def _own_busy() -> float:
    return sum(os.times()[:4])


def _all_busy() -> float | None:
    """Seconds that all processors have worked, a hypervisor's theft included."""
    if not _STAT.exists():
        return None
    ticks = [int(field) for field in _STAT.read_text(encoding="ascii").split("\n", 1)[0].split()[1:9]]
    return sum(ticks[place] for place in range(len(ticks)) if place not in _IDLE) / os.sysconf("SC_CLK_TCK")
