"""The dress rehearsal of a bundle: what was tried, in order, and where it stopped."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from hearthkey.core.errors import Fact, Refused

STEPS = ("read", "open", "path", "name", "usage", "dates", "list", "handshake")
"""The order in which a device and a gateway meet these questions."""


@dataclass(frozen=True)
class Step:
    """One question of a rehearsal.

    Args:
        name: one of `STEPS`.
        passed: whether it went well; a step not reached is not in the rehearsal.
        seen: what was seen, in the words of the judge.
        code: the sentence that tells a failure, empty where it passed.
        facts: what that sentence needs.
    """

    name: str
    passed: bool
    seen: str = ""
    code: str = ""
    facts: Mapping[str, Fact] = field(default_factory=dict)


@dataclass(frozen=True)
class Rehearsal:
    """All steps of one rehearsal of one form.

    Args:
        form: which form was rehearsed.
        steps: in order; the last one is the failed one, if any failed.
    """

    form: str
    steps: tuple[Step, ...]

    @property
    def failed(self) -> Step | None:
        """The step that failed, or None."""
        return next((step for step in self.steps if not step.passed), None)

    @property
    def passed(self) -> bool:
        """Whether every step was reached and went well."""
        return self.failed is None and tuple(step.name for step in self.steps) == STEPS


class RehearsalFailed(Refused):
    """A bundle failed a step of its rehearsal, so it may not leave."""

    def __init__(self, rehearsal: Rehearsal) -> None:
        failed = rehearsal.failed
        facts = {} if failed is None else {"step": failed.name, "seen": failed.seen, **failed.facts}
        code = failed.code if failed is not None and failed.code else "rehearsal-failed"
        super().__init__(code, **{"form": rehearsal.form, **facts})
        self.rehearsal = rehearsal
