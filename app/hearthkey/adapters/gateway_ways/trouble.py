"""What the OpenSSH programs say when something is in the way, and which code tells it."""

from __future__ import annotations

import re
from collections.abc import Sequence

from hearthkey.adapters.gateway_ways.told import line_with, shown
from hearthkey.core.errors import HearthkeyError, Refused, Unavailable

_CONNECTING = (
    ("Could not resolve hostname", "gateway-name-unknown"),
    ("timed out during", "gateway-silent"),
    ("Timeout, server", "gateway-silent"),
    ("Connection timed out", "gateway-unreachable"),
    ("Connection refused", "gateway-unreachable"),
    ("No route to host", "gateway-unreachable"),
    ("Network is unreachable", "gateway-unreachable"),
    ("Host is down", "gateway-unreachable"),
    ("Permission denied (", "gateway-refused-us"),
    ("Too many authentication failures", "gateway-refused-us"),
    ("ubsystem request failed", "gateway-odd"),
    ("message too long", "gateway-odd"),
    ("Connection closed", "gateway-cut"),
    ("closed by remote host", "gateway-cut"),
    ("Connection reset", "gateway-cut"),
    ("Broken pipe", "gateway-cut"),
)

_STEPPING = (
    ("too long", "gateway-odd"),
    ("more data than", "gateway-odd"),
    ("mismatch", "gateway-odd"),
    ("Expected SSH2_FXP", "gateway-odd"),
    ("parse", "gateway-odd"),
    ("Timeout, server", "gateway-silent"),
)

_FINGERPRINT = re.compile(rb"SHA256:[A-Za-z0-9+/]{43}")


def of_connecting(where: str, said: bytes) -> HearthkeyError:
    """Why ssh did not come through."""
    if b"host key is known for" in said:
        return Refused("host-key-unknown", where=where, fingerprint="")
    if b"HOST IDENTIFICATION HAS CHANGED" in said:
        found = _FINGERPRINT.search(said)
        return Refused("host-key-changed", where=where, seen=found.group().decode() if found else "another one")
    if b"no matching host key type" in said:
        return Refused("host-key-changed", where=where, seen="one of another kind")
    code = _code(_CONNECTING, said, "gateway-odd")
    return Unavailable(code, where=where, seen=_seen(_CONNECTING, said))


def of_stepping(where: str, said: bytes) -> Unavailable:
    """Why sftp ended before its commands did."""
    code = _code(_STEPPING, said, "gateway-cut")
    return Unavailable(code, where=where, seen=_seen(_STEPPING, said))


def _code(table: Sequence[tuple[str, str]], said: bytes, otherwise: str) -> str:
    return next((code for part, code in table if part.encode() in said), otherwise)


def _seen(table: Sequence[tuple[str, str]], said: bytes) -> str:
    found = next((part for part, _ in table if part.encode() in said), None)
    return (shown(said) if found is None else line_with(said, found)) or "nothing"
