"""The page for when something is shut: what it means, what works meanwhile, and one way on."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.closed_words import Closed, Lines, broken, closed, state_of
from hearthkey.ui.pages.heading import Heading
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, SignLabel
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class ClosedPage(QWidget):
    """The page. It is told what is shut by a snapshot, or by the error that opening ended in."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._looked = False
        self.again = Button(theme, self.tr("Try again"), kind=Kind.COMMIT)
        self.go_on = Button(theme, self.tr("Go on without"))
        self.heading = Heading(theme, (self.again, self.go_on))
        self.works = _Column(theme, self.tr("Works"), Sign.IN_USE)
        self.waits = _Column(theme, self.tr("Waits"), Sign.WAITING)
        self.cause = Prose(theme, Role.STATE, color="ink2", strong=Role.STATE_WORD)
        self._lay_out(theme)
        self.again.clicked.connect(self.retry)
        self.go_on.clicked.connect(ways.back)
        errands.seen.connect(self._answered)
        errands.trouble.connect(self._failed)

    @staticmethod
    def needed(snapshot: Snapshot) -> bool:
        """Whether something is shut that the householder should hear of."""
        return bool(state_of(snapshot))

    def _lay_out(self, theme: Theme) -> None:
        paper = _Paper(theme)
        columns = QVBoxLayout(paper)
        columns.setContentsMargins(20, 18, 20, 18)
        columns.addWidget(Pair(theme, self.works, self.waits, least=760, gap=20))
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        self.cause.setContentsMargins(20, 14, 20, 14)
        column.addWidget(self.heading)
        column.addWidget(paper)
        column.addWidget(Rule(theme, color="rule"))
        column.addWidget(self.cause)
        column.addStretch(1)
        view = QScrollArea()
        view.setWidget(inside)
        view.setWidgetResizable(True)
        view.setFrameShape(QFrame.Shape.NoFrame)
        view.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 0, 0, 0)
        page.addWidget(view)

    def tell(self, snapshot: Snapshot) -> None:
        """Say what is shut."""
        self._looked = True
        told = closed(snapshot)
        if told is not None:
            self._show(told)

    def tell_trouble(self, error: HearthkeyError) -> None:
        """Say why not even a look was possible."""
        self._looked = False
        self._show(broken(error))

    def retry(self) -> None:
        """Knock again; where nothing was opened, open it."""
        self.again.setEnabled(False)
        self.again.say(self.tr("Asking …"))
        announce(self, self.tr("Asking"))
        if self._looked:
            self._errands.refresh()
        else:
            self._errands.open()

    def _show(self, told: Closed) -> None:
        self._rest()
        self.heading.say(told.headline, told.means)
        self.works.tell(told.works)
        self.waits.tell(told.waits)
        self.cause.speak(told.cause, stressed=self.tr("What to do:"))
        self.go_on.setVisible(bool(told.go_on))
        self.go_on.say(told.go_on)
        self.again.setVisible(told.again)
        announce(self, f"{told.headline} {told.means} {told.cause}")

    def _rest(self) -> None:
        self.again.setEnabled(True)
        self.again.say(self.tr("Try again"))

    def _answered(self, snapshot: Snapshot) -> None:
        self._rest()
        if self.isVisible():
            self.tell(snapshot)

    def _failed(self, error: HearthkeyError) -> None:
        if not self.again.isEnabled():
            self.tell_trouble(error)


class _Paper(QWidget):
    """The sheet's ground."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint it."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("sheet"))
        painter.end()


class _Column(QWidget):
    """A word in the serif, and lines that each have a sign, a stressed part and a fact."""

    def __init__(self, theme: Theme, word: str, sign: Sign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._sign = sign
        self.setAccessibleName(word)
        self._word = Label(theme, Role.PERSON, word)
        theme.changed.connect(self._measure)
        self._measure()
        self._lines = QVBoxLayout()
        self._lines.setSpacing(6)
        self._told: list[QWidget] = []
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(20)
        row.addWidget(self._word, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(self._lines, 1)

    def _measure(self) -> None:
        self._word.setMinimumWidth(self._theme.px(116))

    def tell(self, lines: Lines) -> None:
        """Show other lines."""
        for widget in self._told:
            widget.setParent(None)
            widget.deleteLater()
        self._told = [self._line(stressed, fact) for stressed, fact in lines]
        while self._lines.count():
            self._lines.takeAt(0)
        for widget in self._told:
            self._lines.addWidget(widget)
        self._lines.addStretch(1)

    def texts(self) -> list[str]:
        """What stands there."""
        return [widget.accessibleName() for widget in self._told]

    def _line(self, stressed: str, fact: str) -> QWidget:
        line = QWidget()
        text = Prose(self._theme, Role.BODY, color="ink2", strong=Role.BODY_STRONG)
        text.speak(fact, stressed=f"{stressed},")
        line.setAccessibleName(f"{stressed}, {fact}")
        row = QHBoxLayout(line)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        row.addWidget(SignLabel(self._theme, self._sign, ground="sheet"), 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(text, 1)
        return line
