"""Every judge that a test asks is on the list of what a machine needs to check hearthkey."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.judges import needs, package_of

TESTS = Path(__file__).parents[1]
_ASKED = re.compile(r'\bneeds\("([^"]+)"\)')
_MADE_UP = "no-such-judge"


def test_every_judge_is_on_the_list() -> None:
    """If this fails, a test is skipped on every machine but the one where it was written."""
    asked = {name for path in TESTS.rglob("*.py") for name in _ASKED.findall(path.read_text(encoding="utf-8"))}
    assert "openssl" in asked
    unlisted = [name for name in sorted(asked - {_MADE_UP}) if package_of(name).startswith("unknown")]
    assert not unlisted


def test_a_server_is_found_beside_the_path(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """If this fails, whoever is not root is told that sshd and hostapd are missing, though they may run them."""
    monkeypatch.setenv("PATH", str(tmp_path))
    monkeypatch.setattr("tests.judges._FOR_ROOT", (str(tmp_path / "sbin"),))
    name = "quinced"
    server = tmp_path / "sbin" / name
    server.parent.mkdir()
    server.write_text("#!/bin/sh\n", encoding="ascii")
    server.chmod(0o755)
    assert needs(name) == str(server)
