"""Copies over the real household: written to a stick, listed, looked for and deleted, on the real lane."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from hearthkey.core.bundle import Form
from hearthkey.core.copies import CopyWay, Found, Standing
from hearthkey.core.errors import Unavailable
from hearthkey.core.household import KEYRING
from hearthkey.ui.copy_errands import CopiesSeen
from hearthkey.ui.drives import Drive
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Tasks
from tests.fakes.home import founded, opener

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck; no verdict depends on less."""


class Cottage:
    """Quince Cottage on its lane, with a stick that is mounted where the test says."""

    def __init__(self, qtbot: QtBot, folder: Path) -> None:
        self.qtbot = qtbot
        self.context = QObject()
        self.stick = folder / "mounted"
        world = founded().put_into(folder / "data")
        self.errands = Errands(Tasks(), opener(world), folder / "data", place=KEYRING, service="practice")
        self.errands.look_for_drives = lambda: (Drive("QUINCE", self.stick, "/dev/sdb1", 14_200_000_000),)
        self.errands.open()
        qtbot.waitUntil(lambda: self.errands.last is not None, timeout=PATIENCE)
        assert self.errands.last is not None
        self.phone = next(one for one in self.errands.last.passes if one.title == "Ines’s phone")
        self.said: list[object] = []

    def answer(self) -> object:
        """What comes of what was asked last."""
        self.qtbot.waitUntil(lambda: bool(self.said), timeout=PATIENCE)
        return self.said.pop()

    def copies(self) -> CopiesSeen:
        """The copies of the phone."""
        self.errands.copies(self.phone.identity, self.context, self.said.append)
        seen = self.answer()
        assert isinstance(seen, CopiesSeen)
        return seen


def test_a_copy_on_a_stick_from_writing_to_deleting(qtbot: QtBot, tmp_path: Path) -> None:
    """If this failed, the list would work with the test's household only."""
    cottage = Cottage(qtbot, tmp_path)
    errands, said = cottage.errands, cottage.said
    errands.export(
        cottage.phone.serial,
        Form.PKCS12,
        cottage.stick,
        cottage.context,
        said.append,
        said.append,
        way=CopyWay.STICK,
        place="QUINCE",
    )
    cottage.answer()
    (told,) = cottage.copies().found
    assert (told.copy.place, told.standing) == ("QUINCE", Standing.OUT)
    cottage.stick = cottage.stick.rename(tmp_path / "mounted elsewhere")
    errands.look_at_copy(told.copy.number, cottage.context, said.append, said.append)
    looked = cottage.answer()
    assert getattr(looked, "found", None) is Found.OURS
    errands.tidy_copy(told.copy.number, cottage.context, said.append, said.append)
    cottage.answer()
    assert list(cottage.stick.iterdir()) == []
    assert [one.standing for one in cottage.copies().found] == [Standing.TIDIED]
    errands.copy_is_not_gone(told.copy.number, cottage.context, said.append, said.append)
    cottage.answer()
    assert [one.standing for one in cottage.copies().found] == [Standing.OUT]
    errands.close()


def test_codes_on_the_screen_are_listed_once(qtbot: QtBot, tmp_path: Path) -> None:
    """If this failed, the codes of the hand-over page would be on no list, or on it with each look at them."""
    cottage = Cottage(qtbot, tmp_path)
    for _ in range(2):
        cottage.errands.codes(cottage.phone.serial, cottage.context, cottage.said.append, cottage.said.append)
        drawn = cottage.answer()
        assert isinstance(drawn, list)
        assert drawn
    (told,) = cottage.copies().found
    assert (told.copy.way, told.standing) == (CopyWay.SCREEN, Standing.SHOWN)
    cottage.errands.close()


def test_codes_that_cannot_be_written_down_are_not_shown(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """If this failed, a full disk would let a bundle out that no list knows of."""

    def full(*_: object, **__: object) -> None:
        raise Unavailable("disk-full", path="here", seen="as the test wished")

    cottage = Cottage(qtbot, tmp_path)
    monkeypatch.setattr("hearthkey.services.copying.note", full)
    cottage.errands.codes(cottage.phone.serial, cottage.context, cottage.said.append, cottage.said.append)
    assert isinstance(cottage.answer(), Unavailable)
    assert cottage.copies().found == ()
    cottage.errands.close()
