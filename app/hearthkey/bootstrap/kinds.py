"""The room of a household where device kinds are kept. They are read when somebody first asks what a device is."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.adapters.kinds_folder import KindsFolder
    from hearthkey.core.kinds import Kinds
    from hearthkey.services.kind_keeping import KeepingKinds


class KindRoom(Basics):
    """The device kinds' part of a house."""

    @cached_property
    def _shelf(self) -> KindsFolder:
        from hearthkey.adapters.kinds_folder import FOLDER, KindsFolder
        from hearthkey.adapters.places import resources

        return KindsFolder(resources() / "device-kinds", self.data / FOLDER, self.files)

    @cached_property
    def kinds(self) -> Kinds:
        """All device kinds, as they were when they were first asked for."""
        return self._shelf.load()

    @cached_property
    def keeping_kinds(self) -> KeepingKinds:
        """The verb "kinds"."""
        from hearthkey.services.kind_keeping import KeepingKinds

        return KeepingKinds(self._shelf, self.files)
