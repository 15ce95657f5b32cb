"""What is asked about a new household, and where its answers are told not to fit."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.network import FULL, SPLIT, Caution
from hearthkey.services.founding import FoundRequest
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import caution
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_ADVICE = {
    "gateway-only-at-home": Spot.HOST,
    "gateway-shared-address": Spot.HOST,
    "gateway-bare-address": Spot.HOST,
    "dns-outside": Spot.DNS,
}


class FoundingForm(QWidget):
    """The questions.

    Args:
        key_folder: where a key file would lie, for the caution.
        networks_here: subnets that this computer is in now; they are proposed as those at home.

    Signals:
        changed: something was typed or chosen.
        another: another tunnel subnet is wanted.
    """

    changed = Signal()
    another = Signal()

    def __init__(
        self, theme: Theme, key_folder: str, networks_here: Sequence[str] = (), parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._key_folder = key_folder
        self._touched: set[Spot] = set()
        self._proposed = ""
        self.name, self.host, self.home = Line(theme), Line(theme), Line(theme, ", ".join(networks_here))
        self.dns, self.tunnel, self.suffix = Line(theme), Line(theme), Line(theme)
        self.quiet = Button(theme, self.tr("Another quiet one"), height=32)
        self.quiet.setEnabled(False)
        self.through = Choice(
            theme,
            self.tr("What goes through home?"),
            ((SPLIT, self.tr("what is at home")), (FULL, self.tr("everything"))),
        )
        self.kept = Choice(
            theme,
            self.tr("Where is the CA key kept?"),
            ((KEYRING, self.tr("in the keyring")), (FILE, self.tr("in a key file"))),
        )
        self.key_set = Choice(
            theme,
            self.tr("What does the gateway sign with?"),
            (("broad", "RSA-3072"), ("compact", "P-256"), ("suite-384", "P-384")),
        )
        self.spots = self._questions(networks_here)
        self._through = Question(theme, self.tr("What of their traffic goes through home?"), self.through)
        self._lay_out()
        self._connect()

    def _questions(self, networks_here: Sequence[str]) -> dict[Spot, Question]:
        theme = self._theme
        here = self.tr("Where this computer is now. If that is not at home, ask the router.")
        for line, sample in (
            (self.host, "home.quince.example"),
            (self.home, "198.51.100.0/24"),
            (self.dns, "198.51.100.1"),
            (self.tunnel, self.tr("a quiet one is proposed")),
            (self.suffix, "quince.example"),
        ):
            line.setPlaceholderText(sample)
        return {
            Spot.NAME: Question(theme, self.tr("What is the household called?"), self.name),
            Spot.HOST: Question(theme, self.tr("Under which name is the house reached?"), self.host),
            Spot.HOME: Question(
                theme, self.tr("Which subnets are at home?"), self.home, hint=here if networks_here else ""
            ),
            Spot.DNS: Question(theme, self.tr("DNS server at home, if there is one"), self.dns),
            Spot.TUNNEL: Question(
                theme,
                self.tr("Which subnet do the devices get?"),
                self.tunnel,
                beside=self.quiet,
            ),
            Spot.KEPT: Question(theme, self.tr("Where is the CA key kept?"), self.kept),
            Spot.SUFFIX: Question(
                theme,
                self.tr("What do device codes end in?"),
                self.suffix,
                hint=self.tr("Left empty, it is made from the name of the house."),
            ),
        }

    def _lay_out(self) -> None:
        theme, spots = self._theme, self.spots
        inside = QWidget()
        details = QVBoxLayout(inside)
        details.setContentsMargins(0, 0, 0, 0)
        details.setSpacing(10)
        signs = Question(
            theme,
            self.tr("What does the gateway sign with?"),
            self.key_set,
            hint=self.tr("RSA-3072 suits every built-in client."),
        )
        details.addWidget(Pair(theme, spots[Spot.SUFFIX], signs))
        law = Prose(theme, Role.STATE, caution(Caution("local-law", "")), color="ink2")
        law.setContentsMargins(Line.RING, 0, Line.RING, 0)
        details.addWidget(law)
        self.details = Fold(theme, self.tr("Details"), inside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(Pair(theme, spots[Spot.NAME], spots[Spot.HOST]))
        column.addWidget(Pair(theme, spots[Spot.HOME], spots[Spot.DNS]))
        column.addWidget(spots[Spot.TUNNEL])
        column.addWidget(Pair(theme, self._through, spots[Spot.KEPT]))
        column.addWidget(self.details)

    def _connect(self) -> None:
        lines = {
            Spot.NAME: self.name,
            Spot.HOST: self.host,
            Spot.HOME: self.home,
            Spot.DNS: self.dns,
            Spot.TUNNEL: self.tunnel,
            Spot.SUFFIX: self.suffix,
        }
        for spot, line in lines.items():
            line.textEdited.connect(lambda _text, at=spot: self._edited(at))
        for choice in (self.through, self.kept, self.key_set):
            choice.chosen.connect(lambda _key: self.changed.emit())
        self.kept.chosen.connect(self._keeps)
        self.quiet.clicked.connect(self._again)

    # What was answered

    def request(self) -> FoundRequest:
        """The answers as they stand."""
        return FoundRequest(
            name=self.name.text(),
            gateway_host=self.host.text(),
            home_subnets=_several(self.home.text()),
            tunnel_subnet=self.tunnel.text().strip() or None,
            identity_suffix=self.suffix.text().strip() or None,
            dns_servers=_several(self.dns.text()),
            tunnel=self.through.value(),
            gateway_key_set=self.key_set.value(),
        )

    def wanted(self) -> list[str]:
        """What has no answer yet, in words."""
        asked = (
            (self.name, self.tr("what the household is called")),
            (self.host, self.tr("the name of the house")),
            (self.home, self.tr("a subnet at home")),
        )
        return [words for line, words in asked if not line.text().strip()]

    @property
    def proposes(self) -> bool:
        """Whether the tunnel subnet is a proposal and not the householder's own."""
        return self.tunnel.text() == self._proposed

    def propose(self, subnet: str) -> None:
        """Fill in a tunnel subnet, unless one is being typed."""
        if Spot.TUNNEL in self._touched and self.tunnel.hasFocus():
            return
        self._touched.discard(Spot.TUNNEL)
        self._proposed = subnet
        self.quiet.setEnabled(bool(subnet))
        self.tunnel.setText(subnet)
        self.spots[Spot.TUNNEL].advise("")

    # What does not fit

    def trouble(self, spot: Spot, sentence: str, *, always: bool) -> bool:
        """Say it in its place; a line that nobody has typed in yet is left in peace, unless `always`."""
        if spot in {Spot.PAGE, Spot.WORDS} or not (always or spot in self._touched):
            return False
        if spot is Spot.SUFFIX:
            self.details.open(shown=True)
        self.spots[spot].trouble(sentence)
        return True

    def peace(self) -> None:
        """Nothing is in the way."""
        for question in self.spots.values():
            question.trouble("")

    def advise(self, cautions: Sequence[Caution]) -> None:
        """Say what should be known, each in its place."""
        for spot in (Spot.HOST, Spot.DNS):
            found = [caution(one) for one in cautions if _ADVICE.get(one.code) is spot]
            self.spots[spot].advise(" ".join(found))

    def _edited(self, spot: Spot) -> None:
        self._touched.add(spot)
        self.spots[spot].trouble("")
        self.changed.emit()

    def _again(self) -> None:
        self._touched.discard(Spot.TUNNEL)
        self.propose("")
        self.another.emit()

    def _keeps(self, place: str) -> None:
        self.spots[Spot.KEPT].trouble("")
        self.spots[Spot.KEPT].advise(caution(Caution("kept-in-files", self._key_folder)) if place == FILE else "")


def _several(text: str) -> tuple[str, ...]:
    return tuple(part.strip() for part in text.replace(";", ",").split(",") if part.strip())
