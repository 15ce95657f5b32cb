"""The household's paper as poppler draws it, scanned badly, typed by hand, and opened by programs of other hands."""

from __future__ import annotations

import base64
import io
import random
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image, ImageChops, ImageFilter

from hearthkey.adapters.pictures import read_codes
from hearthkey.core import paper
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.paper import Gathered
from hearthkey.formats import paper_der, paper_sheet
from hearthkey.formats.paper_sheet import PaperFacts
from hearthkey.services import reading_paper
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.judges import needs


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Home]:
    """Quince Cottage, in which Odile's tablet is stopped."""
    with at_home(tmp_path_factory.mktemp("home") / "data") as made:
        made.stop("Odile tablet")
        yield made


@pytest.fixture(scope="module")
def facts(home: Home) -> PaperFacts:
    """What its paper says."""
    return home.house.papering.facts(Language.ENGLISH)


@pytest.fixture(scope="module")
def printed(home: Home, facts: PaperFacts, tmp_path_factory: pytest.TempPathFactory) -> dict[Paper, Path]:
    """The PDF on both papers."""
    folder = tmp_path_factory.mktemp("paper")
    made = {}
    for one in Paper:
        made[one] = folder / f"{one.name}.pdf"
        made[one].write_bytes(drawn(home, facts, one))
    return made


def drawn(home: Home, told: PaperFacts, size: Paper) -> bytes:
    """The PDF, as the command line draws it."""
    return home.house.draw_pages(
        lambda measure: paper_sheet.pages(told, size, measure), size, told.title, told.language.value, told.title
    )


def said(*command: str | Path, given: bytes = b"") -> bytes:
    """Run a judge, which has to agree, and return what it says."""
    done = subprocess.run(command, capture_output=True, input=given, timeout=60, check=False)
    assert done.returncode == 0, done.stderr.decode()
    return done.stdout


def page(path: Path, dots: int, number: int = 1) -> Image.Image:
    """A page as poppler draws it; source: pdftoppm(1)."""
    data = said(needs("pdftoppm"), "-r", str(dots), "-gray", "-f", str(number), "-l", str(number), path)
    return Image.open(io.BytesIO(data))


