"""Programs of other hands read the settings sheet and the named groups."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest
from PIL import Image

from hearthkey.core.keysets import BROAD, COMPACT
from hearthkey.core.tunnel import terms
from hearthkey.formats.gateway_sheet import blocks
from hearthkey.formats.groups import GROUPS, Group, parameters, prime
from hearthkey.formats.sheet import Row
from hearthkey.formats.sheet_pdf import pages
from tests.core.quince_terms import BOTH
from tests.formats.faces import FONTS
from tests.judges import needs

SHEET = blocks(terms(BOTH, BROAD, device_key_sets=(BROAD, COMPACT), extra_secret=True))
ALL = pytest.mark.parametrize("group", GROUPS.values(), ids=lambda one: one.name)


@pytest.fixture(scope="module")
def paper(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sheet as a file."""
    path = tmp_path_factory.mktemp("sheet") / "sheet.pdf"
    path.write_bytes(pages(SHEET, FONTS))
    return path


def ask(*command: str | Path, given: bytes = b"") -> bytes:
    """Run a judge, which has to agree and may not grumble, and return what it says."""
    done = subprocess.run(command, capture_output=True, input=given, timeout=60, check=False)
    assert done.returncode == 0, done.stderr.decode()
    return done.stdout


def test_poppler_reads_every_word(paper: Path) -> None:
    """Broken if it fails: values cannot be copied out of the paper, nor read aloud; source: pdftotext(1)."""
    found = " ".join(ask(needs("pdftotext"), "-raw", paper, "-").decode().split())
    for block in SHEET:
        parts = [block.label, *block.values, block.why, block.source] if isinstance(block, Row) else [block.text]
        for part in parts:
            assert " ".join(part.split()) in found


def test_poppler_draws_it_inside_its_margins(paper: Path, tmp_path: Path) -> None:
    """Broken if it fails: a printer cuts words off, or a page is empty; source: pdftoppm(1)."""
    ask(needs("pdftoppm"), "-r", "72", "-gray", paper, tmp_path / "page")
    drawn = sorted(tmp_path.glob("page*"))
    assert len(drawn) == 2
    for picture in drawn:
        with Image.open(picture) as page:
            assert page.size == (596, 842)  # A4 in points, rounded up
            ink = page.point([255 if shade < 200 else 0 for shade in range(256)]).getbbox()
        assert ink is not None
        left, top, right, bottom = ink
        assert 40 <= left < 50
        assert 546 < right <= 556
        assert top >= 28
        assert bottom <= 842 - 20


def numbers(der_or_pem: bytes) -> tuple[int, ...]:
    """The first two INTEGERs of DH parameters, as OpenSSL takes them apart; source: asn1parse(1)."""
    said = ask(needs("openssl"), "asn1parse", given=der_or_pem).decode()
    return tuple(int(one, 16) for one in re.findall(r"INTEGER +:([0-9A-F]+)", said)[:2])


@ALL
def test_openssl_has_the_same_numbers(group: Group) -> None:
    """Broken if it fails: our prime is not the published one; source: genpkey(1), group names of OpenSSL 3."""
    theirs = group.name.replace("modp", "modp_")
    made = ask(needs("openssl"), "genpkey", "-genparam", "-algorithm", "DH", "-pkeyopt", f"group:{theirs}")
    ours = numbers(parameters(group).encode("ascii"))
    assert ours == numbers(made) == (prime(group), 2)


@ALL
def test_openssl_knows_the_file_by_name(group: Group) -> None:
    """Broken if it fails: software that reads the file takes it for numbers of somebody's own; source: dhparam(1)."""
    said = ask(needs("openssl"), "dhparam", "-text", "-noout", given=parameters(group).encode("ascii")).decode()
    assert f"GROUP: {group.name.replace('modp', 'modp_')}" in said
    assert f"({group.bits} bit)" in said


@pytest.mark.parametrize("name", [one.name for one in GROUPS.values() if one.bits <= 3072])
def test_openssl_finds_both_numbers_prime(name: str) -> None:
    """Broken if it fails: p or (p-1)/2 has factors; source: prime(1)."""
    p = prime(GROUPS[name])
    for number in (p, (p - 1) // 2):
        assert ask(needs("openssl"), "prime", "-hex", f"{number:x}").decode().strip().endswith("is prime")
