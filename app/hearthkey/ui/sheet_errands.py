"""What the window asks of sheets, cards and messages."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.hand_over_sheet import CardFacts, Messages, SheetFacts
from hearthkey.core.languages import Language
from hearthkey.core.passes import Pass
from hearthkey.services.sheeting import SheetForms
from hearthkey.ui.languages import spoken_here
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.ticket_errands import TicketErrands


@dataclass(frozen=True)
class Leaf:
    """A sheet that may be shown to anybody.

    Args:
        chosen: whose.
        facts: what it says.
        forms: what it can go with, and what it goes with where nothing was chosen.
    """

    chosen: Pass
    facts: SheetFacts
    forms: SheetForms


class SheetErrands(TicketErrands):
    """The sheets' part of the errands; see `Lane` for the shape of each."""

    def sheet(
        self,
        serial: str,
        language: Language | None,
        context: QObject,
        then: Then[Leaf],
        failed: Failed,
        *,
        form: str | None = None,
    ) -> None:
        """The sheet of a pass.

        Args:
            language: None for the one that was last chosen for this person; where none was, the window's.
            form: what it goes with; None for the one that left last.
        """

        def work() -> Leaf:
            house = self._here()
            chosen = next(one for one in house.register.passes() if one.serial == serial)
            if language is None:
                tongue = house.sheeting.language_of(chosen.person, spoken_here())
            else:
                tongue = language
                if not house.register.read_only:
                    house.sheeting.choose_language(chosen.person, tongue)
            return Leaf(chosen, house.sheeting.sheet(chosen, form, tongue), house.sheeting.forms(chosen))

        (self._ask if language is None else self._remembered)(work, context, then, failed)

    def card(self, serial: str, language: Language, context: QObject, then: Then[CardFacts], failed: Failed) -> None:
        """The passphrase card of a waiting bundle."""
        self._ask(lambda: self._here().sheeting.card(self._kept(serial), language), context, then, failed)

    def messages(self, serial: str, language: Language, context: QObject, then: Then[Messages], failed: Failed) -> None:
        """The two messages."""
        self._ask(lambda: self._here().sheeting.messages(self._kept(serial), language), context, then, failed)

    def choose_call(self, text: str, context: QObject, then: Then[None], failed: Failed) -> None:
        """Whom to call, from now on."""
        self._remembered(lambda: self._here().sheeting.choose_call(text), context, then, failed)

    def save_page(
        self, folder: Path, name: str, data: bytes, context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write a page that was drawn."""
        self._ask(lambda: self._here().files.write(folder, name, data), context, then, failed)

    def _kept(self, serial: str) -> Pass:
        return next(one for one in self._here().register.passes() if one.serial == serial)
