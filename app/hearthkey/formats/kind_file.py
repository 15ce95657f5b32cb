"""Reads a device kind from its file, and says exactly what keeps it from being one.

The same for writers elsewhere, with an example: resources/formats/device-kind-1.md. Everything is required unless it
says otherwise there, and what is not known is refused: a word that nobody obeys must not look as if it were.
"""

from __future__ import annotations

import re
import tomllib
from datetime import date, datetime

from hearthkey.core.errors import Refused
from hearthkey.core.families import Family
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.kinds import (
    FORMS,
    OLD,
    STRONG,
    Ages,
    DeviceKind,
    Field,
    FormSteps,
    Texts,
    Told,
    Value,
)
from hearthkey.formats.kind_table import Table

FORMAT, VERSION = "hearthkey-device-kind", 1
LARGEST = 65_536
"""Octets of a file."""
MOST_STEPS = 7
"""More than these nobody follows with a phone in one hand."""
MOST_FIELDS, MOST_TRAPS, MOST_SOURCES = 12, 12, 24
LONGEST_WORDS, LONGEST_TEXT, LONGEST_VERSION = 60, 240, 20
"""Characters."""
LAST_PLACE = 999

_NAME = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)*")
_LONGEST_NAME = 32
_TOP = ("format", "version", "name", "place", "family", "key_set", "container", "forms", "checked", "tried")
_TABLES = ("words", "age", "why", "field", "steps", "trap", "source")
_SPOKEN = ("en", "de", "es")


def read(data: bytes, file: str, *, own: bool = False) -> DeviceKind:
    """Read a kind.

    Args:
        data: the file, of any content.
        file: its name, for the sentence that tells what is wrong with it.
        own: whether the householder wrote it.

    Raises:
        Refused: kind-file-too-large, kind-file-unreadable, kind-file-other, kind-file-newer, kind-file-missing,
            kind-file-unknown, kind-file-type, kind-file-language, kind-file-length, kind-file-hidden,
            kind-file-choice, kind-file-count, kind-file-name, kind-file-form-twice, kind-file-field-twice,
            kind-file-steps-missing, kind-file-steps-extra; each with `file`, most with `place`.
    """
    top = Table(file, "", _values(data, file))
    _check_format(top, file)
    top.only(_TOP + _TABLES, optional=("field", "trap"))
    age = top.table("age")
    age.only(("since", "until", *_SPOKEN), optional=("since", "until"))
    return DeviceKind(
        name=_name(top, file),
        place=top.number("place", LAST_PLACE),
        family=Family(top.choice("family", tuple(Family))),
        titles=_texts(top.table("words"), LONGEST_WORDS),
        ages=Ages(
            words=_texts(age, LONGEST_WORDS, beside=("since", "until")),
            since=age.text("since", LONGEST_VERSION, missing=""),
            until=age.text("until", LONGEST_VERSION, missing=""),
        ),
        key_set=KEY_SETS[top.choice("key_set", tuple(KEY_SETS))],
        container=top.choice("container", (STRONG, OLD)),
        reasons=_texts(top.table("why"), LONGEST_TEXT),
        can_take=_forms(top, file),
        fields=_fields(top, file),
        pitfalls=tuple(_texts(one, LONGEST_TEXT) for one in top.tables("trap", MOST_TRAPS, least=0)),
        sources=tuple(_source(one) for one in top.tables("source", MOST_SOURCES)),
        checked=_day(top, file),
        tried=top.truth("tried"),
        own=own,
    )


def file_name(name: str) -> str:
    """What the file of a kind is called."""
    return f"{name}.toml"


def is_name(text: str) -> bool:
    """Whether a kind can be called so."""
    return len(text) <= _LONGEST_NAME and _NAME.fullmatch(text) is not None


def _values(data: bytes, file: str) -> dict[str, object]:
    if len(data) > LARGEST:
        raise Refused("kind-file-too-large", file=file, limit=LARGEST)
    try:
        return tomllib.loads(data.decode("utf-8-sig"))
    except UnicodeDecodeError:
        raise Refused("kind-file-unreadable", file=file, seen="it is not UTF-8") from None
    except RecursionError:
        raise Refused("kind-file-unreadable", file=file, seen="it is nested too deep") from None
    except ValueError as error:
        raise Refused("kind-file-unreadable", file=file, seen=str(error)[:160]) from error


def _check_format(top: Table, file: str) -> None:
    """Tell another kind of file, and a newer one, before anything else about it is judged."""
    if top.values.get("format") != FORMAT:
        raise Refused("kind-file-other", file=file, wanted=FORMAT)
    version = top.number("version", 1_000_000)
    if version > VERSION:
        raise Refused("kind-file-newer", file=file, version=version, known=VERSION)


def _name(top: Table, file: str) -> str:
    name = top.text("name", _LONGEST_NAME)
    if not is_name(name):
        raise Refused("kind-file-name", file=file, text=name)
    return name


def _day(top: Table, file: str) -> date:
    found = top.values.get("checked")
    if isinstance(found, datetime) or not isinstance(found, date):
        raise Refused("kind-file-type", file=file, place="checked", wanted="a day such as 2026-11-25, without quotes")
    return found


def _texts(table: Table, longest: int, *, beside: tuple[str, ...] = ()) -> Texts:
    """The texts of all languages in a table that may hold some other keys."""
    table.languages(_SPOKEN)
    table.only((*_SPOKEN, *beside), optional=beside)
    return Texts(*(table.text(language, longest) for language in _SPOKEN))


def _fields(top: Table, file: str) -> tuple[Field, ...]:
    found: list[Field] = []
    for one in top.tables("field", MOST_FIELDS, least=0):
        labels = _texts(one, LONGEST_WORDS, beside=("value", "choose"))
        value = Value(one.choice("value", tuple(Value)))
        if any(before.value is value for before in found):
            raise Refused("kind-file-field-twice", file=file, place=one.place, text=value.value)
        found.append(Field(value, labels, one.text("choose", LONGEST_WORDS, missing="")))
    return tuple(found)


def _forms(top: Table, file: str) -> tuple[FormSteps, ...]:
    steps = top.table("steps")
    steps.known(FORMS)
    forms = top.choices("forms", FORMS)
    if len(set(forms)) < len(forms):
        twice = next(form for form in forms if forms.count(form) > 1)
        raise Refused("kind-file-form-twice", file=file, text=twice)
    for form in steps.values:
        if form not in forms:
            raise Refused("kind-file-steps-extra", file=file, text=form)
    for form in forms:
        if form not in steps.values:
            raise Refused("kind-file-steps-missing", file=file, text=form)
    return tuple(FormSteps(form, tuple(_told(one) for one in steps.tables(form, MOST_STEPS))) for form in forms)


def _told(table: Table) -> Told:
    """One step: a pair of texts in each language, the second of which may be left out in all of them."""
    table.languages(_SPOKEN)
    table.only(_SPOKEN)
    pairs = [table.pair(language, LONGEST_TEXT) for language in _SPOKEN]
    table.all_or_none(_SPOKEN, [bool(sees) for _, sees in pairs])
    return Told(Texts(*(do for do, _ in pairs)), Texts(*(sees for _, sees in pairs)))


def _source(table: Table) -> str:
    table.only(("text",))
    return table.text("text", LONGEST_TEXT)
