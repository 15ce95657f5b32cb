"""Codes as pictures, and pictures read for codes: Pillow draws and opens, zxing-cpp reads."""

from __future__ import annotations

import struct
import zlib
from collections.abc import Sequence
from io import BytesIO
from itertools import groupby
from xml.sax.saxutils import escape

import zxingcpp
from PIL import Image
from PIL.JpegImagePlugin import JpegImageFile
from PIL.PngImagePlugin import PngImageFile

from hearthkey.core.errors import Refused

DARK, LIGHT = "#10181C", "#FFFFFF"
"""Dark on light in every theme: many readers take nothing else (ISO/IEC 18004 section 6.2, from memory)."""

LARGEST_FILE = 20 << 20
"""Octets."""
LARGEST_PICTURE = 64_000_000
"""Pixels: more than a phone's camera usually makes, and 64 MB as greys."""

_QR = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)
_PNG, _JPEG = b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff"


def png(matrix: Sequence[Sequence[bool]], scale: int = 8) -> bytes:
    """Draw a code as a PNG of two colours, one bit a pixel.

    Args:
        matrix: rows of modules, True is dark, quiet zone included.
        scale: pixels a module.
    """
    side = len(matrix)
    picture = Image.frombytes("P", (side, side), bytes(0 if module else 1 for row in matrix for module in row))
    picture.putpalette(bytes.fromhex(DARK[1:] + LIGHT[1:]))
    picture = picture.resize((side * scale, side * scale), Image.Resampling.NEAREST)
    written = BytesIO()
    picture.save(written, "PNG", bits=1)
    return written.getvalue()


def svg(matrix: Sequence[Sequence[bool]], title: str = "Code of a bundle") -> bytes:
    """Draw a code as an SVG: one path of dark runs, one unit a module, on a light ground.

    Args:
        matrix: rows of modules, True is dark, quiet zone included.
        title: what a screen reader says; plain text.
    """
    side = len(matrix)
    runs: list[str] = []
    for y, row in enumerate(matrix):
        x = 0
        for dark, modules in groupby(row):
            length = len(list(modules))
            if dark:
                runs.append(f"M{x} {y}h{length}v1h-{length}z")
            x += length
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" role="img" aria-labelledby="t" '
        f'shape-rendering="crispEdges"><title id="t">{escape(title)}</title>'
        f'<rect width="{side}" height="{side}" fill="{LIGHT}"/>'
        f'<path fill="{DARK}" d="{"".join(runs)}"/></svg>\n'
    ).encode()


def read_codes(data: bytes) -> tuple[str, ...]:
    """Read the text of every QR code in a PNG or JPEG; none found is an empty answer.

    Raises:
        Refused: picture-too-large (`size` octets or `pixels`, and `limit`), picture-unreadable.
    """
    if len(data) > LARGEST_FILE:
        raise Refused("picture-too-large", size=len(data), pixels=None, limit=LARGEST_FILE)
    found = zxingcpp.read_barcodes(_greys(data), formats=_QR, text_mode=zxingcpp.TextMode.Plain)
    return tuple(code.text for code in found)


def _greys(data: bytes) -> Image.Image:
    """Open a picture as greys on white.

    The two format classes are called by themselves: nothing else is ever tried on a stranger's bytes, and
    the size is judged before a pixel is made.
    """
    try:
        picture = _opened(data)
        if picture.width * picture.height > LARGEST_PICTURE:
            raise Refused(
                "picture-too-large", size=len(data), pixels=picture.width * picture.height, limit=LARGEST_PICTURE
            )
        if picture.has_transparency_data:
            seen = picture.convert("RGBA")
            ground = Image.new("RGBA", seen.size, LIGHT)
            return Image.alpha_composite(ground, seen).convert("L")
        return picture.convert("L")
    except (OSError, SyntaxError, ValueError, EOFError, struct.error, zlib.error, IndexError, KeyError) as error:
        # Pillow tells a broken file by any of these, depending on where it breaks.
        raise Refused("picture-unreadable", size=len(data)) from error


def _opened(data: bytes) -> Image.Image:
    if data.startswith(_PNG):
        return PngImageFile(BytesIO(data))
    if data.startswith(_JPEG):
        return JpegImageFile(BytesIO(data))
    raise Refused("picture-unreadable", size=len(data))
