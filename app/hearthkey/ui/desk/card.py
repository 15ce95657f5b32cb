"""The left of the desk: the code, or the words, or what there is to say instead; never two of them."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from hearthkey.core.secret import Secret
from hearthkey.formats.codes import Matrix
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.pages.code_card import CodePicture
from hearthkey.ui.pages.passphrase_card import Words
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

FRAME = 2


class DeskCode(CodePicture):
    """One code in the middle of a white square, as large as whole device pixels allow."""

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the square and its code."""
        if self._code is None:
            return
        painter = QPainter(self)
        wide = FRAME + (2 if self.hasFocus() else 0)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._theme.color("ink"), wide))
        painter.setBrush(self._theme.color("qrpaper"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2), 3, 3)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        ratio = self.devicePixelRatioF()
        scaled = self._code.width() * self.pixels_a_module()
        large = self._code.scaled(scaled, scaled, mode=Qt.TransformationMode.FastTransformation)
        large.setDevicePixelRatio(ratio)
        left, top = (round((side * ratio - scaled) / 2) / ratio for side in (self.width(), self.height()))
        painter.drawImage(QRectF(left, top, scaled / ratio, scaled / ratio), large)
        painter.end()


class DeskWords(Words):
    """The seven words, to be read from across a table; nothing copies them from here."""

    SIZES = (
        (66, 20, 84, Role.DESK_WORD_LARGE),
        (46, 16, 66, Role.DESK_WORD),
        (38, 12, 62, Role.DESK_WORD_SMALL),
        (30, 8, 58, Role.FIELD_LARGE),
    )
    """From large to small: row, gap between the groups, where words begin, type."""

    ROW, GAP, WORD_AT, TYPE = SIZES[1]
    NUMBER = Role.DESK_SMALL

    def fit(self, high: int, *, big: bool) -> bool:
        """Be as large as that height allows, larger than the card's size only where it is wanted; tell if it did."""
        for size in self.SIZES if big else self.SIZES[1:]:
            self.ROW, self.GAP, self.WORD_AT, self.TYPE = size
            if self.sizeHint().height() <= high:
                break
        self._dress()
        return self.sizeHint().height() <= high


class Told(QWidget):
    """A sentence where code and words would stand, with a bar of ink at its left."""

    BAR = 4

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.text = Prose(theme, Role.DESK_VOICE, lines=1.3)
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.text)
        self._column.addStretch(1)
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self._column.setContentsMargins(self._theme.px(24), 0, 0, 0)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the bar."""
        painter = QPainter(self)
        painter.fillRect(0, 0, self.BAR, self.text.geometry().bottom() + 1, self._theme.color("ink"))
        painter.end()


class DeskCard(QStackedWidget):
    """One thing at a time; what is not shown holds nothing."""

    SIDE = 406

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.picture = DeskCode(theme)
        self.words = DeskWords(theme)
        self.words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.told = Told(theme)
        for part in (self.told, self.picture, self.words):
            self.addWidget(part)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """What the words need, or the least that a camera reads."""
        least = self.picture.minimumSizeHint()
        return least if self.currentWidget() is self.picture else least.expandedTo(super().minimumSizeHint())

    def show_code(self, code: Matrix, name: str) -> None:
        """Show a code, and nothing else."""
        self._turn(self.picture, code, name, None, "")

    def show_words(self, secret: Secret[str]) -> None:
        """Show the words, and nothing else."""
        self._turn(self.words, (), "", secret, "")

    def say(self, text: str) -> None:
        """Say something, and show nothing else."""
        self._turn(self.told, (), "", None, text)

    def _turn(self, part: QWidget, code: Matrix, name: str, secret: Secret[str] | None, text: str) -> None:
        # What goes is emptied before what comes is filled: no moment has both.
        if part is not self.picture:
            self.picture.show_matrix((), "")
        if part is not self.words:
            self.words.show_secret(None)
        self.told.text.speak(text)
        if part is self.picture:
            self.picture.show_matrix(code, name)
        elif secret is not None:
            self.words.show_secret(secret)
        self.setCurrentWidget(part)
        self.updateGeometry()
