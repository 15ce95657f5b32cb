"""What a gateway has to be told so that the household's devices get in, in the words of the standards."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterable
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.keysets import P_256, P_384, RSA_3072, SUITE_384, KeySet
from hearthkey.core.names import as_address
from hearthkey.core.network import FULL, Subnet
from hearthkey.core.proposals import Proposal, offered
from hearthkey.core.room import inner_mtu, mss
from hearthkey.core.transforms import Protocol

HOUR = 3600
LONGEST_REAUTHENTICATION = 24
"""Hours that a session lives on after its device was stopped, at the very most."""
IKE_REKEY, CHILD_REKEY = 4 * HOUR, 1 * HOUR
"""Seconds, both common practice; no RFC names a number, and RFC 7296 section 2.8 leaves it to either end."""
LONGEST_CHILD = 4 * HOUR
"""Seconds. What a child SA may live at most; common practice."""


@dataclass(frozen=True)
class Identity:
    """Who somebody is to IKE (RFC 7296 section 3.5).

    Args:
        kind: name of the ID type.
        number: ID type.
        value: a name in A-labels or an address as text.
    """

    kind: str
    number: int
    value: str


@dataclass(frozen=True)
class Signing:
    """How the holders of one type of key prove who they are.

    Args:
        key_type: see `core.keysets`.
        algorithm: of the Digital Signature method, number 14 (RFC 7427).
        hash_name, hash_number: hash algorithm of RFC 7427 section 7, as SIGNATURE_HASH_ALGORITHMS announces it.
        older, older_number: the method of those that do not know number 14.
    """

    key_type: str
    algorithm: str
    hash_name: str
    hash_number: int
    older: str
    older_number: int


# RFC 7427 section 7 (hashes); RFC 7296 section 3.8 (method 1) and RFC 4754 section 3 (methods 9 and 10). With
# method 14 RFC 8247 section 3.2 wants RSASSA-PSS where the key is RSA.
SIGNINGS = {
    RSA_3072: Signing(RSA_3072, "RSASSA-PSS", "SHA2-256", 2, "RSA Digital Signature", 1),
    P_256: Signing(P_256, "ecdsa-with-SHA256", "SHA2-256", 2, "ECDSA with SHA-256 on P-256", 9),
    P_384: Signing(P_384, "ecdsa-with-SHA384", "SHA2-384", 3, "ECDSA with SHA-384 on P-384", 10),
}


@dataclass(frozen=True)
class Selector:
    """Which traffic goes through the tunnel: any protocol, all ports (RFC 7296 section 3.13.1).

    Args:
        kind, number: TS type.
        first, last: addresses, inclusive.
        subnet: the same in prefix notation.
    """

    kind: str
    number: int
    first: str
    last: str
    subnet: Subnet


@dataclass(frozen=True)
class Pool:
    """Where devices get their inner addresses from.

    Args:
        subnet: all of it.
        first, last: what may be given out; the first is often the gateway's own.
        attribute, number: how one is handed over (RFC 7296 section 3.15.1).
    """

    subnet: Subnet
    first: str
    last: str
    attribute: str
    number: int


@dataclass(frozen=True)
class Server:
    """A DNS server handed to devices.

    Args:
        address: as text.
        attribute, number: how it is handed over (RFC 7296 section 3.15.1).
    """

    address: str
    attribute: str
    number: int


@dataclass(frozen=True)
class Terms:
    """Everything that a gateway is told; made by `terms`.

    Args:
        household: certified name.
        practice: whether no gateway may ever be told this.
        gateway: its identity, which is also in its certificate.
        former: identities that it had before, and still answers to; in its certificate too.
        identity_suffix: what the identities of devices end in, all of type ID_FQDN.
        gateway_signing: how the gateway proves itself.
        device_signings: how devices do.
        proposals: for IKE, then for ESP, the strongest of each first.
        suite: the name of the suite of RFC 9206 where nothing else is offered, else empty.
        reauthentication: seconds after which a device has to prove itself anew.
        home: traffic selectors for the gateway's side.
        full: whether all traffic of the devices goes through home.
        beside: IP versions that a full tunnel leaves outside.
        unreached: home subnets of an IP version that devices get no inner address of.
        pool: inner addresses.
        servers: DNS; may be empty.
        outer_mtu: octets of the way out of the house.
        inner_mtu: octets that a packet inside the tunnel may have at most.
        mss4, mss6: what TCP is told for it.
        extra_secret: whether devices have a secret beside the certificate (RFC 8784).
    """

    household: str
    practice: bool
    gateway: Identity
    former: tuple[Identity, ...]
    identity_suffix: str
    gateway_signing: Signing
    device_signings: tuple[Signing, ...]
    proposals: tuple[Proposal, ...]
    suite: str
    reauthentication: int
    home: tuple[Selector, ...]
    full: bool
    beside: tuple[int, ...]
    unreached: tuple[Subnet, ...]
    pool: Pool
    servers: tuple[Server, ...]
    outer_mtu: int
    inner_mtu: int
    mss4: int
    mss6: int
    extra_secret: bool

    def of(self, protocol: Protocol) -> tuple[Proposal, ...]:
        """The proposals for IKE or ESP."""
        return tuple(one for one in self.proposals if one.protocol is protocol)


def terms(
    household: Household,
    gateway_key_set: KeySet,
    *,
    device_key_sets: Iterable[KeySet] = (),
    outer_mtu: int = 1500,
    extra_secret: bool = False,
    former: Iterable[str] = (),
    reauthentication_hours: int = LONGEST_REAUTHENTICATION,
) -> Terms:
    """Work out what a gateway has to be told.

    Args:
        gateway_key_set: decides the gateway's own key.
        device_key_sets: those of all devices that get in; the gateway's is offered where there is none yet.
        former: hosts that the gateway still answers to beside the household's.
        outer_mtu: octets; 1500 on Ethernet, 1492 behind PPPoE (RFC 2516 section 7).
        reauthentication_hours: 1 to 24. Rekeying an IKE SA does not prove anything anew (RFC 7296 section 2.8.3), so
            this is how long the open session of a stolen device can live after it was stopped.

    Raises:
        Refused: reauthentication-odd, outer-mtu-odd; as `proposals.check`.
    """
    if not 1 <= reauthentication_hours <= LONGEST_REAUTHENTICATION:
        raise Refused("reauthentication-odd", hours=reauthentication_hours, longest=LONGEST_REAUTHENTICATION)
    key_sets = tuple(dict.fromkeys(device_key_sets)) or (gateway_key_set,)
    found = offered(key_sets)
    full = household.tunnel == FULL
    ours = {household.tunnel_subnet.version, *(one.version for one in household.home_subnets)}
    everywhere = tuple(_everything(family) for family in sorted(ours))
    room = _room(household.gateway_host, found, outer_mtu)
    return Terms(
        household=household.certified_name,
        practice=household.practice,
        gateway=identity(household.gateway_host),
        former=tuple(map(identity, former)),
        identity_suffix=household.identity_suffix,
        gateway_signing=SIGNINGS[gateway_key_set.key_type],
        device_signings=tuple(SIGNINGS[kind] for kind in dict.fromkeys(one.key_type for one in key_sets)),
        proposals=found,
        suite=SUITE_384.source if {gateway_key_set, *key_sets} == {SUITE_384} else "",
        reauthentication=reauthentication_hours * HOUR,
        home=tuple(map(selector, everywhere if full else household.home_subnets)),
        full=full,
        beside=tuple(family for family in (4, 6) if full and family not in ours),
        unreached=tuple(one for one in household.home_subnets if one.version != household.tunnel_subnet.version),
        pool=_pool(household.tunnel_subnet),
        servers=tuple(map(_server, household.dns_servers)),
        outer_mtu=outer_mtu,
        inner_mtu=room,
        mss4=mss(room, 4),
        mss6=mss(room, 6),
        extra_secret=extra_secret,
    )


def identity(host: str) -> Identity:
    """The gateway's identity: ID_FQDN for a name, ID_IPV4_ADDR or ID_IPV6_ADDR for an address.

    RFC 7296 section 3.5; RFC 4945 section 3.1 (it has to stand in the certificate, as dNSName or iPAddress).
    """
    address = as_address(host)
    if address is None:
        return Identity("ID_FQDN", 2, host)
    if address.version == 4:
        return Identity("ID_IPV4_ADDR", 1, str(address))
    return Identity("ID_IPV6_ADDR", 5, str(address))


def selector(subnet: Subnet) -> Selector:
    """A subnet as a traffic selector, which is a range (RFC 7296 section 3.13.1)."""
    kind, number = ("TS_IPV4_ADDR_RANGE", 7) if subnet.version == 4 else ("TS_IPV6_ADDR_RANGE", 8)
    return Selector(kind, number, str(subnet[0]), str(subnet[-1]), subnet)


def _everything(family: int) -> Subnet:
    return ipaddress.ip_network("0.0.0.0/0" if family == 4 else "::/0")


def _pool(subnet: Subnet) -> Pool:
    """Without its two ends: RFC 1122 section 3.2.1.3 for IPv4; RFC 4291 section 2.6.1 keeps the first of IPv6."""
    if subnet.version == 4:
        return Pool(subnet, str(subnet[1]), str(subnet[-2]), "INTERNAL_IP4_ADDRESS", 1)
    return Pool(subnet, str(subnet[1]), str(subnet[-1]), "INTERNAL_IP6_ADDRESS", 8)


def _server(address: str) -> Server:
    if ipaddress.ip_address(address).version == 4:
        return Server(address, "INTERNAL_IP4_DNS", 3)
    return Server(address, "INTERNAL_IP6_DNS", 10)


def _room(host: str, found: Iterable[Proposal], outer_mtu: int) -> int:
    """The inner MTU that fits every proposal, behind a NAT, and over IPv6 unless the host is an IPv4 address."""
    address = as_address(host)
    family = 4 if address is not None and address.version == 4 else 6
    return min(
        inner_mtu(
            outer_mtu,
            family=family,
            nat=True,
            encr=one.encryption.name,
            integ="" if one.integrity is None else one.integrity.name,
        )
        for one in found
        if one.protocol is Protocol.ESP
    )
