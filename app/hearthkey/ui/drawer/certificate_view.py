"""A certificate in full: its facts, then the text that other tools read."""

from __future__ import annotations

from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.phrases import Style
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.dates import written
from hearthkey.ui.drawer.figures import Facts, Figure, in_groups
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Certificate, Errands
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class CertificateView(QWidget):
    """Folded until somebody asks; then it is fetched."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._serial = ""
        self.open_button = Button(theme, self.tr("Certificate in full"), kind=Kind.WORD)
        self.copy_button = Button(theme, self.tr("Copy"), height=26)
        self.copy_button.setAccessibleName(self.tr("Copy facts and certificate"))
        self.facts = Facts(theme)
        self.text = Figure(theme, self.tr("Certificate in PEM"), "", role=Role.SMALL, tabs=True)
        self.trouble = Prose(theme, Role.STATE, color="act")
        head = QHBoxLayout()
        head.addWidget(self.open_button)
        head.addStretch(1)
        head.addWidget(self.copy_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(head)
        for part in (self.facts, self.text, self.trouble):
            column.addLayout(inset(part))
        self.open_button.clicked.connect(self.turn)
        self.copy_button.clicked.connect(self.copy)
        self.fold()

    def about(self, serial: str) -> None:
        """Be about another certificate, folded; about the same one, stay as it is."""
        if serial != self._serial:
            self._serial = serial
            self.fold()

    def fold(self) -> None:
        """Fold it."""
        self.open_button.say(self.tr("Certificate in full"))
        for part in (self.copy_button, self.facts, self.text, self.trouble):
            part.hide()

    def turn(self) -> None:
        """Fetch and show it, or fold it again."""
        if self.text.isVisibleTo(self):
            self.fold()
        else:
            self._errands.certificate(self._serial, self, self._show, self._failed)

    def copy(self) -> None:
        """Put facts and text onto the clipboard; none of it is secret."""
        QGuiApplication.clipboard().setText(f"{self.facts.told()}\n\n{self.text.value()}")
        announce(self, self.tr("Copied"))

    def _show(self, found: Certificate) -> None:
        facts = found.facts
        if facts.serial != self._serial:
            return
        tell = self.facts.tell
        tell("subject", self.tr("subject"), facts.subject)
        tell("issuer", self.tr("issuer"), facts.issuer)
        tell("names", self.tr("names"), ", ".join(facts.names))
        tell("usages", self.tr("usages"), ", ".join(facts.usages))
        tell("key", self.tr("key"), facts.key_type)
        tell("from", self.tr("good from"), written(facts.not_before, Style.MINUTE_UTC))
        tell("until", self.tr("good until"), written(facts.not_after, Style.MINUTE_UTC))
        tell("serial", self.tr("serial"), in_groups(facts.serial))
        tell("sha", self.tr("SHA-256"), in_groups(facts.fingerprint))
        self.text.show_value(found.text.strip())
        self.open_button.say(self.tr("Fold the certificate"))
        self.trouble.hide()
        for part in (self.copy_button, self.facts, self.text):
            part.show()
        announce(self, self.tr("The certificate is shown in full"))

    def _failed(self, error: HearthkeyError) -> None:
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())
