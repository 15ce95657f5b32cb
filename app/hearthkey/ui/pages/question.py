"""A control under its question that can be told of trouble, and give advice."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.theme.theme import Theme


class Question(Labelled):
    """A question of a page.

    Args:
        beside: a button that fills the control in.
    """

    def __init__(
        self,
        theme: Theme,
        question: str,
        control: QWidget,
        *,
        hint: str = "",
        beside: QWidget | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._said = ""
        self._first_hint = hint
        super().__init__(theme, question, _framed(control, beside), hint=hint, parent=parent)
        self.control = control
        self.control.setAccessibleName(control.accessibleName() or question)
        self.control.setAccessibleDescription(hint)
        self._question.setBuddy(control)

    def ask(self, question: str) -> None:
        """Put another question; the control's own name stays."""
        self._question.setText(question)

    def advise(self, sentence: str) -> None:
        """Say what should be known; an empty sentence shows the first hint again."""
        self._hint = sentence or self._first_hint
        self.trouble(self._said)

    def trouble(self, sentence: str) -> None:
        """Say what does not fit, aloud too when it is news."""
        if sentence != self._said:
            announce(self, sentence)
        self._said = sentence
        super().trouble(sentence)

    def told(self) -> str:
        """What stands under the control."""
        return self._said or self._hint


def _framed(control: QWidget, beside: QWidget | None) -> QWidget:
    """The control with its button; a choice has no room for a ring of its own, fields have."""
    if beside is None and not isinstance(control, Choice):
        return control
    frame = QWidget()
    row = QHBoxLayout(frame)
    inset = Line.RING if isinstance(control, Choice) else 0
    row.setContentsMargins(inset, inset, inset, inset)
    row.setSpacing(6)
    row.addWidget(control, 1)
    if beside is not None:
        row.addWidget(beside)
    return frame
