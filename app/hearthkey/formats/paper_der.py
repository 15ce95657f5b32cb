"""The content of the household's paper as DER, which any ASN.1 tool takes apart.

SEQUENCE {
    1, made                                   INTEGER; seconds since 1970, UTC
    name, host, identity suffix               UTF8String
    SEQUENCE { home subnets }, tunnel subnet  UTF8String, prefix notation
    SEQUENCE { DNS servers }, tunnel          UTF8String
    practice                                  INTEGER, 0 or 1
    key set of the gateway                    UTF8String
    list mark                                 INTEGER
    CA certificate, CA key                    OCTET STRING; X.509, and age under the passphrase
    SEQUENCE { SEQUENCE { serial, since, reason } }  INTEGER
    more withdrawn, living                    INTEGER
}
"""

from __future__ import annotations

import base64
import binascii
import ipaddress
from collections.abc import Sequence
from datetime import UTC, datetime
from typing import TypeVar

from hearthkey.core.certificates import serial_hex
from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.paper_contents import PaperContents, Withdrawn
from hearthkey.core.revocation import Reason
from hearthkey.formats import plain_der
from hearthkey.formats.plain_der import Value

VERSION = 1

_BEGIN, _END = "-----BEGIN AGE ENCRYPTED FILE-----", "-----END AGE ENCRYPTED FILE-----"
_COLUMNS = 64
T = TypeVar("T")


def encode(contents: PaperContents) -> bytes:
    """Write it."""
    household = contents.household
    withdrawn = [[int(one.serial, 16), int(one.since.timestamp()), int(one.reason)] for one in contents.withdrawn]
    parts: list[Value] = [
        VERSION,
        int(contents.made.timestamp()),
        household.name,
        household.gateway_host,
        household.identity_suffix,
        [str(one) for one in household.home_subnets],
        str(household.tunnel_subnet),
        list(household.dns_servers),
        household.tunnel,
        int(household.practice),
        contents.key_set,
        contents.list_mark,
        contents.certificate,
        contents.key,
        withdrawn,
        contents.more_withdrawn,
        contents.living,
    ]
    return plain_der.encode(parts)


def decode(data: bytes) -> PaperContents:
    """Read it; what it says of a household is checked by whoever founds one from it.

    Raises:
        Refused: paper-unreadable; paper-newer, for a version that this app does not know.
    """
    try:
        parts = _Parts(plain_der.decode(data))
        version = parts.next(int)
        if version != VERSION:
            raise Refused("paper-newer", seen=version, known=VERSION)
        read = _contents(parts)
    except (ValueError, TypeError, OverflowError, OSError):
        raise Refused("paper-unreadable") from None
    if encode(read) != data:
        raise Refused("paper-unreadable")
    return read


def _contents(parts: _Parts) -> PaperContents:
    made = _moment(parts.next(int))
    household = Household(
        name=parts.next(str),
        gateway_host=parts.next(str),
        identity_suffix=parts.next(str),
        home_subnets=tuple(ipaddress.ip_network(one) for one in parts.several(str)),
        tunnel_subnet=ipaddress.ip_network(parts.next(str)),
        dns_servers=tuple(parts.several(str)),
        tunnel=parts.next(str),
        practice=bool(parts.next(int)),
    )
    read = PaperContents(
        made=made,
        household=household,
        key_set=parts.next(str),
        list_mark=parts.next(int),
        certificate=parts.next(bytes),
        key=parts.next(bytes),
        withdrawn=tuple(_withdrawn(one) for one in parts.several(tuple)),
        more_withdrawn=parts.next(int),
        living=parts.next(int),
    )
    parts.end()
    return read


def _withdrawn(one: tuple[Value, ...]) -> Withdrawn:
    row = _Parts(one)
    found = Withdrawn(serial_hex(row.next(int)), _moment(row.next(int)), Reason(row.next(int)))
    row.end()
    return found


def _moment(seconds: int) -> datetime:
    return datetime.fromtimestamp(seconds, UTC)


class _Parts:
    """The parts of a SEQUENCE, each of the kind that is wanted; anything else is a TypeError or a ValueError."""

    def __init__(self, value: Value) -> None:
        if not isinstance(value, tuple):
            raise TypeError("no sequence")
        self._parts = iter(value)

    def next(self, kind: type[T]) -> T:
        found = next(self._parts, None)
        if not isinstance(found, kind):
            raise TypeError("another kind")
        return found

    def several(self, kind: type[T]) -> Sequence[T]:
        found: tuple[object, ...] = self.next(tuple)
        if not all(isinstance(one, kind) for one in found):
            raise TypeError("another kind")
        return [one for one in found if isinstance(one, kind)]

    def end(self) -> None:
        if next(self._parts, None) is not None:
            raise ValueError("something behind")


def key_octets(text: str) -> bytes:
    """The octets of an age text (its ASCII armour is PEM in the strict form of RFC 7468).

    Raises:
        Refused: paper-key-unfit, where the same text could not be made again from them.
    """
    try:
        octets = base64.b64decode("".join(text.split("\n")[1:-2]), validate=True)
    except binascii.Error:
        octets = b""
    if key_text(octets) != text:
        raise Refused("paper-key-unfit", length=len(text))
    return octets


def key_text(octets: bytes) -> str:
    """The age text of these octets."""
    body = base64.b64encode(octets).decode("ascii")
    rows = [body[at : at + _COLUMNS] for at in range(0, len(body), _COLUMNS)]
    return "\n".join([_BEGIN, *rows, _END, ""])
