"""Device kinds in the drawer: own ones are offered, a kind that is gone is said, a broken file is told once."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.household import KEYRING
from hearthkey.core.kinds import Kinds
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import World, opener
from tests.fakes.kinds import KINDS
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.pages import identity_of

SLOW = 60_000
"""Milliseconds, on a busy machine."""
BOAT = replace(KINDS.find("linux"), name="boat", titles=KINDS.find("linux").titles._replace(en="Boat"), own=True)


def with_boat(errands: FakeErrands) -> None:
    """Let the household know one kind more."""
    assert errands.last is not None
    errands.show(replace(errands.last, kinds=Kinds((BOAT, *KINDS))))


def test_the_form_offers_what_there_is_and_keeps_the_choice(
    theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken if it fails: an own kind cannot be chosen, or a choice is lost when the household is looked at again."""
    page = EnrolPage(theme, errands, ways)
    room.open(page)
    field = page.form.kind
    field.take("android")
    with_boat(errands)
    assert field.key() == "android"
    field.take("boat")
    assert field.currentText() == "Boat"
    words = [field.itemText(row) for row in range(field.count())]
    assert words.index("Phones and tablets") < words.index("iPhone or iPad") < words.index("Computers")
    assert words.index("Computers") < words.index("Boat") < words.index("Neither") == len(words) - 2


def test_a_new_pass_for_a_kind_that_is_gone_is_for_something_else(
    theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken if it fails: such a device cannot be renewed in the window."""
    assert errands.last is not None
    passes = tuple(replace(one, kind="boat") for one in errands.last.passes)
    errands.show(replace(errands.last, passes=passes))
    page = EnrolPage(theme, errands, ways)
    room.open(page)
    page.replace(identity_of(errands, "Ines", "phone"))
    assert page.form.request().kind == "other"


def test_the_page_says_why_and_when_that_was_checked(
    theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken if it fails: nobody can ask why a device got its key, or how old that knowledge is."""
    page = DevicePage(theme, errands, ways)
    identity = identity_of(errands, "Ines", "phone")
    page.show_device(identity)
    room.open(page)
    assert errands.last is not None
    kind = KINDS.of(next(one.kind for one in errands.last.passes if one.identity == identity))
    assert f"made for: {kind.words()} ({kind.why().removesuffix('.')})" in page.facts.told()
    assert "last checked: 25 November 2026 (from documents, not tried on a device)" in page.facts.told()
    passes = tuple(replace(one, kind="boat") for one in errands.last.passes)
    errands.show(replace(errands.last, passes=passes))
    assert "boat (not among the kinds of device any more; treated like something else)" in page.facts.told()
    with_boat(errands)
    assert "last checked: 25 November 2026 (your own file, not tried on a device)" in page.facts.told()


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Errands]:
    """No household yet, and one broken kind of the householder's."""
    own = tmp_path / "data" / "kinds"
    own.mkdir(parents=True)
    (own / "boat.toml").write_text("name = ", encoding="utf-8")
    made = Errands(Tasks(), opener(World()), tmp_path / "data", place=KEYRING, service="practice")
    yield made
    made.close()


def test_a_broken_file_is_told_once(opened: Errands, qtbot: QtBot) -> None:
    """Broken if it fails: the window does not open for a slip in a file, keeps it quiet, or never stops telling."""
    troubles: list[HearthkeyError] = []
    opened.trouble.connect(troubles.append)
    for look in (opened.open, opened.refresh):
        with qtbot.waitSignal(opened.seen, timeout=SLOW):
            look()
    assert [one.facts["file"] for one in troubles] == ["boat.toml"]
    assert opened.last is not None
    assert opened.last.kinds.names == KINDS.names
