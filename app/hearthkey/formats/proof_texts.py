"""Every text of the page that proves, in each language, with a note for whoever translates it.

The reader is a relative with a phone in the hand, mostly out of the house, often with the householder on another phone.
German says "du", Spanish "tú". The headings are read aloud to the householder, so they are short and stay as they are.
"""

from __future__ import annotations

from hearthkey.formats.pickup_texts import Text

TEXTS: dict[str, Text] = {
    "in": Text(
        "Heading: the device is in. The householder asks the relative to read exactly this.",
        "You are in",
        "Du bist drin",
        "Estás dentro",
    ),
    "in-more": Text(
        "Below it. Whoever helps is the householder, who sees the same on the computer.",
        "It works. Say so to your helper. Wi-Fi may be switched on again.",
        "Es geht. Sag es deinem Helfer. Das WLAN darf wieder an.",
        "Funciona. Díselo a quien te ayuda. Ya puedes volver a activar el wifi.",
    ),
    "home": Text(
        "Heading: the page was opened in the network at home.",
        "You are at home",
        "Du bist zu Hause",
        "Estás en casa",
    ),
    "home-more": Text(
        "Below it: why that is not enough, then what to do.",
        "This proves nothing yet. Switch Wi-Fi off, connect, then open this page again.",
        "Das beweist noch nichts. Schalte das WLAN aus, verbinde dich und öffne diese Seite noch einmal.",
        "Esto aún no demuestra nada. Desactiva el wifi, conéctate y vuelve a abrir esta página.",
    ),
    "hidden": Text(
        "Heading: the address may be one at home, or the gateway's own in the place of the device's.",
        "Nothing is proved yet",
        "Noch ist nichts bewiesen",
        "Aún no se ha demostrado nada",
    ),
    "hidden-more": Text(
        "Below it. The gateway is the box at home that lets devices in.",
        "If Wi-Fi is on, switch it off, connect, then open this page again. If it is off already, tell your helper: "
        "the gateway hides where you are.",
        "Wenn das WLAN an ist, schalte es aus, verbinde dich und öffne diese Seite noch einmal. Wenn es schon aus ist, "
        "sag deinem Helfer: Das Gateway verbirgt, wo du bist.",
        "Si el wifi está activado, desactívalo, conéctate y vuelve a abrir esta página. Si ya está desactivado, dile a "
        "quien te ayuda: la puerta de enlace oculta dónde estás.",
    ),
    "closed": Text(
        "Heading once the link is closed.", "This is closed now", "Das ist jetzt zu", "Esto ya está cerrado"
    ),
    "closed-more": Text(
        "Below it.",
        "Ask your helper for a new link.",
        "Bitte deinen Helfer um einen neuen Link.",
        "Pide un enlace nuevo a quien te ayuda.",
    ),
    "wrong": Text(
        "Heading for every link that leads nowhere, and for whoever is neither inside nor at home.",
        "Nothing is here",
        "Hier ist nichts",
        "Aquí no hay nada",
    ),
    "wrong-more": Text(
        "Below it.",
        "Connect, then open the link once more, or ask your helper for a new one.",
        "Verbinde dich und öffne den Link noch einmal, oder bitte deinen Helfer um einen neuen.",
        "Conéctate y abre el enlace otra vez, o pide uno nuevo a quien te ayuda.",
    ),
}


def text(key: str, language: str) -> str:
    """The text of a key in a language.

    Args:
        language: ``en``, ``de`` or ``es``.
    """
    found = TEXTS[key]
    return {"en": found.en, "de": found.de, "es": found.es}[language]
