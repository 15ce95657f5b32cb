"""The READ-ME of a deputy's stop set, in each language, with a note for whoever translates it.

The reader stands at the gateway and a device is lost. German says "du", Spanish "tú". Names in {braces} are filled in
and may not be translated, and neither are file names.
"""

from __future__ import annotations

import textwrap
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.languages import Language
from hearthkey.formats.hand_over_texts import day
from hearthkey.formats.pickup_texts import Text

WIDTH = 78
"""Columns, so that any machine shows it."""

TEXTS: dict[str, Text] = {
    "practice": Text(
        "First line, in a practice household.",
        "PRACTICE: nothing here is real.",
        "ÜBUNG: Nichts davon ist echt.",
        "ENSAYO: nada de esto es real.",
    ),
    "title": Text(
        "Title. {household} is the name of the house.",
        "{household}: how to stop a lost device",
        "{household}: ein verlorenes Gerät sperren",
        "{household}: cómo detener un aparato perdido",
    ),
    "what": Text(
        "What this is. A gateway refuses whoever is on its list.",
        "Each folder beside this file holds a list for the gateway that stops one device, all devices of one person, "
        "or everybody. Nobody can be let in with these files, and no key is among them.",
        "Jeder Ordner neben dieser Datei enthält eine Liste für das Gateway, die ein Gerät sperrt, alle Geräte einer "
        "Person, oder alle. Mit diesen Dateien lässt sich niemand hineinlassen, und kein Schlüssel ist dabei.",
        "Cada carpeta junto a este archivo tiene una lista para la puerta de enlace que detiene un aparato, todos los "
        "de una persona, o todos. Con estos archivos no se deja entrar a nadie, y no hay ninguna llave entre ellos.",
    ),
    "step-choose": Text(
        "Step. Names of folders carry the name of the device.",
        "Choose the folder by its name.",
        "Wähl den Ordner nach seinem Namen.",
        "Elige la carpeta por su nombre.",
    ),
    "step-copy": Text(
        "Step. {where} is a folder at the gateway.",
        "At the gateway, replace list.pem and list.crl by the two files of that folder. They lie in {where}.",
        "Ersetz am Gateway list.pem und list.crl durch die beiden Dateien aus dem Ordner. Sie liegen in {where}.",
        "En la puerta de enlace, cambia list.pem y list.crl por los dos archivos de la carpeta. Están en {where}.",
    ),
    "step-copy-somewhere": Text(
        "The same, where the app does not know the folder.",
        "At the gateway, replace list.pem and list.crl by the two files of that folder.",
        "Ersetz am Gateway list.pem und list.crl durch die beiden Dateien aus dem Ordner.",
        "En la puerta de enlace, cambia list.pem y list.crl por los dos archivos de la carpeta.",
    ),
    "step-run": Text(
        "Step. {command} is what the householder has the gateway run.",
        "Run this at the gateway: {command}",
        "Führ am Gateway dies aus: {command}",
        "Ejecuta esto en la puerta de enlace: {command}",
    ),
    "step-read": Text(
        "The same, where no command is known.",
        "Have the gateway read its list again; starting it anew does that too.",
        "Lass das Gateway seine Liste neu lesen; ein Neustart tut es auch.",
        "Haz que la puerta de enlace vuelva a leer su lista; reiniciarla también sirve.",
    ),
    "step-tell": Text(
        "Step.",
        "Write down which folder it was and when, and tell the household. At its next delivery it takes this over.",
        "Schreib auf, welcher Ordner es war und wann, und sag es dem Haushalt. Bei der nächsten Lieferung übernimmt er "
        "es.",
        "Apunta qué carpeta fue y cuándo, y dilo en casa. En la siguiente entrega se tiene en cuenta.",
    ),
    "one": Text(
        "What to mind. A list replaces the one before; it does not add to it.",
        "Use one folder only. A second one takes the place of the first, and whom the first had stopped gets in again. "
        "If another device is lost too, take the folder of the person, or the one for everybody.",
        "Nimm nur einen Ordner. Ein zweiter tritt an die Stelle des ersten, und wen der erste gesperrt hatte, kommt "
        "wieder hinein. Ist noch ein Gerät weg, nimm den Ordner der Person, oder den für alle.",
        "Usa una sola carpeta. Una segunda ocupa el lugar de la primera, y lo que la primera detuvo vuelve a entrar. "
        "Si se pierde otro aparato, usa la carpeta de la persona o la de todos.",
    ),
    "old": Text(
        "What to mind. {day} is a date, {number} the number of the list that all of these are based on.",
        "Made on {day}, beside list {number}. If the household has signed a newer list since, ask for a newer set: "
        "this one would let in again whoever was stopped later.",
        "Vom {day}, zu Liste {number}. Hat der Haushalt seither eine neuere Liste signiert, bitte um einen neueren "
        "Satz: Dieser ließe wieder hinein, wer später gesperrt wurde.",
        "Del {day}, con la lista {number}. Si la casa ha firmado después otra más nueva, pide un juego más nuevo: este "
        "dejaría entrar de nuevo a quien se detuvo más tarde.",
    ),
    "until": Text(
        "What to mind. {day} is a date.",
        "After {day} these lists let nobody in at all, for their time is over.",
        "Nach dem {day} lassen diese Listen überhaupt niemanden mehr hinein, denn ihre Zeit ist um.",
        "Después del {day} estas listas no dejan entrar a nadie, porque su plazo ha pasado.",
    ),
    "person": Text(
        "Name of a folder. {name} is a person.", "everything of {name}", "alles von {name}", "todo de {name}"
    ),
    "everybody": Text("Name of a folder.", "everybody", "alle", "todos"),
}


@dataclass(frozen=True)
class StopSetFacts:
    """What the READ-ME says.

    Args:
        household: its name.
        made: the day, UTC.
        number: of the list that all are based on.
        until: when the lists end, UTC.
        where: the folder at the gateway, or empty.
        command: what has the gateway read its list again, or empty.
        language: of all of it.
        practice: nothing of it is real.
    """

    household: str
    made: datetime
    number: int
    until: datetime
    where: str
    command: str
    language: Language
    practice: bool


def text(key: str, language: Language, **facts: object) -> str:
    """The text of a key, filled in."""
    found: str = getattr(TEXTS[key], language.value)
    return found.format(**facts)


def read_me(facts: StopSetFacts) -> str:
    """Write the READ-ME, lines of at most `WIDTH` columns but for a folder or a command that is longer."""
    tongue = facts.language
    title = text("title", tongue, household=facts.household)
    where = text("step-copy", tongue, where=facts.where) if facts.where else text("step-copy-somewhere", tongue)
    run = text("step-run", tongue, command=facts.command) if facts.command else text("step-read", tongue)
    steps = (text("step-choose", tongue), where, run, text("step-tell", tongue))
    blocks = [text("practice", tongue)] if facts.practice else []
    blocks += [title, _filled(text("what", tongue))]
    blocks += [_filled(step, f"{number}. ") for number, step in enumerate(steps, 1)]
    blocks += [
        _filled(text("one", tongue)),
        _filled(text("old", tongue, day=day(facts.made, tongue), number=facts.number)),
        _filled(text("until", tongue, day=day(facts.until, tongue))),
    ]
    return "\n\n".join(blocks) + "\n"


def _filled(told: str, before: str = "") -> str:
    return textwrap.fill(
        told,
        WIDTH,
        initial_indent=before,
        subsequent_indent=" " * len(before),
        break_long_words=False,
        break_on_hyphens=False,
    )
