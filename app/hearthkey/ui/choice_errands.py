"""What the window asks and keeps of the household's choices for configuration profiles."""

from __future__ import annotations

from PySide6.QtCore import QObject

from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.services import choosing_connect
from hearthkey.ui.succession_errands import SuccessionErrands
from hearthkey.ui.tasks import Then


class ChoiceErrands(SuccessionErrands):
    """The choices' part of the errands; see `Lane` for the shape of each."""

    def connect_choices(self, context: QObject, then: Then[ConnectChoices]) -> None:
        """What was chosen last, for any device."""

        def work() -> ConnectChoices:
            return self._here().register.connect_choices()

        self._ask(work, context, then, None)

    def keep_connect_choices(self, chosen: ConnectChoices) -> None:
        """Keep a choice, which can be taken back; whatever is written after this follows it."""

        def work() -> None:
            house = self._here()
            choosing_connect.keep(house.register, house.clock, chosen)

        self._remembered(work, self, lambda _none: None, None)
