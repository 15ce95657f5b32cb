"""The family of things that can go wrong, told apart by whose move it is.

    HearthkeyError          carries a code and facts, never prose
      Refused               the householder can mend it: the sentence names the remedy
        rehearsal.RehearsalFailed    a bundle did not open, or did not get in
      Unavailable           the world is in the way: keyring, disk, another copy of the app
      Bug                   our fault: nothing the householder did

The sentence for a code stands in `core.sentences.errors`; a shell looks it up, translates it and
fills in the facts. Cancelling is not an error.
"""

from __future__ import annotations

Fact = str | int | float | tuple[str, ...] | None


class HearthkeyError(Exception):
    """Something went wrong that has a name.

    Args:
        code: which sentence tells it, for instance ``name-too-long``.
        facts: what the sentence needs; never a secret, for facts reach logs and screens.
    """

    def __init__(self, code: str, **facts: Fact) -> None:
        super().__init__(code, facts)
        self.code = code
        self.facts: dict[str, Fact] = facts

    def __reduce__(self) -> tuple[object, ...]:
        """Cross from one process of the app to another."""
        return _again, (type(self), self.code, self.facts)

    def __str__(self) -> str:
        """Code and facts for a log; people read the sentence instead."""
        told = ", ".join(f"{name}={value!r}" for name, value in self.facts.items())
        return f"{self.code}({told})"


def _again(family: type[HearthkeyError], code: str, facts: dict[str, Fact]) -> HearthkeyError:
    return family(code, **facts)


class Refused(HearthkeyError):
    """What was asked cannot be done as asked, and the householder can mend that."""


class Unavailable(HearthkeyError):
    """Something outside the app does not answer, is locked, is full or is gone."""


class Bug(HearthkeyError):
    """The app contradicts itself."""


class Cancelled(HearthkeyError):
    """The householder changed their mind. No error: a shell says nothing, or that nothing is half done."""
