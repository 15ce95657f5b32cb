"""`hearthkey sheet`: sheet, card and messages from the command line."""

from __future__ import annotations

from pathlib import Path

from tests.cli.running import Cottage


def words_of(cottage: Cottage) -> str:
    """The passphrase of Ines's bundle."""
    return next(
        value for value in cottage.run("show", "Ines phone", "--words").out.splitlines() if value.count(" ") >= 6
    )


def test_a_sheet_speaks_the_language_that_was_chosen_once(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: grandmother gets English every time."""
    assert cottage.run("sheet", "--call", "Tomasz, 01632 960123").code == 0
    first = cottage.run("sheet", "Ines phone", "--language", "de", "--into", tmp_path, "--json")
    assert first.code == 0, first.err
    data = Path(first.told["files"][0]).read_bytes()
    assert data.startswith(b"%PDF-")
    again = cottage.run("sheet", "Ines phone", "--into", tmp_path / "again", "--json")
    assert Path(again.told["files"][0]).read_bytes() == data
    english = cottage.run("sheet", "Ines phone", "--language", "en", "--into", tmp_path / "other", "--json")
    assert Path(english.told["files"][0]).read_bytes() != data


def test_only_one_of_the_two_messages_is_told_at_a_time(cottage: Cottage) -> None:
    """Broken if it fails: both end in one mail."""
    words = words_of(cottage).strip().split()[-7:]
    written = cottage.run("sheet", "Ines phone", "--messages", "written")
    spoken = cottage.run("sheet", "Ines phone", "--messages", "spoken")
    assert not set(words) & set(written.out.split())
    assert all(word in spoken.out for word in words)
    assert cottage.run("hand-over", "Ines phone", "--yes").code == 0
    assert cottage.run("sheet", "Ines phone", "--messages", "spoken").code == 3


def test_what_is_not_known_is_refused_with_what_is(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: somebody guesses at codes of languages and papers."""
    tongue = cottage.run("sheet", "Ines phone", "--language", "xx")
    paper = cottage.run("sheet", "Ines phone", "--paper", "a5", "--into", tmp_path)
    assert (tongue.code, "en, de, es" in tongue.err) == (3, True)
    assert (paper.code, "a4, letter" in paper.err) == (3, True)
    assert cottage.run("sheet", "--call", "x" * 200).code == 3
