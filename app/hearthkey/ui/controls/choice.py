"""A choice among a few: segments in one frame, one of them taken."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QHBoxLayout, QRadioButton, QSizePolicy, QWidget

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class _Segment(QRadioButton):
    """One of the choices; to a screen reader it is a radio button."""

    def __init__(self, theme: Theme, text: str, parent: QWidget) -> None:
        super().__init__(text, parent)
        self._theme = theme
        self.setAccessibleName(text)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as its text in the stronger weight."""
        wide = self._theme.fonts.metrics(Role.BODY_STRONG).horizontalAdvance(self.text())
        return QSize(round(wide) + 24, self._theme.px(32))

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def hitButton(self, _place: object) -> bool:  # noqa: N802 - Qt's name
        """The whole segment answers, not only a round mark."""
        return True

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Leave Left and Right to the choice: Qt would look for a neighbour by place, before there is a layout too."""
        if event.key() in {Qt.Key.Key_Left, Qt.Key.Key_Right}:
            event.ignore()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground, bar and text."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        taken = self.isChecked()
        box = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        ground = "sel" if taken else "facet" if self.underMouse() else "raised"
        painter.fillRect(box, self._theme.color(ground))
        if taken:
            painter.fillRect(QRectF(box.left(), box.bottom() - 3, box.width(), 3), self._theme.color("ink"))
        painter.setPen(self._theme.color("ink" if self.isEnabled() else "disabled"))
        painter.setFont(self._theme.font(Role.BODY_STRONG if taken else Role.BODY))
        painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter), self.text())
        if self.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(2, 2, -2, -2))
        painter.end()


class Choice(QWidget):
    """A few choices side by side.

    Signals:
        chosen: the key of the one that was taken.
    """

    chosen = Signal(str)

    def __init__(
        self, theme: Theme, name: str, choices: Sequence[tuple[str, str]], parent: QWidget | None = None
    ) -> None:
        """Build it.

        Args:
            name: what is chosen, for a screen reader.
            choices: keys and their words; the first is taken.
        """
        super().__init__(parent)
        self._theme = theme
        self.setAccessibleName(name)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(1, 1, 1, 1)
        self._row.setSpacing(0)
        self._group = QButtonGroup(self)
        self._keys: list[str] = []
        self.offer(choices)
        theme.changed.connect(self.update)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def offer(self, choices: Sequence[tuple[str, str]]) -> None:
        """Offer other choices; the first is taken."""
        for button in self._group.buttons():
            self._group.removeButton(button)
            self._row.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._keys = [key for key, _ in choices]
        for number, (key, words) in enumerate(choices):
            segment = _Segment(self._theme, words, self)
            segment.setChecked(number == 0)
            segment.clicked.connect(lambda _on=False, taken=key: self.chosen.emit(taken))
            self._group.addButton(segment, number)
            self._row.addWidget(segment)

    def value(self) -> str:
        """The key of the one that is taken."""
        number = self._group.checkedId()
        return self._keys[number] if 0 <= number < len(self._keys) else ""

    def take(self, key: str) -> None:
        """Take one, without a signal."""
        if key in self._keys:
            self._group.button(self._keys.index(key)).setChecked(True)

    def segments(self) -> list[QAbstractButton]:
        """The segments in their order; after `offer` they are new, and last in the tab order."""
        return self._group.buttons()

    def taken(self) -> QAbstractButton:
        """The segment that stands for the choice in the tab order."""
        button = self._group.checkedButton()
        return self._group.buttons()[0] if button is None else button

    def leave(self) -> None:
        """Take none of them, without a signal: what holds is said elsewhere."""
        self._group.setExclusive(False)
        for button in self._group.buttons():
            button.setChecked(False)
        self._group.setExclusive(True)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Left and Right move the choice, as in any group of radio buttons."""
        step = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(event.key()), 0)
        if not step or not self._keys:
            super().keyPressEvent(event)
            return
        number = (self._group.checkedId() + step) % len(self._keys)
        self._group.button(number).setFocus()
        self._group.button(number).click()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the frame and the lines between."""
        painter = QPainter(self)
        painter.setPen(QPen(self._theme.color("rule"), 1))
        painter.setBrush(self._theme.color("raised"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3)
        painter.setPen(QPen(self._theme.color("hair"), 1))
        for button in self._group.buttons()[1:]:
            painter.drawLine(button.x(), 1, button.x(), self.height() - 2)
        painter.end()
