"""Starts the window."""

from __future__ import annotations

import signal
import sys
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Qt, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from hearthkey.core.household import FILE, KEYRING
from hearthkey.services.house import OpenHouse
from hearthkey.services.practice import SERVICE as PRACTICE_SERVICE
from hearthkey.ui.collecting import Collecting
from hearthkey.ui.errands import Errands
from hearthkey.ui.languages import FOLDER, speak
from hearthkey.ui.leading import Leading
from hearthkey.ui.preferences import Memory
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Outside, Window

PRACTICE_FOLDER = "practice"


SWITCH = 0.0005
"""Seconds that a thread may keep Python's lock while the window wants it; Python's own 0.005 adds up over a page's
paint events to a fifth of a second beside a busy lane."""


def application(icons: Path) -> QApplication:
    """The application, named after the desktop file, before the first widget."""
    sys.setswitchinterval(SWITCH)
    app = QApplication(sys.argv[:1])
    app.setApplicationName("hearthkey")
    app.setApplicationDisplayName("Hearthkey")
    app.setDesktopFileName("hearthkey")
    app.setWindowIcon(QIcon(str(icons / "hearthkey.svg")))
    return app


def window(theme: Theme, open_house: OpenHouse, data: Path, *, practice: bool) -> Window:
    """Build the window on a data folder.

    Args:
        practice: secrets of a household founded here are files, and nobody's keyring is touched.
    """
    tasks = Tasks()
    place, service = (FILE, PRACTICE_SERVICE) if practice else (KEYRING, "hearthkey")
    errands = Errands(tasks, open_house, data, place=place, service=service)
    memory = Memory(data)
    runtime = Runtime(_place(QStandardPaths.StandardLocation.RuntimeLocation) / "hearthkey")
    runtime.sweep()
    home = memory.folder(_place(QStandardPaths.StandardLocation.HomeLocation))
    made = Window(theme, Outside(tasks, errands, memory, runtime, data, home))
    Leading(made)
    return made


def calm(window: Window) -> None:
    """Take the collector of cycles in hand, beginning when the window shows a household for the first time."""
    collecting = Collecting(lambda: not window.outside.tasks.waiting, window)
    window.outside.errands.seen.connect(lambda _seen: collecting.begin(), Qt.ConnectionType.SingleShotConnection)


def _place(location: QStandardPaths.StandardLocation) -> Path:
    return Path(QStandardPaths.writableLocation(location))


def run(open_house: OpenHouse, data: Path, icons: Path, *, practice: bool) -> int:
    """Open the window and stay until it is closed.

    Args:
        open_house: opens the household.
        data: the data folder; the window's own memory lies beside the register.
        icons: the folder of pictures; the translations lie beside it.
        practice: open Quince Cottage, furnishing it first where it is new.

    Returns:
        The exit code.
    """
    app = application(icons)
    chosen = Memory(data).preferences()
    speak(app, icons.with_name(FOLDER), chosen.language)
    theme = Theme(name=chosen.theme, scale=chosen.scale)
    app.setStyle(SheetStyle(theme))
    theme.dress()
    _answer_to_interrupts(app, app.closeAllWindows)
    opened: list[Window] = []

    def show(folder: Path, *, as_practice: bool) -> None:
        made = window(theme, open_house, folder, practice=as_practice)
        opened.append(made)
        calm(made)
        made.practice_wanted.connect(made.close)
        made.practice_wanted.connect(lambda: show(data / PRACTICE_FOLDER, as_practice=True))
        made.show()
        made.outside.errands.open(furnish=as_practice)

    show(data / PRACTICE_FOLDER if practice else data, as_practice=practice)
    return app.exec()


def _answer_to_interrupts(app: QApplication, close: Callable[[], None]) -> None:
    """Let Ctrl+C in the terminal close the window; Python only looks when Qt lets it run."""
    signal.signal(signal.SIGINT, lambda *_: close())
    timer = QTimer(app)
    timer.timeout.connect(lambda: None)
    timer.start(500)
