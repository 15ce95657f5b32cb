"""The register's ninth schema, four parts in one step: none of them was ever released without the others."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration
from hearthkey.adapters.register.schema_diary_words import words
from hearthkey.adapters.register.schema_keepsakes import keepsakes
from hearthkey.adapters.register.schema_shown import shown
from hearthkey.adapters.register.schema_way_in import checks


@migration(to=9)
def ninth(connection: Connection) -> None:
    """Paper and stop sets that were given out, codes that were shown, the diary's words, checks of the way in."""
    for part in (keepsakes, shown, words, checks):
        part(connection)
