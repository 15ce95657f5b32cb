"""Runs one verb for each line it reads, each in a process of its own that may end in the middle.

Every process is a copy of this one, which has loaded everything and holds the CA key, so that a run costs no
start and no second of scrypt; and bundles are sealed with few rounds. None of that touches the disk or the
keyring, which is all that a crash can leave half done. A look at the devices is the whole command line, without
its start. Reads orders as JSON lines and answers each with a JSON line; `nursery.py` is the other side.
"""

from __future__ import annotations

import contextlib
import json
import os
import sys
from pathlib import Path
from typing import Any
from unittest import mock

# Loaded before the first copy is made, so that no copy loads them again.
from hearthkey.bootstrap import Door, House, harden, open_house
from hearthkey.cli import main as cli
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.secret import Secret
from hearthkey.pki import guard, pbes
from hearthkey.pki.keys import AuthorityKey
from tests.crash.moments import Moments
from tests.crash.verbs import VERBS, WORDS
from tests.fakes.copy_locks import QuickLocks

FEW_ROUNDS = 1_000


def run(order: dict[str, Any], key: AuthorityKey, sealed: str) -> int:
    """Run one verb, and write down if it was refused; return 0."""
    data, folder, errors = Path(order["data"]), Path(order["folder"]), Path(order["errors"])
    moment = Moments((data, folder), Path(order["trail"]), order["stop_at"], thin=order["thin"])
    moment.watch()
    house = House(data, place=order["place"])
    house.__dict__["copy_locks"] = QuickLocks()
    try:
        house.enter()
        house.keyholder.keep(key)
        with (
            mock.patch.object(AuthorityKey, "make", return_value=key),
            mock.patch.object(guard, "seal", return_value=sealed),
            mock.patch.object(guard, "open_guard", return_value=key),
            mock.patch.object(pbes, "ROUNDS", FEW_ROUNDS),
        ):
            VERBS[order["verb"]](house, folder)
        moment("at the end")
    except HearthkeyError as error:
        errors.write_text(error.code, encoding="ascii")
    finally:
        house.leave()
    return 0


def look(order: dict[str, Any]) -> int:
    """Run `hearthkey list --json` and return its exit code; what it says goes to a file."""
    with Path(order["told"]).open("w", encoding="utf-8") as told, contextlib.redirect_stdout(told):
        return cli.run(["list", "--json", "--data", order["data"]], open_house, Door())


def in_a_copy(order: dict[str, Any], key: AuthorityKey, sealed: str) -> int:
    """Run one order in a copy of this process and return its wait status."""
    made = os.fork()
    if made == 0:
        code, ran = 1, False
        try:
            code = look(order) if "told" in order else run(order, key, sealed)
            ran = True
        finally:
            sys.stderr.flush()
            if not ran:
                sys.excepthook(*sys.exc_info())
            os._exit(code)
    return os.waitpid(made, 0)[1]


def main() -> None:
    """Answer orders until there are no more."""
    harden()
    key = AuthorityKey.make()
    sealed = guard.seal(key, Secret(WORDS))
    for line in sys.stdin:
        status = in_a_copy(json.loads(line), key, sealed)
        sys.stdout.write(json.dumps(status) + "\n")
        sys.stdout.flush()


if __name__ == "__main__":
    main()
