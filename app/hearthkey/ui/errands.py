"""What the window asks of the household, all of it on the one lane, all answers on the window's thread."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.bundle import Form
from hearthkey.core.certificates import CertificateFacts
from hearthkey.core.copies import CopyWay
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, EnrolPlan, FoundPlan, LetInPlan, RevokePlan, StopPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.settling import SettlePlan
from hearthkey.formats import pem
from hearthkey.pki.read import certificate_facts
from hearthkey.services import looking, passphrases
from hearthkey.services.bundling import Written
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.exporting import Exported
from hearthkey.services.founding import FoundRequest
from hearthkey.services.settling import SettleRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.adopt_errands import AdoptErrands
from hearthkey.ui.tasks import Failed, Then


@dataclass(frozen=True)
class Certificate:
    """A certificate to be shown in full."""

    facts: CertificateFacts
    text: str


class Errands(AdoptErrands):
    """What the window asks of the household.

    Every method returns at once; see `Lane` for `context`, `then` and `failed`.
    """

    # Verbs

    def unlock(self, passphrase: Secret[str], context: QObject, then: Then[None], failed: Failed) -> None:
        """Open the CA key."""

        def work() -> Snapshot:
            self._progress("unlocking")
            house = self._here()
            house.keyholder.unlock(house.register, house.vault, passphrase)
            return self._look(ask_keyring=False)

        def over(snapshot: Snapshot) -> None:
            self._saw(snapshot)
            self._soon.start()
            then(None)
            self.open_copies(passphrase)

        self._ask(work, context, over, failed)

    def offer_passphrase(self, context: QObject, then: Then[Secret[str]]) -> None:
        """Draw seven words."""

        def work() -> Secret[str]:
            return self._here().founding.offer_passphrase()

        self._ask(work, context, then, None)

    def judge_passphrase(self, text: str, context: QObject, then: Then[Secret[str]], failed: Failed) -> None:
        """Say whether a typed passphrase is strong enough."""
        self._tasks.pool(lambda: passphrases.chosen(text), context, then, failed)

    def preview_found(self, request: FoundRequest, context: QObject, then: Then[FoundPlan], failed: Failed) -> None:
        """Check what was typed about a household."""
        self._ask(lambda: self._here().founding.preview(request), context, then, failed)

    def found(
        self,
        plan: FoundPlan,
        passphrase: Secret[str],
        place: str,
        context: QObject,
        then: Then[Changes] | None = None,
        failed: Failed | None = None,
    ) -> None:
        """Found a household that keeps its secrets in a place."""

        def work() -> Changes:
            if place != self._place:
                self._place = place
                self._opened()
            changes = self._here().founding.apply(plan, passphrase, progress=self._progress)
            self._here().listing.publish_missing()
            return changes

        def over(changes: Changes) -> None:
            self.open_copies(passphrase)
            if then is not None:
                then(changes)

        self._change(work, context, over, failed)

    def preview_settle(self, request: SettleRequest, context: QObject, then: Then[SettlePlan], failed: Failed) -> None:
        """Check what was typed about other settings, and say whom they touch."""
        self._ask(lambda: self._here().settling.preview(request), context, then, failed)

    def settle(self, plan: SettlePlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Change the settings."""
        self._change(lambda: self._here().settling.apply(plan, progress=self._progress), context, then, failed)

    def preview_enrol(self, request: EnrolRequest, context: QObject, then: Then[EnrolPlan], failed: Failed) -> None:
        """Check what was typed about a device."""
        self._ask(lambda: self._here().enrolling.preview(request), context, then, failed)

    def enrol(
        self, request: EnrolRequest, context: QObject, then: Then[Changes] | None = None, failed: Failed | None = None
    ) -> None:
        """Make a pass; it waits in the tray."""

        def work() -> Changes:
            house = self._here()
            return house.enrolling.apply(house.enrolling.preview(request), progress=self._progress)

        self._change(work, context, then, failed)

    def preview_stop(self, identity: str, context: QObject, then: Then[StopPlan], failed: Failed) -> None:
        """What stopping a device would do."""
        self._ask(lambda: self._here().stopping.preview_stop(self._device(identity)), context, then, failed)

    def stop(self, plan: StopPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Stop it."""
        self._change(lambda: self._here().stopping.stop(plan), context, then, failed)

    def preview_let_in(self, identity: str, context: QObject, then: Then[LetInPlan], failed: Failed) -> None:
        """What letting a device back in would do."""
        self._ask(lambda: self._here().stopping.preview_let_in(self._device(identity)), context, then, failed)

    def let_in(self, plan: LetInPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Let it back in."""
        self._change(lambda: self._here().stopping.let_in(plan), context, then, failed)

    def preview_revoke(
        self, identity: str, reason: Reason, context: QObject, then: Then[RevokePlan], failed: Failed
    ) -> None:
        """What revoking a device would do."""
        self._ask(lambda: self._here().stopping.preview_revoke(self._device(identity), reason), context, then, failed)

    def revoke(self, plan: RevokePlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Revoke it for good."""
        self._change(lambda: self._here().stopping.revoke(plan), context, then, failed)

    def sign_list(
        self, context: QObject, then: Then[Changes] | None, failed: Failed | None, *, righted: bool = False
    ) -> None:
        """Sign the same list under a new date."""

        def work() -> Changes:
            listing = self._here().listing
            return listing.set_right() if righted else listing.sign_anew()

        self._change(work, context, then, failed)

    # Bundles

    def passphrase(self, serial: str, context: QObject, then: Then[Secret[str]], failed: Failed) -> None:
        """The passphrase of a waiting bundle."""
        self._ask(lambda: self._here().bundling.passphrase(self._waiting(serial)), context, then, failed)

    def export(
        self,
        serial: str,
        form: Form,
        folder: Path,
        context: QObject,
        then: Then[Exported],
        failed: Failed | None,
        *,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> None:
        """Rehearse a form and write it to a folder; way and place as in `services.exporting`."""

        def work() -> Exported:
            chosen = self._waiting(serial)
            return self._here().exporting.export(chosen, form, folder, progress=self._progress, way=way, place=place)

        self._ask(work, context, then, failed)

    def codes(self, serial: str, context: QObject, then: Then[list[Written]], failed: Failed) -> None:
        """The codes of a bundle as PNG pictures, rehearsed and written down as shown."""

        def work() -> list[Written]:
            return self._here().exporting.codes_to_show(self._waiting(serial), progress=self._progress)

        self._ask(work, context, then, failed)

    def hand_over(self, serial: str, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Erase a key here."""

        def work() -> Changes:
            house = self._here()
            return house.handing_over.apply(house.handing_over.preview([self._waiting(serial)]))

        self._change(work, context, then, failed)

    def certificate(self, serial: str, context: QObject, then: Then[Certificate], failed: Failed | None) -> None:
        """A device certificate in full."""

        def work() -> Certificate:
            der = self._here().register.certificate(serial)
            return Certificate(certificate_facts(der), pem.encode("CERTIFICATE", der))

        self._ask(work, context, then, failed)

    def _waiting(self, serial: str) -> Pass:
        return looking.waiting(looking.find(self._here().register.passes(), serial))
