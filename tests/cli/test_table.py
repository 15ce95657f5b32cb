"""Many devices at once, from a table: all of them or none."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.running import Cottage
from tests.fakes.workshop import QuickWorkshop

HEAD = "person,device,kind,until,guest\n"


def added(cottage: Cottage, tmp_path: Path, content: bytes) -> tuple[int, str]:
    """Add a table; return the exit code and the code of the error, if there is one."""
    (tmp_path / "table.csv").write_bytes(content)
    cottage.world.workshop = QuickWorkshop()
    ran = cottage.unlocked("add", "--from", tmp_path / "table.csv", "--json")
    return ran.code, ran.told.get("error", {}).get("code", "")


def devices(cottage: Cottage) -> int:
    """How many passes there are."""
    return len(cottage.run("list", "--json").told["devices"])


def test_a_table_is_enrolled_at_once(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a large family is typed in one by one."""
    table = HEAD + "Ines,watch,linux,,\nTomasz,phone,iphone,2027-05-01,\nBoiler engineer,phone,android,,yes\n"
    assert added(cottage, tmp_path, b"\xef\xbb\xbf" + table.encode()) == (0, "")
    told = cottage.run("list", "--json").told["devices"]
    assert [(one["person"], one["name"], one["guest"]) for one in told if one["name"] in {"watch", "phone"}] == [
        ("Ines", "phone", False),
        ("Ines", "watch", False),
        ("Tomasz", "phone", False),
        ("Boiler engineer", "phone", True),
    ]
    assert cottage.run("show", "Tomasz phone", "--json").told["passes"][0]["not_after"] == "2027-05-01T23:59:59Z"


@pytest.mark.parametrize(
    ("content", "code"),
    [
        (b"", "table-empty"),
        (HEAD.encode(), "table-empty"),
        (b"who,what\nInes,watch\n", "table-malformed"),
        ((HEAD + "Ines,watch\n").encode(), "table-malformed"),
        ((HEAD + "Ines,watch,linux,,,surplus\n").encode(), "table-malformed"),
        ((HEAD + "Ines,watch,linux,tomorrow,\n").encode(), "date-malformed"),
        ((HEAD + "Ines,watch,toaster,,\n").encode(), "kind-unknown"),
        ((HEAD + "Ines,watch,linux,,\nInes,Watch,linux,,\n").encode(), "enrolled-twice"),
        ((HEAD + "Ines,watch,linux,,\nInes,phone,linux,,\n").encode(), "device-exists"),
        ((HEAD + "Ines,watch\x00,linux,,\n").encode(), "name-unprintable"),
        ((HEAD + "Ines\u202e,watch,linux,,\n").encode(), "name-unprintable"),
        (b"\xff\xfe\x00", "file-unreadable"),
        ((HEAD + "Ines,watch,linux,,\n" * 60_000).encode(), "file-too-large"),
        ((HEAD + '"Ines,watch' + "q" * 200_000).encode(), "file-unreadable"),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_table_that_does_not_fit_enrols_nobody(cottage: Cottage, tmp_path: Path, content: bytes, code: str) -> None:
    """Broken if it fails: half a table is enrolled, or a cut one is taken for whole."""
    assert added(cottage, tmp_path, content) == (3, code)
    assert devices(cottage) == 3


def test_a_table_that_is_not_there_is_told(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a slip of the finger ends in a trace."""
    ran = cottage.unlocked("add", "--from", tmp_path / "none.csv", "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "file-missing")
