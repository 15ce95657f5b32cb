"""Brings sealed copies to the gateway, into a folder of their own, and fetches them from there."""

from __future__ import annotations

import threading
from collections.abc import Sequence
from dataclasses import dataclass
from hashlib import sha256

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.pack import PackFile
from hearthkey.core.plans import Changes
from hearthkey.core.sealed import AT_GATEWAY, KEPT, CopyNote
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import Target
from hearthkey.formats import sealed_tar
from hearthkey.services.gateway_ports import GatewayDoor
from hearthkey.services.ports import Progress, silent
from hearthkey.services.sealed_ports import SealedRegister
from hearthkey.services.sealing import Sealing

ROOM = "sealed-copies"
"""The folder beside the sets; each copy lies in it under `sets`, in a folder called by its time."""


@dataclass(frozen=True)
class Load:
    """A copy on its way.

    Args:
        target: whose gateway.
        note: what is remembered of it, once it is there.
        data: the copy.
        keep: names of the folders of the copies that stay there besides.
    """

    target: Target
    note: CopyNote
    data: bytes
    keep: tuple[str, ...]


class CarryingCopies:
    """The verb "seal" with the gateway as the place.

    The three steps of `carry` are for a window, whose register must not wait for the network: the first and the last
    need the register, the second one needs nothing but the gateway.
    """

    def __init__(self, register: SealedRegister, sealing: Sealing, door: GatewayDoor) -> None:
        self._register = register
        self._sealing = sealing
        self._door = door

    def behind(self) -> bool:
        """Whether copies go to this gateway, because one was brought once, and the diary has grown since the last."""
        household, target = self._register.household(), self._register.target()
        if household is None or household.practice or target is None or not self._sealing.ready:
            return False
        there, last = self._there(target), self._register.last_entry()
        return bool(there) and last is not None and all(one.diary_link != last.link for one in there)

    def carry(
        self, *, progress: Progress = silent, cancel: threading.Event | None = None, told: bool = True
    ) -> Changes:
        """Make a copy and bring it to the gateway; the newest ten stay there.

        Args:
            told: as in `note`.

        Raises:
            Refused: no-household, practice-stays-home, no-target, copy-not-ready, host-key-unknown, host-key-changed.
            Unavailable: as `GatewayDoor` and `Gate`, gateway-read-back, and as vault and register.
        """
        load = self.load(progress=progress)
        self.bring(load, progress=progress, cancel=cancel)
        return self.note(load, told=told)

    def load(self, *, progress: Progress = silent) -> Load:
        """Make a copy that is to go there.

        Raises:
            Refused: no-household, practice-stays-home, no-target, copy-not-ready.
            Unavailable: as vault and register.
        """
        target = self._the_target()
        progress("sealing-copy")
        note, data = self._sealing.make(_place(target))
        newest = self._there(target)[-(KEPT - 1) :]
        return Load(target, note, data, tuple(_folder(one) for one in newest))

    def bring(self, load: Load, *, progress: Progress = silent, cancel: threading.Event | None = None) -> None:
        """Write it there all at once, and read it back.

        Raises:
            Refused: host-key-unknown, host-key-changed.
            Unavailable: as `GatewayDoor` and `Gate`, and gateway-read-back.
        """
        note = load.note
        progress("reaching-gateway", where=where(load.target))
        with self._door.open(load.target, cancel) as gate:
            room = gate.room(ROOM)
            progress("uploading", count=1)
            room.put_set(_folder(note), [PackFile(note.name, load.data, secret=True)], [], None)
            progress("reading-back")
            back = room.read(_folder(note), [note.name], len(load.data) + 1).get(note.name)
            if back is None or sha256(back).hexdigest() != note.sha256:
                raise Unavailable("gateway-read-back", name=note.name)
            room.keep_only([_folder(note), *load.keep])

    def note(self, load: Load, *, told: bool) -> Changes:
        """Remember that it is there.

        Args:
            told: the householder asked for it, so that it stands in the diary.

        Raises:
            Unavailable: as the register.
        """
        return self._sealing.note(load.note, where(load.target), told=told)

    def fetch(self, note: CopyNote, *, cancel: threading.Event | None = None) -> bytes:
        """Bring a copy back from the gateway, to be tried.

        Raises:
            Refused: no-household, practice-stays-home, no-target, copy-at-another-gateway, copy-not-at-gateway,
                host-key-unknown, host-key-changed.
            Unavailable: as `GatewayDoor` and `Gate`.
        """
        return self.fetch_from(self.target_of(note), note, cancel=cancel)

    def target_of(self, note: CopyNote) -> Target:
        """The gateway that a copy was brought to, where it is still the one.

        Raises:
            Refused: no-household, practice-stays-home, no-target, copy-at-another-gateway.
            Unavailable: as the register.
        """
        target = self._the_target()
        if note.place != _place(target):
            raise Refused("copy-at-another-gateway", place=note.place.removeprefix(AT_GATEWAY), where=where(target))
        return target

    def fetch_from(self, target: Target, note: CopyNote, *, cancel: threading.Event | None = None) -> bytes:
        """The half of `fetch` that needs nothing but the gateway.

        Raises:
            Refused: copy-not-at-gateway, host-key-unknown, host-key-changed.
            Unavailable: as `GatewayDoor` and `Gate`.
        """
        with self._door.open(target, cancel) as gate:
            data = gate.room(ROOM).read(_folder(note), [note.name], sealed_tar.LARGEST).get(note.name)
        if data is None:
            raise Refused("copy-not-at-gateway", name=note.name, where=where(target))
        return data

    def _the_target(self) -> Target:
        household, target = self._register.household(), self._register.target()
        if household is None:
            raise Refused("no-household")
        if household.practice:
            raise Refused("practice-stays-home")
        if target is None:
            raise Refused("no-target")
        return target

    def _there(self, target: Target) -> Sequence[CopyNote]:
        """What was brought to this gateway, oldest first."""
        return [one for one in self._register.sealed_copies() if one.place == _place(target)]


def _place(target: Target) -> str:
    return f"{AT_GATEWAY}{where(target)}"


def _folder(note: CopyNote) -> str:
    """Two copies never have one time (`Sealing`), and a name for a folder says nothing of the household."""
    return f"{note.made:%Y-%m-%d-%H%M%S}"
