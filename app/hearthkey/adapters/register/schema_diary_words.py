"""The register's next schema: what the sentences of the diary are made of, for a window in another language."""

from __future__ import annotations

from sqlite3 import Connection


def words(connection: Connection) -> None:
    """The chain is over `diary` alone; an entry without words, or whose words make another sentence, stays English."""
    connection.execute(
        "CREATE TABLE diary_words (number INTEGER PRIMARY KEY REFERENCES diary, words TEXT NOT NULL) STRICT"
    )
    for what, told in (("DELETE", "kept for ever"), ("UPDATE", "never altered")):
        connection.execute(
            f"CREATE TRIGGER diary_words_before_{what.lower()} BEFORE {what} ON diary_words "
            f"BEGIN SELECT RAISE(ABORT, 'the words of the diary are {told}'); END"
        )
