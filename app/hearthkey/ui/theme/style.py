"""Fusion with our own fields, menus and focus ring."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QLineEdit, QProxyStyle, QStyle, QStyleOption, QStyleOptionComplex, QWidget

from hearthkey.ui.theme.theme import Theme

_PRIMITIVES = QStyle.PrimitiveElement


class SheetStyle(QProxyStyle):
    """What Fusion draws differently from the sheet: line edits, combo boxes, the focus rectangle."""

    def __init__(self, theme: Theme) -> None:
        super().__init__("Fusion")
        self._theme = theme

    def drawPrimitive(  # noqa: N802 - Qt's name
        self, element: QStyle.PrimitiveElement, option: QStyleOption, painter: QPainter, widget: QWidget | None = None
    ) -> None:
        """Draw fields and focus; leave the rest to Fusion."""
        if element in {_PRIMITIVES.PE_PanelLineEdit, _PRIMITIVES.PE_FrameLineEdit}:
            if isinstance(widget, QLineEdit) and not widget.hasFrame():
                return  # the line inside a combo box or a date field, which has its own box
            self._box(painter, QRectF(option.rect), focused=_has(option, QStyle.StateFlag.State_HasFocus))
        elif element == _PRIMITIVES.PE_FrameFocusRect:
            painter.save()
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 3, 3)
            painter.restore()
        else:
            super().drawPrimitive(element, option, painter, widget)

    def drawComplexControl(  # noqa: N802 - Qt's name
        self,
        control: QStyle.ComplexControl,
        option: QStyleOptionComplex,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        """Draw combo boxes as fields with a chevron."""
        if control != QStyle.ComplexControl.CC_ComboBox:
            super().drawComplexControl(control, option, painter, widget)
            return
        box = QRectF(option.rect)
        self._box(painter, box, focused=_has(option, QStyle.StateFlag.State_HasFocus))
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._theme.color("ink"), 2))
        x, y = box.right() - 18, box.center().y()
        painter.drawPolyline(QPolygonF([QPointF(x - 4, y - 2), QPointF(x, y + 2), QPointF(x + 4, y - 2)]))
        painter.restore()

    def subControlRect(  # noqa: N802 - Qt's name
        self,
        control: QStyle.ComplexControl,
        option: QStyleOptionComplex,
        part: QStyle.SubControl,
        widget: QWidget | None = None,
    ) -> QRect:
        """Begin the text of a combo box where that of a field begins, and end it before the chevron."""
        rect = super().subControlRect(control, option, part, widget)  # type: ignore[arg-type]  # Qt takes none too
        if control == QStyle.ComplexControl.CC_ComboBox and part == QStyle.SubControl.SC_ComboBoxEditField:
            whole = QRect(option.rect)
            return whole.adjusted(10, 4, -30, -4)
        return rect

    def _box(self, painter: QPainter, rect: QRectF, *, focused: bool) -> None:
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        inner = rect.adjusted(3, 3, -3, -3)
        painter.setPen(QPen(self._theme.color("ink" if focused else "rule"), 1))
        painter.setBrush(self._theme.color("raised"))
        painter.drawRoundedRect(inner.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3)
        if focused:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(rect.adjusted(1, 1, -1, -1), 4, 4)
        painter.restore()


def _has(option: QStyleOption, flag: QStyle.StateFlag) -> bool:
    return bool(option.state & flag)
