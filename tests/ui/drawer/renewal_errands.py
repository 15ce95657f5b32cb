"""A stand-in for the errands of renewals: plans are made of what is seen, and nothing is done with them."""

from __future__ import annotations

from datetime import timedelta

from PySide6.QtCore import QObject

from hearthkey.core.goodbye import chores
from hearthkey.core.household import possessive
from hearthkey.core.keysets import key_set
from hearthkey.core.passes import LIVING
from hearthkey.core.plans import EnrolPlan, RenewPlan, ReplacePlan, RevokePlan, SupersedePlan, TakeBackPlan
from hearthkey.core.revocation import Reason
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.goodbye import GoodbyePlan
from hearthkey.services.renewing import Round
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.proof_errands import ProvingErrands


class RenewingErrands(ProvingErrands):
    """Quince Cottage, where every plan succeeds."""

    def preview_round(
        self, identities: tuple[str, ...], overlap_days: int, context: QObject, then: Then[Round], failed: Failed
    ) -> None:
        """A plan for each, or the trouble that is laid ready."""
        if self._fails("preview_round", context, failed):
            return
        now, plans = self._now().at, []
        for identity in identities:
            old = self._of(identity)[-1]
            wanted = EnrolRequest(old.person, old.device, old.kind, key_set=old.key_set, replace=True)
            overlap = min(now + timedelta(days=overlap_days), old.not_after)
            plans.append(RenewPlan(old, self.plan(wanted), now + timedelta(days=730), overlap, overlaps=True))
        then(Round(tuple(plans)))

    def preview_take_back(self, identity: str, context: QObject, then: Then[TakeBackPlan], failed: Failed) -> None:
        """The newest pass of the device."""
        if not self._fails("preview_take_back", context, failed):
            then(TakeBackPlan(self._of(identity)[-1], 43))

    def preview_supersede(self, identity: str, context: QObject, then: Then[SupersedePlan], failed: Failed) -> None:
        """Its oldest."""
        if not self._fails("preview_supersede", context, failed):
            then(SupersedePlan(self._of(identity)[:1], 43, proved=False))

    def preview_another(
        self, identity: str, label: str, kind: str, context: QObject, then: Then[ReplacePlan], failed: Failed
    ) -> None:
        """A new device of the same person."""
        if self._fails("preview_another", context, failed):
            return
        old = self._of(identity)[-1]
        found = self._now().kinds.of(kind)
        enrol = EnrolPlan(
            person=old.person,
            device=label,
            kind=found,
            key_set=key_set(found.key_set.name),
            container=found.container,
            guest=False,
            ends=None,
            replaces=None,
            identity=None,
            cautions=(),
        )
        then(ReplacePlan((old,), enrol, possessive(old.person, label), 43))

    def preview_goodbye(self, person: str, context: QObject, then: Then[GoodbyePlan], failed: Failed) -> None:
        """All that is theirs."""
        if self._fails("preview_goodbye", context, failed):
            return
        seen = self._now()
        theirs = tuple(one for one in seen.passes if one.person == person and one.state(seen.at) in LIVING)
        revoke = RevokePlan(theirs, Reason.AFFILIATION_CHANGED, 3, 43)
        then(GoodbyePlan(person, revoke, chores(shared_secret=True, device_templates=("router",), by_hand=True)))
