"""The desk's type, measured on its widgets: what somebody reads across the table has 24 points or more."""

from __future__ import annotations

import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import PySide6
import pytest
from PySide6.QtCore import QTranslator
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.core.languages import Language
from hearthkey.core.ticket_events import Ending, Happened
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.desk.steps import StepRow
from hearthkey.ui.languages import speak
from hearthkey.ui.theme.theme import Theme
from tests.ui.desk.household import TABLE, Table, at_table, everything_said
from tests.words.extracting import TRANSLATIONS

LEAST = 24.0
"""Points. A point is 1/72 inch; how many dots an inch has the widget knows."""


def shown(table: Table) -> None:
    """The file came, and the words stand there."""
    table.fetched()
    table.sitting.act()


def covered(table: Table) -> None:
    """The file came, the words were shown, and are covered again: connecting is next."""
    shown(table)
    table.sitting.act()


STATES: dict[str, Callable[[Table], object]] = {
    "code": lambda _table: None,
    "page open": lambda table: table.happens(Happened.OPENED),
    "words beside a covered code": lambda table: table.sitting.act(),
    "picked up": Table.fetched,
    "words": shown,
    "connect": covered,
    "asking": Table.asked,
    "ended": lambda table: table.happens(Happened.CLOSED, Ending.EXPIRED),
}
ROOMS = ((1280, 800, 1.0), (1024, 640, 1.0), (1920, 1080, 1.0), (1280, 800, 2.0))


@pytest.fixture(scope="session")
def translations(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What translators made, as the window loads it."""
    made = tmp_path_factory.mktemp("translations")
    lrelease = Path(PySide6.__file__).parent / "lrelease"
    for language in (Language.GERMAN, Language.SPANISH):
        source, target = TRANSLATIONS / f"hearthkey_{language.value}.ts", made / f"hearthkey_{language.value}.qm"
        subprocess.run([lrelease, "-silent", source, "-qm", target], check=True)
    return made


@pytest.fixture(params=Language)
def tongue(request: pytest.FixtureRequest, qapp: QApplication, translations: Path) -> Iterator[Language]:
    """A language that the window was built in."""
    yield speak(qapp, translations, request.param)
    for one in qapp.findChildren(QTranslator):
        qapp.removeTranslator(one)
        one.deleteLater()


def points(label: Label) -> float:
    """How large its type is."""
    return label.font().pixelSize() * 72 / label.logicalDpiY()


def read_across(table: Table) -> list[Label]:
    """Whose it is, how long the code is good, what there is to say, and every visible part of the steps."""
    desk = table.desk
    found: list[Label] = [desk.head.title, desk.head.clock, desk.card.told.text]
    for row in desk.findChildren(StepRow):
        found += row.findChildren(Label)
    return [one for one in found if one.isVisible() and one.text()]


OTHERS = ("Quince Cottage", "Ines", "reader", "work laptop", "old phone", "quince.example")
"""The household, and what belongs to people and devices that are not at the table."""


@pytest.mark.parametrize("state", STATES)
def test_steps_are_read_across_the_table(tongue: Language, state: str, qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: grandmother leans over the table, or reads of somebody who is not there."""
    table = Table(theme)
    desk = table.desk
    qtbot.addWidget(table.window)
    for first in (TABLE, TABLE[1:]):
        table.errands.now_is(at_table())
        desk.begin(first)
        desk.showNormal()
        STATES[state](table)
        for wide, high, scale in ROOMS:
            theme.choose("paper", scale)
            desk.resize(wide, high)
            qtbot.waitUntil(lambda wide=wide: desk.width() == wide)  # type: ignore[misc]  # bound at once
            QApplication.processEvents()
            read = read_across(table)
            assert first[0].person in " ".join(one.text() for one in read) or not desk.head.isVisible()
            assert [(one.text(), points(one)) for one in read if points(one) < LEAST] == []
            said = everything_said(desk)
            assert [one for one in OTHERS if one in said] == []
            assert tongue is Language.ENGLISH or "Leave the desk" not in said
