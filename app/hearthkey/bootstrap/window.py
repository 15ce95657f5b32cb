"""Opens the window, where there is a screen and Qt."""

from __future__ import annotations

import os
import sys
from functools import partial
from importlib.util import find_spec
from pathlib import Path

from hearthkey.bootstrap.house import open_house
from hearthkey.core.errors import Unavailable
from hearthkey.core.languages import Language


class Door:
    """The port `services.house.WindowDoor`."""

    def show(self, data: Path | None, *, practice: bool) -> int:
        """See the port."""
        if sys.platform == "linux" and not any(name in os.environ for name in _SCREENS):
            raise Unavailable("no-display")
        _look_for_qt()
        from hearthkey.adapters.places import data_folder, resources
        from hearthkey.ui import app

        folder = data_folder() if data is None else data.absolute()
        return app.run(partial(open_house, apart=True), folder, resources() / "icons", practice=practice)

    def draw(self, into: Path, language: Language) -> tuple[str, ...]:
        """See the port."""
        _look_for_qt()
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
        from hearthkey.adapters.places import resources
        from hearthkey.ui import gallery

        return gallery.draw(partial(open_house, apart=True), into, resources() / "icons", language)


_SCREENS = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


def _look_for_qt() -> None:
    if find_spec("PySide6") is None:
        raise Unavailable("window-missing")
