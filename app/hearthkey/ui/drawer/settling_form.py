"""The household's settings as they stand, to be typed over."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.household import Household
from hearthkey.services.describing import QUIET
from hearthkey.services.settling import SettleRequest
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.pages.household_form import HouseholdForm, several
from hearthkey.ui.theme.theme import Theme

_FOLDED = frozenset({Spot.TUNNEL, Spot.SUFFIX})


class SettlingForm(HouseholdForm):
    """The questions of founding, one under the other, answered already; `details` stand where its user puts them."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, suffix_hint=self.tr("Of new devices; those that are there keep theirs."), parent=parent)
        self._stands: dict[Spot, str] = {}
        self._through = ""
        self.quiet.clicked.connect(self._again)
        self._lay_out()

    def _lay_out(self) -> None:
        inside = QWidget()
        details = QVBoxLayout(inside)
        details.setContentsMargins(0, 0, 0, 0)
        details.setSpacing(6)
        details.addWidget(self.spots[Spot.TUNNEL])
        details.addWidget(self.spots[Spot.SUFFIX])
        self.details = Fold(self._theme, self.tr("Details"), inside)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for spot in (Spot.NAME, Spot.HOST, Spot.HOME, Spot.DNS):
            column.addWidget(self.spots[spot])
        column.addWidget(self.traffic)

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, in order, before the details."""
        return [self.name, self.host, self.home, self.dns, *self.through.segments()]

    def folded(self) -> list[QWidget]:
        """What it stops at in the details."""
        return [self.details.button, self.tunnel, self.quiet, self.suffix]

    # What stands, and what is typed over it

    def show_household(self, household: Household, *, read_only: bool = False) -> None:
        """Learn how the household is settled; a line that was typed over keeps what was typed."""
        stands = {
            Spot.NAME: household.name,
            Spot.HOST: household.gateway_host,
            Spot.HOME: _joined(household.home_subnets),
            Spot.DNS: _joined(household.dns_servers),
            Spot.TUNNEL: str(household.tunnel_subnet),
            Spot.SUFFIX: household.identity_suffix,
        }
        for spot, line in self.lines.items():
            if line.text() in {self._stands.get(spot, ""), stands[spot]} and line.text() != stands[spot]:
                line.setText(stands[spot])
            line.setReadOnly(read_only)
        if self.through.value() == self._through or not self._through:
            self.through.take(household.tunnel)
        self._stands, self._through = stands, household.tunnel
        self.through.setEnabled(not read_only)
        self.quiet.setEnabled(not read_only)

    def as_it_was(self) -> None:
        """Let go of everything that was typed."""
        for spot, line in self.lines.items():
            line.setText(self._stands.get(spot, ""))
        self.through.take(self._through)
        self._touched.clear()
        self.peace()
        self.advise(())

    @property
    def differs(self) -> bool:
        """Whether anything was typed over."""
        return self.request() != SettleRequest()

    def request(self) -> SettleRequest:
        """What was typed over, and nothing else."""
        home, dns, inner = self._typed(Spot.HOME), self._typed(Spot.DNS), self._typed(Spot.TUNNEL)
        through = self.through.value()
        return SettleRequest(
            name=self._typed(Spot.NAME),
            gateway_host=self._typed(Spot.HOST),
            home_subnets=None if home is None else several(home),
            tunnel_subnet=None if inner is None else inner.strip() or QUIET,
            identity_suffix=self._typed(Spot.SUFFIX),
            dns_servers=None if dns is None else several(dns),
            tunnel=None if through == self._through else through,
        )

    def _typed(self, spot: Spot) -> str | None:
        text = self.lines[spot].text()
        return None if text == self._stands.get(spot, "") else text

    def propose(self, subnet: str) -> bool:
        """Fill in the tunnel subnet that was drawn, unless one is being typed; say whether it was filled in."""
        if self.tunnel.hasFocus():
            return False
        self.tunnel.setText(subnet)
        return True

    def unfold(self, spot: Spot) -> None:
        """Tunnel subnet and suffix lie among the details."""
        if spot in _FOLDED:
            self.details.open(shown=True)

    def _again(self) -> None:
        self.tunnel.setText("")
        self._edited(Spot.TUNNEL)


def _joined(many: Sequence[object]) -> str:
    return ", ".join(str(one) for one in many)
