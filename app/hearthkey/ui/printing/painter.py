"""Draws a laid sheet with Qt, wherever it goes: screen, printer or PDF."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QPointF, QRectF, QSizeF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPageLayout, QPageSize, QPainter, QPainterPath, QPdfWriter, QPen
from PySide6.QtPrintSupport import QPrinter

from hearthkey.core.errors import Unavailable
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.formats.laid_sheet import Face, Mark, Modules, Run
from hearthkey.ui.theme.fonts import Fonts, Role

_ROLES = {Face.SERIF: Role.TITLE, Face.SANS: Role.BODY, Face.STRONG: Role.BODY_STRONG}
_PIXELS = 1000
"""Size at which texts are measured: large enough that nothing is rounded away."""


class PaperPainter:
    """Measures and draws with the app's own two faces, in points."""

    def __init__(self, fonts: Fonts) -> None:
        self._fonts = {face: _letter_by_letter(fonts.font(role)) for face, role in _ROLES.items()}
        self._measures: dict[Face, QFontMetricsF] = {}
        for face, font in self._fonts.items():
            large = QFont(font)
            large.setPixelSize(_PIXELS)
            self._measures[face] = QFontMetricsF(large)

    def measure(self, text: str, face: Face, size: float) -> float:
        """How wide a text is, in points."""
        return self._measures[face].horizontalAdvance(text) * size / _PIXELS

    def draw(self, painter: QPainter, marks: Sequence[Mark], scale: float) -> None:
        """Draw all marks from the painter's origin.

        Args:
            scale: the painter's units to a point.
        """
        painter.save()
        for mark in marks:
            ink = QColor(mark.ink.value)
            if isinstance(mark, Run):
                font = QFont(self._fonts[mark.face])
                font.setPixelSize(max(1, round(mark.size * scale * 8)))
                painter.save()
                painter.translate(QPointF(mark.x * scale, mark.y * scale))
                painter.scale(1 / 8, 1 / 8)  # a font's size is a whole number of pixels, which is too coarse here
                painter.setFont(font)
                painter.setPen(ink)
                painter.drawText(QPointF(0, 0), mark.text)
                painter.restore()
            elif isinstance(mark, Modules):
                path = QPainterPath()  # one path, so that no light shows between two rows
                for bar in mark.bars():
                    path.addRect(QRectF(*(one * scale for one in bar)))
                painter.fillPath(path, ink)
            else:
                painter.setPen(QPen(ink, mark.weight * scale))
                painter.drawLine(
                    QPointF(mark.left * scale, mark.y * scale), QPointF(mark.right * scale, mark.y * scale)
                )
        painter.restore()

    def pdf(self, marks: Sequence[Mark], paper: Paper, title: str) -> bytes:
        """One page as PDF with the fonts inside.

        Raises:
            OSError: as `pdf_pages`.
        """
        return self.pdf_pages([marks], paper, title)

    def pdf_pages(self, pages: Sequence[Sequence[Mark]], paper: Paper, title: str) -> bytes:
        """Pages of one size as PDF with the fonts inside.

        Raises:
            OSError: the writer could not begin.
        """
        kept = QByteArray()
        buffer = QBuffer(kept)
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        writer = QPdfWriter(buffer)
        writer.setTitle(title)
        writer.setCreator("")
        writer.setResolution(RESOLUTION)
        writer.setPageLayout(layout(paper))
        painter = QPainter()
        if not painter.begin(writer):
            raise OSError(5, "no PDF could be begun", title)
        for number, marks in enumerate(pages):
            if number:
                writer.newPage()
            self.draw(painter, marks, RESOLUTION / 72)
        painter.end()
        buffer.close()
        return bytes(kept.data())

    def print(self, printer: QPrinter, marks: Sequence[Mark], paper: Paper) -> None:
        """Send one page to a printer.

        Raises:
            Unavailable: printer-gone.
        """
        self.print_pages(printer, [marks], paper)

    def print_pages(self, printer: QPrinter, pages: Sequence[Sequence[Mark]], paper: Paper) -> None:
        """Send pages to a printer.

        Raises:
            Unavailable: printer-gone.
        """
        printer.setPageLayout(layout(paper))
        painter = QPainter()
        if not painter.begin(printer):
            raise Unavailable("printer-gone", name=printer.printerName())
        for number, marks in enumerate(pages):
            if number:
                printer.newPage()
            self.draw(painter, marks, printer.resolution() / 72)
        painter.end()


def _letter_by_letter(font: QFont) -> QFont:
    """Without ligatures and contextual forms: what is copied out of a PDF would have U+FB01 in it, or lack an f."""
    for feature in ("liga", "calt"):
        font.setFeature(QFont.Tag(feature), 0)
    return font


RESOLUTION = 1200
"""Dots to an inch."""


def layout(paper: Paper) -> QPageLayout:
    """A page without margins of its own: the sheet has them."""
    size = QPageSize(QSizeF(*paper.value), QPageSize.Unit.Point, "", QPageSize.SizeMatchPolicy.FuzzyMatch)
    made = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0))
    made.setMode(QPageLayout.Mode.FullPageMode)
    return made
