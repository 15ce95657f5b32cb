"""Notices on the desktop, over a real session bus."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from tests.judges import needs

ROOT = Path(__file__).parents[2]


def on_a_bus(*words: str) -> str:
    """Run the stand-in for a desktop on a session bus of its own."""
    command = [needs("dbus-run-session"), "--", sys.executable, "-m", "tests.adapters.notice_board", *words]
    path = {"PYTHONPATH": os.pathsep.join([str(ROOT / "app"), str(ROOT)])}
    ran = subprocess.run(
        command, cwd=ROOT, env=os.environ | path, capture_output=True, text=True, timeout=30, check=True
    )
    return ran.stdout.strip()


def test_a_notice_arrives_whole_and_stays() -> None:
    """Broken if it fails: the timer finds that the passphrase is needed and nobody hears of it."""
    name, replaces, icon, title, text = json.loads(on_a_bus("desktop"))
    assert (name, replaces, icon) == ("Hearthkey", 0, "hearthkey")
    assert (title, text) == ("One phone is stopped", "It is not in force yet.")


def test_a_desktop_without_notices_is_no_mishap() -> None:
    """Broken if it fails: a delivery on a server without a desktop ends in a trace."""
    assert on_a_bus() == "notices-absent"
