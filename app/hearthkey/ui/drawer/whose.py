"""Whose device it is: one of the family, a guest, or somebody new."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import QCompleter, QVBoxLayout, QWidget

from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.theme.theme import Theme

GUEST, NEW = "guest", "new"
_PERSON = "person:"
SEGMENTS = 4
"""More people than these do not fit side by side; then a field with a list takes their place."""


class Whose(QWidget):
    """Asks for a person. A few stand side by side; many in a list that can be typed into.

    Signals:
        changed: the answer is another one.
    """

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._people: list[str] | None = None
        question = self.tr("Whose is it?")
        self.few = Choice(theme, question, [])
        self.many = Combo(theme, question)
        self.many.setEditable(True)
        self.many.setInsertPolicy(Combo.InsertPolicy.NoInsert)
        self.name = Line(theme)
        self.name.setAccessibleName(self.tr("Name"))
        self._few_row = QWidget()
        row = inset(self.few)
        self._few_row.setLayout(row)
        self._few_row.setAccessibleName(question)
        self._asked_few = Labelled(theme, question, self._few_row)
        self._asked_many = Labelled(theme, question, self.many)
        self._asked_name = Labelled(theme, self.tr("Name"), self.name)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        for part in (self._asked_few, self._asked_many, self._asked_name):
            column.addWidget(part)
        self.few.chosen.connect(self._changed)
        self.many.currentTextChanged.connect(self._changed)
        self.name.textChanged.connect(self._changed)
        self.offer([])

    def offer(self, people: Sequence[str]) -> None:
        """Offer these people; what was answered stays answered."""
        if list(people) == self._people:
            return
        person, guest, fresh = self.person(), self.guest(), self._people is None
        had_focus = any(one.hasFocus() for one in self.few.segments())
        self._people = list(people)
        with QSignalBlocker(self.many):
            self.few.offer(
                [
                    *((_PERSON + one, one) for one in people[:SEGMENTS]),
                    (GUEST, self.tr("a guest")),
                    (NEW, self.tr("new…")),
                ]
            )
            self.many.offer([*((_PERSON + one, one) for one in people), (GUEST, self.tr("a guest"))])
            completer = self.many.completer()
            if completer is not None:
                completer.setCompletionMode(QCompleter.CompletionMode.InlineCompletion)
                completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        if fresh:
            self.few.take(_PERSON + people[0] if people else NEW)
        elif guest:
            self.few.take(GUEST)
            self.many.take(GUEST)
        else:
            self.take(person)
        self._show()
        if had_focus:
            self.focus()

    @property
    def nobody(self) -> bool:
        """Whether there is no family yet to choose from."""
        return not self._people

    def take(self, person: str) -> None:
        """Answer with a name; one that is not known stands in the name field."""
        known = person in (self._people or [])
        with QSignalBlocker(self.many), QSignalBlocker(self.name):
            if known:
                self.few.take(_PERSON + person)
                self.many.take(_PERSON + person)
            elif person:
                self.few.take(NEW)
                self.name.setText(person)
                self.many.setEditText(person)
        self._show()

    def person(self) -> str:
        """The person's name, as typed or chosen."""
        if self._few():
            key = self.few.value()
            return key.removeprefix(_PERSON) if key.startswith(_PERSON) else self.name.text()
        return self.name.text() if self.guest() else self.many.currentText()

    def guest(self) -> bool:
        """Whether the device is a guest's."""
        if self._few():
            return self.few.value() == GUEST
        return self.many.currentText() == self.tr("a guest")

    def clear(self) -> None:
        """Forget a name that was typed."""
        with QSignalBlocker(self.name), QSignalBlocker(self.many):
            self.name.setText("")
            self.many.setEditText("")

    def trouble(self, sentence: str) -> None:
        """Say what does not fit, at the field that was typed into."""
        for asked in (self._asked_few, self._asked_many, self._asked_name):
            asked.trouble("")
        self._asking().trouble(sentence)

    def controls(self) -> list[QWidget]:
        """Everything the Tab key can stop at, in the order of the questions."""
        return [*self.few.segments(), self.many, self.name]

    def focus(self) -> None:
        """Put the focus where the answer is typed or chosen."""
        asked = self._asking()
        (asked.control if asked is not self._asked_few else self.few.taken()).setFocus()

    def _asking(self) -> Labelled:
        if not self._asked_name.isHidden():
            return self._asked_name
        return self._asked_few if self._few() else self._asked_many

    def _few(self) -> bool:
        return len(self._people or []) <= SEGMENTS and self._side_by_side()

    def _side_by_side(self) -> bool:
        return self.few.sizeHint().width() <= self._theme.px(362)

    def _changed(self, _answer: str) -> None:
        self._show()
        self.changed.emit()

    def _show(self) -> None:
        few = self._few()
        named = self.guest() or (few and self.few.value() == NEW)
        self._asked_few.setVisible(few)
        self._asked_many.setVisible(not few)
        self._asked_name.setVisible(named)
