"""What is asked about a new household, and where its answers are told not to fit."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.network import Caution
from hearthkey.services.founding import FoundRequest
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.pages.household_form import HouseholdForm, several
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import caution
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class FoundingForm(HouseholdForm):
    """The questions.

    Args:
        key_folder: where a key file would lie, for the caution.
        networks_here: subnets that this computer is in now; they are proposed as those at home.

    Signals:
        another: another tunnel subnet is wanted.
    """

    another = Signal()

    def __init__(
        self, theme: Theme, key_folder: str, networks_here: Sequence[str] = (), parent: QWidget | None = None
    ) -> None:
        here = self.tr("Where this computer is now. If that is not at home, ask the router.")
        super().__init__(
            theme,
            home=", ".join(networks_here),
            home_hint=here if networks_here else "",
            suffix_hint=self.tr("Left empty, it is made from the name of the house."),
            parent=parent,
        )
        self._key_folder = key_folder
        self._proposed = ""
        self.quiet.setEnabled(False)
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
        self.spots[Spot.KEPT] = Question(theme, self.tr("Where is the CA key kept?"), self.kept)
        self._lay_out()
        for choice in (self.kept, self.key_set):
            choice.chosen.connect(lambda _key: self.changed.emit())
        self.kept.chosen.connect(self._keeps)
        self.quiet.clicked.connect(self._again)

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
        column.addWidget(Pair(theme, self.traffic, spots[Spot.KEPT]))
        column.addWidget(self.details)

    # What was answered

    def request(self) -> FoundRequest:
        """The answers as they stand."""
        return FoundRequest(
            name=self.name.text(),
            gateway_host=self.host.text(),
            home_subnets=several(self.home.text()),
            tunnel_subnet=self.tunnel.text().strip() or None,
            identity_suffix=self.suffix.text().strip() or None,
            dns_servers=several(self.dns.text()),
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

    def unfold(self, spot: Spot) -> None:
        """The suffix lies among the details."""
        if spot is Spot.SUFFIX:
            self.details.open(shown=True)

    def _again(self) -> None:
        self._touched.discard(Spot.TUNNEL)
        self.propose("")
        self.another.emit()

    def _keeps(self, place: str) -> None:
        self.spots[Spot.KEPT].trouble("")
        self.spots[Spot.KEPT].advise(caution(Caution("kept-in-files", self._key_folder)) if place == FILE else "")
