"""The room of a household where one that was made by hand is looked over and taken over."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.adopting import Adopting
    from hearthkey.services.looking_over import LookingOver
    from hearthkey.services.naming import Naming


class AdoptRoom(Basics):
    """The part of a house for what was made elsewhere."""

    @cached_property
    def looking_over(self) -> LookingOver:
        """The verb "look-over"."""
        from hearthkey.adapters.found_folder import DiskFolder
        from hearthkey.services.looking_over import LookingOver

        return LookingOver(DiskFolder(), self.clock)

    @cached_property
    def adopting(self) -> Adopting:
        """The verb "adopt"."""
        from hearthkey.services.adopting import Adopting

        parts = (self.register, self.vault, self.keyholder, self.clock, self.dice, self.words, self.looking_over)
        return Adopting(*parts, self.locksmith)

    @cached_property
    def naming(self) -> Naming:
        """The verb "name-pass"."""
        from hearthkey.services.naming import Naming

        return Naming(self.register, self.clock)
