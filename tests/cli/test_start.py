"""A verb loads what it needs and no more: `list` and `--help` load nothing heavy."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.cli.running import environment
from tests.fakes.home import founded

HEAVY = (
    "cryptography",
    "keyring",
    "qrcode",
    "PIL",
    "pyzipper",
    "OpenSSL",
    "zxcvbn",
    "filelock",
    "pyrage",
    "zxingcpp",
    "PySide6",
)
SCRIPT = """
import sys
from hearthkey.bootstrap import open_house
from hearthkey.cli.main import run
try:
    code = run(sys.argv[1:], open_house)
except SystemExit as ended:
    code = ended.code
print(code, *sorted(sys.modules), file=sys.stderr)
"""


@pytest.mark.parametrize(
    "words",
    [["--help"], ["--version"], ["list", "--help"], ["list"], ["list", "--json"], ["diary"]],
    ids=" ".join,
)
def test_nothing_heavy_is_loaded(tmp_path: Path, words: list[str]) -> None:
    """Broken if it fails: looking at the household takes as long as signing for it."""
    founded().put_into(tmp_path / "data" / "hearthkey")
    ran = subprocess.run(
        [sys.executable, "-c", SCRIPT, *words],
        env=environment(tmp_path),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=True,
    )
    code, *loaded = ran.stderr.split()
    assert code == "0"
    assert ran.stdout
    assert "hearthkey.cli.main" in loaded
    assert [name for name in loaded if name.split(".")[0] in HEAVY] == []
