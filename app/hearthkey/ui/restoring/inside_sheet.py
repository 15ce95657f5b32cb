"""The right half of the page that brings a household back: what is inside, and afterwards what to do next."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.network import Caution
from hearthkey.core.secret import Secret
from hearthkey.services.restoring_inside import Inside
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Rule, Voice
from hearthkey.ui.dates import day
from hearthkey.ui.restoring.learned_words import LearnedWords
from hearthkey.ui.text import caution, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

NAMED = 8
"""Devices that are named; a number stands for the others."""


class InsideSheet(QWidget):
    """The sheet.

    Signals:
        wanted: it is to be brought back.
        gateway: the gateway's page is wanted.
        board: the board is wanted.
    """

    wanted = Signal()
    gateway = Signal()
    board = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.inside: Inside | None = None
        self.title = Label(theme, Role.TITLE, wrap=True)
        self.first = Prose(theme, Role.BODY, color="ink2")
        self.facts = _Facts(theme)
        self.rule = Rule(theme, color="rule")
        self.voice = Voice(theme)
        self.caution = Prose(theme, Role.STATE, color="ink2")
        self.learned = LearnedWords(theme)
        self.commit = Button(theme, self.tr("&Bring it back"), kind=Kind.COMMIT, hint=self.tr("Ctrl+Enter"), height=36)
        self.to_gateway = Button(theme, self.tr("To the &gateway"), kind=Kind.COMMIT, height=36)
        self.to_board = Button(theme, self.tr("To the &board"), height=36)
        self._lay_out()
        self.commit.clicked.connect(self.wanted)
        self.to_gateway.clicked.connect(self.gateway)
        self.to_board.clicked.connect(self.board)
        self.show_nothing()

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(4)
        for button in (self.commit, self.to_gateway, self.to_board):
            buttons.addWidget(button)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(22, 14, 20, 16)
        column.setSpacing(12)
        for part in (self.title, self.first, self.facts, self.rule, self.voice, self.caution, self.learned):
            column.addWidget(part)
        column.addLayout(buttons)
        column.addStretch(1)

    def _show(self, *, opened: bool, done: bool) -> None:
        for part in (self.facts, self.rule):
            part.setVisible(opened and not done)
        self.voice.setVisible(opened or done)
        self.caution.setVisible(opened or done)
        self.first.setVisible(not opened and not done)
        self.commit.setVisible(opened and not done)
        for button in (self.to_gateway, self.to_board):
            button.setVisible(done)

    def show_nothing(self) -> None:
        """Nothing has been opened."""
        self.learned.hold(None)
        self.inside = None
        self.title.setText(self.tr("What is inside"))
        self.first.speak(
            self.tr(
                "Once it is open, what is in it stands here: the household, the day, the newest list number, the "
                "devices. Nothing is written before you say so."
            )
        )
        self._show(opened=False, done=False)

    def show_inside(self, inside: Inside) -> None:
        """It is open."""
        self.inside = inside
        self.title.setText(inside.household)
        self.facts.tell(self._rows(inside))
        self.voice.speak(spoken(inside.sentence))
        self.caution.speak(caution(Caution("one-computer", inside.household)))
        self._show(opened=True, done=False)

    def _rows(self, inside: Inside) -> list[tuple[str, str]]:
        names, more = inside.devices[:NAMED], len(inside.devices) - NAMED
        devices = ", ".join(names) or self.tr("none")
        if inside.on_paper:
            devices = self.tr("not on paper")
        elif more > 0:
            devices = self.tr("{names} and {count} more").format(names=devices, count=more)
        made = self.tr("{day}, {time} UTC").format(day=day(inside.made), time=f"{inside.made:%H:%M}")
        return [
            (self.tr("Made"), made),
            (self.tr("Newest list number"), str(inside.list_mark)),
            (self.tr("Devices"), devices),
            (self.tr("Stopped or revoked"), str(inside.withdrawn)),
        ]

    def show_done(self, sentence: str, learned: Secret[str] | None = None) -> None:
        """The household is back; say what comes next.

        Args:
            learned: the household's passphrase, for whoever never knew it.
        """
        on_paper = self.inside is not None and self.inside.on_paper
        self.title.setText(self.tr("What comes next"))
        self.voice.speak(sentence)
        if on_paper:
            told = self.tr(
                "Say where the gateway is, then deliver. Its list may know of devices that were stopped since; "
                "they are taken over from there, and list numbers go on above the highest one seen. Then enrol "
                "everybody anew."
            )
        else:
            told = self.tr(
                "Look at the gateway. Its list may know of devices that were stopped since; they are taken over "
                "from there, and list numbers go on above the highest one seen."
            )
        self.caution.speak(told)
        self._show(opened=False, done=True)
        self.learned.hold(learned)
        self.to_gateway.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def done(self) -> bool:
        """Whether the household is back."""
        return not self.to_gateway.isHidden()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the sheet's ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("sheet"))
        painter.end()


class _Facts(QWidget):
    """Labels at the left, what they say at the right."""

    LABELS = 136

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(14)
        self._grid.setVerticalSpacing(6)
        self._grid.setColumnStretch(1, 1)
        self._shown: list[QWidget] = []

    def tell(self, rows: list[tuple[str, str]]) -> None:
        """Show other rows."""
        for widget in self._shown:
            self._grid.removeWidget(widget)
            widget.hide()
            widget.deleteLater()
        self._shown = []
        self._grid.setColumnMinimumWidth(0, self._theme.px(self.LABELS))
        for number, (label, told) in enumerate(rows):
            value = Prose(self._theme, Role.BODY, told)
            value.setAccessibleName(f"{label}: {told}")
            asked = Label(self._theme, Role.STATE, label, color="ink2")
            self._grid.addWidget(asked, number, 0, Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(value, number, 1)
            self._shown += [asked, value]

    def texts(self) -> list[str]:
        """What stands there."""
        return [one.accessibleName() for one in self._shown if isinstance(one, Prose)]
