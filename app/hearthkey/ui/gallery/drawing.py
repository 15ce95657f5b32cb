"""Draws scene after scene, driven by the application's own event loop."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from tempfile import TemporaryDirectory

from PySide6.QtCore import QObject, QPoint, QTimer
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QApplication

from hearthkey.core.errors import Bug, HearthkeyError
from hearthkey.core.languages import Language
from hearthkey.services.house import OpenHouse
from hearthkey.ui import app as starting
from hearthkey.ui.gallery.desk_states import desk
from hearthkey.ui.gallery.looks import Look
from hearthkey.ui.gallery.scenes import HOUSEHOLD, NEW_HOUSEHOLD, Scene
from hearthkey.ui.languages import FOLDER, speak
from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window

_BEAT = 30
"""Milliseconds between two looks at whether the household has answered."""
_SLIDES = 8
"""Beats until whatever slides in has come to rest."""
_PATIENCE = 4000
"""Beats until a scene is given up: two minutes."""

_log = logging.getLogger(__name__)


def draw(open_house: OpenHouse, into: Path, icons: Path, language: Language) -> tuple[str, ...]:
    """Draw every scene in its looks, on a practice household in a folder that is gone afterwards.

    Args:
        icons: the folder of pictures; the translations lie beside it.
        language: what the window speaks in them.

    Returns:
        The files' paths.

    Raises:
        Bug: gallery-stuck.
        HearthkeyError: what the household answered a scene with.
    """
    into.mkdir(parents=True, exist_ok=True)
    app = starting.application(icons)
    speak(app, icons.with_name(FOLDER), language)
    theme = Theme(name="paper")
    app.setStyle(SheetStyle(theme))
    theme.dress()
    with TemporaryDirectory() as room:
        drawing = Drawing(app, theme, open_house, Path(room), into)
        drawing.begin()
        app.exec()
        drawing.end()
    if drawing.trouble is not None:
        raise drawing.trouble
    return tuple(drawing.files)


def _is_open(window: Window) -> bool:
    return window.outside.errands.last is not None


class Drawing(QObject):
    """Takes one beat after the other: wait for the household, show a look, grab it, go on."""

    def __init__(self, app: QApplication, theme: Theme, open_house: OpenHouse, room: Path, into: Path) -> None:
        super().__init__()
        self._app = app
        self._theme = theme
        self._into = into
        self._windows = {
            folder: starting.window(theme, open_house, room / folder, practice=True) for folder in ("new", "cottage")
        }
        self._beats = self._script()
        self.files: list[str] = []
        self.trouble: HearthkeyError | None = None

    def begin(self) -> None:
        """Open both households and begin with the first beat."""
        for folder, window in self._windows.items():
            window.outside.errands.trouble.connect(self._give_up)
            window.show()
            window.outside.errands.open(furnish=folder == "cottage")
        self._next()

    def end(self) -> None:
        """Close what was opened."""
        for window in self._windows.values():
            window.close()

    def _give_up(self, error: HearthkeyError) -> None:
        self.trouble = self.trouble or error
        self._app.quit()

    def _next(self) -> None:
        if next(self._beats, None) is None:
            self._app.quit()
        else:
            QTimer.singleShot(_BEAT, self, self._next)

    def _script(self) -> Iterator[bool]:
        """Yield once for every beat."""
        for folder, scenes in (("new", NEW_HOUSEHOLD), ("cottage", HOUSEHOLD)):
            window = self._windows[folder]
            yield from self._until(partial(_is_open, window), folder)
            for scene in scenes:
                yield from self._play(window, scene)

    def _play(self, window: Window, scene: Scene) -> Iterator[bool]:
        self._look(window, scene.looks[0])
        yield True
        scene.begin(window)
        for look in scene.looks:
            self._look(window, look)
            yield from self._until(lambda: not window.outside.tasks.waiting, scene.name)
            for _ in range(_SLIDES):
                yield True
            self._grab(window, scene, look)

    def _until(self, reached: Callable[[], bool], scene: str) -> Iterator[bool]:
        for _ in range(_PATIENCE):
            if reached():
                return
            yield True
        self._give_up(Bug("gallery-stuck", scene=scene))

    def _look(self, window: Window, look: Look) -> None:
        self._theme.choose(look.theme, look.type_scale)
        (desk(window) or window).resize(*look.size)

    def _grab(self, window: Window, scene: Scene, look: Look) -> None:
        shown = desk(window) or window
        picture = QPixmap(shown.size() * look.ratio)
        picture.setDevicePixelRatio(look.ratio)
        shown.render(picture, QPoint())
        path = self._into / f"{scene.name}-{look.name}.png"
        if not picture.save(str(path)):
            raise OSError(28, "the picture could not be written", str(path))
        self.files.append(str(path))
        _log.info("drew %s", path.name)
