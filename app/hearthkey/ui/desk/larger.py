"""The look of the window for a screen that is read from across a table."""

from __future__ import annotations

from hearthkey.ui.theme.fonts import Fonts
from hearthkey.ui.theme.theme import Theme

DRAWN_FOR = (1280, 800)
"""Logical pixels for which the type scale of the desk was drawn."""

MOST = 2.0
"""More than this a larger screen does not enlarge."""

GRAIN = 20
"""Type grows by one part in so many, not with each pixel of the window."""


class Larger(Theme):
    """The colours of another theme, and its type, larger where the screen is.

    Args:
        base: the window's theme, which it follows.
    """

    def __init__(self, base: Theme) -> None:
        super().__init__(name=base.name, scale=base.fonts.scale)
        self._base = base
        self._by = 1.0
        base.changed.connect(self._follow)

    def dress(self) -> None:
        """Leave the application in the window's clothes."""

    def fit(self, wide: int, high: int) -> None:
        """Grow with the screen, given in logical pixels."""
        room = min(wide / DRAWN_FOR[0], high / DRAWN_FOR[1])
        by = min(max(1.0, int(room * GRAIN) / GRAIN), MOST)
        if by != self._by:
            self._by = by
            self._follow()

    def _follow(self) -> None:
        self.name, self.tokens = self._base.name, self._base.tokens
        scale = self._base.fonts.scale * self._by
        if scale != self.fonts.scale:
            self.fonts = Fonts(scale=scale, faces=self._faces)
        self.changed.emit()
