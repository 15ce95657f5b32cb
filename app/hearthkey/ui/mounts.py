"""Hears when something is mounted or unmounted, which is when a stick comes or goes."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QObject, QSocketNotifier, QTimer, Signal

TABLE = Path("/proc/self/mounts")
"""The kernel marks this file as exceptional when the table changes (proc_pid_mounts(5))."""

SETTLING = 700
"""Milliseconds after the last change: a stick with several volumes comes piece by piece."""


class Mounts(QObject):
    """Tells of changes; where the kernel does not say so, it never does.

    Signals:
        changed: something was mounted or unmounted a moment ago.
    """

    changed = Signal()

    def __init__(self, parent: QObject | None = None, table: Path = TABLE) -> None:
        super().__init__(parent)
        self._rest = QTimer(self, singleShot=True, interval=SETTLING)
        self._rest.timeout.connect(self.changed)
        self._handle = -1
        self._notifier: QSocketNotifier | None = None
        with suppress(OSError):
            self._handle = os.open(table, os.O_RDONLY)
            self._notifier = QSocketNotifier(self._handle, QSocketNotifier.Type.Exception, self)
            self._notifier.activated.connect(self._rest.start)

    def close(self) -> None:
        """Listen no more."""
        if self._notifier is not None:
            self._notifier.setEnabled(False)
            self._notifier = None
            os.close(self._handle)
