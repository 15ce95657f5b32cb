"""Text in lines with their numbers beside them: a template, or what it would write."""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QFont,
    QFontDatabase,
    QPainter,
    QPaintEvent,
    QPalette,
    QPen,
    QResizeEvent,
    QTextBlock,
    QTextCursor,
    QTextFormat,
    QTextOption,
)
from PySide6.QtWidgets import QFrame, QPlainTextEdit, QTextEdit, QVBoxLayout, QWidget

from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


def plain_font(theme: Theme) -> QFont:
    """The desktop's face of equal widths, as large as small type: in settings, columns and blanks count."""
    font = theme.font(Role.SMALL)
    font.setFamily(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont).family())
    font.setPixelSize(theme.px(Role.SMALL.value[1]))
    return font


class NumberedText(QPlainTextEdit):
    """Text as it is, its lines numbered, broken anywhere rather than cut; a line can be marked as the mistaken one.

    Tab leaves it, and Esc belongs to the drawer.

    Args:
        lines: how many of them are in sight.

    Signals:
        entered: it has the focus now.
    """

    entered = Signal()

    PAD, GAP = 8, 7

    def __init__(self, theme: Theme, name: str, *, lines: int = 14, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._lines = lines
        self._wrong: int | None = None
        self._line_end = "\n"
        self.margin = _Margin(self)
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollBar(ThinBar(theme))
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setWordWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
        self.document().setDocumentMargin(4)
        self.viewport().setAutoFillBackground(False)
        self.blockCountChanged.connect(self._make_room)
        self.updateRequest.connect(self._follow)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self.setFont(plain_font(self._theme))
        self.setTabStopDistance(4 * self.fontMetrics().horizontalAdvance(" "))
        self.setCursorWidth(max(1, self._theme.px(1.5)))
        colors = QPalette(self.palette())
        colors.setColor(QPalette.ColorRole.Base, QColor(Qt.GlobalColor.transparent))
        colors.setColor(QPalette.ColorRole.Text, self._theme.color("ink"))
        self.setPalette(colors)
        self.setFixedHeight(self._lines * self.fontMetrics().lineSpacing() + 2 * self.PAD)
        self._make_room()
        self.mark(self._wrong)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Narrow, for it can be broken anywhere."""
        return QSize(self._theme.px(120), self.minimumHeight())

    def show_text(self, text: str) -> None:
        """Show another text; what was undone in the one before cannot be done again in this one."""
        self._line_end = "\r\n" if "\r\n" in text else "\n"
        self.setPlainText(text)

    def text(self) -> str:
        """The text as it is; `toPlainText` would lose line ends in CRLF and blanks that do not break."""
        raw = self.document().toRawText()
        return raw.replace("\u2029", self._line_end).replace("\u2028", self._line_end)

    def put(self, text: str) -> None:
        """Write over what is selected or where the cursor stands; one step of undo."""
        self.textCursor().insertText(text)
        self.ensureCursorVisible()

    def replace(self, text: str) -> None:
        """Show another text, as one step of undo."""
        cursor = QTextCursor(self.document())
        cursor.select(QTextCursor.SelectionType.Document)
        cursor.insertText(text)
        self.moveCursor(QTextCursor.MoveOperation.Start)

    def mark(self, line: int | None) -> None:
        """Mark a line, counted from 1, as the one with the mistake; None marks none."""
        self._wrong = line
        block = QTextBlock() if line is None else self.document().findBlockByNumber(line - 1)
        marks = []
        if block.isValid():
            wash = QTextEdit.ExtraSelection()
            wash.cursor = QTextCursor(block)
            wash.format.setBackground(self._theme.color("sel"))
            wash.format.setProperty(QTextFormat.Property.FullWidthSelection, True)  # noqa: FBT003 - Qt's own signature
            marks.append(wash)
        self.setExtraSelections(marks)
        self.margin.update()

    def go_to(self, line: int) -> None:
        """Lead the cursor to the beginning of a line, counted from 1, and into the text."""
        block = self.document().findBlockByNumber(line - 1)
        if block.isValid():
            self.setTextCursor(QTextCursor(block))
            self.centerCursor()
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    # The margin

    def margin_width(self) -> int:
        """Room for the number of the last line, of two digits at least."""
        digits = max(2, len(str(self.blockCount())))
        return round(self._theme.fonts.metrics(Role.SMALL).horizontalAdvance("0" * digits)) + 2 * self.GAP

    def _make_room(self) -> None:
        self.setViewportMargins(self.margin_width(), 0, 0, 0)
        self._place_margin()

    def _place_margin(self) -> None:
        inside = self.contentsRect()
        self.margin.setGeometry(inside.left(), inside.top(), self.margin_width(), inside.height())

    def _follow(self, part: QRect, down: int) -> None:
        if down:
            self.margin.scroll(0, down)
        else:
            self.margin.update(0, part.y(), self.margin.width(), part.height())

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Tell whoever can bring it into sight."""
        super().focusInEvent(event)
        self.entered.emit()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Keep the margin as high as the text."""
        super().resizeEvent(event)
        self._place_margin()

    def paint_margin(self, painter: QPainter, part: QRect) -> None:
        """Paint the numbers of the lines that begin in sight."""
        wide = self.margin_width()
        painter.fillRect(part, self._theme.color("facet"))
        painter.fillRect(QRect(wide - 1, part.top(), 1, part.height()), self._theme.color("hair"))
        block, offset = self.firstVisibleBlock(), self.contentOffset()
        high = self.fontMetrics().lineSpacing()
        while block.isValid():
            top = round(self.blockBoundingGeometry(block).translated(offset).top())
            if top > part.bottom():
                return
            number = block.blockNumber() + 1
            wrong = number == self._wrong
            box = QRect(0, top, wide - self.GAP, high)
            if wrong:
                painter.fillRect(QRect(0, top, 3, high), self._theme.color("act"))
            painter.setFont(self._theme.font(Role.SMALL_STRONG if wrong else Role.SMALL))
            painter.setPen(self._theme.color("act" if wrong else "ink2"))
            painter.drawText(box, int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter), str(number))
            block = block.next()


class _Margin(QWidget):
    """The strip with the numbers; the editor paints it, and a screen reader passes it by."""

    def __init__(self, editor: NumberedText) -> None:
        super().__init__(editor)
        self._editor = editor

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Have the editor paint it."""
        painter = QPainter(self)
        self._editor.paint_margin(painter, event.rect())
        painter.end()


class Boxed(QWidget):
    """A field's box round something that scrolls, with the ring while that has the focus."""

    RING = 3

    def __init__(self, theme: Theme, held: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._held = held
        column = QVBoxLayout(self)
        edge = self.RING + 1
        column.setContentsMargins(edge, edge, edge, edge)
        column.addWidget(held)
        held.installEventFilter(self)
        theme.changed.connect(self.update)

    def eventFilter(self, _held: object, event: object) -> bool:  # noqa: N802 - Qt's name
        """Paint anew when the focus comes or goes."""
        self.update()
        del event
        return False

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground, edge and ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        focused = self._held.hasFocus()
        inner = QRectF(self.rect()).adjusted(self.RING + 0.5, self.RING + 0.5, -self.RING - 0.5, -self.RING - 0.5)
        painter.setPen(QPen(self._theme.color("ink" if focused else "rule"), 1))
        painter.setBrush(self._theme.color("sheet" if self._reads() else "raised"))
        painter.drawRoundedRect(inner, 3, 3)
        if focused:
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4, 4)
        painter.end()

    def _reads(self) -> bool:
        return isinstance(self._held, QPlainTextEdit) and self._held.isReadOnly()
