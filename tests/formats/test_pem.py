"""PEM: RFC 7468 on writing, the tolerance of RFC 4945 section 6 on reading."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.formats import pem
from tests.formats.practice import noise

DER = noise(150)


def test_lines_have_64_characters_and_end_in_lf() -> None:
    """Broken if it fails: parsers that follow RFC 7468 section 2 (64 characters, but for the last) may refuse it."""
    lines = pem.encode(pem.CERTIFICATE, DER).split("\n")
    assert lines[0] == "-----BEGIN CERTIFICATE-----"
    assert lines[-2:] == ["-----END CERTIFICATE-----", ""]
    assert [len(line) for line in lines[1:-2]] == [64, 64, 64, 8]


@given(st.lists(st.binary(min_size=1, max_size=300), min_size=1, max_size=4))
def test_what_is_written_is_read_back(blocks: list[bytes]) -> None:
    """Broken if it fails: a certificate changes on its way through text."""
    text = "".join(pem.encode(pem.CERTIFICATE, one) for one in blocks)
    assert pem.decode(text, pem.CERTIFICATE) == blocks


@pytest.mark.parametrize("end", ["\n", "\r", "\r\n", " \t\n", "  \r\n"])
@pytest.mark.parametrize("width", [1, 4, 63, 64, 76, 1000])
def test_every_line_end_and_length_is_read(end: str, width: int) -> None:
    """Broken if it fails: files that other systems wrote are refused (RFC 4945 section 6)."""
    body = "".join(pem.encode(pem.CERTIFICATE, DER).split("\n")[1:-2])
    lines = ["-----BEGIN CERTIFICATE-----", *(body[at : at + width] for at in range(0, len(body), width))]
    text = end.join(["Subject: the gateway at home", *lines, "-----END CERTIFICATE-----", "and after it", ""])
    assert pem.decode(text, pem.CERTIFICATE) == [DER]


@pytest.mark.parametrize("label", ["CRL", "X509 CRL"])
def test_both_labels_of_a_list_are_read(label: str) -> None:
    """Broken if it fails: a list labelled as RFC 4945 section 6.2 shows, or as RFC 7468 section 6 wants, is refused."""
    assert pem.decode(pem.encode(label, DER), pem.X509_CRL) == [DER]


def test_another_label_is_named() -> None:
    """Broken if it fails: a bare private key could pass where an encrypted one belongs."""
    text = "note\n" + pem.encode(pem.PRIVATE_KEY, DER)
    with pytest.raises(Refused) as refused:
        pem.decode(text, pem.ENCRYPTED_PRIVATE_KEY)
    assert refused.value.code == "pem-unreadable"
    assert refused.value.facts == {"wanted": "ENCRYPTED PRIVATE KEY", "found": "PRIVATE KEY", "line": 2}


B, E = "-----BEGIN CERTIFICATE-----\n", "-----END CERTIFICATE-----\n"


@pytest.mark.parametrize(
    "text",
    [
        "",
        "only words",
        B,
        B + "TUFB\n",
        B + E,
        E,
        B + "TUF\n" + E,
        B + "TU!FB\n" + E,
        B + "TUF=TUFB\n" + E,
        B + "TUFBTR==\n" + E,
        B + "Proc-Type: 4,ENCRYPTED\n\nTUFB\n" + E,
        B + B + "TUFB\n" + E,
        B + "TUFB\n" + B,
        B + "TUFB\n" + "-----END X509 CRL-----\n",
        B.lower() + "TUFB\n" + E.lower(),
        B + "TÜFB\n" + E,
    ],
)
def test_broken_text_is_refused(text: str) -> None:
    """Broken if it fails: a damaged file is read as something, or stops the app (RFC 7468 section 3)."""
    with pytest.raises(Refused) as refused:
        pem.decode(text, pem.CERTIFICATE)
    assert refused.value.code == "pem-unreadable"
    assert isinstance(refused.value.facts["line"], int)
