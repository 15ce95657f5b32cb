"""Where the gateway's files go: said once, the host key compared once."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.plans import Changes
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import HostKey, Target
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.drawer.gateway_fields import GatewayFields
from hearthkey.ui.drawer.gateway_key import HostKeyCard
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class GatewayPlacePage(Page):
    """Fields; then, by ssh, the key that the server shows; then it is kept.

    Args:
        start: where the folder dialog opens.
    """

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        start: Path,
        *,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, self.tr("Where its files go"), parent=parent)
        self._errands = errands
        self._ways = ways
        self._known: Target | None = None
        self._typed: Target | None = None
        self._key: HostKey | None = None
        self._part: QWidget | None = None
        self._touched = False
        self._asked = 0
        self.fields = GatewayFields(theme, pick, start)
        self.card = HostKeyCard(theme)
        self.line = Prose(theme, Role.BODY)
        self.go_on_button = Button(theme, self.tr("Go on"), kind=Kind.COMMIT, height=34)
        self.back_button = Button(theme, self.tr("Back to the gateway"), height=34)
        self.forget_button = Button(theme, self.tr("Deliver nowhere any more"), kind=Kind.WORD, height=26)
        self.forget_voice = Voice(
            theme,
            self.tr(
                "What lies at the gateway stays there, and ends by its dates. New lists go there by hand from now on, "
                "and its host key is compared anew when you come back."
            ),
        )
        self.forget_yes = Button(theme, self.tr("Forget it"), height=30)
        self.forget_no = Button(theme, self.tr("Keep it"), height=30)
        self._build()
        self._connect()
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self._forgetting = QWidget()
        column = QVBoxLayout(self._forgetting)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addLayout(inset(self.forget_voice))
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.forget_yes, self.forget_no):
            row.addWidget(button)
        row.addStretch(1)
        column.addLayout(row)
        for part in (self.fields, self.card, self._forgetting, self.forget_button):
            self.body.addWidget(part)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addLayout(inset(self.line))
        buttons = QHBoxLayout()
        buttons.setSpacing(4)
        buttons.addWidget(self.go_on_button)
        buttons.addWidget(self.back_button)
        buttons.addStretch(1)
        self.foot.addLayout(buttons)
        self.line.hide()
        self._turn_to(self.fields)

    def _connect(self) -> None:
        self.fields.edited.connect(self._edited)
        self.fields.entered.connect(self.go_on)
        self.card.same.connect(self._same)
        self.card.other.connect(self._other)
        self.go_on_button.clicked.connect(self.go_on)
        self.back_button.clicked.connect(self._ways.gateway)
        self.forget_button.clicked.connect(self._ask_to_forget)
        self.forget_yes.clicked.connect(lambda: self._errands.forget_target(self, self._forgotten, self._failed))
        self.forget_no.clicked.connect(self._keep)
        self.follow(self._errands.seen, self.show_snapshot)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show what is chosen, unless somebody is typing."""
        self._known = snapshot.gateway_state.target
        if not self._touched:
            self.fields.show_target(self._known)
        self.go_on_button.setEnabled(not snapshot.read_only)
        if self._part is not None:
            self._turn_to(self._part)

    def _turn_to(self, part: QWidget) -> None:
        """Show one thing at a time: the fields, the key to be compared, or whether to forget it all."""
        self._part = part
        for one in (self.fields, self.card, self._forgetting):
            one.setVisible(one is part)
        writes = self._errands.last is not None and not self._errands.last.read_only
        self.forget_button.setVisible(part is self.fields and self._known is not None and writes)
        self.go_on_button.setVisible(part is self.fields)

    def _edited(self) -> None:
        """What was compared belongs to what was typed then."""
        self._touched = True
        self._asked += 1
        self._key = None
        self._say("")

    def go_on(self) -> None:
        """Check what is typed; by ssh, see what the server shows; keep it at once where nothing has to be compared."""
        try:
            self._typed = self.fields.typed()
        except Refused as error:
            self._refused(error)
            return
        if not self._typed.host:
            self._keep_target(None)
            return
        self._asked += 1
        number = self._asked
        self._busy(busy=True)
        self._say(self.tr("Asking {where} for its host key …").format(where=spoken(where(self._typed))))

        def shown(key: HostKey | None) -> None:
            if number == self._asked:
                self._shown(key)

        def failed(error: HearthkeyError) -> None:
            if number == self._asked:
                self._failed(error)

        self._errands.host_key(self._typed, self, shown, failed)

    def _shown(self, key: HostKey | None) -> None:
        self._busy(busy=False)
        self._say("")
        self._key = key
        typed, known = self._typed, self._known
        if typed is None or key is None:
            self._keep_target(key)
            return
        pinned = known if known is not None and (known.host, known.port) == (typed.host, typed.port) else None
        if pinned is not None and pinned.host_key == key.line:
            self._keep_target(key)
            return
        self.compare(typed, key, changed=pinned is not None and bool(pinned.host_key))

    def compare(self, typed: Target, key: HostKey, *, changed: bool = False) -> None:
        """Ask whether it is the gateway's own key.

        Args:
            changed: another one was pinned there before.
        """
        alarm = Refused("host-key-changed", where=where(typed), seen=key.fingerprint)
        self._turn_to(self.card)
        self.card.show_key(spoken(where(typed)), key, mended(alarm) if changed else "")

    def _same(self) -> None:
        self._keep_target(self._key)

    def _other(self) -> None:
        self._key = None
        self._turn_to(self.fields)
        self._say(
            self.tr(
                "Then it is not your gateway that answers. Nothing was sent and nothing was kept. See whether the "
                "host is the right one, and try again from your own network."
            ),
            color="act",
        )
        self.fields.host.setFocus()

    def _keep_target(self, key: HostKey | None) -> None:
        if self._typed is not None:
            self._busy(busy=True)
            self._errands.choose_target(self._typed, key, self, self._kept, self._failed)

    def _kept(self, _changes: Changes) -> None:
        self._rest()
        self._ways.gateway.emit()

    def _forgotten(self, _changes: Changes) -> None:
        self._rest()
        self._ways.gateway.emit()

    def _rest(self) -> None:
        """What was typed is done with."""
        self._busy(busy=False)
        self._touched = False
        self._typed = self._key = None
        self._turn_to(self.fields)
        self._say("")
        self.fields.show_target(self._known)

    def _keep(self) -> None:
        self._turn_to(self.fields)
        self.forget_button.setFocus()

    def _ask_to_forget(self) -> None:
        self._say("")
        self._turn_to(self._forgetting)
        self.forget_no.setFocus()
        announce(self, self.forget_voice.text())

    def _refused(self, error: HearthkeyError) -> None:
        if not self.fields.refuse(error):
            self._failed(error)

    def closed(self) -> None:
        """Whoever comes back begins with the fields; what was typed is still in them, what was compared is not."""
        self._key = None
        if self._part is self.card or self._part is self._forgetting:
            self._turn_to(self.fields)

    def _failed(self, error: HearthkeyError) -> None:
        self._busy(busy=False)
        self._say(mended(error), color="act")

    def _busy(self, *, busy: bool) -> None:
        self.fields.lock(locked=busy)
        seen = self._errands.last
        self.go_on_button.setEnabled(not busy and seen is not None and not seen.read_only)

    def _say(self, text: str, *, color: str = "ink") -> None:
        self.line.recolor(color)
        self.line.speak(text)
        self.line.setVisible(bool(text))
        announce(self, text)
