"""`hearthkey diary`: looked through, written out, and never silently wrong."""

from __future__ import annotations

import json
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.diary import FIRST_LINK, link_of
from tests.cli.running import Cottage


def sentences(cottage: Cottage, *words: str) -> list[str]:
    """What `hearthkey diary` shows."""
    return [str(one["sentence"]) for one in cottage.run("diary", "--json", *words).told["entries"]]


def test_words_people_and_devices_thin_it_out(cottage: Cottage) -> None:
    """Broken if it fails: what happened to one tablet in ten years takes an evening to find."""
    cottage.unlocked("stop", "Odile tablet")
    assert len(sentences(cottage)) == 5
    assert len(sentences(cottage, "--person", "odile")) == 2
    assert sentences(cottage, "--search", "STOPPED revocation") == sentences(cottage)[-1:]
    assert sentences(cottage, "--device", "Odile's tablet", "--last", "1") == sentences(cottage)[-1:]
    assert sentences(cottage, "--search", "2026-11-25", "--person", "Ines")[0].startswith("Ines’s phone got a pass")
    assert cottage.run("diary", "--search", "nothing of that").out == "Nothing in the diary fits that.\n"
    refused = cottage.run("diary", "--person", "Odette")
    assert refused.code == 3
    assert "No entry of the diary names Odette. It names: Ines, Odile, Tomasz." in refused.err


def test_it_is_written_as_text_to_a_new_file_for_its_owner_alone(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: an export overwrites something, or everybody on the computer reads it."""
    file = tmp_path / "out" / "diary.txt"
    file.parent.mkdir()
    assert cottage.run("diary", "--export", file, "--person", "Ines").out == f"{file}\n"
    head, chain, gap, *lines = file.read_text(encoding="utf-8").splitlines()
    assert (head, chain, gap) == ("The diary of Quince Cottage (practice)", "1 entry. The chain holds.", "")
    assert len(lines) == 1
    assert "Ines’s phone got a pass" in lines[0]
    assert file.stat().st_mode & 0o777 == 0o600
    before = file.read_bytes()
    refused = cottage.run("diary", "--export", file)
    assert (refused.code, file.read_bytes()) == (3, before)
    assert list(file.parent.iterdir()) == [file]


def test_json_lines_can_be_checked_by_anybody(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the file for machines says less than the diary, or its chain cannot be followed."""
    file = tmp_path / "diary.jsonl"
    cottage.run("diary", "--export", file, "--json-lines")
    told = [json.loads(line) for line in file.read_bytes().splitlines()]
    previous = FIRST_LINK
    for one in told:
        at = datetime.strptime(one["at"], "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=UTC)
        previous = link_of(previous, number=one["number"], at=at, verb=one["verb"], sentence=one["sentence"])
        assert one["link"] == previous
    assert [one["verb"] for one in told] == ["found", "add", "add", "add"]
    assert told[3]["people"] == ["Odile"]
    assert told[3]["devices"] == ["Odile’s tablet"]
    assert cottage.run("diary", "--json-lines").out.encode() == file.read_bytes()


def test_a_torn_out_end_is_said_with_the_way_on(cottage: Cottage) -> None:
    """Broken if it fails: the last entry and its count are taken away, and the diary is said to be whole."""
    cottage.unlocked("stop", "Odile tablet")
    with closing(sqlite3.connect(cottage.data / FILE_NAME)) as register:
        for (name,) in register.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
            register.execute(f"DROP TRIGGER {name}")
        register.execute("DELETE FROM diary WHERE number = 5")
        register.execute("UPDATE mark SET value = 4 WHERE name = 'diary'")
        register.commit()
    ran = cottage.run("diary", "--json")
    assert ran.told["first_that_does_not_fit"] == 5
    assert "or cut its end off" in ran.err
    assert "The newest sealed copy still has what stood there" in ran.err
