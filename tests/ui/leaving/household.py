"""A household that lets bundles out at once, or when the test says so, and remembers what it was asked."""

from __future__ import annotations

import hashlib
import os
from collections.abc import Callable
from dataclasses import replace
from functools import cache, partial
from pathlib import Path
from typing import TypeVar

import shiboken6
from PySide6.QtCore import QObject

from hearthkey.adapters import pictures
from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.copies import CopyWay
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.rehearsal import Rehearsal
from hearthkey.core.secret import Secret
from hearthkey.core.templates import Template
from hearthkey.formats import codes
from hearthkey.services.bundling import Written
from hearthkey.services.exporting import Exported
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.drag import DragOut
from hearthkey.ui.drives import Drive, Sticks
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.hand_over import HandOver
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.template_errands import OwnForm
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import PASSES, made_pass, snapshot

T = TypeVar("T")

WORDS = ("plum", "kettle", "ivory", "lantern", "gravel", "otter", "quilt")
PASSPHRASE = " ".join(WORDS)
LAPTOP = next(one for one in PASSES if one.title == "Tomasz’s laptop")
STICK = Drive("QUINCE", Path("/media/ines/QUINCE"), "/dev/sdb1", 14_200_000_000)


def bundle_bytes() -> bytes:
    """As many octets, and as hard to compress, as a bundle with an RSA key."""
    return b"".join(hashlib.sha256(bytes([number])).digest() for number in range(132))


@cache
def drawn() -> tuple[Written, ...]:
    """The codes of such a bundle, drawn as the real household draws them."""
    frames = codes.frames(bundle_bytes())
    return tuple(
        Written(f"tomasz-laptop.code-{number:02d}-of-{len(frames):02d}.png", pictures.png(codes.matrix(frame)))
        for number, frame in enumerate(frames, 1)
    )


def waiting(count: int) -> Snapshot:
    """A household in which that many bundles wait."""
    made = tuple(
        made_pass(
            "Odile", f"reader {number}", made=LAPTOP.not_before, ends=LAPTOP.not_after, code=f"reader{number:02d}"
        )
        for number in range(count)
    )
    made = tuple(replace(one, serial=f"{number:024x}") for number, one in enumerate(made))
    return snapshot(passes=made)


