"""Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from PySide6.QtCore import QCoreApplication

from hearthkey.core.in_force import KNOWN, GatewayState, Standing, house_ends
from hearthkey.core.outlook import HOUSE_DUE
from hearthkey.core.phrases import Style
from hearthkey.core.reach.chain import Chain, Verdict
from hearthkey.core.sentences import gateway as words
from hearthkey.core.sentences import way_in
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.way_in_tables import STOPS
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.dates import short_day, written
from hearthkey.ui.text import said
from hearthkey.ui.theme.signs import Sign

LIST, CERTIFICATE, CLOCK, CHANGES, DELIVERED, KEY = "list", "certificate", "clock", "changes", "delivered", "key"
WAY_IN = "way in"

LINK_SIGNS = {Verdict.OK: Sign.IN_USE, Verdict.BROKEN: Sign.DUE, Verdict.UNKNOWN: Sign.UNKNOWN}
"""The sign of a link, wherever the chain is drawn."""


@dataclass(frozen=True)
class Lit:
    """One lamp.

    Args:
        sign, word: what is the matter.
        fact: what explains it; the first thing to be left out where there is no room.
        links: where it is about a chain, a sign and words for each link; painted behind the fact, said in full.
    """

    sign: Sign
    word: str
    fact: str = ""
    links: tuple[tuple[Sign, str], ...] = ()

    @property
    def due(self) -> bool:
        """Whether it wants the householder now."""
        return self.sign is Sign.DUE

    @property
    def told(self) -> str:
        """All of it as one text."""
        return f"{self.word} {self.fact}".strip()

    @property
    def in_full(self) -> str:
        """The same, with a line for each link."""
        return "\n".join((self.told, *(words for _sign, words in self.links)))


def tr(text: str) -> str:
    """Translate a literal of the strip or of the gateway's page."""
    return QCoreApplication.translate("gateway", text)


def lamps(snapshot: Snapshot) -> dict[str, Lit]:
    """What is known, by key, in the order of the strip; empty before the household is founded."""
    gateway, newest = snapshot.gateway, snapshot.newest_list
    if gateway is None or newest is None:
        return {}
    state = snapshot.gateway_state
    list_end, gateway_end = house_ends(state.note, newest, gateway.not_after)
    lit = {
        LIST: _list(snapshot, list_end),
        CERTIFICATE: _certificate(state, gateway_end, snapshot.at),
        CLOCK: _clock(state),
        CHANGES: _changes(state),
        DELIVERED: _delivered(state, snapshot.at),
        WAY_IN: _way_in(snapshot),
        KEY: _key(snapshot),
    }
    return {key: one for key, one in lit.items() if one is not None}


def _list(snapshot: Snapshot, end: datetime) -> Lit:
    """The list in force. Ended outranks everything, then what is not in force, then an end that comes near."""
    state, left = snapshot.gateway_state, end - snapshot.at
    if left <= timedelta(0):
        number = _number(state)
        return Lit(Sign.DUE, tr("list no. {number} ended").format(number=number), tr("nobody gets in"))
    whom = words.not_in_force(state)
    if whom is not None:
        return Lit(Sign.DUE, _as_word(said(whom)), _held(state, snapshot.at))
    lit = _standing(snapshot, end)
    if lit.due or left > HOUSE_DUE:
        return lit
    ends = tr("list ends in {days}").format(days=_days(left))
    return Lit(Sign.DUE, ends, lit.told)


def _days(left: timedelta) -> str:
    if left.days < 1:
        return tr("less than a day")
    return tr("1 day") if left.days == 1 else tr("{days} days").format(days=left.days)


def _standing(snapshot: Snapshot, end: datetime) -> Lit:
    """The list by what was last seen, whatever its date."""
    state = snapshot.gateway_state
    note = state.note
    practice = snapshot.household is not None and snapshot.household.practice
    if practice or state.standing is Standing.NO_TARGET:
        newest = 0 if snapshot.newest_list is None else snapshot.newest_list.number
        why = tr("a practice household delivers nothing") if practice else tr("nobody has said where the gateway is")
        return Lit(Sign.UNKNOWN, tr("list no. {number}").format(number=newest), why)
    if state.standing is Standing.UNKNOWN:
        since = tr("unknown since {when}").format(when=when(note.failed or snapshot.at, snapshot.at))
        return Lit(Sign.UNKNOWN, since, _was(state))
    if state.standing is Standing.NEVER:
        waits = tr("list no. {number} waits here").format(number=state.newest_number)
        return Lit(Sign.WAITING, tr("nothing delivered yet"), waits)
    return _read(state, end)


def _read(state: GatewayState, end: datetime) -> Lit:
    """The list of a gateway that was read at the last try."""
    note, number = state.note, _number(state)
    if state.standing is Standing.NOT_LOADED:
        lies = tr("no. {number} lies there, its command failed").format(number=number)
        return Lit(Sign.DUE, tr("list perhaps not in use"), lies)
    if note.list_number is None:
        return Lit(Sign.DUE, tr("no list at the gateway"), tr("no. {number} waits").format(number=state.newest_number))
    if note.list_number > state.newest_number:
        newer = tr("list no. {number} there is newer").format(number=number)
        return Lit(Sign.DUE, newer, tr("than no. {number} here").format(number=state.newest_number))
    until = tr("until {day}").format(day=short_day(end))
    if note.list_number < state.newest_number:
        waits = tr("list no. {number} waits").format(number=state.newest_number)
        return Lit(Sign.WAITING, waits, tr("no. {number} in force {until}").format(number=number, until=until))
    return Lit(Sign.IN_USE, tr("list no. {number} in force").format(number=number), until)


