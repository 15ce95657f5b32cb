"""`hearthkey deputy`: parts and a letter for whoever takes over, their drill, their use, and the stop set."""

from __future__ import annotations

import getpass
import sys
from argparse import Namespace
from collections.abc import Callable
from pathlib import Path

from hearthkey.cli import asking, sealed
from hearthkey.cli.sheets import paper_named
from hearthkey.cli.teller import Teller
from hearthkey.core import deputy
from hearthkey.core.deputy import Part, PartNote
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.sentences.diary import day
from hearthkey.formats import deputy_sheet, sealed_tar
from hearthkey.services.deputies import LARGEST, DrawnSet
from hearthkey.services.house import House
from hearthkey.services.sheeting import language

LETTER = "deputy-letter.pdf"


def deputy_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Do what was asked for."""
    acts: dict[str, Callable[[House, Namespace, Teller], None]] = {
        "show": _show,
        "make": _make,
        "try": _try,
        "restore": _restore,
        "stop-set": _stop_set,
    }
    acts[arguments.act](house, arguments, teller)


def _show(house: House, _arguments: Namespace, teller: Teller) -> None:
    about = house.register.deputy_set()
    if about is None:
        lines = ["No parts were made for a deputy yet.", *_stop_set_lines(house)]
        teller.result(lines, {"set": None, "parts": [], "stop_set": _stop_set_data(house)})
        return
    fresh = house.deputies.fresh()
    lines = [f"Set {about.name}, made on {day(about.made)}; any {about.threshold} of {len(about.parts)} open a copy."]
    lines += [_line(one) for one in about.parts]
    if not fresh:
        lines.append(
            "Sealed copies have another passphrase since, so these parts do not open new ones: make them anew."
        )
    lines += _stop_set_lines(house)
    parts = [{"number": one.number, "tried": one.tried} for one in about.parts]
    told = {"set": about.name, "made": about.made, "fresh": fresh, "due": about.due, "parts": parts}
    teller.result(lines, {**told, "stop_set": _stop_set_data(house)})


def _stop_set_lines(house: House) -> list[str]:
    """Whether the stop set that was given away still does."""
    given, newest = house.register.stop_set(), house.register.newest_list()
    if given is None or newest is None:
        return []
    if given.base == newest.number:
        return [f"The deputy’s stop set was made on {day(given.made)} and is of list {given.base}, the newest one."]
    out = day(newest.this_update)
    told = f"The deputy’s stop set is of list {given.base}; list {newest.number} is out since {out}."
    return [f"{told} Make it anew: hearthkey deputy stop-set."]


def _stop_set_data(house: House) -> dict[str, object] | None:
    given, newest = house.register.stop_set(), house.register.newest_list()
    if given is None or newest is None:
        return None
    return {"made": given.made, "of_list": given.base, "newest_list": newest.number}


def _make(house: House, arguments: Namespace, teller: Teller) -> None:
    """Draw the parts, write their sheets, and only then let them count."""
    into, tongue, paper = _folder(arguments), language(arguments.language), paper_named(arguments.paper)
    if into.is_dir():
        deputy.check_apart(one.name for one in into.iterdir())
    secret = asking.passphrase(arguments, "Household passphrase")
    teller.progress("unlocking")
    house.keyholder.unlock(house.register, house.vault, secret)
    house.sealing.make_ready(secret)
    own = None if arguments.own_passphrase is None else asking.from_file(arguments.own_passphrase)
    drawn = house.deputies.draw(secret, own)
    facts = house.deputy_papers.letter(drawn.about, tongue)
    letter = house.draw_page(
        lambda measure: deputy_sheet.letter(facts, paper, measure), paper, facts.title, tongue.value, facts.letters
    )
    files = [house.files.write(into, LETTER, letter)]
    files += [
        house.files.write(into, f"{deputy.PART_FILE}{one.number}.pdf", _sheet(house, drawn, one, paper, tongue))
        for one in drawn.parts
    ]
    changes = house.deputies.keep(drawn)
    lines = [changes.sentence, *(f"  {one}" for one in files)]
    lines.append("Print each part by itself, give each to somebody else, then delete the files.")
    teller.result(lines, {"set": drawn.about.name, "files": files})


def _sheet(house: House, drawn: DrawnSet, one: Part, paper: Paper, tongue: Language) -> bytes:
    facts = house.deputy_papers.part(drawn, one, deputy.words_of(one, house.deputies.words), tongue)
    return house.draw_page(
        lambda measure: deputy_sheet.part(facts, paper, measure), paper, facts.title, tongue.value, ""
    )


def _try(house: House, arguments: Namespace, teller: Teller) -> None:
    """The yearly drill: each part is checked by itself."""
    told = [house.deputies.try_part(one).sentence for one in _parts(house, arguments, 1)]
    teller.result(told, {"tried": told})


def _restore(house: House, arguments: Namespace, teller: Teller) -> None:
    """Open a copy with parts, and bring the household back."""
    if arguments.file is None:
        raise Refused("deputy-copy-needed")
    data = house.files.read(arguments.file, sealed_tar.LARGEST)
    parts = _parts(house, arguments, deputy.THRESHOLD)
    teller.progress("opening-copy")
    opens = house.deputies.opening(data, tuple(parts))
    sealed.bring_back(house, arguments, teller, data, opens)
    if not arguments.plan:
        teller.aside(f"The household’s passphrase, which is yours now: {opens.household.reveal()}")


def _stop_set(house: House, arguments: Namespace, teller: Teller) -> None:
    changes = house.deputy_papers.stop_set(_folder(arguments), language(arguments.language))
    lines = [changes.sentence, "It is out of date as soon as somebody is stopped, enrolled or let back in."]
    teller.result(lines, {"files": list(changes.files)})


def _parts(house: House, arguments: Namespace, count: int) -> list[Part]:
    """The parts that were given as files, or else asked for one by one."""
    if arguments.part:
        read_codes = house.pictures.read_codes
        return [house.deputies.part_in(_read(house, path), read_codes) for path in arguments.part]
    if sys.stdin is None or not sys.stdin.isatty():
        raise Refused("deputy-part-needed")
    found = []
    for number in range(1, count + 1):
        words = getpass.getpass(f"The fifteen words of part {number} of {count}, in order: ")
        found.append(deputy.read(words, house.deputies.words))
    return found


def _read(house: House, path: Path) -> bytes:
    if str(path) == "-":
        return asking.from_file(path).reveal().encode()
    return house.files.read(path, LARGEST)


def _folder(arguments: Namespace) -> Path:
    if arguments.into is None:
        raise Refused("deputy-folder-needed")
    chosen: Path = arguments.into
    return chosen


def _line(one: PartNote) -> str:
    tried = "never tried" if one.tried is None else f"tried on {day(one.tried)}"
    return f"  part {one.number}: {tried}"
