"""Choices for the files that the gateway's computer reads."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.host import interface_name, web_facts
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.plans import Changes
from hearthkey.core.room import HIGHEST_OUTER, LOWEST_OUTER
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_OWN, _GATEWAYS = "own", "gateway"
_NO, _YES = "no", "yes"
_FRONT = "/"
"""A folder for checking a page's address, which does not depend on one."""


class GatewayChoices(QWidget):
    """Seven questions and a button that keeps the answers."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._host = ""
        self._known = PackOptions()
        self._touched = False
        self.masquerade = Choice(
            theme,
            self.tr("Address that the home network sees"),
            [(_OWN, self.tr("the device’s own")), (_GATEWAYS, self.tr("the gateway’s"))],
        )
        self.router = Choice(
            theme,
            self.tr("That computer is the router of the house too"),
            [(_NO, self.tr("no")), (_YES, self.tr("yes"))],
        )
        self.secret = Choice(
            theme,
            self.tr("A secret for each device beside its certificate"),
            [(_NO, self.tr("no")), (_YES, self.tr("yes"))],
        )
        self.shared = Choice(
            theme, self.tr("One secret that all devices share"), [(_NO, self.tr("no")), (_YES, self.tr("yes"))]
        )
        self.mtu, self.interface, self.page = (Line(theme) for _ in range(3))
        self._mtu = Question(
            theme,
            self.tr("Largest packet on the way out, octets"),
            self.mtu,
            hint=self.tr("1500 for most lines, 1492 where the provider uses PPPoE."),
        )
        self._interface = Question(
            theme,
            self.tr("Interface that packets leave the tunnel on"),
            self.interface,
            hint=self.tr("Its name at the gateway. Empty where the kernel itself unpacks the tunnel."),
        )
        self._page = Question(
            theme,
            self.tr("Page at home for the web front"),
            self.page,
            hint=self.tr("Such as http://127.0.0.1:8080. Empty for no web front."),
        )
        self.line = Prose(theme, Role.BODY)
        self.keep_button = Button(theme, self.tr("Keep these choices"), height=32)
        self._arrange(theme)
        for choice in (self.masquerade, self.router, self.secret, self.shared):
            choice.chosen.connect(lambda _key: self._edited())
        for line in (self.mtu, self.interface, self.page):
            line.textEdited.connect(lambda _text: self._edited())
            line.returnPressed.connect(self.keep)
        self.keep_button.clicked.connect(self.keep)

    def _arrange(self, theme: Theme) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        seen = Question(
            theme,
            self.tr("Address that the home network sees"),
            self.masquerade,
            hint=self.tr("The gateway’s, where the router at home cannot be told a way back to the tunnel."),
        )
        router = Question(
            theme,
            self.tr("That computer is the router of the house too"),
            self.router,
            hint=self.tr("Then other traffic is left to its other rules; otherwise it refuses to forward any."),
        )
        secret = Question(
            theme,
            self.tr("A secret for each device beside its certificate"),
            self.secret,
            hint=self.tr(
                "Against whoever records today and decrypts in twenty years (RFC 8784); for gateways that know it."
            ),
        )
        shared = Question(
            theme,
            self.tr("One secret that all devices share"),
            self.shared,
            hint=self.tr("For gateways that want one. Stopping a device that knew it means a new one for all."),
        )
        for part in (seen, router, secret, shared, self._mtu, self._interface, self._page):
            column.addWidget(part)
        column.addLayout(inset(self.line))
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.keep_button)
        row.addStretch(1)
        column.addLayout(row)
        self.line.hide()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is chosen, unless somebody is typing."""
        self._known = snapshot.pack_options
        self._host = "" if snapshot.household is None else snapshot.household.gateway_host
        self.keep_button.setEnabled(not snapshot.read_only)
        if not self._touched:
            self.masquerade.take(_GATEWAYS if self._known.masquerade else _OWN)
            self.router.take(_YES if self._known.forwards_for_others else _NO)
            self.secret.take(_YES if self._known.extra_secret else _NO)
            self.shared.take(_YES if self._known.household_secret else _NO)
            self.mtu.setText(str(self._known.outer_mtu))
            self.interface.setText(self._known.tunnel_interface)
            self.page.setText(self._known.web_upstream)

    def keep(self) -> None:
        """Check what is typed, and keep it."""
        for question in (self._mtu, self._interface, self._page):
            question.trouble("")
        chosen = self._known
        steps: tuple[tuple[Question, Line, Callable[[PackOptions], PackOptions]], ...] = (
            (self._mtu, self.mtu, lambda options: replace(options, outer_mtu=self._typed_mtu())),
            (self._interface, self.interface, lambda options: replace(options, tunnel_interface=self._typed_name())),
            (self._page, self.page, lambda options: replace(options, web_upstream=self._typed_page())),
        )
        for question, line, take in steps:
            try:
                chosen = take(chosen)
            except Refused as error:
                question.trouble(mended(error))
                line.setFocus()
                return
        chosen = replace(
            chosen,
            masquerade=self.masquerade.value() == _GATEWAYS,
            forwards_for_others=self.router.value() == _YES,
            extra_secret=self.secret.value() == _YES,
            household_secret=self.shared.value() == _YES,
        )
        self._errands.set_pack_options(chosen, self, self._kept, self._failed)

    def _typed_mtu(self) -> int:
        text = self.mtu.text().strip()
        number = int(text) if text.isdecimal() and len(text) < 6 else 0
        if not LOWEST_OUTER <= number <= HIGHEST_OUTER:
            raise Refused("outer-mtu-odd", number=text[:20] or "0", lowest=LOWEST_OUTER, highest=HIGHEST_OUTER)
        return number

    def _typed_name(self) -> str:
        return interface_name(self.interface.text(), self.tr("tunnel interface"))

    def _typed_page(self) -> str:
        text = self.page.text().strip()
        return web_facts(host=self._host, folder=_FRONT, page=text).page if text else ""

    def _edited(self) -> None:
        self._touched = True
        self._say("")

    def _kept(self, changes: Changes) -> None:
        self._touched = False
        if self._errands.last is not None:
            self.show_snapshot(self._errands.last)
        self._say(spoken(changes.sentence))

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error), color="act")

    def _say(self, text: str, *, color: str = "ink") -> None:
        self.line.recolor(color)
        self.line.speak(text)
        self.line.setVisible(bool(text))
        announce(self, text)
