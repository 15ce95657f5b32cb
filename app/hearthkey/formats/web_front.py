"""Writes the server block with which nginx lets devices, and nobody else, through to the pages of the home.

The directives are those of nginx's public documentation: ngx_http_core_module, ngx_http_ssl_module and
ngx_http_proxy_module. Written for nginx 1.22 and later. Every line carries its reason; see `formats.commented`.
"""

from __future__ import annotations

from hearthkey.core.host import WebFacts
from hearthkey.core.names import as_address
from hearthkey.core.pack import AUTHORITY_CERTIFICATE, GATEWAY_CERTIFICATE, GATEWAY_KEY, LIST_PEM
from hearthkey.formats.commented import Block, Line, Note, Part, write

DEVICE_HEADER, SERIAL_HEADER, VERIFY_HEADER = "Hearthkey-Device", "Hearthkey-Serial", "Hearthkey-Verify"
"""What the page is told: the subject (RFC 4514), the serial number (hex) and SUCCESS.

Each has one hyphen, so that each has one spelling with an underscore, which is one too many: see `_told_to_page`.
"""


def server_block(facts: WebFacts) -> str:
    """Write the server block, for a file that nginx includes in its http block."""
    return write(
        [
            Note(
                "The web front: shows the pages of the home to devices that carry a certificate of the household. "
                "Include this file in the http block of nginx, try it with nginx -t, and let nginx read it with "
                "nginx -s reload. After every delivery nginx has to reload: it reads the revocation list only then."
            ),
            Note(
                "Whoever reaches the page without passing here can tell it any name. So let the page listen on "
                "127.0.0.1, or take connections from this computer alone."
            ),
            Note(
                "A connection that is open when nginx reloads may go on, such as a long download. How long is for the "
                "main part of the nginx settings to say.",
                "worker_shutdown_timeout 60s;",
            ),
            Block(
                "One server of its own.",
                "server",
                [*_listen(facts), *_own_credential(facts), *_devices(facts), *_doors(facts), _page(facts)],
            ),
        ]
    )


def _listen(facts: WebFacts) -> list[Part]:
    if facts.addresses:
        listen: list[Part] = [
            Line("Listen on this address, with TLS.", f"listen {address}:{facts.port} ssl;")
            for address in facts.addresses
        ]
    else:
        listen = [
            Line("Listen on every IPv4 address, with TLS.", f"listen {facts.port} ssl;"),
            Line("Listen on every IPv6 address, with TLS.", f"listen [::]:{facts.port} ssl;"),
        ]
    if not facts.former:
        why = "The name that devices type; it stands in the certificate."
    else:
        why = "The names that devices type, the one from before too; they stand in the certificate."
    return [*listen, Line(why, f"server_name {' '.join((facts.host, *facts.former))};")]


def _own_credential(facts: WebFacts) -> list[Part]:
    return [
        Line(
            "The certificate that shows devices that this is home.",
            _file("ssl_certificate", facts, f"{GATEWAY_CERTIFICATE}.pem"),
        ),
        Line(
            "Its key, readable by root alone; nginx reads it before it gives up that right.",
            _file("ssl_certificate_key", facts, f"{GATEWAY_KEY}.pem"),
        ),
        Line("TLS 1.2 and 1.3; RFC 8996 has done away with what was before.", "ssl_protocols TLSv1.2 TLSv1.3;"),
        Line(
            "For TLS 1.2 only key agreement that keeps the past secret, and ciphers that notice changes "
            "(RFC 9325 section 4.2); TLS 1.3 has no others.",
            "ssl_ciphers ECDHE+AESGCM:ECDHE+CHACHA20;",
        ),
    ]


def _devices(facts: WebFacts) -> list[Part]:
    return [
        Line(
            "Certificates have to come from this CA, the one of the household.",
            _file("ssl_client_certificate", facts, f"{AUTHORITY_CERTIFICATE}.pem"),
        ),
        Line("No certificate, no page: nginx answers 400, before anything else is looked at.", "ssl_verify_client on;"),
        Line(
            "A later CA of the household may stand between this one and the device (RFC 5280 section 6.1).",
            "ssl_verify_depth 2;",
        ),
        Line(
            "Devices on this revocation list are answered 400. Mind its date: once the list is overdue, nginx answers "
            "everybody so.",
            _file("ssl_crl", facts, LIST_PEM),
        ),
        Line(
            "No tickets and, in the next line, no memory of earlier connections: a connection that is taken up again "
            "shows no certificate (RFC 8446 section 2.2), so nobody would look it up in a newer list.",
            "ssl_session_tickets off;",
        ),
        Line("See above.", "ssl_session_cache off;"),
    ]


