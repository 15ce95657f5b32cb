"""What the gateway's own computer is told: facts for its packet rules, its kernel and its web front."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address, host_name
from hearthkey.core.network import FULL, Subnet, check_apart, tunnel_kind

IKE_PORT, NAT_PORT = 500, 4500
"""UDP. RFC 7296 sections 2 and 2.23: a gateway listens on both, devices behind a NAT move to the second."""

LONGEST_INTERFACE = 15
"""Characters: IFNAMSIZ of linux/if.h is 16, and the last of them is a NUL."""

LOWEST_MSS, HIGHEST_MSS = 536, {4: 65495, 6: 65475}
"""Octets. 536 is what every IPv4 host takes (RFC 9293 section 3.7.1); 65,535 less the two headers is the most."""

# The kernel takes more than this (dev_valid_name), but a star means "all that begin like it" to nft, and quotes,
# backslashes and blanks mean something to every file that such a name is written into.
_INTERFACE = re.compile(r"[A-Za-z0-9][A-Za-z0-9_.@+-]*")

_PAGE = re.compile(
    r"(https?)://(\[[0-9a-f:.]{2,45}\]|[a-z0-9.-]{1,253})(?::([0-9]{1,5}))?(/[A-Za-z0-9._~%/-]*)?", re.IGNORECASE
)
_WEB_PORTS = {"http": 80, "https": 443}


@dataclass(frozen=True)
class HostFacts:
    """What may pass through the gateway's computer; made by `host_facts`.

    Args:
        home_subnets: what devices reach.
        tunnel_subnets: where devices have their inner addresses; one family or both.
        full: whether all traffic of the devices goes through home.
        masquerade: whether devices appear at home under the gateway's own address.
        mss4, mss6: the largest TCP segment over either family in the tunnel, octets.
        outer_interface: where the internet is; empty where nobody said.
        tunnel_interface: where packets come out of the tunnel; empty where the kernel's own IPsec unpacks them.
        forwards_for_others: whether this computer is also the router of the house.
    """

    home_subnets: tuple[Subnet, ...]
    tunnel_subnets: tuple[Subnet, ...]
    full: bool
    masquerade: bool
    mss4: int
    mss6: int
    outer_interface: str = ""
    tunnel_interface: str = ""
    forwards_for_others: bool = False

    @property
    def families(self) -> tuple[int, ...]:
        """The IP versions inside the tunnel, 4 before 6."""
        return tuple(sorted({one.version for one in self.tunnel_subnets}))

    def home(self, family: int) -> tuple[Subnet, ...]:
        """The home subnets of an IP version."""
        return tuple(one for one in self.home_subnets if one.version == family)

    def tunnel(self, family: int) -> tuple[Subnet, ...]:
        """The tunnel's subnets of an IP version."""
        return tuple(one for one in self.tunnel_subnets if one.version == family)

    def mss(self, family: int) -> int:
        """The largest TCP segment over an IP version."""
        return self.mss4 if family == 4 else self.mss6


@dataclass(frozen=True)
class WebFacts:
    """What the web front is to do; made by `web_facts`.

    Args:
        host: the name or address that devices type, as certified for the gateway.
        folder: where the delivered files lie on the gateway, absolute, without a slash at the end.
        page: URL of the home's page, ending without a slash unless it has a path.
        port: TCP port that devices reach.
        addresses: where to listen; empty for every address of both families.
        former: names that devices with an older bundle type, in the same certificate.
    """

    host: str
    folder: str
    page: str
    port: int = 443
    addresses: tuple[str, ...] = ()
    former: tuple[str, ...] = ()


def interface_name(text: str, what: str) -> str:
    """Check the name of a network interface; empty stays empty.

    Raises:
        Refused: interface-odd.
    """
    name = text.strip()
    if name and (len(name) > LONGEST_INTERFACE or not _INTERFACE.fullmatch(name) or name == "lo"):
        raise Refused("interface-odd", what=what, text=name[:80], limit=LONGEST_INTERFACE)
    return name


