"""Which of what was found is the household: its CA, its gateway, its devices, who is withdrawn, what comes next."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.found_household import (
    CLIENT_USE,
    IKE_USE,
    SERVER_USE,
    FoundCertificate,
    FoundEntry,
    FoundFolder,
    FoundKey,
    FoundList,
)

HIGHEST_NUMBER = 1 << 62
"""The register counts in 64 bits; RFC 5280 section 5.2.3 would allow 20 octets."""


@dataclass(frozen=True)
class FoundHome:
    """The household in a folder.

    Args:
        folder: all that was found.
        authority: its CA, or None.
        key: the CA key, opened, or None.
        others: certificates that look like CAs and are not the one.
        gateways: what the CA issued and what no device presents.
        devices: the rest of what it issued, each once.
        strangers: certificates of other issuers.
        lists: lists that the CA signed, the newest last.
        withdrawn: by serial, what counts as withdrawn.
        highest_list: the highest list number that is known to have been given, 0 where none is.
        recorded: serials that the database or a list names, and their ends where they are known.
    """

    folder: FoundFolder
    authority: FoundCertificate | None = None
    key: FoundKey | None = None
    others: tuple[FoundCertificate, ...] = ()
    gateways: tuple[FoundCertificate, ...] = ()
    devices: tuple[FoundCertificate, ...] = ()
    strangers: tuple[FoundCertificate, ...] = ()
    lists: tuple[FoundList, ...] = ()
    withdrawn: tuple[FoundEntry, ...] = ()
    highest_list: int = 0
    recorded: tuple[tuple[int, datetime], ...] = ()

    @property
    def issued(self) -> tuple[FoundCertificate, ...]:
        """Everything that the CA issued, itself left out."""
        return self.gateways + self.devices

    @property
    def newest_list(self) -> FoundList | None:
        """The newest whole list of the CA."""
        return self.lists[-1] if self.lists else None

    def is_withdrawn(self, one: FoundCertificate) -> bool:
        """Whether a certificate is on the list, or should be."""
        return any(entry.serial == one.serial for entry in self.withdrawn)

    def shared(self) -> tuple[tuple[FoundCertificate, ...], ...]:
        """Certificates that have one serial together (RFC 5280 section 4.1.2.2 wants each its own)."""
        by: dict[int, list[FoundCertificate]] = {}
        for one in self.issued:
            by.setdefault(one.serial, []).append(one)
        return tuple(tuple(together) for together in by.values() if len(together) > 1)


SignedBy = Callable[[FoundCertificate, FoundCertificate], bool]
ListOf = Callable[[FoundList, FoundCertificate], bool]


def find_home(folder: FoundFolder, *, host: str | None, signed_by: SignedBy, list_of: ListOf) -> FoundHome:
    """Find the household.

    Args:
        host: what the gateway is called, as far as it is known.
        signed_by, list_of: whether a CA really signed a certificate, and a list.
    """
    each = tuple({one.fingerprint: one for one in reversed(folder.certificates)}.values())[::-1]
    tops = [one for one in each if one.is_top and signed_by(one, one)]
    children = {top.fingerprint: [one for one in each if one != top and signed_by(one, top)] for top in tops}
    if not tops:
        return FoundHome(folder, others=tuple(one for one in each if one.is_authority), strangers=each)
    authority = max(tops, key=lambda one: _likely(one, folder, len(children[one.fingerprint])))
    alike = {one.fingerprint for one in tops if one.public == authority.public}
    issued = [one for one in each if one in children[authority.fingerprint] and one.fingerprint not in alike]
    leaves = [one for one in issued if not one.is_authority]
    gateways = tuple(one for one in leaves if is_gateway(one, host))
    lists = _whole_lists(folder.lists, authority, list_of)
    known = {authority.fingerprint, *alike, *(one.fingerprint for one in leaves)}
    rows = [row for database in folder.databases for row in database.rows]
    return FoundHome(
        folder=folder,
        authority=authority,
        key=next(iter(folder.keys_of(authority)), None),
        others=tuple(one for one in each if one.is_authority and one.fingerprint not in known),
        gateways=gateways,
        devices=tuple(one for one in leaves if one not in gateways),
        strangers=tuple(one for one in each if not one.is_authority and one.fingerprint not in known),
        lists=lists,
        withdrawn=_withdrawn(lists, [row.withdrawn for row in rows if row.withdrawn is not None]),
        highest_list=_highest(folder, authority, list_of),
        recorded=tuple({row.serial: row.ends for row in rows}.items()),
    )


def _likely(one: FoundCertificate, folder: FoundFolder, issued: int) -> tuple[bool, bool, int, datetime]:
    """A CA that says so, whose key is here, that issued the most, that ends last."""
    return one.is_authority, bool(folder.keys_of(one)), issued, one.not_after


def is_gateway(one: FoundCertificate, host: str | None) -> bool:
    """Whether a certificate is the gateway's: its host stands in it, or no device could present it."""
    wanted = None if host is None else host.lower()
    if wanted is not None and any(name.partition(":")[2].lower() == wanted for name in one.names):
        return True
    if one.usages is None:
        return wanted is not None and not one.names and one.common_name.lower() == wanted
    server = SERVER_USE in one.usages
    return server and CLIENT_USE not in one.usages and any(name.startswith(("dns:", "ip:")) for name in one.names)


def may_be_device(one: FoundCertificate) -> bool:
    """Whether the gateway would take it from a device (RFC 4945 section 5.1.3.12)."""
    return one.signs and one.meant_for(CLIENT_USE, IKE_USE)


def _whole_lists(found: Iterable[FoundList], authority: FoundCertificate, list_of: ListOf) -> tuple[FoundList, ...]:
    whole = {one.der: one for one in found if not one.is_partial and list_of(one, authority)}
    return tuple(sorted(whole.values(), key=lambda one: (one.this_update, one.number or 0)))


def _withdrawn(lists: tuple[FoundList, ...], recorded: Iterable[FoundEntry]) -> tuple[FoundEntry, ...]:
    """The newest list counts as it stands, and whatever the database has withdrawn since comes on top.

    An older list may name somebody who was let back in; the database knows no reason why the newest list would lie.
    """
    by = {entry.serial: entry for entry in recorded}
    for entry in lists[-1].entries if lists else ():
        known = by.get(entry.serial)
        ends = None if known is None else known.not_after
        by[entry.serial] = FoundEntry(entry.serial, entry.since, entry.reason, ends)
    return tuple(by.values())


def _highest(folder: FoundFolder, authority: FoundCertificate, list_of: ListOf) -> int:
    """Partial lists count too: they draw their numbers from the same row (RFC 5280 section 5.2.3)."""
    given = [one.number for one in folder.lists if one.number is not None and list_of(one, authority)]
    counted = [one.following - 1 for one in folder.counters if one.of_lists]
    return max([0, *given, *counted])