def scan(shown: Image.Image, seed: str, *, turned: float, blur: float, noise: float) -> bytes:
    """What a scanner that has seen better days makes of a page, as PNG."""
    dice = random.Random(seed)  # noqa: S311 - dust, no secret
    seen = shown.rotate(turned, Image.Resampling.BICUBIC, expand=True, fillcolor=235)
    soft = seen.filter(ImageFilter.GaussianBlur(blur))
    dust = Image.frombytes("L", soft.size, dice.randbytes(soft.width * soft.height))
    grey = ImageChops.multiply(soft, Image.linear_gradient("L").resize(soft.size).point(lambda shade: 200 + shade // 5))
    out = io.BytesIO()
    Image.blend(grey, dust, noise).save(out, "PNG", compress_level=1)
    return out.getvalue()


SCANS = {
    "straight, 150 dots": (150, {"turned": 0.0, "blur": 0.6, "noise": 0.05}),
    "two degrees, 150 dots": (150, {"turned": 2.0, "blur": 0.5, "noise": 0.08}),
    "four degrees the other way, 200 dots": (200, {"turned": -4.0, "blur": 0.9, "noise": 0.12}),
    "upside down, 200 dots, out of focus": (200, {"turned": 181.5, "blur": 1.3, "noise": 0.1}),
}


@pytest.mark.parametrize(("how", "size"), list(zip(SCANS, (*Paper, *Paper), strict=True)))
def test_a_bad_scan_gives_everything_back(printed: dict[Paper, Path], facts: PaperFacts, how: str, size: Paper) -> None:
    """Broken if it fails: a paper is kept for years that no scanner reads; source: pdftoppm(1), zxing-cpp."""
    dots, spoiled = SCANS[how]
    data = scan(page(printed[size], dots), f"{how} {size.name}", **spoiled)
    found = reading_paper.gathered(data, "scan.png", Gathered(), read_codes)
    assert paper_der.decode(found.content()) == facts.contents


def test_a_stain_on_one_code_costs_only_its_lines_and_hands_make_up_for_it(
    printed: dict[Paper, Path], facts: PaperFacts
) -> None:
    """Broken if it fails: a cup of tea costs the household, or an evening of typing what was read already."""
    shown = page(printed[Paper.A4], 150)
    wide, high = shown.size
    shown.paste(255, (wide // 2, high * 30 // 100, wide, high * 45 // 100))
    found = reading_paper.gathered(scan(shown, "tea", turned=1, blur=0.5, noise=0.05), "a.png", Gathered(), read_codes)
    assert 10 < len(found.missing) < 20
    wanted = {f"{number:02}" for number in found.missing}
    rows = [row for row in text_of(printed[Paper.A4], "-layout").splitlines() if row.strip()[:2] in wanted]
    assert paper_der.decode(reading_paper.typed("\n".join(rows), found).content()) == facts.contents


def test_ten_per_cent_of_a_code_may_be_gone(printed: dict[Paper, Path], facts: PaperFacts) -> None:
    """Broken if it fails: a crease or a hole costs a code. Source: level Q restores 25 % (ISO/IEC 18004 table 8)."""
    shown = page(printed[Paper.LETTER], 200)
    wide, high = shown.size
    shown.paste(255, (0, high * 40 // 100, wide, high * 40 // 100 + 20))
    data = scan(shown, "crease", turned=1, blur=0.5, noise=0.05)
    found = reading_paper.gathered(data, "a.png", Gathered(), read_codes)
    assert paper_der.decode(found.content()) == facts.contents


def text_of(path: Path, *how: str) -> str:
    """The second page's text; source: pdftotext(1)."""
    return said(needs("pdftotext"), *how, "-f", "2", "-l", "2", path, "-").decode()


@pytest.mark.parametrize("size", Paper)
def test_two_pages_whose_lines_can_be_read_by_hand(printed: dict[Paper, Path], facts: PaperFacts, size: Paper) -> None:
    """Broken if it fails: without a scanner the paper is lost; source: pdftotext(1), pdfinfo(1)."""
    assert b"Pages:           2" in said(needs("pdfinfo"), printed[size])
    found = paper.read_typed(text_of(printed[size], "-layout"))
    assert found.bad == ()
    assert paper_der.decode(Gathered().with_lines(found.lines).content()) == facts.contents


def test_no_word_of_the_passphrase_is_on_it_and_neither_is_the_bare_key(
    printed: dict[Paper, Path], home: Home, facts: PaperFacts
) -> None:
    """Broken if it fails: whoever finds the paper has the household."""
    text = said(needs("pdftotext"), printed[Paper.A4], "-").decode().casefold()
    found = set(re.findall("[a-z]+", text))
    assert not found & set(PASSPHRASE.reveal().split())
    bare = home.key.to_pkcs8().reveal()
    assert bare[40:80] not in paper_der.encode(facts.contents)
    paper_sheet.pages(facts, Paper.A4, lambda one, _face, size: len(one) * size / 2, PASSPHRASE)


def test_without_the_app_other_tools_get_to_the_key(printed: dict[Paper, Path], home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the paper promises too much; source: base32(1), asn1parse(1), x509(1), pkey(1)."""
    rows = [row.split() for row in text_of(printed[Paper.A4], "-layout").splitlines() if re.match(r" *\d\d  ", row)]
    body = "".join("".join(row[1:9]) for row in rows)
    whole = said(needs("base32"), "--decode", given=body.encode())
    assert whole == base64.b32decode(body)
    der = tmp_path / "paper.der"
    der.write_bytes(whole[: int.from_bytes(whole[2:4], "big") + 4])
    shown = said(needs("openssl"), "asn1parse", "-inform", "DER", "-in", der).decode()
    assert "UTF8STRING        :Quince Cottage" in shown
    octets = [
        (int(found[1]), int(found[2]), int(found[3]))
        for found in re.finditer(r"^ *(\d+):d=1 +hl=(\d+) +l= *(\d+) prim: OCTET STRING", shown, re.MULTILINE)
    ]
    assert len(octets) == 2
    certificate, key = (whole[at + head : at + head + length] for at, head, length in octets)
    subject = said(needs("openssl"), "x509", "-inform", "DER", "-noout", "-pubkey", given=certificate)
    kept = next(value for name, value in home.world.vault.secrets.items() if name.endswith("/ca"))
    assert base64.b64decode("".join(kept.splitlines()[1:-1])) == key
    bare = home.house.locksmith.open_guard(paper_der.key_text(key), PASSPHRASE).to_pkcs8().reveal()
    assert said(needs("openssl"), "pkey", "-inform", "DER", "-pubout", given=bare) == subject


@pytest.mark.parametrize("language", Language)
def test_every_language_fits_and_a_full_paper_too(home: Home, facts: PaperFacts, language: Language) -> None:
    """Broken if it fails: the words of one language push a code off the page."""
    with at_home(home.house.data.parent / language.value) as full:
        with full.house.register.change() as change:
            for number in range(30):
                serial = f"{0x7F << 152 | number:040x}"
                change.adopt(serial, full.house.clock.now())
                change.withdraw(serial, facts.contents.withdrawn[0].reason, full.house.clock.now())
        told = full.house.papering.facts(language)
        assert len(paper.lines_of(paper_der.encode(told.contents))) >= paper.MOST_LINES - 1
        for size in Paper:
            assert drawn(full, told, size).startswith(b"%PDF-")
