"""The same sheet on paper: A4 pages with a serif that speaks and a sans that states, fonts inside."""

from __future__ import annotations

import hashlib
import io
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import NamedTuple

from reportlab.lib.colors import HexColor
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from hearthkey.formats.cut_fonts import cut
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title, unbroken

PAGE = (595.28, 841.89)
"""A4 in points (ISO 216: 210 by 297 mm)."""
_LEFT, _TOP, _BOTTOM = 45.0, 40.0, 44.0
_COLUMN = 130.0
_GAP = 12.0
_HANG = 10.0
"""Where the second line of a value begins, so that it does not look like another value."""
_INK, _INK2, _HAIR, _ACT = "#1A2830", "#4A585D", "#D2D8CB", "#A01C2C"
_ALWAYS = "0123456789 of"
_CAPITALS = 0.66
"""About the height of capitals in the sans, in its size: lines are centred on it."""


class Face(Enum):
    """Whether it is the serif, and its weight."""

    SERIF = (True, 600)
    SANS = (False, 400)
    STRONG = (False, 600)


@dataclass(frozen=True)
class Fonts:
    """The two families, as the content of their files.

    Args:
        serif: TrueType for titles and headings.
        sans: TrueType for everything else; with a weight axis, so that labels can be stronger.
    """

    serif: bytes
    sans: bytes


class _Style(NamedTuple):
    """A face, size and distance of baselines in points, and a colour."""

    face: Face
    size: float
    leading: float
    colour: str


_TITLE = _Style(Face.SERIF, 19.5, 24, _INK)
_HEADING = _Style(Face.SERIF, 13, 17, _INK)
_LABEL = _Style(Face.STRONG, 10, 12.5, _INK)
_VALUE = _Style(Face.SANS, 10, 12.5, _INK)
_WHY = _Style(Face.SANS, 9, 11, _INK2)
_NOTE = _Style(Face.SANS, 10, 13.5, _INK)
_URGENT = _Style(Face.STRONG, 10, 13.5, _ACT)
_FOOT = _Style(Face.SANS, 9, 11, _INK2)


class _Line(NamedTuple):
    """A line of text: how far right and down from the piece's corner its baseline begins."""

    x: float
    y: float
    text: str
    style: _Style


class _Rule(NamedTuple):
    """A rule across: how far down, how thick."""

    y: float
    weight: float
    colour: str


class _Piece(NamedTuple):
    """What stays on one page.

    Args:
        height: points.
        marks: what is drawn.
        leads: whether the next piece has to stand on the same page.
    """

    height: float
    marks: tuple[_Line | _Rule, ...]
    leads: bool = False


def pages(blocks: Iterable[Block], fonts: Fonts) -> bytes:
    """Write a sheet as PDF: A4, fonts embedded, text that can be searched and copied, no date in it.

    The same blocks and fonts make the same bytes.
    """
    found = tuple(blocks)
    setter = _Setter(fonts, found)
    laid = _laid([setter.piece(block) for block in found])
    title = next((block.text for block in found if isinstance(block, Title)), "")
    out = io.BytesIO()
    first = setter.name(Face.SANS)  # else the library begins with a font of its own that it does not embed
    canvas = Canvas(out, pagesize=PAGE, invariant=1, initialFontName=first, pageCompression=1, lang="en")  # type: ignore[arg-type]  # its stub says float
    canvas.setTitle(title)
    canvas.setAuthor("")
    canvas.setSubject("")
    canvas.setCreator("")
    canvas.setProducer("")
    for number, page in enumerate(laid, 1):
        for down, piece in page:
            setter.draw(canvas, piece, down)
        foot = f"{number} of {len(laid)}"
        setter.draw(
            canvas, _Piece(0, (_Line(0, 0, title, _FOOT), setter.at_right(foot, _FOOT))), PAGE[1] - _BOTTOM + 21
        )
        canvas.showPage()
    canvas.save()
    return out.getvalue()


def _laid(pieces: Sequence[_Piece]) -> list[list[tuple[float, _Piece]]]:
    """Put pieces on pages, each with its distance from the page's upper edge."""
    room = PAGE[1] - _TOP - _BOTTOM
    laid: list[list[tuple[float, _Piece]]] = [[]]
    down = 0.0
    for place, piece in enumerate(pieces):
        wanted = piece.height
        for before, after in zip(pieces[place:], pieces[place + 1 :], strict=False):
            if not before.leads:
                break
            wanted += after.height
        if down and down + wanted > room:
            laid.append([])
            down = 0.0
        laid[-1].append((_TOP + down, piece))
        down += piece.height
    return laid


