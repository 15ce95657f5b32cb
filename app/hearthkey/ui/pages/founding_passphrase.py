"""The household's passphrase on the founding page: offered or typed, and confirmed once."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QStackedWidget, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.secret import Secret
from hearthkey.services import passphrases
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.founding_words import told
from hearthkey.ui.pages.offered_words import OfferedWords
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.question import Question
from hearthkey.ui.theme.theme import Theme

PAUSE = 250
"""Milliseconds without a key before a typed passphrase is judged."""


class PassphrasePart(QWidget):
    """Words or a field, and once more.

    Signals:
        changed: `secret` may be another one now.
        committed: Enter in the second field.
    """

    changed = Signal()
    committed = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._offered: Secret[str] | None = None
        self._judged: Secret[str] | None = None
        self._own = False
        self.words = OfferedWords(theme)
        self.typed = Line(theme)
        self.typed.setEchoMode(QLineEdit.EchoMode.Password)
        self.typed.setAccessibleName(self.tr("Your own passphrase"))
        self._either = QStackedWidget()
        self._either.addWidget(self.words)
        self._either.addWidget(self.typed)
        self.show_button = Button(theme, self.tr("Show"), height=32)
        self.another = Button(theme, self.tr("Make another"), height=32)
        self.own = Button(theme, self.tr("My own…"), height=32)
        self.first = Question(theme, "", _row(theme, self._either, self))
        self.again = Line(theme)
        self.again.setEchoMode(QLineEdit.EchoMode.Password)
        self.second = Question(theme, self.tr("Type the words once more, from the paper"), self.again)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.first)
        column.addWidget(self.second)
        self._connect()
        self._turn(own=False)

    def _connect(self) -> None:
        self.show_button.clicked.connect(lambda: self._show(shown=not self._readable()))
        self.another.clicked.connect(self.draw)
        self.own.clicked.connect(lambda: self._turn(own=not self._own))
        self.typed.textChanged.connect(self._typing)
        self._pause.timeout.connect(self._judge)
        self.again.textChanged.connect(self._compare)
        self.again.editingFinished.connect(self._differs)
        self.again.returnPressed.connect(self.committed)
        self.again.installEventFilter(self)

    # What comes out

    def secret(self) -> Secret[str] | None:
        """The passphrase, once it is strong enough and was confirmed."""
        first = self._judged if self._own else self._offered
        return first if first is not None and self._confirmed(first) else None

    def wanted(self) -> str:
        """What is still wanted, in words; empty when nothing is."""
        if self.secret() is not None:
            return ""
        return self.tr("the passphrase") if self._own and self._judged is None else self.tr("the passphrase once more")

    def draw(self) -> None:
        """Draw other words."""
        self._errands.offer_passphrase(self, self._drawn)

    def forget(self) -> None:
        """Let go of everything that was offered or typed."""
        self._offered = self._judged = None
        self.words.forget()
        self.typed.clear()
        self.again.clear()
        self._show(shown=False)

    def trouble(self, sentence: str) -> None:
        """Say what does not fit about the passphrase."""
        self.first.trouble(sentence)

    # Offered

    def _drawn(self, words: Secret[str]) -> None:
        self._offered = words
        self.words.offer(words)
        self.again.clear()
        self._compare()

    def _readable(self) -> bool:
        return self.typed.echoMode() is QLineEdit.EchoMode.Normal if self._own else self.words.shown

    def _show(self, *, shown: bool) -> None:
        self.words.show_words(shown=shown and not self._own)
        mode = QLineEdit.EchoMode.Normal if shown and self._own else QLineEdit.EchoMode.Password
        self.typed.setEchoMode(mode)
        self.show_button.say(self.tr("Hide") if shown else self.tr("Show"))
        self.show_button.setAccessibleName(self.tr("Hide the passphrase") if shown else self.tr("Show the passphrase"))

    # Typed

    def _turn(self, *, own: bool) -> None:
        self._own = own
        self._either.setCurrentWidget(self.typed if own else self.words)
        self._show(shown=False)
        self.another.setVisible(not own)
        self.own.say(self.tr("7 words instead") if own else self.tr("My own…"))
        self.first.trouble("")
        made = self.tr("The household passphrase: 7 words, made for you")
        self.first.ask(self.tr("The household passphrase: your own words") if own else made)
        paper = self.tr("Write it on paper and keep it away from this computer. It opens the CA key.")
        strong = self.tr("Several unrelated words are best. It opens the CA key, so write it on paper too.")
        self.first.advise(strong if own else paper)
        self.again.clear()
        if own:
            self.typed.setFocus()
        self.changed.emit()

    def _typing(self) -> None:
        self._judged = None
        self.first.trouble("")
        self._pause.start()
        self._compare()

    def _judge(self) -> None:
        text = self.typed.text()
        if text.strip():
            self._errands.judge_passphrase(text, self, partial(self._strong, text), partial(self._weak, text))

    def _strong(self, text: str, secret: Secret[str]) -> None:
        if self._own and text == self.typed.text():
            self._judged = secret
            self._compare()

    def _weak(self, text: str, error: HearthkeyError) -> None:
        if self._own and text == self.typed.text():
            self.first.trouble(told(error))
            self.changed.emit()

    # Confirmed

    def _confirmed(self, first: Secret[str]) -> bool:
        """Whether the second typing is the first; words may stand further apart than one space."""
        again = self.again.text() if self._own else " ".join(self.again.text().split())
        try:
            passphrases.confirmed(first, again)
        except Refused:
            return False
        return True

    def _compare(self) -> None:
        self.second.trouble("")
        self.second.advise(self.tr("The same both times.") if self.secret() is not None else "")
        self.changed.emit()

    def _differs(self) -> None:
        known = self._judged if self._own else self._offered
        if self.again.text() and known is not None and not self._confirmed(known):
            self.second.trouble(self.tr("It differs from the first. Look at the paper, then type it again."))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """Cover the words while they are typed once more: what counts is the paper."""
        if watched is self.again and event.type() == QEvent.Type.FocusIn:
            self._show(shown=False)
        return False


def _row(theme: Theme, either: QWidget, part: PassphrasePart) -> QWidget:
    """The words and their buttons; under them where there is no room beside them."""
    buttons = QWidget()
    line = QHBoxLayout(buttons)
    line.setContentsMargins(0, 0, 0, 0)
    line.setSpacing(6)
    for button in (part.show_button, part.another, part.own):
        line.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
    line.addStretch(1)
    row = Pair(theme, either, buttons, least=480, gap=6, stretch=(1, 0))
    row.setAccessibleName(QCoreApplication.translate("PassphrasePart", "The household passphrase"))
    return row
