"""Every text of the household's paper, in each language, with a note for whoever translates it.

The reader may be somebody who has never seen the app, years later. German says "du", Spanish "tú". Names in {braces}
are filled in and may not be translated.
"""

from __future__ import annotations

from hearthkey.core.languages import Language
from hearthkey.formats.pickup_texts import Text

TEXTS: dict[str, Text] = {
    "title": Text(
        "Title of both pages. {household} is the name of the house.",
        "{household}: the key on paper",
        "{household}: der Schlüssel auf Papier",
        "{household}: la llave en papel",
    ),
    "practice": Text(
        "Above the title, on papers of the practice household.",
        "Practice: nothing here is real",
        "Übung: Nichts davon ist echt",
        "Ensayo: nada de esto es real",
    ),
    "made": Text(
        "Below the title. {day} and {until} are dates, {number} is the number of the newest revocation list.",
        "Made on {day}. Newest revocation list: number {number}. The key is good until {until}.",
        "Vom {day}. Neueste Sperrliste: Nummer {number}. Der Schlüssel gilt bis {until}.",
        "Del {day}. Lista de revocación más reciente: número {number}. La llave vale hasta el {until}.",
    ),
    "older": Text(
        "Below that, while one CA follows another. {since} is the day on which the newer one began, {until} its end, "
        "{old} the end of the older one.",
        "Of two keys this is the newer one, good until {until}. The older one ends on {old} and is on the paper made "
        "before {since}: keep both until the old CA has been put away.",
        "Von zwei Schlüsseln ist dies der neuere, gültig bis {until}. Der ältere endet am {old} und steht auf dem "
        "Papier von vor dem {since}: Bewahr beide auf, bis die alte CA weggelegt ist.",
        "De dos llaves, esta es la más nueva, válida hasta el {until}. La anterior termina el {old} y está en el papel "
        "de antes del {since}: guarda los dos hasta que se retire la CA antigua.",
    ),
    "older-lost": Text(
        "The same, where the key of the older CA is lost.",
        "Of two keys this is the newer one, good until {until}, from {since}. The older one, which ends on {old}, is "
        "lost.",
        "Von zwei Schlüsseln ist dies der neuere, vom {since}, gültig bis {until}. Der ältere, der am {old} endet, ist "
        "verloren.",
        "De dos llaves, esta es la más nueva, del {since}, válida hasta el {until}. La anterior, que termina el {old}, "
        "se ha perdido.",
    ),
    "what": Text(
        "What the paper is. The passphrase is what the household chose on the first evening.",
        "With this paper and the household’s passphrase, the household can be brought back on any computer. The key on "
        "it is encrypted; the passphrase is not on this paper. Keep the two apart, both where they will be found.",
        "Mit diesem Papier und der Passphrase des Haushalts kommt der Haushalt auf jedem Computer zurück. Der "
        "Schlüssel darauf ist verschlüsselt; die Passphrase steht nicht hier. Bewahr beide getrennt auf, und so, "
        "dass man sie findet.",
        "Con este papel y la frase de paso de la casa se recupera la casa en cualquier ordenador. La llave que lleva "
        "está cifrada; la frase de paso no está aquí. Guarda las dos por separado, y donde se encuentren.",
    ),
    "how": Text("Heading, strong.", "To bring it back", "Zurückholen", "Para recuperarla"),
    "how-more": Text(
        "Follows the heading. “From a sealed copy …” is a button of the app, in the app’s own words.",
        "Scan or photograph this page, straight and close. In Hearthkey on the new computer choose “From a sealed copy "
        "…” and give it the pictures, or run hearthkey restore --paper FILE…. What cannot be read off a code is typed "
        "from the other page, and only that.",
        "Scanne oder fotografiere diese Seite, gerade und nah. Wähle in Hearthkey auf dem neuen Computer „Aus einer "
        "versiegelten Kopie …“ und gib ihm die Bilder, oder starte hearthkey restore --paper DATEI…. Was sich von "
        "keinem Code lesen lässt, wird von der anderen Seite abgetippt, und nur das.",
        "Escanea o fotografía esta página, recta y de cerca. En Hearthkey, en el ordenador nuevo, elige «Desde una "
        "copia sellada…» y dale las imágenes, o ejecuta hearthkey restore --paper ARCHIVO…. Lo que no se pueda leer de "
        "un código se teclea de la otra página, y solo eso.",
    ),
    "lines": Text(
        "Below a code: the lines of the other page that are in it.",
        "Lines {first} to {last}",
        "Zeilen {first} bis {last}",
        "Líneas {first} a {last}",
    ),
    "not": Text("Heading, strong.", "Not on this paper", "Nicht auf diesem Papier", "No está en este papel"),
    "not-more": Text(
        "Follows the heading.",
        "The people and their devices. Whoever had a pass keeps getting in until it ends, but the household no longer "
        "knows whose it is: give everybody a new one, then revoke what is left. Templates, device kinds and the diary "
        "are not here either; a sealed copy has them all. A deputy’s parts open such a copy, and not this paper.",
        "Die Leute und ihre Geräte. Wer einen Pass hat, kommt bis zu dessen Ende weiter hinein, aber der Haushalt weiß "
        "nicht mehr, wem er gehört: Gib allen einen neuen und widerrufe, was übrig ist. Vorlagen, Gerätearten und das "
        "Tagebuch fehlen auch; eine versiegelte Kopie hat alles. Die Teile öffnen sie, aber nicht dieses Papier.",
        "Las personas y sus aparatos. Quien tenía un pase sigue entrando hasta que termine, pero la casa ya no sabe de "
        "quién es: da a todos uno nuevo y revoca lo que quede. Tampoco están las plantillas, los tipos de aparato ni "
        "el diario; una copia sellada lo tiene todo. Las partes abren esa copia, pero no este papel.",
    ),
    "living-one": Text(
        "Exactly one pass was good on the day.",
        "On that day one pass got in.",
        "An dem Tag kam ein Pass hinein.",
        "Ese día entraba un pase.",
    ),
    "living": Text(
        "{count} is 0, or 2 and more.",
        "On that day {count} passes got in.",
        "An dem Tag kamen {count} Pässe hinein.",
        "Ese día entraban {count} pases.",
    ),
    "withdrawn": Text(
        "Who was stopped. {here} are on this paper, {more} are not; both are numbers.",
        "Stopped or revoked, on this paper: {here}; besides: {more}. The gateway’s list has them all, and it is taken "
        "over at the first delivery.",
        "Gesperrt oder widerrufen, auf diesem Papier: {here}; außerdem: {more}. Die Liste des Gateways hat alle; sie "
        "wird bei der ersten Lieferung übernommen.",
        "Detenidos o revocados, en este papel: {here}; además: {more}. La lista de la pasarela los tiene todos y se "
        "adopta en la primera entrega.",
    ),
    "withdrawn-none": Text(
        "Instead, where nobody was stopped when the paper was made.",
        "Nobody was stopped or revoked. Who is after that day stands on the gateway’s list, which is taken over at the "
        "first delivery.",
        "Niemand war gesperrt oder widerrufen. Wer es danach wird, steht auf der Liste des Gateways; sie wird bei der "
        "ersten Lieferung übernommen.",
        "Nadie estaba detenido ni revocado. Quien lo esté después figura en la lista de la pasarela, que se adopta en "
        "la primera entrega.",
    ),
    "letters": Text(
        "Second line of the second page.",
        "The same, for hands. A line is its number, eight groups and a ninth that checks it. There are only the "
        "letters A to Z and the digits 2 to 7: no zero, no one, no eight. A slip costs one line, never another.",
        "Dasselbe für die Hände. Eine Zeile ist ihre Nummer, acht Gruppen und eine neunte zur Probe. Es gibt nur die "
        "Buchstaben A bis Z und die Ziffern 2 bis 7: keine Null, keine Eins, keine Acht. Ein Tippfehler kostet eine "
        "Zeile, nie eine andere.",
        "Lo mismo, para las manos. Una línea es su número, ocho grupos y un noveno que la comprueba. Solo hay letras "
        "de la A a la Z y cifras del 2 al 7: ni cero, ni uno, ni ocho. Un error cuesta una línea, nunca otra.",
    ),
    "alone": Text("Label, strong.", "Without the app", "Ohne die App", "Sin la aplicación"),
    "alone-more": Text(
        "For somebody who knows a command line. Names of formats and commands stay as they are.",
        "Groups 1 to 8 of all lines are base32 (RFC 4648) of a DER value (ITU-T X.690); openssl asn1parse shows its "
        "parts. The first long OCTET STRING is the CA certificate (X.509), the second the CA key: age --decrypt opens "
        "it to PKCS#8 (RFC 5958). The ninth group is CRC-24 (RFC 9580); the codes are base45 (RFC 9285).",
        "Die Gruppen 1 bis 8 aller Zeilen sind base32 (RFC 4648) eines DER-Werts (ITU-T X.690); openssl asn1parse "
        "zeigt seine Teile. Der erste lange OCTET STRING ist das CA-Zertifikat (X.509), der zweite der "
        "CA-Schlüssel: age --decrypt öffnet ihn zu PKCS#8 (RFC 5958). Die neunte Gruppe ist CRC-24 "
        "(RFC 9580); die Codes sind base45 (RFC 9285).",
        "Los grupos 1 a 8 de todas las líneas son base32 (RFC 4648) de un valor DER (ITU-T X.690); openssl asn1parse "
        "muestra sus partes. El primer OCTET STRING largo es el certificado de la CA (X.509), el segundo su llave: age "
        "--decrypt la abre a PKCS#8 (RFC 5958). El noveno grupo es CRC-24 (RFC 9580); los códigos son base45 (RFC "
        "9285).",
    ),
    "page": Text(
        "At the foot.", "Page {number} of {count}", "Seite {number} von {count}", "Página {number} de {count}"
    ),
}


def text(key: str, language: Language, **facts: object) -> str:
    """The text of a key, filled in."""
    found: str = getattr(TEXTS[key], language.value)
    return found.format(**facts)
