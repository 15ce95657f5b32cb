"""Reads what is at the gateway, and takes over what is newer there than here."""

from __future__ import annotations

import contextlib
import hashlib
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from hearthkey.core.delivery import There
from hearthkey.core.errors import Refused
from hearthkey.core.pack import GATEWAY_CERTIFICATE, LIST_DER, MANIFEST, read_manifest, second_name
from hearthkey.core.revocation import Entry, Reason
from hearthkey.core.sentences import diary
from hearthkey.pki import judge, lists, read
from hearthkey.services.gateway_ports import Gate, GatewayRegister
from hearthkey.services.opening import the_authority
from hearthkey.services.writing_diary import note

MOST_FILES = 500
"""A manifest with more names than that is not read to its end: nobody but us writes there, so it is rubbish."""

LARGEST = lists.LONGEST
"""Octets of one file."""


def read_there(gate: Gate, set_id: str | None) -> There:
    """Read a whole set and hash it; what its manifest claims is not believed.

    Raises:
        Unavailable: as `Gate`.
    """
    if set_id is None:
        return There(None)
    manifest = gate.read(set_id, [MANIFEST], LARGEST).get(MANIFEST)
    if manifest is None:
        return There(set_id)
    claimed, _ = read_manifest(manifest)
    names = [name for name in claimed if _safe(name)][:MOST_FILES]
    found = gate.read(set_id, names, LARGEST)
    digests = {name: hashlib.sha256(data).hexdigest() for name, data in found.items()}
    return There(
        set_id,
        {**digests, MANIFEST: hashlib.sha256(manifest).hexdigest()},
        whole=digests == claimed,
        list_der=found.get(LIST_DER),
        second_list=found.get(second_name(LIST_DER)),
        certificate=found.get(f"{GATEWAY_CERTIFICATE}.der"),
    )


def _safe(name: str) -> bool:
    """Whether a name that somebody else wrote stays inside the set's folder."""
    return name.isascii() and all(part and not part.startswith(".") for part in name.split("/"))


@dataclass(frozen=True)
class ListThere:
    """The revocation list at the gateway.

    Args:
        number: CRLNumber.
        until: nextUpdate, UTC.
        known: whether this register signed it or has used it.
        der: the list.
    """

    number: int
    until: datetime
    known: bool
    der: bytes


def list_there(register: GatewayRegister, there: There) -> ListThere | None:
    """What the list at the gateway says, if it is this household's; None for none, for rubbish and for another's.

    Of the lists of two CAs the one with the higher number counts, and the sooner end.
    """
    found = [one for der in there.lists for one in [_ours(register, der)] if one is not None]
    if not found:
        return None
    newest = max(found, key=lambda one: one.number)
    same = [one for one in found if one.number == newest.number]
    return replace(newest, until=min(one.until for one in found), known=all(one.known for one in same))


def _ours(register: GatewayRegister, der: bytes) -> ListThere | None:
    for authority in register.authorities():
        with contextlib.suppress(Refused):
            judge.check_list(der, authority.certificate)
            facts = lists.read_list(der)
            if facts.number is not None and facts.next_update is not None:
                ours = register.list_numbered(facts.number)
                return ListThere(facts.number, facts.next_update, ours is not None and der in ours.ders, der)
    return None


def of_another(register: GatewayRegister, there: There) -> bool:
    """Whether a list lies there in the name of a CA that this register has never known.

    It is another household's, or this one's from after the copy that was brought back here; then it stops devices that
    nothing here knows of. Rubbish is in nobody's name.
    """
    ours = {read.certificate_facts(one.certificate).subject for one in register.every_authority()}
    for der in there.lists:
        with contextlib.suppress(Refused):
            if lists.read_list(der).issuer not in ours:
                return True
    return False


def take_over(register: GatewayRegister, there: There, now: datetime) -> tuple[str, ...]:
    """Take over revocations that stand on this household's list at the gateway and not here.

    That happens after an older copy of the register was brought back. The number there becomes the
    high-water mark, so that the next list is newer than both.

    Returns:
        Titles of the devices, or serials where the register has never heard of them.

    Raises:
        Unavailable: as the register.
    """
    found = list_there(register, there)
    if found is None or found.known:
        return ()
    authority = the_authority(register)
    here = {one.serial: one for one in register.entries()}
    listed = lists.read_list(found.der).entries
    more = [one for one in listed if _more(here.get(one.serial), _reason(one.reason))]
    titles = {one.serial: one.title for one in register.passes()}
    names = tuple(titles.get(one.serial, one.serial) for one in more)
    raised = found.number > register.list_high_water()
    if not more and not raised:
        return ()
    sentence = diary.taken_over(found.number, names)
    with register.change() as change:
        for one in more:
            change.adopt(one.serial, authority.not_after)
            change.withdraw(one.serial, _reason(one.reason), one.since)
        change.raise_mark("list", found.number)
        note(register, change, verb="deliver", sentence=sentence, now=now)
    return names


def _more(here: Entry | None, reason: Reason) -> bool:
    """Whether an entry there says more than ours: we have none, or ours is only a hold."""
    if here is None:
        return True
    return here.reason is Reason.CERTIFICATE_HOLD and reason is not Reason.CERTIFICATE_HOLD


def _reason(name: str | None) -> Reason:
    """The reason by its RFC 5280 name; one that we never write counts as the gravest."""
    for reason in Reason:
        if reason.rfc_name == name:
            return reason
    return Reason.KEY_COMPROMISE


def titles_of(register: GatewayRegister, serials: Sequence[str]) -> tuple[str, ...]:
    """Whose devices these serials are, each once."""
    titles = {one.serial: one.title for one in register.passes()}
    return tuple(dict.fromkeys(titles.get(one, one) for one in serials))
