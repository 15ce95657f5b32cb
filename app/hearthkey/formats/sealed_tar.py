"""The files of a sealed copy as tar archives (POSIX.1-1988 ustar): always written the same way, read with care."""

from __future__ import annotations

import hashlib
import io
import json
import re
import tarfile
from collections.abc import Mapping
from datetime import UTC, datetime

from hearthkey.core.errors import Refused
from hearthkey.core.sealed import Contents

IDENTITY, SEALED, HOW = "identity.age", "household.tar.age", "how-to-open.txt"
"""The three files of the outer archive."""

_DEPUTY = re.compile(r"deputy-([0-9A-F]{4})\.age")

MANIFEST, MARK = "manifest.json", "manifest.mark"
REGISTER, CA_KEY, SECRETS = "register.db", "ca-key.age", "secrets.json"
FORMAT = "hearthkey sealed copy 1"

LARGEST = 256 * 1024 * 1024
"""Octets of a copy. A register of 10,000 devices has about 30 million."""

_MOST_FILES = 500
_INNER = frozenset({MANIFEST, MARK, REGISTER, CA_KEY, SECRETS})


def pack(files: Mapping[str, bytes], made: datetime) -> bytes:
    """Write an archive: names in order, mode 0600, no owner, one time for all."""
    out = io.BytesIO()
    with tarfile.open(fileobj=out, mode="w", format=tarfile.USTAR_FORMAT) as tar:
        for name in sorted(files):
            about = tarfile.TarInfo(name)
            about.size, about.mode, about.mtime = len(files[name]), 0o600, int(made.timestamp())
            tar.addfile(about, io.BytesIO(files[name]))
    return out.getvalue()


def unpack(data: bytes, part: str) -> dict[str, bytes]:
    """Read an archive into memory; nothing is ever written by its names.

    Args:
        part: which archive it is, for the sentence.

    Raises:
        Refused: copy-damaged, copy-too-large.
    """
    if len(data) > LARGEST:
        raise Refused("copy-too-large", limit=LARGEST)
    files: dict[str, bytes] = {}
    try:
        with tarfile.open(fileobj=io.BytesIO(data), mode="r:") as tar:
            for about in tar:
                file = tar.extractfile(about) if about.isreg() and about.name not in files else None
                if file is None or len(files) == _MOST_FILES:
                    raise Refused("copy-damaged", part=part)
                files[about.name] = file.read()
    except (tarfile.TarError, EOFError, ValueError, OSError, OverflowError):
        raise Refused("copy-damaged", part=part) from None
    return files


def manifest(contents: Contents) -> bytes:
    """What a copy says of itself, JSON, UTF-8."""
    told = {
        "format": FORMAT,
        "made": int(contents.made.timestamp()),
        "household": contents.household,
        "authority": contents.authority,
        "passes": contents.passes,
        "withdrawn": list(contents.withdrawn),
        "list_mark": contents.list_mark,
        "diary_entries": contents.diary_entries,
        "diary_link": contents.diary_link,
        "schema": contents.schema,
        "files": dict(contents.files),
    }
    return json.dumps(told, ensure_ascii=False, indent=1, sort_keys=True).encode() + b"\n"


def read_manifest(data: bytes) -> Contents:
    """Read what a copy says of itself.

    Raises:
        Refused: copy-damaged; copy-newer, for a format that this app does not know.
    """
    try:
        told = json.loads(data)
        if told["format"] != FORMAT:
            raise Refused("copy-newer", seen=str(told["format"])[:60], known=FORMAT)
        return Contents(
            made=datetime.fromtimestamp(int(told["made"]), UTC),
            household=str(told["household"]),
            authority=str(told["authority"]),
            passes=int(told["passes"]),
            withdrawn=tuple(str(one) for one in told["withdrawn"]),
            list_mark=int(told["list_mark"]),
            diary_entries=int(told["diary_entries"]),
            diary_link=str(told["diary_link"]),
            schema=int(told["schema"]),
            files=tuple(sorted((str(name), str(one)) for name, one in told["files"].items())),
        )
    except (ValueError, KeyError, TypeError, AttributeError, OverflowError, OSError):
        raise Refused("copy-damaged", part=MANIFEST) from None


def fingerprints(files: Mapping[str, bytes]) -> tuple[tuple[str, str], ...]:
    """SHA-256 of each file, hex, in the order of the names."""
    return tuple((name, hashlib.sha256(files[name]).hexdigest()) for name in sorted(files))


def check(files: Mapping[str, bytes], contents: Contents) -> None:
    """Compare every file with what the manifest says of it.

    Raises:
        Refused: copy-damaged.
    """
    seen = dict(fingerprints({name: data for name, data in files.items() if name not in {MANIFEST, MARK}}))
    told = dict(contents.files)
    for name in sorted(seen.keys() | told.keys() | (_INNER - {MANIFEST, MARK})):
        if name not in seen or seen[name] != told.get(name):
            raise Refused("copy-damaged", part=name)


def deputy_file(set_name: str) -> str:
    """The name of the file that a deputy's parts of that set open."""
    return f"deputy-{set_name}.age"


def set_of(name: str) -> str | None:
    """The set of which parts open a file of the outer archive, or None for any other file."""
    found = _DEPUTY.fullmatch(name)
    return None if found is None else found[1]


HOW_WITH_PARTS = """
With two parts of the deputy's set instead of the passphrase:
                     hearthkey deputy restore FILE --part FILE --part FILE
"""
"""Follows in copies that parts open."""

HOW_TO_OPEN = """\
This is a sealed copy of a household: its register, its CA key and its secrets.

With the app:        hearthkey restore FILE
Without the app:     tar -xf FILE
                     age --decrypt --identity identity.age household.tar.age | tar -x
identity.age lies under the household's passphrase as it was when copies were set up. ca-key.age inside is the CA
key, under the household's passphrase once more:
                     age --decrypt ca-key.age | openssl pkey -inform DER -out ca-key.pem
register.db is an SQLite file. Anybody who opens all of this can issue passes: keep it where the family's papers are.
"""
"""The text beside the two locked files; ASCII, so that any machine shows it."""
