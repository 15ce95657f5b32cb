"""The fields that say where the gateway's files go: by ssh, or into a folder."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.target import By, Target, target
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.pages.pick_folder import PickFolder
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import mended
from hearthkey.ui.theme.theme import Theme


class GatewayFields(QWidget):
    """The questions.

    Signals:
        edited: something was typed or chosen.
        entered: Enter in a field.
    """

    edited = Signal()
    entered = Signal()

    def __init__(self, theme: Theme, pick: PickFolder, start: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pick = pick
        self._start = start
        self._places = {By.SSH: "", By.FOLDER: ""}
        self.by = Choice(
            theme,
            self.tr("How the files get there"),
            [(By.SSH.value, self.tr("by ssh")), (By.FOLDER.value, self.tr("into a folder"))],
        )
        self.host, self.user, self.port, self.folder, self.reload = (Line(theme) for _ in range(5))
        self.port.setFixedWidth(theme.px(96))
        self.choose = Button(theme, self.tr("Choose…"), height=32)
        self.choose.setAccessibleName(self.tr("Choose the folder"))
        self._way = Question(theme, self.tr("How do its files get there?"), self.by)
        self._host = Question(
            theme,
            self.tr("Host"),
            self.host,
            hint=self.tr("A name, an address, or a short name from your ssh configuration."),
        )
        self._user = Question(theme, self.tr("User there"), self.user)
        self._port = Question(theme, self.tr("Port"), self.port)
        self._folder = Question(theme, self.tr("Folder"), self.folder, beside=self.choose)
        self._reload = Question(
            theme,
            self.tr("Command after a delivery"),
            self.reload,
            hint=self.tr("Run at the gateway, so that what runs there reads the new list. Empty for none."),
        )
        self._arrange()
        self.show_target(None)
        self.by.chosen.connect(self._turn)
        self.choose.clicked.connect(self._pick_folder)
        for line in self._lines():
            line.textEdited.connect(lambda _text: self._edit())
            line.returnPressed.connect(self.entered)

    def _lines(self) -> tuple[Line, ...]:
        return (self.host, self.user, self.port, self.folder, self.reload)

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        self._beside = QWidget()
        pair = QHBoxLayout(self._beside)
        pair.setContentsMargins(0, 0, 0, 0)
        pair.setSpacing(6)
        pair.addWidget(self._user, 1)
        pair.addWidget(self._port)
        for part in (self._way, self._host, self._beside, self._folder, self._reload):
            column.addWidget(part)

    def show_target(self, known: Target | None) -> None:
        """Show what is chosen, instead of what was typed."""
        shown = known or Target(By.SSH, "")
        self._places = {By.SSH: "", By.FOLDER: ""} | {shown.by: shown.folder}
        self.by.take(shown.by.value)
        self.host.setText(shown.host)
        self.user.setText(shown.user)
        self.port.setText(str(shown.port) if shown.port else "")
        self.folder.setText(shown.folder)
        self.reload.setText(shown.reload)
        self.calm()
        self._fit_way()

    def typed(self) -> Target:
        """What is typed, checked.

        Raises:
            Refused: as `core.target.target`; what stands higher on the page is told first.
        """
        if self.by.value() == By.SSH.value and not self.host.text().strip():
            raise Refused("target-host-missing")
        port = self.port.text().strip()
        if port and not port.isdecimal():
            raise Refused("target-port-odd", number=port[:20])
        return target(
            self.by.value(),
            self.folder.text().strip(),
            host=self.host.text().strip(),
            port=int(port or 0),
            user=self.user.text().strip(),
            reload=self.reload.text(),
        )

    def refuse(self, error: HearthkeyError) -> bool:
        """Tell the field that an error is about; False where it is about none."""
        by_code: dict[str, tuple[Question, Line]] = {
            "target-host": (self._host, self.host),
            "target-user": (self._user, self.user),
            "target-port": (self._port, self.port),
            "target-folder": (self._folder, self.folder),
            "target-reload": (self._reload, self.reload),
        }
        found = by_code.get("-".join(error.code.split("-")[:2]))
        if found is None:
            return False
        question, line = found
        question.trouble(mended(error))
        line.setFocus()
        return True

    def calm(self) -> None:
        """Take back what was said about the fields."""
        for one in (self._host, self._user, self._port, self._folder, self._reload):
            one.trouble("")

    def lock(self, *, locked: bool) -> None:
        """While an answer is waited for, nothing is typed."""
        for line in self._lines():
            line.setReadOnly(locked)
        self.by.setEnabled(not locked)
        self.choose.setEnabled(not locked)

    def _edit(self) -> None:
        self.calm()
        self.edited.emit()

    def _turn(self, by: str) -> None:
        """The other way has a folder of its own; what was typed for this one comes back with it."""
        other = By.FOLDER if by == By.SSH.value else By.SSH
        self._places[other] = self.folder.text()
        self.folder.setText(self._places[By(by)])
        self._fit_way()
        self._edit()

    def _fit_way(self) -> None:
        ssh = self.by.value() == By.SSH.value
        for part in (self._host, self._beside, self._reload):
            part.setVisible(ssh)
        self.choose.setVisible(not ssh)
        at_gateway = self.tr("At the gateway; from the user’s home where it does not begin with a slash.")
        self._folder.advise(at_gateway if ssh else self.tr("A stick, or a share that this computer has mounted."))

    def _pick_folder(self) -> None:
        before = Path(self.folder.text()) if self.folder.text() else self._start
        self._pick(self, self.tr("Where the gateway’s files go"), before, self._picked)

    def _picked(self, folder: Path) -> None:
        self.folder.setText(str(folder))
        self._edit()
