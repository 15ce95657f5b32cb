"""What the window asks about a household that was made by hand."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.services.adopting import AdoptRequest, Prepared
from hearthkey.services.looking_over import Overview
from hearthkey.ui.proof_errands import ProofErrands
from hearthkey.ui.tasks import Failed, Then


class AdoptErrands(ProofErrands):
    """The part of the errands for what was made elsewhere; see `Lane` for the shape of each."""

    def look_over(
        self,
        folder: Path,
        passphrases: tuple[Secret[str], ...],
        host: str | None,
        context: QObject,
        then: Then[Overview],
        failed: Failed,
    ) -> None:
        """Look at a folder; nothing in it is changed."""

        def work() -> Overview:
            return self._here().looking_over.look(folder, passphrases=passphrases, host=host, progress=self._progress)

        self._ask(work, context, then, failed)

    def preview_adopt(
        self,
        request: AdoptRequest,
        passphrases: tuple[Secret[str], ...],
        context: QObject,
        then: Then[Prepared],
        failed: Failed,
    ) -> None:
        """Say what would go on, and what would be made anew."""
        self._ask(lambda: self._here().adopting.preview(request, passphrases), context, then, failed)

    def adopt(
        self,
        prepared: Prepared,
        passphrase: Secret[str],
        place: str,
        context: QObject,
        then: Then[Changes],
        failed: Failed,
    ) -> None:
        """Take it over into a household that keeps its secrets in a place."""

        def work() -> Changes:
            if place != self._place:
                self._place = place
                self._opened()
            changes = self._here().adopting.apply(prepared, passphrase, progress=self._progress)
            self._here().listing.publish_missing()
            return changes

        def over(changes: Changes) -> None:
            self.open_copies(passphrase)
            then(changes)

        self._change(work, context, over, failed)

    def name_pass(
        self, serial: str, person: str, device: str, context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Say whose a pass is that was made elsewhere."""
        self._change(lambda: self._here().naming.name(serial, person, device), context, then, failed)
