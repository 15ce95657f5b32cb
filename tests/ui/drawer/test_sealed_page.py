"""The sealed copies' page over the real household: written, tried with the right words and the wrong ones."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.core.household import KEYRING
from hearthkey.core.secret import Secret
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from hearthkey.ui.drawer.sealed_page import SealedPage
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from tests.fakes.home import PASSPHRASE, founded, opener

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck."""


@pytest.fixture
def errands(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Errands]:
    """Quince Cottage, unlocked once; opening the CA key is slow on purpose, so a stand-in knows the words by heart."""

    def open_guard(_text: str, passphrase: Secret[str]) -> AuthorityKey:
        if passphrase != PASSPHRASE:
            raise Refused("wrong-passphrase")
        return founded().key

    monkeypatch.setattr(guard, "open_guard", open_guard)
    world = founded().put_into(tmp_path / "data")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    made.unlock(PASSPHRASE, made, lambda _none: None, made.trouble.emit)
    qtbot.waitUntil(
        lambda: made.last is not None and bool(list((tmp_path / "data").glob("sealed/*"))), timeout=PATIENCE
    )
    made.refresh()
    yield made
    made.close()


def test_a_copy_is_written_and_tried(qtbot: QtBot, theme: Theme, tmp_path: Path, errands: Errands) -> None:
    """Broken: the only way to a copy that is known to open would be the command line."""

    def pick(_parent: QWidget, _title: str, _start: Path, then: Callable[[Path], None]) -> None:
        then(tmp_path / "stick")

    page = SealedPage(theme, errands, tmp_path, pick=pick)
    qtbot.addWidget(page)
    page.show()
    qtbot.waitUntil(page.write_button.isEnabled, timeout=PATIENCE)
    page.write_button.click()
    qtbot.waitUntil(lambda: "A sealed copy was written to" in page.outcome.text(), timeout=PATIENCE)
    assert len(list((tmp_path / "stick").iterdir())) == 1
    page.line.setText("wrong words")
    page.try_button.click()
    assert page.line.text() == ""
    qtbot.waitUntil(lambda: "does not open" in page.outcome.text(), timeout=PATIENCE)
    page.line.setText(PASSPHRASE.reveal())
    page.try_button.click()
    qtbot.waitUntil(lambda: "is whole and fits" in page.outcome.text(), timeout=PATIENCE)
    qtbot.waitUntil(lambda: "was opened on" in page.state.text(), timeout=PATIENCE)
