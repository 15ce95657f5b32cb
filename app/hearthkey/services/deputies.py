"""The deputy's parts: made, tried one by one, and put together again to open a sealed copy."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import combinations

from hearthkey.core import deputy
from hearthkey.core.deputy import Part, PartNote, SetNote
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import deputy as sentences
from hearthkey.formats import sealed_tar
from hearthkey.pki.deputy_lock import Passphrases
from hearthkey.services.ports import Clock, Dice
from hearthkey.services.sealed_ports import CopyLocks, DeputyLocks, SealedRegister
from hearthkey.services.writing_diary import note

PICTURES = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")
"""What files begin with that may show a code: PNG (its specification, section 5.2) and JPEG (ITU-T T.81, annex B)."""
LARGEST = 20 << 20
"""Octets of a file that a part is read from: a phone's picture."""
LONGEST_TEXT = 4096


@dataclass(frozen=True)
class DrawnSet:
    """A set that counts once it is kept; until then nothing opens with it.

    Args:
        parts: to be given to different people.
        about: what the register will remember.
    """

    parts: tuple[Part, ...]
    about: SetNote


class Deputies:
    """The verbs "deputy make", "deputy try" and "deputy restore".

    Args:
        words: the list that parts are written in.
    """

    def __init__(
        self,
        register: SealedRegister,
        clock: Clock,
        dice: Dice,
        words: tuple[str, ...],
        copy_locks: CopyLocks,
        locks: DeputyLocks,
    ) -> None:
        self.words = words
        self._register = register
        self._clock = clock
        self._dice = dice
        self._copy_locks = copy_locks
        self._locks = locks

    def draw(self, passphrase: Secret[str], own: Secret[str] | None = None) -> DrawnSet:
        """Draw a set of parts. Nothing is remembered yet, so that a printer that jams leaves the older set in force.

        Args:
            passphrase: the household's; whoever asks has opened the CA key with it before.
            own: the copies' own, where they have one.

        Raises:
            Refused: copy-not-ready, deputy-own-passphrase.
            Unavailable: as the register.
        """
        lock = self._register.copy_lock()
        if lock is None:
            raise Refused("copy-not-ready")
        public, locked = lock
        try:
            self._copy_locks.unlock(locked, passphrase if own is None else own)
        except Refused as error:
            if error.code != "wrong-passphrase":
                raise
            raise Refused("deputy-own-passphrase") from error
        secret = Secret(self._dice.bits(deputy.SECRET_BITS).to_bytes(deputy.SECRET_BITS // 8, "big"))
        parts = deputy.split(secret, self._fresh_name(), self._dice.below)
        for some in combinations(parts, deputy.THRESHOLD):
            if deputy.joined(some) != secret:
                raise Bug("deputy-parts-open-nothing", numbers=tuple(str(one.number) for one in some))
        text = self._locks.lock(Passphrases(passphrase, own), secret)
        notes = tuple(PartNote(one.number, one.mark, None) for one in parts)
        name = parts[0].set_name
        return DrawnSet(parts, SetNote(name, self._clock.now(), deputy.THRESHOLD, public, text, notes))

    def keep(self, drawn: DrawnSet) -> Changes:
        """Let a set count: every copy that is made from now on opens with it, and none with an older one.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.made(drawn.about)
        with self._register.change() as change:
            change.keep_deputy_set(drawn.about)
            note(self._register, change, verb="deputy", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def part_in(self, data: bytes, read_codes: Callable[[bytes], tuple[str, ...]]) -> Part:
        """Read a part from a file: a picture of its code, or a text with its words or the text of its code.

        Raises:
            Refused: as `core.deputy.read`; picture-too-large, picture-unreadable.
        """
        if data.startswith(PICTURES):
            found = {one for one in read_codes(data) if one.startswith(deputy.CODE)}
            if len(found) != 1:
                raise Refused("deputy-code-other")
            return deputy.from_code(found.pop())
        return deputy.read(data[:LONGEST_TEXT].decode("utf-8", errors="replace"), self.words)

    def fresh(self) -> bool:
        """Whether the newest set opens the copies that are made now."""
        about, lock = self._register.deputy_set(), self._register.copy_lock()
        return about is not None and lock is not None and about.lock == lock[0]

    def try_part(self, part: Part) -> Changes:
        """Check one part without the others, and note that it was tried.

        Raises:
            Refused: deputy-no-set, deputy-part-old, deputy-part-of-another, deputy-part-unlike.
            Unavailable: as the register.
        """
        about = self._register.deputy_set()
        if about is None:
            raise Refused("deputy-no-set")
        if part.set_name != about.name:
            if part.set_name in self._register.deputy_sets():
                raise Refused("deputy-part-old", seen=part.set_name, known=about.name)
            raise Refused("deputy-part-of-another", seen=part.set_name, known=about.name)
        if part.mark not in {one.mark for one in about.parts}:
            raise Refused("deputy-part-unlike", number=part.number, seen=part.set_name)
        sentence, now = sentences.tried(part.number, about.name), self._clock.now()
        with self._register.change() as change:
            change.deputy_part_tried(part.mark, now)
            note(self._register, change, verb="deputy", sentence=sentence, now=now)
        return Changes(sentence)

    def opening(self, data: bytes, parts: tuple[Part, ...]) -> Passphrases:
        """What opens a sealed copy, from enough of the parts that it goes by. No household is needed for it.

        Args:
            data: the copy.

        Raises:
            Refused: deputy-parts-too-few, deputy-parts-mixed, deputy-part-twice, deputy-copy-without,
                deputy-copy-of-set, deputy-lock-damaged, copy-damaged, copy-too-large, guard-too-heavy.
        """
        secret = deputy.joined(parts)
        outer = sealed_tar.unpack(data, "the archive")
        names = [one for one in outer if sealed_tar.set_of(one) is not None]
        if not names:
            raise Refused("deputy-copy-without")
        wanted, seen = sealed_tar.set_of(names[0]), parts[0].set_name
        if wanted != seen:
            raise Refused("deputy-copy-of-set", wanted=wanted, seen=seen)
        return self._locks.unlock(outer[names[0]].decode("ascii", errors="replace"), secret)

    def _fresh_name(self) -> str:
        taken = set(self._register.deputy_sets())
        while True:
            name = f"{self._dice.bits(16):04X}"
            if name not in taken:
                return name
