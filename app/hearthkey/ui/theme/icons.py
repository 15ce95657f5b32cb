"""Icons of our own: drawn once as SVG, shown in the present ink at any size."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.ui.resources import resource
from hearthkey.ui.theme.theme import Theme

GRID = 32
"""Symbolic icons are drawn on a grid of this many pixels, with lines of 1.6."""

APP = "hearthkey"
WAYS = ("way-stick", "way-file", "way-bundle", "way-archive", "way-codes", "way-own")
"""The ways by which a bundle leaves."""

_SIDES = (16, 20, 24, 32, 48, 64)
_APP_SIDES = (16, 22, 24, 32, 48, 64, 128, 256)


def _renderer(name: str, ink: str) -> QSvgRenderer:
    return QSvgRenderer(QByteArray(resource("icons", f"{name}.svg").replace(b"currentColor", ink.encode("ascii"))))


def pixmap(name: str, theme: Theme, side: float = 20, *, color: str = "ink", ratio: float = 1.0) -> QPixmap:
    """An icon as a picture.

    Args:
        name: of a file in resources/icons, without its ending.
        side: in logical pixels.
        color: token that the lines are drawn in; the icon of the app keeps its own colours.
        ratio: device pixels per logical pixel.

    Raises:
        FileNotFoundError: there is no such icon.
    """
    drawn = _renderer(name, theme.color(color).name())
    made = QPixmap(QSize(round(side * ratio), round(side * ratio)))
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    drawn.render(painter, QRectF(made.rect()))
    painter.end()
    made.setDevicePixelRatio(ratio)
    return made


def icon(name: str, theme: Theme) -> QIcon:
    """An icon for buttons and menus, in the ink of the moment: ask again when the theme changes.

    Raises:
        FileNotFoundError: there is no such icon.
    """
    made = QIcon()
    for side in _SIDES:
        made.addPixmap(pixmap(name, theme, side))
        made.addPixmap(pixmap(name, theme, side, color="disabled"), QIcon.Mode.Disabled)
    return made


def app_icon(theme: Theme) -> QIcon:
    """The icon of the app, for the window and the desktop."""
    made = QIcon()
    for side in _APP_SIDES:
        made.addPixmap(pixmap(APP, theme, side))
    return made


class IconLabel(QWidget):
    """An icon beside its word; it follows the theme, and says nothing to a screen reader."""

    def __init__(self, theme: Theme, name: str, *, side: int = GRID, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._side = side
        self.name = name
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self._drawn = _renderer(self.name, self._theme.color("ink").name())
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As large as type makes it."""
        side = self._theme.px(self._side)
        return QSize(side, side)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the drawing in the middle."""
        side = min(self.width(), self.height())
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._drawn.render(painter, QRectF((self.width() - side) / 2, (self.height() - side) / 2, side, side))
        painter.end()
