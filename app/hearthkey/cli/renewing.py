"""`hearthkey renew`, `supersede` and `visit`."""

from __future__ import annotations

import signal
from argparse import Namespace
from collections.abc import Iterator
from contextlib import contextmanager
from types import FrameType

from hearthkey.cli import asking
from hearthkey.cli.devices import date
from hearthkey.cli.teller import Teller
from hearthkey.cli.withdrawing import done
from hearthkey.core import renewal
from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.renewal import Visit
from hearthkey.core.sentences import renewal as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.renewing import Left, Round, RoundDone


def renew_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Renew one device or a round of them; or take a renewal back."""
    if arguments.take_back:
        _take_back(house, arguments, teller)
        return
    visit = None if arguments.visit is None else _visit(house, *arguments.visit)
    planned = _round(house, arguments, visit)
    told = [str(sentences.plan(one)) for one in planned.plans]
    left = _left(planned.left)
    if arguments.plan:
        teller.result([*told, *left], {"plan": told, "left": left})
        return
    if visit is not None:
        teller.aside(house.visiting.plan(visit).sentence)
    if not planned.plans:
        teller.result(left, {"done": [], "left": left})
        return
    for sentence in told:
        teller.aside(sentence)
    if len(told) > 1:
        asking.agree(arguments, teller, "Renew them all?")
    asking.unlock(house, arguments, teller)
    with stoppable(teller) as stopping:
        came = house.renewing.go_round(planned, progress=teller.progress, stopped=lambda: bool(stopping))
    over = house.superseding.follow_up()
    house.sparing.renew()
    lines = [one.sentence for one in came.done] + ([] if over is None else [over.sentence, "Next: hearthkey deliver"])
    ahead = _ahead(came)
    teller.cautions([caution for one in came.done for caution in one.cautions])
    teller.result(
        [*lines, *left, *ahead],
        {"done": [one.sentence for one in came.done], "left": [*left, *ahead], "serials": _serials(came)},
    )
    if came.failed is not None:
        raise came.failed


def _round(house: House, arguments: Namespace, visit: Visit | None) -> Round:
    """What is to be renewed.

    Raises:
        Refused: word-missing, renewal-none, and as `Renewing`.
    """
    renewing, overlap = house.renewing, arguments.overlap
    if arguments.device:
        found = [looking.find(house.register.passes(), text) for text in _names(arguments.device, house)]
        if arguments.until is not None:
            if len(found) != 1:
                raise Refused("word-missing", what="one DEVICE with --until")
            return Round((renewing.preview(found[0], overlap_days=overlap, ends=date(arguments.until)),))
        return renewing.plan_named(found, overlap_days=overlap)
    if visit is not None:
        return renewing.plan_due(house.visiting.covers(visit), person=visit.person, overlap_days=overlap)
    if arguments.all_due is None:
        raise Refused("word-missing", what="DEVICE, --all-due DATE or --visit PERSON DATE")
    planned = renewing.plan_due(date(arguments.all_due), overlap_days=overlap)
    if not planned.plans and not planned.left:
        raise Refused("renewal-none")
    return planned


def _names(typed: list[str], house: House) -> list[str]:
    """What was typed as names of devices: `Ines phone` may come as one word or as two."""
    together = " ".join(typed)
    try:
        looking.find(house.register.passes(), together)
    except Refused:
        return typed
    return [together]


def _visit(house: House, person: str, on: str) -> Visit:
    return house.visiting.checked(person, date(on))


def _left(found: tuple[Left, ...]) -> list[str]:
    return [str(sentences.left(one.chosen.title, one.why)) for one in found]


def _ahead(came: RoundDone) -> list[str]:
    return [str(sentences.left(one.old.title, "not-begun")) for one in came.ahead]


def _serials(came: RoundDone) -> list[str]:
    return [serial for one in came.done for serial in one.serials]


@contextmanager
def stoppable(teller: Teller) -> Iterator[list[int]]:
    """Let the first Ctrl+C stop a round between two devices, and the second one at once."""
    stopping: list[int] = []
    before = signal.getsignal(signal.SIGINT)

    def stop(number: int, _frame: FrameType | None) -> None:
        stopping.append(number)
        teller.aside("Stopping after this device.")
        signal.signal(signal.SIGINT, before)

    signal.signal(signal.SIGINT, stop)
    try:
        yield stopping
    finally:
        signal.signal(signal.SIGINT, before)


def _take_back(house: House, arguments: Namespace, teller: Teller) -> None:
    if not arguments.device:
        raise Refused("word-missing", what="DEVICE")
    plan = house.superseding.preview_take_back(_one(house, " ".join(arguments.device)))
    told = str(sentences.take_back(plan))
    if arguments.plan:
        teller.result([told], {"plan": told})
        return
    teller.aside(told)
    asking.agree(arguments, teller, "Take it back?")
    asking.unlock(house, arguments, teller)
    done(house, house.superseding.take_back(plan), teller, [])


def _one(house: House, text: str) -> list[Pass]:
    return looking.find(house.register.passes(), text)


def supersede_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Let old passes go, because the householder says so or because what follows was proved."""
    if arguments.proved:
        plan = house.superseding.proved()
        if plan is None:
            teller.result(["Nothing is over."], {"done": None})
            return
    elif arguments.device is None:
        raise Refused("word-missing", what="DEVICE or --proved")
    else:
        plan = house.superseding.preview_supersede(_one(house, arguments.device))
    told = str(sentences.supersede(plan))
    if arguments.plan:
        teller.result([told], {"plan": told})
        return
    teller.aside(told)
    asking.agree(arguments, teller, "Let it go for good?")
    asking.unlock(house, arguments, teller)
    done(house, house.superseding.supersede(plan), teller, [])


