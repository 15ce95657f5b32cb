"""What a deputy gets beside the parts: the facts of the letter, and the stop set that stops devices without a key."""

from __future__ import annotations

from pathlib import Path

from hearthkey.core.deputy import Part, SetNote
from hearthkey.core.errors import Refused
from hearthkey.core.in_force import house_ends
from hearthkey.core.keepsakes import StopSetNote
from hearthkey.core.languages import Language
from hearthkey.core.names import file_stem
from hearthkey.core.outlook import outlook
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import deputy as sentences
from hearthkey.core.spares import Scope, SpareList
from hearthkey.core.target import IN_FORCE
from hearthkey.formats import stop_set_texts
from hearthkey.formats.deputy_sheet import LetterFacts, PartFacts
from hearthkey.formats.stop_set_texts import StopSetFacts
from hearthkey.services.deputies import DrawnSet
from hearthkey.services.opening import the_authority
from hearthkey.services.packing import list_files
from hearthkey.services.ports import Clock, Files
from hearthkey.services.sheet_ports import SheetRegister
from hearthkey.services.sparing import Sparing
from hearthkey.services.writing_diary import note

READ_ME = "READ-ME.txt"


class DeputyPapers:
    """The papers of "deputy make", and the verb "deputy stop-set"."""

    def __init__(self, register: SheetRegister, clock: Clock, files: Files, sparing: Sparing) -> None:
        self._register = register
        self._clock = clock
        self._files = files
        self._sparing = sparing

    def letter(self, about: SetNote, language: Language) -> LetterFacts:
        """What the letter says, from the dates as they are today.

        Raises:
            Refused: no-household.
        """
        household, newest, gateway = self._register.household(), self._register.newest_list(), self._register.gateway()
        if household is None or newest is None or gateway is None:
            raise Refused("no-household")
        now = self._clock.now()
        list_end, gateway_end = house_ends(self._register.gateway_note(), newest, gateway.not_after)
        first = outlook(self._register.passes(), list_end=list_end, gateway_end=gateway_end, now=now).first
        return LetterFacts(
            household=household.name,
            made=now,
            list_end=list_end,
            gateway_end=gateway_end,
            authority_end=the_authority(self._register).not_after,
            device=None if first is None else (first.title, first.not_after),
            set_name=about.name,
            numbers=(about.threshold, len(about.parts)),
            call=self._register.whom_to_call(),
            language=language,
            practice=household.practice,
        )

    def part(self, drawn: DrawnSet, one: Part, words: Secret[str], language: Language) -> PartFacts:
        """What a part's sheet says.

        Args:
            words: the part, as words.
        """
        household = self._register.household()
        practice = household is not None and household.practice
        return PartFacts(one, words, drawn.about.made, language, practice)

    def stop_set(self, folder: Path, language: Language) -> Changes:
        """Write every spare stop list, and how one is placed at the gateway. No key is among them.

        They go into a folder of their own inside `folder`: lists of an older set must never stand among newer ones.

        Raises:
            Refused: no-household, deputy-no-spares.
            Unavailable: as files and register.
        """
        household, newest = self._register.household(), self._register.newest_list()
        if household is None or newest is None:
            raise Refused("no-household")
        spares = [one for one in self._register.spare_lists() if one.base == newest.number]
        if not spares or not self._sparing.fresh():
            raise Refused("deputy-no-spares")
        now, target, written, ends = self._clock.now(), self._register.target(), [], newest.next_update
        folder = folder / f"stop-set-{now:%Y-%m-%d}-{max(one.number for one in spares)}"
        for number, one in enumerate(spares, 1):
            signed = self._register.signed_spare(one.number)
            if signed is None:
                raise Refused("deputy-no-spares")
            ends = min(ends, signed.next_update)
            inside = folder / f"{number:02}-{self._named(one, language)}"
            written += [str(self._files.write(inside, file.name, file.data)) for file in list_files(signed)]
        facts = StopSetFacts(
            household=household.name,
            made=now,
            number=newest.number,
            until=ends,
            where="" if target is None else f"{target.folder.rstrip('/')}/{IN_FORCE}",
            command="" if target is None else target.reload,
            language=language,
            practice=household.practice,
        )
        written.append(str(self._files.write(folder, READ_ME, stop_set_texts.read_me(facts).encode())))
        sentence = sentences.stop_set(len(spares), newest.number)
        with self._register.change() as change:
            change.note_stop_set(StopSetNote(now, newest.number, max(one.number for one in spares)))
            note(self._register, change, verb="deputy", sentence=sentence, now=now)
        return Changes(sentence, files=tuple(written))

    def _named(self, spare: SpareList, language: Language) -> str:
        """The name of a list's folder: of the device, the person, or for everybody."""
        if spare.scope is Scope.EVERYBODY:
            return stop_set_texts.text("everybody", language)
        if spare.scope is Scope.PERSON:
            told = stop_set_texts.text("person", language, name=spare.subject)
        else:
            told = next(one.title for one in self._register.passes() if one.identity == spare.subject)
        return file_stem(told, spare.subject)
