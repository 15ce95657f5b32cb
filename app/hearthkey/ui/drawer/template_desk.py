"""A template on its page: which one, its words, and what is said about it while it is typed."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.templates import DEVICE, Template, checked
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.templating import Shown
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.template_bench import TemplateBench
from hearthkey.ui.drawer.template_drafts import TemplateDrafts
from hearthkey.ui.drawer.template_form import TemplateForm
from hearthkey.ui.drawer.template_mistake import TemplateMistake, line_of
from hearthkey.ui.drawer.template_trial import TemplateTrial
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


def _tr(text: str) -> str:
    """Whoever inherits would ask for it under a name of its own, for that is what `QObject.tr` does."""
    return QCoreApplication.translate("TemplateDesk", text)


class TemplateDesk(Page):
    """One template at a time; what was typed in another waits until that one is chosen again."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, _tr("Your own template"), parent=parent)
        self._errands = errands
        self.drafts = TemplateDrafts()
        self._busy = self._showing = False
        self.form = TemplateForm(theme)
        self.bench = TemplateBench(theme, self.form.file)
        self.trial = TemplateTrial(errands, self)
        self.mistake = TemplateMistake(theme)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.commit = Button(theme, _tr("Keep it"), kind=Kind.COMMIT, hint=_tr("Ctrl+Enter"), height=34)
        self.write_button = Button(theme, "", height=34)
        self._build()
        self._connect()
        self._judge()
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.body.setSpacing(10)
        self.put(
            Prose(
                self.theme,
                Role.BODY,
                _tr(
                    "A text in the words of a program of yours. The household fills in what stands between double "
                    "braces."
                ),
                color="ink2",
            )
        )
        self.body.addWidget(self.form)
        self.body.addWidget(self.bench)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addWidget(self.mistake)
        self.foot.addLayout(inset(self.note))
        self.foot.addLayout(inset(self.trouble))
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.write_button)
        row.addStretch(1)
        self.foot.addLayout(row)
        for part in (self.note, self.trouble):
            part.hide()
        form, bench = self.form, self.bench
        stops = [*form.controls(), *bench.controls(), form.stem, form.ending, bench.result]
        stops += [self.mistake.go, self.commit, self.write_button]
        for before, after in pairwise(stops):
            QWidget.setTabOrder(before, after)

    def _connect(self) -> None:
        form, bench = self.form, self.bench
        form.picked.connect(self.switch)
        form.changed.connect(self._changed)
        form.turned.connect(self._turned)
        bench.typed.connect(self._changed)
        bench.turned_to.connect(lambda _serial: self._other_values())
        bench.as_kept.connect(self._as_kept)
        for moved in (bench.text.cursorPositionChanged, bench.text.entered):
            moved.connect(self._keep_in_sight)
        self.mistake.go_wanted.connect(self._go_to)
        self.trial.shown.connect(self._tried)
        self.trial.failed.connect(self._mistaken)
        self.follow(self._errands.seen, self.show_snapshot)

    # What is

    def first(self) -> QWidget:
        """Which one."""
        return self.form.which

    def opened(self) -> None:
        """Look at what is kept, and at today's values; what was typed stays."""
        self._errands.templates(self, self._offer)
        self._ask_slots()
        self._try()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Offer the devices there are now."""
        self.bench.show_snapshot(snapshot)
        self._judge()

    def template(self) -> Template:
        """What is typed, unchecked."""
        return self.form.template(self.bench.text.text())

    def _offer(self, kept: tuple[Template, ...]) -> None:
        self.drafts.offer(kept, self.template())
        self.form.offer(kept, self.drafts.key)
        self._judge()

    def switch(self, key: str) -> None:
        """Turn to another one; what was typed in this one waits."""
        if key != self.drafts.key:
            self._hush()
            self.form.which.take(key)
            self._lay_down(self.drafts.turn_to(key, self.template()))

    def _lay_down(self, template: Template) -> None:
        self._showing = True
        self.form.show_template(template)
        self.bench.turn(template.of)
        self.bench.text.show_text(template.text)
        self._showing = False
        self._ask_slots()
        self._try()
        self._judge()

    def _as_kept(self) -> None:
        self._lay_down(self.drafts.back())
        self.bench.text.setFocus()
        announce(self, _tr("It stands here as it was kept"))

    # What is typed

    def _changed(self) -> None:
        if self._showing:
            return
        self._hush()
        self._judge()
        if self._is_blank():
            self._try()
        else:
            self.trial.soon(self._named(), self.bench.serial())

    def _turned(self, of: str) -> None:
        self.bench.turn(of)
        self._ask_slots()

    def _other_values(self) -> None:
        self._ask_slots()
        self._try()
        self._judge()

    def _ask_slots(self) -> None:
        if self._errands.last is not None and self._errands.last.household is not None:
            self._errands.slots(self.form.of.value(), self.bench.serial(), self, self.bench.show_slots)

    def _is_blank(self) -> bool:
        return not self.bench.text.text().strip()

    def _named(self) -> Template:
        typed = self.template()
        return typed if typed.name.strip() else replace(typed, name=_tr("the template"))

    def _try(self) -> None:
        if self._is_blank():
            self.trial.drop()
            self.mistake.tell(None)
            self.bench.show_result(None)
            self.form.tell_file("")
        elif self._errands.last is not None:
            self.trial.now(self._named(), self.bench.serial())

    def _tried(self, shown: Shown) -> None:
        self.mistake.tell(None)
        self.bench.show_result(shown)
        self.form.tell_file(shown.file_name)
        self._check(aloud=False)

    def _mistaken(self, error: HearthkeyError) -> None:
        self.bench.doubt(line_of(error))
        self.mistake.tell(error)
        QTimer.singleShot(0, self, self._keep_in_sight)  # once the sentence has taken its room

    def _go_to(self, line: int) -> None:
        self.bench.text.go_to(line)
        self._keep_in_sight()

    def _keep_in_sight(self) -> None:
        """Roll the page along with the cursor, where that leaves what is in sight of the text."""
        text = self.bench.text
        if text.hasFocus():
            spot = text.viewport().mapTo(self.content, text.cursorRect().center())
            self.roll.ensureVisible(spot.x(), spot.y(), 0, 3 * text.cursorRect().height())

    def _check(self, *, aloud: bool) -> Template | None:
        """The template where all but its text fits; else say what does not, and lead there where `aloud`."""
        typed = self.template()
        try:
            return checked(
                name=typed.name, of=typed.of, file_stem=typed.file_stem, ending=typed.ending, text=typed.text
            )
        except Refused as error:
            if aloud or error.code not in {"name-empty", "template-empty"}:
                self._lead_to(error, aloud=aloud)
        return None

    def _lead_to(self, error: HearthkeyError, *, aloud: bool) -> None:
        field = self.form.remark(error)
        if field is None:
            self._mistaken(error)
        if aloud:
            (field or self.bench.text).setFocus()
            announce(self, mended(error))

    def _judge(self) -> None:
        """Say what can be done now, and what keeping it would come to."""
        seen = self._errands.last
        able = seen is not None and seen.household is not None and not seen.read_only and not self._busy
        typed, new = self.template(), self.drafts.is_new
        differs = typed != self.drafts.origin()
        self.commit.setEnabled(able and differs)
        self.form.forget.setEnabled(able and not new)
        self.write_button.setEnabled(able and not self._is_blank())
        self.write_button.say(self._writes(typed.of))
        self.bench.offer_undo(offered=differs and not new)
        self.form.tell_name(self._what_the_name_does(typed.name))

    def _writes(self, of: str) -> str:
        if of != DEVICE:
            return _tr("Write to a folder…")
        return _tr("Write for a device…") if self.bench.serial() is None else _tr("Write for this device…")

    def _what_the_name_does(self, name: str) -> str:
        key = self.drafts.found(name)
        if key is not None and key != self.drafts.key:
            return _tr("Keeping it writes over the one of that name.")
        if not self.drafts.is_new and key is None and name.strip():
            return _tr("Kept under this name, it stands beside {name}.").format(name=self.drafts.origin().name)
        return ""

    # What is said of it

    def _say(self, told: str, *, into: Prose | None = None) -> None:
        self._hush()
        label = into or self.note
        label.speak(told)
        label.show()
        announce(self, told)

    def _hush(self) -> None:
        for part in (self.note, self.trouble):
            part.hide()
        self.form.remark(None)