class FakeErrands(Errands):
    """Stands where the real errands stand.

    Attributes:
        calls: what was asked, in order, as (verb, argument).
        hold: keep answers back until `answer`.
        refuse: by verb, the error that it ends in.
        own: the kept templates for devices.
        chosen_last: what was chosen for profiles.
        left_by: ways and places of what was written.
        drags: serials of drags, and whether somebody took the file.
    """

    def __init__(self, seen: Snapshot | None = None) -> None:
        QObject.__init__(self)
        self.last = snapshot() if seen is None else seen
        self.calls: list[tuple[str, object]] = []
        self.hold = False
        self.refuse: dict[str, HearthkeyError] = {}
        self.own: tuple[OwnForm, ...] = ()
        self.chosen_last = ConnectChoices()
        self.left_by: list[tuple[CopyWay, str]] = []
        self.drags: list[tuple[str, bool]] = []
        self._held: list[Callable[[], None]] = []

    def asked(self, verb: str) -> list[object]:
        """The arguments that a verb was asked with."""
        return [argument for called, argument in self.calls if called == verb]

    def answer(self) -> None:
        """Give the answers that were kept back."""
        held, self._held = self._held, []
        for give in held:
            give()

    def now_is(self, seen: Snapshot) -> None:
        """The household looks different now."""
        self.last = seen
        self.seen.emit(seen)

    def _give(
        self, verb: str, argument: object, context: QObject, give: Callable[[], None], failed: Failed | None
    ) -> None:
        self.calls.append((verb, argument))
        error = self.refuse.get(verb)
        if error is not None:
            give = partial(failed or self.trouble.emit, error)
        if self.hold:
            self._held.append(lambda: give() if shiboken6.isValid(context) else None)
        else:
            give()

    def _one(self, serial: str) -> Pass:
        assert self.last is not None
        return next(one for one in self.last.passes if one.serial == serial)

    def passphrase(self, serial: str, context: QObject, then: Then[Secret[str]], failed: Failed) -> None:
        """The passphrase there is."""
        self._give("passphrase", serial, context, lambda: then(Secret(PASSPHRASE)), failed)

    def codes(self, serial: str, context: QObject, then: Then[list[Written]], failed: Failed) -> None:
        """Real codes of a made-up bundle."""
        self._give("codes", serial, context, lambda: then(list(drawn())), failed)

    def own_forms(self, context: QObject, then: Then[tuple[OwnForm, ...]]) -> None:
        """Those that the test laid ready; opening the page asks for them, so the question is not written down."""
        del context
        then(self.own)

    def connect_choices(self, context: QObject, then: Then[ConnectChoices]) -> None:
        """What was chosen last; asked for with the page, so the question is not written down."""
        del context
        then(self.chosen_last)

    def keep_connect_choices(self, chosen: ConnectChoices) -> None:
        """Remember it."""
        self.calls.append(("choose", chosen))
        self.chosen_last = chosen

    def write(
        self,
        template: Template,
        serial: str | None,
        folder: Path,
        context: QObject,
        then: Then[Changes],
        failed: Failed,
        *,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> None:
        """Write a real file."""

        def give() -> None:
            path = folder / "own.txt"
            path.write_text(template.text, encoding="utf-8")
            then(Changes("", files=(str(path),)))

        self.left_by.append((way, place))
        self._give("write", (template.name, serial, folder), context, give, failed)

    def export(
        self,
        serial: str,
        form: Form,
        folder: Path,
        context: QObject,
        then: Then[Exported],
        failed: Failed | None,
        *,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> None:
        """Write a real file, as the disk adapter does: for its owner alone."""

        def give() -> None:
            name = {Form.PKCS12: "p12", Form.ARCHIVE: "zip", Form.BUNDLE: "bundle.toml"}.get(form, form.value)
            path = folder / f"{serial[:6]}.{name}"
            if folder.is_dir():
                handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
                os.write(handle, b"Quince Cottage")
                os.close(handle)
            then(Exported(Changes("", (serial,), files=(str(path),)), Rehearsal(form.value, ())))

        self.left_by.append((way, place))
        self._give("export", (serial, form, folder), context, give, failed)

    def dragged(self, serial: str, *, taken: bool) -> None:
        """Remember how a drag ended."""
        self.drags.append((serial, taken))

    def copies(self, identity: str, context: QObject, then: Then[CopiesSeen]) -> None:
        """None has left."""
        del identity, context, then

    def hand_over(self, serial: str, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """The key is gone, and the pass in use."""

        def give() -> None:
            assert self.last is not None
            seen = self.last
            passes = tuple(replace(one, handed_over=seen.at) if one.serial == serial else one for one in seen.passes)
            changes = Changes(f"{self._one(serial).title} was handed over.", (serial,))
            self.now_is(replace(seen, passes=passes))
            self.done.emit(changes)
            if then is not None:
                then(changes)

        self._give("hand_over", serial, context, give, failed)


class FakeSticks(Sticks):
    """Drives as the test puts them in; unmounting ends when the test says how."""

    def __init__(self, *drives: Drive) -> None:
        super().__init__(at_once)
        self.drives = drives
        self.let_go_of: list[tuple[Drive, Callable[[], None], Callable[[], None]]] = []

    def look(self, context: QObject, then: Then[tuple[Drive, ...]], failed: Failed) -> None:
        """What is plugged in."""
        at_once(lambda: self.drives, context, then, failed)

    def let_go(self, drive: Drive, free: Callable[[], None], by_hand: Callable[[], None]) -> None:
        """Remember who wants to hear."""
        self.let_go_of.append((drive, free, by_hand))


def at_once(work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
    """`Tasks.pool` without its threads."""
    del context
    try:
        then(work())
    except HearthkeyError as error:
        failed(error)


class Picked:
    """Stands where the folder dialog stands: answers with a folder when the test says so."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.asked: list[Path] = []
        self.hold = False
        self.give: Callable[[], None] = lambda: None

    def __call__(self, _parent: object, _title: str, start: Path, then: Callable[[Path], None]) -> None:
        """See `pages.hand_over.pick_folder`."""
        self.asked.append(start)
        self.give = partial(then, self.folder)
        if not self.hold:
            self.give()


class Scene:
    """The hand-over page with everything around it in the test's hands."""

    def __init__(self, theme: Theme, folder: Path, clipboard: SecretClipboard, seen: Snapshot | None = None) -> None:
        self.errands = FakeErrands(seen)
        self.ways = Ways()
        self.sticks = FakeSticks(STICK)
        self.picked = Picked(folder / "saved")
        self.picked.folder.mkdir()
        self.runtime = Runtime(folder / "runtime")
        self.drag = DragOut(self.errands, self.runtime)
        self.page = HandOver(
            theme,
            self.errands,
            self.ways,
            self.drag,
            clipboard,
            self.sticks,
            folder=folder,
            pick=self.picked,
        )
        self.page.resize(1280, 718)