def _number(state: GatewayState) -> int:
    return state.note.list_number or state.newest_number


def _was(state: GatewayState) -> str:
    there = state.note.list_number
    return "" if there is None else tr("list no. {number} was there").format(number=there)


def _held(state: GatewayState, now: datetime) -> str:
    """What the gateway holds instead, or held when it was last seen."""
    if state.standing is not Standing.UNKNOWN:
        return tr("the gateway holds no. {number}").format(number=_number(state))
    return tr("gateway unknown since {when}").format(when=when(state.note.failed or now, now))


def _as_word(sentence: str) -> str:
    """A sentence as it stands beside a sign: small, without its full stop."""
    return f"{sentence[:1].lower()}{sentence[1:].removesuffix('.')}"


def _way_in(snapshot: Snapshot) -> Lit | None:
    """What the last check from outside showed; one from inside never stands for it."""
    checks = snapshot.way_in
    if snapshot.household is None or snapshot.household.practice:
        return None
    if checks.outside is None:
        if checks.inside is None:
            return Lit(Sign.UNKNOWN, tr("way in"), tr("not checked"))
        inside = tr("only from inside, {day}").format(day=_short(checks.inside))
        return Lit(Sign.NEVER_PROVED, tr("way in"), inside, _links(checks.inside))
    broken, told = checks.outside.broken, _short(checks.outside)
    if broken is not None:
        place = said(Sentence(STOPS[broken.place.value], {}))
        stops = tr("stops here: {place}, {day}").format(place=place, day=told)
        return Lit(Sign.DUE, tr("way in broken"), stops, _links(checks.outside))
    if checks.outside.answered:
        return Lit(Sign.IN_USE, tr("way in"), tr("from outside, {day}").format(day=told), _links(checks.outside))
    return Lit(Sign.UNKNOWN, tr("way in"), tr("not known, {day}").format(day=told), _links(checks.outside))


def _links(chain: Chain) -> tuple[tuple[Sign, str], ...]:
    """A sign and words for each link, in the order of the packet."""
    told = [(LINK_SIGNS[one.verdict], way_in.link(one)) for one in chain.links]
    return tuple((sign, f"{said(words.title)}: {said(words.verdict)}") for sign, words in told)


def _short(chain: Chain) -> str:
    return short_day(chain.made)


def _certificate(state: GatewayState, end: datetime, now: datetime) -> Lit:
    if end <= now:
        return Lit(Sign.DUE, tr("certificate ended"), short_day(end))
    until = tr("until {day}").format(day=short_day(end))
    if end - now <= HOUSE_DUE:
        return Lit(Sign.DUE, tr("certificate ends in {days}").format(days=_days(end - now)), short_day(end))
    seen = state.note.gateway_until is not None and state.standing in KNOWN
    return Lit(Sign.IN_USE if seen else Sign.NEVER_PROVED, tr("certificate"), until)


def _clock(state: GatewayState) -> Lit | None:
    if not state.clock_wrong or state.note.clock_off is None:
        return None
    return Lit(Sign.DUE, clock_words(state.note.clock_off), tr("certificates go by it"))


def clock_words(off: int) -> str:
    """How far the gateway's clock is off, in whole minutes, hours or days."""
    size = abs(off)
    for seconds, unit in ((86400, tr("days")), (3600, tr("hours")), (60, tr("min"))):
        if size >= 2 * seconds:
            amount = f"{size // seconds} {unit}"
            break
    else:
        amount = f"{size} s"
    template = tr("clock {amount} ahead") if off > 0 else tr("clock {amount} behind")
    return template.format(amount=amount)


def _changes(state: GatewayState) -> Lit | None:
    """Settings and certificates that wait; before the first delivery everything does, and the list's lamp says so."""
    if not state.other_changes or state.note.set_id is None or state.target is None:
        return None
    return Lit(Sign.WAITING, tr("changes wait"), tr("settings or certificates"))


def _delivered(state: GatewayState, now: datetime) -> Lit | None:
    if state.note.delivered is None:
        return None
    return Lit(Sign.IN_USE, tr("delivered"), when(state.note.delivered, now))


def _key(snapshot: Snapshot) -> Lit:
    if snapshot.door is not Door.READY:
        return Lit(Sign.UNKNOWN, tr("CA key"), tr("the keyring did not give it"))
    if snapshot.locked:
        return Lit(Sign.WAITING, tr("CA key"), tr("locked"))
    return Lit(Sign.IN_USE, tr("CA key"), tr("open"))


def when(moment: datetime, now: datetime) -> str:
    """A moment by the wall clock here: the time today, else the day."""
    local, today = moment.astimezone(), now.astimezone()
    if local.date() == today.date():
        return written(local, Style.TIME)
    return written(local, Style.DAY_AND_MONTH) if local.year == today.year else short_day(local)
