"""The QR code of a pick-up link: small enough for any camera, as modules and as lines for a terminal."""

from __future__ import annotations

from qrcode.constants import ERROR_CORRECT_M
from qrcode.main import QRCode

from hearthkey.core.secret import Secret
from hearthkey.formats.codes import QUIET_ZONE, Matrix

LARGEST_VERSION = 8
"""49 modules a side (ISO/IEC 18004 section 5.3.1): read across a table."""

_BLOCKS = {(False, False): " ", (True, False): "▀", (False, True): "▄", (True, True): "█"}
_DARK_ON_LIGHT, _AS_BEFORE = "\x1b[38;5;16;48;5;231m", "\x1b[0m"
"""ECMA-48 section 8.3.117 (SGR); the colour numbers 38 and 48 with a palette are from memory."""


def matrix(link: Secret[str]) -> Matrix:
    """Lay out the modules: level M, version 8 at most, quiet zone included.

    Raises:
        ValueError: a text longer than any link of ours.
    """
    code = QRCode(error_correction=ERROR_CORRECT_M, border=QUIET_ZONE)
    code.add_data(link.reveal().encode("ascii"), optimize=0)
    code.make(fit=True)
    if code.version > LARGEST_VERSION:
        raise ValueError(code.version)
    return tuple(tuple(bool(module) for module in row) for row in code.get_matrix())


def lines(modules: Matrix, *, coloured: bool) -> tuple[str, ...]:
    """Two rows of modules to a line of text.

    Args:
        coloured: dark on light whatever the terminal's colours are; without it, dark is what the terminal writes with.
    """
    rows = [*modules, tuple(False for _ in modules[0])] if len(modules) % 2 else list(modules)
    drawn = [
        "".join(_BLOCKS[pair] for pair in zip(*two, strict=True)) for two in zip(rows[::2], rows[1::2], strict=True)
    ]
    return tuple(f"{_DARK_ON_LIGHT}{line}{_AS_BEFORE}" if coloured else line for line in drawn)
