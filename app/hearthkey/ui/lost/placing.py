"""Where the parts of a found device's row lie: a pure computation, used for painting and for measuring."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QTextLayout, QTextLine, QTextOption

from hearthkey.ui.lost.search import Match
from hearthkey.ui.lost.words import state_words
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

SIGN, NAME, STATE, GAP, PAD = 23, 44, 266, 16, 10
"""Pixels at normal size: middle of the sign, where name and state begin, between, above and below."""


@dataclass(frozen=True)
class Placed:
    """Where the parts of a row lie, in pixels from its upper left corner.

    Args:
        name: the title, laid out in lines.
        at: upper left corner of the title.
        state: of the state words.
        sign: middle of the sign.
        height: of the row.
    """

    name: QTextLayout
    at: QPointF
    state: QRectF
    sign: QPointF
    height: float


def place(theme: Theme, match: Match, now: datetime, width: float) -> Placed:
    """Lay a row out: side by side where both fit, else the state under the name, which may take several lines."""
    word, fact = state_words(match.shown, now)
    measures = theme.fonts.metrics(Role.STATE)
    wanted = theme.fonts.metrics(Role.STATE_WORD).horizontalAdvance(word) + measures.horizontalAdvance(f", {fact}") + 2
    left, pad, state_left = theme.px(NAME), theme.px(PAD), float(theme.px(STATE))
    named = theme.fonts.metrics(Role.PERSON).horizontalAdvance(spoken(match.shown.title)) + 2
    state_left = max(state_left, left + named + theme.px(GAP))
    beside = state_left + wanted <= width
    name = _laid_out(theme, spoken(match.shown.title), named if beside else max(width - left, 1.0))
    first = name.lineAt(0)
    baseline = pad + first.ascent()
    if beside:
        state = QRectF(state_left, baseline - measures.ascent(), width - state_left, measures.height())
        return Placed(name, QPointF(left, pad), state, _sign_at(theme, first.height(), pad), first.height() + 2 * pad)
    under = pad + name.boundingRect().height() + theme.px(4)
    state = QRectF(left, under, width - left, _wrapped(measures, word, fact, width - left))
    return Placed(name, QPointF(left, pad), state, _sign_at(theme, first.height(), pad), state.bottom() + pad)


def _sign_at(theme: Theme, line: float, pad: float) -> QPointF:
    return QPointF(theme.px(SIGN), pad + line / 2 + 1)


def x_of(line: QTextLine, character: int) -> float:
    """Where a character begins; Qt answers with the character too."""
    told: float | tuple[float, int] = line.cursorToX(character)  # type: ignore[assignment]  # declared as object
    return told[0] if isinstance(told, tuple) else told


def _wrapped(measures: QFontMetricsF, word: str, fact: str, width: float) -> float:
    box = QRectF(0, 0, width, 1e6)
    return measures.boundingRect(box, int(Qt.TextFlag.TextWordWrap), f"{word}, {fact}").height()


def _laid_out(theme: Theme, title: str, width: float) -> QTextLayout:
    layout = QTextLayout(title, theme.font(Role.PERSON))
    option = QTextOption(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignAbsolute)
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    layout.beginLayout()
    top = 0.0
    while (line := layout.createLine()).isValid():
        line.setLineWidth(width)
        line.setPosition(QPointF(0, top))
        top += line.height()
    layout.endLayout()
    return layout
