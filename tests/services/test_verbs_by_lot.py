"""The verbs in any order, compared with a tiny model after each step, and with what OpenSSL says of every pass."""

from __future__ import annotations

import tempfile
from contextlib import ExitStack
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, rule

from hearthkey.core.diary import first_misfit
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.revocation import FINAL_REASONS, Reason
from hearthkey.pki import judge, lists, read
from hearthkey.services import secret_names
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from hearthkey.services.settling import SettleRequest
from tests.fakes.clock import NOW
from tests.fakes.home import Home, at_home
from tests.fakes.workshop import QuickWorkshop
from tests.services.model import Known, Model

PEOPLE = ("Ines", "Tomasz", "Odile", "Boiler engineer")


class Verbs(RuleBasedStateMachine):
    """Quince Cottage over years.

    Its devices are sealed by a stand-in: no bundle is opened here, and a real one takes a third of a second.
    """

    @initialize()
    def begin(self) -> None:
        """Open a copy of the founded household."""
        self.stack = ExitStack()
        folder = self.stack.enter_context(tempfile.TemporaryDirectory())
        self.home: Home = self.stack.enter_context(at_home(Path(folder) / "data"))
        self.home.world.workshop = QuickWorkshop()
        self.home.reopen()
        self.model = Model(signed=self.home.house.register.lists()[0].this_update)
        for one in self.home.house.register.passes():
            self.model.passes[f"{one.person} {one.device}"] = [Known(one.serial, one.not_after)]

    def teardown(self) -> None:
        """Leave."""
        if hasattr(self, "stack"):
            self.stack.close()

    def _titles(self) -> list[str]:
        return sorted(self.model.passes)

    @rule(person=st.sampled_from(PEOPLE), guest=st.booleans(), data=st.data())
    def add(self, person: str, guest: bool, data: st.DataObject) -> None:  # noqa: FBT001 - drawn by lot
        """Enrol a new device, or replace one."""
        now = self.home.world.clock.now()
        title = data.draw(st.sampled_from([*self._titles(), f"{person} device {len(self.model.passes)}"]))
        known = title in self.model.passes
        owner = next(one for one in PEOPLE if title.startswith(one))
        request = EnrolRequest(owner, title.removeprefix(owner + " "), "linux", guest=guest, replace=known)
        if known:
            with pytest.raises(Refused):
                self.home.house.enrolling.preview(EnrolRequest(owner, request.device, "linux"))
        (serial,) = self.home.add(request).serials
        days = timedelta(days=7 if guest else 730)
        self.model.passes.setdefault(title, []).append(Known(serial, now + days - timedelta(seconds=1)))

    @rule(data=st.data())
    def hand_over(self, data: st.DataObject) -> None:
        """Hand the newest waiting pass of a device over, if it is alive."""
        title = data.draw(st.sampled_from(self._titles()))
        waiting = [one for one in self.model.passes[title] if not one.handed_over]
        if waiting and waiting[-1] in self.model.living(title, self.home.world.clock.now()):
            self.home.hand_over(title)
            waiting[-1].handed_over, waiting[-1].host = True, self.model.host
        else:
            with pytest.raises(Refused):
                self.home.hand_over(title)

    @rule(data=st.data())
    def stop(self, data: st.DataObject) -> None:
        """Stop a device, if any pass of it gets in."""
        title = data.draw(st.sampled_from(self._titles()))
        now = self.home.world.clock.now()
        chosen = [one for one in self.model.living(title, now) if one.state(now) is not State.STOPPED]
        if not chosen:
            with pytest.raises(Refused):
                self.home.stop(title)
            return
        self.home.stop(title)
        for one in chosen:
            one.reason, one.since = Reason.CERTIFICATE_HOLD, now
        self.model.sign(now)

    @rule(data=st.data())
    def let_in(self, data: st.DataObject) -> None:
        """Let a device back in, if any pass of it is stopped."""
        title = data.draw(st.sampled_from(self._titles()))
        now = self.home.world.clock.now()
        chosen = [one for one in self.model.passes[title] if one.state(now) is State.STOPPED]
        if not chosen:
            with pytest.raises(Refused):
                self.home.let_in(title)
            return
        self.home.let_in(title)
        for one in chosen:
            one.reason, one.since = None, None
        self.model.sign(now)

    @rule(data=st.data(), reason=st.sampled_from(FINAL_REASONS))
    def revoke(self, data: st.DataObject, reason: Reason) -> None:
        """Revoke a device, if any pass of it is alive."""
        title = data.draw(st.sampled_from(self._titles()))
        now = self.home.world.clock.now()
        chosen = self.model.living(title, now)
        if not chosen:
            with pytest.raises(Refused):
                self.home.revoke(title, reason)
            return
        self.home.revoke(title, reason)
        for one in chosen:
            one.reason, one.since = reason, one.since or now
        self.model.sign(now)

    @rule(
        host=st.sampled_from([None, "home.quince.example", "door.quince.example"]),
        tunnel=st.sampled_from([None, "split", "full"]),
        renew=st.booleans(),
    )
    def settle(self, host: str | None, tunnel: str | None, renew: bool) -> None:  # noqa: FBT001 - drawn by lot
        """Change settings, if that changes any; nobody's standing is touched by it."""
        settling = self.home.house.settling
        plan = settling.preview(SettleRequest(gateway_host=host, tunnel=tunnel, renew_gateway=renew))
        before = self.model.host, self.model.tunnel
        self.model.host, self.model.tunnel = host or before[0], tunnel or before[1]
        if before == (self.model.host, self.model.tunnel) and not renew:
            with pytest.raises(Refused):
                settling.apply(plan)
            return
        assert bool(plan.devices) == (
            before != (self.model.host, self.model.tunnel) and self.model.has_bundles(self.home.world.clock.now())
        )
        settling.apply(plan)

    @rule()
    def sign(self) -> None:
        """Sign the same people under a new date."""
        self.home.house.listing.sign_anew()
        self.model.sign(self.home.world.clock.now())

    @rule(days=st.sampled_from([0.1, 1, 6, 8, 200]))
    def wait(self, days: float) -> None:
        """Let time pass, within the CA's ten years less the two of a pass."""
        if self.home.world.clock.now() > NOW + timedelta(days=2600):
            return
        self.home.world.clock.forward(days=days)
        self.home.unlock()

    @rule(hours=st.sampled_from([1, 24, 24 * 400]))
    def set_the_clock_back(self, hours: int) -> None:
        """Under a clock set back nothing is signed."""
        self.home.world.clock.turn(hours=-hours)
        last = max(self.home.house.register.diary()[-1].at, self.home.house.register.lists()[-1].this_update)
        if last > self.home.world.clock.now() + timedelta(minutes=5):
            with pytest.raises(Refused, match="clock-behind"):
                self.home.house.listing.sign_anew()
        self.home.world.clock.turn(hours=hours)

    @rule()
    def reopen(self) -> None:
        """Close the app and start it again."""
        self.home.reopen()

    @invariant()
    def every_entry_knows_its_words(self) -> None:
        """Broken if it fails: an entry stays English in a window of another language."""
        if hasattr(self, "home"):
            register = self.home.house.register
            assert [one.sentence for one in register.diary() if not one.words] == []

    @invariant()
    def states_and_list_are_those_of_the_model(self) -> None:
        """Broken if it fails: a verb did something else than its sentence says."""
        if not hasattr(self, "model"):
            return
        now, register = self.home.world.clock.now(), self.home.house.register
        seen = {one.serial: one.state(now) for one in register.passes()}
        assert seen == {one.serial: one.state(now) for one in self.model.all()}
        newest = register.newest_list()
        assert newest is not None
        facts = lists.read_list(newest.der)
        assert facts.number == newest.number == register.list_high_water() == self.model.number
        assert {one.serial: (one.reason, one.since) for one in facts.entries} == self.model.entries
        assert first_misfit(register.diary(), written=register.diary_written()) is None
        assert register.loose_secrets() == []

    @invariant()
    def settings_and_gateway_are_those_of_the_model(self) -> None:
        """Broken if it fails: the gateway has no certificate for a host that some bundle names, or no key to it."""
        if not hasattr(self, "model"):
            return
        register = self.home.house.register
        household, gateway = register.household(), register.gateway()
        assert household is not None
        assert gateway is not None
        assert (household.gateway_host, household.tunnel) == (self.model.host, self.model.tunnel)
        first, *former = read.certificate_facts(gateway.certificate).names
        assert first == f"dns:{self.model.host}"
        carried = self.model.carried(self.home.world.clock.now())
        assert {f"dns:{host}" for host in carried} <= {first, *former}
        named = secret_names.gateway_key(the_authority(register), "")
        kept = [name for name in self.home.world.vault.secrets if name.startswith(named)]
        assert kept == [named + gateway.serial]

    @invariant()
    def openssl_agrees(self) -> None:
        """Broken if it fails: a gateway lets in whom the sheet calls stopped, or the other way round."""
        if not hasattr(self, "model"):
            return
        now, register = self.home.world.clock.now(), self.home.house.register
        newest = register.newest_list()
        assert newest is not None
        for one in self.model.all():
            told = "gets in"
            try:
                judge.check_path(
                    register.certificate(one.serial), (the_authority(register).certificate,), newest.der, now
                )
            except Refused as refused:
                told = refused.code
            gets_in = one.state(now) in {State.WAITING, State.IN_USE} and now <= newest.next_update
            assert (told == "gets in") == gets_in, (told, one)


TestVerbs = Verbs.TestCase
TestVerbs.settings = settings(
    max_examples=15, stateful_step_count=20, suppress_health_check=[HealthCheck.too_slow], deadline=None
)
