"""What a template is called and what it is for, and apart from that how the file is named that it writes."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.templates import DEVICE, DEVICE_MARK, GATEWAY, Template
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.template_drafts import BLANK, NEW, key_of
from hearthkey.ui.text import mended
from hearthkey.ui.theme.theme import Theme

_STEMS = {GATEWAY: "gateway", DEVICE: DEVICE_MARK}


class TemplateForm(QWidget):
    """All of a template but its text; `file` stands elsewhere on the page, beside what is written.

    Signals:
        picked: another template, by its key.
        changed: something was typed or chosen.
        turned: it is for the other side now: ``gateway`` or ``device``.
    """

    picked = Signal(str)
    changed = Signal()
    turned = Signal(str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.which = Combo(theme, self.tr("Template"))
        self.forget = Button(theme, self.tr("Forget it"), kind=Kind.WORD, height=20)
        self.name = Line(theme)
        self.name.setPlaceholderText(self.tr("for instance: Letter to the doorkeeper"))
        self.of = Choice(theme, self.tr("For"), [(GATEWAY, self.tr("the gateway")), (DEVICE, self.tr("devices"))])
        self.stem = Line(theme)
        self.ending = Line(theme)
        self.named = Labelled(theme, self.tr("Called"), self.name)
        self.begins = Labelled(theme, self.tr("File name"), self.stem)
        self.ends = Labelled(theme, self.tr("Ending"), self.ending)
        self.file = QWidget()
        self._lay_out()
        self.show_template(BLANK)
        self.which.activated.connect(lambda _row: self.picked.emit(self.which.key()))
        self.of.chosen.connect(self._turn)
        for line in (self.name, self.stem, self.ending):
            line.textEdited.connect(lambda _text: self.changed.emit())

    def _lay_out(self) -> None:
        framed = QWidget()
        framed.setLayout(inset(self.of))
        framed.setAccessibleName(self.of.accessibleName())
        file = QHBoxLayout(self.file)
        file.setContentsMargins(0, 0, 0, 0)
        file.setSpacing(2)
        file.addWidget(self.begins, 3)
        file.addWidget(self.ends, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(Labelled(self._theme, self.tr("Template"), self.which, beside=self.forget))
        column.addWidget(self.named)
        column.addWidget(Labelled(self._theme, self.tr("For"), framed))

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, from top to bottom."""
        return [self.forget, self.which, self.name, *self.of.segments()]

    def offer(self, kept: Sequence[Template], key: str) -> None:
        """Offer the kept templates and a new one, with one of them chosen."""
        self.which.offer([*((key_of(one.name), one.name) for one in kept), (NEW, self.tr("a new one"))])
        self.which.take(key)
        self.forget.setEnabled(key != NEW)

    def show_template(self, template: Template) -> None:
        """Show a template."""
        self.name.setText(template.name)
        self.of.take(template.of)
        self.stem.setText(template.file_stem)
        self.ending.setText(template.ending)
        self.remark(None)

    def template(self, text: str) -> Template:
        """What is typed, with its text, unchecked."""
        return Template(
            name=self.name.text(),
            of=self.of.value(),
            file_stem=self.stem.text().strip(),
            ending=self.ending.text().strip().removeprefix("."),
            text=text,
        )

    def _turn(self, of: str) -> None:
        """A beginning of the file name that nobody typed goes along."""
        if self.stem.text().strip() in {"", *_STEMS.values()}:
            self.stem.setText(_STEMS[of])
        self.turned.emit(of)
        self.changed.emit()

    # Hints and troubles

    def tell_name(self, hint: str) -> None:
        """Say what keeping it under that name comes to."""
        self.named.remark(hint)

    def tell_file(self, name: str) -> None:
        """Say which file is written."""
        self.begins.remark(self.tr("Writes {file}.").format(file=name) if name else "")

    def remark(self, error: HearthkeyError | None) -> Line | None:
        """Say what does not fit below the field that it is about, and return that field; None takes all back."""
        for labelled in (self.named, self.begins, self.ends):
            labelled.trouble("")
        if error is None:
            return None
        about = self.named if error.code.startswith("name-") else self._of_the_file(error)
        if about is None:
            return None
        about.trouble(mended(error))
        return about.control if isinstance(about.control, Line) else None

    def _of_the_file(self, error: HearthkeyError) -> Labelled | None:
        if error.code.startswith(("template-stem-", "template-device-mark-", "template-file-name-")):
            return self.begins
        # The field of the ending is too narrow for a sentence.
        return self.begins if error.code == "template-ending-unfit" else None
