"""The right half of the founding page for who has a CA already: a folder is chosen and looked over."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QPainter
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.found_findings import gather
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import found as sentences
from hearthkey.services.looking_over import Overview
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Label, OneLine, Prose
from hearthkey.ui.pages.finding_rows import FindingRows
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class AdoptSide(QWidget):
    """A folder, its passphrase where one is needed, and what was found.

    Signals:
        wanted: look at the folder, with the passphrase as it is typed.
        away: found a new household instead.
    """

    wanted = Signal()
    away = Signal()

    def __init__(self, theme: Theme, pick: PickFolder = pick_folder, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._pick = pick
        self.folder: Path | None = None
        self.setAcceptDrops(True)
        self.title = Label(theme, Role.TITLE, self.tr("What is there"))
        self.back = Button(theme, self.tr("Found a new one instead"))
        self.intro = Prose(
            theme,
            Role.BODY,
            self.tr("Choose the folder in which the CA lies, or drop it here. Nothing in it is changed."),
            color="ink2",
        )
        self.choose = Button(theme, self.tr("Choose a folder…"), height=32)
        self.path = OneLine(theme, Role.BODY, self.tr("none chosen yet"), color="ink2")
        self.lock = Line(theme)
        self.lock.setEchoMode(QLineEdit.EchoMode.Password)
        self.open_button = Button(theme, self.tr("Open it"), height=32)
        self.question = Question(
            theme,
            self.tr("What is the passphrase of the CA’s key in this folder?"),
            self.lock,
            hint=self.tr("It is used once, to read the key. From then on the household’s own passphrase counts."),
            beside=self.open_button,
        )
        self.question.hide()
        self.summary = Prose(theme, Role.BODY)
        self.rows = FindingRows(theme)
        self.rows.hide()
        self._lay_out()
        self.choose.clicked.connect(self.pick)
        self.back.clicked.connect(self.away)
        self.open_button.clicked.connect(self.wanted)
        self.lock.returnPressed.connect(self.wanted)

    def _lay_out(self) -> None:
        chosen = QHBoxLayout()
        self.path.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        chosen.setSpacing(8)
        chosen.addSpacing(-3)
        chosen.addWidget(self.choose)
        chosen.addWidget(self.path, 1)
        asked = QHBoxLayout()
        asked.addSpacing(-3)
        asked.addWidget(self.question, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(22, 14, 20, 16)
        column.setSpacing(12)
        column.addWidget(Pair(self._theme, self.title, self.back, least=400, stretch=(1, 0)))
        column.addWidget(self.intro)
        column.addLayout(chosen)
        column.addLayout(asked)
        column.addWidget(self.summary)
        column.addWidget(self.rows)
        column.addStretch(1)

    # Which folder

    def pick(self) -> None:
        """Ask for a folder."""
        start = Path.home() if self.folder is None else self.folder
        self._pick(self, self.tr("Where does the CA lie?"), start, self.take, self.tr("Look at it"))

    def take(self, folder: Path) -> None:
        """Look at this one."""
        self.folder = folder
        self.path.setText(str(folder))
        self.path.setToolTip(str(folder))
        self.path.recolor("ink")
        self.lock.clear()
        self.question.trouble("")
        self.wanted.emit()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """A folder or a file of this computer may be dropped."""
        if _dropped(event) is not None:
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """Look at what was dropped."""
        folder = _dropped(event)
        if folder is not None:
            event.acceptProposedAction()
            self.take(folder)

    # What was found

    def passphrases(self) -> tuple[Secret[str], ...]:
        """What was typed."""
        typed = self.lock.text()
        return (Secret(typed),) if typed else ()

    def show_overview(self, seen: Overview) -> None:
        """Show what was found; ask for a passphrase where one would help."""
        words = [said(one) for one in sentences.summary(seen.home)]
        self.summary.speak(" ".join(words))
        tried = bool(self.passphrases())
        self.question.setVisible(seen.needs_passphrase or tried)
        trouble = self.tr("This passphrase does not open the CA’s key.")
        self.question.trouble(trouble if seen.needs_passphrase and tried else "")
        self.question.advise(self.tr("It opens the CA’s key.") if tried and not seen.needs_passphrase else "")
        self.rows.show_findings(gather(seen.findings))
        announce(self.summary, self.summary.text())
        if seen.needs_passphrase:
            self.lock.setFocus()

    def show_trouble(self, error: HearthkeyError) -> None:
        """Say why nothing could be looked at."""
        self.rows.show_findings(())
        self.question.hide()
        self.summary.speak(mended(error))
        announce(self.summary, self.summary.text())

    def forget(self) -> None:
        """Let go of what was typed."""
        self.lock.clear()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the sheet's ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("sheet"))
        painter.end()


def _dropped(event: QDropEvent) -> Path | None:
    """The one thing of this computer that is dropped."""
    urls = event.mimeData().urls()
    return Path(urls[0].toLocalFile()) if len(urls) == 1 and urls[0].isLocalFile() else None
