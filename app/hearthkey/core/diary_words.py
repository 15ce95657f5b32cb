"""What a diary entry is made of, so that it can be said in another language: a small closed form of JSON (RFC 8259).

A value is a text, a whole number, or an object with exactly the keys of one of these:

- {"phrase": template, "facts": {name: value}}, with a fact for each name in the template and no other;
- {"items": [value], "comma": joint, "joint": joint}, with joints of `core.phrases`;
- {"at": moment (ISO 8601), "style": name of a `Style`}.

The chain of the diary is over the English sentence alone. So words count only while they make exactly that sentence,
and hold nothing that the sentence does not vouch for: a text that brings its translations along is kept as English.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import datetime
from string import Formatter

from hearthkey.core.phrases import AND, BESIDE, COMMA, SEMICOLON, Listing, Moment, Phrase, Style
from hearthkey.core.sentences.sentence import Sentence

_JOINTS = (COMMA, AND, SEMICOLON, BESIDE)
_PHRASE, _LISTING, _MOMENT = {"phrase", "facts"}, {"items", "comma", "joint"}, {"at", "style"}


def written(sentence: str) -> str:
    """The words of a sentence; empty where it does not know what it is made of, or would not be heard again."""
    if not isinstance(sentence, Phrase | Listing):
        return ""
    try:
        words = json.dumps(_told(sentence), ensure_ascii=False, separators=(",", ":"))
    except (KeyError, ValueError):
        return ""
    return words if isinstance(heard(words, str(sentence)), Phrase | Listing) else ""


def heard(words: str, sentence: str) -> str:
    """The phrase or listing that words stand for, or the sentence where they are malformed or make another one.

    Args:
        words: as `written`, or anything else.
        sentence: English, as the diary has it.
    """
    if not words:
        return sentence
    try:
        value = _value(json.loads(words, object_pairs_hook=_once), len(sentence))
    except (ValueError, TypeError, KeyError, OverflowError, RecursionError):
        return sentence
    return value if isinstance(value, Phrase | Listing) and value == sentence else sentence


def _told(fact: object) -> object:
    """A value as what `json` writes."""
    if isinstance(fact, Phrase | Sentence):
        facts = {name: _told(fact.facts[name]) for name in _names(fact.template)}
        return {"phrase": fact.template, "facts": facts}
    if isinstance(fact, Listing):
        return {"items": [_told(one) for one in fact.items], "comma": fact.comma, "joint": fact.joint}
    if isinstance(fact, Moment):
        return {"at": fact.at.isoformat(), "style": fact.style.name}
    return fact if type(fact) is int else str(fact)


def _names(template: str) -> dict[str, None]:
    """The facts that a template names, in their order.

    Raises:
        ValueError: it asks for more than their names.
    """
    found: dict[str, None] = {}
    for _text, name, form, conversion in Formatter().parse(template):
        if name is None:
            continue
        if not name.isidentifier() or form or conversion:
            raise ValueError(template)
        found[name] = None
    return found


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    if len({name for name, _value in pairs}) != len(pairs):
        raise ValueError(pairs)
    return dict(pairs)


def _value(told: object, most: int) -> str | int:
    """Read a value.

    Args:
        most: letters; a piece of a sentence is no longer than the sentence, and what would be is not put together.
    """
    if isinstance(told, str) or type(told) is int:
        return told
    if not isinstance(told, dict):
        raise TypeError(told)
    if told.keys() == _PHRASE:
        return _phrase(told["phrase"], told["facts"], most)
    if told.keys() == _LISTING:
        return _listing(told, most)
    if told.keys() == _MOMENT:
        return Moment(datetime.fromisoformat(told["at"]), Style[told["style"]])
    raise ValueError(told)


def _phrase(template: object, told: object, most: int) -> Phrase:
    if not isinstance(template, str) or not isinstance(told, dict) or told.keys() != _names(template).keys():
        raise ValueError(template)
    facts: Mapping[str, str | int] = {name: _value(fact, most) for name, fact in told.items()}
    length = 0
    for text, name, _form, _conversion in Formatter().parse(template):
        length += len(text) + (0 if name is None else len(str(facts[name])))
    if length > most:
        raise ValueError(length)
    return Phrase(template, facts)


def _listing(told: Mapping[str, object], most: int) -> Listing:
    items, comma, joint = told["items"], told["comma"], told["joint"]
    if not isinstance(items, list) or comma not in _JOINTS or joint not in _JOINTS or len(items) > most + 1:
        raise ValueError(told)
    things = [one for one in (_value(item, most) for item in items) if isinstance(one, str)]
    if len(things) != len(items) or sum(map(len, things)) > most:
        raise ValueError(told)
    return Listing(things, str(joint), str(comma))
