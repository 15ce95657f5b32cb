"""Which names people, devices, households and hosts may have."""

from __future__ import annotations

import ipaddress
import re
import unicodedata

from hearthkey.core.errors import Refused

LONGEST_NAME = 64
"""Characters. RFC 5280 appendix A.1: ub-organization-name and ub-common-name are 64."""

LONGEST_SUFFIX = 53
"""Characters. An identity is eight characters, two marks and the suffix, and has to fit a CommonName."""

_LABEL = re.compile(r"[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?")

# Unicode 15, chapter 23.2 and UAX #9: these turn the direction of the text around them, so that a
# name could show something other than what is signed. Right-to-left letters are welcome.
_DIRECTION_MARKS = frozenset("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")


def display_name(text: str, what: str) -> str:
    """Check a name that people read, and return it in NFC without outer or double spaces.

    Args:
        text: as typed.
        what: which name this is, in words, for the sentence ("household name").

    Raises:
        Refused: name-empty, name-too-long, name-unprintable.
    """
    name = unicodedata.normalize("NFC", text)
    for place, character in enumerate(name, 1):
        category = unicodedata.category(character)
        if category in {"Cc", "Cs", "Co", "Cn", "Zl", "Zp"} or character in _DIRECTION_MARKS:
            raise Refused("name-unprintable", what=what, place=place, character=f"U+{ord(character):04X}")
    name = " ".join(name.split())
    if not any(unicodedata.category(character)[0] in "LN" for character in name):
        raise Refused("name-empty", what=what)
    if len(name) > LONGEST_NAME:
        raise Refused("name-too-long", what=what, limit=LONGEST_NAME, length=len(name))
    return name


def host_name(ascii_text: str, what: str = "host name") -> str:
    """Check a DNS name in A-label form, and return it in lower case without a trailing dot.

    RFC 1123 section 2.1 (letters, digits, hyphens; labels of 1 to 63 octets) and RFC 1035 section
    3.1 (253 octets as text). A wildcard is refused: RFC 4945 section 5.1.3.6.

    Raises:
        Refused: host-empty, host-too-long, host-malformed.
    """
    name = ascii_text.strip().lower().removesuffix(".")
    if not name:
        raise Refused("host-empty", what=what)
    if len(name) > 253:
        raise Refused("host-too-long", what=what, length=len(name))
    for label in name.split("."):
        if not _LABEL.fullmatch(label):
            raise Refused("host-malformed", what=what, host=name, label=label)
    if name.rsplit(".", 1)[-1].isdigit():
        raise Refused("host-malformed", what=what, host=name, label=name.rsplit(".", 1)[-1])
    return name


def as_address(text: str) -> ipaddress.IPv4Address | ipaddress.IPv6Address | None:
    """Return the address that a host is written as, or None for a name.

    One with a zone ("fe80::1%wlan0", RFC 4007 section 11) means something on one computer only, so it is none.
    """
    if "%" in text:
        return None
    try:
        return ipaddress.ip_address(text.strip().strip("[]"))
    except ValueError:
        return None


def default_suffix(gateway_host: str) -> str:
    """Propose the identity suffix for a gateway host.

    The host without its first label, where two labels remain; else the host itself. An address has
    none, so the zone for homes is taken: home.arpa, RFC 8375.
    """
    if as_address(gateway_host) is not None:
        return "home.arpa"
    labels = gateway_host.split(".")
    return ".".join(labels[1:]) if len(labels) > 2 else gateway_host


def identity_suffix(ascii_text: str) -> str:
    """Check the part that every device identity ends in.

    Raises:
        Refused: as `host_name`, and suffix-too-long.
    """
    suffix = host_name(ascii_text, "identity suffix")
    if len(suffix) > LONGEST_SUFFIX:
        raise Refused("suffix-too-long", length=len(suffix), limit=LONGEST_SUFFIX)
    return suffix


def file_stem(text: str, otherwise: str) -> str:
    """Turn a name into a file name's beginning that every file system takes.

    Accents are dropped, other scripts fall back to `otherwise` (an identity code, for instance).
    """
    plain = unicodedata.normalize("NFKD", text.replace("’", "'")).encode("ascii", "ignore").decode().lower()
    whose = re.sub(r"'s\b|'", "", plain)
    stem = re.sub(r"[^a-z0-9]+", "-", whose).strip("-")[:48].strip("-")
    return stem or otherwise
