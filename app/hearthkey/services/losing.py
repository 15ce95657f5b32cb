"""Stops a lost device by whatever stops it now: the next list while unlocked, else one signed in advance."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, SparePlanned, StopPlan
from hearthkey.services.opening import Keyholder
from hearthkey.services.sparing import Sparing
from hearthkey.services.stopping import Stopping


class Losing:
    """The verb "stop", for whoever does not care by which list."""

    def __init__(self, keyholder: Keyholder, stopping: Stopping, sparing: Sparing) -> None:
        self._keyholder = keyholder
        self._stopping = stopping
        self._sparing = sparing

    def preview(self, passes: Sequence[Pass]) -> StopPlan | SparePlanned:
        """Decide how a device is stopped.

        Returns:
            A `StopPlan`, which wants the CA key, only where the household is unlocked or no list lies ready.

        Raises:
            Refused: already-stopped, pass-not-alive.
        """
        if self._keyholder.locked:
            try:
                return self._sparing.preview_stop(passes)
            except Refused as error:
                if error.code != "no-spare-list":
                    raise
        return self._stopping.preview_stop(passes)

    def stop(self, plan: StopPlan | SparePlanned) -> Changes:
        """Stop it.

        Raises:
            Refused: as `Stopping.stop` and `Sparing.stop`.
            Unavailable: as the register.
        """
        return self._sparing.stop(plan) if isinstance(plan, SparePlanned) else self._stopping.stop(plan)
