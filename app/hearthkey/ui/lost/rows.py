"""The devices that were found, as ruled rows with the typed letters underlined."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QSizePolicy,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from hearthkey.ui.lost.placing import Placed, place, x_of
from hearthkey.ui.lost.search import Match
from hearthkey.ui.lost.words import state_words
from hearthkey.ui.states import sign_of
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme

Index = QModelIndex | QPersistentModelIndex
MATCH = Qt.ItemDataRole.UserRole

BAR = 4
"""Pixels: the bar of the row that is taken."""


class Matches(QAbstractListModel):
    """The matches of the moment; to a screen reader each is a sentence."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._matches: tuple[Match, ...] = ()
        self._now: datetime | None = None

    def offer(self, matches: Sequence[Match], now: datetime) -> None:
        """Offer other ones."""
        self.beginResetModel()
        self._matches, self._now = tuple(matches), now
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:  # noqa: N802 - Qt's name
        """How many there are."""
        return 0 if parent is not None and parent.isValid() else len(self._matches)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """The title, the sentence, or the match itself."""
        if not index.isValid() or index.row() >= len(self._matches) or self._now is None:
            return None
        match = self._matches[index.row()]
        if role == Qt.ItemDataRole.DisplayRole:
            return spoken(match.shown.title)
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return in_one(match, self._now)
        return (match, self._now) if role == MATCH else None


def in_one(match: Match, now: datetime) -> str:
    """A match as one sentence."""
    return f"{spoken(match.shown.title)}: {', '.join(filter(None, state_words(match.shown, now)))}"


class MatchDelegate(QStyledItemDelegate):
    """Paints a row: sign, name with the typed letters underlined, state words."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        self._placed: dict[tuple[str, float], Placed] = {}

    def forget(self) -> None:
        """Lay everything out anew, in another type or for other rows."""
        self._placed.clear()

    def _place(self, match: Match, now: datetime, width: float) -> Placed:
        key = (match.shown.identity, width)
        placed = self._placed.get(key)
        if placed is None:
            placed = self._placed[key] = place(self._theme, match, now, width - self._theme.px(8))
        return placed

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:  # noqa: N802 - Qt's name
        """As high as its parts need."""
        match, now = index.data(MATCH)
        width = option.widget.width() if option.widget is not None else option.rect.width()
        return QSize(0, round(self._place(match, now, width).height))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint it."""
        match, now = index.data(MATCH)
        theme, box = self._theme, QRectF(option.rect)
        taken = bool(option.state & QStyle.StateFlag.State_Selected)
        hovered = bool(option.state & QStyle.StateFlag.State_MouseOver)
        ground = theme.color("sel" if taken else "facet" if hovered else "raised")
        painter.fillRect(option.rect, ground)
        if taken:
            painter.fillRect(option.rect.x(), option.rect.y(), BAR, option.rect.height(), theme.color("ink"))
        last = index.row() == index.model().rowCount() - 1
        rule = theme.color("rule" if last else "hair")
        painter.fillRect(option.rect.x(), option.rect.bottom(), option.rect.width(), 1, rule)
        placed = self._place(match, now, option.rect.width())
        sign = sign_of(match.shown, now)
        paint_sign(painter, sign, box.topLeft() + placed.sign, theme.tokens, ground=ground, size=theme.fonts.scale)
        painter.setPen(theme.color("ink" if match.stoppable else "ink2"))
        placed.name.draw(painter, box.topLeft() + placed.at)
        self._underline(painter, placed, match, box.topLeft())
        self._state(painter, placed.state.translated(box.topLeft()), match, now)

    def _underline(self, painter: QPainter, placed: Placed, match: Match, origin: QPointF) -> None:
        thick = self._theme.px(3)
        for start, end in match.found:
            for number in range(placed.name.lineCount()):
                line = placed.name.lineAt(number)
                first, last = max(start, line.textStart()), min(end, line.textStart() + line.textLength())
                if first >= last:
                    continue
                left, right = x_of(line, first), x_of(line, last)
                place = origin + placed.at + QPointF(min(left, right), line.y() + line.ascent() + self._theme.px(5))
                color = self._theme.color("qedge")
                painter.fillRect(round(place.x()), round(place.y()), max(1, round(abs(right - left))), thick, color)

    def _state(self, painter: QPainter, box: QRectF, match: Match, now: datetime) -> None:
        word, fact = state_words(match.shown, now)
        theme = self._theme
        urgent = sign_of(match.shown, now) is Sign.DUE
        wide = theme.fonts.metrics(Role.STATE_WORD).horizontalAdvance(word)
        if wide + theme.fonts.metrics(Role.STATE).horizontalAdvance(f", {fact}") > box.width():
            painter.setFont(theme.font(Role.STATE))
            painter.setPen(theme.color("act" if urgent else "ink2"))
            painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap), f"{word}, {fact}")
            return
        painter.setFont(theme.font(Role.STATE_WORD))
        painter.setPen(theme.color("act" if urgent else "ink" if match.stoppable else "ink2"))
        painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), word)
        if fact:
            painter.setFont(theme.font(Role.STATE))
            painter.setPen(theme.color("ink2"))
            painter.drawText(box.adjusted(wide, 0, 0, 0), int(Qt.AlignmentFlag.AlignLeft), f", {fact}")


