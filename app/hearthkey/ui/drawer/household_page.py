"""The household: what was decided on the first evening, what runs until when, and the list signed anew."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.network import FULL, Caution
from hearthkey.core.plans import Changes
from hearthkey.core.sentences.diary import day
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.drawer.figures import Facts, in_groups
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class HouseholdPage(Page):
    """Settings of the household, to be read; the app's own stand on a page of their own."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("The household"), reads=True, parent=parent)
        self._errands = errands
        self._busy = False
        self.written = Facts(theme)
        self.kept = Facts(theme)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.sign_button = Button(theme, self.tr("Sign the list anew"), height=32)
        self.diary_button = Button(theme, self.tr("Diary"), hint=self.tr("Ctrl+D"), height=32)
        self._build()
        self.sign_button.clicked.connect(self.sign_anew)
        self.diary_button.clicked.connect(ways.diary)
        self.unlock.opened.connect(self._do)
        errands.seen.connect(self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.body.setSpacing(10)
        self.put(
            Label(self.theme, Role.BODY_STRONG, self.tr("Written into every bundle")),
            self.written,
            Prose(
                self.theme,
                Role.STATE,
                self.tr(
                    "Another value here would mean a new bundle for every device, so they stay as they were founded."
                ),
                color="ink2",
            ),
            Rule(self.theme, color="rule"),
            Label(self.theme, Role.BODY_STRONG, self.tr("Until when it runs")),
            self.kept,
            self.note,
        )
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addLayout(inset(self.trouble))
        self.foot.addWidget(self.unlock)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.sign_button)
        row.addWidget(self.diary_button)
        row.addStretch(1)
        self.foot.addLayout(row)
        for part in (self.note, self.trouble, self.unlock):
            part.hide()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the household as it is now."""
        self.sign_button.setEnabled(snapshot.authority is not None and not snapshot.read_only)
        self._tell_written(snapshot)
        self._tell_kept(snapshot)

    def _tell_written(self, snapshot: Snapshot) -> None:
        household = snapshot.household
        if household is None:
            return
        tell = self.written.tell
        tell("name", self.tr("name"), household.certified_name)
        tell("host", self.tr("reached at"), household.gateway_host)
        tell("suffix", self.tr("identities"), f"code.{household.identity_suffix}", self.tr("(a code for each device)"))
        tell("home", self.tr("home"), ", ".join(str(one) for one in household.home_subnets))
        tell("inner", self.tr("tunnel subnet"), str(household.tunnel_subnet))
        tell("dns", self.tr("DNS inside"), ", ".join(household.dns_servers) or self.tr("none"))
        if household.tunnel == FULL:
            tell("tunnel", self.tr("tunnel"), self.tr("full"), self.tr("(all traffic goes through home)"))
        else:
            tell("tunnel", self.tr("tunnel"), self.tr("split"), self.tr("(what is not at home goes its own way)"))

    def _tell_kept(self, snapshot: Snapshot) -> None:
        authority, gateway, newest = snapshot.authority, snapshot.gateway, snapshot.newest_list
        tell = self.kept.tell
        if newest is not None:
            number = self.tr("(no. {number})").format(number=newest.number)
            tell("list", self.tr("revocation list"), day(newest.next_update), number)
        if gateway is not None:
            tell("gateway", self.tr("gateway"), day(gateway.not_after), f"({gateway.host})")
        if authority is not None:
            place = self.tr("(key in the keyring)") if authority.key_place == "keyring" else self.tr("(key in a file)")
            tell("authority", self.tr("CA"), day(authority.not_after), place)
            tell("sha", self.tr("CA, SHA-256"), in_groups(authority.fingerprint))

    def sign_anew(self) -> None:
        """Sign the same list under a new date; a locked household is opened first."""
        seen = self._errands.last
        if seen is not None and seen.locked:
            if self.unlock.isHidden():
                self.unlock.ask()
            else:
                self.unlock.unlock()
        else:
            self._do()

    def _do(self) -> None:
        if self._busy:
            return
        self._busy = True
        self.trouble.hide()
        self._errands.sign_list(self, self._signed, self._refused)

    def _signed(self, changes: Changes) -> None:
        self._busy = False
        told = [changes.sentence, *(caution(one) for one in changes.cautions)]
        if changes.list_number is not None:
            told.append(caution(Caution("not-in-force", str(changes.list_number))))
        self.note.speak(" ".join(told))
        self.note.show()
        self.sign_button.setFocus()
        announce(self, " ".join(told[1:]))

    def _refused(self, error: HearthkeyError) -> None:
        self._busy = False
        if error.code == "household-locked":
            self.unlock.ask()
            return
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())
