"""One check of the way in under way: asks, and tells each link as soon as it is known."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import dataclass

from hearthkey.core.errors import Cancelled
from hearthkey.core.host import IKE_PORT, NAT_PORT
from hearthkey.core.names import as_address
from hearthkey.core.reach.chain import Chain, Link, Place, Side, Verdict, in_order
from hearthkey.core.reach.scopes import Address
from hearthkey.formats.ike_first import Asked
from hearthkey.pki import key_exchange, read
from hearthkey.services import reach_front
from hearthkey.services import reach_links as links
from hearthkey.services.conversing import Conversation, Heard
from hearthkey.services.ports import Clock, Dice
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reach_ports import Answers, Datagrams, Dials, Failure, Known, NameServers, Packets, Peer, Stop

Tell = Callable[[Link], None]
"""Hears each link once."""
NAME_SECONDS = 2.5
"""With 3.5 s for the ports, 3 s for the web front and 2 s for a device there the whole takes eleven at most."""
_TICK = 0.1
"""Seconds: how soon a changed mind is noticed."""
_PORTS = (IKE_PORT, NAT_PORT)


@dataclass(frozen=True)
class World:
    """What a check needs from outside."""

    clock: Clock
    dice: Dice
    names: NameServers
    datagrams: Datagrams
    dials: Dials


class Walk:
    """One check.

    Args:
        plan: what to ask.
        world: through what.
        told: hears each link once.
        stop: whether the householder changed their mind.
    """

    def __init__(self, plan: CheckPlan, world: World, told: Tell, stop: Stop) -> None:
        self._plan = plan
        self._world = world
        self._told = told
        self._stop = stop
        self._links: list[Link] = []
        self._side = Side.NOWHERE
        self._here: dict[Peer, tuple[str, int]] = {}

    def whole(self) -> Chain:
        """Walk all of it.

        Raises:
            Cancelled: the householder changed their mind.
        """
        made = self._world.clock.now()
        addresses = self._look_up()
        talks = self._knock(addresses)
        self._judge(talks)
        self._front(addresses)
        return Chain(self._plan.host, made, self._side, in_order(self._links))

    def _tell(self, link: Link) -> None:
        self._links.append(link)
        self._told(link)

    def _go_on(self) -> None:
        if self._stop():
            raise Cancelled("cancelled")

    def _look_up(self) -> tuple[Address, ...]:
        """The addresses to ask: one of each IP version."""
        self._go_on()
        host, bare = self._plan.host, as_address(self._plan.host)
        answers = self._world.names(host, NAME_SECONDS) if bare is None else Answers(Known.FOUND, (bare,), 1)
        self._tell(links.name_link(self._plan, answers, NAME_SECONDS))
        found: dict[int, Address] = {}
        for one in answers.addresses:
            found.setdefault(one.version, one)
        return tuple(found[version] for version in sorted(found))

    def _knock(self, addresses: tuple[Address, ...]) -> list[tuple[Peer, Heard]]:
        """Ask every address on both ports, all at the same time."""
        self._go_on()
        peers = [Peer(address, port) for address in addresses for port in _PORTS]
        with self._world.datagrams(peers) as packets:
            self._here = {one: here for n, one in enumerate(peers) if (here := packets.here(n)) is not None}
            ours = [address for address, _ in self._here.values()]
            self._side = links.side_of(self._plan.household, ours, addresses, at_home=self._plan.at_home)
            unheard = [one for one in addresses if Peer(one, IKE_PORT) not in self._here]
            self._tell(links.address_link(self._plan, addresses, self._side, unheard))
            open_ones = {number: one for number, one in enumerate(peers) if one in self._here}
            talks = {number: self._conversation(one) for number, one in open_ones.items()}
            self._talk(packets, talks, open_ones)
        return [(open_ones[number], one.heard) for number, one in talks.items() if one.heard is not None]

    def _conversation(self, peer: Peer) -> Conversation:
        bits = self._world.dice.bits
        asked = Asked(
            initiator=(bits(64) or 1).to_bytes(8, "big"),
            nonce=bits(256).to_bytes(32, "big"),
            proposals=self._plan.proposals,
            hashes=self._plan.hashes,
            here=self._here[peer],
            there=(str(peer.address), peer.port),
        )
        return Conversation(
            asked,
            self._plan.groups,
            marked=peer.port == NAT_PORT,
            value=lambda group: key_exchange.public_value(group, bits),
        )

    def _talk(self, packets: Packets, talks: dict[int, Conversation], peers: dict[int, Peer]) -> None:
        """Lead all conversations to their ends; each port is told once all that is asked there has ended."""
        now = self._world.clock.monotonic
        waiting = list(_PORTS)
        for number, talk in talks.items():
            _send(packets, number, talk, talk.begin(now()))
        while True:
            ended = [port for port in waiting if _all_ended(port, talks, peers)]
            for port in ended:
                waiting.remove(port)
                heard = [(peers[n], one.heard) for n, one in talks.items() if peers[n].port == port and one.heard]
                self._tell(links.port_link(port, heard, self._side))
            if not waiting:
                return
            self._go_on()
            due = min(one.due for one in talks.values() if one.heard is None)
            for number, arrived in packets.wait(max(0.0, min(_TICK, due - now()))):
                if isinstance(arrived, Failure):
                    talks[number].fail(arrived)
                else:
                    _send(packets, number, talks[number], talks[number].hear(arrived, now()))
            for number, talk in talks.items():
                _send(packets, number, talk, talk.tick(now()))

    def _judge(self, talks: list[tuple[Peer, Heard]]) -> None:
        """What the gateway's own answer says."""
        self._go_on()
        talk = links.best(talks)
        self._tell(links.gateway_link(talk))
        self._tell(links.proposals_link(self._plan, talk))
        marks = [hashlib.sha1(read.public_of(one), usedforsecurity=False).digest() for one in self._plan.authorities]
        self._tell(links.trust_link(marks, talk))
        self._tell(links.rewritten_link(talk, None if talk is None else self._here[talk[0]]))
        if talk is not None and self._side is Side.OUTSIDE and links.comes_from(talk[1].message, talk[0].address):
            self._side = Side.INSIDE

    def _front(self, addresses: tuple[Address, ...]) -> None:
        """The web front, where the household has one; only there is a clock to be seen."""
        if not self._plan.web_front:
            self._tell(Link(Place.CLOCK, Verdict.UNKNOWN, "clock-untold"))
            return
        self._go_on()
        reachable = [one for one in addresses if Peer(one, IKE_PORT) in self._here]
        for link in reach_front.links(self._plan, reachable, self._side, self._world.dials, self._world.clock.now()):
            self._tell(link)
            self._go_on()


def _send(packets: Packets, number: int, talk: Conversation, data: bytes | None) -> None:
    if data is not None and (failure := packets.send(number, data)) is not None:
        talk.fail(failure)


def _all_ended(port: int, talks: dict[int, Conversation], peers: dict[int, Peer]) -> bool:
    return all(one.heard is not None for number, one in talks.items() if peers[number].port == port)
