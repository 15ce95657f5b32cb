"""What is to be shown of paper and words: which, in which language, on which paper, and whom to call."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.languages import NAMES
from hearthkey.ui.pages.ways_out import form_title
from hearthkey.ui.sheet_errands import Leaf
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class What(Enum):
    """What is shown; one at a time, so that words and bundle never stand together."""

    SHEET = "sheet"
    CARD = "card"
    WRITTEN = "written"
    SPOKEN = "spoken"


class PaperChoices(QWidget):
    """Five rows of choices; the one for the form is there where the device can take more than one.

    Signals:
        changed: another page is wanted.
        call_typed: whom to call, once it was typed.
    """

    changed = Signal()
    call_typed = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._quiet = False
        self.paper_or_words = Choice(
            theme,
            self.tr("What"),
            [
                (What.SHEET.value, self.tr("Sheet")),
                (What.CARD.value, self.tr("Passphrase card")),
                (What.WRITTEN.value, self.tr("To send")),
                (What.SPOKEN.value, self.tr("To say")),
            ],
        )
        self.tongue = Choice(theme, self.tr("Language"), [(one.value, name) for one, name in NAMES.items()])
        self.form = Choice(theme, self.tr("How the bundle gets there"), [])
        sizes = [(Paper.A4.name, Paper.A4.name), (Paper.LETTER.name, self.tr("Letter"))]
        self.page_size = Choice(theme, self.tr("Paper"), sizes)
        self.call = Line(theme)
        self.gone = Prose(theme, Role.STATE, color="ink2")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        self.form_row = Labelled(theme, self.tr("How the bundle gets there"), self.form)
        column.addWidget(Labelled(theme, self.tr("What"), self.paper_or_words))
        column.addWidget(self.form_row)
        for label, part in (
            (self.tr("Language of whoever reads it"), self.tongue),
            (self.tr("Paper"), self.page_size),
            (self.tr("Whom to call, a name and a number"), self.call),
        ):
            column.addWidget(Labelled(theme, label, part))
        column.addWidget(self.gone)
        for choice in (self.paper_or_words, self.form, self.tongue, self.page_size):
            choice.chosen.connect(self._change)
        self.changed.connect(self._fit)
        self.call.editingFinished.connect(self._call)
        self._called = ""

    def begin(self) -> None:
        """Begin anew with the sheet."""
        self._quiet = True
        self.paper_or_words.take(What.SHEET.value)
        self._quiet = False
        self._fit()

    def show_leaf(self, leaf: Leaf, *, waiting: bool) -> None:
        """Show what holds for a pass."""
        self._quiet = True
        forms = leaf.forms
        self.form.offer([(one, form_title(one)) for one in forms.fitting])
        self.form.take(forms.taken)
        self.form_row.setVisible(len(forms.fitting) > 1)
        before = self.paper_or_words.segments()[-1]
        for button in self.form.segments():
            self.setTabOrder(before, button)
            before = button
        self.tongue.take(leaf.facts.language.value)
        self.call.setText(leaf.facts.call)
        self._called = leaf.facts.call
        self._quiet = False
        for button in self.paper_or_words.segments()[1:]:
            button.setEnabled(waiting)
        told = self.tr("The passphrase was erased at hand-over, so there is only the sheet.")
        self.gone.speak("" if waiting else told)

    def what(self) -> str:
        """Which of the four."""
        return self.paper_or_words.value()

    def taken_form(self) -> str:
        """The form that the sheet goes with."""
        return self.form.value()

    def language(self) -> Language:
        """In which language."""
        return Language(self.tongue.value())

    def paper(self) -> Paper:
        """On which paper."""
        return Paper[self.page_size.value()]

    def take_focus(self) -> None:
        """Put the focus on the first choice."""
        self.paper_or_words.setFocus()

    def _change(self, *_choice: object) -> None:
        if not self._quiet:
            self.changed.emit()

    def _fit(self) -> None:
        """The card and the messages are the same whatever form the bundle has."""
        self.form_row.setEnabled(self.what() == What.SHEET.value)

    def _call(self) -> None:
        typed = self.call.text().strip()
        if typed != self._called:
            self._called = typed
            self.call_typed.emit(typed)
