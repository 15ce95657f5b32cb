"""Makes the register and a sealed copy of the present schema version, to be opened by every later app; practice data.

    PYTHONPATH=app:. python tests/past/make.py

Run it once for each new schema version and never again for an old one: what counts is what that app wrote.
"""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME, newest
from hearthkey.pki import copy_lock
from tests.fakes.home import PASSPHRASE, at_home

HERE = Path(__file__).parent


def main() -> None:
    """Found Quince Cottage, hand over, stop and revoke, and keep the file."""
    kept = HERE / f"register-{newest()}.db"
    if kept.exists():
        raise SystemExit(f"{kept} is kept as it is")
    with tempfile.TemporaryDirectory() as folder:
        with at_home(Path(folder) / "data") as home:
            home.house.__dict__["copy_locks"] = copy_lock  # scrypt is what it is, for a copy that is kept for years
            home.house.sealing.make_ready(PASSPHRASE)
            home.hand_over("Ines phone")
            home.stop("Tomasz laptop")
            home.revoke("Ines phone")
            made, changes = home.house.sealing.seal()
            shutil.copyfile(changes.files[0], HERE / f"{newest()}-{made.name}")
        shutil.copyfile(Path(folder) / "data" / FILE_NAME, kept)


if __name__ == "__main__":
    main()
