"""`hearthkey deputy`: papers, drill, taking over from a picture and from words, and every way to be refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.adapters.pictures import png
from hearthkey.adapters.places import word_list
from hearthkey.core import deputy
from hearthkey.core.deputy import Part
from hearthkey.formats import deputy_code
from hearthkey.services.deputies import Deputies, DrawnSet
from tests.cli.running import Cottage
from tests.fakes.home import PASSPHRASE, World


@pytest.fixture
def parts(cottage: Cottage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[Part, ...]:
    """The parts of a set that was made, as their holders have them."""
    drawn: list[DrawnSet] = []
    draw = Deputies.draw

    def watched(self: Deputies, *arguments: object) -> DrawnSet:
        drawn.append(draw(self, *arguments))  # type: ignore[arg-type]  # handed through
        return drawn[-1]

    monkeypatch.setattr(Deputies, "draw", watched)
    ran = cottage.unlocked("deputy", "make", "--into", tmp_path / "papers")
    assert ran.code == 0, ran.err
    return drawn[-1].parts


def words_file(folder: Path, part: Part) -> Path:
    """A file with the words of a part."""
    path = folder / f"words-{part.number}.txt"
    path.write_text(deputy.words_of(part, word_list()).reveal(), encoding="utf-8")
    return path


def picture_file(folder: Path, part: Part) -> Path:
    """A picture of the code of a part."""
    path = folder / f"code-{part.number}.png"
    path.write_bytes(png(deputy_code.matrix(deputy.code_of(part))))
    return path


def newest_copy(cottage: Cottage) -> Path:
    """The newest sealed copy."""
    return Path(cottage.run("seal", "--list", "--json").told["copies"][-1]["file"])


def test_making_a_set_writes_a_letter_and_each_part_by_itself(
    cottage: Cottage, tmp_path: Path, parts: tuple[Part, ...]
) -> None:
    """Broken if it fails: two parts lie on one sheet, or there is nothing to hand out."""
    found = sorted(one.name for one in (tmp_path / "papers").iterdir())
    assert found == ["deputy-letter.pdf", "deputy-part-1.pdf", "deputy-part-2.pdf", "deputy-part-3.pdf"]
    told = cottage.run("deputy", "--json").told
    assert (told["set"], told["fresh"]) == (parts[0].set_name, True)
    assert [one["tried"] for one in told["parts"]] == [None] * 3


def test_a_part_is_tried_without_passphrase_from_words_and_from_a_picture(
    cottage: Cottage, tmp_path: Path, parts: tuple[Part, ...]
) -> None:
    """Broken if it fails: the yearly drill needs more than one part and its holder."""
    ran = cottage.run(
        "deputy", "try", "--part", words_file(tmp_path, parts[0]), "--part", picture_file(tmp_path, parts[2])
    )
    assert ran.code == 0, ran.err
    assert "never tried" in cottage.run("deputy").out
    assert [one["tried"] is None for one in cottage.run("deputy", "--json").told["parts"]] == [False, True, False]


def test_two_parts_take_over_on_another_computer(cottage: Cottage, tmp_path: Path, parts: tuple[Part, ...]) -> None:
    """Broken if it fails: the household ends with the householder."""
    world = World(clock=cottage.world.clock, dice=cottage.world.dice, locks=cottage.world.locks)
    other = Cottage(tmp_path / "other", world, cottage.capsys, cottage.words)
    copy = newest_copy(cottage)
    given = ("--part", picture_file(tmp_path, parts[1]), "--part", words_file(tmp_path, parts[2]))
    alone = other.run("deputy", "restore", copy, *given[:2], "--yes")
    assert alone.code == 3
    assert "1 of the 2 parts" in alone.err
    looked = other.run("deputy", "restore", copy, *given, "--plan")
    assert "comes back as it was" in looked.out
    assert PASSPHRASE.reveal() not in looked.out + looked.err
    ran = other.run("deputy", "restore", copy, *given, "--yes")
    assert ran.code == 0, ran.err
    assert f"which is yours now: {PASSPHRASE.reveal()}" in ran.err
    assert other.unlocked("stop", "Ines phone", "--yes").code == 0


def test_papers_are_never_written_beside_a_copy_nor_a_copy_beside_parts(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: one stick has all that it takes."""
    assert cottage.unlocked("seal", "--into", tmp_path / "stick").code == 0
    ran = cottage.unlocked("deputy", "make", "--into", tmp_path / "stick")
    assert (ran.code, "Choose another folder" in ran.err) == (3, True)
    assert cottage.run("deputy", "--json").told["set"] is None
    assert cottage.unlocked("deputy", "make", "--into", tmp_path / "papers").code == 0
    ran = cottage.run("seal", "--into", tmp_path / "papers")
    assert (ran.code, "Parts for a deputy lie in this folder" in ran.err) == (3, True)


@pytest.mark.parametrize(
    ("words", "means"),
    [
        (("deputy", "make"), "Name a folder"),
        (("deputy", "restore"), "Nobody said which sealed copy"),
        (("deputy", "try"), "nobody can be asked here"),
        (("deputy", "stop-set", "--into", "x", "--language", "la"), "la"),
    ],
)
def test_what_is_missing_is_said(cottage: Cottage, words: tuple[str, ...], means: str) -> None:
    """Broken if it fails: a fault of the app instead of a sentence."""
    ran = cottage.unlocked(*words)
    assert (ran.code, means in ran.err) == (3, True), ran.err


def test_a_picture_without_a_part_and_a_file_of_rubbish_are_refused(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a wrong photograph ends in a fault of the app."""
    other, rubbish = tmp_path / "other.png", tmp_path / "rubbish.txt"
    other.write_bytes(png(((True, False), (False, True))))
    rubbish.write_bytes(b"\xff\xfe\x00plum")
    for path, means in ((other, "No code of a part"), (rubbish, "A part has 15 words; these are 1.")):
        ran = cottage.run("deputy", "try", "--part", path)
        assert (ran.code, means in ran.err) == (3, True), ran.err


def test_the_stop_set_is_written_without_a_passphrase(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: nobody makes a fresh one after each change, for it would cost the passphrase."""
    assert cottage.unlocked("stop", "Odile tablet", "--yes").code == 0
    assert cottage.unlocked("lists", "--sign").code == 0
    ran = cottage.run("deputy", "stop-set", "--into", tmp_path / "stick", "--language", "es", "--json")
    assert ran.code == 0, ran.err
    (told,) = (tmp_path / "stick").glob("stop-set-*/READ-ME.txt")
    assert str(told) in ran.told["files"]
    assert "cómo detener" in told.read_text(encoding="utf-8")
