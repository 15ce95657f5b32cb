"""What is said of how much time the sheet shows."""

from __future__ import annotations

from hearthkey.ui.board.axis import Axis, Leaf, Piece
from hearthkey.ui.board.life import tr


def spoken(axis: Axis) -> str:
    """How the axis lies, for a screen reader."""
    leaf, last = axis.pieces[0].leaf, axis.pieces[-1].end
    if leaf is Leaf.DAYS:
        return tr("Time runs to the right: one month ahead, day by day.")
    if leaf is Leaf.YEAR:
        return tr("Time runs to the right: one year ahead, month by month.")
    if _long_past(axis.pieces[0]):
        return tr(
            "Time runs to the right and is folded: the past since {since}, four weeks back, nine weeks ahead, "
            "then to {year}."
        ).format(since=axis.pieces[0].start.year, year=last.year)
    return tr(
        "Time runs to the right and is folded: last year, four weeks back, nine weeks ahead, then to {year}."
    ).format(year=last.year)


def names(piece: Piece) -> tuple[str, ...]:
    """What may stand over a leaf, the fullest first."""
    if piece.leaf is Leaf.LAST_YEAR and _long_past(piece):
        return tr("since {year}").format(year=piece.start.year), tr("past")
    return {
        Leaf.DAYS: (tr("one month"), tr("month")),
        Leaf.YEAR: (tr("one year"), tr("year")),
        Leaf.LAST_YEAR: (tr("last year"), tr("past")),
        Leaf.WEEKS: (tr("weeks"),),
        Leaf.MONTHS: (tr("months"),),
        Leaf.YEARS: (tr("years"),),
    }[piece.leaf]


def _long_past(piece: Piece) -> bool:
    return (piece.end - piece.start).days > 366
