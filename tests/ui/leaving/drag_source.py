"""The tray of Quince Cottage in a process of its own: it says where its card is, then how each drag ended."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QPoint, QTimer
from PySide6.QtWidgets import QApplication

from hearthkey.ui.runtime import Runtime
from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.tray import Tray
from hearthkey.ui.ways import Ways
from tests.ui.leaving.household import FakeErrands


def say(*words: object) -> None:
    """Tell the test."""
    sys.stdout.write(" ".join(str(word) for word in words) + "\n")
    sys.stdout.flush()


def main() -> None:
    """Show the tray until the standard input is closed."""
    app = QApplication([])
    theme = Theme(name="paper")
    style = SheetStyle(theme)
    app.setStyle(style)
    theme.dress()
    runtime = Runtime(Path(sys.argv[1]))
    tray = Tray(theme, FakeErrands(), Ways(), runtime)
    tray.setGeometry(0, 0, 900, 66)
    tray.drag.ended.connect(lambda serial, taken: say("ended", serial, taken))
    tray.show()
    place = tray.cards()[0]

    def ready() -> None:
        spot = place.mapToGlobal(QPoint(100, 20))
        say("ready", spot.x(), spot.y())

    QTimer.singleShot(0, ready)
    app.exec()


main()
