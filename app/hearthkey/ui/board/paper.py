"""The paper of the sheet: a table that paints its rows itself, over the ground they share."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QRect, QRectF, QSignalBlocker, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView, QWidget

from hearthkey.ui.board.empty import Ghost
from hearthkey.ui.board.ground import paint_ground
from hearthkey.ui.board.heights import Heights
from hearthkey.ui.board.model import BoardModel
from hearthkey.ui.board.painting import Drawn, levels, paint_part, paint_patches, paint_rows, washes
from hearthkey.ui.board.placing import line_y
from hearthkey.ui.board.rows import Column
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.board.wallwords import paint_told, told
from hearthkey.ui.entries import Draft
from hearthkey.ui.theme.theme import Theme

BEYOND = 14
"""Beads and rings reach a little into the rows beside theirs; pixels at normal type."""


class Paper(QTableView):
    """Rows of one model, ruled, without a hand to take them."""

    def __init__(self, theme: Theme, model: BoardModel, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.rows = model
        self.ruling: Ruling | None = None
        self.host = ""
        self.wanted: Sequence[str] = ()
        self.ghost: Ghost | None = None
        self.hovered = -1
        self.stop: int | None = None
        self._heights = Heights()
        self.setModel(model)
        self.setAccessibleName(name)
        self._dress()
        theme.changed.connect(self.viewport().update)

    def _dress(self) -> None:
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setMouseTracking(True)
        self.setCornerButtonEnabled(False)
        self.setWordWrap(False)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for header in (self.horizontalHeader(), self.verticalHeader()):
            header.setVisible(False)
            header.setMinimumSectionSize(1)
            header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def rule(self, ruling: Ruling) -> None:
        """Take a new ruling: columns and heights."""
        self.ruling = ruling
        for column, width in zip(Column, ruling.columns.edges, strict=True):
            self.setColumnHidden(column, width == 0)
            if width:
                self.setColumnWidth(column, width)
        if self.currentIndex().isValid() and self.isColumnHidden(self.currentIndex().column()):
            self.go(self.currentIndex().row())
        self._set_heights(ruling)
        self.verticalScrollBar().setSingleStep(max(1, ruling.theme.px(ruling.base)))
        self.viewport().update()

    def _set_heights(self, ruling: Ruling) -> None:
        """Give rows their heights, where anything that heights depend on has changed."""
        changed = self._heights.take(ruling, self.rows.entries)
        if not changed:
            return
        sections = self.verticalHeader()
        # Ten thousand rows would otherwise be told of one by one.
        with QSignalBlocker(sections):
            sections.setUpdatesEnabled(False)
            for number in changed:
                height = self._heights.of(ruling, number)
                if sections.sectionSize(number) != height:
                    sections.resizeSection(number, height)
            sections.setUpdatesEnabled(True)
        self.updateGeometries()

    def wanted_height(self) -> int:
        """Of all rows, in pixels."""
        return int(self.verticalHeader().length())

    def anchor(self) -> int:
        """The column that carries the focus: the device, or what is left of it on a narrow sheet."""
        return Column.AXIS if self.ruling is not None and self.ruling.stacked else Column.DEVICE

    def go(self, row: int) -> None:
        """Select a row, and let it be seen."""
        index = self.rows.index(row, self.anchor())
        if index.isValid():
            self.setCurrentIndex(index)

    def chosen(self) -> int:
        """The number of the selected row, -1 for none."""
        found = self.selectionModel().selectedRows(self.anchor())
        return found[0].row() if found else -1

    def forget(self) -> None:
        """Select nothing."""
        self.clearSelection()
        self.setCurrentIndex(QModelIndex())

    # Painting

    def drawn(self, top: float, bottom: float) -> list[Drawn]:
        """The rows that touch a part of the viewport, and their neighbours, which may reach into it."""
        ruling = self.ruling
        if ruling is None:
            return []
        if not self.rows.entries:
            return [] if self.ghost is None else [self.ghost.drawn(ruling)]
        reach = ruling.theme.px(BEYOND)
        first, last = self.rowAt(max(0, round(top) - reach)), self.rowAt(round(bottom) + reach)
        first = len(self.rows.entries) - 1 if first < 0 else first
        first -= min(self.rows.entries[first].place, 4)  # a name hangs down beside the rows of its person
        last = len(self.rows.entries) - 1 if last < 0 else last
        chosen = self.chosen()
        return [self._drawn(ruling, number, chosen) for number in range(first, last + 1)]

    def _drawn(self, ruling: Ruling, number: int, chosen: int) -> Drawn:
        entry = self.rows.entries[number]
        draft = isinstance(entry.source, Draft)
        selected = number == chosen
        row = self.rows.row(number)
        here = number == self.currentIndex().row()
        return Drawn(
            entry,
            row,
            ruling.box(entry, number),
            float(self.rowViewportPosition(number)),
            wash="sel" if selected or draft else "facet" if number == self.hovered else None,
            selected=selected or draft,
            ringed=here and self.hasFocus(),
            event=row.events[self.stop] if here and self.stop is not None and self.stop < len(row.events) else None,
        )

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Paint the ground, then the rows over it; a cell of its own would cut what reaches beyond it."""
        ruling = self.ruling
        if ruling is None:
            return
        painter = QPainter(self.viewport())
        dirty = QRectF(event.rect())
        area = QRectF(0, dirty.top(), self.viewport().width(), dirty.height())
        rows = self.drawn(area.top(), area.bottom())
        bottom = float(self.viewport().height())
        offset = float(self.verticalScrollBar().value())
        paint_ground(
            painter, area, ruling,
            washes=washes(rows), levels=levels(rows, bottom), offset=offset, wall_to=self._wall_to(ruling),
        )  # fmt: skip
        if not self.host:
            self._paint_told(painter, area, offset, ruling)
        paint_rows(painter, rows, ruling, host=self.host, wanted=self.wanted)
        if self.ghost is not None and not self.rows.entries:
            notes = self.ghost.notes(ruling)
            paint_patches(painter, notes, ruling, None)
            for part in notes:
                paint_part(painter, part, ruling)
        painter.end()

    def _paint_told(self, painter: QPainter, area: QRectF, offset: float, ruling: Ruling) -> None:
        """The wall's words stand on the paper, once for every sheetful of rows."""
        words = told(ruling)
        page = max(self.viewport().height(), ruling.theme.px(120))
        height = ruling.theme.px(70)
        content = max(self.wanted_height(), self.viewport().height())
        first = min(content, self.viewport().height()) - height
        number = max(0, int((area.top() + offset - first) // page))
        while words is not None and (bottom := first + number * page - offset) - height < area.bottom():
            paint_told(painter, words, bottom, ruling)
            number += 1

    def _wall_to(self, ruling: Ruling) -> float | None:
        """On the house the wall rises from the list's row."""
        if not self.host:
            return None
        number = self.rows.number_of("list")
        if number < 0:
            return 0.0
        entry = self.rows.entries[number]
        return line_y(entry, ruling.box(entry, number), float(self.rowViewportPosition(number)), ruling)

    def touch(self, row: int) -> None:
        """Paint a row again, with what reaches beyond it."""
        if 0 <= row < len(self.rows.entries):
            reach = self._theme.px(BEYOND)
            top, height = self.rowViewportPosition(row), self.rowHeight(row)
            self.viewport().update(QRect(0, top - reach, self.viewport().width(), height + 2 * reach))
