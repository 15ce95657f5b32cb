"""The parts of a household that put its key on paper, and bring it back from there."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.formats.laid_pdf import DrawPages
    from hearthkey.services.papering import Papering
    from hearthkey.services.restoring_paper import PaperRestoring


class PaperRoom(Basics):
    """The paper's part of a house."""

    @cached_property
    def papering(self) -> Papering:
        """The verb "paper"."""
        from hearthkey.services.papering import Papering

        return Papering(self.register, self.vault, self.clock, self.locksmith)

    @cached_property
    def restoring_paper(self) -> PaperRestoring:
        """The verb "restore", from paper."""
        from hearthkey.services.restoring_paper import PaperRestoring

        parts = (self.register, self.vault, self.keyholder, self.clock, self.dice, self.words)
        return PaperRestoring(*parts, self.locksmith)

    @cached_property
    def draw_pages(self) -> DrawPages:
        """Draws several pages as PDF, without a window."""
        from hearthkey.adapters.places import faces
        from hearthkey.formats.laid_pdf import drawn_pages
        from hearthkey.formats.sheet_pdf import Fonts

        return drawn_pages(Fonts(*faces()))
