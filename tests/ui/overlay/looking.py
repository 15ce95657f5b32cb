"""Looks at a window as a demanding reader does: is anything cut, does every control have a name?"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from hearthkey.ui.controls.buttons import Button

SLACK = 1
"""Pixels that rounding may take."""


def settle() -> None:
    """Let layouts that wait be done."""
    for _ in range(4):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


def cut(inside: QWidget) -> list[str]:
    """Texts that have less room than they need."""
    found = []
    for label in inside.findChildren(QLabel):
        if label.isVisible() and label.text():
            needed = label.heightForWidth(label.width()) if label.wordWrap() else label.sizeHint().height()
            narrow = not label.wordWrap() and label.sizeHint().width() > label.width() + SLACK
            if needed > label.height() + SLACK or narrow:
                found.append(label.text())
    found += [
        button.text()
        for button in inside.findChildren(Button)
        if button.isVisible() and button.sizeHint().width() > button.width() + SLACK
    ]
    return found


def beyond(inside: QWidget) -> list[str]:
    """Controls that reach over the left or right edge."""
    found = []
    for one in inside.findChildren(QWidget):
        if one.isVisible() and one.focusPolicy() & Qt.FocusPolicy.TabFocus:
            left = one.mapTo(inside, one.rect().topLeft()).x()
            if left < -SLACK or left + one.width() > inside.width() + SLACK:
                found.append(one.accessibleName())
    return found


def stops(inside: QWidget) -> list[QWidget]:
    """Everything that Tab stops at, in its order."""
    found: list[QWidget] = []
    one = inside.nextInFocusChain()
    while one is not None and one is not inside:
        if inside.isAncestorOf(one) and one.isVisible() and one.focusPolicy() & Qt.FocusPolicy.TabFocus:
            found.append(one)
        one = one.nextInFocusChain()
    return found


def nameless(inside: QWidget) -> list[str]:
    """Controls that a screen reader could only call "button"."""
    return [f"{type(one).__name__} {one.geometry()}" for one in stops(inside) if not one.accessibleName()]
