"""The householder's own template: written and tried on its desk, then kept, forgotten, or written into files."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.templates import DEVICE, Template
from hearthkey.ui.drawer.template_desk import TemplateDesk
from hearthkey.ui.drawer.template_mistake import line_of
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import caution, mended, spoken
from hearthkey.ui.theme.theme import Theme


class TemplatePage(TemplateDesk):
    """The desk, and what can be done with what lies on it.

    Args:
        folder: where the first file dialog opens; later the folder that was chosen last.

    Signals:
        folder_chosen: the folder that a file was written to, to be remembered.
    """

    folder_chosen = Signal(str)

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        folder: Path,
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, errands, parent)
        self.folder = folder
        self._pick = pick
        self.form.forget.clicked.connect(self.forget)
        self.commit.clicked.connect(self.keep)
        self.write_button.clicked.connect(self.write)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.keep)

    def keep(self) -> None:
        """Keep it with the household."""
        if not self.commit.isEnabled():
            return
        proper = self._check(aloud=True)
        if proper is None:
            return

        def kept(changes: Changes) -> None:
            self.drafts.take_in(proper)
            self._errands.templates(self, lambda all_of_them: self._stands(proper, all_of_them, changes))

        self._begin()
        self._errands.keep(proper, self, kept, self._refused)

    def _stands(self, proper: Template, kept: tuple[Template, ...], changes: Changes) -> None:
        self._offer(kept)
        if self.template() != proper:
            self._showing = True
            self.form.show_template(proper)
            self._showing = False
        self._over(" ".join([spoken(changes.sentence), *(caution(one) for one in changes.cautions)]))

    def forget(self) -> None:
        """Forget the chosen one; what is typed stays, so that keeping it brings it back."""
        if self.drafts.is_new or self._busy:
            return

        def gone(changes: Changes) -> None:
            self.drafts.let_go(self.template())
            self._errands.templates(self, self._offer)
            self._over(f"{spoken(changes.sentence)} {self.tr('What stands here stays; Keep it brings it back.')}")
            self.form.which.setFocus()

        self._begin()
        self._errands.forget(self.drafts.origin().name, self, gone, self._refused)

    def write(self) -> None:
        """Ask for a folder, and write what it renders to into it."""
        serial = self.bench.serial()
        if self.form.of.value() == DEVICE and serial is None:
            self.bench.device.setFocus()
            self._say(self.tr("Choose first whose values it is written with."))
            return
        proper = self._check(aloud=True)
        if proper is None:
            return

        def chosen(folder: Path) -> None:
            self.folder = folder
            self.folder_chosen.emit(str(folder))
            self._begin()
            self._errands.write(proper, serial, folder, self, self._written, self._refused)

        self._pick(self, self.tr("Where to write it"), self.folder, chosen)

    def _written(self, changes: Changes) -> None:
        where = self.tr("It lies in {folder}.").format(folder=Path(changes.files[0]).parent)
        self._over(" ".join([spoken(changes.sentence), where, *(caution(one) for one in changes.cautions)]))

    # Outcomes

    def _begin(self) -> None:
        self._busy = True
        self._hush()
        self._judge()

    def _over(self, told: str) -> None:
        self._busy = False
        self._judge()
        self._say(told)

    def _refused(self, error: HearthkeyError) -> None:
        self._busy = False
        self._judge()
        if line_of(error):
            self._mistaken(error)
            self.mistake.go.setFocus()
        else:
            self._say(mended(error), into=self.trouble)
