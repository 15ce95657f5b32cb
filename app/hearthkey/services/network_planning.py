"""Works out the household's network plan: what can be said about the way in before anything is measured."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from hearthkey.core import network
from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.reach.clashes import CommonRange
from hearthkey.core.reach.plan import Known, NetworkPlan, plan
from hearthkey.services import looking
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.pack_files import told
from hearthkey.services.ports import Clock, Dice


@dataclass(frozen=True)
class PlanRequest:
    """What the householder asks about; None leaves it as it is, or unknown.

    Args:
        home_subnets, tunnel_subnet: in prefix notation, as if the household had these.
        outer_mtu: octets of the way out of the house.
        router: the address that the home's router says it has outside.
        upload: what the line sends, kbit/s.
        board: what the gateway encrypts, kbit/s.
    """

    home_subnets: Sequence[str] | None = None
    tunnel_subnet: str | None = None
    outer_mtu: int | None = None
    router: str | None = None
    upload: int | None = None
    board: int | None = None


class NetworkPlanning:
    """The verb "reach" where it only works things out."""

    def __init__(
        self, register: GatewayRegister, clock: Clock, dice: Dice, common: Callable[[], tuple[CommonRange, ...]]
    ) -> None:
        self._register = register
        self._clock = clock
        self._dice = dice
        self._common = common

    def plan(self, request: PlanRequest) -> NetworkPlan:
        """Work it out; nothing is changed, and nobody is asked.

        Raises:
            Refused: no-household, router-address-odd, rate-odd, outer-mtu-odd, no-quiet-subnet; subnet-malformed,
                subnet-has-host-bits, subnet-too-wide, subnet-too-small, subnets-missing, subnets-overlap.
        """
        household, gateway = self._register.household(), self._register.gateway()
        if household is None or gateway is None:
            raise Refused("no-household")
        asked = _asked(household, request)
        options, passes, now = self._register.pack_options(), tuple(self._register.passes()), self._clock.now()
        if request.outer_mtu is not None:
            options = replace(options, outer_mtu=request.outer_mtu)
        known = Known(
            household,
            self._common(),
            passes,
            now,
            told(asked, gateway, looking.living(passes, now), options),
            router=request.router,
            upload=request.upload,
            board=request.board,
        )
        return plan(asked, known, below=self._dice.below, identifier=self._dice.bits(64))


def _asked(household: Household, request: PlanRequest) -> Household:
    """The household, with the subnets that somebody asks about."""
    home, inner = household.home_subnets, household.tunnel_subnet
    if request.home_subnets is not None:
        home = tuple(network.subnet(one, "home subnet") for one in request.home_subnets)
    if request.tunnel_subnet is not None:
        inner = network.subnet(request.tunnel_subnet, "tunnel subnet")
    network.check_apart(home, inner)
    return replace(household, home_subnets=home, tunnel_subnet=inner)
