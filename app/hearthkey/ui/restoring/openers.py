"""What opens a sealed copy or a paper: the household's passphrase, or two of the deputy's parts."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from hearthkey.core.secret import Secret
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.question import Question
from hearthkey.ui.restore_errands import Opener, Source
from hearthkey.ui.restoring.drop_place import PickFiles, pick_files
from hearthkey.ui.restoring.two_parts import TwoParts
from hearthkey.ui.theme.theme import Theme


class Openers(QWidget):
    """One or the other: while the parts are in sight, nobody is asked for a passphrase.

    Signals:
        changed: something else stands here than before.
        turned: from the passphrase to the parts, or back.
        wanted: the return key was pressed.
    """

    changed = Signal()
    turned = Signal()
    wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        *,
        pick: PickFiles = pick_files,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.line, self.own = Line(theme), Line(theme)
        self.passphrase = Question(theme, self.tr("&Passphrase of the household"), self.line)
        self.own_fold = Fold(
            theme,
            self.tr("The copies have a passphrase of their own"),
            Question(theme, self.tr("Passphrase of the &copies"), self.own),
        )
        self.parts = TwoParts(theme, errands, start, pick=pick)
        self.parts_fold = Fold(theme, self.tr("Nobody knows the passphrase: two of the deputy’s parts"), self.parts)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        for part in (self.passphrase, self.own_fold, self.parts_fold):
            column.addWidget(part)
        for line in (self.line, self.own):
            line.setEchoMode(QLineEdit.EchoMode.Password)
            line.textChanged.connect(self._typed)
            line.returnPressed.connect(self.wanted)
        for one in self.parts.both:
            one.words.returnPressed.connect(self._enter)
        self.parts.read.connect(self.changed)
        self.parts_fold.button.clicked.connect(self._turned)
        self.parts_fold.button.clicked.connect(self.turned)
        self._copy_possible = True

    def begin(self) -> None:
        """Begin anew."""
        self.parts_fold.open(shown=False)
        self.fit(Source())
        self.forget()

    def fit(self, source: Source) -> None:
        """A paper has no passphrase of its own, and parts do not open it."""
        self._copy_possible = source.copy is not None or not source.gathered.lines
        self._turned()

    def _turned(self) -> None:
        if not self._copy_possible:
            self.parts_fold.open(shown=False)
        by_parts = self.parts_fold.is_open
        self.parts_fold.setVisible(self._copy_possible)
        self.passphrase.setVisible(not by_parts)
        self.own_fold.setVisible(self._copy_possible and not by_parts)
        if by_parts:
            self.parts.both[0].words.setFocus()
        self.changed.emit()

    def _typed(self) -> None:
        if self.line.text() or self.own.text():
            self.changed.emit()

    def _enter(self) -> None:
        for one in self.parts.both:
            if one.part is None:
                one.look()
        if self.parts.whole:
            self.wanted.emit()

    @property
    def by_parts(self) -> bool:
        """Whether the parts are to open it."""
        return self.parts_fold.is_open

    @property
    def filled(self) -> bool:
        """Whether there is enough to try."""
        return self.parts.whole if self.by_parts else bool(self.line.text())

    def opener(self) -> Opener:
        """The passphrases that were typed."""
        own = self.own.text().strip()
        return Opener(Secret(self.line.text().strip()), Secret(own) if own else None)

    def forget(self) -> None:
        """Whoever comes back later finds nothing here."""
        for line in (self.line, self.own):
            line.clear()
        self.parts.forget()

    def ask(self) -> None:
        """Put the cursor where something is wanted."""
        if self.by_parts:
            next((one for one in self.parts.both if one.part is None), self.parts.both[0]).words.setFocus()
        else:
            self.line.setFocus()
