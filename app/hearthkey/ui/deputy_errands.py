"""What the window asks of the deputy's parts: drawn, kept, tried; and of the stop set."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core import deputy
from hearthkey.core.languages import Language
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.formats.deputy_sheet import LetterFacts, PartFacts
from hearthkey.services.deputies import DrawnSet
from hearthkey.ui.choice_errands import ChoiceErrands
from hearthkey.ui.tasks import Failed, Then


@dataclass(frozen=True)
class Papers:
    """A set that does not count yet, as it will be printed.

    Args:
        drawn: the set.
        letter: what the letter says.
        parts: what each part's sheet says, in their order.
    """

    drawn: DrawnSet
    letter: LetterFacts
    parts: tuple[PartFacts, ...]


class DeputyErrands(ChoiceErrands):
    """The deputy's part of the errands; see `Lane` for the shape of each."""

    def draw_parts(
        self, passphrase: Secret[str], own: Secret[str] | None, context: QObject, then: Then[Papers], failed: Failed
    ) -> None:
        """Draw a set of parts; the passphrase is tried on the CA key first."""

        def work() -> Papers:
            house = self._here()
            self._progress("unlocking")
            house.keyholder.unlock(house.register, house.vault, passphrase)
            house.sealing.make_ready(passphrase)
            drawn, papers, tongue = house.deputies.draw(passphrase, own), house.deputy_papers, Language.ENGLISH
            words = house.deputies.words
            parts = (papers.part(drawn, one, deputy.words_of(one, words), tongue) for one in drawn.parts)
            return Papers(drawn, papers.letter(drawn.about, tongue), tuple(parts))

        self._ask(work, context, then, failed)

    def keep_parts(self, papers: Papers, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Let a set count from now on."""
        self._change(lambda: self._here().deputies.keep(papers.drawn), context, then, failed)

    def save_part(
        self, folder: Path, name: str, data: bytes, context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write a sheet that was drawn, never beside a sealed copy."""

        def work() -> Path:
            if folder.is_dir():
                deputy.check_apart(one.name for one in folder.iterdir())
            return self._here().files.write(folder, name, data)

        self._ask(work, context, then, failed)

    def try_part(self, text: Secret[str], context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Try one part, from its words or from the text of its code."""

        def work() -> Changes:
            house = self._here()
            return house.deputies.try_part(deputy.read(text.reveal(), house.deputies.words))

        self._change(work, context, then, failed)

    def write_stop_set(
        self, folder: Path, language: Language, context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Write the spare lists for somebody who may stop devices."""
        self._change(lambda: self._here().deputy_papers.stop_set(folder, language), context, then, failed)
