"""What the gateway's page tells in the trade's terms, and how a host key is written for comparing."""

from __future__ import annotations

import base64
import binascii
import hashlib
from datetime import datetime
from typing import NamedTuple

from hearthkey.core.household import Gateway
from hearthkey.core.in_force import GatewayState, Standing, house_ends
from hearthkey.core.outlook import HOUSE_DUE
from hearthkey.core.sentences.gateway import ago, moment, where
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.dates import day
from hearthkey.ui.strip_words import clock_words, lamps, tr
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.signs import Sign

_KEY_FILES = {"ssh-ed25519": "ed25519", "ssh-rsa": "rsa", "ecdsa-sha2": "ecdsa"}
"""By the beginning of a key's name (RFC 8709, RFC 4253, RFC 5656): what OpenSSH calls its file (from memory)."""


class Fact(NamedTuple):
    """A fact of the page.

    Args:
        key: under which it is told again.
        label, value, note: as `Facts.tell` takes them.
    """

    key: str
    label: str
    value: str
    note: str = ""


KEYS = ("list", "newest", "certificate", "looked", "failed", "delivered", "clock", "where", "reload")
"""Every fact that can be told, in the order of the page."""


def sign(snapshot: Snapshot) -> Sign:
    """The sign before the page's title: that of the list's lamp."""
    lit = lamps(snapshot)
    return lit["list"].sign if lit else Sign.UNKNOWN


def facts(snapshot: Snapshot) -> list[Fact]:
    """What is known, in order."""
    state, now = snapshot.gateway_state, snapshot.at.astimezone()
    return [*_seen(snapshot, state, now), *_place(state)]


def dates(snapshot: Snapshot) -> str:
    """What has to be done because a date for everybody comes near; empty where none does."""
    newest, gateway = snapshot.newest_list, snapshot.gateway
    if newest is None or gateway is None:
        return ""
    list_end, gateway_end = house_ends(snapshot.gateway_state.note, newest, gateway.not_after)
    if list_end <= min(gateway_end, snapshot.at + HOUSE_DUE):
        told = tr("On {day} the list ends, and then nobody gets in. Unlock the household before: the list is signed "
                  "anew and delivered.")  # fmt: skip
        return told.format(day=day(list_end))
    if gateway_end <= snapshot.at + HOUSE_DUE:
        told = tr("On {day} the gateway’s certificate ends, and devices turn away from it. It needs a new one before.")
        return told.format(day=day(gateway_end))
    return ""


def _seen(snapshot: Snapshot, state: GatewayState, now: datetime) -> list[Fact]:
    note = state.note
    told = [Fact("list", tr("list there"), *_list(state))]
    if note.list_number != state.newest_number or state.standing is Standing.UNKNOWN:
        told.append(Fact("newest", tr("newest list here"), *_newest(snapshot)))
    if snapshot.gateway is not None:
        told.append(Fact("certificate", tr("certificate until"), *_certificate(state, snapshot.gateway, now)))
    if note.looked is not None:
        told.append(Fact("looked", tr("last read"), spoken(ago(note.looked, now))))
    if note.failed is not None:
        told.append(Fact("failed", tr("not reached since"), spoken(moment(note.failed, now))))
    if note.delivered is not None:
        told.append(Fact("delivered", tr("last delivery"), spoken(ago(note.delivered, now))))
    if note.clock_off is not None:
        told.append(Fact("clock", tr("its clock"), *_clock(state, note.clock_off)))
    return told


def _list(state: GatewayState) -> tuple[str, str]:
    note = state.note
    if note.list_number is None:
        nothing = state.standing is Standing.NEVER
        return (tr("none yet") if nothing else tr("not known")), ""
    until = "" if note.list_until is None else tr("good until {day}").format(day=day(note.list_until))
    number = tr("no. {number}").format(number=note.list_number)
    if state.standing is Standing.UNKNOWN:
        return tr("not known"), tr("(it was {number}, {until})").format(number=number, until=until)
    return f"{number}, {until}" if until else number, ""


def _newest(snapshot: Snapshot) -> tuple[str, str]:
    newest = snapshot.newest_list
    if newest is None:
        return tr("none yet"), ""
    told = tr("no. {number}, good until {day}").format(number=newest.number, day=day(newest.next_update))
    return told, ""


def _certificate(state: GatewayState, gateway: Gateway, now: datetime) -> tuple[str, str]:
    note = state.note
    if note.gateway_until is None or note.looked is None:
        return day(gateway.not_after), tr("(made here, not seen at the gateway)")
    seen = tr("(seen at the gateway)")
    if state.standing is Standing.UNKNOWN:
        seen = tr("(seen there {when})").format(when=spoken(ago(note.looked, now)))
    return day(note.gateway_until), seen


def _clock(state: GatewayState, off: int) -> tuple[str, str]:
    if not off:
        return tr("agrees with this computer’s"), ""
    amount = clock_words(off).removeprefix(f"{tr('clock')} ")
    note = tr("(certificates begin and end by it: have it set by the network)") if state.clock_wrong else ""
    return amount, note


def _place(state: GatewayState) -> list[Fact]:
    target = state.target
    if target is None:
        return []
    told = [Fact("where", tr("files go to"), spoken(where(target)))]
    if target.reload:
        told.append(Fact("reload", tr("then it runs"), target.reload))
    return told


def fingerprint(line: str) -> str:
    """A public host key's fingerprint as OpenSSH prints it: unpadded base64 of SHA-256 over the key's octets.

    Args:
        line: as ``known_hosts`` has it, without the host.
    """
    try:
        key = base64.b64decode(line.split()[1], validate=True)
    except (IndexError, binascii.Error):
        return ""
    return f"SHA256:{base64.b64encode(hashlib.sha256(key).digest()).decode('ascii').rstrip('=')}"


def in_groups(text: str) -> str:
    """A fingerprint in groups of four, as two people compare it aloud."""
    head, colon, digits = text.partition(":")
    groups = " ".join(digits[start : start + 4] for start in range(0, len(digits), 4))
    return f"{head}{colon} {groups}".strip() if colon else text


def command(line: str) -> str:
    """What shows the same fingerprint at the gateway itself."""
    kind = line.partition(" ")[0]
    file = next((name for begin, name in _KEY_FILES.items() if kind.startswith(begin)), "*")
    return f"ssh-keygen -l -f /etc/ssh/ssh_host_{file}_key.pub"
