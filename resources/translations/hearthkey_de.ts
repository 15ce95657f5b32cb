<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>Close the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Fenster schließen</translation>
    </message>
    <message>
        <source>Copies that left</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Ausgegebene Kopien</translation>
    </message>
    <message>
        <source>Deliver now</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Jetzt liefern</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Find</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Gateway</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hand over all at the desk</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Alle am Tisch übergeben</translation>
    </message>
    <message>
        <source>Help for this spot</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Hilfe zu dieser Stelle</translation>
    </message>
    <message>
        <source>Lock the household</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Haushalt verschließen</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Verloren oder gestohlen</translation>
    </message>
    <message>
        <source>New device</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Neues Gerät</translation>
    </message>
    <message>
        <source>Next part of the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Nächster Teil des Fensters</translation>
    </message>
    <message>
        <source>Previous part of the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Voriger Teil des Fensters</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Redo</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Renew</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Erneuern</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Versiegelte Kopien</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Sheet, card and messages</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Blatt, Karte und Nachrichten</translation>
    </message>
    <message>
        <source>Undo</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Eigene Vorlage</translation>
    </message>
</context>
<context>
    <name>AdoptSide</name>
    <message>
        <source>Choose a folder…</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Ordner wählen…</translation>
    </message>
    <message>
        <source>Choose the folder in which the CA lies, or drop it here. Nothing in it is changed.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Wähle den Ordner, in dem die CA liegt, oder zieh ihn hierher. Darin wird nichts geändert.</translation>
    </message>
    <message>
        <source>Found a new one instead</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Stattdessen neu gründen</translation>
    </message>
    <message>
        <source>It is used once, to read the key. From then on the household’s own passphrase counts.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Sie wird einmal gebraucht, um den Schlüssel zu lesen. Von da an gilt die eigene Passphrase des Haushalts.</translation>
    </message>
    <message>
        <source>It opens the CA’s key.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Sie öffnet den Schlüssel der CA.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Open it</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>This passphrase does not open the CA’s key.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Diese Passphrase öffnet den Schlüssel der CA nicht.</translation>
    </message>
    <message>
        <source>What is the passphrase of the CA’s key in this folder?</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Wie lautet die Passphrase des CA-Schlüssels in diesem Ordner?</translation>
    </message>
    <message>
        <source>What is there</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Was da ist</translation>
    </message>
    <message>
        <source>Where does the CA lie?</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Wo liegt die CA?</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>noch keiner gewählt</translation>
    </message>
</context>
<context>
    <name>AdoptTurn</name>
    <message>
        <source>Found the household</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Haushalt gründen</translation>
    </message>
    <message>
        <source>Nobody has a pass yet. Start with the house, about 5 minutes.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Noch hat niemand einen Pass. Fang mit dem Haus an, das dauert etwa 5 Minuten.</translation>
    </message>
    <message>
        <source>Nothing is written before the last button, and nothing in the folder is ever changed.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Vor dem letzten Knopf wird nichts geschrieben, und im Ordner wird nie etwas geändert.</translation>
    </message>
    <message>
        <source>Nothing is written before the last button. The name of the house stands in every bundle: let it be one that lasts.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Vor dem letzten Knopf wird nichts geschrieben. Der Name des Hauses steht in jedem Bündel: Nimm einen, der bleibt.</translation>
    </message>
    <message>
        <source>Somebody</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>Take it over</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>The house goes on under the CA that it has.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Das Haus läuft unter der CA weiter, die es hat.</translation>
    </message>
    <message>
        <source>a CA with nothing in its way</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>eine CA, der nichts im Weg steht</translation>
    </message>
    <message>
        <source>the folder of the CA</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>der Ordner der CA</translation>
    </message>
    <message>
        <source>the passphrase of the CA’s key</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>die Passphrase des CA-Schlüssels</translation>
    </message>
</context>
<context>
    <name>Aftercare</name>
    <message>
        <source>What else to do now, in this order</source>
        <extracomment>What else to do after a loss, outside this program: a list with ticks that are remembered.</extracomment>
        <translation>Was jetzt noch zu tun ist, in dieser Reihenfolge</translation>
    </message>
</context>
<context>
    <name>AnotherPage</name>
    <message>
        <source>Another device in its place</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Ein anderes Gerät an seiner Stelle</translation>
    </message>
    <message>
        <source>Computers</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Computer</translation>
    </message>
    <message>
        <source>In the place of {title}</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Anstelle von {title}</translation>
    </message>
    <message>
        <source>It does not get in any more.</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Es kommt nicht mehr hinein.</translation>
    </message>
    <message>
        <source>It stops getting in at once, and for good as soon as the new one was seen to get in.</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Es kommt ab sofort nicht mehr hinein, und nie wieder, sobald das neue nachweislich hineinkam.</translation>
    </message>
    <message>
        <source>Neither</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Keins von beiden</translation>
    </message>
    <message>
        <source>Phones and tablets</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Handys und Tablets</translation>
    </message>
    <message>
        <source>Replace it</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>What is the new one called?</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Wie heißt das neue?</translation>
    </message>
    <message>
        <source>What is the new one?</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Was für eins ist das neue?</translation>
    </message>
    <message>
        <source>choose</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>wählen</translation>
    </message>
    <message>
        <source>new {device}</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>{device} neu</translation>
    </message>
</context>
<context>
    <name>Asking</name>
    <message>
        <source>Another copy of the app has this household open. Stop it there.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Dieser Haushalt ist schon in einem anderen Fenster der App offen. Sperre dort.</translation>
    </message>
    <message>
        <source>Asks for the passphrase.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Fragt nach der Passphrase.</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Everybody, for now</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Alle, vorläufig</translation>
    </message>
    <message>
        <source>No passphrase.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Ohne Passphrase.</translation>
    </message>
    <message>
        <source>No passphrase: a spare stop list lies ready.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Ohne Passphrase: Eine Reserve-Sperrliste liegt bereit.</translation>
    </message>
    <message>
        <source>No person and no device has these letters.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Keine Person und kein Gerät hat diese Buchstaben.</translation>
    </message>
    <message>
        <source>Nobody has a pass yet, so nothing can be lost.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Noch hat niemand einen Pass, also kann nichts verloren gehen.</translation>
    </message>
    <message>
        <source>Only this one</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Nur dieses</translation>
    </message>
    <message>
        <source>Stop everybody for now, without the passphrase</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Alle vorläufig sperren, ohne Passphrase</translation>
    </message>
    <message>
        <source>Stop it</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>Stop only this one; asks for the passphrase</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Nur dieses sperren; fragt nach der Passphrase</translation>
    </message>
    <message>
        <source>Stop them all</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Alle sperren</translation>
    </message>
    <message>
        <source>Stop {title}</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{title} sperren</translation>
    </message>
    <message>
        <source>The list has to be signed. With the passphrase it is done at once.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Die Liste muss signiert werden. Mit der Passphrase ist das sofort erledigt.</translation>
    </message>
    <message>
        <source>You can let it back in at any time.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Du kannst es jederzeit wieder einlassen.</translation>
    </message>
    <message>
        <source>You can let them back in at any time.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Du kannst sie jederzeit wieder einlassen.</translation>
    </message>
    <message>
        <source>{count} of {of} devices</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{count} von {of} Geräten</translation>
    </message>
    <message>
        <source>{first} of {count}; one more letter</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{first} von {count}; noch ein Buchstabe</translation>
    </message>
    <message>
        <source>{of} devices</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{of} Geräte</translation>
    </message>
</context>
<context>
    <name>Body</name>
    <message>
        <source>Next, outside this program:</source>
        <extracomment>What stands on the sheet &quot;Lost or stolen&quot;, from its head to its last line.</extracomment>
        <translation>Als Nächstes, außerhalb dieses Programms:</translation>
    </message>
    <message>
        <source>lock or find the device from afar, block the SIM, change the mail password.</source>
        <extracomment>What stands on the sheet &quot;Lost or stolen&quot;, from its head to its last line.</extracomment>
        <translation>das Gerät aus der Ferne sperren oder orten, die SIM-Karte sperren lassen, das Mail-Passwort ändern.</translation>
    </message>
</context>
<context>
    <name>CertificateView</name>
    <message>
        <source>Certificate in PEM</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Zertifikat in PEM</translation>
    </message>
    <message>
        <source>Certificate in full</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Zertifikat im Ganzen</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy facts and certificate</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Angaben und Zertifikat kopieren</translation>
    </message>
    <message>
        <source>Fold the certificate</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Zertifikat einklappen</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>The certificate is shown in full</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Das Zertifikat wird im Ganzen gezeigt</translation>
    </message>
    <message>
        <source>good from</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>gültig ab</translation>
    </message>
    <message>
        <source>good until</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>issuer</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>ausgestellt von</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>names</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Namen</translation>
    </message>
    <message>
        <source>serial</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>subject</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>ausgestellt für</translation>
    </message>
    <message>
        <source>usages</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Verwendung</translation>
    </message>
</context>
<context>
    <name>ClosedPage</name>
    <message>
        <source>A newer list</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Eine neuere Liste</translation>
    </message>
    <message>
        <source>Asking</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Fragt nach</translation>
    </message>
    <message>
        <source>Asking …</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Fragt nach …</translation>
    </message>
    <message>
        <source>Bundles in the tray</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Bündel in der Ablage</translation>
    </message>
    <message>
        <source>Diary and certificates</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Tagebuch und Zertifikate</translation>
    </message>
    <message>
        <source>Everybody’s devices</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Die Geräte von allen</translation>
    </message>
    <message>
        <source>Everything else</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Alles andere</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Go on without</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Ohne weitermachen</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Look around</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Umsehen</translation>
    </message>
    <message>
        <source>Looking</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>New devices</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Neue Geräte</translation>
    </message>
    <message>
        <source>Seen: {seen}</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Gesehen: {seen}</translation>
    </message>
    <message>
        <source>Stopping a lost device</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Ein verlorenes Gerät sperren</translation>
    </message>
    <message>
        <source>The household cannot be opened.</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Der Haushalt lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The keyring answered with a fault of its own.</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Der Schlüsselbund hat mit einem eigenen Fehler geantwortet.</translation>
    </message>
    <message>
        <source>This window</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Dieses Fenster</translation>
    </message>
    <message>
        <source>Trust in the diary</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Vertrauen in das Tagebuch</translation>
    </message>
    <message>
        <source>Try again</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Waits</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>What to do:</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Was zu tun ist:</translation>
    </message>
    <message>
        <source>Works</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Geht</translation>
    </message>
    <message>
        <source>from that entry on</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>ab diesem Eintrag</translation>
    </message>
    <message>
        <source>in the other copy of the app</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>im anderen Fenster der App</translation>
    </message>
    <message>
        <source>needs a new list; meanwhile lock it from afar</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>braucht eine neue Liste; sperre es solange aus der Ferne</translation>
    </message>
    <message>
        <source>no. {number} is good until {day}</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Nr. {number} ist gültig bis {day}</translation>
    </message>
    <message>
        <source>stopping, new devices, handing over</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>sperren, neue Geräte, übergeben</translation>
    </message>
    <message>
        <source>the gateway lets them in as before</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>das Gateway lässt sie ein wie zuvor</translation>
    </message>
    <message>
        <source>their passes have to be signed</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>ihre Pässe müssen signiert werden</translation>
    </message>
    <message>
        <source>their passphrases lie in the keyring</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>ihre Passphrasen liegen im Schlüsselbund</translation>
    </message>
    <message>
        <source>there is nothing that it could show</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>es gibt nichts, was es zeigen könnte</translation>
    </message>
    <message>
        <source>to read and to copy</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>zum Lesen und Kopieren</translation>
    </message>
    <message>
        <source>who gets in, and until when</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>wer hineinkommt, und bis wann</translation>
    </message>
</context>
<context>
    <name>CodeCard</name>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>Code {number} of {count} of {title}</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Code {number} von {count}, {title}</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Kleiner</translation>
    </message>
    <message>
        <source>Scan it with this app’s reader on the device.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Scanne ihn auf dem Gerät mit dem Leser dieser App.</translation>
    </message>
    <message>
        <source>Scan it with this app’s reader, then show the next one. The order does not matter.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Scanne ihn mit dem Leser dieser App, dann zeig den nächsten. Die Reihenfolge ist gleich.</translation>
    </message>
    <message>
        <source>The last one. The order does not matter; a code scanned twice does no harm.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Der letzte. Die Reihenfolge ist gleich; ein doppelt gescannter Code schadet nicht.</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>{number} von {count}</translation>
    </message>
</context>
<context>
    <name>CommitFoot</name>
    <message>
        <source>Put aside</source>
        <extracomment>The last row of a page that does one thing: what is in the way, the passphrase where it is needed, the button.</extracomment>
        <translation>Beiseitelegen</translation>
    </message>
</context>
<context>
    <name>CopiesList</name>
    <message>
        <source>Copies by device, the newest first</source>
        <extracomment>Paints copies: whose and when, what and where, and what can be said of each.</extracomment>
        <translation>Kopien nach Gerät, die neueste zuerst</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Paints copies: whose and when, what and where, and what can be said of each.</extracomment>
        <translation>Nr. {number}</translation>
    </message>
</context>
<context>
    <name>CopiesPage</name>
    <message>
        <source>&amp;Delete the file</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Datei löschen</translation>
    </message>
    <message>
        <source>&amp;Look now</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Jetzt nachsehen</translation>
    </message>
    <message>
        <source>1 copy shown</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>1 Kopie gezeigt</translation>
    </message>
    <message>
        <source>1 copy.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>1 Kopie.</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Copies</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>Copies of {title}</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Kopien für {title}</translation>
    </message>
    <message>
        <source>Each is gone, or opens nothing any more.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Jede ist weg oder öffnet nichts mehr.</translation>
    </message>
    <message>
        <source>Files, sticks and pick-ups are listed here from the first one on.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Dateien, Sticks und Abholungen stehen hier, sobald es die erste gibt.</translation>
    </message>
    <message>
        <source>It is &amp;gone</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Sie ist &amp;weg</translation>
    </message>
    <message>
        <source>Lea&amp;ve it</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Lassen</translation>
    </message>
    <message>
        <source>No copy has left this computer.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Keine Kopie hat diesen Computer verlassen.</translation>
    </message>
    <message>
        <source>Not &amp;gone after all</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Doch nicht &amp;weg</translation>
    </message>
    <message>
        <source>Not known to be gone</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Nicht bekannt, ob weg</translation>
    </message>
    <message>
        <source>Of 1 nobody knows whether it is gone.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Von 1 weiß niemand, ob sie weg ist.</translation>
    </message>
    <message>
        <source>Of {loose} nobody knows whether they are gone.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Von {loose} weiß niemand, ob sie weg sind.</translation>
    </message>
    <message>
        <source>Show the whole household</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Ganzen Haushalt zeigen</translation>
    </message>
    <message>
        <source>Which copies</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Welche Kopien</translation>
    </message>
    <message>
        <source>{count} copies shown</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>{count} Kopien gezeigt</translation>
    </message>
    <message>
        <source>{count} copies.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>{count} Kopien.</translation>
    </message>
</context>
<context>
    <name>DaysPage</name>
    <message>
        <source>Copies</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Look at it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Nothing to do until {day}.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Nichts zu tun bis {day}.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Nichts zu tun.</translation>
    </message>
    <message>
        <source>One more comes later.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Eine Sache kommt später noch.</translation>
    </message>
    <message>
        <source>One thing to do now, about {minutes} minutes.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Jetzt ist eine Sache zu tun, etwa {minutes} Minuten.</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Renew it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Erneuern</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Die nächste CA</translation>
    </message>
    <message>
        <source>Sign it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Signieren</translation>
    </message>
    <message>
        <source>Try it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Ausprobieren</translation>
    </message>
    <message>
        <source>What can wait</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Was warten kann</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>by {day}, {minutes} min</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>bis {day}, {minutes} min</translation>
    </message>
    <message>
        <source>{count} more come later.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>{count} Sachen kommen später noch.</translation>
    </message>
    <message>
        <source>{count} things to do now, about {minutes} minutes.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Jetzt sind {count} Sachen zu tun, etwa {minutes} Minuten.</translation>
    </message>
</context>
<context>
    <name>Deed</name>
    <message>
        <source>Let back in</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Wieder einlassen</translation>
    </message>
    <message>
        <source>Not now</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Revoke for good</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Endgültig widerrufen</translation>
    </message>
    <message>
        <source>Stop now</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Jetzt sperren</translation>
    </message>
    <message>
        <source>Why is it revoked?</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Warum wird widerrufen?</translation>
    </message>
</context>
<context>
    <name>DeputyPage</name>
    <message>
        <source>&amp;Make three parts</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>&amp;Drei Teile machen</translation>
    </message>
    <message>
        <source>&amp;Try this part</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Dieses Teil &amp;prüfen</translation>
    </message>
    <message>
        <source>&amp;Write a stop set…</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Einen &amp;Sperrsatz schreiben…</translation>
    </message>
    <message>
        <source>A folder with which somebody can stop a lost device at the gateway and do nothing else. It is out of date as soon as anybody is stopped, enrolled or let back in.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Ein Ordner, mit dem jemand ein verlorenes Gerät am Gateway sperren kann und sonst nichts. Er ist veraltet, sobald jemand gesperrt, aufgenommen oder wieder eingelassen wird.</translation>
    </message>
    <message>
        <source>Is a part still right?</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Stimmt ein Teil noch?</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Sprache der Person, die es liest</translation>
    </message>
    <message>
        <source>No parts were made yet. Without whoever keeps the passphrase, nobody opens a sealed copy.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Es wurden noch keine Teile gemacht. Ohne die Person, die die Passphrase hat, öffnet niemand eine versiegelte Kopie.</translation>
    </message>
    <message>
        <source>Once a year ask for each sheet and type its fifteen words, in order. It needs no other sheet.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Frag einmal im Jahr nach jedem Blatt und tippe seine fünfzehn Wörter der Reihe nach. Ein anderes Blatt braucht es dazu nicht.</translation>
    </message>
    <message>
        <source>Part {number}: not tried yet</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Teil {number}: noch nie geprüft</translation>
    </message>
    <message>
        <source>Part {number}: tried on {day}</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Teil {number}: am {day} geprüft</translation>
    </message>
    <message>
        <source>Parts for a deputy</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Teile für eine Vertretung</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>Passphrase that only the sealed copies have</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Passphrase, die nur die versiegelten Kopien haben</translation>
    </message>
    <message>
        <source>Sealed copies have another passphrase since set {name} was made. Make new parts.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Die versiegelten Kopien haben eine andere Passphrase, seit Satz {name} gemacht wurde. Mach neue Teile.</translation>
    </message>
    <message>
        <source>Set {name} was made on {day}. Any two of its three parts open the sealed copies since.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Satz {name} wurde am {day} gemacht. Je zwei seiner drei Teile öffnen die versiegelten Kopien seither.</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Jemand übernimmt</translation>
    </message>
    <message>
        <source>Somebody who can only stop</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Jemand, der nur sperren kann</translation>
    </message>
    <message>
        <source>The fifteen words, or the text of the code</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Die fünfzehn Wörter oder der Text des Codes</translation>
    </message>
    <message>
        <source>They are thrown away. What was printed of them opens nothing; destroy it.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Sie werden weggeworfen. Was davon gedruckt wurde, öffnet nichts; vernichte es.</translation>
    </message>
    <message>
        <source>Three sheets for three people. Any two together open a sealed copy and with it the household; one alone opens nothing. A letter says what works without anybody, and until when.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Drei Blätter für drei Personen. Je zwei zusammen öffnen eine versiegelte Kopie und mit ihr den Haushalt; eines allein öffnet nichts. Ein Brief sagt, was ohne jemanden weiterläuft und bis wann.</translation>
    </message>
    <message>
        <source>Where to write the stop set</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Wohin der Sperrsatz geschrieben wird</translation>
    </message>
</context>
<context>
    <name>DeputySheets</name>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Als PDF &amp;speichern…</translation>
    </message>
    <message>
        <source>All are &amp;given out</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Alle sind &amp;ausgegeben</translation>
    </message>
    <message>
        <source>Every part was printed or saved.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Jedes Teil wurde gedruckt oder gespeichert.</translation>
    </message>
    <message>
        <source>It is at the printer.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Es ist beim Drucker.</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Sprache der Person, die es liest</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Brief</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Part {number}</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Teil {number}</translation>
    </message>
    <message>
        <source>Part {number} was neither printed nor saved yet.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Teil {number} wurde noch weder gedruckt noch gespeichert.</translation>
    </message>
    <message>
        <source>Parts {numbers} were neither printed nor saved yet.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Die Teile {numbers} wurden noch weder gedruckt noch gespeichert.</translation>
    </message>
    <message>
        <source>Print each sheet by itself and give each part to somebody else. They count only once you say that all are given out; until then the sheets from before do.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Druck jedes Blatt für sich und gib jedes Teil jemand anderem. Sie gelten erst, wenn du sagst, dass alle ausgegeben sind; bis dahin gelten die Blätter von vorher.</translation>
    </message>
    <message>
        <source>Saved as {file}. Print it, then delete the file.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Gespeichert als {file}. Druck es und lösch dann die Datei.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Throw them away</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Where to save the sheet</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Wohin das Blatt gespeichert wird</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>&amp;Another code</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Neuer &amp;Code</translation>
    </message>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <source>&amp;Cover the code, show the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Code &amp;verdecken, Wörter zeigen</translation>
    </message>
    <message>
        <source>&amp;Cover the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Wörter &amp;verdecken</translation>
    </message>
    <message>
        <source>&amp;Cover the words, show the code</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Wörter &amp;verdecken, Code zeigen</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>&amp;Next: {title}</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Weiter: {title}</translation>
    </message>
    <message>
        <source>&amp;Open another</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Einen neuen öffnen</translation>
    </message>
    <message>
        <source>&amp;Show the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Wörter &amp;zeigen</translation>
    </message>
    <message>
        <source>&amp;Show the words again</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Wörter noch einmal &amp;zeigen</translation>
    </message>
    <message>
        <source>A line of text appears. Say: “Touch that line.”</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Eine Zeile Text erscheint. Sag: „Tipp auf diese Zeile.“</translation>
    </message>
    <message>
        <source>A page with one large button is open. Say: “Get the file.”</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Eine Seite mit einem großen Knopf ist offen. Sag: „Hol die Datei.“</translation>
    </message>
    <message>
        <source>Cover the words as soon as they are typed in.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Verdeck die Wörter, sobald sie eingetippt sind.</translation>
    </message>
    <message>
        <source>Does it work on the device?</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>Geht es auf dem Gerät?</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hold the camera over the code</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Halte die Kamera über den Code</translation>
    </message>
    <message>
        <source>It stands here together with the code.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Das steht hier zusammen mit dem Code.</translation>
    </message>
    <message>
        <source>It was seen to get in from outside.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Es kam nachweislich von außen hinein.</translation>
    </message>
    <message>
        <source>It works when it says “Connected” in another network, a phone’s for instance.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Es geht, wenn in einem anderen Netz „Verbunden“ dasteht, zum Beispiel in dem eines Handys.</translation>
    </message>
    <message>
        <source>It works when it says “Connected” on mobile data.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Es geht, wenn mit mobilen Daten „Verbunden“ dasteht.</translation>
    </message>
    <message>
        <source>Leave the Wi-Fi at home, then connect</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Verlass das WLAN zu Hause, dann verbinde dich</translation>
    </message>
    <message>
        <source>One moment …</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Einen Moment …</translation>
    </message>
    <message>
        <source>Picked up at {time}.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Um {time} abgeholt.</translation>
    </message>
    <message>
        <source>Picked up.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Abgeholt.</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Kleiner</translation>
    </message>
    <message>
        <source>Show the words when it says “picked up”.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Zeig die Wörter, wenn „abgeholt“ dasteht.</translation>
    </message>
    <message>
        <source>So far: {reached}. Still to come: {ahead}.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Bisher: {reached}. Es folgt noch: {ahead}.</translation>
    </message>
    <message>
        <source>Switch the Wi-Fi off, then touch Connect</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Schalt das WLAN aus, dann tipp auf „Verbinden“</translation>
    </message>
    <message>
        <source>The code and the words are never here together.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Code und Wörter stehen hier nie zusammen.</translation>
    </message>
    <message>
        <source>The code is covered while the words are here.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Der Code ist verdeckt, solange die Wörter hier stehen.</translation>
    </message>
    <message>
        <source>The code is gone, so the words can be shown now.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Der Code ist weg, also können die Wörter jetzt gezeigt werden.</translation>
    </message>
    <message>
        <source>The code is gone.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Der Code ist weg.</translation>
    </message>
    <message>
        <source>The code of the pick-up for {title}</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>Der Code des Abholscheins für {title}</translation>
    </message>
    <message>
        <source>The device asks for a password. Say the words, with one space between two of them.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Das Gerät fragt nach einem Passwort. Sag die Wörter, mit einem Leerzeichen zwischen zwei Wörtern.</translation>
    </message>
    <message>
        <source>The words come when the code has gone.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Die Wörter kommen, wenn der Code weg ist.</translation>
    </message>
    <message>
        <source>They appear here once the code is covered.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Sie erscheinen hier, sobald der Code verdeckt ist.</translation>
    </message>
    <message>
        <source>They appear here once the file is on the device.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Sie erscheinen hier, sobald die Datei auf dem Gerät ist.</translation>
    </message>
    <message>
        <source>They were shown, and are covered again.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Sie wurden gezeigt und sind wieder verdeckt.</translation>
    </message>
    <message>
        <source>Try a&amp;gain</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Type the seven words</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Tipp die sieben Wörter ein</translation>
    </message>
    <message>
        <source>Type this address into the browser</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Tipp diese Adresse in den Browser</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Eingetippt.</translation>
    </message>
    <message>
        <source>When it says “Connected”, go on. Its key is then erased here.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Wenn „Verbunden“ dasteht, mach weiter. Sein Schlüssel wird dann hier gelöscht.</translation>
    </message>
    <message>
        <source>Whether it gets in from outside can be proved later, on its own page.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Ob es von außen hineinkommt, lässt sich später nachweisen, auf seiner eigenen Seite.</translation>
    </message>
    <message>
        <source>made {time}</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>erstellt {time}</translation>
    </message>
    <message>
        <source>now</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>opened with the words</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>mit den Wörtern geöffnet</translation>
    </message>
    <message>
        <source>picked up</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>abgeholt</translation>
    </message>
    <message>
        <source>picked up {time}</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>abgeholt {time}</translation>
    </message>
    <message>
        <source>proved on mobile data</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>mit mobilen Daten nachgewiesen</translation>
    </message>
    <message>
        <source>{day}, at the table</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, am Tisch</translation>
    </message>
    <message>
        <source>{day}, at the table. Done: {done}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, am Tisch. Fertig: {done}.</translation>
    </message>
    <message>
        <source>{day}, at the table. Done: {done}. Still to come: {ahead}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, am Tisch. Fertig: {done}. Noch dran: {ahead}.</translation>
    </message>
    <message>
        <source>{day}, at the table. Still to come: {ahead}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, am Tisch. Noch dran: {ahead}.</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{number} von {count}</translation>
    </message>
    <message>
        <source>{number} of {count}, {done} done</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{number} von {count}, {done} fertig</translation>
    </message>
    <message>
        <source>{title} has its file.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{title} hat seine Datei.</translation>
    </message>
    <message>
        <source>{title} has its key. Here it was erased.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{title} hat seinen Schlüssel. Hier wurde er gelöscht.</translation>
    </message>
</context>
<context>
    <name>DeskFoot</name>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>&amp;Leave the desk</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Tisch verlassen</translation>
    </message>
    <message>
        <source>&amp;Stay here</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Hier bleiben</translation>
    </message>
    <message>
        <source>Not &amp;yet, go on</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>Noch n&amp;icht, weiter</translation>
    </message>
    <message>
        <source>Try a&amp;gain</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Yes, &amp;erase the key here</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>Ja, Schlüssel hier &amp;löschen</translation>
    </message>
</context>
<context>
    <name>DeskHead</name>
    <message>
        <source>+&amp;10 min</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>+&amp;10 min</translation>
    </message>
    <message>
        <source>Ten minutes more</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>Zehn Minuten mehr</translation>
    </message>
    <message>
        <source>left for this code</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>noch für diesen Code</translation>
    </message>
    <message>
        <source>one minute left</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>noch eine Minute</translation>
    </message>
    <message>
        <source>{minutes} minutes left</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>noch {minutes} Minuten</translation>
    </message>
</context>
<context>
    <name>DeviceHasIt</name>
    <message>
        <source>&amp;Erase the key here</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>&amp;Schlüssel hier löschen</translation>
    </message>
    <message>
        <source>It is on the device &amp;now</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>Es ist &amp;jetzt auf dem Gerät</translation>
    </message>
    <message>
        <source>Not &amp;yet</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>Noch n&amp;icht</translation>
    </message>
    <message>
        <source>Then its key is erased here and exists on the device alone.</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>Dann wird sein Schlüssel hier gelöscht, und es gibt ihn nur noch auf dem Gerät.</translation>
    </message>
</context>
<context>
    <name>DevicePage</name>
    <message>
        <source>(3DES, for old importers)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(3DES, für alte Importprogramme)</translation>
    </message>
    <message>
        <source>(AES-256)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(AES-256)</translation>
    </message>
    <message>
        <source>(key set {name})</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(Schlüsselsatz {name})</translation>
    </message>
    <message>
        <source>(travels in clear)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(reist unverschlüsselt)</translation>
    </message>
    <message>
        <source>A new pass</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Ein neuer Pass</translation>
    </message>
    <message>
        <source>Another copy has the household open; this one only looks.</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Der Haushalt ist schon in einem anderen Fenster offen; hier kannst du nur nachsehen.</translation>
    </message>
    <message>
        <source>Copies that left…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Ausgegebene Kopien…</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Let back in</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Wieder einlassen</translation>
    </message>
    <message>
        <source>Life line</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Lebenslinie</translation>
    </message>
    <message>
        <source>Older passes of this device:</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Ältere Pässe dieses Geräts:</translation>
    </message>
    <message>
        <source>PKCS#12, {name}</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>PKCS#12, {name}</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Renew…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Erneuern…</translation>
    </message>
    <message>
        <source>Replace this device…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Dieses Gerät ersetzen…</translation>
    </message>
    <message>
        <source>Revoke for good…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Endgültig widerrufen…</translation>
    </message>
    <message>
        <source>Stop now</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Jetzt sperren</translation>
    </message>
    <message>
        <source>asks for the passphrase, can be taken back</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>fragt nach der Passphrase, lässt sich zurücknehmen</translation>
    </message>
    <message>
        <source>can be taken back</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>lässt sich zurücknehmen</translation>
    </message>
    <message>
        <source>container</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Container</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>known as</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>bekannt als</translation>
    </message>
    <message>
        <source>last checked</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>zuletzt geprüft</translation>
    </message>
    <message>
        <source>made for</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>erstellt für</translation>
    </message>
    <message>
        <source>serial</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>unknown type</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>unbekannte Art</translation>
    </message>
</context>
<context>
    <name>DiaryFilter</name>
    <message>
        <source>Everybody</source>
        <extracomment>Whose entries of the diary are shown: everybody&apos;s, one person&apos;s, one device&apos;s.</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Whose entries</source>
        <extracomment>Whose entries of the diary are shown: everybody&apos;s, one person&apos;s, one device&apos;s.</extracomment>
        <translation>Wessen Einträge</translation>
    </message>
</context>
<context>
    <name>DiaryList</name>
    <message>
        <source>Entries, newest first</source>
        <extracomment>Paints the diary&apos;s entries: the day in the second ink, then the sentence, as high as it needs to be.</extracomment>
        <translation>Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Paints the diary&apos;s entries: the day in the second ink, then the sentence, as high as it needs to be.</extracomment>
        <translation>Nr. {number}</translation>
    </message>
</context>
<context>
    <name>DiaryPage</name>
    <message>
        <source>1 entry found</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 Eintrag gefunden</translation>
    </message>
    <message>
        <source>1 entry, sealed.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 Eintrag, versiegelt.</translation>
    </message>
    <message>
        <source>1 entry.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 Eintrag.</translation>
    </message>
    <message>
        <source>As &amp;text…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Als &amp;Text…</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Strg+B</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Strg+C</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>For &amp;machines (JSON Lines)…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Für &amp;Maschinen (JSON Lines)…</translation>
    </message>
    <message>
        <source>It does not fit together from entry {number} on.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Es passt ab Eintrag {number} nicht mehr zusammen.</translation>
    </message>
    <message>
        <source>It lies in {folder} as {name}.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Es liegt in {folder} als {name}.</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Versiegelte Kopien</translation>
    </message>
    <message>
        <source>Search</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>The chain holds.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Die Kette hält.</translation>
    </message>
    <message>
        <source>The diary of {name}</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Das Tagebuch von {name}</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Wohin geschrieben wird</translation>
    </message>
    <message>
        <source>Whose entries</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Wessen Einträge</translation>
    </message>
    <message>
        <source>Write to a folder…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>In einen Ordner schreiben…</translation>
    </message>
    <message>
        <source>{count} entries found</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} Einträge gefunden</translation>
    </message>
    <message>
        <source>{count} entries, each sealed to the last.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} Einträge, jeder mit dem vorigen versiegelt.</translation>
    </message>
    <message>
        <source>{count} entries.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} Einträge.</translation>
    </message>
    <message>
        <source>{place} of {count}: {entry}</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{place} von {count}: {entry}</translation>
    </message>
</context>
<context>
    <name>DragOut</name>
    <message>
        <source>it cannot leave</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>kann nicht hinaus</translation>
    </message>
    <message>
        <source>preparing …</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>wird vorbereitet …</translation>
    </message>
    <message>
        <source>preparing, drag again</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>wird vorbereitet, noch einmal ziehen</translation>
    </message>
    <message>
        <source>ready, drag again</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>bereit, noch einmal ziehen</translation>
    </message>
</context>
<context>
    <name>Drawer</name>
    <message>
        <source>Drawer</source>
        <extracomment>The drawer at the right: one page at a time, straight in and straight out.</extracomment>
        <translation>Seitenteil</translation>
    </message>
</context>
<context>
    <name>DropPlace</name>
    <message>
        <source>&amp;Choose files…</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>Dateien &amp;wählen…</translation>
    </message>
    <message>
        <source>A sealed copy, or the scans of a paper</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>Eine versiegelte Kopie oder die Scans eines Papiers</translation>
    </message>
    <message>
        <source>Drop the file that ends in .sealed.tar here, or scans and photographs of a paper (PNG, JPEG).</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>Zieh die Datei hierher, die auf .sealed.tar endet, oder Scans und Fotos eines Papiers (PNG, JPEG).</translation>
    </message>
</context>
<context>
    <name>EnrolDetails</name>
    <message>
        <source>Container</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Container</translation>
    </message>
    <message>
        <source>Container of the hand-over file</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Container der Datei zum Übergeben</translation>
    </message>
    <message>
        <source>Details</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Fold the details</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Einzelheiten einklappen</translation>
    </message>
    <message>
        <source>Key set</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Schlüsselsatz</translation>
    </message>
    <message>
        <source>old</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>alt</translation>
    </message>
    <message>
        <source>strong</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>stark</translation>
    </message>
    <message>
        <source>what fits</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>was passt</translation>
    </message>
</context>
<context>
    <name>EnrolForm</name>
    <message>
        <source>A new pass for that one</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Ein neuer Pass dafür</translation>
    </message>
    <message>
        <source>Call it {name}</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>{name} nennen</translation>
    </message>
    <message>
        <source>Choose a person, or give a name.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Wähle eine Person oder gib einen Namen an.</translation>
    </message>
    <message>
        <source>Choose what it is; the key is made to fit.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Wähle, was es ist; der Schlüssel wird passend gemacht.</translation>
    </message>
    <message>
        <source>Computers</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Computer</translation>
    </message>
    <message>
        <source>For {title}. It keeps its identity.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Für {title}. Die Kennung bleibt.</translation>
    </message>
    <message>
        <source>Give it a name that the family uses.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Gib ihm einen Namen, den die Familie benutzt.</translation>
    </message>
    <message>
        <source>Neither</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Keins von beiden</translation>
    </message>
    <message>
        <source>Phones and tablets</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Handys und Tablets</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Wie heißt es?</translation>
    </message>
    <message>
        <source>What is it?</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Was ist es?</translation>
    </message>
    <message>
        <source>choose</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>wählen</translation>
    </message>
    <message>
        <source>laptop</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Laptop</translation>
    </message>
    <message>
        <source>phone</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Handy</translation>
    </message>
    <message>
        <source>tablet</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Tablet</translation>
    </message>
</context>
<context>
    <name>EnrolPage</name>
    <message>
        <source>A new device</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Ein neues Gerät</translation>
    </message>
    <message>
        <source>A new pass</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Ein neuer Pass</translation>
    </message>
    <message>
        <source>Chosen here instead of {name}.</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Hier gewählt statt {name}.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Here it will say what follows, before anything is made.</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Hier steht, was folgt, noch bevor etwas erstellt wird.</translation>
    </message>
    <message>
        <source>Make the pass</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Pass erstellen</translation>
    </message>
    <message>
        <source>Put aside</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>a code, so no name travels in clear</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>ein Code, damit kein Name unverschlüsselt reist</translation>
    </message>
    <message>
        <source>as before</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>wie zuvor</translation>
    </message>
    <message>
        <source>bundle</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Bündel</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>known as</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>bekannt als</translation>
    </message>
    <message>
        <source>waits in the tray under a passphrase</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>wartet in der Ablage unter einer Passphrase</translation>
    </message>
</context>
<context>
    <name>FindField</name>
    <message>
        <source>Find a person or a device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Eine Person oder ein Gerät suchen</translation>
    </message>
    <message>
        <source>person or device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Person oder Gerät</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>hidden</source>
        <extracomment>What only some want to see: a word that opens it and closes it again.</extracomment>
        <translation>verborgen</translation>
    </message>
    <message>
        <source>shown</source>
        <extracomment>What only some want to see: a word that opens it and closes it again.</extracomment>
        <translation>sichtbar</translation>
    </message>
</context>
<context>
    <name>Footer</name>
    <message>
        <source>Ctrl+D</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Strg+Z</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>F6 next part of the window</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>F6 nächster Teil des Fensters</translation>
    </message>
    <message>
        <source>Undo</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>FoundingForm</name>
    <message>
        <source>Details</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Left empty, it is made from the name of the house.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Bleibt es leer, entsteht es aus dem Namen des Hauses.</translation>
    </message>
    <message>
        <source>RSA-3072 suits every built-in client.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>RSA-3072 passt zu jedem eingebauten Client.</translation>
    </message>
    <message>
        <source>What does the gateway sign with?</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Womit signiert das Gateway?</translation>
    </message>
    <message>
        <source>Where is the CA key kept?</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Wo liegt der CA-Schlüssel?</translation>
    </message>
    <message>
        <source>Where this computer is now. If that is not at home, ask the router.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Wo dieser Computer gerade ist. Ist das nicht zu Hause, sieh im Router nach.</translation>
    </message>
    <message>
        <source>a subnet at home</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>ein Subnetz zu Hause</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>in einer Schlüsseldatei</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>im Schlüsselbund</translation>
    </message>
    <message>
        <source>the name of the house</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>der Name des Hauses</translation>
    </message>
    <message>
        <source>what the household is called</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>wie der Haushalt heißt</translation>
    </message>
</context>
<context>
    <name>FoundingPage</name>
    <message>
        <source>A sealed copy cannot be made yet; copy the data folder and keep the passphrase apart from it.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Eine versiegelte Kopie geht noch nicht; kopiere den Datenordner und bewahre die Passphrase getrennt davon auf.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>One line above wants another look.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Eine Zeile oben braucht noch einen Blick.</translation>
    </message>
    <message>
        <source>Still wanted: {what}.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Es fehlt noch: {what}.</translation>
    </message>
</context>
<context>
    <name>GatewayButton</name>
    <message>
        <source>Gateway</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>Gateway {host}</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Gateway {host}</translation>
    </message>
    <message>
        <source>The gateway (Ctrl+G)</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Das Gateway (Strg+G)</translation>
    </message>
</context>
<context>
    <name>GatewayChoices</name>
    <message>
        <source>1500 for most lines, 1492 where the provider uses PPPoE.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>1500 für die meisten Anschlüsse, 1492 bei Anbietern mit PPPoE.</translation>
    </message>
    <message>
        <source>A secret for each device beside its certificate</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Ein Geheimnis je Gerät zusätzlich zum Zertifikat</translation>
    </message>
    <message>
        <source>Address that the home network sees</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Adresse, die das Netz zu Hause sieht</translation>
    </message>
    <message>
        <source>Against whoever records today and decrypts in twenty years (RFC 8784); for gateways that know it.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Gegen alle, die heute aufzeichnen und in zwanzig Jahren entschlüsseln (RFC 8784); für Gateways, die es kennen.</translation>
    </message>
    <message>
        <source>For gateways that want one. Stopping a device that knew it means a new one for all.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Für Gateways, die eines verlangen. Wird ein Gerät gesperrt, das es kannte, brauchen alle ein neues.</translation>
    </message>
    <message>
        <source>Interface that packets leave the tunnel on</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Schnittstelle, auf der Pakete den Tunnel verlassen</translation>
    </message>
    <message>
        <source>Its name at the gateway. Empty where the kernel itself unpacks the tunnel.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Ihr Name auf dem Gateway. Leer, wo der Kernel selbst den Tunnel auspackt.</translation>
    </message>
    <message>
        <source>Keep these choices</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Auswahl behalten</translation>
    </message>
    <message>
        <source>Largest packet on the way out, octets</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Größtes Paket auf dem Weg hinaus, in Byte</translation>
    </message>
    <message>
        <source>One secret that all devices share</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Ein Geheimnis, das alle Geräte teilen</translation>
    </message>
    <message>
        <source>Page at home for the web front</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Seite zu Hause für die Webfassade</translation>
    </message>
    <message>
        <source>Such as http://127.0.0.1:8080. Empty for no web front.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Etwa http://127.0.0.1:8080. Leer, wenn es keine Webfassade gibt.</translation>
    </message>
    <message>
        <source>That computer is the router of the house too</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Der Computer dort ist auch der Router des Hauses</translation>
    </message>
    <message>
        <source>The gateway’s, where the router at home cannot be told a way back to the tunnel.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Die des Gateways, wenn sich dem Router zu Hause kein Weg zurück in den Tunnel sagen lässt.</translation>
    </message>
    <message>
        <source>Then other traffic is left to its other rules; otherwise it refuses to forward any.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Dann gelten für anderen Verkehr seine übrigen Regeln; sonst leitet er keinen weiter.</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>nein</translation>
    </message>
    <message>
        <source>the device’s own</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>die des Geräts</translation>
    </message>
    <message>
        <source>the gateway’s</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>die des Gateways</translation>
    </message>
    <message>
        <source>tunnel interface</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Tunnel-Schnittstelle</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>ja</translation>
    </message>
</context>
<context>
    <name>GatewayDifference</name>
    <message>
        <source>File by file</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>Datei für Datei</translation>
    </message>
    <message>
        <source>What a delivery changes</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>Was eine Lieferung ändert</translation>
    </message>
    <message>
        <source>changed</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>geändert</translation>
    </message>
    <message>
        <source>new</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>neu</translation>
    </message>
    <message>
        <source>no longer needed</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>nicht mehr nötig</translation>
    </message>
    <message>
        <source>the same</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>gleich</translation>
    </message>
</context>
<context>
    <name>GatewayFields</name>
    <message>
        <source>A name, an address, or a short name from your ssh configuration.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Ein Name, eine Adresse oder ein Kurzname aus deiner ssh-Konfiguration.</translation>
    </message>
    <message>
        <source>A stick, or a share that this computer has mounted.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Ein Stick oder eine Freigabe, die auf diesem Computer eingehängt ist.</translation>
    </message>
    <message>
        <source>At the gateway; from the user’s home where it does not begin with a slash.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Auf dem Gateway; ab dem Heimordner dort, wenn vorn kein Schrägstrich steht.</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Choose…</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Command after a delivery</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Befehl nach einer Lieferung</translation>
    </message>
    <message>
        <source>Folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Host</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Host</translation>
    </message>
    <message>
        <source>How do its files get there?</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Wie kommen die Dateien dorthin?</translation>
    </message>
    <message>
        <source>How the files get there</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Wie die Dateien dorthin kommen</translation>
    </message>
    <message>
        <source>Port</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Port</translation>
    </message>
    <message>
        <source>Run at the gateway, so that what runs there reads the new list. Empty for none.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Läuft auf dem Gateway, damit dort die neue Liste gelesen wird. Leer für keinen.</translation>
    </message>
    <message>
        <source>User there</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Benutzername dort</translation>
    </message>
    <message>
        <source>Where the gateway’s files go</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Wohin die Dateien des Gateways gehen</translation>
    </message>
    <message>
        <source>by ssh</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>per ssh</translation>
    </message>
    <message>
        <source>into a folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>in einen Ordner</translation>
    </message>
</context>
<context>
    <name>GatewayPack</name>
    <message>
        <source>Choices for its files</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Auswahl für die Dateien</translation>
    </message>
    <message>
        <source>Its files, by hand</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Die Dateien, von Hand</translation>
    </message>
    <message>
        <source>Where to write the gateway’s files</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Wohin die Dateien des Gateways geschrieben werden</translation>
    </message>
    <message>
        <source>Write its files to a folder…</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Dateien in einen Ordner schreiben…</translation>
    </message>
</context>
<context>
    <name>GatewayPage</name>
    <message>
        <source>A device is kept out only when the gateway holds the list that says so. Say where its files go, and new lists go there by themselves.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Ein Gerät bleibt erst draußen, wenn das Gateway die Liste hat, in der es steht. Sag, wohin die Dateien gehen, und neue Listen kommen von selbst dorthin.</translation>
    </message>
    <message>
        <source>Another copy of the app has the household open; that one delivers.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Der Haushalt ist in einem anderen Fenster der App offen; dort wird geliefert.</translation>
    </message>
    <message>
        <source>Change where its files go</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Ändern, wohin die Dateien gehen</translation>
    </message>
    <message>
        <source>Its files can be written to a folder, to see what a gateway gets.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Die Dateien lassen sich in einen Ordner schreiben, um zu sehen, was ein Gateway bekommt.</translation>
    </message>
    <message>
        <source>Nothing of the practice household is ever delivered, so no gateway holds anything of it.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Vom Übungshaushalt wird nie etwas geliefert, also hat kein Gateway etwas davon.</translation>
    </message>
    <message>
        <source>Say where its files go</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Sagen, wohin die Dateien gehen</translation>
    </message>
    <message>
        <source>The gateway</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Das Gateway</translation>
    </message>
    <message>
        <source>Until the gateway holds the new list, whoever could get in still can. The app keeps trying by itself while it is open.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Bis das Gateway die neue Liste hat, kommt weiter hinein, wer bisher hineinkam. Solange die App offen ist, versucht sie es von selbst weiter.</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Eigene Vorlage</translation>
    </message>
</context>
<context>
    <name>GatewayPlacePage</name>
    <message>
        <source>Asking {where} for its host key …</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>{where} wird nach dem Hostschlüssel gefragt …</translation>
    </message>
    <message>
        <source>Back to the gateway</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Zurück zum Gateway</translation>
    </message>
    <message>
        <source>Deliver nowhere any more</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Nirgendwohin mehr liefern</translation>
    </message>
    <message>
        <source>Forget it</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Keep it</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Then it is not your gateway that answers. Nothing was sent and nothing was kept. See whether the host is the right one, and try again from your own network.</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Dann antwortet da nicht dein Gateway. Es wurde nichts gesendet und nichts behalten. Sieh nach, ob der Host stimmt, und versuch es noch einmal aus deinem eigenen Netz.</translation>
    </message>
    <message>
        <source>What lies at the gateway stays there, and ends by its dates. New lists go there by hand from now on, and its host key is compared anew when you come back.</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Was auf dem Gateway liegt, bleibt dort und läuft an seinem Tag ab. Neue Listen trägst du ab jetzt von Hand hin, und wenn du zurückkommst, wird der Hostschlüssel neu verglichen.</translation>
    </message>
    <message>
        <source>Where its files go</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Wohin die Dateien gehen</translation>
    </message>
</context>
<context>
    <name>GatewayVisit</name>
    <message>
        <source>Cancel</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Deliver</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Liefern</translation>
    </message>
    <message>
        <source>Ending the visit; the gateway keeps a whole set.</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Der Besuch endet; das Gateway behält einen ganzen Satz.</translation>
    </message>
    <message>
        <source>Reaching the gateway …</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Das Gateway wird gerufen …</translation>
    </message>
    <message>
        <source>What differs</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Was anders ist</translation>
    </message>
</context>
<context>
    <name>HandOver</name>
    <message>
        <source>Back to the board</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Zurück zur Tafel</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hand over {title}</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>{title} übergeben</translation>
    </message>
    <message>
        <source>It gets in as soon as it has its bundle, until {end}. Nothing changes for anybody else.</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Es kommt hinein, sobald es sein Bündel hat, bis {end}. Für alle anderen ändert sich nichts.</translation>
    </message>
    <message>
        <source>Where to save it for {title}</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Wo das Bündel gespeichert wird: {title}</translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>Close</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Esc</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Esc changes nothing</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Esc ändert nichts</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Verloren oder gestohlen</translation>
    </message>
    <message>
        <source>Type two letters of the person or the device.</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Tipp zwei Buchstaben der Person oder des Geräts.</translation>
    </message>
</context>
<context>
    <name>Headline</name>
    <message>
        <source>Deliver now</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Jetzt liefern</translation>
    </message>
    <message>
        <source>Hand over {title}</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>{title} übergeben</translation>
    </message>
    <message>
        <source>Renew {title}</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>{title} erneuern</translation>
    </message>
    <message>
        <source>Say less at the top</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Oben weniger sagen</translation>
    </message>
    <message>
        <source>Sign the next list</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Nächste Liste signieren</translation>
    </message>
    <message>
        <source>What that means</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Was das heißt</translation>
    </message>
    <message>
        <source>less</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>weniger</translation>
    </message>
    <message>
        <source>more</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>mehr</translation>
    </message>
</context>
<context>
    <name>HelpPage</name>
    <message>
        <source>Hollow is for now, solid is for sure.</source>
        <extracomment>F1: help for this spot, offline, short enough to be read standing.</extracomment>
        <translation>Hohl heißt vorläufig, voll heißt sicher.</translation>
    </message>
</context>
<context>
    <name>HostKeyCard</name>
    <message>
        <source>Command to run at the gateway</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Befehl für das Gateway</translation>
    </message>
    <message>
        <source>Host key that it shows</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Hostschlüssel, den es zeigt</translation>
    </message>
    <message>
        <source>Is this the gateway’s own key?</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Ist das der eigene Schlüssel des Gateways?</translation>
    </message>
    <message>
        <source>It is another</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Es ist ein anderer</translation>
    </message>
    <message>
        <source>It is the same</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Es ist derselbe</translation>
    </message>
    <message>
        <source>Whoever sits between this computer and the gateway could show another one. Run this at the gateway itself and compare:</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Wer zwischen diesem Computer und dem Gateway sitzt, könnte einen anderen zeigen. Gib das auf dem Gateway selbst ein und vergleiche:</translation>
    </message>
    <message>
        <source>{where} shows this host key:</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>{where} zeigt diesen Hostschlüssel:</translation>
    </message>
</context>
<context>
    <name>HouseholdForm</name>
    <message>
        <source>Another quiet one</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Ein anderes ruhiges</translation>
    </message>
    <message>
        <source>DNS server at home, if there is one</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>DNS-Server zu Hause, wenn es einen gibt</translation>
    </message>
    <message>
        <source>Under which name is the house reached?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Unter welchem Namen ist das Haus erreichbar?</translation>
    </message>
    <message>
        <source>What do device codes end in?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Worauf enden die Gerätecodes?</translation>
    </message>
    <message>
        <source>What goes through home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Was geht über zu Hause?</translation>
    </message>
    <message>
        <source>What is the household called?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Wie heißt der Haushalt?</translation>
    </message>
    <message>
        <source>What of their traffic goes through home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Was von ihrem Verkehr geht über zu Hause?</translation>
    </message>
    <message>
        <source>Which subnet do the devices get?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Welches Subnetz bekommen die Geräte?</translation>
    </message>
    <message>
        <source>Which subnets are at home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Welche Subnetze gibt es zu Hause?</translation>
    </message>
    <message>
        <source>a quiet one is proposed</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>ein ruhiges wird vorgeschlagen</translation>
    </message>
    <message>
        <source>everything</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>alles</translation>
    </message>
    <message>
        <source>what is at home</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>was zu Hause ist</translation>
    </message>
</context>
<context>
    <name>HouseholdPage</name>
    <message>
        <source>(key in a file)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(Schlüssel in einer Datei)</translation>
    </message>
    <message>
        <source>(key in the keyring)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(Schlüssel im Schlüsselbund)</translation>
    </message>
    <message>
        <source>(no. {number})</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(Nr. {number})</translation>
    </message>
    <message>
        <source>(trusted beside it)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(daneben vertraut)</translation>
    </message>
    <message>
        <source>As it was</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Wie es war</translation>
    </message>
    <message>
        <source>CA</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>CA</translation>
    </message>
    <message>
        <source>CA, SHA-256</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>CA, SHA-256</translation>
    </message>
    <message>
        <source>Change it</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change it back</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>New gateway certificate</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Neues Gateway-Zertifikat</translation>
    </message>
    <message>
        <source>Sign the list anew</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Liste neu signieren</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Jemand übernimmt</translation>
    </message>
    <message>
        <source>The household</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Der Haushalt</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Die nächste CA</translation>
    </message>
    <message>
        <source>There is a way back: give the house its old name again, with the passphrase.</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Es gibt einen Weg zurück: Gib dem Haus mit der Passphrase wieder seinen alten Namen.</translation>
    </message>
    <message>
        <source>Until when it runs</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Bis wann es läuft</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Sperrliste</translation>
    </message>
    <message>
        <source>the other CA</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>die andere CA</translation>
    </message>
</context>
<context>
    <name>InsideSheet</name>
    <message>
        <source>&amp;Bring it back</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Devices</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Look at the gateway. Its list may know of devices that were stopped since; they are taken over from there, and list numbers go on above the highest one seen.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Sieh nach dem Gateway. Seine Liste kennt vielleicht Geräte, die seitdem gesperrt wurden; sie werden von dort übernommen, und die Listennummern gehen über der höchsten weiter, die gesehen wurde.</translation>
    </message>
    <message>
        <source>Made</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Erstellt</translation>
    </message>
    <message>
        <source>Newest list number</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Neueste Listennummer</translation>
    </message>
    <message>
        <source>Once it is open, what is in it stands here: the household, the day, the newest list number, the devices. Nothing is written before you say so.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Sobald sie offen ist, steht hier, was darin ist: der Haushalt, der Tag, die neueste Listennummer, die Geräte. Nichts wird geschrieben, bevor du es sagst.</translation>
    </message>
    <message>
        <source>Say where the gateway is, then deliver. Its list may know of devices that were stopped since; they are taken over from there, and list numbers go on above the highest one seen. Then enrol everybody anew.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Sag, wo das Gateway ist, dann liefere. Seine Liste kennt vielleicht Geräte, die seitdem gesperrt wurden; sie werden von dort übernommen, und die Listennummern gehen über der höchsten weiter, die gesehen wurde. Dann nimm alle neu auf.</translation>
    </message>
    <message>
        <source>Stopped or revoked</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Gesperrt oder widerrufen</translation>
    </message>
    <message>
        <source>To the &amp;board</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Zur &amp;Tafel</translation>
    </message>
    <message>
        <source>To the &amp;gateway</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Zum &amp;Gateway</translation>
    </message>
    <message>
        <source>What comes next</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Wie es weitergeht</translation>
    </message>
    <message>
        <source>What is inside</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Was darin ist</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <source>not on paper</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>nicht auf Papier</translation>
    </message>
    <message>
        <source>{day}, {time} UTC</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>{day}, {time} UTC</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>{names} und {count} weitere</translation>
    </message>
</context>
<context>
    <name>KeyPaperPage</name>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>&amp;Als PDF speichern…</translation>
    </message>
    <message>
        <source>1: codes</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>1: Codes</translation>
    </message>
    <message>
        <source>2: letters</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>2: Buchstaben</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Zurück zur Tafel</translation>
    </message>
    <message>
        <source>Both pages are at the printer.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Beide Seiten sind beim Drucker.</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Sprache der Person, die es liest</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Page</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Saved as {file}. Print both pages, then delete the file.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Gespeichert als {file}. Druck beide Seiten, dann lösche die Datei.</translation>
    </message>
    <message>
        <source>Shown here</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Hier zu sehen</translation>
    </message>
    <message>
        <source>The CA key as it lies in the keyring, encrypted under the household’s passphrase, with the settings and the newest list number. It outlives every stick. People and devices are not on it: sealed copies have those.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Der CA-Schlüssel, wie er im Schlüsselbund liegt, verschlüsselt mit der Passphrase des Haushalts, dazu die Einstellungen und die neueste Listennummer. Das Papier überlebt jeden Stick. Personen und Geräte stehen nicht darauf: Die haben die versiegelten Kopien.</translation>
    </message>
    <message>
        <source>The household’s key on paper.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Der Schlüssel des Haushalts auf Papier.</translation>
    </message>
    <message>
        <source>The key on paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Der Schlüssel auf Papier</translation>
    </message>
    <message>
        <source>The passphrase is never on it. Keep the two apart, both where they will be found.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Die Passphrase steht nie darauf. Bewahre die beiden getrennt auf, jedes dort, wo man es findet.</translation>
    </message>
    <message>
        <source>Where to save the paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Wohin das Papier gespeichert wird</translation>
    </message>
</context>
<context>
    <name>KindWords</name>
    <message>
        <source>(from documents, not tried on a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(aus Dokumenten, nicht an einem Gerät ausprobiert)</translation>
    </message>
    <message>
        <source>(not among the kinds of device any more; treated like {kind})</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(nicht mehr unter den Gerätearten; behandelt wie {kind})</translation>
    </message>
    <message>
        <source>(tried on such a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(an so einem Gerät ausprobiert)</translation>
    </message>
    <message>
        <source>(your own file, not tried on a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(eigene Datei, nicht an einem Gerät ausprobiert)</translation>
    </message>
</context>
<context>
    <name>LeavePage</name>
    <message>
        <source>Also change</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>Außerdem ändern</translation>
    </message>
    <message>
        <source>Revoke them all for good</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>Alle endgültig widerrufen</translation>
    </message>
    <message>
        <source>{person} leaves</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>{person} geht</translation>
    </message>
</context>
<context>
    <name>LeftSide</name>
    <message>
        <source>Cover the code, show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Code verdecken, Passphrase zeigen</translation>
    </message>
    <message>
        <source>Cover the file, show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Datei verdecken, Passphrase zeigen</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>Drag it into a folder, a message or onto a stick, or choose a way here. After hand-over the key exists on the {device} alone.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Zieh es in einen Ordner, in eine Nachricht oder auf einen Stick, oder wähle hier einen Weg. Nach der Übergabe gibt es den Schlüssel nur noch dort: {device}.</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Passphrase verbergen</translation>
    </message>
    <message>
        <source>Hide the passphrase, show the code</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Passphrase verbergen, Code zeigen</translation>
    </message>
    <message>
        <source>It is never on one screen, one sheet or in one message with a code or a file. Say it, or show it once the code is covered.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Sie steht nie mit einem Code oder einer Datei auf demselben Bildschirm, auf demselben Blatt oder in derselben Nachricht. Sag sie, oder zeig sie einmal, wenn der Code verdeckt ist.</translation>
    </message>
    <message>
        <source>Sheet and messages…</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Blatt und Nachrichten…</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Passphrase zeigen</translation>
    </message>
    <message>
        <source>The passphrase travels another way.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Die Passphrase nimmt einen anderen Weg.</translation>
    </message>
    <message>
        <source>waiting since {day}</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>wartet seit {day}</translation>
    </message>
</context>
<context>
    <name>LostSheet</name>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The sheet &quot;Lost or stolen&quot; itself: it slides down over the window, keeps the focus, and slides back.</extracomment>
        <translation>Verloren oder gestohlen</translation>
    </message>
    <message>
        <source>gets in no more</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>kommt nicht mehr hinein</translation>
    </message>
    <message>
        <source>stopped already</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>schon gesperrt</translation>
    </message>
    <message>
        <source>{title} gets in no more. There is nothing to stop.</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>{title} kommt nicht mehr hinein. Es gibt nichts zu sperren.</translation>
    </message>
    <message>
        <source>{title} is stopped already. It gets in when you let it back in, and not before.</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>{title} ist schon gesperrt. Es kommt erst hinein, wenn du es wieder einlässt.</translation>
    </message>
</context>
<context>
    <name>MatchList</name>
    <message>
        <source>Devices found</source>
        <extracomment>The devices that were found, as ruled rows with the typed letters underlined.</extracomment>
        <translation>Gefundene Geräte</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>The devices that were found, as ruled rows with the typed letters underlined.</extracomment>
        <translation>{number} von {count}</translation>
    </message>
</context>
<context>
    <name>NamingCard</name>
    <message>
        <source>It was made elsewhere. Whose is it?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Er wurde anderswo gemacht. Wem gehört er?</translation>
    </message>
    <message>
        <source>Name it</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Benennen</translation>
    </message>
    <message>
        <source>Somebody</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Wie heißt es?</translation>
    </message>
    <message>
        <source>Whose device is it?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Wessen Gerät ist es?</translation>
    </message>
</context>
<context>
    <name>OfferedWords</name>
    <message>
        <source>The passphrase that is offered</source>
        <extracomment>The passphrase that the app offers: words to be written on paper, dots until they are asked for.</extracomment>
        <translation>Die vorgeschlagene Passphrase</translation>
    </message>
    <message>
        <source>covered; Show makes it readable</source>
        <extracomment>The passphrase that the app offers: words to be written on paper, dots until they are asked for.</extracomment>
        <translation>verdeckt; „Zeigen“ macht sie lesbar</translation>
    </message>
</context>
<context>
    <name>OnTheWay</name>
    <message>
        <source>Carry the list to the gateway now.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Trag die Liste jetzt zum Gateway.</translation>
    </message>
    <message>
        <source>In force.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>In Kraft.</translation>
    </message>
    <message>
        <source>List no. {number} waits here.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Liste Nr. {number} wartet hier.</translation>
    </message>
    <message>
        <source>Nobody has said yet where the gateway is, so nothing can be sent. Until it has the list, whoever could get in still can.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Noch ist nicht gesagt, wo das Gateway ist, also kann nichts gesendet werden. Bis es die Liste hat, kommt weiter hinein, wer bisher hineinkam.</translation>
    </message>
    <message>
        <source>Not in force yet.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Noch nicht in Kraft.</translation>
    </message>
    <message>
        <source>Nothing of the practice household is sent.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Vom Übungshaushalt wird nichts gesendet.</translation>
    </message>
    <message>
        <source>Reaching the gateway…</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Das Gateway wird gerufen…</translation>
    </message>
    <message>
        <source>The gateway was read back at {time}; it took {seconds} s.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Um {time} vom Gateway zurückgelesen; das dauerte {seconds} s.</translation>
    </message>
    <message>
        <source>The list lies at {path}. Carry it to the gateway.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Die Liste liegt in {path}. Trag sie zum Gateway.</translation>
    </message>
    <message>
        <source>Try &amp;now</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>&amp;Jetzt versuchen</translation>
    </message>
    <message>
        <source>Where to write the list</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Wohin die Liste geschrieben wird</translation>
    </message>
    <message>
        <source>With a household of your own the list would go to the gateway at once.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Bei einem eigenen Haushalt ginge die Liste sofort zum Gateway.</translation>
    </message>
    <message>
        <source>Write the list to a &amp;stick…</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Liste auf einen &amp;Stick schreiben…</translation>
    </message>
    <message>
        <source>{why} It keeps trying.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>{why} Die App versucht es weiter.</translation>
    </message>
</context>
<context>
    <name>Outcome</name>
    <message>
        <source>Close</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Strg+Z</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>The household was locked meanwhile. The list has to be signed.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Der Haushalt wurde inzwischen verschlossen. Die Liste muss signiert werden.</translation>
    </message>
    <message>
        <source>The list lies here: {path}</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Die Liste liegt hier: {path}</translation>
    </message>
    <message>
        <source>Undo: let it back in</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Rückgängig: wieder einlassen</translation>
    </message>
    <message>
        <source>{title} was let back in with list {number}. It gets in once the gateway holds that list.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>{title} ist mit Liste Nr. {number} wieder eingelassen. Hinein kommt es, sobald das Gateway diese Liste hat.</translation>
    </message>
    <message>
        <source>{title} was stopped with list {number}.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>{title} ist mit Liste Nr. {number} gesperrt.</translation>
    </message>
    <message>
        <source>{title} were stopped with list {number}.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>{title} sind mit Liste Nr. {number} gesperrt.</translation>
    </message>
</context>
<context>
    <name>OverCard</name>
    <message>
        <source>&amp;Open another</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>&amp;Einen neuen öffnen</translation>
    </message>
    <message>
        <source>Show the &amp;passphrase</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>&amp;Passphrase zeigen</translation>
    </message>
    <message>
        <source>Somebody in this network is guessing. Use a stick, or look who is in the Wi-Fi.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>Jemand in diesem Netz probiert Links durch. Nimm einen Stick, oder sieh nach, wer im WLAN ist.</translation>
    </message>
    <message>
        <source>The {device} has nothing yet. The old code leads nowhere any more.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>Auf dem Gerät ({device}) ist noch nichts. Der alte Code führt nirgends mehr hin.</translation>
    </message>
    <message>
        <source>The {device} has the file. Say the passphrase, or show it: the code is gone.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>Die Datei ist auf dem Gerät ({device}). Sag die Passphrase, oder zeig sie: Der Code ist weg.</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Close</source>
        <extracomment>A page of the drawer: title, content that scrolls, a last row that stays.</extracomment>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>PaperChoices</name>
    <message>
        <source>Language</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Sprache der Person, die es liest</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Passphrase card</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Passphrasen-Karte</translation>
    </message>
    <message>
        <source>Sheet</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>The passphrase was erased at hand-over, so there is only the sheet.</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Die Passphrase wurde bei der Übergabe gelöscht, also gibt es nur das Blatt.</translation>
    </message>
    <message>
        <source>To say</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Zum Sagen</translation>
    </message>
    <message>
        <source>To send</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Zum Senden</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Whom to call, a name and a number</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Wen anrufen, Name und Nummer</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>&amp;Copy</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Als PDF speichern…</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Zurück zur Tafel</translation>
    </message>
    <message>
        <source>Copied. Send it along with the file.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Kopiert. Schick es zusammen mit der Datei.</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Strg+P</translation>
    </message>
    <message>
        <source>It is at the printer.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Es ist beim Drucker.</translation>
    </message>
    <message>
        <source>Paper and words</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Papier und Worte</translation>
    </message>
    <message>
        <source>Paper and words for {title}</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Papier und Worte für {title}</translation>
    </message>
    <message>
        <source>Saved as {file}.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Gespeichert als {file}.</translation>
    </message>
    <message>
        <source>The seven words alone. Print it when nobody waits at the printer.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Nur die sieben Wörter. Druck die Karte, wenn niemand am Drucker wartet.</translation>
    </message>
    <message>
        <source>The sheet may lie beside the bundle. The card and what is said on the phone never do.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Das Blatt darf neben dem Bündel liegen. Die Karte und was am Telefon gesagt wird, liegen nie daneben.</translation>
    </message>
    <message>
        <source>This one cannot be copied: it would end up in the same message as the file.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Diese lässt sich nicht kopieren: Sie käme in dieselbe Nachricht wie die Datei.</translation>
    </message>
    <message>
        <source>This one goes with the file. The other is said on the phone, at another time.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Diese geht mit der Datei. Die andere wird am Telefon gesagt, zu einer anderen Zeit.</translation>
    </message>
    <message>
        <source>Where to save the page</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Wohin die Seite gespeichert wird</translation>
    </message>
</context>
<context>
    <name>PassphraseCard</name>
    <message>
        <source>&amp;Copy</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>A program that keeps a history of the clipboard may keep it.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Ein Programm, das sich die Zwischenablage merkt, behält sie vielleicht.</translation>
    </message>
    <message>
        <source>Copied. After {seconds} seconds it is taken off the clipboard.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Kopiert. Nach {seconds} Sekunden wird sie aus der Zwischenablage genommen.</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Strg+C</translation>
    </message>
    <message>
        <source>H&amp;ide</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>&amp;Verbergen</translation>
    </message>
    <message>
        <source>It is no longer on the clipboard.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Sie ist nicht mehr in der Zwischenablage.</translation>
    </message>
    <message>
        <source>One space between two words, no capitals. Say it, or write it on paper.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Ein Leerzeichen zwischen zwei Wörtern, alles klein. Sag sie, oder schreib sie auf Papier.</translation>
    </message>
</context>
<context>
    <name>PassphrasePart</name>
    <message>
        <source>7 words instead</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Lieber 7 Wörter</translation>
    </message>
    <message>
        <source>Hide</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Verbergen</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Passphrase verbergen</translation>
    </message>
    <message>
        <source>It differs from the first. Look at the paper, then type it again.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Sie ist anders als die erste. Sieh auf das Papier, dann tipp sie noch einmal.</translation>
    </message>
    <message>
        <source>Make another</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Andere Wörter</translation>
    </message>
    <message>
        <source>My own…</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Eigene…</translation>
    </message>
    <message>
        <source>Several unrelated words are best. It opens the CA key, so write it on paper too.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Am besten sind mehrere Wörter, die nichts miteinander zu tun haben. Sie öffnet den CA-Schlüssel, also schreib sie auch auf Papier.</translation>
    </message>
    <message>
        <source>Show</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Passphrase zeigen</translation>
    </message>
    <message>
        <source>The household passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Die Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>The household passphrase: 7 words, made for you</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Die Passphrase des Haushalts: 7 Wörter, für dich gemacht</translation>
    </message>
    <message>
        <source>The household passphrase: your own words</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Die Passphrase des Haushalts: deine eigenen Wörter</translation>
    </message>
    <message>
        <source>The same both times.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Beide Male gleich.</translation>
    </message>
    <message>
        <source>Type the words once more, from the paper</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Tipp die Wörter noch einmal, vom Papier</translation>
    </message>
    <message>
        <source>Write it on paper and keep it away from this computer. It opens the CA key.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Schreib sie auf Papier und bewahre es nicht bei diesem Computer auf. Sie öffnet den CA-Schlüssel.</translation>
    </message>
    <message>
        <source>Your own passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Deine eigene Passphrase</translation>
    </message>
    <message>
        <source>the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>die Passphrase</translation>
    </message>
    <message>
        <source>the passphrase once more</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>die Passphrase noch einmal</translation>
    </message>
</context>
<context>
    <name>PickFolder</name>
    <message>
        <source>Save here</source>
        <extracomment>Asks for a folder, without holding anything up.</extracomment>
        <translation>Hier speichern</translation>
    </message>
</context>
<context>
    <name>PickupCard</name>
    <message>
        <source>+&amp;10 min</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>+&amp;10 min</translation>
    </message>
    <message>
        <source>At {address}</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Unter {address}</translation>
    </message>
    <message>
        <source>C&amp;lose the pick-up</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Abholschein &amp;schließen</translation>
    </message>
    <message>
        <source>Chooses another address of this computer</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Wählt eine andere Adresse dieses Computers</translation>
    </message>
    <message>
        <source>Hold the phone’s camera over the code.</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Halte die Kamera des Handys über den Code.</translation>
    </message>
    <message>
        <source>Link</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Link</translation>
    </message>
    <message>
        <source>Ten minutes more</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Zehn Minuten mehr</translation>
    </message>
    <message>
        <source>The code of the pick-up for {title}</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Der Code des Abholscheins für {title}</translation>
    </message>
    <message>
        <source>one minute left</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>noch eine Minute</translation>
    </message>
    <message>
        <source>{minutes} minutes left</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>noch {minutes} Minuten</translation>
    </message>
</context>
<context>
    <name>Preview</name>
    <message>
        <source>The page as it is printed</source>
        <extracomment>A page of paper on the desk, as it will be printed.</extracomment>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
</context>
<context>
    <name>ProfileChoices</name>
    <message>
        <source>By itself, away from home</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Von selbst, unterwegs</translation>
    </message>
    <message>
        <source>Elsewhere and on mobile data it connects. The names stand readable in the profile.</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Anderswo und mit mobilen Daten verbindet es sich. Die Namen stehen lesbar im Profil.</translation>
    </message>
    <message>
        <source>Not signed</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Nicht signiert</translation>
    </message>
    <message>
        <source>Signed with the gateway’s key</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Mit dem Schlüssel des Gateways signiert</translation>
    </message>
    <message>
        <source>The &amp;Wi-Fis at home, where it stays off; a comma between two</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Die &amp;WLANs zu Hause, in denen es aus bleibt; dazwischen ein Komma</translation>
    </message>
    <message>
        <source>When switched on</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Wenn eingeschaltet</translation>
    </message>
    <message>
        <source>When the device connects</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Wann sich das Gerät verbindet</translation>
    </message>
    <message>
        <source>Whose key signs the profile</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Wessen Schlüssel das Profil signiert</translation>
    </message>
</context>
<context>
    <name>ProofCard</name>
    <message>
        <source>10 minutes &amp;more</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>10 Minuten &amp;mehr</translation>
    </message>
    <message>
        <source>Cop&amp;y the link</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>Link &amp;kopieren</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>Kopiert</translation>
    </message>
    <message>
        <source>{minutes} min left</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>noch {minutes} min</translation>
    </message>
    <message>
        <source>{minutes}:{seconds} left</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>noch {minutes}:{seconds}</translation>
    </message>
</context>
<context>
    <name>ProofPage</name>
    <message>
        <source>&amp;Back</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Open a new link</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Neuen Link öffnen</translation>
    </message>
    <message>
        <source>Code that {title} opens</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Code, den {title} öffnet</translation>
    </message>
    <message>
        <source>On the screen then</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Dann auf dem Bildschirm</translation>
    </message>
    <message>
        <source>Prove {title}</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>{title} nachweisen</translation>
    </message>
    <message>
        <source>Step {number} of {count}</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Schritt {number} von {count}</translation>
    </message>
    <message>
        <source>What to say</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Was du sagst</translation>
    </message>
    <message>
        <source>Wi-Fi may be switched on again. The sheet shows the day from now on.</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Das WLAN darf wieder eingeschaltet werden. Das Blatt zeigt von jetzt an den Tag.</translation>
    </message>
    <message>
        <source>Written down, as it was told.</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Aufgeschrieben, wie es gesagt wurde.</translation>
    </message>
</context>
<context>
    <name>ProofPlace</name>
    <message>
        <source>&amp;Address of this computer</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>&amp;Adresse dieses Computers</translation>
    </message>
    <message>
        <source>Address of this computer</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>Adresse dieses Computers</translation>
    </message>
    <message>
        <source>At {address}.</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>Unter {address}.</translation>
    </message>
    <message>
        <source>The &amp;gateway’s own address at home</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>Die eigene Adresse des &amp;Gateways zu Hause</translation>
    </message>
</context>
<context>
    <name>ProofTold</name>
    <message>
        <source>&amp;Write it down</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>Auf&amp;schreiben</translation>
    </message>
    <message>
        <source>It works on mobile data, I was &amp;told</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>Mir wurde gesagt, es geht mit mobilen &amp;Daten</translation>
    </message>
    <message>
        <source>Not &amp;yet</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>Noch n&amp;icht</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Why is it revoked?</source>
        <extracomment>Why a device is revoked: in words, with the name that goes onto the list beside them.</extracomment>
        <translation>Warum wird widerrufen?</translation>
    </message>
</context>
<context>
    <name>RenewPage</name>
    <message>
        <source>A new key; to the gateway the device stays the same. The old pass goes once the new one was seen to get in, and not before.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Ein neuer Schlüssel; für das Gateway bleibt das Gerät dasselbe. Der alte Pass geht, sobald der neue nachweislich hineinkam, und nicht vorher.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Days that both get in, at most</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Tage, an denen beide hineinkommen, höchstens</translation>
    </message>
    <message>
        <source>Hand them over at the desk</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Am Tisch übergeben</translation>
    </message>
    <message>
        <source>Never beyond the old one’s end.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Nie über das Ende des alten hinaus.</translation>
    </message>
    <message>
        <source>Nothing is ticked.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Nichts ist angekreuzt.</translation>
    </message>
    <message>
        <source>Put aside</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>Renew</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Erneuern</translation>
    </message>
    <message>
        <source>Renew it</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Erneuern</translation>
    </message>
    <message>
        <source>Renew {count}</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>{count} erneuern</translation>
    </message>
    <message>
        <source>Stop after this one</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Nach diesem anhalten</translation>
    </message>
    <message>
        <source>Tick what ends soon</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Ankreuzen, was bald abläuft</translation>
    </message>
    <message>
        <source>Visits…</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Besuche…</translation>
    </message>
    <message>
        <source>{title}, {done} of {count}</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>{title}, {done} von {count}</translation>
    </message>
</context>
<context>
    <name>RenewRows</name>
    <message>
        <source>One more ends later.</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>Eines mehr läuft später ab.</translation>
    </message>
    <message>
        <source>Which devices?</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>Welche Geräte?</translation>
    </message>
    <message>
        <source>ends {day}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>läuft am {day} ab</translation>
    </message>
    <message>
        <source>ends {day}, you meet on {visit}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>läuft am {day} ab, ihr trefft euch am {visit}</translation>
    </message>
    <message>
        <source>stopped, would end {day}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>gesperrt, liefe am {day} ab</translation>
    </message>
    <message>
        <source>{count} more end later.</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>{count} weitere laufen später ab.</translation>
    </message>
</context>
<context>
    <name>RestCard</name>
    <message>
        <source>Each way is rehearsed first: the very bytes are opened with the passphrase and tried at the gateway’s certificate and the revocation list. What would not get in does not leave.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Jeder Weg wird vorher geprobt: Genau diese Bytes werden mit der Passphrase geöffnet und am Zertifikat des Gateways und an der Sperrliste geprüft. Was nicht hineinkäme, geht nicht hinaus.</translation>
    </message>
    <message>
        <source>Known to go wrong with such a device:</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Bekannt ist bei solchen Geräten:</translation>
    </message>
    <message>
        <source>Your own texts are written as they are: whether one is right, only the program knows that reads it.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Eigene Texte werden geschrieben, wie sie sind: Ob einer stimmt, weiß nur das Programm, das ihn liest.</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>&amp;Open it</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Passphrase of the household</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>&amp;Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>A sealed copy. Its passphrase is wanted now.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Eine versiegelte Kopie. Jetzt fehlt ihre Passphrase.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Bring a household back</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Einen Haushalt zurückholen</translation>
    </message>
    <message>
        <source>Bring a household back, from a sealed copy or from its paper.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Einen Haushalt zurückholen, aus einer versiegelten Kopie oder von seinem Papier.</translation>
    </message>
    <message>
        <source>It is open. What is inside stands beside.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Es ist offen. Was darin ist, steht daneben.</translation>
    </message>
    <message>
        <source>Look inside first. Nothing is written before the last button.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Sieh zuerst hinein. Vor dem letzten Knopf wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>No code of a paper was found there. Scan it again, straight, or type its lines.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Dort war kein Code eines Papiers zu finden. Scanne es noch einmal, gerade, oder tipp seine Zeilen.</translation>
    </message>
    <message>
        <source>Passphrase of the &amp;copies</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Passphrase der &amp;Kopien</translation>
    </message>
    <message>
        <source>The copies have a passphrase of their own</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Die Kopien haben eine eigene Passphrase</translation>
    </message>
    <message>
        <source>The paper has been read. Its passphrase is wanted now.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Das Papier ist gelesen. Jetzt fehlt seine Passphrase.</translation>
    </message>
    <message>
        <source>Type the lines of a paper</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Die Zeilen eines Papiers tippen</translation>
    </message>
    <message>
        <source>{household} is back.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>{household} ist zurück.</translation>
    </message>
</context>
<context>
    <name>SavedCard</name>
    <message>
        <source>Open the &amp;folder</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Ordner öffnen</translation>
    </message>
    <message>
        <source>Written and read back.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Geschrieben und zurückgelesen.</translation>
    </message>
    <message>
        <source>Written and read back. Eject {name} in the file manager, then pull it.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Geschrieben und zurückgelesen. Wirf {name} in der Dateiverwaltung aus, dann zieh den Stick ab.</translation>
    </message>
    <message>
        <source>Written and read back. Leave {name} in while it is unmounted.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Geschrieben und zurückgelesen. Lass {name} stecken, solange ausgehängt wird.</translation>
    </message>
    <message>
        <source>Written, read back and unmounted. You may pull {name} now.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Geschrieben, zurückgelesen und ausgehängt. Du kannst {name} jetzt abziehen.</translation>
    </message>
    <message>
        <source>in {folder}</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>in {folder}</translation>
    </message>
</context>
<context>
    <name>SealedPage</name>
    <message>
        <source>&amp;On paper…</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>&amp;Auf Papier…</translation>
    </message>
    <message>
        <source>&amp;Try it</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Aus&amp;probieren</translation>
    </message>
    <message>
        <source>&amp;Write one to a folder…</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Eine in einen &amp;Ordner schreiben…</translation>
    </message>
    <message>
        <source>A sealed copy holds everything: the register, the CA key, the household’s secrets. The app writes one into its own folder after every change and keeps the last ten. They die with this computer, so carry one away now and then. It opens with the household’s passphrase, and with any age tool.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Eine versiegelte Kopie enthält alles: das Register, den CA-Schlüssel, die Geheimnisse des Haushalts. Die App schreibt nach jeder Änderung eine in ihren eigenen Ordner und behält die letzten zehn. Sie sterben mit diesem Computer, also trag ab und zu eine weg. Sie lässt sich mit der Passphrase des Haushalts öffnen, auch mit jedem Programm für age.</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Kopie</translation>
    </message>
    <message>
        <source>Does it open?</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Geht sie auf?</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Versiegelte Kopien</translation>
    </message>
    <message>
        <source>The copy of {day} was opened on {tried} and was whole.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Die Kopie vom {day} wurde am {tried} geöffnet und war unversehrt.</translation>
    </message>
    <message>
        <source>There are copies, but none of them was ever opened.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Es gibt Kopien, aber keine davon wurde je geöffnet.</translation>
    </message>
    <message>
        <source>There is no sealed copy yet. One is made when the household is next unlocked.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Es gibt noch keine versiegelte Kopie. Eine entsteht, wenn der Haushalt das nächste Mal aufgeschlossen wird.</translation>
    </message>
    <message>
        <source>Trying one opens it for real, in a place that is gone afterwards. Nothing here is changed.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Beim Ausprobieren wird die Kopie wirklich geöffnet, an einem Ort, den es danach nicht mehr gibt. Hier ändert sich nichts.</translation>
    </message>
    <message>
        <source>Where to write a sealed copy</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Wohin eine versiegelte Kopie geschrieben wird</translation>
    </message>
    <message>
        <source>{day}, {time}, in {folder}</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>{day}, {time}, in {folder}</translation>
    </message>
</context>
<context>
    <name>SearchField</name>
    <message>
        <source>Lost or stolen: letters of the person or the device</source>
        <extracomment>The field of &quot;Lost or stolen&quot;: large, with the count of devices at its right.</extracomment>
        <translation>Verloren oder gestohlen: Buchstaben der Person oder des Geräts</translation>
    </message>
    <message>
        <source>person or device</source>
        <extracomment>The field of &quot;Lost or stolen&quot;: large, with the count of devices at its right.</extracomment>
        <translation>Person oder Gerät</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>A copy of this folder is a copy of the household. What lies in the keyring is not in it.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Eine Kopie dieses Ordners ist eine Kopie des Haushalts. Was im Schlüsselbund liegt, ist nicht darin.</translation>
    </message>
    <message>
        <source>Counted from the last signature. Closing the window locks it at once.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Gezählt ab der letzten Signatur. Wenn du das Fenster schließt, wird er sofort verschlossen.</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Lock the household after</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Haushalt verschließen nach</translation>
    </message>
    <message>
        <source>Look</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Open the folder</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Ordner öffnen</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Size of type</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>Takes effect when the app is started next. The diary keeps the words it was written in.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Gilt, sobald die App das nächste Mal startet. Das Tagebuch behält die Worte, in denen es geschrieben wurde.</translation>
    </message>
    <message>
        <source>The household…</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Der Haushalt…</translation>
    </message>
    <message>
        <source>Where the data lies</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Wo die Daten liegen</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>wie der Desktop</translation>
    </message>
    <message>
        <source>high contrast, dark</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>hoher Kontrast, dunkel</translation>
    </message>
    <message>
        <source>high contrast, light</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>hoher Kontrast, hell</translation>
    </message>
    <message>
        <source>lamp, dark</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Lampe, dunkel</translation>
    </message>
    <message>
        <source>paper, light</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Papier, hell</translation>
    </message>
    <message>
        <source>{minutes} minutes</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>{minutes} Minuten</translation>
    </message>
</context>
<context>
    <name>Settlement</name>
    <message>
        <source>All of these devices</source>
        <extracomment>The household&apos;s settings while they are being changed: the form, what follows, and whose devices it touches.</extracomment>
        <translation>Alle diese Geräte</translation>
    </message>
    <message>
        <source>What would touch whom?</source>
        <extracomment>The household&apos;s settings while they are being changed: the form, what follows, and whose devices it touches.</extracomment>
        <translation>Was würde wen betreffen?</translation>
    </message>
</context>
<context>
    <name>SettlingForm</name>
    <message>
        <source>Details</source>
        <extracomment>The household&apos;s settings as they stand, to be typed over.</extracomment>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Of new devices; those that are there keep theirs.</source>
        <extracomment>The household&apos;s settings as they stand, to be typed over.</extracomment>
        <translation>Für neue Geräte; die vorhandenen behalten ihre.</translation>
    </message>
</context>
<context>
    <name>SheetSoFar</name>
    <message>
        <source>CA</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>CA</translation>
    </message>
    <message>
        <source>One line for each device, from the day it is made to the day it ends.</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Eine Linie für jedes Gerät, vom Tag, an dem sein Pass entsteht, bis zum letzten.</translation>
    </message>
    <message>
        <source>The house</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Das Haus</translation>
    </message>
    <message>
        <source>The sheet so far</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Das Blatt bisher</translation>
    </message>
    <message>
        <source>Then people</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Dann die Menschen</translation>
    </message>
    <message>
        <source>from {day} nobody gets in without a newer list</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>ab {day} kommt ohne neuere Liste niemand hinein</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>its certificate</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>sein Zertifikat</translation>
    </message>
    <message>
        <source>made now, kept in a file</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>jetzt erstellt, in einer Datei verwahrt</translation>
    </message>
    <message>
        <source>made now, kept in the keyring</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>jetzt erstellt, im Schlüsselbund verwahrt</translation>
    </message>
    <message>
        <source>no. 1, made with it</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Nr. 1, mit ihr erstellt</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Sperrliste</translation>
    </message>
</context>
<context>
    <name>SidePanel</name>
    <message>
        <source>All ways</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Alle Wege</translation>
    </message>
    <message>
        <source>Choose a way</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Wähle einen Weg</translation>
    </message>
    <message>
        <source>It stays here</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Es bleibt hier</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Passphrase</translation>
    </message>
</context>
<context>
    <name>SlotList</name>
    <message>
        <source>Slots; Enter puts one into the text</source>
        <extracomment>The slots of a template as a list: name, today&apos;s value, meaning; Enter or a click takes one.</extracomment>
        <translation>Platzhalter; Eingabe setzt einen in den Text</translation>
    </message>
</context>
<context>
    <name>SoFar</name>
    <message>
        <source>A CA that was made by hand is looked over, and taken over with all its passes.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Eine CA, die von Hand gemacht ist, wird durchgesehen und mit all ihren Pässen übernommen.</translation>
    </message>
    <message>
        <source>A household that you had comes back from its sealed copy, or from its key on paper.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Ein Haushalt, den du hattest, kommt aus seiner versiegelten Kopie zurück, oder von seinem Schlüssel auf Papier.</translation>
    </message>
    <message>
        <source>From a sealed copy …</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Aus einer versiegelten Kopie …</translation>
    </message>
    <message>
        <source>I have a CA already …</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Ich habe schon eine CA …</translation>
    </message>
    <message>
        <source>Look around in a practice household</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>In einem Übungshaushalt umsehen</translation>
    </message>
    <message>
        <source>Not sure yet?</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Noch unsicher?</translation>
    </message>
    <message>
        <source>Quince Cottage is a practice household. Nothing in it is real, and nothing can be broken.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Quince Cottage ist ein Übungshaushalt. Nichts darin ist echt, und nichts kann kaputtgehen.</translation>
    </message>
    <message>
        <source>The sheet so far</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Das Blatt bisher</translation>
    </message>
    <message>
        <source>changes as you type</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>ändert sich beim Tippen</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>Hand over</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>New bundle</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Neues Bündel</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Nachweisen</translation>
    </message>
</context>
<context>
    <name>StickCard</name>
    <message>
        <source>&amp;Look again</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Erneut suchen</translation>
    </message>
    <message>
        <source>Another &amp;folder …</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Anderer &amp;Ordner …</translation>
    </message>
    <message>
        <source>No stick is plugged in. Plug one in, give it a moment, then look again.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Es steckt kein Stick. Steck einen an, wart einen Moment, dann such noch einmal.</translation>
    </message>
    <message>
        <source>Which one? It is unmounted afterwards, so that it can be pulled.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Welcher? Danach wird er ausgehängt, damit du ihn abziehen kannst.</translation>
    </message>
    <message>
        <source>Write to {drive}</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Auf {drive} schreiben</translation>
    </message>
    <message>
        <source>{name}, {free} free</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>{name}, {free} frei</translation>
    </message>
</context>
<context>
    <name>StickQuestion</name>
    <message>
        <source>&amp;Delete the file</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>&amp;Datei löschen</translation>
    </message>
    <message>
        <source>&amp;Look now</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>&amp;Jetzt nachsehen</translation>
    </message>
    <message>
        <source>Ask me later</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Später fragen</translation>
    </message>
    <message>
        <source>It is &amp;wiped</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Er ist &amp;gelöscht</translation>
    </message>
    <message>
        <source>It is not wiped after all</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Er ist doch nicht gelöscht</translation>
    </message>
    <message>
        <source>The bundle of {title} was written to it on {day}.</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>{title}: Das Bündel wurde am {day} darauf geschrieben.</translation>
    </message>
    <message>
        <source>Was the stick “{name}” wiped?</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Wurde der Stick „{name}“ gelöscht?</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>Deliver</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Liefern</translation>
    </message>
    <message>
        <source>Deliver to the gateway now</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Jetzt an das Gateway liefern</translation>
    </message>
    <message>
        <source>Lock</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Verschließen</translation>
    </message>
</context>
<context>
    <name>Succession</name>
    <message>
        <source>Both its passes get in, the old one until {day}. Look on the device that the new one is chosen, then prove it; the old one goes for good.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Beide Pässe kommen hinein, der alte bis {day}. Sieh auf dem Gerät nach, dass der neue gewählt ist, dann weise ihn nach; der alte geht dann endgültig.</translation>
    </message>
    <message>
        <source>Do it</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Ausführen</translation>
    </message>
    <message>
        <source>Let it go for good</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Endgültig gehen lassen</translation>
    </message>
    <message>
        <source>Let the old pass go…</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Alten Pass gehen lassen…</translation>
    </message>
    <message>
        <source>Take it back</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take the renewal back…</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Erneuerung zurücknehmen…</translation>
    </message>
    <message>
        <source>The new pass was seen to get in, so the old one goes now, or at the next unlock.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Der neue Pass kam nachweislich hinein, also geht der alte jetzt, oder beim nächsten Aufschließen.</translation>
    </message>
    <message>
        <source>The pass that the device has gets in until {day}. The next one waits in the tray.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Der Pass, den das Gerät hat, kommt hinein bis {day}. Der nächste wartet in der Ablage.</translation>
    </message>
</context>
<context>
    <name>SuccessionPage</name>
    <message>
        <source>&amp;Deliver to the gateway</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>An das Gateway &amp;liefern</translation>
    </message>
    <message>
        <source>&amp;Give it the new certificate</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Ihm das neue &amp;Zertifikat geben</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Make the next CA</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Die &amp;nächste CA erstellen</translation>
    </message>
    <message>
        <source>&amp;Put the old CA away</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Die &amp;alte CA ausmustern</translation>
    </message>
    <message>
        <source>&amp;Yes, put it away for good</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Ja, endgültig ausmustern</translation>
    </message>
    <message>
        <source>Everybody is through. There is no way back from here.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Alle sind durch. Von hier führt kein Weg zurück.</translation>
    </message>
    <message>
        <source>In good time</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Rechtzeitig</translation>
    </message>
    <message>
        <source>Lost</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>One device is not through and stands outside afterwards. There is no way back.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Ein Gerät ist nicht durch und steht danach draußen. Es führt kein Weg zurück.</translation>
    </message>
    <message>
        <source>One step &amp;back</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Einen &amp;Schritt zurück</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>Perhaps stolen</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Vielleicht gestohlen</translation>
    </message>
    <message>
        <source>The &amp;gateway has both</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Das &amp;Gateway hat beide</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Die nächste CA</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Warum</translation>
    </message>
    <message>
        <source>{count} devices are not through and stand outside afterwards. There is no way back.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>{count} Geräte sind nicht durch und stehen danach draußen. Es führt kein Weg zurück.</translation>
    </message>
</context>
<context>
    <name>TemplateBench</name>
    <message>
        <source>An example stands in the text. Write it over.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Im Text steht ein Beispiel. Überschreib es.</translation>
    </message>
    <message>
        <source>As it was kept</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Wie zuletzt behalten</translation>
    </message>
    <message>
        <source>Begin with an example</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Mit einem Beispiel beginnen</translation>
    </message>
    <message>
        <source>Enter or a click puts one where the cursor is.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Eingabe oder ein Klick setzt einen an die Schreibmarke.</translation>
    </message>
    <message>
        <source>Not sealed.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Nicht versiegelt.</translation>
    </message>
    <message>
        <source>Slots, with what stands in them today</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Platzhalter, und was heute darin steht</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Text</translation>
    </message>
    <message>
        <source>This is how it was before the mistake.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>So war es vor dem Fehler.</translation>
    </message>
    <message>
        <source>What it would write, secrets hidden</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Was geschrieben würde, Geheimnisse verborgen</translation>
    </message>
    <message>
        <source>With the values of</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Mit den Werten von</translation>
    </message>
    <message>
        <source>nobody yet: marks</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>noch niemand: Marken</translation>
    </message>
    <message>
        <source>{name} was put into the text</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>{name} steht jetzt im Text</translation>
    </message>
    <message>
        <source>{title}, waiting</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>{title}, wartet</translation>
    </message>
</context>
<context>
    <name>TemplateDesk</name>
    <message>
        <source>A text in the words of a program of yours. The household fills in what stands between double braces.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Ein Text in den Worten eines Programms von dir. Der Haushalt füllt aus, was zwischen doppelten geschweiften Klammern steht.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>It stands here as it was kept</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Hier steht sie, wie sie behalten wurde</translation>
    </message>
    <message>
        <source>Keep it</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keeping it writes over the one of that name.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>„Behalten“ überschreibt die Vorlage dieses Namens.</translation>
    </message>
    <message>
        <source>Kept under this name, it stands beside {name}.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Unter diesem Namen behalten, steht sie neben {name}.</translation>
    </message>
    <message>
        <source>Write for a device…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Für ein Gerät schreiben…</translation>
    </message>
    <message>
        <source>Write for this device…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Für dieses Gerät schreiben…</translation>
    </message>
    <message>
        <source>Write to a folder…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>In einen Ordner schreiben…</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Eigene Vorlage</translation>
    </message>
    <message>
        <source>the template</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>die Vorlage</translation>
    </message>
</context>
<context>
    <name>TemplateForm</name>
    <message>
        <source>Called</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Ending</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Endung</translation>
    </message>
    <message>
        <source>File name</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Dateiname</translation>
    </message>
    <message>
        <source>For</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Für</translation>
    </message>
    <message>
        <source>Forget it</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Template</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>Writes {file}.</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Schreibt {file}.</translation>
    </message>
    <message>
        <source>a new one</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>eine neue</translation>
    </message>
    <message>
        <source>devices</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>for instance: Letter to the doorkeeper</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>zum Beispiel: Brief an die Pforte</translation>
    </message>
    <message>
        <source>the gateway</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>das Gateway</translation>
    </message>
</context>
<context>
    <name>TemplateMistake</name>
    <message>
        <source>Go to line {line}</source>
        <extracomment>A mistake in a template: what it is, on which line, and the way there.</extracomment>
        <translation>Zu Zeile {line}</translation>
    </message>
</context>
<context>
    <name>TemplatePage</name>
    <message>
        <source>Choose first whose values it is written with.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Wähle zuerst, mit wessen Werten geschrieben wird.</translation>
    </message>
    <message>
        <source>It lies in {folder}.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Es liegt in {folder}.</translation>
    </message>
    <message>
        <source>What stands here stays; Keep it brings it back.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Was hier steht, bleibt; „Behalten“ bringt sie zurück.</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Wohin geschrieben wird</translation>
    </message>
</context>
<context>
    <name>TicketCard</name>
    <message>
        <source>Enter hands it over, the menu key shows all ways</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>Eingabe übergibt es, die Menütaste zeigt alle Wege</translation>
    </message>
    <message>
        <source>drag me, or choose how</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>zieh mich, oder wähle einen Weg</translation>
    </message>
    <message>
        <source>{title}, waiting in the tray</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>{title}, wartet in der Ablage</translation>
    </message>
</context>
<context>
    <name>TopRow</name>
    <message>
        <source>&amp;New device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>&amp;Neues Gerät</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Strg+N</translation>
    </message>
    <message>
        <source>Find</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Verloren oder gestohlen</translation>
    </message>
    <message>
        <source>looking only</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>nur zum Ansehen</translation>
    </message>
    <message>
        <source>practice household</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Übungshaushalt</translation>
    </message>
</context>
<context>
    <name>Tray</name>
    <message>
        <source>All at the desk …</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Alle am Tisch …</translation>
    </message>
    <message>
        <source>Cards further left</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Karten weiter links</translation>
    </message>
    <message>
        <source>Cards further right</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Karten weiter rechts</translation>
    </message>
    <message>
        <source>Hand over …</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Übergeben …</translation>
    </message>
    <message>
        <source>Tray</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Ablage</translation>
    </message>
    <message>
        <source>{count} wait</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>{count} warten</translation>
    </message>
    <message>
        <source>{count} waits</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>{count} wartet</translation>
    </message>
</context>
<context>
    <name>TroubleCard</name>
    <message>
        <source>Do it &amp;again</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Lea&amp;ve it</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Lassen</translation>
    </message>
    <message>
        <source>Nothing left this computer.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Nichts hat diesen Computer verlassen.</translation>
    </message>
    <message>
        <source>The rehearsal stopped at its step “{step}”. Nothing left this computer.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Die Probe hielt beim Schritt „{step}“ an. Nichts hat diesen Computer verlassen.</translation>
    </message>
</context>
<context>
    <name>TypedLines</name>
    <message>
        <source>&amp;Lines of the paper, each with its number</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Zei&amp;len des Papiers, jede mit ihrer Nummer</translation>
    </message>
    <message>
        <source>A slip in line {slips}: compare it letter by letter. Still wanted: {missing}.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Ein Tippfehler in Zeile {slips}: Vergleich Buchstabe für Buchstabe. Es fehlt noch: {missing}.</translation>
    </message>
    <message>
        <source>All {count} lines of the paper have been read.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Alle {count} Zeilen des Papiers sind gelesen.</translation>
    </message>
    <message>
        <source>Line {last} is not whole yet: a number and nine groups.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Zeile {last} ist noch nicht vollständig: eine Nummer und neun Gruppen.</translation>
    </message>
    <message>
        <source>Lines of the paper</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Zeilen des Papiers</translation>
    </message>
    <message>
        <source>Lines read so far: {count}. Still wanted: {missing}.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Bisher gelesene Zeilen: {count}. Es fehlt noch: {missing}.</translation>
    </message>
</context>
<context>
    <name>UnlockRow</name>
    <message>
        <source>Hide</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Verbergen</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Passphrase verbergen</translation>
    </message>
    <message>
        <source>Opening the CA key, slow on purpose</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Der CA-Schlüssel wird geöffnet, mit Absicht langsam</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Passphrase des Haushalts</translation>
    </message>
    <message>
        <source>Show</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Passphrase zeigen</translation>
    </message>
    <message>
        <source>Unlock</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Aufschließen</translation>
    </message>
</context>
<context>
    <name>Until</name>
    <message>
        <source>2 years</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>2 Jahre</translation>
    </message>
    <message>
        <source>A {weekday} that has passed.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Ein {weekday}, der vorbei ist.</translation>
    </message>
    <message>
        <source>A {weekday}, {days} days from now.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Ein {weekday}, in {days} Tagen.</translation>
    </message>
    <message>
        <source>How long?</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Wie lange?</translation>
    </message>
    <message>
        <source>Today, a {weekday}.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Heute, ein {weekday}.</translation>
    </message>
    <message>
        <source>Tomorrow, a {weekday}.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Morgen, ein {weekday}.</translation>
    </message>
    <message>
        <source>Until when?</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Bis wann?</translation>
    </message>
    <message>
        <source>a week</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>eine Woche</translation>
    </message>
    <message>
        <source>a year</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>ein Jahr</translation>
    </message>
</context>
<context>
    <name>Visits</name>
    <message>
        <source>Call off</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Absagen</translation>
    </message>
    <message>
        <source>Call the visit off: {person}, {day}</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Den Besuch absagen: {person}, {day}</translation>
    </message>
    <message>
        <source>Keep the day</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Tag vormerken</translation>
    </message>
    <message>
        <source>No visit is planned.</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Kein Besuch ist geplant.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>An welchem Tag?</translation>
    </message>
    <message>
        <source>Tick the devices of {person}</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Geräte von {person} ankreuzen</translation>
    </message>
    <message>
        <source>Tick theirs</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Deren Geräte ankreuzen</translation>
    </message>
    <message>
        <source>Whom do you meet?</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Wen triffst du?</translation>
    </message>
    <message>
        <source>{person}, {day}</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>{person}, {day}</translation>
    </message>
</context>
<context>
    <name>WaysOut</name>
    <message>
        <source>A PKCS#12 file in the container that most things open</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den fast alles öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Android opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den dieses Android öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Linux opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den dieses Linux öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Mac opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den dieser Mac öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Windows opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den dieses Windows öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this iPhone or iPad opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im Container, den dieses iPhone oder iPad öffnet</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the old container, as chosen</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im alten Container, wie gewählt</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the strong container, as chosen</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine PKCS#12-Datei im starken Container, wie gewählt</translation>
    </message>
    <message>
        <source>A PowerShell script and its PKCS#12 file; run as administrator, and undone with -Undo.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Ein PowerShell-Skript und seine PKCS#12-Datei; es läuft mit Administratorrechten und wird mit -Undo zurückgenommen.</translation>
    </message>
    <message>
        <source>A handful of codes, to be scanned one after another by this app’s reader.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Eine Handvoll Codes, die der Leser dieser App einen nach dem anderen scannt.</translation>
    </message>
    <message>
        <source>AES-256 zip. 7-Zip opens it, a plain file manager does not.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>AES-256-Zip. 7-Zip öffnet es, eine einfache Dateiverwaltung nicht.</translation>
    </message>
    <message>
        <source>Anybody; there is no secret in it, and no key.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Alle; es ist kein Geheimnis darin und kein Schlüssel.</translation>
    </message>
    <message>
        <source>Archive</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archiv</translation>
    </message>
    <message>
        <source>Bring both files to the {device} and read the script first: nobody has run it on Windows yet.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Bring beide Dateien auf das Gerät ({device}) und lies zuerst das Skript: Unter Windows hat es noch niemand laufen lassen.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and have its program read it. Whether it can, only that program knows.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Bring es auf das Gerät ({device}) und lass es dort von seinem Programm lesen. Ob es das kann, weiß nur das Programm.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and read it there. Then delete it here.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Bring es auf das Gerät ({device}) und lies es dort ein. Dann lösche es hier.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and unpack it there with 7-Zip. The file in it that says read me tells the rest. Then delete the archive here.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Bring es auf das Gerät ({device}) und entpack es dort mit 7-Zip. Die Readme-Datei darin sagt alles Weitere. Dann lösche das Archiv hier.</translation>
    </message>
    <message>
        <source>Bundle file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Bündeldatei</translation>
    </message>
    <message>
        <source>Carry it to the {device} by hand, and delete it here and on the way: nothing protects what is in it.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Trag es von Hand zum Gerät ({device}), und lösche es hier und unterwegs: Nichts schützt, was darin ist.</translation>
    </message>
    <message>
        <source>Codes</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Codes</translation>
    </message>
    <message>
        <source>File</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Datei</translation>
    </message>
    <message>
        <source>It holds a secret that anybody who opens the file can read. Carry it by hand, and delete it afterwards.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Darin steht ein Geheimnis, das alle lesen können, die die Datei öffnen. Trag sie von Hand, und lösche sie danach.</translation>
    </message>
    <message>
        <source>It holds the key without a passphrase: whoever gets hold of the file gets in as this {device}. Carry it by hand, and delete it afterwards.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Darin steht der Schlüssel ohne Passphrase: Wer an die Datei kommt, kommt als dieses Gerät ({device}) hinein. Trag sie von Hand, und lösche sie danach.</translation>
    </message>
    <message>
        <source>Key, certificate and CA as text files, and what to type in.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Schlüssel, Zertifikat und CA als Textdateien, und was einzutippen ist.</translation>
    </message>
    <message>
        <source>Key, certificates and settings in one text file, for programs that know its form.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Schlüssel, Zertifikate und Einstellungen in einer Textdatei, für Programme, die ihre Form kennen.</translation>
    </message>
    <message>
        <source>Not sealed.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Nicht versiegelt.</translation>
    </message>
    <message>
        <source>Open a pick-up</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Abholschein öffnen</translation>
    </message>
    <message>
        <source>Open it on the {device} and install it in the settings; the passphrase is asked there.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Öffne es auf dem Gerät ({device}) und installiere es in den Einstellungen; dort wird nach der Passphrase gefragt.</translation>
    </message>
    <message>
        <source>Open it on the {device} and type the passphrase there. Then delete the file where it lay.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Öffne sie auf dem Gerät ({device}) und tipp dort die Passphrase ein. Dann lösche die Datei, wo sie lag.</translation>
    </message>
    <message>
        <source>PEM files</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>PEM-Dateien</translation>
    </message>
    <message>
        <source>Profile</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Save PEM files</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>PEM-Dateien speichern</translation>
    </message>
    <message>
        <source>Save archive</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archiv speichern</translation>
    </message>
    <message>
        <source>Save file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Datei speichern</translation>
    </message>
    <message>
        <source>Save the bundle</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Bündel speichern</translation>
    </message>
    <message>
        <source>Save the file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Datei speichern</translation>
    </message>
    <message>
        <source>Save the profile</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Profil speichern</translation>
    </message>
    <message>
        <source>Save the script</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Skript speichern</translation>
    </message>
    <message>
        <source>Script</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Skript</translation>
    </message>
    <message>
        <source>Settings, identity and CA in one file that the {device} installs; it asks for the passphrase.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Einstellungen, Identität und CA in einer Datei, die das Gerät ({device}) installiert; es fragt nach der Passphrase.</translation>
    </message>
    <message>
        <source>Show codes</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Codes zeigen</translation>
    </message>
    <message>
        <source>The {device} scans one code and fetches the file from here, once, within ten minutes.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Das Gerät ({device}) scannt einen Code und holt die Datei von hier, einmal, innerhalb von zehn Minuten.</translation>
    </message>
    <message>
        <source>Ticket</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Abholschein</translation>
    </message>
    <message>
        <source>USB stick</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>USB-Stick</translation>
    </message>
    <message>
        <source>Whoever has the passphrase, in a program that reads this text. The app cannot try that.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Wer die Passphrase hat, in einem Programm, das diesen Text liest. Die App kann das nicht proben.</translation>
    </message>
    <message>
        <source>Write a stick</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Stick schreiben</translation>
    </message>
    <message>
        <source>Write it</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Your own: {name}</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Eigene: {name}</translation>
    </message>
    <message>
        <source>a .{ending} file</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>eine .{ending}-Datei</translation>
    </message>
    <message>
        <source>a file</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>eine Datei</translation>
    </message>
    <message>
        <source>at home, on the Wi-Fi</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>zu Hause, im WLAN</translation>
    </message>
    <message>
        <source>everything in one</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>alles in einem</translation>
    </message>
    <message>
        <source>for anything else</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>für alles andere</translation>
    </message>
    <message>
        <source>for this {device}</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>für dieses Gerät ({device})</translation>
    </message>
    <message>
        <source>no network</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>kein Netz</translation>
    </message>
    <message>
        <source>nothing on a disk</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>nichts auf einem Datenträger</translation>
    </message>
    <message>
        <source>sets itself up</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>richtet sich selbst ein</translation>
    </message>
    <message>
        <source>settings included</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>mit Einstellungen</translation>
    </message>
    <message>
        <source>{count} codes, to be scanned one after another by this app’s reader.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>{count} Codes, die der Leser dieser App einen nach dem anderen scannt.</translation>
    </message>
    <message>
        <source>{file}, written, read back and unmounted.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>{file}, geschrieben, zurückgelesen und ausgehängt.</translation>
    </message>
    <message>
        <source>{file}.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>{file}.</translation>
    </message>
</context>
<context>
    <name>WhereKept</name>
    <message>
        <source>Or keep the key in a file.</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>Oder bewahre den Schlüssel in einer Datei auf.</translation>
    </message>
    <message>
        <source>Where is the CA key kept?</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>Wo liegt der CA-Schlüssel?</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>in einer Schlüsseldatei</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>im Schlüsselbund</translation>
    </message>
</context>
<context>
    <name>Whose</name>
    <message>
        <source>Name</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Whose is it?</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>Wem gehört es?</translation>
    </message>
    <message>
        <source>a guest</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>ein Gast</translation>
    </message>
    <message>
        <source>new…</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>neu…</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Passphrase</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Passphrase</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>One moment …</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Einen Moment …</translation>
    </message>
</context>
<context>
    <name>Zooming</name>
    <message>
        <source>All of it, folded</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Alles, gefaltet</translation>
    </message>
    <message>
        <source>One month ahead</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Einen Monat voraus</translation>
    </message>
    <message>
        <source>One year ahead</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Ein Jahr voraus</translation>
    </message>
    <message>
        <source>Time on the sheet</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Zeit auf dem Blatt</translation>
    </message>
</context>
<context>
    <name>board</name>
    <message>
        <source>, can be let back in</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>, kann wieder eingelassen werden</translation>
    </message>
    <message>
        <source>, until {day}</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>, bis {day}</translation>
    </message>
    <message>
        <source>, would run until {day}</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>, liefe bis {day}</translation>
    </message>
    <message>
        <source>1 day left</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>noch 1 Tag</translation>
    </message>
    <message>
        <source>Add a person</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>CA</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>CA</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hand over…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Übergeben…</translation>
    </message>
    <message>
        <source>Let back in</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Wieder einlassen</translation>
    </message>
    <message>
        <source>Let back in…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Wieder einlassen…</translation>
    </message>
    <message>
        <source>New device for {person}…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Neues Gerät für {person}…</translation>
    </message>
    <message>
        <source>New pass for this device…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Neuer Pass für dieses Gerät…</translation>
    </message>
    <message>
        <source>People and their devices</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>Personen und ihre Geräte</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Prove it…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Nachweisen…</translation>
    </message>
    <message>
        <source>Renew…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Erneuern…</translation>
    </message>
    <message>
        <source>Replace this device…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Dieses Gerät ersetzen…</translation>
    </message>
    <message>
        <source>Revoke for good…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Endgültig widerrufen…</translation>
    </message>
    <message>
        <source>Show {title}</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>{title} zeigen</translation>
    </message>
    <message>
        <source>Stop…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Sperren…</translation>
    </message>
    <message>
        <source>The house</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Das Haus</translation>
    </message>
    <message>
        <source>The house, {name}: {told}, until {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Das Haus, {name}: {told}, bis {day}</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: last year, four weeks back, nine weeks ahead, then to {year}.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Die Zeit läuft nach rechts und ist gefaltet: das letzte Jahr, vier Wochen zurück, neun Wochen voraus, dann bis {year}.</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: the past since {since}, four weeks back, nine weeks ahead, then to {year}.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Die Zeit läuft nach rechts und ist gefaltet: die Vergangenheit seit {since}, vier Wochen zurück, neun Wochen voraus, dann bis {year}.</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: weeks near today are wide, years far off are narrow.</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>Die Zeit läuft nach rechts und ist gefaltet: Wochen um heute sind breit, ferne Jahre schmal.</translation>
    </message>
    <message>
        <source>Time runs to the right: one month ahead, day by day.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Die Zeit läuft nach rechts: einen Monat voraus, Tag für Tag.</translation>
    </message>
    <message>
        <source>Time runs to the right: one year ahead, month by month.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Die Zeit läuft nach rechts: ein Jahr voraus, Monat für Monat.</translation>
    </message>
    <message>
        <source>To be done next, {duties}</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>Als Nächstes zu tun, {duties}</translation>
    </message>
    <message>
        <source>Who should get in?</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>Wer soll hineinkommen?</translation>
    </message>
    <message>
        <source>a first line will stand here, from today to its last day</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>hier steht bald eine erste Linie, von heute bis zu ihrem letzten Tag</translation>
    </message>
    <message>
        <source>after {day}</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>nach dem {day}</translation>
    </message>
    <message>
        <source>after {month}</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>nach {month}</translation>
    </message>
    <message>
        <source>and one more</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>und noch eine Sache</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>und {count} weitere Sachen</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>devices turn away from it</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Geräte meiden es</translation>
    </message>
    <message>
        <source>draft</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>ended {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>abgelaufen am {day}</translation>
    </message>
    <message>
        <source>ends</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>läuft ab</translation>
    </message>
    <message>
        <source>ends today</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>läuft heute ab</translation>
    </message>
    <message>
        <source>founded</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>gegründet</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>good until</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>gültig bis</translation>
    </message>
    <message>
        <source>good until: {until}</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>gültig bis: {until}</translation>
    </message>
    <message>
        <source>handed over</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>holds its certificate</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>hat sein Zertifikat</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>in einer Schlüsseldatei</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>im Schlüsselbund</translation>
    </message>
    <message>
        <source>its certificate is made</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>sein Zertifikat wird erstellt</translation>
    </message>
    <message>
        <source>kept</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>verwahrt</translation>
    </message>
    <message>
        <source>last year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>letztes Jahr</translation>
    </message>
    <message>
        <source>life line</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>Lebenslinie</translation>
    </message>
    <message>
        <source>made</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>erstellt</translation>
    </message>
    <message>
        <source>month</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Monat</translation>
    </message>
    <message>
        <source>months</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Monate</translation>
    </message>
    <message>
        <source>never proved</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>nie nachgewiesen</translation>
    </message>
    <message>
        <source>new device</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>neues Gerät</translation>
    </message>
    <message>
        <source>new person</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>neue Person</translation>
    </message>
    <message>
        <source>next step</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>nächster Schritt</translation>
    </message>
    <message>
        <source>next step: {step}</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>nächster Schritt: {step}</translation>
    </message>
    <message>
        <source>no next step</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>kein nächster Schritt</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {number}</translation>
    </message>
    <message>
        <source>no. {number} here</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {number} hier</translation>
    </message>
    <message>
        <source>no. {number} in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {number} in Kraft</translation>
    </message>
    <message>
        <source>no. {number} not in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {number} nicht in Kraft</translation>
    </message>
    <message>
        <source>no. {there} in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {there} in Kraft</translation>
    </message>
    <message>
        <source>no. {there} lies at the gateway</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {there} liegt auf dem Gateway</translation>
    </message>
    <message>
        <source>no. {there} was there</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Nr. {there} war dort</translation>
    </message>
    <message>
        <source>nobody gets in</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>niemand kommt hinein</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not made yet</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>noch nicht erstellt</translation>
    </message>
    <message>
        <source>not said yet</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>noch nicht gesagt</translation>
    </message>
    <message>
        <source>one device</source>
        <extracomment>Where every text of a row stands; painting and the tests of geometry read the same answer.</extracomment>
        <translation>ein Gerät</translation>
    </message>
    <message>
        <source>one month</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>ein Monat</translation>
    </message>
    <message>
        <source>one year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>past</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>vergangen</translation>
    </message>
    <message>
        <source>perhaps not in use</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>vielleicht nicht in Gebrauch</translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>Sperrliste</translation>
    </message>
    <message>
        <source>revoked, final</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>widerrufen, endgültig</translation>
    </message>
    <message>
        <source>said to work</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>geht laut Auskunft</translation>
    </message>
    <message>
        <source>seen {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>gesehen am {day}</translation>
    </message>
    <message>
        <source>signed</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>signiert</translation>
    </message>
    <message>
        <source>signed {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>signiert am {day}</translation>
    </message>
    <message>
        <source>since {year}</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>seit {year}</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>stopped 28 September</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>gesperrt am 28. September</translation>
    </message>
    <message>
        <source>the keyring gives no key</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>der Schlüsselbund gibt keinen Schlüssel</translation>
    </message>
    <message>
        <source>then devices turn away from it</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>dann meiden es die Geräte</translation>
    </message>
    <message>
        <source>then nobody gets in</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>dann kommt niemand hinein</translation>
    </message>
    <message>
        <source>time axis</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>Zeitachse</translation>
    </message>
    <message>
        <source>today: {word}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>heute: {word}</translation>
    </message>
    <message>
        <source>weeks</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>who</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>wer</translation>
    </message>
    <message>
        <source>without a new list</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>ohne neue Liste</translation>
    </message>
    <message>
        <source>would end</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>würde ablaufen</translation>
    </message>
    <message>
        <source>would have ended</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>wäre abgelaufen</translation>
    </message>
    <message>
        <source>year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>years</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>{count} devices</source>
        <extracomment>Where every text of a row stands; painting and the tests of geometry read the same answer.</extracomment>
        <translation>{count} Geräte</translation>
    </message>
    <message>
        <source>{days} days left</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>noch {days} Tage</translation>
    </message>
    <message>
        <source>{day}: {deed}</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>{day}: {deed}</translation>
    </message>
    <message>
        <source>{person} leaves the household…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>{person} verlässt den Haushalt…</translation>
    </message>
    <message>
        <source>{place} of {count}: {row}</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>{place} von {count}: {row}</translation>
    </message>
    <message>
        <source>{who}, {count} devices</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>{who}, {count} Geräte</translation>
    </message>
</context>
<context>
    <name>dates</name>
    <message>
        <source>HH:mm</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>HH:mm</translation>
    </message>
    <message>
        <source>HH:mm &apos;UTC&apos;</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>HH:mm &apos;UTC&apos;</translation>
    </message>
    <message>
        <source>MMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>MMM</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>ddd, d. MMM</translation>
    </message>
    <message>
        <source>dddd</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd, d. MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd, d. MMMM yyyy</translation>
    </message>
    <message>
        <source>yyyy-MM-dd HH:mm &apos;UTC&apos;</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>yyyy-MM-dd HH:mm &apos;UTC&apos;</translation>
    </message>
</context>
<context>
    <name>gateway</name>
    <message>
        <source>(certificates begin and end by it: have it set by the network)</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(Zertifikate beginnen und enden nach ihr: Lass sie vom Netz stellen)</translation>
    </message>
    <message>
        <source>(it was {number}, {until})</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(zuvor {number}, {until})</translation>
    </message>
    <message>
        <source>(made here, not seen at the gateway)</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(hier erstellt, auf dem Gateway nicht gesehen)</translation>
    </message>
    <message>
        <source>(seen at the gateway)</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(auf dem Gateway gesehen)</translation>
    </message>
    <message>
        <source>(seen there {when})</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(dort gesehen {when})</translation>
    </message>
    <message>
        <source>1 day</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>CA key</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>CA-Schlüssel</translation>
    </message>
    <message>
        <source>On {day} the gateway’s certificate ends, and devices turn away from it. It needs a new one before.</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Am {day} läuft das Zertifikat des Gateways ab, und dann meiden es die Geräte. Vorher braucht es ein neues.</translation>
    </message>
    <message>
        <source>On {day} the list ends, and then nobody gets in. Unlock the household before: the list is signed anew and delivered.</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Am {day} läuft die Liste ab, und dann kommt niemand hinein. Schließ den Haushalt vorher auf: Die Liste wird neu signiert und geliefert.</translation>
    </message>
    <message>
        <source>a practice household delivers nothing</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>ein Übungshaushalt liefert nichts</translation>
    </message>
    <message>
        <source>agrees with this computer’s</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>geht wie die dieses Computers</translation>
    </message>
    <message>
        <source>certificate</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>certificate ended</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Zertifikat abgelaufen</translation>
    </message>
    <message>
        <source>certificate ends in {days}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Zertifikat: noch {days}</translation>
    </message>
    <message>
        <source>certificate until</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Zertifikat bis</translation>
    </message>
    <message>
        <source>certificates go by it</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Zertifikate richten sich danach</translation>
    </message>
    <message>
        <source>changes wait</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Änderungen warten</translation>
    </message>
    <message>
        <source>clock</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>clock {amount} ahead</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Uhr geht {amount} vor</translation>
    </message>
    <message>
        <source>clock {amount} behind</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Uhr geht {amount} nach</translation>
    </message>
    <message>
        <source>days</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>delivered</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>geliefert</translation>
    </message>
    <message>
        <source>files go to</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Dateien gehen nach</translation>
    </message>
    <message>
        <source>gateway unknown since {when}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Gateway unbekannt seit {when}</translation>
    </message>
    <message>
        <source>good until {day}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>gültig bis {day}</translation>
    </message>
    <message>
        <source>hours</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>its clock</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>seine Uhr</translation>
    </message>
    <message>
        <source>last delivery</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>letzte Lieferung</translation>
    </message>
    <message>
        <source>last read</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>zuletzt gelesen</translation>
    </message>
    <message>
        <source>less than a day</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>weniger als ein Tag</translation>
    </message>
    <message>
        <source>list ends in {days}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste: noch {days}</translation>
    </message>
    <message>
        <source>list no. {number}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number}</translation>
    </message>
    <message>
        <source>list no. {number} ended</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} abgelaufen</translation>
    </message>
    <message>
        <source>list no. {number} in force</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} in Kraft</translation>
    </message>
    <message>
        <source>list no. {number} there is newer</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} dort ist neuer</translation>
    </message>
    <message>
        <source>list no. {number} waits</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} wartet</translation>
    </message>
    <message>
        <source>list no. {number} waits here</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} wartet hier</translation>
    </message>
    <message>
        <source>list no. {number} was there</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste Nr. {number} war dort</translation>
    </message>
    <message>
        <source>list perhaps not in use</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Liste vielleicht nicht in Gebrauch</translation>
    </message>
    <message>
        <source>list there</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Liste dort</translation>
    </message>
    <message>
        <source>locked</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>verschlossen</translation>
    </message>
    <message>
        <source>min</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>min</translation>
    </message>
    <message>
        <source>newest list here</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>neueste Liste hier</translation>
    </message>
    <message>
        <source>no list at the gateway</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>keine Liste auf dem Gateway</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Nr. {number}</translation>
    </message>
    <message>
        <source>no. {number} in force {until}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Nr. {number} in Kraft {until}</translation>
    </message>
    <message>
        <source>no. {number} lies there, its command failed</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Nr. {number} liegt dort, der Befehl schlug fehl</translation>
    </message>
    <message>
        <source>no. {number} waits</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Nr. {number} wartet</translation>
    </message>
    <message>
        <source>no. {number}, good until {day}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>Nr. {number}, gültig bis {day}</translation>
    </message>
    <message>
        <source>nobody gets in</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>niemand kommt hinein</translation>
    </message>
    <message>
        <source>nobody has said where the gateway is</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>noch nicht gesagt, wo das Gateway ist</translation>
    </message>
    <message>
        <source>none yet</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not reached since</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>nicht erreicht seit</translation>
    </message>
    <message>
        <source>nothing delivered yet</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>noch nichts geliefert</translation>
    </message>
    <message>
        <source>open</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>offen</translation>
    </message>
    <message>
        <source>settings or certificates</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>Einstellungen oder Zertifikate</translation>
    </message>
    <message>
        <source>than no. {number} here</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>als Nr. {number} hier</translation>
    </message>
    <message>
        <source>the gateway holds no. {number}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>das Gateway hat Nr. {number}</translation>
    </message>
    <message>
        <source>the keyring did not give it</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>der Schlüsselbund gab ihn nicht her</translation>
    </message>
    <message>
        <source>then it runs</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>danach läuft</translation>
    </message>
    <message>
        <source>unknown since {when}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>unbekannt seit {when}</translation>
    </message>
    <message>
        <source>until {day}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>bis {day}</translation>
    </message>
    <message>
        <source>{days} days</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>{days} Tage</translation>
    </message>
</context>
<context>
    <name>proof</name>
    <message>
        <source>Another network than the one at home.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Ein anderes Netz als das zu Hause.</translation>
    </message>
    <message>
        <source>Connect</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Have it read aloud</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Vorlesen lassen</translation>
    </message>
    <message>
        <source>Leave the Wi-Fi at home</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Das WLAN zu Hause verlassen</translation>
    </message>
    <message>
        <source>Open the link</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Den Link öffnen</translation>
    </message>
    <message>
        <source>Switch Wi-Fi off</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>WLAN ausschalten</translation>
    </message>
    <message>
        <source>The camera shows a link; tapping it opens a page in large type.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Die Kamera zeigt einen Link; ein Tipp darauf öffnet eine Seite in großer Schrift.</translation>
    </message>
    <message>
        <source>The sign of the Wi-Fi goes; letters such as 4G, 5G or LTE stay.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Das WLAN-Zeichen verschwindet; Buchstaben wie 4G, 5G oder LTE bleiben.</translation>
    </message>
    <message>
        <source>“Connected”, beside the name of the connection.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Verbunden“, neben dem Namen der Verbindung.</translation>
    </message>
    <message>
        <source>“Draw down from the upper edge and tap the Wi-Fi sign, so that it is off.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Zieh vom oberen Rand nach unten und tipp auf das WLAN-Zeichen, sodass es aus ist.“</translation>
    </message>
    <message>
        <source>“Open the settings, go to the connection that was set up for home, and switch it on.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Öffne die Einstellungen, geh zu der Verbindung, die für zu Hause eingerichtet wurde, und schalte sie ein.“</translation>
    </message>
    <message>
        <source>“Point the camera at this code and tap the link.” From afar: “Open the link that I sent you.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Halte die Kamera auf diesen Code und tipp auf den Link.“ Aus der Ferne: „Öffne den Link, den ich dir geschickt habe.“</translation>
    </message>
    <message>
        <source>“Read me the large words at the top.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Lies mir die großen Worte oben vor.“</translation>
    </message>
    <message>
        <source>“Share the phone’s mobile data, and join that with the computer instead of the Wi-Fi at home.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Gib die mobilen Daten des Handys frei, und geh mit dem Computer dort hinein statt ins WLAN zu Hause.“</translation>
    </message>
    <message>
        <source>“You are in”, and this page says so too. “You are at home” means: back to the first step.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>„Du bist drin“, und diese Seite sagt es auch. „Du bist zu Hause“ heißt: zurück zum ersten Schritt.</translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source> Its old pass goes on until you stop or revoke it.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> Sein alter Pass läuft weiter, bis du ihn sperrst oder widerrufst.</translation>
    </message>
    <message>
        <source> The secret that all devices share was on it: one device will have to be told a new one.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> Das Geheimnis, das alle Geräte teilen, war darauf: Einem Gerät muss ein neues gesagt werden.</translation>
    </message>
    <message>
        <source> The secret that all devices share was on it: {count} devices will have to be told a new one.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> Das Geheimnis, das alle Geräte teilen, war darauf: {count} Geräten muss ein neues gesagt werden.</translation>
    </message>
    <message>
        <source>&quot;{host}&quot; is not a name that DNS can look up: &quot;{label}&quot; does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{host}“ ist kein Name, den DNS nachschlagen kann: „{label}“ passt nicht.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; could be {choices}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mit „{text}“ kann gemeint sein: {choices}.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist kein Tag.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a group that is known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist keine Gruppe, die hier bekannt ist.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a reason for revoking for good.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist kein Grund für einen endgültigen Widerruf.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a transform that is known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist kein Transform, der hier bekannt ist.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address that a gateway can have at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist keine Adresse, die ein Gateway zu Hause haben kann.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address to listen on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist keine Adresse zum Lauschen.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist keine Adresse.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not the address of a DNS server.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist nicht die Adresse eines DNS-Servers.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not the address of a page at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ ist nicht die Adresse einer Seite zu Hause.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; will not do as a file name on every computer.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ taugt nicht auf jedem Computer als Dateiname.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; will not do as the ending of a file name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ taugt nicht als Endung eines Dateinamens.</translation>
    </message>
    <message>
        <source>1 day left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>noch 1 Tag</translation>
    </message>
    <message>
        <source>1 pass on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>1 Pass auf der Sperrliste</translation>
    </message>
    <message>
        <source>1 stop list beside revocation list {number} was written for a deputy, who can stop devices with it.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>1 Sperrliste neben Sperrliste Nr. {number} wurde für eine Vertretung geschrieben, die damit Geräte sperren kann.</translation>
    </message>
    <message>
        <source>A CA ends one day, and every pass with it. The next one is made beside it, years before.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine CA läuft eines Tages ab, und jeder Pass mit ihr. Die nächste wird Jahre vorher neben ihr erstellt.</translation>
    </message>
    <message>
        <source>A CA key of type {seen} was found; a household’s is {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gefunden wurde ein CA-Schlüssel der Art {seen}; der eines Haushalts ist {wanted}.</translation>
    </message>
    <message>
        <source>A TCP segment of {number} octets over IPv{family} was asked for; {lowest} to {highest} can be had.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Verlangt war ein TCP-Segment von {number} Byte über IPv{family}; möglich sind {lowest} bis {highest}.</translation>
    </message>
    <message>
        <source>A block cannot be decoded ({label}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Block lässt sich nicht dekodieren ({label}).</translation>
    </message>
    <message>
        <source>A bundle lost a part while it was read.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Einem Bündel ging beim Lesen ein Teil verloren.</translation>
    </message>
    <message>
        <source>A bundle that was lost is never sent again. Replace the pass instead.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein verlorenes Bündel wird nie noch einmal gesendet. Ersetz stattdessen den Pass.</translation>
    </message>
    <message>
        <source>A bundle was to be written with a value that does not fit ({key}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Bündel sollte mit einem Wert geschrieben werden, der nicht passt ({key}).</translation>
    </message>
    <message>
        <source>A certificate begins only later.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat beginnt erst später.</translation>
    </message>
    <message>
        <source>A certificate does not name the key that signed it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat nennt den Schlüssel nicht, der es signiert hat.</translation>
    </message>
    <message>
        <source>A certificate has ended.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat ist abgelaufen.</translation>
    </message>
    <message>
        <source>A certificate is signed with an old hash (SHA-1 or MD5).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat ist mit einem alten Hash signiert (SHA-1 oder MD5).</translation>
    </message>
    <message>
        <source>A certificate names a person or an address.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat nennt eine Person oder eine Adresse.</translation>
    </message>
    <message>
        <source>A certificate or a file like one cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat oder eine ähnliche Datei lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>A certificate was issued by somebody else.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Zertifikat wurde von jemand anderem ausgestellt.</translation>
    </message>
    <message>
        <source>A certificate’s key is too short.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der Schlüssel eines Zertifikats ist zu kurz.</translation>
    </message>
    <message>
        <source>A certificate’s serial number is none that a revocation list can name.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die Seriennummer eines Zertifikats ist keine, die eine Sperrliste nennen kann.</translation>
    </message>
    <message>
        <source>A code was misread, in picture {frames}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Code wurde falsch gelesen, in Bild {frames}.</translation>
    </message>
    <message>
        <source>A code was to be drawn that does not fit.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Code sollte gezeichnet werden, der nicht passt.</translation>
    </message>
    <message>
        <source>A connection that is open now lives until it authenticates again, a day at most if the gateway is set up as its sheet says. The command after a delivery can cut it at once.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Eine offene Verbindung lebt, bis sie sich neu ausweist, höchstens einen Tag, wenn das Gateway so eingerichtet ist, wie sein Blatt sagt. Der Befehl nach einer Lieferung kann sie sofort trennen.</translation>
    </message>
    <message>
        <source>A connection that is open now stays open until it authenticates again; ending it is up to the gateway (RFC 7296 section 2.8.3).</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Eine offene Verbindung bleibt offen, bis sie sich neu ausweist; sie zu beenden ist Sache des Gateways (RFC 7296 section 2.8.3).</translation>
    </message>
    <message>
        <source>A delivery puts the files down beside those in force, reads them back, and changes over all at once. If anything fails on the way, those of before stay.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine Lieferung legt die Dateien neben die, die in Kraft sind, liest sie zurück und wechselt dann alle auf einmal. Misslingt unterwegs etwas, bleiben die vorigen.</translation>
    </message>
    <message>
        <source>A device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein Gerät</translation>
    </message>
    <message>
        <source>A device that belongs to an employer is administered by the employer. Ask there first.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Ein Gerät, das einem Betrieb gehört, wird dort verwaltet. Frag zuerst dort.</translation>
    </message>
    <message>
        <source>A device that has no new bundle by then turns away from the gateway.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Ein Gerät, das bis dahin kein neues Bündel hat, meidet das Gateway.</translation>
    </message>
    <message>
        <source>A device’s certificate carries no name where gateways look for it (subject alternative name).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat eines Geräts hat keinen Namen dort, wo Gateways danach suchen (subject alternative name).</translation>
    </message>
    <message>
        <source>A device’s certificate is meant for another use.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat eines Geräts ist für einen anderen Zweck gedacht.</translation>
    </message>
    <message>
        <source>A file holds more blocks than are read ({limit}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Datei enthält mehr Blöcke, als gelesen werden ({limit}).</translation>
    </message>
    <message>
        <source>A file is larger than any certificate or list.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Datei ist größer als jedes Zertifikat und jede Liste.</translation>
    </message>
    <message>
        <source>A file or folder may not be read by you.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Datei oder einen Ordner darfst du nicht lesen.</translation>
    </message>
    <message>
        <source>A folder lies too deep.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein Ordner liegt zu tief.</translation>
    </message>
    <message>
        <source>A gateway that checks its list lets nobody in until it has the next one.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Ein Gateway, das seine Liste prüft, lässt niemanden ein, bis es die nächste hat.</translation>
    </message>
    <message>
        <source>A gateway that holds the list keeps it out. It can be let back in.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Ein Gateway, das die Liste hat, lässt es nicht ein. Es kann wieder eingelassen werden.</translation>
    </message>
    <message>
        <source>A gateway that is reached by ssh needs a name or an address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Gateway, das per ssh erreicht wird, braucht einen Namen oder eine Adresse.</translation>
    </message>
    <message>
        <source>A guest gets a week unless you say otherwise; everybody else two years.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein Gast bekommt eine Woche, wenn du nichts anderes sagst; alle anderen zwei Jahre.</translation>
    </message>
    <message>
        <source>A helping process of the app was ended from outside. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Hilfsprozess der App wurde von außen beendet. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>A household lives in this data folder already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In diesem Datenordner wohnt schon ein Haushalt.</translation>
    </message>
    <message>
        <source>A kept template for devices is one more way on every hand-over page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine behaltene Vorlage für Geräte ist ein weiterer Weg auf jeder Seite zum Übergeben.</translation>
    </message>
    <message>
        <source>A key of type {text} is not used here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Schlüssel der Art {text} wird hier nicht benutzt.</translation>
    </message>
    <message>
        <source>A link was not followed.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Einer Verknüpfung wurde nicht gefolgt.</translation>
    </message>
    <message>
        <source>A list was to end before it began.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Eine Liste sollte ablaufen, bevor sie beginnt.</translation>
    </message>
    <message>
        <source>A locked file asks for more work than any honest file does ({rounds} rounds). It was not opened.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine verschlossene Datei verlangt mehr Arbeit als jede ehrliche ({rounds} Runden). Sie wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>A name is made of letters, figures and hyphens between dots, without spaces, underscores, stars or ports.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Name besteht aus Buchstaben, Ziffern und Bindestrichen zwischen Punkten, ohne Leerzeichen, Unterstriche, Sterne und Ports.</translation>
    </message>
    <message>
        <source>A name, serial or list number would have been used a second time ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Name, eine Seriennummer oder eine Listennummer wäre ein zweites Mal benutzt worden ({seen}).</translation>
    </message>
    <message>
        <source>A new device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein neues Gerät</translation>
    </message>
    <message>
        <source>A new list goes there by itself while the app is open. Settings and certificates go when you deliver.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine neue Liste geht von selbst dorthin, solange die App offen ist. Einstellungen und Zertifikate gehen mit, wenn du lieferst.</translation>
    </message>
    <message>
        <source>A part has {wanted} words; these are {count}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Teil hat {wanted} Wörter; das sind {count}.</translation>
    </message>
    <message>
        <source>A pass is named once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Pass wird nur einmal benannt.</translation>
    </message>
    <message>
        <source>A pass was to be handed over that was not waiting.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Pass sollte übergeben werden, der nicht wartete.</translation>
    </message>
    <message>
        <source>A pass was to be let in that was not stopped.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Pass sollte wieder eingelassen werden, der nicht gesperrt war.</translation>
    </message>
    <message>
        <source>A practice household was to become a real one, or the other way round.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Übungshaushalt sollte ein echter werden, oder umgekehrt.</translation>
    </message>
    <message>
        <source>A private key belongs to no certificate here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein privater Schlüssel gehört zu keinem Zertifikat hier.</translation>
    </message>
    <message>
        <source>A private key cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein privater Schlüssel lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>A private key is locked in a way that is not read here ({algorithm}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein privater Schlüssel ist auf eine Art verschlossen, die hier nicht gelesen wird ({algorithm}).</translation>
    </message>
    <message>
        <source>A private key is locked in the old way.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein privater Schlüssel ist auf die alte Art verschlossen.</translation>
    </message>
    <message>
        <source>A private key lies here without a passphrase.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein privater Schlüssel liegt hier ohne Passphrase.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} encrypts with {transform} and lets anybody on the way alter it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Vorschlag für {protocol} verschlüsselt mit {transform}, und unterwegs ließe sich alles verändern.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} has an integrity transform or another cipher beside {transform}, which does both.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Vorschlag für {protocol} hat einen Integritäts-Transform oder eine andere Chiffre neben {transform}, das beides schon kann.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} lacks a transform of type {missing}, so no device could agree to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Einem Vorschlag für {protocol} fehlt ein Transform der Art {missing}, also könnte kein Gerät zustimmen.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} would encrypt nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Vorschlag für {protocol} würde nichts verschlüsseln.</translation>
    </message>
    <message>
        <source>A rate of {number} kbit/s cannot be reckoned with; {lowest} to {highest} can.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mit {number} kbit/s lässt sich nicht rechnen; mit {lowest} bis {highest} schon.</translation>
    </message>
    <message>
        <source>A renewal can be taken back on the device’s page as long as its bundle is in the tray.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine Erneuerung lässt sich auf der Seite des Geräts zurücknehmen, solange ihr Bündel in der Ablage liegt.</translation>
    </message>
    <message>
        <source>A renewed device keeps its identity and gets a new key. Its old pass stays as it is.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein erneuertes Gerät behält seine Kennung und bekommt einen neuen Schlüssel. Sein alter Pass bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>A revocation list cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Sperrliste lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>A revocation list is about changes or a part only.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Sperrliste enthält nur Änderungen oder nur einen Teil.</translation>
    </message>
    <message>
        <source>A revocation list was not signed by this CA.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Sperrliste wurde nicht von dieser CA signiert.</translation>
    </message>
    <message>
        <source>A round can be stopped between two devices. What was made stays; the rest stays ticked.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine Runde lässt sich zwischen zwei Geräten anhalten. Was erstellt ist, bleibt; der Rest bleibt angekreuzt.</translation>
    </message>
    <message>
        <source>A sealed copy knows where the diary ended then, so an end that was cut off shows too.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine versiegelte Kopie weiß, wo das Tagebuch damals endete, also fällt auch ein abgeschnittenes Ende auf.</translation>
    </message>
    <message>
        <source>A sealed copy lies in this folder. Parts beside a copy would let anybody in who finds the folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In diesem Ordner liegt eine versiegelte Kopie. Teile neben einer Kopie ließen jeden ein, der den Ordner findet.</translation>
    </message>
    <message>
        <source>A sealed copy was written to {place} as {name}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Eine versiegelte Kopie wurde geschrieben, nach {place}, als {name}.</translation>
    </message>
    <message>
        <source>A secret was to be shared in a way that brings nothing back.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Geheimnis sollte so geteilt werden, dass es nichts zurückbringt.</translation>
    </message>
    <message>
        <source>A secret was too long for a keyring.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Geheimnis war zu lang für einen Schlüsselbund.</translation>
    </message>
    <message>
        <source>A stop set lets somebody stop a lost device at the gateway, and do nothing else.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Mit einem Sperrsatz kann jemand ein verlorenes Gerät am Gateway sperren und sonst nichts.</translation>
    </message>
    <message>
        <source>A template cannot be for &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Eine Vorlage kann nicht für „{text}“ sein.</translation>
    </message>
    <message>
        <source>A ticket lives {minutes} minutes at most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Abholschein lebt höchstens {minutes} Minuten.</translation>
    </message>
    <message>
        <source>A ticket takes what is a single file, and {form} is not.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Abholschein nimmt, was eine einzelne Datei ist, und das ist es hier nicht: {form}.</translation>
    </message>
    <message>
        <source>A trial connection had nothing to judge by.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Eine Probeverbindung hatte nichts, woran sie prüfen konnte.</translation>
    </message>
    <message>
        <source>A visit is planned: {person}, on {day}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Ein Besuch ist geplant: {person}, am {day}.</translation>
    </message>
    <message>
        <source>A waiting pass has no key.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein wartender Pass hat keinen Schlüssel.</translation>
    </message>
    <message>
        <source>A withdrawn certificate has a serial number that no list of ours can name ({serial}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ein zurückgezogenes Zertifikat hat eine Seriennummer, die keine unserer Listen nennen kann ({serial}).</translation>
    </message>
    <message>
        <source>Accounts that you share</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Gemeinsam genutzte Konten</translation>
    </message>
    <message>
        <source>Add an integrity transform, for instance AUTH_HMAC_SHA2_256_128.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Füg einen Integritäts-Transform hinzu, zum Beispiel AUTH_HMAC_SHA2_256_128.</translation>
    </message>
    <message>
        <source>Add one, or use one of the key sets as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Füg einen hinzu, oder nimm einen der Schlüsselsätze, wie er ist.</translation>
    </message>
    <message>
        <source>Add the file that devices were given as the trusted one, then look again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Leg die Datei dazu, die den Geräten als vertrauenswürdig gegeben wurde, dann sieh noch einmal nach.</translation>
    </message>
    <message>
        <source>Addresses inside and DNS servers are given out by the gateway at each connection, so no device has to be told.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Adressen im Tunnel und DNS-Server vergibt das Gateway bei jeder Verbindung, also muss es keinem Gerät gesagt werden.</translation>
    </message>
    <message>
        <source>Addresses of the DNS servers asked inside the tunnel: a list, and it may be empty.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Adressen der DNS-Server, die im Tunnel gefragt werden: eine Liste, die auch leer sein kann.</translation>
    </message>
    <message>
        <source>All is well until {day}, then {title} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Alles ist gut bis {day}, dann läuft {title} ab.</translation>
    </message>
    <message>
        <source>All is well until {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Alles ist gut bis {day}.</translation>
    </message>
    <message>
        <source>Alt+1, 2, 3</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Alt+1, 2, 3</translation>
    </message>
    <message>
        <source>An archive was to hold a file that does not belong there.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Archiv sollte eine Datei enthalten, die nicht hineingehört.</translation>
    </message>
    <message>
        <source>An outer MTU of {number} octets was asked for; {lowest} to {highest} can be had.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Verlangt war eine äußere MTU von {number} Byte; möglich sind {lowest} bis {highest}.</translation>
    </message>
    <message>
        <source>An overlap of {text} days is none that can be kept.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Eine Überschneidung von {text} Tagen lässt sich nicht einhalten.</translation>
    </message>
    <message>
        <source>Another CA</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Eine andere CA</translation>
    </message>
    <message>
        <source>Another copy of the app has the household open, or its folder cannot be written to. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Haushalt ist in einem anderen Fenster der App offen, oder in seinen Ordner lässt sich nicht schreiben. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>Another copy of the app has this household open. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Haushalt ist in einem anderen Fenster der App offen. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>Another copy of the app has {subject} open. This one only looks.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>In einem anderen Fenster der App offen: {subject}. Hier kannst du nur nachsehen.</translation>
    </message>
    <message>
        <source>Another copy of the app was reading just now. The key of {subject} is erased; what the register’s log still holds of it, under its passphrase, goes when the app is closed.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Ein anderes Fenster der App hat gerade gelesen. Der Schlüssel ist gelöscht ({subject}); was das Protokoll des Registers unter seiner Passphrase noch davon hat, verschwindet, wenn die App geschlossen wird.</translation>
    </message>
    <message>
        <source>Another device in the place of one stops the old one at once. Until the new one works it can be let in.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein anderes Gerät anstelle von einem sperrt das alte sofort. Bis das neue geht, lässt es sich wieder einlassen.</translation>
    </message>
    <message>
        <source>Another host name of the gateway</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Ein anderer Hostname des Gateways</translation>
    </message>
    <message>
        <source>Another identity suffix</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Eine andere Endung der Kennungen</translation>
    </message>
    <message>
        <source>Another name for the house needs a new gateway certificate, and so the passphrase. Everything else can be changed back with one click.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein anderer Name für das Haus braucht ein neues Gateway-Zertifikat und damit die Passphrase. Alles andere lässt sich mit einem Klick zurücknehmen.</translation>
    </message>
    <message>
        <source>Another one has taken its place. By itself the old one ends on {day}.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Ein anderer ist an seine Stelle getreten. Von selbst läuft der alte am {day} ab.</translation>
    </message>
    <message>
        <source>Another tunnel subnet</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Ein anderes Tunnel-Subnetz</translation>
    </message>
    <message>
        <source>Anybody can make passes for this household and get in. Found a new household, today if you can.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Alle können für diesen Haushalt Pässe machen und hineinkommen. Gründe einen neuen Haushalt, am besten noch heute.</translation>
    </message>
    <message>
        <source>Ask for a deputy’s part and try it</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Nach einem Teil der Vertretung fragen und es prüfen</translation>
    </message>
    <message>
        <source>Ask for a file with AES-256 or, for old devices, 3DES.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Verlang eine Datei mit AES-256 oder, für alte Geräte, mit 3DES.</translation>
    </message>
    <message>
        <source>Ask somebody who has a part with another number.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Frag jemanden, der ein Teil mit einer anderen Nummer hat.</translation>
    </message>
    <message>
        <source>Ask somebody who has another part of the same set.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Frag jemanden, der ein anderes Teil desselben Satzes hat.</translation>
    </message>
    <message>
        <source>Ask where the paper came from, and make a new set.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Frag, woher das Papier kommt, und mach einen neuen Satz.</translation>
    </message>
    <message>
        <source>Ask who wrote it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Frag dort nach, von wo es stammt.</translation>
    </message>
    <message>
        <source>Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass dir von dort, wo sie herkommt, eine neue geben, oder schreib sie noch einmal aus der Ablage.</translation>
    </message>
    <message>
        <source>At first contact compare the host key with what the gateway itself says. When it shows another one later, nothing is sent until you have compared again.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Vergleiche beim ersten Kontakt den Hostschlüssel mit dem, was das Gateway selbst sagt. Zeigt es später einen anderen, wird nichts gesendet, bis du wieder verglichen hast.</translation>
    </message>
    <message>
        <source>At home is {home}; everything goes through home anyway.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Zu Hause ist {home}; ohnehin geht alles über zu Hause.</translation>
    </message>
    <message>
        <source>Besides slots there are if, for, raw and filters. The preview follows what you type, and a mistake is named with its line.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Außer Platzhaltern gibt es if, for, raw und Filter. Die Vorschau folgt dem, was du tippst, und ein Fehler wird mit seiner Zeile genannt.</translation>
    </message>
    <message>
        <source>Both take effect when the gateway holds the list that says so.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Beides wirkt, wenn das Gateway die Liste hat, in der es steht.</translation>
    </message>
    <message>
        <source>Bring back the key text of this household; it was kept in the same keyring when the household was founded.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bring den Schlüsseltext dieses Haushalts zurück; er kam beim Gründen in denselben Schlüsselbund.</translation>
    </message>
    <message>
        <source>Bring back this household’s own key text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bring den eigenen Schlüsseltext dieses Haushalts zurück.</translation>
    </message>
    <message>
        <source>Bring it the gateway pack and try one device, then go on.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Bring ihm das Gateway-Paket und probier ein Gerät aus, dann mach weiter.</translation>
    </message>
    <message>
        <source>Bring it the gateway pack and try one device; then go on and say so with --told.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bring ihm das Gateway-Paket und probier ein Gerät aus; dann mach weiter und sag es mit --told.</translation>
    </message>
    <message>
        <source>Bring the key text back from a copy of the keyring. Founded anew, every device would need a new bundle.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Bring den Schlüsseltext aus einer Kopie des Schlüsselbunds zurück. Neu gegründet, brauchte jedes Gerät ein neues Bündel.</translation>
    </message>
    <message>
        <source>Bring the key text back from a copy. Devices that get in still do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bring den Schlüsseltext aus einer Kopie zurück. Geräte, die hineinkommen, tun es weiter.</translation>
    </message>
    <message>
        <source>Bring the keyring back from a copy, or use the keyring under which the household was founded.</source>
        <extracomment>Sentences about the household, its devices and passes.</extracomment>
        <translation>Bring den Schlüsselbund aus einer Kopie zurück, oder nimm den, unter dem der Haushalt gegründet wurde.</translation>
    </message>
    <message>
        <source>Bring the keyring back, or give the gateway a new certificate.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bring den Schlüsselbund zurück, oder gib dem Gateway ein neues Zertifikat.</translation>
    </message>
    <message>
        <source>Bundles in the tray take a change along. Devices that have theirs go on with the old one until you replace it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Bündel in der Ablage nehmen eine Änderung mit. Geräte, die ihres haben, machen mit dem alten weiter, bis du es ersetzt.</translation>
    </message>
    <message>
        <source>By this computer’s clock the pass has not begun ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nach der Uhr dieses Computers hat der Pass noch nicht begonnen ({seen}).</translation>
    </message>
    <message>
        <source>Call what the loop runs over by another name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn das, was die Schleife durchläuft, anders.</translation>
    </message>
    <message>
        <source>Change the password of the mail account</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Passwort des Mailkontos ändern</translation>
    </message>
    <message>
        <source>Change who may read it, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ändere, wer es lesen darf, falls es hierhergehört.</translation>
    </message>
    <message>
        <source>Character {place} of the passphrase is not on every keyboard, and devices turn it into different bytes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeichen {place} der Passphrase ist nicht auf jeder Tastatur, und Geräte machen verschiedene Bytes daraus.</translation>
    </message>
    <message>
        <source>Character {place} of the {what} ({character}) cannot be seen, or turns the text around it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: Zeichen {place} ({character}) ist nicht zu sehen oder dreht den Text um sich herum um.</translation>
    </message>
    <message>
        <source>Check capital letters and spaces, and whether it is the passphrase of this very thing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf Großbuchstaben und Leerzeichen, und ob es die Passphrase genau hierfür ist.</translation>
    </message>
    <message>
        <source>Check its name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf den Namen.</translation>
    </message>
    <message>
        <source>Check that files of two devices were not mixed up.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob Dateien von zwei Geräten vertauscht wurden.</translation>
    </message>
    <message>
        <source>Check that it belongs to this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob es zu diesem Haushalt gehört.</translation>
    </message>
    <message>
        <source>Check that it is a text file and that you may read it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob es eine Textdatei ist und du sie lesen darfst.</translation>
    </message>
    <message>
        <source>Check that it is the right file, and copy it once more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob es die richtige Datei ist, und kopiere sie noch einmal.</translation>
    </message>
    <message>
        <source>Check that it is the right file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob es die richtige Datei ist.</translation>
    </message>
    <message>
        <source>Check the MTU of the line to the internet; it is 1500 or a little less.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf die MTU des Internetanschlusses; sie ist 1500 oder etwas weniger.</translation>
    </message>
    <message>
        <source>Check the clock of this computer, then of the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf die Uhr dieses Computers, dann die des Gateways.</translation>
    </message>
    <message>
        <source>Check the name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf den Namen.</translation>
    </message>
    <message>
        <source>Check who may read it, then try again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, wer dort lesen darf, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Choose 1 to {longest} hours.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle 1 bis {longest} Stunden.</translation>
    </message>
    <message>
        <source>Choose a later day, or renew it later.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen späteren Tag, oder erneuere später.</translation>
    </message>
    <message>
        <source>Choose a shorter note of whom to call.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine kürzere Angabe, wen man anruft.</translation>
    </message>
    <message>
        <source>Choose an address in the home network.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle eine Adresse im Netz zu Hause.</translation>
    </message>
    <message>
        <source>Choose an end up to that day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle ein Ende bis zu diesem Tag.</translation>
    </message>
    <message>
        <source>Choose another beginning than con, nul, aux, prn, com1 or lpt1, and no dot at the end.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen anderen Anfang als con, nul, aux, prn, com1 oder lpt1, und keinen Punkt am Ende.</translation>
    </message>
    <message>
        <source>Choose another folder, best on another stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen anderen Ordner, am besten auf einem anderen Stick.</translation>
    </message>
    <message>
        <source>Choose another folder, or see to its permissions.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen anderen Ordner, oder sieh nach seinen Rechten.</translation>
    </message>
    <message>
        <source>Choose another folder, or take the parts away first.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen anderen Ordner oder nimm zuerst die Teile weg.</translation>
    </message>
    <message>
        <source>Choose another template.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle eine andere Vorlage.</translation>
    </message>
    <message>
        <source>Choose it on the sheet.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Wähle es auf dem Blatt.</translation>
    </message>
    <message>
        <source>Choose one of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle davon eines.</translation>
    </message>
    <message>
        <source>Choose one of {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zur Wahl steht: {known}.</translation>
    </message>
    <message>
        <source>Choose one of {known}. To stop for now: hearthkey stop.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zur Wahl steht: {known}. Um vorläufig zu sperren: hearthkey stop.</translation>
    </message>
    <message>
        <source>Choose pkcs12, archive or bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle pkcs12, archive oder bundle.</translation>
    </message>
    <message>
        <source>Choose png or svg.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle png oder svg.</translation>
    </message>
    <message>
        <source>Choose strong or old.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle strong oder old.</translation>
    </message>
    <message>
        <source>Choose the folder that holds nothing but the CA.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Wähle den Ordner, in dem nichts als die CA liegt.</translation>
    </message>
    <message>
        <source>Choose the one of this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle die dieses Haushalts.</translation>
    </message>
    <message>
        <source>Choose “Lost”: devices go first. Then no pass of this CA can be stopped any more.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Wähle „Verloren“: dann kommen die Geräte zuerst. Danach lässt sich kein Pass dieser CA mehr sperren.</translation>
    </message>
    <message>
        <source>Close it first. Looking works meanwhile.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Schließ es zuerst. Ansehen geht solange.</translation>
    </message>
    <message>
        <source>Close it first. Looking works meanwhile: hearthkey list, show, diary.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ es zuerst. Ansehen geht solange: hearthkey list, show, diary.</translation>
    </message>
    <message>
        <source>Close the drawer at any time: what you typed is still there when you come back.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Schließ das Seitenteil, wann du willst: Was du getippt hast, ist noch da, wenn du zurückkommst.</translation>
    </message>
    <message>
        <source>Close the other copy of the app, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ das andere Fenster der App, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Close the other copy, or see to the folder’s permissions.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Schließ das andere Fenster, oder sieh nach den Rechten des Ordners.</translation>
    </message>
    <message>
        <source>Close this window and open it again; it shows the household that is there.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Schließ dieses Fenster und öffne es wieder; es zeigt den Haushalt, der da ist.</translation>
    </message>
    <message>
        <source>Codes cannot be drawn as &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Codes lassen sich nicht als „{text}“ zeichnen.</translation>
    </message>
    <message>
        <source>Compare each word with the paper, in order, and type them once more. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vergleich jedes Wort der Reihe nach mit dem Papier und tippe sie noch einmal. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Compare it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vergleiche ihn einmal: im Fenster unter Gateway, oder hearthkey gateway --ssh HOST --folder FOLDER.</translation>
    </message>
    <message>
        <source>Compare these with the paper, letter by letter, and do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vergleich diese Zeilen Buchstabe für Buchstabe mit dem Papier, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Configuration profiles connect by themselves, but not on the household’s own Wi-Fi.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Konfigurationsprofile verbinden sich von selbst, aber nicht im eigenen WLAN des Haushalts.</translation>
    </message>
    <message>
        <source>Configuration profiles connect by themselves.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Konfigurationsprofile verbinden sich von selbst.</translation>
    </message>
    <message>
        <source>Configuration profiles connect when asked to.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Konfigurationsprofile verbinden sich auf Wunsch.</translation>
    </message>
    <message>
        <source>Copy the file that it points to into the folder, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Kopiere die Datei, auf die sie zeigt, in den Ordner, falls sie hierhergehört.</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+C</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+G</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+L</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+N</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+Umschalt+G</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+T</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+Z</translation>
    </message>
    <message>
        <source>Current gateways turn it away. The device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Heutige Gateways weisen es ab. Das Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Days on which you meet somebody are kept under Visits. The last one before an end is the day to act.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Tage, an denen du jemanden triffst, stehen unter „Besuche“. Der letzte vor einem Ablauf ist der Tag zum Handeln.</translation>
    </message>
    <message>
        <source>Deliver again when it suits; it goes on from what is there.</source>
        <extracomment>Sentences about the way to the gateway being in the way.</extracomment>
        <translation>Liefere noch einmal, wenn es passt; es geht von dem weiter, was dort ist.</translation>
    </message>
    <message>
        <source>Deliver again; if it stays silent, look at the gateway itself.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Liefere noch einmal; bleibt es stumm, sieh am Gateway selbst nach.</translation>
    </message>
    <message>
        <source>Deliver again; it goes on from what is there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Liefere noch einmal; es geht von dem weiter, was dort ist.</translation>
    </message>
    <message>
        <source>Deliver the files of the gateway. Nobody notices.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Liefere die Dateien des Gateways. Niemand merkt etwas.</translation>
    </message>
    <message>
        <source>Deliver to the gateway, then go on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Liefere an das Gateway, dann mach weiter.</translation>
    </message>
    <message>
        <source>Devices are told no DNS server at home any more; where it was typed in by hand, it stays.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Geräten wird kein DNS-Server zu Hause mehr genannt; wo er von Hand eingetippt wurde, bleibt er.</translation>
    </message>
    <message>
        <source>Devices cannot be asked to prove themselves anew every {hours} hours; until they do, a stopped one’s open session lives on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geräte lassen sich nicht alle {hours} Stunden neu prüfen; bis dahin lebt die offene Sitzung eines gesperrten weiter.</translation>
    </message>
    <message>
        <source>Devices that check the gateway turn away until it has a new certificate.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Geräte, die das Gateway prüfen, meiden es, bis es ein neues Zertifikat hat.</translation>
    </message>
    <message>
        <source>Devices that know it go on. New passes cannot be signed with it by this app.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Geräte, die ihn kennen, machen weiter. Neue Pässe kann diese App damit nicht signieren.</translation>
    </message>
    <message>
        <source>Devices that know only the old CA get in as before, for it vouches for the new one.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Geräte, die nur die alte CA kennen, kommen hinein wie bisher, denn sie bürgt für die neue.</translation>
    </message>
    <message>
        <source>Devices trust the one above. Look in the folder where that one lies.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Geräte vertrauen der CA darüber. Sieh in dem Ordner nach, in dem sie liegt.</translation>
    </message>
    <message>
        <source>Do it again. If it stays so, its disk or somebody at the gateway changes files.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Versuch es noch einmal. Bleibt es so, ändert seine Festplatte oder jemand am Gateway die Dateien.</translation>
    </message>
    <message>
        <source>Do it again; others are started.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Versuch es noch einmal; andere werden gestartet.</translation>
    </message>
    <message>
        <source>Do not open it. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne sie nicht. Lass dir von dort, wo sie herkommt, eine neue geben, oder schreib sie noch einmal aus der Ablage.</translation>
    </message>
    <message>
        <source>Each entry seals the one before it, so an entry that was altered or taken out shows.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jeder Eintrag versiegelt den vorigen, also fällt auf, wenn einer verändert oder herausgenommen wurde.</translation>
    </message>
    <message>
        <source>Each step can be taken back, but the last: when the old CA is put away, its key is gone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jeder Schritt lässt sich zurücknehmen, nur der letzte nicht: Ist die alte CA ausgemustert, ist ihr Schlüssel weg.</translation>
    </message>
    <message>
        <source>Each way out says who can open it. Choose one that the device knows.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jeder Weg hinaus sagt, wer es öffnen kann. Wähle einen, den das Gerät kennt.</translation>
    </message>
    <message>
        <source>Encrypted tunnels are restricted in some places. Where this device travels, the law there decides.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Verschlüsselte Tunnel sind an manchen Orten eingeschränkt. Wohin dieses Gerät reist, gilt das Recht dort.</translation>
    </message>
    <message>
        <source>Encrypting the CA key under the passphrase (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der CA-Schlüssel wird unter der Passphrase verschlüsselt (mit Absicht langsam)</translation>
    </message>
    <message>
        <source>Ended on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Abgelaufen am {day}.</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Esc</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Every change takes effect at once; there is nothing to confirm.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jede Änderung wirkt sofort; zu bestätigen gibt es nichts.</translation>
    </message>
    <message>
        <source>Every device that gets in: a list to loop over, each with identity, title, serial_number, ends and extra_secret.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Alle Geräte, die hineinkommen: eine Liste für eine Schleife, jedes mit identity, title, serial_number, ends und extra_secret.</translation>
    </message>
    <message>
        <source>Every device would write the same file, for &quot;{text}&quot; does not say where the device’s name goes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Jedes Gerät würde dieselbe Datei schreiben, denn „{text}“ sagt nicht, wo der Name des Geräts hinkommt.</translation>
    </message>
    <message>
        <source>Everybody gets in as before. The first list is signed at the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Alle kommen hinein wie bisher. Die erste Liste wird bei der Übernahme signiert.</translation>
    </message>
    <message>
        <source>Everybody gets in as before: until {list} by the revocation list in force, until {gateway} by the gateway’s certificate, and each device until its own pass ends. No new pass can be made.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Alle kommen hinein wie bisher: bis {list} mit der Sperrliste, die in Kraft ist, bis {gateway} mit dem Zertifikat des Gateways, und jedes Gerät, bis sein eigener Pass abläuft. Ein neuer Pass lässt sich nicht erstellen.</translation>
    </message>
    <message>
        <source>Everybody is through. The old CA can go.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Alle sind durch. Die alte CA kann gehen.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. Nothing new can be signed until the key text is back.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alle, die hineinkamen, kommen weiter hinein. Neues kann erst signiert werden, wenn der Schlüsseltext zurück ist.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. Nothing was changed.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alle, die hineinkamen, kommen weiter hinein. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The CA key is needed for new passes and new lists only.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alle, die hineinkamen, kommen weiter hinein. Der CA-Schlüssel wird nur für neue Pässe und neue Listen gebraucht.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The CA key lies in the keyring under which the household was founded.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alle, die hineinkamen, kommen weiter hinein. Der CA-Schlüssel liegt in dem Schlüsselbund, unter dem der Haushalt gegründet wurde.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The gateway does not need this computer.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alle, die hineinkamen, kommen weiter hinein. Das Gateway braucht diesen Computer nicht.</translation>
    </message>
    <message>
        <source>Everything goes on as long as certificates and list last. Without the key nobody can be added or stopped.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Alles geht weiter, solange Zertifikate und Liste gültig sind. Ohne den Schlüssel kann niemand hinzukommen oder gesperrt werden.</translation>
    </message>
    <message>
        <source>Everything is at the gateway already; list no. {number} is in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Alles ist schon auf dem Gateway; Liste Nr. {number} ist in Kraft.</translation>
    </message>
    <message>
        <source>Everything is delivered. But on {day} nobody gets in any more without somebody who knows the passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Alles ist geliefert. Doch am {day} kommt niemand mehr hinein, wenn niemand da ist, der die Passphrase kennt.</translation>
    </message>
    <message>
        <source>Everything that devices do on the internet goes through home.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Alles, was Geräte im Internet tun, geht über zu Hause.</translation>
    </message>
    <message>
        <source>Everything that was done stands here, newest first. It names no secret.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Alles, was getan wurde, steht hier, das Neueste zuerst. Es nennt kein Geheimnis.</translation>
    </message>
    <message>
        <source>Everything was at the gateway already; list no. {number} is in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Alles war schon auf dem Gateway; Liste Nr. {number} ist in Kraft.</translation>
    </message>
    <message>
        <source>Everything was at {where} already; revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{where}: Dort war schon alles; Sperrliste Nr. {number} ist in Kraft.</translation>
    </message>
    <message>
        <source>Everything works until it ends. A successor cannot be introduced by it, so that every device has to be visited then.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Alles geht, bis es abläuft. Die nächste CA lässt sich damit nicht einführen, also muss dann jedes Gerät besucht werden.</translation>
    </message>
    <message>
        <source>Everything works until that day and nothing after it. Plan its successor now.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Bis zu diesem Tag geht alles, danach nichts mehr. Plane jetzt die nächste CA.</translation>
    </message>
    <message>
        <source>Everything would stay as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Alles bliebe, wie es ist.</translation>
    </message>
    <message>
        <source>F3, Shift+F3</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F3, Umschalt+F3</translation>
    </message>
    <message>
        <source>F6</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F6</translation>
    </message>
    <message>
        <source>Files get to a gateway by {known}, not by {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dateien kommen auf diesen Wegen zu einem Gateway: {known}, nicht {text}.</translation>
    </message>
    <message>
        <source>First look for a sealed copy or the key on paper, and for the words: with either, nothing is lost.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Such zuerst nach einer versiegelten Kopie oder dem Schlüssel auf Papier, und nach den Wörtern: Mit einem davon ist nichts verloren.</translation>
    </message>
    <message>
        <source>For a new key in the same device add --replace; for another device give it a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Für einen neuen Schlüssel auf demselben Gerät nimm --replace dazu; einem anderen Gerät gib einen eigenen Namen.</translation>
    </message>
    <message>
        <source>For a new one: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Für einen neuen: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>For another one, name another folder with --data.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Für einen anderen nenn mit --data einen anderen Ordner.</translation>
    </message>
    <message>
        <source>For the same device add --replace; for another device give it a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Für dasselbe Gerät nimm --replace dazu; einem anderen Gerät gib einen eigenen Namen.</translation>
    </message>
    <message>
        <source>Found a household anew in another data folder, and give every device a new bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gründe einen Haushalt neu in einem anderen Datenordner, und gib jedem Gerät ein neues Bündel.</translation>
    </message>
    <message>
        <source>Found a new household; each device needs a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Found one first.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Gründe zuerst einen.</translation>
    </message>
    <message>
        <source>Founding a household</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Einen Haushalt gründen</translation>
    </message>
    <message>
        <source>Founding makes the household’s own CA: what it signs gets in, nothing else does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Beim Gründen entsteht die eigene CA des Haushalts: Was sie signiert, kommt hinein, sonst nichts.</translation>
    </message>
    <message>
        <source>From here there is no step back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Von hier führt kein Schritt zurück.</translation>
    </message>
    <message>
        <source>From the next delivery on, whoever has the old bundle turns away from the gateway.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Ab der nächsten Lieferung meidet das Gateway, wer das alte Bündel hat.</translation>
    </message>
    <message>
        <source>Gateways may ignore lists that follow. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Gateways beachten spätere Listen vielleicht nicht. Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Give a /24, or leave it empty to have one proposed.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Gib ein /24 an, oder lass es leer, dann wird eines vorgeschlagen.</translation>
    </message>
    <message>
        <source>Give a /24; --tunnel-subnet quiet has one proposed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib ein /24 an; mit --tunnel-subnet quiet wird eines vorgeschlagen.</translation>
    </message>
    <message>
        <source>Give a day that is still to come.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn einen Tag, der noch kommt.</translation>
    </message>
    <message>
        <source>Give a day that lies ahead.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib einen Tag an, der noch kommt.</translation>
    </message>
    <message>
        <source>Give a file with them, or a picture of the code: --part FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine Datei mit ihnen oder ein Bild des Codes an: --part FILE.</translation>
    </message>
    <message>
        <source>Give a name that the family uses.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib einen Namen an, den die Familie benutzt.</translation>
    </message>
    <message>
        <source>Give a number of days from 1 on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine Zahl von Tagen an, ab 1.</translation>
    </message>
    <message>
        <source>Give a shorter name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib einen kürzeren Namen an.</translation>
    </message>
    <message>
        <source>Give a shorter one with --identity-suffix.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib mit --identity-suffix eine kürzere an.</translation>
    </message>
    <message>
        <source>Give a shorter one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine kürzere Angabe.</translation>
    </message>
    <message>
        <source>Give a whole number from 1 to {longest}; 30 is usual.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn eine ganze Zahl von 1 bis {longest}; üblich ist 30.</translation>
    </message>
    <message>
        <source>Give an address of the gateway, or none for all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine Adresse des Gateways an, oder keine für alle.</translation>
    </message>
    <message>
        <source>Give an address, for instance 198.51.100.1.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine Adresse an, zum Beispiel 198.51.100.1.</translation>
    </message>
    <message>
        <source>Give each device its new bundle</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Jedem Gerät sein neues Bündel geben</translation>
    </message>
    <message>
        <source>Give each its new bundle and see it get in, or wait until its old pass has ended.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib jedem sein neues Bündel und sieh, dass es hineinkommt, oder warte, bis sein alter Pass abgelaufen ist.</translation>
    </message>
    <message>
        <source>Give it a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib ihm einen neuen Pass.</translation>
    </message>
    <message>
        <source>Give it a new pass: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib ihm einen neuen Pass: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>Give it along, so that the parts can stand for both.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib sie mit, damit die Teile für beide stehen können.</translation>
    </message>
    <message>
        <source>Give it from the root on, like /etc/home-gateway, without quotes, backslashes and dollar signs.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib ihn von der Wurzel an, wie /etc/home-gateway, ohne Anführungszeichen, umgekehrte Schrägstriche und Dollarzeichen.</translation>
    </message>
    <message>
        <source>Give it texts in quotes, or figures, as the list of filters shows.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib ihm Texte in Anführungszeichen oder Zahlen, wie die Liste der Filter zeigt.</translation>
    </message>
    <message>
        <source>Give it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib es an.</translation>
    </message>
    <message>
        <source>Give its holder the part of the new set, and destroy this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib der Person, die es hat, das Teil des neuen Satzes und vernichte dieses.</translation>
    </message>
    <message>
        <source>Give kilobits in a second: 40 Mbit/s are 40000.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib Kilobit in der Sekunde an: 40 Mbit/s sind 40000.</translation>
    </message>
    <message>
        <source>Give one from 1 to 65535; 443 needs no mention in a browser.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib einen von 1 bis 65535 an; 443 muss im Browser nicht dabeistehen.</translation>
    </message>
    <message>
        <source>Give one; an empty one is read differently by every device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib eine an; eine leere liest jedes Gerät anders.</translation>
    </message>
    <message>
        <source>Give subnets that lie apart, or have another quiet one proposed.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Gib Subnetze an, die sich nicht berühren, oder lass ein anderes ruhiges vorschlagen.</translation>
    </message>
    <message>
        <source>Give subnets that lie apart; --tunnel-subnet quiet has a free one proposed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib Subnetze an, die sich nicht berühren; mit --tunnel-subnet quiet wird ein freies vorgeschlagen.</translation>
    </message>
    <message>
        <source>Give the address that the page has inside the house.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib die Adresse an, die die Seite im Haus hat.</translation>
    </message>
    <message>
        <source>Give the address that the router’s pages show for it, for instance 198.51.100.2.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib die Adresse an, die die Seiten des Routers für es zeigen, zum Beispiel 198.51.100.2.</translation>
    </message>
    <message>
        <source>Give the device a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib dem Gerät einen neuen Pass.</translation>
    </message>
    <message>
        <source>Give the devices their new bundles first; the gateway’s certificate follows in the succession.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib zuerst den Geräten ihre neuen Bündel; das Zertifikat des Gateways folgt in der Nachfolge.</translation>
    </message>
    <message>
        <source>Give the gateway a certificate of the new CA</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Dem Gateway ein Zertifikat der neuen CA geben</translation>
    </message>
    <message>
        <source>Give the gateway its next certificate</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Dem Gateway sein nächstes Zertifikat geben</translation>
    </message>
    <message>
        <source>Give the gateway’s address at home, or put the home subnets right with hearthkey settle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib die Adresse des Gateways zu Hause an, oder stell mit hearthkey settle die Subnetze zu Hause richtig.</translation>
    </message>
    <message>
        <source>Give the household a home subnet of the tunnel’s version.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib dem Haushalt ein Subnetz zu Hause mit der IP-Version des Tunnels.</translation>
    </message>
    <message>
        <source>Give the name of the user at the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib den Benutzernamen auf dem Gateway an.</translation>
    </message>
    <message>
        <source>Give the name or address alone; user and port have fields of their own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib nur den Namen oder die Adresse an; Benutzername und Port haben eigene Felder.</translation>
    </message>
    <message>
        <source>Give the name or address of the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib den Namen oder die Adresse des Gateways an.</translation>
    </message>
    <message>
        <source>Give the name that devices reach, for instance home.quince.example.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib den Namen an, den Geräte erreichen, zum Beispiel home.quince.example.</translation>
    </message>
    <message>
        <source>Give the name under which the house is reached from outside. It is written into every bundle.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Gib den Namen an, unter dem das Haus von außen erreichbar ist. Er steht in jedem Bündel.</translation>
    </message>
    <message>
        <source>Give the others their new bundles and put the old CA away; that ends all of its passes at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib den anderen ihre neuen Bündel und mustere die alte CA aus; damit enden alle ihre Pässe auf einmal.</translation>
    </message>
    <message>
        <source>Give the pages of one paper only, the one with the newest day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm nur die Seiten eines einzigen Papiers, und zwar dessen mit dem neuesten Tag.</translation>
    </message>
    <message>
        <source>Give the port of ssh, or leave it empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib den Port von ssh an, oder lass ihn leer.</translation>
    </message>
    <message>
        <source>Give the subnet at home; for all traffic choose &quot;everything&quot; below.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Gib das Subnetz zu Hause an; für allen Verkehr wähle unten „alles“.</translation>
    </message>
    <message>
        <source>Give the subnet at home; for all traffic use --tunnel full.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib das Subnetz zu Hause an; für allen Verkehr nimm --tunnel full.</translation>
    </message>
    <message>
        <source>Give this one a name of its own, or give the old one a new pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Gib diesem einen eigenen Namen, oder gib dem alten einen neuen Pass.</translation>
    </message>
    <message>
        <source>Give this one a name of its own, or replace the pass of the other.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Gib diesem einen eigenen Namen, oder ersetz den Pass des anderen.</translation>
    </message>
    <message>
        <source>Go on with it: hearthkey succession shows what comes next, and for whom.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mach damit weiter: hearthkey succession zeigt, was als Nächstes kommt, und für wen.</translation>
    </message>
    <message>
        <source>Go on with the next step.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Mach mit dem nächsten Schritt weiter.</translation>
    </message>
    <message>
        <source>Go on; hearthkey succession shows the next step.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mach weiter; hearthkey succession zeigt den nächsten Schritt.</translation>
    </message>
    <message>
        <source>Go one step back, or on, on the page of the next CA. Once the old CA is put away there is no way back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh auf der Seite der nächsten CA einen Schritt zurück oder weiter. Ist die alte CA einmal ausgemustert, führt kein Weg zurück.</translation>
    </message>
    <message>
        <source>Guest.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Gast.</translation>
    </message>
    <message>
        <source>Hand it over, or take it back first: hearthkey renew DEVICE --take-back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Übergib es, oder nimm es vorher zurück: hearthkey renew DEVICE --take-back.</translation>
    </message>
    <message>
        <source>Hand it over. The old pass can go then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Übergib es. Dann kann der alte Pass enden.</translation>
    </message>
    <message>
        <source>Hand over the next pass of {title}</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>{title} den nächsten Pass übergeben</translation>
    </message>
    <message>
        <source>Hand the new bundle over and prove it; then the old pass goes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Übergib das neue Bündel und weise es nach; dann endet der alte Pass.</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Have the SIM blocked by the carrier</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Die SIM-Karte beim Anbieter sperren lassen</translation>
    </message>
    <message>
        <source>How much room {text} takes in a packet is not known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wie viel Platz {text} in einem Paket braucht, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>If an older sealed copy was brought back, bring back the newest. If the gateway was another household’s, choose another folder, or empty this one by hand.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wenn eine ältere versiegelte Kopie zurückgeholt wurde, hol die neueste zurück. Wenn das Gateway zu einem anderen Haushalt gehörte, wähl einen anderen Ordner oder leere diesen von Hand.</translation>
    </message>
    <message>
        <source>If it is the CA’s, open it once with the program that made it, and lock it anew with AES.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Gehört er der CA, öffne ihn einmal mit dem Programm, das ihn erstellt hat, und verschließ ihn neu mit AES.</translation>
    </message>
    <message>
        <source>If it was only stopped, let it back in first: hearthkey let-in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>War es nur gesperrt, lass es zuerst wieder ein: hearthkey let-in.</translation>
    </message>
    <message>
        <source>If the bundle was lost, replace it: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ging das Bündel verloren, ersetz es: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>If the bundle was lost, replace the pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Ging das Bündel verloren, ersetz den Pass.</translation>
    </message>
    <message>
        <source>If the gateway was set up anew, compare the key at the gateway itself and say anew where it is. If not, wait.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wurde das Gateway neu eingerichtet, vergleiche den Schlüssel am Gateway selbst und sag neu, wo es ist. Wenn nicht, warte.</translation>
    </message>
    <message>
        <source>If the whole subnet is meant, write {meant}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ist das ganze Subnetz gemeint, schreib {meant}.</translation>
    </message>
    <message>
        <source>If you cannot tell, act as in the second case. It costs visits and nothing else.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Wenn du es nicht weißt, handle wie im zweiten Fall. Es kostet Besuche und sonst nichts.</translation>
    </message>
    <message>
        <source>In force is said only of what was read back from the gateway. When it cannot be reached, what it holds is not known, and that is said too, with the time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>„In Kraft“ heißt nur, was vom Gateway zurückgelesen wurde. Ist es nicht erreichbar, ist nicht bekannt, was es hat, und auch das steht da, mit der Zeit.</translation>
    </message>
    <message>
        <source>In need of a new bundle: {devices}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Ein neues Bündel ist nötig für: {devices}.</translation>
    </message>
    <message>
        <source>In use.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>In Gebrauch.</translation>
    </message>
    <message>
        <source>Inside, devices get addresses from {inner}; the gateway gives them out at each connection.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Innen bekommen Geräte Adressen aus {inner}; das Gateway vergibt sie bei jeder Verbindung.</translation>
    </message>
    <message>
        <source>Install iproute2, or name the way out yourself: export writes the bundle to a stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Installiere iproute2, oder wähl den Weg hinaus selbst: export schreibt das Bündel auf einen Stick.</translation>
    </message>
    <message>
        <source>Install the OpenSSH client (Debian: openssh-client), or deliver by a folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Installiere den OpenSSH-Client (Debian: openssh-client), oder liefere in einen Ordner.</translation>
    </message>
    <message>
        <source>It can be let back in when it turns up, so when in doubt, stop it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Taucht es wieder auf, kannst du es wieder einlassen; also sperre es im Zweifel.</translation>
    </message>
    <message>
        <source>It gets in again with a new pass.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Mit einem neuen Pass kommt es wieder hinein.</translation>
    </message>
    <message>
        <source>It gets in until {day}, then it ends. A new pass takes over without a gap.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Es kommt bis {day} hinein, dann läuft der Pass ab. Ein neuer übernimmt ohne Lücke.</translation>
    </message>
    <message>
        <source>It gets in until {day}. Its bundle is in the tray, to be handed over.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Es kommt bis {day} hinein. Sein Bündel liegt in der Ablage und wartet auf die Übergabe.</translation>
    </message>
    <message>
        <source>It gets in until {day}. The key exists on the {device} alone.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Es kommt bis {day} hinein. Den Schlüssel gibt es nur auf dem Gerät ({device}).</translation>
    </message>
    <message>
        <source>It gets in until {day}. Then it ends by itself.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Es kommt bis {day} hinein. Dann läuft der Pass von selbst ab.</translation>
    </message>
    <message>
        <source>It gets in where the gateway goes by the subject. A new pass has what is missing.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es kommt hinein, wo sich das Gateway nach „ausgestellt für“ (subject) richtet. Ein neuer Pass hat, was fehlt.</translation>
    </message>
    <message>
        <source>It has {size} octets; a bundle has at most {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es hat {size} Byte; ein Bündel hat höchstens {limit}.</translation>
    </message>
    <message>
        <source>It is encrypted in a way that is not read here ({algorithm}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist auf eine Art verschlüsselt, die hier nicht gelesen wird ({algorithm}).</translation>
    </message>
    <message>
        <source>It is known by its host key {fingerprint}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Erkannt wird es an seinem Hostschlüssel {fingerprint}.</translation>
    </message>
    <message>
        <source>It is left as it is.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>It is left as it is. Only one can be taken over at a time.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es bleibt, wie es ist. Auf einmal lässt sich nur eine CA übernehmen.</translation>
    </message>
    <message>
        <source>It is left out.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wird weggelassen.</translation>
    </message>
    <message>
        <source>It is left out: only whole lists are taken over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Sie wird weggelassen: Nur vollständige Listen werden übernommen.</translation>
    </message>
    <message>
        <source>It is not a PNG or JPEG picture that can be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist kein PNG- oder JPEG-Bild, das sich lesen lässt.</translation>
    </message>
    <message>
        <source>It is not a whole PKCS#12 file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist keine ganze PKCS#12-Datei.</translation>
    </message>
    <message>
        <source>It is not a whole archive.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist kein ganzes Archiv.</translation>
    </message>
    <message>
        <source>It is not said which template, or from which file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist nicht gesagt, welche Vorlage, oder aus welcher Datei.</translation>
    </message>
    <message>
        <source>It is too much for codes: {size} octets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist zu viel für Codes: {size} Byte.</translation>
    </message>
    <message>
        <source>It never gets in again: {why}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Es kommt nie wieder hinein: {why}.</translation>
    </message>
    <message>
        <source>It stands on the revocation list ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es steht auf der Sperrliste ({seen}). Das Gateway wird es nicht einlassen.</translation>
    </message>
    <message>
        <source>It takes a person and a device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es braucht eine Person und ein Gerät.</translation>
    </message>
    <message>
        <source>It takes effect when the gateway holds list {subject}. Until then, everybody who could get in still can.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Es wirkt, wenn das Gateway Liste Nr. {subject} hat. Bis dahin kommt weiter hinein, wer bisher hineinkam.</translation>
    </message>
    <message>
        <source>It takes effect when the gateway holds the new list.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Es wirkt, wenn das Gateway die neue Liste hat.</translation>
    </message>
    <message>
        <source>It takes effect with the next delivery.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Es wirkt mit der nächsten Lieferung.</translation>
    </message>
    <message>
        <source>It waits in the tray. The pass that the device has gets in until {day}, and not a day longer.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Es wartet in der Ablage. Der Pass, den das Gerät hat, kommt bis {day} hinein, und keinen Tag länger.</translation>
    </message>
    <message>
        <source>It was not read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>It was not read. Look into it by itself, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde nicht gelesen. Sieh es einzeln durch, falls es hierhergehört.</translation>
    </message>
    <message>
        <source>It was out of sight for {subject} hours. Somebody may have copied what is on it: a new pass is wiser than letting the old one back in.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Es war {subject} Stunden außer Sicht. Vielleicht hat jemand kopiert, was darauf ist: Ein neuer Pass ist klüger, als den alten wieder einzulassen.</translation>
    </message>
    <message>
        <source>It was picked up by {address}. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Es wurde von {address} abgeholt. Der Abholschein ist geschlossen.</translation>
    </message>
    <message>
        <source>It works, and it cannot be stopped. Give the device a new pass, and end this one at the gateway.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es geht, und es lässt sich nicht sperren. Gib dem Gerät einen neuen Pass, und beende diesen auf dem Gateway.</translation>
    </message>
    <message>
        <source>It works. On some ways in, who listens on the network can read it; a new pass carries a code instead.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es geht. Auf manchen Wegen hinein kann das lesen, wer im Netz mithört; ein neuer Pass trägt stattdessen einen Code.</translation>
    </message>
    <message>
        <source>It works. The lists that follow have one.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es geht. Die Listen danach haben eine.</translation>
    </message>
    <message>
        <source>It would take {count} codes; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es bräuchte {count} Codes; {limit} sind das Höchste.</translation>
    </message>
    <message>
        <source>Its device does not get in any more. Only its number is taken over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Sein Gerät kommt nicht mehr hinein. Nur seine Nummer wird übernommen.</translation>
    </message>
    <message>
        <source>Its device does not get in before.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Sein Gerät kommt vorher nicht hinein.</translation>
    </message>
    <message>
        <source>Its last passes ended: {titles}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die letzten Pässe der alten CA sind abgelaufen: {titles}.</translation>
    </message>
    <message>
        <source>Its new pass gets in; renew it if it needs another.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sein neuer Pass kommt hinein; erneuere ihn, wenn es einen weiteren braucht.</translation>
    </message>
    <message>
        <source>Its passphrase can be guessed quickly. It can be read here; delete the file after the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Seine Passphrase lässt sich schnell erraten. Hier lässt er sich lesen; lösche die Datei nach der Übernahme.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi at home. If you are there already, name the address: --address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh ins WLAN zu Hause. Bist du schon darin, nenn die Adresse: --address.</translation>
    </message>
    <message>
        <source>Keep a sealed copy instead of the paper.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bewahre statt des Papiers eine versiegelte Kopie auf.</translation>
    </message>
    <message>
        <source>Keep it to one line. What is longer fits into a script at the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bleib bei einer Zeile. Was länger ist, passt in ein Skript auf dem Gateway.</translation>
    </message>
    <message>
        <source>Key and certificate do not belong together.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schlüssel und Zertifikat gehören nicht zusammen.</translation>
    </message>
    <message>
        <source>Keys and codes of the doors</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Schlüssel und Codes der Türen</translation>
    </message>
    <message>
        <source>Leave it out, or make a proposal of its own of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass es weg, oder mach einen eigenen Vorschlag daraus.</translation>
    </message>
    <message>
        <source>Leave one out. Nothing was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass eines weg. Nichts wurde erstellt.</translation>
    </message>
    <message>
        <source>Leave out what no slot is in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass weg, worin kein Platzhalter steht.</translation>
    </message>
    <message>
        <source>Leave the command empty, or reach the gateway by ssh.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass den Befehl leer, oder erreiche das Gateway per ssh.</translation>
    </message>
    <message>
        <source>Leave the folder as it is, make a copy of it, and bring back the newest copy that works.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Lass den Ordner, wie er ist, mach eine Kopie davon, und hol die neueste Kopie zurück, die funktioniert.</translation>
    </message>
    <message>
        <source>Leave the tunnel’s out where the kernel itself unpacks the tunnel.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass die des Tunnels weg, wo der Kernel selbst den Tunnel auspackt.</translation>
    </message>
    <message>
        <source>Let it back in, or revoke it for good.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Lass es wieder ein, oder widerruf es endgültig.</translation>
    </message>
    <message>
        <source>Let the devices go first: hearthkey succession begin --lost. Then no pass of this CA can be stopped any more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass die Geräte zuerst gehen: hearthkey succession begin --lost. Danach lässt sich kein Pass dieser CA mehr sperren.</translation>
    </message>
    <message>
        <source>Let the gateway trust both</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Das Gateway beiden vertrauen lassen</translation>
    </message>
    <message>
        <source>Let the old pass of {title} go</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>{title}: den alten Pass beenden</translation>
    </message>
    <message>
        <source>Let the other one back in, and revoke this one, each on its page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass das andere wieder ein und widerrufe dieses, jedes auf seiner Seite.</translation>
    </message>
    <message>
        <source>Line {line} asks for the first or last of a list that is empty today.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} will das Erste oder Letzte einer Liste, die heute leer ist.</translation>
    </message>
    <message>
        <source>Line {line} cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Line {line} cannot be read: {seen}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} lässt sich nicht lesen: {seen}</translation>
    </message>
    <message>
        <source>Line {line} does not belong with the others: there are two papers among them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} gehört nicht zu den anderen: Es sind zwei Papiere darunter.</translation>
    </message>
    <message>
        <source>Line {line} does not say that this is a bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} sagt nicht, dass dies ein Bündel ist.</translation>
    </message>
    <message>
        <source>Line {line} holds a character that cannot be seen ({character}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} enthält ein Zeichen, das nicht zu sehen ist ({character}).</translation>
    </message>
    <message>
        <source>Line {line} holds a character that cannot be seen, or turns the text around it ({character}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} enthält ein Zeichen, das nicht zu sehen ist oder den Text um sich herum umdreht ({character}).</translation>
    </message>
    <message>
        <source>Line {line} is nested deeper than {limit} levels.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} ist tiefer als {limit} Ebenen verschachtelt.</translation>
    </message>
    <message>
        <source>Line {line} is not UTF-8 text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>Line {line} of {path} does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line} von {path} passt nicht.</translation>
    </message>
    <message>
        <source>Line {line}: a {wanted} was expected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Erwartet wird {wanted}.</translation>
    </message>
    <message>
        <source>Line {line}: more than {limit} {what}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: mehr als {limit} {what}.</translation>
    </message>
    <message>
        <source>Line {line}: nothing is known of {key}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Von {key} ist nichts bekannt.</translation>
    </message>
    <message>
        <source>Line {line}: only a subnet has an address, a netmask and a prefix length.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Nur ein Subnetz hat eine Adresse, eine Netzmaske und eine Präfixlänge.</translation>
    </message>
    <message>
        <source>Line {line}: the filter {name} does not take what stands in its brackets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Der Filter {name} nimmt nicht, was in seinen Klammern steht.</translation>
    </message>
    <message>
        <source>Line {line}: there is no filter {name}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Den Filter {name} gibt es nicht.</translation>
    </message>
    <message>
        <source>Line {line}: there is no slot {name}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Den Platzhalter {name} gibt es nicht.</translation>
    </message>
    <message>
        <source>Line {line}: there is nothing in {name} today.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: In {name} steht heute nichts.</translation>
    </message>
    <message>
        <source>Line {line}: what stands for {key} does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Was für {key} steht, passt nicht.</translation>
    </message>
    <message>
        <source>Line {line}: {key} cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: {key} lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>Line {line}: {name} is a slot of templates for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: {name} ist ein Platzhalter in Vorlagen für das {of}.</translation>
    </message>
    <message>
        <source>Line {line}: {name} is the name of something else already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: {name} ist schon der Name von etwas anderem.</translation>
    </message>
    <message>
        <source>Line {line}: {seen} is nothing that a template here can do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: {seen} kann eine Vorlage hier nicht.</translation>
    </message>
    <message>
        <source>Line {line}: {seen} stands where {wanted} is needed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zeile {line}: Hier steht {seen}, gebraucht wird {wanted}.</translation>
    </message>
    <message>
        <source>Lines of the database are not understood ({lines}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Zeilen der Datenbank sind nicht zu verstehen ({lines}).</translation>
    </message>
    <message>
        <source>List no. {newest} waits here. The gateway holds list no. {number}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {newest} wartet hier. Das Gateway hat Liste Nr. {number}.</translation>
    </message>
    <message>
        <source>List no. {number} comes in force; files: {told}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} tritt in Kraft; Dateien: {told}.</translation>
    </message>
    <message>
        <source>List no. {number} is in force, good until {until}; read back {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} ist in Kraft, gültig bis {until}; zurückgelesen {looked}.</translation>
    </message>
    <message>
        <source>List no. {number} is in force: one file was sent, and what is there was read back.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} ist in Kraft: Eine Datei wurde gesendet, und was dort ist, wurde zurückgelesen.</translation>
    </message>
    <message>
        <source>List no. {number} is in force: {count} files were sent, and what is there was read back.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} ist in Kraft: {count} Dateien wurden gesendet, und was dort ist, wurde zurückgelesen.</translation>
    </message>
    <message>
        <source>List no. {number} is in force; settings or certificates wait here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} ist in Kraft; Einstellungen oder Zertifikate warten hier.</translation>
    </message>
    <message>
        <source>List no. {number} lies at the gateway, but its command failed ({said}): what runs there may use an older one.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Liste Nr. {number} liegt auf dem Gateway, doch der Befehl dort schlug fehl ({said}): Vielleicht läuft dort noch eine ältere.</translation>
    </message>
    <message>
        <source>Lock or erase it from afar</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Aus der Ferne sperren oder löschen</translation>
    </message>
    <message>
        <source>Locking lets go of the CA key. Everybody who gets in still does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Verschließen gibt den CA-Schlüssel aus der Hand. Alle, die hineinkommen, kommen weiter hinein.</translation>
    </message>
    <message>
        <source>Log out and in, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Melde dich ab und wieder an, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Look at it with --plan, then add --yes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh es mit --plan an, dann nimm --yes dazu.</translation>
    </message>
    <message>
        <source>Look at its braces, quotes and brackets. The preview shows it at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh auf die geschweiften Klammern, Anführungszeichen und Klammern. Die Vorschau zeigt es sofort.</translation>
    </message>
    <message>
        <source>Look at the gateway itself which one is its own: ssh-keygen -l -f on its host key file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh am Gateway selbst nach, welcher der eigene ist: ssh-keygen -l -f auf seine Hostschlüssel-Datei.</translation>
    </message>
    <message>
        <source>Look at the loops and the filters replace and indent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh auf die Schleifen und die Filter replace und indent.</translation>
    </message>
    <message>
        <source>Look at the plan with hearthkey succession; it says by which day to begin.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh den Plan mit hearthkey succession an; er sagt, bis zu welchem Tag du anfängst.</translation>
    </message>
    <message>
        <source>Look at them again, then change what still has to be changed. Nothing was done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh sie noch einmal an, dann ändere, was noch zu ändern ist. Nichts wurde getan.</translation>
    </message>
    <message>
        <source>Look for a part with set {known} printed on it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Such ein Teil, auf dem der Satz {known} gedruckt steht.</translation>
    </message>
    <message>
        <source>Look for a question it may be asking on another screen; else log out and in, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob er auf einem anderen Bildschirm etwas fragt; sonst melde dich ab und wieder an, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Look for a question that it may be asking on another screen; else log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Sieh nach, ob er auf einem anderen Bildschirm etwas fragt; sonst melde dich ab und wieder an.</translation>
    </message>
    <message>
        <source>Look for parts that have the same set printed on them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Such Teile, auf denen derselbe Satz gedruckt steht.</translation>
    </message>
    <message>
        <source>Look for the internet address on the router’s own pages, for instance 203.0.113.7, and give that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Such die Internetadresse auf den eigenen Seiten des Routers, zum Beispiel 203.0.113.7, und gib diese an.</translation>
    </message>
    <message>
        <source>Loop over a list with for, or put its parts together with join; a text is written as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh die Liste mit for durch, oder füg ihre Teile mit join zusammen; ein Text wird geschrieben, wie er ist.</translation>
    </message>
    <message>
        <source>Loop over the list instead, or put the line between if and endif.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh stattdessen die Liste durch, oder setz die Zeile zwischen if und endif.</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Verloren oder gestohlen</translation>
    </message>
    <message>
        <source>Make it at the gateway, put the stick in or mount the share, or name another folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Leg ihn auf dem Gateway an, steck den Stick ein oder häng die Freigabe ein, oder nenn einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Make room there, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schaff dort Platz, dann liefere noch einmal.</translation>
    </message>
    <message>
        <source>Make room, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schaff Platz, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Make the next CA beside this one</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die nächste CA neben dieser erstellen</translation>
    </message>
    <message>
        <source>Make them first: hearthkey deputy make.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mach sie zuerst: hearthkey deputy make.</translation>
    </message>
    <message>
        <source>Making one key</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Ein Schlüssel wird erstellt</translation>
    </message>
    <message>
        <source>Making the CA key</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der CA-Schlüssel wird erstellt</translation>
    </message>
    <message>
        <source>Making the gateway’s key and certificate</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Schlüssel und Zertifikat des Gateways werden erstellt</translation>
    </message>
    <message>
        <source>More than {limit} files were named.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mehr als {limit} Dateien wurden genannt.</translation>
    </message>
    <message>
        <source>Most devices and gateways go on. Strict ones may turn it away.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die meisten Geräte und Gateways machen weiter. Strenge weisen es vielleicht ab.</translation>
    </message>
    <message>
        <source>Most gateways go on. Strict ones may turn it away; a new pass has what is missing.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die meisten Gateways machen weiter. Strenge weisen es vielleicht ab; ein neuer Pass hat, was fehlt.</translation>
    </message>
    <message>
        <source>Name a folder: --into DIR.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn einen Ordner: --into DIR.</translation>
    </message>
    <message>
        <source>Name a free subnet with --tunnel-subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn mit --tunnel-subnet ein freies Subnetz.</translation>
    </message>
    <message>
        <source>Name a free subnet.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Nenn ein freies Subnetz.</translation>
    </message>
    <message>
        <source>Name an empty or new folder with --into.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn mit --into einen leeren oder neuen Ordner.</translation>
    </message>
    <message>
        <source>Name at least one with --home-subnet, for instance 198.51.100.0/24.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn mit --home-subnet wenigstens eines, zum Beispiel 198.51.100.0/24.</translation>
    </message>
    <message>
        <source>Name at least one, for instance 198.51.100.0/24. The router shows it.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Nenn wenigstens eines, zum Beispiel 198.51.100.0/24. Der Router zeigt es.</translation>
    </message>
    <message>
        <source>Name fewer subnets and DNS servers, or keep a sealed copy instead of the paper.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn weniger Subnetze und DNS-Server, oder bewahre statt des Papiers eine versiegelte Kopie auf.</translation>
    </message>
    <message>
        <source>Name it: hearthkey deputy restore FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn sie: hearthkey deputy restore FILE.</translation>
    </message>
    <message>
        <source>Name it; for keep, also --file: hearthkey template keep NAME --file FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn sie; bei keep auch --file: hearthkey template keep NAME --file FILE.</translation>
    </message>
    <message>
        <source>Name one of those, or its interface.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn eine davon, oder ihre Schnittstelle.</translation>
    </message>
    <message>
        <source>Name the file itself, not a folder or a device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn die Datei selbst, keinen Ordner und kein Gerät.</translation>
    </message>
    <message>
        <source>Name the files of one bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn die Dateien eines einzigen Bündels.</translation>
    </message>
    <message>
        <source>Name the folder: at the gateway for ssh, on this computer for a stick or a share.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn den Ordner: bei ssh den auf dem Gateway, bei einem Stick oder einer Freigabe den auf diesem Computer.</translation>
    </message>
    <message>
        <source>Name what is to be different, for instance --gateway-host; hearthkey settle --help shows all of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn, was anders sein soll, zum Beispiel --gateway-host; hearthkey settle --help zeigt alles.</translation>
    </message>
    <message>
        <source>Names are asked of {dns}. The gateway tells devices so at each connection; where it was typed in by hand, the old one stays.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Namen werden bei {dns} erfragt. Das Gateway sagt es Geräten bei jeder Verbindung; wo er von Hand eingetippt wurde, bleibt der alte.</translation>
    </message>
    <message>
        <source>New devices are known as a code in {suffix}; those that are there keep theirs.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Neue Geräte sind als Code in {suffix} bekannt; die vorhandenen behalten ihren.</translation>
    </message>
    <message>
        <source>New sheets replace the old ones for every copy that is made from then on.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Neue Blätter ersetzen die alten für jede Kopie, die von da an gemacht wird.</translation>
    </message>
    <message>
        <source>No CA follows another at the moment, so there is no step to take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Im Moment folgt keine CA auf eine andere, also ist kein Schritt zu tun.</translation>
    </message>
    <message>
        <source>No CA was found in {count} files.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>In {count} Dateien wurde keine CA gefunden.</translation>
    </message>
    <message>
        <source>No certificate of a gateway was recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde kein Zertifikat eines Gateways erkannt.</translation>
    </message>
    <message>
        <source>No code of a part is on this.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Darauf ist kein Code eines Teils.</translation>
    </message>
    <message>
        <source>No code was found.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es wurde kein Code gefunden.</translation>
    </message>
    <message>
        <source>No device has to be told.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Es muss keinem Gerät gesagt werden.</translation>
    </message>
    <message>
        <source>No device is called &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kein Gerät heißt „{text}“.</translation>
    </message>
    <message>
        <source>No device is taken over.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Kein Gerät wird übernommen.</translation>
    </message>
    <message>
        <source>No device’s certificate was found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde kein Zertifikat eines Geräts gefunden.</translation>
    </message>
    <message>
        <source>No home subnet was given.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es wurde kein Subnetz zu Hause angegeben.</translation>
    </message>
    <message>
        <source>No list can be read at the gateway. List no. {newest} waits here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Auf dem Gateway ist keine Liste zu lesen. Liste Nr. {newest} wartet hier.</translation>
    </message>
    <message>
        <source>No list that was signed in advance stops everybody; or everybody is stopped already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Keine Liste, die im Voraus signiert wurde, sperrt alle; oder alle sind schon gesperrt.</translation>
    </message>
    <message>
        <source>No list that was signed in advance stops {title} without letting somebody else back in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: Keine im Voraus signierte Liste sperrt es, ohne ein anderes Gerät wieder einzulassen.</translation>
    </message>
    <message>
        <source>No other device gets in at present.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Kein anderes Gerät kommt zurzeit hinein.</translation>
    </message>
    <message>
        <source>No parts were made for a deputy yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es wurden noch keine Teile für eine Vertretung gemacht.</translation>
    </message>
    <message>
        <source>No pass of {title} has another one that follows it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: Auf keinen Pass folgt ein anderer.</translation>
    </message>
    <message>
        <source>No renewal of {title} waits in the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: In der Ablage wartet keine Erneuerung.</translation>
    </message>
    <message>
        <source>No visit of that day is planned: {person}, {day}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Für diesen Tag ist kein Besuch geplant: {person}, {day}.</translation>
    </message>
    <message>
        <source>Nobody called {text} has a device here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand namens {text} hat hier ein Gerät.</translation>
    </message>
    <message>
        <source>Nobody can be stopped: no spare stop list lies ready.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Niemand lässt sich sperren: Keine Reserve-Sperrliste liegt bereit.</translation>
    </message>
    <message>
        <source>Nobody could be stopped, as a gateway ignores such a list. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Niemand ließe sich sperren, weil ein Gateway eine solche Liste nicht beachtet. Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Nobody else is affected.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Sonst ist niemand betroffen.</translation>
    </message>
    <message>
        <source>Nobody else is affected. But on {day} {what} ends, and then nobody gets in.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Sonst ist niemand betroffen. Doch am {day} läuft {what} ab, und dann kommt niemand hinein.</translation>
    </message>
    <message>
        <source>Nobody else is affected. The house stays open until {day}, when {what} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Sonst ist niemand betroffen. Das Haus bleibt offen bis {day}, dann läuft {what} ab.</translation>
    </message>
    <message>
        <source>Nobody gets in any more, whatever their passes say. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Niemand kommt mehr hinein, was auch in den Pässen steht. Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Nobody gets in before. Check this computer’s clock, then look again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Vorher kommt niemand hinein. Prüf die Uhr dieses Computers, dann sieh noch einmal nach.</translation>
    </message>
    <message>
        <source>Nobody gets in: the gateway’s certificate ended on {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Niemand kommt hinein: Das Zertifikat des Gateways ist am {day} abgelaufen.</translation>
    </message>
    <message>
        <source>Nobody gets in: the revocation list ended on {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Niemand kommt hinein: Die Sperrliste ist am {day} abgelaufen.</translation>
    </message>
    <message>
        <source>Nobody has a key yet. Start with `hearthkey found`.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Noch hat niemand einen Schlüssel. Fang an mit `hearthkey found`.</translation>
    </message>
    <message>
        <source>Nobody has said yet where the gateway is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Noch ist nicht gesagt, wo das Gateway ist.</translation>
    </message>
    <message>
        <source>Nobody here can look at the gateway, so the app cannot know whether it has the files of the last step.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hier kann niemand nach dem Gateway sehen, also kann die App nicht wissen, ob es die Dateien des letzten Schritts hat.</translation>
    </message>
    <message>
        <source>Nobody is withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Kein Pass ist zurückgezogen.</translation>
    </message>
    <message>
        <source>Nobody is withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Kein Pass ist zurückgezogen; die höchste Listennummer ist {number}.</translation>
    </message>
    <message>
        <source>Nobody knows the address of {where} ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand kennt die Adresse von {where} ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>Nobody notices. From now on bundles carry both CAs, and each list is signed by both.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Niemand merkt etwas. Ab jetzt enthalten Bündel beide CAs, und jede Liste wird von beiden signiert.</translation>
    </message>
    <message>
        <source>Nobody notices. The old CA cannot vouch for the new one, so the devices go first.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Niemand merkt etwas. Die alte CA kann nicht für die neue bürgen, also kommen zuerst die Geräte dran.</translation>
    </message>
    <message>
        <source>Nobody said where the papers go.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand hat gesagt, wohin die Papiere gehen.</translation>
    </message>
    <message>
        <source>Nobody said which sealed copy the parts are to open.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand hat gesagt, welche versiegelte Kopie die Teile öffnen sollen.</translation>
    </message>
    <message>
        <source>Nobody’s pass has to be renewed by then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bis dahin muss kein Pass erneuert werden.</translation>
    </message>
    <message>
        <source>Not all of the paper could be read. Lines read: {read}. Lines still wanted: {missing}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nicht das ganze Papier ließ sich lesen. Gelesene Zeilen: {read}. Zeilen, die noch fehlen: {missing}.</translation>
    </message>
    <message>
        <source>Not in force yet: {whom}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Noch nicht in Kraft: {whom}.</translation>
    </message>
    <message>
        <source>Not through yet: {titles}. They would stand outside.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Noch nicht durch: {titles}. Sie stünden draußen.</translation>
    </message>
    <message>
        <source>Nothing can be written to {path}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nach {path} lässt sich nichts schreiben. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>Nothing can be written to {where} ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nach {where} lässt sich nichts schreiben ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>Nothing has arrived yet. Is the phone in the same Wi-Fi, and not in the one for guests? A firewall on this computer may be closed too.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Noch ist nichts angekommen. Ist das Handy im selben WLAN, und nicht in dem für Gäste? Vielleicht macht auch eine Firewall auf diesem Computer zu.</translation>
    </message>
    <message>
        <source>Nothing has begun yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Noch hat nichts angefangen.</translation>
    </message>
    <message>
        <source>Nothing has to be withdrawn.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nichts muss zurückgezogen werden.</translation>
    </message>
    <message>
        <source>Nothing is delivered to {where} any more.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{where}: Dorthin wird nichts mehr geliefert.</translation>
    </message>
    <message>
        <source>Nothing of a household’s paper could be read there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dort ließ sich nichts vom Papier eines Haushalts lesen.</translation>
    </message>
    <message>
        <source>Nothing on this desktop shows notices ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nichts auf diesem Desktop zeigt Hinweise an ({seen}).</translation>
    </message>
    <message>
        <source>Nothing to do; hearthkey dates shows what comes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nichts zu tun; hearthkey dates zeigt, was kommt.</translation>
    </message>
    <message>
        <source>Nothing was changed. Do it again; if it stays, the register needs a look.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nichts wurde geändert. Versuch es noch einmal; bleibt es so, muss das Register angesehen werden.</translation>
    </message>
    <message>
        <source>Nothing was delivered to the gateway yet.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Noch wurde nichts an das Gateway geliefert.</translation>
    </message>
    <message>
        <source>Nothing was done since.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Seitdem wurde nichts getan.</translation>
    </message>
    <message>
        <source>Of {count} codes, {missing} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Von {count} Codes fehlt {missing}.</translation>
    </message>
    <message>
        <source>On a computer without a household, the first page has the way: “From a sealed copy …”.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Auf einem Computer ohne Haushalt steht der Weg auf der ersten Seite: „Aus einer versiegelten Kopie …“.</translation>
    </message>
    <message>
        <source>On a computer without a household: hearthkey deputy restore, and the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Auf einem Computer ohne Haushalt: hearthkey deputy restore und die Datei.</translation>
    </message>
    <message>
        <source>On line {line} the result grows past {limit} octets, more than any program’s settings.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In Zeile {line} wächst das Ergebnis über {limit} Byte, mehr als die Einstellungen irgendeines Programms.</translation>
    </message>
    <message>
        <source>On line {line} the template was stopped: it would run too long ({limit} steps are the most).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In Zeile {line} wurde die Vorlage angehalten: Sie liefe zu lange ({limit} Schritte sind das Höchste).</translation>
    </message>
    <message>
        <source>Once a year ask for each sheet and type its words here: that is the drill, and it needs no other sheet.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Frag einmal im Jahr nach jedem Blatt und tippe seine Wörter hier: das ist die Übung, und ein anderes Blatt braucht es dazu nicht.</translation>
    </message>
    <message>
        <source>Once the new pass was handed over and seen to get in, the old one goes for good. A proof does not say which of the two a device used: look on the device that the new one is chosen.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Sobald der neue Pass übergeben ist und nachweislich hineinkam, geht der alte endgültig. Ein Nachweis sagt nicht, welchen der beiden ein Gerät benutzt hat: Sieh auf dem Gerät nach, dass der neue gewählt ist.</translation>
    </message>
    <message>
        <source>One bundle that waits has to be made anew: its key is in no copy.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Ein Bündel, das wartet, muss neu erstellt werden: Sein Schlüssel ist in keiner Kopie.</translation>
    </message>
    <message>
        <source>One certificate of a gateway was recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde ein Zertifikat eines Gateways erkannt.</translation>
    </message>
    <message>
        <source>One device is not through yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Ein Gerät ist noch nicht durch.</translation>
    </message>
    <message>
        <source>One device is taken over; its pass goes on as it is, and it waits for you to say whose it is.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Ein Gerät wird übernommen; sein Pass läuft weiter, wie er ist, und es wartet darauf, dass du sagst, wem es gehört.</translation>
    </message>
    <message>
        <source>One device’s certificate was found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurde ein Zertifikat eines Geräts gefunden.</translation>
    </message>
    <message>
        <source>One entry of the diary came later.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Ein Eintrag im Tagebuch kam später dazu.</translation>
    </message>
    <message>
        <source>One is withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Einer ist zurückgezogen.</translation>
    </message>
    <message>
        <source>One is withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Einer ist zurückgezogen; die höchste Listennummer ist {number}.</translation>
    </message>
    <message>
        <source>One of the parts was not tried for a year on {day}. Paper fades and gets lost, and nobody notices.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Eines der Teile wurde am {day} seit einem Jahr nicht geprüft. Papier verblasst und geht verloren, und niemand merkt es.</translation>
    </message>
    <message>
        <source>One of the words is another one than on the paper, or two have changed places.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Eines der Wörter ist ein anderes als auf dem Papier, oder zwei haben die Plätze getauscht.</translation>
    </message>
    <message>
        <source>One random secret that gateway and devices share, base64.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Ein zufälliges Geheimnis, das Gateway und Geräte teilen, base64.</translation>
    </message>
    <message>
        <source>One visit each, at any time until then. The old pass works on meanwhile.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Je ein Besuch, irgendwann bis dahin. Der alte Pass geht inzwischen weiter.</translation>
    </message>
    <message>
        <source>One visit each. The old pass works on until the gateway’s certificate changes.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Je ein Besuch. Der alte Pass geht weiter, bis das Zertifikat des Gateways wechselt.</translation>
    </message>
    <message>
        <source>Only a practice household may be forgotten.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nur ein Übungshaushalt darf vergessen werden.</translation>
    </message>
    <message>
        <source>Only the revocation list changes: no. {number} comes in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Nur die Sperrliste ändert sich: Nr. {number} tritt in Kraft.</translation>
    </message>
    <message>
        <source>Open a new one, with a new code, once this one has ended.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne einen neuen, mit neuem Code, wenn dieser zu Ende ist.</translation>
    </message>
    <message>
        <source>Open a new one; the old code leads nowhere any more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne einen neuen; der alte Code führt nirgends mehr hin.</translation>
    </message>
    <message>
        <source>Open it (log in to the desktop, or unlock it in the desktop’s password settings), then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne ihn (melde dich am Desktop an, oder schließ ihn in den Passwort-Einstellungen des Desktops auf), dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Open it once on a stronger computer with any age tool, and encrypt it again there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne sie einmal auf einem stärkeren Computer mit irgendeinem age-Programm, und verschlüssle sie dort neu.</translation>
    </message>
    <message>
        <source>Open it with its passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Öffne es mit seiner Passphrase.</translation>
    </message>
    <message>
        <source>Open the app in a desktop with a keyring, or keep the key in a file.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Öffne die App in einem Desktop mit Schlüsselbund, oder bewahre den Schlüssel in einer Datei auf.</translation>
    </message>
    <message>
        <source>Open the app in that desktop.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Öffne die App in jenem Desktop.</translation>
    </message>
    <message>
        <source>Open the app in the desktop where the household lives.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Öffne die App in dem Desktop, in dem der Haushalt wohnt.</translation>
    </message>
    <message>
        <source>Opening the CA key (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der CA-Schlüssel wird geöffnet (mit Absicht langsam)</translation>
    </message>
    <message>
        <source>Opening the CA key would take more memory or time than this computer can give.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Den CA-Schlüssel zu öffnen bräuchte mehr Speicher oder Zeit, als dieser Computer geben kann.</translation>
    </message>
    <message>
        <source>Opening the bundle of {title}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Das Bündel wird geöffnet: {title}</translation>
    </message>
    <message>
        <source>Other home subnets</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Andere Subnetze zu Hause</translation>
    </message>
    <message>
        <source>Outside this app: lock or find the device from afar, block its SIM, change the mail password.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Außerhalb dieser App: das Gerät aus der Ferne sperren oder orten, seine SIM-Karte sperren lassen, das Mail-Passwort ändern.</translation>
    </message>
    <message>
        <source>Part {number} of set {name} was tried, and it is right.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>Teil {number} des Satzes {name} wurde geprüft, und es stimmt.</translation>
    </message>
    <message>
        <source>Part {number} was given twice, and twice the same is one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Teil {number} wurde zweimal gegeben, und zweimal dasselbe ist eines.</translation>
    </message>
    <message>
        <source>Parts for a deputy lie in this folder. A copy beside them would let anybody in who finds the folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In diesem Ordner liegen Teile für eine Vertretung. Eine Kopie daneben ließe jeden ein, der den Ordner findet.</translation>
    </message>
    <message>
        <source>Parts of the bundle belong to different devices or were altered.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Teile des Bündels gehören zu verschiedenen Geräten oder wurden verändert.</translation>
    </message>
    <message>
        <source>Passes: {passes}; on the revocation list: {withdrawn}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Pässe: {passes}; auf der Sperrliste: {withdrawn}.</translation>
    </message>
    <message>
        <source>Paste a text, or begin with the starting text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Füg einen Text ein, oder beginn mit dem Anfangstext.</translation>
    </message>
    <message>
        <source>People run down, time runs across. Each line is a device: it begins when its pass was made and ends when the pass does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Personen stehen untereinander, die Zeit läuft quer. Jede Linie ist ein Gerät: Sie beginnt, wenn sein Pass erstellt wird, und endet mit ihm.</translation>
    </message>
    <message>
        <source>Picture {frames} belongs to another bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bild {frames} gehört zu einem anderen Bündel.</translation>
    </message>
    <message>
        <source>Picture {frames} shows another kind of code.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bild {frames} zeigt eine andere Art von Code.</translation>
    </message>
    <message>
        <source>Put fewer loops into each other.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Setz weniger Schleifen ineinander.</translation>
    </message>
    <message>
        <source>Put it back, or choose another folder, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Leg ihn zurück, oder wähle einen anderen Ordner, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Put it into a file that only you can read, and name it with --passphrase-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib sie in eine Datei, die nur du lesen kannst, und nenn sie mit --passphrase-file.</translation>
    </message>
    <message>
        <source>Put the line between if and endif with the test “is defined”, or name another text with the filter default.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Setz die Zeile zwischen if und endif mit der Prüfung „is defined“, oder nenn mit dem Filter default einen anderen Text.</translation>
    </message>
    <message>
        <source>Put the old CA away</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Die alte CA ausmustern</translation>
    </message>
    <message>
        <source>Put {mark} into the file name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Setz {mark} in den Dateinamen.</translation>
    </message>
    <message>
        <source>Put {wanted} where it ends.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Setz {wanted} dorthin, wo es endet.</translation>
    </message>
    <message>
        <source>Putting secrets into the {place}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Geheimnisse werden verwahrt: {place}</translation>
    </message>
    <message>
        <source>Reaching the gateway ({where})</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Das Gateway wird gerufen ({where})</translation>
    </message>
    <message>
        <source>Reading back what is there</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Was dort ist, wird zurückgelesen</translation>
    </message>
    <message>
        <source>Reading the folder</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der Ordner wird gelesen</translation>
    </message>
    <message>
        <source>Red is for what wants you. Where nothing is red, nothing has to be done.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Rot ist, was dich braucht. Wo nichts rot ist, ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Rehearsing the {form}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Wird geprobt: {form}</translation>
    </message>
    <message>
        <source>Renew it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Erneuere ihn noch einmal.</translation>
    </message>
    <message>
        <source>Renew it first, or revoke it if nobody needs it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Erneuere es zuerst, oder widerrufe es, wenn niemand es braucht.</translation>
    </message>
    <message>
        <source>Renewing</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Erneuern</translation>
    </message>
    <message>
        <source>Renewing {title} ({done} of {count})</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>{title} wird erneuert ({done} von {count})</translation>
    </message>
    <message>
        <source>Replace it: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ersetz ihn: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>Replace the pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Ersetz den Pass.</translation>
    </message>
    <message>
        <source>Report it to the police, if it was stolen</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Bei der Polizei melden, wenn es gestohlen wurde</translation>
    </message>
    <message>
        <source>Revocation list {number} was signed, good until {day}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Sperrliste Nr. {number} wurde signiert, gültig bis {day}.</translation>
    </message>
    <message>
        <source>Revoke for good cannot be taken back. The device then needs a new pass.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein endgültiger Widerruf lässt sich nicht zurücknehmen. Das Gerät braucht dann einen neuen Pass.</translation>
    </message>
    <message>
        <source>Revoke those passes first, or go on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Widerrufe zuerst diese Pässe, oder mach weiter.</translation>
    </message>
    <message>
        <source>Running the gateway’s command</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der Befehl des Gateways läuft</translation>
    </message>
    <message>
        <source>SHA-256 of the CA certificate’s DER, hexadecimal.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>SHA-256 des DER des CA-Zertifikats, hexadezimal.</translation>
    </message>
    <message>
        <source>Saving</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Wird gespeichert</translation>
    </message>
    <message>
        <source>Say anew where the gateway is; its key is then shown to be compared.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Sag neu, wo das Gateway ist; dann wird sein Schlüssel zum Vergleichen gezeigt.</translation>
    </message>
    <message>
        <source>Say for which: --device DEVICE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sag, für welches: --device DEVICE.</translation>
    </message>
    <message>
        <source>Say it once, on the gateway’s page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Sag es einmal, auf der Seite des Gateways.</translation>
    </message>
    <message>
        <source>Say it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sag es einmal: im Fenster unter Gateway, oder hearthkey gateway --ssh HOST --folder FOLDER.</translation>
    </message>
    <message>
        <source>Say split (devices reach home only) or full (all their traffic goes through home).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sag split (Geräte erreichen nur, was zu Hause ist) oder full (ihr ganzer Verkehr geht über zu Hause).</translation>
    </message>
    <message>
        <source>Say that the device has it once it gets in. The key is then erased here and exists on the device alone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Sag, dass das Gerät es hat, sobald es hineinkommt. Dann wird der Schlüssel hier gelöscht, und es gibt ihn nur noch auf dem Gerät.</translation>
    </message>
    <message>
        <source>Say whose and which.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sag, von wem und welches.</translation>
    </message>
    <message>
        <source>Scan it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne ihn noch einmal.</translation>
    </message>
    <message>
        <source>Scan it too; the order does not matter.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne ihn auch; die Reihenfolge ist gleich.</translation>
    </message>
    <message>
        <source>Scan the codes of one bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne die Codes eines einzigen Bündels.</translation>
    </message>
    <message>
        <source>Scan the codes that the app drew.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne die Codes, die die App gezeichnet hat.</translation>
    </message>
    <message>
        <source>Scan the page as PNG or JPEG, or type its lines into a text file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne die Seite als PNG oder JPEG, oder tipp ihre Zeilen in eine Textdatei.</translation>
    </message>
    <message>
        <source>Scan the page once more, or type only these lines into a text file and give it along with the rest.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne die Seite noch einmal, oder tipp nur diese Zeilen in eine Textdatei, und gib sie zusammen mit dem Rest an.</translation>
    </message>
    <message>
        <source>Scan the page with the codes again, straight, at 200 dots to an inch or more; or type the lines.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Scanne die Seite mit den Codes noch einmal, gerade, mit 200 Punkten je Zoll (dpi) oder mehr; oder tipp die Zeilen ab.</translation>
    </message>
    <message>
        <source>Sealed copies have a passphrase of their own, and this is not it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die versiegelten Kopien haben eine eigene Passphrase, und das ist sie nicht.</translation>
    </message>
    <message>
        <source>Sealed copies, sticks and sheets that they keep</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Versiegelte Kopien, Sticks und Blätter, die bei der Person liegen</translation>
    </message>
    <message>
        <source>Sealed {done} of {count}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Versiegelt: {done} von {count}</translation>
    </message>
    <message>
        <source>Secrets are hidden on the screen and written into the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Geheimnisse sind auf dem Bildschirm verborgen und werden in die Datei geschrieben.</translation>
    </message>
    <message>
        <source>Secrets in your own templates</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Geheimnisse in deinen eigenen Vorlagen</translation>
    </message>
    <message>
        <source>See to that, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh danach, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>See to the disk and the folder’s permissions, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach der Festplatte und den Rechten des Ordners, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>See to the disk and the folder’s permissions.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Sieh nach der Festplatte und den Rechten des Ordners.</translation>
    </message>
    <message>
        <source>See to the permissions of that folder, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach den Rechten dieses Ordners, dann liefere noch einmal.</translation>
    </message>
    <message>
        <source>See whether it is switched on and this computer is in its network, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob es eingeschaltet ist und dieser Computer in seinem Netz ist, dann liefere noch einmal.</translation>
    </message>
    <message>
        <source>See whether sftp gets there by itself and can write into that folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob sftp von selbst dorthin kommt und in diesen Ordner schreiben kann.</translation>
    </message>
    <message>
        <source>See whether ssh gets there by itself, without a question; a key with a passphrase has to be in the agent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob ssh von selbst dorthin kommt, ohne Rückfrage; ein Schlüssel mit Passphrase muss im Agenten sein.</translation>
    </message>
    <message>
        <source>See whether the name is spelt right and this computer is in the home network.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob der Name richtig geschrieben ist und dieser Computer im Netz zu Hause ist.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, or found the household with --key-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Stell den eigenen Schlüsselbund des Desktops ein, oder gründe den Haushalt mit --key-file.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, or keep the key in a file.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Stell den eigenen Schlüsselbund des Desktops ein, oder bewahre den Schlüssel in einer Datei auf.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, then do it again.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Stell den eigenen Schlüsselbund des Desktops ein, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Several certificates have one serial number.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Mehrere Zertifikate haben dieselbe Seriennummer.</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kürze es.</translation>
    </message>
    <message>
        <source>Sign one: hearthkey lists --sign.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Signiere eine: hearthkey lists --sign.</translation>
    </message>
    <message>
        <source>Sign the next one: hearthkey lists --sign, and bring it to the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Signiere die nächste: hearthkey lists --sign, und bring sie zum Gateway.</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jemand übernimmt</translation>
    </message>
    <message>
        <source>Somebody tried 20 wrong links, the last time from {address}. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Jemand hat 20 falsche Links versucht, zuletzt von {address}. Der Abholschein ist geschlossen.</translation>
    </message>
    <message>
        <source>Something happened that nobody thought of ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Es geschah etwas, woran niemand gedacht hat ({seen}).</translation>
    </message>
    <message>
        <source>Something is no plain file.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Etwas ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <source>Start it in a desktop, or use the verbs: hearthkey --help.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Starte sie in einem Desktop, oder nimm die Befehle: hearthkey --help.</translation>
    </message>
    <message>
        <source>Start it in the desktop where the household lives. For a new household without a keyring: found --key-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Starte sie in dem Desktop, in dem der Haushalt wohnt. Für einen neuen Haushalt ohne Schlüsselbund: found --key-file.</translation>
    </message>
    <message>
        <source>Start it with sh packaging/run.sh, or use the verbs: hearthkey --help.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Starte sie mit sh packaging/run.sh, oder nimm die Befehle: hearthkey --help.</translation>
    </message>
    <message>
        <source>Start with hearthkey found, or name another folder with --data.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Fang an mit hearthkey found, oder nenn mit --data einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Stop now keeps the device out for the time being; it can be let back in on the same page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>„Jetzt sperren“ hält das Gerät vorläufig draußen; auf derselben Seite kann es wieder eingelassen werden.</translation>
    </message>
    <message>
        <source>Strict devices and gateways turn all passes away. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Strenge Geräte und Gateways weisen alle Pässe ab. Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Strict devices do not connect. The gateway gets a new certificate at the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Strenge Geräte verbinden sich nicht. Bei der Übernahme bekommt das Gateway ein neues Zertifikat.</translation>
    </message>
    <message>
        <source>Strict gateways let nobody in. The take-over signs a new one.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Strenge Gateways lassen niemanden ein. Bei der Übernahme wird eine neue signiert.</translation>
    </message>
    <message>
        <source>Strict gateways turn it away. The device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Strenge Gateways weisen es ab. Das Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>Tags are {known}. A template knows slots, if, for, raw and filters: no calls, no arithmetic, no other files.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Anweisungen sind {known}. Eine Vorlage kennt Platzhalter, if, for, raw und Filter: keine Aufrufe, kein Rechnen, keine anderen Dateien.</translation>
    </message>
    <message>
        <source>Take a copy that was made while set {seen} was in use, or parts of set {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine Kopie, die gemacht wurde, als Satz {seen} galt, oder Teile des Satzes {wanted}.</translation>
    </message>
    <message>
        <source>Take a name from the IANA registry of IKEv2 parameters, for instance ENCR_AES_GCM_16 256.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm einen Namen aus dem IANA-Register der IKEv2-Parameter, zum Beispiel ENCR_AES_GCM_16 256.</translation>
    </message>
    <message>
        <source>Take a newer copy, or the household’s passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine neuere Kopie oder die Passphrase des Haushalts.</translation>
    </message>
    <message>
        <source>Take a picture of the one square code on the part’s sheet, or type its words.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ein Bild des einen quadratischen Codes auf dem Blatt des Teils auf oder tippe seine Wörter.</translation>
    </message>
    <message>
        <source>Take another paper or a sealed copy, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ein anderes Papier oder eine versiegelte Kopie, und frag dort nach, von wo du dieses hast.</translation>
    </message>
    <message>
        <source>Take another paper, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ein anderes Papier, und frag dort nach, von wo du dieses hast.</translation>
    </message>
    <message>
        <source>Take it apart into simpler lines.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zerleg es in einfachere Zeilen.</translation>
    </message>
    <message>
        <source>Take it from the list that the command ip link shows; it has at most {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ihn aus der Liste, die der Befehl ip link zeigt; er hat höchstens {limit} Zeichen.</translation>
    </message>
    <message>
        <source>Take it out.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm es heraus.</translation>
    </message>
    <message>
        <source>Take the picture again, sharp and with the white margin.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm das Bild noch einmal auf, scharf und mit dem weißen Rand.</translation>
    </message>
    <message>
        <source>Take the renewal back on the device’s page, as long as the bundle waits in the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm die Erneuerung auf der Seite des Geräts zurück, solange das Bündel in der Ablage wartet.</translation>
    </message>
    <message>
        <source>Take the seven words that the app offers, or a longer one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm die sieben Wörter, die die App vorschlägt, oder eine längere.</translation>
    </message>
    <message>
        <source>Take the seven words that the app offers, or add unrelated words to yours.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm die sieben Wörter, die die App vorschlägt, oder zu deinen noch Wörter dazu, die nichts miteinander zu tun haben.</translation>
    </message>
    <message>
        <source>Taking over would let it back in.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eine Übernahme würde es wieder einlassen.</translation>
    </message>
    <message>
        <source>Tell the bank</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Der Bank Bescheid geben</translation>
    </message>
    <message>
        <source>Tell the employer, if it is theirs</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Dem Betrieb Bescheid geben, wenn es ihm gehört</translation>
    </message>
    <message>
        <source>That does no harm: devices trust its key, and not the signature on itself.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das schadet nicht: Geräte vertrauen dem Schlüssel der CA, nicht ihrer Signatur unter sich selbst.</translation>
    </message>
    <message>
        <source>The CA cannot vouch for the next one, so that devices would turn away from the gateway. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die CA kann nicht für die nächste bürgen; Geräte würden das Gateway meiden. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>The CA ended on {end}; nothing that it signed counts after that day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die CA ist am {end} abgelaufen; nach diesem Tag gilt nichts mehr, was sie signiert hat.</translation>
    </message>
    <message>
        <source>The CA here was certified by another one, and that one is not here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die CA hier wurde von einer anderen bestätigt, und die ist nicht hier.</translation>
    </message>
    <message>
        <source>The CA is {name}, {type}, and ends on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die CA ist {name}, {type}, und läuft am {end} ab.</translation>
    </message>
    <message>
        <source>The CA key does not belong to the CA certificate.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Der CA-Schlüssel gehört nicht zum CA-Zertifikat.</translation>
    </message>
    <message>
        <source>The CA key in the keyring is written in a way that paper cannot carry ({length} characters).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der CA-Schlüssel im Schlüsselbund ist so geschrieben, dass er nicht auf Papier geht ({length} Zeichen).</translation>
    </message>
    <message>
        <source>The CA key is there, encrypted; the passphrase opens it.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der CA-Schlüssel ist da, verschlüsselt; die Passphrase öffnet ihn.</translation>
    </message>
    <message>
        <source>The CA key on this paper belongs to another household than the rest of it. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der CA-Schlüssel auf diesem Papier gehört zu einem anderen Haushalt als der Rest. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The CA key text came out too long for a keyring.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Der Text des CA-Schlüssels wurde zu lang für einen Schlüsselbund.</translation>
    </message>
    <message>
        <source>The CA key that opened belongs to another household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der CA-Schlüssel, der sich öffnen ließ, gehört zu einem anderen Haushalt.</translation>
    </message>
    <message>
        <source>The CA’s certificate allows no CA below it (path length 0).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA erlaubt keine CA unter ihr (Pfadlänge 0).</translation>
    </message>
    <message>
        <source>The CA’s certificate begins on {begin} only.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA beginnt erst am {begin}.</translation>
    </message>
    <message>
        <source>The CA’s certificate does not allow it to sign certificates ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA erlaubt ihr nicht, Zertifikate zu signieren ({name}).</translation>
    </message>
    <message>
        <source>The CA’s certificate does not allow it to sign revocation lists ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA erlaubt ihr nicht, Sperrlisten zu signieren ({name}).</translation>
    </message>
    <message>
        <source>The CA’s certificate ended on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA ist am {end} abgelaufen.</translation>
    </message>
    <message>
        <source>The CA’s certificate ends on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA läuft am {end} ab.</translation>
    </message>
    <message>
        <source>The CA’s certificate has no key identifier.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA hat keine Schlüsselkennung.</translation>
    </message>
    <message>
        <source>The CA’s certificate is signed with {hash}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat der CA ist mit {hash} signiert.</translation>
    </message>
    <message>
        <source>The CA’s key is a published test key ({name}): anybody can read it in RFC 9500.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der Schlüssel der CA ist ein veröffentlichter Testschlüssel ({name}): Alle können ihn in RFC 9500 lesen.</translation>
    </message>
    <message>
        <source>The CA’s key is of a kind that is not used here ({type}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der Schlüssel der CA ist von einer Art, die hier nicht benutzt wird ({type}).</translation>
    </message>
    <message>
        <source>The CA’s key is too short ({type}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der Schlüssel der CA ist zu kurz ({type}).</translation>
    </message>
    <message>
        <source>The CA’s private key is not here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der private Schlüssel der CA ist nicht hier.</translation>
    </message>
    <message>
        <source>The CA’s private key is not open.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der private Schlüssel der CA ist nicht aufgeschlossen.</translation>
    </message>
    <message>
        <source>The CA’s private key lies here without a passphrase.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Der private Schlüssel der CA liegt hier ohne Passphrase.</translation>
    </message>
    <message>
        <source>The DNS server {subject} lies outside the home and tunnel subnets. Questions about names at home will leave the house.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Der DNS-Server {subject} liegt außerhalb der Subnetze zu Hause und im Tunnel. Fragen nach Namen zu Hause werden das Haus verlassen.</translation>
    </message>
    <message>
        <source>The Wi-Fi’s password</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Das Passwort des WLANs</translation>
    </message>
    <message>
        <source>The address {address} could not be used ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Adresse {address} ließ sich nicht benutzen ({seen}).</translation>
    </message>
    <message>
        <source>The archive holds a file named {member}, which would land outside its folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Archiv enthält eine Datei namens {member}, die außerhalb seines Ordners landen würde.</translation>
    </message>
    <message>
        <source>The archive holds {count} files; a bundle’s has a handful.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Archiv enthält {count} Dateien; das eines Bündels hat eine Handvoll.</translation>
    </message>
    <message>
        <source>The archive holds {member}, which does not belong into a bundle’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Archiv enthält {member}; das gehört nicht in das eines Bündels.</translation>
    </message>
    <message>
        <source>The archive holds {names}; bundle file, PKCS#12 and CA certificate belong together.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Archiv enthält {names}; Bündeldatei, PKCS#12 und CA-Zertifikat gehören zusammen.</translation>
    </message>
    <message>
        <source>The archive would unpack to {size} octets or more; a bundle’s never does.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Archiv wäre entpackt {size} Byte groß oder mehr; das eines Bündels ist es nie.</translation>
    </message>
    <message>
        <source>The built-in client of {subject} is known to sign with RSA. It may refuse this key.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Der eingebaute Client signiert bekanntlich mit RSA ({subject}). Er könnte diesen Schlüssel ablehnen.</translation>
    </message>
    <message>
        <source>The bundle of {title} was picked up by {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Das Bündel wurde von {address} abgeholt.</translation>
    </message>
    <message>
        <source>The bundle of {title} was rehearsed and offered for pick-up at {address}, as {forms}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Das Bündel wurde geprobt und unter {address} zum Abholen angeboten, als {forms}.</translation>
    </message>
    <message>
        <source>The bundle of {title} was rehearsed and written as {form}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title}: Das Bündel wurde geprobt und geschrieben, als {form}.</translation>
    </message>
    <message>
        <source>The bundle that waits for {title} is erased here, and its pass never gets in. The pass that it was to follow stays as it is.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: Das Bündel, das wartet, wird hier gelöscht, und sein Pass kommt nie hinein. Der Pass, auf den er folgen sollte, bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>The bundle was written in version {version}, which this app does not know.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Bündel wurde in Version {version} geschrieben, die diese App nicht kennt.</translation>
    </message>
    <message>
        <source>The button under the first sentence is the next thing to do. Where there is none, all is done.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Knopf unter dem ersten Satz ist das Nächste, was zu tun ist. Wo keiner ist, ist alles getan.</translation>
    </message>
    <message>
        <source>The certificate breaks a rule of RFC 5280 ({seen}). A strict gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Zertifikat bricht eine Regel von RFC 5280 ({seen}). Ein strenges Gateway wird es nicht einlassen.</translation>
    </message>
    <message>
        <source>The certificate cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Zertifikat lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The certificate is about {names}, not about {expected}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Zertifikat lautet auf {names}, nicht auf {expected}.</translation>
    </message>
    <message>
        <source>The certificate is meant for another use than this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Zertifikat ist für eine andere Verwendung gedacht als diese.</translation>
    </message>
    <message>
        <source>The certificate that signed the others does not say that it is a CA ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat, das die anderen signiert hat, sagt nicht, dass es eine CA ist ({name}).</translation>
    </message>
    <message>
        <source>The certificate was not signed by this household’s CA ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Zertifikat wurde nicht von der CA dieses Haushalts signiert ({seen}). Das Gateway wird es nicht einlassen.</translation>
    </message>
    <message>
        <source>The choices for the gateway’s files were changed; they take effect with the next delivery.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Die Auswahl für die Dateien des Gateways wurde geändert; sie wirkt mit der nächsten Lieferung.</translation>
    </message>
    <message>
        <source>The codes were drawn by a newer app.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Codes wurden von einer neueren App gezeichnet.</translation>
    </message>
    <message>
        <source>The command after a delivery has a character in it that cannot be seen, or is over 500 characters: {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Befehl nach einer Lieferung enthält ein Zeichen, das nicht zu sehen ist, oder hat mehr als 500 Zeichen: {text}.</translation>
    </message>
    <message>
        <source>The connection to {where} ended in the middle ({seen}). The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Verbindung zu {where} brach mittendrin ab ({seen}). Das Gateway hat einen ganzen Satz, den alten oder den neuen.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) is gone, as was said here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Die Kopie für {title} vom {day} ({what}) ist weg, so wurde es hier gesagt.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) is not gone after all.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Die Kopie für {title} vom {day} ({what}) ist doch nicht weg.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) was deleted here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Die Kopie für {title} vom {day} ({what}) wurde hier gelöscht.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) was looked for and is not there any more.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Die Kopie für {title} vom {day} ({what}) wurde gesucht und ist nicht mehr da.</translation>
    </message>
    <message>
        <source>The database names a certificate that is not here, and that has not ended.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die Datenbank nennt ein Zertifikat, das nicht hier ist und das nicht abgelaufen ist.</translation>
    </message>
    <message>
        <source>The device’s certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Das Zertifikat des Geräts, PEM (RFC 7468 section 5).</translation>
    </message>
    <message>
        <source>The device’s identity, a code (ID_FQDN, RFC 7296 section 3.5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Kennung des Geräts, ein Code (ID_FQDN, RFC 7296 section 3.5).</translation>
    </message>
    <message>
        <source>The device’s private key, not encrypted, PEM (RFC 7468 section 10).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Der private Schlüssel des Geräts, nicht verschlüsselt, PEM (RFC 7468 section 10).</translation>
    </message>
    <message>
        <source>The device’s secret beside the certificate (RFC 8784), base64.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Das Geheimnis des Geräts neben dem Zertifikat (RFC 8784), base64.</translation>
    </message>
    <message>
        <source>The diary</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das Tagebuch</translation>
    </message>
    <message>
        <source>The diary does not fit together from entry {number} on.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Das Tagebuch passt ab Eintrag {number} nicht mehr zusammen.</translation>
    </message>
    <message>
        <source>The disk is full ({path}). Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Festplatte ist voll ({path}). Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The disk of {where} is full ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Festplatte von {where} ist voll ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>The double rule is the end of the revocation list: behind it nobody gets in without the next one.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die Doppellinie ist das Ende der Sperrliste: Dahinter kommt ohne die nächste niemand hinein.</translation>
    </message>
    <message>
        <source>The download broke off 3 times. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Das Herunterladen brach 3-mal ab. Der Abholschein ist geschlossen.</translation>
    </message>
    <message>
        <source>The download to {address} broke off; it can be tried again.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Das Herunterladen durch {address} brach ab; es kann noch einmal versucht werden.</translation>
    </message>
    <message>
        <source>The file asks for {rounds} rounds of key stretching, more than any honest file does. It was not opened.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Datei verlangt {rounds} Runden beim Strecken des Schlüssels, mehr als jede ehrliche Datei. Sie wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>The file name can grow to {length} characters; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Dateiname kann auf {length} Zeichen wachsen; {limit} sind das Höchste.</translation>
    </message>
    <message>
        <source>The file was cut off or edited. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Datei wurde abgeschnitten oder verändert. Lass dir von dort, wo sie herkommt, eine neue geben, oder schreib sie noch einmal aus der Ablage.</translation>
    </message>
    <message>
        <source>The file was damaged on its way. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Datei wurde unterwegs beschädigt. Lass dir von dort, wo sie herkommt, eine neue geben, oder schreib sie noch einmal aus der Ablage.</translation>
    </message>
    <message>
        <source>The file was edited, or made by a newer app. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Datei wurde verändert oder stammt von einer neueren App. Lass dir von dort, wo sie herkommt, eine neue geben, oder schreib sie noch einmal aus der Ablage.</translation>
    </message>
    <message>
        <source>The first line names the columns person,device,kind and, if wanted, until and guest; each line has them all.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die erste Zeile nennt die Spalten person,device,kind und, wenn gewünscht, until und guest; jede Zeile hat sie alle.</translation>
    </message>
    <message>
        <source>The folder &quot;{text}&quot; cannot be written into the web server’s settings.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Ordner „{text}“ lässt sich nicht in die Einstellungen des Webservers schreiben.</translation>
    </message>
    <message>
        <source>The folder {where} is not there ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Ordner {where} ist nicht da ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>The folder’s name has a character in it that cannot be seen: {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Name des Ordners enthält ein Zeichen, das nicht zu sehen ist: {text}.</translation>
    </message>
    <message>
        <source>The gateway</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das Gateway</translation>
    </message>
    <message>
        <source>The gateway decides who gets in, by the list that it holds. A stop counts once the list there says so.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das Gateway entscheidet, wer hineinkommt, nach der Liste, die es hat. Eine Sperre zählt, sobald die Liste dort es sagt.</translation>
    </message>
    <message>
        <source>The gateway gets a new certificate; until it is delivered, the old one goes on.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Das Gateway bekommt ein neues Zertifikat; bis das geliefert ist, läuft das alte weiter.</translation>
    </message>
    <message>
        <source>The gateway gets a new key and certificate with the next delivery.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Das Gateway bekommt mit der nächsten Lieferung einen neuen Schlüssel und ein neues Zertifikat.</translation>
    </message>
    <message>
        <source>The gateway goes by it from the next delivery on.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Das Gateway richtet sich ab der nächsten Lieferung danach.</translation>
    </message>
    <message>
        <source>The gateway got a certificate of the new CA until {day}. New passes are the new CA’s.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Das Gateway hat ein Zertifikat der neuen CA bis {day} bekommen. Neue Pässe kommen von der neuen CA.</translation>
    </message>
    <message>
        <source>The gateway got a certificate of the old CA again, until {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Das Gateway hat wieder ein Zertifikat der alten CA bekommen, bis {day}.</translation>
    </message>
    <message>
        <source>The gateway got a new certificate for {host} until {day}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Das Gateway hat ein neues Zertifikat für {host} bekommen, bis {day}.</translation>
    </message>
    <message>
        <source>The gateway held a list that this computer did not know. Stopped or revoked by it, and now here too: {subject}.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Das Gateway hatte eine Liste, die dieser Computer nicht kannte. Durch sie gesperrt oder widerrufen, und jetzt auch hier: {subject}.</translation>
    </message>
    <message>
        <source>The gateway held revocation list {number}, which this computer did not know.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Das Gateway hatte Sperrliste Nr. {number}, die dieser Computer nicht kannte.</translation>
    </message>
    <message>
        <source>The gateway held revocation list {number}, which this computer did not know. Stopped or revoked by it, and now here too: {names}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Das Gateway hatte Sperrliste Nr. {number}, die dieser Computer nicht kannte. Durch sie gesperrt oder widerrufen, und jetzt auch hier: {names}.</translation>
    </message>
    <message>
        <source>The gateway holds list no. {number}, newer than no. {newest} here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Das Gateway hat Liste Nr. {number}, neuer als Nr. {newest} hier.</translation>
    </message>
    <message>
        <source>The gateway holds list no. {number}; list no. {newest} waits here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Das Gateway hat Liste Nr. {number}; Liste Nr. {newest} wartet hier.</translation>
    </message>
    <message>
        <source>The gateway holds list {number}, newer than any that is here. Whom it stops is stopped here now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Gateway hat Liste Nr. {number}, neuer als alle hier. Wen sie sperrt, der ist jetzt auch hier gesperrt.</translation>
    </message>
    <message>
        <source>The gateway is out of reach; it held list no. {number} when it was last read.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Das Gateway ist nicht erreichbar; als es zuletzt gelesen wurde, hatte es Liste Nr. {number}.</translation>
    </message>
    <message>
        <source>The gateway keeps its certificate.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Das Gateway behält sein Zertifikat.</translation>
    </message>
    <message>
        <source>The gateway shows the host key {seen}, not {wanted}. Nothing was sent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Gateway zeigt den Hostschlüssel {seen}, nicht {wanted}. Es wurde nichts gesendet.</translation>
    </message>
    <message>
        <source>The gateway trusts the old CA and the new one.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Das Gateway vertraut der alten CA und der neuen.</translation>
    </message>
    <message>
        <source>The gateway’s certificate does not carry its name where devices look for it (subject alternative name).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat des Gateways hat dessen Namen nicht dort, wo Geräte danach suchen (subject alternative name).</translation>
    </message>
    <message>
        <source>The gateway’s certificate ends on {day}. After that devices turn away from it.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Das Zertifikat des Gateways läuft am {day} ab. Danach meiden es die Geräte.</translation>
    </message>
    <message>
        <source>The gateway’s certificate is meant for another use.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Das Zertifikat des Gateways ist für einen anderen Zweck gedacht.</translation>
    </message>
    <message>
        <source>The gateway’s certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Das Zertifikat des Gateways, PEM (RFC 7468 section 5).</translation>
    </message>
    <message>
        <source>The gateway’s clock is {subject} seconds off. Certificates begin and end by it: have it set by the network.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Die Uhr des Gateways geht um {subject} Sekunden falsch. Zertifikate beginnen und enden nach ihr: Lass sie vom Netz stellen.</translation>
    </message>
    <message>
        <source>The gateway’s command ended with {status} and said: {said}. The set of before was put back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Befehl des Gateways endete mit {status} und sagte: {said}. Der vorige Satz ist wieder eingesetzt.</translation>
    </message>
    <message>
        <source>The gateway’s file name &quot;{text}&quot; holds {mark}, and the gateway is no device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Dateiname „{text}“ für das Gateway enthält {mark}, und das Gateway ist kein Gerät.</translation>
    </message>
    <message>
        <source>The gateway’s files go to {where} from now on.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Die Dateien des Gateways gehen von jetzt an dorthin: {where}.</translation>
    </message>
    <message>
        <source>The gateway’s files need a folder to go to.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Dateien des Gateways brauchen einen Ordner, in den sie gehen.</translation>
    </message>
    <message>
        <source>The gateway’s files with revocation list {number} were written to {where}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Die Dateien des Gateways mit Sperrliste Nr. {number} wurden nach {where} geschrieben.</translation>
    </message>
    <message>
        <source>The gateway’s key lies in it without a passphrase, because the gateway starts unattended. Carry it on nothing that others read, and wipe it afterwards.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Der Schlüssel des Gateways liegt ohne Passphrase darin, weil das Gateway unbeaufsichtigt startet. Trag ihn auf nichts, was andere lesen, und lösche ihn danach gründlich.</translation>
    </message>
    <message>
        <source>The gateway’s list</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Die Liste des Gateways</translation>
    </message>
    <message>
        <source>The gateway’s list is of a CA that is not known here. Nothing was changed there, for a list from here could let revoked devices in again and lock newer ones out. Until this is settled, no stop gets there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Liste am Gateway ist von einer CA, die hier nicht bekannt ist. Dort wurde nichts geändert, denn eine Liste von hier könnte widerrufene Geräte wieder hereinlassen und neuere aussperren. Bis das geklärt ist, kommt keine Sperre dort an.</translation>
    </message>
    <message>
        <source>The gateway’s private key, not encrypted, PEM (RFC 7468 section 10).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Der private Schlüssel des Gateways, nicht verschlüsselt, PEM (RFC 7468 section 10).</translation>
    </message>
    <message>
        <source>The home subnets leave no private addresses over for the tunnel (RFC 1918).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Subnetze zu Hause lassen keine privaten Adressen für den Tunnel übrig (RFC 1918).</translation>
    </message>
    <message>
        <source>The host key of {where} was never compared, so nothing was sent to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Hostschlüssel von {where} wurde nie verglichen, also wurde nichts dorthin gesendet.</translation>
    </message>
    <message>
        <source>The house is reached at {host}, and the gateway gets a new certificate for that name.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Das Haus ist unter {host} erreichbar, und das Gateway bekommt ein neues Zertifikat für diesen Namen.</translation>
    </message>
    <message>
        <source>The house stands; nobody gets in at present. On {day} {what} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Das Haus steht; zurzeit kommt niemand hinein. Am {day} läuft {what} ab.</translation>
    </message>
    <message>
        <source>The household</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Haushalt</translation>
    </message>
    <message>
        <source>The household is called {name} from now on; certificates keep the name they were made with.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Der Haushalt heißt von jetzt an {name}; Zertifikate behalten den Namen, mit dem sie erstellt wurden.</translation>
    </message>
    <message>
        <source>The household is locked.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Haushalt ist verschlossen.</translation>
    </message>
    <message>
        <source>The household’s CA certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Das CA-Zertifikat des Haushalts, PEM (RFC 7468 section 5).</translation>
    </message>
    <message>
        <source>The household’s key was put on paper, as {place}.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>Der Schlüssel des Haushalts kam auf Papier, als {place}.</translation>
    </message>
    <message>
        <source>The household’s key was put on paper, at the printer.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>Der Schlüssel des Haushalts kam auf Papier, beim Drucker.</translation>
    </message>
    <message>
        <source>The household’s name, as it stands in its certificates.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Der Name des Haushalts, wie er in seinen Zertifikaten steht.</translation>
    </message>
    <message>
        <source>The household’s paper was to carry something that is not DER.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Auf das Papier des Haushalts sollte etwas, das kein DER ist.</translation>
    </message>
    <message>
        <source>The household’s passphrase, if they knew it</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Die Passphrase des Haushalts, falls die Person sie kannte</translation>
    </message>
    <message>
        <source>The household’s settings are too long for one sheet: {lines} lines, and there is room for {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Einstellungen des Haushalts sind zu lang für ein Blatt: {lines} Zeilen, und Platz ist für {limit}.</translation>
    </message>
    <message>
        <source>The household’s settings were changed meanwhile, so what was looked at holds no longer.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Einstellungen des Haushalts wurden inzwischen geändert, also gilt nicht mehr, was angesehen wurde.</translation>
    </message>
    <message>
        <source>The household’s settings were changed: {changed}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Die Einstellungen des Haushalts wurden geändert: {changed}.</translation>
    </message>
    <message>
        <source>Making {count} keys</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>{count} Schlüssel werden erstellt</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; in {file} will not do as a kind’s name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„{text}“ in {file} taugt nicht als Name einer Geräteart.</translation>
    </message>
    <message>
        <source>A copy holds everything that this computer knows, so that another one can take over.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eine Kopie enthält alles, was dieser Computer weiß, damit ein anderer übernehmen kann.</translation>
    </message>
    <message>
        <source>A copy of a pass that was revoked or has ended opens nothing any more.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die Kopie eines Passes, der widerrufen wurde oder abgelaufen ist, öffnet nichts mehr.</translation>
    </message>
    <message>
        <source>A link lives {minutes} minutes at most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Link lebt höchstens {minutes} Minuten.</translation>
    </message>
    <message>
        <source>A name and a number are enough.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ein Name und eine Nummer genügen.</translation>
    </message>
    <message>
        <source>A part of it is still there, just as it was written.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Ein Teil davon ist noch da, genau so, wie er geschrieben wurde.</translation>
    </message>
    <message>
        <source>A profile cannot say what protects this tunnel ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Profil kann nicht angeben, was diesen Tunnel schützt ({seen}).</translation>
    </message>
    <message>
        <source>A script cannot say what protects this tunnel ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ein Skript kann nicht angeben, was diesen Tunnel schützt ({seen}).</translation>
    </message>
    <message>
        <source>A set-up script comes with one PKCS#12 file beside it, and these are {names}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zu einem Einrichtungsskript gehört eine einzige PKCS#12-Datei, und das hier sind {names}.</translation>
    </message>
    <message>
        <source>A stick may keep what was deleted until something else is written there. That is why the passphrase never travels with the bundle.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein Stick behält vielleicht, was gelöscht wurde, bis dort etwas anderes geschrieben wird. Darum reist die Passphrase nie mit dem Bündel.</translation>
    </message>
    <message>
        <source>A stick needs no network.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Ein Stick braucht kein Netz.</translation>
    </message>
    <message>
        <source>A test in the Wi-Fi at home shows little. What counts is the way in from outside: Wi-Fi off, connect, open the link.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein Versuch im WLAN zu Hause zeigt wenig. Es zählt der Weg hinein von außen: WLAN aus, verbinden, den Link öffnen.</translation>
    </message>
    <message>
        <source>Add it; the page device-kind-1.md tells what it means.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Füg es hinzu; die Seite device-kind-1.md sagt, was es bedeutet.</translation>
    </message>
    <message>
        <source>Add {text} to forms, or take [[steps.{text}]] out.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Füg {text} bei forms hinzu, oder nimm [[steps.{text}]] heraus.</translation>
    </message>
    <message>
        <source>An open ring means: nobody knows whether that copy is gone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ein offener Ring heißt: Niemand weiß, ob diese Kopie weg ist.</translation>
    </message>
    <message>
        <source>At home: nothing proved yet. {address} is in the network at home, not in the tunnel. Wi-Fi off, connect, then open the link again.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Zu Hause: Noch ist nichts nachgewiesen. {address} liegt im Netz zu Hause, nicht im Tunnel. WLAN aus, verbinden, dann den Link noch einmal öffnen.</translation>
    </message>
    <message>
        <source>Begin with the next CA</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Mit der nächsten CA anfangen</translation>
    </message>
    <message>
        <source>Call the file {name}.toml.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn die Datei {name}.toml.</translation>
    </message>
    <message>
        <source>Change it by hand, and deliver that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ändere es von Hand, und liefere das.</translation>
    </message>
    <message>
        <source>Change it by hand, as it should be now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ändere es von Hand, so wie es jetzt sein soll.</translation>
    </message>
    <message>
        <source>Change the settings by hand; the app then says whose device needs a new bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ändere die Einstellungen von Hand; die App sagt dann, wessen Gerät ein neues Bündel braucht.</translation>
    </message>
    <message>
        <source>Check that this computer is still in the network, then try again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prüf, ob dieser Computer noch im Netz ist, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Choose another name, so that nothing of yours is lost.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle einen anderen Namen, damit nichts von dir verloren geht.</translation>
    </message>
    <message>
        <source>Choose from {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Zur Wahl steht: {known}.</translation>
    </message>
    <message>
        <source>Choose one of this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle eine dieses Haushalts.</translation>
    </message>
    <message>
        <source>Choose the file that ends in .sealed.tar.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wähle die Datei, die auf .sealed.tar endet.</translation>
    </message>
    <message>
        <source>Compare it with what you remember. The newest sealed copy still has what stood there. If somebody else has used this computer, stop what you do not know.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Vergleich es mit dem, woran du dich erinnerst. In der neuesten versiegelten Kopie steht noch, was dort stand. Hat sonst jemand diesen Computer benutzt, sperr, was du nicht kennst.</translation>
    </message>
    <message>
        <source>Comparing what is in it</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Es wird verglichen, was darin ist</translation>
    </message>
    <message>
        <source>Copies that left</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ausgegebene Kopien</translation>
    </message>
    <message>
        <source>Copy the name as a phone shows it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Übernimm den Namen, wie ein Handy ihn zeigt.</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+E</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+K</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Strg+Umschalt+D</translation>
    </message>
    <message>
        <source>Delete it where it is, then say here that it is gone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lösche sie, wo sie ist, dann sag hier, dass sie weg ist.</translation>
    </message>
    <message>
        <source>Deleting takes the file’s name away. A stick may keep what was in it until something else is written there. If it holds a secret without a passphrase, keep the stick or destroy it.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Löschen nimmt den Namen der Datei weg. Ein Stick behält vielleicht, was darin war, bis dort etwas anderes geschrieben wird. Enthält sie ein Geheimnis ohne Passphrase, bewahre den Stick auf oder zerstöre ihn.</translation>
    </message>
    <message>
        <source>Deleting takes the file’s name away. A stick may keep what was in it until something else is written there; that stays under the bundle’s passphrase.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Löschen nimmt den Namen der Datei weg. Ein Stick behält vielleicht, was darin war, bis dort etwas anderes geschrieben wird; das bleibt unter der Passphrase des Bündels.</translation>
    </message>
    <message>
        <source>Devices in the tunnel reach {home} and nothing else, and {address} is not in there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geräte im Tunnel erreichen {home} und sonst nichts, und {address} gehört nicht dazu.</translation>
    </message>
    <message>
        <source>Every date that ends has a line here before it does: who, by when, how long it takes, and why.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Alles, was abläuft, hat hier vorher eine Zeile: wer, bis wann, wie lange es dauert und warum.</translation>
    </message>
    <message>
        <source>Every file, stick, pick-up and drag by which a bundle left stands here, the newest of each device first.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Jede Datei, jeder Stick, jede Abholung und jedes Ziehen, womit ein Bündel hinausging, steht hier, bei jedem Gerät das Neueste zuerst.</translation>
    </message>
    <message>
        <source>F2</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F2</translation>
    </message>
    <message>
        <source>Files of a copy of {title} were deleted. They do not come back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dateien einer Kopie für {title} wurden gelöscht. Sie kommen nicht zurück.</translation>
    </message>
    <message>
        <source>Forgetting the template {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Das Vergessen der Vorlage {name} wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>From now on {subject} lives on this computer. If the old one comes back to life, stop using the app there: two of them would contradict each other.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Von jetzt an lebt {subject} auf diesem Computer. Erwacht der alte wieder, benutz die App dort nicht mehr: Zwei davon würden einander widersprechen.</translation>
    </message>
    <message>
        <source>Give the diary a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Gib dem Tagebuch einen eigenen Namen.</translation>
    </message>
    <message>
        <source>Give {title} its next pass</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>{title} den nächsten Pass geben</translation>
    </message>
    <message>
        <source>In use, never proved.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>In Gebrauch, nie nachgewiesen.</translation>
    </message>
    <message>
        <source>In use, proved on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>In Gebrauch, nachgewiesen am {day}.</translation>
    </message>
    <message>
        <source>In use, said to work on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>In Gebrauch, geht laut Auskunft vom {day}.</translation>
    </message>
    <message>
        <source>Install the newer app, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Installiere die neuere App, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>It gets in until {day}, and not a day longer.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Es kommt bis {day} hinein, und keinen Tag länger.</translation>
    </message>
    <message>
        <source>It is a guest’s and ends on {day} by itself.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Es ist für einen Gast und läuft am {day} von selbst ab.</translation>
    </message>
    <message>
        <source>It is made after every change, and lies in the data folder. Carry one away: a stick at a friend’s house.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Sie entsteht nach jeder Änderung und liegt im Datenordner. Trag eine weg: auf einem Stick zu Bekannten.</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Sie ist nicht mehr da.</translation>
    </message>
    <message>
        <source>It is still there, just as it was written.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Sie ist noch da, genau so, wie sie geschrieben wurde.</translation>
    </message>
    <message>
        <source>It was handed over on {day}, and nobody has seen it get in from outside.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Es wurde am {day} übergeben, und niemand hat gesehen, dass es von außen hineinkommt.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi at home, then do it again. A stick needs no network.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Geh ins WLAN zu Hause, dann versuch es noch einmal. Ein Stick braucht kein Netz.</translation>
    </message>
    <message>
        <source>Join the network at home with this computer, or let the whole traffic go through home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh mit diesem Computer ins Netz zu Hause, oder lass den ganzen Verkehr über zu Hause gehen.</translation>
    </message>
    <message>
        <source>Keep the one that the device shows.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Behalte die, die das Gerät zeigt.</translation>
    </message>
    <message>
        <source>Keep this copy. Compare the two diaries before anything else is signed here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Behalte diese Kopie. Vergleich die beiden Tagebücher, bevor hier noch etwas signiert wird.</translation>
    </message>
    <message>
        <source>Keeping the template {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Das Behalten der Vorlage {name} wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Leave that address out. If the gateway does hide devices, say so on its page or with hearthkey gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass diese Adresse weg. Verbirgt das Gateway doch Geräte, sag es auf seiner Seite oder mit hearthkey gateway.</translation>
    </message>
    <message>
        <source>Let it back in, or give it a new pass; then prove it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass es wieder ein, oder gib ihm einen neuen Pass; dann weise es nach.</translation>
    </message>
    <message>
        <source>Let its first line be format = &quot;{wanted}&quot;. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die erste Zeile muss format auf {wanted} setzen, in geraden Anführungszeichen. hearthkey kinds --start NAME FILE schreibt eine vollständige Datei, die du nur anpasst.</translation>
    </message>
    <message>
        <source>Let the device back in, or stop it, and deliver that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lass das Gerät wieder ein, oder sperr es, und liefere das.</translation>
    </message>
    <message>
        <source>Let there be at least one and at most {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es muss mindestens eines geben und höchstens {limit}.</translation>
    </message>
    <message>
        <source>Let {title} end, or give it more days</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>{title} ablaufen lassen oder mehr Tage geben</translation>
    </message>
    <message>
        <source>Letting {whom} back in was done again after all, with revocation list {number}.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>{whom}: Das Wiedereinlassen wurde mit Sperrliste Nr. {number} doch wiederholt.</translation>
    </message>
    <message>
        <source>Letting {whom} back in was taken back with revocation list {number}, before it was in force.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>{whom}: Das Wiedereinlassen wurde mit Sperrliste Nr. {number} zurückgenommen, bevor es in Kraft war.</translation>
    </message>
    <message>
        <source>Look at it yourself; once it is gone, say so here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh selbst nach; wenn sie weg ist, sag es hier.</translation>
    </message>
    <message>
        <source>Look at its quotes and brackets there. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh dort auf Anführungszeichen und Klammern. hearthkey kinds --start NAME FILE schreibt eine vollständige Datei, die du nur anpasst.</translation>
    </message>
    <message>
        <source>Look for the gateway’s own address in the network at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Such die eigene Adresse des Gateways im Netz zu Hause.</translation>
    </message>
    <message>
        <source>Look now reads the place again. Only a file that is still exactly what was written can be deleted here.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>„Jetzt nachsehen“ liest den Ort noch einmal. Nur eine Datei, die noch genau das ist, was geschrieben wurde, lässt sich hier löschen.</translation>
    </message>
    <message>
        <source>Look whether it is on, or save the page as PDF and print it elsewhere.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach, ob er an ist, oder speichere die Seite als PDF und druck sie woanders.</translation>
    </message>
    <message>
        <source>Looking at one file</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Eine Datei wird durchgesehen</translation>
    </message>
    <message>
        <source>Looking at {count} files</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>{count} Dateien werden durchgesehen</translation>
    </message>
    <message>
        <source>Make a sealed copy and try it</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Eine versiegelte Kopie machen und ausprobieren</translation>
    </message>
    <message>
        <source>Make room, or take another folder or stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schaff Platz, oder nimm einen anderen Ordner oder Stick.</translation>
    </message>
    <message>
        <source>Name all of them, the device’s certificate before the CA’s, or write them again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn alle, das Zertifikat des Geräts vor dem der CA, oder schreib sie noch einmal.</translation>
    </message>
    <message>
        <source>Name both, or write them again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn beide, oder schreib sie noch einmal.</translation>
    </message>
    <message>
        <source>Name it once, in its order.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn sie nur einmal, an ihrer Stelle.</translation>
    </message>
    <message>
        <source>Name only those at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn nur die zu Hause.</translation>
    </message>
    <message>
        <source>Name the gateway’s own address in the network at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nenn die eigene Adresse des Gateways im Netz zu Hause.</translation>
    </message>
    <message>
        <source>No Wi-Fi is called “{text}”: a name has {limit} octets at most, and nothing that cannot be seen.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kein WLAN heißt „{text}“: Ein Name hat höchstens {limit} Byte, und nichts, was nicht zu sehen ist.</translation>
    </message>
    <message>
        <source>No entry of the diary names {text}. It names: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kein Eintrag im Tagebuch nennt {text}. Genannt sind: {known}.</translation>
    </message>
    <message>
        <source>No kind of device is called {name}.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Keine Geräteart heißt {name}.</translation>
    </message>
    <message>
        <source>No paper is called {text}; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kein Papier heißt {text}; es gibt {known}.</translation>
    </message>
    <message>
        <source>No sealed copy can be made yet: what it is closed with has not been drawn.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Noch lässt sich keine versiegelte Kopie machen: Womit sie verschlossen wird, ist noch nicht erzeugt.</translation>
    </message>
    <message>
        <source>No sealed copy was made this time. What you did counts all the same.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Diesmal entstand keine versiegelte Kopie. Was du getan hast, gilt trotzdem.</translation>
    </message>
    <message>
        <source>No sealed copy was opened for real since {day}. If this computer dies, that is what is left.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Seit {day} wurde keine versiegelte Kopie wirklich geöffnet. Stirbt dieser Computer, ist sie alles, was bleibt.</translation>
    </message>
    <message>
        <source>No sheet can be written in {text}; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In {text} lässt sich kein Blatt schreiben; es gibt {known}.</translation>
    </message>
    <message>
        <source>Nobody called {text} signs profiles; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand namens {text} signiert Profile; es gibt {known}.</translation>
    </message>
    <message>
        <source>Nobody said that the copy {number} is gone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Niemand hat gesagt, dass Kopie Nr. {number} weg ist.</translation>
    </message>
    <message>
        <source>Nothing has arrived yet. Is the device connected, and does the gateway hold its newest files? A firewall on this computer may be closed too.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Noch ist nichts angekommen. Ist das Gerät verbunden, und hat das Gateway seine neuesten Dateien? Vielleicht macht auch eine Firewall auf diesem Computer zu.</translation>
    </message>
    <message>
        <source>Nothing is left to do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist nichts mehr zu tun.</translation>
    </message>
    <message>
        <source>Nothing is offered at {address} ({standing}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Unter {address} wird nichts angeboten ({standing}).</translation>
    </message>
    <message>
        <source>Nothing proved yet. {address} is an address at home: either the device is in the Wi-Fi at home, or the gateway hides it behind its own address. If {address} is the gateway’s, say so, and it counts.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Noch ist nichts nachgewiesen. {address} ist eine Adresse zu Hause: Entweder ist das Gerät im WLAN zu Hause, oder das Gateway verbirgt es hinter seiner eigenen Adresse. Ist {address} die des Gateways, sag es, dann zählt es.</translation>
    </message>
    <message>
        <source>One file went to {where} and was read back. Revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{where}: Eine Datei ging dorthin und wurde zurückgelesen. Sperrliste Nr. {number} ist in Kraft.</translation>
    </message>
    <message>
        <source>Open another.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Öffne einen neuen.</translation>
    </message>
    <message>
        <source>Opening the CA key in it (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Der CA-Schlüssel darin wird geöffnet (mit Absicht langsam)</translation>
    </message>
    <message>
        <source>Opening the copy (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Die Kopie wird geöffnet (mit Absicht langsam)</translation>
    </message>
    <message>
        <source>PEM files</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>PEM-Dateien</translation>
    </message>
    <message>
        <source>Plug the stick in, or make the folder reachable, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Steck den Stick ein, oder mach den Ordner erreichbar, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Nachweisen</translation>
    </message>
    <message>
        <source>Redo: a copy of {whom} is gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Kopie für {whom} ist weg</translation>
    </message>
    <message>
        <source>Redo: a copy of {whom} is not gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Kopie für {whom} ist nicht weg</translation>
    </message>
    <message>
        <source>Redo: forget the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Vorlage {name} vergessen</translation>
    </message>
    <message>
        <source>Redo: keep the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Vorlage {name} behalten</translation>
    </message>
    <message>
        <source>Redo: let {whom} back in</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: {whom} wieder einlassen</translation>
    </message>
    <message>
        <source>Redo: stop {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: {whom} sperren</translation>
    </message>
    <message>
        <source>Redo: the choices for the gateway’s files</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Auswahl für die Dateien des Gateways</translation>
    </message>
    <message>
        <source>Redo: the household’s settings</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Einstellungen des Haushalts</translation>
    </message>
    <message>
        <source>Redo: the language of {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: Sprache von {name}</translation>
    </message>
    <message>
        <source>Redo: where the gateway is</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: wo das Gateway ist</translation>
    </message>
    <message>
        <source>Redo: whom to call</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Wiederholen: wen anrufen</translation>
    </message>
    <message>
        <source>Revoke it to take it back; its key is then erased here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Widerrufe ihn, um ihn zurückzunehmen; sein Schlüssel wird dann hier gelöscht.</translation>
    </message>
    <message>
        <source>Say it in every language: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sag es in jeder Sprache: {known}.</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Versiegelte Kopien</translation>
    </message>
    <message>
        <source>Search takes several words, with accents or without; an entry is found when all of them occur in it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die Suche nimmt mehrere Wörter, mit oder ohne Akzente; ein Eintrag wird gefunden, wenn sie alle darin vorkommen.</translation>
    </message>
    <message>
        <source>See the list of copies.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh in die Liste der Kopien.</translation>
    </message>
    <message>
        <source>See to its permissions, or take it away.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sieh nach ihren Rechten, oder nimm sie weg.</translation>
    </message>
    <message>
        <source>Sending one file</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Eine Datei wird gesendet</translation>
    </message>
    <message>
        <source>Sending {count} files</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>{count} Dateien werden gesendet</translation>
    </message>
    <message>
        <source>Shorten the device’s name or whom to call.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kürze den Namen des Geräts oder die Angabe, wen man anruft.</translation>
    </message>
    <message>
        <source>Shorten the steps of this device kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kürze die Schritte dieser Geräteart.</translation>
    </message>
    <message>
        <source>Small triangles under the days stand where something is to be done; F2 lists it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Kleine Dreiecke unter den Tagen stehen dort, wo etwas zu tun ist; F2 zeigt, was.</translation>
    </message>
    <message>
        <source>Somebody or something changed it after it was written, or cut its end off. Who gets in is not touched by that.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Jemand oder etwas hat es geändert, nachdem es geschrieben war, oder sein Ende abgeschnitten. Wer hineinkommt, ist davon nicht berührt.</translation>
    </message>
    <message>
        <source>Somebody tried 20 wrong links, the last time from {address}. The link is closed.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Jemand hat 20 falsche Links versucht, zuletzt von {address}. Der Link ist geschlossen.</translation>
    </message>
    <message>
        <source>Something else of that name is there now. It is left alone; look at it yourself.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Dort liegt jetzt etwas anderes mit diesem Namen. Es bleibt unberührt; sieh es dir selbst an.</translation>
    </message>
    <message>
        <source>Spare stop lists lie ready. They stop devices until the new CA is made, and not after.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Reserve-Sperrlisten liegen bereit. Sie sperren Geräte, bis die neue CA erstellt ist, und danach nicht mehr.</translation>
    </message>
    <message>
        <source>Stop it if it must not get in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sperr es, wenn es nicht hineinkommen darf.</translation>
    </message>
    <message>
        <source>Stop what was stolen first, whichever it was. That takes a minute and needs no succession.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Sperr zuerst, was gestohlen wurde, in beiden Fällen. Das dauert eine Minute und braucht keine Nachfolge.</translation>
    </message>
    <message>
        <source>Take a file of one device kind. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine Datei mit einer einzigen Geräteart. hearthkey kinds --start NAME FILE schreibt eine vollständige Datei, die du nur anpasst.</translation>
    </message>
    <message>
        <source>Take another copy, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine andere Kopie, und frag dort nach, von wo du diese hast.</translation>
    </message>
    <message>
        <source>Take another copy; the app keeps the last ten, and sticks keep theirs.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine andere Kopie; die App behält die letzten zehn, und Sticks behalten ihre.</translation>
    </message>
    <message>
        <source>Take it out, or use one of {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm es heraus, oder wähle eines davon: {known}.</translation>
    </message>
    <message>
        <source>Take one of these, or search for a word with --search.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm etwas davon, oder such mit --search nach einem Wort.</translation>
    </message>
    <message>
        <source>Take the steps before that one.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Geh zuerst die Schritte davor.</translation>
    </message>
    <message>
        <source>Take the steps before that one; hearthkey succession shows them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Geh zuerst die Schritte davor; hearthkey succession zeigt sie.</translation>
    </message>
    <message>
        <source>Tell whoever looks after the app what you were doing.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Sag denen, die sich um die App kümmern, was du gerade getan hast.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is gone was said again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Es wurde doch wieder gesagt, dass eine Kopie für {whom} weg ist.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is gone was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Dass eine Kopie für {whom} weg ist, wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is not gone was said again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Es wurde doch wieder gesagt, dass eine Kopie für {whom} nicht weg ist.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is not gone was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Dass eine Kopie für {whom} nicht weg ist, wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>That {title} was seen to get in stays written down. No proof is taken back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dass {title} nachweislich hineinkam, bleibt aufgeschrieben. Kein Nachweis wird zurückgenommen.</translation>
    </message>
    <message>
        <source>The CA ends on {day}, and everybody’s pass with it. Every device has to be visited before.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Die CA läuft am {day} ab, und mit ihr die Pässe von allen. Vorher muss jedes Gerät besucht werden.</translation>
    </message>
    <message>
        <source>The CA ends on {end}. Begin with the next one by {last}, so that nobody’s pass has to end early.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die CA läuft am {end} ab. Fang bis {last} mit der nächsten an, dann muss niemandes Pass vorzeitig enden.</translation>
    </message>
    <message>
        <source>The CA ends on {end}. The last safe day to begin with the next one was {last}: begin now, and visit the devices whose passes run longest first.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die CA läuft am {end} ab. Der letzte sichere Tag, um mit der nächsten anzufangen, war {last}: Fang jetzt an, und besuche zuerst die Geräte, deren Pässe am längsten laufen.</translation>
    </message>
    <message>
        <source>The CA key in this copy belongs to another household than the rest of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der CA-Schlüssel in dieser Kopie gehört zu einem anderen Haushalt als der Rest.</translation>
    </message>
    <message>
        <source>The PKCS#12 file lacks something. Keys in it: {keys}; certificates: {certificates}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der PKCS#12-Datei fehlt etwas. Schlüssel darin: {keys}; Zertifikate: {certificates}.</translation>
    </message>
    <message>
        <source>The address says that it came through the tunnel. It does not say which device it was, nor that Wi-Fi was off; whoever holds the device knows that.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die Adresse sagt, dass es durch den Tunnel kam. Sie sagt nicht, welches Gerät es war, und nicht, dass das WLAN aus war; das weiß, wer das Gerät in der Hand hat.</translation>
    </message>
    <message>
        <source>The bundle and its passphrase go two different ways: the bundle by a ticket on the home Wi-Fi, on a stick or as a file; the passphrase by voice or on paper.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das Bündel und seine Passphrase gehen zwei verschiedene Wege: das Bündel mit einem Abholschein im WLAN zu Hause, auf einem Stick oder als Datei; die Passphrase mündlich oder auf Papier.</translation>
    </message>
    <message>
        <source>The change of the choices for the gateway’s files was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung der Auswahl für die Dateien des Gateways wurde doch wieder gemacht.</translation>
    </message>
    <message>
        <source>The change of the choices for the gateway’s files was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung der Auswahl für die Dateien des Gateways wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The change of the household’s settings was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung der Einstellungen des Haushalts wurde doch wieder gemacht.</translation>
    </message>
    <message>
        <source>The change of the household’s settings was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung der Einstellungen des Haushalts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The change of where the gateway is was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung, wo das Gateway ist, wurde doch wieder gemacht.</translation>
    </message>
    <message>
        <source>The change of where the gateway is was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung, wo das Gateway ist, wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The change of whom to call was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung, wen man anruft, wurde doch wieder gemacht.</translation>
    </message>
    <message>
        <source>The change of whom to call was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Änderung, wen man anruft, wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The choice of a language for {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Wahl einer Sprache für {name} wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>The copy {number} is gone already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Kopie Nr. {number} ist schon weg.</translation>
    </message>
    <message>
        <source>The copy’s diary ({entries} entries) does not fit this one ({here}): one was cut off, or is another’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Tagebuch der Kopie ({entries} Einträge) passt nicht zu diesem hier ({here}): Eines wurde abgeschnitten oder ist ein fremdes.</translation>
    </message>
    <message>
        <source>The diary does not fit together from entry {subject} on: somebody or something changed it after it was written, or cut its end off. Who gets in is not touched by that. The newest sealed copy still has what stood there: bring it back into an empty folder and read its diary.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Das Tagebuch passt ab Eintrag {subject} nicht mehr zusammen: Jemand oder etwas hat es geändert, nachdem es geschrieben war, oder sein Ende abgeschnitten. Wer hineinkommt, ist davon nicht berührt. In der neuesten versiegelten Kopie steht noch, was dort stand: Hol sie in einen leeren Ordner zurück und lies ihr Tagebuch.</translation>
    </message>
    <message>
        <source>The diary has all of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Im Tagebuch steht alles davon.</translation>
    </message>
    <message>
        <source>The diary has all that was done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Im Tagebuch steht alles, was getan wurde.</translation>
    </message>
    <message>
        <source>The gateway hides devices behind its own address at home, so a request through the tunnel may look like one from home. Name that address, and it counts; without it only what comes from {tunnel} does.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Das Gateway verbirgt Geräte zu Hause hinter seiner eigenen Adresse, also kann eine Anfrage durch den Tunnel aussehen wie eine von zu Hause. Nenn diese Adresse, dann zählt sie; ohne sie zählt nur, was aus {tunnel} kommt.</translation>
    </message>
    <message>
        <source>The gateway leaves devices their addresses ({tunnel}), so a request from {address} proves nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Gateway lässt den Geräten ihre Adressen ({tunnel}), also weist eine Anfrage von {address} nichts nach.</translation>
    </message>
    <message>
        <source>The gateway was not seen to hold what the last step made for it. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es war nicht zu sehen, dass das Gateway hat, was der letzte Schritt dafür erstellt hat. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The gateway’s next certificate, under the same name</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Das nächste Zertifikat des Gateways, unter demselben Namen</translation>
    </message>
    <message>
        <source>The household’s shared secret was made anew; one device has to be told it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Das gemeinsame Geheimnis des Haushalts wurde neu erstellt; einem Gerät muss es gesagt werden.</translation>
    </message>
    <message>
        <source>The household’s shared secret was made anew; {count} devices have to be told it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Das gemeinsame Geheimnis des Haushalts wurde neu erstellt; {count} Geräten muss es gesagt werden.</translation>
    </message>
    <message>
        <source>The identity suffix has {length} characters; a code and a dot go before it, so {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Endung der Kennungen hat {length} Zeichen; ein Code und ein Punkt kommen davor, also sind {limit} das Höchste.</translation>
    </message>
    <message>
        <source>The importer of this kind ({subject}) is known to call the strong container a wrong password. If it says so, use the old one.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Der Import dieser Art ({subject}) meldet beim starken Container bekanntlich ein falsches Passwort. Tut er es, nimm den alten.</translation>
    </message>
    <message>
        <source>The key of {subject} is erased. The keyring did not answer, so its passphrase will be erased at the next start.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Der Schlüssel ist gelöscht ({subject}). Der Schlüsselbund hat nicht geantwortet, also wird seine Passphrase beim nächsten Start gelöscht.</translation>
    </message>
    <message>
        <source>The keyring answered with a fault: {seen}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund hat mit einem Fehler geantwortet: {seen}. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The keyring answers but has no CA key of this household. Bring the key text back from a copy; do not found it anew, or every device needs a new bundle.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund antwortet, hat aber keinen CA-Schlüssel dieses Haushalts. Bring den Schlüsseltext aus einer Kopie zurück; gründe ihn nicht neu, sonst braucht jedes Gerät ein neues Bündel.</translation>
    </message>
    <message>
        <source>The keyring answers, but has no CA key of this household. Who gets in still does; nothing new can be signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund antwortet, hat aber keinen CA-Schlüssel dieses Haushalts. Wer hineinkommt, kommt weiter hinein; Neues kann nicht signiert werden.</translation>
    </message>
    <message>
        <source>The keyring does not answer. Nothing is lost: look for a question it may be asking on another screen, or log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund antwortet nicht. Nichts ist verloren: Sieh nach, ob er auf einem anderen Bildschirm etwas fragt, oder melde dich ab und wieder an.</translation>
    </message>
    <message>
        <source>The keyring has lost what the gateway’s key is encrypted under, so its files cannot be made. The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund hat verloren, womit der Schlüssel des Gateways verschlüsselt ist, also können seine Dateien nicht erstellt werden. Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>The keyring has no CA key of this household.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund hat keinen CA-Schlüssel dieses Haushalts.</translation>
    </message>
    <message>
        <source>The keyring has no passphrase for the bundle of {title}, so it can never be opened.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund hat keine Passphrase für das Bündel, also lässt es sich nie öffnen: {title}.</translation>
    </message>
    <message>
        <source>The keyring has no secret for the gateway’s key, so nothing can be rehearsed against it.</source>
        <extracomment>Sentences about the household, its devices and passes.</extracomment>
        <translation>Der Schlüsselbund hat kein Geheimnis für den Schlüssel des Gateways, also kann nichts daran geprobt werden.</translation>
    </message>
    <message>
        <source>The keyring has not answered for {seconds} seconds. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund hat seit {seconds} Sekunden nicht geantwortet. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The keyring has only one of the two CA keys, so that lists would be signed by half. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund hat nur einen der beiden CA-Schlüssel, also wären Listen nur zur Hälfte signiert. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The keyring is closed. Nothing is lost: open it (log in to the desktop, or unlock it).</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund ist verschlossen. Nichts ist verloren: Öffne ihn (melde dich am Desktop an, oder schließ ihn auf).</translation>
    </message>
    <message>
        <source>The keyring is closed. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund ist verschlossen. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The keyring of this desktop does not answer. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund dieses Desktops antwortet nicht. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>The keyring of this desktop is locked. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Der Schlüsselbund dieses Desktops ist verschlossen. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>The keyring that is set up here ({backend}) keeps nothing, or keeps it in the clear. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Schlüsselbund, der hier eingestellt ist ({backend}), behält nichts, oder er behält es unverschlüsselt. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The kind {subject} is not among the device kinds any more. What is made now is made as for something else; hearthkey kinds shows what there is.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Die Art {subject} ist nicht mehr unter den Gerätearten. Was jetzt erstellt wird, entsteht wie für „etwas anderes“; hearthkey kinds zeigt, was es gibt.</translation>
    </message>
    <message>
        <source>The language for {name} was chosen again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Sprache für {name} wurde doch wieder gewählt.</translation>
    </message>
    <message>
        <source>The letter does not fit on one page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Brief passt nicht auf eine Seite.</translation>
    </message>
    <message>
        <source>The letter says what works without anybody, until when, and how to take over. It gives nothing away.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Brief sagt, was ohne jemanden weiterläuft, bis wann und wie man übernimmt. Er verrät nichts.</translation>
    </message>
    <message>
        <source>The life line shows its days in order; the yellow tag is today.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die Lebenslinie zeigt ihre Tage der Reihe nach; das gelbe Schild ist heute.</translation>
    </message>
    <message>
        <source>The link is closed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Link ist geschlossen.</translation>
    </message>
    <message>
        <source>The link is good for ten minutes and opens nothing else. It is closed with the page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Link gilt zehn Minuten und öffnet sonst nichts. Er wird mit der Seite geschlossen.</translation>
    </message>
    <message>
        <source>The link was closed here.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Der Link wurde hier geschlossen.</translation>
    </message>
    <message>
        <source>The list and the gateway’s certificate can be made anew here long before they end.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Liste und Zertifikat des Gateways können hier erneuert werden, lange bevor sie ablaufen.</translation>
    </message>
    <message>
        <source>The list is signed and kept, but could not be written to {subject}. It will be written at the next start; `hearthkey lists --into FOLDER` writes it elsewhere now.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Die Liste ist signiert und verwahrt, ließ sich aber nicht nach {subject} schreiben. Sie wird beim nächsten Start geschrieben; `hearthkey lists --into FOLDER` schreibt sie jetzt woandershin.</translation>
    </message>
    <message>
        <source>The lists have a number that cannot be counted on from here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die Listen haben eine Nummer, von der sich hier nicht weiterzählen lässt.</translation>
    </message>
    <message>
        <source>The name or address that devices reach the gateway under; also its identity (RFC 7296 section 3.5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Der Name oder die Adresse, unter der Geräte das Gateway erreichen; auch seine Kennung (RFC 7296 section 3.5).</translation>
    </message>
    <message>
        <source>The names of your Wi-Fis stand readable in the profile. Whoever sees it learns them.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Die Namen deiner WLANs stehen lesbar im Profil. Wer es sieht, erfährt sie.</translation>
    </message>
    <message>
        <source>The narrowest list that lies ready stops these too: {subject}.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Die engste Liste, die bereitliegt, sperrt auch diese: {subject}.</translation>
    </message>
    <message>
        <source>The nearest is {near}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Am nächsten liegt {near}.</translation>
    </message>
    <message>
        <source>The nearest is {near}. The list has them all.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Am nächsten liegt {near}. In der Liste stehen alle.</translation>
    </message>
    <message>
        <source>The new list lies at the gateway, but the command after it ended with {status} and said: {said}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die neue Liste liegt auf dem Gateway, doch der Befehl danach endete mit {status} und sagte: {said}.</translation>
    </message>
    <message>
        <source>The new pass of {title} has a number of its own that stays on record, so it is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der neue Pass von {title} hat eine eigene Nummer, die verzeichnet bleibt; das wird also nicht rückgängig gemacht.</translation>
    </message>
    <message>
        <source>The new pass of {title} would end on {new}, before the old one does ({old}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: Der neue Pass würde am {new} ablaufen, vor dem alten ({old}).</translation>
    </message>
    <message>
        <source>The newest revocation list, PEM (RFC 7468 section 6).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die neueste Sperrliste, PEM (RFC 7468 section 6).</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die nächste CA</translation>
    </message>
    <message>
        <source>The next CA cannot be taken back while somebody gets in by it: {titles}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die nächste CA lässt sich nicht zurücknehmen, solange jemand mit ihr hineinkommt: {titles}.</translation>
    </message>
    <message>
        <source>The next CA is beside the old one. Everybody gets in as before.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die nächste CA steht neben der alten. Alle kommen hinein wie bisher.</translation>
    </message>
    <message>
        <source>The next CA is there already, beside the old one. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die nächste CA ist schon da, neben der alten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The next CA was made beside the old one, which ends {old}; the new one ends {new}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die nächste CA wurde neben der alten erstellt, die am {old} abläuft; die neue läuft am {new} ab.</translation>
    </message>
    <message>
        <source>The next CA was taken back before anybody needed it, and its key was erased.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die nächste CA wurde zurückgenommen, bevor jemand sie brauchte, und ihr Schlüssel wurde gelöscht.</translation>
    </message>
    <message>
        <source>The next list has number {number}, and the one who was withdrawn stays so.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Die nächste Liste hat Nr. {number}, und der zurückgezogene Pass bleibt zurückgezogen.</translation>
    </message>
    <message>
        <source>The next list has number {number}, and the {count} that were withdrawn stay so.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Die nächste Liste hat Nr. {number}, und die {count} zurückgezogenen Pässe bleiben zurückgezogen.</translation>
    </message>
    <message>
        <source>The next list has number {number}; nobody is on it.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Die nächste Liste hat Nr. {number}; niemand steht darauf.</translation>
    </message>
    <message>
        <source>The next pass of {title} was seen to get in, so the device has it already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: Der nächste Pass kam nachweislich hinein, also hat ihn das Gerät schon.</translation>
    </message>
    <message>
        <source>The next pass of {title} was taken back before it was handed over, with revocation list {number}. Its key was erased here; the pass before it stays as it is.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: Der nächste Pass wurde vor der Übergabe zurückgenommen, mit Sperrliste Nr. {number}. Sein Schlüssel wurde hier gelöscht; der Pass davor bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>The next pass of {title} was withdrawn and its key erased. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der nächste Pass von {title} wurde zurückgezogen und sein Schlüssel gelöscht. Das wird nie rückgängig gemacht.</translation>
    </message>
    <message>
        <source>The next step stands on this page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Der nächste Schritt steht auf dieser Seite.</translation>
    </message>
    <message>
        <source>The number of that list (CRLNumber, RFC 5280 section 5.2.3).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Nummer dieser Liste (CRLNumber, RFC 5280 section 5.2.3).</translation>
    </message>
    <message>
        <source>The number of the key exchange method at IANA.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Nummer des Schlüsselaustauschs bei der IANA.</translation>
    </message>
    <message>
        <source>The old CA cannot go yet: the gateway still shows the certificate that it signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die alte CA kann noch nicht gehen: Das Gateway zeigt noch das Zertifikat, das sie signiert hat.</translation>
    </message>
    <message>
        <source>The old CA ends on {day}. Whoever has no new bundle by then stands outside.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Die alte CA läuft am {day} ab. Wer bis dahin kein neues Bündel hat, steht draußen.</translation>
    </message>
    <message>
        <source>The old CA was put away and its key erased; the new one ends {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die alte CA wurde ausgemustert und ihr Schlüssel gelöscht; die neue läuft am {day} ab.</translation>
    </message>
    <message>
        <source>The old CA’s key is erased and its passes end. There is no way back from here.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Der Schlüssel der alten CA ist gelöscht, und ihre Pässe enden. Von hier führt kein Weg zurück.</translation>
    </message>
    <message>
        <source>The old CA’s passes end. There is no way back from here.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die Pässe der alten CA enden. Von hier führt kein Weg zurück.</translation>
    </message>
    <message>
        <source>The old key is lost.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Der alte Schlüssel ist verloren.</translation>
    </message>
    <message>
        <source>The old key may be in other hands.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Der alte Schlüssel ist vielleicht in anderen Händen.</translation>
    </message>
    <message>
        <source>The old one vouches for it.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Die alte bürgt für sie.</translation>
    </message>
    <message>
        <source>The old one vouches for the new one, so nobody notices while devices change over, one visit at a time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die alte bürgt für die neue, also merkt niemand etwas, während die Geräte wechseln, ein Besuch nach dem anderen.</translation>
    </message>
    <message>
        <source>The old pass of {title} never gets in again once the gateway holds list {number}. The new one is not affected. This is final.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: Der alte Pass kommt nie wieder hinein, sobald das Gateway Liste Nr. {number} hat. Der neue ist nicht betroffen. Das ist endgültig.</translation>
    </message>
    <message>
        <source>The old pass of {title} went for good. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der alte Pass von {title} ging endgültig. Das wird nie rückgängig gemacht.</translation>
    </message>
    <message>
        <source>The old passes of {title} never get in again once the gateway holds list {number}. The new ones are not affected. This is final.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: Die alten Pässe kommen nie wieder hinein, sobald das Gateway Liste Nr. {number} hat. Die neuen sind nicht betroffen. Das ist endgültig.</translation>
    </message>
    <message>
        <source>The one other device is not affected.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>Das eine andere Gerät ist nicht betroffen.</translation>
    </message>
    <message>
        <source>The page was opened by {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Die Seite wurde von {address} geöffnet.</translation>
    </message>
    <message>
        <source>The paper of {day} was read whole, and its key opens. The settings have changed since: a new paper saves the work of changing them once more.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>Das Papier vom {day} wurde ganz gelesen, und sein Schlüssel öffnet sich. Die Einstellungen haben sich seitdem geändert: Ein neues Papier spart die Arbeit, sie noch einmal zu ändern.</translation>
    </message>
    <message>
        <source>The paper of {day} was read whole, its key opens, and the settings on it are those of today.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>Das Papier vom {day} wurde ganz gelesen, sein Schlüssel öffnet sich, und die Einstellungen darauf sind die von heute.</translation>
    </message>
    <message>
        <source>The parts of the window are not installed here. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Teile des Fensters sind hier nicht installiert. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The parts that were drawn do not bring back what they were made of.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Die gezogenen Teile bringen nicht zurück, woraus sie gemacht wurden.</translation>
    </message>
    <message>
        <source>The pass has ended ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Pass ist abgelaufen ({seen}). Das Gateway wird ihn nicht einlassen.</translation>
    </message>
    <message>
        <source>The pass of {title} has a number of its own that stays on record, so it is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}: Der Pass hat eine eigene Nummer, die verzeichnet bleibt, also lässt er sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>The pass of {title} is {state}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title}, Zustand des Passes: {state}.</translation>
    </message>
    <message>
        <source>The pass would have ended already, on {end}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Pass wäre schon abgelaufen, am {end}.</translation>
    </message>
    <message>
        <source>The pass would outlive the CA, which ends on {authority_end}; after that nothing it signed counts.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Pass würde die CA überleben, die am {authority_end} abläuft; danach gilt nichts, was sie signiert.</translation>
    </message>
    <message>
        <source>The pass {serial}, which was made elsewhere, is that of {title}.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Der Pass {serial}, der woanders erstellt wurde, ist der von {title}.</translation>
    </message>
    <message>
        <source>The passphrase and what it opens were about to stand together, so nothing was shown.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Die Passphrase und das, was sie öffnet, wären zusammen zu sehen gewesen, also wurde nichts gezeigt.</translation>
    </message>
    <message>
        <source>The passphrase does not open it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase öffnet es nicht.</translation>
    </message>
    <message>
        <source>The passphrase does not open the CA’s key.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase öffnet den Schlüssel der CA nicht.</translation>
    </message>
    <message>
        <source>The passphrase is empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase ist leer.</translation>
    </message>
    <message>
        <source>The passphrase is longer than {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase ist länger als {limit} Zeichen.</translation>
    </message>
    <message>
        <source>The passphrase is needed, and there is no terminal to ask at.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase wird gebraucht, und es gibt kein Terminal, um danach zu fragen.</translation>
    </message>
    <message>
        <source>The passphrase is shorter than {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase ist kürzer als {limit} Zeichen.</translation>
    </message>
    <message>
        <source>The passphrase would not stand long guessing, and whoever steals the key text can guess without limit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Passphrase hielte langem Raten nicht stand, und wer den Schlüsseltext stiehlt, kann ohne Grenze raten.</translation>
    </message>
    <message>
        <source>The picture is too large to be read ({size} octets).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Bild ist zu groß zum Lesen ({size} Byte).</translation>
    </message>
    <message>
        <source>The place cannot be reached now. If it is a stick, plug it in.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Der Ort ist jetzt nicht zu erreichen. Ist es ein Stick, steck ihn ein.</translation>
    </message>
    <message>
        <source>The plan stands on this page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Der Plan steht auf dieser Seite.</translation>
    </message>
    <message>
        <source>The printer {name} does not take the page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Drucker {name} nimmt die Seite nicht an.</translation>
    </message>
    <message>
        <source>The private key cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der private Schlüssel lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The register cannot be read, so nothing can be shown.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Das Register lässt sich nicht lesen, also kann nichts gezeigt werden.</translation>
    </message>
    <message>
        <source>The register in {path} cannot be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Register in {path} lässt sich nicht lesen ({seen}).</translation>
    </message>
    <message>
        <source>The register in {path} is damaged ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Register in {path} ist beschädigt ({seen}).</translation>
    </message>
    <message>
        <source>The register is damaged, so nothing can be shown.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Das Register ist beschädigt, also kann nichts gezeigt werden.</translation>
    </message>
    <message>
        <source>The register is in use. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Register wird gerade benutzt. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The register was written by a newer app (version {have}; this one knows {known}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Register wurde von einer neueren App geschrieben (Version {have}; diese kennt {known}).</translation>
    </message>
    <message>
        <source>The register was written by a newer app.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Das Register wurde von einer neueren App geschrieben.</translation>
    </message>
    <message>
        <source>The revocation list begins after now, by this computer’s clock ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Sperrliste beginnt nach der Uhr dieses Computers erst später ({seen}).</translation>
    </message>
    <message>
        <source>The revocation list cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Sperrliste lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The revocation list has no number.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die Sperrliste hat keine Nummer.</translation>
    </message>
    <message>
        <source>The revocation list in force is good until {day}. After that the gateway lets nobody in.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Die Sperrliste in Kraft ist gültig bis {day}. Danach lässt das Gateway niemanden ein.</translation>
    </message>
    <message>
        <source>The revocation list is not this household’s ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Sperrliste ist nicht von diesem Haushalt ({seen}).</translation>
    </message>
    <message>
        <source>The revocation list is past its date ({seen}). A gateway that checks it lets nobody in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Sperrliste ist abgelaufen ({seen}). Ein Gateway, das sie prüft, lässt niemanden ein.</translation>
    </message>
    <message>
        <source>The revocation list was good until {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Die Sperrliste war gültig bis {end}.</translation>
    </message>
    <message>
        <source>The router’s password</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Das Passwort des Routers</translation>
    </message>
    <message>
        <source>The same days go into the family’s calendar: hearthkey dates --into a folder writes the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Dieselben Tage kommen in den Kalender der Familie: hearthkey dates --into mit einem Ordner schreibt die Datei.</translation>
    </message>
    <message>
        <source>The same key under the bundle’s passphrase, PEM (RFC 7468 section 11).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Derselbe Schlüssel unter der Passphrase des Bündels, PEM (RFC 7468 section 11).</translation>
    </message>
    <message>
        <source>The same stands on the board.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dasselbe steht auf der Tafel.</translation>
    </message>
    <message>
        <source>The scale folds: the weeks around today are drawn wide, months narrower, years narrowest. So lengths compare within one fold only; the exact date stands at the right.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Maßstab ist gefaltet: Die Wochen um heute sind breit, Monate schmaler, Jahre am schmalsten. Längen lassen sich also nur innerhalb einer Falte vergleichen; das genaue Datum steht rechts.</translation>
    </message>
    <message>
        <source>The sealed copy of {day} was opened, and everything in it is whole and fits.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Die versiegelte Kopie vom {day} wurde geöffnet, und alles darin ist unversehrt und passt zusammen.</translation>
    </message>
    <message>
        <source>The secret that all devices share</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Das Geheimnis, das alle Geräte teilen</translation>
    </message>
    <message>
        <source>The sentence under the line says what follows, before anything is made.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Satz unter der Linie sagt, was folgt, noch bevor etwas erstellt wird.</translation>
    </message>
    <message>
        <source>The serial number of the device’s certificate, hexadecimal.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Seriennummer des Gerätezertifikats, hexadezimal.</translation>
    </message>
    <message>
        <source>The seven words open the CA key. Write them down and keep them with the family’s papers.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Die sieben Wörter öffnen den CA-Schlüssel. Schreib sie auf und bewahre sie bei den Papieren der Familie auf.</translation>
    </message>
    <message>
        <source>The sheet</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>The sheet for {title} does not fit on one page in readable type.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Blatt für {title} passt in lesbarer Schrift nicht auf eine Seite.</translation>
    </message>
    <message>
        <source>The sheet shows all of them.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Das Blatt zeigt alle.</translation>
    </message>
    <message>
        <source>The signature on this profile is not this household’s, or the profile was changed after it was signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Signatur auf diesem Profil ist nicht die dieses Haushalts, oder das Profil wurde nach dem Signieren geändert.</translation>
    </message>
    <message>
        <source>The step was taken back that the gateway trusts both CAs; nothing changed there.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Der Schritt, dass das Gateway beiden CAs vertraut, wurde zurückgenommen; dort hat sich nichts geändert.</translation>
    </message>
    <message>
        <source>The stop of {whom} was done again after all, with revocation list {number}.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>{whom}: Das Sperren wurde mit Sperrliste Nr. {number} doch wiederholt.</translation>
    </message>
    <message>
        <source>The stop of {whom} was taken back with revocation list {number}, before it was in force.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>{whom}: Das Sperren wurde mit Sperrliste Nr. {number} zurückgenommen, bevor es in Kraft war.</translation>
    </message>
    <message>
        <source>The system refused: {seen} {path}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das System hat abgelehnt: {seen} {path}. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>The table of common subnets that came with the app cannot be read ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Die mitgelieferte Tabelle der üblichen Subnetze lässt sich nicht lesen ({seen}).</translation>
    </message>
    <message>
        <source>The template has {size} octets; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Vorlage hat {size} Byte; {limit} sind das Höchste.</translation>
    </message>
    <message>
        <source>The template {name} is for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Vorlage {name} ist für das {of}.</translation>
    </message>
    <message>
        <source>The template {name} was forgotten again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Vorlage {name} wurde doch wieder vergessen.</translation>
    </message>
    <message>
        <source>The template {name} was kept again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Die Vorlage {name} wurde doch wieder behalten.</translation>
    </message>
    <message>
        <source>The template {name} was written for the gateway, as {file}.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Die Vorlage {name} wurde für das Gateway geschrieben, als {file}.</translation>
    </message>
    <message>
        <source>The template {name} was written for {whom}, as {file}.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Die Vorlage {name} wurde geschrieben, für: {whom}, als {file}.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, is kept with the household.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Die Vorlage {name}, {of}, ist beim Haushalt behalten.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, was forgotten. Files made from it stay where they are.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Die Vorlage {name}, {of}, wurde vergessen. Dateien, die daraus entstanden sind, bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, was written anew.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Die Vorlage {name}, {of}, wurde neu geschrieben.</translation>
    </message>
    <message>
        <source>The ticket is closed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Abholschein ist geschlossen.</translation>
    </message>
    <message>
        <source>The ticket of {title} ended; nobody had picked it up.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Der Abholschein ist zu Ende; niemand hatte das Bündel abgeholt.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed after 20 wrong links, the last from {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Der Abholschein wurde nach 20 falschen Links geschlossen, der letzte von {address}.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed after 3 downloads that broke off.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Der Abholschein wurde geschlossen, nachdem das Herunterladen 3-mal abbrach.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed before anybody picked it up.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{title}: Der Abholschein wurde geschlossen, bevor jemand das Bündel abholte.</translation>
    </message>
    <message>
        <source>The ticket was closed here.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Der Abholschein wurde hier geschlossen.</translation>
    </message>
    <message>
        <source>The time is over and nobody picked it up. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Die Zeit ist um, und niemand hat es abgeholt. Der Abholschein ist geschlossen.</translation>
    </message>
    <message>
        <source>The time is over and nothing was proved. The link is closed.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Die Zeit ist um, und nichts wurde nachgewiesen. Der Link ist geschlossen.</translation>
    </message>
    <message>
        <source>The transforms of the ESP SA, by their names at IANA: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Transforms der ESP-SA, mit ihren Namen bei der IANA: eine Liste für eine Schleife.</translation>
    </message>
    <message>
        <source>The transforms of the IKE SA, by their names at IANA: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Die Transforms der IKE-SA, mit ihren Namen bei der IANA: eine Liste für eine Schleife.</translation>
    </message>
    <message>
        <source>The tunnel ({tunnel}) and home ({home}) share no version of IP, so no device could reach anything.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Tunnel ({tunnel}) und das Netz zu Hause ({home}) haben keine IP-Version gemeinsam, also könnte kein Gerät etwas erreichen.</translation>
    </message>
    <message>
        <source>The tunnel cannot be &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Der Tunnel kann nicht „{text}“ sein.</translation>
    </message>
    <message>
        <source>The tunnel split or full</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Der Tunnel geteilt oder ganz</translation>
    </message>
    <message>
        <source>The tunnel subnet {text} has no room for devices.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das Tunnel-Subnetz {text} hat keinen Platz für Geräte.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die beiden Passphrasen sind verschieden.</translation>
    </message>
    <message>
        <source>The visit on {day} was called off: {person}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Der Besuch am {day} wurde abgesagt: {person}.</translation>
    </message>
    <message>
        <source>The visit to the gateway was ended. The gateway holds one whole set, the old or the new.</source>
        <extracomment>Sentences about the way to the gateway being in the way.</extracomment>
        <translation>Der Besuch beim Gateway wurde beendet. Das Gateway hat einen ganzen Satz, den alten oder den neuen.</translation>
    </message>
    <message>
        <source>The window did not come to rest in the scene {scene}.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Das Fenster kam in der Szene {scene} nicht zur Ruhe.</translation>
    </message>
    <message>
        <source>The words of a part are wanted, and nobody can be asked here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Wörter eines Teils werden gebraucht, und hier kann niemand gefragt werden.</translation>
    </message>
    <message>
        <source>The yellow ribbon is today. Read down it: each sign on it says how one device stands right now.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Das gelbe Band ist heute. Lies es von oben nach unten: Jedes Zeichen darauf sagt, wie es gerade um ein Gerät steht.</translation>
    </message>
    <message>
        <source>The {form} stopped at the step {step}, so it may not leave.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{form}: Die Probe hielt beim Schritt „{step}“ an, also darf nichts hinaus.</translation>
    </message>
    <message>
        <source>The {what} &quot;{text}&quot; is not a name that Linux gives.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: „{text}“ ist kein Name, den Linux vergibt.</translation>
    </message>
    <message>
        <source>The {what} &quot;{text}&quot; is not a subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: „{text}“ ist kein Subnetz.</translation>
    </message>
    <message>
        <source>The {what} has no letter or figure in it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: Es ist kein Buchstabe und keine Ziffer darin.</translation>
    </message>
    <message>
        <source>The {what} has {length} characters; DNS ends at 253.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: Das sind {length} Zeichen; bei DNS ist nach 253 Schluss.</translation>
    </message>
    <message>
        <source>The {what} has {length} characters; a certificate has room for {limit} (RFC 5280 appendix A.1).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: Das sind {length} Zeichen; ein Zertifikat hat Platz für {limit} (RFC 5280 appendix A.1).</translation>
    </message>
    <message>
        <source>The {what} is empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what} ist leer.</translation>
    </message>
    <message>
        <source>The {what} {text} is an address within a subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: {text} ist eine Adresse innerhalb eines Subnetzes.</translation>
    </message>
    <message>
        <source>The {what} {text} is the whole internet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what}: {text} ist das ganze Internet.</translation>
    </message>
    <message>
        <source>The {whose} broke the trial connection off ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das {whose} hat die Probeverbindung abgebrochen ({seen}).</translation>
    </message>
    <message>
        <source>Then {what} ends, and nobody gets in without the next one.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Dann läuft {what} ab, und ohne Nachfolge kommt niemand hinein.</translation>
    </message>
    <message>
        <source>There are more files than are looked at.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es sind mehr Dateien, als durchgesehen werden.</translation>
    </message>
    <message>
        <source>There are no stop lists that a deputy could take along: none is signed for the household as it is now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt keine Sperrlisten, die eine Vertretung mitnehmen könnte: für den Haushalt, wie er jetzt ist, ist keine signiert.</translation>
    </message>
    <message>
        <source>There are {count} steps, and a sheet takes {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es sind {count} Schritte, und auf ein Blatt passen {limit}.</translation>
    </message>
    <message>
        <source>There are: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt: {known}.</translation>
    </message>
    <message>
        <source>There is a file at {path} already. It was left as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Unter {path} liegt schon eine Datei. Sie blieb, wie sie war.</translation>
    </message>
    <message>
        <source>There is another CA here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hier ist noch eine andere CA.</translation>
    </message>
    <message>
        <source>There is no bundle in it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist kein Bündel darin.</translation>
    </message>
    <message>
        <source>There is no certificate of a CA here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hier ist kein Zertifikat einer CA.</translation>
    </message>
    <message>
        <source>There is no container &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Den Container „{text}“ gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no copy with the number {number}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt keine Kopie Nr. {number}.</translation>
    </message>
    <message>
        <source>There is no file {path}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Datei {path} gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no folder or file {path}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt keinen Ordner und keine Datei {path}.</translation>
    </message>
    <message>
        <source>There is no household in this data folder yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In diesem Datenordner ist noch kein Haushalt.</translation>
    </message>
    <message>
        <source>There is no key set &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Den Schlüsselsatz „{text}“ gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no keyring here that can be used. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Hier gibt es keinen Schlüsselbund, der sich benutzen lässt. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>There is no keyring here that the app can use. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hier gibt es keinen Schlüsselbund, den die App benutzen kann. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>There is no keyring in use: the secrets of this household lie as files in {subject}. The CA key is encrypted, passphrases of waiting bundles are not. Hand bundles over soon.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Es ist kein Schlüsselbund in Gebrauch: Die Geheimnisse dieses Haushalts liegen als Dateien in {subject}. Der CA-Schlüssel ist verschlüsselt, die Passphrasen wartender Bündel sind es nicht. Übergib Bündel bald.</translation>
    </message>
    <message>
        <source>There is no keyring that can be used here. Nothing is lost: start the app in the desktop where the household was founded.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Hier gibt es keinen Schlüsselbund, der sich benutzen lässt. Nichts ist verloren: Starte die App in dem Desktop, in dem der Haushalt gegründet wurde.</translation>
    </message>
    <message>
        <source>There is no kind of device &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Geräteart „{text}“ gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no pass {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Den Pass {text} gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no revocation list here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hier ist keine Sperrliste.</translation>
    </message>
    <message>
        <source>There is no revocation list to judge by ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt keine Sperrliste, an der geprüft werden könnte ({seen}).</translation>
    </message>
    <message>
        <source>There is no revocation list {number}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Sperrliste Nr. {number} gibt es nicht.</translation>
    </message>
    <message>
        <source>There is no screen to open the window on. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt keinen Bildschirm, auf dem sich das Fenster öffnen ließe. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>There is no template &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Vorlage „{text}“ gibt es nicht.</translation>
    </message>
    <message>
        <source>There is not enough room at {path}: {free} KB are free, {wanted} KB are wanted. Nothing was written.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Unter {path} ist nicht genug Platz: {free} KB sind frei, {wanted} KB werden gebraucht. Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>There is nothing in the template.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In der Vorlage steht nichts.</translation>
    </message>
    <message>
        <source>There is nothing left to do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es ist nichts mehr zu tun.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>There is nothing to let back in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt nichts wieder einzulassen.</translation>
    </message>
    <message>
        <source>There is nothing to take back. What was done before the app was opened is not kept for that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es gibt nichts zurückzunehmen. Was getan wurde, bevor die App geöffnet wurde, ist dafür nicht aufgehoben.</translation>
    </message>
    <message>
        <source>These are no whole set of PEM files: {keys} with a key, {certificates} with certificates.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist kein vollständiger Satz PEM-Dateien: {keys} mit Schlüssel, {certificates} mit Zertifikaten.</translation>
    </message>
    <message>
        <source>These lines were typed with a slip: {slips}. Every other line stays right. Lines still wanted: {missing}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>In diesen Zeilen steckt ein Tippfehler: {slips}. Alle anderen Zeilen bleiben richtig. Zeilen, die noch fehlen: {missing}.</translation>
    </message>
    <message>
        <source>These parts belong to different sets ({sets}): together they open nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese Teile gehören zu verschiedenen Sätzen ({sets}): zusammen öffnen sie nichts.</translation>
    </message>
    <message>
        <source>They are never shown at the same time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Sie werden nie gleichzeitig gezeigt.</translation>
    </message>
    <message>
        <source>They are not signed.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Sie sind nicht signiert.</translation>
    </message>
    <message>
        <source>They are signed with the CA key.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Sie sind mit dem CA-Schlüssel signiert.</translation>
    </message>
    <message>
        <source>They are signed with the gateway’s key.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Sie sind mit dem Schlüssel des Gateways signiert.</translation>
    </message>
    <message>
        <source>They work. Stopping one stops all of them; only one is taken over as a pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Sie gehen. Eines zu sperren, sperrt alle; nur eines wird als Pass übernommen.</translation>
    </message>
    <message>
        <source>This cannot be undone, and there is nobody to ask.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das lässt sich nicht rückgängig machen, und es ist niemand da, um zu fragen.</translation>
    </message>
    <message>
        <source>This computer has no address that a phone at home can reach ({known}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Computer hat keine Adresse, die ein Handy zu Hause erreicht ({known}).</translation>
    </message>
    <message>
        <source>This computer has no {seen}, so the gateway cannot be reached by ssh. The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Computer hat kein {seen}, also ist das Gateway nicht per ssh erreichbar. Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>This computer says it is {clock} UTC, but the last thing was done on {last} UTC.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Computer sagt, es sei {clock} UTC, doch das Letzte wurde {last} UTC getan.</translation>
    </message>
    <message>
        <source>This computer’s addresses could not be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Die Adressen dieses Computers ließen sich nicht lesen ({seen}).</translation>
    </message>
    <message>
        <source>This copy opens, but it was not made by this household’s app: its mark is wrong. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese Kopie lässt sich öffnen, stammt aber nicht von der App dieses Haushalts: Ihr Zeichen ist falsch. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>This copy was made by a newer app ({seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese Kopie stammt von einer neueren App ({seen}); diese kennt {known}.</translation>
    </message>
    <message>
        <source>This file is larger than a sealed copy can be ({limit} octets).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese Datei ist größer, als eine versiegelte Kopie sein kann ({limit} Byte).</translation>
    </message>
    <message>
        <source>This household cannot be taken over: {why}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Haushalt lässt sich nicht übernehmen: {why}</translation>
    </message>
    <message>
        <source>This household has no secret that all devices share.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieser Haushalt hat kein Geheimnis, das alle Geräte teilen.</translation>
    </message>
    <message>
        <source>This is a copy of another household ({household}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist eine Kopie eines anderen Haushalts ({household}).</translation>
    </message>
    <message>
        <source>This is a fault of the app. Nothing was lost. Do it again; if it stays, tell the makers these words.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Das ist ein Fehler der App. Nichts ist verloren. Versuch es noch einmal; bleibt es so, gib diese Worte an die weiter, die sie machen.</translation>
    </message>
    <message>
        <source>This is a real household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist ein echter Haushalt.</translation>
    </message>
    <message>
        <source>This is no configuration profile that can be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist kein lesbares Konfigurationsprofil ({seen}).</translation>
    </message>
    <message>
        <source>This is not taken back any more: a bundle was handed over since.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das lässt sich nicht mehr zurücknehmen: Seitdem wurde ein Bündel übergeben.</translation>
    </message>
    <message>
        <source>This is not taken back any more: it was changed again since.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das lässt sich nicht mehr zurücknehmen: Seitdem wurde es noch einmal geändert.</translation>
    </message>
    <message>
        <source>This is not taken back any more: the gateway has it since the last delivery.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das lässt sich nicht mehr zurücknehmen: Das Gateway hat es seit der letzten Lieferung.</translation>
    </message>
    <message>
        <source>This is not taken back any more: the gateway holds revocation list {number}, so it is in force.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das lässt sich nicht mehr zurücknehmen: Das Gateway hat Sperrliste Nr. {number}, also ist es in Kraft.</translation>
    </message>
    <message>
        <source>This is the paper of another household ({household}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist das Papier eines anderen Haushalts ({household}).</translation>
    </message>
    <message>
        <source>This is the practice household. Nothing of it is ever delivered to a gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Das ist der Übungshaushalt. Davon wird nie etwas an ein Gateway geliefert.</translation>
    </message>
    <message>
        <source>This paper was made by a newer app ({seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Papier stammt von einer neueren App ({seen}); diese kennt {known}.</translation>
    </message>
    <message>
        <source>This part is whole, but it is of set {seen}, and no such set was made here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Teil ist ganz, aber vom Satz {seen}, und ein solcher wurde hier nicht gemacht.</translation>
    </message>
    <message>
        <source>This part is whole, but of the older set {seen}. Copies that are made now go by set {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Teil ist ganz, aber vom älteren Satz {seen}. Kopien, die jetzt gemacht werden, gehen nach Satz {known}.</translation>
    </message>
    <message>
        <source>This part says that it is part {number} of set {seen}, but it is not the one that was made here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Teil gibt sich als Teil {number} des Satzes {seen} aus, ist aber nicht das, das hier gemacht wurde.</translation>
    </message>
    <message>
        <source>This part was made by a newer app (version {seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Teil hat eine neuere App gemacht (Version {seen}); diese kennt {known}.</translation>
    </message>
    <message>
        <source>This profile has its passphrase inside: whoever has the file gets in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dieses Profil enthält seine Passphrase: Wer die Datei hat, kommt hinein.</translation>
    </message>
    <message>
        <source>This script was checked, but nobody has run it on Windows yet. Read it first; it undoes what it does with -Undo.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Dieses Skript wurde geprüft, aber unter Windows hat es noch niemand laufen lassen. Lies es zuerst; mit -Undo nimmt es zurück, was es tut.</translation>
    </message>
    <message>
        <source>This sealed copy goes by set {wanted}; these parts are of set {seen}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese versiegelte Kopie geht nach Satz {wanted}; diese Teile sind vom Satz {seen}.</translation>
    </message>
    <message>
        <source>This sealed copy is not whole: {part} is damaged or missing. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese versiegelte Kopie ist nicht unversehrt: {part} ist beschädigt oder fehlt. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>This sealed copy was made before there were parts, so parts do not open it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Diese versiegelte Kopie wurde gemacht, bevor es Teile gab; Teile öffnen sie also nicht.</translation>
    </message>
    <message>
        <source>This window only looks.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>In diesem Fenster kannst du nur nachsehen.</translation>
    </message>
    <message>
        <source>Three sheets, given to three people. Any two together open a sealed copy; one alone opens nothing.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Drei Blätter, an drei Personen gegeben. Je zwei zusammen öffnen eine versiegelte Kopie; eines allein öffnet nichts.</translation>
    </message>
    <message>
        <source>Through the tunnel devices reach {home}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Durch den Tunnel erreichen Geräte {home}.</translation>
    </message>
    <message>
        <source>Throw it away and give the device a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wirf die Datei weg und gib dem Gerät einen neuen Pass.</translation>
    </message>
    <message>
        <source>To let it in again: hearthkey let-in. For good: hearthkey revoke.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Um es wieder einzulassen: hearthkey let-in. Endgültig: hearthkey revoke.</translation>
    </message>
    <message>
        <source>Try the command at the gateway, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Probier den Befehl auf dem Gateway, dann liefere noch einmal.</translation>
    </message>
    <message>
        <source>Try the command at the gateway, then deliver again. Until then whoever was stopped may still get in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Probier den Befehl auf dem Gateway, dann liefere noch einmal. Bis dahin kommt vielleicht noch hinein, wer gesperrt wurde.</translation>
    </message>
    <message>
        <source>Try {title} on mobile data</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>{title} mit mobilen Daten ausprobieren</translation>
    </message>
    <message>
        <source>Trying one opens it as a new computer would. Do it once or twice a year.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ausprobieren öffnet eine Kopie so, wie ein neuer Computer es täte. Mach es ein- oder zweimal im Jahr.</translation>
    </message>
    <message>
        <source>Turn it on first: hearthkey secrets --household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schalte es zuerst ein: hearthkey secrets --household.</translation>
    </message>
    <message>
        <source>Type both again. Nothing was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp beide noch einmal. Nichts wurde erstellt.</translation>
    </message>
    <message>
        <source>Type it anew.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp es neu.</translation>
    </message>
    <message>
        <source>Type over what is to be different. What follows, and for whom, is said before anything is changed.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Überschreib, was anders sein soll. Was folgt, und für wen, steht da, bevor etwas geändert wird.</translation>
    </message>
    <message>
        <source>Type the line anew rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp die Zeile neu, statt sie einzufügen.</translation>
    </message>
    <message>
        <source>Type the name anew rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp den Namen neu, statt ihn einzufügen.</translation>
    </message>
    <message>
        <source>Type the one that was chosen when the CA was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp die ein, die beim Erstellen der CA gewählt wurde.</translation>
    </message>
    <message>
        <source>Type the passphrase that locks it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Tipp die Passphrase ein, die ihn verschließt.</translation>
    </message>
    <message>
        <source>Type the text anew on one line rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tipp den Text neu auf eine Zeile, statt ihn einzufügen.</translation>
    </message>
    <message>
        <source>Type two letters of the person or the device, then Enter. The device is stopped.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Tipp zwei Buchstaben der Person oder des Geräts, dann Eingabe. Das Gerät wird gesperrt.</translation>
    </message>
    <message>
        <source>Undo: a copy of {whom} is gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Kopie für {whom} ist weg</translation>
    </message>
    <message>
        <source>Undo: a copy of {whom} is not gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Kopie für {whom} ist nicht weg</translation>
    </message>
    <message>
        <source>Undo: a pass for {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Pass für {whom}</translation>
    </message>
    <message>
        <source>Undo: a proof of {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Nachweis für {whom}</translation>
    </message>
    <message>
        <source>Undo: a step to the next CA</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: ein Schritt zur nächsten CA</translation>
    </message>
    <message>
        <source>Undo: delete a copy of {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Kopie für {whom} löschen</translation>
    </message>
    <message>
        <source>Undo: forget the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Vorlage {name} vergessen</translation>
    </message>
    <message>
        <source>Undo: hand over {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: {whom} übergeben</translation>
    </message>
    <message>
        <source>Undo: keep the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Vorlage {name} behalten</translation>
    </message>
    <message>
        <source>Undo: let the old pass of {whom} go</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: den alten Pass von {whom} beenden</translation>
    </message>
    <message>
        <source>Undo: let {whom} back in</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: {whom} wieder einlassen</translation>
    </message>
    <message>
        <source>Undo: renew {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: {whom} erneuern</translation>
    </message>
    <message>
        <source>Undo: replace a device by {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: ein Gerät durch {whom} ersetzen</translation>
    </message>
    <message>
        <source>Undo: revoke {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: {whom} widerrufen</translation>
    </message>
    <message>
        <source>Undo: stop {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: {whom} sperren</translation>
    </message>
    <message>
        <source>Undo: take the renewal of {whom} back</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: die Erneuerung von {whom} zurücknehmen</translation>
    </message>
    <message>
        <source>Undo: the choices for the gateway’s files</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Auswahl für die Dateien des Gateways</translation>
    </message>
    <message>
        <source>Undo: the household’s settings</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Einstellungen des Haushalts</translation>
    </message>
    <message>
        <source>Undo: the language of {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: Sprache von {name}</translation>
    </message>
    <message>
        <source>Undo: where the gateway is</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: wo das Gateway ist</translation>
    </message>
    <message>
        <source>Undo: whom to call</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rückgängig: wen anrufen</translation>
    </message>
    <message>
        <source>Unlock before that day; the list is signed anew and delivered. An ending certificate has to be renewed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ vor diesem Tag auf; die Liste wird neu signiert und geliefert. Ein Zertifikat, das abläuft, muss erneuert werden.</translation>
    </message>
    <message>
        <source>Unlock it in the desktop’s password settings, or log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Schließ ihn in den Passwort-Einstellungen des Desktops auf, oder melde dich ab und wieder an.</translation>
    </message>
    <message>
        <source>Unlock the household once, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ den Haushalt einmal auf, dann versuch es noch einmal.</translation>
    </message>
    <message>
        <source>Unlock the household, or bring the keys back from a sealed copy.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ den Haushalt auf, oder hol die Schlüssel aus einer versiegelten Kopie zurück.</translation>
    </message>
    <message>
        <source>Unlock the household, so that its list is signed anew</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Den Haushalt aufschließen, damit seine Liste neu signiert wird</translation>
    </message>
    <message>
        <source>Unlock with the passphrase and stop it then, or stop everybody at once for now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ mit der Passphrase auf und sperre es dann, oder sperre vorläufig alle auf einmal.</translation>
    </message>
    <message>
        <source>Unlock with the passphrase and stop them then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ mit der Passphrase auf und sperre sie dann.</translation>
    </message>
    <message>
        <source>Unlock with the passphrase; the next list is signed above it and delivered.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schließ mit der Passphrase auf; die nächste Liste wird mit höherer Nummer signiert und geliefert.</translation>
    </message>
    <message>
        <source>Until when that list is good: its nextUpdate, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Bis wann diese Liste gültig ist: ihr nextUpdate, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>Use 1 to {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm 1 bis {limit} Zeichen.</translation>
    </message>
    <message>
        <source>Use a device’s pass for a device and the gateway’s for the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm den Pass eines Geräts für ein Gerät und den des Gateways für das Gateway.</translation>
    </message>
    <message>
        <source>Use a newer app.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine neuere App.</translation>
    </message>
    <message>
        <source>Use a newer hearthkey, or write the file anew for this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ein neueres hearthkey, oder schreib die Datei für dieses neu.</translation>
    </message>
    <message>
        <source>Use a picture of the code alone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm ein Bild, auf dem nur der Code ist.</translation>
    </message>
    <message>
        <source>Use another disk or stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm eine andere Festplatte oder einen anderen Stick.</translation>
    </message>
    <message>
        <source>Use another slot, or make this a template for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm einen anderen Platzhalter, oder mach daraus eine Vorlage für das {of}.</translation>
    </message>
    <message>
        <source>Use letters without accents, figures, hyphens, underscores and dots, beginning with a letter or figure.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm Buchstaben ohne Akzente, Ziffern, Bindestriche, Unterstriche und Punkte, vorn einen Buchstaben oder eine Ziffer.</translation>
    </message>
    <message>
        <source>Use letters without accents, figures, signs and spaces.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm Buchstaben ohne Akzente, Ziffern, Satzzeichen und Leerzeichen.</translation>
    </message>
    <message>
        <source>Use one of the key sets compact, broad or suite-384, which offer nothing of the kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm einen der Schlüsselsätze compact, broad oder suite-384, die nichts dergleichen anbieten.</translation>
    </message>
    <message>
        <source>Use small letters without accents, figures, and hyphens between them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm Kleinbuchstaben ohne Akzente, Ziffern und Bindestriche dazwischen.</translation>
    </message>
    <message>
        <source>Use the list that hearthkey lists --into writes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm die Liste, die hearthkey lists --into schreibt.</translation>
    </message>
    <message>
        <source>Use the newer app.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Nimm die neuere App.</translation>
    </message>
    <message>
        <source>Use the newer app. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm die neuere App. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Use these filters on tunnel_subnet, or on what a loop over home_subnets gives.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm diese Filter für tunnel_subnet, oder für das, was eine Schleife über home_subnets ergibt.</translation>
    </message>
    <message>
        <source>Use up to {limit} letters and figures, for instance conf.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nimm bis zu {limit} Buchstaben und Ziffern, zum Beispiel conf.</translation>
    </message>
    <message>
        <source>Waiting.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Wartet.</translation>
    </message>
    <message>
        <source>Was the app open and unlocked, or were the words with the computer? Then whoever has it can make a pass for anybody. Begin today, and put the old CA away even if some devices are not through: they stand outside until they have their new bundle.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>War die App offen und aufgeschlossen, oder lagen die Wörter beim Computer? Dann kann, wer ihn hat, für alle einen Pass machen. Fang heute an, und mustere die alte CA aus, auch wenn einige Geräte noch nicht durch sind: Sie stehen draußen, bis sie ihr neues Bündel haben.</translation>
    </message>
    <message>
        <source>Was the computer off or locked, and are the words written nowhere near it? Then they guard the key, and guessing seven of them takes longer than the CA lives. Take the succession in the coming weeks, without haste.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>War der Computer aus oder verschlossen, und stehen die Wörter nirgends in seiner Nähe? Dann schützen sie den Schlüssel, und sieben davon zu erraten, dauert länger, als die CA lebt. Geh die Nachfolge in den nächsten Wochen an, ohne Eile.</translation>
    </message>
    <message>
        <source>Was the computer stolen, or are the words lost? Say so at the top; the page says what to do first.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Wurde der Computer gestohlen, oder sind die Wörter verloren? Sag es ganz oben; die Seite sagt, was zuerst zu tun ist.</translation>
    </message>
    <message>
        <source>What begins on line {line} with {seen} does not end.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was in Zeile {line} mit {seen} beginnt, endet nicht.</translation>
    </message>
    <message>
        <source>What comes from {tunnel} counts, and from the gateway’s own address {inside}. Which device in the tunnel it was, or the gateway’s own computer, that address cannot say.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Es zählt, was aus {tunnel} kommt, und was von der eigenen Adresse des Gateways ({inside}) kommt. Welches Gerät im Tunnel es war, oder der Computer des Gateways selbst, kann diese Adresse nicht sagen.</translation>
    </message>
    <message>
        <source>What comes from {tunnel} counts. From the network at home it proves nothing.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Es zählt, was aus {tunnel} kommt. Aus dem Netz zu Hause weist es nichts nach.</translation>
    </message>
    <message>
        <source>What devices reach at home, each in prefix notation: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Was Geräte zu Hause erreichen, jedes in Präfixschreibweise: eine Liste für eine Schleife.</translation>
    </message>
    <message>
        <source>What differs reads the gateway and changes nothing there.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>„Was anders ist“ liest das Gateway und ändert dort nichts.</translation>
    </message>
    <message>
        <source>What follows in it was not read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Was danach darin kommt, wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>What is left is to put the old CA away, and that cannot be taken back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es bleibt nur noch, die alte CA auszumustern, und das lässt sich nicht zurücknehmen.</translation>
    </message>
    <message>
        <source>What is made waits in the tray. Nobody has it until you hand it over.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Was erstellt ist, wartet in der Ablage. Niemand hat es, bis du es übergibst.</translation>
    </message>
    <message>
        <source>What is not at home keeps going its own way.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Was nicht zu Hause ist, geht weiter seinen eigenen Weg.</translation>
    </message>
    <message>
        <source>What is signed now would be refused. Set the clock, then do it again. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was jetzt signiert wird, würde abgelehnt. Stell die Uhr, dann versuch es noch einmal. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>What is written into bundles stands on the page of the household.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Was in Bündel geschrieben wird, steht auf der Seite des Haushalts.</translation>
    </message>
    <message>
        <source>What it signs can be forged with enough effort. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Was damit signiert wird, lässt sich mit genug Aufwand fälschen. Gründe einen neuen Haushalt; jedes Gerät braucht einen neuen Pass.</translation>
    </message>
    <message>
        <source>What lies at {place} is not what was written there, so nothing was deleted.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was in {place} liegt, ist nicht das, was dort geschrieben wurde, also wurde nichts gelöscht.</translation>
    </message>
    <message>
        <source>What stands in red has come due. The rest can wait, in the order in which it comes.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Was rot dasteht, ist fällig. Der Rest kann warten, in der Reihenfolge, in der er kommt.</translation>
    </message>
    <message>
        <source>What stands on this paper is whole, but it is not what a household’s paper says.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was auf diesem Papier steht, ist unversehrt, aber es ist nicht das, was auf dem Papier eines Haushalts steht.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known since {since}. It held list no. {number} when it was read {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Was das Gateway hat, ist seit {since} nicht bekannt. Als es zuletzt gelesen wurde ({looked}), hatte es Liste Nr. {number}.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known: nobody has said where its files go.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Was das Gateway hat, ist nicht bekannt: Noch ist nicht gesagt, wohin seine Dateien gehen.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known; it has not been reached since {since}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Was das Gateway hat, ist nicht bekannt; es wurde seit {since} nicht erreicht.</translation>
    </message>
    <message>
        <source>What the identity of every device ends in.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Worauf die Kennung jedes Geräts endet.</translation>
    </message>
    <message>
        <source>What the keyring keeps as CA key is damaged.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was der Schlüsselbund als CA-Schlüssel verwahrt, ist beschädigt.</translation>
    </message>
    <message>
        <source>What the parts open in this copy is damaged. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was die Teile in dieser Kopie öffnen, ist beschädigt. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>What they say is left out. Compare them before you take over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Was darin steht, wird weggelassen. Vergleich sie, bevor du übernimmst.</translation>
    </message>
    <message>
        <source>What this CA signs would be turned away ({seen}). Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was diese CA signiert, würde abgewiesen ({seen}). Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>What this script says cannot be read back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was dieses Skript sagt, lässt sich nicht zurücklesen.</translation>
    </message>
    <message>
        <source>What waits in the tray takes it along when it leaves; a file that was saved of it before has to be saved again.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Was in der Ablage wartet, nimmt es mit, wenn es hinausgeht; eine Datei, die vorher davon gespeichert wurde, muss neu gespeichert werden.</translation>
    </message>
    <message>
        <source>What was handed over cannot be taken back, only stopped or revoked.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was übergeben wurde, lässt sich nicht zurücknehmen, nur sperren oder widerrufen.</translation>
    </message>
    <message>
        <source>What was only told is kept as told. No proof can be taken back.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Was nur gesagt wurde, bleibt als gesagt stehen. Kein Nachweis lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>What was read back from the gateway is not what was sent ({name}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was vom Gateway zurückgelesen wurde, ist nicht, was gesendet wurde ({name}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>What was signed for the next CA stays on record, so the step is not undone here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was für die nächste CA signiert wurde, bleibt verzeichnet; der Schritt wird hier also nicht rückgängig gemacht.</translation>
    </message>
    <message>
        <source>What was written to {path} did not come back the same. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Was nach {path} geschrieben wurde, kam nicht gleich zurück. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>What {subject} writes holds the device’s private key without a passphrase. Whoever gets hold of the file gets in as that device. Carry it by hand and delete it afterwards, or use the slot device_key_sealed, which is under the bundle’s passphrase.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Was {subject} schreibt, enthält den privaten Schlüssel des Geräts ohne Passphrase. Wer an die Datei kommt, kommt als dieses Gerät hinein. Trag sie von Hand und lösche sie danach, oder nimm den Platzhalter device_key_sealed, der unter der Passphrase des Bündels liegt.</translation>
    </message>
    <message>
        <source>When every device is through, put it away.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Wenn jedes Gerät durch ist, mustere sie aus.</translation>
    </message>
    <message>
        <source>When every device is through, say so with hearthkey succession finish.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wenn jedes Gerät durch ist, sag es mit hearthkey succession finish.</translation>
    </message>
    <message>
        <source>When the CA ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Wann die CA abläuft, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the gateway’s certificate ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Wann das Zertifikat des Gateways abläuft, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the pass begins, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Wann der Pass beginnt, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the pass ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Wann der Pass abläuft, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>Where devices get their inner addresses from, in prefix notation.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Woher Geräte ihre inneren Adressen bekommen, in Präfixschreibweise.</translation>
    </message>
    <message>
        <source>Where it is now cannot be looked at from here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Wo sie jetzt ist, lässt sich von hier aus nicht nachsehen.</translation>
    </message>
    <message>
        <source>Where the copy {number} is now cannot be looked at from here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wo Kopie Nr. {number} jetzt ist, lässt sich von hier aus nicht nachsehen.</translation>
    </message>
    <message>
        <source>Whoever copies the file can make passes for the household. After the take-over, delete it and empty the places where copies of the folder lie.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Wer die Datei kopiert, kann Pässe für den Haushalt machen. Lösche sie nach der Übernahme, und leere die Orte, an denen Kopien des Ordners liegen.</translation>
    </message>
    <message>
        <source>Whoever copies the file gets in as that device. Delete it once the device has it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Wer die Datei kopiert, kommt als dieses Gerät hinein. Lösche sie, sobald das Gerät sie hat.</translation>
    </message>
    <message>
        <source>Whoever has it gets in, and this app can neither show nor stop it until the file is added. Its number is never used again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Wer es hat, kommt hinein, und diese App kann es weder zeigen noch sperren, bis die Datei dazukommt. Seine Nummer wird nie wieder benutzt.</translation>
    </message>
    <message>
        <source>Whoever opens the link from inside the tunnel reads “You are in”, and the proof is written down with its time and address.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Wer den Link aus dem Tunnel heraus öffnet, liest „Du bist drin“, und der Nachweis wird mit Uhrzeit und Adresse aufgeschrieben.</translation>
    </message>
    <message>
        <source>Whoever sits between this computer and the gateway could show another key. Compare {subject} with what the gateway itself says: ssh-keygen -l -f on its host key file.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Wer zwischen diesem Computer und dem Gateway sitzt, könnte einen anderen Schlüssel zeigen. Vergleiche {subject} mit dem, was das Gateway selbst sagt: ssh-keygen -l -f auf seine Hostschlüssel-Datei.</translation>
    </message>
    <message>
        <source>Whom to call has {length} characters; {limit} fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>„Wen anrufen“ hat {length} Zeichen; {limit} passen.</translation>
    </message>
    <message>
        <source>Whose device it is, for people.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Wem das Gerät gehört, für Menschen.</translation>
    </message>
    <message>
        <source>Whose it is, what the family calls it, what it is, and until when: that is all that is asked.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Wem es gehört, wie die Familie es nennt, was es ist, und bis wann: Mehr wird nicht gefragt.</translation>
    </message>
    <message>
        <source>With a new certificate the gateway would turn away every device that does not have the new CA yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mit einem neuen Zertifikat würde das Gateway jedes Gerät abweisen, das die neue CA noch nicht hat.</translation>
    </message>
    <message>
        <source>Without them, begin again beside what runs: hearthkey succession begin --lost makes a new CA. The gateway trusts both, each device gets a new bundle at its next visit, and then the gateway’s certificate follows. All of it has to be done before {first}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Ohne sie fängst du neben dem, was läuft, neu an: hearthkey succession begin --lost erstellt eine neue CA. Das Gateway vertraut beiden, jedes Gerät bekommt bei seinem nächsten Besuch ein neues Bündel, und dann folgt das Zertifikat des Gateways. All das muss vor dem {first} geschehen.</translation>
    </message>
    <message>
        <source>Word {place} is not one of those that parts are made of.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Wort {place} ist keines von denen, aus denen Teile bestehen.</translation>
    </message>
    <message>
        <source>Write it again from the tray, if it waits there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib es noch einmal aus der Ablage, falls es dort wartet.</translation>
    </message>
    <message>
        <source>Write the passphrase down and keep it where the family’s papers are. Without it and without a sealed copy, nothing can be renewed or stopped. A sealed copy is written to {subject} after every change; keep one away from this computer: hearthkey seal --into DIR.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Schreib die Passphrase auf und bewahre sie bei den Papieren der Familie auf. Ohne sie und ohne versiegelte Kopie lässt sich nichts erneuern oder sperren. Nach jeder Änderung wird eine versiegelte Kopie nach {subject} geschrieben; bewahre eine getrennt von diesem Computer auf: hearthkey seal --into DIR.</translation>
    </message>
    <message>
        <source>Write {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib {wanted}.</translation>
    </message>
    <message>
        <source>a month, a year, all of it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>ein Monat, ein Jahr, alles</translation>
    </message>
    <message>
        <source>and the access that it lets its maker’s app have.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>und der Zugang, den er der App seines Herstellers gibt.</translation>
    </message>
    <message>
        <source>and whatever else opens the house.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>und was sonst das Haus öffnet.</translation>
    </message>
    <message>
        <source>ask for them; spare lists can only stop devices, never let one in.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>lass sie dir geben; Reserve-Sperrlisten können Geräte nur sperren, nie eines einlassen.</translation>
    </message>
    <message>
        <source>begin</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>anfangen</translation>
    </message>
    <message>
        <source>broken</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>kaputt</translation>
    </message>
    <message>
        <source>done</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>done on {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>erledigt am {day}</translation>
    </message>
    <message>
        <source>gone since {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>weg seit {day}</translation>
    </message>
    <message>
        <source>good to know</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>gut zu wissen</translation>
    </message>
    <message>
        <source>hearthkey list shows everybody.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey list zeigt alle.</translation>
    </message>
    <message>
        <source>hearthkey name-pass SERIAL --person PERSON --device DEVICE says it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey name-pass SERIAL --person PERSON --device DEVICE sagt es.</translation>
    </message>
    <message>
        <source>hearthkey name-pass lists those that wait to be named.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey name-pass zeigt die, die noch zu benennen sind.</translation>
    </message>
    <message>
        <source>hearthkey visit shows those that are.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey visit zeigt, welche geplant sind.</translation>
    </message>
    <message>
        <source>in the way</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>im Weg</translation>
    </message>
    <message>
        <source>later, by {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>später, bis {day}</translation>
    </message>
    <message>
        <source>mail, clouds, streaming, cameras; look who is signed in there.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>E-Mail, Clouds, Streaming, Kameras; sieh dort nach, wer angemeldet ist.</translation>
    </message>
    <message>
        <source>next, by {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>als Nächstes, bis {day}</translation>
    </message>
    <message>
        <source>no pass was in use then</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>damals war kein Pass in Gebrauch</translation>
    </message>
    <message>
        <source>nobody on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>niemand auf der Sperrliste</translation>
    </message>
    <message>
        <source>nothing is delivered by itself here: carry the new list there, or they still get in.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>hier wird nichts von selbst geliefert: Trag die neue Liste hin, sonst kommt die Person weiter hinein.</translation>
    </message>
    <message>
        <source>renew the selected device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>das gewählte Gerät erneuern</translation>
    </message>
    <message>
        <source>said to get in, on mobile data</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>kommt laut Auskunft hinein, mit mobilen Daten</translation>
    </message>
    <message>
        <source>said to work, {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>geht laut Auskunft, {day}</translation>
    </message>
    <message>
        <source>seen to get in at the web front, from {address}</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>kam nachweislich hinein, an der Webfassade, von {address}</translation>
    </message>
    <message>
        <source>seen to get in, from {address}</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>kam nachweislich hinein, von {address}</translation>
    </message>
    <message>
        <source>solid bar, a tick for each time it was seen to get in</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>voller Balken, ein kleiner Strich für jedes Mal, dass es nachweislich hineinkam</translation>
    </message>
    <message>
        <source>Windows cannot open a file named &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Windows kann keine Datei namens „{text}“ öffnen.</translation>
    </message>
    <message>
        <source>The key on paper outlives every stick: two pages, for a scanner and for hands. Scan it once to be sure.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Der Schlüssel auf Papier überlebt jeden Stick: zwei Seiten, für einen Scanner und für Hände. Scanne sie einmal, um sicher zu sein.</translation>
    </message>
    <message>
        <source>The old pass of {titles} was withdrawn for good with revocation list {number} (superseded): {why}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Der alte Pass wurde mit Sperrliste Nr. {number} endgültig zurückgezogen (abgelöst), {titles}: {why}.</translation>
    </message>
    <message>
        <source>The old passes of {titles} were withdrawn for good with revocation list {number} (superseded): {why}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Die alten Pässe wurden mit Sperrliste Nr. {number} endgültig zurückgezogen (abgelöst), {titles}: {why}.</translation>
    </message>
    <message>
        <source>Without the words nothing can be renewed or stopped; nobody can make new ones for you.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ohne die Wörter kann nichts erneuert oder gesperrt werden; niemand kann dir neue machen.</translation>
    </message>
    <message>
        <source>Work the MTU out from its RFC, or use one of the key sets, whose sizes are known.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Rechne die MTU aus ihrem RFC aus, oder nimm einen der Schlüsselsätze, deren Größen bekannt sind.</translation>
    </message>
    <message>
        <source>Write a file or an archive instead.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib stattdessen eine Datei oder ein Archiv.</translation>
    </message>
    <message>
        <source>Write at least one [[steps.{text}]], or take {text} out of forms.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib mindestens ein [[steps.{text}]], oder nimm {text} aus forms heraus.</translation>
    </message>
    <message>
        <source>Write it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib es noch einmal.</translation>
    </message>
    <message>
        <source>Write it as year-month-day, for instance 2027-05-01.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib es als Jahr-Monat-Tag, zum Beispiel 2027-05-01.</translation>
    </message>
    <message>
        <source>Write it like 198.51.100.0/24 or 2001:db8:1::/64.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib es wie 198.51.100.0/24 oder 2001:db8:1::/64.</translation>
    </message>
    <message>
        <source>Write it like http://127.0.0.1:8080, without a user name and without a question mark.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib es wie http://127.0.0.1:8080, ohne Benutzernamen und ohne Fragezeichen.</translation>
    </message>
    <message>
        <source>Write less of it with slots.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib weniger davon mit Platzhaltern.</translation>
    </message>
    <message>
        <source>Write one line for each under the line of column names.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib für jedes eine Zeile unter die Zeile mit den Spaltennamen.</translation>
    </message>
    <message>
        <source>Write one of these behind it: {known}. Where none is listed, write the name alone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib eines davon dahinter: {known}. Wo keines steht, schreib nur den Namen.</translation>
    </message>
    <message>
        <source>Write the gateway’s files into a folder to look at them, or found your own household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Schreib die Dateien des Gateways in einen Ordner, um sie anzusehen, oder gründe deinen eigenen Haushalt.</translation>
    </message>
    <message>
        <source>Write, or paste, what a program wants to read, and put slots where the household’s own values belong.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Schreib oder füg ein, was ein Programm lesen will, und setz Platzhalter dorthin, wo die Werte des Haushalts hingehören.</translation>
    </message>
    <message>
        <source>Writing a sealed copy</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Eine versiegelte Kopie wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the {form}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Wird geschrieben: {form}</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Eigene Vorlage</translation>
    </message>
    <message>
        <source>a PKCS#12 file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>eine PKCS#12-Datei</translation>
    </message>
    <message>
        <source>a bundle file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>eine Bündeldatei</translation>
    </message>
    <message>
        <source>a configuration profile</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>ein Konfigurationsprofil</translation>
    </message>
    <message>
        <source>a device</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>ein Gerät</translation>
    </message>
    <message>
        <source>a good time to renew</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>eine gute Zeit zum Erneuern</translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a list of devices</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>eine Liste von Geräten</translation>
    </message>
    <message>
        <source>a network inside this computer, for containers and virtual machines; no phone reaches it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>ein Netz in diesem Computer, für Container und virtuelle Maschinen; kein Handy erreicht es</translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a set-up script with its PKCS#12 file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>ein Einrichtungsskript mit seiner PKCS#12-Datei</translation>
    </message>
    <message>
        <source>a text</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a text of many lines</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>ein Text aus vielen Zeilen</translation>
    </message>
    <message>
        <source>a yes or no</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>ein Ja oder Nein</translation>
    </message>
    <message>
        <source>an address without a router (link-local); a link cannot name it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>eine Adresse ohne Router (link-local); ein Link kann sie nicht nennen</translation>
    </message>
    <message>
        <source>an archive</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>ein Archiv</translation>
    </message>
    <message>
        <source>an empty list</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>eine leere Liste</translation>
    </message>
    <message>
        <source>another pass took its place</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>ein anderer Pass hat seinen Platz eingenommen</translation>
    </message>
    <message>
        <source>as long as its key set allows</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>solange es sein Schlüsselsatz erlaubt</translation>
    </message>
    <message>
        <source>bar to the stop, dots to where it would have run</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>Balken bis zur Sperre, Punkte bis dahin, wo er geendet hätte</translation>
    </message>
    <message>
        <source>before anything else: they decide what is erased.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>vor allem anderen: Dort wird entschieden, was gelöscht wird.</translation>
    </message>
    <message>
        <source>can be let back in</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>kann wieder eingelassen werden</translation>
    </message>
    <message>
        <source>change it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>ändern</translation>
    </message>
    <message>
        <source>change nothing</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>nichts ändern</translation>
    </message>
    <message>
        <source>choose a copy</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>eine Kopie wählen</translation>
    </message>
    <message>
        <source>choose among the matches</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>unter den Treffern wählen</translation>
    </message>
    <message>
        <source>close the drawer</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Seitenteil schließen</translation>
    </message>
    <message>
        <source>close the drawer and the link</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Seitenteil und Link schließen</translation>
    </message>
    <message>
        <source>close the drawer; what is typed stays</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Seitenteil schließen; was getippt ist, bleibt</translation>
    </message>
    <message>
        <source>closed</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>codes</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Codes</translation>
    </message>
    <message>
        <source>codes that banks send as a message go there.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>dorthin gehen Codes, die Banken als Nachricht senden.</translation>
    </message>
    <message>
        <source>copy the chosen entry</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>den gewählten Eintrag kopieren</translation>
    </message>
    <message>
        <source>dashes, a small ring where it was made</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>Striche, ein kleiner Ring, wo er erstellt wurde</translation>
    </message>
    <message>
        <source>deliver now</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>jetzt liefern</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>device_key is the device’s key as it is: whoever holds the file gets in. device_key_sealed is the same key under the bundle’s passphrase.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>device_key ist der Schlüssel des Geräts, wie er ist: Wer die Datei hat, kommt hinein. device_key_sealed ist derselbe Schlüssel unter der Passphrase des Bündels.</translation>
    </message>
    <message>
        <source>draft</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>due soon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>bald fällig</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>ended a moment ago</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>eben abgelaufen</translation>
    </message>
    <message>
        <source>ended yesterday</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>gestern abgelaufen</translation>
    </message>
    <message>
        <source>ended {days} days ago</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>vor {days} Tagen abgelaufen</translation>
    </message>
    <message>
        <source>ended {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>abgelaufen am {day}</translation>
    </message>
    <message>
        <source>ends</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>läuft ab</translation>
    </message>
    <message>
        <source>ends today</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>läuft heute ab</translation>
    </message>
    <message>
        <source>ends {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>läuft am {day} ab</translation>
    </message>
    <message>
        <source>everything they do on the internet goes through home</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>alles, was sie im Internet tun, geht über zu Hause</translation>
    </message>
    <message>
        <source>final</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>endgültig</translation>
    </message>
    <message>
        <source>find</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>suchen</translation>
    </message>
    <message>
        <source>fine dots while you choose</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>feine Punkte, während du wählst</translation>
    </message>
    <message>
        <source>for a few days</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>für ein paar Tage</translation>
    </message>
    <message>
        <source>for days, not years, an hourglass</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>für Tage, nicht für Jahre, eine Sanduhr</translation>
    </message>
    <message>
        <source>for good, a solid octagon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>endgültig, ein volles Achteck</translation>
    </message>
    <message>
        <source>for the device</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>für das Gerät</translation>
    </message>
    <message>
        <source>for the gateway</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>für das Gateway</translation>
    </message>
    <message>
        <source>full</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>ganz</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>guest</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>Gast</translation>
    </message>
    <message>
        <source>handed over</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>hearthkey VERB --help shows what belongs there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey VERB --help zeigt, was dorthin gehört.</translation>
    </message>
    <message>
        <source>hearthkey kinds marks your own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey kinds markiert deine eigenen.</translation>
    </message>
    <message>
        <source>hearthkey list shows all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey list zeigt alle.</translation>
    </message>
    <message>
        <source>hearthkey lists shows all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey lists zeigt alle.</translation>
    </message>
    <message>
        <source>hidden, {count} characters</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>verborgen, {count} Zeichen</translation>
    </message>
    <message>
        <source>hollow bar, a lozenge where it was handed over</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>hohler Balken, eine Raute, wo er übergeben wurde</translation>
    </message>
    <message>
        <source>if cards or a banking app are on it.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>wenn Karten oder eine Banking-App darauf sind.</translation>
    </message>
    <message>
        <source>in the home subnets</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>in den Subnetzen zu Hause</translation>
    </message>
    <message>
        <source>in the tray</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>in der Ablage</translation>
    </message>
    <message>
        <source>in the tray, ends {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>in der Ablage, läuft am {day} ab</translation>
    </message>
    <message>
        <source>in use</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>in use since {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>in Gebrauch seit {day}</translation>
    </message>
    <message>
        <source>in use, in force</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>in Gebrauch, in Kraft</translation>
    </message>
    <message>
        <source>in use, seen from nowhere yet, a broken ring</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>in Gebrauch, noch von nirgends gesehen, ein unterbrochener Ring</translation>
    </message>
    <message>
        <source>it is not used any more</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>es wird nicht mehr benutzt</translation>
    </message>
    <message>
        <source>it is stopped for now</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>es ist vorläufig gesperrt</translation>
    </message>
    <message>
        <source>it was lost or stolen</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>es wurde verloren oder gestohlen</translation>
    </message>
    <message>
        <source>its owner left the household</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>die Person hat den Haushalt verlassen</translation>
    </message>
    <message>
        <source>just now</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>eben</translation>
    </message>
    <message>
        <source>keep it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>behalten</translation>
    </message>
    <message>
        <source>let TCP port {port} from {networks} in for a quarter of an hour, in the input chain.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>lass TCP-Port {port} von {networks} für eine Viertelstunde ein, in der input-Kette.</translation>
    </message>
    <message>
        <source>lost or stolen</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>verloren oder gestohlen</translation>
    </message>
    <message>
        <source>made</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>erstellt</translation>
    </message>
    <message>
        <source>made, in the tray, a quarter filled</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>erstellt, in der Ablage, ein Viertel gefüllt</translation>
    </message>
    <message>
        <source>made, takes over from the older pass</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>erstellt, übernimmt vom älteren Pass</translation>
    </message>
    <message>
        <source>make the pass</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Pass erstellen</translation>
    </message>
    <message>
        <source>never gets in again</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>kommt nie wieder hinein</translation>
    </message>
    <message>
        <source>never proved</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>nie nachgewiesen</translation>
    </message>
    <message>
        <source>new device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>neues Gerät</translation>
    </message>
    <message>
        <source>next part of the window</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>nächster Teil des Fensters</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <source>not in the home subnets, so only a phone in the same network ({network}) gets through</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>nicht in den Subnetzen zu Hause, also kommt nur ein Handy im selben Netz ({network}) durch</translation>
    </message>
    <message>
        <source>not known to be gone</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>nicht bekannt, ob weg</translation>
    </message>
    <message>
        <source>not known whether it left</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>nicht bekannt, ob sie hinausging</translation>
    </message>
    <message>
        <source>not made yet, a thin ring</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>noch nicht erstellt, ein dünner Ring</translation>
    </message>
    <message>
        <source>nothing today</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>heute nichts</translation>
    </message>
    <message>
        <source>on hold, may come back, a hollow octagon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>vorläufig gesperrt, kann zurückkommen, ein hohles Achteck</translation>
    </message>
    <message>
        <source>on the maker’s own page for lost devices; look first where it is.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>auf der Seite des Herstellers für verlorene Geräte; sieh zuerst nach, wo es ist.</translation>
    </message>
    <message>
        <source>on {day}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>am {day}</translation>
    </message>
    <message>
        <source>one of {forms}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>eines von diesen: {forms}</translation>
    </message>
    <message>
        <source>open the device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>das Gerät öffnen</translation>
    </message>
    <message>
        <source>opens nothing: revoked on {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>öffnet nichts: widerrufen am {day}</translation>
    </message>
    <message>
        <source>opens nothing: the pass ended on {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>öffnet nichts: Pass abgelaufen am {day}</translation>
    </message>
    <message>
        <source>past the end of the list, double rule and hatch</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>nach dem Ende der Liste, Doppellinie und Schraffur</translation>
    </message>
    <message>
        <source>prove the selected device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>das gewählte Gerät nachweisen</translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>proved {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>nachgewiesen am {day}</translation>
    </message>
    <message>
        <source>proved {day}, its key is still here</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>nachgewiesen am {day}, sein Schlüssel ist noch hier</translation>
    </message>
    <message>
        <source>proved; gateway, list and CA; a solid disc</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>nachgewiesen; Gateway, Liste und CA; eine volle Scheibe</translation>
    </message>
    <message>
        <source>put it aside</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>beiseitelegen</translation>
    </message>
    <message>
        <source>reachable from the internet, so nothing is offered there</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>aus dem Internet erreichbar, also wird dort nichts angeboten</translation>
    </message>
    <message>
        <source>reached its date, a corner cut off</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>am letzten Tag angekommen, eine Ecke abgeschnitten</translation>
    </message>
    <message>
        <source>red; an arrowhead: it began before the sheet does</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>rot; eine Pfeilspitze: Er begann, bevor das Blatt beginnt</translation>
    </message>
    <message>
        <source>revoked</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>widerrufen</translation>
    </message>
    <message>
        <source>revoked {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>widerrufen am {day}</translation>
    </message>
    <message>
        <source>revoked: {why}</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>widerrufen: {why}</translation>
    </message>
    <message>
        <source>split</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>geteilt</translation>
    </message>
    <message>
        <source>stop it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>sperren</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>stopped {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>gesperrt am {day}</translation>
    </message>
    <message>
        <source>sudo firewall-cmd --add-port={port}/tcp --timeout=15m; it goes by itself.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>sudo firewall-cmd --add-port={port}/tcp --timeout=15m; es geht von selbst wieder weg.</translation>
    </message>
    <message>
        <source>sudo ufw allow from {network} to any port {port} proto tcp; take it back afterwards with sudo ufw delete and the same words.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>sudo ufw allow from {network} to any port {port} proto tcp; nimm es danach zurück, mit sudo ufw delete und denselben Worten.</translation>
    </message>
    <message>
        <source>take the last change back</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>die letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>take the last change back; the diary keeps both</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>die letzte Änderung zurücknehmen; das Tagebuch behält beides</translation>
    </message>
    <message>
        <source>the desk: all that wait, one after another</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>der Tisch: alle, die warten, eines nach dem anderen</translation>
    </message>
    <message>
        <source>the gateway’s certificate</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>das Zertifikat des Gateways</translation>
    </message>
    <message>
        <source>the householder said so</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>wer den Haushalt führt, hat es gesagt</translation>
    </message>
    <message>
        <source>the inside of a tunnel; a phone that is not set up yet cannot reach it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>das Innere eines Tunnels; ein Handy, das noch nicht eingerichtet ist, erreicht es nicht</translation>
    </message>
    <message>
        <source>the next entry found, the one before</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>der nächste gefundene Eintrag, der vorige</translation>
    </message>
    <message>
        <source>the old pass ended</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>der alte Pass ist abgelaufen</translation>
    </message>
    <message>
        <source>the old pass ends</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>der alte Pass läuft ab</translation>
    </message>
    <message>
        <source>the old pass was handed over</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>der alte Pass wurde übergeben</translation>
    </message>
    <message>
        <source>the one pass that was in use then gets in until it ends</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>der eine Pass, der damals in Gebrauch war, kommt hinein, bis er abläuft</translation>
    </message>
    <message>
        <source>the revocation list</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>die Sperrliste</translation>
    </message>
    <message>
        <source>the {count} passes that were in use then get in until they end</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>die {count} Pässe, die damals in Gebrauch waren, kommen hinein, bis sie ablaufen</translation>
    </message>
    <message>
        <source>then it ends</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>dann ist Schluss</translation>
    </message>
    <message>
        <source>they know it; it is made anew, and every other device is told: hearthkey secrets --renew.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>die Person kennt es; es wird neu erstellt, und jedes andere Gerät erfährt es: hearthkey secrets --renew.</translation>
    </message>
    <message>
        <source>thin and thick final bar, nothing after it</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>dünner und dicker Schlussstrich, nichts danach</translation>
    </message>
    <message>
        <source>thin line in the second ink</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>dünne Linie in der zweiten Farbe</translation>
    </message>
    <message>
        <source>this computer itself; no phone reaches it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>dieser Computer selbst; kein Handy erreicht ihn</translation>
    </message>
    <message>
        <source>this page</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>diese Seite</translation>
    </message>
    <message>
        <source>today {time}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>heute {time}</translation>
    </message>
    <message>
        <source>unknown</source>
        <extracomment>A sentence that a shell can translate before it fills in the facts.</extracomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>until {day}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>bis {day}</translation>
    </message>
    <message>
        <source>waiting</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>wartet</translation>
    </message>
    <message>
        <source>wants you, a triangle, the only red sign</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>braucht dich, ein Dreieck, das einzige rote Zeichen</translation>
    </message>
    <message>
        <source>was</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>wurde</translation>
    </message>
    <message>
        <source>weak</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>schwach</translation>
    </message>
    <message>
        <source>were</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>wurden</translation>
    </message>
    <message>
        <source>what follows was seen to get in</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>was darauf folgt, kam nachweislich hinein</translation>
    </message>
    <message>
        <source>what is not at home keeps going its own way</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>was nicht zu Hause ist, geht weiter seinen eigenen Weg</translation>
    </message>
    <message>
        <source>what is to be done</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>was zu tun ist</translation>
    </message>
    <message>
        <source>what was written for their devices may carry some: {subject}.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>was für die Geräte der Person geschrieben wurde, enthält vielleicht welche: {subject}.</translation>
    </message>
    <message>
        <source>whoever is on the home network needs no pass.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>wer im Netz zu Hause ist, braucht keinen Pass.</translation>
    </message>
    <message>
        <source>whoever reads the mail can reset every other password.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>wer die Mail liest, kann jedes andere Passwort zurücksetzen.</translation>
    </message>
    <message>
        <source>with it and a sealed copy, the whole household can be brought back elsewhere.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>mit ihr und einer versiegelten Kopie lässt sich der ganze Haushalt woanders zurückholen.</translation>
    </message>
    <message>
        <source>with the serial number or IMEI from its box; insurers ask for it.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>mit Seriennummer oder IMEI von der Schachtel; Versicherungen fragen danach.</translation>
    </message>
    <message>
        <source>would end</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>würde ablaufen</translation>
    </message>
    <message>
        <source>your own “{name}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>eigene Vorlage „{name}“</translation>
    </message>
    <message>
        <source>{address} asked from neither the tunnel nor home, and got nothing.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{address} hat weder aus dem Tunnel noch von zu Hause gefragt und nichts bekommen.</translation>
    </message>
    <message>
        <source>{address} asked from outside the home network and got nothing.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} hat von außerhalb des Netzes zu Hause angefragt und nichts bekommen.</translation>
    </message>
    <message>
        <source>{address} is downloading.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} lädt herunter.</translation>
    </message>
    <message>
        <source>{address} is this computer’s own address, so it would prove nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{address} ist die eigene Adresse dieses Computers, also wäre damit nichts nachgewiesen.</translation>
    </message>
    <message>
        <source>{address} tried a wrong link.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{address} hat einen falschen Link versucht.</translation>
    </message>
    <message>
        <source>{address}: {why}</source>
        <extracomment>What the desk is told about a pick-up, in words.</extracomment>
        <translation>{address}: {why}</translation>
    </message>
    <message>
        <source>{change}: no device needs a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: Kein Gerät braucht ein neues Bündel.</translation>
    </message>
    <message>
        <source>{change}: {count} devices need a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: {count} Geräte brauchen ein neues Bündel.</translation>
    </message>
    <message>
        <source>{change}: {title} needs a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: {title} braucht ein neues Bündel.</translation>
    </message>
    <message>
        <source>{count} Wi-Fis are more than {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{count} WLANs sind mehr als {limit}.</translation>
    </message>
    <message>
        <source>{count} are withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{count} sind zurückgezogen.</translation>
    </message>
    <message>
        <source>{count} are withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{count} sind zurückgezogen; die höchste Listennummer ist {number}.</translation>
    </message>
    <message>
        <source>{count} bundles that wait have to be made anew: their keys are in no copy.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{count} Bündel, die warten, müssen neu erstellt werden: Ihre Schlüssel sind in keiner Kopie.</translation>
    </message>
    <message>
        <source>{count} certificates of devices were found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurden {count} Zertifikate von Geräten gefunden.</translation>
    </message>
    <message>
        <source>{count} certificates of gateways were recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Es wurden {count} Zertifikate von Gateways erkannt.</translation>
    </message>
    <message>
        <source>{count} changed</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{count} geändert</translation>
    </message>
    <message>
        <source>{count} devices are not through yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{count} Geräte sind noch nicht durch.</translation>
    </message>
    <message>
        <source>{count} devices get a new key and a new pass each. Their old passes stay as they are until the new ones were seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} Geräte bekommen je einen neuen Schlüssel und einen neuen Pass. Ihre alten Pässe bleiben, wie sie sind, bis die neuen nachweislich hineinkamen.</translation>
    </message>
    <message>
        <source>{count} devices have a new pass. Their bundles wait in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} Geräte haben einen neuen Pass. Ihre Bündel warten in der Ablage.</translation>
    </message>
    <message>
        <source>{count} devices were not begun and stay ticked.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} Geräte wurden nicht begonnen und bleiben angekreuzt.</translation>
    </message>
    <message>
        <source>{count} entries of the diary came later.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{count} Einträge im Tagebuch kamen später dazu.</translation>
    </message>
    <message>
        <source>{count} files went to {where} and were read back. Revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{where}: {count} Dateien gingen dorthin und wurden zurückgelesen. Sperrliste Nr. {number} ist in Kraft.</translation>
    </message>
    <message>
        <source>{count} more</source>
        <extracomment>English text that remembers how it was made, so that a shell can say the same in another language.</extracomment>
        <translation>{count} weitere</translation>
    </message>
    <message>
        <source>{count} new</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{count} neu</translation>
    </message>
    <message>
        <source>{count} no longer needed</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{count} nicht mehr nötig</translation>
    </message>
    <message>
        <source>{count} parts were made for whoever takes over, set {name}: any {least} of them open the sealed copies that are made from now on.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>{count} Teile wurden gemacht für die Person, die einmal übernimmt, Satz {name}: je {least} davon öffnen die versiegelten Kopien, die von jetzt an gemacht werden.</translation>
    </message>
    <message>
        <source>{count} passes are taken over; they go on as they are, and wait for you to say whose they are.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{count} Pässe werden übernommen; sie laufen weiter, wie sie sind, und warten darauf, dass du sagst, wem sie gehören.</translation>
    </message>
    <message>
        <source>{count} passes on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{count} Pässe auf der Sperrliste</translation>
    </message>
    <message>
        <source>{count} stop lists beside revocation list {number} were written for a deputy, who can stop devices with them.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>{count} Sperrlisten neben Sperrliste Nr. {number} wurden für eine Vertretung geschrieben, die damit Geräte sperren kann.</translation>
    </message>
    <message>
        <source>{count} the same</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{count} gleich</translation>
    </message>
    <message>
        <source>{days} days left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>noch {days} Tage</translation>
    </message>
    <message>
        <source>{day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>{day}</translation>
    </message>
    <message>
        <source>{day} is over.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{day} ist vorbei.</translation>
    </message>
    <message>
        <source>{files}</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files}</translation>
    </message>
    <message>
        <source>{files} and one more</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files} und eine weitere</translation>
    </message>
    <message>
        <source>{files} and {more} more</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files} und {more} weitere</translation>
    </message>
    <message>
        <source>{file} cannot be opened ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} lässt sich nicht öffnen ({seen}).</translation>
    </message>
    <message>
        <source>{file} cannot be read as TOML: {seen}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} lässt sich nicht als TOML lesen: {seen}.</translation>
    </message>
    <message>
        <source>{file} describes {name}, so it is not clear which of the two it is about.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} beschreibt {name}, also ist nicht klar, um welches von beiden es geht.</translation>
    </message>
    <message>
        <source>{file} does not say that it describes a device kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} sagt nicht, dass darin eine Geräteart beschrieben ist.</translation>
    </message>
    <message>
        <source>{file} does not say {place}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} sagt nichts zu {place}.</translation>
    </message>
    <message>
        <source>{file} has steps for {text}, which is not among its forms.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} hat Schritte für {text}, das nicht unter seinen Formen ist.</translation>
    </message>
    <message>
        <source>{file} has {count} entries under {place}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} hat {count} Einträge unter {place}.</translation>
    </message>
    <message>
        <source>{file} is larger than {limit} octets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} ist größer als {limit} Byte.</translation>
    </message>
    <message>
        <source>{file} is of version {version}; this app reads {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} hat Version {version}; diese App liest {known}.</translation>
    </message>
    <message>
        <source>{file} names the form {text} twice.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} nennt die Form {text} zweimal.</translation>
    </message>
    <message>
        <source>{file} says that the device takes {text}, but not what to do with it there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} sagt, dass das Gerät {text} nimmt, aber nicht, was dort damit zu tun ist.</translation>
    </message>
    <message>
        <source>{file} says {place}, which nobody obeys.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} nennt {place}, und niemand richtet sich danach.</translation>
    </message>
    <message>
        <source>{first} and {next}</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{first} und {next}</translation>
    </message>
    <message>
        <source>{first} {next}</source>
        <extracomment>Joins the things of a list, two by two.</extracomment>
        <translation>{first} {next}</translation>
    </message>
    <message>
        <source>{first}, {next}</source>
        <extracomment>Joins the things of a list, two by two.</extracomment>
        <translation>{first}, {next}</translation>
    </message>
    <message>
        <source>{first}; {next}</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{first}; {next}</translation>
    </message>
    <message>
        <source>{form}, dragged out of the window; where to, the desktop does not say</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, aus dem Fenster gezogen; wohin, sagt der Desktop nicht</translation>
    </message>
    <message>
        <source>{form}, in the folder {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, im Ordner {place}</translation>
    </message>
    <message>
        <source>{form}, offered for pick-up; whether a phone got it is not known</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, zum Abholen angeboten; ob ein Handy es bekam, ist nicht bekannt</translation>
    </message>
    <message>
        <source>{form}, on paper</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, auf Papier</translation>
    </message>
    <message>
        <source>{form}, on the clipboard</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, in der Zwischenablage</translation>
    </message>
    <message>
        <source>{form}, on the stick “{place}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, auf dem Stick „{place}“</translation>
    </message>
    <message>
        <source>{form}, perhaps dragged out of the window</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, vielleicht aus dem Fenster gezogen</translation>
    </message>
    <message>
        <source>{form}, perhaps in the folder {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, vielleicht im Ordner {place}</translation>
    </message>
    <message>
        <source>{form}, perhaps on paper</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, vielleicht auf Papier</translation>
    </message>
    <message>
        <source>{form}, perhaps on the clipboard</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, vielleicht in der Zwischenablage</translation>
    </message>
    <message>
        <source>{form}, perhaps on the stick “{place}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, vielleicht auf dem Stick „{place}“</translation>
    </message>
    <message>
        <source>{form}, picked up by {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, abgeholt von {place}</translation>
    </message>
    <message>
        <source>{have} of the {need} parts that it takes: with fewer nobody learns anything, and nothing opens.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{have} von den {need} Teilen, die es braucht: mit weniger erfährt niemand etwas, und nichts öffnet sich.</translation>
    </message>
    <message>
        <source>{host} is nobody’s address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{host} ist niemandes Adresse.</translation>
    </message>
    <message>
        <source>{host} port {port}, {folder}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{host} Port {port}, {folder}</translation>
    </message>
    <message>
        <source>{host}, {folder}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{host}, {folder}</translation>
    </message>
    <message>
        <source>{household} comes back as it was on {day}. What was done later is not here: who was stopped after that is taken over from the gateway at the first delivery.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{household} kommt zurück, wie es am {day} war. Was später getan wurde, ist hier nicht: Wer danach gesperrt wurde, wird bei der ersten Lieferung vom Gateway übernommen.</translation>
    </message>
    <message>
        <source>{household} comes back with its key and its settings as they were on {day}, and the gateway gets a new certificate. People and devices are not on paper: {living}, and each needs a new one from here. Who was stopped is taken over from the gateway at the first delivery.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{household} kommt zurück mit dem Schlüssel und den Einstellungen vom {day}, und das Gateway bekommt ein neues Zertifikat. Personen und Geräte stehen nicht auf Papier: {living}, und jedes Gerät braucht einen neuen von hier. Wer gesperrt war, wird bei der ersten Lieferung vom Gateway übernommen.</translation>
    </message>
    <message>
        <source>{household} goes on under its own CA.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} läuft unter der eigenen CA weiter.</translation>
    </message>
    <message>
        <source>{household} was brought back from the paper of {day}: the key, the settings, and {withdrawn}.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{household} wurde vom Papier vom {day} zurückgeholt: der Schlüssel, die Einstellungen und {withdrawn}.</translation>
    </message>
    <message>
        <source>{household} was brought back from the sealed copy of {day}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{household} wurde aus der versiegelten Kopie vom {day} zurückgeholt.</translation>
    </message>
    <message>
        <source>{household} was taken over as it was made elsewhere: its CA, which ends {ends}, 1 pass and {withdrawn} on the list. Revocation list {number} was signed.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} wurde übernommen, wie es woanders erstellt wurde: die CA, die am {ends} abläuft, 1 Pass und {withdrawn} auf der Liste. Sperrliste Nr. {number} wurde signiert.</translation>
    </message>
    <message>
        <source>{household} was taken over as it was made elsewhere: its CA, which ends {ends}, {count} passes and {withdrawn} on the list. Revocation list {number} was signed.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} wurde übernommen, wie es woanders erstellt wurde: die CA, die am {ends} abläuft, {count} Pässe und {withdrawn} auf der Liste. Sperrliste Nr. {number} wurde signiert.</translation>
    </message>
    <message>
        <source>{key} is missing (looked for from line {line} on).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{key} fehlt (gesucht ab Zeile {line}).</translation>
    </message>
    <message>
        <source>{line} and {count} more lines</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>{line} und {count} weitere Zeilen</translation>
    </message>
    <message>
        <source>{member} lies in the archive without AES-256.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{member} liegt ohne AES-256 im Archiv.</translation>
    </message>
    <message>
        <source>{minutes} min ago</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>vor {minutes} min</translation>
    </message>
    <message>
        <source>{name} is for devices.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} ist für Geräte.</translation>
    </message>
    <message>
        <source>{name} is neither a picture (PNG or JPEG) nor plain text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} ist weder ein Bild (PNG oder JPEG) noch reiner Text.</translation>
    </message>
    <message>
        <source>{name} is not one of your own kinds, so there is nothing to take away.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} ist keine deiner eigenen Gerätearten, also gibt es nichts wegzunehmen.</translation>
    </message>
    <message>
        <source>{name} seems to be on here and may refuse the phone. If the code does not open: {how}</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{name} ist hier wohl eingeschaltet und weist das Handy vielleicht ab. Öffnet sich der Code nicht: {how}</translation>
    </message>
    <message>
        <source>{name} was founded. Its CA ends {authority_end}, the certificate of its gateway {host} ends {gateway_end}. Revocation list 1 was signed; nobody is on it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{name} wurde gegründet. Die CA läuft am {authority_end} ab, das Zertifikat des Gateways {host} am {gateway_end}. Sperrliste Nr. 1 wurde signiert; niemand steht darauf.</translation>
    </message>
    <message>
        <source>{name} was named as the outer interface and as the tunnel’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} wurde als Schnittstelle nach außen und als die des Tunnels genannt.</translation>
    </message>
    <message>
        <source>{name} was written with the key length &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} wurde mit der Schlüssellänge „{text}“ geschrieben.</translation>
    </message>
    <message>
        <source>{name} will let its devices in at {host}, into {home}; {what}. Inside, devices get addresses from {tunnel}.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{name} lässt seine Geräte unter {host} ein, nach {home}; {what}. Innen bekommen Geräte Adressen aus {tunnel}.</translation>
    </message>
    <message>
        <source>{new} gets a pass of its own, with a new key. {old} stops getting in once the gateway holds list {number}, and never gets in again once {new} was seen to. Until then it can be let back in.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{new} bekommt einen eigenen Pass, mit einem neuen Schlüssel. {old} kommt nicht mehr hinein, sobald das Gateway Liste Nr. {number} hat, und nie wieder, sobald {new} nachweislich hineinkam. Bis dahin lässt es sich wieder einlassen.</translation>
    </message>
    <message>
        <source>{number} is no port; they go from 1 to 65535.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{number} ist kein Port; sie gehen von 1 bis 65535.</translation>
    </message>
    <message>
        <source>{number} is not a TCP port.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{number} ist kein TCP-Port.</translation>
    </message>
    <message>
        <source>{one} and {other} overlap, so some addresses would lie in two places at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{one} und {other} überschneiden sich, also lägen manche Adressen an zwei Orten zugleich.</translation>
    </message>
    <message>
        <source>{path} cannot be read: {seen}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} lässt sich nicht lesen: {seen}</translation>
    </message>
    <message>
        <source>{path} could not be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ließ sich nicht lesen ({seen}).</translation>
    </message>
    <message>
        <source>{path} holds something that is no tour.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} enthält etwas, das keine Tour ist.</translation>
    </message>
    <message>
        <source>{path} is gone; a stick may have been pulled. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ist weg; vielleicht wurde ein Stick abgezogen. Nichts ist verloren, nichts ist halb getan.</translation>
    </message>
    <message>
        <source>{path} is larger than {limit} octets; nothing that this app writes is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ist größer als {limit} Byte; nichts, was diese App schreibt, ist das.</translation>
    </message>
    <message>
        <source>{path} is not a file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ist keine Datei.</translation>
    </message>
    <message>
        <source>{path} is there already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} gibt es schon.</translation>
    </message>
    <message>
        <source>{path} names no device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} nennt kein Gerät.</translation>
    </message>
    <message>
        <source>{person} has no pass that gets in, or could again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{person} hat keinen Pass, der hineinkommt oder wieder hineinkommen könnte.</translation>
    </message>
    <message>
        <source>{person} never gets in again with any of these {count} devices once the gateway holds list {number} (affiliationChanged). {others} This is final.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>{person} kommt mit keinem dieser {count} Geräte je wieder hinein, sobald das Gateway Liste Nr. {number} hat (affiliationChanged). {others} Das ist endgültig.</translation>
    </message>
    <message>
        <source>{person} never gets in again with this device once the gateway holds list {number} (affiliationChanged). {others} This is final.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>{person} kommt mit diesem Gerät nie wieder hinein, sobald das Gateway Liste Nr. {number} hat (affiliationChanged). {others} Das ist endgültig.</translation>
    </message>
    <message>
        <source>{person} told that {title} gets in, on mobile data.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{person} hat gesagt, dass {title} hineinkommt, mit mobilen Daten.</translation>
    </message>
    <message>
        <source>{person} will get in with this {device} {end}. Nobody else has this pass.{again}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{person} kommt mit diesem Gerät ({device}) hinein, {end}. Sonst hat niemand diesen Pass.{again}</translation>
    </message>
    <message>
        <source>{person}’s {device}</source>
        <extracomment>The household, its people, their devices and its gateway, as values.</extracomment>
        <translation>{device} von {person}</translation>
    </message>
    <message>
        <source>{place} cannot be reached now, so nothing was deleted.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} ist jetzt nicht zu erreichen, also wurde nichts gelöscht.</translation>
    </message>
    <message>
        <source>{place} in {file} gives {text} a second label.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} gibt {text} eine zweite Beschriftung.</translation>
    </message>
    <message>
        <source>{place} in {file} holds a line end, a tab, or a character that cannot be seen.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} enthält ein Zeilenende, einen Tabulator oder ein Zeichen, das nicht zu sehen ist.</translation>
    </message>
    <message>
        <source>{place} in {file} is &quot;{text}&quot;, which is not known.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} ist „{text}“, und das ist nicht bekannt.</translation>
    </message>
    <message>
        <source>{place} in {file} is empty or too long.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} ist leer oder zu lang.</translation>
    </message>
    <message>
        <source>{place} in {file} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} fehlt.</translation>
    </message>
    <message>
        <source>{place} in {file} is not written as it has to be.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} in {file} ist nicht so geschrieben, wie es sein muss.</translation>
    </message>
    <message>
        <source>{serial} belongs to {title} already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{serial} gehört schon zu {title}.</translation>
    </message>
    <message>
        <source>{serial} is no pass that was made elsewhere.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{serial} ist kein Pass, der woanders erstellt wurde.</translation>
    </message>
    <message>
        <source>{setting} {after} (before: {before})</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{setting} {after} (zuvor: {before})</translation>
    </message>
    <message>
        <source>{source} says of {transform} for {protocol}: {level}. Whoever records the tunnel may one day read it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{source} sagt über {transform} bei {protocol}: {level}. Wer den Tunnel aufzeichnet, kann ihn vielleicht eines Tages lesen.</translation>
    </message>
    <message>
        <source>{subject} belongs to the range that providers share between customers (RFC 6598). Nobody outside can reach it, whatever the router forwards. Ask the provider for a public address, or use IPv6.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} gehört zu dem Bereich, den sich bei Anbietern viele Anschlüsse teilen (RFC 6598). Von außen ist es nicht erreichbar, was auch immer der Router weiterleitet. Verlang vom Anbieter eine öffentliche Adresse, oder nimm IPv6.</translation>
    </message>
    <message>
        <source>{subject} is known inside the home only. Devices get in on the home network and nowhere else. For access from outside, give the name that the world knows.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} ist nur zu Hause bekannt. Geräte kommen im Netz zu Hause hinein und sonst nirgends. Für den Zugang von außen gib den Namen an, den die Welt kennt.</translation>
    </message>
    <message>
        <source>{subject} is written into every bundle. If the provider changes it, every device needs a new bundle; with a name, none does.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} steht in jedem Bündel. Ändert der Anbieter das, braucht jedes Gerät ein neues Bündel; mit einem Namen keines.</translation>
    </message>
    <message>
        <source>{text} days is not a time that a pass can last.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} Tage kann kein Pass dauern.</translation>
    </message>
    <message>
        <source>{text} does not lie in home’s {home}, so the router has no way to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} liegt nicht im Netz {home} zu Hause; der Router hat also keinen Weg dorthin.</translation>
    </message>
    <message>
        <source>{text} is no address at home ({home}), so it is not the gateway’s inner one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} ist keine Adresse zu Hause ({home}), also nicht die innere des Gateways.</translation>
    </message>
    <message>
        <source>{text} is no address of this computer; it has {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} ist keine Adresse dieses Computers; er hat {known}.</translation>
    </message>
    <message>
        <source>{text} is no host that ssh could take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} ist kein Host, den ssh nehmen könnte.</translation>
    </message>
    <message>
        <source>{text} is no user name that ssh could take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} ist kein Benutzername, den ssh nehmen könnte.</translation>
    </message>
    <message>
        <source>{text} is the web front itself, which would ask itself for the page for ever.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} ist die Webfassade selbst; sie würde sich ewig selbst nach der Seite fragen.</translation>
    </message>
    <message>
        <source>{titles} cannot be stopped by a list: the pass is the old CA’s, whose key is lost. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{titles}: Eine Liste kann hier nicht sperren, denn der Pass ist von der alten CA, deren Schlüssel verloren ist. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>{title} does not get in ({state}), so there is nothing to prove.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} kommt nicht hinein ({state}), also gibt es nichts nachzuweisen.</translation>
    </message>
    <message>
        <source>{title} gets a new key and a pass until {ends}. Its old pass does not get in any more, so nothing overlaps.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} bekommt einen neuen Schlüssel und einen Pass bis {ends}. Der alte Pass kommt nicht mehr hinein, also überschneidet sich nichts.</translation>
    </message>
    <message>
        <source>{title} gets a new key and a pass until {ends}. The old one stays as it is: both get in until {overlap}, or until the new one was seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} bekommt einen neuen Schlüssel und einen Pass bis {ends}. Der alte bleibt, wie er ist: Beide kommen hinein bis {overlap}, oder bis der neue nachweislich hineinkam.</translation>
    </message>
    <message>
        <source>{title} gets in again once the gateway holds list {number}.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} kommt wieder hinein, sobald das Gateway Liste Nr. {number} hat.</translation>
    </message>
    <message>
        <source>{title} got a new pass until {day}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} hat einen neuen Pass bis {day} bekommen, Seriennummer {serial}. Sein Bündel wartet in der Ablage.</translation>
    </message>
    <message>
        <source>{title} got a pass until {day}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} hat einen Pass bis {day} bekommen, Seriennummer {serial}. Sein Bündel wartet in der Ablage.</translation>
    </message>
    <message>
        <source>{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} hat den nächsten Pass bis {ends} bekommen, Seriennummer {serial}. Sein Bündel wartet in der Ablage.</translation>
    </message>
    <message>
        <source>{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray; the old pass gets in beside it until {overlap}, or until the new one is seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} hat den nächsten Pass bis {ends} bekommen, Seriennummer {serial}. Sein Bündel wartet in der Ablage; der alte Pass kommt daneben noch hinein bis {overlap}, oder bis der neue nachweislich hineinkam.</translation>
    </message>
    <message>
        <source>{title} had a pass that is over.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} hatte einen Pass, der vorbei ist.</translation>
    </message>
    <message>
        <source>{title} has a bundle in the tray already. A second one would only be taken for the first.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} hat schon ein Bündel in der Ablage. Ein zweites würde nur für das erste gehalten.</translation>
    </message>
    <message>
        <source>{title} has a new bundle in the tray.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} hat ein neues Bündel in der Ablage.</translation>
    </message>
    <message>
        <source>{title} has a new pass. Its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} hat einen neuen Pass. Sein Bündel wartet in der Ablage.</translation>
    </message>
    <message>
        <source>{title} has a pass already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} hat schon einen Pass.</translation>
    </message>
    <message>
        <source>{title} has a pass of the old CA, until {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} hat einen Pass der alten CA, bis {day}.</translation>
    </message>
    <message>
        <source>{title} has a pass of the old CA, which ends by itself on {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} hat einen Pass der alten CA, der am {day} von selbst abläuft.</translation>
    </message>
    <message>
        <source>{title} has its new bundle; nobody has seen it get in yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} hat das neue Bündel; dass es hineinkommt, hat noch niemand gesehen.</translation>
    </message>
    <message>
        <source>{title} is a guest’s and is meant to end.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} ist für einen Gast und soll ablaufen.</translation>
    </message>
    <message>
        <source>{title} is asked for twice.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wird zweimal verlangt.</translation>
    </message>
    <message>
        <source>{title} is in: the link was opened through the gateway, which shows itself as {address}. Which device in the tunnel it was, or the gateway’s own computer, that address cannot say.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} ist drin: Der Link wurde durch das Gateway geöffnet, das sich als {address} zeigt. Welches Gerät im Tunnel es war, oder der Computer des Gateways selbst, kann diese Adresse nicht sagen.</translation>
    </message>
    <message>
        <source>{title} is in: the link was opened through the tunnel, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} ist drin: Der Link wurde durch den Tunnel geöffnet, von {address}.</translation>
    </message>
    <message>
        <source>{title} is not stopped.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ist nicht gesperrt.</translation>
    </message>
    <message>
        <source>{title} is stopped already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ist schon gesperrt.</translation>
    </message>
    <message>
        <source>{title} is stopped. Renew it by name, if it is to get in again.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} ist gesperrt. Nenn es beim Erneuern mit Namen, wenn es wieder hineinkommen soll.</translation>
    </message>
    <message>
        <source>{title} is through.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} ist durch.</translation>
    </message>
    <message>
        <source>{title} keeps its key; here it is erased, with its passphrase. If the bundle is lost after that, it is replaced, never sent again.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} behält seinen Schlüssel; hier wird er gelöscht, samt der Passphrase. Geht das Bündel danach verloren, wird es ersetzt, nie noch einmal gesendet.</translation>
    </message>
    <message>
        <source>{title} never gets in again once the gateway holds list {number}: {reason} ({rfc}). {others} This is final.{shared}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} kommt nie wieder hinein, sobald das Gateway Liste Nr. {number} hat: {reason} ({rfc}). {others} Das ist endgültig.{shared}</translation>
    </message>
    <message>
        <source>{title} proves that it gets in by opening a link at {where} through the tunnel.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} weist nach, dass es hineinkommt, indem es unter {where} durch den Tunnel einen Link öffnet.</translation>
    </message>
    <message>
        <source>{title} stops getting in once the gateway holds list {number}. {others} It can be let back in.{shared}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} kommt nicht mehr hinein, sobald das Gateway Liste Nr. {number} hat. {others} Es kann wieder eingelassen werden.{shared}</translation>
    </message>
    <message>
        <source>{title} stops getting in, and with it {besides}: no narrower list lies ready. All can be let back in.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{title} kommt nicht mehr hinein, und mit ihm {besides}: Eine engere Liste liegt nicht bereit. Alle können wieder eingelassen werden.</translation>
    </message>
    <message>
        <source>{title} stops getting in. No passphrase is needed, and it can be let back in.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{title} kommt nicht mehr hinein. Es braucht keine Passphrase, und es kann wieder eingelassen werden.</translation>
    </message>
    <message>
        <source>{title} takes the place of {old}. Its pass is good until {ends}, serial {serial}; its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} kommt an die Stelle von {old}. Der Pass gilt bis {ends}, Seriennummer {serial}; sein Bündel wartet in der Ablage.</translation>
    </message>
    <message>
        <source>{title} then counts as proved today, because {person} says so. That stays written down and cannot be taken back. It is worth something only if Wi-Fi was off.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} gilt dann ab heute als nachgewiesen, weil {person} es sagt. Das bleibt aufgeschrieben und lässt sich nicht zurücknehmen. Es ist nur etwas wert, wenn das WLAN aus war.</translation>
    </message>
    <message>
        <source>{title} took another device’s place, and its pass stays on record, so that is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} hat den Platz eines anderen Geräts eingenommen, und sein Pass bleibt verzeichnet; das wird also nicht rückgängig gemacht.</translation>
    </message>
    <message>
        <source>{title} was handed over, and its key exists on the device alone. That is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wurde übergeben, und den Schlüssel gibt es nur noch auf dem Gerät. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>{title} was handed over. Its key and passphrase were erased here.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurde übergeben. Schlüssel und Passphrase wurden hier gelöscht.</translation>
    </message>
    <message>
        <source>{title} was handed over: its key exists on that device alone and is never sent again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wurde übergeben: Den Schlüssel gibt es nur auf diesem Gerät, und er wird nie noch einmal gesendet.</translation>
    </message>
    <message>
        <source>{title} was let back in with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurde mit Sperrliste Nr. {number} wieder eingelassen.</translation>
    </message>
    <message>
        <source>{title} was not begun and stays ticked.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} wurde nicht begonnen und bleibt angekreuzt.</translation>
    </message>
    <message>
        <source>{title} was not begun.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} wurde nicht begonnen.</translation>
    </message>
    <message>
        <source>{title} was revoked already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wurde schon widerrufen.</translation>
    </message>
    <message>
        <source>{title} was revoked for good with revocation list {number}: {reason} ({rfc}).</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurde mit Sperrliste Nr. {number} endgültig widerrufen: {reason} ({rfc}).</translation>
    </message>
    <message>
        <source>{title} was revoked for good. A new pass: hearthkey add --replace.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} wurde endgültig widerrufen. Ein neuer Pass: hearthkey add --replace.</translation>
    </message>
    <message>
        <source>{title} was revoked for good. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wurde endgültig widerrufen. Das lässt sich nie rückgängig machen.</translation>
    </message>
    <message>
        <source>{title} was revoked, and that is final.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} wurde widerrufen, und das ist endgültig.</translation>
    </message>
    <message>
        <source>{title} was seen to get in: its link was opened through the gateway, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} kam nachweislich hinein: Der Link wurde durch das Gateway geöffnet, von {address}.</translation>
    </message>
    <message>
        <source>{title} was seen to get in: its link was opened through the tunnel, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} kam nachweislich hinein: Der Link wurde durch den Tunnel geöffnet, von {address}.</translation>
    </message>
    <message>
        <source>{title} was stopped with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurde mit Sperrliste Nr. {number} gesperrt.</translation>
    </message>
    <message>
        <source>{title} was stopped with spare list {number}, without the passphrase.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurde mit Reserve-Sperrliste Nr. {number} gesperrt, ohne Passphrase.</translation>
    </message>
    <message>
        <source>{title} were let back in with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurden mit Sperrliste Nr. {number} wieder eingelassen.</translation>
    </message>
    <message>
        <source>{title} were revoked for good with revocation list {number}: {reason} ({rfc}).</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurden mit Sperrliste Nr. {number} endgültig widerrufen: {reason} ({rfc}).</translation>
    </message>
    <message>
        <source>{title} were stopped with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurden mit Sperrliste Nr. {number} gesperrt.</translation>
    </message>
    <message>
        <source>{title} were stopped with spare list {number}, without the passphrase.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} wurden mit Reserve-Sperrliste Nr. {number} gesperrt, ohne Passphrase.</translation>
    </message>
    <message>
        <source>{title} would be left without a pass that is known to work. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} hätte dann keinen Pass mehr, der nachweislich geht. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>{title}: its next bundle is in the tray already.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: Das nächste Bündel liegt schon in der Ablage.</translation>
    </message>
    <message>
        <source>{title}: {why}</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: {why}</translation>
    </message>
    <message>
        <source>{weeks} weeks left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>noch {weeks} Wochen</translation>
    </message>
    <message>
        <source>{what} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{what} fehlt.</translation>
    </message>
    <message>
        <source>{where} cannot be reached ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} ist nicht erreichbar ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>{where} does not let this computer in ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} lässt diesen Computer nicht hinein ({seen}). Das Gateway arbeitet weiter mit dem, was es hatte.</translation>
    </message>
    <message>
        <source>{where} gave an answer that makes no sense here: {seen}. The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} gab eine Antwort, die hier keinen Sinn ergibt: {seen}. Das Gateway hat einen ganzen Satz, den alten oder den neuen.</translation>
    </message>
    <message>
        <source>{where} has stopped answering; its last words: {seen}. The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} antwortet nicht mehr; die letzten Worte: {seen}. Das Gateway hat einen ganzen Satz, den alten oder den neuen.</translation>
    </message>
    <message>
        <source>{where} is a folder; there is nobody in it who could run {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} ist ein Ordner; dort ist niemand, der {text} ausführen könnte.</translation>
    </message>
    <message>
        <source>{where} shows another host key than before: {seen}. It may be another computer, so nothing was sent to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} zeigt einen anderen Hostschlüssel als zuvor: {seen}. Vielleicht ist es ein anderer Computer, also wurde nichts dorthin gesendet.</translation>
    </message>
    <message>
        <source>{whom} ask for a new bundle.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{whom} brauchen ein neues Bündel.</translation>
    </message>
    <message>
        <source>{whom} asks for a new bundle.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{whom} braucht ein neues Bündel.</translation>
    </message>
    <message>
        <source>{whom}: decided here, not yet in force. The gateway holds list no. {number}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{whom}: hier entschieden, noch nicht in Kraft. Das Gateway hat Liste Nr. {number}.</translation>
    </message>
    <message>
        <source>{whom}: not yet in force. The gateway is out of reach since {since}; list no. {number} was there {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{whom}: noch nicht in Kraft. Das Gateway ist seit {since} nicht erreichbar; Liste Nr. {number} war dort, gelesen {looked}.</translation>
    </message>
    <message>
        <source>“split” where devices reach the home subnets only, “full” where all traffic goes home.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>„split“, wo Geräte nur die Subnetze zu Hause erreichen, „full“, wo aller Verkehr über zu Hause geht.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>CA name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Name der CA</translation>
    </message>
    <message>
        <source>DNS servers</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>DNS-Server</translation>
    </message>
    <message>
        <source>a device</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>ein Gerät</translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a list of devices</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>eine Liste von Geräten</translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a text</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a text of many lines</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>ein Text aus vielen Zeilen</translation>
    </message>
    <message>
        <source>a yes or no</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>ein Ja oder Nein</translation>
    </message>
    <message>
        <source>archive</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>Archiv</translation>
    </message>
    <message>
        <source>bundle</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>Bündel</translation>
    </message>
    <message>
        <source>codes</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>Codes</translation>
    </message>
    <message>
        <source>dates</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Gültigkeit</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>Stands for {of} in sentences about what went wrong.</extracomment>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>device’s name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Name des Geräts</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>Stands for {of} in sentences about what went wrong.</extracomment>
        <translation>Gateway</translation>
    </message>
    <message>
        <source>gateway host</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Gateway-Host</translation>
    </message>
    <message>
        <source>handshake</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Handschlag</translation>
    </message>
    <message>
        <source>home subnet</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Subnetz zu Hause</translation>
    </message>
    <message>
        <source>home subnets</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Subnetze zu Hause</translation>
    </message>
    <message>
        <source>host name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Hostname</translation>
    </message>
    <message>
        <source>household name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Name des Haushalts</translation>
    </message>
    <message>
        <source>identity suffix</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Endung der Kennungen</translation>
    </message>
    <message>
        <source>in use</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>key file</source>
        <extracomment>Stands for {place} in sentences about what went wrong.</extracomment>
        <translation>Schlüsseldatei</translation>
    </message>
    <message>
        <source>keyring</source>
        <extracomment>Stands for {place} in sentences about what went wrong.</extracomment>
        <translation>Schlüsselbund</translation>
    </message>
    <message>
        <source>list</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Liste</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>open</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>outer interface</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Schnittstelle nach außen</translation>
    </message>
    <message>
        <source>path</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Pfad</translation>
    </message>
    <message>
        <source>pem</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>PEM-Satz</translation>
    </message>
    <message>
        <source>person’s name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Name der Person</translation>
    </message>
    <message>
        <source>pkcs12</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>PKCS#12-Datei</translation>
    </message>
    <message>
        <source>profile</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>Profil</translation>
    </message>
    <message>
        <source>read</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Lesen</translation>
    </message>
    <message>
        <source>revoked</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>widerrufen</translation>
    </message>
    <message>
        <source>script</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>Skript</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>tags</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Anweisungen</translation>
    </message>
    <message>
        <source>template name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Name der Vorlage</translation>
    </message>
    <message>
        <source>tunnel</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Tunnel</translation>
    </message>
    <message>
        <source>tunnel interface</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Tunnel-Schnittstelle</translation>
    </message>
    <message>
        <source>tunnel subnet</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>Tunnel-Subnetz</translation>
    </message>
    <message>
        <source>usage</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>waiting</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>wartet</translation>
    </message>
    <message>
        <source>words in one tag</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>Wörter in einer Anweisung</translation>
    </message>
</context>
</TS>
