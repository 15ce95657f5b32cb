"""Until when a pass is good: a date to be typed, and the lengths that are mostly wanted."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from PySide6.QtCore import QDate, QRectF, QSignalBlocker, QSize, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QDateEdit, QHBoxLayout, QSizePolicy, QWidget

from hearthkey.core.certificates import end_of_day
from hearthkey.core.phrases import Style
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.dates import locale, pattern, written
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

WEEK, YEAR, TWO_YEARS = "week", "year", "two years"


class DateField(QDateEdit):
    """A date, typed by its parts: day, month, year; Up and Down turn the part under the cursor."""

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setLocale(locale())
        self.setDisplayFormat(pattern(Style.SHORT_DAY))
        self.setButtonSymbols(QDateEdit.ButtonSymbols.NoButtons)
        self.setFrame(False)
        self.setAccessibleName(name)
        self.lineEdit().setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        self.setFont(self._theme.font(Role.BODY))
        self.lineEdit().setTextMargins(8, 0, 4, 0)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for the longest date, as high as a line field."""
        metrics = self.fontMetrics()
        high = max(self._theme.px(32), metrics.height() + 12) + 6
        days = (self.locale().toString(QDate(2028, month, 30), self.displayFormat()) for month in range(3, 13))
        wide = max(metrics.horizontalAdvance(day) for day in days)
        return QSize(wide + 40, high)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the box and the focus ring; the text paints itself."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        focused = self.hasFocus()
        box = QRectF(self.rect())
        painter.setPen(QPen(self._theme.color("ink" if focused else "rule"), 1))
        painter.setBrush(self._theme.color("raised"))
        painter.drawRoundedRect(box.adjusted(3.5, 3.5, -3.5, -3.5), 3, 3)
        if focused:
            painter.setPen(QPen(self._theme.color("ink"), 2))
            painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), 4, 4)
        painter.end()


class Until(QWidget):
    """A date and three lengths beside it; the weekday stands under them.

    Signals:
        changed: another day.
    """

    changed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.today = date(2000, 1, 1)
        self._guest = False
        self._touched = False
        question = self.tr("Until when?")
        self.field = DateField(theme, question)
        self.lengths = Choice(
            theme,
            self.tr("How long?"),
            [(WEEK, self.tr("a week")), (YEAR, self.tr("a year")), (TWO_YEARS, self.tr("2 years"))],
        )
        both = QWidget()
        both.setAccessibleName(question)
        row = QHBoxLayout(both)
        row.setContentsMargins(0, 0, 3, 0)
        row.setSpacing(8)
        row.addWidget(self.field)
        row.addWidget(self.lengths, 1)
        self._asked = Labelled(theme, question, both)
        self._asked.answered_by(self.field)
        column = QHBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._asked)
        self.field.dateChanged.connect(self._typed)
        self.lengths.chosen.connect(self._chosen)

    def begin(self, today: date, *, guest: bool) -> None:
        """Learn what day it is; as long as nobody chose an end, propose the usual one."""
        if (today, guest) != (self.today, self._guest):
            self.today, self._guest = today, guest
            if not self._touched:
                self._go(WEEK if guest else TWO_YEARS)
        self._say()

    def reset(self) -> None:
        """Propose the usual end again."""
        self._touched = False
        self._go(WEEK if self._guest else TWO_YEARS)

    def end(self) -> datetime:
        """The last second of the chosen day, UTC."""
        chosen = self.field.date()
        return end_of_day(chosen.year(), chosen.month(), chosen.day())

    def trouble(self, sentence: str) -> None:
        """Say what does not fit; without a trouble, the weekday."""
        if not sentence:
            self._say()
            return
        self._asked.trouble(sentence)
        self.field.setAccessibleDescription(sentence)

    def _after(self, key: str) -> QDate:
        today = QDate(self.today.year, self.today.month, self.today.day)
        return {WEEK: today.addDays(7), YEAR: today.addYears(1), TWO_YEARS: today.addYears(2)}[key]

    def _go(self, key: str) -> None:
        with QSignalBlocker(self.field):
            self.field.setDate(self._after(key))
        self.lengths.take(key)
        self._say()

    def _chosen(self, key: str) -> None:
        self._touched = True
        self._go(key)
        self.changed.emit()

    def _typed(self, chosen: QDate) -> None:
        self._touched = True
        self.lengths.leave()
        for key in (WEEK, YEAR, TWO_YEARS):
            if chosen == self._after(key):
                self.lengths.take(key)
        self._say()
        self.changed.emit()

    def _say(self) -> None:
        end = self.end()
        away = end.date() - self.today
        if away < timedelta(0):
            words = self.tr("A {weekday} that has passed.")
        elif away.days < 2:
            words = self.tr("Tomorrow, a {weekday}.") if away.days else self.tr("Today, a {weekday}.")
        else:
            words = self.tr("A {weekday}, {days} days from now.")
        told = words.format(weekday=written(end, Style.DAY_NAME), days=away.days)
        self._asked.remark(told)
        self.field.setAccessibleDescription(told)
