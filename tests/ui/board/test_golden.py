"""The board is drawn as it was when somebody last looked at it and found it good."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtGui import QImage, QPainter

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from tests.ui.golden.drawing import FEW, LOOKS, board, differing, place, side_by_side

RENEW = "QT_QPA_PLATFORM=offscreen PYTHONPATH=app:. python -m tests.ui.golden"


def _kept(look: str) -> QImage:
    return QImage(str(place(look))).convertToFormat(QImage.Format.Format_RGB32)


@pytest.mark.parametrize("look", LOOKS)
def test_board_is_drawn_as_it_was(theme: Theme, tmp_path: Path, look: str) -> None:
    """A sign, a rule, a colour or a letter would come to stand elsewhere, and nobody would have decided so."""
    theme.choose(look, 1.0)
    family = theme.fonts.font(Role.PERSON).family()
    assert family.startswith("Vollkorn"), f"the faces of the extra “window” are not installed, only {family}"
    wanted, found = _kept(look), board(theme)
    assert found.size() == wanted.size()
    wrong = differing(wanted, found)
    shown = tmp_path / f"board-{look}-difference.png"
    if len(wrong) > FEW:
        side_by_side(wanted, found, wrong).save(str(shown))
    assert len(wrong) <= FEW, f"{len(wrong)} pixels differ: {shown}. If it is better so: {RENEW}"


def test_a_missing_sign_is_noticed() -> None:
    """The comparison would let a lost bead pass."""
    wanted = _kept("paper")
    without = wanted.copy()
    painter = QPainter(without)
    painter.fillRect(0, 60, without.width(), 16, without.pixelColor(4, 60))
    painter.end()
    wrong = differing(wanted, without)
    assert len(wrong) > FEW
    assert differing(wanted, wanted.copy()) == []
    assert {y for _, y in wrong} <= set(range(60, 76))
    assert side_by_side(wanted, without, wrong).height() > 3 * wanted.height()


def test_golden_pictures_are_small() -> None:
    """The repository would grow with every renewal."""
    assert sum(place(look).stat().st_size for look in LOOKS) < 200_000
