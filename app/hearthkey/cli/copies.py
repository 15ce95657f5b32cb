"""`hearthkey copies`: every copy of a bundle that left, and whether it is gone."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.copies import Told, unaccounted
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import copies as sentences
from hearthkey.services import looking
from hearthkey.services.house import House


def copies_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show copies, look for one, delete it, or say that it is gone."""
    if arguments.look is not None:
        _look(house, arguments.look, teller)
    elif arguments.tidied is not None:
        _done(house.tidying.mark_tidied(arguments.tidied), teller)
    elif arguments.not_tidied is not None:
        _done(house.tidying.take_back(arguments.not_tidied), teller)
    elif arguments.tidy is not None:
        _tidy(house, arguments, teller)
    else:
        _list(house, arguments, teller)


def _list(house: House, arguments: Namespace, teller: Teller) -> None:
    passes = None if arguments.device is None else looking.find(house.register.passes(), arguments.device)
    found = house.tidying.all(passes)
    lines: list[str] = []
    for number, one in enumerate(found):
        if number == 0 or found[number - 1].of.identity != one.of.identity:
            lines.append(one.of.title)
        lines.append(f"  {_line(one)}")
    lines.append(f"{len(found)} copies, {len(unaccounted(found))} of them not known to be gone.")
    teller.result(lines if found else ["No copy has left this computer."], {"copies": [_data(one) for one in found]})


def _line(one: Told) -> str:
    made = one.copy.made
    told = sentences.described(one, str(sentences.form(one.copy)))
    return f"{one.copy.number:4}  {made:%Y-%m-%d %H:%M}  {told}: {sentences.standing(one)}"


def _data(one: Told) -> dict[str, object]:
    copy = one.copy
    return {
        "number": copy.number,
        "device": one.of.title,
        "serial": copy.serial,
        "form": copy.form,
        "way": copy.way.value,
        "place": copy.place,
        "files": list(copy.names),
        "made": copy.made,
        "tidied": copy.tidied,
        "standing": one.standing.value,
    }


def _look(house: House, number: int, teller: Teller) -> None:
    looked = house.tidying.look(number)
    teller.result(
        [str(sentences.found(looked.found))],
        {"number": number, "found": looked.found.value, "folder": looked.folder, "files": list(looked.told.copy.names)},
    )


def _tidy(house: House, arguments: Namespace, teller: Teller) -> None:
    looked = house.tidying.look(arguments.tidy)
    teller.aside(f"{sentences.found(looked.found)} {sentences.on_flash(looked.told.copy)}")
    asking.agree(arguments, teller, "Delete it?")
    _done(house.tidying.tidy(arguments.tidy), teller)


def _done(changes: Changes, teller: Teller) -> None:
    teller.result([changes.sentence], {"done": changes.sentence, "files": list(changes.files)})
