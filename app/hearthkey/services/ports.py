"""What the verbs need from outside, said as Protocols; `adapters` has one file for each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from hearthkey.core.bundle import Credential
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof
from hearthkey.core.revocation import Entry, Reason, SignedList
from hearthkey.core.secret import Secret
from hearthkey.services.choice_ports import ChoiceChange, ChoiceRegister
from hearthkey.services.copy_ports import CopyChange, CopyFiles, CopyRegister
from hearthkey.services.moving_ports import MovingChange, MovingRegister
from hearthkey.services.succession_ports import SuccessionChange, SuccessionRegister

if TYPE_CHECKING:  # the register is opened for a list without loading a cryptographic library
    from hearthkey.pki.keys import AuthorityKey


class Clock(Protocol):
    """Tells the time."""

    def now(self) -> datetime:
        """The present moment, UTC, in whole seconds."""

    def monotonic(self) -> float:
        """Seconds that never run backwards."""


class Dice(Protocol):
    """Draws by lot, from the operating system's random source."""

    def bits(self, count: int) -> int:
        """A whole number of at most `count` random bits."""

    def below(self, limit: int) -> int:
        """A whole number from 0 to `limit`, exclusive."""


class Vault(Protocol):
    """Keeps secrets of at most 10,240 characters outside the register.

    Every method raises Unavailable: keyring-locked, keyring-silent, keyring-absent,
    keyring-unsafe, keyring-failed.
    """

    @property
    def place(self) -> str:
        """``keyring`` or ``file``."""

    def get(self, name: str) -> Secret[str] | None:
        """The secret, or None where the vault answers and has none of that name."""

    def put(self, name: str, secret: Secret[str]) -> None:
        """Keep a secret, and read it back before returning."""

    def delete(self, name: str) -> None:
        """Forget a secret; one that is not there is fine."""


@dataclass(frozen=True)
class NewPass:
    """A pass about to enter the register; `sealed` is its PKCS#12 until hand-over."""

    about: Pass
    certificate: bytes
    sealed: bytes


class Change(ChoiceChange, CopyChange, MovingChange, SuccessionChange, Protocol):
    """One transaction on the register: all of it happens, or nothing."""

    def found(self, household: Household, authority: Authority, subject: str, now: datetime) -> None:
        """Write the household and its CA."""

    def settle(self, household: Household) -> None:
        """Write the household's settings anew; whether it is a practice household stays as it was."""

    def add_gateway(self, gateway: Gateway, now: datetime) -> None:
        """Write the gateway's credential."""

    def add_pass(self, new: NewPass, now: datetime) -> None:
        """Write a pass, and its person and device where they are new."""

    def hand_over(self, serial: str, now: datetime) -> None:
        """Erase the key of a pass and note when it left."""

    def add_proof(self, serial: str, proof: Proof) -> None:
        """Write down, for good, that a pass was seen to get in."""

    def erase_key(self, serial: str) -> None:
        """Erase the key of a pass that will never be handed over."""

    def withdraw(self, serial: str, reason: Reason, since: datetime) -> None:
        """Put a pass on the list, or change the reason it stands there for."""

    def lift(self, serial: str, now: datetime) -> None:
        """Take a pass on hold off the list."""

    def add_list(self, signed: SignedList) -> None:
        """Keep a signed list."""

    def add_diary(self, entry: DiaryEntry) -> None:
        """Keep a diary entry."""

    def settle_secret(self, name: str) -> None:
        """A secret in the vault belongs to something now."""

    def loosen_secret(self, name: str, place: str) -> None:
        """A secret in the vault belongs to nothing any more and is to be forgotten."""