def host_facts(
    *,
    home_subnets: Iterable[Subnet],
    tunnel_subnets: Iterable[Subnet],
    tunnel: str,
    masquerade: bool,
    mss4: int,
    mss6: int,
    outer_interface: str = "",
    tunnel_interface: str = "",
    forwards_for_others: bool = False,
) -> HostFacts:
    """Check what the files for the gateway's computer are made from.

    Args:
        tunnel: ``split`` or ``full``.

    Raises:
        Refused: interface-odd, interfaces-same, host-families-apart, mss-out-of-range; tunnel-kind-unknown,
            subnets-missing, subnets-overlap, subnet-too-small as in `core.network`.
    """
    homes, inner = tuple(home_subnets), tuple(tunnel_subnets)
    for place, one in enumerate(inner):
        check_apart((*homes, *inner[:place]), one)
    full = tunnel_kind(tunnel) == FULL
    outer = interface_name(outer_interface, "outer interface")
    inside = interface_name(tunnel_interface, "tunnel interface")
    if outer and outer == inside:
        raise Refused("interfaces-same", name=outer)
    for family, number in ((4, mss4), (6, mss6)):
        if not LOWEST_MSS <= number <= HIGHEST_MSS[family]:
            raise Refused(
                "mss-out-of-range", family=family, number=number, lowest=LOWEST_MSS, highest=HIGHEST_MSS[family]
            )
    facts = HostFacts(homes, inner, full, masquerade, mss4, mss6, outer, inside, forwards_for_others)
    if not inner or not (full or any(facts.home(family) for family in facts.families)):
        raise Refused("host-families-apart", home=tuple(map(str, homes)), tunnel=tuple(map(str, inner)))
    return facts


def web_facts(
    *,
    host: str,
    folder: str,
    page: str,
    port: int = 443,
    addresses: Iterable[str] = (),
    former: Iterable[str] = (),
) -> WebFacts:
    """Check what the web front's file is made from.

    Args:
        host: A-labels or an address.
        page: http or https URL of a page at home, without user, question mark or fragment.
        former: hosts that the gateway still answers to; addresses among them are left out, for whoever types one
            comes by another name in TLS or by none.

    Raises:
        Refused: web-folder-odd, web-page-odd, web-page-is-front, web-port-odd, web-listen-odd; host-empty,
            host-too-long, host-malformed as in `core.names`.
    """
    if not 1 <= port <= 65535:
        raise Refused("web-port-odd", number=port)
    # The file stands in quotes there, where nginx reads a backslash, a quote and a dollar (its variables).
    if not folder.startswith("/") or not folder.isprintable() or len(folder) > 500 or set(folder) & set('"\\$'):
        raise Refused("web-folder-odd", text=folder[:80])
    listen = tuple(_url_host(one) if as_address(one) is not None else _no_address(one) for one in addresses)
    name = _url_host(host)
    names = tuple(host_name(one) for one in former if as_address(one) is None)
    return WebFacts(name, folder.rstrip("/"), _page(page, name, port), port, listen, names)


def _no_address(text: str) -> str:
    raise Refused("web-listen-odd", text=text[:80])


def _url_host(text: str) -> str:
    """A host as URLs have it: RFC 3986 section 3.2.2 puts IPv6 addresses in brackets."""
    address = as_address(text)
    if address is None:
        return host_name(text)
    return f"[{address}]" if address.version == 6 else str(address)


def _page(text: str, front: str, front_port: int) -> str:
    found = _PAGE.fullmatch(text.strip())
    if found is None:
        raise Refused("web-page-odd", text=text[:80])
    scheme, host, port, path = found[1].lower(), _url_host(found[2]), found[3], found[4] or ""
    number = _WEB_PORTS[scheme] if port is None else int(port)
    if not 1 <= number <= 65535:
        raise Refused("web-page-odd", text=text[:80])
    if (host, number) == (front, front_port):
        raise Refused("web-page-is-front", text=text[:80])
    # nginx puts what follows the location's "/" behind the path, so a path has to end where a name may begin.
    path = "" if path == "/" else path + "/" * (bool(path) and not path.endswith("/"))
    return f"{scheme}://{host}{'' if port is None else f':{number}'}{path}"
