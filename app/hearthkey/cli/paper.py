"""`hearthkey paper`, `hearthkey try --paper` and `hearthkey restore --paper`."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Sequence
from pathlib import Path

from hearthkey.cli import asking
from hearthkey.cli.sheets import paper_named
from hearthkey.cli.teller import Teller
from hearthkey.core.languages import Language
from hearthkey.core.network import Caution
from hearthkey.core.paper import Gathered
from hearthkey.core.sentences.diary import day
from hearthkey.formats import paper_sheet
from hearthkey.formats.paper_sheet import PaperFacts
from hearthkey.services import reading_paper
from hearthkey.services.house import House


def paper_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Put the household's key on paper."""
    paper = paper_named(arguments.paper)
    facts = house.papering.facts(Language(arguments.language))
    letters = facts.title + facts.contents.household.name
    data = house.draw_pages(
        lambda measure: paper_sheet.pages(facts, paper, measure), paper, facts.title, facts.language.value, letters
    )
    path = house.files.write(arguments.into.parent, arguments.into.name, data)
    changes = house.papering.printed(path.name)
    told = "The passphrase is not on it: keep the two apart. Print both pages, then delete the file."
    to_try = "To be sure of it, scan what was printed: hearthkey try --paper SCAN"
    lines = [changes.sentence, *_whose(facts), told, to_try]
    teller.result(lines, {"files": [str(path)]})


def _whose(facts: PaperFacts) -> list[str]:
    """Which of two keys is on it, while there are two."""
    older = facts.older
    if older is None:
        return []
    newer = f"Its key is the newer CA’s, good until {day(facts.until)}."
    if older.lost:
        return [newer]
    return [f"{newer} The older one’s is on the paper made before {day(older.since)}: keep both until it is put away."]


def try_paper(house: House, arguments: Namespace, teller: Teller) -> None:
    """Read a paper for real, and open its key."""
    content = _read(house, arguments.paper)
    secret = asking.passphrase(arguments, "Household passphrase")
    changes = house.papering.try_paper(content, secret, progress=teller.progress)
    teller.result([changes.sentence], {"tried": changes.sentence})


def _read(house: House, files: Sequence[Path]) -> bytes:
    """Everything that the files say of a paper together."""
    gathered = Gathered()
    for path in files:
        data = house.files.read(path, reading_paper.LARGEST)
        gathered = reading_paper.gathered(data, path.name, gathered, house.pictures.read_codes)
    return gathered.content()


def from_paper(house: House, arguments: Namespace, teller: Teller) -> None:
    """Bring a household back from its paper."""
    content = _read(house, arguments.paper)
    house.restoring_paper.told(content)
    secret = asking.passphrase(arguments, "Household passphrase")
    plan = house.restoring_paper.preview(content, secret, progress=teller.progress)
    if arguments.plan:
        teller.result([plan.sentence], {"plan": plan.sentence})
        return
    teller.aside(plan.sentence)
    asking.agree(arguments, teller, "Bring it back?")
    changes = house.restoring_paper.apply(plan, progress=teller.progress)
    house.sealing.make_ready(secret)
    house.listing.publish_missing()
    house.sparing.renew()
    name = plan.contents.household.certified_name
    teller.cautions([Caution("one-computer", name)])
    lines = [
        changes.sentence,
        "Next: hearthkey gateway, then hearthkey deliver: who was stopped is taken over from the gateway.",
        "Then enrol everybody anew: hearthkey add.",
    ]
    teller.result(lines, {"restored": changes.sentence, "household": name})
