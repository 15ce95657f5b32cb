"""Reads the table of subnets that devices meet away from home: resources/networks/common.toml."""

from __future__ import annotations

import ipaddress
import tomllib

from hearthkey.core.errors import Bug
from hearthkey.core.reach.clashes import CommonRange, Where

OFTEN = (1, 2, 3)
_KEYS = {"subnet", "drawn", "where", "often", "source"}


def read(data: bytes) -> tuple[CommonRange, ...]:
    """Read it; the file comes with the app, so what is wrong with it is our own fault.

    Raises:
        Bug: common-networks, with what was seen.
    """
    try:
        table = tomllib.loads(data.decode("utf-8"))
        return tuple(_range(one) for one in table["range"])
    except (ValueError, KeyError, TypeError, AttributeError) as error:
        raise Bug("common-networks", seen=repr(error)[:160]) from error


def _range(values: dict[str, object]) -> CommonRange:
    subnet = ipaddress.IPv4Network(str(values["subnet"]))
    drawn, often = values.get("drawn", subnet.prefixlen), values["often"]
    source = str(values["source"])
    if not isinstance(drawn, int) or not subnet.prefixlen <= drawn <= 32:
        raise ValueError("drawn", drawn)
    if (
        not isinstance(often, int)
        or isinstance(often, bool)
        or often not in OFTEN
        or not source.strip()
        or set(values) - _KEYS
    ):
        raise ValueError("row", values)
    return CommonRange(subnet, drawn, Where(str(values["where"])), often, source)
