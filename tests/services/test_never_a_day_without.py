"""Renewals in any order: whoever got in gets in every day that was promised, until the householder says otherwise."""

from __future__ import annotations

import tempfile
from contextlib import ExitStack, suppress
from datetime import datetime, timedelta
from pathlib import Path

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from hearthkey.core.errors import Refused
from hearthkey.core.renewal import works
from tests.fakes.clock import NOW
from tests.fakes.home import Home, at_home
from tests.fakes.workshop import QuickWorkshop

DEVICES = ("Ines phone", "Tomasz laptop", "Odile tablet")
DEVICE = st.sampled_from(DEVICES)


class Years(RuleBasedStateMachine):
    """Quince Cottage over years, run by somebody who clicks on anything; what is refused changes nothing."""

    @initialize()
    def begin(self) -> None:
        """Hand everybody's first bundle over."""
        self.stack = ExitStack()
        folder = self.stack.enter_context(tempfile.TemporaryDirectory())
        self.home: Home = self.stack.enter_context(at_home(Path(folder) / "data"))
        self.home.world.workshop = QuickWorkshop()
        self.home.reopen()
        self.promised: dict[str, datetime] = {}
        for text in DEVICES:
            self.home.hand_over(text)

    def teardown(self) -> None:
        """Leave."""
        if hasattr(self, "stack"):
            self.stack.close()

    @rule(text=DEVICE, overlap=st.sampled_from([1, 30, 400]))
    def renew(self, text: str, overlap: int) -> None:
        """Renew a device."""
        renewing = self.home.house.renewing
        with suppress(Refused):
            renewing.renew(renewing.preview(self.home.passes(text), overlap_days=overlap))

    @rule(days=st.sampled_from([1, 60, 800]))
    def go_round(self, days: int) -> None:
        """Renew whatever is due by a day."""
        renewing = self.home.house.renewing
        done = renewing.go_round(renewing.plan_due(self.home.world.clock.now() + timedelta(days=days)))
        assert done.failed is None

    @rule(text=DEVICE)
    def hand_over(self, text: str) -> None:
        """Hand over what waits for a device."""
        with suppress(Refused):
            self.home.hand_over(text)

    @rule(text=DEVICE)
    def prove(self, text: str) -> None:
        """Somebody tells that a device gets in; what is over by it goes."""
        proving = self.home.house.proving
        with suppress(Refused):
            proving.told(proving.preview_told(proving.choose(self.home.passes(text))))
        self.home.house.superseding.follow_up()

    @rule(text=DEVICE)
    def supersede(self, text: str) -> None:
        """The householder wants an old pass gone."""
        superseding = self.home.house.superseding
        with suppress(Refused):
            superseding.supersede(superseding.preview_supersede(self.home.passes(text)))

    @rule(text=DEVICE)
    def take_back(self, text: str) -> None:
        """Take a renewal back."""
        superseding = self.home.house.superseding
        with suppress(Refused):
            superseding.take_back(superseding.preview_take_back(self.home.passes(text)))

    @rule(text=DEVICE)
    def stop_and_let_in(self, text: str) -> None:
        """The householder says otherwise: for a moment, and then lets the device in again."""
        with suppress(Refused):
            self.home.stop(text)
        self.promised.pop(text, None)
        with suppress(Refused):
            self.home.let_in(text)

    @rule(days=st.sampled_from([1, 20, 300]))
    def wait(self, days: int) -> None:
        """Let time pass, within the CA's ten years less the two of a pass."""
        if self.home.world.clock.now() < NOW + timedelta(days=2500):
            self.home.world.clock.forward(days=days)
            self.home.unlock()
            self.home.house.superseding.follow_up()

    @invariant()
    def nobody_is_without(self) -> None:
        """Broken if it fails: a renewal, or what comes of it, locked somebody out before the promised day."""
        if not hasattr(self, "promised"):
            return
        now = self.home.world.clock.now()
        for text in DEVICES:
            ends = [one.not_after for one in self.home.passes(text) if works(one, now)]
            promised = self.promised.get(text)
            assert promised is None or promised < now or max(ends, default=now) >= promised, (text, promised)
            if ends:
                self.promised[text] = max(ends)


TestYears = Years.TestCase
TestYears.settings = settings(
    max_examples=10, stateful_step_count=25, suppress_health_check=[HealthCheck.too_slow], deadline=None
)
