"""What the window asks for when a household is brought back, and when its key is put on paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core import deputy
from hearthkey.core.deputy import Part
from hearthkey.core.errors import Refused
from hearthkey.core.household import KEYRING
from hearthkey.core.languages import Language
from hearthkey.core.paper import Gathered
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.formats import sealed_tar
from hearthkey.formats.paper_sheet import PaperFacts
from hearthkey.services import deputies, reading_paper, restoring_inside
from hearthkey.services.restoring_inside import Inside
from hearthkey.ui.sealed_errands import SealedErrands
from hearthkey.ui.tasks import Failed, Then

PROBE = "is-anybody-there"
"""A name that no secret has: asking for it shows whether the keyring answers."""


@dataclass(frozen=True)
class Source:
    """Where a household is to come back from.

    Args:
        copy: the file of a sealed copy, or None.
        gathered: what was read of a paper so far.
    """

    copy: Path | None = None
    gathered: Gathered = field(default_factory=Gathered)

    @property
    def complete(self) -> bool:
        """Whether a passphrase is all that is wanted now."""
        return self.copy is not None or self.gathered.whole


@dataclass(frozen=True)
class Opener:
    """What a source is opened with.

    Args:
        passphrase: the household's.
        own: the copies' own, where they have one.
    """

    passphrase: Secret[str]
    own: Secret[str] | None = None


class RestoreErrands(SealedErrands):
    """The part of the errands about coming back; see `Lane` for the shape of each."""

    @property
    def place(self) -> str:
        """Where a household that is brought back would keep its secrets."""
        return self._place

    def ask_keyring(self, context: QObject, then: Then[None], failed: Failed) -> None:
        """Find out whether the keyring answers, where one is to be used."""

        def work() -> None:
            if self._place == KEYRING:
                self._here().vault.get(PROBE)

        self._ask(work, context, then, failed)

    def read_files(
        self, files: Sequence[Path], source: Source, context: QObject, then: Then[Source], failed: Failed
    ) -> None:
        """Take more files in: a sealed copy instead of what was there, or more of a paper."""

        def work() -> Source:
            house, gathered = self._here(), source.gathered
            for file in files:
                data = house.files.read(file, sealed_tar.LARGEST)
                if restoring_inside.is_copy(data):
                    return Source(copy=file)
                gathered = reading_paper.gathered(data, file.name, gathered, house.pictures.read_codes)
            return Source(gathered=gathered)

        self._ask(work, context, then, failed)

    def look_inside(self, source: Source, opener: Opener, context: QObject, then: Then[Inside], failed: Failed) -> None:
        """Open it, say what is inside, and close it again; nothing is written."""

        def work() -> Inside:
            house = self._here()
            if source.copy is None:
                content = source.gathered.content()
                plan = house.restoring_paper.preview(content, opener.passphrase, progress=self._progress)
                return restoring_inside.of_paper(plan)
            data = house.files.read(source.copy, sealed_tar.LARGEST)
            with house.restoring.preview(data, opener.passphrase, opener.own, progress=self._progress) as found:
                return restoring_inside.of_copy(found, house.clock.now())

        self._ask(work, context, then, failed)

    def restore(
        self, source: Source, opener: Opener, place: str, context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Bring the household back, to keep its secrets in a place."""

        def work() -> Changes:
            if place != self._place:
                self._place = place
                self._opened()
            house = self._here()
            if source.copy is None:
                content = source.gathered.content()
                plan = house.restoring_paper.preview(content, opener.passphrase, progress=self._progress)
                changes = house.restoring_paper.apply(plan, progress=self._progress)
            else:
                data = house.files.read(source.copy, sealed_tar.LARGEST)
                with house.restoring.preview(data, opener.passphrase, opener.own, progress=self._progress) as found:
                    changes = house.restoring.apply(found)
            house.listing.publish_missing()
            return changes

        def over(changes: Changes) -> None:
            self.open_copies(opener.passphrase)
            then(changes)

        self._change(work, context, over, failed)

    # By the deputy's parts

    def read_part(self, text: Secret[str], context: QObject, then: Then[Part], failed: Failed) -> None:
        """Read a part from its words, or from the text of its code."""
        self._ask(lambda: deputy.read(text.reveal(), self._here().deputies.words), context, then, failed)

    def read_part_file(self, file: Path, context: QObject, then: Then[Part], failed: Failed) -> None:
        """Read a part from a picture of its code, or from a text with its words."""

        def work() -> Part:
            house = self._here()
            return house.deputies.part_in(house.files.read(file, deputies.LARGEST), house.pictures.read_codes)

        self._ask(work, context, then, failed)

    def join_parts(
        self, source: Source, parts: tuple[Part, ...], context: QObject, then: Then[Opener], failed: Failed
    ) -> None:
        """Learn from parts what opens a sealed copy; nothing is written."""

        def work() -> Opener:
            if source.copy is None:
                raise Refused("deputy-copy-needed")
            house = self._here()
            opens = house.deputies.opening(house.files.read(source.copy, sealed_tar.LARGEST), parts)
            return Opener(opens.household, opens.own)

        self._ask(work, context, then, failed)

    # The key on paper

    def key_paper(self, language: Language, context: QObject, then: Then[PaperFacts], failed: Failed) -> None:
        """What stands on the household's paper."""
        self._ask(lambda: self._here().papering.facts(language), context, then, failed)

    def key_paper_printed(self, place: str, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Write into the diary that the paper was made; with an empty place, at a printer."""
        self._change(lambda: self._here().papering.printed(place), context, then, failed)
