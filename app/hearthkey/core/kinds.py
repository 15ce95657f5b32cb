"""What a device's operating system family can read, so that nobody is asked about algorithms.

What is known of each kind is data: a file for each in resources/device-kinds, and the householder's own beside
them. `formats.kind_file` reads one, `adapters.kinds_folder` finds them all; here is what they come to.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from functools import cached_property
from typing import NamedTuple

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.families import Family
from hearthkey.core.keysets import KeySet
from hearthkey.core.languages import Language
from hearthkey.core.phrases import Polyglot
from hearthkey.core.steps import Step

STRONG, OLD = "strong", "old"
"""PKCS#12 containers. Strong: PBES2 with AES-256. Old: 3DES and a SHA-1 MAC, for old importers."""

FORMS = ("profile", "script", "pkcs12", "pem", "bundle", "archive", "codes")
"""Values of the forms that a kind can name; which of them are written is `core.bundle.Form`'s to say."""

WITHOUT_SETTINGS = frozenset({"pkcs12", "archive", "pem"})
"""Forms after which a device may ask for server and identity."""

OTHER = "other"
"""The kind of whatever is none of the others, and of a device whose own kind is gone."""


class Texts(NamedTuple):
    """One text in every language that the app speaks."""

    en: str
    de: str
    es: str

    def of(self, language: str) -> str:
        """The text in a language by its code, in English for one that the app does not speak."""
        return {Language.GERMAN: self.de, Language.SPANISH: self.es}.get(_spoken(language), self.en)


def _spoken(language: str) -> Language:
    return Language(language) if language in set(Language) else Language.ENGLISH


class Value(StrEnum):
    """What is typed or chosen in a field of a built-in client.

    The first three are text that the household knows: the gateway's host name, which is its IKE ID too, and the
    device's own IKE ID (RFC 7296 section 3.5). The others are chosen on the device.
    """

    SERVER = "server"
    REMOTE_ID = "remote-id"
    LOCAL_ID = "local-id"
    NAME = "name"
    TYPE = "type"
    CERTIFICATE = "certificate"
    AUTHORITY = "authority"


@dataclass(frozen=True)
class Field:
    """A field that the built-in client asks for.

    Args:
        value: what goes into it.
        labels: how the device calls it, by the language that the device speaks.
        choose: what the device calls the right choice, where it offers several; else empty.
    """

    value: Value
    labels: Texts
    choose: str = ""

    def label(self, language: str) -> str:
        """How a device that speaks this language calls it."""
        return self.labels.of(language)


@dataclass(frozen=True)
class Told:
    """One step in every language."""

    do: Texts
    sees: Texts

    def step(self, language: str) -> Step:
        """The step in one of them."""
        return Step(self.do.of(language), self.sees.of(language))


@dataclass(frozen=True)
class FormSteps:
    """A form that a kind can take, and what to do with it there."""

    form: str
    steps: tuple[Told, ...]


@dataclass(frozen=True)
class Ages:
    """Which versions of the system a kind is about.

    Args:
        words: for people, for instance "Android 13 or older".
        since: the first version, or empty for all before.
        until: the last version, or empty for all after.
    """

    words: Texts
    since: str
    until: str


