"""What delivery needs from outside: a gateway's folder, however it is reached."""

from __future__ import annotations

import threading
from collections.abc import Iterable, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from hearthkey.core.in_force import GatewayNote
from hearthkey.core.pack import PackFile
from hearthkey.core.pack_options import ExtraSecret, PackOptions
from hearthkey.core.revocation import SignedList
from hearthkey.core.spares import SignedSpare, SpareList
from hearthkey.core.target import HostKey, Target
from hearthkey.core.templates import Template
from hearthkey.services.ports import Change, Register


@dataclass(frozen=True)
class Ran:
    """What a command at the gateway came to.

    Args:
        status: its exit status.
        said: the first 300 characters of what it printed, without control characters.
    """

    status: int
    said: str


class Gate(Protocol):
    """A gateway's folder while connected; one connection however many steps.

    Inside the folder, `sets/<id>/` holds whole sets and the link `in-force` points to one of them.
    Every method raises Unavailable: gateway-cut, gateway-silent, gateway-full, gateway-read-only,
    gateway-folder-missing, gateway-odd; and core.errors' cancelled error where the cancel event is set.
    """

    def room(self, name: str) -> Gate:
        """A folder within this one, readable by its owner alone, with sets of its own; made where it is missing."""

    def in_force(self) -> str | None:
        """The id of the set that `in-force` points to, None before the first delivery.

        A switch that an earlier run left half done is put right first.
        """

    def read(self, set_id: str, names: Sequence[str], limit: int) -> dict[str, bytes]:
        """Read files of a set; a missing one is left out, one over `limit` octets is cut there."""

    def put_set(self, set_id: str, fresh: Sequence[PackFile], kept: Sequence[str], kept_from: str | None) -> None:
        """Lay down a whole set without touching the one in force.

        Args:
            set_id: what is there under that id already (a run that was cut off) is replaced.
            fresh: files to write, each under a temporary name first, flushed to disk where the way allows it.
            kept: names of files that are the same in the set `kept_from`: linked or copied there.
            kept_from: id of a set that is there.
        """

    def switch(self, set_id: str) -> None:
        """Point `in-force` to a set, all at once."""

    def keep_only(self, set_ids: Iterable[str]) -> None:
        """Remove every other set; what cannot be removed stays."""

    def run(self, command: str) -> Ran:
        """Run a command of the householder's own at the gateway.

        Raises:
            Refused: no-command-here, for a folder.
        """

    def now(self) -> datetime | None:
        """The gateway's clock, UTC, whole seconds; None where it does not tell."""


class GatewayDoor(Protocol):
    """The ways to a gateway's folder."""

    def host_key(self, target: Target) -> HostKey | None:
        """What the server at the other end shows to say who it is; None for a folder.

        Nothing is sent to it but the beginning of a key exchange.

        Raises:
            Unavailable: gateway-unreachable, gateway-name-unknown, gateway-silent, ssh-missing.
        """

    def open(self, target: Target, cancel: threading.Event | None = None) -> AbstractContextManager[Gate]:
        """Connect.

        Raises:
            Refused: host-key-unknown, host-key-changed.
            Unavailable: gateway-unreachable, gateway-name-unknown, gateway-silent, gateway-refused-us,
                gateway-folder-missing, ssh-missing, gateway-odd.
        """


class Notices(Protocol):
    """Says something on the desktop, outside of any window."""

    def say(self, title: str, text: str) -> None:
        """Show a notice that stays until somebody has seen it.

        Raises:
            Unavailable: notices-absent.
        """


class GatewayChange(Change, Protocol):
    """A transaction that may change what is known of the gateway as well."""

    def set_target(self, target: Target | None) -> None:
        """Write where the gateway is; what was seen at another one is forgotten."""

    def note_gateway(self, note: GatewayNote) -> None:
        """Write what was seen at the gateway."""

    def replace_spares(self, spares: Sequence[SignedSpare]) -> None:
        """Keep these spare lists instead of all others, and raise the high-water mark above their numbers."""

    def use_spare(self, number: int, now: datetime) -> None:
        """Note that a spare list has become the newest list."""

    def keep_template(self, template: Template) -> None:
        """Keep a template, instead of the one of that name."""

    def drop_template(self, name: str) -> None:
        """Forget a template."""

    def set_pack_options(self, options: PackOptions) -> None:
        """Keep the choices for the pack."""

    def keep_gateway_archive(self, serial: str, der: bytes) -> None:
        """Keep the gateway's PKCS#12, so that a pack is the same whenever it is made."""

    def keep_extra_secret(self, owner: str, now: datetime) -> None:
        """Note that the vault has an extra secret for a device's identity, or for the household (empty)."""

    def extra_secret_known(self, owner: str, now: datetime) -> None:
        """Note that somebody who was stopped knows it."""

    def adopt(self, serial: str, not_after: datetime) -> None:
        """Make room for a serial that was found on the gateway's list and not here."""

    def tick(self, serial: str, step: str, now: datetime | None) -> None:
        """Note, or with None unnote, that a step after a loss is done."""

    def raise_mark(self, name: str, value: int) -> None:
        """Raise a high-water mark; a lower value changes nothing."""


class GatewayRegister(Register, Protocol):
    """The household's file, the gateway's part with it."""

    def target(self) -> Target | None:
        """Where the gateway is."""

    def gateway_note(self) -> GatewayNote:
        """What was last seen there."""

    def seen_ends(self) -> tuple[datetime | None, datetime | None]:
        """When the list and the certificate end that the gateway was last seen to hold; None where none was."""

    def spare_lists(self) -> list[SpareList]:
        """All spare lists, by number."""

    def used_spares(self) -> list[SpareList]:
        """Those used since the last ordinary list."""

    def list_numbered(self, number: int) -> SignedList | None:
        """The list of that number, or None."""

    def signed_spare(self, number: int) -> SignedList | None:
        """A spare list with its bytes."""

    def templates(self) -> list[Template]:
        """All templates, by name."""

    def pack_options(self) -> PackOptions:
        """The choices for the pack."""

    def gateway_archive(self, serial: str) -> bytes | None:
        """The gateway's PKCS#12, DER, or None before the first pack."""

    def extra_secrets(self) -> dict[str, ExtraSecret]:
        """What is known of the secrets beside the certificates, by owner."""

    def ticks(self, serial: str) -> frozenset[str]:
        """Steps done after the loss of a device."""

    def change(self) -> AbstractContextManager[GatewayChange]:
        """Begin a transaction."""
