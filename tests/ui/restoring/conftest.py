"""A sealed copy and a paper of Quince Cottage, and a computer that has no household."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core import deputy
from hearthkey.core.deputy import Part
from hearthkey.core.errors import Refused
from hearthkey.core.languages import Language
from hearthkey.core.paper import lines_of
from hearthkey.core.secret import Secret
from hearthkey.formats import paper_der
from hearthkey.pki import guard
from hearthkey.pki.keys import AuthorityKey
from hearthkey.ui import app as starting
from hearthkey.ui.restoring.page import RestorePage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window
from tests.fakes.home import PASSPHRASE, World, at_home, founded, opener
from tests.fakes.vault import FakeVault


@dataclass(frozen=True)
class Kept:
    """What the family kept.

    Args:
        world: the lost computer's.
        copy: a sealed copy's file.
        rows: the lines of a paper.
        parts: of the deputy's, which open the copy.
        sheets: the words on each of them.
    """

    world: World
    copy: Path
    rows: tuple[str, ...]
    parts: tuple[Part, ...]
    sheets: tuple[str, ...]


@pytest.fixture(scope="package")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Kept:
    """Made on a computer that is gone now, after Odile's tablet was stopped."""
    folder = tmp_path_factory.mktemp("kept")
    with at_home(folder / "data") as home:
        home.stop("Odile tablet")
        home.house.sealing.make_ready(PASSPHRASE)
        drawn = home.house.deputies.draw(PASSPHRASE)
        home.house.deputies.keep(drawn)
        _note, changes = home.house.sealing.seal(folder / "stick")
        sheets = tuple(deputy.words_of(one, home.house.deputies.words).reveal() for one in drawn.parts)
        told = paper_der.encode(home.house.papering.facts(Language.ENGLISH).contents)
        rows = tuple(f"{one.number:02} {' '.join(one.groups)}" for one in lines_of(told))
        return Kept(home.world, Path(changes.files[0]), rows, drawn.parts, sheets)


class Blank:
    """The window on a computer that has no household, with the page open."""

    def __init__(self, qtbot: QtBot, theme: Theme, data: Path, kept: Kept) -> None:
        self.qtbot = qtbot
        self.world = World(vault=FakeVault(), clock=kept.world.clock, dice=kept.world.dice, locks=kept.world.locks)
        self.data = data
        self.window: Window = starting.window(theme, opener(self.world), data, practice=False)
        self.window.outside.errands.open()
        self.wait(lambda: self.window.outside.errands.last is not None)
        self.window.resize(1280, 800)
        self.window.show()

    def wait(self, what: Callable[[], bool]) -> None:
        """Wait until something is so."""
        self.qtbot.waitUntil(what)

    def rest(self) -> None:
        """Wait until nothing is being done."""
        self.wait(lambda: not self.window.outside.tasks.waiting)

    @property
    def page(self) -> RestorePage:
        """The page, wherever the window is now."""
        found = self.window.findChild(RestorePage)
        assert isinstance(found, RestorePage)
        return found

    def begin(self) -> RestorePage:
        """Open the page by its button on the founding page."""
        self.window.founding.so_far.restore.click()
        self.rest()
        assert self.window.pages.currentWidget() is self.page
        return self.page

    def founded(self) -> bool:
        """Whether there is a household on this computer."""
        last = self.window.outside.errands.last
        return last is not None and last.household is not None


@pytest.fixture
def blank(qtbot: QtBot, theme: Theme, tmp_path: Path, kept: Kept, monkeypatch: pytest.MonkeyPatch) -> Iterator[Blank]:
    """A blank laptop; opening the CA key is slow on purpose, so a stand-in knows the words by heart."""

    def open_guard(_text: str, passphrase: Secret[str]) -> AuthorityKey:
        if passphrase != PASSPHRASE:
            raise Refused("wrong-passphrase")
        return founded().key

    monkeypatch.setattr(guard, "open_guard", open_guard)
    made = Blank(qtbot, theme, tmp_path / "new", kept)
    yield made
    made.rest()
    made.window.close()
