"""Asks whether a stick was wiped that a bundle was carried on, looks for it, and deletes what is still ours."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.copies import Found, Told, to_ask_about
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import copies as sentences
from hearthkey.services.tidying import Looked
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.dates import day
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_THERE = frozenset({Found.OURS, Found.PARTLY})


class StickQuestion(QWidget):
    """One stick at a time. It is hidden while there is nothing to ask.

    Whoever says "later" is not asked again about that stick until the app is started anew, or the stick is plugged
    in again.

    Signals:
        settled: there was an answer, and nothing stands here any more.
    """

    settled = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._asked: Told | None = None
        self._here = False
        self._back = 0
        self._busy = False
        self._later: dict[int, bool] = {}
        self.question = Prose(theme, Role.DEVICE, lines=1.4, strong=Role.DATE_STRONG)
        self.outcome = Prose(theme, Role.STATE, color="ink2", lines=1.4)
        self.wiped = Button(theme, self.tr("It is &wiped"))
        self.look = Button(theme, self.tr("&Look now"))
        self.delete = Button(theme, self.tr("&Delete the file"), kind=Kind.COMMIT)
        self.later = Button(theme, self.tr("Ask me later"), kind=Kind.WORD)
        self.undo = Button(theme, self.tr("It is not wiped after all"))
        self.wiped.clicked.connect(self._wiped)
        self.look.clicked.connect(self._look)
        self.delete.clicked.connect(self._delete)
        self.later.clicked.connect(self._put_off)
        self.undo.clicked.connect(self._undo)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(self.question))
        column.addLayout(inset(self.outcome))
        row = QHBoxLayout()
        row.setSpacing(2)
        for button in (self.delete, self.wiped, self.look, self.later, self.undo):
            row.addWidget(button)
        row.addStretch(1)
        column.addLayout(row)
        self.undo.hide()
        self.hide()

    def forget(self) -> None:
        """The page is about another device now."""
        self._asked, self._busy = None, False
        self.undo.hide()
        self.question.show()
        self.hide()

    def show_copies(self, seen: CopiesSeen) -> None:
        """Ask about the newest stick that there is something to ask about; an answer that stands is left standing."""
        if self._busy or not self.undo.isHidden():
            return
        here = {place for one in seen.drives for place in (one.name, str(one.path))}
        due = to_ask_about(seen.found, here, seen.at)
        for one in due:
            plugged_in = not here.isdisjoint({one.copy.place, one.copy.folder})
            if not plugged_in and one.copy.number in self._later:
                self._later[one.copy.number] = False
            elif self._later.get(one.copy.number) is False:
                del self._later[one.copy.number]  # it was away since, and here it is again
        wanted = [one for one in due if one.copy.number not in self._later]
        if not wanted:
            self.forget()
        elif self._asked is None or self._asked.copy.number != wanted[0].copy.number:
            self._ask(wanted[0], here)

    def _ask(self, one: Told, here: set[str]) -> None:
        self._asked = one
        self._here = not here.isdisjoint({one.copy.place, one.copy.folder})
        self.question.speak(
            self.tr("The bundle of {title} was written to it on {day}.").format(
                title=spoken(one.of.title), day=day(one.copy.made)
            ),
            stressed=self.tr("Was the stick “{name}” wiped?").format(name=one.copy.place),
        )
        self._offer(self.wiped, self.look, self.later)
        self.show()
        announce(self, self.question.text())

    def _offer(self, *buttons: Button, told: str = "") -> None:
        focus = next((one for one in self.buttons() if one.hasFocus()), None)
        self.outcome.speak(told)
        self.outcome.setVisible(bool(told))
        for button in self.buttons():
            button.setVisible(button in buttons)
        if focus is not None and focus not in buttons:
            buttons[0].setFocus()
        if told:
            announce(self, told)

    def buttons(self) -> tuple[Button, ...]:
        """All its buttons, shown or not, in their order."""
        return (self.delete, self.wiped, self.look, self.later, self.undo)

    def _look(self) -> None:
        if self._asked is not None:
            self._errands.look_at_copy(self._asked.copy.number, self, self._looked, self._failed)

    def _looked(self, looked: Looked) -> None:
        if self._asked is None or looked.told.copy.number != self._asked.copy.number:
            return
        told = said(sentences.found(looked.found))
        if looked.found in _THERE:
            told = f"{told} {said(sentences.on_flash(looked.told.copy))}"
            self._offer(self.delete, self.later, told=told)
        elif looked.found is Found.GONE:
            self._offer(self.wiped, self.later, told=told)
        else:
            self._offer(self.look, self.wiped, self.later, told=told)

    def _failed(self, error: HearthkeyError) -> None:
        self._busy = False
        self._offer(self.look, self.wiped, self.later, told=mended(error))

    def _wiped(self) -> None:
        if self._asked is not None:
            self._back, self._busy = self._asked.copy.number, True
            self._errands.copy_is_gone(self._back, self, self._done, self._failed)

    def _done(self, changes: Changes) -> None:
        self._asked, self._busy = None, False
        self._offer(self.undo, told=spoken(changes.sentence))
        self.question.hide()

    def _delete(self) -> None:
        if self._asked is not None:
            self._errands.tidy_copy(self._asked.copy.number, self, self._deleted, self._failed)

    def _deleted(self, _changes: Changes) -> None:
        self._settle()

    def _put_off(self) -> None:
        if self._asked is not None:
            self._later[self._asked.copy.number] = self._here
        self._settle()

    def _settle(self) -> None:
        self.forget()
        self.settled.emit()

    def _undo(self) -> None:
        self._errands.copy_is_not_gone(self._back, self, self._taken_back, self._failed)

    def _taken_back(self, _changes: Changes) -> None:
        self._settle()