class MatchList(QListView):
    """The rows. The keys that choose among them stay with the field above.

    Signals:
        chosen: a Match or None.
    """

    chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._fits = 10**6
        self._model = Matches(self)
        self._delegate = MatchDelegate(theme, self)
        self.setModel(self._model)
        self.setItemDelegate(self._delegate)
        self.setAccessibleName(self.tr("Devices found"))
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setMouseTracking(True)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        for bar in (self.setHorizontalScrollBarPolicy, self.setVerticalScrollBarPolicy):
            bar(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.selectionModel().currentChanged.connect(lambda new, _old: self._took(new))
        theme.changed.connect(self._dress)
        self._measure()

    def _dress(self) -> None:
        self._delegate.forget()
        self._measure()

    def offer(self, matches: Sequence[Match], now: datetime) -> None:
        """Show other rows, and take the one that was taken before, else the first."""
        before = self.taken()
        self._delegate.forget()
        self._model.offer(matches, now)
        kept = [n for n, one in enumerate(matches) if before and one.shown.identity == before.shown.identity]
        self._measure()
        if matches:
            self.setCurrentIndex(self._model.index(kept[0] if kept else 0))
        else:
            self.chosen.emit(None)

    def taken(self) -> Match | None:
        """The row that is taken."""
        told = self.currentIndex().data(MATCH)
        return told[0] if told else None

    def told(self) -> str:
        """The row that is taken, as a sentence with its place."""
        index = self.currentIndex()
        place = self.tr("{number} of {count}").format(number=index.row() + 1, count=self._model.rowCount())
        return f"{index.data(Qt.ItemDataRole.AccessibleTextRole)}, {place}" if index.isValid() else ""

    def go(self, step: int) -> None:
        """Take the row above or below."""
        row = min(max(self.currentIndex().row() + step, 0), self._model.rowCount() - 1)
        self.setCurrentIndex(self._model.index(row))
        self.scrollTo(self._model.index(row))

    def fit(self, height: int) -> None:
        """Be no higher than this, but always one row."""
        if height != self._fits:
            self._fits = height
            self._measure()

    def wanted(self) -> int:
        """Height of all rows together."""
        return sum(self.sizeHintForRow(row) for row in range(self._model.rowCount()))

    def _measure(self) -> None:
        heights = [self.sizeHintForRow(row) for row in range(self._model.rowCount())]
        while len(heights) > 1 and sum(heights) > self._fits:
            heights.pop()
        self.setFixedHeight(sum(heights))
        self.scheduleDelayedItemsLayout()

    def _took(self, index: Index) -> None:
        told = index.data(MATCH)
        if told:
            self.chosen.emit(told[0])

    def resizeEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Another width can make other heights."""
        super().resizeEvent(event)  # type: ignore[arg-type]  # Qt hands a resize event on
        self._measure()
