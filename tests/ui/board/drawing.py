"""Draws a row as a line of text, so that a test can say what the sheet shows."""

from __future__ import annotations

from hearthkey.ui.board.rows import Row, Shape, Stroke
from hearthkey.ui.theme.signs import Sign

SIGNS = {
    Sign.DRAFT: "○",
    Sign.WAITING: "◔",
    Sign.NEVER_PROVED: "◌",
    Sign.IN_USE: "●",
    Sign.DUE: "▲",
    Sign.GUEST: "⧗",
    Sign.STOPPED: "⯃",
    Sign.REVOKED: "⯂",
    Sign.ENDED: "◪",
    Sign.UNKNOWN: "?",
}
STROKES = {
    Stroke.SOLID: "━━",
    Stroke.HOLLOW: "══",
    Stroke.DASHES: "╌╌",
    Stroke.DOTS: "··",
    Stroke.FINE_DOTS: "..",
    Stroke.PAST: "──",
}
SHAPES = {
    Shape.MADE: "o",
    Shape.HANDED_OVER: "◇",
    Shape.PROOF: "+",
    Shape.END: "|",
    Shape.SMALL_END: "'",
    Shape.FINAL: "‖",
}


def drawing(row: Row) -> str:
    """Who, device, bead, words, date, next step, and the life line with its shapes where the strokes meet."""
    words = f"{row.word}, {row.fact}" if row.fact else row.word
    step = f"  → {row.step.value}" if row.step is not None else ""
    return f"{row.who}  {row.device}  {SIGNS[row.sign]} {words}  {row.until}{step}  [{_life(row)}] {row.tone.name}"


def _life(row: Row) -> str:
    text = ""
    placed = set()
    for segment in row.segments:
        for at in (segment.start, None):
            for mark in row.marks:
                if at is not None and mark.at == at and mark not in placed:
                    placed.add(mark)
                    text += SHAPES[mark.shape]
        text += ("<" if segment.start is None else "") + STROKES[segment.stroke]
        for mark in row.marks:
            if mark.at == segment.end and mark not in placed:
                placed.add(mark)
                text += SHAPES[mark.shape]
    return text
