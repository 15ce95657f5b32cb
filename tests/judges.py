"""Finds the judges: programs of other hands that the tests ask for their verdict."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

import pytest

PACKAGE_LISTS = Path(__file__).parents[1] / "packaging" / "system-packages"


def needs(tool: str) -> str:
    """Return the path of a program, or end the test: skipped by name, or failed where CI is ``true``.

    A test that is skipped everywhere proves nothing, so the machine that decides may not skip.
    """
    found = shutil.which(tool)
    if found is not None:
        return found
    reason = f"{tool} is not installed (Debian package {package_of(tool)})"
    if os.environ.get("CI") == "true":
        pytest.fail(reason)
    pytest.skip(reason)


def package_of(tool: str) -> str:
    """Name the Debian package of a judge, as packaging/system-packages has it."""
    for listed in sorted(PACKAGE_LISTS.glob("*.txt")):
        for line in listed.read_text(encoding="utf-8").splitlines():
            package, _, probe = line.partition(" ")
            if probe == f"command:{tool}":
                return package
    return "unknown: packaging/system-packages does not list it"
