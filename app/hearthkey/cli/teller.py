"""Says things: results to standard output, everything else to standard error."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Mapping
from datetime import datetime
from pathlib import PurePath

from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.network import Caution
from hearthkey.core.sentences import cautions, progress

DONE, NOT_UNDERSTOOD, REFUSED, UNAVAILABLE, FAULT, CANCELLED = 0, 2, 3, 4, 5, 130


class Teller:
    """One for each run.

    Args:
        as_json: print one JSON object instead of lines.
        quiet: say nothing about progress.
    """

    def __init__(self, *, as_json: bool, quiet: bool) -> None:
        self.as_json = as_json
        self._quiet = quiet
        self._told = False

    def result(self, lines: Iterable[str], data: Mapping[str, object]) -> None:
        """Say what came of it."""
        self._told = True
        if self.as_json:
            print(json.dumps(data, ensure_ascii=False, indent=2, default=_plain))
            return
        for line in lines:
            print(line)

    def aside(self, text: str) -> None:
        """Say something that is not the result."""
        print(text, file=sys.stderr, flush=True)

    def progress(self, step: str, /, **facts: object) -> None:
        """Say which step is being taken."""
        if not self._quiet:
            self.aside(f"  {progress.step(step, dict(facts))} ...")

    def cautions(self, found: Iterable[Caution]) -> None:
        """Say what the householder should know."""
        for caution in dict.fromkeys(found):
            self.aside(f"Caution: {cautions.say(caution)}")

    def failure(self, error: HearthkeyError) -> int:
        """Say what it means and what to do, and return the exit code of its family."""
        from hearthkey.core.sentences import errors  # noqa: PLC0415 - a verb that goes well does without it

        told = errors.say(error)
        family, code = family_of(error)
        if self.as_json and not self._told:
            body = {
                "family": family,
                "code": error.code,
                "means": str(told.means),
                "do": str(told.do),
                "facts": error.facts,
            }
            print(json.dumps({"error": body}, ensure_ascii=False, indent=2, default=_plain))
        else:
            self.remark(error)
        return code

    def remark(self, error: HearthkeyError) -> None:
        """Say what it means and what to do, where the verb goes on all the same."""
        from hearthkey.core.sentences import errors  # noqa: PLC0415 - as in `failure`

        told = errors.say(error)
        self.aside(f"{told.means} {told.do}")


def family_of(error: HearthkeyError) -> tuple[str, int]:
    """Name and exit code of an error's family."""
    if isinstance(error, Refused):
        return "refused", REFUSED
    if isinstance(error, Unavailable):
        return "unavailable", UNAVAILABLE
    return "bug", FAULT


def _plain(value: object) -> object:
    if isinstance(value, datetime):
        return value.strftime("%Y-%m-%dT%H:%M:%SZ")
    if isinstance(value, PurePath):
        return str(value)
    raise TypeError(f"no JSON for {type(value).__name__}")
