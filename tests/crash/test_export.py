"""Kills an export at every moment: what lies under a final name is whole, and the list of copies knows of it."""

from __future__ import annotations

import itertools
from contextlib import closing
from pathlib import Path

from hearthkey.adapters.pictures import read_codes
from hearthkey.core.copies import Came
from hearthkey.core.household import FILE
from hearthkey.formats import bundle_file, codes
from tests.crash import verdict
from tests.crash.homes import Home


def whole_codes(folder: Path) -> list[str]:
    """The texts of all codes in a folder; every file under a final name has to show one, and be its owner's alone."""
    paths = [path for path in sorted(folder.iterdir()) if not path.name.startswith(".")]
    texts = [read_codes(path.read_bytes()) for path in paths]
    assert all(len(found) == 1 for found in texts)
    assert all(path.stat().st_mode & 0o777 == 0o600 for path in folder.iterdir())
    return [text for found in texts for text in found]


def hidden(folder: Path) -> list[str]:
    """What lies in a folder that nobody sees."""
    return sorted(path.name for path in folder.iterdir() if path.name.startswith("."))


def check_copies(home: Home, *, told: bool) -> None:
    """Every file that lies there belongs to a copy, which counts as made only if the diary tells of it."""
    with closing(verdict.open_register(home)) as register:
        copies = [one for one in register.copies() if one.folder == str(home.folder)]
    known = {name for one in copies if one.came is not Came.NEVER for name in one.names}
    assert {path.name for path in home.folder.iterdir() if not path.name.startswith(".")} <= known
    assert [one.came for one in copies if one.came is not Came.EXPECTED] == [Came.MADE] * told


def test_killed_at_any_moment(settled: dict[str, Home]) -> None:
    """If this fails, a pulled plug leaves half a bundle, or a copy that no list knows of, or blocks the next export.

    Half a file, which nobody sees, is gone once somebody exports to the same folder again.
    """
    home = settled[FILE]
    home.put_back()
    before, device = verdict.judge(home), "Ines’s phone"
    seen: set[int] = set()
    left: list[str] = []
    for stop_at in itertools.count(1):
        home.put_back()
        if not home.run("export", stop_at).killed:
            break
        seen.add(len(whole_codes(home.folder)))
        assert home.list_devices()[0] == 0
        verbs = verdict.judge(home).verbs
        assert verbs[:-1] in {before.verbs, before.verbs[:-1]}
        check_copies(home, told=len(verbs) > len(before.verbs))
        if not left and (left := hidden(home.folder)):
            assert home.run("export").refusal is None
            assert hidden(home.folder) == []
    check_copies(home, told=True)
    assert home.run("export").refusal is None
    assert bundle_file.read(codes.join(whole_codes(home.folder))).settings.device == device
    assert seen == set(range(max(seen) + 1))
    assert max(seen) > 1
    assert left != []