class Register(ChoiceRegister, CopyRegister, MovingRegister, SuccessionRegister, Protocol):
    """The household's file. Every method raises Unavailable: register-..., disk-full, folder-read-only."""

    @property
    def read_only(self) -> bool:
        """Whether another copy of the app holds the household."""

    def household(self) -> Household | None:
        """The household, or None before it is founded."""

    def authority(self) -> Authority | None:
        """The CA in charge."""

    def gateway(self) -> Gateway | None:
        """The gateway's newest credential."""

    def passes(self) -> list[Pass]:
        """Every pass ever made, by person, device and time."""

    def certificate(self, serial: str) -> bytes:
        """DER of a device certificate."""

    def sealed(self, serial: str) -> bytes | None:
        """The PKCS#12 of a waiting pass, or None after hand-over."""

    def identities(self) -> frozenset[str]:
        """Every identity ever given."""

    def entries(self) -> list[Entry]:
        """Everything on hold or revoked."""

    def newest_list(self) -> SignedList | None:
        """The list with the highest number."""

    def lists(self) -> list[SignedList]:
        """All lists, oldest first."""

    def list_high_water(self) -> int:
        """The highest list number ever seen, 0 before the first."""

    def diary(self) -> list[DiaryEntry]:
        """All entries, oldest first."""

    def last_entry(self) -> DiaryEntry | None:
        """The newest entry."""

    def verbs_since(self, number: int) -> list[str]:
        """The verbs of the entries after that one, oldest first."""

    def diary_written(self) -> int:
        """How many entries were ever written."""

    def loose_secrets(self) -> list[tuple[str, str]]:
        """Names, and the place of their vault, that may lie there without belonging to anything."""

    def expect_secrets(self, names: Iterable[str], place: str) -> None:
        """Write down, before they are put there, which secrets a vault is about to get."""

    def forget_loose(self, name: str) -> None:
        """The secret is gone from the vault, so its name may go from the register."""

    def change(self) -> AbstractContextManager[Change]:
        """Begin a transaction."""

    def scrub(self) -> bool:
        """Empty the write-ahead log and drop safety copies, so that erased keys are gone from the disk's files.

        Returns:
            False where somebody was reading, so that the log is emptied only when the register is closed.
        """


@dataclass(frozen=True)
class SealJob:
    """A credential to be sealed into its PKCS#12, by whichever processor is free."""

    credential: Credential
    passphrase: Secret[str]
    friendly_name: str


class Workshop(Protocol):
    """Makes keys and seals them, many at a time where there are many."""

    def make_keys(self, key_types: Sequence[str]) -> Iterator[Secret[bytes]]:
        """Private keys (PKCS#8 DER) in the order asked for."""

    def seal(self, jobs: Sequence[SealJob]) -> Iterator[bytes]:
        """Strong PKCS#12 files in the order asked for."""


class Locksmith(Protocol):
    """Guards the CA key with a passphrase; slow on purpose. `pki.guard` is one."""

    def seal(self, key: AuthorityKey, passphrase: Secret[str]) -> str:
        """The CA key as a text under a passphrase."""

    def open_guard(self, text: str, passphrase: Secret[str]) -> AuthorityKey:
        """The CA key out of such a text.

        Raises:
            Refused: wrong-passphrase, guard-unreadable, guard-too-heavy, authority-key-type.
        """


class Files(CopyFiles, Protocol):
    """Files that leave the app, and files that somebody else may have written."""

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """Write a file of mode 0600 all at once or not at all, and read it back.

        Raises:
            Unavailable: disk-full, folder-read-only, folder-gone, write-failed.
        """

    def read(self, path: Path, limit: int) -> bytes:
        """Read a file of at most `limit` octets.

        Raises:
            Refused: file-missing, file-too-large, file-not-a-file.
            Unavailable: as `write`.
        """


class Pictures(Protocol):
    """Draws codes and reads them back."""

    def png(self, matrix: tuple[tuple[bool, ...], ...]) -> bytes:
        """A code as PNG."""

    def svg(self, matrix: tuple[tuple[bool, ...], ...]) -> bytes:
        """A code as SVG."""

    def read_codes(self, data: bytes) -> tuple[str, ...]:
        """The texts of all codes on a picture."""


class Progress(Protocol):
    """Hears which step is being taken, as a key of `core.sentences.progress`."""

    def __call__(self, step: str, /, **facts: object) -> None:
        """Tell a step."""


def silent(step: str, /, **facts: object) -> None:
    """Progress that nobody listens to."""
