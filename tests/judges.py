"""Finds the judges: programs of other hands that the tests ask for their verdict."""

from __future__ import annotations

import os
import shutil
from pathlib import Path
from typing import NoReturn

import pytest

PACKAGE_LISTS = Path(__file__).parents[1] / "packaging" / "system-packages"

_FOR_ROOT = ("/usr/local/sbin", "/usr/sbin", "/sbin")
"""Where servers lie: not on the path of an ordinary login, and yet anybody may run them."""


def needs(tool: str) -> str:
    """Return the path of a program, or end the test as `unable` does."""
    found = shutil.which(tool, path=os.pathsep.join((os.environ.get("PATH", os.defpath), *_FOR_ROOT)))
    if found is None:
        unable(f"{tool} is not installed (Debian package {package_of(tool)})")
    return found


def unable(reason: str) -> NoReturn:
    """End the test for what this machine lacks: skipped by name, or failed where CI is ``true``.

    A test that is skipped everywhere proves nothing, so the machine that decides may not skip.
    """
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