@dataclass(frozen=True)
class DeviceKind:
    """One answer to "which phone is it?".

    Args:
        name: how the command line and the register call it.
        place: where it stands in a list of kinds, lower ones first.
        family: of operating systems.
        titles: how people call it.
        ages: which versions of the system.
        key_set: what its built-in client can sign with.
        container: the PKCS#12 container that its importer reads.
        reasons: the facts behind these two.
        can_take: the forms that it can take, the recommended one first.
        fields: what its built-in client asks for.
        pitfalls: what is known to go wrong.
        sources: where all of this was read.
        checked: the day when it was last compared with its sources.
        tried: whether it was tried on such a device.
        own: whether it is the householder's own file, or one that came with the app.
    """

    name: str
    place: int
    family: Family
    titles: Texts
    ages: Ages
    key_set: KeySet
    container: str
    reasons: Texts
    can_take: tuple[FormSteps, ...]
    fields: tuple[Field, ...]
    pitfalls: tuple[Texts, ...]
    sources: tuple[str, ...]
    checked: date
    tried: bool
    own: bool = False

    def words(self, language: str = Language.ENGLISH) -> str:
        """How people call it."""
        return self.titles.of(language)

    def why(self, language: str = Language.ENGLISH) -> str:
        """Why it gets this key set and this container."""
        return self.reasons.of(language)

    @property
    def title(self) -> Polyglot:
        """How people call it, for sentences."""
        return Polyglot(self.titles.en, self.titles._asdict())

    def typed(self, server: str, identity: str, language: str) -> tuple[tuple[str, str], ...]:
        """What is typed or chosen on the device, by its own labels; nothing where they are not known.

        Args:
            server: where it connects to, which is the gateway's IKE ID too.
            identity: its own IKE ID.
        """
        values = {Value.SERVER: server, Value.REMOTE_ID: server, Value.LOCAL_ID: identity}
        pairs = ((one.label(language), one.choose or values.get(one.value, "")) for one in self.fields)
        return tuple((label, value) for label, value in pairs if value)

    @property
    def forms(self) -> tuple[str, ...]:
        """Values of the forms that it can take, the recommended one first."""
        return tuple(one.form for one in self.can_take)

    def best_form(self, among: Sequence[str]) -> str | None:
        """The form that suits it best of those there are, or None where it can take none of them."""
        return next((form for form in self.forms if form in among), None)

    def steps(self, form: str, language: str = Language.ENGLISH) -> tuple[Step, ...]:
        """What to do with a form on the device; nothing for one that it cannot take."""
        return tuple(told.step(language) for one in self.can_take if one.form == form for told in one.steps)

    def traps(self, language: str = Language.ENGLISH) -> tuple[str, ...]:
        """What is known to go wrong, each in a sentence or two."""
        return tuple(one.of(language) for one in self.pitfalls)


class LeftOut(NamedTuple):
    """An own file that could not be read, so that the app goes on without it.

    Args:
        file: its name.
        trouble: why, and how to mend it.
    """

    file: str
    trouble: Refused


@dataclass(frozen=True)
class Kinds:
    """All kinds that the app knows, in the order in which they are offered.

    Args:
        all: one of them is called `OTHER`.
        left_out: own files that could not be read.
    """

    all: tuple[DeviceKind, ...]
    left_out: tuple[LeftOut, ...] = ()

    def __iter__(self) -> Iterator[DeviceKind]:
        """In order."""
        return iter(self.all)

    @cached_property
    def _by_name(self) -> dict[str, DeviceKind]:
        return {one.name: one for one in self.all}

    @property
    def names(self) -> tuple[str, ...]:
        """Their names, in order."""
        return tuple(one.name for one in self.all)

    def __contains__(self, name: object) -> bool:
        """Whether there is a kind of this name."""
        return name in self._by_name

    def find(self, name: str) -> DeviceKind:
        """Look a kind up that somebody named.

        Raises:
            Refused: kind-unknown.
        """
        try:
            return self._by_name[name]
        except KeyError:
            raise Refused("kind-unknown", text=name[:40], known=self.names) from None

    def of(self, name: str) -> DeviceKind:
        """The kind of a device that is enrolled already: `OTHER` where its own is gone, for the device is not."""
        found = self._by_name.get(name) or self._by_name.get(OTHER)
        if found is None:
            raise Bug("kinds-incomplete", name=OTHER)
        return found

    def of_family(self, family: Family) -> DeviceKind:
        """What to take a device for of which only the family is known: the first kind of it in the list."""
        return next((one for one in self.all if one.family is family), self.of(OTHER))


def container(name: str) -> str:
    """Check the name of a PKCS#12 container.

    Raises:
        Refused: container-unknown.
    """
    if name not in {STRONG, OLD}:
        raise Refused("container-unknown", text=name[:40])
    return name
