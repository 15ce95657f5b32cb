"""The verb "prove": somebody outside opens a link through the tunnel, or tells that it works."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core import home_addresses, proofs, tickets
from hearthkey.core.errors import Refused
from hearthkey.core.home_addresses import HomeAddress, Standing
from hearthkey.core.household import Household
from hearthkey.core.network import FULL
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.proof_doors import ProofDoor
from hearthkey.core.proofs import Ground, Proof, Way
from hearthkey.core.renewal import works
from hearthkey.core.sentences import proofs as sentences
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.ports import Clock, Dice
from hearthkey.services.proof_desk import Door, OpenProof, keep
from hearthkey.services.ticket_ports import Addresses, Servers


@dataclass(frozen=True)
class ProofPlan:
    """A door about to be opened.

    Args:
        chosen: what is to be proved.
        address: where the server will be bound.
        ground: what addresses are judged by.
    """

    chosen: Pass
    address: HomeAddress
    ground: Ground


@dataclass(frozen=True)
class ToldPlan:
    """A proof about to be written down because somebody told of it.

    Args:
        chosen: what is to be proved.
        beside: an older pass of the device gets in as well; what is told is told of the new one.
    """

    chosen: Pass
    beside: bool = False


class Proving:
    """The verb "prove"."""

    def __init__(
        self, register: GatewayRegister, clock: Clock, dice: Dice, addresses: Addresses, servers: Servers
    ) -> None:
        self._register = register
        self._clock = clock
        self._dice = dice
        self._addresses = addresses
        self._servers = servers

    def addresses(self) -> tuple[HomeAddress, ...]:
        """This computer's addresses, those that devices in the tunnel can reach first.

        Raises:
            Refused: no-household.
            Unavailable: addresses-unknown.
        """
        household = self._household()
        return home_addresses.judged(self._addresses(), household.home_subnets, household.tunnel_subnet)

    def choose(self, passes: Sequence[Pass]) -> Pass:
        """Which pass of a device is to be proved: the newest handed-over one that gets in, else the newest.

        Raises:
            Refused: proof-not-in.
        """
        now = self._clock.now()
        alive = [one for one in passes if one.gets_in(now)]
        if not alive:
            raise Refused("proof-not-in", title=passes[-1].title, state=passes[-1].state(now).value)
        return next((one for one in reversed(alive) if one.handed_over is not None), alive[-1])

    def preview(self, chosen: Pass, address: str | None = None, inside: str | None = None) -> ProofPlan:
        """Decide where a door would be opened, and what will count.

        Args:
            chosen: a pass that gets in.
            address: an address or interface of this computer; the best one where nothing is said.
            inside: the gateway's own address at home, where it hides devices behind that.

        Raises:
            Refused: no-household, proof-not-in, proof-address-not-home, proof-inside-odd, proof-inside-own,
                proof-inside-needless, ticket-address-none, ticket-address-unknown, ticket-address-unfit.
            Unavailable: addresses-unknown.
        """
        self.choose([chosen])
        household, found = self._household(), self.addresses()
        where = home_addresses.chosen(found, address)
        if where.standing is Standing.NEAR and household.tunnel != FULL:
            raise Refused("proof-address-not-home", address=where.shown, home=tuple(map(str, household.home_subnets)))
        hides = self._register.pack_options().masquerade
        named = None
        if inside is not None:
            named = proofs.gateway_inside(inside, household, [one.address for one in found], hides=hides)
        return ProofPlan(chosen, where, proofs.ground(household, where.network, hides=hides, inside=named))

    def open(self, plan: ProofPlan) -> OpenProof:
        """Open the door.

        Raises:
            Unavailable: ticket-address-gone.
        """
        server = self._servers(plan.address.address)
        try:
            now = self._clock.now()
            door = Door(
                ProofDoor(
                    token=tickets.draw_token(self._dice.bits),
                    address=plan.address.address,
                    port=server.port,
                    opened=now,
                    until=now + tickets.LIFE,
                    by=plan.ground,
                ),
                self._clock,
            )
            server.start(door)
        except BaseException:
            server.close()
            raise
        return OpenProof(door, server, plan.chosen, self._register, self._clock)

    def preview_told(self, chosen: Pass) -> ToldPlan:
        """Check whether what somebody told of a pass can be true.

        Raises:
            Refused: proof-not-in.
        """
        now = self._clock.now()
        mine = [one for one in self._register.passes() if one.identity == chosen.identity and works(one, now)]
        return ToldPlan(self.choose([chosen]), beside=bool({one.serial for one in mine} - {chosen.serial}))

    def told(self, plan: ToldPlan) -> Changes:
        """Write it down; that is final, like every proof.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.kept_told(plan.chosen, beside=plan.beside)
        keep(self._register, plan.chosen, Proof(self._clock.now(), Way.TOLD), sentence, self._clock)
        return Changes(sentence, serials=(plan.chosen.serial,))

    def _household(self) -> Household:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        return household
