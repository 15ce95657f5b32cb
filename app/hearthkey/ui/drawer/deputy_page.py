"""For the day on which somebody else takes over: parts made and tried, and a stop set for whoever may only stop."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.keepsakes import Keepsakes
from hearthkey.core.languages import Language
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.dates import day
from hearthkey.ui.deputy_errands import Papers
from hearthkey.ui.drawer.deputy_sheets import DeputySheets, row_of
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.languages import NAMES
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class DeputyPage(Page):
    """Somebody takes over.

    Args:
        start: where the first folder dialog opens.
    """

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        start: Path,
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Somebody takes over"), parent=parent)
        self._errands, self._start, self._pick = errands, start, pick
        self.state = Prose(theme, Role.BODY)
        self.parts = Prose(theme, Role.STATE, color="ink2")
        self.line = Line(theme)
        self.own_line = Line(theme)
        for line in (self.line, self.own_line):
            line.setEchoMode(QLineEdit.EchoMode.Password)
        self.own = Labelled(theme, self.tr("Passphrase that only the sealed copies have"), self.own_line)
        self.make_button = Button(theme, self.tr("&Make three parts"), kind=Kind.COMMIT, height=34)
        self.words = Line(theme)
        self.try_button = Button(theme, self.tr("&Try this part"), height=32)
        self.tongue = Choice(theme, self.tr("Language"), [(one.value, name) for one, name in NAMES.items()])
        self.stop_button = Button(theme, self.tr("&Write a stop set…"), height=32)
        self.given = Prose(theme, Role.BODY)
        self.outcome = Prose(theme, Role.BODY)
        self.sheets = DeputySheets(theme, errands, start, pick)
        self._usual, self._drill = QWidget(), QWidget()
        self._build()
        self._connect(ways)
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)
        self._judge()

    def _build(self) -> None:
        column = QVBoxLayout(self._usual)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        make = self.tr(
            "Three sheets for three people. Any two together open a sealed copy and with it the household; one alone "
            "opens nothing. A letter says what works without anybody, and until when."
        )
        drill = self.tr("Once a year ask for each sheet and type its fifteen words, in order. It needs no other sheet.")
        stop = self.tr(
            "A folder with which somebody can stop a lost device at the gateway and do nothing else. It is out of date "
            "as soon as anybody is stopped, enrolled or let back in."
        )
        for part in (self.state, self.parts, self.given):
            column.addLayout(inset(part))
        inside = QVBoxLayout(self._drill)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(10)
        self._section(inside, self.tr("Is a part still right?"), drill)
        inside.addWidget(Labelled(self.theme, self.tr("The fifteen words, or the text of the code"), self.words))
        inside.addLayout(row_of(self.try_button))
        column.addWidget(self._drill)
        self._section(column, self.tr("Parts for a deputy"), make)
        column.addWidget(Labelled(self.theme, self.tr("Passphrase of the household"), self.line))
        column.addWidget(self.own)
        column.addLayout(row_of(self.make_button))
        self._section(column, self.tr("Somebody who can only stop"), stop)
        column.addWidget(Labelled(self.theme, self.tr("Language of whoever reads it"), self.tongue))
        column.addLayout(row_of(self.stop_button))
        self.body.addWidget(self._usual)
        self.body.addWidget(self.sheets, 1)
        self.body.addStretch(1)
        self.foot.addLayout(inset(self.outcome))
        self.foot.addLayout(inset(self.sheets.standing))
        self.foot.addLayout(row_of(self.sheets.keep_button, self.sheets.drop_button))
        self.own.hide()
        self._show_last_row(sheets=False)

    def _show_last_row(self, *, sheets: bool) -> None:
        """What came of it, and the buttons that end the giving out; nothing where there is neither."""
        self.sheets.setVisible(sheets)
        self._usual.setVisible(not sheets)
        for part in (self.sheets.standing, self.sheets.keep_button, self.sheets.drop_button):
            part.setVisible(sheets)
        self.outcome.setVisible(bool(self.outcome.text()))
        self.show_foot(shown=sheets or bool(self.outcome.text()))

    def _section(self, column: QVBoxLayout, title: str, what: str) -> None:
        for part in (
            Rule(self.theme, color="rule"),
            Label(self.theme, Role.BODY_STRONG, title),
            Prose(self.theme, Role.STATE, what, color="ink2"),
        ):
            column.addLayout(inset(part))

    def _connect(self, ways: Ways) -> None:
        self.make_button.clicked.connect(self._make)
        self.try_button.clicked.connect(self._try)
        self.stop_button.clicked.connect(
            lambda: self._pick(self, self.tr("Where to write the stop set"), self._start, self._write_stop_set)
        )
        for line, deed in ((self.line, self._make), (self.own_line, self._make), (self.words, self._try)):
            line.returnPressed.connect(deed)
            line.textChanged.connect(self._judge)
        self.sheets.kept.connect(self._keep)
        self.sheets.dropped.connect(self._drop)
        self.sheets.told.connect(lambda told: self._say(told, "ink"))
        self.sheets.failed.connect(self._failed)
        self._errands.step.connect(self._step)
        ways.lock.connect(self._lock)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show which parts there are, and when each was tried."""
        about = snapshot.deputy_set
        if about is None:
            self.state.speak(
                self.tr("No parts were made yet. Without whoever keeps the passphrase, nobody opens a sealed copy.")
            )
            self.parts.speak("")
        else:
            told = self.tr("Set {name} was made on {day}. Any two of its three parts open the sealed copies since.")
            stale = self.tr("Sealed copies have another passphrase since set {name} was made. Make new parts.")
            self.state.speak((told if snapshot.parts_fresh else stale).format(name=about.name, day=day(about.made)))
            tried = self.tr("Part {number}: tried on {day}")
            never = self.tr("Part {number}: not tried yet")
            self.parts.speak(
                "\n".join(
                    never.format(number=one.number)
                    if one.tried is None
                    else tried.format(number=one.number, day=day(one.tried))
                    for one in about.parts
                )
            )
        self._show_stop_set(snapshot.keepsakes)
        for part in (self.parts, self._drill):
            part.setVisible(about is not None)
        self._judge()

    def _show_stop_set(self, known: Keepsakes | None) -> None:
        """Say whether the one that was given away still does."""
        given = None if known is None else known.stop_set
        self.given.setVisible(given is not None)
        if known is None or given is None:
            return
        if known.stop_set_stale:
            told = self.tr("The stop set of {day} is of list {old}; list {new} is out since {since}. Make it anew.")
        elif known.newcomer is not None:
            told = self.tr("The stop set of {day} does not know a device that began on {newcomer}. Make it anew.")
        else:
            told = self.tr("The stop set of {day} is of list {old}, the newest one.")
        facts = {"day": day(given.made), "old": given.base, "new": known.list_number, "since": day(known.list_since)}
        began = "" if known.newcomer is None else day(known.newcomer)
        self.given.recolor("act" if known.stop_set_stale or began else "ink")
        self.given.speak(told.format(**facts, newcomer=began))

    def _judge(self) -> None:
        seen = self._errands.last
        able = seen is not None and seen.authority is not None and not seen.read_only
        self.make_button.setEnabled(able and bool(self.line.text()))
        self.try_button.setEnabled(
            able and seen is not None and seen.deputy_set is not None and bool(self.words.text())
        )
        self.stop_button.setEnabled(able and seen is not None and seen.stoppable_locked)

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Whoever comes back later finds no part on screen, and nothing that was typed."""
        super().hideEvent(event)
        if not event.spontaneous():
            self.sheets.cover()
            for line in (self.line, self.own_line, self.words):
                line.clear()

    # What can be done

    def _make(self) -> None:
        if not self.make_button.isEnabled():
            return
        secret = Secret(self.line.text().strip())
        own = Secret(self.own_line.text().strip()) if self.own_line.text().strip() else None
        for line in (self.line, self.own_line):
            line.clear()
        self._errands.draw_parts(secret, own, self, self.show_papers, self._not_drawn)

    def show_papers(self, papers: Papers) -> None:
        """Show a set that was just drawn, to be printed."""
        self.own.hide()
        self.sheets.hold(papers)
        self._say("", "ink")
        self._turn_to_sheets(shown=True)
        self.sheets.which.taken().setFocus()

    def _not_drawn(self, error: HearthkeyError) -> None:
        if error.code == "deputy-own-passphrase":
            self.own.show()
        self._failed(error)
        self.line.setFocus()

    def _keep(self, papers: Papers) -> None:
        self._errands.keep_parts(papers, self, self._kept, self._failed)

    def _kept(self, changes: Changes) -> None:
        self._turn_to_sheets(shown=False)
        self._done(changes)

    def _drop(self) -> None:
        self._turn_to_sheets(shown=False)
        self._say(self.tr("They are thrown away. What was printed of them opens nothing; destroy it."), "ink")

    def _lock(self) -> None:
        if self.sheets.papers is not None:
            self._drop()

    def _turn_to_sheets(self, *, shown: bool) -> None:
        if not shown:
            self.sheets.forget()
        self._show_last_row(sheets=shown)
        if not shown:
            self.first().setFocus()

    def _try(self) -> None:
        if not self.try_button.isEnabled():
            return
        self._errands.try_part(Secret(self.words.text()), self, self._tried, self._failed)

    def _tried(self, changes: Changes) -> None:
        self.words.clear()
        self._done(changes)

    def _write_stop_set(self, folder: Path) -> None:
        self._start = folder
        self._errands.write_stop_set(folder, Language(self.tongue.value()), self, self._done, self._failed)

    def _step(self, step: str) -> None:
        if self.isVisible() and step:
            self.outcome.recolor("ink2")
            self.outcome.speak(f"{step} …")
            self._show_last_row(sheets=self.sheets.papers is not None)

    def _done(self, changes: Changes) -> None:
        self._say(spoken(changes.sentence), "ink")

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error), "act")

    def _say(self, text: str, color: str) -> None:
        self.outcome.recolor(color)
        self.outcome.speak(text)
        self._show_last_row(sheets=self.sheets.papers is not None)
        announce(self, text)
