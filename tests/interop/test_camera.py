"""Whether a camera reads the code of a pick-up: two readers that we did not write, and shots as a hand takes them."""

from __future__ import annotations

import subprocess
from pathlib import Path

import zxingcpp

from hearthkey.core.secret import Secret
from hearthkey.formats import link_code
from tests.interop.camera import screen, shots
from tests.judges import needs

SHOTS = 50
LINKS = tuple(
    Secret(f"http://{host}:{port}/{token}")
    for host, port, token in (
        ("198.51.100.23", 49152, "k7m2qd4xw9c6hbsnz5vt3r8yja"),
        ("[2001:db8:51::17:a2b3]", 60999, "aaaaaaaaaaaaaaaaaaaaaaaaaa"),
    )
)
"""One of each family, as long as they come in a household (RFC 5737, RFC 3849)."""


def test_a_reader_of_phones_reads_every_shot() -> None:
    """If this failed, somebody would hold a phone before the screen and nothing would happen."""
    for link in LINKS:
        pictures = list(shots(screen(link_code.matrix(link)), SHOTS, link.reveal()))
        read = [zxingcpp.read_barcodes(one) for one in pictures]
        assert [found[0].text if found else "" for found in read] == [link.reveal()] * SHOTS


def test_another_reader_reads_nearly_every_shot(tmp_path: Path) -> None:
    """If this failed, the code would please one reader only. zbar gives up on a few that are tilted and soft."""
    zbar = needs("zbarimg")
    link = LINKS[0]
    for number, picture in enumerate(shots(screen(link_code.matrix(link)), SHOTS, link.reveal())):
        picture.save(tmp_path / f"{number:02}.png")
    read = subprocess.run(
        [zbar, "-q", "--raw", *sorted(tmp_path.iterdir())], capture_output=True, text=True, check=False
    )
    assert set(read.stdout.split()) == {link.reveal()}
    assert len(read.stdout.split()) >= SHOTS * 9 // 10
