"""What is weak or broken in a household that was made by hand, and how grave that is."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from hearthkey.core.found_home import HIGHEST_NUMBER, FoundHome, is_gateway, may_be_device
from hearthkey.core.found_household import IKE_USE, SERVER_USE, Finding, FoundCertificate, Grave, KeyLock

SMALLEST_RSA, LARGEST_RSA = 2048, 8192
AUTHORITY_KINDS = ("P-256", "P-384", "P-521")
ENDS_SOON = timedelta(days=825)
"""A gateway's certificate lives that long at most: a CA with less to go cuts the next one short."""

_OLD_HASHES = ("md2", "md4", "md5", "sha1")
_STOPS, _BREAKS, _WEAK, _NOTE = Grave.STOPS, Grave.BREAKS, Grave.WEAK, Grave.NOTE
_ORDER = {grave: place for place, grave in enumerate(Grave)}


@dataclass(frozen=True)
class Gathered:
    """Findings that say the same, told once.

    Args:
        first: one of them.
        files: all of them, each once.
    """

    first: Finding
    files: tuple[str, ...]


def gather(findings: Iterable[Finding]) -> tuple[Gathered, ...]:
    """Put findings of one code together, the gravest first."""
    by: dict[str, list[Finding]] = {}
    for one in findings:
        by.setdefault(one.code, []).append(one)
    gathered = [Gathered(some[0], tuple(dict.fromkeys(one.file for one in some if one.file))) for some in by.values()]
    return tuple(sorted(gathered, key=lambda one: _ORDER[one.first.grave]))


def all_findings(home: FoundHome, *, published: frozenset[str], now: datetime) -> tuple[Finding, ...]:
    """Everything worth saying.

    Args:
        published: prints of public keys whose private half anybody has.
        now: UTC.
    """
    found = [*_about_authority(home, published, now), *_about_keys(home)]
    for one in home.issued:
        found += _about_issued(home, one, now)
    found += [*_about_lists(home, now), *_about_serials(home, now), *_about_the_rest(home), *home.folder.findings]
    return tuple(found)


def _about_authority(home: FoundHome, published: frozenset[str], now: datetime) -> Iterator[Finding]:
    one = home.authority
    if one is None:
        code = "authority-not-top" if home.others else "authority-missing"
        yield Finding(code, home.others[0].file if home.others else "", _STOPS, "RFC 5280 section 4.2.1.9")
        return
    yield from _about_its_power(one, published)
    if now > one.not_after:
        yield Finding("authority-ended", one.file, _STOPS, "RFC 5280 section 4.1.2.5", {"end": one.not_after})
    elif now < one.not_before:
        yield Finding("authority-not-yet", one.file, _STOPS, "RFC 5280 section 4.1.2.5", {"begin": one.not_before})
    elif one.not_after - now < ENDS_SOON:
        yield Finding("authority-ends-soon", one.file, _WEAK, "RFC 5280 section 4.1.2.5", {"end": one.not_after})
    if one.path_length == 0:
        yield Finding("authority-path-length", one.file, _WEAK, "RFC 5280 section 4.2.1.9")
    if not one.has_identifier:
        yield Finding("authority-no-identifier", one.file, _WEAK, "RFC 5280 section 4.2.1.2")
    if _is_old(one.hash_name):
        yield Finding("authority-old-hash", one.file, _NOTE, "RFC 5280 section 6.1.1", {"hash": one.hash_name.upper()})


def _about_its_power(one: FoundCertificate, published: frozenset[str]) -> Iterator[Finding]:
    """Whether it may sign at all, and whether what it signs is worth anything."""
    what = {"name": one.subject}
    if one.public in published:
        yield Finding("authority-test-key", one.file, _STOPS, "RFC 9500 sections 2.1 and 2.3", what)
    if not one.is_authority:
        yield Finding("authority-is-none", one.file, _STOPS, "RFC 5280 section 4.2.1.9", what)
    if not one.signs_certificates:
        yield Finding("authority-may-not-sign", one.file, _STOPS, "RFC 5280 section 4.2.1.3", what)
    elif not one.signs_lists:
        yield Finding("authority-may-not-list", one.file, _STOPS, "RFC 5280 section 4.2.1.3", what)
    if 0 < one.bits < SMALLEST_RSA:
        yield Finding("authority-key-small", one.file, _STOPS, "SP 800-131A section 3", {"type": one.key_type})
    elif one.bits > LARGEST_RSA or (not one.bits and one.key_type not in AUTHORITY_KINDS):
        yield Finding("authority-key-kind", one.file, _STOPS, "RFC 8247 section 3.1", {"type": one.key_type})


def _is_old(hash_name: str) -> bool:
    return any(old in hash_name.replace("-", "") for old in _OLD_HASHES)


def _about_keys(home: FoundHome) -> Iterator[Finding]:
    owners = {one.public: one for one in (*home.issued, *([home.authority] if home.authority else []))}
    if home.authority is not None and home.key is None:
        code = "authority-key-locked" if home.folder.locked else "authority-key-missing"
        locked = [one.file for one in home.folder.keys if one.public is None]
        yield Finding(code, next(iter(locked), ""), _STOPS, "RFC 5280 section 4.2.1.9")
    for key in home.folder.keys:
        owner = None if key.public is None else owners.get(key.public)
        if key.public is not None and owner is None:
            yield Finding("key-of-nothing", key.file, _NOTE, "RFC 5280 section 4.1.2.7")
        elif key.lock is KeyLock.OPEN and owner is home.authority:
            yield Finding("authority-key-open", key.file, _BREAKS, "RFC 5280 section 8")
        elif key.lock is KeyLock.OPEN:
            yield Finding("key-open", key.file, _WEAK, "RFC 5280 section 8")
        elif key.lock is KeyLock.TRADITIONAL:
            yield Finding("key-lock-old", key.file, _WEAK, "RFC 1421 section 4.6.1.3")


