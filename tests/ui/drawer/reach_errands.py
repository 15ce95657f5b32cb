"""The way in's part of the errands' stand-in: worked out at once, from the household that is shown."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.bootstrap.reach import common_networks
from hearthkey.core.errors import Cancelled, Refused
from hearthkey.core.forwarding import ForwardingFacts, forwarding
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.reach.chain import Chain, LastChecks, Side
from hearthkey.core.reach.plan import Known, NetworkPlan, plan
from hearthkey.core.tunnel import terms
from hearthkey.formats.sheet import Block
from hearthkey.services.network_planning import PlanRequest
from hearthkey.services.reaching import CheckRequest
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.moving_errands import MovingFake


class ReachFake(MovingFake):
    """Quince Cottage, seen from outside.

    Attributes:
        sheets: what was written as PDF, with where.
        chain: what the next check finds.
        checks_asked: what was asked for, in order.
        under_way: who hears of the check that is under way.
    """

    sheets: tuple[tuple[tuple[Block, ...], Path], ...] = ()
    chain: Chain | None = None
    checks_asked: tuple[CheckRequest, ...] = ()
    under_way: tuple[Then[Chain], Failed] | None = None

    def check_way_in(self, request: CheckRequest, context: QObject, then: Then[Chain], failed: Failed) -> None:
        """See the real one; the links come with `go_on`."""
        del context
        self.checks_asked = (*self.checks_asked, request)
        assert self.chain is not None
        self.under_way = (then, failed)
        self.check_planned.emit(tuple(one.place for one in self.chain.links))

    def go_on(self) -> None:
        """Let the check find everything."""
        assert self.chain is not None
        assert self.under_way is not None
        assert self.last is not None
        for link in self.chain.links:
            self.link_known.emit(link)
        kept = LastChecks(None, self.chain) if self.chain.side is Side.OUTSIDE else LastChecks(self.chain, None)
        self.last = replace(self.last, way_in=kept)
        self.seen.emit(self.last)
        self.under_way[0](self.chain)

    def cancel_check(self) -> None:
        """See the real one."""
        assert self.under_way is not None
        self.under_way[1](Cancelled("cancelled"))

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
