"""Works out the rows of the house: gateway, revocation list, CA."""

from __future__ import annotations

from datetime import datetime

from hearthkey.core.household import FILE
from hearthkey.core.in_force import KNOWN, GatewayState, Standing
from hearthkey.core.outlook import DUE, HOUSE_DUE
from hearthkey.core.sentences.gateway import not_in_force
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.board.life import tr
from hearthkey.ui.board.rows import Event, Mark, Row, Segment, Shape, Stroke, Tone
from hearthkey.ui.dates import day, short_day
from hearthkey.ui.theme.signs import Sign

_ASKED = frozenset({Door.READY, Door.NO_HOUSEHOLD})


def house_row(key: str, snapshot: Snapshot) -> Row:
    """The row of the gateway, the list or the ca, whichever the key names."""
    return {"gateway": _gateway, "list": _list, "ca": _authority}[key](snapshot)


def _founded(snapshot: Snapshot) -> datetime | None:
    """The first line of the diary tells when the house began; without it nobody can say."""
    return snapshot.diary[0].at if snapshot.diary else None


def _gateway(snapshot: Snapshot) -> Row:
    gateway, note = snapshot.gateway, snapshot.gateway_state.note
    end = snapshot.at if gateway is None else note.gateway_until or gateway.not_after
    left = end - snapshot.at
    seen = note.gateway_until is not None and snapshot.gateway_state.standing in KNOWN
    if left.total_seconds() < 0:
        state = (Sign.DUE, tr("ended {day}").format(day=short_day(end)), tr("devices turn away from it"))
    elif left <= HOUSE_DUE:
        state = (Sign.DUE, _left(left.days), tr("then devices turn away from it"))
    elif seen and note.looked is not None:
        state = (Sign.IN_USE, tr("holds its certificate"), tr("seen {day}").format(day=short_day(note.looked)))
    else:
        state = (Sign.NEVER_PROVED, tr("never proved"), tr("its certificate is made"))
    return _row(
        snapshot, tr("gateway"), state, _founded(snapshot), end, Stroke.SOLID if seen else Stroke.HOLLOW, tr("made")
    )


def _list(snapshot: Snapshot) -> Row:
    newest, note = snapshot.newest_list, snapshot.gateway_state.note
    end = snapshot.at if newest is None else note.list_until or newest.next_update
    begin = None if newest is None else newest.this_update
    number = 0 if newest is None else newest.number
    left = end - snapshot.at
    if left.total_seconds() < 0:
        state = (Sign.DUE, tr("ended {day}").format(day=short_day(end)), tr("nobody gets in"))
    elif (delivery := _delivery(snapshot.gateway_state, number)) is not None and delivery[0] is Sign.DUE:
        state = delivery
    elif left <= HOUSE_DUE:
        state = (Sign.DUE, _left(left.days), tr("then nobody gets in"))
    elif delivery is not None:
        state = delivery
    else:
        signed = "" if begin is None else tr("signed {day}").format(day=short_day(begin))
        state = (Sign.IN_USE, tr("no. {number}").format(number=number), signed)
    return _row(snapshot, tr("revocation list"), state, begin, end, Stroke.SOLID, tr("signed"))


def _delivery(state: GatewayState, number: int) -> tuple[Sign, str, str] | None:
    """How the list stands at the gateway; None where nothing was ever read there."""
    there = state.note.list_number
    if there is None:
        return None
    if not_in_force(state) is not None:
        held = tr("no. {there} was there") if state.standing is Standing.UNKNOWN else tr("no. {there} in force")
        return Sign.DUE, tr("no. {number} not in force").format(number=number), held.format(there=there)
    if state.standing is Standing.UNKNOWN:
        return Sign.UNKNOWN, tr("not known"), tr("no. {there} was there").format(there=there)
    if state.standing is Standing.NOT_LOADED:
        return Sign.DUE, tr("perhaps not in use"), tr("no. {there} lies at the gateway").format(there=there)
    if there == number:
        return Sign.IN_USE, tr("no. {number} in force").format(number=number), ""
    waits = Sign.DUE if there > number else Sign.WAITING
    return waits, tr("no. {there} in force").format(there=there), tr("no. {number} here").format(number=number)


def _authority(snapshot: Snapshot) -> Row:
    authority = snapshot.authority
    end = snapshot.at if authority is None else authority.not_after
    left = end - snapshot.at
    place = tr("in a key file") if authority is not None and authority.key_place == FILE else tr("in the keyring")
    if left <= DUE:
        state = (Sign.DUE, _left(max(0, left.days)), tr("then nobody gets in"))
    elif snapshot.door not in _ASKED:
        state = (Sign.UNKNOWN, tr("not known"), tr("the keyring gives no key"))
    else:
        state = (Sign.IN_USE, tr("kept"), place)
    return _row(snapshot, tr("CA"), state, _founded(snapshot), end, Stroke.SOLID, tr("founded"))


def _left(days: int) -> str:
    if days < 2:
        return tr("1 day left") if days else tr("ends today")
    return tr("{days} days left").format(days=days)


def _row(
    snapshot: Snapshot,
    name: str,
    state: tuple[Sign, str, str],
    begin: datetime | None,
    end: datetime,
    stroke: Stroke,
    began: str,
) -> Row:
    sign, word, fact = state
    now = snapshot.at
    due = sign is Sign.DUE
    events = [Event(now, tr("today: {word}").format(word=word)), Event(end, tr("ended") if end < now else tr("ends"))]
    if begin is not None:
        events.append(Event(begin, began))
    told = ", ".join(part for part in (word, fact) if part)
    return Row(
        who=tr("The house"),
        device=name,
        sign=sign,
        word=word,
        fact=fact,
        until=short_day(end),
        step=None,
        tone=Tone.DUE if due else Tone.INK,
        segments=(Segment(stroke, begin, end),),
        marks=(Mark(Shape.END, end),),
        events=tuple(sorted(events, key=lambda event: event.at)),
        spoken=tr("The house, {name}: {told}, until {day}").format(name=name, told=told, day=day(end)),
    )
