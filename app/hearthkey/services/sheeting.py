"""What goes along with a bundle: the sheet, the passphrase card, the two messages."""

from __future__ import annotations

import contextlib
from collections.abc import Sequence
from dataclasses import dataclass

from hearthkey.core import names
from hearthkey.core.channels import gives_away, reads_like_words
from hearthkey.core.copies import Came
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.families import Family
from hearthkey.core.hand_over_sheet import MOST_STEPS, CardFacts, Messages, SheetFacts
from hearthkey.core.kinds import WITHOUT_SETTINGS, Kinds
from hearthkey.core.languages import Language
from hearthkey.core.passes import Pass
from hearthkey.formats import hand_over_sheet
from hearthkey.services.bundling import Bundling
from hearthkey.services.ports import Clock
from hearthkey.services.sheet_ports import SheetRegister

LONGEST_CALL = 80
"""Characters of whom to call."""

_LAPTOPS = frozenset({Family.WINDOWS, Family.MAC, Family.LINUX})
"""Systems of devices without mobile data of their own."""


@dataclass(frozen=True)
class SheetForms:
    """What a sheet can go with.

    Args:
        fitting: values of the forms that the device can take, the recommended one first.
        taken: the one among them that left last, else the recommended one.
    """

    fitting: tuple[str, ...]
    taken: str


class Sheeting:
    """The verb "sheet". Nothing here writes a file: shells draw what they get."""

    def __init__(
        self, register: SheetRegister, bundling: Bundling, clock: Clock, kinds: Kinds, words: Sequence[str]
    ) -> None:
        self._register = register
        self._bundling = bundling
        self._clock = clock
        self._kinds = kinds
        self._words = words

    def language_of(self, person: str, otherwise: Language) -> Language:
        """The language in which somebody's sheets are written.

        Args:
            otherwise: where nobody has chosen one yet.
        """
        kept = self._register.person_languages().get(person.casefold())
        return otherwise if kept is None or kept not in set(Language) else Language(kept)

    def choose_language(self, person: str, language: Language) -> None:
        """Remember the language of somebody's sheets.

        Raises:
            Unavailable: as the register.
        """
        with self._register.change() as change:
            change.keep_person_language(person, language.value)

    def call(self) -> str:
        """Whom to call, as the householder typed it; empty where nothing was."""
        return self._register.whom_to_call()

    def choose_call(self, text: str) -> None:
        """Remember whom to call; empty forgets it.

        It stands on the sheet that goes along with a bundle, so no part of a passphrase may stand in it: neither of one
        that waits here, nor anything that reads like one.

        Raises:
            Refused: call-too-long, call-gives-away, and as `names.display_name`.
            Unavailable: as the register.
        """
        typed = text.strip()
        if len(typed) > LONGEST_CALL:
            raise Refused("call-too-long", length=len(typed), limit=LONGEST_CALL)
        if self._gives_away(typed):
            raise Refused("call-gives-away")
        kept = names.display_name(typed, "whom to call") if typed else ""
        with self._register.change() as change:
            change.keep_whom_to_call(kept)

    def _gives_away(self, typed: str) -> bool:
        if reads_like_words(typed, frozenset(self._words)):
            return True
        for one in self._register.passes() if typed else ():
            if one.key_is_here:
                with contextlib.suppress(Refused, Unavailable):  # a keyring that is closed leaves the list of words
                    if gives_away(typed, self._bundling.passphrase(one)):
                        return True
        return False

    def forms(self, chosen: Pass) -> SheetForms:
        """The forms that a sheet of a pass can go with, and the one that it goes with where nothing is said."""
        fitting = self._kinds.of(chosen.kind).forms
        return SheetForms(fitting, self._left(chosen, fitting))

    def sheet(self, chosen: Pass, form: str | None, language: Language) -> SheetFacts:
        """What the sheet of a device says; it needs neither key nor passphrase.

        Args:
            form: value of a `core.bundle.Form`, what it goes with; where nothing is said the one that left last, else
                the one that suits the device.

        Raises:
            Refused: no-household.
        """
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        kind = self._kinds.of(chosen.kind)
        taken = self._left(chosen, kind.forms) if form is None else str(form)
        return SheetFacts(
            person=chosen.person,
            device=chosen.device,
            kind=kind.words(language),
            household=household.name,
            made=self._clock.now(),
            ends=chosen.not_after,
            steps=kind.steps(taken, language)[:MOST_STEPS],
            call=self.call(),
            language=language,
            practice=household.practice,
            laptop=kind.family in _LAPTOPS,
            typed=kind.typed(household.gateway_host, chosen.identity, language) if taken in WITHOUT_SETTINGS else (),
        )

    def _left(self, chosen: Pass, fitting: tuple[str, ...]) -> str:
        """The form in which the bundle left last, where the device's kind has steps for it."""
        copies = self._register.copies((chosen.serial,))
        left = [one for one in copies if one.form in fitting and one.came is not Came.NEVER]
        last = max(left, key=lambda one: (one.made, one.number), default=None)
        return fitting[0] if last is None else last.form

    def card(self, chosen: Pass, language: Language) -> CardFacts:
        """What the passphrase card of a waiting bundle says.

        Raises:
            Refused: pass-handed-over, passphrase-lost.
            Unavailable: as the vault.
        """
        return CardFacts(chosen.person, self._bundling.passphrase(chosen), language)

    def messages(self, chosen: Pass, language: Language) -> Messages:
        """The two messages for somebody who is far away.

        Raises:
            Refused: pass-handed-over, passphrase-lost.
            Unavailable: as the vault.
        """
        return hand_over_sheet.messages(chosen.person, chosen.device, self._bundling.passphrase(chosen), language)


def language(text: str) -> Language:
    """A language by its code.

    Raises:
        Refused: language-unknown.
    """
    wanted = text.strip().casefold()
    if wanted not in set(Language):
        raise Refused("language-unknown", text=text[:40], known=tuple(Language))
    return Language(wanted)
