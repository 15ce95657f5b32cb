"""Every text of the deputy's letter, part and stop set, in each language, with a note for whoever translates it.

The reader may never have seen the app, and may be in mourning. German says "du", Spanish "tú". Names in {braces} are
filled in and may not be translated, and neither are commands and file names.
"""

from __future__ import annotations

from hearthkey.core.languages import Language
from hearthkey.formats.pickup_texts import Text

TEXTS: dict[str, Text] = {
    "practice": Text(
        "Above the title, on papers of the practice household.",
        "Practice: nothing here is real",
        "Übung: Nichts davon ist echt",
        "Ensayo: nada de esto es real",
    ),
    "title": Text(
        "Title of the letter. {household} is the name of the house.",
        "{household}: for whoever takes over",
        "{household}: wenn du übernimmst",
        "{household}: para quien tome el relevo",
    ),
    "lead": Text(
        "Below the title of the letter.",
        "Whoever looked after the way home until now cannot, or not for a while. None of this has to be done today.",
        "Wer sich bisher um den Weg nach Hause gekümmert hat, kann es nicht, oder eine Weile nicht. Nichts davon muss "
        "heute sein.",
        "Quien cuidaba del camino a casa no puede, o no por un tiempo. Nada de esto tiene que hacerse hoy.",
    ),
    "nothing": Text("Heading.", "If nobody does anything", "Wenn niemand etwas tut", "Si nadie hace nada"),
    "nothing-list": Text(
        "{day} is a date. The list of stopped devices has an end; a gateway without a valid one refuses all.",
        "Everybody gets in as always until {day}. Then the gateway’s list of stopped devices has run out, and nobody "
        "gets in from outside. Nothing at home breaks, and nothing is lost.",
        "Alle kommen wie immer hinein, bis zum {day}. Dann ist die Sperrliste des Gateways abgelaufen, und von außen "
        "kommt niemand mehr hinein. Zu Hause geht nichts kaputt, und nichts geht verloren.",
        "Todo el mundo entra como siempre hasta el {day}. Entonces caduca la lista de revocación de la puerta de "
        "enlace y nadie entra desde fuera. En casa no se rompe nada ni se pierde nada.",
    ),
    "nothing-gateway": Text(
        "The same, where the certificate of the gateway is the first to end.",
        "Everybody gets in as always until {day}. Then the gateway’s certificate ends, and devices turn away from it. "
        "Nothing at home breaks, and nothing is lost.",
        "Alle kommen wie immer hinein, bis zum {day}. Dann endet das Zertifikat des Gateways, und Geräte weisen es ab. "
        "Zu Hause geht nichts kaputt, und nichts geht verloren.",
        "Todo el mundo entra como siempre hasta el {day}. Entonces termina el certificado de la puerta de enlace y los "
        "aparatos la rechazan. En casa no se rompe nada ni se pierde nada.",
    ),
    "nothing-over": Text(
        "The same, where that day has passed already.",
        "Since {day} nobody gets in from outside. Nothing at home is broken, and nothing is lost.",
        "Seit {day} kommt von außen niemand hinein. Zu Hause ist nichts kaputt, und nichts ist verloren.",
        "Desde el {day} nadie entra desde fuera. En casa no hay nada roto ni perdido.",
    ),
    "device": Text(
        "{title} is a device, {day} a date. Only where a device ends before everybody does.",
        "The first device that ends before that is {title}, on {day}.",
        "Das erste Gerät, das vorher endet: {title}, am {day}.",
        "El primer aparato que termina antes es {title}, el {day}.",
    ),
    "ends": Text(
        "{gateway} and {authority} are dates: ends of the gateway's certificate and of the household's CA.",
        "Other dates: the gateway’s certificate ends on {gateway}, the household’s CA on {authority}.",
        "Weitere Tage: Das Zertifikat des Gateways endet am {gateway}, die CA des Haushalts am {authority}.",
        "Otras fechas: el certificado de la puerta de enlace termina el {gateway} y la CA de la casa el {authority}.",
    ),
    "lost": Text("Heading.", "If a device is lost", "Wenn ein Gerät weg ist", "Si se pierde un aparato"),
    "lost-more": Text(
        "A stop set is a folder or stick with lists that stop one device each.",
        "If somebody was given a stop set, a stick with a file READ-ME.txt on it: do what that file says. It takes "
        "minutes, and no part. Otherwise take over first, then stop the device in the app.",
        "Wenn jemand einen Sperrsatz hat, einen Stick mit der Datei READ-ME.txt: Tu, was darin steht. Das dauert "
        "Minuten und braucht keinen Teil. Sonst übernimm zuerst, und sperr das Gerät dann in der App.",
        "Si alguien tiene un juego de parada, una memoria con el archivo READ-ME.txt: haz lo que dice. Son minutos y "
        "no hace falta ninguna parte. Si no, toma primero el relevo y detén luego el aparato en la aplicación.",
    ),
    "over": Text("Heading above numbered steps.", "To take over", "Übernehmen", "Tomar el relevo"),
    "step-parts": Text(
        "Step. {need} and {count} are numbers, {set} is the name of the set.",
        "Bring {need} of the {count} parts together. Each is a sheet of fifteen words, with set {set} on it.",
        "Bring {need} der {count} Teile zusammen. Jeder ist ein Blatt mit fünfzehn Wörtern, mit Satz {set} darauf.",
        "Reúne {need} de las {count} partes. Cada una es una hoja de quince palabras que dice juego {set}.",
    ),
    "step-copy": Text(
        "Step. {day} is a date.",
        "Find a sealed copy from {day} or later: a file whose name ends in .sealed.tar.",
        "Such eine versiegelte Kopie vom {day} oder später: eine Datei, deren Name auf .sealed.tar endet.",
        "Busca una copia sellada del {day} o posterior: un archivo cuyo nombre acaba en .sealed.tar.",
    ),
    "step-app": Text(
        "Step. The command is typed as it stands. “From a sealed copy …” is a button of the app, in its own words.",
        "On a computer with the app Hearthkey choose “From a sealed copy …”, give it the file, and open it with two "
        "parts; or type: hearthkey deputy restore FILE.",
        "Wähl auf einem Computer mit der App Hearthkey „Aus einer versiegelten Kopie …“, gib ihr die Datei und öffne "
        "sie mit zwei Teilen; oder tipp: hearthkey deputy restore DATEI.",
        "En un ordenador con la aplicación Hearthkey elige «Desde una copia sellada…», dale el archivo y ábrelo con "
        "dos partes; o escribe: hearthkey deputy restore ARCHIVO.",
    ),
    "step-paper": Text(
        "Small, below the steps. The key on paper is a printed page; two parts do not open it.",
        "What opens what: two parts open a sealed copy, and with it you learn the passphrase. The key on paper opens "
        "with the passphrase only; parts do not open it.",
        "Was womit aufgeht: Zwei Teile öffnen eine versiegelte Kopie, und daraus erfährst du die Passphrase. Der "
        "Schlüssel auf Papier geht nur mit der Passphrase auf; Teile öffnen ihn nicht.",
        "Qué abre qué: dos partes abren una copia sellada, y con ella conoces la frase de paso. La llave en papel solo "
        "se abre con la frase de paso; las partes no la abren.",
    ),
    "step-after": Text(
        "Step, the last one.",
        "Type: hearthkey deliver. From then on the household is in your hands. Make new parts, for these were used.",
        "Tipp: hearthkey deliver. Von da an liegt der Haushalt bei dir. Mach neue Teile, denn diese sind benutzt.",
        "Escribe: hearthkey deliver. Desde entonces la casa está en tus manos. Haz partes nuevas: estas ya se usaron.",
    ),
    "who": Text("Heading above lines that are filled in by hand.", "Written by hand", "Von Hand", "A mano"),
    "who-part": Text("Before an empty line. {number} is a number.", "Part {number}", "Teil {number}", "Parte {number}"),
    "who-copy": Text("Before an empty line.", "Sealed copies", "Kopien", "Copias"),
    "call": Text(
        "{call} is a name and a number.",
        "Whoever can help: {call}.",
        "Wer helfen kann: {call}.",
        "Quien puede ayudar: {call}.",
    ),
    "letter-keep": Text(
        "Small, at the foot of the letter.",
        "No part and no sealed copy lies with this letter.",
        "Bei diesem Brief liegt weder ein Teil noch eine versiegelte Kopie.",
        "Con esta carta no va ninguna parte ni ninguna copia sellada.",
    ),
    "made": Text("Small, at the foot. {day} is a date.", "Made on {day}", "Vom {day}", "Del {day}"),
    "part": Text(
        "Title of a part's sheet. {number} and {count} are numbers.",
        "Part {number} of {count}",
        "Teil {number} von {count}",
        "Parte {number} de {count}",
    ),
    "part-for": Text(
        "Below it. {need} is a number, {set} the name of the set.",
        "Any {need} parts of set {set} together open a sealed copy. One alone opens nothing, and says nothing.",
        "Je {need} Teile von Satz {set} öffnen zusammen eine versiegelte Kopie. Einer allein öffnet und verrät nichts.",
        "Con {need} partes cualesquiera del juego {set} se abre una copia sellada. Una sola no abre ni revela nada.",
    ),
    "part-how": Text("Heading.", "When it is needed", "Wenn er gebraucht wird", "Cuando haga falta"),
    "part-how-more": Text(
        "What the app does with a part, and what nobody else should.",
        "When a sealed copy is opened, the app asks for the fifteen words, in order, small letters; or it reads the "
        "code. No other program has to see this code: some send what they read to a search engine.",
        "Beim Öffnen einer versiegelten Kopie fragt die App nach den fünfzehn Wörtern, der Reihe nach, alles klein; "
        "oder sie liest den Code. Kein anderes Programm muss ihn sehen: Manche schicken, was sie lesen, an eine "
        "Suchmaschine.",
        "Al abrir una copia sellada, la aplicación pide las quince palabras, en orden y en minúsculas; o lee el "
        "código. Ningún otro programa tiene que verlo: algunos envían lo que leen a un buscador.",
    ),
    "part-keep": Text("Heading.", "How to keep it", "So bewahrst du ihn auf", "Cómo guardarla"),
    "part-keep-more": Text(
        "How to keep the sheet.",
        "Keep it with your own papers, away from the other parts and from every sealed copy. Once a year whoever gave "
        "it to you asks for it, to try it in the app: nobody else ever does.",
        "Bewahr ihn bei deinen eigenen Papieren auf, getrennt von den anderen Teilen und von jeder versiegelten Kopie. "
        "Einmal im Jahr fragt danach, von wem du ihn hast, und probiert ihn in der App: sonst nie jemand.",
        "Guárdala con tus papeles, lejos de las otras partes y de toda copia sellada. Una vez al año te la pide quien "
        "te la dio, para probarla en la aplicación: nadie más la pide nunca.",
    ),
    "words": Text("Heading above the words.", "Fifteen words", "Fünfzehn Wörter", "Quince palabras"),
    "code": Text("Below the code.", "The same as a code", "Dasselbe als Code", "Lo mismo como código"),
}
"""Texts on paper."""


def text(key: str, language: Language, **facts: object) -> str:
    """The text of a key, filled in."""
    found: str = getattr(TEXTS[key], language.value)
    return found.format(**facts)
