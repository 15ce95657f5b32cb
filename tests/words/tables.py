"""Finds the sentences that stand in tables: of the core, and of the few modules of the window that have some."""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from enum import Enum

from hearthkey.core import phrases, sentences
from hearthkey.core.sentences.words import FIXED
from hearthkey.ui.board.rows import Step
from tests.words.messages import Message

SENTENCES, WORDS, DATES, BOARD = "sentences", "words", "dates", "board"

OF_THE_WINDOW = (
    ("hearthkey.ui.text", "_HERE"),
    ("hearthkey.ui.pages.founding_words", "_HERE"),
    ("hearthkey.ui.drawer.help_words", "HELP"),
    ("hearthkey.ui.drawer.legend", "SIGNS"),
    ("hearthkey.ui.drawer.legend", "LINES"),
    ("hearthkey.ui.drawer.device_words", "_WAITING"),
    ("hearthkey.ui.drawer.device_words", "_IN_USE"),
    ("hearthkey.ui.drawer.device_words", "_GUEST"),
    ("hearthkey.ui.drawer.device_words", "_DUE"),
    ("hearthkey.core.slots", "HOUSEHOLD_SLOTS"),
    ("hearthkey.core.slots", "GATEWAY_SLOTS"),
    ("hearthkey.core.slots", "DEVICE_SLOTS"),
)
"""Tables outside `core.sentences` whose texts are templates of the context "sentences"."""

NO_WORDS = {
    ("hearthkey.core.sentences.forwarding", "SOURCES"),
    ("hearthkey.core.sentences.words", "FIXED"),
    ("hearthkey.core.sentences.settling", "_FACT"),
    ("hearthkey.core.sentences.settling", "NAMED"),
}


def tables() -> list[Message]:
    """All messages of tables."""
    found = [message for name in _names() for message in _of_module(name)]
    for name, table in OF_THE_WINDOW:
        module = importlib.import_module(name)
        found += [Message(SENTENCES, text, _note(module)) for text in _texts(getattr(module, table))]
    joints = (phrases.COMMA, phrases.AND, phrases.SEMICOLON, phrases.BESIDE)
    found += [Message(SENTENCES, text, "Joins the things of a list, two by two.") for text in joints]
    found += [
        Message(WORDS, word, f"Stands for {{{fact}}} in sentences about what went wrong.")
        for fact, words in FIXED.items()
        for word in words
    ]
    found += [Message(BOARD, step.value, "Button at the end of a device's line.") for step in Step]
    return found + _dates()


def _dates() -> list[Message]:
    note = (
        "How a date is written: d day, MMMM month, MMM short month, yyyy year, dddd weekday, ddd short weekday, "
        "HH:mm time; words between straight apostrophes."
    )
    return [Message(DATES, style.value, note) for style in phrases.Style]


def _names() -> list[str]:
    names = (one.name for one in pkgutil.iter_modules(sentences.__path__))
    return [f"{sentences.__name__}.{name}" for name in names]


def _note(module: object) -> str:
    return (getattr(module, "__doc__", "") or "").partition("\n")[0]


def _of_module(name: str) -> Iterator[Message]:
    module = importlib.import_module(name)
    for variable, value in vars(module).items():
        own = variable.isupper() and (name, variable) not in NO_WORDS
        if not own or (isinstance(value, str) and variable.startswith("_")):
            continue
        for text in _texts(value):
            yield Message(SENTENCES, text, _note(module))


def _texts(value: object) -> Iterator[str]:
    """The texts in a table, but no keys, no names of things and nothing that is only a slot."""
    if isinstance(value, str):
        slot = value.startswith("{") and value.endswith("}") and value.count("{") == 1
        if not isinstance(value, Enum) and not slot and any(letter.isalpha() for letter in value):
            yield value
        return
    for one in _parts(value):
        yield from _texts(one)


def _parts(value: object) -> tuple[object, ...]:
    if isinstance(value, Mapping):
        return tuple(value.values())
    if is_dataclass(value):
        names = (field.name for field in fields(value))
        return tuple(getattr(value, name) for name in names if name not in {"key", "name", "key_set", "container"})
    return tuple(value) if isinstance(value, tuple | list) else ()
