"""What diary entries are made of, in the register."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.adapters.register import migrations, schema_years
from hearthkey.adapters.register.rows import DIARY, diary_entry
from hearthkey.adapters.register.schema import MIGRATIONS

THIS = next(number for number, step in MIGRATIONS.items() if step is schema_years.ninth)
PAST = Path(__file__).parents[1] / "past" / "register-8.db"


def test_old_entries_stay_as_they_are(tmp_path: Path) -> None:
    """Else the diary of a household that comes from an older version would be lost, or told in words made up later."""
    assert migrations.newest() >= THIS
    file = tmp_path / "register.db"
    shutil.copy(PAST, file)
    with closing(sqlite3.connect(file, isolation_level=None)) as connection:
        before = connection.execute("SELECT number, sentence, link FROM diary ORDER BY number").fetchall()
        for number in range(9, THIS + 1):
            MIGRATIONS[number](connection)
        after = [diary_entry(row) for row in connection.execute(f"{DIARY} ORDER BY number")]
    assert before
    assert [(one.number, one.sentence, one.link) for one in after] == before
    assert not any(one.words for one in after)


@pytest.mark.parametrize("deed", ["DELETE FROM diary_words", "UPDATE diary_words SET words = 'x'"])
def test_words_are_never_altered(deed: str) -> None:
    """Else words could vanish by a slip of ours, and the entry would turn English for ever."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as connection:
        for number in range(1, THIS + 1):
            MIGRATIONS[number](connection)
        connection.execute("INSERT INTO diary_words VALUES (1, '{}')")
        with pytest.raises(sqlite3.IntegrityError, match="words of the diary"):
            connection.execute(deed)
        assert connection.execute("SELECT words FROM diary_words").fetchall() == [("{}",)]