class _Setter:
    """Sets blocks in type.

    Args:
        fonts: the two families.
        blocks: all that is to be set, because fonts are cut to their letters.
    """

    width = PAGE[0] - 2 * _LEFT

    def __init__(self, fonts: Fonts, blocks: Iterable[Block]) -> None:
        letters = "".join(sorted(set(_ALWAYS + "".join(map(_all_text, blocks)))))
        self._names: dict[Face, str] = {}
        for face in Face:
            serif, weight = face.value
            data = cut(fonts.serif if serif else fonts.sans, weight, letters)
            name = f"{face.name}-{hashlib.sha256(data).hexdigest()[:16]}"
            pdfmetrics.registerFont(TTFont(name, io.BytesIO(data)))
            self._names[face] = name

    def name(self, face: Face) -> str:
        """What the library calls a face."""
        return self._names[face]

    def draw(self, canvas: Canvas, piece: _Piece, down: float) -> None:
        """Draw a piece `down` points below the page's upper edge."""
        for mark in piece.marks:
            y = PAGE[1] - down - mark.y
            if isinstance(mark, _Rule):
                canvas.setStrokeColor(HexColor(mark.colour))
                canvas.setLineWidth(mark.weight)
                canvas.line(_LEFT, y, _LEFT + self.width, y)
            else:
                canvas.setFillColor(HexColor(mark.style.colour))
                canvas.setFont(self.name(mark.style.face), mark.style.size)
                canvas.drawString(_LEFT + mark.x, y, mark.text)

    def at_right(self, told: str, style: _Style) -> _Line:
        """A line that ends at the right margin."""
        return _Line(self.width - self._measure(told, style), 0, told, style)

    def piece(self, block: Block) -> _Piece:
        """Set one block."""
        if isinstance(block, Row):
            return self._row(block)
        if isinstance(block, Note):
            lines, height = self._lines(block.text, 0, 4, self.width, _URGENT if block.urgent else _NOTE)
            return _Piece(height + 6, tuple(lines))
        if isinstance(block, Heading):
            lines, height = self._lines(block.text, 0, 9, self.width, _HEADING)
            return _Piece(height + 3.5, (*lines, _Rule(height + 3, 1, _INK)), leads=True)
        lines, height = self._lines(block.text, 0, 0, self.width, _TITLE)
        return _Piece(height + 14, (*lines, _Rule(height + 5.5, 3, _INK), _Rule(height + 9.5, 1, _INK)), leads=True)

    def _row(self, row: Row) -> _Piece:
        """Label and source at the left, values and reason at the right, a hairline under both."""
        marks, left = self._lines(row.label, 0, 3, _COLUMN - _GAP, _LABEL)
        if row.source:
            lines, left = self._lines(row.source, 0, left, _COLUMN - _GAP, _WHY)
            marks += lines
        right = 3.0
        for value in row.values:
            lines, right = self._lines(value, _COLUMN, right, self.width - _COLUMN, _VALUE, hang=_HANG)
            marks += lines
        if row.why:
            lines, right = self._lines(row.why, _COLUMN, right, self.width - _COLUMN, _WHY)
            marks += lines
        height = max(left, right) + 3
        return _Piece(height, (*marks, _Rule(height, 0.5, _HAIR)))

    def _lines(
        self, told: str, x: float, down: float, width: float, style: _Style, *, hang: float = 0
    ) -> tuple[list[_Line], float]:
        """Set a paragraph, its second line and those after it `hang` further in; its lines, and where it ends."""
        lines: list[_Line] = []
        for place, one in enumerate(self._wrapped(told, width - hang, style)):
            down += style.leading
            baseline = down - (style.leading - style.size * _CAPITALS) / 2
            lines.append(_Line(x + (hang if place else 0), baseline, one, style))
        return lines, down

    def _wrapped(self, told: str, width: float, style: _Style) -> list[str]:
        """Break lines at blanks; a word that is too long for a line of its own is cut."""
        lines: list[str] = []
        line = ""
        for word in unbroken(told).split(" "):
            joined = f"{line} {word}" if line else word
            if line and self._measure(joined, style) > width:
                lines.append(line)
                joined = word
            while self._measure(joined, style) > width and len(joined) > 1:
                fits = next(n for n in range(len(joined) - 1, 0, -1) if n == 1 or self._fits(joined[:n], width, style))
                lines.append(joined[:fits])
                joined = joined[fits:]
            line = joined
        return [one.replace("\u00a0", " ") for one in (*lines, line)]

    def _fits(self, told: str, width: float, style: _Style) -> bool:
        return self._measure(told, style) <= width

    def _measure(self, told: str, style: _Style) -> float:
        return float(pdfmetrics.stringWidth(told, self.name(style.face), style.size))


def _all_text(block: Block) -> str:
    return unbroken(f"{block.label}{''.join(block.values)}{block.told}" if isinstance(block, Row) else block.text)
