"""The web front's server block as text; what nginx does with it is tried in tests/interop/test_web_front.py."""

from __future__ import annotations

import pytest

from hearthkey.core.host import WebFacts, web_facts
from hearthkey.formats.web_front import server_block


def facts(host: str = "home.quince.example", page: str = "http://127.0.0.1:8080", port: int = 443) -> WebFacts:
    """Quince Cottage."""
    return web_facts(host=host, folder="/etc/quince home/in-force/", page=page, port=port)


def directives(text: str) -> list[str]:
    """The lines that are no comments."""
    return [line.strip() for line in text.split("\n") if line.strip() and not line.strip().startswith("#")]


VARIANTS = [
    facts(host, page)
    for host in ("home.quince.example", "192.0.2.1")
    for page in ("http://127.0.0.1", "https://[::1]/a")
]


@pytest.mark.parametrize("chosen", VARIANTS, ids=range(len(VARIANTS)))
def test_every_line_says_what_it_does(chosen: WebFacts) -> None:
    """If this fails, the householder runs a line that nobody explained; plain ASCII reads alike on every console."""
    text = server_block(chosen)
    lines = text.split("\n")
    assert text.isascii()
    for number, line in enumerate(lines):
        if line.strip() and not line.lstrip().startswith("#"):
            assert lines[number - 1].lstrip().startswith("# ") or line.strip().startswith("}  # ")


def test_the_files_are_those_of_the_delivery() -> None:
    """If this fails, nginx does not start on the gateway: its files are called otherwise, or a space cuts a name."""
    written = directives(server_block(facts()))
    folder = "/etc/quince home/in-force"
    assert f'ssl_certificate "{folder}/gateway-certificate.pem";' in written
    assert f'ssl_certificate_key "{folder}/gateway-key.pem";' in written
    assert f'ssl_client_certificate "{folder}/ca-certificate.pem";' in written
    assert f'ssl_crl "{folder}/list.pem";' in written


def test_both_families_are_listened_to() -> None:
    """If this fails, a phone in an IPv6 network does not reach home."""
    written = directives(server_block(facts()))
    assert [line for line in written if line.startswith("listen")] == ["listen 443 ssl;", "listen [::]:443 ssl;"]


def test_old_tls_is_not_spoken() -> None:
    """If this fails, the front speaks what RFC 8996 did away with."""
    assert "ssl_protocols TLSv1.2 TLSv1.3;" in directives(server_block(facts()))


def test_an_address_cannot_be_named_in_tls() -> None:
    """If this fails, a front that is reached by its address turns everybody away (RFC 6066 section 3)."""
    assert [line for line in directives(server_block(facts("192.0.2.1"))) if "ssl_server_name" in line] == []
    assert "let no other server listen" in " ".join(server_block(facts("192.0.2.1")).replace("#", "").split())


@pytest.mark.parametrize(("port", "host"), [(443, "$host"), (8443, "$host:8443")])
def test_the_page_hears_the_name_that_was_typed(port: int, host: str) -> None:
    """If this fails, the page's links lead to another port."""
    assert f"proxy_set_header Host {host};" in directives(server_block(facts(port=port)))
