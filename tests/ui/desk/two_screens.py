"""Opens the desk of a window that stands on the second of two screens, and says where it went."""

from __future__ import annotations

import json
import sys

from PySide6.QtWidgets import QApplication, QWidget

from hearthkey.ui.desk.desk import Desk
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.desk.household import TABLE, TableErrands
from tests.ui.leaving.household import FakeSticks


def main() -> None:
    """Write the places of the window and of its desk."""
    app = QApplication(sys.argv[:1])
    window = QWidget()
    second = app.screens()[-1].geometry()
    window.setGeometry(second.x() + 100, second.y() + 50, 800, 600)
    window.show()
    app.processEvents()
    desk = Desk(Theme(name="paper"), TableErrands(), Ways(), FakeSticks(), window)
    desk.begin(TABLE)
    app.processEvents()
    place = desk.geometry()
    told = {
        "screens": [one.name() for one in app.screens()],
        "window": window.screen().name(),
        "desk": desk.screen().name(),
        "place": [place.x(), place.y(), place.width(), place.height()],
        "full": desk.isFullScreen(),
    }
    sys.stdout.write(json.dumps(told))
    desk.sitting.leave()


main()
