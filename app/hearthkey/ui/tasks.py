"""Work off the window's thread: one lane for register and keyring, a small pool for the rest, one road back."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from typing import Any, TypeVar

import shiboken6
from PySide6.QtCore import QObject, Qt, Signal

from hearthkey.core.errors import Bug, HearthkeyError

T = TypeVar("T")
Then = Callable[[T], None]
Failed = Callable[[HearthkeyError], None]


class Tasks(QObject):
    """Runs work elsewhere and brings results home by one queued signal.

    A callback is tied to a context: if that object is gone when the result arrives, the result is
    dropped. Work never waits for a human, and nothing here runs a nested event loop.
    """

    _home = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._lane = ThreadPoolExecutor(max_workers=1, thread_name_prefix="household lane")
        self._pool = ThreadPoolExecutor(max_workers=2, thread_name_prefix="key maker")
        self._road = ThreadPoolExecutor(max_workers=1, thread_name_prefix="gateway road")
        self._home.connect(self._arrive, Qt.ConnectionType.QueuedConnection)
        self._begun: set[Future[Any]] = set()
        self._closed = False
        self.waiting = 0

    def lane(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        """Do something with the register or the keyring, after everything asked for earlier."""
        self._send(self._lane, work, context, then, failed)

    def pool(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        """Do something that needs neither register nor keyring."""
        self._send(self._pool, work, context, then, failed)

    def road(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        """Do something that may wait for the network as long as that takes, one at a time."""
        self._send(self._road, work, context, then, failed)

    def _send(
        self, where: ThreadPoolExecutor, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed
    ) -> None:
        if self._closed:
            return
        self.waiting += 1

        def done(future: Future[T]) -> None:
            # Runs on the worker's thread: only the signal crosses to the window's.
            self._home.emit((future, context, then, failed))

        future = where.submit(work)
        self._begun.add(future)
        future.add_done_callback(self._begun.discard)
        future.add_done_callback(done)

    def _arrive(self, parcel: tuple[Future[object], QObject, Then[object], Failed]) -> None:
        future, context, then, failed = parcel
        self.waiting -= 1
        if future.cancelled() or not shiboken6.isValid(context):
            return
        error = future.exception()
        if error is None:
            then(future.result())
        elif isinstance(error, HearthkeyError):
            failed(error)
        else:
            failed(Bug("unforeseen", seen=f"{type(error).__name__}: {error}"))

    def close(self, last: Callable[[], None] = lambda: None) -> None:
        """Drop what waits, let running work end, do one last thing on the lane, and take no more."""
        self._closed = True
        for future in tuple(self._begun):
            future.cancel()
        ended = self._lane.submit(last)
        self._lane.shutdown(wait=True)
        self._pool.shutdown(wait=True)
        self._road.shutdown(wait=True)
        ended.result()
