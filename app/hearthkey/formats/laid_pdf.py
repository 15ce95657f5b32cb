"""Draws laid sheets as PDF without a window: fonts inside, the same bytes for the same sheet."""

from __future__ import annotations

import hashlib
import io
import string
from collections.abc import Callable, Sequence

from reportlab.lib.colors import HexColor
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from hearthkey.core.hand_over_sheet import Paper
from hearthkey.formats.cut_fonts import cut
from hearthkey.formats.laid_sheet import Face, Mark, Measure, Modules, Run
from hearthkey.formats.sheet_pdf import Fonts

_WEIGHTS = {Face.SERIF: 600, Face.SANS: 400, Face.STRONG: 600}
_USUAL = string.ascii_letters + string.digits + string.punctuation + " äöüÄÖÜßáéíóúñÁÉÍÓÚÑ¿¡«»„“”’–…"
"""Letters that the fonts are cut to, beside those of the names on the sheet."""


class Drawer:
    """Measures and draws with the same fonts.

    Args:
        fonts: the two families.
        letters: names and words on the sheet, which may have letters that no text of ours has.
    """

    def __init__(self, fonts: Fonts, letters: str) -> None:
        wanted = "".join(sorted(set(_USUAL + letters)))
        self._names: dict[Face, str] = {}
        for face, weight in _WEIGHTS.items():
            data = cut(fonts.serif if face is Face.SERIF else fonts.sans, weight, wanted)
            name = f"{face.name}-{hashlib.sha256(data).hexdigest()[:16]}"
            pdfmetrics.registerFont(TTFont(name, io.BytesIO(data)))
            self._names[face] = name

    def measure(self, text: str, face: Face, size: float) -> float:
        """How wide a text is, in points."""
        return float(pdfmetrics.stringWidth(text, self._names[face], size))

    def draw(self, marks: Sequence[Mark], paper: Paper, title: str, language: str) -> bytes:
        """Draw one page."""
        return self.draw_pages([marks], paper, title, language)

    def draw_pages(self, pages: Sequence[Sequence[Mark]], paper: Paper, title: str, language: str) -> bytes:
        """Draw pages of one size."""
        out = io.BytesIO()
        first = self._names[Face.SANS]
        canvas = Canvas(out, pagesize=paper.value, invariant=1, initialFontName=first, lang=language)  # type: ignore[arg-type]  # its stub says float
        canvas.setTitle(title)
        for unsaid in (canvas.setAuthor, canvas.setSubject, canvas.setCreator, canvas.setProducer):
            unsaid("")
        for marks in pages:
            for mark in marks:
                self._draw_mark(canvas, mark, paper.value[1])
            canvas.showPage()
        canvas.save()
        return out.getvalue()

    def _draw_mark(self, canvas: Canvas, mark: Mark, high: float) -> None:
        colour = HexColor(mark.ink.value)
        if isinstance(mark, Run):
            canvas.setFillColor(colour)
            canvas.setFont(self._names[mark.face], mark.size)
            canvas.drawString(mark.x, high - mark.y, mark.text)
        elif isinstance(mark, Modules):
            path = canvas.beginPath()  # one path, so that no light shows between two rows
            for x, y, wide, tall in mark.bars():
                path.rect(x, high - y - tall, wide, tall)
            canvas.setFillColor(colour)
            canvas.drawPath(path, stroke=0, fill=1)
        else:
            canvas.setStrokeColor(colour)
            canvas.setLineWidth(mark.weight)
            canvas.line(mark.left, high - mark.y, mark.right, high - mark.y)


Draw = Callable[[Callable[[Measure], Sequence[Mark]], Paper, str, str, str], bytes]
"""Draws what a function lays out with a measure: paper, title, language, and the letters of the names on it."""


def drawn(fonts: Fonts) -> Draw:
    """A `Draw` with these fonts."""

    def draw(lay: Callable[[Measure], Sequence[Mark]], paper: Paper, title: str, language: str, letters: str) -> bytes:
        drawer = Drawer(fonts, letters)
        return drawer.draw(lay(drawer.measure), paper, title, language)

    return draw


DrawPages = Callable[[Callable[[Measure], Sequence[Sequence[Mark]]], Paper, str, str, str], bytes]
"""As `Draw`, for several pages."""


def drawn_pages(fonts: Fonts) -> DrawPages:
    """A `DrawPages` with these fonts."""

    def draw(
        lay: Callable[[Measure], Sequence[Sequence[Mark]]], paper: Paper, title: str, language: str, letters: str
    ) -> bytes:
        drawer = Drawer(fonts, letters)
        return drawer.draw_pages(lay(drawer.measure), paper, title, language)

    return draw
