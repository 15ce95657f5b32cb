"""The forwarding sheet as PDF, judged by poppler: a leaf with two sides at most, every port to be found."""

from __future__ import annotations

import subprocess
from pathlib import Path

from hearthkey.adapters.places import faces
from hearthkey.core.forwarding import forwarding
from hearthkey.formats.forwarding_sheet import blocks
from hearthkey.formats.sheet_pdf import Fonts, pages
from tests.core.quince_terms import BOTH
from tests.judges import needs


def test_the_sheet_on_paper(tmp_path: Path) -> None:
    """Broken if it fails: somebody stands before the router with a sheet on which a port is missing."""
    told = forwarding(BOTH, web_front=True, inside="198.51.100.2", router="100.64.0.9")
    path = tmp_path / "sheet.pdf"
    path.write_bytes(pages(blocks(told), Fonts(*faces())))
    info = subprocess.run([needs("pdfinfo"), path], capture_output=True, text=True, check=True).stdout
    assert "Pages:           2" in info
    assert "A4" in info
    fonts = subprocess.run([needs("pdffonts"), path], capture_output=True, text=True, check=True).stdout
    assert all(row.split()[-5] == "yes" for row in fonts.splitlines()[2:]), fonts
    page = subprocess.run([needs("pdftotext"), path, "-"], capture_output=True, text=True, check=True).stdout
    words = " ".join(page.split())
    for wanted in ("UDP, port 500", "UDP, port 4500", "TCP, port 443", "198.51.100.2", "IP protocol 50", "RFC 6598"):
        assert wanted in words
