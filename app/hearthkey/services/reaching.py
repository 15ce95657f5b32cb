"""The verb "check-way-in": walks the chain from a name to the gateway's answer, and says each link as it is known.

For a shell, in this order (`check` does all three in one thread):

    plan = reaching.prepare(CheckRequest(host=None, router=None, at_home=False))   # reads the register; any refusal
    chain = reaching.walk(plan, told, stop)       # no register, so any thread; at most about eleven seconds
    reaching.keep(chain)                          # writes the register; not where it is read-only
    reaching.last()                               # LastChecks(inside, outside): for the strip on the board

`told(link)` hears each `core.reach.chain.Link` once, in the order in which they become known; `plan.places` says which
there will be, in the order of the packet. `stop()` is asked between packets: True ends in `Cancelled`. Words for a
link, a whole chain and where the laptop stood: `core.sentences.way_in` (`link`, `headline`, `side`).

Nothing here runs by itself. A handful of small packets goes out; nothing is proved to the gateway. Only at the web
front, and only where that has shown the household's own certificate, one device whose bundle waits here is tried; its
key stays in memory.
"""

from __future__ import annotations

from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import key_set
from hearthkey.core.proposals import offered
from hearthkey.core.reach.chain import Chain, LastChecks, Side
from hearthkey.core.reach.scopes import router_address
from hearthkey.core.transforms import Protocol
from hearthkey.core.tunnel import SIGNINGS
from hearthkey.services import looking
from hearthkey.services.hostnames import gateway_host
from hearthkey.services.pack_files import gateway_key_set
from hearthkey.services.ports import Clock, Dice
from hearthkey.services.reach_plan import CheckPlan, Opens, trial
from hearthkey.services.reach_ports import CheckRegister, Datagrams, Dials, NameServers, Stop
from hearthkey.services.reach_walk import Tell, Walk, World


@dataclass(frozen=True)
class CheckRequest:
    """What to check.

    Args:
        host: a name or address as typed; the household's own where None.
        router: the address that the home's router says it has outside, as typed; None where nobody looked.
        at_home: the householder says that this laptop is at home, though its address does not tell.
    """

    host: str | None = None
    router: str | None = None
    at_home: bool = False


class Reaching:
    """The verb "check-way-in"."""

    def __init__(
        self,
        register: CheckRegister,
        clock: Clock,
        dice: Dice,
        names: NameServers,
        datagrams: Datagrams,
        dials: Dials,
        opens: Opens,
    ) -> None:
        self._register = register
        self._clock = clock
        self._opens = opens
        self._world = World(clock, dice, names, datagrams, dials)

    def prepare(self, request: CheckRequest) -> CheckPlan:
        """Decide what will be asked; nothing leaves this computer.

        Where the household has a web front, a bundle that waits is opened; a closed keyring is no error.

        Raises:
            Refused: no-household, router-address-odd; host-empty, host-too-long, host-malformed, gateway-unreachable.
        """
        household, gateway = self._register.household(), self._register.gateway()
        if household is None or gateway is None:
            raise Refused("no-household")
        now = self._clock.now()
        passes = looking.living(tuple(self._register.passes()), now)
        web_front = bool(self._register.pack_options().web_upstream)
        sets = tuple(key_set(name) for name in sorted({one.key_set for one in passes})) or (gateway_key_set(gateway),)
        return CheckPlan(
            household=household,
            host=household.gateway_host if request.host is None else gateway_host(request.host),
            router=None if request.router is None else router_address(request.router),
            at_home=request.at_home,
            proposals=tuple(one for one in offered(sets) if one.protocol is Protocol.IKE),
            hashes=tuple(dict.fromkeys(SIGNINGS[one.key_type].hash_number for one in sets)),
            authorities=tuple(one.certificate for one in self._register.authorities()),
            web_front=web_front,
            trial=trial(passes, now, self._opens) if web_front else None,
        )

    def walk(self, plan: CheckPlan, told: Tell, stop: Stop = lambda: False) -> Chain:
        """Ask, at most about eleven seconds long.

        Args:
            told: hears each link once, as soon as it is known; from this thread.
            stop: asked between packets.

        Raises:
            Cancelled: the householder changed their mind.
        """
        return Walk(plan, self._world, told, stop).whole()

    def keep(self, chain: Chain) -> None:
        """Keep what came of it, for good; a check from nowhere says nothing and is not kept.

        Raises:
            Unavailable: second-copy, where another copy of the app holds the household; as the register.
        """
        if chain.side is not Side.NOWHERE:
            with self._register.change() as change:
                change.keep_check(chain)

    def last(self) -> LastChecks:
        """The newest check from inside and from outside."""
        return self._register.last_checks()

    def check(self, request: CheckRequest, told: Tell, stop: Stop = lambda: False) -> Chain:
        """All of it, in one thread; where the register may only be read, nothing is kept.

        Raises:
            Refused, Cancelled, Unavailable: as the three steps.
        """
        chain = self.walk(self.prepare(request), told, stop)
        if not self._register.read_only:
            self.keep(chain)
        return chain
