"""`hearthkey paper` and `hearthkey restore --paper`."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

from tests.cli.running import Cottage
from tests.fakes.home import World
from tests.judges import needs


@pytest.fixture
def other(cottage: Cottage, tmp_path: Path) -> Cottage:
    """Another computer, without a household."""
    world = World(clock=cottage.world.clock, dice=cottage.world.dice, locks=cottage.world.locks)
    return Cottage(tmp_path / "other", world, cottage.capsys, cottage.words)


def test_the_household_comes_back_from_a_scan_and_typed_lines(cottage: Cottage, other: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a fire that took the computer takes the household with it."""
    assert cottage.unlocked("stop", "Tomasz laptop", "--yes").code == 0
    pdf = tmp_path / "out" / "quince.pdf"
    ran = cottage.run("paper", "--into", pdf, "--json")
    assert ran.code == 0, ran.err
    assert ran.told["files"] == [str(pdf)]
    assert pdf.stat().st_mode & 0o777 == 0o600
    assert "put on paper, as quince.pdf" in cottage.run("diary", "--last", "1").out
    subprocess.run([needs("pdftoppm"), "-r", "150", "-png", "-l", "1", pdf, tmp_path / "scan"], check=True)
    scan = next(tmp_path.glob("scan*.png"))
    subprocess.run([needs("pdftotext"), "-layout", "-f", "2", pdf, tmp_path / "typed.txt"], check=True)
    typed = (tmp_path / "typed.txt").read_text(encoding="utf-8")
    assert "those of today" in cottage.unlocked("try", "--paper", scan).out
    assert cottage.run("settle", "--name", "Plum House", "--yes").code == 0
    assert "The settings have changed since" in cottage.unlocked("try", "--paper", scan).out
    slip = tmp_path / "slip.txt"
    slip.write_text(typed.replace("\n05 ", "\n06 ").replace("\n07 ", "\nxx "), encoding="utf-8")
    refused = other.unlocked("restore", "--paper", slip, "--yes")
    assert refused.code == 3
    assert "Lines still wanted: 5, 7" in refused.err
    looked = other.unlocked("restore", "--paper", slip, scan, "--plan")
    assert looked.code == 0, looked.err
    assert "People and devices are not on paper" in looked.out
    assert other.run("list").code == 3
    done = other.unlocked("restore", "--paper", scan, "--yes")
    assert done.code == 0, done.err
    assert "1 pass on the revocation list" in done.out
    assert "From now on Quince Cottage (practice) lives on this computer." in done.err
    assert other.unlocked("restore", "--paper", scan, "--yes").code == 3
    assert other.unlocked("add", "Ines", "phone", "--kind", "linux").code == 0
    assert len(other.run("seal", "--list", "--json").told["copies"]) == 2


def test_what_is_no_paper_is_refused_and_nothing_is_founded(cottage: Cottage, other: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a wrong file ends in half a household or a fault of the app."""
    strange = tmp_path / "strange.pdf"
    strange.write_bytes(b"%PDF-1.7\n")
    words = tmp_path / "words.txt"
    words.write_text("Dear Ines,\n", encoding="utf-8")
    assert "neither a picture" in other.unlocked("restore", "--paper", strange).err
    assert "Nothing of a household’s paper" in other.unlocked("restore", "--paper", words).err
    for unfit in (["restore"], ["restore", words, "--paper", words]):
        with pytest.raises(SystemExit, match="2"):
            other.unlocked(*unfit)
    assert other.run("list").code == 3
    assert cottage.run("paper", "--into", tmp_path / "x.pdf", "--paper", "a3").code == 3
    cottage.world.vault.trouble = "keyring-locked"
    assert cottage.run("paper", "--into", tmp_path / "x.pdf").code == 4
    assert not (tmp_path / "x.pdf").exists()
