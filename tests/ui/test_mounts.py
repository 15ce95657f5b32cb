"""A stick that comes or goes is heard of: a real mount, in a mount namespace of the test's own."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.ui.mounts import Mounts
from tests.judges import needs

CHILD = """
import subprocess, sys
from PySide6.QtCore import QCoreApplication, QTimer
from hearthkey.ui.mounts import Mounts
app = QCoreApplication([])
mounts = Mounts()
mounts.changed.connect(lambda: (print("changed"), app.quit()))
QTimer.singleShot(0, lambda: subprocess.run(["mount", "-t", "tmpfs", "none", sys.argv[1]], check=True))
QTimer.singleShot(20000, app.quit)
app.exec()
mounts.close()
"""


def test_a_mount_is_heard_of(tmp_path: Path) -> None:
    """If this failed, a stick that is plugged in again would be asked about only by chance."""
    needs("mount")
    user = () if os.geteuid() == 0 else ("--user", "--map-root-user")
    ran = subprocess.run(
        [needs("unshare"), *user, "--mount", sys.executable, "-c", CHILD, str(tmp_path)],
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.stdout == "changed\n", ran.stderr


def test_without_such_a_table_nothing_is_heard(tmp_path: Path, qapp: QObject) -> None:
    """If this failed, a system without that table could not open the window."""
    assert qapp is not None
    Mounts(table=tmp_path / "none").close()
