"""`hearthkey kinds`: what is known of each kind of device, and the householder's own."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator
from datetime import date
from pathlib import Path

from hearthkey.cli.teller import Teller
from hearthkey.core.kinds import DeviceKind, Kinds
from hearthkey.services.house import House

_LONG_AGO = 12
"""Months after which what was checked is called old: systems change every year."""


def kinds_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show, check, keep, begin or take away kinds of devices."""
    if arguments.check is not None:
        _check(house, arguments.check, teller)
    elif arguments.add is not None:
        _add(house, arguments.add, teller)
    elif arguments.remove is not None:
        _remove(house, arguments.remove, teller)
    elif arguments.start is not None:
        name, path = arguments.start
        written = house.keeping_kinds.start(name, Path(path))
        teller.result([f"{written}", f"Change it, then: hearthkey kinds --add {written}"], {"file": written})
    else:
        _show(house, arguments, teller)


def left_out(kinds: Kinds, teller: Teller) -> None:
    """Say which own files could not be read, and that the verb goes on without them."""
    for one in kinds.left_out:
        teller.remark(one.trouble)


def _show(house: House, arguments: Namespace, teller: Teller) -> None:
    kinds = house.kinds
    left_out(kinds, teller)
    today = house.clock.now().date()
    if arguments.name is not None:
        kind = kinds.find(arguments.name)
        teller.result(_whole(kind, today, arguments.language), _data(kind, today, arguments.language))
        return
    wide = max(len(one.name) for one in kinds)
    broad = max(len(one.words(arguments.language)) for one in kinds)
    lines = [
        f"{one.name:{wide}}  {one.words(arguments.language):{broad}}  {one.key_set.name:9}  {one.container:6}  "
        f"{one.checked}{'  yours' if one.own else ''}"
        for one in kinds
    ]
    out = [{"file": one.file, "code": one.trouble.code} for one in kinds.left_out]
    data = {"kinds": [_data(one, today, arguments.language) for one in kinds], "left_out": out}
    teller.result(lines, data)


def _check(house: House, path: Path, teller: Teller) -> None:
    plan = house.keeping_kinds.preview(path)
    replaced = "" if plan.replaces is None else f" It would stand for the kind {plan.kind.name} that there is."
    teller.result(
        [f"{path.name} describes {plan.kind.words()} ({plan.kind.name}) and is whole.{replaced}"],
        {"kind": plan.kind.name, "whole": True, "replaces": plan.replaces is not None},
    )


def _add(house: House, path: Path, teller: Teller) -> None:
    plan = house.keeping_kinds.preview(path)
    kept = house.keeping_kinds.keep(plan)
    teller.result(
        [
            f"{plan.kind.words()} ({plan.kind.name}) is known from now on.",
            "A window that is open learns it when it is opened again.",
        ],
        {"kind": plan.kind.name, "file": kept, "replaces": plan.replaces is not None},
    )


def _remove(house: House, name: str, teller: Teller) -> None:
    ours = house.keeping_kinds.remove(name)
    after = f"{name} is taken away. "
    if ours is not None:
        after += "The one that came with the app stands again."
    else:
        after += "Devices of this kind stay as they are, and are treated like something else."
    teller.result([after], {"removed": name, "shipped": ours is not None})


def _months(kind: DeviceKind, today: date) -> int:
    """Whole months since it was checked; none where the day is still to come."""
    then = kind.checked
    return max(0, (today.year - then.year) * 12 + today.month - then.month - (today.day < then.day))


def _age(kind: DeviceKind, today: date) -> str:
    months = _months(kind, today)
    ago = "this month" if months == 0 else f"{months} months ago" if months > 1 else "a month ago"
    old = "; menus may have changed since" if months >= _LONG_AGO else ""
    tried = "tried on a device" if kind.tried else "not tried on a device"
    return f"{kind.checked}, {ago}{old}; {tried}"


def _whole(kind: DeviceKind, today: date, language: str) -> Iterator[str]:
    yield f"{kind.words(language)} ({kind.name}{', yours' if kind.own else ''})"
    yield f"  versions       {kind.ages.words.of(language)}"
    yield f"  key            {kind.key_set.key_type}, key set {kind.key_set.name}, {kind.container} container"
    yield f"  why            {kind.why(language)}"
    yield f"  forms          {', '.join(kind.forms)}"
    yield f"  last checked   {_age(kind, today)}"
    for one in kind.fields:
        yield f"  asks for       {one.label(language)}: {one.choose or one.value.value}"
    for form in kind.forms:
        yield f"  With {form}:"
        for number, step in enumerate(kind.steps(form, language), 1):
            yield f"    {number}  {step.do}"
            if step.sees:
                yield f"       > {step.sees}"
    for label, texts in (("Known to go wrong:", kind.traps(language)), ("Read in:", kind.sources)):
        if texts:
            yield f"  {label}"
            yield from (f"    -  {text}" for text in texts)


def _data(kind: DeviceKind, today: date, language: str) -> dict[str, object]:
    return {
        "name": kind.name,
        "words": kind.words(language),
        "family": kind.family.value,
        "versions": {"words": kind.ages.words.of(language), "since": kind.ages.since, "until": kind.ages.until},
        "key_set": kind.key_set.name,
        "container": kind.container,
        "why": kind.why(language),
        "forms": list(kind.forms),
        "fields": [
            {"value": one.value.value, "label": one.label(language), "choose": one.choose} for one in kind.fields
        ],
        "steps": {
            form: [{"do": step.do, "sees": step.sees} for step in kind.steps(form, language)] for form in kind.forms
        },
        "traps": list(kind.traps(language)),
        "sources": list(kind.sources),
        "checked": kind.checked.isoformat(),
        "months_since": _months(kind, today),
        "tried": kind.tried,
        "own": kind.own,
    }
