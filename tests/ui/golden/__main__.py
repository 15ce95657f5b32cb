"""Renews the golden pictures: `QT_QPA_PLATFORM=offscreen PYTHONPATH=app:. python -m tests.ui.golden`; look at them."""

from __future__ import annotations

import sys

from PySide6.QtGui import QImageWriter
from PySide6.QtWidgets import QApplication

from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme
from tests.ui.golden.drawing import LOOKS, board, place

_SMALLEST = 0
"""Qt's word for the strongest compression of a PNG file."""


def main() -> int:
    """Draw every picture and write it beside this file."""
    app = QApplication(sys.argv[:1])
    theme = Theme(name=next(iter(LOOKS)))
    style = SheetStyle(theme)
    app.setStyle(style)
    for look in LOOKS:
        theme.choose(look, 1.0)
        theme.dress()
        writer = QImageWriter(str(place(look)))
        writer.setQuality(_SMALLEST)
        if not writer.write(board(theme)):
            raise OSError(writer.errorString())
        sys.stdout.write(f"{place(look)}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
