"""What is really painted: no abort, no red where nothing is due, beads where the ribbon hangs."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QColor, QImage, QPixmap, QRegion
from pytestqt.qtbot import QtBot

from hearthkey.ui.board.view import BoardView
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.theme.tokens import THEMES
from hearthkey.ui.ways import Ways
from tests.ui.practice import PASSES, snapshot


def _picture(board: BoardView) -> QImage:
    return board.grab().toImage()


def _count(picture: QImage, color: str, box: tuple[int, int, int, int]) -> int:
    left, top, right, bottom = box
    wanted = QColor(color).rgb()
    return sum(picture.pixel(x, y) == wanted for x in range(left, right) for y in range(top, bottom))


def test_two_thousand_repaints(qtbot: QtBot, theme: Theme) -> None:
    """A binding that loses a reference with every call of a painting override would abort the window in use."""
    board = BoardView(theme, Ways())
    qtbot.addWidget(board)
    board.resize(320, 200)
    board.show(snapshot(passes=PASSES[:2]))
    pixmap = QPixmap(320, 110)
    for _ in range(2000):
        board.people.viewport().render(pixmap, QPoint())
    assert not pixmap.isNull()


def test_red_is_rationed(board: BoardView, theme: Theme) -> None:
    """A sheet on which nothing is due would call the householder."""
    whole = (0, 0, 1280, 540)
    assert _count(_picture(board), theme.tokens.act, whole) > 50
    board.show(snapshot(passes=tuple(one for one in PASSES if one.device != "tablet")))
    assert _count(_picture(board), theme.tokens.act, whole) == 0


@pytest.mark.parametrize("name", list(THEMES))
def test_beads_hang_on_the_ribbon_in_every_theme(board: BoardView, theme: Theme, name: str) -> None:
    """Today's states could not be read down the ribbon."""
    theme.choose(name, 1.0)
    picture = _picture(board)
    ruling = board.people.ruling
    assert ruling is not None
    x, top = round(ruling.ribbon), board.header.height()
    for number in range(len(PASSES)):
        bottom = top + board.people.rowViewportPosition(number) + board.people.rowHeight(number)
        ink = theme.tokens.act if PASSES[number].device == "tablet" else theme.tokens.ink
        solid = PASSES[number].device == "reader"
        box = (x - 9, bottom - 24, x + 10, bottom - 2)
        assert _count(picture, theme.tokens.ink2 if solid else ink, box) > 4, number


def test_selection_is_more_than_a_colour(board: BoardView, theme: Theme) -> None:
    """The selected row would be told by a wash that nobody can see in bright light."""
    board.people.go(4)
    picture = _picture(board)
    ruling = board.people.ruling
    assert ruling is not None
    left = round(ruling.columns.wash_left)
    top = board.header.height() + board.people.rowViewportPosition(4)
    assert _count(picture, theme.tokens.ink, (left, top + 8, left + 4, top + 30)) == 4 * 22


def test_wall_stands_where_the_list_ends(board: BoardView, theme: Theme) -> None:
    """The date on which nobody gets in any more would not be seen."""
    ruling = board.people.ruling
    assert ruling is not None
    assert ruling.wall is not None
    x, cut = ruling.x(ruling.wall)
    picture, top = _picture(board), board.header.height()
    assert cut == 0
    assert _count(picture, theme.tokens.ink, (round(x) + 3, top, round(x) + 4, top + 300)) > 250
    later = snapshot(snapshot().at + timedelta(days=20))
    board.show(later)
    moved = board.people.ruling
    assert moved is not None
    assert moved.x(ruling.wall)[0] != x


def test_a_part_is_painted_as_the_whole(board: BoardView) -> None:
    """After a small update beads, rings and names would lose the edge that reaches into the next row."""
    board.people.go(1)
    board.people.setFocus()
    viewport = board.people.viewport()
    whole = QPixmap(viewport.size())
    viewport.render(whole, QPoint())
    for top in range(0, viewport.height() - 30, 23):
        part = QRect(0, top, viewport.width(), 30)
        piece = QPixmap(part.size())
        viewport.render(piece, QPoint(), QRegion(part))
        pairs = zip(_bytes(piece), _bytes(whole.copy(part)), strict=True)
        # The hatch is smoothed from wherever its lines begin, which leaves traces nobody can see.
        assert max(abs(one - other) for one, other in pairs) < 24, top


def _bytes(pixmap: QPixmap) -> bytes:
    return bytes(pixmap.toImage().constBits())
