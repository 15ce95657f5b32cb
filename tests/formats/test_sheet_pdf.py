"""The sheet on paper: the same bytes every time, and everything on some page."""

from __future__ import annotations

import io
import re

import pytest
from fontTools.ttLib import TTFont

from hearthkey.core.keysets import BROAD, COMPACT
from hearthkey.core.tunnel import terms
from hearthkey.formats.cut_fonts import cut
from hearthkey.formats.gateway_sheet import blocks
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title
from hearthkey.formats.sheet_pdf import Fonts, pages
from tests.core.quince_terms import BOTH
from tests.formats.faces import FONTS

SHEET = blocks(terms(BOTH, BROAD, device_key_sets=(BROAD, COMPACT), extra_secret=True))


def page_count(pdf: bytes) -> int:
    """How many pages a PDF says it has (ISO 32000-1 section 7.7.3.2)."""
    return pdf.count(b"/Type /Page\n") + pdf.count(b"/Type /Page ")


def test_the_same_sheet_is_the_same_file() -> None:
    """Broken if it fails: a pack of which nothing changed looks changed, and is delivered again."""
    first = pages(SHEET, FONTS)
    pages([Title("Another")], FONTS)
    cut.cache_clear()
    assert pages(SHEET, FONTS) == first


def test_the_largest_ordinary_sheet_takes_two_pages() -> None:
    """Broken if it fails: the sheet is no longer a leaf with two sides."""
    assert page_count(pages(SHEET, FONTS)) == 2


def test_every_font_is_inside() -> None:
    """Broken if it fails: another computer sets the sheet in whatever it has (ISO 32000-1 section 9.9)."""
    pdf = pages(SHEET, FONTS)
    described = re.findall(rb"/FontName /([A-Z]{6}\+[A-Za-z0-9-]+)", pdf)
    assert sorted(name.partition(b"+")[2].rpartition(b"-")[0] for name in described) == [
        b"SourceSans3-Roman-400",
        b"SourceSans3-Roman-600",
        b"Vollkorn-Regular-600",
    ]
    assert pdf.count(b"/FontFile2 ") == pdf.count(b"/ToUnicode ") == len(described)
    assert b"/Type1" not in pdf  # the library's own first font, which no document has inside


def test_another_sheet_printed_before_takes_no_letters_away() -> None:
    """Broken if it fails: the second sheet of an evening has holes where the first one had other letters."""
    alone = pages(SHEET, FONTS)
    pages((Title("Quince"),), FONTS)
    pages(tuple(block for block in SHEET if isinstance(block, Row))[:3], FONTS)
    assert pages(SHEET, FONTS) == alone
    names = [set(re.findall(rb"/FontName /[A-Z]{6}\+([A-Za-z0-9-]+)", one)) for one in (alone, pages(SHEET[:4], FONTS))]
    assert names[0].isdisjoint(names[1])


def test_a_heading_never_ends_a_page() -> None:
    """Broken if it fails: somebody turns the page to learn what a heading was about.

    As long as rows alone fill a page, the heading behind them has to take its row along to the next.
    """
    row = Row("Label", ("value",), "why")
    ends = [page_count(pages([*[row] * count, Heading("Heading"), row], FONTS)) for count in range(20, 32)]
    without = [page_count(pages([*[row] * count], FONTS)) for count in range(20, 32)]
    heading = [page_count(pages([*[row] * count, Heading("Heading")], FONTS)) for count in range(20, 32)]
    assert ends == sorted(ends)
    assert any(end > bare for end, bare in zip(ends, without, strict=True))
    assert any(end > alone for end, alone in zip(ends, heading, strict=True))


@pytest.mark.parametrize(
    "block",
    [
        Row("Host", ("a" * 253,)),
        Row("a" * 64, ("value",)),
        Row("", ()),
        Note(""),
        Note("家へようこそ 🏠"),
        Title("W" * 64),
        Heading("Straße, Łódź, Ελλάδα"),
    ],
)
def test_odd_blocks_are_set(block: Block) -> None:
    """Broken if it fails: a long host, an empty field or a letter that the fonts lack ends in a traceback."""
    assert pages([block], FONTS).startswith(b"%PDF-1.")


def test_a_font_without_weights_will_do() -> None:
    """Broken if it fails: with a family of one weight in the place of ours there is no sheet at all."""
    plain = cut(FONTS.sans, 400, "abcdefghijklmnopqrstuvwxyz 0123456789")
    assert "fvar" not in TTFont(io.BytesIO(plain))
    assert page_count(pages([Title("title"), Row("label", ("value",))], Fonts(plain, plain))) == 1


def test_a_cut_font_has_a_name_of_its_own() -> None:
    """Broken if it fails: two weights bear one name, and a reader draws both with the first that it finds."""
    names = {str(TTFont(io.BytesIO(cut(FONTS.sans, weight, "abc")))["name"].getDebugName(6)) for weight in (400, 600)}
    assert len(names) == 2
