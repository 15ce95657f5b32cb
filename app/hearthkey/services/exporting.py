"""Lets a bundle out, once it has been rehearsed."""

from __future__ import annotations

import contextlib
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.bundle import Bundle, Form
from hearthkey.core.copies import CopyWay
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.rehearsal import Rehearsal
from hearthkey.core.sentences import diary
from hearthkey.services import copying
from hearthkey.services.bundling import PNG, Bundling, Written
from hearthkey.services.ports import Clock, Files, Progress, Register, silent
from hearthkey.services.rehearsing import Rehearsing
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class Exported:
    """A form on its way out.

    Args:
        changes: files and sentence.
        rehearsal: the proof that they get in.
    """

    changes: Changes
    rehearsal: Rehearsal


class Exporting:
    """The verb "export"."""

    def __init__(
        self, register: Register, bundling: Bundling, rehearsing: Rehearsing, clock: Clock, files: Files
    ) -> None:
        self._register = register
        self._bundling = bundling
        self._rehearsing = rehearsing
        self._clock = clock
        self._files = files

    def export(
        self,
        chosen: Pass,
        form: Form,
        folder: Path,
        *,
        picture: str = PNG,
        progress: Progress = silent,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> Exported:
        """Write a form, rehearse the very bytes, and only then put them on the disk.

        Args:
            way: how it leaves; what is dragged counts as a copy only once somebody took it (`copying.dragged_out`).
            place: what people call the folder, for instance the name of a stick.

        Raises:
            RehearsalFailed: nothing was written.
            Refused: pass-handed-over, passphrase-lost, picture-unknown, no-room-for-copy.
            Unavailable: as vault and files.
        """
        progress("opening-bundle", title=chosen.title)
        bundle = self._bundling.open(chosen)
        return self.export_opened(
            bundle, chosen, form, folder, picture=picture, progress=progress, way=way, place=place
        )

    def export_opened(
        self,
        bundle: Bundle,
        chosen: Pass,
        form: Form,
        folder: Path,
        *,
        picture: str = PNG,
        progress: Progress = silent,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> Exported:
        """The same for a bundle that is open already."""
        progress("writing-form", form=form.value)
        files, proof = self._bundling.write_for_proof(bundle, form, picture=picture)
        progress("rehearsing", form=form.value)
        rehearsal = self._rehearsing.rehearse(form, proof, bundle.passphrase, identity=chosen.identity)
        progress("saving")
        copying.check_room(self._files, folder, files)
        now, sentence = self._clock.now(), diary.exported(chosen, form)
        copy = copying.to_folder(chosen.serial, form.value, folder, place, way, files)
        with copying.leaving(self._register, self._files, copy, now) as leaving:
            paths = self._save(folder, files)
            with self._register.change() as change:
                note(self._register, change, verb="export", sentence=sentence, now=now)
                if way is not CopyWay.DRAG:
                    leaving.made(change)
        return Exported(Changes(sentence, serials=(chosen.serial,), files=paths), rehearsal)

    def codes_to_show(self, chosen: Pass, *, progress: Progress = silent) -> list[Written]:
        """Draw the codes of a bundle for the screen, rehearse them, and write down that they are shown.

        The row and its diary line come before the codes do: where they cannot be written, nothing is shown. Codes that
        come back within `core.copies.SAME_SHOWING` add nothing.

        Raises:
            RehearsalFailed: nothing is shown.
            Refused: as `export`.
            Unavailable: as vault and register.
        """
        progress("opening-bundle", title=chosen.title)
        bundle = self._bundling.open(chosen)
        files = self._bundling.write(bundle, Form.CODES)
        progress("rehearsing", form=Form.CODES.value)
        self._rehearsing.rehearse(Form.CODES, files, bundle.passphrase, identity=chosen.identity)
        copying.shown(self._register, chosen, self._clock.now())
        return files

    def _save(self, folder: Path, files: list[Written]) -> tuple[str, ...]:
        """Write all files of a form; some of them alone would look like a bundle and be none."""
        paths: list[str] = []
        with contextlib.ExitStack() as undone:
            for one in files:
                path = self._files.write(folder, one.name, one.data)
                undone.callback(_forget, path)
                paths.append(str(path))
            undone.pop_all()
        return tuple(paths)


def _forget(path: Path) -> None:
    with contextlib.suppress(OSError):
        path.unlink()
