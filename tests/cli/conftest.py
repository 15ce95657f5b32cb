"""The command line over a founded household, in this process or in one of its own."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from tests.cli.running import Cottage
from tests.fakes.home import PASSPHRASE, founded


@pytest.fixture
def cottage(tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Cottage:
    """Quince Cottage with three waiting passes, its app not running.

    Opening the CA key takes more than a second on purpose, so here a stand-in knows the passphrase by heart;
    tests/cli/test_terminal.py and tests/cli/test_tour.py run the real one.
    """

    def open_guard(text: str, passphrase: Secret[str]) -> AuthorityKey:
        del text
        if passphrase != PASSPHRASE:
            raise Refused("wrong-passphrase")
        return founded().key

    monkeypatch.setattr(guard, "open_guard", open_guard)
    words = tmp_path / "words.txt"
    words.write_text(PASSPHRASE.reveal() + "\n", encoding="ascii")
    return Cottage(tmp_path / "data", founded().put_into(tmp_path / "data"), capsys, words)
