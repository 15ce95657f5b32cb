"""The room of a household where copies that left are kept track of."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.tidying import Tidying


class CopyRoom(Basics):
    """The copies' part of a house."""

    @cached_property
    def tidying(self) -> Tidying:
        """The verb "copies"."""
        from hearthkey.services.tidying import Tidying

        return Tidying(self.register, self.files, self.clock)
