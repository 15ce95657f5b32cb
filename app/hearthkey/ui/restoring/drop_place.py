"""A place that files are dropped on, or chosen for with a button."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QMimeData, QRectF, Qt, Signal
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDropEvent, QPainter, QPen
from PySide6.QtWidgets import QFileDialog, QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PickFiles = Callable[[QWidget, str, Path, Callable[[Sequence[Path]], None]], None]
"""Parent, title, where to begin, and what hears of the files."""


def pick_files(parent: QWidget, title: str, start: Path, then: Callable[[Sequence[Path]], None]) -> None:
    """Open the desktop's dialog; `then` hears nothing where none is chosen."""
    dialog = QFileDialog(parent, title, str(start))
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
    dialog.filesSelected.connect(lambda chosen: then([Path(one) for one in chosen]))
    dialog.open()


class DropPlace(QWidget):
    """The place, with its button and what was chosen so far.

    Signals:
        came: paths, as a list.
    """

    DASH = (4.0, 4.0)

    came = Signal(object)

    def __init__(
        self, theme: Theme, start: Path, *, pick: PickFiles = pick_files, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme, self._start, self._pick = theme, start, pick
        self._over = False
        self.button = Button(theme, self.tr("&Choose files…"))
        self.words = Prose(theme, Role.BODY, color="ink2")
        self.setAcceptDrops(True)
        self.setFocusProxy(self.button)
        column = QVBoxLayout(self)
        column.setContentsMargins(14, 12, 14, 12)
        column.setSpacing(8)
        column.addWidget(self.words)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        self.button.clicked.connect(self._choose)
        self.show_files(())

    def show_files(self, names: Sequence[str]) -> None:
        """Show what was chosen; with nothing, what may be dropped."""
        told = ", ".join(names) or self.tr(
            "Drop the file that ends in .sealed.tar here, or scans and photographs of a paper (PNG, JPEG)."
        )
        self.words.recolor("ink" if names else "ink2")
        self.words.speak(told)
        self.button.setAccessibleDescription(told)

    def _choose(self) -> None:
        self._pick(self, self.tr("A sealed copy, or the scans of a paper"), self._start, self._take)

    def _take(self, files: Sequence[Path]) -> None:
        if files:
            self._start = files[0].parent
            self.came.emit(list(files))

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """Files from this computer may come in."""
        if _files(event.mimeData()):
            self._over = True
            self.update()
            event.acceptProposedAction()

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:  # noqa: N802 - Qt's name
        """They went elsewhere."""
        self._over = False
        self.update()
        super().dragLeaveEvent(event)

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """They are here."""
        self._over = False
        self.update()
        event.acceptProposedAction()
        self._take(_files(event.mimeData()))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint a dashed edge; a whole one while something hangs over it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(self._theme.color("ink" if self._over else "rule"), 2 if self._over else 1)
        if not self._over:
            pen.setDashPattern(self.DASH)
        painter.setPen(pen)
        painter.setBrush(self._theme.color("raised"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(3.5, 1.5, -3.5, -1.5), 3, 3)
        painter.end()


def _files(carried: QMimeData) -> list[Path]:
    return [Path(url.toLocalFile()) for url in carried.urls() if url.isLocalFile()]
