"""The household's file, in SQLite."""

from __future__ import annotations

from hearthkey.adapters.register.file import FILE_NAME, SqliteRegister
from hearthkey.adapters.register.migrations import newest, version_at

__all__ = ["FILE_NAME", "SqliteRegister", "newest", "version_at"]
