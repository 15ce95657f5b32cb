"""A window of another process that takes files: it says where it stands, then what was dropped on it."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QWidget


class Target(QWidget):
    """Takes the first file."""

    def __init__(self) -> None:
        super().__init__()
        self.setAcceptDrops(True)
        self.setGeometry(600, 300, 300, 200)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """Files only."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """Say its address and what is in it, and end."""
        event.acceptProposedAction()
        path = Path(event.mimeData().urls()[0].toLocalFile())
        begins = path.read_bytes()[:14].decode("ascii", "replace").replace("\n", " ")
        sys.stdout.write(f"dropped {path} {path.stat().st_mode & 0o777:o} {ascii(begins)[1:-1]}\n")
        sys.stdout.flush()
        QTimer.singleShot(0, QApplication.quit)


def main() -> None:
    """Show the window and wait."""
    app = QApplication([])
    target = Target()
    target.show()
    middle = target.mapToGlobal(target.rect().center())
    QTimer.singleShot(0, lambda: (sys.stdout.write(f"ready {middle.x()} {middle.y()}\n"), sys.stdout.flush()))
    app.exec()


main()
