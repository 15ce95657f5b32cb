"""A stand-in for the household's errands: answers at once, and writes down what it was asked."""

from __future__ import annotations

from contextlib import AbstractContextManager
from dataclasses import fields, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import shiboken6
from PySide6.QtCore import QObject

from hearthkey.core.certificates import CertificateFacts
from hearthkey.core.copies import Copy, Found, told
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.keysets import key_set
from hearthkey.core.network import Caution, gateway_cautions
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, EnrolPlan, LetInPlan, RevokePlan, SparePlanned, StopPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.sentences.settling import settled
from hearthkey.core.settling import SettlePlan, plan_settling
from hearthkey.core.slot_list import Listed
from hearthkey.core.slots import slots_of
from hearthkey.core.templates import Template
from hearthkey.services.describing import describe
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.house import House
from hearthkey.services.settling import SettleRequest, request_for
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.templating import Shown
from hearthkey.services.tidying import Looked
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.drives import Drive
from hearthkey.ui.errands import Certificate
from hearthkey.ui.tasks import Failed, Tasks, Then
from tests.ui.drawer.succession_errands import SuccessionFake
from tests.ui.practice import made_pass, snapshot

PASSPHRASE = "plum kettle ivory lantern gravel otter quilt"


def _never(
    data: Path | None, *, place: str, writing: bool, keyring_service: str = "hearthkey"
) -> AbstractContextManager[House]:
    raise AssertionError((data, place, writing, keyring_service))


