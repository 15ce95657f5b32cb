"""The files of the gateway pack that are written from settings alone: sheet, Linux host, web front, groups."""

from __future__ import annotations

from collections.abc import Iterable

from hearthkey.core.errors import Refused
from hearthkey.core.host import host_facts, web_facts
from hearthkey.core.household import FormerHost, Gateway, Household
from hearthkey.core.keysets import KEY_SETS, KeySet, key_set
from hearthkey.core.pack import PackFile
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.passes import Pass
from hearthkey.core.target import IN_FORCE, Target
from hearthkey.core.tunnel import Terms, terms
from hearthkey.formats import gateway_sheet, groups, host_files, web_front
from hearthkey.pki import read

SOMEWHERE = "/srv/gateway"
"""Where the web front's file takes the set to lie while nobody has said so with an absolute path."""

OFFERED_GROUPS = ("ffdhe2048", "ffdhe3072", "ffdhe4096", "modp2048", "modp3072", "modp4096")
"""Of the named groups those that gateways are asked for; RFC 7919 and RFC 3526."""


def gateway_key_set(gateway: Gateway) -> KeySet:
    """The key set that a gateway's certificate was made with, by its key's type."""
    kind = read.certificate_facts(gateway.certificate).key_type
    return next((one for one in KEY_SETS.values() if one.key_type == kind), key_set("broad"))


def told(
    household: Household,
    gateway: Gateway,
    passes: Iterable[Pass],
    options: PackOptions,
    former: Iterable[FormerHost] = (),
) -> Terms:
    """Everything that a gateway is told.

    Args:
        passes: of all devices that get in, or would if they were not stopped.
        former: hosts that it still answers to.

    Raises:
        Refused: outer-mtu-odd.
    """
    return terms(
        household,
        gateway_key_set(gateway),
        device_key_sets=[key_set(name) for name in sorted({one.key_set for one in passes})],
        outer_mtu=options.outer_mtu,
        extra_secret=options.extra_secret,
        former=[one.host for one in former],
    )


def settings_files(facts: Terms, household: Household, options: PackOptions, target: Target | None) -> list[PackFile]:
    """Write them.

    Raises:
        Refused: as `core.host.host_facts` and `web_facts`.
    """
    texts = {"settings-sheet.txt": gateway_sheet.sheet(facts), **_host(facts, household, options)}
    if options.web_upstream:
        folder = target.folder if target is not None and target.folder.startswith("/") else SOMEWHERE
        front = web_facts(
            host=household.gateway_host,
            folder=f"{folder.rstrip('/')}/{IN_FORCE}",
            page=options.web_upstream,
            former=[one.value for one in facts.former],
        )
        texts["web-front.conf"] = web_front.server_block(front)
    texts |= {f"groups/{name}.pem": groups.parameters(groups.named(name)) for name in OFFERED_GROUPS}
    return [PackFile(name, text.encode()) for name, text in texts.items()]


def _host(facts: Terms, household: Household, options: PackOptions) -> dict[str, str]:
    """The files for a Linux host; none where tunnel and home have no IP version in common, which the sheet says."""
    try:
        host = host_facts(
            home_subnets=household.home_subnets,
            tunnel_subnets=(household.tunnel_subnet,),
            tunnel=household.tunnel,
            masquerade=options.masquerade,
            mss4=facts.mss4,
            mss6=facts.mss6,
            tunnel_interface=options.tunnel_interface,
            forwards_for_others=options.forwards_for_others,
        )
    except Refused as error:
        if error.code != "host-families-apart":
            raise
        return {}
    return {"nftables.conf": host_files.nftables(host), "sysctl.conf": host_files.sysctl(host)}
