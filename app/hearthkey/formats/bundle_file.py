"""A bundle as one TOML file: settings in the standards' own terms, credentials inline as PEM.

UTF-8, TOML 1.0, at most 1 MiB, in the plain layout of `plain_toml`. Keys, all of them required:

    format = "hearthkey-bundle"     version = 1
    [household]    name; fingerprint (SHA-256 of the CA certificate's DER, 64 lower-case hex digits)
    [device]       name, kind, identity (ID_FQDN, RFC 7296 section 3.5), serial (lower-case hex, whole
                   octets), not_before and ends (offset date-times, both inclusive), key_set
    [gateway]      host (a DNS name or an address)
    [network]      home_subnets, tunnel_subnet (prefix notation), dns_servers, tunnel ("split" or "full")
    [ike]          transforms (IANA names, with the key length in bits), key_exchange (IANA number)
    [esp]          transforms
    [credentials]  encrypted_key (one "ENCRYPTED PRIVATE KEY", RFC 5958), certificate (one "CERTIFICATE"),
                   authorities (one to four "CERTIFICATE"); all RFC 7468

The same for readers elsewhere, with an example: resources/formats/bundle-1.md.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from hearthkey.core import names, network
from hearthkey.core.bundle import InlineBundle, Settings
from hearthkey.core.errors import Bug, Refused
from hearthkey.formats import pem
from hearthkey.formats.plain_toml import Lines, as_text, hidden_character, lines_of, values_of

FORMAT = "hearthkey-bundle"
VERSION = 1
LARGEST = 1 << 20
"""Octets."""
LONGEST_NAME = 160
"""Characters: a person's 64, a device's 64, and what stands between them."""
MOST_AUTHORITIES = 4

_WORD = re.compile(r"[a-z0-9][a-z0-9-]{0,39}")
_TRANSFORM = re.compile(r"[A-Z][A-Z0-9_]{1,60}(?: [1-9][0-9]{1,3})?")
_FORMAT_LINE = re.compile(rf'^format[ \t]*=[ \t]*["\']{FORMAT}["\'][ \t]*(?:#.*)?\r?$', re.MULTILINE)
_VERSION_LINE = re.compile(r"^version[ \t]*=[ \t]*([0-9]{1,9})[ \t]*(?:#.*)?\r?$", re.MULTILINE)

_HEAD = """\
# This file lets one device reach home: {device}, for {household}.
# It is of no use without its passphrase, which reaches you by another way: spoken, or on paper.
# Give the file to nobody, and delete it once the device gets in.
# Questions go to whoever looks after the gateway at home and gave you this file.

