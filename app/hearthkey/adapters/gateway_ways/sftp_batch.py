"""Words for OpenSSH's sftp program, and what its answers mean (sftp(1), "INTERACTIVE COMMANDS")."""

from __future__ import annotations

import re

PLAIN_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,99}")
"""Names that we give to sets and folders; any other name at the gateway is none of ours."""

_TAKEN = frozenset(" \t\"'\\*?[]#")
"""What sftp splits, quotes, expands or ends a line at."""

_PLACE = "Remote working directory: "
_USUAL = ("sftp> ", "Uploading ", "Fetching ", "Changing mode on ", "Removing ", _PLACE)
"""Beginnings of lines that sftp prints when all is well; whatever else comes is a complaint."""


def quoted(name: str) -> str:
    """A remote name as sftp reads it back: each character of its own that means something is escaped.

    An absolute name, or one relative to the folder that sftp is in. A leading dash would be an option.
    """
    plain = f"./{name}" if name.startswith("-") else name
    return "".join(f"\\{one}" if one in _TAKEN else one for one in plain)


def at_home(folder: str) -> str:
    """A folder as people write it, for sftp, which begins in the user's home and does not know ``~``."""
    if folder in {"", "~"}:
        return "."
    return folder.removeprefix("~/").rstrip("/") or ("." if folder.startswith("~") else "/")


def complaint(answer: bytes) -> bytes:
    """What an answer says beside the usual; empty where the command did what it was to do."""
    lines = [line for line in answer.splitlines() if line.strip()]
    return b"\n".join(line for line in lines if not line.startswith(tuple(one.encode() for one in _USUAL)))


def place(answer: bytes) -> str:
    """The answer to ``pwd``; empty where there is none."""
    lines = answer.decode("utf-8", "replace").splitlines()
    return next((line.removeprefix(_PLACE) for line in lines if line.startswith(_PLACE)), "")


def folders(answer: bytes) -> list[str]:
    """Names of the folders in an answer to ``ls -ln`` that are ours: plain, and no links."""
    found = []
    for line in answer.decode("utf-8", "replace").splitlines():
        name = line.split()[-1].rsplit("/", 1)[-1] if line.startswith("d") else ""
        if PLAIN_NAME.fullmatch(name):
            found.append(name)
    return found


def free(answer: bytes) -> int | None:
    """The column "Avail" of an answer to ``df``: KiB, or with ``-i`` inodes; None where there is none."""
    for line in answer.decode("utf-8", "replace").splitlines():
        row = line.split()
        if len(row) == 5 and all(one.isdigit() for one in row[:4]):
            return int(row[2])
    return None
