"""The steps of a hand-over and the names of devices, as far as they are the same for every device of an OS family."""

from __future__ import annotations

from hearthkey.core.bundle import Form
from hearthkey.core.kinds import device_kind
from hearthkey.core.languages import Language
from hearthkey.core.steps import Step
from hearthkey.formats.pickup_texts import text
from hearthkey.formats.visitor import Family, family_of_kind


def steps(kind: str, form: Form, language: Language) -> tuple[Step, ...]:
    """What to do with a bundle in a form."""
    del form
    family = family_of_kind(kind)
    opened = f"open-{family}" if family in {Family.IOS, Family.ANDROID} else "open-other"
    return tuple(Step(text(key, language.value)) for key in (opened, "words", "back"))


def kind_words(kind: str, language: Language) -> str:
    """What a device kind is called."""
    del language
    return device_kind(kind).words
