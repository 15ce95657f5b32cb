"""Writes what the householder's own template renders to, and leaves a sentence about it in the diary."""

from __future__ import annotations

from pathlib import Path

from hearthkey.core.copies import Copy, CopyWay
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import templates as sentences
from hearthkey.core.templates import Template
from hearthkey.services import copying
from hearthkey.services.bundling import Written
from hearthkey.services.ports import Clock, Files, Register
from hearthkey.services.templating import Holds, Templating
from hearthkey.services.writing_diary import note


class WritingTemplates:
    """The verb "write" of a template."""

    def __init__(self, register: Register, clock: Clock, templating: Templating, files: Files) -> None:
        self._register = register
        self._clock = clock
        self._templating = templating
        self._files = files

    def write(
        self,
        template: Template,
        chosen: Pass | None,
        folder: Path,
        *,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> Changes:
        """Render a template and put the file into a folder, readable for its owner alone.

        Args:
            template: kept or not; every word of it was checked.
            chosen: whose device; None for a template of the gateway.
            folder: made where it is not there.
            way: how it leaves.
            place: what people call the folder, for instance the name of a stick.

        Raises:
            Refused: as `Templating.render_gateway` and `Templating.render_device`, and no-room-for-copy.
            Unavailable: as register, vault and files; then nothing was written.
        """
        if chosen is None:
            made = self._templating.render_gateway(template)
        else:
            made = self._templating.render_device(template, chosen)
        sentence = sentences.written(template, None if chosen is None else chosen.title, made.name)
        copying.check_room(self._files, folder, [made])
        if chosen is None or self._templating.holds(template) is Holds.NOTHING:
            with self._register.change() as change:
                note(self._register, change, verb="template", sentence=sentence, now=self._clock.now())
                path = self._files.write(folder, made.name, made.data)
        else:
            form = f"{copying.TEMPLATE}{template.name}"
            copy = copying.to_folder(chosen.serial, form, folder, place, way, [made])
            path = self._write_copy(copy, made, sentence)
        return Changes(
            sentence,
            serials=() if chosen is None else (chosen.serial,),
            files=(str(path),),
            cautions=self._templating.cautions(template),
        )

    def _write_copy(self, copy: Copy, made: Written, sentence: str) -> Path:
        """Write what holds a secret, and keep track of it as of any other form of the bundle."""
        now = self._clock.now()
        with copying.leaving(self._register, self._files, copy, now) as leaving:
            path = self._files.write(Path(copy.folder), made.name, made.data)
            with self._register.change() as change:
                note(self._register, change, verb="template", sentence=sentence, now=now)
                leaving.made(change)
        return path
