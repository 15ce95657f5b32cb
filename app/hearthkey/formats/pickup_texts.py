"""Every text of the phone's page, in each language, with a note for whoever translates it.

The reader is a relative with a phone in the hand and nothing else on their mind. German says "du", Spanish "tú". Names
in {braces} are filled in and may not be translated.
"""

from __future__ import annotations

from typing import NamedTuple


class Text(NamedTuple):
    """One text.

    Args:
        note: for translators: where it stands and what it has to do.
        en, de, es: the text.
    """

    note: str
    en: str
    de: str
    es: str


TEXTS: dict[str, Text] = {
    "device": Text(
        "Whose device it is. {person} and {device} are names as the household typed them.",
        "{person}’s {device}",
        "{device} von {person}",
        "{device} de {person}",
    ),
    "for": Text("Small line above the device's name.", "This is for", "Das ist für", "Esto es para"),
    "get": Text("The one large button. Two or three words.", "Get the file", "Datei holen", "Obtener el archivo"),
    "once": Text(
        "Below the button. {minutes} is a number of 2 or more.",
        "One time only, within {minutes} minutes.",
        "Nur einmal, in den nächsten {minutes} Minuten.",
        "Una sola vez, en los próximos {minutes} minutos.",
    ),
    "once-now": Text(
        "Below the button, in the last minute.",
        "One time only, within a minute.",
        "Nur einmal, in der nächsten Minute.",
        "Una sola vez, en el próximo minuto.",
    ),
    "then": Text("Heading of the numbered steps.", "Then", "Danach", "Después"),
    "more": Text(
        "Unfolds the steps after the first three.",
        "The rest of the way",
        "Wie es weitergeht",
        "Cómo sigue",
    ),
    "open-other": Text(
        "Step on a device whose kind says nothing about this file.",
        "Open the file where it was saved.",
        "Öffne die Datei dort, wo sie gespeichert ist.",
        "Abre el archivo donde se guardó.",
    ),
    "words": Text(
        "Step: the passphrase is told by word of mouth and is not on this page.",
        "Type the passphrase. You will be told it; it is not on this page.",
        "Tippe die Passphrase. Sie wird dir gesagt und steht nicht auf dieser Seite.",
        "Escribe la frase de contraseña. Te la dirán; no está en esta página.",
    ),
    "back": Text(
        "Below the steps. The helper is whoever handed over the code.",
        "Show it to your helper. You will try it together, without Wi-Fi.",
        "Zeig es deinem Helfer. Ihr probiert es zusammen aus, ohne WLAN.",
        "Enséñaselo a quien te ayuda. Lo probaréis juntos, sin wifi.",
    ),
    "typed": Text(
        "Heading of two values that some devices ask for.",
        "If the device asks",
        "Falls das Gerät fragt",
        "Si el dispositivo lo pide",
    ),
    "server": Text(
        "Label of a host name. Remote ID is a trade term (RFC 7296).",
        "Server and remote ID",
        "Server und entfernte ID",
        "Servidor e ID remoto",
    ),
    "identity": Text("Label of a code. Local ID is a trade term (RFC 7296).", "Local ID", "Lokale ID", "ID local"),
    "mismatch": Text(
        "Warning above the button. {expected} and {seen} are texts of the keys that begin with family-.",
        "The file is for {expected}. This looks like {seen}. Use the other device, or ask your helper.",
        "Die Datei ist für {expected}. Das hier sieht nach {seen} aus. Nimm das andere Gerät oder frag.",
        "El archivo es para {expected}. Esto parece {seen}. Usa el otro dispositivo o pregunta a quien te ayuda.",
    ),
    "family-ios": Text("In mismatch.", "an iPhone or iPad", "iPhone oder iPad", "un iPhone o iPad"),
    "family-android": Text("In mismatch.", "an Android device", "Android", "un dispositivo Android"),
    "family-windows": Text("In mismatch.", "a Windows computer", "Windows", "un ordenador con Windows"),
    "family-mac": Text("In mismatch.", "a Mac", "Mac", "un Mac"),
    "family-linux": Text("In mismatch.", "a Linux computer", "Linux", "un ordenador con Linux"),
    "closed": Text(
        "Heading once the ticket is closed.", "This is closed now", "Das ist jetzt zu", "Esto ya está cerrado"
    ),
    "closed-more": Text(
        "Below it. The file is there already, or a new code is needed.",
        "If this device has the file, go on with it. If not, ask your helper for a new code.",
        "Wenn dieses Gerät die Datei hat, mach damit weiter. Sonst bitte deinen Helfer um einen neuen Code.",
        "Si este dispositivo ya tiene el archivo, sigue con él. Si no, pide un código nuevo a quien te ayuda.",
    ),
    "wrong": Text(
        "Heading for every link that leads nowhere.", "Nothing is here", "Hier ist nichts", "Aquí no hay nada"
    ),
    "wrong-more": Text(
        "Below it.",
        "Scan the code once more, or ask your helper for a new one.",
        "Scanne den Code noch einmal oder bitte deinen Helfer um einen neuen.",
        "Escanea el código otra vez o pide uno nuevo a quien te ayuda.",
    ),
    "outside": Text(
        "Heading for a phone that is not in the home network.",
        "Not from here",
        "Nicht von hier aus",
        "Desde aquí no",
    ),
    "outside-more": Text(
        "Below it. A guest network counts as outside.",
        "Join the Wi-Fi at home, not the one for guests. Then scan the code once more.",
        "Geh in das WLAN zu Hause, nicht in das für Gäste. Scanne dann den Code noch einmal.",
        "Conéctate al wifi de casa, no al de invitados. Después escanea el código otra vez.",
    ),
}


def text(key: str, language: str) -> str:
    """The text of a key in a language.

    Args:
        language: ``en``, ``de`` or ``es``.
    """
    found = TEXTS[key]
    return {"en": found.en, "de": found.de, "es": found.es}[language]
