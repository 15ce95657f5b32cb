"""The name servers that this computer uses, asked with dnspython for both IP versions at the same time."""

from __future__ import annotations

import ipaddress
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import dns.exception
import dns.resolver

from hearthkey.core.reach.scopes import Address
from hearthkey.services.reach_ports import Answers, Known

_KEPT = 4
"""Addresses of each IP version that are handed on; the rest is counted."""


class NameServers:
    """The port `services.reach_ports.NameServers`.

    Args:
        settings: says which servers (resolv.conf(5)).
        port: UDP and TCP.
    """

    def __init__(self, settings: Path = Path("/etc/resolv.conf"), port: int = 53) -> None:
        self._settings = settings
        self._port = port

    def __call__(self, host: str, seconds: float) -> Answers:
        """See the port."""
        with ThreadPoolExecutor(2, "names") as crew:
            found = list(crew.map(lambda kind: self._ask(host, kind, seconds), ("A", "AAAA")))
        count = sum(len(some) for _, some, _ in found)
        if count:
            kept = tuple(one for _, some, _ in found for one in some[:_KEPT])
            return Answers(Known.FOUND, kept, count, min(ttl for _, some, ttl in found if some))
        states = {known for known, _, _ in found}
        return Answers(next((one for one in (Known.SILENT, Known.MISSING) if one in states), Known.EMPTY))

    def _ask(self, host: str, kind: str, seconds: float) -> tuple[Known, list[Address], int]:
        try:
            resolver = dns.resolver.Resolver(filename=str(self._settings))
            resolver.port = self._port
            answer = resolver.resolve(f"{host}.", kind, lifetime=seconds, raise_on_no_answer=False, search=False)
        except dns.resolver.NXDOMAIN:
            return Known.MISSING, [], 0
        except (dns.exception.DNSException, OSError, ValueError):  # no answer, a broken one, or nobody to ask
            return Known.SILENT, [], 0
        if answer.rrset is None:
            return Known.EMPTY, [], 0
        return Known.FOUND, sorted(ipaddress.ip_address(one.to_text()) for one in answer.rrset), answer.rrset.ttl