def after_proof(house: House, arguments: Namespace, teller: Teller) -> None:
    """What a proof brings about: the old pass goes, at once where the passphrase is at hand."""
    plan = house.superseding.proved()
    if plan is None:
        _say_what_stays(house, arguments, teller)
        return
    if arguments.passphrase_file is None:
        teller.aside("The old pass can go now. Next: hearthkey supersede --proved")
        return
    asking.unlock(house, arguments, teller)
    teller.aside(house.superseding.supersede(plan).sentence)
    house.sparing.renew()
    if house.register.target() is not None:
        house.delivering.deliver(only_list=True, progress=teller.progress)


def _say_what_stays(house: House, arguments: Namespace, teller: Teller) -> None:
    """Why a proof took nothing away: it cannot tell which of the two passes it was."""
    now, passes = house.clock.now(), _one(house, arguments.device)
    lineage = renewal.Lineage(house.register.follows())
    stays = [one for one in passes if one.serial in set(lineage.followed) and renewal.works(one, now)]
    if stays and passes[-1].proofs:
        teller.aside(str(sentences.both_stay(stays[-1], lineage.overlap_ends(stays[-1].serial))))


def visit_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show the visits that are planned and what is due at each; keep one, or call one off."""
    if arguments.person is None:
        _show_visits(house, teller)
        return
    if arguments.day is None:
        raise Refused("word-missing", what="DATE")
    if arguments.call_off:
        changes = house.visiting.call_off(arguments.person, date(arguments.day))
    else:
        changes = house.visiting.plan(_visit(house, arguments.person, arguments.day))
    teller.result([changes.sentence], {"done": changes.sentence})


def _show_visits(house: House, teller: Teller) -> None:
    found = []
    for one in house.visiting.ahead():
        due = house.renewing.due(house.visiting.covers(one), person=one.person)
        found.append((one, [each.title for each in due]))
    teller.result(
        [f"{day(one.day)}  {one.person}: {', '.join(due) if due else 'nothing to renew'}" for one, due in found],
        {"visits": [{"person": one.person, "day": one.day, "renew": due} for one, due in found]},
    )
