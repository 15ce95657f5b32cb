"""`hearthkey diary`: read it, look something up in it, write it to a file."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Sequence
from pathlib import Path

from hearthkey.cli.teller import Teller
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.diary_search import Subjects, folded, wanted
from hearthkey.core.errors import Refused
from hearthkey.core.network import Caution
from hearthkey.formats import diary_file
from hearthkey.services.house import House
from hearthkey.services.writing_diary import read

EMPTY = "What you do here is written down here, for you and whoever comes after you."


def diary_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Read the diary, check its chain, and keep what was looked for."""
    entries, misfit = read(house.register, house.register.sealed_copies())
    if misfit is not None:
        teller.cautions([Caution("diary-broken", str(misfit))])
    subjects = Subjects(house.register.passes())
    found = _found(entries, subjects, arguments)
    shown = found[-arguments.last :] if arguments.last else found
    if arguments.export is not None:
        path = _export(house, shown, subjects, misfit, arguments)
        teller.result([str(path)], {"first_that_does_not_fit": misfit, "entries": len(shown), "files": [str(path)]})
        return
    if arguments.json_lines and not teller.as_json:
        teller.result(diary_file.as_json_lines(shown, subjects.of).decode().splitlines(), {})
        return
    nothing = "Nothing in the diary fits that." if entries else EMPTY
    teller.result(
        [_line(one) for one in shown] or [nothing],
        {
            "first_that_does_not_fit": misfit,
            "entries": [
                {"number": one.number, "at": one.at, "verb": one.verb, "sentence": one.sentence, "link": one.link}
                for one in shown
            ],
        },
    )


def _found(entries: Sequence[DiaryEntry], subjects: Subjects, arguments: Namespace) -> list[DiaryEntry]:
    told = {one.link: subjects.of(one.sentence) for one in entries}
    known = {subject for found in told.values() for subject in found}
    person = _one_of(arguments.person, {one.person for one in known})
    title = _one_of(arguments.device, {one.title for one in known if one.device})
    looked_for = wanted(arguments.search or "", person=person, title=title)
    return [one for one in entries if looked_for.fits(folded(f"{one.sentence} {_when(one)}"), told[one.link])]


def _one_of(typed: str | None, known: set[str]) -> str:
    """The name that was meant, written plainly or not."""
    if typed is None:
        return ""
    plain = folded(typed)
    named = [one for one in known if folded(one) == plain or folded(one).replace("'s ", " ") == plain]
    if not named:
        raise Refused("diary-names-nobody", text=typed[:80], known=tuple(sorted(known)) or ("nobody yet",))
    return named[0]


def _export(
    house: House, shown: Sequence[DiaryEntry], subjects: Subjects, misfit: int | None, arguments: Namespace
) -> Path:
    """Write it where the householder said; a file that is there already stays."""
    target: Path = arguments.export.absolute()
    if house.files.mark(target) is not None:
        raise Refused("diary-file-there", path=str(target))
    household = house.register.household()
    if arguments.json_lines:
        data = diary_file.as_json_lines(shown, subjects.of)
    else:
        name = "" if household is None else household.certified_name
        chain = "The chain holds." if misfit is None else f"It does not fit together from entry {misfit} on."
        count = "1 entry." if len(shown) == 1 else f"{len(shown)} entries."
        data = diary_file.as_text(shown, [f"The diary of {name}", f"{count} {chain}"], _line)
    return house.files.write(target.parent, target.name, data)


def _when(one: DiaryEntry) -> str:
    return f"{one.at:%Y-%m-%d %H:%M}"


def _line(one: DiaryEntry) -> str:
    return f"{one.number:4}  {_when(one)} UTC  {one.sentence}"
