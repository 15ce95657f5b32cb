"""The field of "Lost or stolen": large, with the count of devices at its right."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPalette
from PySide6.QtWidgets import QWidget

from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

INSET = 15
"""Pixels from the field's edge to the count."""


class SearchField(Line):
    """What is typed.

    Signals:
        moved: Up (-1) or Down (1).
    """

    moved = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        self._count = Label(theme, Role.STATE, color="ink2")
        super().__init__(theme, role=Role.FIELD_LARGE, parent=parent)
        self._count.setParent(self)
        self._count.setForegroundRole(QPalette.ColorRole.WindowText)  # in a field it would take the field's ink
        self.setAccessibleName(self.tr("Lost or stolen: letters of the person or the device"))
        self.setPlaceholderText(self.tr("person or device"))

    def say(self, count: str) -> None:
        """Show the count, and keep the text off it."""
        self._count.setText(count)
        self._arrange()

    def count(self) -> str:
        """What stands at the right."""
        return self._count.text()

    def _dress(self) -> None:
        super()._dress()
        self.setMinimumHeight(self._theme.px(50) + 6)
        self._arrange()

    def _arrange(self) -> None:
        self._count.adjustSize()
        wide = self._count.width()
        self.setTextMargins(INSET - 3, 0, wide + INSET, 0)
        self._count.move(self.width() - wide - INSET - 3, (self.height() - self._count.height()) // 2)

    def resizeEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Keep the count at the right."""
        super().resizeEvent(event)  # type: ignore[arg-type]  # Qt hands a resize event on
        self._arrange()

    def changeEvent(self, event: QEvent) -> None:  # noqa: N802 - Qt's name
        """Measure again where the type changed."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._arrange()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Up and Down choose among the rows below."""
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()), 0)
        if step:
            self.moved.emit(step)
        elif event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            # Qt would let it travel on, to press whatever button has the focus by then.
            if not event.isAutoRepeat():
                self.returnPressed.emit()
        else:
            super().keyPressEvent(event)
