"""The page of moving day: planned while it is typed, kept, ticked, taken back, ended; and over the real household."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QSignalSpy, QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.household import KEYRING
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.moving_page import MovingPage
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import founded, opener
from tests.ui.drawer import moving_pages
from tests.ui.drawer.household import FakeErrands

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck."""


def shown(qtbot: QtBot, page: MovingPage) -> MovingPage:
    """The page, to be seen."""
    qtbot.addWidget(page)
    page.resize(410, 900)
    page.show()
    return page


def told(page: MovingPage) -> str:
    """All that the page says."""
    return "\n".join(one.text() for one in page.content.findChildren(Prose) if one.isVisibleTo(page))


def named(page: MovingPage, name: str) -> None:
    """Click the step's button of that name."""
    next(one for one in page.steps.buttons if one.accessibleName().startswith(name)).click()


def test_a_move_is_planned_while_it_is_typed(qtbot: QtBot, theme: Theme) -> None:
    """Broken: whom a move touches is learnt after it was begun, or half a name is taken for a mistake."""
    page = shown(qtbot, MovingPage(theme, FakeErrands(), Ways()))
    assert page.plan is None
    page.ticks[Kind.HOST].setFocus()
    QTest.keyClick(page.ticks[Kind.HOST], Qt.Key.Key_Space)
    assert page.host_asked.isVisibleTo(page)
    assert page.trouble.isHidden()
    page.host.setFocus()
    QTest.keyClicks(page.host, "door.quince.example")
    QTest.keyClick(page.host, Qt.Key.Key_Return)
    assert page.voice.text() == "For another host name 6 devices need a new bundle."
    qtbot.waitUntil(lambda: "Let door.quince.example lead home beside home.quince.example" in told(page))
    assert page.steps.buttons == []
    page.host.setText("home.quince.example")
    page.look()
    assert "The gateway is reached at home.quince.example already." in page.trouble.text()
    assert page.plan is None


def test_the_list_is_kept_ticked_and_gone_back_in(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a tick is lost, stands where nothing was done, or cannot be taken back."""
    errands, ways = FakeErrands(), Ways()
    page = shown(qtbot, moving_pages.planning(theme, errands, ways))
    page.commit.click()
    assert page.form.isHidden()
    assert page.told.text().startswith("A move was planned")
    assert "before it" not in told(page)
    named(page, "Done: Write a sealed copy")
    assert errands.move is not None
    assert Task.TRY_COPY in errands.move.ticked
    for task in (Task.LOOK_AT_LINE, Task.NAME_LEADS):
        page.steps.done.emit(task.value)
    named(page, "Done: Have the gateway answer")
    assert "The settings do not show that yet." in page.trouble.text()
    spy = QSignalSpy(ways.household)
    named(page, "Show me where: Have the gateway answer")
    assert spy.count() == 1
    named(page, "Not done after all")
    assert page.told.text().endswith("Take door.quince.example away where names are kept.")
    assert Task.NAME_LEADS not in errands.move.ticked


def test_it_is_called_off_only_when_asked_twice(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a slip of the hand throws the list of moving day away."""
    errands = FakeErrands()
    page = shown(qtbot, moving_pages.under_way(theme, errands, Ways()))
    page.call_off.click()
    assert page.told.text() == "The list goes; what was done stays as it is."
    page.call_off.click()
    assert errands.move is None
    assert page.form.isVisibleTo(page)


@pytest.fixture
def real(qtbot: QtBot, tmp_path: Path) -> Iterator[Errands]:
    """Quince Cottage in its register."""
    world = founded().put_into(tmp_path / "data")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    qtbot.waitUntil(lambda: made.last is not None, timeout=PATIENCE)
    yield made
    made.close()


def test_the_whole_list_of_a_new_router_over_the_real_household(qtbot: QtBot, theme: Theme, real: Errands) -> None:
    """Broken: the page and the register tell different stories."""
    page = shown(qtbot, MovingPage(theme, real, Ways()))
    page.ticks[Kind.ROUTER].setChecked(True)
    qtbot.waitUntil(lambda: page.plan is not None, timeout=PATIENCE)
    page.commit.click()
    qtbot.waitUntil(lambda: page.kept, timeout=PATIENCE)
    plan = page.plan
    assert plan is not None
    for step in plan.steps:
        page.steps.done.emit(step.task.value)
    qtbot.waitUntil(lambda: page.plan is not None and page.plan.next is None, timeout=PATIENCE)
    page.commit.click()
    qtbot.waitUntil(lambda: not page.kept and page.form.isVisibleTo(page), timeout=PATIENCE)
    assert page.plan is None
