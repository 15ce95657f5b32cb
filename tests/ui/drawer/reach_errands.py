"""The way in's part of the errands' stand-in: worked out at once, from the household that is shown."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.bootstrap.reach import common_networks
from hearthkey.core.errors import Refused
from hearthkey.core.forwarding import ForwardingFacts, forwarding
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.reach.plan import Known, NetworkPlan, plan
from hearthkey.core.tunnel import terms
from hearthkey.formats.sheet import Block
from hearthkey.services.network_planning import PlanRequest
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.moving_errands import MovingFake


class ReachFake(MovingFake):
    """Quince Cottage, seen from outside.

    Attributes:
        sheets: what was written as PDF, with where.
    """

    sheets: tuple[tuple[tuple[Block, ...], Path], ...] = ()

    def plan_network(self, request: PlanRequest, context: QObject, then: Then[NetworkPlan], failed: Failed) -> None:
        """See the real one."""
        del context
        seen = self.last
        assert seen is not None
        assert seen.household is not None
        known = Known(
            seen.household,
            common_networks(),
            tuple(seen.passes),
            seen.at,
            terms(seen.household, KEY_SETS["broad"], outer_mtu=1500),
            router=request.router,
            upload=request.upload,
            board=request.board,
        )
        try:
            then(plan(seen.household, known, below=lambda limit: limit // 2, identifier=5))
        except Refused as error:
            failed(error)

    def forwarding(
        self, inside: str | None, router: str | None, context: QObject, then: Then[ForwardingFacts], failed: Failed
    ) -> None:
        """See the real one."""
        del context
        seen = self.last
        assert seen is not None
        assert seen.household is not None
        try:
            then(forwarding(seen.household, web_front=True, inside=inside, router=router))
        except Refused as error:
            failed(error)

    def print_sheet(
        self, sheet: tuple[Block, ...], folder: Path, name: str, context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """See the real one."""
        del context, failed
        self.sheets = (*self.sheets, (sheet, folder / name))
        then(folder / name)
