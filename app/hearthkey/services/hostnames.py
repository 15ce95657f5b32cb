"""Host names as people type them, turned into A-labels."""

from __future__ import annotations

import idna

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address, host_name


def to_ascii(text: str, what: str) -> str:
    """Turn a typed name into A-labels (RFC 5891; RFC 7296 section 3.5 wants them), lower case.

    Raises:
        Refused: as `core.names.host_name`.
    """
    name = text.strip().rstrip(".") if text.strip() != "." else ""
    if len(name) <= 1000 and not name.isascii():
        try:
            name = idna.encode(name, uts46=True).decode("ascii")
        except (idna.IDNAError, UnicodeError) as error:
            raise Refused("host-malformed", what=what, host=text[:80], label=text[:80]) from error
    return host_name(name, what)


def gateway_host(text: str) -> str:
    """A host name in A-labels, or an address in its shortest form.

    Raises:
        Refused: as `to_ascii`, and gateway-unreachable for addresses that are nobody's.
    """
    address = as_address(text)
    if address is None:
        return to_ascii(text, "gateway host")
    if address.is_unspecified or address.is_multicast:
        raise Refused("gateway-unreachable", host=str(address))
    return str(address)
