"""Why a device is revoked: in words, with the name that goes onto the list beside them."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QRadioButton, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.revocation import FINAL_REASONS, Reason
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import REASONS
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class _Row(QRadioButton):
    """One reason; the whole row answers."""

    def __init__(self, theme: Theme, words: str, small: str, parent: QWidget) -> None:
        super().__init__(words, parent)
        self._theme = theme
        self._small = small
        self.setAccessibleName(f"{words} ({small})")
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        fits = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        fits.setHeightForWidth(True)
        self.setSizePolicy(fits)
        theme.changed.connect(self.updateGeometry)

    def _widths(self) -> tuple[int, int]:
        """Room that the words want with their mark, and the small name."""
        fonts = self._theme.fonts
        words = fonts.metrics(Role.BODY_STRONG).horizontalAdvance(self.text())
        small = fonts.metrics(Role.SMALL).horizontalAdvance(self._small)
        return self._theme.px(28) + round(words) + 10, round(small) + 14

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Mark, words, and the small name at the right."""
        return QSize(sum(self._widths()), self._theme.px(30))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The small name goes under the words where there is no room beside them."""
        return QSize(max(self._widths()), self._theme.px(30))

    def hasHeightForWidth(self) -> bool:  # noqa: N802 - Qt's name
        """Two lines where one is not enough."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's name
        """One line or two."""
        return self._theme.px(30 if width >= sum(self._widths()) else 48)

    def hitButton(self, _place: object) -> bool:  # noqa: N802 - Qt's name
        """The whole row answers, not only the mark."""
        return True

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint wash, mark and words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        box = QRectF(self.rect())
        taken, size = self.isChecked(), self._theme.fonts.scale
        if taken or self.underMouse():
            painter.fillRect(box, self._theme.color("sel" if taken else "facet"))
        if taken:
            painter.fillRect(QRectF(0, 0, 4, box.height()), self._theme.color("ink"))
        middle = QPointF(self._theme.px(16), box.center().y())
        painter.setPen(QPen(self._theme.color("ink"), 1.6 * size))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(middle, 5.2 * size, 5.2 * size)
        if taken:
            painter.setBrush(self._theme.color("ink"))
            painter.drawEllipse(middle, 2.2 * size, 2.2 * size)
        self._paint_words(painter, box.adjusted(self._theme.px(28), 0, -8, 0))
        if self.hasFocus():
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(box.adjusted(1, 1, -1, -1))
        painter.end()

    def _paint_words(self, painter: QPainter, inside: QRectF) -> None:
        middle, left = Qt.AlignmentFlag.AlignVCenter, Qt.AlignmentFlag.AlignLeft
        upper = lower = inside
        side = Qt.AlignmentFlag.AlignRight
        if self.width() < sum(self._widths()):
            upper = inside.adjusted(0, 0, 0, -inside.height() * 0.4)
            lower, side = inside.adjusted(0, inside.height() * 0.5, 0, 0), left
        painter.setPen(self._theme.color("ink"))
        painter.setFont(self._theme.font(Role.BODY_STRONG if self.isChecked() else Role.BODY))
        painter.drawText(upper, int(middle | left), self.text())
        painter.setPen(self._theme.color("ink2"))
        painter.setFont(self._theme.font(Role.SMALL))
        painter.drawText(lower, int(middle | side), self._small)


class Reasons(QWidget):
    """The four reasons for revoking for good; none is taken at first.

    Signals:
        chosen: a `Reason`.
    """

    chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setAccessibleName(self.tr("Why is it revoked?"))
        column = QVBoxLayout(self)
        column.setContentsMargins(1, 1, 1, 1)
        column.setSpacing(0)
        self.rows: dict[Reason, QRadioButton] = {}
        for reason in FINAL_REASONS:
            row = _Row(theme, said(Sentence(REASONS[reason], {})), reason.rfc_name, self)
            row.clicked.connect(lambda _on=False, taken=reason: self.chosen.emit(taken))
            column.addWidget(row)
            self.rows[reason] = row
        theme.changed.connect(self.update)

    def reason(self) -> Reason | None:
        """The one that is taken, or None."""
        return next((reason for reason, row in self.rows.items() if row.isChecked()), None)

    def leave(self) -> None:
        """Take none."""
        for row in self.rows.values():
            row.setAutoExclusive(False)
            row.setChecked(False)
            row.setAutoExclusive(True)

    def focus(self) -> None:
        """Put the focus on the taken one, or the first."""
        reason = self.reason()
        self.rows[FINAL_REASONS[0] if reason is None else reason].setFocus(Qt.FocusReason.TabFocusReason)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the frame and the lines between."""
        painter = QPainter(self)
        painter.setPen(QPen(self._theme.color("rule"), 1))
        painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
        painter.setPen(QPen(self._theme.color("hair"), 1))
        for row in list(self.rows.values())[1:]:
            painter.drawLine(1, row.y(), self.width() - 2, row.y())
        painter.end()
