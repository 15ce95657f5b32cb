"""The rooms of a household that look towards the gateway."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from copy import copy
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.core.secret import Secret
    from hearthkey.core.tunnel import Terms
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.delivering import Delivering
    from hearthkey.services.extra_secrets import ExtraSecrets
    from hearthkey.services.gateway_ports import GatewayDoor, Notices
    from hearthkey.services.listing import Listing
    from hearthkey.services.losing import Losing
    from hearthkey.services.packing import Packing
    from hearthkey.services.ports import Vault
    from hearthkey.services.sparing import Sparing
    from hearthkey.services.stopping import Stopping
    from hearthkey.services.targeting import Targeting
    from hearthkey.services.templating import Templating
    from hearthkey.services.watching import Watching


_SHARED = ("data", "clock", "dice", "words", "files", "pictures", "keyholder", "workshop", "gateway_door")
"""What needs no register, and may be used from two threads."""


def _print_sheet(terms: Terms) -> bytes:
    """A settings sheet as PDF; what that takes is loaded for it alone."""
    from hearthkey.adapters.places import faces
    from hearthkey.formats.gateway_sheet import blocks
    from hearthkey.formats.sheet_pdf import Fonts, pages

    return pages(blocks(terms), Fonts(*faces()))


class Rooms(Basics, Protocol):
    """The rooms that those towards the gateway stand on."""

    _place: str

    @property
    def data(self) -> Path:
        """The data folder."""

    @property
    def listing(self) -> Listing:
        """The verb "lists"."""

    @property
    def stopping(self) -> Stopping:
        """The verbs "stop", "let-in" and "revoke"."""

    @property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""

    def vault_at(self, place: str) -> Vault:
        """The vault of one place."""


class GatewayRooms(Rooms):
    """The gateway's half of a house."""

    @cached_property
    def sparing(self) -> Sparing:
        """Spare stop lists, and the verb "stop" without a passphrase."""
        from hearthkey.services.sparing import Sparing

        return Sparing(self.register, self.keyholder, self.clock, self.listing)

    @cached_property
    def losing(self) -> Losing:
        """The verb "stop" by whatever list there is."""
        from hearthkey.services.losing import Losing

        return Losing(self.keyholder, self.stopping, self.sparing)

    @cached_property
    def packing(self) -> Packing:
        """The verb "pack"."""
        from hearthkey.services.packing import Packing

        return Packing(
            self.register,
            self.vault,
            self.clock,
            self.files,
            templating=self.templating,
            secrets=self.extra_secrets,
            print_sheet=_print_sheet,
            draw_words=self._draw_words,
        )

    def _draw_words(self) -> Secret[str]:
        from hearthkey.core import passphrase

        return passphrase.make(self.words, self.dice.below)

    @cached_property
    def watching(self) -> Watching:
        """How the gateway stands."""
        from hearthkey.services.watching import Watching

        return Watching(self.register, self.packing)

    @cached_property
    def gateway_door(self) -> GatewayDoor:
        """The ways to the gateway's folder."""
        from hearthkey.adapters.gateway_ways import GatewayWays

        return GatewayWays()

    @cached_property
    def extra_secrets(self) -> ExtraSecrets:
        """Secrets beside the certificates."""
        from hearthkey.services.extra_secrets import ExtraSecrets

        return ExtraSecrets(self.register, self.vault, self.clock, self.dice)

    @cached_property
    def templating(self) -> Templating:
        """The householder's own templates."""
        from hearthkey.services.filling_slots import FillingSlots
        from hearthkey.services.templating import Templating

        filling = FillingSlots(self.register, self.vault, self.clock, self.bundling, self.extra_secrets)
        return Templating(self.register, self.clock, filling)

    @cached_property
    def notices(self) -> Notices:
        """Says something on the desktop."""
        from hearthkey.adapters.notices import DesktopNotices

        return DesktopNotices()

    @cached_property
    def targeting(self) -> Targeting:
        """The verb "gateway"."""
        from hearthkey.services.targeting import Targeting

        return Targeting(self.register, self.clock, self.gateway_door, self.packing)

    @contextmanager
    def visit(self) -> Iterator[Delivering]:
        """See `services.house.House.visit`: the same house, but for what stands on the register's connection."""
        from hearthkey.adapters.register import FILE_NAME, SqliteRegister

        shared = {name: getattr(self, name) for name in _SHARED}
        guest = copy(self)
        for name in [name for name in guest.__dict__ if not name.startswith("_")]:
            del guest.__dict__[name]
        register = SqliteRegister(self.data / FILE_NAME)
        guest.__dict__.update(shared, register=register)
        try:
            yield guest.delivering
        finally:
            register.close()

    @cached_property
    def delivering(self) -> Delivering:
        """The verb "deliver"."""
        from hearthkey.services.delivering import Delivering

        return Delivering(self.register, self.keyholder, self.clock, self.listing, self.packing, self.gateway_door)
