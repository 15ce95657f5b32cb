"""`hearthkey copies`: what left, and what became of it."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.copies import Copy, CopyWay
from tests.cli.running import Cottage
from tests.fakes.clock import NOW


def test_a_copy_is_listed_looked_for_and_deleted(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: without the window nobody can see, or get rid of, what left."""
    out = tmp_path / "out"
    assert cottage.run("copies").out == "No copy has left this computer.\n"
    cottage.run("export", "Ines phone", "--form", "bundle", "--into", out)
    listed = cottage.run("copies", "Ines phone", "--json").told["copies"]
    assert [(one["number"], one["form"], one["way"], one["place"], one["standing"]) for one in listed] == [
        (1, "bundle", "folder", str(out), "out")
    ]
    assert f"1  2026-11-25 13:00  a bundle file, in the folder {out}: not known to be gone" in cottage.run("copies").out
    assert cottage.run("copies", "Tomasz laptop", "--json").told["copies"] == []
    assert cottage.run("copies", "--look", "1", "--json").told["found"] == "ours"
    assert cottage.run("copies", "--tidy", "1").code == 3
    assert list(out.iterdir())
    done = cottage.run("copies", "--tidy", "1", "--yes")
    assert (done.code, list(out.iterdir())) == (0, [])
    assert "A stick may keep what was in it" in done.err
    assert "gone since 25 November 2026" in cottage.run("copies").out


def test_saying_that_it_is_gone_and_taking_that_back(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a copy that the householder burnt counts as open for ever."""
    cottage.run("export", "Ines phone", "--form", "bundle", "--into", tmp_path / "out")
    assert cottage.run("copies", "--tidied", "1").code == 0
    assert cottage.run("copies", "--json").told["copies"][0]["standing"] == "tidied"
    assert cottage.run("copies", "--not-tidied", "1").code == 0
    assert cottage.run("copies", "--json").told["copies"][0]["standing"] == "out"
    assert cottage.run("copies", "--look", "9").code == 3


def test_codes_on_a_screen_are_told_as_what_they_are(cottage: Cottage) -> None:
    """Broken if it fails: what the window showed is on no list here, or counts as a file that lies about."""
    with closing(SqliteRegister(cottage.data / FILE_NAME)) as register, register.change() as change:
        serial = next(one.serial for one in register.passes() if one.person == "Ines")
        copy = Copy(serial, "codes", CopyWay.SCREEN, "", "", (), NOW)
        change.copy_made(change.expect_copy(copy), copy)
    (told,) = cottage.run("copies", "--json").told["copies"]
    assert (told["way"], told["standing"], told["files"]) == ("screen", "shown", [])
    out = cottage.run("copies").out
    assert "codes, shown on this screen: left no file here; a photo of it still needs the passphrase" in out
    assert "0 of them not known to be gone" in out
    assert cottage.run("copies", "--tidy", "1", "--yes").code == 3
