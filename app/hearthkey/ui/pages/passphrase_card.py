"""The passphrase of a bundle, in large type, to be said or written down."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QPainter, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.secret import Secret
from hearthkey.ui.clipboard import SECONDS, SecretClipboard
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

GROUP = 4
"""Words in a group: as many as one keeps in mind while typing them."""


class Words(QWidget):
    """The words, numbered, in groups; the mouse cannot select them, Ctrl+C copies them all.

    Signals:
        copy_wanted: Ctrl+C.
    """

    ROW, GAP, WORD_AT = 32, 14, 54
    TYPE, NUMBER = Role.FIELD_LARGE, Role.SMALL

    copy_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._secret: Secret[str] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(QCoreApplication.translate("Words", "Passphrase"))
        theme.changed.connect(self._dress)

    def show_secret(self, secret: Secret[str] | None) -> None:
        """Show a passphrase, or none; a screen reader hears it only while it is shown."""
        self._secret = secret
        self.setAccessibleDescription("" if secret is None else secret.reveal())
        self._dress()

    def _dress(self) -> None:
        self.updateGeometry()
        self.update()

    def words(self) -> list[str]:
        """What is shown."""
        return [] if self._secret is None else self._secret.reveal().split(" ")

    def _places(self) -> list[float]:
        """The middle of each row."""
        row, gap = self._theme.px(self.ROW), self._theme.px(self.GAP)
        top = self._theme.px(14)
        return [top + row * (number + 0.5) + gap * (number // GROUP) for number in range(len(self.words()))]

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """All rows."""
        places = self._places()
        high = places[-1] + self._theme.px(self.ROW / 2 + 14) if places else 10
        return QSize(self._theme.px(240), round(high))

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the frame, the numbers and the words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._theme.color("ink"), 2 if self.hasFocus() else 1))
        painter.setBrush(self._theme.color("sheet"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 3, 3)
        px = self._theme.px
        large, small = self._theme.fonts.metrics(self.TYPE), self._theme.fonts.metrics(self.NUMBER)
        for number, (middle, word) in enumerate(zip(self._places(), self.words(), strict=True), 1):
            base = middle + large.capHeight() / 2
            painter.setFont(self._theme.font(self.NUMBER))
            painter.setPen(self._theme.color("ink2"))
            painter.drawText(QPointF(px(self.WORD_AT - 20) - small.horizontalAdvance(str(number)), base), str(number))
            painter.setFont(self._theme.font(self.TYPE))
            painter.setPen(self._theme.color("ink"))
            painter.drawText(QPointF(px(self.WORD_AT), base), word)
        painter.end()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl+C copies."""
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_wanted.emit()
        else:
            super().keyPressEvent(event)


class PassphraseCard(QWidget):
    """Shows the passphrase while the screen shows nothing else of the bundle.

    Signals:
        hide_wanted: take it off the screen.
        told: something to be said aloud.
    """

    hide_wanted = Signal()
    told = Signal(str)

    def __init__(self, theme: Theme, clipboard: SecretClipboard, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._clipboard = clipboard
        self._secret: Secret[str] | None = None
        self.words = Words(theme)
        self.words.copy_wanted.connect(self.copy)
        rule = self.tr("One space between two words, no capitals. Say it, or write it on paper.")
        self._rule = Label(theme, Role.STATE, rule, color="ink2", wrap=True)
        self.copy_button = Button(theme, self.tr("&Copy"), hint=self.tr("Ctrl+C"))
        self.copy_button.clicked.connect(self.copy)
        self.hide_button = Button(theme, self.tr("H&ide"), hint="Esc")
        self.hide_button.clicked.connect(self.hide_wanted)
        self._state = Label(theme, Role.STATE, color="ink2", wrap=True)
        clipboard.cleared.connect(self._cleared)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.copy_button)
        row.addWidget(self.hide_button)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (self.words, self._rule):
            column.addWidget(part)
        column.addLayout(row)
        column.addWidget(self._state)
        column.addStretch(1)

    def show_secret(self, secret: Secret[str] | None) -> None:
        """Show a passphrase, or none."""
        self._secret = secret
        self.words.show_secret(secret)
        self._state.setText("")

    def copy(self) -> None:
        """Put it on the clipboard, marked, for a while."""
        if self._secret is None:
            return
        self._clipboard.copy(self._secret)
        copied = self.tr("Copied. After {seconds} seconds it is taken off the clipboard.").format(seconds=SECONDS)
        self._say(f"{copied} {self.tr('A program that keeps a history of the clipboard may keep it.')}")

    def _cleared(self) -> None:
        if self._secret is not None:
            self._say(self.tr("It is no longer on the clipboard."))

    def _say(self, text: str) -> None:
        self._state.setText(text)
        self.told.emit(text)
