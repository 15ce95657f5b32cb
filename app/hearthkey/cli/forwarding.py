"""`hearthkey forwarding-sheet`."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

from hearthkey.cli.teller import Teller
from hearthkey.core.forwarding import ESP_PROTOCOL, ForwardingFacts
from hearthkey.formats.forwarding_sheet import blocks
from hearthkey.formats.sheet import text
from hearthkey.services.house import House

_NAME = "forwarding-sheet.pdf"


def forwarding_sheet_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show the sheet, or write it as PDF."""
    facts = house.forwarding.facts(inside=arguments.gateway_inside, router=arguments.router)
    found = blocks(facts)
    if arguments.into is None:
        teller.result(text(found).splitlines(), _data(facts))
        return
    folder, name = _place(arguments.into)
    path = house.files.write(folder, name, house.print_blocks(found))
    teller.result([str(path)], {"files": [str(path)], **_data(facts)})


def _place(into: Path) -> tuple[Path, str]:
    """Folder and file name; what does not end in .pdf is a folder."""
    return (into.parent, into.name) if into.suffix.casefold() == ".pdf" else (into, _NAME)


def _data(facts: ForwardingFacts) -> dict[str, object]:
    return {
        "host": facts.host,
        "inside": facts.inside or None,
        "families": list(facts.families),
        "forward": [
            {"purpose": one.purpose, "protocol": one.protocol, "outside": one.port, "inside": one.port}
            for one in facts.openings
        ],
        "let_through_protocols": [ESP_PROTOCOL] if 6 in facts.families else [],
        "router": None if facts.router is None else {"address": str(facts.router[0]), "kind": facts.router[1]},
    }
