"""The app's own settings: look, size, lock, and where its data lies. Each but the language takes effect at once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QUrl, Signal
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.languages import Language
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.figures import Figure
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.languages import NAMES
from hearthkey.ui.preferences import IDLE_MINUTES, SCALES, Preferences
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import SYSTEM, Theme


def open_folder(folder: Path) -> None:
    """Show a folder in the desktop's file manager."""
    QDesktopServices.openUrl(QUrl.fromLocalFile(str(folder)))


class SettingsPage(Page):
    """Shows preferences and gives out changed ones.

    Args:
        chosen: the preferences as they are.
        data: the data folder.
        apply: puts preferences into effect and remembers them.
        show_folder: shows a folder to the householder.

    Signals:
        changed: Preferences, after they took effect.
        household: the household's own page is wanted.
    """

    changed = Signal(object)
    household = Signal()

    def __init__(
        self,
        theme: Theme,
        chosen: Preferences,
        data: Path,
        apply: Callable[[Preferences], None],
        *,
        show_folder: Callable[[Path], None] = open_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Settings"), parent=parent)
        self._chosen = chosen
        self._data = data
        self._apply = apply
        self._show_folder = show_folder
        self.look = Combo(theme, self.tr("Look"))
        self.language = Combo(theme, self.tr("Language"))
        self.type_size = Choice(theme, self.tr("Size of type"), [(str(one), f"{round(one * 100)} %") for one in SCALES])
        self.idle = Choice(
            theme,
            self.tr("Lock the household after"),
            [(str(one), self.tr("{minutes} minutes").format(minutes=one)) for one in IDLE_MINUTES],
        )
        self.household_button = Button(theme, self.tr("The household…"))
        self.folder_button = Button(theme, self.tr("Open the folder"))
        self._build()
        self.show_preferences(chosen)
        self.look.currentIndexChanged.connect(self._change)
        self.language.currentIndexChanged.connect(self._change)
        self.type_size.chosen.connect(self._change)
        self.idle.chosen.connect(self._change)
        self.household_button.clicked.connect(self.household)
        self.folder_button.clicked.connect(lambda: self._show_folder(self._data))

    def _build(self) -> None:
        self.look.offer(
            [
                (SYSTEM, self.tr("as the desktop")),
                ("paper", self.tr("paper, light")),
                ("lamp", self.tr("lamp, dark")),
                ("contrast-light", self.tr("high contrast, light")),
                ("contrast-dark", self.tr("high contrast, dark")),
            ]
        )
        languages = [(one.value, name) for one, name in NAMES.items()]
        self.language.offer([(SYSTEM, self.tr("as the desktop")), *languages])
        self.body.setSpacing(10)
        self.body.addWidget(Labelled(self.theme, self.tr("Look"), self.look))
        self.body.addWidget(Labelled(self.theme, self.tr("Size of type"), _framed(self.type_size)))
        self.body.addWidget(
            Labelled(
                self.theme,
                self.tr("Language"),
                self.language,
                hint=self.tr("Takes effect when the app is started next. The diary keeps the words it was written in."),
            )
        )
        self.body.addWidget(
            Labelled(
                self.theme,
                self.tr("Lock the household after"),
                _framed(self.idle),
                hint=self.tr("Counted from the last signature. Closing the window locks it at once."),
            )
        )
        data = Figure(self.theme, self.tr("Where the data lies"), str(self._data))
        self.put(
            Rule(self.theme, color="rule"),
            Label(self.theme, Role.BODY_STRONG, self.tr("Where the data lies")),
            data,
            Prose(
                self.theme,
                Role.STATE,
                self.tr("A copy of this folder is a copy of the household. What lies in the keyring is not in it."),
                color="ink2",
            ),
        )
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.folder_button)
        row.addWidget(self.household_button)
        row.addStretch(1)
        self.body.addLayout(row)
        self.body.addStretch(1)

    def show_preferences(self, chosen: Preferences) -> None:
        """Show other preferences, without giving them out."""
        self._chosen = chosen
        for combo, key in ((self.look, chosen.theme), (self.language, chosen.language or SYSTEM)):
            combo.blockSignals(True)  # noqa: FBT003 - Qt's own signature
            combo.take(key)
            combo.blockSignals(False)  # noqa: FBT003 - Qt's own signature
        self.type_size.take(str(chosen.scale))
        self.idle.take(str(chosen.idle_minutes))

    def preferences(self) -> Preferences:
        """What is chosen."""
        return replace(
            self._chosen,
            theme=self.look.key() or SYSTEM,
            scale=float(self.type_size.value()),
            idle_minutes=int(self.idle.value()),
            language=None if self.language.key() in {"", SYSTEM} else Language(self.language.key()),
        )

    def _change(self, *_choice: object) -> None:
        chosen = self.preferences()
        if chosen != self._chosen:
            self._chosen = chosen
            self._apply(chosen)
            self.changed.emit(chosen)


def _framed(choice: Choice) -> QWidget:
    frame = QWidget()
    frame.setLayout(inset(choice))
    frame.setAccessibleName(choice.accessibleName())
    return frame
