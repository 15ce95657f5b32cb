"""The code of a deputy's part: its text as the modules of a QR code."""

from __future__ import annotations

from typing import Literal

from qrcode.constants import ERROR_CORRECT_Q
from qrcode.main import QRCode
from qrcode.util import QRData

from hearthkey.core.secret import Secret
from hearthkey.formats.codes import QUIET_ZONE, Matrix

_ALPHANUMERIC: Literal[2] = 2
"""Mode indicator 0010 (ISO/IEC 18004 table 2)."""


def matrix(text: Secret[str]) -> Matrix:
    """Lay out the modules, quiet zone included. Level Q, for paper gets folded: a quarter of it may be lost."""
    code = QRCode(error_correction=ERROR_CORRECT_Q, border=QUIET_ZONE)
    code.add_data(QRData(text.reveal().encode("ascii"), mode=_ALPHANUMERIC))
    code.make(fit=True)
    return tuple(tuple(bool(module) for module in row) for row in code.get_matrix())
