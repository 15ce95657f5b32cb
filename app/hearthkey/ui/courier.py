"""Delivers by itself what must not wait: a new revocation list; and keeps trying while the gateway is away."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal

from hearthkey.core.delivery import Delivered
from hearthkey.core.errors import Cancelled, HearthkeyError, Unavailable
from hearthkey.core.in_force import GatewayState, Standing
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.gateway_errands import GatewayErrands

PAUSES = (5, 15, 30, 60, 120, 300)
"""Seconds until the next try after the first, second, ... failure; the last one goes on."""

LOOK_EVERY = 3600
"""Seconds between two looks at a gateway that owes nothing, and between two tries at one that refuses."""


class Courier(QObject):
    """Watches the snapshots and the visits, whoever asked for them, and delivers.

    Only the list sets out by itself; settings, certificates and keys wait for the householder's word.

    Signals:
        delivered: Delivered, where something was sent.
        failed: HearthkeyError of a visit, when it says something else than the visit before.
    """

    delivered = Signal(object)
    failed = Signal(object)

    def __init__(self, errands: GatewayErrands, parent: QObject) -> None:
        super().__init__(parent)
        self._errands = errands
        self._misses = 0
        self._missed_by = ""
        self._owed: object = None
        self._again = QTimer(self, singleShot=True)
        self._again.timeout.connect(self.due)
        errands.seen.connect(self.show_snapshot)
        errands.visited.connect(self._visited)
        errands.visit_failed.connect(self._missed)

    @property
    def pause(self) -> int | None:
        """Seconds until the next try or look, as the timer was set; None where none is to come."""
        return self._again.interval() // 1000 if self._again.isActive() else None

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Deliver where the list waits and nothing stands against it; begin to look once in a while."""
        state = snapshot.gateway_state
        if not may_deliver(snapshot):
            self._again.stop()
            self._owed = None
            return
        self._notice_news(snapshot)
        if urgent(state) and not self._misses:
            # Not at once: a visit's end is seen before it is told, and a failed one has to be told first.
            self._again.start(0)
        elif not self._again.isActive():
            self._again.start(1000 * LOOK_EVERY)

    def _notice_news(self, snapshot: Snapshot) -> None:
        """A newer list, another way to the gateway or an open key are worth a try without waiting for the next one."""
        owed = (snapshot.gateway_state.target, snapshot.gateway_state.newest_number, snapshot.locked)
        if owed != self._owed:
            self._owed = owed
            self._misses = 0

    def due(self) -> None:
        """Try now what is due: deliver a list that waits, else look."""
        snapshot = self._errands.last
        if snapshot is None or self._errands.visiting or not may_deliver(snapshot):
            return
        if urgent(snapshot.gateway_state):
            self._errands.deliver_list(self, None, _told_already)
        else:
            self._errands.look_at_gateway(self, None, _told_already)

    def _visited(self, result: object) -> None:
        self._misses, self._missed_by = 0, ""
        snapshot = self._errands.last
        more = snapshot is not None and urgent(snapshot.gateway_state)
        self._again.start(0 if more else 1000 * LOOK_EVERY)
        if isinstance(result, Delivered) and result.uploaded:
            self.delivered.emit(result)

    def _missed(self, error: HearthkeyError) -> None:
        if isinstance(error, Cancelled):
            pause = PAUSES[-1]
        elif isinstance(error, Unavailable):
            pause = PAUSES[min(self._misses, len(PAUSES) - 1)]
        else:
            pause = LOOK_EVERY
        self._misses += 1
        self._again.start(1000 * pause)
        if error.code != self._missed_by:
            self._missed_by = error.code
            self.failed.emit(error)


def _told_already(_error: HearthkeyError) -> None:
    """A visit's failure comes by the signal, whoever made the visit."""


def may_deliver(snapshot: Snapshot) -> bool:
    """Whether there is somewhere to deliver to, and it is for this copy of the app to do."""
    household = snapshot.household
    if household is None or household.practice or snapshot.read_only:
        return False
    return snapshot.gateway_state.target is not None


def urgent(state: GatewayState) -> bool:
    """Whether the gateway is known, or has to be feared, to hold an older list than the newest, or not to use it."""
    if state.standing is Standing.NOT_LOADED:
        return True
    behind = state.note.list_number is not None and state.note.list_number != state.newest_number
    return behind and state.standing in {Standing.WAITING, Standing.UNKNOWN}
