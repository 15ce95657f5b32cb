"""Whether a camera reads the code of a pick-up: two readers that we did not write, and shots as a hand takes them."""

from __future__ import annotations

import random
import subprocess
from pathlib import Path

import zxingcpp

from hearthkey.core.secret import Secret
from hearthkey.formats import link_code
from tests.interop.camera import screen, shots
from tests.judges import needs

SHOTS = 50
TOKEN = "abcdefghijkmnpqrstuvwxyz23456789"
LINKS = tuple(
    Secret(f"http://{host}:{port}/{token}")
    for host, port, token in (
        ("198.51.100.23", 49152, "k7m2qd4xw9c6hbsnz5vt3r8yja"),
        ("[2001:db8:51::17:a2b3]", 60999, "aaaaaaaaaaaaaaaaaaaaaaaaaa"),
    )
)
"""One of each family, as long as they come in a household (RFC 5737, RFC 3849)."""
LOOKS = 4
"""So many shots of one code; a phone's finder takes them within a fraction of a second."""


def test_a_reader_of_phones_reads_every_shot() -> None:
    """If this failed, somebody would hold a phone before the screen and nothing would happen."""
    for link in LINKS:
        pictures = list(shots(screen(link_code.matrix(link)), SHOTS, link.reveal()))
        read = [zxingcpp.read_barcodes(one) for one in pictures]
        assert [found[0].text if found else "" for found in read] == [link.reveal()] * SHOTS


def test_two_readers_read_every_ticket(tmp_path: Path) -> None:
    """If this failed, some tickets would be read by one reader only, or by none.

    Fifty tickets, each its own link. One reader has to read each at first sight; zbar, which gives up on shots that
    are tilted and soft, within a few.
    """
    zbar = needs("zbarimg")
    dice = random.Random("fifty tickets")  # noqa: S311 - samples, no secret
    hosts = ("198.51.100.23:49152", "[2001:db8:51::17:a2b3]:60999")
    links = [f"http://{hosts[number % 2]}/{''.join(dice.choices(TOKEN, k=26))}" for number in range(SHOTS)]
    seen = {link: shots(screen(link_code.matrix(Secret(link))), LOOKS, link) for link in links}
    for look in range(LOOKS):
        files = []
        for number, (link, taken) in enumerate(seen.items()):
            picture = next(taken)
            if look == 0:
                assert [one.text for one in zxingcpp.read_barcodes(picture)] == [link]
            files.append(tmp_path / f"{look}-{number:02}.ppm")
            picture.save(files[-1])
        read = subprocess.run([zbar, "-q", "--raw", *files], capture_output=True, text=True, check=False)
        found = set(read.stdout.split())
        assert found <= set(seen)
        seen = {link: taken for link, taken in seen.items() if link not in found}
        if not seen:
            break
    assert not seen
