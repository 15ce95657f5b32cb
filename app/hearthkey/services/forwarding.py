"""Says what the router at home has to let through."""

from __future__ import annotations

from hearthkey.core.errors import Refused
from hearthkey.core.forwarding import ForwardingFacts, forwarding
from hearthkey.services.gateway_ports import GatewayRegister


class Forwarding:
    """The verb "forwarding-sheet". Nothing here writes a file: shells draw what they get."""

    def __init__(self, register: GatewayRegister) -> None:
        self._register = register

    def facts(self, *, inside: str | None = None, router: str | None = None) -> ForwardingFacts:
        """What the sheet says.

        Args:
            inside: the gateway's address at home, as typed.
            router: what the router's pages say is its address outside, as typed.

        Raises:
            Refused: no-household, gateway-inside-odd, gateway-inside-elsewhere, router-address-odd.
        """
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        web_front = bool(self._register.pack_options().web_upstream)
        return forwarding(household, web_front=web_front, inside=inside, router=router)
