"""No text of the sheet is cut, and none lies on another, whatever the names, the type and the window are."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, pairwise

import pytest
from PySide6.QtCore import QRectF
from pytestqt.qtbot import QtBot

from hearthkey.core.passes import Pass
from hearthkey.ui.board.placing import Part, place, rect
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.board.sheet import Sheet
from hearthkey.ui.board.view import BoardView
from hearthkey.ui.entries import Fixture
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import NOW, PASSES, made_pass, snapshot

LONG = "Wilhelmina-Konstantina Featherstonehaugh-Cholmondeley the Younge"
UNBROKEN = "Donaudampfschifffahrtselektrizitaetenhauptbetriebswerkbauunterbe"
ARABIC = "سارة الخالدي"
HEBREW = "אודיל מן הבית ליד הנהר"


def _named(*names: tuple[str, str]) -> tuple[Pass, ...]:
    return tuple(made_pass(who, what, made=NOW, ends=PASSES[0].not_after) for who, what in names)


HOUSEHOLDS = {
    "practice": PASSES,
    "three people": _named(("Ines", "phone"), ("Odile", "phone"), ("Tomasz", "phone")),
    "forty people": _named(*((f"Person {number}", f"phone {number}") for number in range(40))),
    "three hundred devices": _named(*((f"Person {number % 7}", f"device {number}") for number in range(300))),
    "long names": _named((LONG, LONG), (LONG, "phone"), (UNBROKEN, UNBROKEN), ("Ines", LONG)),
    "long names of people": _named((LONG, "phone"), (UNBROKEN, "phone"), ("Ines", "phone")),
    "right to left": _named((ARABIC, "هاتف"), (HEBREW, "טלפון ישן"), (ARABIC, HEBREW)),
}
SIZES = [(1280, 540), (1024, 380), (868, 540), (640, 300)]


@pytest.fixture
def scaled(theme: Theme) -> Iterator[Theme]:
    """A theme that is put back after its type was enlarged."""
    yield theme
    theme.choose("paper", 1.0)


def _parts(sheet: Sheet, ruling: Ruling) -> list[tuple[Part, QRectF, float, float]]:
    found, top = [], 0.0
    for number, entry in enumerate(sheet.rows.entries):
        box = ruling.box(entry, number)
        parts = place(entry, sheet.rows.row(number), box, top, ruling, host=sheet.host)
        found += [(part, rect(part, ruling), top, top + box.height) for part in parts]
        top += box.height
    return found


def _inside(found: list[tuple[Part, QRectF, float, float]], ruling: Ruling, width: int) -> list[str]:
    """Texts that leave the sheet, their column or their row."""
    wrong = []
    for part, box, top, bottom in found:
        if box.left() < 8 or box.right() > width - 8:
            wrong.append(f"{part.text} leaves the sheet")
        if part.kind not in {"who", "count"} and (box.top() < top - 1 or box.bottom() > bottom + 1):
            wrong.append(f"{part.text} leaves its row")
        if part.kind in {"who", "count"} and not ruling.stacked and box.right() > ruling.columns.device.left - 4:
            wrong.append(f"{part.text} leaves its column")
        if ruling.names.width(part.role, part.text) > part.width + 0.5:
            wrong.append(f"{part.text} is cut")
    return wrong


def _meeting(found: list[tuple[Part, QRectF, float, float]]) -> list[str]:
    """Texts that lie on each other; a line of letters may reach a hair into the one above."""
    ordered = sorted(found, key=lambda one: one[1].top())
    wrong = []
    for at, (part, box, _top, _bottom) in enumerate(ordered):
        for other, lower, _, _ in ordered[at + 1 : at + 14]:
            shared = box.intersected(lower)
            if shared.width() > 1 and shared.height() > 0.35 * min(box.height(), lower.height()):
                wrong.append(f"{part.text} meets {other.text}")
    return wrong


@pytest.mark.parametrize("scale", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("household", list(HOUSEHOLDS))
def test_nothing_is_cut_and_nothing_meets(
    household: str, size: tuple[int, int], scale: float, qtbot: QtBot, scaled: Theme
) -> None:
    """Somebody with a long name, large type or a small window could not read the sheet."""
    scaled.choose("paper", scale)
    board = BoardView(scaled, Ways())
    qtbot.addWidget(board)
    board.resize(*size)
    board.show(snapshot(passes=HOUSEHOLDS[household]))
    for sheet in (board.people, board.house):
        ruling = sheet.ruling
        assert ruling is not None
        found = _parts(sheet, ruling)
        assert found
        assert _inside(found, ruling, size[0]) == []
        assert _meeting(found) == []
        assert sum(1 for part, *_ in found if part.kind == "word") == len(sheet.rows.entries)
    _head_is_clear(board, size[0])


def _head_is_clear(board: BoardView, width: int) -> None:
    ruling, head = board.header.ruling, board.header.head()
    assert ruling is not None
    boxes = []
    for text in board.header.texts():
        metrics = ruling.names.metrics(text.role)
        box = QRectF(text.x, text.baseline - metrics.ascent() * 0.8, text.width, metrics.ascent())
        assert box.left() >= 0
        assert box.right() <= width
        assert not box.intersects(head), text.text
        boxes.append((text.text, box))
    meeting = [(one[0], two[0]) for one, two in combinations(boxes, 2) if one[1].intersects(two[1])]
    assert meeting == []


def test_rows_follow_each_other_without_a_gap(board: BoardView) -> None:
    """Heights that are painted would differ from those the table scrolls by."""
    sheet, ruling = board.people, board.people.ruling
    assert ruling is not None
    tops = [sheet.rowViewportPosition(number) for number in range(len(sheet.rows.entries))]
    heights = [ruling.box(entry, number).height for number, entry in enumerate(sheet.rows.entries)]
    assert [lower - upper for upper, lower in pairwise(tops)] == heights[:-1]


def test_house_names_fit(board: BoardView) -> None:
    """A row of the house would run into the life lines."""
    ruling = board.house.ruling
    assert ruling is not None
    assert all(isinstance(entry.source, Fixture) for entry in board.house.rows.entries)
    for part, box, _, _ in _parts(board.house, ruling):
        if part.kind == "device":
            assert box.right() <= ruling.columns.axis.left - 4
