"""The sheet "Lost or stolen" itself: it slides down over the window, keeps the focus, and slides back."""

from __future__ import annotations

import shiboken6
from PySide6.QtCore import QEvent, QObject, Qt, QVariantAnimation
from PySide6.QtGui import QKeyEvent, QPainter
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.errands import Errands
from hearthkey.ui.lost.body import Body
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

WIDE, EDGE = 760, 2
"""Pixels: the sheet at normal size of type, and its edge."""

VEIL = round(0.86 * 255)
"""How much of the window the desk hides."""

SLIDE = 140
"""Milliseconds, straight down and straight up."""


class _Paper(QFrame):
    """The sheet's ground and its edge, open at the top where it comes from."""

    def __init__(self, theme: Theme, body: Body, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme
        scroll = self._scroll = QScrollArea()
        scroll.setWidget(body)
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.viewport().setAutoFillBackground(False)
        body.setAutoFillBackground(False)
        column = QVBoxLayout(self)
        column.setContentsMargins(EDGE, 0, EDGE, EDGE)
        column.addWidget(scroll)

    def scrolls(self, *, needed: bool) -> None:
        """Have a scroll bar only where there is something to scroll: Qt keeps one for the room that it takes itself."""
        policy = Qt.ScrollBarPolicy.ScrollBarAsNeeded if needed else Qt.ScrollBarPolicy.ScrollBarAlwaysOff
        self._scroll.setVerticalScrollBarPolicy(policy)

    def reveal(self, part: QWidget) -> None:
        """Scroll until a part is seen."""
        self._scroll.ensureWidgetVisible(part)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground and edge."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("ink"))
        painter.fillRect(self.rect().adjusted(EDGE, 0, -EDGE, -EDGE), self._theme.color("raised"))
        painter.end()


class LostSheet(QWidget):
    """The overlay: a veil of desk over its parent, and the sheet hanging from the top edge.

    It opens by `Ways.lost` and follows `Errands.seen` by itself. What was typed stays typed when it
    is closed. The focus stays inside while it is open, and goes back to where it was.
    """

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ways = ways
        self._before: QWidget | None = None
        self.body = Body(theme, errands)
        self._paper = _Paper(theme, self.body, self)
        self._slide = QVariantAnimation(self)
        self._slide.setDuration(SLIDE)
        self._slide.valueChanged.connect(lambda _value: self._place())
        self._slide.finished.connect(self._arrived)
        self.setAccessibleName(self.tr("Lost or stolen"))
        self.body.installEventFilter(self)
        self.body.head.close_button.clicked.connect(self.dismiss)
        self.body.outcome.closed.connect(self.dismiss)
        theme.changed.connect(self._dress)
        errands.seen.connect(self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)
        ways.lost.connect(self.open)
        self.hide()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Look for devices in another snapshot."""
        self.body.asking.show_snapshot(snapshot)

    # In and out

    def open(self, text: str = "") -> None:
        """Come down, with the cursor in the field.

        Args:
            text: to begin with; empty keeps what was typed the last time.
        """
        if not self.isVisible():
            self._before = self.window().focusWidget()
        self._cover()
        opening = not self.isVisible()
        self.show()
        self.raise_()
        self.body.begin(text)
        if opening or self._slide.endValue() == 0.0:
            self._go(1.0)

    def dismiss(self) -> None:
        """Go back up, and give the focus back."""
        if not self.isVisible():
            return
        before, self._before = self._before, None
        if before is not None and shiboken6.isValid(before) and before.isVisible() and not self.isAncestorOf(before):
            before.setFocus()
        else:
            self._ways.closed.emit()
        self._go(0.0)

    @property
    def hangs(self) -> bool:
        """Whether the sheet has come all the way down."""
        return self.isVisible() and self._paper.y() == 0

    def _go(self, end: float) -> None:
        self._slide.stop()
        self._slide.setStartValue(1.0 - end)
        self._slide.setEndValue(end)
        if self._theme.still:
            self._slide.setCurrentTime(SLIDE)
            self._arrived()
        else:
            self._slide.start()

    def _arrived(self) -> None:
        if self._slide.endValue() == 0.0:
            self.hide()
        self._place()

    def _dress(self) -> None:
        self._place()
        self.update()

    def _cover(self) -> None:
        parent = self.parentWidget()
        if parent is not None:
            parent.installEventFilter(self)
            self.setGeometry(parent.rect())

    def _place(self) -> None:
        """Hang the sheet from the top edge, as high as its contents and no higher than the window."""
        if not self.isVisible():
            return
        width = min(self._theme.px(WIDE), self.width())
        inner = width - 2 * EDGE
        wanted = self.body.fit(inner, self.height() - EDGE) + EDGE
        height = min(wanted, self.height())
        self._paper.scrolls(needed=wanted > height)
        down = self._slide.currentValue()
        top = 0 if down is None else round(height * (float(down) - 1.0))
        self._paper.setGeometry((self.width() - width) // 2, top, width, height)

    # Qt's calls

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """Follow the parent's size and the contents' height."""
        if watched is self.parentWidget() and event.type() == QEvent.Type.Resize:
            self._cover()
        elif watched is self.body and event.type() == QEvent.Type.LayoutRequest:
            self._place()
        return False

    def resizeEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Hang it anew."""
        self._place()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the veil; nothing fades."""
        desk = self._theme.color("desk")
        desk.setAlpha(VEIL)
        painter = QPainter(self)
        painter.fillRect(self.rect(), desk)
        painter.end()

    def mousePressEvent(self, event: QEvent) -> None:  # noqa: N802 - Qt's name
        """A click beside the sheet reaches nothing behind it."""
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Claim Esc and Ctrl+Z before shortcuts of the window do."""
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent) and _ours(event):
            event.accept()
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc closes, Ctrl+Z takes back; nothing reaches the window."""
        outcome = self.body.outcome
        if event.key() == Qt.Key.Key_Escape:
            self.dismiss()
        elif outcome.isVisible() and _is_undo(event):
            outcome.undo()
        event.accept()

    def focusNextPrevChild(self, forward: bool) -> bool:  # noqa: N802, FBT001 - Qt's name and order
        """Keep the focus on the sheet: after the last control comes the first."""
        ring = self._ring()
        if not ring:
            return True
        at = ring.index(here) if (here := self.window().focusWidget()) in ring else -1 if forward else 0
        wanted = ring[(at + (1 if forward else -1)) % len(ring)]
        wanted.setFocus(Qt.FocusReason.TabFocusReason if forward else Qt.FocusReason.BacktabFocusReason)
        self._paper.reveal(wanted)
        return True

    def _ring(self) -> list[QWidget]:
        found: list[QWidget] = []
        one = self.nextInFocusChain()
        while one is not self and one is not None:
            takes = bool(one.focusPolicy() & Qt.FocusPolicy.TabFocus)
            if takes and one.isVisible() and one.isEnabled() and self.isAncestorOf(one):
                found.append(one)
            one = one.nextInFocusChain()
        return found


def _is_undo(event: QKeyEvent) -> bool:
    return event.key() == Qt.Key.Key_Z and event.modifiers() == Qt.KeyboardModifier.ControlModifier


def _ours(event: QKeyEvent) -> bool:
    return event.key() == Qt.Key.Key_Escape or _is_undo(event)
