"""On two monitors the desk opens on the one that the window is on."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[3]


def test_the_desk_takes_the_screen_of_its_window(tmp_path: Path) -> None:
    """Broken if it fails: the code appears on the television, and the laptop shows everybody else's devices.

    Screens of the offscreen platform come from a file (from memory; tried with Qt 6.11.3).
    """
    screens = tmp_path / "screens.json"
    places = [("left", 0, 1280, 800), ("right", 1280, 1920, 1080)]
    listed = [
        {"name": name, "x": x, "y": 0, "width": wide, "height": high, "logicalDpi": 96, "logicalBaseDpi": 96, "dpr": 1}
        for name, x, wide, high in places
    ]
    screens.write_text(json.dumps({"screens": listed}), encoding="utf-8")
    environment = os.environ | {
        "QT_QPA_PLATFORM": f"offscreen:configfile={screens}",
        "PYTHONPATH": os.pathsep.join((str(ROOT / "app"), str(ROOT))),
    }
    ran = subprocess.run(
        [sys.executable, str(Path(__file__).with_name("two_screens.py"))],
        env=environment,
        capture_output=True,
        check=True,
        timeout=120,
    )
    told = json.loads(ran.stdout)
    assert told["screens"] == ["left", "right"]
    assert told["window"] == told["desk"] == "right"
    assert told["place"] == [1280, 0, 1920, 1080]
    assert told["full"] is True
