"""This laptop's addresses, asked of the system: `ip -j addr` (iproute2) and /sys/class/net (Linux)."""

from __future__ import annotations

import ipaddress
import json
import shutil
import subprocess
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from hearthkey.core.errors import Unavailable
from hearthkey.core.home_addresses import Found, medium_of

_TIMEOUT = 5
"""Seconds."""
_NO_LINK_LAYER = "65534"
"""ARPHRD_NONE in linux/if_arp.h: what goes in is a bare packet, as in every kind of tunnel."""
_INTERFACES = Path("/sys/class/net")


def home_addresses() -> tuple[Found, ...]:
    """Every address of every interface that is up.

    Raises:
        Unavailable: addresses-unknown.
    """
    program = shutil.which("ip", path="/usr/sbin:/usr/bin:/sbin:/bin")
    if program is None:
        raise Unavailable("addresses-unknown", seen="no ip (iproute2)")
    try:
        ran = subprocess.run(
            [program, "-j", "addr", "show", "up"],
            stdin=subprocess.DEVNULL,
            capture_output=True,
            check=True,
            timeout=_TIMEOUT,
        )
        return read(json.loads(ran.stdout), _INTERFACES)
    except (OSError, subprocess.SubprocessError, ValueError, KeyError, TypeError) as error:
        raise Unavailable("addresses-unknown", seen=type(error).__name__) from error


def read(told: Sequence[Mapping[str, Any]], interfaces: Path) -> tuple[Found, ...]:
    """Read what `ip` told.

    Args:
        told: its JSON.
        interfaces: the folder of the kernel that describes each interface (sysfs, class/net).
    """
    found: list[Found] = []
    for row in filter(None, told):  # where "up" is asked for, others are told as {}
        # "veth1@if2" is an interface and its peer.
        name = str(row["ifname"]).split("@", 1)[0]
        folder = interfaces / name
        medium = medium_of(
            name,
            wireless=(folder / "wireless").exists() or (folder / "phy80211").exists(),
            bridge=(folder / "bridge").exists(),
            tunnel=(folder / "tun_flags").exists() or _link_type(folder) == _NO_LINK_LAYER,
            loopback="LOOPBACK" in row["flags"],
            real=(folder / "device").exists() or not folder.exists(),
        )
        for one in row.get("addr_info", ()):
            # A temporary IPv6 address may go before the ticket does; a tentative one does not answer yet.
            if one.get("family") in {"inet", "inet6"} and not one.get("tentative") and not one.get("deprecated"):
                address = ipaddress.ip_address(one["local"])
                found.append(Found(name, medium, address, int(one["prefixlen"])))
    return tuple(found)


def _link_type(folder: Path) -> str:
    try:
        return (folder / "type").read_text(encoding="ascii").strip()
    except OSError:
        return ""
