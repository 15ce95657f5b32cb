"""Writes the messages of the app into resources/translations, for translators; with --check, says whether they differ.

python -m tests.words LUPDATE [--check]
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

from tests.words.extracting import stale, update

if __name__ == "__main__":
    lupdate, *rest = sys.argv[1:]
    if rest == ["--check"]:
        old = stale(Path(lupdate))
        for path in old:
            sys.stderr.write(f"Not up to date: {path}. sh packaging/words.sh renews it.\n")
        sys.exit(bool(old))
    try:
        sys.stdout.write(update(Path(lupdate)))
    except subprocess.CalledProcessError as failed:
        sys.exit(failed.returncode)
