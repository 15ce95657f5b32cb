"""Letters typed at a list, gathered while they follow each other closely."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QElapsedTimer
from PySide6.QtWidgets import QApplication


class Typed:
    """What has been typed so far."""

    def __init__(self) -> None:
        self._since = QElapsedTimer()
        self._letters = ""

    def next(self, letters: str, texts: Sequence[str], row: int) -> int | None:
        """The first text at or after a row that has a word beginning with the letters.

        Args:
            texts: casefolded.
            row: where to begin; the same single letter again goes on to the next.
        """
        fresh = not self._since.isValid() or self._since.hasExpired(QApplication.keyboardInputInterval())
        self._since.restart()
        same = letters.casefold() == self._letters and len(letters) == 1
        self._letters = letters.casefold() if fresh or same else self._letters + letters.casefold()
        start = max(0, row + (1 if fresh or same else 0))
        for step in range(len(texts)):
            number = (start + step) % len(texts)
            if f" {self._letters}" in f" {texts[number]}":
                return number
        return None