"""


@dataclass(frozen=True)
class _Field:
    """Where a setting stands: attribute of `Settings`, table, key, and what its value has to be."""

    attribute: str
    table: str
    key: str
    fits: Callable[[object], bool]


def file_name(settings: Settings) -> str:
    """Name the file: "ines-phone.bundle.toml"."""
    return names.file_stem(settings.device, settings.identity.split(".")[0]) + ".bundle.toml"


def write(inline: InlineBundle) -> bytes:
    """Write a bundle file: UTF-8, LF. `read` gives back the same value, with its dates in UTC.

    Raises:
        Bug: bundle-unwritable with `key`, for what `read` would refuse.
    """
    settings = inline.settings
    if not 0 < len(inline.authorities) <= MOST_AUTHORITIES:
        raise Bug("bundle-unwritable", key="credentials.authorities")
    lines = [f'format = "{FORMAT}"', f"version = {VERSION}"]
    table = ""
    for field in _FIELDS:
        if field.table != table:
            table = field.table
            lines += ["", f"[{table}]"]
        value = getattr(settings, field.attribute)
        if not field.fits(value):
            raise Bug("bundle-unwritable", key=_spelled(field.table, field.key))
        lines.append(f"{field.key} = {_as_toml(value)}")
    lines += [
        "",
        "[credentials]",
        f'encrypted_key = """\n{pem.encode(pem.ENCRYPTED_PRIVATE_KEY, inline.encrypted_key)}"""',
        f'certificate = """\n{pem.encode(pem.CERTIFICATE, inline.certificate)}"""',
        'authorities = """\n' + "".join(pem.encode(pem.CERTIFICATE, one) for one in inline.authorities) + '"""',
        "",
    ]
    return (_HEAD.format(device=settings.device, household=settings.household) + "\n".join(lines)).encode()


def read(data: bytes) -> InlineBundle:
    """Read a bundle file strictly; it may come from anybody.

    Raises:
        Refused: bundle-too-large (`size`, `limit`); all others with `line`, from 1: bundle-not-text,
            bundle-hidden-character (`character`), bundle-foreign, bundle-newer (`version`, `known`),
            bundle-line-unreadable; and with `key`, as "table.key": bundle-key-unknown, bundle-key-missing,
            bundle-value-unfit, bundle-credential-unreadable.
    """
    if len(data) > LARGEST:
        raise Refused("bundle-too-large", size=len(data), limit=LARGEST)
    text = as_text(data)
    _check_kind(text)
    lines = lines_of(text)
    _check_keys(lines)
    values = values_of(text)
    settings: dict[str, Any] = {}
    for field in _FIELDS:
        value = _table(values, field.table)[field.key]
        if isinstance(value, list):
            value = tuple(value)
        if not field.fits(value):
            raise _unfit(lines, field.table, field.key)
        settings[field.attribute] = value.astimezone(UTC) if isinstance(value, datetime) else value
    if settings["ends"] <= settings["not_before"]:
        raise _unfit(lines, "device", "ends")
    return InlineBundle(
        settings=Settings(**settings),
        encrypted_key=_credentials(values, lines, "encrypted_key", pem.ENCRYPTED_PRIVATE_KEY, 1)[0],
        certificate=_credentials(values, lines, "certificate", pem.CERTIFICATE, 1)[0],
        authorities=_credentials(values, lines, "authorities", pem.CERTIFICATE, MOST_AUTHORITIES),
    )


def _check_kind(text: str) -> None:
    """Tell another kind of file, and a newer bundle, before anything else about the text is judged."""
    top = re.split(r"^[ \t]*\[", text, maxsplit=1, flags=re.MULTILINE)[0]
    version = _VERSION_LINE.search(top)
    if _FORMAT_LINE.search(top) is None or version is None:
        raise Refused("bundle-foreign", line=1)
    if int(version[1]) != VERSION:
        line = text.count("\n", 0, version.start()) + 1
        if int(version[1]) < VERSION:
            raise Refused("bundle-foreign", line=line)
        raise Refused("bundle-newer", version=int(version[1]), known=VERSION, line=line)


def _check_keys(lines: Lines) -> None:
    """Every key of the schema, and no other."""
    for table, key in lines:
        if (table, key) not in _KEYS:
            raise Refused("bundle-key-unknown", line=lines[table, key], key=_spelled(table, key))
    for table, key in _KEYS:
        if (table, key) not in lines:
            raise Refused("bundle-key-missing", line=lines.get((table, ""), 1), key=_spelled(table, key))


def _credentials(values: dict[str, object], lines: Lines, key: str, label: str, most: int) -> tuple[bytes, ...]:
    """Read the PEM text under a key of [credentials]."""
    text = _table(values, "credentials")[key]
    line = lines["credentials", key]
    if not isinstance(text, str):
        raise _unfit(lines, "credentials", key)
    try:
        blocks = pem.decode(text, label)
    except Refused as error:
        # A multi-line string begins on the line after its key; TOML drops that first line end.
        within = error.facts["line"]
        line += within if isinstance(within, int) else 0
        raise Refused("bundle-credential-unreadable", line=line, key=_spelled("credentials", key)) from error
    if len(blocks) > most:
        raise _unfit(lines, "credentials", key)
    return tuple(blocks)


def _table(values: dict[str, object], table: str) -> dict[str, Any]:
    found = values[table]
    if not isinstance(found, dict):
        raise Bug("bundle-table-lost", table=table)
    return found


def _spelled(table: str, key: str) -> str:
    return ".".join(part for part in (table, key) if part)


def _unfit(lines: Lines, table: str, key: str) -> Refused:
    return Refused("bundle-value-unfit", line=lines[table, key], key=_spelled(table, key))


def _as_toml(value: object) -> str:
    if isinstance(value, tuple):
        return "[" + ", ".join(_as_toml(one) for one in value) + "]"
    if isinstance(value, datetime):
        return value.astimezone(UTC).isoformat().replace("+00:00", "Z")
    if isinstance(value, str):
        return '"' + value.replace("\\", "\\\\").replace('"', '\\"') + '"'
    return str(value)


def _name(value: object) -> bool:
    return isinstance(value, str) and 0 < len(value.strip()) <= LONGEST_NAME and _is_one_line(value)


def _is_one_line(value: str) -> bool:
    return hidden_character(value) is None and not any(character in "\t\r\n" for character in value)


def _like(pattern: re.Pattern[str]) -> Callable[[object], bool]:
    return lambda value: isinstance(value, str) and pattern.fullmatch(value) is not None


def _passes(check: Callable[[str], object]) -> Callable[[object], bool]:
    """Turn a check of the core, which refuses, into a yes or no; white space around a value is a no."""

    def fits(value: object) -> bool:
        if not isinstance(value, str) or value != "".join(value.split()):
            return False
        try:
            check(value)
        except Refused:
            return False
        return True

    return fits


def _each(fits: Callable[[object], bool], least: int) -> Callable[[object], bool]:
    return lambda value: isinstance(value, tuple) and len(value) >= least and all(fits(one) for one in value)


def _host(value: str) -> None:
    if names.as_address(value) is None:
        names.host_name(value)


def _moment(value: object) -> bool:
    return isinstance(value, datetime) and value.tzinfo is not None


def _method(value: object) -> bool:
    """A key exchange method number: 16 bits, none of them reserved 0 (RFC 7296 section 3.3.2)."""
    return type(value) is int and 0 < value <= 0xFFFF


_SUBNET = _passes(lambda text: network.subnet(text, "subnet"))
_TRANSFORMS = _each(_like(_TRANSFORM), 1)
_FIELDS = (
    _Field("household", "household", "name", _name),
    _Field("authority_fingerprint", "household", "fingerprint", _like(re.compile(r"[0-9a-f]{64}"))),
    _Field("device", "device", "name", _name),
    _Field("kind", "device", "kind", _like(_WORD)),
    _Field("identity", "device", "identity", _passes(names.host_name)),
    _Field("serial", "device", "serial", _like(re.compile(r"(?:[0-9a-f]{2}){1,20}"))),
    _Field("not_before", "device", "not_before", _moment),
    _Field("ends", "device", "ends", _moment),
    _Field("key_set", "device", "key_set", _like(_WORD)),
    _Field("gateway_host", "gateway", "host", _passes(_host)),
    _Field("home_subnets", "network", "home_subnets", _each(_SUBNET, 1)),
    _Field("tunnel_subnet", "network", "tunnel_subnet", _SUBNET),
    _Field("dns_servers", "network", "dns_servers", _each(_passes(network.dns_server), 0)),
    _Field("tunnel", "network", "tunnel", _passes(network.tunnel_kind)),
    _Field("ike", "ike", "transforms", _TRANSFORMS),
    _Field("key_exchange", "ike", "key_exchange", _method),
    _Field("esp", "esp", "transforms", _TRANSFORMS),
)
_KEYS = tuple(
    dict.fromkeys(
        [("", ""), ("", "format"), ("", "version")]
        + [place for field in _FIELDS for place in ((field.table, ""), (field.table, field.key))]
        + [("credentials", key) for key in ("", "encrypted_key", "certificate", "authorities")]
    )
)
