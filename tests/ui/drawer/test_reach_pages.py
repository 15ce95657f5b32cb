"""Network plan and forwarding sheet in the window: worked out while it is typed, and saved as they stand there."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtTest import QSignalSpy
from pytestqt.qtbot import QtBot

from hearthkey.core.household import KEYRING
from hearthkey.formats.sheet import Row
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.forwarding_page import FILE, ForwardingPage
from hearthkey.ui.drawer.network_page import NetworkPage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import founded, opener
from tests.judges import needs
from tests.ui.drawer.household import FakeErrands

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck."""


@pytest.fixture
def real(qtbot: QtBot, tmp_path: Path) -> Iterator[Errands]:
    """Quince Cottage in its register."""
    world = founded().put_into(tmp_path / "data")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    qtbot.waitUntil(lambda: made.last is not None, timeout=PATIENCE)
    yield made
    made.close()


def shown(qtbot: QtBot, page: Page) -> None:
    """Let a page be seen."""
    qtbot.addWidget(page)
    page.resize(410, 900)
    page.show()


def told(page: Page) -> str:
    """All that the page says."""
    return "\n".join(one.text() for one in page.content.findChildren(Prose))


def test_the_plan_follows_what_is_typed(qtbot: QtBot, theme: Theme, real: Errands) -> None:
    """Broken: somebody with a shared address is told to forward ports, or a slip of the finger clears the plan."""
    ways = Ways()
    page = NetworkPage(theme, real, ways)
    shown(qtbot, page)
    qtbot.waitUntil(lambda: page.plan is not None, timeout=PATIENCE)
    assert "RFC 6598" not in told(page)
    page.router.setText("100.64.7.9")
    page.upload.setText("10,5")
    page.look()
    qtbot.waitUntil(lambda: "RFC 6598" in told(page), timeout=PATIENCE)
    plan = page.plan
    assert plan is not None
    assert plan.expected is not None
    page.upload.setText("fast")
    page.look()
    assert page.trouble.text().startswith('"fast" is not a rate.')
    assert page.plan is plan
    page.upload.clear()
    page.outer.setText("1492")
    page.look()
    qtbot.waitUntil(lambda: page.plan is not None and page.plan.terms.outer_mtu == 1492, timeout=PATIENCE)
    spies = [QSignalSpy(one) for one in (ways.household, ways.forwarding)]
    page.settle.click()
    page.sheet.click()
    assert [spy.count() for spy in spies] == [1, 1]


def test_the_sheet_is_saved_as_it_stands_on_the_page(qtbot: QtBot, theme: Theme, real: Errands, tmp_path: Path) -> None:
    """Broken: what is carried to the router says something else than what was read."""
    page = ForwardingPage(theme, real, tmp_path, pick=lambda _parent, _title, _start, then: then(tmp_path))
    shown(qtbot, page)
    page.inside.setText("198.51.100.2")
    page.look()
    qtbot.waitUntil(lambda: "inside: 198.51.100.2, port 4500" in told(page), timeout=PATIENCE)
    page.save.click()
    qtbot.waitUntil(lambda: page.told.text().endswith(f"{FILE}."), timeout=PATIENCE)
    command = (needs("pdftotext"), tmp_path / FILE, "-")
    read = subprocess.run(command, capture_output=True, check=True, text=True, timeout=60).stdout
    for one in page.blocks():
        if isinstance(one, Row):
            assert all(value in " ".join(read.split()) for value in one.values)


def test_a_gateway_that_is_not_at_home_is_told_at_once(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a sheet for a gateway that no packet finds is taken to the router."""
    errands = FakeErrands()
    page = ForwardingPage(theme, errands, Path("/home/ines"))
    shown(qtbot, page)
    before = page.facts
    page.inside.setText("192.168.1.2")
    page.look()
    assert "does not lie in home’s" in page.trouble.text()
    assert page.facts is before
