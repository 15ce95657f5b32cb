"""Kinds of devices: what is known of each and why, and a text of one's own where a device does something else."""

from __future__ import annotations

from datetime import UTC, datetime, time
from functools import partial
from itertools import pairwise

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.kinds import OLD, DeviceKind
from hearthkey.services.kind_keeping import KindPlan
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.figures import Facts
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.template_text import Boxed, NumberedText
from hearthkey.ui.errands import Errands
from hearthkey.ui.languages import spoken_here
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.ways_out import form_title
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 250
"""Milliseconds without a key before what was typed is looked at."""


class KindsPage(Page):
    """Shows a kind; a correction is a text of one's own, checked while it is typed, which stands before ours."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Kinds of devices"), parent=parent)
        self._errands = errands
        self.kinds: dict[str, DeviceKind] = {}
        self.plan: KindPlan | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.broken = Prose(theme, Role.BODY, color="act")
        self.which = Combo(theme, self.tr("Which kind"))
        self.why = Prose(theme, Role.BODY)
        self.facts = Facts(theme)
        self.steps, self.traps, self.sources = (Prose(theme, Role.STATE, color="ink2", lines=1.5) for _ in range(3))
        self.folds = (
            Fold(theme, self.tr("What to do on it"), _held(self.steps)),
            Fold(theme, self.tr("Known to go wrong"), _held(self.traps)),
            Fold(theme, self.tr("Where this was read"), _held(self.sources)),
        )
        self.hint = Prose(theme, Role.STATE, self.tr("Leave its name to correct it; give another to add a kind."))
        self.text = NumberedText(theme, self.tr("What is known of it"), lines=16)
        self.editor = QWidget()
        self.finding = Prose(theme, Role.STATE, color="ink2")
        self.told = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.start = Button(theme, self.tr("&Correct it, or begin another from it"), height=34)
        self.remove = Button(theme, self.tr("&Set yours aside"), height=34)
        self.commit = Button(theme, self.tr("&Keep it"), kind=Kind.COMMIT, height=34)
        self.aside = Button(theme, self.tr("&Put aside"), height=34)
        self._build()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.put(self.broken)
        self.broken.hide()
        self.body.addWidget(self.which)
        self.put(self.why, self.facts)
        for fold in self.folds:
            self.body.addWidget(fold)
        column = QVBoxLayout(self.editor)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(self.hint))
        column.addLayout(inset(self.finding))
        column.addWidget(Boxed(self.theme, self.text))
        self.body.addWidget(self.editor)
        self.editor.hide()
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.told, self.trouble):
            self.foot.addLayout(inset(part))
            part.hide()
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.start, self.remove, self.commit, self.aside):
            row.addWidget(button)
        row.addStretch(1)
        self.foot.addLayout(row)
        stops = [self.which, *(fold.button for fold in self.folds), self.text]
        for before, after in pairwise([*stops, self.start, self.remove, self.commit, self.aside]):
            QWidget.setTabOrder(before, after)

    def _connect(self) -> None:
        self.which.currentIndexChanged.connect(lambda _row: self._show_kind())
        self.start.clicked.connect(self.begin)
        self.remove.clicked.connect(self._remove)
        self.commit.clicked.connect(self._keep)
        self.aside.clicked.connect(self._put_aside)
        self.text.textChanged.connect(self._typed)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the kinds that there are; what is being typed stays."""
        self.kinds = {one.name: one for one in snapshot.kinds}
        chosen, language = self.which.key(), spoken_here()
        yours = self.tr("{kind}, yours")
        self.which.offer(
            [
                (one.name, yours.format(kind=one.words(language)) if one.own else one.words(language))
                for one in self.kinds.values()
            ]
        )
        self.which.take(chosen if chosen in self.kinds else next(iter(self.kinds), ""))
        out = [mended(one.trouble) for one in snapshot.kinds.left_out]
        self.broken.speak("\n".join(out))
        self.broken.setVisible(bool(out))
        self._show_kind()

    def chosen(self) -> DeviceKind | None:
        """The kind that is shown."""
        return self.kinds.get(self.which.key())

    def _show_kind(self) -> None:
        one, language, reads = self.chosen(), spoken_here(), self.editor.isHidden()
        for part in (self.start, self.which, self.why, self.facts, self.folds[0]):
            part.setVisible(reads)
        for part in (self.commit, self.aside):
            part.setVisible(not reads)
        if one is None:
            return
        self.remove.setVisible(reads and one.own)
        self.why.speak(one.why(language))
        container = self.tr("old container") if one.container == OLD else self.tr("strong container")
        tried = self.tr("(tried on a device)") if one.tried else self.tr("(not tried on a device)")
        checked = datetime.combine(one.checked, time(), UTC)
        self.facts.tell("ages", self.tr("versions"), one.ages.words.of(language))
        self.facts.tell("key", self.tr("key"), one.key_set.key_type, f"({container})")
        self.facts.tell("forms", self.tr("takes"), ", ".join(form_title(form) for form in one.forms))
        self.facts.tell("checked", self.tr("last checked"), short_day(checked), tried)
        steps = one.steps(one.forms[0], language) if one.forms else ()
        self.steps.speak("\n".join(f"{number}  {step.do}" for number, step in enumerate(steps, 1)))
        for voice, fold, texts in (
            (self.traps, self.folds[1], one.traps(language)),
            (self.sources, self.folds[2], one.sources),
        ):
            voice.speak("\n".join(texts))
            fold.setVisible(reads and bool(texts))

    # A text of one's own

    def begin(self) -> None:
        """Open the text of the kind that is shown."""
        one = self.chosen()
        if one is not None:
            self.trouble.hide()
            self._errands.kind_text(one.name, self, self._opened, self._failed)

    def _opened(self, text: str) -> None:
        self.text.show_text(text)
        self.editor.show()
        self._show_kind()
        self.look()
        self.text.setFocus()

    def _typed(self) -> None:
        self.plan = None
        self.commit.setEnabled(False)
        self._pause.start()

    def look(self) -> None:
        """Have what was typed checked."""
        self._pause.stop()
        text, one = self.text.text(), self.chosen()
        file = "kind.toml" if one is None else f"{one.name}.toml"
        self._errands.check_kind(file, text, self, partial(self._whole, text), partial(self._found, text))

    def _whole(self, text: str, plan: KindPlan) -> None:
        if text != self.text.text():
            return
        self.plan = plan
        self.commit.setEnabled(True)
        stands = self.tr("It is whole, and will stand for the one of that name.")
        self.finding.recolor("ink2")
        self.finding.speak(self.tr("It is whole, and will be a kind more.") if plan.replaces is None else stands)

    def _found(self, text: str, error: HearthkeyError) -> None:
        if text == self.text.text():
            self.finding.recolor("act")
            self.finding.speak(mended(error))
            announce(self.finding, self.finding.text())

    def _put_aside(self) -> None:
        self._pause.stop()
        self.editor.hide()
        self._show_kind()
        self.which.setFocus()

    def _keep(self) -> None:
        if self.plan is not None:
            self._errands.keep_kind(self.plan, self, self._kept, self._failed)

    def _kept(self, plan: KindPlan) -> None:
        self._put_aside()
        self._say(
            self.tr("{kind} is known from now on. For that the household was opened anew, and is locked.").format(
                kind=plan.kind.words(spoken_here())
            )
        )

    def _remove(self) -> None:
        one = self.chosen()
        if one is not None:
            self._errands.set_kind_aside(one.name, self, self._removed, self._failed)

    def _removed(self, ours: DeviceKind | None) -> None:
        self._say(
            self.tr("Yours is taken away. Devices of it stay as they are, and count as something else.")
            if ours is None
            else self.tr("Yours is taken away. The one that came with the app stands again.")
        )

    def _say(self, text: str) -> None:
        self.trouble.hide()
        self.told.speak(text)
        self.told.show()
        announce(self, text)

    def _failed(self, error: HearthkeyError) -> None:
        self.told.hide()
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self.told.hide()
        self.trouble.hide()


def _held(words: Prose) -> QWidget:
    inside = QWidget()
    row = QVBoxLayout(inside)
    row.setContentsMargins(0, 0, 0, 0)
    row.addLayout(inset(words))
    return inside
