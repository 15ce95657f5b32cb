<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>Close the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Cerrar la ventana</translation>
    </message>
    <message>
        <source>Copies that left</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Copias que salieron</translation>
    </message>
    <message>
        <source>Deliver now</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Enviar ahora</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Find</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Gateway</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Pasarela</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Hand over all at the desk</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Entregar todo en la mesa</translation>
    </message>
    <message>
        <source>Help for this spot</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Ayuda sobre este lugar</translation>
    </message>
    <message>
        <source>Lock the household</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Cerrar el hogar</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Perdido o robado</translation>
    </message>
    <message>
        <source>New device</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Nuevo dispositivo</translation>
    </message>
    <message>
        <source>Next part of the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Parte siguiente de la ventana</translation>
    </message>
    <message>
        <source>Previous part of the window</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Parte anterior de la ventana</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Redo</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Renew</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Copias selladas</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Sheet, card and messages</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Hoja, tarjeta y mensajes</translation>
    </message>
    <message>
        <source>Undo</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Lo que hay que hacer</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>Every command of the window with its key, in one list.</extracomment>
        <translation>Plantilla propia</translation>
    </message>
</context>
<context>
    <name>AdoptSide</name>
    <message>
        <source>Choose a folder…</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Elegir una carpeta…</translation>
    </message>
    <message>
        <source>Choose the folder in which the CA lies, or drop it here. Nothing in it is changed.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Elige la carpeta donde está la CA, o suéltala aquí. No se cambia nada en ella.</translation>
    </message>
    <message>
        <source>Found a new one instead</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Mejor fundar uno nuevo</translation>
    </message>
    <message>
        <source>It is used once, to read the key. From then on the household’s own passphrase counts.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Se usa una sola vez, para leer la clave. A partir de ahí vale la frase de contraseña propia del hogar.</translation>
    </message>
    <message>
        <source>It opens the CA’s key.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Abre la clave de la CA.</translation>
    </message>
    <message>
        <source>Look at it</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Open it</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>This passphrase does not open the CA’s key.</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Esta frase de contraseña no abre la clave de la CA.</translation>
    </message>
    <message>
        <source>What is the passphrase of the CA’s key in this folder?</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>¿Cuál es la frase de contraseña de la clave de la CA de esta carpeta?</translation>
    </message>
    <message>
        <source>What is there</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>Qué hay</translation>
    </message>
    <message>
        <source>Where does the CA lie?</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>¿Dónde está la CA?</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <extracomment>The right half of the founding page for who has a CA already: a folder is chosen and looked over.</extracomment>
        <translation>aún sin elegir</translation>
    </message>
</context>
<context>
    <name>AdoptTurn</name>
    <message>
        <source>Found the household</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Fundar el hogar</translation>
    </message>
    <message>
        <source>Nobody has a pass yet. Start with the house, about 5 minutes.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Nadie tiene un pase todavía. Empieza por la casa, unos 5 minutos.</translation>
    </message>
    <message>
        <source>Nothing is written before the last button, and nothing in the folder is ever changed.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>No se escribe nada hasta el último botón, y en la carpeta no se cambia nada nunca.</translation>
    </message>
    <message>
        <source>Nothing is written before the last button. The name of the house stands in every bundle: let it be one that lasts.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>No se escribe nada hasta el último botón. El nombre de la casa figura en cada paquete: elige uno que dure.</translation>
    </message>
    <message>
        <source>Somebody</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Alguien</translation>
    </message>
    <message>
        <source>Take it over</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>Adoptarlo</translation>
    </message>
    <message>
        <source>The house goes on under the CA that it has.</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>La casa sigue con la CA que tiene.</translation>
    </message>
    <message>
        <source>a CA with nothing in its way</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>una CA sin impedimentos</translation>
    </message>
    <message>
        <source>the folder of the CA</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>la carpeta de la CA</translation>
    </message>
    <message>
        <source>the passphrase of the CA’s key</source>
        <extracomment>Turns the founding page into the one on which a household that was made by hand is taken over, and back.</extracomment>
        <translation>la frase de contraseña de la clave de la CA</translation>
    </message>
</context>
<context>
    <name>Aftercare</name>
    <message>
        <source>What else to do now, in this order</source>
        <extracomment>What else to do after a loss, outside this program: a list with ticks that are remembered.</extracomment>
        <translation>Qué más hacer ahora, en este orden</translation>
    </message>
</context>
<context>
    <name>AnotherPage</name>
    <message>
        <source>Another device in its place</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Otro dispositivo en su lugar</translation>
    </message>
    <message>
        <source>Computers</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Ordenadores</translation>
    </message>
    <message>
        <source>In the place of {title}</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>En lugar de {title}</translation>
    </message>
    <message>
        <source>It does not get in any more.</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Ya no entra.</translation>
    </message>
    <message>
        <source>It stops getting in at once, and for good as soon as the new one was seen to get in.</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Deja de entrar enseguida, y para siempre en cuanto se haya visto entrar el nuevo.</translation>
    </message>
    <message>
        <source>Neither</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Ninguna de las dos cosas</translation>
    </message>
    <message>
        <source>Phones and tablets</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Móviles y tabletas</translation>
    </message>
    <message>
        <source>Replace it</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>Sustituir</translation>
    </message>
    <message>
        <source>What is the new one called?</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>¿Cómo se llama el nuevo?</translation>
    </message>
    <message>
        <source>What is the new one?</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>¿Qué es el nuevo?</translation>
    </message>
    <message>
        <source>choose</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>elegir</translation>
    </message>
    <message>
        <source>new {device}</source>
        <extracomment>Another device in the place of one: what it is called and what it is, and what becomes of the old one.</extracomment>
        <translation>{device} de reemplazo</translation>
    </message>
</context>
<context>
    <name>Asking</name>
    <message>
        <source>Another copy of the app has this household open. Stop it there.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Otra copia de la aplicación tiene abierto este hogar. Bloquea allí el dispositivo.</translation>
    </message>
    <message>
        <source>Asks for the passphrase.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Pide la frase de contraseña.</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Everybody, for now</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Todo el mundo, por ahora</translation>
    </message>
    <message>
        <source>No passphrase.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Sin frase de contraseña.</translation>
    </message>
    <message>
        <source>No passphrase: a spare stop list lies ready.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Sin frase de contraseña: hay preparada una lista de bloqueo de reserva.</translation>
    </message>
    <message>
        <source>No person and no device has these letters.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Ninguna persona ni ningún dispositivo tiene estas letras.</translation>
    </message>
    <message>
        <source>Nobody has a pass yet, so nothing can be lost.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Nadie tiene un pase todavía, así que no se puede perder nada.</translation>
    </message>
    <message>
        <source>Only this one</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Solo este</translation>
    </message>
    <message>
        <source>Stop everybody for now, without the passphrase</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Bloquear por ahora a todo el mundo, sin la frase de contraseña</translation>
    </message>
    <message>
        <source>Stop it</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Bloquearlo</translation>
    </message>
    <message>
        <source>Stop only this one; asks for the passphrase</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Bloquear solo este; pide la frase de contraseña</translation>
    </message>
    <message>
        <source>Stop them all</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Bloquearlos todos</translation>
    </message>
    <message>
        <source>Stop {title}</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Bloquear {title}</translation>
    </message>
    <message>
        <source>The list has to be signed. With the passphrase it is done at once.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Hay que firmar la lista. Con la frase de contraseña se hace al momento.</translation>
    </message>
    <message>
        <source>You can let it back in at any time.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Puedes dejarlo entrar de nuevo en cualquier momento.</translation>
    </message>
    <message>
        <source>You can let them back in at any time.</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>Puedes dejarlos entrar de nuevo en cualquier momento.</translation>
    </message>
    <message>
        <source>{count} of {of} devices</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{count} de {of} dispositivos</translation>
    </message>
    <message>
        <source>{first} of {count}; one more letter</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{first} de {count}; una letra más</translation>
    </message>
    <message>
        <source>{of} devices</source>
        <extracomment>The first half of &quot;Lost or stolen&quot;: two letters, a choice, Enter.</extracomment>
        <translation>{of} dispositivos</translation>
    </message>
</context>
<context>
    <name>Body</name>
    <message>
        <source>Next, outside this program:</source>
        <extracomment>What stands on the sheet &quot;Lost or stolen&quot;, from its head to its last line.</extracomment>
        <translation>Después, fuera de este programa:</translation>
    </message>
    <message>
        <source>lock or find the device from afar, block the SIM, change the mail password.</source>
        <extracomment>What stands on the sheet &quot;Lost or stolen&quot;, from its head to its last line.</extracomment>
        <translation>bloquea o localiza el dispositivo a distancia, bloquea la SIM, cambia la contraseña del correo.</translation>
    </message>
</context>
<context>
    <name>CertificateView</name>
    <message>
        <source>Certificate in PEM</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Certificado en PEM</translation>
    </message>
    <message>
        <source>Certificate in full</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Certificado completo</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Copiado</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Copy facts and certificate</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Copiar datos y certificado</translation>
    </message>
    <message>
        <source>Fold the certificate</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>Plegar el certificado</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>The certificate is shown in full</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>El certificado se muestra completo</translation>
    </message>
    <message>
        <source>good from</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>válido desde</translation>
    </message>
    <message>
        <source>good until</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>válido hasta</translation>
    </message>
    <message>
        <source>issuer</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>emisor</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>clave</translation>
    </message>
    <message>
        <source>names</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>nombres</translation>
    </message>
    <message>
        <source>serial</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>subject</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>titular</translation>
    </message>
    <message>
        <source>usages</source>
        <extracomment>A certificate in full: its facts, then the text that other tools read.</extracomment>
        <translation>usos</translation>
    </message>
</context>
<context>
    <name>ClosedPage</name>
    <message>
        <source>A newer list</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Una lista más nueva</translation>
    </message>
    <message>
        <source>Asking</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Preguntando</translation>
    </message>
    <message>
        <source>Asking …</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Preguntando…</translation>
    </message>
    <message>
        <source>Bundles in the tray</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Paquetes en la bandeja</translation>
    </message>
    <message>
        <source>Diary and certificates</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Diario y certificados</translation>
    </message>
    <message>
        <source>Everybody’s devices</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Los dispositivos de todos</translation>
    </message>
    <message>
        <source>Everything else</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Todo lo demás</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Go on without</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Continuar de todos modos</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Look around</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Echar un vistazo</translation>
    </message>
    <message>
        <source>Looking</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>New devices</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Nuevos dispositivos</translation>
    </message>
    <message>
        <source>Seen: {seen}</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Visto: {seen}</translation>
    </message>
    <message>
        <source>Stopping a lost device</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Bloquear un dispositivo perdido</translation>
    </message>
    <message>
        <source>The household cannot be opened.</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>No se puede abrir el hogar.</translation>
    </message>
    <message>
        <source>The keyring answered with a fault of its own.</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>El llavero ha respondido con un fallo propio.</translation>
    </message>
    <message>
        <source>This window</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>Esta ventana</translation>
    </message>
    <message>
        <source>Trust in the diary</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>La confianza en el diario</translation>
    </message>
    <message>
        <source>Try again</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Probar de nuevo</translation>
    </message>
    <message>
        <source>Waits</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>En espera</translation>
    </message>
    <message>
        <source>What to do:</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Qué hacer:</translation>
    </message>
    <message>
        <source>Works</source>
        <extracomment>The page for when something is shut: what it means, what works meanwhile, and one way on.</extracomment>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>from that entry on</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>a partir de esa entrada</translation>
    </message>
    <message>
        <source>in the other copy of the app</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>en la otra copia de la aplicación</translation>
    </message>
    <message>
        <source>needs a new list; meanwhile lock it from afar</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>necesita una lista nueva; mientras tanto, bloquéalo a distancia</translation>
    </message>
    <message>
        <source>no. {number} is good until {day}</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>la n.º {number} es válida hasta el {day}</translation>
    </message>
    <message>
        <source>stopping, new devices, handing over</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>bloquear, nuevos dispositivos, entregar en mano</translation>
    </message>
    <message>
        <source>the gateway lets them in as before</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>la pasarela los deja entrar como antes</translation>
    </message>
    <message>
        <source>their passes have to be signed</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>hay que firmar sus pases</translation>
    </message>
    <message>
        <source>their passphrases lie in the keyring</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>sus frases de contraseña están en el llavero</translation>
    </message>
    <message>
        <source>there is nothing that it could show</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>no hay nada que pueda mostrar</translation>
    </message>
    <message>
        <source>to read and to copy</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>para leer y copiar</translation>
    </message>
    <message>
        <source>who gets in, and until when</source>
        <extracomment>What is shut, what works meanwhile and what has to wait: the closed page as values.</extracomment>
        <translation>quién entra y hasta cuándo</translation>
    </message>
</context>
<context>
    <name>CodeCard</name>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Más grande</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Anterior</translation>
    </message>
    <message>
        <source>Code {number} of {count} of {title}</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Código {number} de {count} de {title}</translation>
    </message>
    <message>
        <source>Ne&amp;xt</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Más &amp;pequeño</translation>
    </message>
    <message>
        <source>Scan it with this app’s reader on the device.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Escanéalo en el dispositivo con el lector de esta aplicación.</translation>
    </message>
    <message>
        <source>Scan it with this app’s reader, then show the next one. The order does not matter.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Escanéalo con el lector de esta aplicación y después muestra el siguiente. El orden da igual.</translation>
    </message>
    <message>
        <source>The last one. The order does not matter; a code scanned twice does no harm.</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>Es el último. El orden da igual, y no pasa nada si un código se escanea dos veces.</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>The codes of a bundle, one at a time, always dark on white.</extracomment>
        <translation>{number} de {count}</translation>
    </message>
</context>
<context>
    <name>CommitFoot</name>
    <message>
        <source>Put aside</source>
        <extracomment>The last row of a page that does one thing: what is in the way, the passphrase where it is needed, the button.</extracomment>
        <translation>Dejar para luego</translation>
    </message>
</context>
<context>
    <name>CopiesList</name>
    <message>
        <source>Copies by device, the newest first</source>
        <extracomment>Paints copies: whose and when, what and where, and what can be said of each.</extracomment>
        <translation>Copias por dispositivo, las más nuevas primero</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Paints copies: whose and when, what and where, and what can be said of each.</extracomment>
        <translation>n.º {number}</translation>
    </message>
</context>
<context>
    <name>CopiesPage</name>
    <message>
        <source>&amp;Delete the file</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Borrar el archivo</translation>
    </message>
    <message>
        <source>&amp;Look now</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Mirar ahora</translation>
    </message>
    <message>
        <source>1 copy shown</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>1 copia a la vista</translation>
    </message>
    <message>
        <source>1 copy.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>1 copia.</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Copies</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Copies of {title}</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Copias de {title}</translation>
    </message>
    <message>
        <source>Each is gone, or opens nothing any more.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Cada una ya no existe o ya no abre nada.</translation>
    </message>
    <message>
        <source>Files, sticks and pick-ups are listed here from the first one on.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Los archivos, las memorias USB y las recogidas aparecen aquí desde el primer momento.</translation>
    </message>
    <message>
        <source>It is &amp;gone</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Ya &amp;no existe</translation>
    </message>
    <message>
        <source>Lea&amp;ve it</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>No copy has left this computer.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>De este ordenador no ha salido ninguna copia.</translation>
    </message>
    <message>
        <source>Not &amp;gone after all</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Al final, aú&amp;n existe</translation>
    </message>
    <message>
        <source>Not known to be gone</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Quizá aún existen</translation>
    </message>
    <message>
        <source>Of 1 nobody knows whether it is gone.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>De 1 nadie sabe si aún existe.</translation>
    </message>
    <message>
        <source>Of {loose} nobody knows whether they are gone.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>De {loose} nadie sabe si aún existen.</translation>
    </message>
    <message>
        <source>Show the whole household</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Mostrar todo el hogar</translation>
    </message>
    <message>
        <source>Which copies</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>Qué copias</translation>
    </message>
    <message>
        <source>{count} copies shown</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>{count} copias a la vista</translation>
    </message>
    <message>
        <source>{count} copies.</source>
        <extracomment>Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one.</extracomment>
        <translation>{count} copias.</translation>
    </message>
</context>
<context>
    <name>DaysPage</name>
    <message>
        <source>Copies</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Entregarlo en mano</translation>
    </message>
    <message>
        <source>Look at it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Nothing to do until {day}.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Nada que hacer hasta el {day}.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Nada que hacer.</translation>
    </message>
    <message>
        <source>One more comes later.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Más adelante viene otra.</translation>
    </message>
    <message>
        <source>One thing to do now, about {minutes} minutes.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Una cosa que hacer ahora, unos {minutes} minutos.</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Renew it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>La próxima CA</translation>
    </message>
    <message>
        <source>Sign it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>Try it</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Probarla</translation>
    </message>
    <message>
        <source>What can wait</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Lo que puede esperar</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Lo que hay que hacer</translation>
    </message>
    <message>
        <source>by {day}, {minutes} min</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>hasta el {day}, {minutes} min</translation>
    </message>
    <message>
        <source>{count} more come later.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>Más adelante vienen otras {count}.</translation>
    </message>
    <message>
        <source>{count} things to do now, about {minutes} minutes.</source>
        <extracomment>What is to be done, and when: the first thing first, with how long it takes, why, and its button.</extracomment>
        <translation>{count} cosas que hacer ahora, unos {minutes} minutos.</translation>
    </message>
</context>
<context>
    <name>Deed</name>
    <message>
        <source>Let back in</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>Not now</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Revoke for good</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Revocar para siempre</translation>
    </message>
    <message>
        <source>Stop now</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>Bloquear ahora</translation>
    </message>
    <message>
        <source>Why is it revoked?</source>
        <extracomment>Stopping, letting in and revoking inside a device&apos;s page: first what follows, then the deed.</extracomment>
        <translation>¿Por qué se revoca?</translation>
    </message>
</context>
<context>
    <name>DeputyPage</name>
    <message>
        <source>&amp;Make three parts</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>&amp;Hacer tres partes</translation>
    </message>
    <message>
        <source>&amp;Try this part</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>&amp;Probar esta parte</translation>
    </message>
    <message>
        <source>&amp;Write a stop set…</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>&amp;Escribir un juego de bloqueo…</translation>
    </message>
    <message>
        <source>A folder with which somebody can stop a lost device at the gateway and do nothing else. It is out of date as soon as anybody is stopped, enrolled or let back in.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Una carpeta con la que alguien puede bloquear en la pasarela un dispositivo perdido, y nada más. Queda anticuada en cuanto se bloquea, se añade o se deja entrar de nuevo a alguien.</translation>
    </message>
    <message>
        <source>Is a part still right?</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>¿Sigue siendo buena una parte?</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Idioma de quien lo lee</translation>
    </message>
    <message>
        <source>No parts were made yet. Without whoever keeps the passphrase, nobody opens a sealed copy.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Aún no se ha hecho ninguna parte. Sin quien guarda la frase de contraseña, nadie abre una copia sellada.</translation>
    </message>
    <message>
        <source>Once a year ask for each sheet and type its fifteen words, in order. It needs no other sheet.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Una vez al año pide cada hoja y escribe sus quince palabras, en orden. No hace falta ninguna otra hoja.</translation>
    </message>
    <message>
        <source>Part {number}: not tried yet</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Parte {number}: aún sin probar</translation>
    </message>
    <message>
        <source>Part {number}: tried on {day}</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Parte {number}: probada el {day}</translation>
    </message>
    <message>
        <source>Parts for a deputy</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Partes para quien te releve</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>Passphrase that only the sealed copies have</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Frase de contraseña que solo tienen las copias selladas</translation>
    </message>
    <message>
        <source>Sealed copies have another passphrase since set {name} was made. Make new parts.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Las copias selladas tienen otra frase de contraseña desde que se hizo el juego {name}. Haz partes nuevas.</translation>
    </message>
    <message>
        <source>Set {name} was made on {day}. Any two of its three parts open the sealed copies since.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>El juego {name} se hizo el {day}. Dos cualesquiera de sus tres partes abren las copias selladas hechas desde entonces.</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Alguien toma el relevo</translation>
    </message>
    <message>
        <source>Somebody who can only stop</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Alguien que solo puede bloquear</translation>
    </message>
    <message>
        <source>The fifteen words, or the text of the code</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Las quince palabras, o el texto del código</translation>
    </message>
    <message>
        <source>They are thrown away. What was printed of them opens nothing; destroy it.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Se desechan. Lo que se imprimió de ellas no abre nada; destrúyelo.</translation>
    </message>
    <message>
        <source>Three sheets for three people. Any two together open a sealed copy and with it the household; one alone opens nothing. A letter says what works without anybody, and until when.</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Tres hojas para tres personas. Dos cualesquiera juntas abren una copia sellada y con ella el hogar; una sola no abre nada. Una carta dice qué funciona sin nadie, y hasta cuándo.</translation>
    </message>
    <message>
        <source>Where to write the stop set</source>
        <extracomment>For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop.</extracomment>
        <translation>Dónde escribir el juego de bloqueo</translation>
    </message>
</context>
<context>
    <name>DeputySheets</name>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>All are &amp;given out</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Todas están &amp;repartidas</translation>
    </message>
    <message>
        <source>Every part was printed or saved.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Todas las partes se imprimieron o guardaron.</translation>
    </message>
    <message>
        <source>It is at the printer.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Está en la impresora.</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Idioma de quien lo lee</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Part {number}</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Parte {number}</translation>
    </message>
    <message>
        <source>Part {number} was neither printed nor saved yet.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>La parte {number} aún no se ha imprimido ni guardado.</translation>
    </message>
    <message>
        <source>Parts {numbers} were neither printed nor saved yet.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Las partes {numbers} aún no se han imprimido ni guardado.</translation>
    </message>
    <message>
        <source>Print each sheet by itself and give each part to somebody else. They count only once you say that all are given out; until then the sheets from before do.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Imprime cada hoja por separado y da cada parte a una persona distinta. Solo valen cuando digas que todas están repartidas; hasta entonces valen las hojas de antes.</translation>
    </message>
    <message>
        <source>Saved as {file}. Print it, then delete the file.</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Guardado como {file}. Imprímelo y después borra el archivo.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Throw them away</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Desecharlas</translation>
    </message>
    <message>
        <source>Where to save the sheet</source>
        <extracomment>The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept.</extracomment>
        <translation>Dónde guardar la hoja</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>&amp;Another code</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Otro código</translation>
    </message>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Más grande</translation>
    </message>
    <message>
        <source>&amp;Cover the code, show the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Tapar el código, mostrar las palabras</translation>
    </message>
    <message>
        <source>&amp;Cover the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Tapar las palabras</translation>
    </message>
    <message>
        <source>&amp;Cover the words, show the code</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Tapar las palabras, mostrar el código</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Finalizar</translation>
    </message>
    <message>
        <source>&amp;Next: {title}</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Siguiente: {title}</translation>
    </message>
    <message>
        <source>&amp;Open another</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Abrir otro</translation>
    </message>
    <message>
        <source>&amp;Show the words</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Mostrar las &amp;palabras</translation>
    </message>
    <message>
        <source>&amp;Show the words again</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Mostrar las &amp;palabras otra vez</translation>
    </message>
    <message>
        <source>A line of text appears. Say: “Touch that line.”</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Aparece una línea de texto. Di: «Toca esa línea.»</translation>
    </message>
    <message>
        <source>A page with one large button is open. Say: “Get the file.”</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Se ha abierto una página con un solo botón grande. Di: «Descarga el archivo.»</translation>
    </message>
    <message>
        <source>Cover the words as soon as they are typed in.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Tapa las palabras en cuanto estén escritas.</translation>
    </message>
    <message>
        <source>Does it work on the device?</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>¿Funciona en el dispositivo?</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Hold the camera over the code</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Apunta al código con la cámara</translation>
    </message>
    <message>
        <source>It stands here together with the code.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Está aquí, junto con el código.</translation>
    </message>
    <message>
        <source>It was seen to get in from outside.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Se ha visto que entra desde fuera.</translation>
    </message>
    <message>
        <source>It works when it says “Connected” in another network, a phone’s for instance.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Funciona si pone «Conectado» en otra red, por ejemplo la de un móvil.</translation>
    </message>
    <message>
        <source>It works when it says “Connected” on mobile data.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Funciona si pone «Conectado» con datos móviles.</translation>
    </message>
    <message>
        <source>Leave the Wi-Fi at home, then connect</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Sal de la wifi de casa y luego conéctate</translation>
    </message>
    <message>
        <source>One moment …</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Un momento…</translation>
    </message>
    <message>
        <source>Picked up at {time}.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Recogido a las {time}.</translation>
    </message>
    <message>
        <source>Picked up.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Recogido.</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Más pe&amp;queño</translation>
    </message>
    <message>
        <source>Show the words when it says “picked up”.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Muestra las palabras cuando ponga «recogido».</translation>
    </message>
    <message>
        <source>So far: {reached}. Still to come: {ahead}.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Hasta ahora: {reached}. Aún falta: {ahead}.</translation>
    </message>
    <message>
        <source>Switch the Wi-Fi off, then touch Connect</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Apaga la wifi y luego toca «Conectar»</translation>
    </message>
    <message>
        <source>The code and the words are never here together.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>El código y las palabras nunca están aquí a la vez.</translation>
    </message>
    <message>
        <source>The code is covered while the words are here.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>El código está tapado mientras las palabras están aquí.</translation>
    </message>
    <message>
        <source>The code is gone, so the words can be shown now.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>El código ya no está, así que ahora se pueden mostrar las palabras.</translation>
    </message>
    <message>
        <source>The code is gone.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>El código ya no está.</translation>
    </message>
    <message>
        <source>The code of the pick-up for {title}</source>
        <extracomment>The desk: the whole screen, turned to whoever the device in hand is for.</extracomment>
        <translation>El código de la recogida para {title}</translation>
    </message>
    <message>
        <source>The device asks for a password. Say the words, with one space between two of them.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>El dispositivo pide una contraseña. Di las palabras, con un espacio entre cada dos.</translation>
    </message>
    <message>
        <source>The words come when the code has gone.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Las palabras llegan cuando el código ya no está.</translation>
    </message>
    <message>
        <source>They appear here once the code is covered.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Aparecen aquí cuando el código está tapado.</translation>
    </message>
    <message>
        <source>They appear here once the file is on the device.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Aparecen aquí cuando el archivo está en el dispositivo.</translation>
    </message>
    <message>
        <source>They were shown, and are covered again.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Se mostraron y están tapadas de nuevo.</translation>
    </message>
    <message>
        <source>Try a&amp;gain</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>&amp;Intentar de nuevo</translation>
    </message>
    <message>
        <source>Type the seven words</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Escribe las siete palabras</translation>
    </message>
    <message>
        <source>Type this address into the browser</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Escribe esta dirección en el navegador</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>Ya están escritas.</translation>
    </message>
    <message>
        <source>When it says “Connected”, go on. Its key is then erased here.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Cuando ponga «Conectado», sigue. Entonces su clave se borra aquí.</translation>
    </message>
    <message>
        <source>Whether it gets in from outside can be proved later, on its own page.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>Si entra desde fuera, se puede comprobar más tarde, en su propia página.</translation>
    </message>
    <message>
        <source>made {time}</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>creado ({time})</translation>
    </message>
    <message>
        <source>now</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>ahora</translation>
    </message>
    <message>
        <source>opened with the words</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>abierto con las palabras</translation>
    </message>
    <message>
        <source>picked up</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>recogido</translation>
    </message>
    <message>
        <source>picked up {time}</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>recogido ({time})</translation>
    </message>
    <message>
        <source>proved on mobile data</source>
        <extracomment>What the desk says: the three steps, and how far a device has come.</extracomment>
        <translation>comprobado con datos móviles</translation>
    </message>
    <message>
        <source>{day}, at the table</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, en la mesa</translation>
    </message>
    <message>
        <source>{day}, at the table. Done: {done}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, en la mesa. Listo: {done}.</translation>
    </message>
    <message>
        <source>{day}, at the table. Done: {done}. Still to come: {ahead}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, en la mesa. Listo: {done}. Aún falta: {ahead}.</translation>
    </message>
    <message>
        <source>{day}, at the table. Still to come: {ahead}.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{day}, en la mesa. Aún falta: {ahead}.</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{number} de {count}</translation>
    </message>
    <message>
        <source>{number} of {count}, {done} done</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{number} de {count}, {done} terminados</translation>
    </message>
    <message>
        <source>{title} has its file.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{title} ya tiene su archivo.</translation>
    </message>
    <message>
        <source>{title} has its key. Here it was erased.</source>
        <extracomment>What stands on the desk at one moment, worked out from whose turn it is and what may be on the screen.</extracomment>
        <translation>{title} ya tiene su clave. Aquí se ha borrado.</translation>
    </message>
</context>
<context>
    <name>DeskFoot</name>
    <message>
        <source>&amp;Bigger</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Más grande</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Finalizar</translation>
    </message>
    <message>
        <source>&amp;Leave the desk</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Dejar la mesa</translation>
    </message>
    <message>
        <source>&amp;Stay here</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Quedarse aquí</translation>
    </message>
    <message>
        <source>Not &amp;yet, go on</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Todavía no, seguir</translation>
    </message>
    <message>
        <source>Try a&amp;gain</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>&amp;Intentar de nuevo</translation>
    </message>
    <message>
        <source>Yes, &amp;erase the key here</source>
        <extracomment>The foot of the desk: what can be done now, and where it goes on.</extracomment>
        <translation>Sí, &amp;borrar la clave aquí</translation>
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
        <translation>Diez minutos más</translation>
    </message>
    <message>
        <source>left for this code</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>de tiempo para este código</translation>
    </message>
    <message>
        <source>one minute left</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>queda un minuto</translation>
    </message>
    <message>
        <source>{minutes} minutes left</source>
        <extracomment>The head of the desk: whose device it is, and how long its code is good.</extracomment>
        <translation>quedan {minutes} minutos</translation>
    </message>
</context>
<context>
    <name>DeviceHasIt</name>
    <message>
        <source>&amp;Erase the key here</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>&amp;Borrar la clave aquí</translation>
    </message>
    <message>
        <source>It is on the device &amp;now</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>&amp;Ya está en el dispositivo</translation>
    </message>
    <message>
        <source>Not &amp;yet</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>&amp;Todavía no</translation>
    </message>
    <message>
        <source>Then its key is erased here and exists on the device alone.</source>
        <extracomment>The end of a hand-over: the device has its key, so it is erased here.</extracomment>
        <translation>Entonces su clave se borra aquí y existe solo en el dispositivo.</translation>
    </message>
</context>
<context>
    <name>DevicePage</name>
    <message>
        <source>(3DES, for old importers)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(3DES, para importadores antiguos)</translation>
    </message>
    <message>
        <source>(AES-256)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(AES-256)</translation>
    </message>
    <message>
        <source>(key set {name})</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(juego de claves {name})</translation>
    </message>
    <message>
        <source>(travels in clear)</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>(viaja sin cifrar)</translation>
    </message>
    <message>
        <source>A new pass</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Un pase nuevo</translation>
    </message>
    <message>
        <source>Another copy has the household open; this one only looks.</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Otra copia tiene abierto el hogar; esta solo mira.</translation>
    </message>
    <message>
        <source>Copies that left…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Copias que salieron…</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Let back in</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>Life line</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Línea de vida</translation>
    </message>
    <message>
        <source>Older passes of this device:</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Pases anteriores de este dispositivo:</translation>
    </message>
    <message>
        <source>PKCS#12, {name}</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>PKCS#12, {name}</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Renew…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Renovar…</translation>
    </message>
    <message>
        <source>Replace this device…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Sustituir este dispositivo…</translation>
    </message>
    <message>
        <source>Revoke for good…</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Revocar para siempre…</translation>
    </message>
    <message>
        <source>Stop now</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>Bloquear ahora</translation>
    </message>
    <message>
        <source>asks for the passphrase, can be taken back</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>pide la frase de contraseña, se puede deshacer</translation>
    </message>
    <message>
        <source>can be taken back</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>se puede deshacer</translation>
    </message>
    <message>
        <source>container</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>contenedor</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>clave</translation>
    </message>
    <message>
        <source>known as</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>conocido como</translation>
    </message>
    <message>
        <source>last checked</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>última revisión</translation>
    </message>
    <message>
        <source>made for</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>hecho para</translation>
    </message>
    <message>
        <source>serial</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>unknown type</source>
        <extracomment>A device: what it is, its life line, its facts, and what can be done with it.</extracomment>
        <translation>tipo desconocido</translation>
    </message>
</context>
<context>
    <name>DiaryFilter</name>
    <message>
        <source>Everybody</source>
        <extracomment>Whose entries of the diary are shown: everybody&apos;s, one person&apos;s, one device&apos;s.</extracomment>
        <translation>Todo el mundo</translation>
    </message>
    <message>
        <source>Whose entries</source>
        <extracomment>Whose entries of the diary are shown: everybody&apos;s, one person&apos;s, one device&apos;s.</extracomment>
        <translation>De quién son las entradas</translation>
    </message>
</context>
<context>
    <name>DiaryList</name>
    <message>
        <source>Entries, newest first</source>
        <extracomment>Paints the diary&apos;s entries: the day in the second ink, then the sentence, as high as it needs to be.</extracomment>
        <translation>Entradas, las más nuevas primero</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Paints the diary&apos;s entries: the day in the second ink, then the sentence, as high as it needs to be.</extracomment>
        <translation>n.º {number}</translation>
    </message>
</context>
<context>
    <name>DiaryPage</name>
    <message>
        <source>1 entry found</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 entrada encontrada</translation>
    </message>
    <message>
        <source>1 entry, sealed.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 entrada, sellada.</translation>
    </message>
    <message>
        <source>1 entry.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>1 entrada.</translation>
    </message>
    <message>
        <source>As &amp;text…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Como &amp;texto…</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Copiado</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Diario</translation>
    </message>
    <message>
        <source>For &amp;machines (JSON Lines)…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Para &amp;máquinas (JSON Lines)…</translation>
    </message>
    <message>
        <source>It does not fit together from entry {number} on.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>No concuerda a partir de la entrada {number}.</translation>
    </message>
    <message>
        <source>It lies in {folder} as {name}.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Está en {folder} como {name}.</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Copias selladas</translation>
    </message>
    <message>
        <source>Search</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>The chain holds.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>La cadena está intacta.</translation>
    </message>
    <message>
        <source>The diary of {name}</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>El diario de {name}</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Dónde escribirlo</translation>
    </message>
    <message>
        <source>Whose entries</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>De quién son las entradas</translation>
    </message>
    <message>
        <source>Write to a folder…</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>Escribir en una carpeta…</translation>
    </message>
    <message>
        <source>{count} entries found</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} entradas encontradas</translation>
    </message>
    <message>
        <source>{count} entries, each sealed to the last.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} entradas, cada una sellada con la anterior.</translation>
    </message>
    <message>
        <source>{count} entries.</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{count} entradas.</translation>
    </message>
    <message>
        <source>{place} of {count}: {entry}</source>
        <extracomment>The diary: what was done, newest first, whether anybody altered it, and a way to take it along.</extracomment>
        <translation>{place} de {count}: {entry}</translation>
    </message>
</context>
<context>
    <name>DragOut</name>
    <message>
        <source>it cannot leave</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>no puede salir</translation>
    </message>
    <message>
        <source>preparing …</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>preparando…</translation>
    </message>
    <message>
        <source>preparing, drag again</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>preparando, arrastra otra vez</translation>
    </message>
    <message>
        <source>ready, drag again</source>
        <extracomment>A bundle dragged out of the window as a real file, for whichever window it is dropped on.</extracomment>
        <translation>listo, arrastra otra vez</translation>
    </message>
</context>
<context>
    <name>Drawer</name>
    <message>
        <source>Drawer</source>
        <extracomment>The drawer at the right: one page at a time, straight in and straight out.</extracomment>
        <translation>Panel lateral</translation>
    </message>
</context>
<context>
    <name>DropPlace</name>
    <message>
        <source>&amp;Choose files…</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>&amp;Elegir archivos…</translation>
    </message>
    <message>
        <source>A sealed copy, or the scans of a paper</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>Una copia sellada, o un papel escaneado</translation>
    </message>
    <message>
        <source>Drop the file that ends in .sealed.tar here, or scans and photographs of a paper (PNG, JPEG).</source>
        <extracomment>A place that files are dropped on, or chosen for with a button.</extracomment>
        <translation>Suelta aquí el archivo que termina en .sealed.tar, o escaneos y fotos de un papel (PNG, JPEG).</translation>
    </message>
</context>
<context>
    <name>EnrolDetails</name>
    <message>
        <source>Container</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Contenedor</translation>
    </message>
    <message>
        <source>Container of the hand-over file</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Contenedor del archivo que se entrega en mano</translation>
    </message>
    <message>
        <source>Details</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Fold the details</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Plegar los detalles</translation>
    </message>
    <message>
        <source>Key set</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>Juego de claves</translation>
    </message>
    <message>
        <source>old</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>antiguo</translation>
    </message>
    <message>
        <source>strong</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>fuerte</translation>
    </message>
    <message>
        <source>what fits</source>
        <extracomment>What a householder may overrule: key set and container. Folded, for nobody has to know them.</extracomment>
        <translation>el adecuado</translation>
    </message>
</context>
<context>
    <name>EnrolForm</name>
    <message>
        <source>A new pass for that one</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Un pase nuevo para ese</translation>
    </message>
    <message>
        <source>Call it {name}</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Llamarlo {name}</translation>
    </message>
    <message>
        <source>Choose a person, or give a name.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Elige una persona o escribe un nombre.</translation>
    </message>
    <message>
        <source>Choose what it is; the key is made to fit.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Elige qué es; la clave se crea a su medida.</translation>
    </message>
    <message>
        <source>Computers</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Ordenadores</translation>
    </message>
    <message>
        <source>For {title}. It keeps its identity.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Para {title}. Conserva su identidad.</translation>
    </message>
    <message>
        <source>Give it a name that the family uses.</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Ponle un nombre que use la familia.</translation>
    </message>
    <message>
        <source>Neither</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Ninguna de las dos cosas</translation>
    </message>
    <message>
        <source>Phones and tablets</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>Móviles y tabletas</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>¿Cómo se llama?</translation>
    </message>
    <message>
        <source>What is it?</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>¿Qué es?</translation>
    </message>
    <message>
        <source>choose</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>elegir</translation>
    </message>
    <message>
        <source>laptop</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>portátil</translation>
    </message>
    <message>
        <source>phone</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>móvil</translation>
    </message>
    <message>
        <source>tablet</source>
        <extracomment>The questions about a new device, all of them answerable by anybody.</extracomment>
        <translation>tableta</translation>
    </message>
</context>
<context>
    <name>EnrolPage</name>
    <message>
        <source>A new device</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Un nuevo dispositivo</translation>
    </message>
    <message>
        <source>A new pass</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Un pase nuevo</translation>
    </message>
    <message>
        <source>Chosen here instead of {name}.</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Elegido aquí en lugar de {name}.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Here it will say what follows, before anything is made.</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Aquí verás qué pasará, antes de que se cree nada.</translation>
    </message>
    <message>
        <source>Make the pass</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Crear el pase</translation>
    </message>
    <message>
        <source>Put aside</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>Dejar para luego</translation>
    </message>
    <message>
        <source>a code, so no name travels in clear</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>un código, para que ningún nombre viaje sin cifrar</translation>
    </message>
    <message>
        <source>as before</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>como antes</translation>
    </message>
    <message>
        <source>bundle</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>paquete</translation>
    </message>
    <message>
        <source>key</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>clave</translation>
    </message>
    <message>
        <source>known as</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>conocido como</translation>
    </message>
    <message>
        <source>waits in the tray under a passphrase</source>
        <extracomment>A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray.</extracomment>
        <translation>espera en la bandeja bajo una frase de contraseña</translation>
    </message>
</context>
<context>
    <name>FindField</name>
    <message>
        <source>Find a person or a device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Buscar una persona o un dispositivo</translation>
    </message>
    <message>
        <source>person or device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>persona o dispositivo</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>hidden</source>
        <extracomment>What only some want to see: a word that opens it and closes it again.</extracomment>
        <translation>oculto</translation>
    </message>
    <message>
        <source>shown</source>
        <extracomment>What only some want to see: a word that opens it and closes it again.</extracomment>
        <translation>visible</translation>
    </message>
</context>
<context>
    <name>Footer</name>
    <message>
        <source>Ctrl+D</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Diario</translation>
    </message>
    <message>
        <source>F6 next part of the window</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>F6 parte siguiente de la ventana</translation>
    </message>
    <message>
        <source>Undo</source>
        <extracomment>The line at the bottom: what was said and done, how to take it back, where the diary is.</extracomment>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>FoundingForm</name>
    <message>
        <source>Details</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Left empty, it is made from the name of the house.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>Si lo dejas vacío, se forma con el nombre de la casa.</translation>
    </message>
    <message>
        <source>RSA-3072 suits every built-in client.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>RSA-3072 sirve para todos los clientes integrados.</translation>
    </message>
    <message>
        <source>What does the gateway sign with?</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>¿Con qué firma la pasarela?</translation>
    </message>
    <message>
        <source>Where is the CA key kept?</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>¿Dónde se guarda la clave de la CA?</translation>
    </message>
    <message>
        <source>Where this computer is now. If that is not at home, ask the router.</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>La red en la que está ahora este ordenador. Si no es la de casa, míralo en el router.</translation>
    </message>
    <message>
        <source>a subnet at home</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>una subred de casa</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>en un archivo de clave</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>en el llavero</translation>
    </message>
    <message>
        <source>the name of the house</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>el nombre de la casa</translation>
    </message>
    <message>
        <source>what the household is called</source>
        <extracomment>What is asked about a new household, and where its answers are told not to fit.</extracomment>
        <translation>cómo se llama el hogar</translation>
    </message>
</context>
<context>
    <name>FoundingPage</name>
    <message>
        <source>A sealed copy cannot be made yet; copy the data folder and keep the passphrase apart from it.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Todavía no se puede hacer una copia sellada; copia la carpeta de datos y guarda la frase de contraseña en otro sitio.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>One line above wants another look.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Hay que repasar una línea de arriba.</translation>
    </message>
    <message>
        <source>Still wanted: {what}.</source>
        <extracomment>The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded.</extracomment>
        <translation>Aún falta: {what}.</translation>
    </message>
</context>
<context>
    <name>GatewayButton</name>
    <message>
        <source>Gateway</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Pasarela</translation>
    </message>
    <message>
        <source>Gateway {host}</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Pasarela {host}</translation>
    </message>
    <message>
        <source>The gateway (Ctrl+G)</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>La pasarela (Ctrl+G)</translation>
    </message>
</context>
<context>
    <name>GatewayChoices</name>
    <message>
        <source>1500 for most lines, 1492 where the provider uses PPPoE.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>1500 para la mayoría de las líneas, 1492 si el proveedor usa PPPoE.</translation>
    </message>
    <message>
        <source>A secret for each device beside its certificate</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Un secreto para cada dispositivo, además de su certificado</translation>
    </message>
    <message>
        <source>Address that the home network sees</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Dirección que ve la red de casa</translation>
    </message>
    <message>
        <source>Against whoever records today and decrypts in twenty years (RFC 8784); for gateways that know it.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Protege de quien grabe hoy y descifre dentro de veinte años (RFC 8784); para pasarelas que lo conocen.</translation>
    </message>
    <message>
        <source>For gateways that want one. Stopping a device that knew it means a new one for all.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Para pasarelas que piden uno. Si bloqueas un dispositivo que lo sabía, hará falta uno nuevo para todos.</translation>
    </message>
    <message>
        <source>Interface that packets leave the tunnel on</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Interfaz por la que el tráfico sale del túnel</translation>
    </message>
    <message>
        <source>Its name at the gateway. Empty where the kernel itself unpacks the tunnel.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Su nombre en la pasarela. Vacío si es el propio núcleo quien desempaqueta el túnel.</translation>
    </message>
    <message>
        <source>Keep these choices</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Conservar estas opciones</translation>
    </message>
    <message>
        <source>Largest packet on the way out, octets</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Tamaño máximo de los paquetes de red hacia fuera, en octetos</translation>
    </message>
    <message>
        <source>One secret that all devices share</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Un secreto que comparten todos los dispositivos</translation>
    </message>
    <message>
        <source>Page at home for the web front</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Página de casa para la fachada web</translation>
    </message>
    <message>
        <source>Such as http://127.0.0.1:8080. Empty for no web front.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Por ejemplo, http://127.0.0.1:8080. Vacío si no hay fachada web.</translation>
    </message>
    <message>
        <source>That computer is the router of the house too</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Ese ordenador es también el router de la casa</translation>
    </message>
    <message>
        <source>The gateway’s, where the router at home cannot be told a way back to the tunnel.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>La de la pasarela, si al router de casa no se le puede indicar el camino de vuelta al túnel.</translation>
    </message>
    <message>
        <source>Then other traffic is left to its other rules; otherwise it refuses to forward any.</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>Entonces el resto del tráfico queda a cargo de sus otras reglas; si no, se niega a reenviarlo.</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>no</translation>
    </message>
    <message>
        <source>the device’s own</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>la del propio dispositivo</translation>
    </message>
    <message>
        <source>the gateway’s</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>la de la pasarela</translation>
    </message>
    <message>
        <source>tunnel interface</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>interfaz del túnel</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>Choices for the files that the gateway&apos;s computer reads.</extracomment>
        <translation>sí</translation>
    </message>
</context>
<context>
    <name>GatewayDifference</name>
    <message>
        <source>File by file</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>Archivo por archivo</translation>
    </message>
    <message>
        <source>What a delivery changes</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>Qué cambia un envío</translation>
    </message>
    <message>
        <source>changed</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>new</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>no longer needed</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>ya no hace falta</translation>
    </message>
    <message>
        <source>the same</source>
        <extracomment>What a delivery would change: a sentence, and folded under it, file by file.</extracomment>
        <translation>igual</translation>
    </message>
</context>
<context>
    <name>GatewayFields</name>
    <message>
        <source>A name, an address, or a short name from your ssh configuration.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Un nombre, una dirección o un nombre corto de tu configuración de ssh.</translation>
    </message>
    <message>
        <source>A stick, or a share that this computer has mounted.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Una memoria USB, o una carpeta compartida que este ordenador tenga montada.</translation>
    </message>
    <message>
        <source>At the gateway; from the user’s home where it does not begin with a slash.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>En la pasarela; si no empieza por una barra, a partir de la carpeta personal del usuario.</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Elegir la carpeta</translation>
    </message>
    <message>
        <source>Choose…</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Elegir…</translation>
    </message>
    <message>
        <source>Command after a delivery</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Comando después de un envío</translation>
    </message>
    <message>
        <source>Folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>Host</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Host</translation>
    </message>
    <message>
        <source>How do its files get there?</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>¿Cómo llegan allí sus archivos?</translation>
    </message>
    <message>
        <source>How the files get there</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Cómo llegan allí los archivos</translation>
    </message>
    <message>
        <source>Port</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Puerto</translation>
    </message>
    <message>
        <source>Run at the gateway, so that what runs there reads the new list. Empty for none.</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Se ejecuta en la pasarela, para que lo que funciona allí lea la lista nueva. Vacío si no hace falta.</translation>
    </message>
    <message>
        <source>User there</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Usuario allí</translation>
    </message>
    <message>
        <source>Where the gateway’s files go</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>Destino de los archivos de la pasarela</translation>
    </message>
    <message>
        <source>by ssh</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>por ssh</translation>
    </message>
    <message>
        <source>into a folder</source>
        <extracomment>The fields that say where the gateway&apos;s files go: by ssh, or into a folder.</extracomment>
        <translation>a una carpeta</translation>
    </message>
</context>
<context>
    <name>GatewayPack</name>
    <message>
        <source>Choices for its files</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Opciones para sus archivos</translation>
    </message>
    <message>
        <source>Its files, by hand</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Sus archivos, a mano</translation>
    </message>
    <message>
        <source>Where to write the gateway’s files</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Dónde escribir los archivos de la pasarela</translation>
    </message>
    <message>
        <source>Write its files to a folder…</source>
        <extracomment>The gateway&apos;s files in a folder, for gateways that take them by hand.</extracomment>
        <translation>Escribir sus archivos en una carpeta…</translation>
    </message>
</context>
<context>
    <name>GatewayPage</name>
    <message>
        <source>A device is kept out only when the gateway holds the list that says so. Say where its files go, and new lists go there by themselves.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Un dispositivo solo queda fuera cuando la pasarela tiene la lista que lo dice. Indica el destino de sus archivos y las listas nuevas llegarán solas.</translation>
    </message>
    <message>
        <source>Another copy of the app has the household open; that one delivers.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Otra copia de la aplicación tiene abierto el hogar; es ella la que envía.</translation>
    </message>
    <message>
        <source>Change where its files go</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Cambiar el destino</translation>
    </message>
    <message>
        <source>Its files can be written to a folder, to see what a gateway gets.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Sus archivos se pueden escribir en una carpeta, para ver qué recibe una pasarela.</translation>
    </message>
    <message>
        <source>Nothing of the practice household is ever delivered, so no gateway holds anything of it.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Nada del hogar de práctica se envía nunca, así que ninguna pasarela tiene nada suyo.</translation>
    </message>
    <message>
        <source>Say where its files go</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Indicar el destino</translation>
    </message>
    <message>
        <source>The gateway</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>La pasarela</translation>
    </message>
    <message>
        <source>Until the gateway holds the new list, whoever could get in still can. The app keeps trying by itself while it is open.</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Hasta que la pasarela tenga la lista nueva, quien podía entrar sigue pudiendo. La aplicación lo sigue intentando sola mientras está abierta.</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>The gateway: how it stands, what a delivery changes, deliver it, or write its files to a folder.</extracomment>
        <translation>Plantilla propia</translation>
    </message>
</context>
<context>
    <name>GatewayPlacePage</name>
    <message>
        <source>Asking {where} for its host key …</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Preguntando a {where} por su clave del host…</translation>
    </message>
    <message>
        <source>Back to the gateway</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Volver a la pasarela</translation>
    </message>
    <message>
        <source>Deliver nowhere any more</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Dejar de enviar</translation>
    </message>
    <message>
        <source>Forget it</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Olvidarlo</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Keep it</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Conservarlo</translation>
    </message>
    <message>
        <source>Then it is not your gateway that answers. Nothing was sent and nothing was kept. See whether the host is the right one, and try again from your own network.</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Entonces no es tu pasarela la que responde. No se ha enviado ni guardado nada. Comprueba si el host es el correcto y prueba de nuevo desde tu propia red.</translation>
    </message>
    <message>
        <source>What lies at the gateway stays there, and ends by its dates. New lists go there by hand from now on, and its host key is compared anew when you come back.</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Lo que hay en la pasarela se queda allí y caduca en sus fechas. Desde ahora las listas nuevas se llevan a mano y, si vuelves, la clave del host se compara otra vez.</translation>
    </message>
    <message>
        <source>Where its files go</source>
        <extracomment>Where the gateway&apos;s files go: said once, the host key compared once.</extracomment>
        <translation>Destino de sus archivos</translation>
    </message>
</context>
<context>
    <name>GatewayVisit</name>
    <message>
        <source>Cancel</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Deliver</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Enviar</translation>
    </message>
    <message>
        <source>Ending the visit; the gateway keeps a whole set.</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Terminando la visita; la pasarela conserva un juego completo.</translation>
    </message>
    <message>
        <source>Reaching the gateway …</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Conectando con la pasarela…</translation>
    </message>
    <message>
        <source>What differs</source>
        <extracomment>Visits to the gateway on its page: deliver, look, cancel, and what came of it.</extracomment>
        <translation>Ver las diferencias</translation>
    </message>
</context>
<context>
    <name>HandOver</name>
    <message>
        <source>Back to the board</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Volver al tablero</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Hand over {title}</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Entregar en mano {title}</translation>
    </message>
    <message>
        <source>It gets in as soon as it has its bundle, until {end}. Nothing changes for anybody else.</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Entra en cuanto tenga su paquete, hasta el {end}. Para los demás no cambia nada.</translation>
    </message>
    <message>
        <source>Where to save it for {title}</source>
        <extracomment>The page on which a bundle is handed over: ways at the left, what was taken at the right.</extracomment>
        <translation>Dónde guardarlo para {title}</translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>Close</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Esc</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Esc changes nothing</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Esc no cambia nada</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Perdido o robado</translation>
    </message>
    <message>
        <source>Type two letters of the person or the device.</source>
        <extracomment>The head of &quot;Lost or stolen&quot;: sign, title, what to do, and the way out.</extracomment>
        <translation>Escribe dos letras de la persona o del dispositivo.</translation>
    </message>
</context>
<context>
    <name>Headline</name>
    <message>
        <source>Deliver now</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Enviar ahora</translation>
    </message>
    <message>
        <source>Hand over {title}</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Entregar en mano {title}</translation>
    </message>
    <message>
        <source>Renew {title}</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Renovar {title}</translation>
    </message>
    <message>
        <source>Say less at the top</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Mostrar menos arriba</translation>
    </message>
    <message>
        <source>Sign the next list</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Firmar la lista siguiente</translation>
    </message>
    <message>
        <source>What that means</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>Qué significa eso</translation>
    </message>
    <message>
        <source>less</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>menos</translation>
    </message>
    <message>
        <source>more</source>
        <extracomment>The headline: until when all is well, what that means, and at most one button.</extracomment>
        <translation>más</translation>
    </message>
</context>
<context>
    <name>HelpPage</name>
    <message>
        <source>Hollow is for now, solid is for sure.</source>
        <extracomment>F1: help for this spot, offline, short enough to be read standing.</extracomment>
        <translation>Lo hueco es por ahora, lo relleno es con certeza.</translation>
    </message>
</context>
<context>
    <name>HostKeyCard</name>
    <message>
        <source>Command to run at the gateway</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Comando para ejecutar en la pasarela</translation>
    </message>
    <message>
        <source>Host key that it shows</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Clave del host que muestra</translation>
    </message>
    <message>
        <source>Is this the gateway’s own key?</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>¿Es esta la clave de la propia pasarela?</translation>
    </message>
    <message>
        <source>It is another</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Es otra</translation>
    </message>
    <message>
        <source>It is the same</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Es la misma</translation>
    </message>
    <message>
        <source>Whoever sits between this computer and the gateway could show another one. Run this at the gateway itself and compare:</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>Quien esté entre este ordenador y la pasarela podría mostrar otra. Ejecuta esto en la propia pasarela y compara:</translation>
    </message>
    <message>
        <source>{where} shows this host key:</source>
        <extracomment>First contact: the key that a server shows, to be compared by a person with what the gateway itself says.</extracomment>
        <translation>{where} muestra esta clave del host:</translation>
    </message>
</context>
<context>
    <name>HouseholdForm</name>
    <message>
        <source>Another quiet one</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Otra poco usada</translation>
    </message>
    <message>
        <source>DNS server at home, if there is one</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>Servidor DNS en casa, si lo hay</translation>
    </message>
    <message>
        <source>Under which name is the house reached?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Con qué nombre se llega a la casa?</translation>
    </message>
    <message>
        <source>What do device codes end in?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿En qué terminan los códigos de los dispositivos?</translation>
    </message>
    <message>
        <source>What goes through home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Qué pasa por casa?</translation>
    </message>
    <message>
        <source>What is the household called?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Cómo se llama el hogar?</translation>
    </message>
    <message>
        <source>What of their traffic goes through home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Qué parte de su tráfico pasa por casa?</translation>
    </message>
    <message>
        <source>Which subnet do the devices get?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Qué subred reciben los dispositivos?</translation>
    </message>
    <message>
        <source>Which subnets are at home?</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>¿Qué subredes hay en casa?</translation>
    </message>
    <message>
        <source>a quiet one is proposed</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>se propone una poco usada</translation>
    </message>
    <message>
        <source>everything</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>todo</translation>
    </message>
    <message>
        <source>what is at home</source>
        <extracomment>The questions about a household, asked alike when it is founded and when it is changed.</extracomment>
        <translation>lo que está en casa</translation>
    </message>
</context>
<context>
    <name>HouseholdPage</name>
    <message>
        <source>(key in a file)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(clave en un archivo)</translation>
    </message>
    <message>
        <source>(key in the keyring)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(clave en el llavero)</translation>
    </message>
    <message>
        <source>(no. {number})</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(n.º {number})</translation>
    </message>
    <message>
        <source>(trusted beside it)</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>(de confianza junto a ella)</translation>
    </message>
    <message>
        <source>As it was</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Como estaba</translation>
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
        <translation>Cambiarlo</translation>
    </message>
    <message>
        <source>Change it back</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Volver a lo anterior</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Diary</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Diario</translation>
    </message>
    <message>
        <source>New gateway certificate</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Nuevo certificado de la pasarela</translation>
    </message>
    <message>
        <source>Sign the list anew</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Firmar la lista de nuevo</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Alguien toma el relevo</translation>
    </message>
    <message>
        <source>The household</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>El hogar</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>La próxima CA</translation>
    </message>
    <message>
        <source>There is a way back: give the house its old name again, with the passphrase.</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Hay vuelta atrás: devuelve a la casa su nombre anterior, con la frase de contraseña.</translation>
    </message>
    <message>
        <source>Until when it runs</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>Hasta cuándo vale</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>pasarela</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>lista de revocación</translation>
    </message>
    <message>
        <source>the other CA</source>
        <extracomment>The household: its settings, to be changed; what runs until when, and the list and the certificate made anew.</extracomment>
        <translation>la otra CA</translation>
    </message>
</context>
<context>
    <name>InsideSheet</name>
    <message>
        <source>&amp;Bring it back</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>&amp;Recuperarlo</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Devices</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>Look at the gateway. Its list may know of devices that were stopped since; they are taken over from there, and list numbers go on above the highest one seen.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Mira la pasarela. Puede que su lista conozca dispositivos bloqueados desde entonces; se adoptan de ahí, y los números de lista siguen por encima del más alto que se haya visto.</translation>
    </message>
    <message>
        <source>Made</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Creado</translation>
    </message>
    <message>
        <source>Newest list number</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Número de lista más nuevo</translation>
    </message>
    <message>
        <source>Once it is open, what is in it stands here: the household, the day, the newest list number, the devices. Nothing is written before you say so.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Una vez abierto, aquí aparece lo que contiene: el hogar, el día, el número de lista más nuevo, los dispositivos. No se escribe nada hasta que tú lo digas.</translation>
    </message>
    <message>
        <source>Say where the gateway is, then deliver. Its list may know of devices that were stopped since; they are taken over from there, and list numbers go on above the highest one seen. Then enrol everybody anew.</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Indica dónde está la pasarela y después envía. Puede que su lista conozca dispositivos bloqueados desde entonces; se adoptan de ahí, y los números de lista siguen por encima del más alto que se haya visto. Después da a todos un pase nuevo.</translation>
    </message>
    <message>
        <source>Stopped or revoked</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Bloqueados o revocados</translation>
    </message>
    <message>
        <source>To the &amp;board</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Al &amp;tablero</translation>
    </message>
    <message>
        <source>To the &amp;gateway</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>A la &amp;pasarela</translation>
    </message>
    <message>
        <source>What comes next</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Qué viene después</translation>
    </message>
    <message>
        <source>What is inside</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>Qué contiene</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>not on paper</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>no está en papel</translation>
    </message>
    <message>
        <source>{day}, {time} UTC</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>{day}, {time} UTC</translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <extracomment>The right half of the page that brings a household back: what is inside, and afterwards what to do next.</extracomment>
        <translation>{names} y {count} más</translation>
    </message>
</context>
<context>
    <name>KeyPaperPage</name>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>1: codes</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>1: códigos</translation>
    </message>
    <message>
        <source>2: letters</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>2: letras</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Volver al tablero</translation>
    </message>
    <message>
        <source>Both pages are at the printer.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Las dos páginas están en la impresora.</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Ctrl+P</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Idioma de quien lo lee</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Page</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Página</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Saved as {file}. Print both pages, then delete the file.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Guardado como {file}. Imprime las dos páginas y después borra el archivo.</translation>
    </message>
    <message>
        <source>Shown here</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Se muestra aquí</translation>
    </message>
    <message>
        <source>The CA key as it lies in the keyring, encrypted under the household’s passphrase, with the settings and the newest list number. It outlives every stick. People and devices are not on it: sealed copies have those.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>La clave de la CA tal como está en el llavero, cifrada con la frase de contraseña del hogar, junto con los ajustes y el número de lista más nuevo. Dura más que cualquier memoria USB. Las personas y los dispositivos no figuran en él: esos están en las copias selladas.</translation>
    </message>
    <message>
        <source>The household’s key on paper.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>La clave del hogar en papel.</translation>
    </message>
    <message>
        <source>The key on paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>La clave en papel</translation>
    </message>
    <message>
        <source>The passphrase is never on it. Keep the two apart, both where they will be found.</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>La frase de contraseña nunca figura en él. Guarda las dos cosas por separado, ambas donde se puedan encontrar.</translation>
    </message>
    <message>
        <source>Where to save the paper</source>
        <extracomment>The page for the household&apos;s key on paper: both pages as they will be, to be printed or saved.</extracomment>
        <translation>Dónde guardar el papel</translation>
    </message>
</context>
<context>
    <name>KindWords</name>
    <message>
        <source>(from documents, not tried on a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(según la documentación, sin probar en un dispositivo)</translation>
    </message>
    <message>
        <source>(not among the kinds of device any more; treated like {kind})</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(ya no está entre los tipos de dispositivo; se trata como {kind})</translation>
    </message>
    <message>
        <source>(tried on such a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(probado en un dispositivo así)</translation>
    </message>
    <message>
        <source>(your own file, not tried on a device)</source>
        <extracomment>What is known of a device kind, in the language of the window.</extracomment>
        <translation>(archivo tuyo, sin probar en un dispositivo)</translation>
    </message>
</context>
<context>
    <name>LeavePage</name>
    <message>
        <source>Also change</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>Cambia también</translation>
    </message>
    <message>
        <source>Revoke them all for good</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>Revocarlos todos para siempre</translation>
    </message>
    <message>
        <source>{person} leaves</source>
        <extracomment>Somebody leaves the household: what goes, and what else is to be changed.</extracomment>
        <translation>{person} deja el hogar</translation>
    </message>
</context>
<context>
    <name>LeftSide</name>
    <message>
        <source>Cover the code, show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Tapar el código, mostrar la frase de contraseña</translation>
    </message>
    <message>
        <source>Cover the file, show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Tapar el archivo, mostrar la frase de contraseña</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Ctrl+P</translation>
    </message>
    <message>
        <source>Drag it into a folder, a message or onto a stick, or choose a way here. After hand-over the key exists on the {device} alone.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Arrástralo a una carpeta, a un mensaje o a una memoria USB, o elige aquí una salida. Después de entregarlo en mano, la clave existe solo en el dispositivo ({device}).</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Ocultar la frase de contraseña</translation>
    </message>
    <message>
        <source>Hide the passphrase, show the code</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Ocultar la frase de contraseña, mostrar el código</translation>
    </message>
    <message>
        <source>It is never on one screen, one sheet or in one message with a code or a file. Say it, or show it once the code is covered.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Nunca está en la misma pantalla, hoja o mensaje que un código o un archivo. Dila de palabra, o muéstrala cuando el código esté tapado.</translation>
    </message>
    <message>
        <source>Sheet and messages…</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Hoja y mensajes…</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>Mostrar la frase de contraseña</translation>
    </message>
    <message>
        <source>The passphrase travels another way.</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>La frase de contraseña viaja por otro camino.</translation>
    </message>
    <message>
        <source>waiting since {day}</source>
        <extracomment>The left side of the hand-over page: the card, the ways, the passphrase&apos;s own way, the end.</extracomment>
        <translation>en espera desde el {day}</translation>
    </message>
</context>
<context>
    <name>LostSheet</name>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The sheet &quot;Lost or stolen&quot; itself: it slides down over the window, keeps the focus, and slides back.</extracomment>
        <translation>Perdido o robado</translation>
    </message>
    <message>
        <source>gets in no more</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>ya no entra</translation>
    </message>
    <message>
        <source>stopped already</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>ya bloqueado</translation>
    </message>
    <message>
        <source>{title} gets in no more. There is nothing to stop.</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>{title} ya no entra. No hay nada que bloquear.</translation>
    </message>
    <message>
        <source>{title} is stopped already. It gets in when you let it back in, and not before.</source>
        <extracomment>What &quot;Lost or stolen&quot; says of a device: its state, and why it cannot be stopped where it cannot.</extracomment>
        <translation>Ya se ha bloqueado {title}. El dispositivo entrará cuando lo dejes entrar de nuevo, y no antes.</translation>
    </message>
</context>
<context>
    <name>MatchList</name>
    <message>
        <source>Devices found</source>
        <extracomment>The devices that were found, as ruled rows with the typed letters underlined.</extracomment>
        <translation>Dispositivos encontrados</translation>
    </message>
    <message>
        <source>{number} of {count}</source>
        <extracomment>The devices that were found, as ruled rows with the typed letters underlined.</extracomment>
        <translation>{number} de {count}</translation>
    </message>
</context>
<context>
    <name>NamingCard</name>
    <message>
        <source>It was made elsewhere. Whose is it?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Se hizo en otro lugar. ¿De quién es?</translation>
    </message>
    <message>
        <source>Name it</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Ponerle nombre</translation>
    </message>
    <message>
        <source>Somebody</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>Alguien</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>¿Cómo se llama?</translation>
    </message>
    <message>
        <source>Whose device is it?</source>
        <extracomment>Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known.</extracomment>
        <translation>¿De quién es el dispositivo?</translation>
    </message>
</context>
<context>
    <name>OfferedWords</name>
    <message>
        <source>The passphrase that is offered</source>
        <extracomment>The passphrase that the app offers: words to be written on paper, dots until they are asked for.</extracomment>
        <translation>La frase de contraseña propuesta</translation>
    </message>
    <message>
        <source>covered; Show makes it readable</source>
        <extracomment>The passphrase that the app offers: words to be written on paper, dots until they are asked for.</extracomment>
        <translation>tapada; «Mostrar» la hace legible</translation>
    </message>
</context>
<context>
    <name>OnTheWay</name>
    <message>
        <source>Carry the list to the gateway now.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Lleva ahora la lista a la pasarela.</translation>
    </message>
    <message>
        <source>In force.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>En vigor.</translation>
    </message>
    <message>
        <source>List no. {number} waits here.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>La lista n.º {number} espera aquí.</translation>
    </message>
    <message>
        <source>Nobody has said yet where the gateway is, so nothing can be sent. Until it has the list, whoever could get in still can.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Todavía no se ha indicado dónde está la pasarela, así que no se puede enviar nada. Hasta que tenga la lista, quien podía entrar sigue pudiendo.</translation>
    </message>
    <message>
        <source>Not in force yet.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Aún no está en vigor.</translation>
    </message>
    <message>
        <source>Nothing of the practice household is sent.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Nada del hogar de práctica se envía.</translation>
    </message>
    <message>
        <source>Reaching the gateway…</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Conectando con la pasarela…</translation>
    </message>
    <message>
        <source>The gateway was read back at {time}; it took {seconds} s.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>La pasarela se releyó a las {time}; tardó {seconds} s.</translation>
    </message>
    <message>
        <source>The list lies at {path}. Carry it to the gateway.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>La lista está en {path}. Llévala a la pasarela.</translation>
    </message>
    <message>
        <source>Try &amp;now</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>&amp;Probar ahora</translation>
    </message>
    <message>
        <source>Where to write the list</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Dónde escribir la lista</translation>
    </message>
    <message>
        <source>With a household of your own the list would go to the gateway at once.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>Con un hogar propio, la lista iría enseguida a la pasarela.</translation>
    </message>
    <message>
        <source>Write the list to a &amp;stick…</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>&amp;Escribir la lista en una memoria USB…</translation>
    </message>
    <message>
        <source>{why} It keeps trying.</source>
        <extracomment>Whether a stop is in force: on its way to the gateway, there, or not yet and why.</extracomment>
        <translation>{why} Lo sigue intentando.</translation>
    </message>
</context>
<context>
    <name>Outcome</name>
    <message>
        <source>Close</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Intro</translation>
    </message>
    <message>
        <source>The household was locked meanwhile. The list has to be signed.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Mientras tanto se ha cerrado el hogar. Hay que firmar la lista.</translation>
    </message>
    <message>
        <source>The list lies here: {path}</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>La lista está aquí: {path}</translation>
    </message>
    <message>
        <source>Undo: let it back in</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Deshacer: dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>{title} was let back in with list {number}. It gets in once the gateway holds that list.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Con la lista {number} se deja entrar de nuevo a {title}. Entrará en cuanto la pasarela tenga esa lista.</translation>
    </message>
    <message>
        <source>{title} was stopped with list {number}.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Se ha bloqueado {title} con la lista {number}.</translation>
    </message>
    <message>
        <source>{title} were stopped with list {number}.</source>
        <extracomment>The second half of &quot;Lost or stolen&quot;: what happened, what it needs, and how to take it back.</extracomment>
        <translation>Se han bloqueado {title} con la lista {number}.</translation>
    </message>
</context>
<context>
    <name>OverCard</name>
    <message>
        <source>&amp;Open another</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>&amp;Abrir otro</translation>
    </message>
    <message>
        <source>Show the &amp;passphrase</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>Mostrar la &amp;frase de contraseña</translation>
    </message>
    <message>
        <source>Somebody in this network is guessing. Use a stick, or look who is in the Wi-Fi.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>Alguien en esta red está intentando adivinar el código. Usa una memoria USB, o mira quién está en la wifi.</translation>
    </message>
    <message>
        <source>The {device} has nothing yet. The old code leads nowhere any more.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>El dispositivo ({device}) aún no tiene nada. El código antiguo ya no lleva a ninguna parte.</translation>
    </message>
    <message>
        <source>The {device} has the file. Say the passphrase, or show it: the code is gone.</source>
        <extracomment>How a pick-up ended, and the way on.</extracomment>
        <translation>El dispositivo ({device}) ya tiene el archivo. Di la frase de contraseña, o muéstrala: el código ya no está.</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Close</source>
        <extracomment>A page of the drawer: title, content that scrolls, a last row that stays.</extracomment>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>PaperChoices</name>
    <message>
        <source>Language</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Language of whoever reads it</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Idioma de quien lo lee</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Passphrase card</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Tarjeta con la frase de contraseña</translation>
    </message>
    <message>
        <source>Sheet</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>The passphrase was erased at hand-over, so there is only the sheet.</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>La frase de contraseña se borró al entregarlo en mano, así que solo queda la hoja.</translation>
    </message>
    <message>
        <source>To say</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Para decir</translation>
    </message>
    <message>
        <source>To send</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Para enviar</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Whom to call, a name and a number</source>
        <extracomment>What is to be shown of paper and words: which, in which language, on which paper, and whom to call.</extracomment>
        <translation>A quién llamar, un nombre y un número</translation>
    </message>
</context>
<context>
    <name>PaperPage</name>
    <message>
        <source>&amp;Copy</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Volver al tablero</translation>
    </message>
    <message>
        <source>Copied. Send it along with the file.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Copiado. Envíalo junto con el archivo.</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Ctrl+P</translation>
    </message>
    <message>
        <source>It is at the printer.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Está en la impresora.</translation>
    </message>
    <message>
        <source>Paper and words</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Papel y palabras</translation>
    </message>
    <message>
        <source>Paper and words for {title}</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Papel y palabras para {title}</translation>
    </message>
    <message>
        <source>Saved as {file}.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Guardado como {file}.</translation>
    </message>
    <message>
        <source>The seven words alone. Print it when nobody waits at the printer.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Solo las siete palabras. Imprímelas cuando nadie espere junto a la impresora.</translation>
    </message>
    <message>
        <source>The sheet may lie beside the bundle. The card and what is said on the phone never do.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>La hoja puede estar junto al paquete. La tarjeta y lo que se dice por teléfono, nunca.</translation>
    </message>
    <message>
        <source>This one cannot be copied: it would end up in the same message as the file.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Esto no se puede copiar: acabaría en el mismo mensaje que el archivo.</translation>
    </message>
    <message>
        <source>This one goes with the file. The other is said on the phone, at another time.</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Este va con el archivo. El otro se dice por teléfono, en otro momento.</translation>
    </message>
    <message>
        <source>Where to save the page</source>
        <extracomment>The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied.</extracomment>
        <translation>Dónde guardar la página</translation>
    </message>
</context>
<context>
    <name>PassphraseCard</name>
    <message>
        <source>&amp;Copy</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>A program that keeps a history of the clipboard may keep it.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Un programa que guarde el historial del portapapeles puede conservarla.</translation>
    </message>
    <message>
        <source>Copied. After {seconds} seconds it is taken off the clipboard.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Copiada. A los {seconds} segundos se quita del portapapeles.</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>H&amp;ide</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>&amp;Ocultar</translation>
    </message>
    <message>
        <source>It is no longer on the clipboard.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Ya no está en el portapapeles.</translation>
    </message>
    <message>
        <source>One space between two words, no capitals. Say it, or write it on paper.</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Un espacio entre palabra y palabra, sin mayúsculas. Dila de palabra o escríbela en papel.</translation>
    </message>
</context>
<context>
    <name>PassphrasePart</name>
    <message>
        <source>7 words instead</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Mejor 7 palabras</translation>
    </message>
    <message>
        <source>Hide</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Ocultar</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Ocultar la frase de contraseña</translation>
    </message>
    <message>
        <source>It differs from the first. Look at the paper, then type it again.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>No coincide con la primera. Mira el papel y escríbela otra vez.</translation>
    </message>
    <message>
        <source>Make another</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Crear otra</translation>
    </message>
    <message>
        <source>My own…</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>La mía…</translation>
    </message>
    <message>
        <source>Several unrelated words are best. It opens the CA key, so write it on paper too.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Lo mejor son varias palabras sin relación entre sí. Abre la clave de la CA, así que escríbela también en papel.</translation>
    </message>
    <message>
        <source>Show</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Mostrar la frase de contraseña</translation>
    </message>
    <message>
        <source>The household passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>La frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>The household passphrase: 7 words, made for you</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>La frase de contraseña del hogar: 7 palabras, creadas para ti</translation>
    </message>
    <message>
        <source>The household passphrase: your own words</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>La frase de contraseña del hogar: tus propias palabras</translation>
    </message>
    <message>
        <source>The same both times.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Igual las dos veces.</translation>
    </message>
    <message>
        <source>Type the words once more, from the paper</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Escribe las palabras otra vez, leyéndolas del papel</translation>
    </message>
    <message>
        <source>Write it on paper and keep it away from this computer. It opens the CA key.</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Escríbela en papel y guárdala lejos de este ordenador. Abre la clave de la CA.</translation>
    </message>
    <message>
        <source>Your own passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>Tu propia frase de contraseña</translation>
    </message>
    <message>
        <source>the passphrase</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>la frase de contraseña</translation>
    </message>
    <message>
        <source>the passphrase once more</source>
        <extracomment>The household&apos;s passphrase on the founding page: offered or typed, and confirmed once.</extracomment>
        <translation>la frase de contraseña otra vez</translation>
    </message>
</context>
<context>
    <name>PickFolder</name>
    <message>
        <source>Save here</source>
        <extracomment>Asks for a folder, without holding anything up.</extracomment>
        <translation>Guardar aquí</translation>
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
        <translation>En {address}</translation>
    </message>
    <message>
        <source>C&amp;lose the pick-up</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>C&amp;errar la recogida</translation>
    </message>
    <message>
        <source>Chooses another address of this computer</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Elige otra dirección de este ordenador</translation>
    </message>
    <message>
        <source>Hold the phone’s camera over the code.</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Apunta al código con la cámara del móvil.</translation>
    </message>
    <message>
        <source>Link</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Enlace</translation>
    </message>
    <message>
        <source>Ten minutes more</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>Diez minutos más</translation>
    </message>
    <message>
        <source>The code of the pick-up for {title}</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>El código de la recogida para {title}</translation>
    </message>
    <message>
        <source>one minute left</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>queda un minuto</translation>
    </message>
    <message>
        <source>{minutes} minutes left</source>
        <extracomment>The open pick-up: its code, its clock, where it is, and what happens at the door.</extracomment>
        <translation>quedan {minutes} minutos</translation>
    </message>
</context>
<context>
    <name>Preview</name>
    <message>
        <source>The page as it is printed</source>
        <extracomment>A page of paper on the desk, as it will be printed.</extracomment>
        <translation>La página tal como se imprime</translation>
    </message>
</context>
<context>
    <name>ProfileChoices</name>
    <message>
        <source>By itself, away from home</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Por sí solo, fuera de casa</translation>
    </message>
    <message>
        <source>Elsewhere and on mobile data it connects. The names stand readable in the profile.</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>En otros sitios y con datos móviles se conecta. Los nombres quedan legibles en el perfil.</translation>
    </message>
    <message>
        <source>Not signed</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Sin firmar</translation>
    </message>
    <message>
        <source>Signed with the gateway’s key</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Firmado con la clave de la pasarela</translation>
    </message>
    <message>
        <source>The &amp;Wi-Fis at home, where it stays off; a comma between two</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Las redes &amp;wifi de casa, donde queda apagado; con una coma entre dos</translation>
    </message>
    <message>
        <source>When switched on</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Al encenderlo</translation>
    </message>
    <message>
        <source>When the device connects</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>Cuándo se conecta el dispositivo</translation>
    </message>
    <message>
        <source>Whose key signs the profile</source>
        <extracomment>What can be chosen for a configuration profile: whether it connects by itself, where it is at home, who signs it.</extracomment>
        <translation>De quién es la clave que firma el perfil</translation>
    </message>
</context>
<context>
    <name>ProofCard</name>
    <message>
        <source>10 minutes &amp;more</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>10 minutos &amp;más</translation>
    </message>
    <message>
        <source>Cop&amp;y the link</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>&amp;Copiar el enlace</translation>
    </message>
    <message>
        <source>Copied</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>Copiado</translation>
    </message>
    <message>
        <source>{minutes} min left</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>quedan {minutes} min</translation>
    </message>
    <message>
        <source>{minutes}:{seconds} left</source>
        <extracomment>The code of a proof&apos;s link with its clock, and the link itself to be copied or read out.</extracomment>
        <translation>quedan {minutes}:{seconds}</translation>
    </message>
</context>
<context>
    <name>ProofPage</name>
    <message>
        <source>&amp;Back</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Atrás</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Listo</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>&amp;Open a new link</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Abrir un &amp;enlace nuevo</translation>
    </message>
    <message>
        <source>Code that {title} opens</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Código que abre {title}</translation>
    </message>
    <message>
        <source>On the screen then</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Lo que sale entonces en la pantalla</translation>
    </message>
    <message>
        <source>Prove {title}</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Comprobar {title}</translation>
    </message>
    <message>
        <source>Step {number} of {count}</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Paso {number} de {count}</translation>
    </message>
    <message>
        <source>What to say</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Qué decir</translation>
    </message>
    <message>
        <source>Wi-Fi may be switched on again. The sheet shows the day from now on.</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Ya se puede volver a encender la wifi. A partir de ahora, la hoja muestra el día.</translation>
    </message>
    <message>
        <source>Written down, as it was told.</source>
        <extracomment>Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in.</extracomment>
        <translation>Anotado, tal como se contó.</translation>
    </message>
</context>
<context>
    <name>ProofPlace</name>
    <message>
        <source>&amp;Address of this computer</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>&amp;Dirección de este ordenador</translation>
    </message>
    <message>
        <source>Address of this computer</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>Dirección de este ordenador</translation>
    </message>
    <message>
        <source>At {address}.</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>En {address}.</translation>
    </message>
    <message>
        <source>The &amp;gateway’s own address at home</source>
        <extracomment>Where a proof&apos;s door is: which address of this computer, and which one the gateway shows itself under.</extracomment>
        <translation>La dirección propia de la &amp;pasarela en casa</translation>
    </message>
</context>
<context>
    <name>ProofTold</name>
    <message>
        <source>&amp;Write it down</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>&amp;Anotarlo</translation>
    </message>
    <message>
        <source>It works on mobile data, I was &amp;told</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>&amp;Me han dicho que funciona con datos móviles</translation>
    </message>
    <message>
        <source>Not &amp;yet</source>
        <extracomment>A proof by hand: somebody told that it works; what follows is shown before it is written down.</extracomment>
        <translation>&amp;Todavía no</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Why is it revoked?</source>
        <extracomment>Why a device is revoked: in words, with the name that goes onto the list beside them.</extracomment>
        <translation>¿Por qué se revoca?</translation>
    </message>
</context>
<context>
    <name>RenewPage</name>
    <message>
        <source>A new key; to the gateway the device stays the same. The old pass goes once the new one was seen to get in, and not before.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Una clave nueva; para la pasarela el dispositivo sigue siendo el mismo. El pase anterior se retira cuando se haya visto entrar el nuevo, y no antes.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Days that both get in, at most</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Días en que ambos entran, como máximo</translation>
    </message>
    <message>
        <source>Hand them over at the desk</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Entregarlos en la mesa</translation>
    </message>
    <message>
        <source>Never beyond the old one’s end.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Nunca más allá del fin del anterior.</translation>
    </message>
    <message>
        <source>Nothing is ticked.</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>No hay nada marcado.</translation>
    </message>
    <message>
        <source>Put aside</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Dejar para luego</translation>
    </message>
    <message>
        <source>Renew</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>Renew it</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>Renew {count}</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Renovar {count}</translation>
    </message>
    <message>
        <source>Stop after this one</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Parar después de este</translation>
    </message>
    <message>
        <source>Tick what ends soon</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Marcar lo que vence pronto</translation>
    </message>
    <message>
        <source>Visits…</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>Visitas…</translation>
    </message>
    <message>
        <source>{title}, {done} of {count}</source>
        <extracomment>Renewing: which devices, for how long both passes get in, and how far the round has come.</extracomment>
        <translation>{title}, {done} de {count}</translation>
    </message>
</context>
<context>
    <name>RenewRows</name>
    <message>
        <source>One more ends later.</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>Uno más caduca después.</translation>
    </message>
    <message>
        <source>Which devices?</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>¿Qué dispositivos?</translation>
    </message>
    <message>
        <source>ends {day}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>caduca el {day}</translation>
    </message>
    <message>
        <source>ends {day}, you meet on {visit}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>caduca el {day}, visita el {visit}</translation>
    </message>
    <message>
        <source>stopped, would end {day}</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>bloqueado, caducaría el {day}</translation>
    </message>
    <message>
        <source>{count} more end later.</source>
        <extracomment>The devices that can be renewed, as boxes to be ticked: the soonest to end first.</extracomment>
        <translation>Otros {count} caducan después.</translation>
    </message>
</context>
<context>
    <name>RestCard</name>
    <message>
        <source>Each way is rehearsed first: the very bytes are opened with the passphrase and tried at the gateway’s certificate and the revocation list. What would not get in does not leave.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Cada salida se ensaya antes: esos mismos bytes se abren con la frase de contraseña y se prueban con el certificado de la pasarela y la lista de revocación. Lo que no podría entrar no sale.</translation>
    </message>
    <message>
        <source>Known to go wrong with such a device:</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Lo que suele fallar en un dispositivo así:</translation>
    </message>
    <message>
        <source>Your own texts are written as they are: whether one is right, only the program knows that reads it.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Tus propios textos se escriben tal cual: si uno es correcto, solo lo sabe el programa que lo lee.</translation>
    </message>
</context>
<context>
    <name>RestorePage</name>
    <message>
        <source>&amp;Open it</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>&amp;Passphrase of the household</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>&amp;Frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>A sealed copy. Its passphrase is wanted now.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Una copia sellada. Ahora hace falta su frase de contraseña.</translation>
    </message>
    <message>
        <source>Back</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Bring a household back</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Recuperar un hogar</translation>
    </message>
    <message>
        <source>Bring a household back, from a sealed copy or from its paper.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Recuperar un hogar, de una copia sellada o de su papel.</translation>
    </message>
    <message>
        <source>It is open. What is inside stands beside.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Está abierto. Al lado se ve lo que contiene.</translation>
    </message>
    <message>
        <source>Look inside first. Nothing is written before the last button.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Mira primero lo que contiene. No se escribe nada hasta el último botón.</translation>
    </message>
    <message>
        <source>No code of a paper was found there. Scan it again, straight, or type its lines.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Ahí no se encontró ningún código de un papel. Escanéalo otra vez, bien recto, o escribe sus líneas.</translation>
    </message>
    <message>
        <source>Passphrase of the &amp;copies</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Frase de contraseña de las &amp;copias</translation>
    </message>
    <message>
        <source>The copies have a passphrase of their own</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Las copias tienen su propia frase de contraseña</translation>
    </message>
    <message>
        <source>The paper has been read. Its passphrase is wanted now.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>El papel está leído. Ahora hace falta su frase de contraseña.</translation>
    </message>
    <message>
        <source>Type the lines of a paper</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>Escribir las líneas de un papel</translation>
    </message>
    <message>
        <source>{household} is back.</source>
        <extracomment>Brings a household back on one page: the files, the passphrase, what is inside, and only then the button.</extracomment>
        <translation>{household} está de vuelta.</translation>
    </message>
</context>
<context>
    <name>SavedCard</name>
    <message>
        <source>Open the &amp;folder</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Abrir la carpeta</translation>
    </message>
    <message>
        <source>Written and read back.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Escrito y releído.</translation>
    </message>
    <message>
        <source>Written and read back. Eject {name} in the file manager, then pull it.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Escrito y releído. Expulsa {name} en el gestor de archivos y retira después la memoria USB.</translation>
    </message>
    <message>
        <source>Written and read back. Leave {name} in while it is unmounted.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Escrito y releído. No saques {name} mientras se desmonta.</translation>
    </message>
    <message>
        <source>Written, read back and unmounted. You may pull {name} now.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Escrito, releído y desmontado. Ya puedes sacar {name}.</translation>
    </message>
    <message>
        <source>in {folder}</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>en {folder}</translation>
    </message>
</context>
<context>
    <name>SealedPage</name>
    <message>
        <source>&amp;On paper…</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>En p&amp;apel…</translation>
    </message>
    <message>
        <source>&amp;Try it</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>&amp;Probarla</translation>
    </message>
    <message>
        <source>&amp;Write one to a folder…</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>&amp;Escribir una en una carpeta…</translation>
    </message>
    <message>
        <source>A sealed copy holds everything: the register, the CA key, the household’s secrets. The app writes one into its own folder after every change and keeps the last ten. They die with this computer, so carry one away now and then. It opens with the household’s passphrase, and with any age tool.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Una copia sellada lo contiene todo: el registro, la clave de la CA, los secretos del hogar. La aplicación escribe una en su propia carpeta después de cada cambio y conserva las diez últimas. Si este ordenador se pierde, se pierden con él, así que llévate una a otro sitio de vez en cuando. Se abre con la frase de contraseña del hogar, y con cualquier programa de age.</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Copia</translation>
    </message>
    <message>
        <source>Does it open?</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>¿Se abre?</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Copias selladas</translation>
    </message>
    <message>
        <source>The copy of {day} was opened on {tried} and was whole.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>La copia del {day} se abrió el {tried} y estaba completa.</translation>
    </message>
    <message>
        <source>There are copies, but none of them was ever opened.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Hay copias, pero nunca se ha abierto ninguna.</translation>
    </message>
    <message>
        <source>There is no sealed copy yet. One is made when the household is next unlocked.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Todavía no hay ninguna copia sellada. Se hace una la próxima vez que se abra el hogar.</translation>
    </message>
    <message>
        <source>Trying one opens it for real, in a place that is gone afterwards. Nothing here is changed.</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Al probar una, se abre de verdad, en un lugar que después desaparece. Aquí no cambia nada.</translation>
    </message>
    <message>
        <source>Where to write a sealed copy</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>Dónde escribir una copia sellada</translation>
    </message>
    <message>
        <source>{day}, {time}, in {folder}</source>
        <extracomment>Sealed copies: which there are, one more to carry away, and trying one for real.</extracomment>
        <translation>{day}, {time}, en {folder}</translation>
    </message>
</context>
<context>
    <name>SearchField</name>
    <message>
        <source>Lost or stolen: letters of the person or the device</source>
        <extracomment>The field of &quot;Lost or stolen&quot;: large, with the count of devices at its right.</extracomment>
        <translation>Perdido o robado: letras de la persona o del dispositivo</translation>
    </message>
    <message>
        <source>person or device</source>
        <extracomment>The field of &quot;Lost or stolen&quot;: large, with the count of devices at its right.</extracomment>
        <translation>persona o dispositivo</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>A copy of this folder is a copy of the household. What lies in the keyring is not in it.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Una copia de esta carpeta es una copia del hogar. Lo que está en el llavero no va en ella.</translation>
    </message>
    <message>
        <source>Counted from the last signature. Closing the window locks it at once.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Se cuenta desde la última firma. Si cierras la ventana, el hogar se cierra al momento.</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Lock the household after</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Cerrar el hogar después de</translation>
    </message>
    <message>
        <source>Look</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Open the folder</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Abrir la carpeta</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Size of type</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Tamaño de letra</translation>
    </message>
    <message>
        <source>Takes effect when the app is started next. The diary keeps the words it was written in.</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Se aplica la próxima vez que se inicie la aplicación. El diario conserva las palabras con las que se escribió.</translation>
    </message>
    <message>
        <source>The household…</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>El hogar…</translation>
    </message>
    <message>
        <source>Where the data lies</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>Dónde están los datos</translation>
    </message>
    <message>
        <source>as the desktop</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>como el escritorio</translation>
    </message>
    <message>
        <source>high contrast, dark</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>alto contraste, oscuro</translation>
    </message>
    <message>
        <source>high contrast, light</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>alto contraste, claro</translation>
    </message>
    <message>
        <source>lamp, dark</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>lámpara, oscuro</translation>
    </message>
    <message>
        <source>paper, light</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>papel, claro</translation>
    </message>
    <message>
        <source>{minutes} minutes</source>
        <extracomment>The app&apos;s own settings: look, size, lock, and where its data lies. Each but the language takes effect at once.</extracomment>
        <translation>{minutes} minutos</translation>
    </message>
</context>
<context>
    <name>Settlement</name>
    <message>
        <source>All of these devices</source>
        <extracomment>The household&apos;s settings while they are being changed: the form, what follows, and whose devices it touches.</extracomment>
        <translation>Todos estos dispositivos</translation>
    </message>
    <message>
        <source>What would touch whom?</source>
        <extracomment>The household&apos;s settings while they are being changed: the form, what follows, and whose devices it touches.</extracomment>
        <translation>¿Qué afectaría a quién?</translation>
    </message>
</context>
<context>
    <name>SettlingForm</name>
    <message>
        <source>Details</source>
        <extracomment>The household&apos;s settings as they stand, to be typed over.</extracomment>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Of new devices; those that are there keep theirs.</source>
        <extracomment>The household&apos;s settings as they stand, to be typed over.</extracomment>
        <translation>Solo para los nuevos dispositivos; los que ya están conservan lo suyo.</translation>
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
        <translation>Una línea por dispositivo, desde el día en que se crea hasta el día en que caduca.</translation>
    </message>
    <message>
        <source>The house</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>La casa</translation>
    </message>
    <message>
        <source>The sheet so far</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>La hoja hasta ahora</translation>
    </message>
    <message>
        <source>Then people</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>Después, las personas</translation>
    </message>
    <message>
        <source>from {day} nobody gets in without a newer list</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>desde el {day} no entra nadie sin una lista más nueva</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>pasarela</translation>
    </message>
    <message>
        <source>its certificate</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>su certificado</translation>
    </message>
    <message>
        <source>made now, kept in a file</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>creada ahora, guardada en un archivo</translation>
    </message>
    <message>
        <source>made now, kept in the keyring</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>creada ahora, guardada en el llavero</translation>
    </message>
    <message>
        <source>no. 1, made with it</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>n.º 1, creada con ella</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>The sheet as it will be, drawn while the household is being typed in.</extracomment>
        <translation>lista de revocación</translation>
    </message>
</context>
<context>
    <name>SidePanel</name>
    <message>
        <source>All ways</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Todas las salidas</translation>
    </message>
    <message>
        <source>Choose a way</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Elige una salida</translation>
    </message>
    <message>
        <source>It stays here</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Se queda aquí</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <extracomment>The right side of the hand-over page: one card at a time, on raised ground behind a spine of ink.</extracomment>
        <translation>Frase de contraseña</translation>
    </message>
</context>
<context>
    <name>SlotList</name>
    <message>
        <source>Slots; Enter puts one into the text</source>
        <extracomment>The slots of a template as a list: name, today&apos;s value, meaning; Enter or a click takes one.</extracomment>
        <translation>Huecos; Intro pone uno en el texto</translation>
    </message>
</context>
<context>
    <name>SoFar</name>
    <message>
        <source>A CA that was made by hand is looked over, and taken over with all its passes.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Una CA hecha a mano se examina y se adopta con todos sus pases.</translation>
    </message>
    <message>
        <source>A household that you had comes back from its sealed copy, or from its key on paper.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Un hogar que tenías vuelve de su copia sellada, o de su clave en papel.</translation>
    </message>
    <message>
        <source>From a sealed copy …</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>De una copia sellada…</translation>
    </message>
    <message>
        <source>I have a CA already …</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Ya tengo una CA…</translation>
    </message>
    <message>
        <source>Look around in a practice household</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Echar un vistazo en un hogar de práctica</translation>
    </message>
    <message>
        <source>Not sure yet?</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>¿Aún con dudas?</translation>
    </message>
    <message>
        <source>Quince Cottage is a practice household. Nothing in it is real, and nothing can be broken.</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>Quince Cottage es un hogar de práctica. Nada de lo que hay en él es real y nada se puede romper.</translation>
    </message>
    <message>
        <source>The sheet so far</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>La hoja hasta ahora</translation>
    </message>
    <message>
        <source>changes as you type</source>
        <extracomment>The right half of the founding page: the sheet so far, a way to look around first, and one to come back.</extracomment>
        <translation>cambia mientras escribes</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>Hand over</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>New bundle</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Paquete nuevo</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>The steps of the succession as a list: a mark, what it is, until when, who notices; and each device on its way.</extracomment>
        <translation>Comprobar</translation>
    </message>
</context>
<context>
    <name>StickCard</name>
    <message>
        <source>&amp;Look again</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Mirar otra vez</translation>
    </message>
    <message>
        <source>Another &amp;folder …</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Otra &amp;carpeta…</translation>
    </message>
    <message>
        <source>No stick is plugged in. Plug one in, give it a moment, then look again.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>No hay ninguna memoria USB conectada. Conecta una, espera un momento y mira otra vez.</translation>
    </message>
    <message>
        <source>Which one? It is unmounted afterwards, so that it can be pulled.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>¿Cuál? Después se desmonta, para que puedas retirarla.</translation>
    </message>
    <message>
        <source>Write to {drive}</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Escribir en {drive}</translation>
    </message>
    <message>
        <source>{name}, {free} free</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>{name}, {free} libres</translation>
    </message>
</context>
<context>
    <name>StickQuestion</name>
    <message>
        <source>&amp;Delete the file</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>&amp;Borrar el archivo</translation>
    </message>
    <message>
        <source>&amp;Look now</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>&amp;Mirar ahora</translation>
    </message>
    <message>
        <source>Ask me later</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Preguntar más tarde</translation>
    </message>
    <message>
        <source>It is &amp;wiped</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>&amp;Ya está borrada</translation>
    </message>
    <message>
        <source>It is not wiped after all</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>Al final, no está borrada</translation>
    </message>
    <message>
        <source>The bundle of {title} was written to it on {day}.</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>El paquete de {title} se escribió en ella el {day}.</translation>
    </message>
    <message>
        <source>Was the stick “{name}” wiped?</source>
        <extracomment>Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours.</extracomment>
        <translation>¿Se ha borrado la memoria USB «{name}»?</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message>
        <source>Deliver</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Enviar</translation>
    </message>
    <message>
        <source>Deliver to the gateway now</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Enviar ahora a la pasarela</translation>
    </message>
    <message>
        <source>Lock</source>
        <extracomment>The strip under the headline: the gateway and the household&apos;s own key, each a sign and a word.</extracomment>
        <translation>Cerrar el hogar</translation>
    </message>
</context>
<context>
    <name>Succession</name>
    <message>
        <source>Both its passes get in, the old one until {day}. Look on the device that the new one is chosen, then prove it; the old one goes for good.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Entra con cualquiera de sus dos pases, con el anterior hasta el {day}. Mira en el dispositivo que esté elegido el nuevo y después compruébalo; el anterior se retira para siempre.</translation>
    </message>
    <message>
        <source>Do it</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Hacerlo</translation>
    </message>
    <message>
        <source>Let it go for good</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Retirarlo para siempre</translation>
    </message>
    <message>
        <source>Let the old pass go…</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Retirar el pase anterior…</translation>
    </message>
    <message>
        <source>Take it back</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Take the renewal back…</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Deshacer la renovación…</translation>
    </message>
    <message>
        <source>The new pass was seen to get in, so the old one goes now, or at the next unlock.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>Se vio entrar el pase nuevo, así que el anterior se retira ahora, o la próxima vez que se abra el hogar.</translation>
    </message>
    <message>
        <source>The pass that the device has gets in until {day}. The next one waits in the tray.</source>
        <extracomment>On a device&apos;s page: how its old pass and the one that follows stand, and the way back or on.</extracomment>
        <translation>El pase que tiene el dispositivo entra hasta el {day}. El siguiente espera en la bandeja.</translation>
    </message>
</context>
<context>
    <name>SuccessionPage</name>
    <message>
        <source>&amp;Deliver to the gateway</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Enviar a la pasarela</translation>
    </message>
    <message>
        <source>&amp;Give it the new certificate</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Darle el certificado nuevo</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Continuar</translation>
    </message>
    <message>
        <source>&amp;Make the next CA</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>C&amp;rear la próxima CA</translation>
    </message>
    <message>
        <source>&amp;Put the old CA away</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Re&amp;tirar la CA antigua</translation>
    </message>
    <message>
        <source>&amp;Yes, put it away for good</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Sí, retirarla para siempre</translation>
    </message>
    <message>
        <source>Everybody is through. There is no way back from here.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Todos han hecho el cambio. Desde aquí no hay vuelta atrás.</translation>
    </message>
    <message>
        <source>In good time</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Con tiempo</translation>
    </message>
    <message>
        <source>Lost</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Perdida</translation>
    </message>
    <message>
        <source>One device is not through and stands outside afterwards. There is no way back.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Un dispositivo no ha hecho el cambio y después se queda fuera. No hay vuelta atrás.</translation>
    </message>
    <message>
        <source>One step &amp;back</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>&amp;Volver un paso atrás</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>Perhaps stolen</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Quizá robada</translation>
    </message>
    <message>
        <source>The &amp;gateway has both</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>La &amp;pasarela tiene las dos</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>La próxima CA</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>{count} devices are not through and stand outside afterwards. There is no way back.</source>
        <extracomment>The next CA: its steps with their days, each device on its way, one step on or one back.</extracomment>
        <translation>{count} dispositivos no han hecho el cambio y después se quedan fuera. No hay vuelta atrás.</translation>
    </message>
</context>
<context>
    <name>TemplateBench</name>
    <message>
        <source>An example stands in the text. Write it over.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>En el texto hay un ejemplo. Escribe encima.</translation>
    </message>
    <message>
        <source>As it was kept</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Como se guardó</translation>
    </message>
    <message>
        <source>Begin with an example</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Empezar con un ejemplo</translation>
    </message>
    <message>
        <source>Enter or a click puts one where the cursor is.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Intro o un clic pone uno donde está el cursor.</translation>
    </message>
    <message>
        <source>Not sealed.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Sin sellar.</translation>
    </message>
    <message>
        <source>Slots, with what stands in them today</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Huecos, con lo que contienen hoy</translation>
    </message>
    <message>
        <source>Text</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Texto</translation>
    </message>
    <message>
        <source>This is how it was before the mistake.</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Así estaba antes del error.</translation>
    </message>
    <message>
        <source>What it would write, secrets hidden</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Lo que escribiría, con los secretos ocultos</translation>
    </message>
    <message>
        <source>With the values of</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>Con los valores de</translation>
    </message>
    <message>
        <source>nobody yet: marks</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>nadie todavía: marcas</translation>
    </message>
    <message>
        <source>{name} was put into the text</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>{name} se ha puesto en el texto</translation>
    </message>
    <message>
        <source>{title}, waiting</source>
        <extracomment>Where a template is written: its text, its slots, whose values they show, and what comes of it.</extracomment>
        <translation>{title}, en espera</translation>
    </message>
</context>
<context>
    <name>TemplateDesk</name>
    <message>
        <source>A text in the words of a program of yours. The household fills in what stands between double braces.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Un texto en el lenguaje de un programa tuyo. El hogar rellena lo que está entre llaves dobles.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>It stands here as it was kept</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Está aquí tal como se guardó</translation>
    </message>
    <message>
        <source>Keep it</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Guardarla</translation>
    </message>
    <message>
        <source>Keeping it writes over the one of that name.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Al guardarla se sobrescribe la que tiene ese nombre.</translation>
    </message>
    <message>
        <source>Kept under this name, it stands beside {name}.</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Si se guarda con este nombre, queda junto a {name}.</translation>
    </message>
    <message>
        <source>Write for a device…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Escribir para un dispositivo…</translation>
    </message>
    <message>
        <source>Write for this device…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Escribir para este dispositivo…</translation>
    </message>
    <message>
        <source>Write to a folder…</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Escribir en una carpeta…</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>Plantilla propia</translation>
    </message>
    <message>
        <source>the template</source>
        <extracomment>A template on its page: which one, its words, and what is said about it while it is typed.</extracomment>
        <translation>la plantilla</translation>
    </message>
</context>
<context>
    <name>TemplateForm</name>
    <message>
        <source>Called</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Ending</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Extensión</translation>
    </message>
    <message>
        <source>File name</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Nombre del archivo</translation>
    </message>
    <message>
        <source>For</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Para</translation>
    </message>
    <message>
        <source>Forget it</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Olvidarla</translation>
    </message>
    <message>
        <source>Template</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Plantilla</translation>
    </message>
    <message>
        <source>Writes {file}.</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>Escribe {file}.</translation>
    </message>
    <message>
        <source>a new one</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>una nueva</translation>
    </message>
    <message>
        <source>devices</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>dispositivos</translation>
    </message>
    <message>
        <source>for instance: Letter to the doorkeeper</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>por ejemplo: Carta a la portería</translation>
    </message>
    <message>
        <source>the gateway</source>
        <extracomment>What a template is called and what it is for, and apart from that how the file is named that it writes.</extracomment>
        <translation>la pasarela</translation>
    </message>
</context>
<context>
    <name>TemplateMistake</name>
    <message>
        <source>Go to line {line}</source>
        <extracomment>A mistake in a template: what it is, on which line, and the way there.</extracomment>
        <translation>Ir a la línea {line}</translation>
    </message>
</context>
<context>
    <name>TemplatePage</name>
    <message>
        <source>Choose first whose values it is written with.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Elige primero con los valores de quién se escribe.</translation>
    </message>
    <message>
        <source>It lies in {folder}.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Está en {folder}.</translation>
    </message>
    <message>
        <source>What stands here stays; Keep it brings it back.</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Lo que hay aquí se queda; con «Guardarla» vuelve.</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <extracomment>The householder&apos;s own template: written and tried on its desk, then kept, forgotten, or written into files.</extracomment>
        <translation>Dónde escribirlo</translation>
    </message>
</context>
<context>
    <name>TicketCard</name>
    <message>
        <source>Enter hands it over, the menu key shows all ways</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>Intro lo entrega en mano, la tecla de menú muestra todas las salidas</translation>
    </message>
    <message>
        <source>drag me, or choose how</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>arrástrame o elige cómo</translation>
    </message>
    <message>
        <source>{title}, waiting in the tray</source>
        <extracomment>The ticket card: a bundle that waits, to be dragged or to be sent off by one of its ways.</extracomment>
        <translation>{title}, en espera en la bandeja</translation>
    </message>
</context>
<context>
    <name>TopRow</name>
    <message>
        <source>&amp;New device</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>&amp;Nuevo dispositivo</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Ctrl+N</translation>
    </message>
    <message>
        <source>Find</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>Perdido o robado</translation>
    </message>
    <message>
        <source>looking only</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>solo mirar</translation>
    </message>
    <message>
        <source>practice household</source>
        <extracomment>The top row of the window: whose house it is, and what can be done at once.</extracomment>
        <translation>hogar de práctica</translation>
    </message>
</context>
<context>
    <name>Tray</name>
    <message>
        <source>All at the desk …</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Todo en la mesa…</translation>
    </message>
    <message>
        <source>Cards further left</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Tarjetas más a la izquierda</translation>
    </message>
    <message>
        <source>Cards further right</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Tarjetas más a la derecha</translation>
    </message>
    <message>
        <source>Hand over …</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Entregar en mano…</translation>
    </message>
    <message>
        <source>Tray</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>{count} wait</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>{count} en espera</translation>
    </message>
    <message>
        <source>{count} waits</source>
        <extracomment>The tray: the band in which bundles wait until they are handed over.</extracomment>
        <translation>{count} en espera</translation>
    </message>
</context>
<context>
    <name>TroubleCard</name>
    <message>
        <source>Do it &amp;again</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Hacerlo de nuevo</translation>
    </message>
    <message>
        <source>Lea&amp;ve it</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>&amp;Dejarlo</translation>
    </message>
    <message>
        <source>Nothing left this computer.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Nada ha salido de este ordenador.</translation>
    </message>
    <message>
        <source>The rehearsal stopped at its step “{step}”. Nothing left this computer.</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>El ensayo se ha detenido en el paso «{step}». Nada ha salido de este ordenador.</translation>
    </message>
</context>
<context>
    <name>TypedLines</name>
    <message>
        <source>&amp;Lines of the paper, each with its number</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>&amp;Líneas del papel, cada una con su número</translation>
    </message>
    <message>
        <source>A slip in line {slips}: compare it letter by letter. Still wanted: {missing}.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Un desliz en la línea {slips}: compárala letra por letra. Aún faltan: {missing}.</translation>
    </message>
    <message>
        <source>All {count} lines of the paper have been read.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Se han leído las {count} líneas del papel.</translation>
    </message>
    <message>
        <source>Line {last} is not whole yet: a number and nine groups.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>La línea {last} aún no está completa: un número y nueve grupos.</translation>
    </message>
    <message>
        <source>Lines of the paper</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Líneas del papel</translation>
    </message>
    <message>
        <source>Lines read so far: {count}. Still wanted: {missing}.</source>
        <extracomment>The lines of a paper, typed by hand: what fits is kept, what does not is named.</extracomment>
        <translation>Líneas leídas hasta ahora: {count}. Aún faltan: {missing}.</translation>
    </message>
</context>
<context>
    <name>UnlockRow</name>
    <message>
        <source>Hide</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Ocultar</translation>
    </message>
    <message>
        <source>Hide the passphrase</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Ocultar la frase de contraseña</translation>
    </message>
    <message>
        <source>Opening the CA key, slow on purpose</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Abriendo la clave de la CA, despacio a propósito</translation>
    </message>
    <message>
        <source>Passphrase of the household</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Frase de contraseña del hogar</translation>
    </message>
    <message>
        <source>Show</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Show the passphrase</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Mostrar la frase de contraseña</translation>
    </message>
    <message>
        <source>Unlock</source>
        <extracomment>Asks for the household&apos;s passphrase in the place where it is needed.</extracomment>
        <translation>Abrir</translation>
    </message>
</context>
<context>
    <name>Until</name>
    <message>
        <source>2 years</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>2 años</translation>
    </message>
    <message>
        <source>A {weekday} that has passed.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Un {weekday} que ya ha pasado.</translation>
    </message>
    <message>
        <source>A {weekday}, {days} days from now.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Un {weekday}, dentro de {days} días.</translation>
    </message>
    <message>
        <source>How long?</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>¿Cuánto tiempo?</translation>
    </message>
    <message>
        <source>Today, a {weekday}.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Hoy, {weekday}.</translation>
    </message>
    <message>
        <source>Tomorrow, a {weekday}.</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>Mañana, {weekday}.</translation>
    </message>
    <message>
        <source>Until when?</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>¿Hasta cuándo?</translation>
    </message>
    <message>
        <source>a week</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>una semana</translation>
    </message>
    <message>
        <source>a year</source>
        <extracomment>Until when a pass is good: a date to be typed, and the lengths that are mostly wanted.</extracomment>
        <translation>un año</translation>
    </message>
</context>
<context>
    <name>Visits</name>
    <message>
        <source>Call off</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Anular</translation>
    </message>
    <message>
        <source>Call the visit off: {person}, {day}</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Anular la visita: {person}, {day}</translation>
    </message>
    <message>
        <source>Keep the day</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Guardar el día</translation>
    </message>
    <message>
        <source>No visit is planned.</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>No hay prevista ninguna visita.</translation>
    </message>
    <message>
        <source>On which day?</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>¿Qué día?</translation>
    </message>
    <message>
        <source>Tick the devices of {person}</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Marcar los dispositivos de {person}</translation>
    </message>
    <message>
        <source>Tick theirs</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>Marcar los suyos</translation>
    </message>
    <message>
        <source>Whom do you meet?</source>
        <extracomment>The days on which the householder meets somebody: which are planned, and one more.</extracomment>
        <translation>¿A quién vas a ver?</translation>
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
        <translation>Un archivo PKCS#12 en el contenedor que se abre casi en todas partes</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Android opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor que abre este Android</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Linux opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor que abre este Linux</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Mac opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor que abre este Mac</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this Windows opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor que abre este Windows</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the container that this iPhone or iPad opens</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor que abre este iPhone o iPad</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the old container, as chosen</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor antiguo, según lo elegido</translation>
    </message>
    <message>
        <source>A PKCS#12 file in the strong container, as chosen</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un archivo PKCS#12 en el contenedor fuerte, según lo elegido</translation>
    </message>
    <message>
        <source>A PowerShell script and its PKCS#12 file; run as administrator, and undone with -Undo.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Un script de PowerShell y su archivo PKCS#12; se ejecuta como administrador y se deshace con -Undo.</translation>
    </message>
    <message>
        <source>A handful of codes, to be scanned one after another by this app’s reader.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Unos cuantos códigos, para escanearlos uno tras otro con el lector de esta aplicación.</translation>
    </message>
    <message>
        <source>AES-256 zip. 7-Zip opens it, a plain file manager does not.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Zip con AES-256. 7-Zip lo abre; un gestor de archivos corriente, no.</translation>
    </message>
    <message>
        <source>Anybody; there is no secret in it, and no key.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Cualquiera; no contiene ningún secreto ni ninguna clave.</translation>
    </message>
    <message>
        <source>Archive</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archivo comprimido</translation>
    </message>
    <message>
        <source>Bring both files to the {device} and read the script first: nobody has run it on Windows yet.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Lleva los dos archivos al dispositivo ({device}) y lee antes el script: nadie lo ha ejecutado todavía en Windows.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and have its program read it. Whether it can, only that program knows.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Llévalo al dispositivo ({device}) y haz que su programa lo lea. Si puede, solo lo sabe ese programa.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and read it there. Then delete it here.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Llévalo al dispositivo ({device}) y léelo allí. Después bórralo aquí.</translation>
    </message>
    <message>
        <source>Bring it to the {device} and unpack it there with 7-Zip. The file in it that says read me tells the rest. Then delete the archive here.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Llévalo al dispositivo ({device}) y descomprímelo allí con 7-Zip. El archivo «léeme» que hay dentro cuenta el resto. Después borra aquí el archivo comprimido.</translation>
    </message>
    <message>
        <source>Bundle file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archivo del paquete</translation>
    </message>
    <message>
        <source>Carry it to the {device} by hand, and delete it here and on the way: nothing protects what is in it.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Llévalo en mano al dispositivo ({device}) y bórralo aquí y por el camino: nada protege lo que contiene.</translation>
    </message>
    <message>
        <source>Codes</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Códigos</translation>
    </message>
    <message>
        <source>File</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>It holds a secret that anybody who opens the file can read. Carry it by hand, and delete it afterwards.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Contiene un secreto que puede leer cualquiera que abra el archivo. Llévalo en mano y bórralo después.</translation>
    </message>
    <message>
        <source>It holds the key without a passphrase: whoever gets hold of the file gets in as this {device}. Carry it by hand, and delete it afterwards.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Contiene la clave sin frase de contraseña: quien se haga con el archivo entra como si fuera este dispositivo ({device}). Llévalo en mano y bórralo después.</translation>
    </message>
    <message>
        <source>Key, certificate and CA as text files, and what to type in.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Clave, certificado y CA como archivos de texto, y lo que hay que escribir.</translation>
    </message>
    <message>
        <source>Key, certificates and settings in one text file, for programs that know its form.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Clave, certificados y ajustes en un solo archivo de texto, para programas que conocen su forma.</translation>
    </message>
    <message>
        <source>Not sealed.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Sin sellar.</translation>
    </message>
    <message>
        <source>Open a pick-up</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Abrir una recogida</translation>
    </message>
    <message>
        <source>Open it on the {device} and install it in the settings; the passphrase is asked there.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Ábrelo en el dispositivo ({device}) e instálalo en los ajustes; allí se pide la frase de contraseña.</translation>
    </message>
    <message>
        <source>Open it on the {device} and type the passphrase there. Then delete the file where it lay.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Ábrelo en el dispositivo ({device}) y escribe allí la frase de contraseña. Después borra el archivo de donde estaba.</translation>
    </message>
    <message>
        <source>PEM files</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Archivos PEM</translation>
    </message>
    <message>
        <source>Profile</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Save PEM files</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar archivos PEM</translation>
    </message>
    <message>
        <source>Save archive</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar el comprimido</translation>
    </message>
    <message>
        <source>Save file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar archivo</translation>
    </message>
    <message>
        <source>Save the bundle</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar el paquete</translation>
    </message>
    <message>
        <source>Save the file</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar el archivo</translation>
    </message>
    <message>
        <source>Save the profile</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar el perfil</translation>
    </message>
    <message>
        <source>Save the script</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Guardar el script</translation>
    </message>
    <message>
        <source>Script</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Script</translation>
    </message>
    <message>
        <source>Settings, identity and CA in one file that the {device} installs; it asks for the passphrase.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Ajustes, identidad y CA en un solo archivo que instala el dispositivo ({device}); pide la frase de contraseña.</translation>
    </message>
    <message>
        <source>Show codes</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Mostrar los códigos</translation>
    </message>
    <message>
        <source>The {device} scans one code and fetches the file from here, once, within ten minutes.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>El dispositivo ({device}) escanea un solo código y recoge el archivo de aquí, una vez, en un plazo de diez minutos.</translation>
    </message>
    <message>
        <source>Ticket</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Vale de recogida</translation>
    </message>
    <message>
        <source>USB stick</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Memoria USB</translation>
    </message>
    <message>
        <source>Whoever has the passphrase, in a program that reads this text. The app cannot try that.</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Quien tenga la frase de contraseña, en un programa que lea este texto. La aplicación no puede probarlo.</translation>
    </message>
    <message>
        <source>Write a stick</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>Escribir en memoria USB</translation>
    </message>
    <message>
        <source>Write it</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>Your own: {name}</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>Propia: {name}</translation>
    </message>
    <message>
        <source>a .{ending} file</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>un archivo .{ending}</translation>
    </message>
    <message>
        <source>a file</source>
        <extracomment>The householder&apos;s own templates as ways out, and the words that say who can open what leaves by them.</extracomment>
        <translation>un archivo</translation>
    </message>
    <message>
        <source>at home, on the Wi-Fi</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>en casa, por wifi</translation>
    </message>
    <message>
        <source>everything in one</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>todo en uno</translation>
    </message>
    <message>
        <source>for anything else</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>para todo lo demás</translation>
    </message>
    <message>
        <source>for this {device}</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>para {device}</translation>
    </message>
    <message>
        <source>no network</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>sin red</translation>
    </message>
    <message>
        <source>nothing on a disk</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>nada en un disco</translation>
    </message>
    <message>
        <source>sets itself up</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>se configura solo</translation>
    </message>
    <message>
        <source>settings included</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>ajustes incluidos</translation>
    </message>
    <message>
        <source>{count} codes, to be scanned one after another by this app’s reader.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>{count} códigos, para escanearlos uno tras otro con el lector de esta aplicación.</translation>
    </message>
    <message>
        <source>{file}, written, read back and unmounted.</source>
        <extracomment>The ways in which a bundle can leave, and the words that say who can open it then.</extracomment>
        <translation>{file}: escrito y releído; la memoria USB, desmontada.</translation>
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
        <translation>O guarda la clave en un archivo.</translation>
    </message>
    <message>
        <source>Where is the CA key kept?</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>¿Dónde se guarda la clave de la CA?</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>en un archivo de clave</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>Where the CA key will lie on this computer: the keyring, or a file where the keyring does not answer.</extracomment>
        <translation>en el llavero</translation>
    </message>
</context>
<context>
    <name>Whose</name>
    <message>
        <source>Name</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Whose is it?</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>¿De quién es?</translation>
    </message>
    <message>
        <source>a guest</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>un invitado</translation>
    </message>
    <message>
        <source>new…</source>
        <extracomment>Whose device it is: one of the family, a guest, or somebody new.</extracomment>
        <translation>persona nueva…</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Passphrase</source>
        <extracomment>The passphrase of a bundle, in large type, to be said or written down.</extracomment>
        <translation>Frase de contraseña</translation>
    </message>
</context>
<context>
    <name>WorkingCard</name>
    <message>
        <source>One moment …</source>
        <extracomment>What the right side says in words: where a file lies, which stick, what went wrong, what is under way.</extracomment>
        <translation>Un momento…</translation>
    </message>
</context>
<context>
    <name>Zooming</name>
    <message>
        <source>All of it, folded</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Todo, plegado</translation>
    </message>
    <message>
        <source>One month ahead</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Un mes por delante</translation>
    </message>
    <message>
        <source>One year ahead</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>Un año por delante</translation>
    </message>
    <message>
        <source>Time on the sheet</source>
        <extracomment>How much of time the board shows: by keys and in the menu, and remembered.</extracomment>
        <translation>El tiempo en la hoja</translation>
    </message>
</context>
<context>
    <name>board</name>
    <message>
        <source>, can be let back in</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>, se puede dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>, until {day}</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>, hasta el {day}</translation>
    </message>
    <message>
        <source>, would run until {day}</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>, valdría hasta el {day}</translation>
    </message>
    <message>
        <source>1 day left</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>queda 1 día</translation>
    </message>
    <message>
        <source>Add a person</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>Añadir una persona</translation>
    </message>
    <message>
        <source>CA</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>CA</translation>
    </message>
    <message>
        <source>Hand over</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Hand over…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Entregar en mano…</translation>
    </message>
    <message>
        <source>Let back in</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>Let back in…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Dejar entrar de nuevo…</translation>
    </message>
    <message>
        <source>New device for {person}…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Nuevo dispositivo para {person}…</translation>
    </message>
    <message>
        <source>New pass for this device…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Nuevo pase para este dispositivo…</translation>
    </message>
    <message>
        <source>People and their devices</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>Las personas y sus dispositivos</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>Button at the end of a device&apos;s line.</extracomment>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Prove it…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Comprobar…</translation>
    </message>
    <message>
        <source>Renew…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Renovar…</translation>
    </message>
    <message>
        <source>Replace this device…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Sustituir este dispositivo…</translation>
    </message>
    <message>
        <source>Revoke for good…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Revocar para siempre…</translation>
    </message>
    <message>
        <source>Show {title}</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Mostrar {title}</translation>
    </message>
    <message>
        <source>Stop…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>Bloquear…</translation>
    </message>
    <message>
        <source>The house</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>La casa</translation>
    </message>
    <message>
        <source>The house, {name}: {told}, until {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>La casa, {name}: {told}, hasta el {day}</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: last year, four weeks back, nine weeks ahead, then to {year}.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>El tiempo corre hacia la derecha y está plegado: el último año, cuatro semanas atrás, nueve semanas adelante, después hasta {year}.</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: the past since {since}, four weeks back, nine weeks ahead, then to {year}.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>El tiempo corre hacia la derecha y está plegado: el pasado desde {since}, cuatro semanas atrás, nueve semanas adelante, después hasta {year}.</translation>
    </message>
    <message>
        <source>Time runs to the right and is folded: weeks near today are wide, years far off are narrow.</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>El tiempo corre hacia la derecha y está plegado: las semanas cercanas a hoy son anchas, los años lejanos son estrechos.</translation>
    </message>
    <message>
        <source>Time runs to the right: one month ahead, day by day.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>El tiempo corre hacia la derecha: un mes por delante, día a día.</translation>
    </message>
    <message>
        <source>Time runs to the right: one year ahead, month by month.</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>El tiempo corre hacia la derecha: un año por delante, mes a mes.</translation>
    </message>
    <message>
        <source>To be done next, {duties}</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>Lo próximo por hacer, {duties}</translation>
    </message>
    <message>
        <source>Who should get in?</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>¿Quién debe poder entrar?</translation>
    </message>
    <message>
        <source>a first line will stand here, from today to its last day</source>
        <extracomment>The sheet before anybody has a pass: a question, a button, and the line that will stand here.</extracomment>
        <translation>aquí estará la primera línea, desde hoy hasta su último día</translation>
    </message>
    <message>
        <source>after {day}</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>después del {day}</translation>
    </message>
    <message>
        <source>after {month}</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>después de {month}</translation>
    </message>
    <message>
        <source>and one more</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>y una cosa más</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>y {count} cosas más</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>dispositivo</translation>
    </message>
    <message>
        <source>devices turn away from it</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>los dispositivos la rechazan</translation>
    </message>
    <message>
        <source>draft</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>borrador</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>caducó</translation>
    </message>
    <message>
        <source>ended {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>caducó el {day}</translation>
    </message>
    <message>
        <source>ends</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>caduca</translation>
    </message>
    <message>
        <source>ends today</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>caduca hoy</translation>
    </message>
    <message>
        <source>founded</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>fundada</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>pasarela</translation>
    </message>
    <message>
        <source>good until</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>válido hasta</translation>
    </message>
    <message>
        <source>good until: {until}</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>válido hasta: {until}</translation>
    </message>
    <message>
        <source>handed over</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>entregado en mano</translation>
    </message>
    <message>
        <source>holds its certificate</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>tiene su certificado</translation>
    </message>
    <message>
        <source>in a key file</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>en un archivo de clave</translation>
    </message>
    <message>
        <source>in the keyring</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>en el llavero</translation>
    </message>
    <message>
        <source>its certificate is made</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>su certificado está creado</translation>
    </message>
    <message>
        <source>kept</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>guardada</translation>
    </message>
    <message>
        <source>last year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>último año</translation>
    </message>
    <message>
        <source>life line</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>línea de vida</translation>
    </message>
    <message>
        <source>made</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>creado</translation>
    </message>
    <message>
        <source>month</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>mes</translation>
    </message>
    <message>
        <source>months</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>meses</translation>
    </message>
    <message>
        <source>never proved</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>nunca comprobado</translation>
    </message>
    <message>
        <source>new device</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>nuevo dispositivo</translation>
    </message>
    <message>
        <source>new person</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>nueva persona</translation>
    </message>
    <message>
        <source>next step</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>paso siguiente</translation>
    </message>
    <message>
        <source>next step: {step}</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>paso siguiente: {step}</translation>
    </message>
    <message>
        <source>no next step</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>ningún paso siguiente</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {number}</translation>
    </message>
    <message>
        <source>no. {number} here</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {number} aquí</translation>
    </message>
    <message>
        <source>no. {number} in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {number} en vigor</translation>
    </message>
    <message>
        <source>no. {number} not in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {number} sin vigor</translation>
    </message>
    <message>
        <source>no. {there} in force</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {there} en vigor</translation>
    </message>
    <message>
        <source>no. {there} lies at the gateway</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {there} está en la pasarela</translation>
    </message>
    <message>
        <source>no. {there} was there</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>n.º {there} estaba allí</translation>
    </message>
    <message>
        <source>nobody gets in</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>no entra nadie</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not made yet</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>aún sin crear</translation>
    </message>
    <message>
        <source>not said yet</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>aún sin indicar</translation>
    </message>
    <message>
        <source>one device</source>
        <extracomment>Where every text of a row stands; painting and the tests of geometry read the same answer.</extracomment>
        <translation>un dispositivo</translation>
    </message>
    <message>
        <source>one month</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>un mes</translation>
    </message>
    <message>
        <source>one year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>un año</translation>
    </message>
    <message>
        <source>past</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>pasado</translation>
    </message>
    <message>
        <source>perhaps not in use</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>quizá sin usar</translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>comprobado</translation>
    </message>
    <message>
        <source>revocation list</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>lista de revocación</translation>
    </message>
    <message>
        <source>revoked, final</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>revocado, definitivo</translation>
    </message>
    <message>
        <source>said to work</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>dicen que funciona</translation>
    </message>
    <message>
        <source>seen {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>se vio el {day}</translation>
    </message>
    <message>
        <source>signed</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>firmada</translation>
    </message>
    <message>
        <source>signed {day}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>firmada el {day}</translation>
    </message>
    <message>
        <source>since {year}</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>desde {year}</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>stopped 28 September</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>bloqueado el 28 de septiembre</translation>
    </message>
    <message>
        <source>the keyring gives no key</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>el llavero no da la clave</translation>
    </message>
    <message>
        <source>then devices turn away from it</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>entonces los dispositivos la rechazan</translation>
    </message>
    <message>
        <source>then nobody gets in</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>entonces no entra nadie</translation>
    </message>
    <message>
        <source>time axis</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>eje del tiempo</translation>
    </message>
    <message>
        <source>today: {word}</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>hoy: {word}</translation>
    </message>
    <message>
        <source>weeks</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>semanas</translation>
    </message>
    <message>
        <source>who</source>
        <extracomment>The head of the sheet: column heads, leaves, labels of the axis, and the ribbon with today&apos;s date.</extracomment>
        <translation>quién</translation>
    </message>
    <message>
        <source>without a new list</source>
        <extracomment>The three words behind the wall, and where there is room for them.</extracomment>
        <translation>sin una lista nueva</translation>
    </message>
    <message>
        <source>would end</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>caducaría</translation>
    </message>
    <message>
        <source>would have ended</source>
        <extracomment>Works out the row of a pass, or of one that is being typed in.</extracomment>
        <translation>habría caducado</translation>
    </message>
    <message>
        <source>year</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>año</translation>
    </message>
    <message>
        <source>years</source>
        <extracomment>What is said of how much time the sheet shows.</extracomment>
        <translation>años</translation>
    </message>
    <message>
        <source>{count} devices</source>
        <extracomment>Where every text of a row stands; painting and the tests of geometry read the same answer.</extracomment>
        <translation>{count} dispositivos</translation>
    </message>
    <message>
        <source>{days} days left</source>
        <extracomment>Works out the rows of the house: gateway, revocation list, CA.</extracomment>
        <translation>quedan {days} días</translation>
    </message>
    <message>
        <source>{day}: {deed}</source>
        <extracomment>Where on the axis something is to be done: a shape for each place, and what it says.</extracomment>
        <translation>{day}: {deed}</translation>
    </message>
    <message>
        <source>{person} leaves the household…</source>
        <extracomment>All actions of a row.</extracomment>
        <translation>{person} deja el hogar…</translation>
    </message>
    <message>
        <source>{place} of {count}: {row}</source>
        <extracomment>The board: the head of the sheet, the people that scroll, the house that always stands.</extracomment>
        <translation>{place} de {count}: {row}</translation>
    </message>
    <message>
        <source>{who}, {count} devices</source>
        <extracomment>The rows of the sheet as Qt&apos;s item model; a new look changes rows, it never resets them.</extracomment>
        <translation>{who}, {count} dispositivos</translation>
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
        <translation>MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>dddd</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd</translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, HH:mm time; words between straight apostrophes.</extracomment>
        <translation>dddd d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
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
        <translation>(los certificados empiezan y caducan según él: haz que la red lo ponga en hora)</translation>
    </message>
    <message>
        <source>(it was {number}, {until})</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(era {number}, {until})</translation>
    </message>
    <message>
        <source>(made here, not seen at the gateway)</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(creado aquí, no visto en la pasarela)</translation>
    </message>
    <message>
        <source>(seen at the gateway)</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(visto en la pasarela)</translation>
    </message>
    <message>
        <source>(seen there {when})</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>(visto allí {when})</translation>
    </message>
    <message>
        <source>1 day</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>1 día</translation>
    </message>
    <message>
        <source>CA key</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>clave de la CA</translation>
    </message>
    <message>
        <source>On {day} the gateway’s certificate ends, and devices turn away from it. It needs a new one before.</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>El {day} caduca el certificado de la pasarela y los dispositivos la rechazan. Necesita uno nuevo antes de ese día.</translation>
    </message>
    <message>
        <source>On {day} the list ends, and then nobody gets in. Unlock the household before: the list is signed anew and delivered.</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>El {day} caduca la lista y entonces no entra nadie. Abre el hogar antes de ese día: la lista se firma de nuevo y se envía.</translation>
    </message>
    <message>
        <source>a practice household delivers nothing</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>un hogar de práctica no envía nada</translation>
    </message>
    <message>
        <source>agrees with this computer’s</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>coincide con el de este ordenador</translation>
    </message>
    <message>
        <source>certificate</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>certificado</translation>
    </message>
    <message>
        <source>certificate ended</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>certificado caducado</translation>
    </message>
    <message>
        <source>certificate ends in {days}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>el certificado caduca en {days}</translation>
    </message>
    <message>
        <source>certificate until</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>certificado hasta</translation>
    </message>
    <message>
        <source>certificates go by it</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>los certificados se rigen por él</translation>
    </message>
    <message>
        <source>changes wait</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>hay cambios en espera</translation>
    </message>
    <message>
        <source>clock</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>reloj</translation>
    </message>
    <message>
        <source>clock {amount} ahead</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>reloj {amount} adelantado</translation>
    </message>
    <message>
        <source>clock {amount} behind</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>reloj {amount} atrasado</translation>
    </message>
    <message>
        <source>days</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>días</translation>
    </message>
    <message>
        <source>delivered</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>enviado</translation>
    </message>
    <message>
        <source>files go to</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>los archivos van a</translation>
    </message>
    <message>
        <source>gateway unknown since {when}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>sin noticias de la pasarela desde {when}</translation>
    </message>
    <message>
        <source>good until {day}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>válido hasta el {day}</translation>
    </message>
    <message>
        <source>hours</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>horas</translation>
    </message>
    <message>
        <source>its clock</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>su reloj</translation>
    </message>
    <message>
        <source>last delivery</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>último envío</translation>
    </message>
    <message>
        <source>last read</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>última lectura</translation>
    </message>
    <message>
        <source>less than a day</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>menos de un día</translation>
    </message>
    <message>
        <source>list ends in {days}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la lista caduca en {days}</translation>
    </message>
    <message>
        <source>list no. {number}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>lista n.º {number}</translation>
    </message>
    <message>
        <source>list no. {number} ended</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>lista n.º {number} caducada</translation>
    </message>
    <message>
        <source>list no. {number} in force</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>lista n.º {number} en vigor</translation>
    </message>
    <message>
        <source>list no. {number} there is newer</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la lista n.º {number} de allí es más nueva</translation>
    </message>
    <message>
        <source>list no. {number} waits</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la lista n.º {number} espera</translation>
    </message>
    <message>
        <source>list no. {number} waits here</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la lista n.º {number} espera aquí</translation>
    </message>
    <message>
        <source>list no. {number} was there</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la lista n.º {number} estaba allí</translation>
    </message>
    <message>
        <source>list perhaps not in use</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>lista quizá sin usar</translation>
    </message>
    <message>
        <source>list there</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>lista de allí</translation>
    </message>
    <message>
        <source>locked</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>min</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>min</translation>
    </message>
    <message>
        <source>newest list here</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>lista más nueva de aquí</translation>
    </message>
    <message>
        <source>no list at the gateway</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>no hay lista en la pasarela</translation>
    </message>
    <message>
        <source>no. {number}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>n.º {number}</translation>
    </message>
    <message>
        <source>no. {number} in force {until}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>n.º {number} en vigor {until}</translation>
    </message>
    <message>
        <source>no. {number} lies there, its command failed</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la n.º {number} está allí, su comando ha fallado</translation>
    </message>
    <message>
        <source>no. {number} waits</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la n.º {number} espera</translation>
    </message>
    <message>
        <source>no. {number}, good until {day}</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>n.º {number}, válida hasta el {day}</translation>
    </message>
    <message>
        <source>nobody gets in</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>no entra nadie</translation>
    </message>
    <message>
        <source>nobody has said where the gateway is</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>nadie ha dicho dónde está la pasarela</translation>
    </message>
    <message>
        <source>none yet</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>aún no hay</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not reached since</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>sin contacto desde</translation>
    </message>
    <message>
        <source>nothing delivered yet</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>aún no se ha enviado nada</translation>
    </message>
    <message>
        <source>open</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>abierta</translation>
    </message>
    <message>
        <source>settings or certificates</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>ajustes o certificados</translation>
    </message>
    <message>
        <source>than no. {number} here</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>que la n.º {number} de aquí</translation>
    </message>
    <message>
        <source>the gateway holds no. {number}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>la pasarela tiene la n.º {number}</translation>
    </message>
    <message>
        <source>the keyring did not give it</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>el llavero no la ha dado</translation>
    </message>
    <message>
        <source>then it runs</source>
        <extracomment>What the gateway&apos;s page tells in the trade&apos;s terms, and how a host key is written for comparing.</extracomment>
        <translation>después ejecuta</translation>
    </message>
    <message>
        <source>unknown since {when}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>sin noticias desde {when}</translation>
    </message>
    <message>
        <source>until {day}</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>hasta el {day}</translation>
    </message>
    <message>
        <source>{days} days</source>
        <extracomment>Works out what the strip says: a sign, a word and a fact for each thing known of the gateway, or not known.</extracomment>
        <translation>{days} días</translation>
    </message>
</context>
<context>
    <name>proof</name>
    <message>
        <source>Another network than the one at home.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Otra red que no sea la de casa.</translation>
    </message>
    <message>
        <source>Connect</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Conectar</translation>
    </message>
    <message>
        <source>Have it read aloud</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Pedir que lo lea en voz alta</translation>
    </message>
    <message>
        <source>Leave the Wi-Fi at home</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Salir de la wifi de casa</translation>
    </message>
    <message>
        <source>Open the link</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Abrir el enlace</translation>
    </message>
    <message>
        <source>Switch Wi-Fi off</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>Apagar la wifi</translation>
    </message>
    <message>
        <source>The camera shows a link; tapping it opens a page in large type.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>La cámara muestra un enlace; al tocarlo se abre una página en letra grande.</translation>
    </message>
    <message>
        <source>The sign of the Wi-Fi goes; letters such as 4G, 5G or LTE stay.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>El símbolo de la wifi desaparece; quedan letras como 4G, 5G o LTE.</translation>
    </message>
    <message>
        <source>“Connected”, beside the name of the connection.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Conectado», junto al nombre de la conexión.</translation>
    </message>
    <message>
        <source>“Draw down from the upper edge and tap the Wi-Fi sign, so that it is off.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Desliza hacia abajo desde el borde superior y toca el símbolo de la wifi, para que quede apagada.»</translation>
    </message>
    <message>
        <source>“Open the settings, go to the connection that was set up for home, and switch it on.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Abre los ajustes, ve a la conexión que se configuró para casa y enciéndela.»</translation>
    </message>
    <message>
        <source>“Point the camera at this code and tap the link.” From afar: “Open the link that I sent you.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Apunta a este código con la cámara y toca el enlace.» Desde lejos: «Abre el enlace que te he enviado.»</translation>
    </message>
    <message>
        <source>“Read me the large words at the top.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Léeme las palabras grandes de arriba.»</translation>
    </message>
    <message>
        <source>“Share the phone’s mobile data, and join that with the computer instead of the Wi-Fi at home.”</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Comparte los datos móviles del móvil y conecta el ordenador a ellos en lugar de a la wifi de casa.»</translation>
    </message>
    <message>
        <source>“You are in”, and this page says so too. “You are at home” means: back to the first step.</source>
        <extracomment>What the page that proves leads through: for each step what stands on the device&apos;s screen, and what to say.</extracomment>
        <translation>«Estás dentro», y esta página también lo dice. «Estás en casa» significa: de vuelta al primer paso.</translation>
    </message>
</context>
<context>
    <name>sentences</name>
    <message>
        <source> Its old pass goes on until you stop or revoke it.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> Su pase anterior sigue valiendo hasta que lo bloquees o revoques.</translation>
    </message>
    <message>
        <source> The secret that all devices share was on it: one device will have to be told a new one.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> El secreto que comparten todos los dispositivos estaba en él: habrá que darle uno nuevo a un dispositivo.</translation>
    </message>
    <message>
        <source> The secret that all devices share was on it: {count} devices will have to be told a new one.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation> El secreto que comparten todos los dispositivos estaba en él: habrá que darles uno nuevo a {count} dispositivos.</translation>
    </message>
    <message>
        <source>&quot;{host}&quot; is not a name that DNS can look up: &quot;{label}&quot; does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{host}» no es un nombre que DNS pueda encontrar: «{label}» no vale.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; could be {choices}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» podría ser {choices}.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es un día.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a group that is known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es un grupo que se conozca aquí.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a reason for revoking for good.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es un motivo para revocar para siempre.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a transform that is known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es una transformación que se conozca aquí.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address that a gateway can have at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es una dirección que una pasarela pueda tener en casa.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address to listen on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es una dirección en la que escuchar.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not an address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es una dirección.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not the address of a DNS server.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es la dirección de un servidor DNS.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not the address of a page at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no es la dirección de una página de casa.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; will not do as a file name on every computer.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no sirve como nombre de archivo en todos los ordenadores.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; will not do as the ending of a file name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no sirve como final de un nombre de archivo.</translation>
    </message>
    <message>
        <source>1 day left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Queda 1 día</translation>
    </message>
    <message>
        <source>1 pass on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>1 pase en la lista de revocación</translation>
    </message>
    <message>
        <source>1 stop list beside revocation list {number} was written for a deputy, who can stop devices with it.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>Se escribió 1 lista de bloqueo junto a la lista de revocación {number} para quien releve, que puede bloquear dispositivos con ella.</translation>
    </message>
    <message>
        <source>A CA ends one day, and every pass with it. The next one is made beside it, years before.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una CA caduca algún día, y con ella todos los pases. La próxima se crea a su lado, años antes.</translation>
    </message>
    <message>
        <source>A CA key of type {seen} was found; a household’s is {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se ha encontrado una clave de CA de tipo {seen}; la de un hogar es {wanted}.</translation>
    </message>
    <message>
        <source>A TCP segment of {number} octets over IPv{family} was asked for; {lowest} to {highest} can be had.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se pidió un segmento TCP de {number} octetos por IPv{family}; puede tener de {lowest} a {highest}.</translation>
    </message>
    <message>
        <source>A block cannot be decoded ({label}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un bloque no se puede descodificar ({label}).</translation>
    </message>
    <message>
        <source>A bundle lost a part while it was read.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un paquete perdió una parte mientras se leía.</translation>
    </message>
    <message>
        <source>A bundle that was lost is never sent again. Replace the pass instead.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un paquete perdido no se vuelve a enviar nunca. En su lugar, sustituye el pase.</translation>
    </message>
    <message>
        <source>A bundle was to be written with a value that does not fit ({key}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Se iba a escribir un paquete con un valor que no encaja ({key}).</translation>
    </message>
    <message>
        <source>A certificate begins only later.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado no empieza hasta más tarde.</translation>
    </message>
    <message>
        <source>A certificate does not name the key that signed it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado no nombra la clave que lo firmó.</translation>
    </message>
    <message>
        <source>A certificate has ended.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado ha caducado.</translation>
    </message>
    <message>
        <source>A certificate is signed with an old hash (SHA-1 or MD5).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado está firmado con un hash antiguo (SHA-1 o MD5).</translation>
    </message>
    <message>
        <source>A certificate names a person or an address.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado nombra a una persona o una dirección.</translation>
    </message>
    <message>
        <source>A certificate or a file like one cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado, o un archivo parecido, no se puede leer.</translation>
    </message>
    <message>
        <source>A certificate was issued by somebody else.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado lo emitió otra CA.</translation>
    </message>
    <message>
        <source>A certificate’s key is too short.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave de un certificado es demasiado corta.</translation>
    </message>
    <message>
        <source>A certificate’s serial number is none that a revocation list can name.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El número de serie de un certificado es uno que ninguna lista de revocación puede nombrar.</translation>
    </message>
    <message>
        <source>A code was misread, in picture {frames}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un código se leyó mal, en la imagen {frames}.</translation>
    </message>
    <message>
        <source>A code was to be drawn that does not fit.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Se iba a dibujar un código que no cabe.</translation>
    </message>
    <message>
        <source>A connection that is open now lives until it authenticates again, a day at most if the gateway is set up as its sheet says. The command after a delivery can cut it at once.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Una conexión que ahora está abierta vive hasta que vuelve a autenticarse, como mucho un día si la pasarela está configurada como dice su hoja. El comando posterior a un envío puede cortarla al momento.</translation>
    </message>
    <message>
        <source>A connection that is open now stays open until it authenticates again; ending it is up to the gateway (RFC 7296 section 2.8.3).</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Una conexión que ahora está abierta sigue abierta hasta que vuelve a autenticarse; terminarla depende de la pasarela (RFC 7296, sección 2.8.3).</translation>
    </message>
    <message>
        <source>A delivery puts the files down beside those in force, reads them back, and changes over all at once. If anything fails on the way, those of before stay.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un envío deja los archivos junto a los que están en vigor, los relee y cambia todos a la vez. Si algo falla por el camino, se quedan los de antes.</translation>
    </message>
    <message>
        <source>A device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un dispositivo</translation>
    </message>
    <message>
        <source>A device that belongs to an employer is administered by the employer. Ask there first.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Un dispositivo que es de una empresa lo administra la empresa. Pregunta allí primero.</translation>
    </message>
    <message>
        <source>A device that has no new bundle by then turns away from the gateway.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Un dispositivo que para entonces no tenga un paquete nuevo rechaza la pasarela.</translation>
    </message>
    <message>
        <source>A device’s certificate carries no name where gateways look for it (subject alternative name).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de un dispositivo no lleva ningún nombre donde las pasarelas lo buscan (subject alternative name).</translation>
    </message>
    <message>
        <source>A device’s certificate is meant for another use.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de un dispositivo está destinado a otro uso.</translation>
    </message>
    <message>
        <source>A file holds more blocks than are read ({limit}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un archivo contiene más bloques de los que se leen ({limit}).</translation>
    </message>
    <message>
        <source>A file is larger than any certificate or list.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un archivo es más grande que cualquier certificado o lista.</translation>
    </message>
    <message>
        <source>A file or folder may not be read by you.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No tienes permiso para leer un archivo o una carpeta.</translation>
    </message>
    <message>
        <source>A folder lies too deep.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una carpeta está a demasiada profundidad.</translation>
    </message>
    <message>
        <source>A gateway that checks its list lets nobody in until it has the next one.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Una pasarela que comprueba su lista no deja entrar a nadie hasta que tiene la siguiente.</translation>
    </message>
    <message>
        <source>A gateway that holds the list keeps it out. It can be let back in.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Una pasarela que tiene la lista no lo deja entrar. Se le puede dejar entrar de nuevo.</translation>
    </message>
    <message>
        <source>A gateway that is reached by ssh needs a name or an address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una pasarela a la que se llega por ssh necesita un nombre o una dirección.</translation>
    </message>
    <message>
        <source>A guest gets a week unless you say otherwise; everybody else two years.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un invitado recibe una semana, si no dices otra cosa; los demás, dos años.</translation>
    </message>
    <message>
        <source>A helping process of the app was ended from outside. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un proceso auxiliar de la aplicación se terminó desde fuera. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>A household lives in this data folder already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En esta carpeta de datos ya hay un hogar.</translation>
    </message>
    <message>
        <source>A kept template for devices is one more way on every hand-over page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una plantilla guardada para dispositivos es una salida más en cada página de entrega en mano.</translation>
    </message>
    <message>
        <source>A key of type {text} is not used here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una clave de tipo {text} no se usa aquí.</translation>
    </message>
    <message>
        <source>A link was not followed.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se siguió un enlace.</translation>
    </message>
    <message>
        <source>A list was to end before it began.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Una lista iba a terminar antes de empezar.</translation>
    </message>
    <message>
        <source>A locked file asks for more work than any honest file does ({rounds} rounds). It was not opened.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un archivo cerrado pide más trabajo que cualquier archivo honrado ({rounds} rondas). No se ha abierto.</translation>
    </message>
    <message>
        <source>A name is made of letters, figures and hyphens between dots, without spaces, underscores, stars or ports.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un nombre se compone de letras, cifras y guiones entre puntos, sin espacios, guiones bajos, asteriscos ni puertos.</translation>
    </message>
    <message>
        <source>A name, serial or list number would have been used a second time ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un nombre, número de serie o número de lista se habría usado por segunda vez ({seen}).</translation>
    </message>
    <message>
        <source>A new device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un dispositivo nuevo</translation>
    </message>
    <message>
        <source>A new list goes there by itself while the app is open. Settings and certificates go when you deliver.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una lista nueva va allí por sí sola mientras la aplicación está abierta. Los ajustes y los certificados van cuando haces un envío.</translation>
    </message>
    <message>
        <source>A part has {wanted} words; these are {count}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una parte tiene {wanted} palabras; estas son {count}.</translation>
    </message>
    <message>
        <source>A pass is named once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>A un pase se le da nombre una sola vez.</translation>
    </message>
    <message>
        <source>A pass was to be handed over that was not waiting.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Se iba a entregar en mano un pase que no estaba en espera.</translation>
    </message>
    <message>
        <source>A pass was to be let in that was not stopped.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Se iba a dejar entrar de nuevo un pase que no estaba bloqueado.</translation>
    </message>
    <message>
        <source>A practice household was to become a real one, or the other way round.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un hogar de práctica iba a convertirse en uno de verdad, o al revés.</translation>
    </message>
    <message>
        <source>A private key belongs to no certificate here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una clave privada no corresponde a ningún certificado de aquí.</translation>
    </message>
    <message>
        <source>A private key cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una clave privada no se puede leer.</translation>
    </message>
    <message>
        <source>A private key is locked in a way that is not read here ({algorithm}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una clave privada está cerrada de un modo que aquí no se lee ({algorithm}).</translation>
    </message>
    <message>
        <source>A private key is locked in the old way.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una clave privada está cerrada a la manera antigua.</translation>
    </message>
    <message>
        <source>A private key lies here without a passphrase.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Aquí hay una clave privada sin frase de contraseña.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} encrypts with {transform} and lets anybody on the way alter it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una propuesta para {protocol} cifra con {transform} y deja que cualquiera la altere por el camino.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} has an integrity transform or another cipher beside {transform}, which does both.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una propuesta para {protocol} tiene una transformación de integridad u otro cifrado además de {transform}, que ya hace ambas cosas.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} lacks a transform of type {missing}, so no device could agree to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>A una propuesta para {protocol} le falta una transformación de tipo {missing}, así que ningún dispositivo podría aceptarla.</translation>
    </message>
    <message>
        <source>A proposal for {protocol} would encrypt nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una propuesta para {protocol} no cifraría nada.</translation>
    </message>
    <message>
        <source>A rate of {number} kbit/s cannot be reckoned with; {lowest} to {highest} can.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Con {number} kbit/s no se puede calcular; de {lowest} a {highest} sí.</translation>
    </message>
    <message>
        <source>A renewal can be taken back on the device’s page as long as its bundle is in the tray.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una renovación se puede deshacer en la página del dispositivo mientras su paquete esté en la bandeja.</translation>
    </message>
    <message>
        <source>A renewed device keeps its identity and gets a new key. Its old pass stays as it is.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un dispositivo renovado conserva su identidad y recibe una clave nueva. Su pase anterior se queda como está.</translation>
    </message>
    <message>
        <source>A revocation list cannot be read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una lista de revocación no se puede leer.</translation>
    </message>
    <message>
        <source>A revocation list is about changes or a part only.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una lista de revocación recoge solo cambios o una parte.</translation>
    </message>
    <message>
        <source>A revocation list was not signed by this CA.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Una lista de revocación no está firmada por esta CA.</translation>
    </message>
    <message>
        <source>A round can be stopped between two devices. What was made stays; the rest stays ticked.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una ronda se puede parar entre dos dispositivos. Lo que se hizo se queda; el resto sigue marcado.</translation>
    </message>
    <message>
        <source>A sealed copy knows where the diary ended then, so an end that was cut off shows too.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una copia sellada sabe dónde terminaba entonces el diario, así que también se nota si se cortó el final.</translation>
    </message>
    <message>
        <source>A sealed copy lies in this folder. Parts beside a copy would let anybody in who finds the folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En esta carpeta hay una copia sellada. Unas partes junto a una copia dejarían entrar a cualquiera que encontrara la carpeta.</translation>
    </message>
    <message>
        <source>A sealed copy was written to {place} as {name}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Se escribió una copia sellada en {place} como {name}.</translation>
    </message>
    <message>
        <source>A secret was to be shared in a way that brings nothing back.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Se iba a repartir un secreto de una forma que no devuelve nada.</translation>
    </message>
    <message>
        <source>A secret was too long for a keyring.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un secreto era demasiado largo para un llavero.</translation>
    </message>
    <message>
        <source>A stop set lets somebody stop a lost device at the gateway, and do nothing else.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un juego de bloqueo permite bloquear en la pasarela un dispositivo perdido, y nada más.</translation>
    </message>
    <message>
        <source>A template cannot be for &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una plantilla no puede ser para «{text}».</translation>
    </message>
    <message>
        <source>A ticket lives {minutes} minutes at most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un vale de recogida vive como mucho {minutes} minutos.</translation>
    </message>
    <message>
        <source>A ticket takes what is a single file, and {form} is not.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un vale de recogida admite lo que es un solo archivo, y {form} no lo es.</translation>
    </message>
    <message>
        <source>A trial connection had nothing to judge by.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Una conexión de ensayo no tenía con qué juzgar.</translation>
    </message>
    <message>
        <source>A visit is planned: {person}, on {day}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Hay prevista una visita: {person}, el {day}.</translation>
    </message>
    <message>
        <source>A waiting pass has no key.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un pase en espera no tiene clave.</translation>
    </message>
    <message>
        <source>A withdrawn certificate has a serial number that no list of ours can name ({serial}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Un certificado retirado tiene un número de serie que ninguna lista de las nuestras puede nombrar ({serial}).</translation>
    </message>
    <message>
        <source>Accounts that you share</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Cuentas compartidas</translation>
    </message>
    <message>
        <source>Add an integrity transform, for instance AUTH_HMAC_SHA2_256_128.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Añade una transformación de integridad, por ejemplo AUTH_HMAC_SHA2_256_128.</translation>
    </message>
    <message>
        <source>Add one, or use one of the key sets as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Añade una, o usa uno de los juegos de claves tal como está.</translation>
    </message>
    <message>
        <source>Add the file that devices were given as the trusted one, then look again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Añade el archivo que se dio a los dispositivos como el de confianza y vuelve a examinar.</translation>
    </message>
    <message>
        <source>Addresses inside and DNS servers are given out by the gateway at each connection, so no device has to be told.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La pasarela reparte las direcciones interiores y los servidores DNS en cada conexión, así que no hay que decírselo a ningún dispositivo.</translation>
    </message>
    <message>
        <source>Addresses of the DNS servers asked inside the tunnel: a list, and it may be empty.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Direcciones de los servidores DNS a los que se pregunta dentro del túnel: una lista, que puede estar vacía.</translation>
    </message>
    <message>
        <source>All is well until {day}, then {title} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Todo va bien hasta el {day}; entonces caduca {title}.</translation>
    </message>
    <message>
        <source>All is well until {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Todo va bien hasta el {day}.</translation>
    </message>
    <message>
        <source>Alt+1, 2, 3</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Alt+1, 2, 3</translation>
    </message>
    <message>
        <source>An archive was to hold a file that does not belong there.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un archivo comprimido iba a contener un archivo que no debe estar ahí.</translation>
    </message>
    <message>
        <source>An outer MTU of {number} octets was asked for; {lowest} to {highest} can be had.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se pidió una MTU exterior de {number} octetos; puede tener de {lowest} a {highest}.</translation>
    </message>
    <message>
        <source>An overlap of {text} days is none that can be kept.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un solapamiento de {text} días no es posible.</translation>
    </message>
    <message>
        <source>Another CA</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Otra CA</translation>
    </message>
    <message>
        <source>Another copy of the app has the household open, or its folder cannot be written to. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Otra copia de la aplicación tiene abierto el hogar, o no se puede escribir en su carpeta. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>Another copy of the app has this household open. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Otra copia de la aplicación tiene abierto este hogar. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>Another copy of the app has {subject} open. This one only looks.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Otra copia de la aplicación tiene abierto {subject}. Esta solo mira.</translation>
    </message>
    <message>
        <source>Another copy of the app was reading just now. The key of {subject} is erased; what the register’s log still holds of it, under its passphrase, goes when the app is closed.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Otra copia de la aplicación estaba leyendo justo ahora. La clave de {subject} está borrada; lo que el archivo auxiliar del registro aún guarda de ella, bajo su frase de contraseña, desaparece al cerrar la aplicación.</translation>
    </message>
    <message>
        <source>Another device in the place of one stops the old one at once. Until the new one works it can be let in.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Poner otro dispositivo en lugar de uno bloquea enseguida el antiguo. Hasta que funcione el nuevo, se puede dejar entrar.</translation>
    </message>
    <message>
        <source>Another host name of the gateway</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Otro nombre de host de la pasarela</translation>
    </message>
    <message>
        <source>Another identity suffix</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Otro sufijo de identidad</translation>
    </message>
    <message>
        <source>Another name for the house needs a new gateway certificate, and so the passphrase. Everything else can be changed back with one click.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Otro nombre para la casa necesita un certificado nuevo de la pasarela y, por tanto, la frase de contraseña. Todo lo demás se deshace con un clic.</translation>
    </message>
    <message>
        <source>Another one has taken its place. By itself the old one ends on {day}.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Otro ha ocupado su lugar. Por sí solo, el antiguo caduca el {day}.</translation>
    </message>
    <message>
        <source>Another tunnel subnet</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Otra subred del túnel</translation>
    </message>
    <message>
        <source>Anybody can make passes for this household and get in. Found a new household, today if you can.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Cualquiera puede hacer pases para este hogar y entrar. Funda un hogar nuevo, hoy si puedes.</translation>
    </message>
    <message>
        <source>Ask for a deputy’s part and try it</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Pedir una parte a quien releva y probarla</translation>
    </message>
    <message>
        <source>Ask for a file with AES-256 or, for old devices, 3DES.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pide un archivo con AES-256 o, para dispositivos antiguos, 3DES.</translation>
    </message>
    <message>
        <source>Ask somebody who has a part with another number.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pregunta a alguien que tenga una parte con otro número.</translation>
    </message>
    <message>
        <source>Ask somebody who has another part of the same set.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pregunta a alguien que tenga otra parte del mismo juego.</translation>
    </message>
    <message>
        <source>Ask where the paper came from, and make a new set.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pregunta de dónde viene el papel, y haz un juego nuevo.</translation>
    </message>
    <message>
        <source>Ask who wrote it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Pregunta a quien lo escribió.</translation>
    </message>
    <message>
        <source>Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pide otro a quien lo hizo, o vuelve a escribirlo desde la bandeja.</translation>
    </message>
    <message>
        <source>At first contact compare the host key with what the gateway itself says. When it shows another one later, nothing is sent until you have compared again.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>En el primer contacto, compara la clave del host con la que dice la propia pasarela. Si más tarde muestra otra, no se envía nada hasta que hayas comparado de nuevo.</translation>
    </message>
    <message>
        <source>At home is {home}; everything goes through home anyway.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Casa es {home}; de todos modos, todo pasa por casa.</translation>
    </message>
    <message>
        <source>Besides slots there are if, for, raw and filters. The preview follows what you type, and a mistake is named with its line.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Además de huecos hay if, for, raw y filtros. La vista previa sigue lo que escribes, y cada error se nombra con su línea.</translation>
    </message>
    <message>
        <source>Both take effect when the gateway holds the list that says so.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ambas cosas surten efecto cuando la pasarela tiene la lista que lo dice.</translation>
    </message>
    <message>
        <source>Bring back the key text of this household; it was kept in the same keyring when the household was founded.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recupera el texto de la clave de este hogar; se guardó en el mismo llavero cuando se fundó el hogar.</translation>
    </message>
    <message>
        <source>Bring back this household’s own key text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recupera el texto de la clave de este mismo hogar.</translation>
    </message>
    <message>
        <source>Bring it the gateway pack and try one device, then go on.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Llévale los archivos de la pasarela y prueba un dispositivo; después continúa.</translation>
    </message>
    <message>
        <source>Bring it the gateway pack and try one device; then go on and say so with --told.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Llévale los archivos de la pasarela y prueba un dispositivo; después continúa e indícalo con --told.</translation>
    </message>
    <message>
        <source>Bring the key text back from a copy of the keyring. Founded anew, every device would need a new bundle.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Recupera el texto de la clave de una copia del llavero. Si se fundara de nuevo, cada dispositivo necesitaría un paquete nuevo.</translation>
    </message>
    <message>
        <source>Bring the key text back from a copy. Devices that get in still do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recupera el texto de la clave de una copia. Los dispositivos que entran siguen entrando.</translation>
    </message>
    <message>
        <source>Bring the keyring back from a copy, or use the keyring under which the household was founded.</source>
        <extracomment>Sentences about the household, its devices and passes.</extracomment>
        <translation>Recupera el llavero de una copia, o usa el llavero con el que se fundó el hogar.</translation>
    </message>
    <message>
        <source>Bring the keyring back, or give the gateway a new certificate.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recupera el llavero, o da a la pasarela un certificado nuevo.</translation>
    </message>
    <message>
        <source>Bundles in the tray take a change along. Devices that have theirs go on with the old one until you replace it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Los paquetes de la bandeja incorporan un cambio. Los dispositivos que ya tienen el suyo siguen con el antiguo hasta que lo sustituyas.</translation>
    </message>
    <message>
        <source>By this computer’s clock the pass has not begun ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Según el reloj de este ordenador, el pase aún no ha empezado ({seen}).</translation>
    </message>
    <message>
        <source>Call what the loop runs over by another name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da otro nombre a lo que recorre el bucle.</translation>
    </message>
    <message>
        <source>Change the password of the mail account</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Cambia la contraseña de la cuenta de correo</translation>
    </message>
    <message>
        <source>Change who may read it, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Si debe estar aquí, cambia quién puede leerlo.</translation>
    </message>
    <message>
        <source>Character {place} of the passphrase is not on every keyboard, and devices turn it into different bytes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El carácter {place} de la frase de contraseña no está en todos los teclados, y cada dispositivo lo convierte en bytes distintos.</translation>
    </message>
    <message>
        <source>Character {place} of the {what} ({character}) cannot be seen, or turns the text around it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El carácter {place} de «{what}» ({character}) no se ve, o da la vuelta al texto que lo rodea.</translation>
    </message>
    <message>
        <source>Check capital letters and spaces, and whether it is the passphrase of this very thing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba las mayúsculas y los espacios, y que sea la frase de contraseña de esto mismo.</translation>
    </message>
    <message>
        <source>Check its name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba el nombre.</translation>
    </message>
    <message>
        <source>Check that files of two devices were not mixed up.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que no se hayan mezclado archivos de dos dispositivos.</translation>
    </message>
    <message>
        <source>Check that it belongs to this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que sea de este hogar.</translation>
    </message>
    <message>
        <source>Check that it is a text file and that you may read it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que sea un archivo de texto y que puedas leerlo.</translation>
    </message>
    <message>
        <source>Check that it is the right file, and copy it once more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que sea el archivo correcto y cópialo otra vez.</translation>
    </message>
    <message>
        <source>Check that it is the right file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que sea el archivo correcto.</translation>
    </message>
    <message>
        <source>Check the MTU of the line to the internet; it is 1500 or a little less.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba la MTU de la línea a internet; es de 1500 o un poco menos.</translation>
    </message>
    <message>
        <source>Check the clock of this computer, then of the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba el reloj de este ordenador y después el de la pasarela.</translation>
    </message>
    <message>
        <source>Check the name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba el nombre.</translation>
    </message>
    <message>
        <source>Check who may read it, then try again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba quién puede leerlo y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Choose 1 to {longest} hours.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige de 1 a {longest} horas.</translation>
    </message>
    <message>
        <source>Choose a later day, or renew it later.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige un día posterior, o renuévalo más adelante.</translation>
    </message>
    <message>
        <source>Choose a shorter note of whom to call.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige una indicación más corta de a quién llamar.</translation>
    </message>
    <message>
        <source>Choose an address in the home network.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige una dirección de la red de casa.</translation>
    </message>
    <message>
        <source>Choose an end up to that day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige un final que no pase de ese día.</translation>
    </message>
    <message>
        <source>Choose another beginning than con, nul, aux, prn, com1 or lpt1, and no dot at the end.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige un comienzo distinto de con, nul, aux, prn, com1 o lpt1, y sin punto al final.</translation>
    </message>
    <message>
        <source>Choose another folder, best on another stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige otra carpeta, mejor en otra memoria USB.</translation>
    </message>
    <message>
        <source>Choose another folder, or see to its permissions.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige otra carpeta, o revisa sus permisos.</translation>
    </message>
    <message>
        <source>Choose another folder, or take the parts away first.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige otra carpeta, o quita antes las partes.</translation>
    </message>
    <message>
        <source>Choose another template.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige otra plantilla.</translation>
    </message>
    <message>
        <source>Choose it on the sheet.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Elígelo en la hoja.</translation>
    </message>
    <message>
        <source>Choose one of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige una de las opciones.</translation>
    </message>
    <message>
        <source>Choose one of {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige entre {known}.</translation>
    </message>
    <message>
        <source>Choose one of {known}. To stop for now: hearthkey stop.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige entre {known}. Para bloquear por ahora: hearthkey stop.</translation>
    </message>
    <message>
        <source>Choose pkcs12, archive or bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige pkcs12, archive o bundle.</translation>
    </message>
    <message>
        <source>Choose png or svg.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige png o svg.</translation>
    </message>
    <message>
        <source>Choose strong or old.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige strong u old.</translation>
    </message>
    <message>
        <source>Choose the folder that holds nothing but the CA.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Elige la carpeta que contiene solo la CA.</translation>
    </message>
    <message>
        <source>Choose the one of this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige el de este hogar.</translation>
    </message>
    <message>
        <source>Choose “Lost”: devices go first. Then no pass of this CA can be stopped any more.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Elige «Perdida»: los dispositivos van primero. Después ya no se puede bloquear ningún pase de esta CA.</translation>
    </message>
    <message>
        <source>Close it first. Looking works meanwhile.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Ciérrala primero. Mientras tanto se puede mirar.</translation>
    </message>
    <message>
        <source>Close it first. Looking works meanwhile: hearthkey list, show, diary.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ciérrala primero. Mientras tanto se puede mirar: hearthkey list, show, diary.</translation>
    </message>
    <message>
        <source>Close the drawer at any time: what you typed is still there when you come back.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cierra el panel lateral cuando quieras: lo que has escrito sigue ahí cuando vuelves.</translation>
    </message>
    <message>
        <source>Close the other copy of the app, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cierra la otra copia de la aplicación y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Close the other copy, or see to the folder’s permissions.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Cierra la otra copia, o revisa los permisos de la carpeta.</translation>
    </message>
    <message>
        <source>Close this window and open it again; it shows the household that is there.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Cierra esta ventana y vuelve a abrirla; muestra el hogar que ya existe.</translation>
    </message>
    <message>
        <source>Codes cannot be drawn as &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los códigos no se pueden dibujar como «{text}».</translation>
    </message>
    <message>
        <source>Compare each word with the paper, in order, and type them once more. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Compara cada palabra con el papel, en orden, y escríbelas de nuevo. No ha cambiado nada.</translation>
    </message>
    <message>
        <source>Compare it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Compárala una vez: en la ventana, en «Pasarela», o con hearthkey gateway --ssh HOST --folder FOLDER.</translation>
    </message>
    <message>
        <source>Compare these with the paper, letter by letter, and do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Compáralas con el papel, letra por letra, y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Configuration profiles connect by themselves, but not on the household’s own Wi-Fi.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Los perfiles de configuración se conectan por sí solos, pero no en la wifi propia del hogar.</translation>
    </message>
    <message>
        <source>Configuration profiles connect by themselves.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Los perfiles de configuración se conectan por sí solos.</translation>
    </message>
    <message>
        <source>Configuration profiles connect when asked to.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Los perfiles de configuración se conectan cuando se les pide.</translation>
    </message>
    <message>
        <source>Copy the file that it points to into the folder, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Si debe estar aquí, copia en la carpeta el archivo al que apunta.</translation>
    </message>
    <message>
        <source>Ctrl+C</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+C</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+Intro</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+N</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+Mayús+G</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Current gateways turn it away. The device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Las pasarelas actuales lo rechazan. El dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Days on which you meet somebody are kept under Visits. The last one before an end is the day to act.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Los días en que vas a ver a alguien se guardan en «Visitas». El último antes de que caduque algo es el día para actuar.</translation>
    </message>
    <message>
        <source>Deliver again when it suits; it goes on from what is there.</source>
        <extracomment>Sentences about the way to the gateway being in the way.</extracomment>
        <translation>Haz otro envío cuando te venga bien; continúa con lo que ya está allí.</translation>
    </message>
    <message>
        <source>Deliver again; if it stays silent, look at the gateway itself.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz otro envío; si sigue sin responder, mira la propia pasarela.</translation>
    </message>
    <message>
        <source>Deliver again; it goes on from what is there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz otro envío; continúa con lo que ya está allí.</translation>
    </message>
    <message>
        <source>Deliver the files of the gateway. Nobody notices.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Envía los archivos de la pasarela. Nadie nota nada.</translation>
    </message>
    <message>
        <source>Deliver to the gateway, then go on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Envía a la pasarela y después continúa.</translation>
    </message>
    <message>
        <source>Devices are told no DNS server at home any more; where it was typed in by hand, it stays.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>A los dispositivos ya no se les indica ningún servidor DNS de casa; donde se escribió a mano, se queda.</translation>
    </message>
    <message>
        <source>Devices cannot be asked to prove themselves anew every {hours} hours; until they do, a stopped one’s open session lives on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede pedir a los dispositivos que se autentiquen de nuevo cada {hours} horas; hasta que lo hacen, sigue viva la sesión abierta de uno bloqueado.</translation>
    </message>
    <message>
        <source>Devices that check the gateway turn away until it has a new certificate.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Los dispositivos que comprueban la pasarela la rechazan hasta que tenga un certificado nuevo.</translation>
    </message>
    <message>
        <source>Devices that know it go on. New passes cannot be signed with it by this app.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Los dispositivos que la conocen siguen funcionando. Esta aplicación no puede firmar con ella pases nuevos.</translation>
    </message>
    <message>
        <source>Devices that know only the old CA get in as before, for it vouches for the new one.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Los dispositivos que solo conocen la CA antigua entran como antes, porque ella avala a la nueva.</translation>
    </message>
    <message>
        <source>Devices trust the one above. Look in the folder where that one lies.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Los dispositivos confían en la de arriba. Busca en la carpeta donde está esa.</translation>
    </message>
    <message>
        <source>Do it again. If it stays so, its disk or somebody at the gateway changes files.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a intentarlo. Si sigue igual, su disco o alguien en la pasarela cambia los archivos.</translation>
    </message>
    <message>
        <source>Do it again; others are started.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a intentarlo; se inician otros.</translation>
    </message>
    <message>
        <source>Do not open it. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No lo abras. Pide otro a quien lo hizo, o vuelve a escribirlo desde la bandeja.</translation>
    </message>
    <message>
        <source>Each entry seals the one before it, so an entry that was altered or taken out shows.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada entrada sella la anterior, así que se nota si una se ha alterado o quitado.</translation>
    </message>
    <message>
        <source>Each step can be taken back, but the last: when the old CA is put away, its key is gone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada paso se puede deshacer, menos el último: cuando se retira la CA antigua, su clave desaparece.</translation>
    </message>
    <message>
        <source>Each way out says who can open it. Choose one that the device knows.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada salida dice quién puede abrirla. Elige una que el dispositivo conozca.</translation>
    </message>
    <message>
        <source>Encrypted tunnels are restricted in some places. Where this device travels, the law there decides.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Los túneles cifrados están restringidos en algunos lugares. Donde viaje este dispositivo, decide la ley de allí.</translation>
    </message>
    <message>
        <source>Encrypting the CA key under the passphrase (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Cifrando la clave de la CA con la frase de contraseña (es lento a propósito)</translation>
    </message>
    <message>
        <source>Ended on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Caducó el {day}.</translation>
    </message>
    <message>
        <source>Enter</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Esc</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Every change takes effect at once; there is nothing to confirm.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada cambio surte efecto al momento; no hay nada que confirmar.</translation>
    </message>
    <message>
        <source>Every device that gets in: a list to loop over, each with identity, title, serial_number, ends and extra_secret.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Todos los dispositivos que entran: una lista para recorrer en un bucle, cada uno con identity, title, serial_number, ends y extra_secret.</translation>
    </message>
    <message>
        <source>Every device would write the same file, for &quot;{text}&quot; does not say where the device’s name goes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Todos los dispositivos escribirían el mismo archivo, porque «{text}» no dice dónde va el nombre del dispositivo.</translation>
    </message>
    <message>
        <source>Everybody gets in as before. The first list is signed at the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Todo el mundo entra como antes. La primera lista se firma al adoptar el hogar.</translation>
    </message>
    <message>
        <source>Everybody gets in as before: until {list} by the revocation list in force, until {gateway} by the gateway’s certificate, and each device until its own pass ends. No new pass can be made.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Todos entran como antes: hasta el {list} según la lista de revocación en vigor, hasta el {gateway} según el certificado de la pasarela, y cada dispositivo hasta que caduque su propio pase. No se puede crear ningún pase nuevo.</translation>
    </message>
    <message>
        <source>Everybody is through. The old CA can go.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Todos han hecho el cambio. La CA antigua se puede retirar.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. Nothing new can be signed until the key text is back.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Quien podía entrar sigue pudiendo. No se puede firmar nada nuevo hasta que vuelva el texto de la clave.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. Nothing was changed.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Quien podía entrar sigue pudiendo. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The CA key is needed for new passes and new lists only.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Quien podía entrar sigue pudiendo. La clave de la CA solo hace falta para pases nuevos y listas nuevas.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The CA key lies in the keyring under which the household was founded.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Quien podía entrar sigue pudiendo. La clave de la CA está en el llavero con el que se fundó el hogar.</translation>
    </message>
    <message>
        <source>Everyone who could get in still can. The gateway does not need this computer.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Quien podía entrar sigue pudiendo. La pasarela no necesita este ordenador.</translation>
    </message>
    <message>
        <source>Everything goes on as long as certificates and list last. Without the key nobody can be added or stopped.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Todo sigue funcionando mientras duren los certificados y la lista. Sin la clave no se puede añadir ni bloquear a nadie.</translation>
    </message>
    <message>
        <source>Everything is at the gateway already; list no. {number} is in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Todo está ya en la pasarela; la lista n.º {number} está en vigor.</translation>
    </message>
    <message>
        <source>Everything is delivered. But on {day} nobody gets in any more without somebody who knows the passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Todo está enviado. Pero el {day} deja de entrar todo el mundo si no interviene alguien que conozca la frase de contraseña.</translation>
    </message>
    <message>
        <source>Everything that devices do on the internet goes through home.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Todo lo que los dispositivos hacen en internet pasa por casa.</translation>
    </message>
    <message>
        <source>Everything that was done stands here, newest first. It names no secret.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Aquí está todo lo que se ha hecho, lo más reciente primero. No nombra ningún secreto.</translation>
    </message>
    <message>
        <source>Everything was at the gateway already; list no. {number} is in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Todo estaba ya en la pasarela; la lista n.º {number} está en vigor.</translation>
    </message>
    <message>
        <source>Everything was at {where} already; revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Todo estaba ya en {where}; la lista de revocación n.º {number} está en vigor.</translation>
    </message>
    <message>
        <source>Everything works until it ends. A successor cannot be introduced by it, so that every device has to be visited then.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Todo funciona hasta que caduque. No puede presentar a una sucesora, así que entonces habrá que pasar por cada dispositivo.</translation>
    </message>
    <message>
        <source>Everything works until that day and nothing after it. Plan its successor now.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Todo funciona hasta ese día y nada después. Planea ya su sucesora.</translation>
    </message>
    <message>
        <source>Everything would stay as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Todo se quedaría como está.</translation>
    </message>
    <message>
        <source>F3, Shift+F3</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F3, Mayús+F3</translation>
    </message>
    <message>
        <source>F6</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F6</translation>
    </message>
    <message>
        <source>Files get to a gateway by {known}, not by {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los archivos llegan a una pasarela por {known}, no por {text}.</translation>
    </message>
    <message>
        <source>First look for a sealed copy or the key on paper, and for the words: with either, nothing is lost.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Busca primero una copia sellada o la clave en papel, y también las palabras: con cualquiera de las dos, junto con las palabras, no se ha perdido nada.</translation>
    </message>
    <message>
        <source>For a new key in the same device add --replace; for another device give it a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para una clave nueva en el mismo dispositivo, añade --replace; si es otro dispositivo, dale un nombre propio.</translation>
    </message>
    <message>
        <source>For a new one: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para uno nuevo: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>For another one, name another folder with --data.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para otro, indica otra carpeta con --data.</translation>
    </message>
    <message>
        <source>For the same device add --replace; for another device give it a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para el mismo dispositivo, añade --replace; si es otro dispositivo, dale un nombre propio.</translation>
    </message>
    <message>
        <source>Found a household anew in another data folder, and give every device a new bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Funda de nuevo un hogar en otra carpeta de datos y da a cada dispositivo un paquete nuevo.</translation>
    </message>
    <message>
        <source>Found a new household; each device needs a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Found one first.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Funda uno primero.</translation>
    </message>
    <message>
        <source>Founding a household</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Fundar un hogar</translation>
    </message>
    <message>
        <source>Founding makes the household’s own CA: what it signs gets in, nothing else does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Al fundar se crea la CA propia del hogar: lo que ella firma entra, y nada más.</translation>
    </message>
    <message>
        <source>From here there is no step back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Desde aquí no hay vuelta atrás.</translation>
    </message>
    <message>
        <source>From the next delivery on, whoever has the old bundle turns away from the gateway.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>A partir del próximo envío, quien tenga el paquete antiguo rechaza la pasarela.</translation>
    </message>
    <message>
        <source>Gateways may ignore lists that follow. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Puede que las pasarelas no hagan caso a las listas siguientes. Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Give a /24, or leave it empty to have one proposed.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Indica una /24, o déjalo vacío para que se proponga una.</translation>
    </message>
    <message>
        <source>Give a /24; --tunnel-subnet quiet has one proposed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una /24; con --tunnel-subnet quiet se propone una.</translation>
    </message>
    <message>
        <source>Give a day that is still to come.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica un día que aún no haya llegado.</translation>
    </message>
    <message>
        <source>Give a day that lies ahead.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica un día que esté por venir.</translation>
    </message>
    <message>
        <source>Give a file with them, or a picture of the code: --part FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da un archivo con ellas, o una imagen del código: --part FILE.</translation>
    </message>
    <message>
        <source>Give a name that the family uses.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon un nombre que use la familia.</translation>
    </message>
    <message>
        <source>Give a number of days from 1 on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica un número de días, de 1 en adelante.</translation>
    </message>
    <message>
        <source>Give a shorter name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon un nombre más corto.</translation>
    </message>
    <message>
        <source>Give a shorter one with --identity-suffix.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica uno más corto con --identity-suffix.</translation>
    </message>
    <message>
        <source>Give a shorter one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica algo más corto.</translation>
    </message>
    <message>
        <source>Give a whole number from 1 to {longest}; 30 is usual.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica un número entero del 1 al {longest}; lo habitual es 30.</translation>
    </message>
    <message>
        <source>Give an address of the gateway, or none for all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una dirección de la pasarela, o ninguna para usarlas todas.</translation>
    </message>
    <message>
        <source>Give an address, for instance 198.51.100.1.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una dirección, por ejemplo 198.51.100.1.</translation>
    </message>
    <message>
        <source>Give each device its new bundle</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Dar a cada dispositivo su paquete nuevo</translation>
    </message>
    <message>
        <source>Give each its new bundle and see it get in, or wait until its old pass has ended.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da a cada uno su paquete nuevo y mira si entra, o espera a que haya caducado su pase anterior.</translation>
    </message>
    <message>
        <source>Give it a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dale un pase nuevo.</translation>
    </message>
    <message>
        <source>Give it a new pass: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dale un pase nuevo: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>Give it along, so that the parts can stand for both.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dala también, para que las partes valgan por las dos.</translation>
    </message>
    <message>
        <source>Give it from the root on, like /etc/home-gateway, without quotes, backslashes and dollar signs.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indícala desde la raíz, como /etc/home-gateway, sin comillas, barras invertidas ni signos de dólar.</translation>
    </message>
    <message>
        <source>Give it texts in quotes, or figures, as the list of filters shows.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dale textos entre comillas, o cifras, como muestra la lista de filtros.</translation>
    </message>
    <message>
        <source>Give it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indícalo.</translation>
    </message>
    <message>
        <source>Give its holder the part of the new set, and destroy this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da a quien la tiene la parte del juego nuevo, y destruye esta.</translation>
    </message>
    <message>
        <source>Give kilobits in a second: 40 Mbit/s are 40000.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da kilobits por segundo: 40 Mbit/s son 40000.</translation>
    </message>
    <message>
        <source>Give one from 1 to 65535; 443 needs no mention in a browser.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica uno de 1 a 65535; el 443 no hace falta escribirlo en un navegador.</translation>
    </message>
    <message>
        <source>Give one; an empty one is read differently by every device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una; si está vacía, cada dispositivo la lee de otra manera.</translation>
    </message>
    <message>
        <source>Give subnets that lie apart, or have another quiet one proposed.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Indica subredes que no se toquen, o haz que se proponga otra poco usada.</translation>
    </message>
    <message>
        <source>Give subnets that lie apart; --tunnel-subnet quiet has a free one proposed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica subredes que no se toquen; con --tunnel-subnet quiet se propone una libre.</translation>
    </message>
    <message>
        <source>Give the address that the page has inside the house.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica la dirección que la página tiene dentro de la casa.</translation>
    </message>
    <message>
        <source>Give the address that the router’s pages show for it, for instance 198.51.100.2.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da la dirección que muestran para ella las páginas del router, por ejemplo 198.51.100.2.</translation>
    </message>
    <message>
        <source>Give the device a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da al dispositivo un pase nuevo.</translation>
    </message>
    <message>
        <source>Give the devices their new bundles first; the gateway’s certificate follows in the succession.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da primero a los dispositivos sus paquetes nuevos; el certificado de la pasarela viene después, en la sucesión.</translation>
    </message>
    <message>
        <source>Give the gateway a certificate of the new CA</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Dar a la pasarela un certificado de la CA nueva</translation>
    </message>
    <message>
        <source>Give the gateway its next certificate</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Dar a la pasarela su próximo certificado</translation>
    </message>
    <message>
        <source>Give the gateway’s address at home, or put the home subnets right with hearthkey settle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da la dirección de la pasarela en casa, o corrige las subredes de casa con hearthkey settle.</translation>
    </message>
    <message>
        <source>Give the household a home subnet of the tunnel’s version.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da al hogar una subred de casa de la misma versión que la del túnel.</translation>
    </message>
    <message>
        <source>Give the name of the user at the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica el nombre de usuario en la pasarela.</translation>
    </message>
    <message>
        <source>Give the name or address alone; user and port have fields of their own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica solo el nombre o la dirección; el usuario y el puerto tienen campos propios.</translation>
    </message>
    <message>
        <source>Give the name or address of the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica el nombre o la dirección de la pasarela.</translation>
    </message>
    <message>
        <source>Give the name that devices reach, for instance home.quince.example.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica el nombre al que llegan los dispositivos, por ejemplo home.quince.example.</translation>
    </message>
    <message>
        <source>Give the name under which the house is reached from outside. It is written into every bundle.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Indica el nombre con el que se llega a la casa desde fuera. Queda escrito en cada paquete.</translation>
    </message>
    <message>
        <source>Give the others their new bundles and put the old CA away; that ends all of its passes at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da a los demás sus paquetes nuevos y retira la CA antigua; con eso acaban de una vez todos sus pases.</translation>
    </message>
    <message>
        <source>Give the pages of one paper only, the one with the newest day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica solo las páginas de una misma copia en papel, la del día más reciente.</translation>
    </message>
    <message>
        <source>Give the port of ssh, or leave it empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica el puerto de ssh, o déjalo vacío.</translation>
    </message>
    <message>
        <source>Give the subnet at home; for all traffic choose &quot;everything&quot; below.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Indica la subred de casa; para todo el tráfico, elige «todo» más abajo.</translation>
    </message>
    <message>
        <source>Give the subnet at home; for all traffic use --tunnel full.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica la subred de casa; para todo el tráfico, usa --tunnel full.</translation>
    </message>
    <message>
        <source>Give this one a name of its own, or give the old one a new pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Da a este un nombre propio, o da al antiguo un pase nuevo.</translation>
    </message>
    <message>
        <source>Give this one a name of its own, or replace the pass of the other.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Da a este un nombre propio, o sustituye el pase del otro.</translation>
    </message>
    <message>
        <source>Go on with it: hearthkey succession shows what comes next, and for whom.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Continúa con ella: hearthkey succession muestra qué viene después, y para quién.</translation>
    </message>
    <message>
        <source>Go on with the next step.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Continúa con el paso siguiente.</translation>
    </message>
    <message>
        <source>Go on; hearthkey succession shows the next step.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Continúa; hearthkey succession muestra el paso siguiente.</translation>
    </message>
    <message>
        <source>Go one step back, or on, on the page of the next CA. Once the old CA is put away there is no way back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da un paso atrás, o adelante, en la página de la próxima CA. Una vez retirada la CA antigua no hay vuelta atrás.</translation>
    </message>
    <message>
        <source>Guest.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Invitado.</translation>
    </message>
    <message>
        <source>Hand it over, or take it back first: hearthkey renew DEVICE --take-back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Entrégalo en mano, o deshaz antes la renovación: hearthkey renew DEVICE --take-back.</translation>
    </message>
    <message>
        <source>Hand it over. The old pass can go then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Entrégalo en mano. Entonces se puede retirar el pase anterior.</translation>
    </message>
    <message>
        <source>Hand over the next pass of {title}</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Entregar en mano el pase siguiente de {title}</translation>
    </message>
    <message>
        <source>Hand the new bundle over and prove it; then the old pass goes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Entrega en mano el paquete nuevo y compruébalo; entonces se retira el pase anterior.</translation>
    </message>
    <message>
        <source>Handing over</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Entregar en mano</translation>
    </message>
    <message>
        <source>Have the SIM blocked by the carrier</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Pide a la operadora que bloquee la SIM</translation>
    </message>
    <message>
        <source>How much room {text} takes in a packet is not known here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aquí no se sabe cuánto espacio ocupa {text} en un paquete de red.</translation>
    </message>
    <message>
        <source>If an older sealed copy was brought back, bring back the newest. If the gateway was another household’s, choose another folder, or empty this one by hand.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Si se recuperó una copia sellada antigua, recupera la más nueva. Si la pasarela era de otro hogar, elige otra carpeta o vacía esta a mano.</translation>
    </message>
    <message>
        <source>If it is the CA’s, open it once with the program that made it, and lock it anew with AES.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Si es la de la CA, ábrela una vez con el programa que la creó y ciérrala de nuevo con AES.</translation>
    </message>
    <message>
        <source>If it was only stopped, let it back in first: hearthkey let-in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Si solo estaba bloqueado, déjalo entrar de nuevo primero: hearthkey let-in.</translation>
    </message>
    <message>
        <source>If the bundle was lost, replace it: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Si se perdió el paquete, sustitúyelo: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>If the bundle was lost, replace the pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Si se perdió el paquete, sustituye el pase.</translation>
    </message>
    <message>
        <source>If the gateway was set up anew, compare the key at the gateway itself and say anew where it is. If not, wait.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Si la pasarela se instaló de nuevo, compara la clave en la propia pasarela e indica otra vez dónde está. Si no, espera.</translation>
    </message>
    <message>
        <source>If the whole subnet is meant, write {meant}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Si te refieres a toda la subred, escribe {meant}.</translation>
    </message>
    <message>
        <source>If you cannot tell, act as in the second case. It costs visits and nothing else.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Si no lo sabes, actúa como en el segundo caso. Cuesta visitas y nada más.</translation>
    </message>
    <message>
        <source>In force is said only of what was read back from the gateway. When it cannot be reached, what it holds is not known, and that is said too, with the time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>«En vigor» se dice solo de lo que se ha releído de la pasarela. Si no se llega a ella, no se sabe qué tiene, y eso también se dice, con la hora.</translation>
    </message>
    <message>
        <source>In need of a new bundle: {devices}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Necesitan un paquete nuevo: {devices}.</translation>
    </message>
    <message>
        <source>In use.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>En uso.</translation>
    </message>
    <message>
        <source>Inside, devices get addresses from {inner}; the gateway gives them out at each connection.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Dentro, los dispositivos reciben direcciones de {inner}; la pasarela las reparte en cada conexión.</translation>
    </message>
    <message>
        <source>Install iproute2, or name the way out yourself: export writes the bundle to a stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Instala iproute2, o elige tú la salida: export escribe el paquete en una memoria USB.</translation>
    </message>
    <message>
        <source>Install the OpenSSH client (Debian: openssh-client), or deliver by a folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Instala el cliente OpenSSH (Debian: openssh-client), o haz el envío mediante una carpeta.</translation>
    </message>
    <message>
        <source>It can be let back in when it turns up, so when in doubt, stop it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Se le puede dejar entrar de nuevo cuando aparezca, así que, en caso de duda, bloquéalo.</translation>
    </message>
    <message>
        <source>It gets in again with a new pass.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Vuelve a entrar con un pase nuevo.</translation>
    </message>
    <message>
        <source>It gets in until {day}, then it ends. A new pass takes over without a gap.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Entra hasta el {day}; después, caduca. Un pase nuevo toma el relevo sin interrupción.</translation>
    </message>
    <message>
        <source>It gets in until {day}. Its bundle is in the tray, to be handed over.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Entra hasta el {day}. Su paquete está en la bandeja, para entregarlo en mano.</translation>
    </message>
    <message>
        <source>It gets in until {day}. The key exists on the {device} alone.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Entra hasta el {day}. La clave existe solo en el dispositivo ({device}).</translation>
    </message>
    <message>
        <source>It gets in until {day}. Then it ends by itself.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>Entra hasta el {day}. Después caduca por sí solo.</translation>
    </message>
    <message>
        <source>It gets in where the gateway goes by the subject. A new pass has what is missing.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Entra donde la pasarela se guía por el titular. Un pase nuevo lleva lo que falta.</translation>
    </message>
    <message>
        <source>It has {size} octets; a bundle has at most {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tiene {size} bytes; un paquete tiene como mucho {limit}.</translation>
    </message>
    <message>
        <source>It is encrypted in a way that is not read here ({algorithm}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Está cifrado de una forma que aquí no se lee ({algorithm}).</translation>
    </message>
    <message>
        <source>It is known by its host key {fingerprint}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se reconoce por su clave del host {fingerprint}.</translation>
    </message>
    <message>
        <source>It is left as it is.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se deja como está.</translation>
    </message>
    <message>
        <source>It is left as it is. Only one can be taken over at a time.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se deja como está. Solo se puede adoptar una cada vez.</translation>
    </message>
    <message>
        <source>It is left out.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se deja fuera.</translation>
    </message>
    <message>
        <source>It is left out: only whole lists are taken over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se deja fuera: solo se adoptan listas completas.</translation>
    </message>
    <message>
        <source>It is not a PNG or JPEG picture that can be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No es una imagen PNG o JPEG que se pueda leer.</translation>
    </message>
    <message>
        <source>It is not a whole PKCS#12 file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No es un archivo PKCS#12 completo.</translation>
    </message>
    <message>
        <source>It is not a whole archive.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No es un archivo comprimido completo.</translation>
    </message>
    <message>
        <source>It is not said which template, or from which file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se ha dicho qué plantilla, ni de qué archivo.</translation>
    </message>
    <message>
        <source>It is too much for codes: {size} octets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Es demasiado para códigos: {size} bytes.</translation>
    </message>
    <message>
        <source>It never gets in again: {why}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>No vuelve a entrar nunca: {why}.</translation>
    </message>
    <message>
        <source>It stands on the revocation list ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Está en la lista de revocación ({seen}). La pasarela no lo dejará entrar.</translation>
    </message>
    <message>
        <source>It takes a person and a device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hacen falta una persona y un dispositivo.</translation>
    </message>
    <message>
        <source>It takes effect when the gateway holds list {subject}. Until then, everybody who could get in still can.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Surte efecto cuando la pasarela tenga la lista {subject}. Hasta entonces, quien podía entrar sigue pudiendo.</translation>
    </message>
    <message>
        <source>It takes effect when the gateway holds the new list.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Surte efecto cuando la pasarela tenga la lista nueva.</translation>
    </message>
    <message>
        <source>It takes effect with the next delivery.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Surte efecto con el próximo envío.</translation>
    </message>
    <message>
        <source>It waits in the tray. The pass that the device has gets in until {day}, and not a day longer.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Espera en la bandeja. El pase que tiene el dispositivo entra hasta el {day}, y ni un día más.</translation>
    </message>
    <message>
        <source>It was not read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se ha leído.</translation>
    </message>
    <message>
        <source>It was not read. Look into it by itself, if it belongs here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se ha leído. Si debe estar aquí, se puede examinar aparte.</translation>
    </message>
    <message>
        <source>It was out of sight for {subject} hours. Somebody may have copied what is on it: a new pass is wiser than letting the old one back in.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Estuvo fuera de la vista {subject} horas. Alguien puede haber copiado lo que contiene: un pase nuevo es más prudente que dejar entrar de nuevo el antiguo.</translation>
    </message>
    <message>
        <source>It was picked up by {address}. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Lo ha recogido {address}. El vale de recogida está cerrado.</translation>
    </message>
    <message>
        <source>It works, and it cannot be stopped. Give the device a new pass, and end this one at the gateway.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Funciona, y no se puede bloquear. Da al dispositivo un pase nuevo y acaba con este en la pasarela.</translation>
    </message>
    <message>
        <source>It works. On some ways in, who listens on the network can read it; a new pass carries a code instead.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Funciona. En algunas formas de entrar, quien escuche en la red puede leerlo; un pase nuevo lleva en su lugar un código.</translation>
    </message>
    <message>
        <source>It works. The lists that follow have one.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Funciona. Las listas siguientes lo llevan.</translation>
    </message>
    <message>
        <source>It would take {count} codes; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Harían falta {count} códigos; el máximo es {limit}.</translation>
    </message>
    <message>
        <source>Its device does not get in any more. Only its number is taken over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Su dispositivo ya no entra. Solo se adopta su número.</translation>
    </message>
    <message>
        <source>Its device does not get in before.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Antes de esa fecha su dispositivo no entra.</translation>
    </message>
    <message>
        <source>Its last passes ended: {titles}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Caducaron sus últimos pases: {titles}.</translation>
    </message>
    <message>
        <source>Its new pass gets in; renew it if it needs another.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Su nuevo pase entra; renuévalo si necesita otro.</translation>
    </message>
    <message>
        <source>Its passphrase can be guessed quickly. It can be read here; delete the file after the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Su frase de contraseña se puede adivinar deprisa. Aquí se puede leer; borra el archivo después de adoptar el hogar.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi at home. If you are there already, name the address: --address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Conéctate a la wifi de casa. Si ya estás en ella, indica la dirección: --address.</translation>
    </message>
    <message>
        <source>Keep a sealed copy instead of the paper.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Guarda una copia sellada en lugar de la copia en papel.</translation>
    </message>
    <message>
        <source>Keep it to one line. What is longer fits into a script at the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Que sea una sola línea. Lo que sea más largo cabe en un script en la pasarela.</translation>
    </message>
    <message>
        <source>Key and certificate do not belong together.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave y el certificado no se corresponden.</translation>
    </message>
    <message>
        <source>Keys and codes of the doors</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Llaves y códigos de las puertas</translation>
    </message>
    <message>
        <source>Leave it out, or make a proposal of its own of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Quítalo, o haz con ello una propuesta aparte.</translation>
    </message>
    <message>
        <source>Leave one out. Nothing was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Quita una de las dos cosas. No se ha creado nada.</translation>
    </message>
    <message>
        <source>Leave out what no slot is in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Quita aquello que no contiene ningún hueco.</translation>
    </message>
    <message>
        <source>Leave the command empty, or reach the gateway by ssh.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Deja vacío el comando, o accede a la pasarela por ssh.</translation>
    </message>
    <message>
        <source>Leave the folder as it is, make a copy of it, and bring back the newest copy that works.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Deja la carpeta como está, haz una copia de ella y recupera la copia más reciente que funcione.</translation>
    </message>
    <message>
        <source>Leave the tunnel’s out where the kernel itself unpacks the tunnel.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No pongas la del túnel donde es el propio núcleo quien desempaqueta el túnel.</translation>
    </message>
    <message>
        <source>Let it back in, or revoke it for good.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Déjalo entrar de nuevo, o revócalo para siempre.</translation>
    </message>
    <message>
        <source>Let the devices go first: hearthkey succession begin --lost. Then no pass of this CA can be stopped any more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Deja que los dispositivos vayan primero: hearthkey succession begin --lost. Después ya no se puede bloquear ningún pase de esta CA.</translation>
    </message>
    <message>
        <source>Let the gateway trust both</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Hacer que la pasarela confíe en ambas</translation>
    </message>
    <message>
        <source>Let the old pass of {title} go</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Retirar el pase anterior de {title}</translation>
    </message>
    <message>
        <source>Let the other one back in, and revoke this one, each on its page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Deja entrar de nuevo al otro y revoca este, cada uno en su página.</translation>
    </message>
    <message>
        <source>Line {line} asks for the first or last of a list that is empty today.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} pide el primero o el último de una lista que hoy está vacía.</translation>
    </message>
    <message>
        <source>Line {line} cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} no se puede leer.</translation>
    </message>
    <message>
        <source>Line {line} cannot be read: {seen}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} no se puede leer: {seen}</translation>
    </message>
    <message>
        <source>Line {line} does not belong with the others: there are two papers among them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} no va con las demás: hay mezcladas dos copias en papel.</translation>
    </message>
    <message>
        <source>Line {line} does not say that this is a bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} no dice que esto sea un paquete.</translation>
    </message>
    <message>
        <source>Line {line} holds a character that cannot be seen ({character}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} contiene un carácter que no se ve ({character}).</translation>
    </message>
    <message>
        <source>Line {line} holds a character that cannot be seen, or turns the text around it ({character}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} contiene un carácter que no se ve o que da la vuelta al texto que lo rodea ({character}).</translation>
    </message>
    <message>
        <source>Line {line} is nested deeper than {limit} levels.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} está anidada a más de {limit} niveles.</translation>
    </message>
    <message>
        <source>Line {line} is not UTF-8 text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} no es texto UTF-8.</translation>
    </message>
    <message>
        <source>Line {line} of {path} does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La línea {line} de {path} no encaja.</translation>
    </message>
    <message>
        <source>Line {line}: a {wanted} was expected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: se esperaba {wanted}.</translation>
    </message>
    <message>
        <source>Line {line}: more than {limit} {what}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: más de {limit} {what}.</translation>
    </message>
    <message>
        <source>Line {line}: nothing is known of {key}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: no se sabe nada de {key}.</translation>
    </message>
    <message>
        <source>Line {line}: only a subnet has an address, a netmask and a prefix length.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: solo una subred tiene dirección, máscara de red y longitud de prefijo.</translation>
    </message>
    <message>
        <source>Line {line}: the filter {name} does not take what stands in its brackets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: el filtro {name} no admite lo que hay entre sus paréntesis.</translation>
    </message>
    <message>
        <source>Line {line}: there is no filter {name}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: no existe el filtro {name}.</translation>
    </message>
    <message>
        <source>Line {line}: there is no slot {name}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: no existe el hueco {name}.</translation>
    </message>
    <message>
        <source>Line {line}: there is nothing in {name} today.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: hoy no hay nada en {name}.</translation>
    </message>
    <message>
        <source>Line {line}: what stands for {key} does not fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: lo que pone en {key} no encaja.</translation>
    </message>
    <message>
        <source>Line {line}: {key} cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: {key} no se puede leer.</translation>
    </message>
    <message>
        <source>Line {line}: {name} is a slot of templates for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: {name} es un hueco de las plantillas de otro tipo ({of}).</translation>
    </message>
    <message>
        <source>Line {line}: {name} is the name of something else already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: {name} ya es el nombre de otra cosa.</translation>
    </message>
    <message>
        <source>Line {line}: {seen} is nothing that a template here can do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: {seen} no es nada que una plantilla pueda hacer aquí.</translation>
    </message>
    <message>
        <source>Line {line}: {seen} stands where {wanted} is needed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Línea {line}: pone {seen} donde hace falta {wanted}.</translation>
    </message>
    <message>
        <source>Lines of the database are not understood ({lines}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay líneas de la base de datos que no se entienden ({lines}).</translation>
    </message>
    <message>
        <source>List no. {newest} waits here. The gateway holds list no. {number}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {newest} espera aquí. La pasarela tiene la lista n.º {number}.</translation>
    </message>
    <message>
        <source>List no. {number} comes in force; files: {told}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} entra en vigor; archivos: {told}.</translation>
    </message>
    <message>
        <source>List no. {number} is in force, good until {until}; read back {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} está en vigor, válida hasta el {until}; releída: {looked}.</translation>
    </message>
    <message>
        <source>List no. {number} is in force: one file was sent, and what is there was read back.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} está en vigor: se ha enviado un archivo y se ha releído lo que hay allí.</translation>
    </message>
    <message>
        <source>List no. {number} is in force: {count} files were sent, and what is there was read back.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} está en vigor: se han enviado {count} archivos y se ha releído lo que hay allí.</translation>
    </message>
    <message>
        <source>List no. {number} is in force; settings or certificates wait here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} está en vigor; aquí esperan ajustes o certificados.</translation>
    </message>
    <message>
        <source>List no. {number} lies at the gateway, but its command failed ({said}): what runs there may use an older one.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La lista n.º {number} está en la pasarela, pero su comando falló ({said}): lo que allí funciona puede estar usando una más antigua.</translation>
    </message>
    <message>
        <source>Lock or erase it from afar</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Bloquéalo o bórralo a distancia</translation>
    </message>
    <message>
        <source>Locking lets go of the CA key. Everybody who gets in still does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Al cerrar se suelta la clave de la CA. Quien entra sigue entrando.</translation>
    </message>
    <message>
        <source>Log out and in, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cierra la sesión, vuelve a entrar y prueba otra vez.</translation>
    </message>
    <message>
        <source>Look at it with --plan, then add --yes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Míralo con --plan y después añade --yes.</translation>
    </message>
    <message>
        <source>Look at its braces, quotes and brackets. The preview shows it at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revisa sus llaves, comillas y paréntesis. La vista previa lo muestra al momento.</translation>
    </message>
    <message>
        <source>Look at the gateway itself which one is its own: ssh-keygen -l -f on its host key file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira en la propia pasarela cuál es la suya: ssh-keygen -l -f con su archivo de clave del host.</translation>
    </message>
    <message>
        <source>Look at the loops and the filters replace and indent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revisa los bucles y los filtros replace e indent.</translation>
    </message>
    <message>
        <source>Look at the plan with hearthkey succession; it says by which day to begin.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira el plan con hearthkey succession; dice para qué día hay que empezar.</translation>
    </message>
    <message>
        <source>Look at them again, then change what still has to be changed. Nothing was done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a mirarlos y cambia después lo que aún haya que cambiar. No se ha hecho nada.</translation>
    </message>
    <message>
        <source>Look for a part with set {known} printed on it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Busca una parte que tenga impreso el juego {known}.</translation>
    </message>
    <message>
        <source>Look for a question it may be asking on another screen; else log out and in, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si está preguntando algo en otra pantalla; si no, cierra la sesión, vuelve a entrar y prueba otra vez.</translation>
    </message>
    <message>
        <source>Look for a question that it may be asking on another screen; else log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Mira si está preguntando algo en otra pantalla; si no, cierra la sesión y vuelve a entrar.</translation>
    </message>
    <message>
        <source>Look for parts that have the same set printed on them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Busca partes que tengan impreso el mismo juego.</translation>
    </message>
    <message>
        <source>Look for the internet address on the router’s own pages, for instance 203.0.113.7, and give that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Busca la dirección de internet en las páginas del propio router, por ejemplo 203.0.113.7, y da esa.</translation>
    </message>
    <message>
        <source>Loop over a list with for, or put its parts together with join; a text is written as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recorre una lista con for, o une sus partes con join; un texto se escribe tal como está.</translation>
    </message>
    <message>
        <source>Loop over the list instead, or put the line between if and endif.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Recorre la lista en su lugar, o pon la línea entre if y endif.</translation>
    </message>
    <message>
        <source>Lost or stolen</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Perdido o robado</translation>
    </message>
    <message>
        <source>Make it at the gateway, put the stick in or mount the share, or name another folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Créala en la pasarela, conecta la memoria USB, monta la carpeta compartida o indica otra carpeta.</translation>
    </message>
    <message>
        <source>Make room there, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz sitio allí y vuelve a hacer el envío.</translation>
    </message>
    <message>
        <source>Make room, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz sitio y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Make the next CA beside this one</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Crear la próxima CA al lado de esta</translation>
    </message>
    <message>
        <source>Make them first: hearthkey deputy make.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hazlas primero: hearthkey deputy make.</translation>
    </message>
    <message>
        <source>Making one key</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Creando una clave</translation>
    </message>
    <message>
        <source>Making the CA key</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Creando la clave de la CA</translation>
    </message>
    <message>
        <source>Making the gateway’s key and certificate</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Creando la clave y el certificado de la pasarela</translation>
    </message>
    <message>
        <source>More than {limit} files were named.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se indicaron más de {limit} archivos.</translation>
    </message>
    <message>
        <source>Most devices and gateways go on. Strict ones may turn it away.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La mayoría de los dispositivos y pasarelas siguen funcionando. Puede que los estrictos lo rechacen.</translation>
    </message>
    <message>
        <source>Most gateways go on. Strict ones may turn it away; a new pass has what is missing.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La mayoría de las pasarelas siguen funcionando. Puede que las estrictas lo rechacen; un pase nuevo lleva lo que falta.</translation>
    </message>
    <message>
        <source>Name a folder: --into DIR.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una carpeta: --into DIR.</translation>
    </message>
    <message>
        <source>Name a free subnet with --tunnel-subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una subred libre con --tunnel-subnet.</translation>
    </message>
    <message>
        <source>Name a free subnet.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Indica una subred libre.</translation>
    </message>
    <message>
        <source>Name an empty or new folder with --into.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una carpeta vacía o nueva con --into.</translation>
    </message>
    <message>
        <source>Name at least one with --home-subnet, for instance 198.51.100.0/24.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica al menos una con --home-subnet, por ejemplo 198.51.100.0/24.</translation>
    </message>
    <message>
        <source>Name at least one, for instance 198.51.100.0/24. The router shows it.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Indica al menos una, por ejemplo 198.51.100.0/24. El router la muestra.</translation>
    </message>
    <message>
        <source>Name fewer subnets and DNS servers, or keep a sealed copy instead of the paper.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica menos subredes y servidores DNS, o guarda una copia sellada en lugar de la copia en papel.</translation>
    </message>
    <message>
        <source>Name it: hearthkey deputy restore FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indícala: hearthkey deputy restore FILE.</translation>
    </message>
    <message>
        <source>Name it; for keep, also --file: hearthkey template keep NAME --file FILE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica su nombre; para keep, también --file: hearthkey template keep NAME --file FILE.</translation>
    </message>
    <message>
        <source>Name one of those, or its interface.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica una de ellas, o su interfaz.</translation>
    </message>
    <message>
        <source>Name the file itself, not a folder or a device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica el archivo mismo, no una carpeta ni un dispositivo.</translation>
    </message>
    <message>
        <source>Name the files of one bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica los archivos de un solo paquete.</translation>
    </message>
    <message>
        <source>Name the folder: at the gateway for ssh, on this computer for a stick or a share.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica la carpeta: en la pasarela para ssh, en este ordenador para una memoria USB o una carpeta compartida.</translation>
    </message>
    <message>
        <source>Name what is to be different, for instance --gateway-host; hearthkey settle --help shows all of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica lo que debe cambiar, por ejemplo --gateway-host; hearthkey settle --help lo muestra todo.</translation>
    </message>
    <message>
        <source>Names are asked of {dns}. The gateway tells devices so at each connection; where it was typed in by hand, the old one stays.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Los nombres se preguntan a {dns}. La pasarela se lo dice a los dispositivos en cada conexión; donde se escribió a mano, se queda el antiguo.</translation>
    </message>
    <message>
        <source>New devices are known as a code in {suffix}; those that are there keep theirs.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Los dispositivos nuevos se identifican con un código en {suffix}; los que ya están conservan el suyo.</translation>
    </message>
    <message>
        <source>New sheets replace the old ones for every copy that is made from then on.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Las hojas nuevas sustituyen a las antiguas para cada copia que se haga desde entonces.</translation>
    </message>
    <message>
        <source>No CA follows another at the moment, so there is no step to take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En este momento ninguna CA sucede a otra, así que no hay ningún paso que dar.</translation>
    </message>
    <message>
        <source>No CA was found in {count} files.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se encontró ninguna CA en {count} archivos.</translation>
    </message>
    <message>
        <source>No certificate of a gateway was recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se reconoció ningún certificado de pasarela.</translation>
    </message>
    <message>
        <source>No code of a part is on this.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aquí no hay ningún código de una parte.</translation>
    </message>
    <message>
        <source>No code was found.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se ha encontrado ningún código.</translation>
    </message>
    <message>
        <source>No device has to be told.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>No hay que decírselo a ningún dispositivo.</translation>
    </message>
    <message>
        <source>No device is called &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ningún dispositivo se llama «{text}».</translation>
    </message>
    <message>
        <source>No device is taken over.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>No se adopta ningún dispositivo.</translation>
    </message>
    <message>
        <source>No device’s certificate was found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se encontró ningún certificado de dispositivo.</translation>
    </message>
    <message>
        <source>No home subnet was given.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se ha indicado ninguna subred de casa.</translation>
    </message>
    <message>
        <source>No list can be read at the gateway. List no. {newest} waits here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>En la pasarela no se puede leer ninguna lista. La lista n.º {newest} espera aquí.</translation>
    </message>
    <message>
        <source>No list that was signed in advance stops everybody; or everybody is stopped already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ninguna lista firmada de antemano bloquea a todos; o todos están ya bloqueados.</translation>
    </message>
    <message>
        <source>No list that was signed in advance stops {title} without letting somebody else back in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ninguna lista firmada de antemano bloquea {title} sin dejar entrar de nuevo a algún otro.</translation>
    </message>
    <message>
        <source>No other device gets in at present.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>De momento no entra ningún otro dispositivo.</translation>
    </message>
    <message>
        <source>No parts were made for a deputy yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aún no se han hecho partes para quien releve.</translation>
    </message>
    <message>
        <source>No pass of {title} has another one that follows it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ningún pase de {title} tiene otro que lo siga.</translation>
    </message>
    <message>
        <source>No renewal of {title} waits in the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En la bandeja no espera ninguna renovación de {title}.</translation>
    </message>
    <message>
        <source>No visit of that day is planned: {person}, {day}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para ese día no hay prevista ninguna visita: {person}, {day}.</translation>
    </message>
    <message>
        <source>Nobody called {text} has a device here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nadie con el nombre {text} tiene aquí un dispositivo.</translation>
    </message>
    <message>
        <source>Nobody can be stopped: no spare stop list lies ready.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>No se puede bloquear a nadie: no hay preparada ninguna lista de bloqueo de reserva.</translation>
    </message>
    <message>
        <source>Nobody could be stopped, as a gateway ignores such a list. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No se podría bloquear a nadie, porque una pasarela no hace caso a una lista así. Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Nobody else is affected.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>No afecta a nadie más.</translation>
    </message>
    <message>
        <source>Nobody else is affected. But on {day} {what} ends, and then nobody gets in.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>No afecta a nadie más. Pero el {day} caduca {what}, y entonces no entra nadie.</translation>
    </message>
    <message>
        <source>Nobody else is affected. The house stays open until {day}, when {what} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>No afecta a nadie más. La casa sigue abierta hasta el {day}, cuando caduca {what}.</translation>
    </message>
    <message>
        <source>Nobody gets in any more, whatever their passes say. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Ya no entra nadie, digan lo que digan los pases. Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Nobody gets in before. Check this computer’s clock, then look again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Antes de esa fecha no entra nadie. Comprueba el reloj de este ordenador y vuelve a examinar.</translation>
    </message>
    <message>
        <source>Nobody gets in: the gateway’s certificate ended on {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>No entra nadie: el certificado de la pasarela caducó el {day}.</translation>
    </message>
    <message>
        <source>Nobody gets in: the revocation list ended on {day}.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>No entra nadie: la lista de revocación caducó el {day}.</translation>
    </message>
    <message>
        <source>Nobody has a key yet. Start with `hearthkey found`.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Nadie tiene aún una clave. Empieza con `hearthkey found`.</translation>
    </message>
    <message>
        <source>Nobody has said yet where the gateway is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aún no se ha indicado dónde está la pasarela.</translation>
    </message>
    <message>
        <source>Nobody here can look at the gateway, so the app cannot know whether it has the files of the last step.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Desde aquí nadie puede mirar la pasarela, así que la aplicación no puede saber si tiene los archivos del último paso.</translation>
    </message>
    <message>
        <source>Nobody is withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No hay nadie retirado.</translation>
    </message>
    <message>
        <source>Nobody is withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>No hay nadie retirado; el número de lista más alto es {number}.</translation>
    </message>
    <message>
        <source>Nobody knows the address of {where} ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nadie conoce la dirección de {where} ({seen}). La pasarela sigue con lo que tenía.</translation>
    </message>
    <message>
        <source>Nobody notices. From now on bundles carry both CAs, and each list is signed by both.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Nadie nota nada. Desde ahora los paquetes llevan ambas CA, y cada lista la firman las dos.</translation>
    </message>
    <message>
        <source>Nobody notices. The old CA cannot vouch for the new one, so the devices go first.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Nadie nota nada. La CA antigua no puede avalar a la nueva, así que van primero los dispositivos.</translation>
    </message>
    <message>
        <source>Nobody said where the papers go.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nadie ha dicho adónde van los papeles.</translation>
    </message>
    <message>
        <source>Nobody said which sealed copy the parts are to open.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nadie ha dicho qué copia sellada deben abrir las partes.</translation>
    </message>
    <message>
        <source>Nobody’s pass has to be renewed by then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para entonces no hay que renovar el pase de nadie.</translation>
    </message>
    <message>
        <source>Not all of the paper could be read. Lines read: {read}. Lines still wanted: {missing}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se pudo leer toda la copia en papel. Líneas leídas: {read}. Líneas que aún faltan: {missing}.</translation>
    </message>
    <message>
        <source>Not in force yet: {whom}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Aún no está en vigor: {whom}.</translation>
    </message>
    <message>
        <source>Not through yet: {titles}. They would stand outside.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aún no han hecho el cambio: {titles}. Se quedarían fuera.</translation>
    </message>
    <message>
        <source>Nothing can be written to {path}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede escribir nada en {path}. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>Nothing can be written to {where} ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede escribir nada en {where} ({seen}). La pasarela sigue con lo que tenía.</translation>
    </message>
    <message>
        <source>Nothing has arrived yet. Is the phone in the same Wi-Fi, and not in the one for guests? A firewall on this computer may be closed too.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Aún no ha llegado nada. ¿Está el móvil en la misma wifi, y no en la de invitados? También puede que el cortafuegos de este ordenador esté cerrado.</translation>
    </message>
    <message>
        <source>Nothing has begun yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Todavía no ha empezado nada.</translation>
    </message>
    <message>
        <source>Nothing has to be withdrawn.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay que retirar nada.</translation>
    </message>
    <message>
        <source>Nothing is delivered to {where} any more.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Ya no se envía nada a {where}.</translation>
    </message>
    <message>
        <source>Nothing of a household’s paper could be read there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Allí no se pudo leer nada de la copia en papel de un hogar.</translation>
    </message>
    <message>
        <source>Nothing on this desktop shows notices ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nada en este escritorio muestra avisos ({seen}).</translation>
    </message>
    <message>
        <source>Nothing to do; hearthkey dates shows what comes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nada que hacer; hearthkey dates muestra lo que viene.</translation>
    </message>
    <message>
        <source>Nothing was changed. Do it again; if it stays, the register needs a look.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se ha cambiado nada. Vuelve a intentarlo; si sigue igual, hay que revisar el registro.</translation>
    </message>
    <message>
        <source>Nothing was delivered to the gateway yet.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Aún no se ha enviado nada a la pasarela.</translation>
    </message>
    <message>
        <source>Nothing was done since.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Desde entonces no se ha hecho nada.</translation>
    </message>
    <message>
        <source>Of {count} codes, {missing} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>De {count} códigos, falta el {missing}.</translation>
    </message>
    <message>
        <source>On a computer without a household, the first page has the way: “From a sealed copy …”.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>En un ordenador sin hogar, la primera página tiene el camino: «De una copia sellada…».</translation>
    </message>
    <message>
        <source>On a computer without a household: hearthkey deputy restore, and the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>En un ordenador sin hogar: hearthkey deputy restore y el archivo.</translation>
    </message>
    <message>
        <source>On line {line} the result grows past {limit} octets, more than any program’s settings.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En la línea {line}, el resultado pasa de {limit} bytes, más que los ajustes de cualquier programa.</translation>
    </message>
    <message>
        <source>On line {line} the template was stopped: it would run too long ({limit} steps are the most).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En la línea {line} se detuvo la plantilla: tardaría demasiado (el máximo es de {limit} pasos).</translation>
    </message>
    <message>
        <source>Once a year ask for each sheet and type its words here: that is the drill, and it needs no other sheet.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una vez al año pide cada hoja y escribe aquí sus palabras: ese es el simulacro, y no hace falta ninguna otra hoja.</translation>
    </message>
    <message>
        <source>Once the new pass was handed over and seen to get in, the old one goes for good. A proof does not say which of the two a device used: look on the device that the new one is chosen.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cuando el pase nuevo se haya entregado en mano y se haya visto entrar, el anterior se retira para siempre. Una prueba no dice cuál de los dos usó un dispositivo: mira en el dispositivo que esté elegido el nuevo.</translation>
    </message>
    <message>
        <source>One bundle that waits has to be made anew: its key is in no copy.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Un paquete en espera hay que crearlo de nuevo: su clave no está en ninguna copia.</translation>
    </message>
    <message>
        <source>One certificate of a gateway was recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se reconoció un certificado de pasarela.</translation>
    </message>
    <message>
        <source>One device is not through yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Un dispositivo aún no ha hecho el cambio.</translation>
    </message>
    <message>
        <source>One device is taken over; its pass goes on as it is, and it waits for you to say whose it is.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Se adopta un dispositivo; su pase sigue como está y espera a que digas de quién es.</translation>
    </message>
    <message>
        <source>One device’s certificate was found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se encontró un certificado de dispositivo.</translation>
    </message>
    <message>
        <source>One entry of the diary came later.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Una entrada del diario es posterior.</translation>
    </message>
    <message>
        <source>One is withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay uno retirado.</translation>
    </message>
    <message>
        <source>One is withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay uno retirado; el número de lista más alto es {number}.</translation>
    </message>
    <message>
        <source>One of the parts was not tried for a year on {day}. Paper fades and gets lost, and nobody notices.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>El {day} una de las partes llevará un año sin probarse. El papel se borra y se pierde, y nadie lo nota.</translation>
    </message>
    <message>
        <source>One of the words is another one than on the paper, or two have changed places.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Una de las palabras no es la del papel, o dos han cambiado de sitio.</translation>
    </message>
    <message>
        <source>One random secret that gateway and devices share, base64.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Un secreto al azar que comparten la pasarela y los dispositivos, base64.</translation>
    </message>
    <message>
        <source>One visit each, at any time until then. The old pass works on meanwhile.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Una visita para cada uno, en cualquier momento hasta entonces. Mientras tanto el pase anterior sigue funcionando.</translation>
    </message>
    <message>
        <source>One visit each. The old pass works on until the gateway’s certificate changes.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Una visita para cada uno. El pase anterior sigue funcionando hasta que cambie el certificado de la pasarela.</translation>
    </message>
    <message>
        <source>Only a practice household may be forgotten.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Solo se puede olvidar un hogar de práctica.</translation>
    </message>
    <message>
        <source>Only the revocation list changes: no. {number} comes in force.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Solo cambia la lista de revocación: la n.º {number} entra en vigor.</translation>
    </message>
    <message>
        <source>Open a new one, with a new code, once this one has ended.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre uno nuevo, con un código nuevo, cuando este haya terminado.</translation>
    </message>
    <message>
        <source>Open a new one; the old code leads nowhere any more.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre uno nuevo; el código antiguo ya no lleva a ninguna parte.</translation>
    </message>
    <message>
        <source>Open it (log in to the desktop, or unlock it in the desktop’s password settings), then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ábrelo (inicia sesión en el escritorio, o ábrelo en los ajustes de contraseñas del escritorio) y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Open it once on a stronger computer with any age tool, and encrypt it again there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ábrelo una vez en un ordenador más potente con cualquier programa de age y cífralo allí de nuevo.</translation>
    </message>
    <message>
        <source>Open it with its passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ábrelo con su frase de contraseña.</translation>
    </message>
    <message>
        <source>Open the app in a desktop with a keyring, or keep the key in a file.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Abre la aplicación en un escritorio con llavero, o guarda la clave en un archivo.</translation>
    </message>
    <message>
        <source>Open the app in that desktop.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Abre la aplicación en ese escritorio.</translation>
    </message>
    <message>
        <source>Open the app in the desktop where the household lives.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Abre la aplicación en el escritorio donde está el hogar.</translation>
    </message>
    <message>
        <source>Opening the CA key (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Abriendo la clave de la CA (es lento a propósito)</translation>
    </message>
    <message>
        <source>Opening the CA key would take more memory or time than this computer can give.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abrir la clave de la CA exigiría más memoria o tiempo del que este ordenador puede dar.</translation>
    </message>
    <message>
        <source>Opening the bundle of {title}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Abriendo el paquete de {title}</translation>
    </message>
    <message>
        <source>Other home subnets</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>Otras subredes de casa</translation>
    </message>
    <message>
        <source>Outside this app: lock or find the device from afar, block its SIM, change the mail password.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Fuera de esta aplicación: bloquea o busca el dispositivo a distancia, haz que bloqueen su SIM, cambia la contraseña del correo.</translation>
    </message>
    <message>
        <source>Part {number} of set {name} was tried, and it is right.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>La parte {number} del juego {name} se probó, y es buena.</translation>
    </message>
    <message>
        <source>Part {number} was given twice, and twice the same is one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La parte {number} se dio dos veces, y dos veces la misma es una.</translation>
    </message>
    <message>
        <source>Parts for a deputy lie in this folder. A copy beside them would let anybody in who finds the folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En esta carpeta hay partes para quien releve. Una copia a su lado dejaría entrar a cualquiera que encontrara la carpeta.</translation>
    </message>
    <message>
        <source>Parts of the bundle belong to different devices or were altered.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hay partes del paquete que son de dispositivos distintos o que se alteraron.</translation>
    </message>
    <message>
        <source>Passes: {passes}; on the revocation list: {withdrawn}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Pases: {passes}; en la lista de revocación: {withdrawn}.</translation>
    </message>
    <message>
        <source>Paste a text, or begin with the starting text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pega un texto, o empieza con el texto inicial.</translation>
    </message>
    <message>
        <source>People run down, time runs across. Each line is a device: it begins when its pass was made and ends when the pass does.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Las personas van hacia abajo; el tiempo, de lado a lado. Cada línea es un dispositivo: empieza cuando se creó su pase y termina cuando el pase caduca.</translation>
    </message>
    <message>
        <source>Picture {frames} belongs to another bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La imagen {frames} es de otro paquete.</translation>
    </message>
    <message>
        <source>Picture {frames} shows another kind of code.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La imagen {frames} muestra otro tipo de código.</translation>
    </message>
    <message>
        <source>Put fewer loops into each other.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon menos bucles unos dentro de otros.</translation>
    </message>
    <message>
        <source>Put it back, or choose another folder, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Devuélvelo a su sitio, o elige otra carpeta, y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Put it into a file that only you can read, and name it with --passphrase-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Guárdala en un archivo que solo tú puedas leer e indícalo con --passphrase-file.</translation>
    </message>
    <message>
        <source>Put the line between if and endif with the test “is defined”, or name another text with the filter default.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon la línea entre if y endif con la condición «is defined», o indica otro texto con el filtro default.</translation>
    </message>
    <message>
        <source>Put the old CA away</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Retirar la CA antigua</translation>
    </message>
    <message>
        <source>Put {mark} into the file name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon {mark} en el nombre de archivo.</translation>
    </message>
    <message>
        <source>Put {wanted} where it ends.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Pon {wanted} donde termina.</translation>
    </message>
    <message>
        <source>Putting secrets into the {place}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Guardando los secretos ({place})</translation>
    </message>
    <message>
        <source>Reaching the gateway ({where})</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Conectando con la pasarela ({where})</translation>
    </message>
    <message>
        <source>Reading back what is there</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Releyendo lo que hay allí</translation>
    </message>
    <message>
        <source>Reading the folder</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Leyendo la carpeta</translation>
    </message>
    <message>
        <source>Red is for what wants you. Where nothing is red, nothing has to be done.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>En rojo está lo que te necesita. Si no hay nada en rojo, no hay nada que hacer.</translation>
    </message>
    <message>
        <source>Rehearsing the {form}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Ensayando: {form}</translation>
    </message>
    <message>
        <source>Renew it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Renuévalo otra vez.</translation>
    </message>
    <message>
        <source>Renew it first, or revoke it if nobody needs it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Renuévalo primero, o revócalo si nadie lo necesita.</translation>
    </message>
    <message>
        <source>Renewing</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>Renewing {title} ({done} of {count})</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Renovando {title} ({done} de {count})</translation>
    </message>
    <message>
        <source>Replace it: hearthkey add PERSON DEVICE --kind KIND --replace.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Sustitúyelo: hearthkey add PERSON DEVICE --kind KIND --replace.</translation>
    </message>
    <message>
        <source>Replace the pass.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Sustituye el pase.</translation>
    </message>
    <message>
        <source>Report it to the police, if it was stolen</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Denúncialo a la policía, si lo han robado</translation>
    </message>
    <message>
        <source>Revocation list {number} was signed, good until {day}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se firmó la lista de revocación n.º {number}, válida hasta el {day}.</translation>
    </message>
    <message>
        <source>Revoke for good cannot be taken back. The device then needs a new pass.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Revocar para siempre no se puede deshacer. El dispositivo necesita después un pase nuevo.</translation>
    </message>
    <message>
        <source>Revoke those passes first, or go on.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revoca antes esos pases, o continúa.</translation>
    </message>
    <message>
        <source>Running the gateway’s command</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Ejecutando el comando de la pasarela</translation>
    </message>
    <message>
        <source>SHA-256 of the CA certificate’s DER, hexadecimal.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>SHA-256 del DER del certificado de la CA, hexadecimal.</translation>
    </message>
    <message>
        <source>Saving</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Guardando</translation>
    </message>
    <message>
        <source>Say anew where the gateway is; its key is then shown to be compared.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Indica de nuevo dónde está la pasarela; entonces se muestra su clave para compararla.</translation>
    </message>
    <message>
        <source>Say for which: --device DEVICE.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica para cuál: --device DEVICE.</translation>
    </message>
    <message>
        <source>Say it once, on the gateway’s page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Indícalo una vez, en la página de la pasarela.</translation>
    </message>
    <message>
        <source>Say it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indícalo una vez: en la ventana, en «Pasarela», o con hearthkey gateway --ssh HOST --folder FOLDER.</translation>
    </message>
    <message>
        <source>Say split (devices reach home only) or full (all their traffic goes through home).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica split (los dispositivos llegan solo a casa) o full (todo su tráfico pasa por casa).</translation>
    </message>
    <message>
        <source>Say that the device has it once it gets in. The key is then erased here and exists on the device alone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Di que el dispositivo ya lo tiene cuando consiga entrar. Entonces la clave se borra aquí y existe solo en el dispositivo.</translation>
    </message>
    <message>
        <source>Say whose and which.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica de quién y cuál.</translation>
    </message>
    <message>
        <source>Scan it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a escanearlo.</translation>
    </message>
    <message>
        <source>Scan it too; the order does not matter.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanéalo también; el orden no importa.</translation>
    </message>
    <message>
        <source>Scan the codes of one bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanea los códigos de un solo paquete.</translation>
    </message>
    <message>
        <source>Scan the codes that the app drew.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanea los códigos que dibujó la aplicación.</translation>
    </message>
    <message>
        <source>Scan the page as PNG or JPEG, or type its lines into a text file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanea la página como PNG o JPEG, o escribe sus líneas en un archivo de texto.</translation>
    </message>
    <message>
        <source>Scan the page once more, or type only these lines into a text file and give it along with the rest.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanea la página otra vez, o escribe solo estas líneas en un archivo de texto y añádelo al resto.</translation>
    </message>
    <message>
        <source>Scan the page with the codes again, straight, at 200 dots to an inch or more; or type the lines.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escanea otra vez la página con los códigos, recta, a 200 puntos por pulgada o más; o escribe las líneas.</translation>
    </message>
    <message>
        <source>Sealed copies have a passphrase of their own, and this is not it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Las copias selladas tienen una frase de contraseña propia, y no es esta.</translation>
    </message>
    <message>
        <source>Sealed copies, sticks and sheets that they keep</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Copias selladas, memorias USB y hojas que conserve</translation>
    </message>
    <message>
        <source>Sealed {done} of {count}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Sellado: {done} de {count}</translation>
    </message>
    <message>
        <source>Secrets are hidden on the screen and written into the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Los secretos se ocultan en la pantalla y se escriben en el archivo.</translation>
    </message>
    <message>
        <source>Secrets in your own templates</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>Secretos en tus plantillas propias</translation>
    </message>
    <message>
        <source>See to that, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ocúpate de eso y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>See to the disk and the folder’s permissions, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revisa el disco y los permisos de la carpeta, y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>See to the disk and the folder’s permissions.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Revisa el disco y los permisos de la carpeta.</translation>
    </message>
    <message>
        <source>See to the permissions of that folder, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revisa los permisos de esa carpeta y vuelve a hacer el envío.</translation>
    </message>
    <message>
        <source>See whether it is switched on and this computer is in its network, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si está encendida y si este ordenador está en su red, y vuelve a hacer el envío.</translation>
    </message>
    <message>
        <source>See whether sftp gets there by itself and can write into that folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si sftp llega allí por sí solo y puede escribir en esa carpeta.</translation>
    </message>
    <message>
        <source>See whether ssh gets there by itself, without a question; a key with a passphrase has to be in the agent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si ssh llega allí por sí solo, sin preguntar nada; una clave con frase de contraseña tiene que estar en el agente de ssh.</translation>
    </message>
    <message>
        <source>See whether the name is spelt right and this computer is in the home network.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si el nombre está bien escrito y si este ordenador está en la red de casa.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, or found the household with --key-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Configura el llavero propio del escritorio, o funda el hogar con --key-file.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, or keep the key in a file.</source>
        <extracomment>Where on the founding page each trouble is said, and in which words where a command stood before.</extracomment>
        <translation>Configura el llavero propio del escritorio, o guarda la clave en un archivo.</translation>
    </message>
    <message>
        <source>Set the desktop’s own keyring, then do it again.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Configura el llavero propio del escritorio y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Settings</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Several certificates have one serial number.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Varios certificados tienen el mismo número de serie.</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Acórtalo.</translation>
    </message>
    <message>
        <source>Sign one: hearthkey lists --sign.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Firma una: hearthkey lists --sign.</translation>
    </message>
    <message>
        <source>Sign the next one: hearthkey lists --sign, and bring it to the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Firma la siguiente con hearthkey lists --sign y llévala a la pasarela.</translation>
    </message>
    <message>
        <source>Somebody takes over</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Alguien toma el relevo</translation>
    </message>
    <message>
        <source>Somebody tried 20 wrong links, the last time from {address}. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Alguien probó 20 enlaces equivocados, el último desde {address}. El vale de recogida está cerrado.</translation>
    </message>
    <message>
        <source>Something happened that nobody thought of ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ha ocurrido algo en lo que nadie había pensado ({seen}).</translation>
    </message>
    <message>
        <source>Something is no plain file.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay algo que no es un archivo normal.</translation>
    </message>
    <message>
        <source>Start it in a desktop, or use the verbs: hearthkey --help.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Iníciala en un escritorio, o usa los comandos: hearthkey --help.</translation>
    </message>
    <message>
        <source>Start it in the desktop where the household lives. For a new household without a keyring: found --key-file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Iníciala en el escritorio donde está el hogar. Para un hogar nuevo sin llavero: found --key-file.</translation>
    </message>
    <message>
        <source>Start it with sh packaging/run.sh, or use the verbs: hearthkey --help.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Iníciala con sh packaging/run.sh, o usa los comandos: hearthkey --help.</translation>
    </message>
    <message>
        <source>Start with hearthkey found, or name another folder with --data.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Empieza con hearthkey found, o indica otra carpeta con --data.</translation>
    </message>
    <message>
        <source>Stop now keeps the device out for the time being; it can be let back in on the same page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Bloquear ahora deja fuera el dispositivo por el momento; se le puede dejar entrar de nuevo en la misma página.</translation>
    </message>
    <message>
        <source>Strict devices and gateways turn all passes away. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Los dispositivos y las pasarelas estrictos rechazan todos los pases. Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Strict devices do not connect. The gateway gets a new certificate at the take-over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Los dispositivos estrictos no se conectan. La pasarela recibe un certificado nuevo al adoptar el hogar.</translation>
    </message>
    <message>
        <source>Strict gateways let nobody in. The take-over signs a new one.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Las pasarelas estrictas no dejan entrar a nadie. Al adoptar el hogar se firma una nueva.</translation>
    </message>
    <message>
        <source>Strict gateways turn it away. The device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Las pasarelas estrictas lo rechazan. El dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>Tags are {known}. A template knows slots, if, for, raw and filters: no calls, no arithmetic, no other files.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Las etiquetas son {known}. Una plantilla conoce huecos, if, for, raw y filtros: ni llamadas, ni cálculos, ni otros archivos.</translation>
    </message>
    <message>
        <source>Take a copy that was made while set {seen} was in use, or parts of set {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Toma una copia hecha mientras valía el juego {seen}, o partes del juego {wanted}.</translation>
    </message>
    <message>
        <source>Take a name from the IANA registry of IKEv2 parameters, for instance ENCR_AES_GCM_16 256.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Toma un nombre del registro de parámetros IKEv2 de la IANA, por ejemplo ENCR_AES_GCM_16 256.</translation>
    </message>
    <message>
        <source>Take a newer copy, or the household’s passphrase.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Toma una copia más nueva, o la frase de contraseña del hogar.</translation>
    </message>
    <message>
        <source>Take a picture of the one square code on the part’s sheet, or type its words.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz una foto del único código cuadrado de la hoja de la parte, o escribe sus palabras.</translation>
    </message>
    <message>
        <source>Take another paper or a sealed copy, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otra copia en papel o una copia sellada, y pregunta a quien te dio esta.</translation>
    </message>
    <message>
        <source>Take another paper, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otra copia en papel, y pregunta a quien te dio esta.</translation>
    </message>
    <message>
        <source>Take it apart into simpler lines.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Divídelo en líneas más sencillas.</translation>
    </message>
    <message>
        <source>Take it from the list that the command ip link shows; it has at most {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tómalo de la lista que muestra el comando ip link; tiene como mucho {limit} caracteres.</translation>
    </message>
    <message>
        <source>Take it out.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Quítalo.</translation>
    </message>
    <message>
        <source>Take the picture again, sharp and with the white margin.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Haz la foto otra vez, nítida y con el margen blanco.</translation>
    </message>
    <message>
        <source>Take the renewal back on the device’s page, as long as the bundle waits in the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Deshaz la renovación en la página del dispositivo, mientras el paquete espere en la bandeja.</translation>
    </message>
    <message>
        <source>Take the seven words that the app offers, or a longer one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa las siete palabras que ofrece la aplicación, o una frase más larga.</translation>
    </message>
    <message>
        <source>Take the seven words that the app offers, or add unrelated words to yours.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa las siete palabras que ofrece la aplicación, o añade a las tuyas otras que no tengan relación.</translation>
    </message>
    <message>
        <source>Taking over would let it back in.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Al adoptar el hogar, volvería a entrar.</translation>
    </message>
    <message>
        <source>Tell the bank</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Avisa al banco</translation>
    </message>
    <message>
        <source>Tell the employer, if it is theirs</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>Avisa a la empresa, si el dispositivo es suyo</translation>
    </message>
    <message>
        <source>That does no harm: devices trust its key, and not the signature on itself.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Eso no hace daño: los dispositivos confían en su clave, y no en su firma sobre sí misma.</translation>
    </message>
    <message>
        <source>The CA cannot vouch for the next one, so that devices would turn away from the gateway. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La CA no puede responder por la próxima, así que los dispositivos se apartarían de la pasarela. No ha cambiado nada.</translation>
    </message>
    <message>
        <source>The CA ended on {end}; nothing that it signed counts after that day.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La CA caducó el {end}; nada de lo que firmó vale después de ese día.</translation>
    </message>
    <message>
        <source>The CA here was certified by another one, and that one is not here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La CA de aquí la certificó otra, y esa otra no está aquí.</translation>
    </message>
    <message>
        <source>The CA is {name}, {type}, and ends on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La CA es {name}, {type}, y caduca el {end}.</translation>
    </message>
    <message>
        <source>The CA key does not belong to the CA certificate.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>La clave de la CA no corresponde al certificado de la CA.</translation>
    </message>
    <message>
        <source>The CA key in the keyring is written in a way that paper cannot carry ({length} characters).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave de la CA que está en el llavero está escrita de un modo que no cabe en papel ({length} caracteres).</translation>
    </message>
    <message>
        <source>The CA key is there, encrypted; the passphrase opens it.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>La clave de la CA está ahí, cifrada; la frase de contraseña la abre.</translation>
    </message>
    <message>
        <source>The CA key on this paper belongs to another household than the rest of it. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave de la CA de esta copia en papel es de otro hogar que el resto. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>The CA key text came out too long for a keyring.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>El texto de la clave de la CA resultó demasiado largo para un llavero.</translation>
    </message>
    <message>
        <source>The CA key that opened belongs to another household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave de la CA que se abrió es de otro hogar.</translation>
    </message>
    <message>
        <source>The CA’s certificate allows no CA below it (path length 0).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA no permite ninguna CA por debajo (longitud de ruta 0).</translation>
    </message>
    <message>
        <source>The CA’s certificate begins on {begin} only.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA no empieza hasta el {begin}.</translation>
    </message>
    <message>
        <source>The CA’s certificate does not allow it to sign certificates ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA no le permite firmar certificados ({name}).</translation>
    </message>
    <message>
        <source>The CA’s certificate does not allow it to sign revocation lists ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA no le permite firmar listas de revocación ({name}).</translation>
    </message>
    <message>
        <source>The CA’s certificate ended on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA caducó el {end}.</translation>
    </message>
    <message>
        <source>The CA’s certificate ends on {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA caduca el {end}.</translation>
    </message>
    <message>
        <source>The CA’s certificate has no key identifier.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA no tiene identificador de clave.</translation>
    </message>
    <message>
        <source>The CA’s certificate is signed with {hash}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la CA está firmado con {hash}.</translation>
    </message>
    <message>
        <source>The CA’s key is a published test key ({name}): anybody can read it in RFC 9500.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave de la CA es una clave de prueba publicada ({name}): cualquiera puede leerla en RFC 9500.</translation>
    </message>
    <message>
        <source>The CA’s key is of a kind that is not used here ({type}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave de la CA es de un tipo que aquí no se usa ({type}).</translation>
    </message>
    <message>
        <source>The CA’s key is too short ({type}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave de la CA es demasiado corta ({type}).</translation>
    </message>
    <message>
        <source>The CA’s private key is not here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave privada de la CA no está aquí.</translation>
    </message>
    <message>
        <source>The CA’s private key is not open.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave privada de la CA no está abierta.</translation>
    </message>
    <message>
        <source>The CA’s private key lies here without a passphrase.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La clave privada de la CA está aquí sin frase de contraseña.</translation>
    </message>
    <message>
        <source>The DNS server {subject} lies outside the home and tunnel subnets. Questions about names at home will leave the house.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>El servidor DNS {subject} está fuera de las subredes de casa y del túnel. Las consultas sobre nombres de casa saldrán de la casa.</translation>
    </message>
    <message>
        <source>The Wi-Fi’s password</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>La contraseña de la wifi</translation>
    </message>
    <message>
        <source>The address {address} could not be used ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La dirección {address} no se pudo usar ({seen}).</translation>
    </message>
    <message>
        <source>The archive holds a file named {member}, which would land outside its folder.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo comprimido contiene un archivo llamado {member}, que iría a parar fuera de su carpeta.</translation>
    </message>
    <message>
        <source>The archive holds {count} files; a bundle’s has a handful.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo comprimido contiene {count} archivos; el de un paquete tiene unos pocos.</translation>
    </message>
    <message>
        <source>The archive holds {member}, which does not belong into a bundle’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo comprimido contiene {member}, que no debe estar en el de un paquete.</translation>
    </message>
    <message>
        <source>The archive holds {names}; bundle file, PKCS#12 and CA certificate belong together.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo comprimido contiene {names}; el archivo del paquete, el PKCS#12 y el certificado de la CA van juntos.</translation>
    </message>
    <message>
        <source>The archive would unpack to {size} octets or more; a bundle’s never does.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo comprimido ocuparía {size} bytes o más al descomprimirlo; el de un paquete nunca llega a tanto.</translation>
    </message>
    <message>
        <source>The built-in client of {subject} is known to sign with RSA. It may refuse this key.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Se sabe que el cliente integrado de {subject} firma con RSA. Puede que rechace esta clave.</translation>
    </message>
    <message>
        <source>The bundle of {title} was picked up by {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} ha recogido el paquete de {title}.</translation>
    </message>
    <message>
        <source>The bundle of {title} was rehearsed and offered for pick-up at {address}, as {forms}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El paquete de {title} se ensayó y se ofreció para recoger en {address}, como {forms}.</translation>
    </message>
    <message>
        <source>The bundle of {title} was rehearsed and written as {form}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>El paquete de {title} se ensayó y se escribió como {form}.</translation>
    </message>
    <message>
        <source>The bundle that waits for {title} is erased here, and its pass never gets in. The pass that it was to follow stays as it is.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>El paquete que espera para {title} se borra aquí, y su pase no entra nunca. El pase al que iba a seguir se queda como está.</translation>
    </message>
    <message>
        <source>The bundle was written in version {version}, which this app does not know.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El paquete se escribió en la versión {version}, que esta aplicación no conoce.</translation>
    </message>
    <message>
        <source>The button under the first sentence is the next thing to do. Where there is none, all is done.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>El botón que hay bajo la primera frase es lo siguiente que toca hacer. Si no hay ninguno, está todo hecho.</translation>
    </message>
    <message>
        <source>The certificate breaks a rule of RFC 5280 ({seen}). A strict gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El certificado incumple una regla de RFC 5280 ({seen}). Una pasarela estricta no lo dejará entrar.</translation>
    </message>
    <message>
        <source>The certificate cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El certificado no se puede leer.</translation>
    </message>
    <message>
        <source>The certificate is about {names}, not about {expected}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El certificado es de {names}, no de {expected}.</translation>
    </message>
    <message>
        <source>The certificate is meant for another use than this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El certificado está pensado para otro uso, no para este.</translation>
    </message>
    <message>
        <source>The certificate that signed the others does not say that it is a CA ({name}).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado que firmó los demás no dice que sea de una CA ({name}).</translation>
    </message>
    <message>
        <source>The certificate was not signed by this household’s CA ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El certificado no lo firmó la CA de este hogar ({seen}). La pasarela no lo dejará entrar.</translation>
    </message>
    <message>
        <source>The choices for the gateway’s files were changed; they take effect with the next delivery.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se cambiaron las opciones para los archivos de la pasarela; se aplican con el próximo envío.</translation>
    </message>
    <message>
        <source>The codes were drawn by a newer app.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los códigos los dibujó una aplicación más nueva.</translation>
    </message>
    <message>
        <source>The command after a delivery has a character in it that cannot be seen, or is over 500 characters: {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El comando posterior a un envío contiene un carácter que no se ve, o pasa de 500 caracteres: {text}.</translation>
    </message>
    <message>
        <source>The connection to {where} ended in the middle ({seen}). The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La conexión con {where} se cortó a la mitad ({seen}). La pasarela tiene un juego completo, el antiguo o el nuevo.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) is gone, as was said here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>La copia de {title} del {day} ({what}) ya no existe, según se indicó aquí.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) is not gone after all.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>La copia de {title} del {day} ({what}) sigue existiendo, después de todo.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) was deleted here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>La copia de {title} del {day} ({what}) se borró aquí.</translation>
    </message>
    <message>
        <source>The copy of {title} from {day} ({what}) was looked for and is not there any more.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>La copia de {title} del {day} ({what}) se buscó y ya no está ahí.</translation>
    </message>
    <message>
        <source>The database names a certificate that is not here, and that has not ended.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La base de datos nombra un certificado que no está aquí y que no ha caducado.</translation>
    </message>
    <message>
        <source>The device’s certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El certificado del dispositivo, PEM (RFC 7468, sección 5).</translation>
    </message>
    <message>
        <source>The device’s identity, a code (ID_FQDN, RFC 7296 section 3.5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>La identidad del dispositivo, un código (ID_FQDN, RFC 7296, sección 3.5).</translation>
    </message>
    <message>
        <source>The device’s private key, not encrypted, PEM (RFC 7468 section 10).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>La clave privada del dispositivo, sin cifrar, PEM (RFC 7468, sección 10).</translation>
    </message>
    <message>
        <source>The device’s secret beside the certificate (RFC 8784), base64.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El secreto del dispositivo además del certificado (RFC 8784), base64.</translation>
    </message>
    <message>
        <source>The diary</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>El diario</translation>
    </message>
    <message>
        <source>The diary does not fit together from entry {number} on.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El diario no concuerda a partir de la entrada {number}.</translation>
    </message>
    <message>
        <source>The disk is full ({path}). Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El disco está lleno ({path}). No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>The disk of {where} is full ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El disco de {where} está lleno ({seen}). La pasarela sigue con lo que tenía.</translation>
    </message>
    <message>
        <source>The double rule is the end of the revocation list: behind it nobody gets in without the next one.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La raya doble es el final de la lista de revocación: más allá no entra nadie sin la siguiente.</translation>
    </message>
    <message>
        <source>The download broke off 3 times. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>La descarga se cortó 3 veces. El vale de recogida está cerrado.</translation>
    </message>
    <message>
        <source>The download to {address} broke off; it can be tried again.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>La descarga hacia {address} se cortó; se puede intentar de nuevo.</translation>
    </message>
    <message>
        <source>The file asks for {rounds} rounds of key stretching, more than any honest file does. It was not opened.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo pide {rounds} rondas de refuerzo de clave, más que cualquier archivo honrado. No se ha abierto.</translation>
    </message>
    <message>
        <source>The file name can grow to {length} characters; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El nombre de archivo puede llegar a {length} caracteres; el máximo es {limit}.</translation>
    </message>
    <message>
        <source>The file was cut off or edited. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo está cortado o se ha editado. Pide otro a quien lo hizo, o vuelve a escribirlo desde la bandeja.</translation>
    </message>
    <message>
        <source>The file was damaged on its way. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo se dañó por el camino. Pide otro a quien lo hizo, o vuelve a escribirlo desde la bandeja.</translation>
    </message>
    <message>
        <source>The file was edited, or made by a newer app. Ask whoever made it for a new one, or write it again from the tray.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El archivo se ha editado, o lo hizo una aplicación más nueva. Pide otro a quien lo hizo, o vuelve a escribirlo desde la bandeja.</translation>
    </message>
    <message>
        <source>The first line names the columns person,device,kind and, if wanted, until and guest; each line has them all.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La primera línea nombra las columnas person,device,kind y, si se quiere, until y guest; cada línea las tiene todas.</translation>
    </message>
    <message>
        <source>The folder &quot;{text}&quot; cannot be written into the web server’s settings.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La carpeta «{text}» no se puede escribir en los ajustes del servidor web.</translation>
    </message>
    <message>
        <source>The folder {where} is not there ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La carpeta {where} no está ({seen}). La pasarela sigue con lo que tenía.</translation>
    </message>
    <message>
        <source>The folder’s name has a character in it that cannot be seen: {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El nombre de la carpeta contiene un carácter que no se ve: {text}.</translation>
    </message>
    <message>
        <source>The gateway</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La pasarela</translation>
    </message>
    <message>
        <source>The gateway decides who gets in, by the list that it holds. A stop counts once the list there says so.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La pasarela decide quién entra, según la lista que tiene. Un bloqueo cuenta cuando lo dice la lista de allí.</translation>
    </message>
    <message>
        <source>The gateway gets a new certificate; until it is delivered, the old one goes on.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>La pasarela recibe un certificado nuevo; hasta que se envíe, sigue valiendo el antiguo.</translation>
    </message>
    <message>
        <source>The gateway gets a new key and certificate with the next delivery.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>La pasarela recibe una clave y un certificado nuevos con el próximo envío.</translation>
    </message>
    <message>
        <source>The gateway goes by it from the next delivery on.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>La pasarela se guía por ello a partir del próximo envío.</translation>
    </message>
    <message>
        <source>The gateway got a certificate of the new CA until {day}. New passes are the new CA’s.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La pasarela recibió un certificado de la CA nueva hasta el {day}. Los pases nuevos son de la CA nueva.</translation>
    </message>
    <message>
        <source>The gateway got a certificate of the old CA again, until {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La pasarela recibió de nuevo un certificado de la CA antigua, hasta el {day}.</translation>
    </message>
    <message>
        <source>The gateway got a new certificate for {host} until {day}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>La pasarela recibió un certificado nuevo para {host} hasta el {day}.</translation>
    </message>
    <message>
        <source>The gateway held a list that this computer did not know. Stopped or revoked by it, and now here too: {subject}.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>La pasarela tenía una lista que este ordenador no conocía. Bloqueado o revocado por ella, y ahora también aquí: {subject}.</translation>
    </message>
    <message>
        <source>The gateway held revocation list {number}, which this computer did not know.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>La pasarela tenía la lista de revocación n.º {number}, que este ordenador no conocía.</translation>
    </message>
    <message>
        <source>The gateway held revocation list {number}, which this computer did not know. Stopped or revoked by it, and now here too: {names}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>La pasarela tenía la lista de revocación n.º {number}, que este ordenador no conocía. Bloqueado o revocado por ella, y ahora también aquí: {names}.</translation>
    </message>
    <message>
        <source>The gateway holds list no. {number}, newer than no. {newest} here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La pasarela tiene la lista n.º {number}, más nueva que la n.º {newest} de aquí.</translation>
    </message>
    <message>
        <source>The gateway holds list no. {number}; list no. {newest} waits here.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>La pasarela tiene la lista n.º {number}; la lista n.º {newest} espera aquí.</translation>
    </message>
    <message>
        <source>The gateway holds list {number}, newer than any that is here. Whom it stops is stopped here now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La pasarela tiene la lista {number}, más nueva que cualquiera de las de aquí. Lo que esa lista bloquea queda ahora bloqueado aquí.</translation>
    </message>
    <message>
        <source>The gateway is out of reach; it held list no. {number} when it was last read.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>No se llega a la pasarela; tenía la lista n.º {number} cuando se leyó por última vez.</translation>
    </message>
    <message>
        <source>The gateway keeps its certificate.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>La pasarela conserva su certificado.</translation>
    </message>
    <message>
        <source>The gateway shows the host key {seen}, not {wanted}. Nothing was sent.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La pasarela muestra la clave del host {seen}, no {wanted}. No se ha enviado nada.</translation>
    </message>
    <message>
        <source>The gateway trusts the old CA and the new one.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La pasarela confía en la CA antigua y en la nueva.</translation>
    </message>
    <message>
        <source>The gateway’s certificate does not carry its name where devices look for it (subject alternative name).</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la pasarela no lleva su nombre donde los dispositivos lo buscan (subject alternative name).</translation>
    </message>
    <message>
        <source>The gateway’s certificate ends on {day}. After that devices turn away from it.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>El certificado de la pasarela caduca el {day}. Después, los dispositivos la rechazan.</translation>
    </message>
    <message>
        <source>The gateway’s certificate is meant for another use.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>El certificado de la pasarela está destinado a otro uso.</translation>
    </message>
    <message>
        <source>The gateway’s certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El certificado de la pasarela, PEM (RFC 7468, sección 5).</translation>
    </message>
    <message>
        <source>The gateway’s clock is {subject} seconds off. Certificates begin and end by it: have it set by the network.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>El reloj de la pasarela se desvía {subject} segundos. Los certificados empiezan y caducan según él: haz que se ajuste por la red.</translation>
    </message>
    <message>
        <source>The gateway’s command ended with {status} and said: {said}. The set of before was put back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El comando de la pasarela terminó con {status} y dijo: {said}. Se ha repuesto el juego de antes.</translation>
    </message>
    <message>
        <source>The gateway’s file name &quot;{text}&quot; holds {mark}, and the gateway is no device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El nombre de archivo de la pasarela «{text}» contiene {mark}, y la pasarela no es un dispositivo.</translation>
    </message>
    <message>
        <source>The gateway’s files go to {where} from now on.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>A partir de ahora los archivos de la pasarela van a {where}.</translation>
    </message>
    <message>
        <source>The gateway’s files need a folder to go to.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los archivos de la pasarela necesitan una carpeta a la que ir.</translation>
    </message>
    <message>
        <source>The gateway’s files with revocation list {number} were written to {where}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Los archivos de la pasarela con la lista de revocación n.º {number} se escribieron en {where}.</translation>
    </message>
    <message>
        <source>The gateway’s key lies in it without a passphrase, because the gateway starts unattended. Carry it on nothing that others read, and wipe it afterwards.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>La clave de la pasarela va dentro sin frase de contraseña, porque la pasarela arranca sin nadie delante. No la lleves en nada que lean otros, y bórrala después.</translation>
    </message>
    <message>
        <source>The gateway’s list</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>La lista de la pasarela</translation>
    </message>
    <message>
        <source>The gateway’s list is of a CA that is not known here. Nothing was changed there, for a list from here could let revoked devices in again and lock newer ones out. Until this is settled, no stop gets there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista de la pasarela es de una CA que aquí no se conoce. Allí no se cambió nada, pues una lista de aquí podría dejar entrar de nuevo a dispositivos revocados y dejar fuera a los más nuevos. Hasta que esto se aclare, ningún bloqueo llega allí.</translation>
    </message>
    <message>
        <source>The gateway’s private key, not encrypted, PEM (RFC 7468 section 10).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>La clave privada de la pasarela, sin cifrar, PEM (RFC 7468, sección 10).</translation>
    </message>
    <message>
        <source>The home subnets leave no private addresses over for the tunnel (RFC 1918).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Las subredes de casa no dejan direcciones privadas libres para el túnel (RFC 1918).</translation>
    </message>
    <message>
        <source>The host key of {where} was never compared, so nothing was sent to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave del host de {where} no se ha comparado nunca, así que no se le ha enviado nada.</translation>
    </message>
    <message>
        <source>The house is reached at {host}, and the gateway gets a new certificate for that name.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>A la casa se llega en {host}, y la pasarela recibe un certificado nuevo para ese nombre.</translation>
    </message>
    <message>
        <source>The house stands; nobody gets in at present. On {day} {what} ends.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>La casa está lista; de momento no entra nadie. El {day} caduca {what}.</translation>
    </message>
    <message>
        <source>The household</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>El hogar</translation>
    </message>
    <message>
        <source>The household is called {name} from now on; certificates keep the name they were made with.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>El hogar se llama {name} a partir de ahora; los certificados conservan el nombre con el que se crearon.</translation>
    </message>
    <message>
        <source>The household is locked.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El hogar está cerrado.</translation>
    </message>
    <message>
        <source>The household’s CA certificate, PEM (RFC 7468 section 5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El certificado de la CA del hogar, PEM (RFC 7468, sección 5).</translation>
    </message>
    <message>
        <source>The household’s key was put on paper, as {place}.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>La clave del hogar se puso en papel, como {place}.</translation>
    </message>
    <message>
        <source>The household’s key was put on paper, at the printer.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>La clave del hogar se puso en papel, en la impresora.</translation>
    </message>
    <message>
        <source>The household’s name, as it stands in its certificates.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El nombre del hogar, tal como está en sus certificados.</translation>
    </message>
    <message>
        <source>The household’s paper was to carry something that is not DER.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>La copia en papel del hogar iba a llevar algo que no es DER.</translation>
    </message>
    <message>
        <source>The household’s passphrase, if they knew it</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>La frase de contraseña del hogar, si la conocía</translation>
    </message>
    <message>
        <source>The household’s settings are too long for one sheet: {lines} lines, and there is room for {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los ajustes del hogar no caben en una hoja: son {lines} líneas, y hay sitio para {limit}.</translation>
    </message>
    <message>
        <source>The household’s settings were changed meanwhile, so what was looked at holds no longer.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los ajustes del hogar han cambiado entretanto, así que ya no vale lo que se había mirado.</translation>
    </message>
    <message>
        <source>The household’s settings were changed: {changed}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Se cambiaron los ajustes del hogar: {changed}.</translation>
    </message>
    <message>
        <source>Making {count} keys</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Creando {count} claves</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; in {file} will not do as a kind’s name.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» en {file} no sirve como nombre de un tipo.</translation>
    </message>
    <message>
        <source>A copy holds everything that this computer knows, so that another one can take over.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una copia contiene todo lo que sabe este ordenador, para que otro pueda tomar el relevo.</translation>
    </message>
    <message>
        <source>A copy of a pass that was revoked or has ended opens nothing any more.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una copia de un pase revocado o caducado ya no abre nada.</translation>
    </message>
    <message>
        <source>A link lives {minutes} minutes at most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un enlace vive como mucho {minutes} minutos.</translation>
    </message>
    <message>
        <source>A name and a number are enough.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Basta con un nombre y un número.</translation>
    </message>
    <message>
        <source>A part of it is still there, just as it was written.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Una parte sigue ahí, tal como se escribió.</translation>
    </message>
    <message>
        <source>A profile cannot say what protects this tunnel ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un perfil no puede expresar lo que protege este túnel ({seen}).</translation>
    </message>
    <message>
        <source>A script cannot say what protects this tunnel ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Un script no puede expresar lo que protege este túnel ({seen}).</translation>
    </message>
    <message>
        <source>A set-up script comes with one PKCS#12 file beside it, and these are {names}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un script de configuración viene con un solo archivo PKCS#12 al lado, y estos son {names}.</translation>
    </message>
    <message>
        <source>A stick may keep what was deleted until something else is written there. That is why the passphrase never travels with the bundle.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una memoria USB puede conservar lo borrado hasta que se escriba otra cosa en ese lugar. Por eso la frase de contraseña nunca viaja con el paquete.</translation>
    </message>
    <message>
        <source>A stick needs no network.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Una memoria USB no necesita red.</translation>
    </message>
    <message>
        <source>A test in the Wi-Fi at home shows little. What counts is the way in from outside: Wi-Fi off, connect, open the link.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Una prueba en la wifi de casa dice poco. Lo que cuenta es entrar desde fuera: apagar la wifi, conectar, abrir el enlace.</translation>
    </message>
    <message>
        <source>Add it; the page device-kind-1.md tells what it means.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Añádelo; la página device-kind-1.md explica qué significa.</translation>
    </message>
    <message>
        <source>Add {text} to forms, or take [[steps.{text}]] out.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Añade {text} a forms, o quita [[steps.{text}]].</translation>
    </message>
    <message>
        <source>An open ring means: nobody knows whether that copy is gone.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Un anillo abierto significa: nadie sabe si esa copia aún existe.</translation>
    </message>
    <message>
        <source>At home: nothing proved yet. {address} is in the network at home, not in the tunnel. Wi-Fi off, connect, then open the link again.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>En casa: aún no hay nada comprobado. {address} está en la red de casa, no en el túnel. Hay que apagar la wifi, conectar y abrir el enlace de nuevo.</translation>
    </message>
    <message>
        <source>Begin with the next CA</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Empezar con la próxima CA</translation>
    </message>
    <message>
        <source>Call the file {name}.toml.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Llama al archivo {name}.toml.</translation>
    </message>
    <message>
        <source>Change it by hand, and deliver that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cámbialo a mano y envía el cambio.</translation>
    </message>
    <message>
        <source>Change it by hand, as it should be now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cámbialo a mano, tal como debe quedar ahora.</translation>
    </message>
    <message>
        <source>Change the settings by hand; the app then says whose device needs a new bundle.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cambia los ajustes a mano; la aplicación dice después qué dispositivos necesitan un paquete nuevo.</translation>
    </message>
    <message>
        <source>Check that this computer is still in the network, then try again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Comprueba que este ordenador siga en la red y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Choose another name, so that nothing of yours is lost.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige otro nombre, para que no se pierda nada tuyo.</translation>
    </message>
    <message>
        <source>Choose from {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige entre {known}.</translation>
    </message>
    <message>
        <source>Choose one of this household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige uno de este hogar.</translation>
    </message>
    <message>
        <source>Choose the file that ends in .sealed.tar.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Elige el archivo que termina en .sealed.tar.</translation>
    </message>
    <message>
        <source>Compare it with what you remember. The newest sealed copy still has what stood there. If somebody else has used this computer, stop what you do not know.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Compáralo con lo que recuerdas. La copia sellada más reciente aún tiene lo que ponía. Si alguien más ha usado este ordenador, bloquea lo que no conozcas.</translation>
    </message>
    <message>
        <source>Comparing what is in it</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Comparando lo que contiene</translation>
    </message>
    <message>
        <source>Copies that left</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Copias que salieron</translation>
    </message>
    <message>
        <source>Copy the name as a phone shows it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Copia el nombre tal como lo muestra un móvil.</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Ctrl+K</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+K</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Ctrl+Mayús+D</translation>
    </message>
    <message>
        <source>Delete it where it is, then say here that it is gone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bórrala donde está y después indica aquí que ya no existe.</translation>
    </message>
    <message>
        <source>Deleting takes the file’s name away. A stick may keep what was in it until something else is written there. If it holds a secret without a passphrase, keep the stick or destroy it.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Al borrar, desaparece el nombre del archivo. Una memoria USB puede conservar lo que contenía hasta que se escriba otra cosa en ese lugar. Si contiene un secreto sin frase de contraseña, guarda la memoria USB o destrúyela.</translation>
    </message>
    <message>
        <source>Deleting takes the file’s name away. A stick may keep what was in it until something else is written there; that stays under the bundle’s passphrase.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Al borrar, desaparece el nombre del archivo. Una memoria USB puede conservar lo que contenía hasta que se escriba otra cosa en ese lugar; eso sigue bajo la frase de contraseña del paquete.</translation>
    </message>
    <message>
        <source>Devices in the tunnel reach {home} and nothing else, and {address} is not in there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Los dispositivos del túnel llegan a {home} y a nada más, y {address} no está ahí.</translation>
    </message>
    <message>
        <source>Every date that ends has a line here before it does: who, by when, how long it takes, and why.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada fecha que vence tiene aquí una línea antes de llegar: quién, hasta cuándo, cuánto se tarda y por qué.</translation>
    </message>
    <message>
        <source>Every file, stick, pick-up and drag by which a bundle left stands here, the newest of each device first.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Cada archivo, memoria USB, recogida o arrastre con el que salió un paquete está aquí, con lo más nuevo de cada dispositivo primero.</translation>
    </message>
    <message>
        <source>F2</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>F2</translation>
    </message>
    <message>
        <source>Files of a copy of {title} were deleted. They do not come back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se borraron archivos de una copia de {title}. No se pueden recuperar.</translation>
    </message>
    <message>
        <source>Forgetting the template {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se recuperó la plantilla {name}, que se había olvidado.</translation>
    </message>
    <message>
        <source>From now on {subject} lives on this computer. If the old one comes back to life, stop using the app there: two of them would contradict each other.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>A partir de ahora, {subject} está en este ordenador. Si el antiguo vuelve a funcionar, deja de usar la aplicación en él: los dos se contradirían.</translation>
    </message>
    <message>
        <source>Give the diary a name of its own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da al diario un nombre propio.</translation>
    </message>
    <message>
        <source>Give {title} its next pass</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Dar a {title} su próximo pase</translation>
    </message>
    <message>
        <source>In use, never proved.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>En uso, nunca comprobado.</translation>
    </message>
    <message>
        <source>In use, proved on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>En uso, comprobado el {day}.</translation>
    </message>
    <message>
        <source>In use, said to work on {day}.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>En uso; el {day} se dijo que funciona.</translation>
    </message>
    <message>
        <source>Install the newer app, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Instala la aplicación más nueva y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>It gets in until {day}, and not a day longer.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Entra hasta el {day}, y ni un día más.</translation>
    </message>
    <message>
        <source>It is a guest’s and ends on {day} by itself.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Es un pase de invitado y caduca el {day} por sí solo.</translation>
    </message>
    <message>
        <source>It is made after every change, and lies in the data folder. Carry one away: a stick at a friend’s house.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Se hace después de cada cambio y está en la carpeta de datos. Llévate una a otro sitio: una memoria USB en casa de alguien de confianza.</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Ya no está ahí.</translation>
    </message>
    <message>
        <source>It is still there, just as it was written.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Sigue ahí, tal como se escribió.</translation>
    </message>
    <message>
        <source>It was handed over on {day}, and nobody has seen it get in from outside.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Se entregó en mano el {day}, y nadie lo ha visto entrar desde fuera.</translation>
    </message>
    <message>
        <source>Join the Wi-Fi at home, then do it again. A stick needs no network.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Conéctate a la wifi de casa y vuelve a intentarlo. Una memoria USB no necesita red.</translation>
    </message>
    <message>
        <source>Join the network at home with this computer, or let the whole traffic go through home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Conecta este ordenador a la red de casa, o haz que todo el tráfico pase por casa.</translation>
    </message>
    <message>
        <source>Keep the one that the device shows.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Conserva el que muestra el dispositivo.</translation>
    </message>
    <message>
        <source>Keep this copy. Compare the two diaries before anything else is signed here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Guarda esta copia. Compara los dos diarios antes de firmar aquí cualquier otra cosa.</translation>
    </message>
    <message>
        <source>Keeping the template {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el guardado de la plantilla {name}.</translation>
    </message>
    <message>
        <source>Leave that address out. If the gateway does hide devices, say so on its page or with hearthkey gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Omite esa dirección. Si la pasarela sí oculta los dispositivos, indícalo en su página o con hearthkey gateway.</translation>
    </message>
    <message>
        <source>Let it back in, or give it a new pass; then prove it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Déjalo entrar de nuevo, o dale un pase nuevo; después compruébalo.</translation>
    </message>
    <message>
        <source>Let its first line be format = &quot;{wanted}&quot;. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Su primera línea debe ser format = {wanted}, con el valor entre comillas rectas. hearthkey kinds --start NAME FILE escribe uno completo, para corregirlo.</translation>
    </message>
    <message>
        <source>Let the device back in, or stop it, and deliver that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Deja entrar de nuevo el dispositivo, o bloquéalo, y envía el cambio.</translation>
    </message>
    <message>
        <source>Let there be at least one and at most {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tiene que haber al menos una entrada y como mucho {limit}.</translation>
    </message>
    <message>
        <source>Let {title} end, or give it more days</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Dejar que {title} caduque, o darle más días</translation>
    </message>
    <message>
        <source>Letting {whom} back in was done again after all, with revocation list {number}.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se dejó entrar de nuevo a {whom}, con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>Letting {whom} back in was taken back with revocation list {number}, before it was in force.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo con la lista de revocación n.º {number} la decisión de dejar entrar de nuevo a {whom}, antes de que entrara en vigor.</translation>
    </message>
    <message>
        <source>Look at it yourself; once it is gone, say so here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Míralo tú; cuando ya no exista, indícalo aquí.</translation>
    </message>
    <message>
        <source>Look at its quotes and brackets there. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira ahí las comillas y los corchetes. hearthkey kinds --start NAME FILE escribe uno completo, para corregirlo.</translation>
    </message>
    <message>
        <source>Look for the gateway’s own address in the network at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Busca la dirección propia de la pasarela en la red de casa.</translation>
    </message>
    <message>
        <source>Look now reads the place again. Only a file that is still exactly what was written can be deleted here.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>«Mirar ahora» vuelve a leer el lugar. Aquí solo se puede borrar un archivo que siga siendo exactamente lo que se escribió.</translation>
    </message>
    <message>
        <source>Look whether it is on, or save the page as PDF and print it elsewhere.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Mira si está encendida, o guarda la página como PDF e imprímela en otro sitio.</translation>
    </message>
    <message>
        <source>Looking at one file</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Examinando un archivo</translation>
    </message>
    <message>
        <source>Looking at {count} files</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Examinando {count} archivos</translation>
    </message>
    <message>
        <source>Make a sealed copy and try it</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Hacer una copia sellada y probarla</translation>
    </message>
    <message>
        <source>Make room, or take another folder or stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Libera espacio, o usa otra carpeta u otra memoria USB.</translation>
    </message>
    <message>
        <source>Name all of them, the device’s certificate before the CA’s, or write them again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indícalos todos, el certificado del dispositivo antes que el de la CA, o vuelve a escribirlos.</translation>
    </message>
    <message>
        <source>Name both, or write them again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica los dos, o vuelve a escribirlos.</translation>
    </message>
    <message>
        <source>Name it once, in its order.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nómbrala una sola vez, en su orden.</translation>
    </message>
    <message>
        <source>Name only those at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica solo las de casa.</translation>
    </message>
    <message>
        <source>Name the gateway’s own address in the network at home.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Indica la dirección propia de la pasarela en la red de casa.</translation>
    </message>
    <message>
        <source>No Wi-Fi is called “{text}”: a name has {limit} octets at most, and nothing that cannot be seen.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ninguna wifi se llama «{text}»: un nombre tiene como mucho {limit} bytes, y nada que no se pueda ver.</translation>
    </message>
    <message>
        <source>No entry of the diary names {text}. It names: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ninguna entrada del diario nombra {text}. Nombra: {known}.</translation>
    </message>
    <message>
        <source>No kind of device is called {name}.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Ningún tipo de dispositivo se llama {name}.</translation>
    </message>
    <message>
        <source>No paper is called {text}; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ningún papel se llama {text}; se puede elegir entre {known}.</translation>
    </message>
    <message>
        <source>No sealed copy can be made yet: what it is closed with has not been drawn.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Todavía no se puede hacer ninguna copia sellada: aún no se ha generado la clave que la cierra.</translation>
    </message>
    <message>
        <source>No sealed copy was made this time. What you did counts all the same.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Esta vez no se ha hecho ninguna copia sellada. Lo que has hecho vale igualmente.</translation>
    </message>
    <message>
        <source>No sealed copy was opened for real since {day}. If this computer dies, that is what is left.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Desde el {day} no se ha abierto de verdad ninguna copia sellada. Si este ordenador se estropea, es lo que queda.</translation>
    </message>
    <message>
        <source>No sheet can be written in {text}; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede escribir ninguna hoja en {text}; se puede elegir entre {known}.</translation>
    </message>
    <message>
        <source>Nobody called {text} signs profiles; there are {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Con el nombre {text} no hay nada que firme perfiles; se puede elegir entre {known}.</translation>
    </message>
    <message>
        <source>Nobody said that the copy {number} is gone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Nadie dijo que la copia {number} ya no exista.</translation>
    </message>
    <message>
        <source>Nothing has arrived yet. Is the device connected, and does the gateway hold its newest files? A firewall on this computer may be closed too.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Aún no ha llegado nada. ¿Está conectado el dispositivo, y tiene la pasarela sus archivos más nuevos? También puede que el cortafuegos de este ordenador esté cerrado.</translation>
    </message>
    <message>
        <source>Nothing is left to do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No queda nada por hacer.</translation>
    </message>
    <message>
        <source>Nothing is offered at {address} ({standing}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se ofrece nada en {address} ({standing}).</translation>
    </message>
    <message>
        <source>Nothing proved yet. {address} is an address at home: either the device is in the Wi-Fi at home, or the gateway hides it behind its own address. If {address} is the gateway’s, say so, and it counts.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Aún no hay nada comprobado. {address} es una dirección de casa: o el dispositivo está en la wifi de casa, o la pasarela lo oculta tras su propia dirección. Si {address} es la de la pasarela, indícalo, y cuenta.</translation>
    </message>
    <message>
        <source>One file went to {where} and was read back. Revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Un archivo se envió a {where} y se releyó. La lista de revocación n.º {number} está en vigor.</translation>
    </message>
    <message>
        <source>Open another.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Abre otro.</translation>
    </message>
    <message>
        <source>Opening the CA key in it (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Abriendo la clave de la CA que contiene (es lento a propósito)</translation>
    </message>
    <message>
        <source>Opening the copy (this is slow on purpose)</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Abriendo la copia (es lento a propósito)</translation>
    </message>
    <message>
        <source>PEM files</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>archivos PEM</translation>
    </message>
    <message>
        <source>Plug the stick in, or make the folder reachable, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Conecta la memoria USB, o haz que se pueda llegar a la carpeta, y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Prove it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Comprobar</translation>
    </message>
    <message>
        <source>Redo: a copy of {whom} is gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: una copia de {whom} ya no existe</translation>
    </message>
    <message>
        <source>Redo: a copy of {whom} is not gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: una copia de {whom} sigue existiendo</translation>
    </message>
    <message>
        <source>Redo: forget the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: olvidar la plantilla {name}</translation>
    </message>
    <message>
        <source>Redo: keep the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: guardar la plantilla {name}</translation>
    </message>
    <message>
        <source>Redo: let {whom} back in</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: dejar entrar de nuevo a {whom}</translation>
    </message>
    <message>
        <source>Redo: stop {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: bloquear {whom}</translation>
    </message>
    <message>
        <source>Redo: the choices for the gateway’s files</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: las opciones para los archivos de la pasarela</translation>
    </message>
    <message>
        <source>Redo: the household’s settings</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: los ajustes del hogar</translation>
    </message>
    <message>
        <source>Redo: the language of {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: el idioma de {name}</translation>
    </message>
    <message>
        <source>Redo: where the gateway is</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: dónde está la pasarela</translation>
    </message>
    <message>
        <source>Redo: whom to call</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Rehacer: a quién llamar</translation>
    </message>
    <message>
        <source>Revoke it to take it back; its key is then erased here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para deshacerlo, revócalo; su clave se borra entonces aquí.</translation>
    </message>
    <message>
        <source>Say it in every language: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dilo en todos los idiomas: {known}.</translation>
    </message>
    <message>
        <source>Sealed copies</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Copias selladas</translation>
    </message>
    <message>
        <source>Search takes several words, with accents or without; an entry is found when all of them occur in it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La búsqueda admite varias palabras, con acentos o sin ellos; se encuentra una entrada cuando aparecen todas en ella.</translation>
    </message>
    <message>
        <source>See the list of copies.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Consulta la lista de copias.</translation>
    </message>
    <message>
        <source>See to its permissions, or take it away.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Revisa sus permisos, o quítalo.</translation>
    </message>
    <message>
        <source>Sending one file</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Enviando un archivo</translation>
    </message>
    <message>
        <source>Sending {count} files</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Enviando {count} archivos</translation>
    </message>
    <message>
        <source>Shorten the device’s name or whom to call.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Acorta el nombre del dispositivo o a quién llamar.</translation>
    </message>
    <message>
        <source>Shorten the steps of this device kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Acorta los pasos de este tipo de dispositivo.</translation>
    </message>
    <message>
        <source>Small triangles under the days stand where something is to be done; F2 lists it.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Bajo los días, unos triángulos pequeños indican dónde hay algo que hacer; F2 lo muestra en una lista.</translation>
    </message>
    <message>
        <source>Somebody or something changed it after it was written, or cut its end off. Who gets in is not touched by that.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Alguien o algo lo cambió después de escribirse, o le cortó el final. Eso no afecta a quién entra.</translation>
    </message>
    <message>
        <source>Somebody tried 20 wrong links, the last time from {address}. The link is closed.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Alguien probó 20 enlaces equivocados, el último desde {address}. El enlace está cerrado.</translation>
    </message>
    <message>
        <source>Something else of that name is there now. It is left alone; look at it yourself.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Ahora hay ahí otra cosa con ese nombre. Se deja como está; mírala tú.</translation>
    </message>
    <message>
        <source>Spare stop lists lie ready. They stop devices until the new CA is made, and not after.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Hay preparadas listas de bloqueo de reserva. Bloquean dispositivos hasta que se cree la CA nueva, y después ya no.</translation>
    </message>
    <message>
        <source>Stop it if it must not get in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Bloquéalo si no debe entrar.</translation>
    </message>
    <message>
        <source>Stop what was stolen first, whichever it was. That takes a minute and needs no succession.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Bloquea primero lo robado, sea lo que sea. Se hace en un minuto y no requiere sucesión.</translation>
    </message>
    <message>
        <source>Take a file of one device kind. hearthkey kinds --start NAME FILE writes one that is whole, to be corrected.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa un archivo de un solo tipo de dispositivo. hearthkey kinds --start NAME FILE escribe uno completo, para corregirlo.</translation>
    </message>
    <message>
        <source>Take another copy, and ask who gave you this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otra copia, y pregunta a quien te dio esta.</translation>
    </message>
    <message>
        <source>Take another copy; the app keeps the last ten, and sticks keep theirs.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otra copia; la aplicación conserva las diez últimas, y las memorias USB conservan las suyas.</translation>
    </message>
    <message>
        <source>Take it out, or use one of {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Quítalo, o usa uno de {known}.</translation>
    </message>
    <message>
        <source>Take one of these, or search for a word with --search.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa uno de estos, o busca una palabra con --search.</translation>
    </message>
    <message>
        <source>Take the steps before that one.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Da antes los pasos anteriores a ese.</translation>
    </message>
    <message>
        <source>Take the steps before that one; hearthkey succession shows them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Da antes los pasos anteriores a ese; hearthkey succession los muestra.</translation>
    </message>
    <message>
        <source>Tell whoever looks after the app what you were doing.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Cuéntale a quien se ocupa de la aplicación qué estabas haciendo.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is gone was said again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se volvió a indicar que una copia de {whom} ya no existe.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is gone was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo la indicación de que una copia de {whom} ya no existe.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is not gone was said again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se volvió a indicar que una copia de {whom} sigue existiendo.</translation>
    </message>
    <message>
        <source>That a copy of {whom} is not gone was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo la indicación de que una copia de {whom} sigue existiendo.</translation>
    </message>
    <message>
        <source>That {title} was seen to get in stays written down. No proof is taken back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Queda anotado que se vio entrar {title}. Ninguna prueba se deshace.</translation>
    </message>
    <message>
        <source>The CA ends on {day}, and everybody’s pass with it. Every device has to be visited before.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>La CA caduca el {day}, y con ella los pases de todos. Antes hay que pasar por cada dispositivo.</translation>
    </message>
    <message>
        <source>The CA ends on {end}. Begin with the next one by {last}, so that nobody’s pass has to end early.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La CA caduca el {end}. Empieza con la próxima a más tardar el {last}, para que el pase de nadie tenga que acabar antes de tiempo.</translation>
    </message>
    <message>
        <source>The CA ends on {end}. The last safe day to begin with the next one was {last}: begin now, and visit the devices whose passes run longest first.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La CA caduca el {end}. El último día seguro para empezar con la próxima era el {last}: empieza ahora, y visita primero los dispositivos cuyos pases duran más.</translation>
    </message>
    <message>
        <source>The CA key in this copy belongs to another household than the rest of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave de la CA de esta copia es de un hogar distinto que el resto de ella.</translation>
    </message>
    <message>
        <source>The PKCS#12 file lacks something. Keys in it: {keys}; certificates: {certificates}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Al archivo PKCS#12 le falta algo. Claves que contiene: {keys}; certificados: {certificates}.</translation>
    </message>
    <message>
        <source>The address says that it came through the tunnel. It does not say which device it was, nor that Wi-Fi was off; whoever holds the device knows that.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La dirección dice que llegó por el túnel. No dice qué dispositivo era, ni que la wifi estuviera apagada; eso lo sabe quien tiene el dispositivo.</translation>
    </message>
    <message>
        <source>The bundle and its passphrase go two different ways: the bundle by a ticket on the home Wi-Fi, on a stick or as a file; the passphrase by voice or on paper.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>El paquete y su frase de contraseña van por dos caminos distintos: el paquete, con un vale de recogida en la wifi de casa, en una memoria USB o como archivo; la frase de contraseña, de viva voz o en papel.</translation>
    </message>
    <message>
        <source>The change of the choices for the gateway’s files was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se rehízo el cambio de las opciones para los archivos de la pasarela.</translation>
    </message>
    <message>
        <source>The change of the choices for the gateway’s files was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el cambio de las opciones para los archivos de la pasarela.</translation>
    </message>
    <message>
        <source>The change of the household’s settings was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se rehízo el cambio de los ajustes del hogar.</translation>
    </message>
    <message>
        <source>The change of the household’s settings was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el cambio de los ajustes del hogar.</translation>
    </message>
    <message>
        <source>The change of where the gateway is was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se rehízo el cambio de dónde está la pasarela.</translation>
    </message>
    <message>
        <source>The change of where the gateway is was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el cambio de dónde está la pasarela.</translation>
    </message>
    <message>
        <source>The change of whom to call was made again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se rehízo el cambio de a quién llamar.</translation>
    </message>
    <message>
        <source>The change of whom to call was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el cambio de a quién llamar.</translation>
    </message>
    <message>
        <source>The choice of a language for {name} was taken back.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo la elección de idioma para {name}.</translation>
    </message>
    <message>
        <source>The copy {number} is gone already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La copia {number} ya no existe.</translation>
    </message>
    <message>
        <source>The copy’s diary ({entries} entries) does not fit this one ({here}): one was cut off, or is another’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El diario de la copia ({entries} entradas) no concuerda con este ({here}): uno está cortado o es de otro hogar.</translation>
    </message>
    <message>
        <source>The diary does not fit together from entry {subject} on: somebody or something changed it after it was written, or cut its end off. Who gets in is not touched by that. The newest sealed copy still has what stood there: bring it back into an empty folder and read its diary.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>El diario no concuerda a partir de la entrada {subject}: alguien o algo lo cambió después de escribirse, o le cortó el final. Eso no afecta a quién entra. La copia sellada más reciente aún tiene lo que ponía: recupérala en una carpeta vacía y lee su diario.</translation>
    </message>
    <message>
        <source>The diary has all of it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El diario lo tiene todo.</translation>
    </message>
    <message>
        <source>The diary has all that was done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En el diario está todo lo que se ha hecho.</translation>
    </message>
    <message>
        <source>The gateway hides devices behind its own address at home, so a request through the tunnel may look like one from home. Name that address, and it counts; without it only what comes from {tunnel} does.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>La pasarela oculta los dispositivos tras su propia dirección en casa, así que una petición por el túnel puede parecer una de casa. Indica esa dirección, y cuenta; sin ella, solo cuenta lo que llega de {tunnel}.</translation>
    </message>
    <message>
        <source>The gateway leaves devices their addresses ({tunnel}), so a request from {address} proves nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La pasarela deja a los dispositivos sus direcciones ({tunnel}), así que una petición desde {address} no demuestra nada.</translation>
    </message>
    <message>
        <source>The gateway was not seen to hold what the last step made for it. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se vio que la pasarela tuviera lo que el último paso hizo para ella. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>The gateway’s next certificate, under the same name</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>El próximo certificado de la pasarela, con el mismo nombre</translation>
    </message>
    <message>
        <source>The household’s shared secret was made anew; one device has to be told it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>El secreto compartido del hogar se creó de nuevo; hay que comunicárselo a un dispositivo.</translation>
    </message>
    <message>
        <source>The household’s shared secret was made anew; {count} devices have to be told it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>El secreto compartido del hogar se creó de nuevo; hay que comunicárselo a {count} dispositivos.</translation>
    </message>
    <message>
        <source>The identity suffix has {length} characters; a code and a dot go before it, so {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El sufijo de identidad tiene {length} caracteres; delante van un código y un punto, así que el máximo es {limit}.</translation>
    </message>
    <message>
        <source>The importer of this kind ({subject}) is known to call the strong container a wrong password. If it says so, use the old one.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Se sabe que, ante el contenedor fuerte, el importador de este tipo ({subject}) dice que la contraseña es incorrecta. Si lo dice, usa el antiguo.</translation>
    </message>
    <message>
        <source>The key of {subject} is erased. The keyring did not answer, so its passphrase will be erased at the next start.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>La clave de {subject} está borrada. El llavero no respondió, así que su frase de contraseña se borrará en el próximo inicio.</translation>
    </message>
    <message>
        <source>The keyring answered with a fault: {seen}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero respondió con un fallo: {seen}. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>The keyring answers but has no CA key of this household. Bring the key text back from a copy; do not found it anew, or every device needs a new bundle.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero responde, pero no tiene ninguna clave de la CA de este hogar. Recupera el texto de la clave de una copia; no lo fundes de nuevo, o cada dispositivo necesitará un paquete nuevo.</translation>
    </message>
    <message>
        <source>The keyring answers, but has no CA key of this household. Who gets in still does; nothing new can be signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero responde, pero no tiene ninguna clave de la CA de este hogar. Quien entra sigue entrando; no se puede firmar nada nuevo.</translation>
    </message>
    <message>
        <source>The keyring does not answer. Nothing is lost: look for a question it may be asking on another screen, or log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero no responde. No se ha perdido nada: mira si está preguntando algo en otra pantalla, o cierra la sesión y vuelve a entrar.</translation>
    </message>
    <message>
        <source>The keyring has lost what the gateway’s key is encrypted under, so its files cannot be made. The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero ha perdido aquello con lo que está cifrada la clave de la pasarela, así que no se pueden crear sus archivos. La pasarela sigue con lo que tenía.</translation>
    </message>
    <message>
        <source>The keyring has no CA key of this household.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero no tiene ninguna clave de la CA de este hogar.</translation>
    </message>
    <message>
        <source>The keyring has no passphrase for the bundle of {title}, so it can never be opened.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero no tiene frase de contraseña para el paquete de {title}, así que no se podrá abrir nunca.</translation>
    </message>
    <message>
        <source>The keyring has no secret for the gateway’s key, so nothing can be rehearsed against it.</source>
        <extracomment>Sentences about the household, its devices and passes.</extracomment>
        <translation>El llavero no tiene secreto para la clave de la pasarela, así que no se puede ensayar nada con ella.</translation>
    </message>
    <message>
        <source>The keyring has not answered for {seconds} seconds. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero no responde desde hace {seconds} segundos. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>The keyring has only one of the two CA keys, so that lists would be signed by half. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero tiene solo una de las dos claves de la CA, así que las listas quedarían firmadas a medias. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>The keyring is closed. Nothing is lost: open it (log in to the desktop, or unlock it).</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero está cerrado. No se ha perdido nada: ábrelo (inicia sesión en el escritorio o abre directamente el llavero).</translation>
    </message>
    <message>
        <source>The keyring is closed. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero está cerrado. No se ha perdido nada y nada ha quedado a medias.</translation>
    </message>
    <message>
        <source>The keyring of this desktop does not answer. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero de este escritorio no responde. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>The keyring of this desktop is locked. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El llavero de este escritorio está cerrado. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>The keyring that is set up here ({backend}) keeps nothing, or keeps it in the clear. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El llavero que está configurado aquí ({backend}) no guarda nada, o lo guarda sin cifrar. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>The kind {subject} is not among the device kinds any more. What is made now is made as for something else; hearthkey kinds shows what there is.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>El tipo {subject} ya no está entre los tipos de dispositivo. Lo que se crea ahora se crea como para otra cosa; hearthkey kinds muestra los que hay.</translation>
    </message>
    <message>
        <source>The language for {name} was chosen again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se rehízo la elección de idioma para {name}.</translation>
    </message>
    <message>
        <source>The letter does not fit on one page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La carta no cabe en una página.</translation>
    </message>
    <message>
        <source>The letter says what works without anybody, until when, and how to take over. It gives nothing away.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La carta dice qué funciona sin nadie, hasta cuándo, y cómo tomar el relevo. No revela nada.</translation>
    </message>
    <message>
        <source>The life line shows its days in order; the yellow tag is today.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La línea de vida muestra sus días en orden; la etiqueta amarilla es hoy.</translation>
    </message>
    <message>
        <source>The link is closed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El enlace está cerrado.</translation>
    </message>
    <message>
        <source>The link is good for ten minutes and opens nothing else. It is closed with the page.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>El enlace vale diez minutos y no abre nada más. Se cierra junto con la página.</translation>
    </message>
    <message>
        <source>The link was closed here.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>El enlace se cerró aquí.</translation>
    </message>
    <message>
        <source>The list and the gateway’s certificate can be made anew here long before they end.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La lista y el certificado de la pasarela se pueden renovar aquí mucho antes de que caduquen.</translation>
    </message>
    <message>
        <source>The list is signed and kept, but could not be written to {subject}. It will be written at the next start; `hearthkey lists --into FOLDER` writes it elsewhere now.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>La lista está firmada y guardada, pero no se pudo escribir en {subject}. Se escribirá la próxima vez que se inicie la aplicación; `hearthkey lists --into FOLDER` la escribe ya en otro lugar.</translation>
    </message>
    <message>
        <source>The lists have a number that cannot be counted on from here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Las listas tienen un número desde el que aquí no se puede seguir contando.</translation>
    </message>
    <message>
        <source>The name or address that devices reach the gateway under; also its identity (RFC 7296 section 3.5).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El nombre o la dirección con que los dispositivos llegan a la pasarela; también su identidad (RFC 7296, sección 3.5).</translation>
    </message>
    <message>
        <source>The names of your Wi-Fis stand readable in the profile. Whoever sees it learns them.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Los nombres de tus redes wifi quedan legibles en el perfil. Quien lo vea los conoce.</translation>
    </message>
    <message>
        <source>The narrowest list that lies ready stops these too: {subject}.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>La lista más ajustada que hay preparada bloquea también: {subject}.</translation>
    </message>
    <message>
        <source>The nearest is {near}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo más parecido es {near}.</translation>
    </message>
    <message>
        <source>The nearest is {near}. The list has them all.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo más parecido es {near}. En la lista está todo.</translation>
    </message>
    <message>
        <source>The new list lies at the gateway, but the command after it ended with {status} and said: {said}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista nueva está en la pasarela, pero el comando posterior terminó con {status} y dijo: {said}.</translation>
    </message>
    <message>
        <source>The new pass of {title} has a number of its own that stays on record, so it is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El nuevo pase de {title} tiene un número propio que queda registrado, así que no se deshace.</translation>
    </message>
    <message>
        <source>The new pass of {title} would end on {new}, before the old one does ({old}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase nuevo de {title} caducaría el {new}, antes que el anterior ({old}).</translation>
    </message>
    <message>
        <source>The newest revocation list, PEM (RFC 7468 section 6).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>La lista de revocación más reciente, PEM (RFC 7468, sección 6).</translation>
    </message>
    <message>
        <source>The next CA</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La próxima CA</translation>
    </message>
    <message>
        <source>The next CA cannot be taken back while somebody gets in by it: {titles}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La próxima CA no se puede deshacer mientras alguien entre gracias a ella: {titles}.</translation>
    </message>
    <message>
        <source>The next CA is beside the old one. Everybody gets in as before.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La próxima CA está al lado de la antigua. Todos entran como antes.</translation>
    </message>
    <message>
        <source>The next CA is there already, beside the old one. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La próxima CA ya está ahí, al lado de la antigua. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>The next CA was made beside the old one, which ends {old}; the new one ends {new}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La próxima CA se creó al lado de la antigua, que caduca el {old}; la nueva caduca el {new}.</translation>
    </message>
    <message>
        <source>The next CA was taken back before anybody needed it, and its key was erased.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La próxima CA se deshizo antes de que nadie la necesitara, y su clave se borró.</translation>
    </message>
    <message>
        <source>The next list has number {number}, and the one who was withdrawn stays so.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>La próxima lista lleva el n.º {number}, y el que estaba retirado sigue retirado.</translation>
    </message>
    <message>
        <source>The next list has number {number}, and the {count} that were withdrawn stay so.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>La próxima lista lleva el n.º {number}, y los {count} que estaban retirados siguen retirados.</translation>
    </message>
    <message>
        <source>The next list has number {number}; nobody is on it.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>La próxima lista lleva el n.º {number}; no hay nadie en ella.</translation>
    </message>
    <message>
        <source>The next pass of {title} was seen to get in, so the device has it already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ya se vio que el pase siguiente de {title} entra, así que el dispositivo ya lo tiene.</translation>
    </message>
    <message>
        <source>The next pass of {title} was taken back before it was handed over, with revocation list {number}. Its key was erased here; the pass before it stays as it is.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>El pase siguiente de {title} se deshizo antes de entregarse en mano, con la lista de revocación n.º {number}. Su clave se borró aquí; el pase anterior se queda como está.</translation>
    </message>
    <message>
        <source>The next pass of {title} was withdrawn and its key erased. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El próximo pase de {title} se retiró y su clave se borró. Eso no se deshace nunca.</translation>
    </message>
    <message>
        <source>The next step stands on this page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>El paso siguiente está en esta página.</translation>
    </message>
    <message>
        <source>The number of that list (CRLNumber, RFC 5280 section 5.2.3).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El número de esa lista (CRLNumber, RFC 5280, sección 5.2.3).</translation>
    </message>
    <message>
        <source>The number of the key exchange method at IANA.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El número del método de intercambio de claves en la IANA.</translation>
    </message>
    <message>
        <source>The old CA cannot go yet: the gateway still shows the certificate that it signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La CA antigua aún no se puede retirar: la pasarela sigue mostrando el certificado que ella firmó.</translation>
    </message>
    <message>
        <source>The old CA ends on {day}. Whoever has no new bundle by then stands outside.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>La CA antigua caduca el {day}. Quien para entonces no tenga un paquete nuevo se queda fuera.</translation>
    </message>
    <message>
        <source>The old CA was put away and its key erased; the new one ends {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La CA antigua se retiró y su clave se borró; la nueva caduca el {day}.</translation>
    </message>
    <message>
        <source>The old CA’s key is erased and its passes end. There is no way back from here.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La clave de la CA antigua se borra y sus pases se acaban. Desde aquí no hay vuelta atrás.</translation>
    </message>
    <message>
        <source>The old CA’s passes end. There is no way back from here.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Los pases de la CA antigua se acaban. Desde aquí no hay vuelta atrás.</translation>
    </message>
    <message>
        <source>The old key is lost.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La clave antigua se ha perdido.</translation>
    </message>
    <message>
        <source>The old key may be in other hands.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La clave antigua puede estar en otras manos.</translation>
    </message>
    <message>
        <source>The old one vouches for it.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>La antigua la avala.</translation>
    </message>
    <message>
        <source>The old one vouches for the new one, so nobody notices while devices change over, one visit at a time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La antigua avala a la nueva, así que nadie nota nada mientras los dispositivos cambian, visita a visita.</translation>
    </message>
    <message>
        <source>The old pass of {title} never gets in again once the gateway holds list {number}. The new one is not affected. This is final.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>El pase anterior de {title} deja de entrar para siempre en cuanto la pasarela tenga la lista n.º {number}. Al nuevo no le afecta. Esto es definitivo.</translation>
    </message>
    <message>
        <source>The old pass of {title} went for good. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase antiguo de {title} se fue para siempre. Eso no se deshace nunca.</translation>
    </message>
    <message>
        <source>The old passes of {title} never get in again once the gateway holds list {number}. The new ones are not affected. This is final.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Los pases anteriores de {title} dejan de entrar para siempre en cuanto la pasarela tenga la lista n.º {number}. A los nuevos no les afecta. Esto es definitivo.</translation>
    </message>
    <message>
        <source>The one other device is not affected.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>El otro dispositivo no se ve afectado.</translation>
    </message>
    <message>
        <source>The page was opened by {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} abrió la página.</translation>
    </message>
    <message>
        <source>The paper of {day} was read whole, and its key opens. The settings have changed since: a new paper saves the work of changing them once more.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>El papel del {day} se leyó entero, y su clave se abre. Los ajustes han cambiado desde entonces: un papel nuevo ahorra el trabajo de volver a cambiarlos.</translation>
    </message>
    <message>
        <source>The paper of {day} was read whole, its key opens, and the settings on it are those of today.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>El papel del {day} se leyó entero, su clave se abre y los ajustes que lleva son los de hoy.</translation>
    </message>
    <message>
        <source>The parts of the window are not installed here. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Las partes de la ventana no están instaladas aquí. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>The parts that were drawn do not bring back what they were made of.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Las partes sacadas no devuelven aquello de lo que se hicieron.</translation>
    </message>
    <message>
        <source>The pass has ended ({seen}). The gateway will not let it in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase ha caducado ({seen}). La pasarela no lo dejará entrar.</translation>
    </message>
    <message>
        <source>The pass of {title} has a number of its own that stays on record, so it is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase de {title} tiene un número propio que queda registrado, así que no se puede deshacer.</translation>
    </message>
    <message>
        <source>The pass of {title} is {state}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase de {title} está {state}.</translation>
    </message>
    <message>
        <source>The pass would have ended already, on {end}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase ya habría caducado, el {end}.</translation>
    </message>
    <message>
        <source>The pass would outlive the CA, which ends on {authority_end}; after that nothing it signed counts.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase duraría más que la CA, que caduca el {authority_end}; después no vale nada de lo que firmó.</translation>
    </message>
    <message>
        <source>The pass {serial}, which was made elsewhere, is that of {title}.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>El pase {serial}, que se creó en otro sitio, es el de {title}.</translation>
    </message>
    <message>
        <source>The passphrase and what it opens were about to stand together, so nothing was shown.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>La frase de contraseña y lo que abre iban a quedar juntos, así que no se ha mostrado nada.</translation>
    </message>
    <message>
        <source>The passphrase does not open it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña no lo abre.</translation>
    </message>
    <message>
        <source>The passphrase does not open the CA’s key.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña no abre la clave de la CA.</translation>
    </message>
    <message>
        <source>The passphrase is empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña está vacía.</translation>
    </message>
    <message>
        <source>The passphrase is longer than {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña tiene más de {limit} caracteres.</translation>
    </message>
    <message>
        <source>The passphrase is needed, and there is no terminal to ask at.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hace falta la frase de contraseña, y no hay ningún terminal donde pedirla.</translation>
    </message>
    <message>
        <source>The passphrase is shorter than {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña tiene menos de {limit} caracteres.</translation>
    </message>
    <message>
        <source>The passphrase would not stand long guessing, and whoever steals the key text can guess without limit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La frase de contraseña no resistiría mucho tiempo, y quien robe el texto de la clave puede probar sin límite.</translation>
    </message>
    <message>
        <source>The picture is too large to be read ({size} octets).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La imagen es demasiado grande para leerla ({size} octetos).</translation>
    </message>
    <message>
        <source>The place cannot be reached now. If it is a stick, plug it in.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Ahora no se puede llegar al lugar. Si es una memoria USB, conéctala.</translation>
    </message>
    <message>
        <source>The plan stands on this page.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>El plan está en esta página.</translation>
    </message>
    <message>
        <source>The printer {name} does not take the page.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La impresora {name} no acepta la página.</translation>
    </message>
    <message>
        <source>The private key cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La clave privada no se puede leer.</translation>
    </message>
    <message>
        <source>The register cannot be read, so nothing can be shown.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El registro no se puede leer, así que no se puede mostrar nada.</translation>
    </message>
    <message>
        <source>The register in {path} cannot be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El registro en {path} no se puede leer ({seen}).</translation>
    </message>
    <message>
        <source>The register in {path} is damaged ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El registro en {path} está dañado ({seen}).</translation>
    </message>
    <message>
        <source>The register is damaged, so nothing can be shown.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El registro está dañado, así que no se puede mostrar nada.</translation>
    </message>
    <message>
        <source>The register is in use. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El registro está en uso. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>The register was written by a newer app (version {have}; this one knows {known}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El registro lo escribió una aplicación más nueva (versión {have}; esta conoce la {known}).</translation>
    </message>
    <message>
        <source>The register was written by a newer app.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>El registro lo escribió una aplicación más nueva.</translation>
    </message>
    <message>
        <source>The revocation list begins after now, by this computer’s clock ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista de revocación empieza más tarde, según el reloj de este ordenador ({seen}).</translation>
    </message>
    <message>
        <source>The revocation list cannot be read.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista de revocación no se puede leer.</translation>
    </message>
    <message>
        <source>The revocation list has no number.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La lista de revocación no tiene número.</translation>
    </message>
    <message>
        <source>The revocation list in force is good until {day}. After that the gateway lets nobody in.</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>La lista de revocación en vigor es válida hasta el {day}. Después la pasarela no deja entrar a nadie.</translation>
    </message>
    <message>
        <source>The revocation list is not this household’s ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista de revocación no es de este hogar ({seen}).</translation>
    </message>
    <message>
        <source>The revocation list is past its date ({seen}). A gateway that checks it lets nobody in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La lista de revocación ha caducado ({seen}). Una pasarela que la compruebe no deja entrar a nadie.</translation>
    </message>
    <message>
        <source>The revocation list was good until {end}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>La lista de revocación era válida hasta el {end}.</translation>
    </message>
    <message>
        <source>The router’s password</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>La contraseña del router</translation>
    </message>
    <message>
        <source>The same days go into the family’s calendar: hearthkey dates --into a folder writes the file.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Los mismos días van al calendario de la familia: hearthkey dates --into con una carpeta escribe el archivo.</translation>
    </message>
    <message>
        <source>The same key under the bundle’s passphrase, PEM (RFC 7468 section 11).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>La misma clave bajo la frase de contraseña del paquete, PEM (RFC 7468, sección 11).</translation>
    </message>
    <message>
        <source>The same stands on the board.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo mismo está en el tablero.</translation>
    </message>
    <message>
        <source>The scale folds: the weeks around today are drawn wide, months narrower, years narrowest. So lengths compare within one fold only; the exact date stands at the right.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La escala está plegada: las semanas en torno a hoy se dibujan anchas, los meses más estrechos y los años aún más. Así que las longitudes solo se comparan dentro de un mismo pliegue; la fecha exacta está a la derecha.</translation>
    </message>
    <message>
        <source>The sealed copy of {day} was opened, and everything in it is whole and fits.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>Se abrió la copia sellada del {day}, y todo lo que contiene está completo y concuerda.</translation>
    </message>
    <message>
        <source>The secret that all devices share</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>El secreto que comparten todos los dispositivos</translation>
    </message>
    <message>
        <source>The sentence under the line says what follows, before anything is made.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La frase bajo la línea dice qué ocurrirá, antes de que se cree nada.</translation>
    </message>
    <message>
        <source>The serial number of the device’s certificate, hexadecimal.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>El número de serie del certificado del dispositivo, hexadecimal.</translation>
    </message>
    <message>
        <source>The seven words open the CA key. Write them down and keep them with the family’s papers.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Las siete palabras abren la clave de la CA. Anótalas y guárdalas con los papeles de la familia.</translation>
    </message>
    <message>
        <source>The sheet</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La hoja</translation>
    </message>
    <message>
        <source>The sheet for {title} does not fit on one page in readable type.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La hoja para {title} no cabe en una página en letra legible.</translation>
    </message>
    <message>
        <source>The sheet shows all of them.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>En la hoja está todo.</translation>
    </message>
    <message>
        <source>The signature on this profile is not this household’s, or the profile was changed after it was signed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La firma de este perfil no es de este hogar, o el perfil se cambió después de firmarlo.</translation>
    </message>
    <message>
        <source>The step was taken back that the gateway trusts both CAs; nothing changed there.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Se deshizo el paso de que la pasarela confíe en ambas CA; allí no cambió nada.</translation>
    </message>
    <message>
        <source>The stop of {whom} was done again after all, with revocation list {number}.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se bloqueó de nuevo {whom}, con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>The stop of {whom} was taken back with revocation list {number}, before it was in force.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Se deshizo el bloqueo de {whom} con la lista de revocación n.º {number}, antes de que entrara en vigor.</translation>
    </message>
    <message>
        <source>The system refused: {seen} {path}. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El sistema lo ha rechazado: {seen} {path}. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>The table of common subnets that came with the app cannot be read ({seen}).</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>La tabla de subredes comunes que venía con la aplicación no se puede leer ({seen}).</translation>
    </message>
    <message>
        <source>The template has {size} octets; {limit} is the most.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La plantilla tiene {size} octetos; el máximo es {limit}.</translation>
    </message>
    <message>
        <source>The template {name} is for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La plantilla {name} es de {of}.</translation>
    </message>
    <message>
        <source>The template {name} was forgotten again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se volvió a olvidar la plantilla {name}.</translation>
    </message>
    <message>
        <source>The template {name} was kept again after all.</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Al final se volvió a guardar la plantilla {name}.</translation>
    </message>
    <message>
        <source>The template {name} was written for the gateway, as {file}.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>La plantilla {name} se escribió para la pasarela, como {file}.</translation>
    </message>
    <message>
        <source>The template {name} was written for {whom}, as {file}.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>La plantilla {name} se escribió para {whom}, como {file}.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, is kept with the household.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>La plantilla {name}, {of}, se conserva con el hogar.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, was forgotten. Files made from it stay where they are.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>La plantilla {name}, {of}, se ha olvidado. Los archivos creados con ella se quedan donde están.</translation>
    </message>
    <message>
        <source>The template {name}, {of}, was written anew.</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>La plantilla {name}, {of}, se escribió de nuevo.</translation>
    </message>
    <message>
        <source>The ticket is closed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El vale de recogida está cerrado.</translation>
    </message>
    <message>
        <source>The ticket of {title} ended; nobody had picked it up.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El vale de recogida de {title} caducó sin que nadie recogiera el paquete.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed after 20 wrong links, the last from {address}.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El vale de recogida de {title} se cerró tras 20 enlaces equivocados, el último desde {address}.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed after 3 downloads that broke off.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El vale de recogida de {title} se cerró tras 3 descargas interrumpidas.</translation>
    </message>
    <message>
        <source>The ticket of {title} was closed before anybody picked it up.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El vale de recogida de {title} se cerró antes de que alguien recogiera el paquete.</translation>
    </message>
    <message>
        <source>The ticket was closed here.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>El vale de recogida se cerró aquí.</translation>
    </message>
    <message>
        <source>The time is over and nobody picked it up. The ticket is closed.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>Se acabó el tiempo y nadie lo recogió. El vale de recogida está cerrado.</translation>
    </message>
    <message>
        <source>The time is over and nothing was proved. The link is closed.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Se acabó el tiempo y no se ha comprobado nada. El enlace está cerrado.</translation>
    </message>
    <message>
        <source>The transforms of the ESP SA, by their names at IANA: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Las transformaciones de la SA de ESP, con sus nombres en la IANA: una lista para recorrer en un bucle.</translation>
    </message>
    <message>
        <source>The transforms of the IKE SA, by their names at IANA: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Las transformaciones de la SA de IKE, con sus nombres en la IANA: una lista para recorrer en un bucle.</translation>
    </message>
    <message>
        <source>The tunnel ({tunnel}) and home ({home}) share no version of IP, so no device could reach anything.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El túnel ({tunnel}) y la red de casa ({home}) no comparten ninguna versión de IP, así que ningún dispositivo llegaría a nada.</translation>
    </message>
    <message>
        <source>The tunnel cannot be &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El túnel no puede ser «{text}».</translation>
    </message>
    <message>
        <source>The tunnel split or full</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>El túnel dividido o completo</translation>
    </message>
    <message>
        <source>The tunnel subnet {text} has no room for devices.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En la subred del túnel {text} no caben dispositivos.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Las dos frases de contraseña son distintas.</translation>
    </message>
    <message>
        <source>The visit on {day} was called off: {person}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Se anuló la visita del {day}: {person}.</translation>
    </message>
    <message>
        <source>The visit to the gateway was ended. The gateway holds one whole set, the old or the new.</source>
        <extracomment>Sentences about the way to the gateway being in the way.</extracomment>
        <translation>La visita a la pasarela se interrumpió. La pasarela tiene un juego entero, el antiguo o el nuevo.</translation>
    </message>
    <message>
        <source>The window did not come to rest in the scene {scene}.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>La ventana no llegó a quedarse quieta en la escena {scene}.</translation>
    </message>
    <message>
        <source>The words of a part are wanted, and nobody can be asked here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hacen falta las palabras de una parte, y aquí no se puede preguntar a nadie.</translation>
    </message>
    <message>
        <source>The yellow ribbon is today. Read down it: each sign on it says how one device stands right now.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La cinta amarilla es hoy. Léela de arriba abajo: cada signo que hay en ella dice cómo está un dispositivo ahora mismo.</translation>
    </message>
    <message>
        <source>The {form} stopped at the step {step}, so it may not leave.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El ensayo ({form}) se detuvo en el paso «{step}», así que no puede salir.</translation>
    </message>
    <message>
        <source>The {what} &quot;{text}&quot; is not a name that Linux gives.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no vale como {what}: no es un nombre que dé Linux.</translation>
    </message>
    <message>
        <source>The {what} &quot;{text}&quot; is not a subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>«{text}» no vale como {what}: no es una subred.</translation>
    </message>
    <message>
        <source>The {what} has no letter or figure in it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo escrito como {what} no contiene ninguna letra ni cifra.</translation>
    </message>
    <message>
        <source>The {what} has {length} characters; DNS ends at 253.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo escrito como {what} tiene {length} caracteres; el límite de DNS es 253.</translation>
    </message>
    <message>
        <source>The {what} has {length} characters; a certificate has room for {limit} (RFC 5280 appendix A.1).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo escrito como {what} tiene {length} caracteres; en un certificado caben {limit} (RFC 5280, apéndice A.1).</translation>
    </message>
    <message>
        <source>The {what} is empty.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay nada escrito como {what}.</translation>
    </message>
    <message>
        <source>The {what} {text} is an address within a subnet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no vale como {what}: es una dirección dentro de una subred.</translation>
    </message>
    <message>
        <source>The {what} {text} is the whole internet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no vale como {what}: es todo internet.</translation>
    </message>
    <message>
        <source>The {whose} broke the trial connection off ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La conexión de ensayo se cortó ({whose}: {seen}).</translation>
    </message>
    <message>
        <source>Then {what} ends, and nobody gets in without the next one.</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>Entonces caduca {what}, y sin reemplazo no entra nadie.</translation>
    </message>
    <message>
        <source>There are more files than are looked at.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay más archivos de los que se examinan.</translation>
    </message>
    <message>
        <source>There are no stop lists that a deputy could take along: none is signed for the household as it is now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay listas de bloqueo que pudiera llevarse quien releva: no hay ninguna firmada para el hogar tal como está ahora.</translation>
    </message>
    <message>
        <source>There are {count} steps, and a sheet takes {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hay {count} pasos, y en una hoja caben {limit}.</translation>
    </message>
    <message>
        <source>There are: {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Hay: {known}.</translation>
    </message>
    <message>
        <source>There is a file at {path} already. It was left as it is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ya hay un archivo en {path}. Se ha dejado como estaba.</translation>
    </message>
    <message>
        <source>There is another CA here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Aquí hay otra CA.</translation>
    </message>
    <message>
        <source>There is no bundle in it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No contiene ningún paquete.</translation>
    </message>
    <message>
        <source>There is no certificate of a CA here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Aquí no hay ningún certificado de una CA.</translation>
    </message>
    <message>
        <source>There is no container &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ningún contenedor «{text}».</translation>
    </message>
    <message>
        <source>There is no copy with the number {number}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna copia con el número {number}.</translation>
    </message>
    <message>
        <source>There is no file {path}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No existe el archivo {path}.</translation>
    </message>
    <message>
        <source>There is no folder or file {path}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna carpeta ni ningún archivo {path}.</translation>
    </message>
    <message>
        <source>There is no household in this data folder yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En esta carpeta de datos aún no hay ningún hogar.</translation>
    </message>
    <message>
        <source>There is no key set &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ningún juego de claves «{text}».</translation>
    </message>
    <message>
        <source>There is no keyring here that can be used. Nothing is lost.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Aquí no hay ningún llavero que se pueda usar. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>There is no keyring here that the app can use. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Aquí no hay ningún llavero que la aplicación pueda usar. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>There is no keyring in use: the secrets of this household lie as files in {subject}. The CA key is encrypted, passphrases of waiting bundles are not. Hand bundles over soon.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>No se usa ningún llavero: los secretos de este hogar están como archivos en {subject}. La clave de la CA está cifrada, las frases de contraseña de los paquetes en espera no. Entrega los paquetes en mano pronto.</translation>
    </message>
    <message>
        <source>There is no keyring that can be used here. Nothing is lost: start the app in the desktop where the household was founded.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Aquí no hay ningún llavero que se pueda usar. No se ha perdido nada: abre la aplicación en el escritorio donde se fundó el hogar.</translation>
    </message>
    <message>
        <source>There is no kind of device &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ningún tipo de dispositivo «{text}».</translation>
    </message>
    <message>
        <source>There is no pass {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ningún pase {text}.</translation>
    </message>
    <message>
        <source>There is no revocation list here.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Aquí no hay ninguna lista de revocación.</translation>
    </message>
    <message>
        <source>There is no revocation list to judge by ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna lista de revocación con la que comprobar ({seen}).</translation>
    </message>
    <message>
        <source>There is no revocation list {number}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>There is no screen to open the window on. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna pantalla donde abrir la ventana. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>There is no template &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay ninguna plantilla «{text}».</translation>
    </message>
    <message>
        <source>There is not enough room at {path}: {free} KB are free, {wanted} KB are wanted. Nothing was written.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay espacio suficiente en {path}: hay {free} KB libres y hacen falta {wanted} KB. No se ha escrito nada.</translation>
    </message>
    <message>
        <source>There is nothing in the template.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La plantilla está vacía.</translation>
    </message>
    <message>
        <source>There is nothing left to do.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No queda nada por hacer.</translation>
    </message>
    <message>
        <source>There is nothing to do again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay nada que rehacer.</translation>
    </message>
    <message>
        <source>There is nothing to let back in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay nada que dejar entrar de nuevo.</translation>
    </message>
    <message>
        <source>There is nothing to take back. What was done before the app was opened is not kept for that.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No hay nada que deshacer. Lo que se hizo antes de abrir la aplicación no se conserva para eso.</translation>
    </message>
    <message>
        <source>These are no whole set of PEM files: {keys} with a key, {certificates} with certificates.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este no es un juego completo de archivos PEM: {keys} con clave, {certificates} con certificados.</translation>
    </message>
    <message>
        <source>These lines were typed with a slip: {slips}. Every other line stays right. Lines still wanted: {missing}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Al escribir estas líneas hubo un desliz: {slips}. Todas las demás siguen bien. Líneas que aún faltan: {missing}.</translation>
    </message>
    <message>
        <source>These parts belong to different sets ({sets}): together they open nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Estas partes son de juegos distintos ({sets}): juntas no abren nada.</translation>
    </message>
    <message>
        <source>They are never shown at the same time.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Nunca se muestran a la vez.</translation>
    </message>
    <message>
        <source>They are not signed.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>No están firmados.</translation>
    </message>
    <message>
        <source>They are signed with the CA key.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Están firmados con la clave de la CA.</translation>
    </message>
    <message>
        <source>They are signed with the gateway’s key.</source>
        <extracomment>What is said of the household&apos;s choices for configuration profiles.</extracomment>
        <translation>Están firmados con la clave de la pasarela.</translation>
    </message>
    <message>
        <source>They work. Stopping one stops all of them; only one is taken over as a pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Funcionan. Bloquear uno los bloquea todos; solo uno se adopta como pase.</translation>
    </message>
    <message>
        <source>This cannot be undone, and there is nobody to ask.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esto no se puede deshacer, y no hay nadie a quien preguntar.</translation>
    </message>
    <message>
        <source>This computer has no address that a phone at home can reach ({known}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este ordenador no tiene ninguna dirección a la que llegue un móvil en casa ({known}).</translation>
    </message>
    <message>
        <source>This computer has no {seen}, so the gateway cannot be reached by ssh. The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>En este ordenador falta {seen}, así que no se puede llegar a la pasarela por ssh. La pasarela sigue con lo que tenía antes.</translation>
    </message>
    <message>
        <source>This computer says it is {clock} UTC, but the last thing was done on {last} UTC.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Según este ordenador son las {clock} UTC, pero lo último se hizo más tarde: {last} UTC.</translation>
    </message>
    <message>
        <source>This computer’s addresses could not be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se pudieron leer las direcciones de este ordenador ({seen}).</translation>
    </message>
    <message>
        <source>This copy opens, but it was not made by this household’s app: its mark is wrong. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia se abre, pero no la hizo la aplicación de este hogar: su marca no es correcta. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>This copy was made by a newer app ({seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia la hizo una aplicación más nueva ({seen}); esta conoce {known}.</translation>
    </message>
    <message>
        <source>This file is larger than a sealed copy can be ({limit} octets).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este archivo es más grande de lo que puede ser una copia sellada ({limit} bytes).</translation>
    </message>
    <message>
        <source>This household cannot be taken over: {why}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este hogar no se puede adoptar: {why}</translation>
    </message>
    <message>
        <source>This household has no secret that all devices share.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este hogar no tiene ningún secreto que compartan todos los dispositivos.</translation>
    </message>
    <message>
        <source>This is a copy of another household ({household}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta es una copia de otro hogar ({household}).</translation>
    </message>
    <message>
        <source>This is a fault of the app. Nothing was lost. Do it again; if it stays, tell the makers these words.</source>
        <extracomment>Sentences about the world being in the way, and about faults of our own.</extracomment>
        <translation>Es un fallo de la aplicación. No se ha perdido nada. Vuelve a intentarlo; si sigue igual, pasa estas palabras a quienes la hacen.</translation>
    </message>
    <message>
        <source>This is a real household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este es un hogar real.</translation>
    </message>
    <message>
        <source>This is no configuration profile that can be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No es un perfil de configuración que se pueda leer ({seen}).</translation>
    </message>
    <message>
        <source>This is not taken back any more: a bundle was handed over since.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esto ya no se puede deshacer: desde entonces se ha entregado en mano un paquete.</translation>
    </message>
    <message>
        <source>This is not taken back any more: it was changed again since.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esto ya no se puede deshacer: desde entonces se ha cambiado otra vez.</translation>
    </message>
    <message>
        <source>This is not taken back any more: the gateway has it since the last delivery.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esto ya no se puede deshacer: la pasarela lo tiene desde el último envío.</translation>
    </message>
    <message>
        <source>This is not taken back any more: the gateway holds revocation list {number}, so it is in force.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esto ya no se puede deshacer: la pasarela tiene la lista de revocación n.º {number}, así que está en vigor.</translation>
    </message>
    <message>
        <source>This is the paper of another household ({household}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este es el papel de otro hogar ({household}).</translation>
    </message>
    <message>
        <source>This is the practice household. Nothing of it is ever delivered to a gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este es el hogar de práctica. Nada de él se envía nunca a una pasarela.</translation>
    </message>
    <message>
        <source>This paper was made by a newer app ({seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia en papel la hizo una aplicación más nueva ({seen}); esta conoce {known}.</translation>
    </message>
    <message>
        <source>This part is whole, but it is of set {seen}, and no such set was made here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta parte está entera, pero es del juego {seen}, y aquí no se hizo ninguno así.</translation>
    </message>
    <message>
        <source>This part is whole, but of the older set {seen}. Copies that are made now go by set {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta parte está entera, pero es del juego anterior {seen}. Las copias que se hacen ahora van con el juego {known}.</translation>
    </message>
    <message>
        <source>This part says that it is part {number} of set {seen}, but it is not the one that was made here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta parte dice ser la parte {number} del juego {seen}, pero no es la que se hizo aquí.</translation>
    </message>
    <message>
        <source>This part was made by a newer app (version {seen}); this one knows {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta parte la hizo una aplicación más nueva (versión {seen}); esta conoce {known}.</translation>
    </message>
    <message>
        <source>This profile has its passphrase inside: whoever has the file gets in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Este perfil lleva dentro su frase de contraseña: quien tenga el archivo entra.</translation>
    </message>
    <message>
        <source>This script was checked, but nobody has run it on Windows yet. Read it first; it undoes what it does with -Undo.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Este script se ha revisado, pero nadie lo ha ejecutado todavía en Windows. Léelo antes; con -Undo deshace lo que hace.</translation>
    </message>
    <message>
        <source>This sealed copy goes by set {wanted}; these parts are of set {seen}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia sellada va con el juego {wanted}; estas partes son del juego {seen}.</translation>
    </message>
    <message>
        <source>This sealed copy is not whole: {part} is damaged or missing. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia sellada no está completa: {part} está dañado o falta. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>This sealed copy was made before there were parts, so parts do not open it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Esta copia sellada se hizo antes de que hubiera partes, así que las partes no la abren.</translation>
    </message>
    <message>
        <source>This window only looks.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Esta ventana solo sirve para mirar.</translation>
    </message>
    <message>
        <source>Three sheets, given to three people. Any two together open a sealed copy; one alone opens nothing.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Tres hojas, dadas a tres personas. Dos cualesquiera juntas abren una copia sellada; una sola no abre nada.</translation>
    </message>
    <message>
        <source>Through the tunnel devices reach {home}.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Por el túnel los dispositivos llegan a {home}.</translation>
    </message>
    <message>
        <source>Throw it away and give the device a new pass.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Tíralo y dale al dispositivo un pase nuevo.</translation>
    </message>
    <message>
        <source>To let it in again: hearthkey let-in. For good: hearthkey revoke.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Para dejarlo entrar de nuevo: hearthkey let-in. Para revocarlo para siempre: hearthkey revoke.</translation>
    </message>
    <message>
        <source>Try the command at the gateway, then deliver again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prueba el comando en la pasarela y luego haz el envío otra vez.</translation>
    </message>
    <message>
        <source>Try the command at the gateway, then deliver again. Until then whoever was stopped may still get in.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Prueba el comando en la pasarela y luego haz el envío otra vez. Hasta entonces, lo que se bloqueó quizá aún pueda entrar.</translation>
    </message>
    <message>
        <source>Try {title} on mobile data</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Probar {title} con datos móviles</translation>
    </message>
    <message>
        <source>Trying one opens it as a new computer would. Do it once or twice a year.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Al probar una, se abre como lo haría un ordenador nuevo. Hazlo una o dos veces al año.</translation>
    </message>
    <message>
        <source>Turn it on first: hearthkey secrets --household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Actívalo primero: hearthkey secrets --household.</translation>
    </message>
    <message>
        <source>Type both again. Nothing was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe las dos otra vez. No se ha creado nada.</translation>
    </message>
    <message>
        <source>Type it anew.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escríbelo de nuevo.</translation>
    </message>
    <message>
        <source>Type over what is to be different. What follows, and for whom, is said before anything is changed.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Escribe encima de lo que deba cambiar. Antes de cambiar nada se dice qué ocurrirá y a quién afecta.</translation>
    </message>
    <message>
        <source>Type the line anew rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe la línea de nuevo en vez de pegarla.</translation>
    </message>
    <message>
        <source>Type the name anew rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe el nombre de nuevo en vez de pegarlo.</translation>
    </message>
    <message>
        <source>Type the one that was chosen when the CA was made.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe la que se eligió al crear la CA.</translation>
    </message>
    <message>
        <source>Type the passphrase that locks it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Escribe la frase de contraseña con la que se cerró.</translation>
    </message>
    <message>
        <source>Type the text anew on one line rather than pasting it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe el texto de nuevo en una sola línea, en vez de pegarlo.</translation>
    </message>
    <message>
        <source>Type two letters of the person or the device, then Enter. The device is stopped.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Escribe dos letras de la persona o del dispositivo y luego Intro. El dispositivo queda bloqueado.</translation>
    </message>
    <message>
        <source>Undo: a copy of {whom} is gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: una copia de {whom} ya no existe</translation>
    </message>
    <message>
        <source>Undo: a copy of {whom} is not gone</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: una copia de {whom} sigue existiendo</translation>
    </message>
    <message>
        <source>Undo: a pass for {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: un pase para {whom}</translation>
    </message>
    <message>
        <source>Undo: a proof of {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: una prueba de {whom}</translation>
    </message>
    <message>
        <source>Undo: a step to the next CA</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: un paso hacia la próxima CA</translation>
    </message>
    <message>
        <source>Undo: delete a copy of {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: borrar una copia de {whom}</translation>
    </message>
    <message>
        <source>Undo: forget the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: olvidar la plantilla {name}</translation>
    </message>
    <message>
        <source>Undo: hand over {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: entregar en mano {whom}</translation>
    </message>
    <message>
        <source>Undo: keep the template {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: guardar la plantilla {name}</translation>
    </message>
    <message>
        <source>Undo: let the old pass of {whom} go</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: retirar el pase antiguo de {whom}</translation>
    </message>
    <message>
        <source>Undo: let {whom} back in</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: dejar entrar de nuevo a {whom}</translation>
    </message>
    <message>
        <source>Undo: renew {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: renovar {whom}</translation>
    </message>
    <message>
        <source>Undo: replace a device by {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: reemplazar un dispositivo por {whom}</translation>
    </message>
    <message>
        <source>Undo: revoke {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: revocar {whom}</translation>
    </message>
    <message>
        <source>Undo: stop {whom}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: bloquear {whom}</translation>
    </message>
    <message>
        <source>Undo: take the renewal of {whom} back</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: anular la renovación de {whom}</translation>
    </message>
    <message>
        <source>Undo: the choices for the gateway’s files</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: las opciones para los archivos de la pasarela</translation>
    </message>
    <message>
        <source>Undo: the household’s settings</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: los ajustes del hogar</translation>
    </message>
    <message>
        <source>Undo: the language of {name}</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: el idioma de {name}</translation>
    </message>
    <message>
        <source>Undo: where the gateway is</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: dónde está la pasarela</translation>
    </message>
    <message>
        <source>Undo: whom to call</source>
        <extracomment>What is said of taking a change back, and of doing it again.</extracomment>
        <translation>Deshacer: a quién llamar</translation>
    </message>
    <message>
        <source>Unlock before that day; the list is signed anew and delivered. An ending certificate has to be renewed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre el hogar antes de ese día; la lista se firma de nuevo y se envía. Un certificado que caduca hay que renovarlo.</translation>
    </message>
    <message>
        <source>Unlock it in the desktop’s password settings, or log out and in.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Ábrelo en los ajustes de contraseñas del escritorio, o cierra la sesión y vuelve a entrar.</translation>
    </message>
    <message>
        <source>Unlock the household once, then do it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre el hogar una vez y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Unlock the household, or bring the keys back from a sealed copy.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre el hogar, o recupera las claves de una copia sellada.</translation>
    </message>
    <message>
        <source>Unlock the household, so that its list is signed anew</source>
        <extracomment>What a day in the calendar, and a line of the day list, says.</extracomment>
        <translation>Abrir el hogar, para que su lista se firme de nuevo</translation>
    </message>
    <message>
        <source>Unlock with the passphrase and stop it then, or stop everybody at once for now.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre con la frase de contraseña y bloquéalo entonces, o bloquea por ahora todos a la vez.</translation>
    </message>
    <message>
        <source>Unlock with the passphrase and stop them then.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre con la frase de contraseña y bloquéalos entonces.</translation>
    </message>
    <message>
        <source>Unlock with the passphrase; the next list is signed above it and delivered.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Abre con la frase de contraseña; la siguiente lista se firma con un número más alto y se envía.</translation>
    </message>
    <message>
        <source>Until when that list is good: its nextUpdate, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Hasta cuándo es válida esa lista: su nextUpdate, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Arriba, Abajo</translation>
    </message>
    <message>
        <source>Use 1 to {limit} characters.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa de 1 a {limit} caracteres.</translation>
    </message>
    <message>
        <source>Use a device’s pass for a device and the gateway’s for the gateway.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa el pase de un dispositivo para un dispositivo y el de la pasarela para la pasarela.</translation>
    </message>
    <message>
        <source>Use a newer app.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa una aplicación más nueva.</translation>
    </message>
    <message>
        <source>Use a newer hearthkey, or write the file anew for this one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa un hearthkey más nuevo, o escribe de nuevo el archivo para este.</translation>
    </message>
    <message>
        <source>Use a picture of the code alone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa una imagen donde solo esté el código.</translation>
    </message>
    <message>
        <source>Use another disk or stick.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otro disco u otra memoria USB.</translation>
    </message>
    <message>
        <source>Use another slot, or make this a template for the {of}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa otro hueco, o haz de esta una plantilla de {of}.</translation>
    </message>
    <message>
        <source>Use letters without accents, figures, hyphens, underscores and dots, beginning with a letter or figure.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa letras sin acentos, cifras, guiones, guiones bajos y puntos, y empieza por una letra o una cifra.</translation>
    </message>
    <message>
        <source>Use letters without accents, figures, signs and spaces.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa letras sin acentos, cifras, signos y espacios.</translation>
    </message>
    <message>
        <source>Use one of the key sets compact, broad or suite-384, which offer nothing of the kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa uno de los juegos de claves compact, broad o suite-384, que no ofrecen nada parecido.</translation>
    </message>
    <message>
        <source>Use small letters without accents, figures, and hyphens between them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa letras minúsculas sin acentos, cifras y guiones entre ellas.</translation>
    </message>
    <message>
        <source>Use the list that hearthkey lists --into writes.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa la lista que escribe hearthkey lists --into.</translation>
    </message>
    <message>
        <source>Use the newer app.</source>
        <extracomment>What stands between the householder and the CA key: what it means, what works meanwhile, the way on.</extracomment>
        <translation>Usa la aplicación más nueva.</translation>
    </message>
    <message>
        <source>Use the newer app. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa la aplicación más nueva. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>Use these filters on tunnel_subnet, or on what a loop over home_subnets gives.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa estos filtros con tunnel_subnet, o con lo que da un bucle sobre home_subnets.</translation>
    </message>
    <message>
        <source>Use up to {limit} letters and figures, for instance conf.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Usa hasta {limit} letras y cifras, por ejemplo conf.</translation>
    </message>
    <message>
        <source>Waiting.</source>
        <extracomment>What a device&apos;s page says and offers, for every state a pass can be in.</extracomment>
        <translation>En espera.</translation>
    </message>
    <message>
        <source>Was the app open and unlocked, or were the words with the computer? Then whoever has it can make a pass for anybody. Begin today, and put the old CA away even if some devices are not through: they stand outside until they have their new bundle.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>¿Estaba la aplicación abierta y el hogar también, o estaban las palabras junto al ordenador? Entonces quien lo tenga puede crear un pase para cualquiera. Empieza hoy, y retira la CA antigua aunque algunos dispositivos no hayan hecho el cambio: se quedan fuera hasta que tengan su paquete nuevo.</translation>
    </message>
    <message>
        <source>Was the computer off or locked, and are the words written nowhere near it? Then they guard the key, and guessing seven of them takes longer than the CA lives. Take the succession in the coming weeks, without haste.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>¿Estaba el ordenador apagado o con la sesión bloqueada, y las palabras no están escritas en ningún sitio cercano? Entonces ellas protegen la clave, y adivinar siete lleva más tiempo del que vive la CA. Haz la sucesión en las próximas semanas, sin prisa.</translation>
    </message>
    <message>
        <source>Was the computer stolen, or are the words lost? Say so at the top; the page says what to do first.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>¿Te robaron el ordenador, o se han perdido las palabras? Indícalo arriba; la página dice qué hacer primero.</translation>
    </message>
    <message>
        <source>What begins on line {line} with {seen} does not end.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que empieza en la línea {line} con {seen} no termina.</translation>
    </message>
    <message>
        <source>What comes from {tunnel} counts, and from the gateway’s own address {inside}. Which device in the tunnel it was, or the gateway’s own computer, that address cannot say.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Cuenta lo que llega de {tunnel}, y de la dirección propia de la pasarela, {inside}. Qué dispositivo del túnel era, o si era el propio ordenador de la pasarela, esa dirección no lo puede decir.</translation>
    </message>
    <message>
        <source>What comes from {tunnel} counts. From the network at home it proves nothing.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Cuenta lo que llega de {tunnel}. Desde la red de casa no demuestra nada.</translation>
    </message>
    <message>
        <source>What devices reach at home, each in prefix notation: a list to loop over.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>A qué llegan los dispositivos en casa, cada subred en notación de prefijo: una lista para recorrer en un bucle.</translation>
    </message>
    <message>
        <source>What differs reads the gateway and changes nothing there.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>«Ver las diferencias» lee la pasarela y no modifica nada en ella.</translation>
    </message>
    <message>
        <source>What follows in it was not read.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Lo que sigue en él no se ha leído.</translation>
    </message>
    <message>
        <source>What is left is to put the old CA away, and that cannot be taken back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Solo queda retirar la CA antigua, y eso no se puede deshacer.</translation>
    </message>
    <message>
        <source>What is made waits in the tray. Nobody has it until you hand it over.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Lo que se crea espera en la bandeja. Nadie lo tiene hasta que lo entregas en mano.</translation>
    </message>
    <message>
        <source>What is not at home keeps going its own way.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Lo que no está en casa sigue su propio camino.</translation>
    </message>
    <message>
        <source>What is signed now would be refused. Set the clock, then do it again. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que se firme ahora sería rechazado. Pon el reloj en hora y vuelve a intentarlo. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Lo que hay que hacer</translation>
    </message>
    <message>
        <source>What is written into bundles stands on the page of the household.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Lo que se escribe en los paquetes está en la página del hogar.</translation>
    </message>
    <message>
        <source>What it signs can be forged with enough effort. Found a new household; each device needs a new pass.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Lo que firma se puede falsificar con bastante esfuerzo. Funda un hogar nuevo; cada dispositivo necesita un pase nuevo.</translation>
    </message>
    <message>
        <source>What lies at {place} is not what was written there, so nothing was deleted.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que hay en {place} no es lo que se escribió allí, así que no se ha borrado nada.</translation>
    </message>
    <message>
        <source>What stands in red has come due. The rest can wait, in the order in which it comes.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Lo que está en rojo toca ya. Lo demás puede esperar, en el orden en que llega.</translation>
    </message>
    <message>
        <source>What stands on this paper is whole, but it is not what a household’s paper says.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que pone en este papel está completo, pero no es lo que dice la copia en papel de un hogar.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known since {since}. It held list no. {number} when it was read {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>Ya no se sabe qué tiene la pasarela (desde: {since}). Al leerla por última vez ({looked}) tenía la lista n.º {number}.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known: nobody has said where its files go.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>No se sabe qué tiene la pasarela: aún no se ha dicho adónde van sus archivos.</translation>
    </message>
    <message>
        <source>What the gateway holds is not known; it has not been reached since {since}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>No se sabe qué tiene la pasarela; no se llega a ella (desde: {since}).</translation>
    </message>
    <message>
        <source>What the identity of every device ends in.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>En qué termina la identidad de cada dispositivo.</translation>
    </message>
    <message>
        <source>What the keyring keeps as CA key is damaged.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que el llavero guarda como clave de la CA está dañado.</translation>
    </message>
    <message>
        <source>What the parts open in this copy is damaged. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que las partes abren en esta copia está dañado. No ha cambiado nada.</translation>
    </message>
    <message>
        <source>What they say is left out. Compare them before you take over.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Lo que dicen se deja fuera. Compáralas antes de adoptar el hogar.</translation>
    </message>
    <message>
        <source>What this CA signs would be turned away ({seen}). Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que firme esta CA sería rechazado ({seen}). No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>What this script says cannot be read back.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que dice este script no se puede releer.</translation>
    </message>
    <message>
        <source>What waits in the tray takes it along when it leaves; a file that was saved of it before has to be saved again.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>Lo que espera en la bandeja se lo lleva al salir; un archivo que se guardó antes hay que guardarlo de nuevo.</translation>
    </message>
    <message>
        <source>What was handed over cannot be taken back, only stopped or revoked.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que se entregó en mano no se puede deshacer, solo bloquear o revocar.</translation>
    </message>
    <message>
        <source>What was only told is kept as told. No proof can be taken back.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Lo que solo se contó se guarda como contado. Ninguna prueba se puede deshacer.</translation>
    </message>
    <message>
        <source>What was read back from the gateway is not what was sent ({name}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que se releyó de la pasarela no es lo que se envió ({name}). La pasarela sigue con lo que tenía antes.</translation>
    </message>
    <message>
        <source>What was signed for the next CA stays on record, so the step is not undone here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que se firmó para la próxima CA queda registrado, así que el paso no se deshace aquí.</translation>
    </message>
    <message>
        <source>What was written to {path} did not come back the same. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Lo que se escribió en {path} no volvió igual. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>What {subject} writes holds the device’s private key without a passphrase. Whoever gets hold of the file gets in as that device. Carry it by hand and delete it afterwards, or use the slot device_key_sealed, which is under the bundle’s passphrase.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Lo que escribe {subject} contiene la clave privada del dispositivo sin frase de contraseña. Quien consiga el archivo entra como ese dispositivo. Llévalo en mano y bórralo después, o usa el hueco device_key_sealed, que va bajo la frase de contraseña del paquete.</translation>
    </message>
    <message>
        <source>When every device is through, put it away.</source>
        <extracomment>Sentences of the core in the language of the desktop, with ways on that the window has.</extracomment>
        <translation>Cuando todos los dispositivos hayan hecho el cambio, retírala.</translation>
    </message>
    <message>
        <source>When every device is through, say so with hearthkey succession finish.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Cuando todos los dispositivos hayan hecho el cambio, indícalo con hearthkey succession finish.</translation>
    </message>
    <message>
        <source>When the CA ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Cuándo caduca la CA, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the gateway’s certificate ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Cuándo caduca el certificado de la pasarela, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the pass begins, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Cuándo empieza el pase, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>When the pass ends, UTC (RFC 3339).</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>Cuándo caduca el pase, UTC (RFC 3339).</translation>
    </message>
    <message>
        <source>Where devices get their inner addresses from, in prefix notation.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>De dónde reciben los dispositivos sus direcciones interiores, en notación de prefijo.</translation>
    </message>
    <message>
        <source>Where it is now cannot be looked at from here.</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>Dónde está ahora no se puede mirar desde aquí.</translation>
    </message>
    <message>
        <source>Where the copy {number} is now cannot be looked at from here.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Dónde está ahora la copia {number} no se puede mirar desde aquí.</translation>
    </message>
    <message>
        <source>Whoever copies the file can make passes for the household. After the take-over, delete it and empty the places where copies of the folder lie.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Quien copie el archivo puede hacer pases para el hogar. Después de adoptarlo, borra el archivo y vacía los lugares donde haya copias de la carpeta.</translation>
    </message>
    <message>
        <source>Whoever copies the file gets in as that device. Delete it once the device has it.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Quien copie el archivo entra como si fuera ese dispositivo. Bórralo en cuanto el dispositivo lo tenga.</translation>
    </message>
    <message>
        <source>Whoever has it gets in, and this app can neither show nor stop it until the file is added. Its number is never used again.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Quien lo tenga entra, y esta aplicación no puede mostrarlo ni bloquearlo hasta que se añada el archivo. Su número no se vuelve a usar nunca.</translation>
    </message>
    <message>
        <source>Whoever opens the link from inside the tunnel reads “You are in”, and the proof is written down with its time and address.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Quien abre el enlace desde dentro del túnel lee «Estás dentro», y la prueba queda anotada con su hora y su dirección.</translation>
    </message>
    <message>
        <source>Whoever sits between this computer and the gateway could show another key. Compare {subject} with what the gateway itself says: ssh-keygen -l -f on its host key file.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Quien esté entre este ordenador y la pasarela podría mostrar otra clave. Compara {subject} con lo que dice la propia pasarela: ssh-keygen -l -f sobre su archivo de clave del host.</translation>
    </message>
    <message>
        <source>Whom to call has {length} characters; {limit} fit.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>A quién llamar tiene {length} caracteres; caben {limit}.</translation>
    </message>
    <message>
        <source>Whose device it is, for people.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>De quién es el dispositivo, escrito para personas.</translation>
    </message>
    <message>
        <source>Whose it is, what the family calls it, what it is, and until when: that is all that is asked.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>De quién es, cómo lo llama la familia, qué es y hasta cuándo: no se pregunta nada más.</translation>
    </message>
    <message>
        <source>With a new certificate the gateway would turn away every device that does not have the new CA yet.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Con un certificado nuevo, la pasarela rechazaría todos los dispositivos que aún no tienen la CA nueva.</translation>
    </message>
    <message>
        <source>Without them, begin again beside what runs: hearthkey succession begin --lost makes a new CA. The gateway trusts both, each device gets a new bundle at its next visit, and then the gateway’s certificate follows. All of it has to be done before {first}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>Sin ellas, empieza de nuevo al lado de lo que funciona: hearthkey succession begin --lost crea una CA nueva. La pasarela confía en ambas, cada dispositivo recibe un paquete nuevo en su próxima visita, y después sigue el certificado de la pasarela. Todo eso tiene que estar hecho antes del {first}.</translation>
    </message>
    <message>
        <source>Word {place} is not one of those that parts are made of.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>La palabra {place} no es de las que forman las partes.</translation>
    </message>
    <message>
        <source>Write it again from the tray, if it waits there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a escribirlo desde la bandeja, si espera allí.</translation>
    </message>
    <message>
        <source>Write the passphrase down and keep it where the family’s papers are. Without it and without a sealed copy, nothing can be renewed or stopped. A sealed copy is written to {subject} after every change; keep one away from this computer: hearthkey seal --into DIR.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>Anota la frase de contraseña y guárdala con los papeles de la familia. Sin ella y sin una copia sellada no se puede renovar ni bloquear nada. Después de cada cambio se escribe una copia sellada en {subject}; guarda una lejos de este ordenador: hearthkey seal --into DIR.</translation>
    </message>
    <message>
        <source>Write {wanted}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe {wanted}.</translation>
    </message>
    <message>
        <source>a month, a year, all of it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>un mes, un año, todo</translation>
    </message>
    <message>
        <source>and the access that it lets its maker’s app have.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>y el acceso que le da a la aplicación de su fabricante.</translation>
    </message>
    <message>
        <source>and whatever else opens the house.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>y todo lo demás que abra la casa.</translation>
    </message>
    <message>
        <source>ask for them; spare lists can only stop devices, never let one in.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>pídelas; las listas de reserva solo pueden bloquear dispositivos, nunca dejar entrar ninguno.</translation>
    </message>
    <message>
        <source>begin</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>empezar</translation>
    </message>
    <message>
        <source>broken</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>roto</translation>
    </message>
    <message>
        <source>done</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>done on {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>hecho el {day}</translation>
    </message>
    <message>
        <source>gone since {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>no existe desde el {day}</translation>
    </message>
    <message>
        <source>good to know</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>conviene saberlo</translation>
    </message>
    <message>
        <source>hearthkey list shows everybody.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey list muestra a todo el mundo.</translation>
    </message>
    <message>
        <source>hearthkey name-pass SERIAL --person PERSON --device DEVICE says it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey name-pass SERIAL --person PERSON --device DEVICE lo indica.</translation>
    </message>
    <message>
        <source>hearthkey name-pass lists those that wait to be named.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey name-pass muestra los que esperan un nombre.</translation>
    </message>
    <message>
        <source>hearthkey visit shows those that are.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey visit muestra las que lo están.</translation>
    </message>
    <message>
        <source>in the way</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>impide seguir</translation>
    </message>
    <message>
        <source>later, by {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>después, a más tardar el {day}</translation>
    </message>
    <message>
        <source>mail, clouds, streaming, cameras; look who is signed in there.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>correo, nubes, streaming, cámaras; mira quién tiene allí la sesión abierta.</translation>
    </message>
    <message>
        <source>next, by {day}</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>lo siguiente, a más tardar el {day}</translation>
    </message>
    <message>
        <source>no pass was in use then</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>entonces no había ningún pase en uso</translation>
    </message>
    <message>
        <source>nobody on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>nadie en la lista de revocación</translation>
    </message>
    <message>
        <source>nothing is delivered by itself here: carry the new list there, or they still get in.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>aquí no se envía nada por sí solo: lleva allí la lista nueva, o seguirá entrando.</translation>
    </message>
    <message>
        <source>renew the selected device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>renovar el dispositivo elegido</translation>
    </message>
    <message>
        <source>said to get in, on mobile data</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>dicen que entra, con datos móviles</translation>
    </message>
    <message>
        <source>said to work, {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>se dijo el {day} que funciona</translation>
    </message>
    <message>
        <source>seen to get in at the web front, from {address}</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>se vio entrar en la fachada web, desde {address}</translation>
    </message>
    <message>
        <source>seen to get in, from {address}</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>se vio entrar, desde {address}</translation>
    </message>
    <message>
        <source>solid bar, a tick for each time it was seen to get in</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>barra llena, una marca por cada vez que se vio entrar</translation>
    </message>
    <message>
        <source>Windows cannot open a file named &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Windows no puede abrir un archivo llamado «{text}».</translation>
    </message>
    <message>
        <source>The key on paper outlives every stick: two pages, for a scanner and for hands. Scan it once to be sure.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>La clave en papel dura más que cualquier memoria USB: dos páginas, para un escáner y para las manos. Escanéala una vez para estar seguro.</translation>
    </message>
    <message>
        <source>The old pass of {titles} was withdrawn for good with revocation list {number} (superseded): {why}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>El pase antiguo se retiró para siempre con la lista de revocación {number} (sustituido), {titles}: {why}.</translation>
    </message>
    <message>
        <source>The old passes of {titles} were withdrawn for good with revocation list {number} (superseded): {why}.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Los pases antiguos se retiraron para siempre con la lista de revocación {number} (sustituidos), {titles}: {why}.</translation>
    </message>
    <message>
        <source>Without the words nothing can be renewed or stopped; nobody can make new ones for you.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Sin las palabras no se puede renovar ni bloquear nada; nadie puede hacerte otras nuevas.</translation>
    </message>
    <message>
        <source>Work the MTU out from its RFC, or use one of the key sets, whose sizes are known.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Calcula la MTU a partir de su RFC, o usa uno de los juegos de claves, cuyos tamaños se conocen.</translation>
    </message>
    <message>
        <source>Write a file or an archive instead.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe en su lugar un archivo o un archivo comprimido.</translation>
    </message>
    <message>
        <source>Write at least one [[steps.{text}]], or take {text} out of forms.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe al menos un [[steps.{text}]], o quita {text} de forms.</translation>
    </message>
    <message>
        <source>Write it again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Vuelve a escribirlo.</translation>
    </message>
    <message>
        <source>Write it as year-month-day, for instance 2027-05-01.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escríbelo como año-mes-día, por ejemplo 2027-05-01.</translation>
    </message>
    <message>
        <source>Write it like 198.51.100.0/24 or 2001:db8:1::/64.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escríbelo como 198.51.100.0/24 o 2001:db8:1::/64.</translation>
    </message>
    <message>
        <source>Write it like http://127.0.0.1:8080, without a user name and without a question mark.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escríbelo como http://127.0.0.1:8080, sin nombre de usuario y sin signo de interrogación.</translation>
    </message>
    <message>
        <source>Write less of it with slots.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe menos con huecos.</translation>
    </message>
    <message>
        <source>Write one line for each under the line of column names.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe una línea para cada uno debajo de la línea con los nombres de las columnas.</translation>
    </message>
    <message>
        <source>Write one of these behind it: {known}. Where none is listed, write the name alone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe detrás uno de estos: {known}. Donde no aparezca ninguno, escribe solo el nombre.</translation>
    </message>
    <message>
        <source>Write the gateway’s files into a folder to look at them, or found your own household.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Escribe los archivos de la pasarela en una carpeta para verlos, o funda tu propio hogar.</translation>
    </message>
    <message>
        <source>Write, or paste, what a program wants to read, and put slots where the household’s own values belong.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Escribe o pega lo que un programa quiere leer, y pon huecos donde van los valores propios del hogar.</translation>
    </message>
    <message>
        <source>Writing a sealed copy</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Escribiendo una copia sellada</translation>
    </message>
    <message>
        <source>Writing the {form}</source>
        <extracomment>What is being done right now, for anything that takes longer than a moment.</extracomment>
        <translation>Escribiendo: {form}</translation>
    </message>
    <message>
        <source>Your own template</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>Plantilla propia</translation>
    </message>
    <message>
        <source>a PKCS#12 file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un archivo PKCS#12</translation>
    </message>
    <message>
        <source>a bundle file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un archivo de paquete</translation>
    </message>
    <message>
        <source>a configuration profile</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un perfil de configuración</translation>
    </message>
    <message>
        <source>a device</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>un dispositivo</translation>
    </message>
    <message>
        <source>a good time to renew</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>buen momento para renovar</translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a list of devices</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>una lista de dispositivos</translation>
    </message>
    <message>
        <source>a network inside this computer, for containers and virtual machines; no phone reaches it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>una red dentro de este ordenador, para contenedores y máquinas virtuales; ningún móvil llega a ella</translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>un número</translation>
    </message>
    <message>
        <source>a set-up script with its PKCS#12 file</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un script de configuración con su archivo PKCS#12</translation>
    </message>
    <message>
        <source>a text</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a text of many lines</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>un texto de muchas líneas</translation>
    </message>
    <message>
        <source>a yes or no</source>
        <extracomment>Words for values that have a fixed set of them.</extracomment>
        <translation>un sí o no</translation>
    </message>
    <message>
        <source>an address without a router (link-local); a link cannot name it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>una dirección sin router (link-local); un enlace no puede nombrarla</translation>
    </message>
    <message>
        <source>an archive</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un archivo comprimido</translation>
    </message>
    <message>
        <source>an empty list</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>una lista vacía</translation>
    </message>
    <message>
        <source>another pass took its place</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>otro pase ocupó su lugar</translation>
    </message>
    <message>
        <source>as long as its key set allows</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>mientras lo permita su juego de claves</translation>
    </message>
    <message>
        <source>bar to the stop, dots to where it would have run</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>barra hasta el bloqueo, puntos hasta donde habría llegado</translation>
    </message>
    <message>
        <source>before anything else: they decide what is erased.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>antes que nada: ahí se decide qué se borra.</translation>
    </message>
    <message>
        <source>can be let back in</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>se puede dejar entrar de nuevo</translation>
    </message>
    <message>
        <source>change it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>cambiar</translation>
    </message>
    <message>
        <source>change nothing</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>no cambiar nada</translation>
    </message>
    <message>
        <source>choose a copy</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>elegir una copia</translation>
    </message>
    <message>
        <source>choose among the matches</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>elegir entre los resultados</translation>
    </message>
    <message>
        <source>close the drawer</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>cerrar el panel lateral</translation>
    </message>
    <message>
        <source>close the drawer and the link</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>cerrar el panel lateral y el enlace</translation>
    </message>
    <message>
        <source>close the drawer; what is typed stays</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>cerrar el panel lateral; lo escrito se queda</translation>
    </message>
    <message>
        <source>closed</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>codes</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>códigos</translation>
    </message>
    <message>
        <source>codes that banks send as a message go there.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>ahí llegan los códigos que los bancos mandan por mensaje.</translation>
    </message>
    <message>
        <source>copy the chosen entry</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>copiar la entrada elegida</translation>
    </message>
    <message>
        <source>dashes, a small ring where it was made</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>rayas, un pequeño anillo donde se creó</translation>
    </message>
    <message>
        <source>deliver now</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>enviar ahora</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>dispositivo</translation>
    </message>
    <message>
        <source>device_key is the device’s key as it is: whoever holds the file gets in. device_key_sealed is the same key under the bundle’s passphrase.</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>device_key es la clave del dispositivo tal cual: quien tenga el archivo entra. device_key_sealed es la misma clave bajo la frase de contraseña del paquete.</translation>
    </message>
    <message>
        <source>draft</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>borrador</translation>
    </message>
    <message>
        <source>due soon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>vence pronto</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>caducado</translation>
    </message>
    <message>
        <source>ended a moment ago</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>caducado hace un momento</translation>
    </message>
    <message>
        <source>ended yesterday</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>caducado ayer</translation>
    </message>
    <message>
        <source>ended {days} days ago</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>caducado hace {days} días</translation>
    </message>
    <message>
        <source>ended {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>caducado el {day}</translation>
    </message>
    <message>
        <source>ends</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>caduca</translation>
    </message>
    <message>
        <source>ends today</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>caduca hoy</translation>
    </message>
    <message>
        <source>ends {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>caduca el {day}</translation>
    </message>
    <message>
        <source>everything they do on the internet goes through home</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>todo lo que hacen en internet pasa por casa</translation>
    </message>
    <message>
        <source>final</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>definitivo</translation>
    </message>
    <message>
        <source>find</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>buscar</translation>
    </message>
    <message>
        <source>fine dots while you choose</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>puntos finos mientras eliges</translation>
    </message>
    <message>
        <source>for a few days</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>durante unos días</translation>
    </message>
    <message>
        <source>for days, not years, an hourglass</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>por días, no por años, un reloj de arena</translation>
    </message>
    <message>
        <source>for good, a solid octagon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>para siempre, un octágono lleno</translation>
    </message>
    <message>
        <source>for the device</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>para el dispositivo</translation>
    </message>
    <message>
        <source>for the gateway</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>para la pasarela</translation>
    </message>
    <message>
        <source>full</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>completo</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>What is said of templates where nothing went wrong: in the diary, and as a caution.</extracomment>
        <translation>pasarela</translation>
    </message>
    <message>
        <source>guest</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>invitado</translation>
    </message>
    <message>
        <source>handed over</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>entregado en mano</translation>
    </message>
    <message>
        <source>hearthkey VERB --help shows what belongs there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey VERB --help muestra qué va ahí.</translation>
    </message>
    <message>
        <source>hearthkey kinds marks your own.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey kinds marca los tuyos.</translation>
    </message>
    <message>
        <source>hearthkey list shows all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey list los muestra todos.</translation>
    </message>
    <message>
        <source>hearthkey lists shows all of them.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>hearthkey lists las muestra todas.</translation>
    </message>
    <message>
        <source>hidden, {count} characters</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>oculto, {count} caracteres</translation>
    </message>
    <message>
        <source>hollow bar, a lozenge where it was handed over</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>barra hueca, un rombo donde se entregó en mano</translation>
    </message>
    <message>
        <source>if cards or a banking app are on it.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>si lleva tarjetas o una aplicación del banco.</translation>
    </message>
    <message>
        <source>in the home subnets</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>en las subredes de casa</translation>
    </message>
    <message>
        <source>in the tray</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>en la bandeja</translation>
    </message>
    <message>
        <source>in the tray, ends {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>en la bandeja, caduca el {day}</translation>
    </message>
    <message>
        <source>in use</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>en uso</translation>
    </message>
    <message>
        <source>in use since {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>en uso desde el {day}</translation>
    </message>
    <message>
        <source>in use, in force</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>en uso, en vigor</translation>
    </message>
    <message>
        <source>in use, seen from nowhere yet, a broken ring</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>en uso, aún no visto desde ningún sitio, un anillo partido</translation>
    </message>
    <message>
        <source>it is not used any more</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>ya no se usa</translation>
    </message>
    <message>
        <source>it is stopped for now</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>está bloqueado por ahora</translation>
    </message>
    <message>
        <source>it was lost or stolen</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>se perdió o lo robaron</translation>
    </message>
    <message>
        <source>its owner left the household</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>quien lo usaba dejó el hogar</translation>
    </message>
    <message>
        <source>just now</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>ahora mismo</translation>
    </message>
    <message>
        <source>keep it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>conservar</translation>
    </message>
    <message>
        <source>let TCP port {port} from {networks} in for a quarter of an hour, in the input chain.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>deja entrar por el puerto TCP {port} desde {networks} durante un cuarto de hora, en la cadena input.</translation>
    </message>
    <message>
        <source>lost or stolen</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>perdido o robado</translation>
    </message>
    <message>
        <source>made</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>creado</translation>
    </message>
    <message>
        <source>made, in the tray, a quarter filled</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>creado, en la bandeja, lleno un cuarto</translation>
    </message>
    <message>
        <source>made, takes over from the older pass</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>creado, releva al pase anterior</translation>
    </message>
    <message>
        <source>make the pass</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>crear el pase</translation>
    </message>
    <message>
        <source>never gets in again</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>no vuelve a entrar nunca</translation>
    </message>
    <message>
        <source>never proved</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>nunca comprobado</translation>
    </message>
    <message>
        <source>new device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>nuevo dispositivo</translation>
    </message>
    <message>
        <source>next part of the window</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>siguiente parte de la ventana</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>not in the home subnets, so only a phone in the same network ({network}) gets through</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>no está en las subredes de casa, así que solo llega un móvil de la misma red ({network})</translation>
    </message>
    <message>
        <source>not known to be gone</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>quizá aún existe</translation>
    </message>
    <message>
        <source>not known whether it left</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>no se sabe si salió</translation>
    </message>
    <message>
        <source>not made yet, a thin ring</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>aún no creado, un anillo fino</translation>
    </message>
    <message>
        <source>nothing today</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>nada hoy</translation>
    </message>
    <message>
        <source>on hold, may come back, a hollow octagon</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>bloqueado por ahora, puede volver, un octágono hueco</translation>
    </message>
    <message>
        <source>on the maker’s own page for lost devices; look first where it is.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>en la página del fabricante para dispositivos perdidos; mira primero dónde está.</translation>
    </message>
    <message>
        <source>on {day}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>el {day}</translation>
    </message>
    <message>
        <source>one of {forms}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>uno de {forms}</translation>
    </message>
    <message>
        <source>open the device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>abrir el dispositivo</translation>
    </message>
    <message>
        <source>opens nothing: revoked on {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>no abre nada: revocado el {day}</translation>
    </message>
    <message>
        <source>opens nothing: the pass ended on {day}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>no abre nada: el pase caducó el {day}</translation>
    </message>
    <message>
        <source>past the end of the list, double rule and hatch</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>pasado el fin de la lista, doble línea y rayado</translation>
    </message>
    <message>
        <source>prove the selected device</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>comprobar el dispositivo elegido</translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>comprobado</translation>
    </message>
    <message>
        <source>proved {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>comprobado el {day}</translation>
    </message>
    <message>
        <source>proved {day}, its key is still here</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>comprobado el {day}, su clave sigue aquí</translation>
    </message>
    <message>
        <source>proved; gateway, list and CA; a solid disc</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>comprobado; pasarela, lista y CA; un disco lleno</translation>
    </message>
    <message>
        <source>put it aside</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>apartar</translation>
    </message>
    <message>
        <source>reachable from the internet, so nothing is offered there</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>accesible desde internet, así que ahí no se ofrece nada</translation>
    </message>
    <message>
        <source>reached its date, a corner cut off</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>llegó a su fecha, una esquina cortada</translation>
    </message>
    <message>
        <source>red; an arrowhead: it began before the sheet does</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>rojo; una punta de flecha: empezó antes que la hoja</translation>
    </message>
    <message>
        <source>revoked</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>revocado</translation>
    </message>
    <message>
        <source>revoked {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>revocado el {day}</translation>
    </message>
    <message>
        <source>revoked: {why}</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>revocado: {why}</translation>
    </message>
    <message>
        <source>split</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>dividido</translation>
    </message>
    <message>
        <source>stop it</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>bloquear</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>stopped {day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>bloqueado el {day}</translation>
    </message>
    <message>
        <source>sudo firewall-cmd --add-port={port}/tcp --timeout=15m; it goes by itself.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>sudo firewall-cmd --add-port={port}/tcp --timeout=15m; se quita por sí solo.</translation>
    </message>
    <message>
        <source>sudo ufw allow from {network} to any port {port} proto tcp; take it back afterwards with sudo ufw delete and the same words.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>sudo ufw allow from {network} to any port {port} proto tcp; después se retira con sudo ufw delete y las mismas palabras.</translation>
    </message>
    <message>
        <source>take the last change back</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>deshacer el último cambio</translation>
    </message>
    <message>
        <source>take the last change back; the diary keeps both</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>deshacer el último cambio; el diario conserva ambos</translation>
    </message>
    <message>
        <source>the desk: all that wait, one after another</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>la mesa: todos los que esperan, uno tras otro</translation>
    </message>
    <message>
        <source>the gateway’s certificate</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>el certificado de la pasarela</translation>
    </message>
    <message>
        <source>the householder said so</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>lo indicó quien lleva el hogar</translation>
    </message>
    <message>
        <source>the inside of a tunnel; a phone that is not set up yet cannot reach it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>el interior de un túnel; un móvil que aún no está configurado no llega ahí</translation>
    </message>
    <message>
        <source>the next entry found, the one before</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>la siguiente entrada encontrada, la anterior</translation>
    </message>
    <message>
        <source>the old pass ended</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>el pase anterior caducó</translation>
    </message>
    <message>
        <source>the old pass ends</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>el pase anterior caduca</translation>
    </message>
    <message>
        <source>the old pass was handed over</source>
        <extracomment>The life lines of an old pass and its new one as one: the old one runs beside while both get in.</extracomment>
        <translation>el pase anterior se entregó en mano</translation>
    </message>
    <message>
        <source>the one pass that was in use then gets in until it ends</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>el único pase que estaba en uso entonces entra hasta que caduque</translation>
    </message>
    <message>
        <source>the revocation list</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>la lista de revocación</translation>
    </message>
    <message>
        <source>the {count} passes that were in use then get in until they end</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>los {count} pases que estaban en uso entonces entran hasta que caduquen</translation>
    </message>
    <message>
        <source>then it ends</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>luego caduca</translation>
    </message>
    <message>
        <source>they know it; it is made anew, and every other device is told: hearthkey secrets --renew.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>lo conoce; se crea de nuevo y se da a todos los demás dispositivos: hearthkey secrets --renew.</translation>
    </message>
    <message>
        <source>thin and thick final bar, nothing after it</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>barra final fina y gruesa, nada después</translation>
    </message>
    <message>
        <source>thin line in the second ink</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>línea fina en la segunda tinta</translation>
    </message>
    <message>
        <source>this computer itself; no phone reaches it</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>este mismo ordenador; ningún móvil llega ahí</translation>
    </message>
    <message>
        <source>this page</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>esta página</translation>
    </message>
    <message>
        <source>today {time}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>hoy a las {time}</translation>
    </message>
    <message>
        <source>unknown</source>
        <extracomment>A sentence that a shell can translate before it fills in the facts.</extracomment>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>until {day}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>hasta el {day}</translation>
    </message>
    <message>
        <source>waiting</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>en espera</translation>
    </message>
    <message>
        <source>wants you, a triangle, the only red sign</source>
        <extracomment>The legend: every sign and every line of the sheet beside its word.</extracomment>
        <translation>te necesita, un triángulo, el único signo rojo</translation>
    </message>
    <message>
        <source>was</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>fue</translation>
    </message>
    <message>
        <source>weak</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>débil</translation>
    </message>
    <message>
        <source>were</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>fueron</translation>
    </message>
    <message>
        <source>what follows was seen to get in</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>se vio entrar lo que le sigue</translation>
    </message>
    <message>
        <source>what is not at home keeps going its own way</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>lo que no está en casa sigue su propio camino</translation>
    </message>
    <message>
        <source>what is to be done</source>
        <extracomment>What help says about each spot of the window.</extracomment>
        <translation>lo que hay que hacer</translation>
    </message>
    <message>
        <source>what was written for their devices may carry some: {subject}.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>lo que se escribió para sus dispositivos puede llevar alguno: {subject}.</translation>
    </message>
    <message>
        <source>whoever is on the home network needs no pass.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>quien está en la red de casa no necesita ningún pase.</translation>
    </message>
    <message>
        <source>whoever reads the mail can reset every other password.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>quien lee el correo puede restablecer todas las demás contraseñas.</translation>
    </message>
    <message>
        <source>with it and a sealed copy, the whole household can be brought back elsewhere.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>con ella y una copia sellada se puede recuperar todo el hogar en otro lugar.</translation>
    </message>
    <message>
        <source>with the serial number or IMEI from its box; insurers ask for it.</source>
        <extracomment>What else to do when a device is lost, in the order that helps most (common practice, no source).</extracomment>
        <translation>con el número de serie o el IMEI de la caja; las aseguradoras lo piden.</translation>
    </message>
    <message>
        <source>would end</source>
        <extracomment>The life of a pass as stops on a line, made from values alone.</extracomment>
        <translation>caducaría</translation>
    </message>
    <message>
        <source>your own “{name}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>un archivo de tu plantilla «{name}»</translation>
    </message>
    <message>
        <source>{address} asked from neither the tunnel nor home, and got nothing.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{address} preguntó sin estar en el túnel ni en casa, y no recibió nada.</translation>
    </message>
    <message>
        <source>{address} asked from outside the home network and got nothing.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} preguntó desde fuera de la red de casa y no recibió nada.</translation>
    </message>
    <message>
        <source>{address} is downloading.</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{address} está descargando.</translation>
    </message>
    <message>
        <source>{address} is this computer’s own address, so it would prove nothing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{address} es la dirección de este mismo ordenador, así que no demostraría nada.</translation>
    </message>
    <message>
        <source>{address} tried a wrong link.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{address} probó un enlace equivocado.</translation>
    </message>
    <message>
        <source>{address}: {why}</source>
        <extracomment>What the desk is told about a pick-up, in words.</extracomment>
        <translation>{address}: {why}</translation>
    </message>
    <message>
        <source>{change}: no device needs a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: ningún dispositivo necesita un paquete nuevo.</translation>
    </message>
    <message>
        <source>{change}: {count} devices need a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: {count} dispositivos necesitan un paquete nuevo.</translation>
    </message>
    <message>
        <source>{change}: {title} needs a new bundle.</source>
        <extracomment>What is said of a change before it is made: how many devices it touches.</extracomment>
        <translation>{change}: {title} necesita un paquete nuevo.</translation>
    </message>
    <message>
        <source>{count} Wi-Fis are more than {limit}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{count} redes wifi son más de {limit}.</translation>
    </message>
    <message>
        <source>{count} are withdrawn.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay {count} retirados.</translation>
    </message>
    <message>
        <source>{count} are withdrawn; the highest list number is {number}.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Hay {count} retirados; el número de lista más alto es {number}.</translation>
    </message>
    <message>
        <source>{count} bundles that wait have to be made anew: their keys are in no copy.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{count} paquetes en espera hay que crearlos de nuevo: sus claves no están en ninguna copia.</translation>
    </message>
    <message>
        <source>{count} certificates of devices were found.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se encontraron {count} certificados de dispositivos.</translation>
    </message>
    <message>
        <source>{count} certificates of gateways were recognised.</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>Se reconocieron {count} certificados de pasarelas.</translation>
    </message>
    <message>
        <source>{count} changed</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>con cambios: {count}</translation>
    </message>
    <message>
        <source>{count} devices are not through yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{count} dispositivos aún no han hecho el cambio.</translation>
    </message>
    <message>
        <source>{count} devices get a new key and a new pass each. Their old passes stay as they are until the new ones were seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} dispositivos reciben cada uno una clave nueva y un pase nuevo. Sus pases anteriores se quedan como están hasta que se hayan visto entrar los nuevos.</translation>
    </message>
    <message>
        <source>{count} devices have a new pass. Their bundles wait in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} dispositivos tienen un pase nuevo. Sus paquetes esperan en la bandeja.</translation>
    </message>
    <message>
        <source>{count} devices were not begun and stay ticked.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{count} dispositivos no se empezaron y siguen marcados.</translation>
    </message>
    <message>
        <source>{count} entries of the diary came later.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{count} entradas del diario son posteriores.</translation>
    </message>
    <message>
        <source>{count} files went to {where} and were read back. Revocation list {number} is in force.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se enviaron {count} archivos a {where} y se releyeron. La lista de revocación n.º {number} está en vigor.</translation>
    </message>
    <message>
        <source>{count} more</source>
        <extracomment>English text that remembers how it was made, so that a shell can say the same in another language.</extracomment>
        <translation>{count} más</translation>
    </message>
    <message>
        <source>{count} new</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>nuevos: {count}</translation>
    </message>
    <message>
        <source>{count} no longer needed</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>ya innecesarios: {count}</translation>
    </message>
    <message>
        <source>{count} parts were made for whoever takes over, set {name}: any {least} of them open the sealed copies that are made from now on.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>Se hicieron {count} partes para quien tome el relevo, juego {name}: {least} cualesquiera abren las copias selladas que se hagan desde ahora.</translation>
    </message>
    <message>
        <source>{count} passes are taken over; they go on as they are, and wait for you to say whose they are.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>Se adoptan {count} pases; siguen como están y esperan a que digas de quién son.</translation>
    </message>
    <message>
        <source>{count} passes on the revocation list</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{count} pases en la lista de revocación</translation>
    </message>
    <message>
        <source>{count} stop lists beside revocation list {number} were written for a deputy, who can stop devices with them.</source>
        <extracomment>What is said about the deputy&apos;s parts.</extracomment>
        <translation>Se escribieron {count} listas de bloqueo junto a la lista de revocación {number} para quien releve, que puede bloquear dispositivos con ellas.</translation>
    </message>
    <message>
        <source>{count} the same</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>iguales: {count}</translation>
    </message>
    <message>
        <source>{days} days left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>quedan {days} días</translation>
    </message>
    <message>
        <source>{day}</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>{day}</translation>
    </message>
    <message>
        <source>{day} is over.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El {day} ya ha pasado.</translation>
    </message>
    <message>
        <source>{files}</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files}</translation>
    </message>
    <message>
        <source>{files} and one more</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files} y uno más</translation>
    </message>
    <message>
        <source>{files} and {more} more</source>
        <extracomment>What is said about a household that was made by hand: what was found, and what goes on working or does not.</extracomment>
        <translation>{files} y {more} más</translation>
    </message>
    <message>
        <source>{file} cannot be opened ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede abrir {file} ({seen}).</translation>
    </message>
    <message>
        <source>{file} cannot be read as TOML: {seen}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} no se puede leer como TOML: {seen}.</translation>
    </message>
    <message>
        <source>{file} describes {name}, so it is not clear which of the two it is about.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} describe {name}, así que no está claro de cuál de los dos trata.</translation>
    </message>
    <message>
        <source>{file} does not say that it describes a device kind.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} no dice que describa un tipo de dispositivo.</translation>
    </message>
    <message>
        <source>{file} does not say {place}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} no indica {place}.</translation>
    </message>
    <message>
        <source>{file} has steps for {text}, which is not among its forms.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} tiene pasos para {text}, que no está entre sus formas.</translation>
    </message>
    <message>
        <source>{file} has {count} entries under {place}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} tiene {count} entradas en {place}.</translation>
    </message>
    <message>
        <source>{file} is larger than {limit} octets.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} ocupa más de {limit} bytes.</translation>
    </message>
    <message>
        <source>{file} is of version {version}; this app reads {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} es de la versión {version}; esta aplicación lee la {known}.</translation>
    </message>
    <message>
        <source>{file} names the form {text} twice.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} nombra dos veces la forma {text}.</translation>
    </message>
    <message>
        <source>{file} says that the device takes {text}, but not what to do with it there.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} dice que el dispositivo admite {text}, pero no qué hacer allí con ello.</translation>
    </message>
    <message>
        <source>{file} says {place}, which nobody obeys.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{file} indica {place}, y eso no lo atiende nadie.</translation>
    </message>
    <message>
        <source>{first} and {next}</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{first} y {next}</translation>
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
        <translation>{form}, arrastrado fuera de la ventana; el escritorio no dice adónde</translation>
    </message>
    <message>
        <source>{form}, in the folder {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, en la carpeta {place}</translation>
    </message>
    <message>
        <source>{form}, offered for pick-up; whether a phone got it is not known</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, ofrecido para recoger; no se sabe si llegó a un móvil</translation>
    </message>
    <message>
        <source>{form}, on paper</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, en papel</translation>
    </message>
    <message>
        <source>{form}, on the clipboard</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, en el portapapeles</translation>
    </message>
    <message>
        <source>{form}, on the stick “{place}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, en la memoria USB «{place}»</translation>
    </message>
    <message>
        <source>{form}, perhaps dragged out of the window</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, quizá arrastrado fuera de la ventana</translation>
    </message>
    <message>
        <source>{form}, perhaps in the folder {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, quizá en la carpeta {place}</translation>
    </message>
    <message>
        <source>{form}, perhaps on paper</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, quizá en papel</translation>
    </message>
    <message>
        <source>{form}, perhaps on the clipboard</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, quizá en el portapapeles</translation>
    </message>
    <message>
        <source>{form}, perhaps on the stick “{place}”</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, quizá en la memoria USB «{place}»</translation>
    </message>
    <message>
        <source>{form}, picked up by {place}</source>
        <extracomment>What is said of copies that left: where each is, what can be said of it, and what became of it.</extracomment>
        <translation>{form}, recogido por {place}</translation>
    </message>
    <message>
        <source>{have} of the {need} parts that it takes: with fewer nobody learns anything, and nothing opens.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{have} de las {need} partes que hacen falta: con menos nadie averigua nada, y nada se abre.</translation>
    </message>
    <message>
        <source>{host} is nobody’s address.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{host} no es la dirección de nadie.</translation>
    </message>
    <message>
        <source>{host} port {port}, {folder}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{host} puerto {port}, {folder}</translation>
    </message>
    <message>
        <source>{host}, {folder}</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{host}, {folder}</translation>
    </message>
    <message>
        <source>{household} comes back as it was on {day}. What was done later is not here: who was stopped after that is taken over from the gateway at the first delivery.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{household} vuelve tal como estaba el {day}. Lo que se hizo después no está aquí: lo que se bloqueó desde entonces se toma de la pasarela en el primer envío.</translation>
    </message>
    <message>
        <source>{household} comes back with its key and its settings as they were on {day}, and the gateway gets a new certificate. People and devices are not on paper: {living}, and each needs a new one from here. Who was stopped is taken over from the gateway at the first delivery.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{household} vuelve con su clave y sus ajustes tal como estaban el {day}, y la pasarela recibe un certificado nuevo. Las personas y los dispositivos no están en papel: {living}, y cada dispositivo necesita uno nuevo de aquí. Lo que se bloqueó se adopta de la pasarela en el primer envío.</translation>
    </message>
    <message>
        <source>{household} goes on under its own CA.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} continúa con su propia CA.</translation>
    </message>
    <message>
        <source>{household} was brought back from the paper of {day}: the key, the settings, and {withdrawn}.</source>
        <extracomment>What is said about the household&apos;s key on paper.</extracomment>
        <translation>{household} se recuperó del papel del {day}: la clave, los ajustes y {withdrawn}.</translation>
    </message>
    <message>
        <source>{household} was brought back from the sealed copy of {day}.</source>
        <extracomment>What is said about sealed copies.</extracomment>
        <translation>{household} se recuperó de la copia sellada del {day}.</translation>
    </message>
    <message>
        <source>{household} was taken over as it was made elsewhere: its CA, which ends {ends}, 1 pass and {withdrawn} on the list. Revocation list {number} was signed.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} se adoptó tal como se hizo en otro sitio: su CA, que caduca el {ends}, 1 pase y {withdrawn} en la lista. Se firmó la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{household} was taken over as it was made elsewhere: its CA, which ends {ends}, {count} passes and {withdrawn} on the list. Revocation list {number} was signed.</source>
        <extracomment>What is said about taking over a household that was made by hand.</extracomment>
        <translation>{household} se adoptó tal como se hizo en otro sitio: su CA, que caduca el {ends}, {count} pases y {withdrawn} en la lista. Se firmó la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{key} is missing (looked for from line {line} on).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Falta {key} (buscado desde la línea {line}).</translation>
    </message>
    <message>
        <source>{line} and {count} more lines</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>{line} y {count} líneas más</translation>
    </message>
    <message>
        <source>{member} lies in the archive without AES-256.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{member} está en el archivo comprimido sin AES-256.</translation>
    </message>
    <message>
        <source>{minutes} min ago</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>hace {minutes} min</translation>
    </message>
    <message>
        <source>{name} is for devices.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} es para dispositivos.</translation>
    </message>
    <message>
        <source>{name} is neither a picture (PNG or JPEG) nor plain text.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} no es ni una imagen (PNG o JPEG) ni texto sin formato.</translation>
    </message>
    <message>
        <source>{name} is not one of your own kinds, so there is nothing to take away.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} no es uno de tus propios tipos, así que no hay nada que quitar.</translation>
    </message>
    <message>
        <source>{name} seems to be on here and may refuse the phone. If the code does not open: {how}</source>
        <extracomment>What is said about tickets: addresses, what happens at the door, and what the diary keeps.</extracomment>
        <translation>{name} parece estar activo aquí y quizá rechace el móvil. Si el código no se abre: {how}</translation>
    </message>
    <message>
        <source>{name} was founded. Its CA ends {authority_end}, the certificate of its gateway {host} ends {gateway_end}. Revocation list 1 was signed; nobody is on it.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se fundó {name}. Su CA caduca el {authority_end}, el certificado de su pasarela {host} caduca el {gateway_end}. Se firmó la lista de revocación n.º 1; no hay nadie en ella.</translation>
    </message>
    <message>
        <source>{name} was named as the outer interface and as the tunnel’s.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} se indicó como interfaz exterior y también como la del túnel.</translation>
    </message>
    <message>
        <source>{name} was written with the key length &quot;{text}&quot;.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{name} se escribió con la longitud de clave «{text}».</translation>
    </message>
    <message>
        <source>{name} will let its devices in at {host}, into {home}; {what}. Inside, devices get addresses from {tunnel}.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{name} dejará entrar a sus dispositivos por {host}, para llegar a {home}; {what}. Dentro, los dispositivos reciben direcciones de {tunnel}.</translation>
    </message>
    <message>
        <source>{new} gets a pass of its own, with a new key. {old} stops getting in once the gateway holds list {number}, and never gets in again once {new} was seen to. Until then it can be let back in.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{new} recibe un pase propio, con una clave nueva. {old} deja de entrar en cuanto la pasarela tenga la lista n.º {number}, y para siempre en cuanto se haya visto entrar {new}. Hasta entonces se puede dejar entrar de nuevo.</translation>
    </message>
    <message>
        <source>{number} is no port; they go from 1 to 65535.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{number} no es un puerto; van del 1 al 65535.</translation>
    </message>
    <message>
        <source>{number} is not a TCP port.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{number} no es un puerto TCP.</translation>
    </message>
    <message>
        <source>{one} and {other} overlap, so some addresses would lie in two places at once.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{one} y {other} se solapan, así que algunas direcciones estarían en dos sitios a la vez.</translation>
    </message>
    <message>
        <source>{path} cannot be read: {seen}</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} no se puede leer: {seen}</translation>
    </message>
    <message>
        <source>{path} could not be read ({seen}).</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} no se pudo leer ({seen}).</translation>
    </message>
    <message>
        <source>{path} holds something that is no tour.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} contiene algo que no es un recorrido.</translation>
    </message>
    <message>
        <source>{path} is gone; a stick may have been pulled. Nothing was lost, nothing is half done.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ya no está; quizá se ha retirado una memoria USB. No se ha perdido nada ni ha quedado nada a medias.</translation>
    </message>
    <message>
        <source>{path} is larger than {limit} octets; nothing that this app writes is.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ocupa más de {limit} octetos; nada de lo que escribe esta aplicación ocupa tanto.</translation>
    </message>
    <message>
        <source>{path} is not a file.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} no es un archivo.</translation>
    </message>
    <message>
        <source>{path} is there already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} ya existe.</translation>
    </message>
    <message>
        <source>{path} names no device.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{path} no nombra ningún dispositivo.</translation>
    </message>
    <message>
        <source>{person} has no pass that gets in, or could again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{person} no tiene ningún pase que entre o que pueda volver a entrar.</translation>
    </message>
    <message>
        <source>{person} never gets in again with any of these {count} devices once the gateway holds list {number} (affiliationChanged). {others} This is final.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>{person} deja de entrar para siempre con cualquiera de estos {count} dispositivos en cuanto la pasarela tenga la lista n.º {number} (affiliationChanged). {others} Esto es definitivo.</translation>
    </message>
    <message>
        <source>{person} never gets in again with this device once the gateway holds list {number} (affiliationChanged). {others} This is final.</source>
        <extracomment>What is said when somebody leaves the household. What else to change is common practice, no source.</extracomment>
        <translation>{person} deja de entrar para siempre con este dispositivo en cuanto la pasarela tenga la lista n.º {number} (affiliationChanged). {others} Esto es definitivo.</translation>
    </message>
    <message>
        <source>{person} told that {title} gets in, on mobile data.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{person} ha dicho que {title} entra, con datos móviles.</translation>
    </message>
    <message>
        <source>{person} will get in with this {device} {end}. Nobody else has this pass.{again}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{person} podrá entrar con este dispositivo ({device}) {end}. Nadie más tiene este pase.{again}</translation>
    </message>
    <message>
        <source>{person}’s {device}</source>
        <extracomment>The household, its people, their devices and its gateway, as values.</extracomment>
        <translation>{device} de {person}</translation>
    </message>
    <message>
        <source>{place} cannot be reached now, so nothing was deleted.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ahora no se puede llegar a {place}, así que no se ha borrado nada.</translation>
    </message>
    <message>
        <source>{place} in {file} gives {text} a second label.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} en {file} da a {text} una segunda etiqueta.</translation>
    </message>
    <message>
        <source>{place} in {file} holds a line end, a tab, or a character that cannot be seen.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} en {file} contiene un fin de línea, una tabulación o un carácter que no se puede ver.</translation>
    </message>
    <message>
        <source>{place} in {file} is &quot;{text}&quot;, which is not known.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} en {file} es «{text}», que no se conoce.</translation>
    </message>
    <message>
        <source>{place} in {file} is empty or too long.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} en {file} está vacío o es demasiado largo.</translation>
    </message>
    <message>
        <source>{place} in {file} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Falta {place} en {file}.</translation>
    </message>
    <message>
        <source>{place} in {file} is not written as it has to be.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{place} en {file} no está escrito como debe.</translation>
    </message>
    <message>
        <source>{serial} belongs to {title} already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{serial} ya pertenece a {title}.</translation>
    </message>
    <message>
        <source>{serial} is no pass that was made elsewhere.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{serial} no es un pase hecho en otro lugar.</translation>
    </message>
    <message>
        <source>{setting} {after} (before: {before})</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{setting}: {after} (antes: {before})</translation>
    </message>
    <message>
        <source>{source} says of {transform} for {protocol}: {level}. Whoever records the tunnel may one day read it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{source} dice de {transform} para {protocol}: {level}. Quien grabe el túnel quizá pueda leerlo algún día.</translation>
    </message>
    <message>
        <source>{subject} belongs to the range that providers share between customers (RFC 6598). Nobody outside can reach it, whatever the router forwards. Ask the provider for a public address, or use IPv6.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} pertenece al rango que los proveedores reparten entre varios clientes (RFC 6598). Desde fuera no puede llegar nadie, reenvíe lo que reenvíe el router. Pide al proveedor una dirección pública, o usa IPv6.</translation>
    </message>
    <message>
        <source>{subject} is known inside the home only. Devices get in on the home network and nowhere else. For access from outside, give the name that the world knows.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} solo se conoce dentro de casa. Los dispositivos entran en la red de casa y en ningún otro sitio. Para entrar desde fuera, indica el nombre que conoce el mundo.</translation>
    </message>
    <message>
        <source>{subject} is written into every bundle. If the provider changes it, every device needs a new bundle; with a name, none does.</source>
        <extracomment>Cautions: nothing is refused, but the householder should know.</extracomment>
        <translation>{subject} se escribe en todos los paquetes. Si el proveedor cambia esta dirección, cada dispositivo necesita un paquete nuevo; con un nombre, ninguno.</translation>
    </message>
    <message>
        <source>{text} days is not a time that a pass can last.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Un pase no puede durar {text} días.</translation>
    </message>
    <message>
        <source>{text} does not lie in home’s {home}, so the router has no way to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no está en la red de casa {home}, así que el router no tiene camino hasta ella.</translation>
    </message>
    <message>
        <source>{text} is no address at home ({home}), so it is not the gateway’s inner one.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no es una dirección de casa ({home}), así que no es la dirección interior de la pasarela.</translation>
    </message>
    <message>
        <source>{text} is no address of this computer; it has {known}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no es una dirección de este ordenador; tiene {known}.</translation>
    </message>
    <message>
        <source>{text} is no host that ssh could take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no es un host que ssh acepte.</translation>
    </message>
    <message>
        <source>{text} is no user name that ssh could take.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} no es un nombre de usuario que ssh acepte.</translation>
    </message>
    <message>
        <source>{text} is the web front itself, which would ask itself for the page for ever.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{text} es la propia fachada web, que se pediría la página a sí misma sin fin.</translation>
    </message>
    <message>
        <source>{titles} cannot be stopped by a list: the pass is the old CA’s, whose key is lost. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{titles}: no se puede bloquear con una lista, porque el pase es de la CA antigua, cuya clave se ha perdido. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>{title} does not get in ({state}), so there is nothing to prove.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} no entra ({state}), así que no hay nada que comprobar.</translation>
    </message>
    <message>
        <source>{title} gets a new key and a pass until {ends}. Its old pass does not get in any more, so nothing overlaps.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} recibe una clave nueva y un pase hasta el {ends}. Su pase anterior ya no entra, así que nada se solapa.</translation>
    </message>
    <message>
        <source>{title} gets a new key and a pass until {ends}. The old one stays as it is: both get in until {overlap}, or until the new one was seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} recibe una clave nueva y un pase hasta el {ends}. El anterior se queda como está: ambos entran hasta el {overlap}, o hasta que se haya visto entrar el nuevo.</translation>
    </message>
    <message>
        <source>{title} gets in again once the gateway holds list {number}.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} vuelve a entrar en cuanto la pasarela tenga la lista n.º {number}.</translation>
    </message>
    <message>
        <source>{title} got a new pass until {day}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} recibió un pase nuevo hasta el {day}, número de serie {serial}. Su paquete espera en la bandeja.</translation>
    </message>
    <message>
        <source>{title} got a pass until {day}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>{title} recibió un pase hasta el {day}, número de serie {serial}. Su paquete espera en la bandeja.</translation>
    </message>
    <message>
        <source>{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} recibió su pase siguiente hasta el {ends}, número de serie {serial}. Su paquete espera en la bandeja.</translation>
    </message>
    <message>
        <source>{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray; the old pass gets in beside it until {overlap}, or until the new one is seen to.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} recibió su pase siguiente hasta el {ends}, número de serie {serial}. Su paquete espera en la bandeja; el pase anterior entra junto a él hasta el {overlap}, o hasta que se vea entrar el nuevo.</translation>
    </message>
    <message>
        <source>{title} had a pass that is over.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} tenía un pase que ya terminó.</translation>
    </message>
    <message>
        <source>{title} has a bundle in the tray already. A second one would only be taken for the first.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ya tiene un paquete en la bandeja. Un segundo solo se confundiría con el primero.</translation>
    </message>
    <message>
        <source>{title} has a new bundle in the tray.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} tiene un paquete nuevo en la bandeja.</translation>
    </message>
    <message>
        <source>{title} has a new pass. Its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} tiene un pase nuevo. Su paquete espera en la bandeja.</translation>
    </message>
    <message>
        <source>{title} has a pass already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ya tiene un pase.</translation>
    </message>
    <message>
        <source>{title} has a pass of the old CA, until {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} tiene un pase de la CA antigua, hasta el {day}.</translation>
    </message>
    <message>
        <source>{title} has a pass of the old CA, which ends by itself on {day}.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} tiene un pase de la CA antigua, que caduca por sí solo el {day}.</translation>
    </message>
    <message>
        <source>{title} has its new bundle; nobody has seen it get in yet.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} tiene su paquete nuevo; nadie lo ha visto entrar todavía.</translation>
    </message>
    <message>
        <source>{title} is a guest’s and is meant to end.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} es de un invitado y ha de caducar.</translation>
    </message>
    <message>
        <source>{title} is asked for twice.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se pide dos veces {title}.</translation>
    </message>
    <message>
        <source>{title} is in: the link was opened through the gateway, which shows itself as {address}. Which device in the tunnel it was, or the gateway’s own computer, that address cannot say.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} está dentro: el enlace se abrió por la pasarela, que se muestra como {address}. Qué dispositivo del túnel era, o si era el propio ordenador de la pasarela, esa dirección no lo puede decir.</translation>
    </message>
    <message>
        <source>{title} is in: the link was opened through the tunnel, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} está dentro: el enlace se abrió por el túnel, desde {address}.</translation>
    </message>
    <message>
        <source>{title} is not stopped.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} no tiene ningún bloqueo.</translation>
    </message>
    <message>
        <source>{title} is stopped already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ya tiene un bloqueo.</translation>
    </message>
    <message>
        <source>{title} is stopped. Renew it by name, if it is to get in again.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} tiene un bloqueo. Renuévalo por su nombre, si ha de volver a entrar.</translation>
    </message>
    <message>
        <source>{title} is through.</source>
        <extracomment>What is said while one CA follows another: the plan, the way out of a loss, and the diary.</extracomment>
        <translation>{title} ya ha hecho el cambio.</translation>
    </message>
    <message>
        <source>{title} keeps its key; here it is erased, with its passphrase. If the bundle is lost after that, it is replaced, never sent again.</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} conserva su clave; aquí se borra, junto con su frase de contraseña. Si después se pierde el paquete, se reemplaza; nunca se vuelve a enviar.</translation>
    </message>
    <message>
        <source>{title} never gets in again once the gateway holds list {number}: {reason} ({rfc}). {others} This is final.{shared}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} deja de entrar para siempre en cuanto la pasarela tenga la lista n.º {number}: {reason} ({rfc}). {others} Esto es definitivo.{shared}</translation>
    </message>
    <message>
        <source>{title} proves that it gets in by opening a link at {where} through the tunnel.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} demuestra que entra abriendo por el túnel un enlace en {where}.</translation>
    </message>
    <message>
        <source>{title} stops getting in once the gateway holds list {number}. {others} It can be let back in.{shared}</source>
        <extracomment>What is about to happen, the effect on people first.</extracomment>
        <translation>{title} deja de entrar en cuanto la pasarela tenga la lista n.º {number}. {others} Se puede dejar entrar de nuevo.{shared}</translation>
    </message>
    <message>
        <source>{title} stops getting in, and with it {besides}: no narrower list lies ready. All can be let back in.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{title} deja de entrar, y también {besides}: no hay preparada ninguna lista más ajustada. A todos se les puede dejar entrar de nuevo.</translation>
    </message>
    <message>
        <source>{title} stops getting in. No passphrase is needed, and it can be let back in.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{title} deja de entrar. No hace falta frase de contraseña, y se puede dejar entrar de nuevo.</translation>
    </message>
    <message>
        <source>{title} takes the place of {old}. Its pass is good until {ends}, serial {serial}; its bundle waits in the tray.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} ocupa el lugar de {old}. Su pase es válido hasta el {ends}, número de serie {serial}; su paquete espera en la bandeja.</translation>
    </message>
    <message>
        <source>{title} then counts as proved today, because {person} says so. That stays written down and cannot be taken back. It is worth something only if Wi-Fi was off.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>{title} cuenta entonces como comprobado hoy, porque lo dice {person}. Eso queda anotado y no se puede deshacer. Solo vale algo si la wifi estaba apagada.</translation>
    </message>
    <message>
        <source>{title} took another device’s place, and its pass stays on record, so that is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} ocupó el lugar de otro dispositivo, y su pase queda registrado, así que eso no se deshace.</translation>
    </message>
    <message>
        <source>{title} was handed over, and its key exists on the device alone. That is not undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ya se entregó en mano {title}, y su clave solo existe en el dispositivo. Eso no se puede deshacer.</translation>
    </message>
    <message>
        <source>{title} was handed over. Its key and passphrase were erased here.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se entregó en mano {title}. Su clave y su frase de contraseña se borraron aquí.</translation>
    </message>
    <message>
        <source>{title} was handed over: its key exists on that device alone and is never sent again.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Ya se entregó en mano {title}: su clave solo existe en ese dispositivo y nunca se vuelve a enviar.</translation>
    </message>
    <message>
        <source>{title} was let back in with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se dejó entrar de nuevo a {title} con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{title} was not begun and stays ticked.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title} no se empezó y conserva su marca.</translation>
    </message>
    <message>
        <source>{title} was not begun.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>No se ha empezado con {title}.</translation>
    </message>
    <message>
        <source>{title} was revoked already.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase de {title} ya se revocó.</translation>
    </message>
    <message>
        <source>{title} was revoked for good with revocation list {number}: {reason} ({rfc}).</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>El pase de {title} se revocó para siempre con la lista de revocación n.º {number}: {reason} ({rfc}).</translation>
    </message>
    <message>
        <source>{title} was revoked for good. A new pass: hearthkey add --replace.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>Se revocó {title} para siempre. Un pase nuevo: hearthkey add --replace.</translation>
    </message>
    <message>
        <source>{title} was revoked for good. That is never undone.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Se revocó {title} para siempre. Eso no se deshace nunca.</translation>
    </message>
    <message>
        <source>{title} was revoked, and that is final.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>El pase de {title} se revocó, y eso es definitivo.</translation>
    </message>
    <message>
        <source>{title} was seen to get in: its link was opened through the gateway, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Se vio entrar {title}: su enlace se abrió por la pasarela, desde {address}.</translation>
    </message>
    <message>
        <source>{title} was seen to get in: its link was opened through the tunnel, from {address}.</source>
        <extracomment>What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows.</extracomment>
        <translation>Se vio entrar {title}: su enlace se abrió por el túnel, desde {address}.</translation>
    </message>
    <message>
        <source>{title} was stopped with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se bloqueó {title} con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{title} was stopped with spare list {number}, without the passphrase.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se bloqueó {title} con la lista de bloqueo de reserva n.º {number}, sin la frase de contraseña.</translation>
    </message>
    <message>
        <source>{title} were let back in with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se dejó entrar de nuevo a {title} con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{title} were revoked for good with revocation list {number}: {reason} ({rfc}).</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Los pases de {title} se revocaron para siempre con la lista de revocación n.º {number}: {reason} ({rfc}).</translation>
    </message>
    <message>
        <source>{title} were stopped with revocation list {number}.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se bloquearon {title} con la lista de revocación n.º {number}.</translation>
    </message>
    <message>
        <source>{title} were stopped with spare list {number}, without the passphrase.</source>
        <extracomment>What the diary says of each verb: one sentence, the people first.</extracomment>
        <translation>Se bloquearon {title} con la lista de bloqueo de reserva n.º {number}, sin la frase de contraseña.</translation>
    </message>
    <message>
        <source>{title} would be left without a pass that is known to work. Nothing was changed.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{title} se quedaría sin ningún pase que se sepa que funciona. No se ha cambiado nada.</translation>
    </message>
    <message>
        <source>{title}: its next bundle is in the tray already.</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: su paquete siguiente ya está en la bandeja.</translation>
    </message>
    <message>
        <source>{title}: {why}</source>
        <extracomment>Sentences about renewals, replaced devices, and visits.</extracomment>
        <translation>{title}: {why}</translation>
    </message>
    <message>
        <source>{weeks} weeks left</source>
        <extracomment>What stands on the sheet: state words, dates, the top line.</extracomment>
        <translation>quedan {weeks} semanas</translation>
    </message>
    <message>
        <source>{what} is missing.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>Falta {what}.</translation>
    </message>
    <message>
        <source>{where} cannot be reached ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>No se puede llegar a {where} ({seen}). La pasarela sigue con lo que tenía antes.</translation>
    </message>
    <message>
        <source>{where} does not let this computer in ({seen}). The gateway goes on with what it had before.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} no deja entrar a este ordenador ({seen}). La pasarela sigue con lo que tenía antes.</translation>
    </message>
    <message>
        <source>{where} gave an answer that makes no sense here: {seen}. The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} dio una respuesta que aquí no tiene sentido: {seen}. La pasarela tiene un juego entero, el antiguo o el nuevo.</translation>
    </message>
    <message>
        <source>{where} has stopped answering; its last words: {seen}. The gateway holds one whole set, the old or the new.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} ha dejado de responder; sus últimas palabras: {seen}. La pasarela tiene un juego entero, el antiguo o el nuevo.</translation>
    </message>
    <message>
        <source>{where} is a folder; there is nobody in it who could run {text}.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} es una carpeta; en ella no hay nadie que pueda ejecutar {text}.</translation>
    </message>
    <message>
        <source>{where} shows another host key than before: {seen}. It may be another computer, so nothing was sent to it.</source>
        <extracomment>What an error means for the family, and the one way on.</extracomment>
        <translation>{where} muestra una clave del host distinta a la de antes: {seen}. Puede ser otro ordenador, así que no se le envió nada.</translation>
    </message>
    <message>
        <source>{whom} ask for a new bundle.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{whom} necesitan un paquete nuevo.</translation>
    </message>
    <message>
        <source>{whom} asks for a new bundle.</source>
        <extracomment>What a change of the household&apos;s settings means, the people first; and what the diary says of it.</extracomment>
        <translation>{whom} necesita un paquete nuevo.</translation>
    </message>
    <message>
        <source>{whom}: decided here, not yet in force. The gateway holds list no. {number}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{whom}: decidido aquí, aún no en vigor. La pasarela tiene la lista n.º {number}.</translation>
    </message>
    <message>
        <source>{whom}: not yet in force. The gateway is out of reach since {since}; list no. {number} was there {looked}.</source>
        <extracomment>What is said of the gateway: how it stands, what a delivery would change, what a spare list does.</extracomment>
        <translation>{whom}: aún no en vigor. No se llega a la pasarela (desde: {since}); allí estaba la lista n.º {number}, leída {looked}.</translation>
    </message>
    <message>
        <source>“split” where devices reach the home subnets only, “full” where all traffic goes home.</source>
        <extracomment>The slots that a template can have: what each means, its value today, and which of them are secret.</extracomment>
        <translation>«split» donde los dispositivos llegan solo a las subredes de casa, «full» donde todo el tráfico pasa por casa.</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>CA name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre de la CA</translation>
    </message>
    <message>
        <source>DNS servers</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>servidores DNS</translation>
    </message>
    <message>
        <source>a device</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>un dispositivo</translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>una lista</translation>
    </message>
    <message>
        <source>a list of devices</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>una lista de dispositivos</translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>un número</translation>
    </message>
    <message>
        <source>a text</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a text of many lines</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>un texto de muchas líneas</translation>
    </message>
    <message>
        <source>a yes or no</source>
        <extracomment>Stands for {seen} in sentences about what went wrong.</extracomment>
        <translation>un sí o no</translation>
    </message>
    <message>
        <source>archive</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>archivo comprimido</translation>
    </message>
    <message>
        <source>bundle</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>paquete</translation>
    </message>
    <message>
        <source>codes</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>códigos</translation>
    </message>
    <message>
        <source>dates</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>fechas</translation>
    </message>
    <message>
        <source>device</source>
        <extracomment>Stands for {of} in sentences about what went wrong.</extracomment>
        <translation>dispositivo</translation>
    </message>
    <message>
        <source>device’s name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre del dispositivo</translation>
    </message>
    <message>
        <source>ended</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>caducado</translation>
    </message>
    <message>
        <source>gateway</source>
        <extracomment>Stands for {of} in sentences about what went wrong.</extracomment>
        <translation>pasarela</translation>
    </message>
    <message>
        <source>gateway host</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>host de la pasarela</translation>
    </message>
    <message>
        <source>handshake</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>negociación</translation>
    </message>
    <message>
        <source>home subnet</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>subred de casa</translation>
    </message>
    <message>
        <source>home subnets</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>subredes de casa</translation>
    </message>
    <message>
        <source>host name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre de host</translation>
    </message>
    <message>
        <source>household name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre del hogar</translation>
    </message>
    <message>
        <source>identity suffix</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>sufijo de identidad</translation>
    </message>
    <message>
        <source>in use</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>en uso</translation>
    </message>
    <message>
        <source>key file</source>
        <extracomment>Stands for {place} in sentences about what went wrong.</extracomment>
        <translation>archivo de clave</translation>
    </message>
    <message>
        <source>keyring</source>
        <extracomment>Stands for {place} in sentences about what went wrong.</extracomment>
        <translation>llavero</translation>
    </message>
    <message>
        <source>list</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>lista</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>nombre</translation>
    </message>
    <message>
        <source>open</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>apertura</translation>
    </message>
    <message>
        <source>outer interface</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>interfaz exterior</translation>
    </message>
    <message>
        <source>path</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>ruta</translation>
    </message>
    <message>
        <source>pem</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>juego PEM</translation>
    </message>
    <message>
        <source>person’s name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre de la persona</translation>
    </message>
    <message>
        <source>pkcs12</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>archivo PKCS#12</translation>
    </message>
    <message>
        <source>profile</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>perfil</translation>
    </message>
    <message>
        <source>read</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>lectura</translation>
    </message>
    <message>
        <source>revoked</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>revocado</translation>
    </message>
    <message>
        <source>script</source>
        <extracomment>Stands for {form} in sentences about what went wrong.</extracomment>
        <translation>script</translation>
    </message>
    <message>
        <source>stopped</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>tags</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>template name</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>nombre de la plantilla</translation>
    </message>
    <message>
        <source>tunnel</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>túnel</translation>
    </message>
    <message>
        <source>tunnel interface</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>interfaz del túnel</translation>
    </message>
    <message>
        <source>tunnel subnet</source>
        <extracomment>Stands for {setting} in sentences about what went wrong.</extracomment>
        <translation>subred del túnel</translation>
    </message>
    <message>
        <source>usage</source>
        <extracomment>Stands for {step} in sentences about what went wrong.</extracomment>
        <translation>uso</translation>
    </message>
    <message>
        <source>waiting</source>
        <extracomment>Stands for {state} in sentences about what went wrong.</extracomment>
        <translation>en espera</translation>
    </message>
    <message>
        <source>words in one tag</source>
        <extracomment>Stands for {what} in sentences about what went wrong.</extracomment>
        <translation>palabras en una etiqueta</translation>
    </message>
</context>
</TS>
