"""Makes registers and sealed copies of the present schema version, to be opened by every later app; practice data.

One household is as on its first evening, the other one has grown: a renewal, a visit, half a succession, another host
name, parts for a deputy and a stop set.

    PYTHONPATH=app:. python tests/past/make.py

Run it once for each new schema version and never again for an old one: what counts is what that app wrote.
"""

from __future__ import annotations

import shutil
import tempfile
from datetime import timedelta
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME, newest
from hearthkey.core import deputy
from hearthkey.core.languages import Language
from hearthkey.core.succession import Cause
from hearthkey.pki import copy_lock, deputy_lock
from hearthkey.services.settling import SettleRequest
from tests.fakes.home import PASSPHRASE, Home, at_home

HERE = Path(__file__).parent


def grow(home: Home, folder: Path) -> str:
    """Let some years of housekeeping happen, and return the words of the deputy's parts, a line for each."""
    house, clock = home.house, home.world.clock
    house.__dict__.update(copy_locks=copy_lock, deputy_locks=deputy_lock)
    house.sealing.make_ready(PASSPHRASE)
    for text in ("Ines phone", "Tomasz laptop"):
        home.hand_over(text)
    house.visiting.plan(house.visiting.checked("Odile", clock.now() + timedelta(days=12)))
    clock.forward(days=300)
    home.unlock()
    house.settling.apply(house.settling.preview(SettleRequest(gateway_host="door.quince.example")))
    house.renewing.renew(house.renewing.preview(home.passes("Tomasz laptop")))
    house.succeeding.begin(PASSPHRASE, Cause.PLANNED)
    house.succeeding.go_on(told=True)
    house.sparing.renew()
    house.deputy_papers.stop_set(folder / "stop-set", Language.ENGLISH)
    drawn = house.deputies.draw(PASSPHRASE)
    house.deputies.keep(drawn)
    return "".join(f"{deputy.words_of(one, house.words).reveal()}\n" for one in drawn.parts)


def make_grown() -> None:
    """Keep the grown household's copy, and the parts that open it."""
    with tempfile.TemporaryDirectory() as folder, at_home(Path(folder) / "data") as home:
        words = grow(home, Path(folder))
        _made, changes = home.house.sealing.seal()
        shutil.copyfile(changes.files[0], HERE / f"grown-{newest()}.sealed.tar")
        (HERE / f"grown-{newest()}.parts.txt").write_text(words, encoding="ascii")


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
    make_grown()


if __name__ == "__main__":
    main()