class FakeErrands(SuccessionFake):
    """Quince Cottage without a register: verbs change the snapshot, everything is answered at once.

    Attributes:
        asked: what was asked, in order, as a name and its words.
        troubles: by the name of what is asked, the error that it is answered with.
        cautions: what the next enrolment is warned of, and every preview of a template.
        kept: the templates that are kept.
        besides: identities that the narrowest spare list stops too.
        left: copies that left.
        drives: sticks that are plugged in.
        lies: what a look at a copy finds.
    """

    def __init__(self, seen: Snapshot | None = None) -> None:
        super().__init__(Tasks(), _never, None, place="file", service="practice")
        self.last = snapshot() if seen is None else seen
        self.asked: list[tuple[object, ...]] = []
        self.troubles: dict[str, HearthkeyError] = {}
        self.cautions: tuple[Caution, ...] = ()
        self.kept: tuple[Template, ...] = ()
        self.besides: frozenset[str] = frozenset()
        self.left: tuple[Copy, ...] = ()
        self.drives: tuple[Drive, ...] = ()
        self.lies = Found.OURS

    def show(self, seen: Snapshot) -> None:
        """Be another snapshot from now on."""
        self.last = seen
        self.seen.emit(seen)

    def _now(self) -> Snapshot:
        assert self.last is not None
        return self.last

    def _of(self, identity: str) -> tuple[Pass, ...]:
        return tuple(one for one in self._now().passes if one.identity == identity)

    def _fails(self, name: str, context: QObject, failed: Failed | None) -> bool:
        """Answer with the trouble that is laid ready; one who is gone is not answered at all."""
        if not shiboken6.isValid(context):
            return True
        error = self.troubles.get(name)
        if error is None:
            return False
        (failed or self.trouble.emit)(error)
        return True

    def _change(  # type: ignore[override]  # the real one runs work elsewhere; this one has its outcome already
        self, passes: tuple[Pass, ...], changes: Changes, then: Then[Changes] | None
    ) -> None:
        self.show(replace(self._now(), passes=passes))
        self.done.emit(changes)
        if then is not None:
            then(changes)

    def unlock(self, passphrase: Secret[str], context: QObject, then: Then[None], failed: Failed) -> None:
        """Open the household with its one passphrase."""
        self.asked.append(("unlock", passphrase.reveal()))
        if passphrase != Secret(PASSPHRASE):
            self.troubles.setdefault("unlock", Refused("wrong-passphrase"))
        else:
            self.troubles.pop("unlock", None)
        if not self._fails("unlock", context, failed):
            self.show(replace(self._now(), locked=False))
            then(None)

    def preview_enrol(self, request: EnrolRequest, context: QObject, then: Then[EnrolPlan], failed: Failed) -> None:
        """Plan a pass."""
        self.asked.append(("preview_enrol", request))
        if not self._fails("preview_enrol", context, failed):
            then(self.plan(request))

    def plan(self, request: EnrolRequest) -> EnrolPlan:
        """The plan of a request, unchecked."""
        kind = self._now().kinds.find(request.kind)
        old = [one for one in self._now().passes if (one.person, one.device) == (request.person, request.device)]
        return EnrolPlan(
            person=request.person,
            device=request.device,
            kind=kind,
            key_set=kind.key_set if request.key_set is None else key_set(request.key_set),
            container=request.container or kind.container,
            guest=request.guest,
            ends=request.ends,
            replaces=old[-1] if old else None,
            identity=old[-1].identity if old else None,
            cautions=self.cautions,
        )

    def enrol(
        self, request: EnrolRequest, context: QObject, then: Then[Changes] | None = None, failed: Failed | None = None
    ) -> None:
        """Make a pass; it waits in the tray."""
        self.asked.append(("enrol", request))
        if self._fails("enrol", context, failed):
            return
        made = made_pass(
            request.person,
            request.device,
            made=self._now().at,
            ends=request.ends or datetime(2028, 5, 12, tzinfo=UTC),
            kind=request.kind,
            guest=request.guest,
        )
        self._change((*self._now().passes, made), Changes(f"{made.title} got a pass.", (made.serial,)), then)

    def preview_stop(self, identity: str, context: QObject, then: Then[StopPlan], failed: Failed) -> None:
        """Plan a stop."""
        self.asked.append(("preview_stop", identity))
        if not self._fails("preview_stop", context, failed):
            then(StopPlan(self._of(identity), 4, 43))

    def preview_loss(
        self, identity: str, context: QObject, then: Then[StopPlan | SparePlanned], failed: Failed
    ) -> None:
        """Plan a stop by whatever list there is; while locked a spare one, if the snapshot says so."""
        here = self.last
        if here is None or not (here.locked and here.stoppable_locked):
            self.preview_stop(identity, context, then, failed)
            return
        self.asked.append(("preview_spare", identity))
        besides = tuple(one for one in here.passes if one.identity in self.besides)
        then(SparePlanned(self._of(identity), besides, 4, 43))

    def lose(
        self, plan: StopPlan | SparePlanned, context: QObject, then: Then[Changes] | None, failed: Failed | None
    ) -> None:
        """Stop by it."""
        if isinstance(plan, StopPlan):
            self.stop(plan, context, then, failed)
            return
        self.asked.append(("stop_by_spare", plan.chosen[0].title))
        self._withdraw(plan.chosen, Reason.CERTIFICATE_HOLD, then)

    def preview_let_in(self, identity: str, context: QObject, then: Then[LetInPlan], failed: Failed) -> None:
        """Plan to let a device back in that was away for ten weeks."""
        self.asked.append(("preview_let_in", identity))
        if not self._fails("preview_let_in", context, failed):
            then(LetInPlan(self._of(identity), 1680, 43))

    def preview_revoke(
        self, identity: str, reason: Reason, context: QObject, then: Then[RevokePlan], failed: Failed
    ) -> None:
        """Plan to revoke."""
        self.asked.append(("preview_revoke", identity, reason))
        if not self._fails("preview_revoke", context, failed):
            then(RevokePlan(self._of(identity), reason, 4, 43))

    def stop(self, plan: StopPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Stop."""
        self.asked.append(("stop", plan.chosen[0].title))
        if not self._fails("stop", context, failed):
            self._withdraw(plan.chosen, Reason.CERTIFICATE_HOLD, then)

    def let_in(self, plan: LetInPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Let back in."""
        self.asked.append(("let_in", plan.chosen[0].title))
        if not self._fails("let_in", context, failed):
            self._withdraw(plan.chosen, None, then)

    def revoke(self, plan: RevokePlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Revoke."""
        self.asked.append(("revoke", plan.chosen[0].title, plan.reason))
        if not self._fails("revoke", context, failed):
            self._withdraw(plan.chosen, plan.reason, then)

    def _withdraw(self, chosen: tuple[Pass, ...], reason: Reason | None, then: Then[Changes] | None) -> None:
        seen = self._now()
        serials = tuple(one.serial for one in chosen)
        since = None if reason is None else seen.at
        passes = tuple(
            replace(one, reason=reason, since=since)
            if one.serial in serials and one.state(seen.at) is not State.ENDED
            else one
            for one in seen.passes
        )
        self._change(passes, Changes(f"{chosen[0].title} changed.", serials, 43), then)

    def preview_settle(self, request: SettleRequest, context: QObject, then: Then[SettlePlan], failed: Failed) -> None:
        """Plan a change, checked as the real one is."""
        self.asked.append(("preview_settle", request))
        if not self._fails("preview_settle", context, failed):
            try:
                plan = self.settling(request)
            except HearthkeyError as error:
                failed(error)
            else:
                then(plan)

    def settling(self, request: SettleRequest) -> SettlePlan:
        """The plan of a request."""
        seen = self._now()
        assert seen.household is not None
        stands = request_for(seen.household)
        settings = [one.name for one in fields(SettleRequest) if one.name not in {"renew_gateway", "let_go"}]
        wanted = {name: getattr(request, name) for name in settings}
        asked = {name: getattr(stands, name) if value is None else value for name, value in wanted.items()}
        after = describe(**asked, practice=seen.household.practice, below=lambda limit: limit // 2)
        cautions = gateway_cautions(after.gateway_host) if request.gateway_host is not None else ()
        return plan_settling(
            seen.household,
            after,
            seen.passes,
            seen.at,
            renew=request.renew_gateway,
            cautions=cautions,
            former=seen.former_hosts,
            let_go=request.let_go or "",
        )

    def settle(self, plan: SettlePlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Change the settings; a new certificate needs an open household."""
        self.asked.append(("settle", plan.after))
        if self._now().locked and plan.needs_key:
            self.troubles.setdefault("settle", Refused("household-locked"))
        if self._fails("settle", context, failed):
            self.troubles.pop("settle")
            return
        seen = self._now()
        assert seen.gateway is not None
        made = None
        if plan.new_certificate:
            made = replace(seen.gateway, host=plan.after.gateway_host, not_after=seen.at + timedelta(days=824))
        self.last = replace(seen, household=plan.after, gateway=made or seen.gateway)
        self._change(seen.passes, Changes(settled(plan, made), cautions=plan.cautions), then)

    def sign_list(
        self, context: QObject, then: Then[Changes] | None, failed: Failed | None, *, righted: bool = False
    ) -> None:
        """Sign list 43."""
        self.asked.append(("sign_list", "righted") if righted else ("sign_list",))
        if not self._fails("sign_list", context, failed):
            self._change(self._now().passes, Changes("Revocation list 43 was signed.", (), 43), then)

    def templates(self, context: QObject, then: Then[tuple[Template, ...]]) -> None:
        """Those that the test laid ready."""
        if shiboken6.isValid(context):
            then(self.kept)

    def slots(self, of: str, serial: str | None, context: QObject, then: Then[tuple[Listed, ...]]) -> None:
        """Every slot, each with a value of no meaning."""
        self.asked.append(("slots", of, serial))
        if shiboken6.isValid(context):
            then(tuple(Listed(one.name, one.meaning, one.secret, "quince.example") for one in slots_of(of)))

    def preview(
        self, template: Template, serial: str | None, context: QObject, then: Then[Shown], failed: Failed
    ) -> None:
        """The text as it is, under the name of a file."""
        self.asked.append(("preview", template.text, serial))
        if not self._fails("preview", context, failed):
            then(Shown("home.txt", template.text, self.cautions))

    def copies(self, identity: str, context: QObject, then: Then[CopiesSeen]) -> None:
        """Those that the test says have left."""
        seen = self._now()
        found = told(self.left, seen.passes, seen.at)
        if shiboken6.isValid(context):
            mine = tuple(one for one in found if identity in {"", one.of.identity})
            then(CopiesSeen(mine, self.drives, seen.at))

    def look_at_copy(self, number: int, context: QObject, then: Then[Looked], failed: Failed) -> None:
        """Find what the test laid ready."""
        self.asked.append(("look_at_copy", number))
        seen = self._now()
        if not self._fails("look_at_copy", context, failed):
            (one,) = [one for one in told(self.left, seen.passes, seen.at) if one.copy.number == number]
            then(Looked(one, self.lies, one.copy.folder))

    def tidy_copy(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Delete it."""
        self._settle_copy("tidy_copy", number, context, then, failed)

    def copy_is_gone(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Believe it."""
        self._settle_copy("copy_is_gone", number, context, then, failed)

    def copy_is_not_gone(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Take that back."""
        self._settle_copy("copy_is_not_gone", number, context, then, failed)

    def _settle_copy(self, verb: str, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        self.asked.append((verb, number))
        if not self._fails(verb, context, failed):
            tidied = None if verb == "copy_is_not_gone" else self._now().at
            self.left = tuple(replace(one, tidied=tidied) if one.number == number else one for one in self.left)
            self._change(self._now().passes, Changes(f"Copy {number}: {verb}."), then)

    def certificate(self, serial: str, context: QObject, then: Then[Certificate], failed: Failed | None) -> None:
        """Show a certificate that says what a real one does."""
        self.asked.append(("certificate", serial))
        if self._fails("certificate", context, failed):
            return
        one = next(one for one in self._now().passes if one.serial == serial)
        facts = CertificateFacts(
            subject=f"CN={one.identity},O=Quince Cottage (practice)",
            issuer="CN=Quince Cottage (practice) CA",
            serial=serial,
            names=(f"dns:{one.identity}",),
            usages=("1.3.6.1.5.5.7.3.2", "1.3.6.1.5.5.7.3.17"),
            key_type="RSA-3072",
            not_before=one.not_before,
            not_after=one.not_after,
            fingerprint="5a91" * 16,
            is_authority=False,
        )
        text = "\n".join(["-----BEGIN CERTIFICATE-----", *["MIIB" * 16] * 12, "-----END CERTIFICATE-----"])
        then(Certificate(facts, text))
