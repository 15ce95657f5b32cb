"""Fields with their label above and their trouble below."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Line(QLineEdit):
    """A field of one line, 32 px high, drawn by the style with room for the focus ring all round."""

    RING = 3

    def __init__(self, theme: Theme, text: str = "", *, role: Role = Role.BODY, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self._theme = theme
        self._role = role
        self.setTextMargins(8, 0, 8, 0)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self.setFont(self._theme.font(self._role))
        self.setMinimumHeight(max(self._theme.px(32), self.fontMetrics().height() + 12) + 6)


class Labelled(QWidget):
    """A control under its question, with room for one line of hint or trouble; `beside` stands behind the question."""

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
        super().__init__(parent)
        self.control = control
        self._hint = hint
        self._question = Label(theme, Role.STATE, question, color="ink2")
        self._question.setBuddy(control)
        if not control.accessibleName():
            control.setAccessibleName(question.replace("&", ""))
        self._below = Prose(theme, Role.STATE, hint, color="ink2")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        for flush in (self._question, self._below):
            flush.setContentsMargins(Line.RING, 0, Line.RING, 0)
        asked = QHBoxLayout()
        asked.setSpacing(8)
        asked.addWidget(self._question)
        asked.addStretch(1)
        if beside is not None:
            asked.addWidget(beside)
        column.addLayout(asked)
        column.addWidget(control)
        column.addWidget(self._below)
        self._below.setVisible(bool(hint))  # not before it stands in here, or it would be a window for a moment
        column.addStretch(1)

    def answered_by(self, field: QWidget) -> None:
        """Name the field that the question's mnemonic and a screen reader lead to, where the control holds several."""
        self._question.setBuddy(field)

    def remark(self, hint: str) -> None:
        """Show another hint."""
        self._hint = hint
        self.trouble("")

    def trouble(self, sentence: str) -> None:
        """Say what does not fit, in place; an empty sentence shows the hint again."""
        self._below.setText(sentence or self._hint)
        self._below.recolor("act" if sentence else "ink2")
        self._below.setVisible(bool(sentence or self._hint))
        self.control.setAccessibleDescription(sentence or self._hint)
