"""What can be taken back, read from the register and written into it again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from hearthkey.core.in_force import GatewayNote
from hearthkey.core.languages import Language
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.undo import Deed, Marks, Standing
from hearthkey.services.sheet_ports import SheetRegister
from hearthkey.services.undo_ports import UndoChange, UndoRegister

THE = ""
"""The key of what there is only one of."""


def standing_of(register: UndoRegister) -> Standing:
    """How things stand.

    Raises:
        Unavailable: as the register.
    """
    household, target, call = register.household(), register.target(), register.whom_to_call()
    known = set(Language)
    return Standing(
        holds={one.serial: one.since for one in register.entries() if one.reason is Reason.CERTIFICATE_HOLD},
        settings={} if household is None else {THE: household},
        targets={} if target is None else {THE: target},
        options={THE: register.pack_options()},
        templates={one.name: one for one in register.templates()},
        languages={person: one for person, one in register.person_languages().items() if one in known},
        calls={THE: call} if call else {},
        gone=register.copies_gone(),
        visits={one: one.person for one in register.visits()},
        whose=register.whose(),
        choices={THE: register.connect_choices()},
    )


def marks_of(register: SheetRegister, passes: Sequence[Pass]) -> Marks:
    """How far things have got outside.

    Args:
        passes: every pass.
    """
    newest = register.newest_list()
    return Marks(
        0 if newest is None else newest.number,
        register.gateway_note().delivered,
        sum(one.handed_over is not None for one in passes),
        frozenset(one.serial for one in register.entries() if one.reason is not Reason.CERTIFICATE_HOLD),
        {one.serial: one.identity for one in passes},
    )


def titles_of(passes: Sequence[Pass], was: Standing, now: Standing, serials: tuple[str, ...]) -> tuple[str, ...]:
    """Whose devices a change is about; or the person whose language it chose, as the name is written.

    Args:
        passes: every pass.
        serials: of those that the verb itself named.
    """
    touched = {*was.holds, *now.holds, *now.whose, *serials}
    met = tuple(dict.fromkeys((*was.visits.values(), *now.visits.values())))
    if met:
        return met
    people = {*was.languages, *now.languages}
    chosen = [one for one in passes if one.serial in touched or one.person.casefold() in people]
    return tuple(dict.fromkeys(one.person if people else one.title for one in chosen))


def write(change: UndoChange, deed: Deed, seen: GatewayNote) -> None:
    """Write everything as it was before, but what is signed.

    Args:
        seen: at the gateway; forgotten where another one becomes the target.
    """
    before, after = deed.before, deed.after
    if before.targets or after.targets:
        _aim(change, deed, seen)
    for options in before.options.values():
        change.set_pack_options(options)
    for name in after.templates:
        change.drop_template(name)
    for template in before.templates.values():
        change.keep_template(template)
    for person in before.languages.keys() | after.languages.keys():
        change.keep_person_language(person, before.languages.get(person, ""))
    if before.calls or after.calls:
        change.keep_whom_to_call(before.calls.get(THE, ""))
    _meet(change, deed)
    for serial, whose in before.whose.items():
        change.name_device(serial, whose)
    for choices in before.choices.values():
        change.keep_connect_choices(choices)
    for number in before.gone.keys() | after.gone.keys():
        change.tidy_copy(number, before.gone.get(number))


def _aim(change: UndoChange, deed: Deed, seen: GatewayNote) -> None:
    old, new = deed.before.targets.get(THE), deed.after.targets.get(THE)
    change.set_target(old)
    if old is not None and new is not None and replace(old, reload="") == replace(new, reload=""):
        change.note_gateway(seen)


def _meet(change: UndoChange, deed: Deed) -> None:
    for visit in deed.after.visits.keys() - deed.before.visits.keys():
        change.drop_visit(visit.person, visit.day)
    for visit in deed.before.visits.keys() - deed.after.visits.keys():
        change.plan_visit(visit.person, visit.day)
