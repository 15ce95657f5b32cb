"""The room of a household where sheets are set."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.core.kinds import Kinds
    from hearthkey.formats.laid_pdf import Draw
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.sheeting import Sheeting


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def kinds(self) -> Kinds:
        """All device kinds."""

    @property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""


class SheetRoom(Rooms):
    """The sheets' part of a house."""

    @cached_property
    def sheeting(self) -> Sheeting:
        """The verb "sheet"."""
        from hearthkey.services.sheeting import Sheeting

        return Sheeting(self.register, self.bundling, self.clock, self.kinds, self.words)

    @cached_property
    def draw_page(self) -> Draw:
        """Draws one page as PDF, without a window."""
        from hearthkey.adapters.places import faces
        from hearthkey.formats.laid_pdf import drawn
        from hearthkey.formats.sheet_pdf import Fonts

        return drawn(Fonts(*faces()))
