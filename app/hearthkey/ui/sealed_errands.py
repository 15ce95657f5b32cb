"""What the window asks of sealed copies: one after every change, without being asked."""

from __future__ import annotations

from hearthkey.core.secret import Secret
from hearthkey.ui.lane import Lane


class SealedErrands(Lane):
    """The sealed copies' part of the errands; see `Lane` for the shape of each."""

    def open_copies(self, passphrase: Secret[str]) -> None:
        """Draw what copies are closed with, right after a passphrase opened the CA key; only ever once."""
        self._tasks.lane(
            lambda: self._here().sealing.make_ready(passphrase), self, lambda _none: self.keep_copy(), self.trouble.emit
        )

    def keep_copy(self) -> None:
        """Make a copy in the app's own folder where something was done since the last one."""

        def work() -> None:
            house = self._here()
            if not house.register.read_only and house.register.household() is not None:
                house.sealing.keep_up()

        self._tasks.lane(work, self, lambda _none: None, self.trouble.emit)
