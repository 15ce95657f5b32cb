"""Kinds of devices in the window, over a real folder: shown with the reason, corrected, kept, set aside."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.adapters.kinds_folder import FOLDER
from hearthkey.core.household import KEYRING
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.kinds_page import KindsPage
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import founded, opener

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck."""


@pytest.fixture
def errands(qtbot: QtBot, tmp_path: Path) -> Iterator[Errands]:
    """Quince Cottage in its register, with a broken kind of its own."""
    world = founded().put_into(tmp_path / "data")
    own = tmp_path / "data" / FOLDER
    own.mkdir(parents=True)
    (own / "kettle.toml").write_text("format = 1\nnonsense = true\n", encoding="utf-8")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    qtbot.waitUntil(lambda: made.last is not None, timeout=PATIENCE)
    yield made
    made.close()


@pytest.fixture
def page(qtbot: QtBot, theme: Theme, errands: Errands) -> KindsPage:
    """The page, to be seen."""
    made = KindsPage(theme, errands)
    qtbot.addWidget(made)
    made.resize(410, 1000)
    made.show()
    qtbot.waitUntil(lambda: bool(made.kinds), timeout=PATIENCE)
    return made


def test_a_kind_is_shown_with_its_reason(page: KindsPage) -> None:
    """Broken: the app decides about keys and containers, and nobody can ask why."""
    page.which.take("android-older")
    assert page.why.text() == page.kinds["android-older"].why()
    assert (
        "old container" in page.facts.figures["key"].accessibleName() or page.kinds["android-older"].container == "old"
    )
    assert page.steps.text().startswith("1  ")
    assert page.remove.isHidden()


def test_a_broken_file_of_ones_own_is_told_and_harms_nothing(page: KindsPage) -> None:
    """Broken: one slip in a text file, and no device can be enrolled any more."""
    assert "kettle.toml" in page.broken.text()
    assert "kettle" not in page.kinds
    assert len(page.kinds) >= 9


def test_a_correction_is_checked_kept_and_goes_into_effect_at_once(
    qtbot: QtBot, theme: Theme, page: KindsPage, errands: Errands, tmp_path: Path
) -> None:
    """Broken: a phone that does something else needs a new version of the app, or a restart."""
    page.which.take("linux")
    page.start.click()
    qtbot.waitUntil(lambda: page.plan is not None, timeout=PATIENCE)
    assert page.commit.isEnabled()
    whole = page.text.toPlainText()
    page.text.show_text(whole.replace("tried = false", "tired = false"))
    page.look()
    qtbot.waitUntil(lambda: "tired" in page.finding.text(), timeout=PATIENCE)
    assert not page.commit.isEnabled()
    page.text.show_text(
        whole.replace("name = 'linux'", "name = 'quince-board'").replace("tried = false", "tried = true")
    )
    page.look()
    qtbot.waitUntil(lambda: page.plan is not None and page.plan.kind.name == "quince-board", timeout=PATIENCE)
    assert page.finding.text() == "It is whole, and will be a kind more."
    page.commit.click()
    qtbot.waitUntil(lambda: "quince-board" in page.kinds, timeout=PATIENCE)
    assert (tmp_path / "data" / FOLDER / "quince-board.toml").is_file()
    assert page.editor.isHidden()
    enrol = EnrolPage(theme, errands, Ways())
    qtbot.addWidget(enrol)
    enrol.form.kind.take("quince-board")
    assert enrol.form.kind.key() == "quince-board"
    page.which.take("quince-board")
    page.remove.click()
    qtbot.waitUntil(lambda: "quince-board" not in page.kinds, timeout=PATIENCE)
    assert not (tmp_path / "data" / FOLDER / "quince-board.toml").exists()


def test_what_was_typed_can_be_put_aside(qtbot: QtBot, page: KindsPage) -> None:
    """Broken: whoever only wanted to read has to keep something."""
    page.which.take("mac")
    page.start.click()
    qtbot.waitUntil(lambda: not page.editor.isHidden(), timeout=PATIENCE)
    page.aside.click()
    assert page.editor.isHidden()
    assert page.start.isVisibleTo(page)