def _doors(facts: WebFacts) -> list[Part]:
    return [
        Line(
            "More doors behind the first one. Should somebody soften ssl_verify_client one day, this still turns away "
            "whoever was not found good.",
            'if ($ssl_client_verify != "SUCCESS") { return 403; }',
        ),
        Line(
            "Asked by another name than its own, it answers 421 (RFC 9110 section 15.5.20): nginx gives a stray "
            "request to some server, and this one is not for strays.",
            f"if ($host {_other_than(facts)}) {{ return 421; }}",
        ),
        _same_server(facts),
        Line("Do not tell which version of nginx this is.", "server_tokens off;"),
        Line("Leave out headers with an underscore.", "underscores_in_headers off;"),
        Line("Leave out headers whose names have other odd characters.", "ignore_invalid_headers on;"),
    ]


def _other_than(facts: WebFacts) -> str:
    """The second half of a condition that is true for every name but the server's own."""
    if not facts.former:
        return f'!= "{facts.host}"'
    names = "|".join(name.replace(".", r"\.") for name in (facts.host, *facts.former))
    return f'!~ "^({names})$"'


def _same_server(facts: WebFacts) -> Part:
    """See to it that the server that read the list is this one.

    nginx looks at certificates by the settings of the server that TLS was begun with, and chooses the one that answers
    by the Host header. A visitor who names no server in TLS (RFC 6066 section 3) begins with the first one that listens
    there, which may know the CA and no list; and addresses are not named in TLS at all.
    """
    if as_address(facts.host) is None:
        return Line(
            "The same for the name that TLS was begun with (RFC 6066 section 3). A visitor who leaves it out is looked "
            "at by the settings of whichever server listens here first, and that one may have no revocation list.",
            f"if ($ssl_server_name {_other_than(facts)}) {{ return 421; }}",
        )
    return Note(
        "Devices come by an address here, and TLS cannot name one (RFC 6066 section 3). So let no other server listen "
        "on the same port: nginx would look at certificates by the settings of the first, which may have no "
        "revocation list."
    )


def _page(facts: WebFacts) -> Block:
    parts: list[Part] = [
        Line(
            "Ask this address for the page. A name here is looked up once, when nginx starts; an address always works.",
            f"proxy_pass {facts.page};",
        )
    ]
    if facts.page.startswith("https:"):
        parts += [
            Line("Tell the page by which name it is asked, for it may have several.", "proxy_ssl_server_name on;"),
            Note(
                "nginx does not look at the certificate of the page unless it is told whom to trust. "
                "On the way to another computer, give it the certificate of the page or of its CA.",
                "proxy_ssl_verify on; proxy_ssl_trusted_certificate FILE;",
            ),
        ]
    parts += _told_to_page(facts)
    return Block("Every address on this server is the page of the home.", "location /", parts)


def _told_to_page(facts: WebFacts) -> list[Part]:
    """The headers that nginx sets: each replaces whatever came in under the same name, however often it came.

    Programs behind CGI-like gateways see ``-`` and ``_`` in a name as one character (RFC 3875 section 4.1.18), so the
    spelling with an underscore is emptied as well; nginx passes an empty header on as none.
    """
    asked = "$host" if facts.port == 443 else f"$host:{facts.port}"
    told: list[Part] = []
    for name, value, what in (
        (
            DEVICE_HEADER,
            "$ssl_client_s_dn",
            "The device, by the subject of its certificate; the CN is its identity (RFC 4514).",
        ),
        (SERIAL_HEADER, "$ssl_client_serial", "The serial number of its certificate, in hexadecimal."),
        (VERIFY_HEADER, "$ssl_client_verify", "What came of looking at the certificate: SUCCESS."),
    ):
        told += [
            Line(f"{what} What a visitor sends by this name is replaced.", f"proxy_set_header {name} {value};"),
            Line(
                "To some programs an underscore is the same name, so what comes by it is taken away.",
                f'proxy_set_header {name.replace("-", "_")} "";',
            ),
        ]
    return [
        *told,
        Line("The name that was asked for.", f"proxy_set_header Host {asked};"),
        Line(
            "Where the visitor is, and not what a visitor says about that.",
            "proxy_set_header X-Forwarded-For $remote_addr;",
        ),
        Line("The visitor came by TLS.", "proxy_set_header X-Forwarded-Proto https;"),
        Line(
            "The same in the words of RFC 7239 would come from the visitor alone: taken away.",
            'proxy_set_header Forwarded "";',
        ),
        Line(
            "A visitor may name headers here that the next one is to drop (RFC 9110 section 7.6.1), such as those "
            "above. So this is replaced too.",
            "proxy_set_header Connection close;",
        ),
    ]


def _file(directive: str, facts: WebFacts, name: str) -> str:
    return f'{directive} "{facts.folder}/{name}";'
