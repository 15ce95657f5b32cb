"""The household's file, in SQLite."""

from __future__ import annotations

from hearthkey.adapters.register.file import FILE_NAME, SqliteRegister
from hearthkey.adapters.register.migrations import newest, version_at
from hearthkey.adapters.register.scratch import scratch_register

__all__ = ["FILE_NAME", "SqliteRegister", "newest", "scratch_register", "version_at"]
