"""What is said of the gateway: how it stands, what a delivery would change, what a spare list does."""

from __future__ import annotations

from collections import Counter
from datetime import UTC, datetime

from hearthkey.core.delivery import Delivered, DeliveryPlan, Differs
from hearthkey.core.in_force import GatewayState, Standing
from hearthkey.core.phrases import Listing, Moment, Phrase, Style, several
from hearthkey.core.plans import SparePlanned
from hearthkey.core.sentences.diary import day, titles
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.target import Target


def where(target: Target) -> str:
    """A target in words."""
    if not target.host:
        return target.folder
    host = f"{target.user}@{target.host}" if target.user else target.host
    facts = {"host": host, "port": target.port, "folder": target.folder}
    return Phrase("{host} port {port}, {folder}", facts) if target.port else Phrase("{host}, {folder}", facts)


def standing(state: GatewayState, now: datetime) -> Sentence:
    """How the gateway stands, in one sentence; never more than was seen."""
    note = state.note
    facts = {
        "number": note.list_number or "?",
        "newest": state.newest_number,
        "until": "" if note.list_until is None else day(note.list_until),
        "looked": "" if note.looked is None else ago(note.looked, now),
        "since": "" if note.failed is None else moment(note.failed, now),
        "whom": _whom(state.waiting),
        "said": note.reload_said or "",
    }
    return Sentence(_STANDING[state.standing, _kind(state)], facts)


def not_in_force(state: GatewayState) -> Sentence | None:
    """Whose standing is decided here and not yet in force; None where nobody's is."""
    if not state.waiting or state.standing not in {Standing.WAITING, Standing.UNKNOWN}:
        return None
    return Sentence("Not in force yet: {whom}.", {"whom": _whom(state.waiting)})


def meanwhile(state: GatewayState) -> Sentence:
    """What holds as long as something is not in force."""
    facts = {"number": state.note.list_number or "?", "newest": state.newest_number}
    if state.standing is Standing.UNKNOWN:
        return Sentence("The gateway is out of reach; it held list no. {number} when it was last read.", facts)
    return Sentence("The gateway holds list no. {number}; list no. {newest} waits here.", facts)


def _kind(state: GatewayState) -> str:
    if state.standing is Standing.WAITING:
        return _waiting_kind(state)
    if state.standing is Standing.UNKNOWN:
        return "never" if state.note.list_number is None else "whom" if state.waiting else "seen"
    return ""


def _waiting_kind(state: GatewayState) -> str:
    there = state.note.list_number
    if there is None:
        return "none"
    if there > state.newest_number:
        return "newer"
    return "whom" if state.waiting else "list" if there != state.newest_number else "rest"


NAMED = 3
"""So many devices are named in a sentence; of more the first two are, and the rest is counted."""

_STANDING = {
    (Standing.NO_TARGET, ""): "What the gateway holds is not known: nobody has said where its files go.",
    (Standing.NEVER, ""): "Nothing was delivered to the gateway yet.",
    (Standing.IN_FORCE, ""): "List no. {number} is in force, good until {until}; read back {looked}.",
    (Standing.WAITING, "whom"): "{whom}: decided here, not yet in force. The gateway holds list no. {number}.",
    (Standing.WAITING, "list"): "List no. {newest} waits here. The gateway holds list no. {number}.",
    (Standing.WAITING, "newer"): "The gateway holds list no. {number}, newer than no. {newest} here.",
    (Standing.WAITING, "none"): "No list can be read at the gateway. List no. {newest} waits here.",
    (Standing.WAITING, "rest"): "List no. {number} is in force; settings or certificates wait here.",
    (Standing.NOT_LOADED, ""): (
        "List no. {number} lies at the gateway, but its command failed ({said}): what runs there may use an older one."
    ),
    (Standing.UNKNOWN, "never"): "What the gateway holds is not known; it has not been reached since {since}.",
    (Standing.UNKNOWN, "seen"): (
        "What the gateway holds is not known since {since}. It held list no. {number} when it was read {looked}."
    ),
    (Standing.UNKNOWN, "whom"): (
        "{whom}: not yet in force. The gateway is out of reach since {since}; list no. {number} was there {looked}."
    ),
}


def _whom(names: tuple[str, ...]) -> Listing:
    return Listing(names) if len(names) <= NAMED else several(names, NAMED)


def ago(then: datetime, now: datetime) -> Phrase:
    """A moment before now, as people say it, by the clock of the zone that `now` is in."""
    minutes = int((now - then).total_seconds() // 60)
    if minutes < 1:
        return Phrase("just now")
    if minutes < 60:
        return Phrase("{minutes} min ago", {"minutes": minutes})
    told = moment(then, now)
    return Phrase("on {day}", {"day": told}) if told.style is Style.DAY else Phrase("today {time}", {"time": told})


def moment(then: datetime, now: datetime) -> Moment:
    """A moment of the day that `now` is in by its time, any other by its day, both in the zone that `now` is in."""
    then = then.astimezone(now.tzinfo)
    if then.date() == now.date():
        return Moment(then, Style.TIME_UTC if now.tzinfo is UTC else Style.TIME)
    return day(then)


def delivery(plan: DeliveryPlan) -> Sentence:
    """What a delivery would change."""
    if plan.unchanged:
        return Sentence("Everything is at the gateway already; list no. {number} is in force.", _facts(plan))
    if plan.only_the_list:
        return Sentence("Only the revocation list changes: no. {number} comes in force.", _facts(plan))
    return Sentence("List no. {number} comes in force; files: {told}.", _facts(plan))


def delivered(done: Delivered) -> Sentence:
    """What came of a delivery."""
    facts = {"number": done.list_number, "count": done.uploaded}
    if not done.uploaded:
        return Sentence("Everything was at the gateway already; list no. {number} is in force.", facts)
    if done.uploaded == 1:
        return Sentence("List no. {number} is in force: one file was sent, and what is there was read back.", facts)
    return Sentence("List no. {number} is in force: {count} files were sent, and what is there was read back.", facts)


def _facts(plan: DeliveryPlan) -> dict[str, object]:
    count = Counter(plan.files.values())
    told = Listing(Phrase(words, {"count": count[how]}) for how, words in _DIFFERS.items() if count[how])
    return {"number": plan.list_number, "told": told}


_DIFFERS = {
    Differs.NEW: "{count} new",
    Differs.CHANGED: "{count} changed",
    Differs.GOES: "{count} no longer needed",
    Differs.SAME: "{count} the same",
}


def spare(plan: SparePlanned) -> Sentence:
    """What a spare list does."""
    facts: dict[str, object] = {
        "title": titles(plan.chosen),
        "number": plan.list_number,
        "besides": "" if not plan.besides else titles(plan.besides),
    }
    if not plan.besides:
        return Sentence("{title} stops getting in. No passphrase is needed, and it can be let back in.", facts)
    return Sentence(
        "{title} stops getting in, and with it {besides}: no narrower list lies ready. All can be let back in.", facts
    )
