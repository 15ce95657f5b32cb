"""Every way out says how it left: the list of copies stands on that."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtGui import QDrag
from pytestqt.qtbot import QtBot

from hearthkey.core.copies import CopyWay
from hearthkey.core.templates import DEVICE, Template
from hearthkey.services.templating import Holds
from hearthkey.ui.drives import Drive
from hearthkey.ui.pages.leaving import Leaving
from hearthkey.ui.pages.own_ways import OwnWay
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, FakeErrands, FakeSticks
from tests.ui.leaving.test_drag import Hand


def test_a_stick_is_noted_by_its_name(tmp_path: Path, theme: Theme) -> None:
    """If this failed, the stick would be a folder that is never there again, and nobody would be asked to wipe it."""
    assert theme.name == "paper"
    errands, drive = FakeErrands(), Drive("QUINCE", tmp_path, "/dev/sdb1", 14_200_000_000)
    leaving = Leaving(errands, FakeSticks(drive))
    leaving.open(LAPTOP)
    leaving.save(WayOut.STICK, tmp_path, drive)
    leaving.save(WayOut.ARCHIVE, tmp_path)
    leaving.save(OwnWay(Template("Letter", DEVICE, "{device}", "txt", "dear all"), Holds.KEY), tmp_path, drive)
    assert errands.left_by == [(CopyWay.STICK, "QUINCE"), (CopyWay.FOLDER, ""), (CopyWay.STICK, "QUINCE")]


class Dropping(Hand):
    """A hand whose drag ends as the test says."""

    taken = True

    def _carry(self, drag: QDrag) -> bool:
        return super()._carry(drag) and self.taken


@pytest.mark.parametrize("taken", [True, False])
def test_a_drag_is_noted_when_it_is_over(tmp_path: Path, theme: Theme, qtbot: QtBot, *, taken: bool) -> None:
    """If this failed, what was dragged out would be no copy, or what was let go of would be one."""
    hand = Dropping(qtbot, theme, tmp_path)
    hand.taken = taken
    hand.errands.hold = True
    hand.press()
    hand.move(40)
    hand.let_go()
    hand.errands.answer()
    hand.press()
    hand.move(40)
    assert len(hand.carried) == 1
    hand.drag.forget(LAPTOP.serial)
    assert hand.errands.left_by == [(CopyWay.DRAG, "")]
    assert hand.errands.drags == [(LAPTOP.serial, True)] * taken + [(LAPTOP.serial, False)]
    hand.runtime.tidy()
