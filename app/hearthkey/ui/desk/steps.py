"""The three steps at the right of the desk, the one in hand in strong type."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.desk.telling import StepWords
from hearthkey.ui.desk.turns import Step
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

ACROSS = 32
"""Pixels that somebody at the other side of a table reads: 24 points at 96 dots to an inch."""


class StepRow(QWidget):
    """One step: its number, what is done, and what is seen and said then."""

    def __init__(self, theme: Theme, step: Step, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.step = step
        self.rule = Rule(theme, color="ink" if step is Step.SCAN else "rule")
        self._number = Label(theme, Role.DESK_TITLE, str(int(step)))
        self.head = Prose(theme, Role.DESK_STEP)
        self.under = Prose(theme, Role.DESK_STEP)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.head)
        words.addWidget(self.under)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._number, 0, Qt.AlignmentFlag.AlignTop)
        row.addLayout(words, 1)
        self._row = row
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.rule)
        column.addLayout(row)
        column.addStretch(1)
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        px, fonts = self._theme.px, self._theme.fonts
        self._number.setFixedWidth(px(56))
        # Number and head stand on one line: what the number is taller above its line, the head keeps free.
        drop = fonts.metrics(Role.DESK_TITLE).ascent() - fonts.metrics(Role.DESK_STEP).ascent()
        self._row.setContentsMargins(0, px(8), 0, px(10))
        self.head.setContentsMargins(0, max(0, round(drop)), 0, 0)
        self.under.setContentsMargins(0, px(2), 0, 0)
        # What is typed or said is read across the table too; where all type is large, the smaller role is large enough.
        self.under.rescale(Role.DESK if fonts.font(Role.DESK).pixelSize() >= ACROSS else Role.DESK_STEP)

    def high(self, wide: int, *, whole: bool) -> int:
        """What number and head take in that width, with what stands under them or without."""
        beside = wide - self._number.width()
        under = self.under.heightForWidth(beside) if whole else 0
        return self.head.heightForWidth(beside) + under + self._theme.px(18) + self.rule.sizeHint().height()

    def show_words(self, words: StepWords, *, current: bool) -> None:
        """Say what is done now, in strong type where this is the step in hand."""
        self.head.rescale(Role.DESK_STEP_STRONG if current else Role.DESK_STEP)
        for part in (self.head, self._number):
            part.recolor("ink" if current else "ink2")
        self.head.speak(words.head)
        self.under.speak(words.under)
        self.under.setVisible(current)
        self.setAccessibleName(f"{int(self.step)}. {words.head}. {words.under}")


class Steps(QWidget):
    """All three of them, or where there is no room the one in hand; it alone says what is seen then, in large type."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows = {step: StepRow(theme, step) for step in Step}
        self.current = Step.SCAN
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for row in self.rows.values():
            column.addWidget(row)

    def show_steps(self, words: dict[Step, StepWords], current: Step) -> None:
        """Say them all anew."""
        self.current = current
        for step, row in self.rows.items():
            row.show_words(words[step], current=step is current)

    def fit(self, wide: int, high: int) -> None:
        """Leave out the other steps where the room does not hold them all."""
        all_of_them = sum(row.high(wide, whole=step is self.current) for step, row in self.rows.items()) <= high
        for step, row in self.rows.items():
            row.setVisible(all_of_them or step is self.current)

    def least(self, wide: int) -> int:
        """What the step in hand takes by itself."""
        return self.rows[self.current].high(wide, whole=True)

    def forget(self) -> None:
        """Keep no link."""
        for row in self.rows.values():
            row.show_words(StepWords("", ""), current=False)
