"""A real nginx on 127.0.0.1 with the app's server block, a page behind it, and the visitors who come."""

from __future__ import annotations

import json
import os
import signal
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

from hearthkey.core.host import WebFacts
from hearthkey.core.pack import LIST_PEM
from hearthkey.formats.web_front import server_block
from tests.judges import needs
from tests.peers.servers import Server, ask, listens, running

HOST = "home.quince.example"
GREETING = "The kettle is on."

_SETTINGS = """\
daemon off;
{user}
worker_processes 1;
pid nginx.pid;
error_log stderr info;
events {{
}}
http {{
    access_log off;
    client_body_temp_path body;
    proxy_temp_path proxy;
    fastcgi_temp_path fastcgi;
    uwsgi_temp_path uwsgi;
    scgi_temp_path scgi;
{first}
    include front.conf;
}}
"""

Headers = list[tuple[str, str]]


@dataclass
class Page:
    """A page of the home: greets, and remembers the headers of everybody who came as far as this.

    Args:
        port: of 127.0.0.1.
        visits: the headers of each request, as they came.
    """

    port: int = 0
    visits: list[Headers] = field(default_factory=list)


@contextmanager
def page() -> Iterator[Page]:
    """Serve the page for the length of a `with` block."""
    shown = Page()

    class Greeter(BaseHTTPRequestHandler):
        timeout = 20

        def do_GET(self) -> None:
            shown.visits.append(list(self.headers.items()))
            told = f"<p>{GREETING}</p>{json.dumps(self.path)}".encode()
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.send_header("Content-Length", str(len(told)))
            self.end_headers()
            self.wfile.write(told)

        def log_message(self, *_: object) -> None:
            """Say nothing: the visits are remembered."""

    with ThreadingHTTPServer(("127.0.0.1", 0), Greeter) as server:
        server.daemon_threads = False
        shown.port = server.server_address[1]
        serving = Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02})
        serving.start()
        try:
            yield shown
        finally:
            server.shutdown()
            serving.join()


@dataclass(frozen=True)
class Front:
    """A running nginx.

    Args:
        server: the program.
        facts: what it was told.
        folder: where its files lie.
    """

    server: Server
    facts: WebFacts
    folder: Path

    @property
    def url(self) -> str:
        """What a visitor types."""
        return f"https://{HOST}:{self.facts.port}"

    def deliver(self, revocation_list: bytes) -> None:
        """Put another list in the delivered folder, and wait until nginx works with it and nothing older."""
        Path(self.facts.folder, LIST_PEM).write_bytes(revocation_list)
        before = self._workers()
        self.server.process.send_signal(signal.SIGHUP)
        self.server.wait_until(lambda _: bool(self._workers()) and not before & self._workers(), "read anew")

    def _workers(self) -> set[str]:
        master = self.server.process.pid
        return set(Path(f"/proc/{master}/task/{master}/children").read_text(encoding="ascii").split())


@contextmanager
def front(facts: WebFacts, folder: Path, *, first: str = "", block: str | None = None) -> Iterator[Front]:
    """Run nginx for the length of a `with` block.

    Args:
        folder: a new one, for its files.
        first: another server, which stands before ours.
        block: instead of what the app writes.
    """
    conf = settings(folder, server_block(facts) if block is None else block, first)
    command = (needs("nginx"), "-e", "stderr", "-p", folder, "-c", conf)
    with running(command, folder / "said.txt", listens(facts.port)) as server:
        yield Front(server, facts, folder)


def settings(folder: Path, block: str, first: str = "") -> Path:
    """Write the settings of a whole nginx around a server block."""
    folder.mkdir()
    (folder / "front.conf").write_text(block, encoding="ascii")
    conf = folder / "nginx.conf"
    # As root it would serve as somebody who may not enter the folders of a test.
    user = "user root;" if os.geteuid() == 0 else ""
    conf.write_text(_SETTINGS.format(user=user, first=first), encoding="ascii")
    return conf


@dataclass(frozen=True)
class Visitor:
    """Somebody with curl.

    Args:
        authority: the CA certificate that the gateway is known by.
        container: an exported PKCS#12, None for nobody's device.
        words: its passphrase.
    """

    authority: Path
    container: Path | None = None
    words: str = ""

    def visits(self, at: Front, *more: str, address: str = "127.0.0.1", path: str = "/") -> tuple[int, str]:
        """Ask for the page by its name; return the HTTP status, or 0 where there was no answer, and all that came."""
        return self.asks(at.url + path, "--resolve", f"{HOST}:{at.facts.port}:{address}", *more)

    def visits_address(self, at: Front, *more: str) -> tuple[int, str]:
        """Ask for the page by address, so that TLS names no server; the gateway is believed unseen."""
        return self.asks(f"https://127.0.0.1:{at.facts.port}", "--insecure", *more)

    def asks(self, url: str, *more: str) -> tuple[int, str]:
        """Ask for a page; return the HTTP status, or 0 where there was no answer, and all that came."""
        own = () if self.container is None else ("--cert-type", "P12", "--cert", self.container, "--pass", self.words)
        command: Sequence[str | Path] = (
            *(needs("curl"), "--silent", "--show-error", "--noproxy", "*", "--cacert", self.authority, *own),
            *("--write-out", "\n%{http_code}", *more, url),
        )
        answer = ask(command)
        told, _, status = answer.said.rpartition("\n")
        return int(status), told

    def credential(self, folder: Path) -> Path:
        """The PKCS#12 as PEM, for `speaks`."""
        opened, container = folder / "credential.pem", self.container
        assert container is not None
        command = (needs("openssl"), "pkcs12", "-in", container, "-nodes", "-passin", f"pass:{self.words}")
        assert ask((*command, "-out", opened)).code == 0
        return opened

    def speaks(self, at: Front, credential: Path, headers: Sequence[str], *more: str | Path) -> str:
        """Ask for the page word by word; return everything that came, with what `openssl s_client` says of TLS.

        Args:
            headers: in this order, and no others.
        """
        where = ("-connect", f"127.0.0.1:{at.facts.port}", "-CAfile", self.authority, "-cert", credential, "-ign_eof")
        request = "\r\n".join(("GET / HTTP/1.1", *headers, "", ""))
        return ask((needs("openssl"), "s_client", *where, *more), given=request.encode("ascii")).said
