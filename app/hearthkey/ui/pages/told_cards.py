"""What the right side says in words: where a file lies, which stick, what went wrong, what is under way."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, QLocale, Qt, QUrl, Signal
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.passes import Pass
from hearthkey.core.rehearsal import RehearsalFailed
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose, Rule, Voice
from hearthkey.ui.drives import Drive
from hearthkey.ui.pages import ways_out
from hearthkey.ui.pages.leaving import Pull, Saved
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


def _column(owner: QWidget) -> QVBoxLayout:
    column = QVBoxLayout(owner)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(12)
    return column


class RestCard(QWidget):
    """Nothing of the bundle is on screen."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        text = self.tr(
            "Each way is rehearsed first: the very bytes are opened with the passphrase and tried at the gateway’s "
            "certificate and the revocation list. What would not get in does not leave."
        )
        own = self.tr(
            "Your own texts are written as they are: whether one is right, only the program knows that reads it."
        )
        self._own = Label(theme, Role.BODY, own, color="ink2", wrap=True)
        column = _column(self)
        column.addWidget(Label(theme, Role.BODY, text, color="ink2", wrap=True))
        column.addWidget(self._own)
        self._traps = Prose(theme, Role.BODY, strong=Role.BODY_STRONG, lines=1.4)
        column.addWidget(self._traps)
        column.addStretch(1)
        self.mention_own(mentioned=False)
        self.warn(())

    def mention_own(self, *, mentioned: bool) -> None:
        """Say what holds for own texts, where there are some."""
        self._own.setVisible(mentioned)

    def warn(self, traps: Sequence[str]) -> None:
        """Say what is known to go wrong with this kind of device."""
        self._traps.setVisible(bool(traps))
        self._traps.speak("\n".join(("", *traps)), stressed=self.tr("Known to go wrong with such a device:"))

    def text(self) -> str:
        """What is said of the kind of device."""
        return self._traps.text()


class WorkingCard(QWidget):
    """What is under way, in words."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._step = Label(theme, Role.BODY, wrap=True)
        column = _column(self)
        column.addWidget(self._step)
        column.addStretch(1)

    def say(self, step: str) -> None:
        """Say the present step."""
        self._step.setText(f"{step} …" if step else self.tr("One moment …"))

    def text(self) -> str:
        """What stands there."""
        return self._step.text()


class SavedCard(QWidget):
    """Where the file lies, whether the stick may be pulled, and what to do now."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._saved: Saved | None = None
        self.outcome = Voice(theme)
        self.name = Label(theme, Role.DATE_STRONG, wrap=True)
        self.folder = Label(theme, Role.STATE, color="ink2", wrap=True)
        for label in (self.name, self.folder):
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.now = Label(theme, Role.BODY, wrap=True)
        self.open_folder = Button(theme, self.tr("Open the &folder"))
        self.open_folder.clicked.connect(self._open)
        column = _column(self)
        column.addWidget(self.outcome)
        column.addWidget(Rule(theme))
        where = QVBoxLayout()
        where.setSpacing(2)
        where.addWidget(self.name)
        where.addWidget(self.folder)
        column.addLayout(where)
        column.addWidget(self.now)
        column.addWidget(self.open_folder)
        column.addStretch(1)

    def show_saved(self, saved: Saved, one: Pass) -> None:
        """Show where it lies."""
        self._saved = saved
        self.outcome.setText(self.said(saved))
        self.name.setText(saved.file.name)
        self.folder.setText(self.tr("in {folder}").format(folder=saved.file.parent))
        self.now.setText(ways_out.what_now(saved.way, one))
        self.open_folder.setVisible(saved.pull is not Pull.FREE)

    def said(self, saved: Saved) -> str:
        """The outcome in one sentence."""
        name = "" if saved.drive is None else saved.drive.name
        return {
            Pull.NO_STICK: self.tr("Written and read back."),
            Pull.LETTING_GO: self.tr("Written and read back. Leave {name} in while it is unmounted."),
            Pull.FREE: self.tr("Written, read back and unmounted. You may pull {name} now."),
            Pull.BY_HAND: self.tr("Written and read back. Eject {name} in the file manager, then pull it."),
        }[saved.pull].format(name=name)

    def _open(self) -> None:
        if self._saved is not None:
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(self._saved.file.parent)))


class StickCard(QWidget):
    """Which stick.

    Signals:
        taken: a Drive.
        look_wanted: look again.
        folder_wanted: the stick is not in the list: choose its folder.
    """

    taken = Signal(object)
    look_wanted = Signal()
    folder_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.rows: list[Button] = []
        self._told = Label(theme, Role.BODY, wrap=True)
        self._list = QVBoxLayout()
        self._list.setSpacing(6)
        self.again = Button(theme, self.tr("&Look again"))
        self.again.clicked.connect(self.look_wanted)
        self.other = Button(theme, self.tr("Another &folder …"))
        self.other.clicked.connect(self.folder_wanted)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.again)
        row.addWidget(self.other)
        row.addStretch(1)
        column = _column(self)
        column.addWidget(self._told)
        column.addLayout(self._list)
        column.addLayout(row)
        column.addStretch(1)

    def show_drives(self, drives: tuple[Drive, ...]) -> None:
        """Offer what is plugged in."""
        for old in self.rows:
            self._list.removeWidget(old)
            old.hide()
            old.deleteLater()
        self.rows = []
        self._told.setText(
            self.tr("Which one? It is unmounted afterwards, so that it can be pulled.")
            if drives
            else self.tr("No stick is plugged in. Plug one in, give it a moment, then look again.")
        )
        for drive in drives:
            free = QLocale().formattedDataSize(drive.free, 1, QLocale.DataSizeFormat.DataSizeSIFormat)
            words = self.tr("{name}, {free} free").format(name=drive.name, free=free)
            button = Button(self._theme, words.replace("&", "&&"))
            button.setAccessibleName(self.tr("Write to {drive}").format(drive=words))
            button.clicked.connect(lambda _on=False, one=drive: self.taken.emit(one))
            self._list.addWidget(button)
            self.rows.append(button)


class TroubleCard(QWidget):
    """What went wrong: the step it stopped at, what it means, and what to do.

    Signals:
        again_wanted: do the same again.
        back_wanted: leave it.
    """

    again_wanted = Signal()
    back_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.told = Voice(theme)
        self.step = Label(theme, Role.BODY, color="ink2", wrap=True)
        self.again = Button(theme, self.tr("Do it &again"))
        self.again.clicked.connect(self.again_wanted)
        self.back = Button(theme, self.tr("Lea&ve it"))
        self.back.clicked.connect(self.back_wanted)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.again)
        row.addWidget(self.back)
        row.addStretch(1)
        column = _column(self)
        column.addWidget(self.told)
        column.addWidget(self.step)
        column.addLayout(row)
        column.addStretch(1)

    def show_trouble(self, error: HearthkeyError) -> None:
        """Say it."""
        self.told.setText(mended(error))
        self.step.setText(stopped_at(error))
        self.step.setVisible(bool(self.step.text()))


def stopped_at(error: HearthkeyError) -> str:
    """Where a rehearsal stopped; empty for anything else that can be mended."""
    if isinstance(error, RehearsalFailed) and error.rehearsal.failed is not None:
        told = _tr("The rehearsal stopped at its step “{step}”. Nothing left this computer.")
        return told.format(step=spoken(error.rehearsal.failed.name, "step"))
    return _tr("Nothing left this computer.") if isinstance(error, Refused) else ""


def _tr(text: str) -> str:
    return QCoreApplication.translate("TroubleCard", text)
