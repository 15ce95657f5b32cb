"""The passphrase that the app offers: words to be written on paper, dots until they are asked for."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.core.secret import Secret
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

DOTS = "  ".join(["•••••"] * 7)
"""The same for every passphrase, so that they do not tell its words by their lengths."""


class OfferedWords(QWidget):
    """Looks like a field, but nothing can be typed or copied: it is for eyes and a pencil."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._words: Secret[str] | None = None
        self._shown = False
        self.setAccessibleName(self.tr("The passphrase that is offered"))
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        theme.changed.connect(self._dress)
        self._tell()

    @property
    def shown(self) -> bool:
        """Whether the words can be read now."""
        return self._shown and self._words is not None

    def offer(self, words: Secret[str]) -> None:
        """Offer other words; whether they are seen stays as it is."""
        self._words = words
        self._tell()

    def forget(self) -> None:
        """Let go of them."""
        self._words, self._shown = None, False
        self._tell()

    def show_words(self, *, shown: bool) -> None:
        """Show or cover them."""
        self._shown = shown
        self._tell()

    def _tell(self) -> None:
        covered = self.tr("covered; Show makes it readable")
        words = self._words.reveal() if self.shown and self._words is not None else covered
        self.setAccessibleDescription(words)
        self._dress()

    def _dress(self) -> None:
        self.updateGeometry()
        self.update()

    def _text(self) -> str:
        if self._words is None:
            return ""
        return self._words.reveal() if self._shown else DOTS

    def _height(self, width: int) -> int:
        inner = max(width - 2 * (Line.RING + 8), 40)
        measures = self._theme.fonts.metrics(Role.BODY_STRONG)
        box = measures.boundingRect(QRectF(0, 0, inner, 1e6), int(Qt.TextFlag.TextWordWrap), self._text() or "x")
        return max(self._theme.px(32), round(box.height()) + 12) + 2 * Line.RING

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's name
        """One line, or two where the words need them."""
        return self._height(width)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Wide enough for seven words of middling length."""
        return QSize(self._theme.px(360), self._height(self._theme.px(360)))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Two or three words a line."""
        return QSize(self._theme.px(180), self._theme.px(32) + 2 * Line.RING)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint frame and words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ring = Line.RING
        box = QRectF(self.rect()).adjusted(ring + 0.5, ring + 0.5, -ring - 0.5, -ring - 0.5)
        painter.setPen(QPen(self._theme.color("rule"), 1))
        painter.setBrush(self._theme.color("raised"))
        painter.drawRoundedRect(box, 3, 3)
        painter.setFont(self._theme.font(Role.BODY_STRONG if self._shown else Role.BODY))
        painter.setPen(self._theme.color("ink"))
        flags = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap)
        painter.drawText(box.adjusted(8, 0, -8, 0), flags, self._text())
        painter.end()
