"""Wires one household together.

Parts are made when they are first asked for, so that a verb pays only for what it uses: `list`
never loads a cryptographic library, `--help` never opens a file.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from hearthkey.bootstrap.adopting import AdoptRoom
from hearthkey.bootstrap.copies import CopyRoom
from hearthkey.bootstrap.deputy import DeputyRoom
from hearthkey.bootstrap.gateway import GatewayRooms
from hearthkey.bootstrap.kinds import KindRoom
from hearthkey.bootstrap.makers import MakersRoom
from hearthkey.bootstrap.paper import PaperRoom
from hearthkey.bootstrap.reach import ReachRoom
from hearthkey.bootstrap.renewal import RenewalRoom
from hearthkey.bootstrap.sealed import SealedRoom
from hearthkey.bootstrap.sheets import SheetRoom
from hearthkey.bootstrap.succession import SuccessionRoom
from hearthkey.bootstrap.tickets import TicketRoom
from hearthkey.core.errors import Unavailable
from hearthkey.core.household import FILE, KEYRING

if TYPE_CHECKING:
    from hearthkey.adapters.presence import Presence
    from hearthkey.adapters.register import SqliteRegister
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.enrolling import Enrolling
    from hearthkey.services.exporting import Exporting
    from hearthkey.services.founding import Founding
    from hearthkey.services.handing_over import HandingOver
    from hearthkey.services.listing import Listing
    from hearthkey.services.opening import Keyholder
    from hearthkey.services.ports import Clock, Dice, Files, Pictures, Vault
    from hearthkey.services.rehearsing import Rehearsing
    from hearthkey.services.settling import Settling
    from hearthkey.services.stopping import Stopping
    from hearthkey.services.undoing import Undoing


class House(
    MakersRoom,
    GatewayRooms,
    CopyRoom,
    DeputyRoom,
    KindRoom,
    PaperRoom,
    ReachRoom,
    SealedRoom,
    SheetRoom,
    TicketRoom,
    AdoptRoom,
    RenewalRoom,
    SuccessionRoom,
):
    """All parts of one household, wired together.

    Args:
        data: the data folder; `places.data_folder` where nobody says otherwise.
        place: where a household that is not founded yet will keep its secrets.
        keyring_service: how the keyring calls our secrets.
        apart: let processes of their own do what holds Python's lock, so that a window stays alive.
    """

    def __init__(
        self,
        data: Path | None = None,
        *,
        place: str = KEYRING,
        keyring_service: str = "hearthkey",
        apart: bool = False,
    ) -> None:
        self._apart = apart
        self._data = data
        self._place = place
        self._keyring_service = keyring_service
        self._vaults: dict[str, Vault] = {}
        self._presence: Presence | None = None
        self._writing = False

    @cached_property
    def data(self) -> Path:
        """The data folder."""
        if self._data is not None:
            return self._data.absolute()
        from hearthkey.adapters.places import data_folder

        return data_folder()

    @cached_property
    def clock(self) -> Clock:
        """The computer's clock."""
        from hearthkey.adapters.clock import SystemClock

        return SystemClock()

    @cached_property
    def dice(self) -> Dice:
        """The random source."""
        from hearthkey.adapters.dice import SystemDice

        return SystemDice()

    @cached_property
    def words(self) -> tuple[str, ...]:
        """The word list for passphrases."""
        from hearthkey.adapters.places import word_list

        return word_list()

    @cached_property
    def register(self) -> SqliteRegister:
        """The register: for writing after `enter`, else for looking only."""
        from hearthkey.adapters.register import FILE_NAME, SqliteRegister

        return SqliteRegister(self.data / FILE_NAME, read_only=not self._writing)

    @cached_property
    def files(self) -> Files:
        """Writes and reads files."""
        from hearthkey.adapters.files import DiskFiles

        return DiskFiles()

    @cached_property
    def pictures(self) -> Pictures:
        """Draws and reads codes."""
        from hearthkey.adapters import pictures

        return pictures

    @property
    def vault(self) -> Vault:
        """Where this household keeps its secrets."""
        authority = self.register.authority()
        return self.vault_at(self._place if authority is None else authority.key_place)

    def vault_at(self, place: str) -> Vault:
        """The vault of one place."""
        if place not in self._vaults:
            if place == FILE:
                from hearthkey.adapters.vault_file import FileVault

                self._vaults[place] = FileVault(self.data / "keys", self.files)
            else:
                from hearthkey.adapters.vault_keyring import KeyringVault

                self._vaults[place] = KeyringVault(service=self._keyring_service)
        return self._vaults[place]

    @cached_property
    def keyholder(self) -> Keyholder:
        """Holds the CA key while unlocked."""
        from hearthkey.services.opening import Keyholder

        return Keyholder(self.clock, locksmith=self.locksmith)

    @cached_property
    def founding(self) -> Founding:
        """The verb "found"."""
        from hearthkey.services.founding import Founding

        return Founding(self.register, self.vault, self.keyholder, self.clock, self.dice, self.words, self.locksmith)

    @cached_property
    def settling(self) -> Settling:
        """The verb "settle"."""
        from hearthkey.services.settling import Settling

        return Settling(self.register, self.vault, self.keyholder, self.clock, self.dice, self.words, self.workshop)

    @cached_property
    def enrolling(self) -> Enrolling:
        """The verb "add"."""
        from hearthkey.services.enrolling import Enrolling

        parts = (self.register, self.vault, self.keyholder, self.clock, self.dice, self.words, self.workshop)
        return Enrolling(*parts, self.kinds)

    @cached_property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""
        from hearthkey.services.bundling import Bundling
        from hearthkey.services.signing_profiles import ProfileSigning

        signing = ProfileSigning(self.register, self.vault, self.keyholder)
        return Bundling(self.register, self.vault, self.clock, self.pictures, signing.sign, self.workshop)

    @cached_property
    def rehearsing(self) -> Rehearsing:
        """The verb "rehearse"."""
        from hearthkey.services.rehearsing import Rehearsing

        return Rehearsing(self.register, self.vault, self.clock, self.pictures)

    @cached_property
    def exporting(self) -> Exporting:
        """The verb "export"."""
        from hearthkey.services.exporting import Exporting

        return Exporting(self.register, self.bundling, self.rehearsing, self.clock, self.files)

    @cached_property
    def handing_over(self) -> HandingOver:
        """The verb "hand-over"."""
        from hearthkey.services.handing_over import HandingOver

        return HandingOver(self.register, self.vault, self.clock)

    @cached_property
    def listing(self) -> Listing:
        """The verb "lists"."""
        from hearthkey.services.listing import Listing

        return Listing(self.register, self.keyholder, self.clock, self.files, self.data / "lists")

    @cached_property
    def stopping(self) -> Stopping:
        """The verbs "stop", "let-in" and "revoke"."""
        from hearthkey.services.stopping import Stopping

        return Stopping(self.register, self.vault, self.keyholder, self.clock, self.listing)

    @cached_property
    def undoing(self) -> Undoing:
        """The verbs "undo" and "redo"."""
        from hearthkey.services.undoing import Undoing

        return Undoing(self.register, self.keyholder, self.clock, self.listing, self.settling, self.superseding)

    def enter(self) -> None:
        """Become the copy that writes, and finish what a crash cut short.

        Raises:
            Unavailable: second-copy, folder-read-only, disk-full.
        """
        from hearthkey.adapters.files import sweep_halves, told
        from hearthkey.adapters.presence import Presence

        with told(self.data):
            self.data.mkdir(mode=0o700, parents=True, exist_ok=True)
            self._presence = Presence(self.data)
            if not self._presence.take():
                self._presence = None
                raise Unavailable("second-copy", path=str(self.data))
            for name in ("lists", "keys"):
                sweep_halves(self.data / name)
        self._writing = True
        self.__dict__.pop("register", None)
        from hearthkey.services import erasing, recovery

        erasing.erase_withdrawn(self.register)
        recovery.sweep(self.register, self.vault_at)
        recovery.publish(self.listing)

    def look(self) -> None:
        """Open for looking; where a crash or an older app left work, do that first if nobody else is here."""
        from hearthkey.adapters.register import FILE_NAME, newest, version_at

        path = self.data / FILE_NAME
        if version_at(path) in {None, newest()} and not self.register.loose_secrets():
            return
        self.leave()
        try:
            self.enter()
        except Unavailable as error:
            if error.code not in {"second-copy", "folder-read-only"}:
                raise
            self.leave()

    def leave(self) -> None:
        """Lock, close, and let the next copy write."""
        if "keyholder" in self.__dict__:
            self.keyholder.lock()
        crew = self.__dict__.get("_crew")
        if crew is not None:
            crew.close()
        if "register" in self.__dict__:
            self.register.close()
            del self.__dict__["register"]
        if self._presence is not None:
            self._presence.leave()
            self._presence = None
        self._writing = False


@contextmanager
def open_house(
    data: Path | None,
    *,
    place: str = KEYRING,
    writing: bool,
    keyring_service: str = "hearthkey",
    apart: bool = False,
) -> Iterator[House]:
    """The port `services.house.OpenHouse`; `apart` as in `House`."""
    made = House(data, place=place, keyring_service=keyring_service, apart=apart)
    try:
        if writing:
            made.enter()
        else:
            made.look()
        yield made
    finally:
        made.leave()
