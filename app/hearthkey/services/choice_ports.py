"""What the choices for configuration profiles need of the register."""

from __future__ import annotations

from typing import Protocol

from hearthkey.core.connect_choices import ConnectChoices


class ChoiceRegister(Protocol):
    """The part of the register that is about those choices."""

    def connect_choices(self) -> ConnectChoices:
        """What was last chosen."""


class ChoiceChange(Protocol):
    """The part of a transaction that is about them."""

    def keep_connect_choices(self, chosen: ConnectChoices) -> None:
        """Keep what was chosen."""
