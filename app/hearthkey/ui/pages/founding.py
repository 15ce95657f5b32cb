"""The first evening, on one page: the household is named, its passphrase is confirmed, and it is founded."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QKeyEvent, QPainter
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.phrases import Style
from hearthkey.core.plans import Changes, FoundPlan
from hearthkey.core.sentences import plans
from hearthkey.services.founding import FoundRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.dates import written
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.adopt_turn import AdoptTurn
from hearthkey.ui.pages.founding_form import FoundingForm
from hearthkey.ui.pages.founding_passphrase import PassphrasePart
from hearthkey.ui.pages.founding_words import Spot, spot_of, told
from hearthkey.ui.pages.heading import Heading
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.so_far import SoFar
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 150
"""Milliseconds without a key before what was typed is looked at."""

INSET = 17
"""Pixels from the window's edge to a control; its text begins at 20, as everywhere."""


class FoundingPage(QWidget):
    """The page.

    Args:
        practice: opens the practice household.
        key_folder: where a key file would lie.
        networks_here: subnets that this computer is in, to be proposed as those at home.
    """

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        *,
        practice: Callable[[], None],
        key_folder: str = "",
        networks_here: Sequence[str] = (),
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._errands = errands
        self._ways = ways
        self._plan: FoundPlan | None = None
        self._busy = False
        self._drawn = False
        self._keep_in_sight: QWidget | None = None
        self.heading = Heading(theme)
        self.form = FoundingForm(theme, key_folder, networks_here)
        self.passphrase = PassphrasePart(theme, errands)
        self.voice = Voice(theme)
        self.so_far = SoFar(theme, practice, ways.restore.emit)
        self.adopt = AdoptTurn(theme, errands, self.so_far, self)
        self.commit = Button(theme, self.adopt.verb(), kind=Kind.COMMIT, hint=self.tr("Ctrl+Enter"), height=36)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE)
        self._lay_out()
        self._connect()
        self._look_at(errands.last)

    def _lay_out(self) -> None:
        acts = Pair(self._theme, self.commit, self.note, least=400, gap=9, stretch=(0, 1))
        self.left = QWidget()
        column = QVBoxLayout(self.left)
        column.setContentsMargins(INSET, 10, INSET + 4, 12)
        column.setSpacing(9)
        column.addWidget(self.form)
        column.addWidget(self.passphrase)
        flush = QHBoxLayout()
        flush.setContentsMargins(3, 4, 3, 0)
        flush.addWidget(self.voice)
        column.addLayout(flush)
        column.addWidget(acts)
        column.addStretch(1)
        self._pair = _Spine(self._theme, self.left, self.adopt.beside, least=900, gap=2, stretch=(48, 52))
        whole = QWidget()
        sheet = QVBoxLayout(whole)
        sheet.setContentsMargins(0, 0, 0, 0)
        sheet.setSpacing(0)
        sheet.addWidget(self.heading)
        sheet.addWidget(self._pair, 1)
        self.view = QScrollArea()
        self.view.setVerticalScrollBar(ThinBar(self._theme))
        self.view.setWidget(whole)
        self.view.setWidgetResizable(True)
        self.view.setFrameShape(QFrame.Shape.NoFrame)
        self.view.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 0, 0, 0)
        page.setSpacing(0)
        page.addWidget(self.view)

    def _connect(self) -> None:
        self._errands.seen.connect(self._look_at)
        self._errands.step.connect(self._working)
        self.form.changed.connect(self._typed)
        self.form.another.connect(self.preview)
        self.passphrase.changed.connect(self._judge)
        self.passphrase.committed.connect(self.found)
        self.commit.clicked.connect(self.found)
        self._pause.timeout.connect(self.preview)
        self.adopt.changed.connect(self._judge)
        self.adopt.looked.connect(self.preview)
        self.adopt.turned.connect(self._turned)
        self.view.verticalScrollBar().rangeChanged.connect(lambda _least, _most: self._into_sight())

    def _look_at(self, snapshot: Snapshot | None) -> None:
        date = "" if snapshot is None else written(snapshot.at, Style.WHOLE)
        self.heading.say(*self.adopt.heading(), date)
        self._draw()
        self._judge()

    def _turned(self, first: QWidget) -> None:
        self._look_at(self._errands.last)
        self._keep_in_sight = first
        self._into_sight()

    def _into_sight(self) -> None:
        """What is asked for stays in sight while the page beside and above it grows."""
        first = self._keep_in_sight
        if first is not None and first is self.focusWidget():
            QTimer.singleShot(0, self, lambda: self.view.ensureWidgetVisible(first))

    def begin(self) -> None:
        """Draw a passphrase, and put the cursor into the first field."""
        if not self._drawn:
            self._drawn = True
            self.passphrase.draw()
        self.form.name.setFocus()

    def showEvent(self, event: QEvent) -> None:  # noqa: N802 - Qt's name
        """Begin when the page comes into sight."""
        super().showEvent(event)  # type: ignore[arg-type]  # Qt hands a show event on
        self.begin()

    # While it is typed

    def _typed(self) -> None:
        self._plan = None
        self.adopt.stale(self.form.request())
        self._draw()
        self._judge()
        self._pause.start()

    def _draw(self) -> None:
        if self._errands.last is not None:
            request = self.form.request()
            in_file = self.form.kept.value() == "file"
            self.so_far.sheet.draw(self._errands.last.at, name=request.name, host=request.gateway_host, in_file=in_file)

    def preview(self) -> None:
        """Have what was typed looked at."""
        self._pause.stop()
        request = self.form.request()
        self._errands.preview_found(request, self, partial(self._planned, request), partial(self._refused, request))

    def _planned(self, request: FoundRequest, plan: FoundPlan) -> None:
        if request != self.form.request():
            return
        if request.tunnel_subnet is None:
            self.form.propose(str(plan.household.tunnel_subnet))
        self._plan = plan
        self.form.quiet.setEnabled(True)
        self.form.peace()
        self.form.advise(plan.cautions)
        self.adopt.preview(request)
        self._judge()

    def _refused(self, request: FoundRequest, error: HearthkeyError, *, always: bool = False) -> None:
        if request != self.form.request():
            return
        self._plan = None
        spot = spot_of(error, request.tunnel_subnet or "")
        if spot is Spot.TUNNEL and self.form.proposes and request.tunnel_subnet is not None:
            self.form.propose("")  # the home changed under a proposal of ours: draw another one
            self.preview()
            return
        self.form.peace()
        if spot is Spot.WORDS:
            self.passphrase.trouble(told(error))
        placed = self.form.trouble(spot, told(error), always=always)
        self._judge()
        if spot is Spot.PAGE and not placed:
            self._note(told(error), color="act")

    def _judge(self) -> None:
        """Say what would follow, and whether anything is still wanted."""
        if self._busy:
            return
        words = self.adopt.voice("" if self._plan is None else said(plans.found(self._plan)))
        self.voice.setText(words)
        self.voice.setVisible(bool(words))
        self.adopt.name(self.commit)
        ready = self._plan is not None and self.passphrase.secret() is not None and self.adopt.ready
        if ready and not self.commit.isEnabled():
            QTimer.singleShot(0, self, lambda: self.view.ensureWidgetVisible(self.commit))
        self.commit.setEnabled(ready)
        wanted = [*self.form.wanted(), *self.adopt.wanted(), *filter(None, [self.passphrase.wanted()])]
        if ready:
            self._note(
                self.tr("A sealed copy cannot be made yet; copy the data folder and keep the passphrase apart from it.")
            )
        elif wanted:
            self._note(self.tr("Still wanted: {what}.").format(what=", ".join(wanted)))
        else:
            self._note(self.tr("One line above wants another look.") if self._plan is None else "")

    def _note(self, sentence: str, *, color: str = "ink2") -> None:
        self.note.recolor(color)
        self.note.speak(sentence)
        self.commit.setAccessibleDescription(sentence)

    # Founding

    def found(self) -> None:
        """Found it, if nothing is wanted any more."""
        secret = self.passphrase.secret()
        if self._busy or self._plan is None or secret is None or not self.adopt.ready:
            return
        self._rest(busy=True)
        request = self.form.request()
        failed = partial(self._failed, request)
        if self.adopt.active:
            self.adopt.take(secret, self.form.kept.value(), self, self._founded, failed)
        else:
            self._errands.found(self._plan, secret, self.form.kept.value(), self, self._founded, failed)

    def _rest(self, *, busy: bool) -> None:
        self._busy = busy
        for part in (self.form, self.passphrase, self.adopt.beside, self.commit):
            part.setEnabled(not busy)
        self._judge()

    def _working(self, words: str) -> None:
        if self._busy and words:
            self._note(f"{words} …")
            announce(self.note, words)

    def _founded(self, _changes: Changes) -> None:
        self._rest(busy=False)
        self.passphrase.forget()
        self._ways.back.emit()

    def _failed(self, request: FoundRequest, error: HearthkeyError) -> None:
        plan = self._plan
        self._rest(busy=False)
        self._refused(request, error, always=True)
        if spot_of(error, "") in {Spot.KEPT, Spot.PAGE}:
            self._plan = plan  # what was typed still fits: the world was in the way
            self.commit.setEnabled(self.passphrase.secret() is not None)
        announce(self, told(error))
        self.commit.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl+Enter founds it."""
        enter = event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}
        if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.found()
        else:
            super().keyPressEvent(event)


class _Spine(Pair):
    """The two halves of the page, with a spine of ink between them."""

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the spine."""
        painter = QPainter(self)
        second = self._parts[1].geometry()
        if self.folded:
            painter.fillRect(0, second.top() - 2, self.width(), 2, self._theme.color("ink"))
        else:
            painter.fillRect(second.left() - 2, 0, 2, self.height(), self._theme.color("ink"))
        painter.end()
