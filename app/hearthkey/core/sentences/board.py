"""What stands on the sheet: state words, dates, the top line."""

from __future__ import annotations

from datetime import datetime

from hearthkey.core.outlook import Ends, Outlook, is_due
from hearthkey.core.passes import Pass, State
from hearthkey.core.phrases import Moment, Phrase, Style
from hearthkey.core.proofs import Way
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence


def short_day(moment: datetime) -> Moment:
    """A date as the sheet writes it: "9 May 2028"."""
    return Moment(moment, Style.SHORT_DAY)


def weekday(moment: datetime) -> Moment:
    """A date with its day: "Tuesday 2 June"."""
    return Moment(moment, Style.WEEKDAY)


_HOUSE = {Ends.LIST: "the revocation list", Ends.GATEWAY: "the gateway’s certificate"}


def headline(outlook: Outlook, now: datetime) -> Sentence:
    """The top line."""
    if outlook.over and outlook.house_ends is Ends.LIST:
        return Sentence("Nobody gets in: the revocation list ended on {day}.", {"day": day(outlook.house_end)})
    if outlook.over:
        return Sentence("Nobody gets in: the gateway’s certificate ended on {day}.", {"day": day(outlook.house_end)})
    near = (outlook.until - now).days < 200
    when = weekday(outlook.until) if near else day(outlook.until)
    if outlook.first is None:
        return Sentence("All is well until {day}.", {"day": when})
    facts = {"day": when, "title": outlook.first.title}
    if outlook.old_ca:
        return Sentence("All is well until {day}, then {title} ends, for the old CA goes.", facts)
    return Sentence("All is well until {day}, then {title} ends.", facts)


def consequence(outlook: Outlook) -> Sentence:
    """The line under it."""
    end = {"day": day(outlook.house_end), "what": Phrase(_HOUSE[outlook.house_ends])}
    if outlook.over and outlook.house_ends is Ends.LIST:
        return Sentence("A gateway that checks its list lets nobody in until it has the next one.", end)
    if outlook.over:
        return Sentence("Devices that check the gateway turn away until it has a new certificate.", end)
    if outlook.first is None and not outlook.getting_in:
        return Sentence("The house stands; nobody gets in at present. On {day} {what} ends.", end)
    if outlook.first is None:
        return Sentence("Then {what} ends, and nobody gets in without the next one.", end)
    if outlook.old_ca:
        return Sentence("Whoever else has no pass of the new CA by then stays outside too. On {day} {what} ends.", end)
    return (
        Sentence("Nobody else is affected. But on {day} {what} ends, and then nobody gets in.", end)
        if outlook.house_due
        else Sentence("Nobody else is affected. The house stays open until {day}, when {what} ends.", end)
    )


def state_words(one: Pass, now: datetime) -> tuple[Sentence, Sentence]:
    """The state word, and the one fact that explains it; the second may be empty."""
    state = one.state(now)
    if state in {State.REVOKED, State.STOPPED}:
        since = {"day": "" if one.since is None else _date(one.since, now)}
        if state is State.REVOKED:
            return Sentence("revoked {day}", since), Sentence("final", {})
        return Sentence("stopped {day}", since), Sentence("can be let back in", {})
    if state is State.ENDED:
        return Sentence("ended {day}", {"day": _date(one.not_after, now)}), Sentence("", {})
    return _living_words(one, now, waits=state is State.WAITING)


def _living_words(one: Pass, now: datetime, *, waits: bool) -> tuple[Sentence, Sentence]:
    if one.guest:
        rest = "in the tray, ends {day}" if waits else "ends {day}"
        return Sentence("guest", {}), Sentence(rest, {"day": weekday(one.not_after)})
    if is_due(one, now):
        return _left((one.not_after - now).days), Sentence("then it ends", {})
    if one.proved is not None:
        return _proved_words(one, _date(one.proved, now), waits=waits)
    if waits:
        return Sentence("waiting", {}), Sentence("in the tray", {})
    handed = "" if one.handed_over is None else _date(one.handed_over, now)
    return Sentence("never proved", {}), Sentence("in use since {day}", {"day": handed})


def _date(moment: datetime, now: datetime) -> Moment:
    return Moment(moment, Style.DAY_OF_YEAR if moment.year == now.year else Style.DAY)


def _proved_words(one: Pass, when: Moment, *, waits: bool) -> tuple[Sentence, Sentence]:
    if waits:
        return Sentence("waiting", {}), Sentence("proved {day}, its key is still here", {"day": when})
    if one.proofs[-1].way is Way.TOLD:
        return Sentence("in use", {}), Sentence("said to work, {day}", {"day": when})
    return Sentence("in use", {}), Sentence("proved {day}", {"day": when})


def _left(days: int) -> Sentence:
    if days < 1:
        return Sentence("ends today", {})
    if days == 1:
        return Sentence("1 day left", {})
    return (
        Sentence("{days} days left", {"days": days})
        if days < 14
        else Sentence("{weeks} weeks left", {"weeks": days // 7})
    )


def until(one: Pass, now: datetime) -> Sentence:
    """What stands in the column "good until"."""
    if one.state(now) is State.REVOKED:
        return Sentence("final", {})
    return Sentence("{day}", {"day": short_day(one.not_after)})
