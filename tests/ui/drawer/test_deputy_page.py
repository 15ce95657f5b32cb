"""The page for whoever takes over, above the real household: parts drawn, saved, kept, tried; and the stop set."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core import deputy
from hearthkey.core.errors import Refused
from hearthkey.core.household import KEYRING
from hearthkey.core.secret import Secret
from hearthkey.formats.laid_sheet import Run
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from hearthkey.ui.drawer.deputy_page import DeputyPage
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import PASSPHRASE, founded, opener

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck."""


@pytest.fixture
def errands(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Errands]:
    """Quince Cottage; opening the CA key is slow on purpose, so a stand-in knows the words by heart."""

    def open_guard(_text: str, passphrase: Secret[str]) -> AuthorityKey:
        if passphrase != PASSPHRASE:
            raise Refused("wrong-passphrase")
        return founded().key

    monkeypatch.setattr(guard, "open_guard", open_guard)
    world = founded().put_into(tmp_path / "data")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    qtbot.waitUntil(lambda: made.last is not None, timeout=PATIENCE)
    yield made
    made.close()


@pytest.fixture
def ways() -> Ways:
    """Where clicks lead."""
    return Ways()


@pytest.fixture
def page(qtbot: QtBot, theme: Theme, tmp_path: Path, errands: Errands, ways: Ways) -> DeputyPage:
    """The page, in sight; folder dialogs choose a stick."""

    def pick(_parent: QWidget, _title: str, _start: Path, then: Callable[[Path], None]) -> None:
        then(tmp_path / "stick")

    made = DeputyPage(theme, errands, ways, tmp_path, pick=pick)
    qtbot.addWidget(made)
    made.show()
    return made


def drawn(qtbot: QtBot, page: DeputyPage) -> None:
    """Draw a set."""
    page.line.setText(PASSPHRASE.reveal())
    page.make_button.click()
    assert page.line.text() == ""
    qtbot.waitUntil(lambda: page.sheets.papers is not None, timeout=PATIENCE)


def saved(qtbot: QtBot, page: DeputyPage) -> None:
    """Save each part."""
    for number in (1, 2, 3):
        page.sheets.which.take(str(number))
        page.sheets.turn()
        page.sheets.save_button.click()
        qtbot.waitUntil(partial(_out, page, number), timeout=PATIENCE)


def _out(page: DeputyPage, count: int) -> bool:
    return len(page.sheets.out) == count


def shown(page: DeputyPage) -> str:
    """The text of the sheet in sight."""
    return " ".join(one.text for one in page.sheets.preview.marks if isinstance(one, Run))


def test_parts_are_drawn_saved_kept_and_tried(qtbot: QtBot, page: DeputyPage, tmp_path: Path) -> None:
    """Broken: the only way for somebody to take over would be the command line."""
    assert "No parts were made yet" in page.state.text()
    drawn(qtbot, page)
    assert "for whoever takes over" in shown(page)
    assert not page.sheets.keep_button.isEnabled()
    papers = page.sheets.papers
    assert papers is not None
    saved(qtbot, page)
    assert "Every part" in page.sheets.standing.text()
    page.sheets.keep_button.click()
    qtbot.waitUntil(lambda: papers.drawn.about.name in page.state.text(), timeout=PATIENCE)
    assert page.sheets.isHidden()
    assert sorted(one.name for one in (tmp_path / "stick").iterdir()) == [f"deputy-part-{n}.pdf" for n in (1, 2, 3)]
    page.words.setText("plum " * 15)
    page.try_button.click()
    qtbot.waitUntil(lambda: "not one of those" in page.outcome.text() or "Compare" in page.outcome.text())
    page.words.setText(papers.parts[1].words.reveal())
    page.try_button.click()
    qtbot.waitUntil(lambda: "Part 2: tried on" in page.parts.text(), timeout=PATIENCE)
    assert "is right" in page.outcome.text()
    assert page.words.text() == ""


def test_one_sheet_at_a_time_and_none_that_gives_away_after_leaving(qtbot: QtBot, page: DeputyPage, ways: Ways) -> None:
    """Broken: two parts stand on one screen, or one is still there when somebody else looks."""
    drawn(qtbot, page)
    papers = page.sheets.papers
    assert papers is not None
    for number in (1, 2, 3):
        page.sheets.which.take(str(number))
        page.sheets.turn()
        told = shown(page)
        here = [one.part.number for one in papers.parts if one.words.reveal().split()[-1] in told.split()]
        assert number in here
        assert deputy.code_of(papers.parts[number - 1].part).reveal() not in told
    page.hide()
    assert "for whoever takes over" in shown(page)
    page.show()
    ways.lock.emit()
    assert page.sheets.papers is None
    assert page.sheets.preview.marks == ()
    assert "thrown away" in page.outcome.text()


def test_a_wrong_passphrase_draws_nothing(qtbot: QtBot, page: DeputyPage) -> None:
    """Broken: parts that open nothing are given to three people."""
    page.line.setText("plum kettle ivory")
    page.make_button.click()
    qtbot.waitUntil(lambda: "does not open" in page.outcome.text(), timeout=PATIENCE)
    assert page.sheets.papers is None
    assert page.own.isHidden()


def test_copies_with_a_passphrase_of_their_own_ask_for_it(qtbot: QtBot, page: DeputyPage, errands: Errands) -> None:
    """Broken: parts give one of two passphrases, and the copy stays shut."""
    own = Secret("a passphrase for copies alone")
    errands._ask(  # noqa: SLF001 - the window has no way to it
        lambda: errands._here().sealing.make_ready(own, own=True),  # noqa: SLF001 - as above
        page,
        lambda _none: None,
        errands.trouble.emit,
    )
    page.line.setText(PASSPHRASE.reveal())
    page.make_button.click()
    qtbot.waitUntil(lambda: not page.own.isHidden(), timeout=PATIENCE)
    page.line.setText(PASSPHRASE.reveal())
    page.own_line.setText(own.reveal())
    page.make_button.click()
    qtbot.waitUntil(lambda: page.sheets.papers is not None, timeout=PATIENCE)
    assert page.own.isHidden()


def test_sheets_are_not_saved_beside_a_sealed_copy(qtbot: QtBot, page: DeputyPage, tmp_path: Path) -> None:
    """Broken: one stick has all that it takes."""
    (tmp_path / "stick").mkdir()
    (tmp_path / "stick" / "quince.sealed.tar").touch()
    drawn(qtbot, page)
    page.sheets.which.take("1")
    page.sheets.turn()
    page.sheets.save_button.click()
    qtbot.waitUntil(lambda: "Choose another folder" in page.outcome.text(), timeout=PATIENCE)
    assert page.sheets.out == set()


def test_a_stop_set_is_written(qtbot: QtBot, page: DeputyPage, errands: Errands, tmp_path: Path) -> None:
    """Broken: whoever may only stop devices gets nothing to do it with."""
    errands.unlock(PASSPHRASE, page, lambda _none: None, errands.trouble.emit)
    qtbot.waitUntil(page.stop_button.isEnabled, timeout=PATIENCE)
    page.tongue.take("de")
    page.stop_button.click()
    qtbot.waitUntil(lambda: "stop lists" in page.outcome.text(), timeout=PATIENCE)
    (told,) = (tmp_path / "stick").glob("*/READ-ME.txt")
    assert "sperren" in told.read_text(encoding="utf-8")
