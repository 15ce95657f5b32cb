"""A sentence that a shell can translate before it fills in the facts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

UNKNOWN = "unknown"
"""What stands for a fact that nobody knows."""


class Sentence(NamedTuple):
    """A template and its facts.

    Args:
        template: English, with {names} of facts.
        facts: what stands in their places; a sentence among them is translated like the whole.
    """

    template: str
    facts: Mapping[str, object]

    def __str__(self) -> str:
        """The English sentence."""
        return self.template.format_map(_Shown(self.facts))


class _Shown(dict[str, object]):
    """Facts as people read them; one that is missing must not hide the sentence."""

    def __getitem__(self, name: str) -> str:
        return shown(self.get(name))


def shown(fact: object) -> str:
    """Write a fact as people read it."""
    if isinstance(fact, Sentence):
        return str(fact)
    if isinstance(fact, tuple | list):
        return ", ".join(str(one) for one in fact)
    return UNKNOWN if fact is None else str(fact)
