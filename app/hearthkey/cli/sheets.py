"""`hearthkey sheet`: the hand-over sheet, the passphrase card, the two messages."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli.teller import Teller
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper, card_file
from hearthkey.core.languages import Language
from hearthkey.core.names import file_stem
from hearthkey.core.passes import Pass
from hearthkey.formats import hand_over_sheet, hand_over_texts
from hearthkey.formats.laid_sheet import Mark, Measure
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.sheeting import language


def sheet_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Write one of them; never two that would bring words and bundle together."""
    if arguments.call is not None:
        house.sheeting.choose_call(arguments.call)
    if arguments.device is None:
        teller.result([house.sheeting.call() or "Nobody is named."], {"call": house.sheeting.call()})
        return
    chosen = looking.newest(looking.find(house.register.passes(), arguments.device))
    tongue = _language(house, arguments, chosen)
    if arguments.messages:
        _messages(house, chosen, tongue, arguments, teller)
    else:
        _paper(house, chosen, tongue, arguments, teller)


def _language(house: House, arguments: Namespace, chosen: Pass) -> Language:
    if arguments.language is None:
        return house.sheeting.language_of(chosen.person, Language.ENGLISH)
    tongue = language(arguments.language)
    house.sheeting.choose_language(chosen.person, tongue)
    return tongue


def _messages(house: House, chosen: Pass, tongue: Language, arguments: Namespace, teller: Teller) -> None:
    """One of the two: whoever wants the other asks once more."""
    found = house.sheeting.messages(chosen, tongue)
    if arguments.messages == "written":
        teller.result([found.written], {"written": found.written})
    else:
        teller.result([found.spoken.reveal()], {"spoken": found.spoken.reveal()})


def _paper(house: House, chosen: Pass, tongue: Language, arguments: Namespace, teller: Teller) -> None:
    paper = paper_named(arguments.paper)
    form = None if arguments.form is None else Form(arguments.form)
    facts = house.sheeting.sheet(chosen, form, tongue)
    stem = file_stem(chosen.title, chosen.identity)
    if arguments.card:
        card = house.sheeting.card(chosen, tongue)
        title = hand_over_texts.text("words-title", tongue, person=chosen.person)
        letters = chosen.person + card.words.reveal()
        data = house.draw_page(
            lambda measure: hand_over_sheet.card(card, paper, measure), paper, title, tongue.value, letters
        )
        name = card_file(chosen)
    else:

        def lay(measure: Measure) -> tuple[Mark, ...]:
            return hand_over_sheet.sheet(facts, paper, measure)

        title = hand_over_texts.text("device", tongue, person=chosen.person, device=chosen.device)
        letters = f"{chosen.person}{chosen.device}{facts.household}{facts.call}{facts.kind}"
        letters += "".join(step.do + step.sees for step in facts.steps)
        data = house.draw_page(lay, paper, title, tongue.value, letters)
        name = f"{stem}-sheet.pdf"
    path = house.files.write(arguments.into, name, data)
    teller.result([str(path)], {"files": [str(path)]})


def paper_named(text: str) -> Paper:
    """A paper by its name.

    Raises:
        Refused: paper-unknown.
    """
    known = {one.name.casefold(): one for one in Paper}
    if text.casefold() not in known:
        raise Refused("paper-unknown", text=text[:40], known=tuple(known))
    return known[text.casefold()]