def _about_issued(home: FoundHome, one: FoundCertificate, now: datetime) -> Iterator[Finding]:
    if now > one.not_after:
        yield Finding("certificate-ended", one.file, _NOTE, "RFC 5280 section 4.1.2.5")
        return
    if now < one.not_before:
        yield Finding("certificate-not-yet", one.file, _NOTE, "RFC 5280 section 4.1.2.5")
    if _is_old(one.hash_name):
        yield Finding("certificate-old-hash", one.file, _BREAKS, "RFC 8247 section 3.2")
    if 0 < one.bits < SMALLEST_RSA:
        yield Finding("certificate-key-small", one.file, _BREAKS, "SP 800-131A section 3")
    yield from _about_gateway(one) if one in home.gateways else _about_device(home, one)


def _about_gateway(one: FoundCertificate) -> Iterator[Finding]:
    if not one.names:
        yield Finding("gateway-without-name", one.file, _BREAKS, "RFC 4945 section 3.1")
    elif not (one.signs and one.meant_for(SERVER_USE, IKE_USE)):
        yield Finding("gateway-wrong-use", one.file, _BREAKS, "RFC 4945 section 5.1.3.12")


def _about_device(home: FoundHome, one: FoundCertificate) -> Iterator[Finding]:
    if not may_be_device(one):
        yield Finding("device-wrong-use", one.file, _BREAKS, "RFC 4945 section 5.1.3.12")
    if not one.names:
        yield Finding("device-without-name", one.file, _WEAK, "RFC 4945 section 3.1")
    if one.personal:
        yield Finding("name-in-clear", one.file, _WEAK, "RFC 5216 section 2.1.4")
    if not one.has_authority_identifier and home.authority is not None and home.authority.has_identifier:
        yield Finding("certificate-no-identifier", one.file, _NOTE, "RFC 5280 section 4.2.1.1")


def _about_lists(home: FoundHome, now: datetime) -> Iterator[Finding]:
    if home.authority is None:
        return
    newest = home.newest_list
    for one in home.folder.lists:
        if one.is_partial:
            yield Finding("list-partial", one.file, _NOTE, "RFC 5280 section 5.2.4")
        elif all(one.der != mine.der for mine in home.lists):
            yield Finding("list-of-another", one.file, _NOTE, "RFC 5280 section 6.3.3")
    if newest is None:
        yield Finding("list-missing", "", _WEAK, "RFC 5280 section 6.3")
    else:
        if newest.next_update is None or newest.next_update < now:
            facts = {"end": newest.next_update or newest.this_update}
            yield Finding("list-overdue", newest.file, _BREAKS, "RFC 5280 section 6.3.3", facts)
        if newest.number is None:
            yield Finding("list-without-number", newest.file, _WEAK, "RFC 5280 section 5.2.3")
    if home.highest_list >= HIGHEST_NUMBER:
        yield Finding("list-number-high", "", _STOPS, "RFC 5280 section 5.2.3")


def _about_serials(home: FoundHome, now: datetime) -> Iterator[Finding]:
    for one in home.issued:
        if not one.listable and now <= one.not_after:
            yield Finding("serial-unlistable", one.file, _WEAK, "RFC 5280 section 4.1.2.2")
    for entry in home.withdrawn:
        if not 0 < entry.serial < 1 << 159 and (entry.not_after is None or entry.not_after >= now):
            yield Finding(
                "withdrawn-unlistable", "", _STOPS, "RFC 5280 section 4.1.2.2", {"serial": f"{entry.serial:x}"}
            )
    for together in home.shared():
        for one in together:
            yield Finding("serial-shared", one.file, _BREAKS, "RFC 5280 section 4.1.2.2")
    here = {one.serial for one in home.issued}
    gone = {entry.serial for entry in home.withdrawn}
    for serial, ends in home.recorded:
        if serial not in here and serial not in gone and ends > now:
            facts = {"serial": f"{serial:x}"}
            yield Finding("certificate-not-here", f"{serial:x}", _WEAK, "RFC 5280 section 5.3", facts)


def _about_the_rest(home: FoundHome) -> Iterator[Finding]:
    for one in home.others:
        if home.authority is not None:
            yield Finding("authority-besides", one.file, _NOTE, "RFC 5280 section 6.1")
    for one in home.strangers:
        if home.authority is not None:
            yield Finding("certificate-of-another", one.file, _NOTE, "RFC 5280 section 6.1.3")
    for database in home.folder.databases:
        if database.unread:
            yield Finding("database-lines", database.file, _NOTE, "openssl-ca(1)", {"lines": database.unread[:5]})


def keeps_credential(home: FoundHome, one: FoundCertificate, host: str, now: datetime) -> bool:
    """Whether the gateway can go on with a certificate: its own name, in force, not withdrawn, its serial its own."""
    alone = all(one not in together for together in home.shared())
    in_force = one.not_before <= now < one.not_after and one.listable and not _is_old(one.hash_name)
    return is_gateway(one, host) and in_force and alone and not home.is_withdrawn(one)
