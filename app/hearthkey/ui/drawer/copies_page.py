"""Every copy of a bundle that left, of one device or of the household, and what can be done about the chosen one."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.copies import Found, Standing, Told, unaccounted
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import copies as sentences
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.tidying import Looked
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.drawer.copies_list import CopiesList
from hearthkey.ui.drawer.copies_model import CopiesModel
from hearthkey.ui.drawer.page import INSET, RING, Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

ALL, OPEN_ONES = "all", "open"


class CopiesPage(Page):
    """Summary, list, and a last row about the chosen copy. The list scrolls, so the page does not."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Copies"), parent=parent)
        self._errands = errands
        self._identity = ""
        self._chosen = 0
        self.summary = Prose(theme, Role.BODY, strong=Role.BODY_STRONG, lines=1.4)
        self.shown = Choice(
            theme,
            self.tr("Which copies"),
            ((ALL, self.tr("All")), (OPEN_ONES, self.tr("Not known to be gone"))),
        )
        room = self.shown.sizePolicy()
        room.setRetainSizeWhenHidden(True)  # without any part of a fixed height, the sentence would drift down the page
        self.shown.setSizePolicy(room)
        self.whole = Button(theme, self.tr("Show the whole household"), kind=Kind.WORD, height=26)
        self.model = CopiesModel(self)
        self.list = CopiesList(theme, self.model)
        self.outcome = Prose(theme, Role.STATE, color="ink2", lines=1.4)
        self.look = Button(theme, self.tr("&Look now"))
        self.gone = Button(theme, self.tr("It is &gone"))
        self.back = Button(theme, self.tr("Not &gone after all"))
        self.delete = Button(theme, self.tr("&Delete the file"), kind=Kind.COMMIT)
        self.leave_it = Button(theme, self.tr("Lea&ve it"))
        self._build()
        self._connect()

    def _build(self) -> None:
        upper = QVBoxLayout()
        upper.setContentsMargins(INSET - RING, 0, INSET - RING, 6)
        upper.setSpacing(8)
        upper.addLayout(inset(self.summary))
        upper.addLayout(inset(self.shown))
        upper.addWidget(self.whole)
        lower = QHBoxLayout()
        lower.setContentsMargins(INSET, 0, INSET - ThinBar.WIDTH, 0)
        lower.addWidget(self.list)
        self.fill(upper, lower)
        self.foot.addLayout(inset(self.outcome))
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.delete, self.leave_it, self.look, self.gone, self.back):
            row.addWidget(button)
        row.addStretch(1)
        self.foot.addLayout(row)
        self._offer(None)

    def _connect(self) -> None:
        self.shown.chosen.connect(self._thin_out)
        self.whole.clicked.connect(lambda: self.show_device(""))
        self.list.selectionModel().currentChanged.connect(lambda now, _before: self._choose(now.row()))
        self.model.modelReset.connect(self._find_again)
        self.look.clicked.connect(self._look)
        self.gone.clicked.connect(lambda: self._act(self._errands.copy_is_gone))
        self.back.clicked.connect(lambda: self._act(self._errands.copy_is_not_gone))
        self.leave_it.clicked.connect(self._leave_it)
        self.delete.clicked.connect(lambda: self._act(self._errands.tidy_copy))
        self.follow(self._errands.seen, self.show_snapshot)

    # Showing

    def show_device(self, identity: str) -> None:
        """Be about a device; with an empty identity, about the household."""
        if identity != self._identity:
            self._identity, self._chosen = identity, 0
            self.list.scrollToTop()
        self.refresh()

    def opened(self) -> None:
        """What lies where may have changed meanwhile."""
        self.refresh()

    def show_snapshot(self, _snapshot: Snapshot) -> None:
        """The household looks different: ask anew."""
        self.refresh()

    def refresh(self) -> None:
        """Ask for the list."""
        self._errands.copies(self._identity, self, self.show_copies)

    def show_copies(self, seen: CopiesSeen) -> None:
        """Show the list."""
        title = seen.found[0].of.title if self._identity and seen.found else self._title()
        self.entitle(self.tr("Copies of {title}").format(title=spoken(title)) if self._identity else self.tr("Copies"))
        self.whole.setVisible(bool(self._identity))
        self._tell(seen.found)
        self.shown.setVisible(bool(seen.found))
        self.list.setFocusPolicy(Qt.FocusPolicy.StrongFocus if seen.found else Qt.FocusPolicy.NoFocus)
        self.model.show_copies(seen.found, titled=not self._identity)
        if seen.found and self.close_button.hasFocus():
            self.list.setFocus()

    def _title(self) -> str:
        passes = () if self._errands.last is None else self._errands.last.passes
        return next((one.title for one in passes if one.identity == self._identity), "")

    def _tell(self, found: tuple[Told, ...]) -> None:
        loose = len(unaccounted(found))
        if not found:
            self.summary.speak(
                self.tr("Files, sticks and pick-ups are listed here from the first one on."),
                stressed=self.tr("No copy has left this computer."),
            )
            return
        left = self.tr("1 copy.") if len(found) == 1 else self.tr("{count} copies.").format(count=len(found))
        if not loose and any(one.standing is Standing.SHOWN for one in found):
            rest = self.tr("None lies anywhere: each is gone, opens nothing any more, or was only on the screen.")
        elif not loose:
            rest = self.tr("Each is gone, or opens nothing any more.")
        elif loose == 1:
            rest = self.tr("Of 1 nobody knows whether it is gone.")
        else:
            rest = self.tr("Of {loose} nobody knows whether they are gone.")
        self.summary.speak(rest.format(loose=loose), stressed=left)

    def _thin_out(self, key: str) -> None:
        self.model.keep_open_ones(only=key == OPEN_ONES)
        count = self.model.rowCount()
        words = self.tr("1 copy shown") if count == 1 else self.tr("{count} copies shown")
        announce(self.shown, words.format(count=count))

    def _find_again(self) -> None:
        row = self.model.row_of(self._chosen)
        if row >= 0:
            self.list.setCurrentIndex(self.model.index(row))
        else:
            self._choose(-1)

    # The chosen copy

    def _choose(self, row: int) -> None:
        one = self.model.copy_at(row) if 0 <= row < self.model.rowCount() else None
        before, self._chosen = self._chosen, 0 if one is None else one.copy.number
        if one is None or one.copy.number != before:
            self.outcome.hide()
        self._offer(one)

    def _offer(self, one: Told | None, *, delete: bool = False) -> None:
        gone = one is not None and one.standing is Standing.TIDIED
        self.look.setVisible(one is not None and not gone and one.copy.checkable and not delete)
        self.gone.setVisible(one is not None and not gone and not delete)
        self.back.setVisible(gone)
        for button in (self.delete, self.leave_it):
            button.setVisible(delete)
        able = self._errands.last is None or not self._errands.last.read_only
        for button in (self.gone, self.back, self.delete):
            button.setEnabled(able)
        self.show_foot(shown=one is not None)

    def _look(self) -> None:
        self._errands.look_at_copy(self._chosen, self, self.show_looked, self._failed)

    def show_looked(self, looked: Looked) -> None:
        """Show what a look at the chosen copy found."""
        if looked.told.copy.number != self._chosen:
            return
        there = looked.found in {Found.OURS, Found.PARTLY}
        told = said(sentences.found(looked.found))
        self._say(f"{told} {said(sentences.on_flash(looked.told.copy))}" if there else told)
        self._offer(looked.told, delete=there)
        (self.delete if there else self.gone).setFocus()

    def _leave_it(self) -> None:
        self.outcome.hide()
        self._offer(self.model.copy_at(self.model.row_of(self._chosen)))
        self.list.setFocus()

    def _act(self, errand: object) -> None:
        if self._chosen and callable(errand):
            errand(self._chosen, self, self._done, self._failed)

    def _done(self, changes: Changes) -> None:
        self._say(spoken(changes.sentence))
        self.list.setFocus()

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error))

    def _say(self, words: str) -> None:
        self.outcome.speak(words)
        self.outcome.show()
        announce(self, words)
