"""How wide names are and where they break, remembered as long as the type stays the same."""

from __future__ import annotations

from PySide6.QtGui import QFont, QFontMetricsF, QTextLayout, QTextOption

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Names:
    """Measures of texts in the roles of the sheet."""

    def __init__(self, theme: Theme) -> None:
        self._theme = theme
        self._metrics: dict[Role, QFontMetricsF] = {}
        self._fonts: dict[Role, QFont] = {}
        self._wide: dict[tuple[Role, str], float] = {}
        self._lines: dict[tuple[Role, str, int], tuple[str, ...]] = {}

    def forget(self) -> None:
        """The type has changed."""
        self._metrics.clear()
        self._fonts.clear()
        self._wide.clear()
        self._lines.clear()

    def font(self, role: Role) -> QFont:
        """A role's font."""
        if role not in self._fonts:
            self._fonts[role] = self._theme.font(role)
        return self._fonts[role]

    def metrics(self, role: Role) -> QFontMetricsF:
        """A role's measures."""
        if role not in self._metrics:
            self._metrics[role] = self._theme.fonts.metrics(role)
        return self._metrics[role]

    def height(self, role: Role) -> float:
        """From one line to the next, in pixels."""
        return self.metrics(role).height()

    def width(self, role: Role, text: str) -> float:
        """Pixels."""
        key = (role, text)
        if key not in self._wide:
            self._wide[key] = self.metrics(role).horizontalAdvance(text)
        return self._wide[key]

    def tick(self, text: str, strong: bool) -> float:  # noqa: FBT001 - a `Measure` is called with both
        """The width of a label of the axis."""
        return self.width(Role.SMALL_STRONG if strong else Role.SMALL, text)

    def lines(self, role: Role, text: str, width: float) -> tuple[str, ...]:
        """Break a text where words end, or anywhere if a word is too long; at least one line."""
        if self.width(role, text) <= width:
            return (text,)
        key = (role, text, int(width))
        if key not in self._lines:
            self._lines[key] = self._broken(role, text, width)
        return self._lines[key]

    def _broken(self, role: Role, text: str, width: float) -> tuple[str, ...]:
        layout = QTextLayout(text, self._theme.font(role))
        option = QTextOption()
        option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        layout.setTextOption(option)
        layout.beginLayout()
        found = []
        while (line := layout.createLine()).isValid():
            line.setLineWidth(max(1, int(width)))
            found.append(text[line.textStart() : line.textStart() + line.textLength()].strip())
        layout.endLayout()
        return tuple(found) or (text,)


def span(theme: Theme, role: Role, text: str, start: int, end: int) -> tuple[float, float]:
    """Where a part of a line of text lies, from its left end in pixels; right-to-left letters too."""
    layout = QTextLayout(text, theme.font(role))
    layout.beginLayout()
    line = layout.createLine()
    line.setLineWidth(100_000)
    layout.endLayout()
    places = [_x(line.cursorToX(at)) for at in (start, end)]
    shift = line.naturalTextRect().left()
    return min(places) - shift, max(places) - shift


def _x(place: object) -> float:
    """A cursor's place; the binding hands the letter it stands before along with it."""
    if isinstance(place, tuple):
        place = place[0]
    return float(place) if isinstance(place, int | float) else 0.0
