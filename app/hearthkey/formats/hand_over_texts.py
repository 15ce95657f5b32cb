"""Every text of the hand-over sheet, the passphrase card and the messages, with a note for whoever translates it.

The reader is a relative who has the paper in one hand and the device in the other. German says "du", Spanish "tú".
Names in {braces} are filled in and may not be translated.
"""

from __future__ import annotations

from datetime import datetime

from hearthkey.core.languages import Language
from hearthkey.formats.pickup_texts import Text

TEXTS: dict[str, Text] = {
    "device": Text(
        "Title of the sheet: whose device it is for. {person} and {device} are names as the household typed them.",
        "{person}’s {device}",
        "{device} von {person}",
        "{device} de {person}",
    ),
    "home": Text(
        "Below the title. {household} is the name of the house, {kind} what the device is, for instance “Mac”.",
        "{kind}: the way home to {household}",
        "{kind}: der Weg nach Hause, {household}",
        "{kind}: el camino a casa, {household}",
    ),
    "practice": Text(
        "Stands in large type on sheets of the practice household.",
        "Practice: nothing here is real",
        "Übung: Nichts davon ist echt",
        "Ensayo: nada de esto es real",
    ),
    "sees": Text("Before what the device shows after a step.", "Then: {sees}", "Dann: {sees}", "Después: {sees}"),
    "works": Text("Label, strong.", "It works when", "Es klappt, wenn", "Funciona cuando"),
    "works-more": Text(
        "Goes on after the label. The test counts only away from the Wi-Fi at home.",
        "Wi-Fi is switched off, the phone is on mobile data, and a page from home still opens.",
        "WLAN aus ist, das Handy mobile Daten nutzt und eine Seite von zu Hause trotzdem aufgeht.",
        "el wifi está apagado, el móvil usa datos y una página de casa se abre igual.",
    ),
    "works-laptop": Text(
        "The same for a laptop, which is tried on a phone's hotspot.",
        "the laptop is on a phone’s hotspot, not on the Wi-Fi at home, and a page from home still opens.",
        "der Laptop am Hotspot eines Handys hängt, nicht am WLAN zu Hause, und eine Seite von zu Hause aufgeht.",
        "el portátil usa el punto de acceso de un móvil, no el wifi de casa, y una página de casa se abre igual.",
    ),
    "call": Text("Label, strong.", "If it does not", "Wenn nicht", "Si no"),
    "call-more": Text("{call} is a name and a number.", "Call {call}.", "Ruf an: {call}.", "Llama a {call}."),
    "call-nobody": Text(
        "Where the householder left no number.",
        "Call whoever gave you this sheet.",
        "Ruf an, von wem du dieses Blatt hast.",
        "Llama a quien te dio esta hoja.",
    ),
    "lost": Text("Label, strong.", "If it is lost", "Wenn es weg ist", "Si se pierde"),
    "lost-more": Text(
        "What to do if the device is lost or stolen.",
        "Call at once, at any hour. It is then stopped quickly, and can be let back in if it turns up.",
        "Ruf sofort an, egal wann. Es wird dann schnell gesperrt und kommt wieder hinein, wenn es auftaucht.",
        "Llama enseguida, a cualquier hora. Así se bloquea pronto, y vuelve a entrar si aparece.",
    ),
    "until": Text("{day} is a date.", "It gets in until {day}.", "Es kommt bis {day} hinein.", "Entra hasta el {day}."),
    "note": Text("Label above empty lines.", "Note", "Notiz", "Nota"),
    "caution": Text(
        "Small, at the foot. Who administers a device may forbid this, and so may the law of a country.",
        "A device from an employer is the employer’s: ask there first. On a journey, the law there decides.",
        "Ein Gerät vom Arbeitgeber gehört ihm: frag dort zuerst. Auf Reisen gilt das Recht dort.",
        "Un aparato de la empresa es de la empresa: pregunta allí antes. De viaje manda la ley de allí.",
    ),
    "made": Text("Small, at the foot. {day} is a date.", "Made on {day}", "Vom {day}", "Del {day}"),
    "words-title": Text("Title of the card.", "For {person}", "Für {person}", "Para {person}"),
    "words-how": Text(
        "Below the seven words.",
        "Seven words, one space between two of them, no capitals.",
        "Sieben Wörter, je ein Leerzeichen dazwischen, alles klein.",
        "Siete palabras, un espacio entre cada dos, todo en minúsculas.",
    ),
    "words-keep": Text(
        "What to do with the card.",
        "Keep this card away from everything else you were given. Once the device has let you in, destroy it.",
        "Bewahr diese Karte getrennt von allem anderen auf. Wenn das Gerät dich hineingelassen hat, vernichte sie.",
        "Guarda esta tarjeta lejos de todo lo demás. Cuando el aparato te haya dejado entrar, destrúyela.",
    ),
    "written": Text(
        "A message that travels with the file. Two or three sentences.",
        "Hello {person}, this file is for your {device}. Save it there, but wait: we will open it together on the "
        "phone, and I will tell you seven words then. Do not send it on.",
        "Hallo {person}, diese Datei ist für dein Gerät ({device}). Speichere sie dort, aber warte: Wir öffnen sie "
        "zusammen am Telefon, und dann sage ich dir sieben Wörter. Schick sie nicht weiter.",
        "Hola, {person}: este archivo es para tu aparato ({device}). Guárdalo ahí, pero espera: lo abriremos juntos "
        "por teléfono y entonces te diré siete palabras. No lo reenvíes.",
    ),
    "spoken": Text(
        "To be read aloud on the phone; numbered words follow.",
        "Say it on the phone, one word after the other, and have each one repeated. Send it nowhere.",
        "Sag es am Telefon, ein Wort nach dem anderen, und lass jedes wiederholen. Schick es nirgendwohin.",
        "Dilo por teléfono, palabra por palabra, y que repita cada una. No lo envíes a ningún sitio.",
    ),
}

_MONTHS = {
    Language.ENGLISH: "January February March April May June July August September October November December",
    Language.GERMAN: "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    Language.SPANISH: "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
}
_DAY = {
    Language.ENGLISH: "{day} {month} {year}",
    Language.GERMAN: "{day}. {month} {year}",
    Language.SPANISH: "{day} de {month} de {year}",
}


def text(key: str, language: Language, **facts: str) -> str:
    """The text of a key, filled in."""
    found: str = getattr(TEXTS[key], language.value)
    return found.format(**facts)


def day(moment: datetime, language: Language) -> str:
    """A date as that language writes it: "12. Mai 2027"."""
    month = _MONTHS[language].split()[moment.month - 1]
    return _DAY[language].format(day=moment.day, month=month, year=moment.year)
